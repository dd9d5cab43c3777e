/** French for what verification finds. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  'two keys follow the same one, and a key names only one that takes its place':
    "deux clés suivent la même, et une clé n'en nomme qu'une qui prend sa place",
  'it is missing': 'il manque',
  'Your policy does not name this log, {0}.': 'Votre politique ne nomme pas ce journal, {0}.',
  'No key of this log that your policy names signed the checkpoint inside.':
    "Aucune clé de ce journal nommée par votre politique n'a signé le point de contrôle à l'intérieur.",
  'The note of the witnesses that came with it is no checkpoint.':
    "La note des témoins jointe n'est pas un point de contrôle.",
  'The note of the witnesses that came with it is not of this log.':
    "La note des témoins jointe n'est pas de ce journal.",
  'The note of the witnesses that came with it does not show that they saw the log of this record.':
    "La note des témoins jointe ne montre pas qu'ils ont vu le journal de ce relevé.",
  'Your policy names {0} as a witness, and its key is one of the station itself: nobody is his own witness.':
    "Votre politique nomme {0} comme témoin, et sa clé est une clé du poste lui-même : nul n'est son propre témoin.",
  'A cosignature of a witness that your policy names does not hold: the note was changed.':
    "La cosignature d'un témoin nommé par votre politique n'est pas valable : la note a été modifiée.",
  '{0}, and your policy asks for more.': '{0}, et votre politique en demande davantage.',
  'Your policy asks for no witness.': 'Votre politique ne demande aucun témoin.',
  '{0}: nobody can rewrite the first {1} entries of the log without them.':
    '{0} : personne ne peut réécrire sans eux les {1} premières entrées du journal.',
  'Cosigned by 0 of {0}': 'Cosigné par 0 sur {0}',
  'Cosigned by {0} of {1} on {2} ({3})': 'Cosigné par {0} sur {1} le {2} ({3})',
  'TWO HISTORIES: the station signed two different logs of {0} entries, and witnesses saw the other one.':
    "DEUX HISTORIQUES : le poste a signé deux journaux différents de {0} entrées, et des témoins ont vu l'autre.",
  'entry {0} belongs to {1}, not to {2}': "l'entrée {0} appartient à {1}, non à {2}",
  'entry n={0} stands where n={1} is due': "l'entrée n={0} est à la place de n={1}",
  'entry {0} stands after entry {1}': "l'entrée {0} suit l'entrée {1}",
  'the monotonic clock runs back at entry n={0}': "l'horloge monotone recule à l'entrée n={0}",
  'entry n={0} holds a sample from after it was written':
    "l'entrée n={0} contient une mesure prise après son écriture",
  'Instruments and specification are what the log says. A newer version of the program made summary and uncertainty budgets: they were not worked out again.':
    "Instruments et prescription sont ceux du journal. Une version plus récente du programme a établi le résumé et les bilans d'incertitude : ils n'ont pas été recalculés.",
  'Summary, uncertainty budgets, instruments and specification are what the entries and the log say.':
    "Résumé, bilans d'incertitude, instruments et prescription sont ce que disent les entrées et le journal.",
  'Not looked at: a newer version of the program decides what is complete.':
    'Non examiné : une version plus récente du programme décide de ce qui est complet.',
  'Not looked at: there is no job to look at.': "Non examiné : il n'y a pas d'ordre à examiner.",
  'Not looked at: the job cannot be played back here.': "Non examiné : l'ordre ne peut pas être rejoué ici.",
  'OUT OF ORDER: work was done before a step that comes first. See the exceptions.':
    "HORS ORDRE : du travail a été fait avant une étape qui vient d'abord. Voir les exceptions.",
  'OUT OF ORDER: work on cylinder {0} was done before a step that comes first. See the exceptions.':
    "HORS ORDRE : du travail au cylindre {0} a été fait avant une étape qui vient d'abord. Voir les exceptions.",
  'Each step came in its turn, as the shop has set it.':
    "Chaque étape est venue à son tour, comme l'atelier l'a fixé.",
  'Each step that counts came in its turn. What had come too early was done again.':
    'Chaque étape qui compte est venue à son tour. Ce qui était venu trop tôt a été refait.',
  'It has left {0} of {1} steps free: those may have come at any time.':
    'Il a laissé {0} étapes sur {1} libres : celles-là ont pu venir à tout moment.',
  'The gap of cylinder {0} was kept by name and is NOT proven.':
    "L'écartement du cylindre {0} a été gardé sous un nom et n'est PAS prouvé.",
  '{0} on all {1} cylinders; the job is closed.': "{0} sur les {1} cylindres ; l'ordre est clos.",
  'cylinder {0} accepted by {1} ({2})': 'cylindre {0} accepté par {1} ({2})',
  'cylinder {0} accepted by nobody': 'cylindre {0} accepté par personne',
  '{0} on {1} of {2} cylinders; NOT proven by turn: {3}. The job is closed.':
    "{0} sur {1} cylindres sur {2} ; NON prouvé par la rotation : {3}. L'ordre est clos.",
  '{0} on {1} of {2} cylinders; NOT proven by torque: {3}. The job is closed.':
    "{0} sur {1} cylindres sur {2} ; NON prouvé par le couple : {3}. L'ordre est clos.",
  'Gap and torque are OK': 'Écartement et couple sont OK',
  'Torque is OK (no gap was measured)': "Le couple est OK (aucun écartement n'a été mesuré)",
  'Gap and turn are OK': 'Écartement et rotation sont OK',
  'Turn is OK (no gap was measured)': "La rotation est OK (aucun écartement n'a été mesuré)",
  'The job was not opened exactly once.': "L'ordre n'a pas été ouvert exactement une fois.",
  'The entries are not those of job {0}.': "Les entrées ne sont pas celles de l'ordre {0}.",
  'The job names rules that no version of the program has.':
    "L'ordre nomme des règles qu'aucune version du programme ne possède.",
  'The entries cannot be played back: {0}.': 'Les entrées ne peuvent pas être rejouées : {0}.',
  'The summary is not what the entries say.': "Le résumé n'est pas ce que disent les entrées.",
  'The uncertainty budgets are not what the instruments give.':
    "Les bilans d'incertitude ne sont pas ce que donnent les instruments.",
  'The job was closed as complete. {0}': "L'ordre a été clos comme complet. {0}",
  'The job was declared VOID by {0}: {1}.': "L'ordre a été déclaré NUL par {0} : {1}.",
  'The job was declared VOID.': "L'ordre a été déclaré NUL.",
  'Not all of the job is done.': "Tout n'est pas fait dans cet ordre.",
  'Cylinder {0} counts as done, but no OK figure stands for it.':
    'Le cylindre {0} compte comme fait, mais aucune valeur OK ne le montre.',
  'The job was not closed.': "L'ordre n'a pas été clos.",
  'The job was closed incomplete.': "L'ordre a été clos incomplet.",
  'The entries do not begin with the opening of a job.':
    "Les entrées ne commencent pas par l'ouverture d'un ordre.",
  'The job was opened on {0}, but its certificates were looked at as on {1}.':
    "L'ordre a été ouvert le {0}, mais ses certificats ont été examinés au {1}.",
  "The instrument {0} is not as the station's log has it.":
    "L'instrument {0} n'est pas tel que dans le journal du poste.",
  "The specification of the order is not as the station's log has it.":
    "La prescription de l'ordre n'est pas telle que dans le journal du poste.",
  'Entry n={0} ({1}) is not by whom such an entry is.':
    "L'entrée n={0} ({1}) n'est pas de celui dont vient une telle entrée.",
  "Entry n={0}: the tool that joined as {1} does not measure what the order's instrument does.":
    "Entrée n={0} : l'outil raccordé sous {1} ne mesure pas ce que mesure l'instrument de l'ordre.",
  'Entry n={0}: the tool that joined as {1} has another serial number than the instrument.':
    "Entrée n={0} : l'outil raccordé sous {1} a un autre numéro de série que l'instrument.",
  "The job's entries are not whole: {0}.": "Les entrées de l'ordre ne sont pas entières : {0}.",
  'The checkpoint inside does not have the form of one.':
    "Le point de contrôle à l'intérieur n'a pas la forme d'un point de contrôle.",
  'The checkpoint is of another log, {0}.': "Le point de contrôle est d'un autre journal, {0}.",
  'The checkpoint is not signed by the key of the station that signed the record.':
    "Le point de contrôle n'est pas signé par la clé du poste qui a signé le relevé.",
  'The entries are not in the log that the checkpoint signs.':
    'Les entrées ne sont pas dans le journal que signe le point de contrôle.',
  'THE LOG LOST ENTRIES. The station states that it had {0} entries once and went on without some of them. What is in this record is in its signed log of {1} entries.':
    "LE JOURNAL A PERDU DES ENTRÉES. Le poste déclare avoir eu {0} entrées et avoir continué sans certaines d'entre elles. Ce que contient ce relevé est dans son journal signé de {1} entrées.",
  '{0} entries without a gap, all in the signed log of {1} entries (root {2}).':
    '{0} entrées sans lacune, toutes dans le journal signé de {1} entrées (racine {2}).',
  'It was judged by edition {0} of the rules; new jobs are judged by edition {1}.':
    "Il a été jugé selon l'édition {0} des règles ; les nouveaux ordres sont jugés selon l'édition {1}.",
  'It was not: a newer version of the program judged the job. Verify it with that version as well.':
    "Pas fait : une version plus récente du programme a jugé l'ordre. Le vérifier aussi avec cette version.",
  'The samples give the same {0} pulls again, each with the same verdict.':
    'Les mesures redonnent les mêmes {0} tractions, chacune avec le même verdict.',
  'The job cannot be judged again: {0}.': "L'ordre ne peut pas être rejugé : {0}.",
  'event {0}: {1}.': 'événement {0} : {1}.',
  'its key does not carry the name that its header gives': 'sa clé ne porte pas le nom donné par son en-tête',
  'it does not belong to this content': "elle n'appartient pas à ce contenu",
  'its header is not canonical JSON': "son en-tête n'est pas du JSON canonique",
  'its header asks for an algorithm other than Ed25519': "son en-tête demande un autre algorithme qu'Ed25519",
  'its header is not of the expected form ({0})': "son en-tête n'a pas la forme attendue ({0})",
  'THE NAME OF ANOTHER STATION: your list has the name that this station calls itself for another key.':
    "LE NOM D'UN AUTRE POSTE : votre liste donne à une autre clé le nom que ce poste se donne.",
  '{0} (which calls itself "{1}")': '{0} (qui se nomme « {1} »)',
  'it is dated # day before what stands in front of it in the log|it is dated # days before what stands in front of it in the log':
    {
      one: 'sa date précède de # jour ce qui le précède dans le journal',
      other: 'sa date précède de # jours ce qui le précède dans le journal',
    },
  'it is dated # day after what stands behind it in the log|it is dated # days after what stands behind it in the log':
    {
      one: 'sa date suit de # jour ce qui le suit dans le journal',
      other: 'sa date suit de # jours ce qui le suit dans le journal',
    },
  'The signature of {0} {1} is missing.': 'La signature de {0} {1} manque.',
  'The same signature stands twice.': 'La même signature y est deux fois.',
  'The signature of {0} {1} is there twice.': 'La signature de {0} {1} y est deux fois.',
  'The signature of {0} {1} was not announced in the content.':
    "La signature de {0} {1} n'était pas annoncée dans le contenu.",
  'Signature {0} of {1} does not hold: {2}.': "La signature {0} sur {1} n'est pas valable : {2}.",
  'Signature {0} of {1} is there twice.': 'La signature {0} sur {1} y est deux fois.',
  "The station's log does not name {0} as the key of {1}.":
    'Le journal du poste ne nomme pas {0} comme clé de {1}.',
  "The station's log does not name {0} as its key.": 'Le journal du poste ne nomme pas {0} comme sa clé.',
  "The station's log says that {0} was revoked.": 'Le journal du poste dit que {0} a été révoquée.',
  "The station's log does not call it {0}.": 'Le journal du poste ne le nomme pas {0}.',
  'What is said about the signature of the technician is not what the log says.':
    "Ce qui est dit de la signature du technicien n'est pas ce que dit le journal.",
  'No station signed.': "Aucun poste n'a signé.",
  'Station key {0}: {1}.': 'Clé du poste {0} : {1}.',
  'signed by the station {0} on {1}': 'signé par le poste {0} le {1}',
  'the key has ended since, and a later log of the station contains this':
    'la clé a pris fin depuis, et un journal ultérieur du poste contient ceci',
  'countersigned by {0} on {1}': 'contresigné par {0} le {1}',
  'countersigned by {0}, who is not trusted ({1}), on {2}': 'contresigné par {0}, non fiable ({1}), le {2}',
  'the key is not on the trust list, and {0} names no key any more':
    "la clé n'est pas sur la liste de confiance, et {0} ne nomme plus aucune clé",
  '{0}, whose earlier key named this one': '{0}, dont la clé précédente a nommé celle-ci',
  'its log says that {0} signed for it before, which your list has as a key of {1}; neither that key nor your list ("follows") says that this one took its place':
    "son journal dit que {0} a signé pour lui auparavant, que votre liste donne comme clé de {1} ; ni cette clé ni votre liste (« follows ») ne disent que celle-ci l'a remplacée",
  somebody: "quelqu'un",
  'the key is not on the trust list': "la clé n'est pas sur la liste de confiance",
  'the key is on the trust list as {0}, not as {1}':
    'la clé est sur la liste de confiance comme {0}, non comme {1}',
  'the key is trusted from {0}, but signed on {1}': 'la clé est fiable à partir du {0}, mais a signé le {1}',
  'the key was revoked from {0} ({1})': 'la clé est révoquée à partir du {0} ({1})',
  'the key named another one': 'la clé en a nommé une autre',
  'the key was trusted until {0}': "la clé était fiable jusqu'au {0}",
  '{0}, but signed on {1}': '{0}, mais elle a signé le {1}',
  '{0}, and only its own word says that it signed before: a proof from the log, or a trusted time stamp, can show it':
    '{0}, et elle seule dit avoir signé avant : une preuve tirée du journal, ou un horodatage de confiance, peut le montrer',
  retired: 'mise hors service',
  compromised: 'compromise',
  'The time stamp does not hold: {0}.': "L'horodatage n'est pas valable : {0}.",
  'An authority that you named saw this record before {0}, under its policy {1}.':
    'Une autorité que vous avez nommée a vu ce relevé avant le {0}, selon sa politique {1}.',
  'it is no time stamp that can be read': "ce n'est pas un horodatage lisible",
  'the authority refused to stamp': "l'autorité a refusé d'horodater",
  'it rests on a hash that can be forged, such as SHA-1':
    'il repose sur une empreinte falsifiable, telle que SHA-1',
  'it does not belong to this record': "il n'appartient pas à ce relevé",
  'its signature does not hold': "sa signature n'est pas valable",
  'nobody you named made it, or the certificate was not valid at its time':
    "nul de ceux que vous avez nommés ne l'a établi, ou le certificat n'était pas valable à ce moment",
  'it does not say which certificate signed it': "il ne dit pas quel certificat l'a signé",
  'the certificate that signed it is not for stamping times alone':
    "le certificat qui l'a signé n'est pas réservé à l'horodatage",
  'Not looked at, because the file does not have the form of a record.':
    "Non examiné, car le fichier n'a pas la forme d'un relevé.",
  'Not looked at: a newer version of the program made the file in a form that this one cannot read.':
    'Non examiné : une version plus récente du programme a écrit le fichier sous une forme que celle-ci ne lit pas.',
  'A COUNTERSIGNATURE IS NOT GOOD. {0} What was sealed is unchanged.':
    "UN CONTRESEING N'EST PAS BON. {0} Ce qui a été scellé est inchangé.",
  'The file is unchanged. # signature holds.|The file is unchanged. # signatures hold.': {
    one: 'Le fichier est inchangé. # signature est valable.',
    other: 'Le fichier est inchangé. # signatures sont valables.',
  },
  "The entries of the station's own stream are not in order.":
    "Les entrées propres du poste ne sont pas dans l'ordre.",
  'The station was never set up.': "Le poste n'a jamais été installé.",
  "The station's own stream cannot be played back: {0}.":
    'Les entrées propres du poste ne peuvent pas être rejouées : {0}.',
  'The times cannot be true: {0}.': 'Les heures ne peuvent pas être vraies : {0}.',
  'Wall clock and monotonic clock agree throughout.':
    "L'heure civile et l'horloge monotone concordent partout.",
  '{0} s before entry n={1}': "{0} s avant l'entrée n={1}",
  'The wall clock was set before or while the job ran: {0}.':
    "L'heure civile a été réglée avant ou pendant le travail : {0}.",
  'TIMES IN DOUBT: {0}.': 'HEURES EN DOUTE : {0}.',
  'Its last entry is {0} s ahead of the clock of this computer: one of the two is wrong, or the time was simulated.':
    "Sa dernière entrée est en avance de {0} s sur l'horloge de cet ordinateur : l'une des deux est fausse, ou l'heure était simulée.",
  'no reason known': 'raison inconnue',
  '{0} and {1} more': '{0} et {1} de plus',
  '{0}; and {1} more': '{0} ; et {1} de plus',
  '{0} was changed': '{0} a été modifié',
  '{0} was added': '{0} a été ajouté',
  'All {0} files are there, and no other.': 'Les {0} fichiers sont là, et aucun autre.',
  '{0}.': '{0}.',
  'The signature does not belong to the index.': "La signature n'appartient pas à l'index.",
  "The station's own entries do not name {0} as its key.":
    'Les entrées propres du poste ne nomment pas {0} comme sa clé.',
  "The station's own entries say that {0} was revoked.":
    'Les entrées propres du poste disent que {0} a été révoquée.',
  'The index is as the station signed it.': "L'index est tel que le poste l'a signé.",
  'Nobody knows who made it.': "Nul ne sait qui l'a établi.",
  'It says that it is of {0}. Station key {1}: {2}.': 'Il dit être de {0}. Clé du poste {1} : {2}.',
  'Made by the station {0} on {1}, with its key {2}.': 'Établi par le poste {0} le {1}, avec sa clé {2}.',
  "The station's own entries are missing.": 'Les entrées propres du poste manquent.',
  "The station's own entries cannot be played back: {0}.":
    'Les entrées propres du poste dans le paquet ne peuvent pas être rejouées : {0}.',
  'The checkpoint is not signed by a key of the station.':
    "Le point de contrôle n'est pas signé par une clé du poste.",
  "The station's own entries are not in the log that the checkpoint signs.":
    'Les entrées propres du poste ne sont pas dans le journal que signe le point de contrôle.',
  "{0} of the station's own, chosen among them": '{0} entrées propres du poste, choisies parmi elles',
  "the station's own from the first to entry {0} of {1} without a gap, {2} of them":
    "les entrées propres du poste, de la première à l'entrée {0} du {1} sans lacune, {2} en tout",
  'A signed log of {0} entries (root {1}); {2}, stand in it.':
    'Un journal signé de {0} entrées (racine {1}) ; il contient {2}.',
  'The package was made without an older checkpoint.':
    'Le paquet a été établi sans point de contrôle plus ancien.',
  'The checkpoint in {0}': 'Le point de contrôle de {0}',
  'Your checkpoint': 'Votre point de contrôle',
  '{0} is of another log, {1}; that of the package is {2}.':
    "{0} est d'un autre journal, {1} ; celui du paquet est {2}.",
  '{0} is not signed by a key that the station ever had.':
    "{0} n'est pas signé par une clé que le poste ait jamais eue.",
  '{0} stands for {1} entries, and the log of the package has only {2}: the end of the log was cut off, or the package was made before the checkpoint.':
    "{0} vaut pour {1} entrées, et le journal du paquet n'en a que {2} : la fin du journal a été coupée, ou le paquet est plus ancien que le point de contrôle.",
  'The package proves nothing from your checkpoint of {0} entries on; ask for one that was made with it.':
    'Le paquet ne prouve rien à partir de votre point de contrôle de {0} entrées ; en demander un qui soit établi avec lui.',
  'DIVERGED: the log does not begin with what the checkpoint of {0} entries stands for.':
    'DIVERGENT : le journal ne commence pas par ce que représente le point de contrôle de {0} entrées.',
  '{0} stands for an empty log, and every log begins with that: it proves nothing.':
    '{0} vaut pour un journal vide, et tout journal commence ainsi : cela ne prouve rien.',
  'Nothing in front of the checkpoint of {0} entries (in {1}; compare it with the one that you kept) was removed or rewritten.':
    "Rien avant le point de contrôle de {0} entrées (dans {1} ; à comparer à celui que vous avez gardé) n'a été retiré ou réécrit.",
  'Nothing in front of the checkpoint of {0} entries (that you kept) was removed or rewritten.':
    "Rien avant le point de contrôle de {0} entrées (que vous avez gardé) n'a été retiré ou réécrit.",
  'The checkpoint in {0} is not one of this log.': "Le point de contrôle de {0} n'est pas de ce journal.",
  '{0} They have not seen {1} of {2} jobs, which came after it: {3}.':
    "{0} Ils n'ont pas vu {1} ordres sur {2}, venus après : {3}.",
  "The index does not say of job {0} what the station's own entries say.":
    "L'index ne dit pas de l'ordre {0} ce que disent les entrées propres du poste.",
  "None of the station's entries here puts one of these jobs in question.":
    "Aucune des entrées du poste ici ne met en cause l'un de ces ordres.",
  'PUT IN QUESTION later: {0} of {1} jobs; see below.':
    'MIS EN CAUSE plus tard : {0} ordres sur {1} ; voir plus bas.',
  'job {0}: {1}': 'ordre {0} : {1}',
  "The jobs are dated in the order in which they and the station's entries stand.":
    "Les ordres sont datés dans l'ordre où ils se trouvent, eux et les entrées du poste.",
  'The package is dated {0}, and the clock of this computer says {1}.':
    "Le paquet est daté du {0}, et l'horloge de cet ordinateur indique {1}.",
  'TIMES IN DOUBT: the package is dated {0}, and a job in it ends on {1}.':
    "HEURES EN DOUTE : le paquet est daté du {0}, et un ordre qu'il contient se termine le {1}.",
  'Made on {0}.': 'Établi le {0}.',
  'Not in the log of the package: {0}.': 'Pas dans le journal du paquet : {0}.',
  'The record is in the log of the package.|All # records are in the log of the package.': {
    one: 'Le relevé est dans le journal du paquet.',
    other: 'Les # relevés sont dans le journal du paquet.',
  },
  'entry {0} differs': "l'entrée {0} diffère",
  'entries {0} to {1} differ': 'les entrées {0} à {1} diffèrent',
  'TWO HISTORIES of one log: {0} and {1} cannot both be true, because {2}':
    "DEUX HISTORIQUES d'un même journal : {0} et {1} ne peuvent pas être vrais tous deux, car : {2}",
  'job {0} has two contents': "l'ordre {0} a deux contenus",
  'the log of {0} entries has two roots': 'le journal de {0} entrées a deux racines',
  'What it says of the log cannot be read: {0}.': "Ce qu'il dit du journal n'est pas lisible : {0}.",
  '{0} of {1} that the index names are there.': "{0} sur les {1} nommés par l'index sont là.",
  '{0} of {1} do not hold; {2}: {3}': '{0} sur {1} ne sont pas valables ; {2} : {3}',
  '{0} of {1} do not hold; {2}: {3}; also {4}': '{0} sur {1} ne sont pas valables ; {2} : {3} ; de même {4}',
  '{0} is of job {1}, not of the one that the index says.':
    "{0} est de l'ordre {1}, non de celui que dit l'index.",
  'each complete': 'chacun complet',
  '{0} of a job that was not completed or is void ({1})': "{0} d'un ordre non terminé ou annulé ({1})",
  'each authentic and judged again': 'chacun authentique et rejugé',
  'each authentic; {0} NOT judged again, because they were judged by rules that this version does not know':
    'chacun authentique ; {0} NON rejugés, parce que cette version ne connaît pas leurs règles',
  '{0} of {1} were not verified: a newer version of the program made them; {2}.':
    "{0} sur {1} n'ont pas été vérifiés : une version plus récente du programme les a établis ; {2}.",
  '{0}, {1}; {2}.': '{0}, {1} ; {2}.',
  'No two records contradict each other.': "Aucun relevé n'en contredit un autre.",
  '{0} records are signed by a key that is not trusted; {1}: {2}':
    '{0} relevés sont signés par une clé non fiable ; {1} : {2}',
  '{0} is not a checkpoint.': "{0} n'est pas un point de contrôle.",
  'and {0} more: see {1}': 'et {0} de plus : voir {1}',
  'There is no {0} in this folder, so that nobody is trusted: name with --trust the one that the station gave you.':
    "Il n'y a pas de {0} dans ce dossier, si bien que personne n'est fiable : donner avec --trust celui que le poste vous a remis.",
  'The trust list is {0} of the folder that you are in: yours only if you put it there. Another one: --trust.':
    'La liste de confiance est {0} du dossier où vous êtes : la vôtre seulement si c’est vous qui l’y avez mise. Une autre : --trust.',
  'The trust list {0} lies in a package and is no trust: name with --trust the one that the station gave you by another way.':
    "La liste de confiance {0} est dans un paquet et n'inspire aucune confiance : donner avec --trust celle que le poste vous a remise par une autre voie.",
  'there is no trust list here': "il n'y a pas de liste de confiance ici",
  'Check the path. Without --trust it is said what can be said without trusting anybody.':
    "Vérifier le chemin. Sans --trust, il est dit ce qui peut l'être sans se fier à personne.",
  'NOT proven by this:': 'NON prouvé par ceci :',
  'No pull was given to it.': 'Aucune traction ne lui a été attribuée.',
  '{0}: job {1}.': '{0} : ordre {1}.',
  'Window {0}; accepted {1}. Dashed: the limits.':
    'Plage prescrite {0} ; accepté {1}. En tirets : les limites.',
  'left right: cylinder  up down: pull  q: leave':
    'gauche droite : cylindre  haut bas : traction  q : quitter',
  '← → cylinder   ↑ ↓ pull   q leave': '← → cylindre   ↑ ↓ traction   q quitter',
  'pull {0}, {1}': 'traction {0}, {1}',
  'OUT OF ORDER: {0}': 'HORS ORDRE : {0}',
  'no plain file': 'pas un fichier ordinaire',
  'larger than any record': 'plus grand que tout relevé',
  'cannot be read': 'illisible',
  'no file in this folder ends in {0}': 'aucun fichier de ce dossier ne finit par {0}',
  'Name a folder that holds records.': 'Nommer un dossier qui contient des relevés.',
  'PUT IN QUESTION by what was learned later:': 'MIS EN CAUSE par ce qui a été appris plus tard :',
  'Compare the key above with the one that the station gave you by another way. If it is the same, copy {0} out of the package and name the copy with --trust.':
    "Comparer la clé ci-dessus à celle que le poste vous a donnée par une autre voie. Si c'est la même, copier {0} hors du paquet et donner la copie avec --trust.",
  'Not compared, because the record inside is not as it was sealed.':
    "Non comparé, car le relevé à l'intérieur n'est pas tel que scellé.",
  '{0}, the record inside': "{0}, le relevé à l'intérieur",
  'Do not rely on this paper.': 'Ne pas se fier à ce document.',
  'The pages are what the record inside gives.': "Les pages sont ce que donne le relevé à l'intérieur.",
  'The pages were NOT compared byte for byte, because another version drew them. The record inside is what counts.':
    "Les pages n'ont PAS été comparées octet par octet, car une autre version les a dessinées. C'est le relevé à l'intérieur qui compte.",
  'NOT the paper of the record inside. Do not rely on the pages. Make the paper anew from the record with "plugmark paper".':
    "Ce n'est PAS le document du relevé à l'intérieur. Ne pas se fier aux pages. Refaire le document à partir du relevé avec « plugmark paper ».",
  'this PDF is not as plugmark writes papers: another program wrote it, or wrote it again':
    "ce PDF n'est pas tel que plugmark écrit ses documents : un autre programme l'a écrit, ou réécrit",
  'no record is inside this paper': "il n'y a pas de relevé dans ce document",
  'Ask for the record (*.record.json), or save it out of the PDF with a PDF reader (attachments), and verify that.':
    "Demander le relevé (*.record.json), ou l'enregistrer depuis le PDF avec un lecteur PDF (pièces jointes), et vérifier celui-ci.",
  'a time stamp belongs to one record, and this is a package':
    'un horodatage appartient à un relevé, et ceci est un paquet',
  'Name the record in it, or leave --time out.': "Nommer le relevé qu'il contient, ou omettre --time.",
  'the index of the package is missing, so nothing can be held against the checkpoint that you kept':
    "l'index du paquet manque, si bien que rien ne peut être comparé au point de contrôle que vous avez gardé",
  'Check the path, or ask for the package again. Records that are no package are checked without --kept.':
    'Vérifier le chemin, ou redemander le paquet. Des relevés qui ne sont pas un paquet se vérifient sans --kept.',
  'The pages are what the record gives, byte for byte.':
    'Les pages sont, octet par octet, ce que donne le relevé.',
  'The file is not as plugmark writes papers: another program wrote it or wrote it again, and could show anything.':
    "Le fichier n'est pas tel que plugmark écrit ses documents : un autre programme l'a écrit ou réécrit, et il pourrait montrer n'importe quoi.",
  'Its words are those of the record, and something else of the file was changed.':
    'Ses mots sont ceux du relevé, et autre chose du fichier a été modifié.',
  'It says "{0}" where the record gives "{1}".': 'Il dit « {0} » là où le relevé donne « {1} ».',
  'another program drew it': "un autre programme l'a dessiné",
  '{0} drew it': "{0} l'a dessiné",
  '{0}: every word and figure is what the record gives; lines and shades were NOT compared.':
    "{0} : chaque mot et chaque valeur est ce que donne le relevé ; lignes et surfaces n'ont PAS été comparées.",
  '{0}, and it has figures that the record does not give: {1}.':
    '{0}, et il contient des valeurs que le relevé ne donne pas : {1}.',
  '{0}: it has other words, and every figure and verdict on it is one that the record gives; which of them is in which place, and what is drawn, was NOT compared.':
    "{0} : il a d'autres mots, et chaque valeur et verdict qu'il porte est donné par le relevé ; lequel est à quelle place, et ce qui est dessiné, n'a PAS été comparé.",
  '{0}. The records are what counts.': '{0}. Ce sont les relevés qui comptent.',
  'The pages of papers were NOT compared: nothing draws here. "plugmark verify" on the folder compares them. The records are what counts.':
    "Les pages des documents n'ont PAS été comparées : rien ne dessine ici. « plugmark verify » sur le dossier les compare. Ce sont les relevés qui comptent.",
  'What the records give: {0}.': 'Ce que donnent les relevés : {0}.',
  'Of another version, its words and figures compared and what is drawn NOT: {0}.':
    "D'une autre version, mots et valeurs comparés et le dessin NON : {0}.",
  'NOT held against the records: {0}.': 'NON comparé aux relevés : {0}.',
  'There are none.': "Il n'y en a pas.",
  '# paper|# papers': { one: '# document', other: '# documents' },
  '{0} is not what the records give: {1}': "{0} n'est pas ce que donnent les relevés : {1}",
  '{0} names another key, {1}': '{0} nomme une autre clé, {1}',
  '{0} is not what this version writes': "{0} n'est pas ce qu'écrit cette version",
  "{0} is not what the station's entries give": "{0} n'est pas ce que donnent les entrées du poste",
  '{0} does not say of job {1} what its record says': "{0} ne dit pas de l'ordre {1} ce que dit son relevé",
  '{0} has a row of no record here': '{0} a une ligne sans relevé ici',
  'You have given no trust list, so that nobody is trusted.':
    "Vous n'avez donné aucune liste de confiance, si bien que personne n'est fiable.",
  'Invalid input: expected {0}, received {1}': 'Entrée non valable : attendu {0}, reçu {1}',
  'Invalid input: expected {0}': 'Entrée non valable : attendu {0}',
  'Unrecognized key: {0}': 'Champ inconnu : {0}',
  'Too big: expected {0} to have {1} items': 'Trop grand : attendu {0} de {1} éléments',
  'Too big: expected {0} to have {1} characters': 'Trop long : attendu {0} de {1} caractères',
  'Too big: expected {0} to be {1}': 'Trop grand : attendu {0} {1}',
  'Too small: expected {0} to have {1} items': 'Trop petit : attendu {0} de {1} éléments',
  'Too small: expected {0} to have {1} characters': 'Trop court : attendu {0} de {1} caractères',
  'Too small: expected {0} to be {1}': 'Trop petit : attendu {0} {1}',
  'Invalid option: expected one of {0}': "Choix non valable : attendu l'un de {0}",
  'Invalid discriminator value. Expected {0}': 'Valeur de distinction non valable. Attendu {0}',
  'Invalid string: must match pattern {0}': 'Texte non valable : doit suivre le motif {0}',
  'Invalid {0}': 'Non valable : {0}',
  '{0} (and {1} more)': '{0} (et {1} de plus)',
  'expected at most {0} attempts': '{0} essais au plus sont attendus',
  'expected N.m for torque, m for length': 'attendu : N.m pour un couple, m pour une longueur',
  'only a torque tool sends an angle': 'seul un outil dynamométrique envoie un angle',
  'expected 32 bytes in base64': 'attendu : 32 octets en base64',
  'expected each appraiser once': 'attendu : chaque opérateur une fois',
  'expected each part once': 'attendu : chaque pièce une fois',
  'this is not a checkpoint: expected the lines origin, size and root, an empty line, and one that begins with a dash':
    "ce n'est pas un point de contrôle : attendu les lignes origine, taille et racine, une ligne vide, et une qui commence par un tiret",
  'Name the file that "plugmark log checkpoint" wrote, unchanged.':
    'Donner le fichier écrit par « plugmark log checkpoint », inchangé.',
  'this disclosure belongs to nothing in the content':
    "cette divulgation n'appartient à rien dans le contenu",
  '{0} are more than any file has': "{0}, c'est plus qu'aucun fichier n'en a",
  'this disclosure is there twice': 'cette divulgation y est deux fois',
  'longer than {0} characters': 'plus long que {0} caractères',
  'expected JSON in strict base64url': 'attendu : du JSON en base64url strict',
  'expected a list of three: salt, name, text': 'attendu : une liste de trois : sel, nom, texte',
  'expected a salt of at least 128 bits in base64url': "attendu : un sel d'au moins 128 bits en base64url",
  'expected the name "{0}"': 'attendu : le nom « {0} »',
  'expected text': 'attendu : du texte',
  'expected the canonical writing of the list': "attendu : l'écriture canonique de la liste",
  '"..." conceals an element of a list, which no record does':
    "« ... » cache un élément d'une liste, ce qu'aucun relevé ne fait",
  'expected "_sd" alone, with one digest of SHA-256 in base64url':
    'attendu : « _sd » seul, avec une empreinte SHA-256 en base64url',
  'this digest is there twice': 'cette empreinte y est deux fois',
  'Ask for the record again from the station that made it.': "Redemander le relevé au poste qui l'a établi.",
  'personal text has to be concealed here': 'un texte personnel doit être caché ici',
  'this may not be concealed': 'ceci ne doit pas être caché',
  'Ask for it again from the station that wrote it.': "Le redemander au poste qui l'a écrit.",
  'expected the number of a gauge study, like GS-1':
    "attendu : le numéro d'une étude de moyen de mesure, comme GS-1",
  "a point of small order or in another writing is nobody's key":
    "un point de petit ordre ou autrement écrit n'est la clé de personne",
  'expected an Ed25519 public key: 32 bytes in base64url':
    'attendu : une clé publique Ed25519 : 32 octets en base64url',
  'expected strict base64url': 'attendu : du base64url strict',
  'expected disclosures in the first signature alone':
    'les divulgations sont attendues dans la première signature seule',
  'Make it again with "plugmark log prove consistency".':
    'Le refaire avec « plugmark log prove consistency ».',
  'expected 128 bits in base64url': 'attendu : 128 bits en base64url',
  'expected job: and the number of the job': "attendu : job: et le numéro de l'ordre",
  'the file has control characters': 'le fichier a des caractères de commande',
  'it has more than {0} lines': 'il a plus de {0} lignes',
  'the line "quorum" is missing': 'la ligne « quorum » manque',
  'expected a line of log, witness, group or quorum': 'attendu : une ligne log, witness, group ou quorum',
  'expected: log, the verifier key of the log, and its address where it has one':
    "attendu : log, la clé de vérification du journal, et son adresse s'il en a une",
  'two logs have this key': 'deux journaux ont cette clé',
  'a witness has this key, and nobody is his own witness':
    "un témoin a cette clé, et nul n'est son propre témoin",
  'expected: witness, a name, its verifier key for cosignatures (Ed25519 or ML-DSA-44), and its address where it has one':
    "attendu : witness, un nom, sa clé de vérification des cosignatures (Ed25519 ou ML-DSA-44), et son adresse s'il en a une",
  'this name is taken': 'ce nom est pris',
  'two witnesses have this key': 'deux témoins ont cette clé',
  'a log has this key, and nobody is his own witness':
    "un journal a cette clé, et nul n'est son propre témoin",
  'expected: group, a name, how many of its members (or any, or all), and its members':
    'attendu : group, un nom, combien de ses membres (ou any, ou all), et ses membres',
  'a member is defined by no line before': "un membre n'est défini par aucune ligne précédente",
  'a member is in a group already': 'un membre est déjà dans un groupe',
  'expected: quorum, and the name of a witness or a group, or none':
    "attendu : quorum, et le nom d'un témoin ou d'un groupe, ou none",
  'there is a second line "quorum"': 'il y a une seconde ligne « quorum »',
  'the quorum is defined by no line before': "le quorum n'est défini par aucune ligne précédente",
  'Compare it with "plugmark manual witnesses".': 'La comparer à « plugmark manual witnesses ».',
  'expected one station': 'attendu : un poste',
  'the file does not end as a record does': 'le fichier ne se termine pas comme un relevé',
  'expected a domain in small letters, like shop.example':
    'attendu : un domaine en minuscules, comme shop.example',
  'this is not valid UTF-8 text': "ce n'est pas du texte UTF-8 valable",
  'the content is not canonical JSON': "le contenu n'est pas du JSON canonique",
  'Ask for the file again from where it came, or correct it at that place.':
    "Redemander le fichier à qui l'a envoyé, ou le corriger à cet endroit.",
  'a byte order mark stands before the JSON': "une marque d'ordre des octets précède le JSON",
  'something follows the end of the JSON': 'quelque chose suit la fin du JSON',
  'expected a comma or the end of the object': "attendu : une virgule ou la fin de l'objet",
  'expected a name in double quotes': 'attendu : un nom entre guillemets doubles',
  'the name __proto__ is not accepted': "le nom __proto__ n'est pas accepté",
  'the name {0} stands twice in one object': 'le nom {0} est deux fois dans un objet',
  'expected a colon': 'attendu : deux-points',
  'expected a comma or the end of the array': 'attendu : une virgule ou la fin de la liste',
  'the text ends inside a string': 'le texte se termine dans une chaîne',
  'a control character stands in a string': 'un caractère de commande est dans une chaîne',
  'half a surrogate pair stands in a string': 'une moitié de paire de substitution est dans une chaîne',
  'an escape in a string is not one of JSON': "un échappement dans une chaîne n'est pas du JSON",
  'expected a JSON value': 'attendu : une valeur JSON',
  'a number is too large or too long to be held exactly':
    'un nombre est trop grand ou trop long pour être tenu exactement',
  'the number {0} would be read as {1}': 'le nombre {0} serait lu {1}',
  'nested deeper than {0} levels': 'imbriqué à plus de {0} niveaux',
  'Put in the public keys as "keys" of a JSON Web Key set, each with its thumbprint as "kid".':
    "Mettre les clés publiques comme « keys » d'un ensemble JSON Web Key, chacune avec son empreinte comme « kid ».",
  'expected the RFC 7638 thumbprint of the key': "attendu : l'empreinte de la clé selon RFC 7638",
  'a key stands twice': 'une clé y est deux fois',
  'expected base64': 'attendu : du base64',
  'expected whole bytes in small hexadecimal digits':
    'attendu : des octets entiers en chiffres hexadécimaux minuscules',
  '{0} stands in the list of files, and can have no digest there':
    "{0} est dans la liste des fichiers, et ne peut pas y avoir d'empreinte",
  'the file {0} stands twice in the list of files': 'le fichier {0} est deux fois dans la liste des fichiers',
  'job {0} names {1}, which is not in the list of files':
    "l'ordre {0} nomme {1}, qui n'est pas dans la liste des fichiers",
  'two jobs name the file {0}': 'deux ordres nomment le fichier {0}',
  'no job names the file {0}': 'aucun ordre ne nomme le fichier {0}',
  "expected the station's own entries alone": 'attendu : les entrées propres du poste seules',
  'expected the verifier key of a witness, as "plugmark witness init" writes it':
    "attendu : la clé de vérification d'un témoin, telle que « plugmark witness init » l'écrit",
  'the station was set up twice': 'le poste a été installé deux fois',
  'the station was never set up': "le poste n'a jamais été installé",
  'a reading of {0} came before its link': 'une mesure de {0} est venue avant sa liaison',
  'this policy lies in a package, and nobody says in his own package whom to trust':
    'cette politique est dans un paquet, et personne ne dit dans son propre paquet à qui se fier',
  'Name with --policy one of your own.': 'Nommer avec --policy une politique à vous.',
};
