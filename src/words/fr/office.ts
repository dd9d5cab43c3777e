/** French for the commands of the office. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  'the station file has no tool "{0}"': 'le fichier de poste n\'a pas d\'outil "{0}"',
  'Add it first, or name one of: {0}.': "L'ajouter d'abord, ou nommer un de ceux-ci : {0}.",
  'the device at {0} uses a changing address and was not heard again':
    "l'appareil à {0} change d'adresse et n'a plus été entendu",
  'Switch off the privacy setting of the tool. This station cannot resolve such addresses.':
    "Désactiver la protection de la vie privée de l'outil. Ce poste ne peut pas résoudre de telles adresses.",
  'the device at {0} gives no serial number before pairing, so this station cannot tell it from another one':
    "l'appareil à {0} ne donne pas de numéro de série avant l'appairage, ce poste ne peut donc pas le distinguer d'un autre",
  'Use a tool that gives a serial number in its Device Information.':
    'Prendre un outil qui donne un numéro de série dans ses informations (Device Information).',
  'the device at {0} has serial number {1}, but the station file says {2} for {3}':
    "l'appareil à {0} a le numéro de série {1}, mais le fichier de poste indique {2} pour {3}",
  'Adopt the right one, or correct the instrument with the data of its certificate.':
    "Adopter le bon, ou corriger l'instrument d'après les données de son certificat.",
  'serial number {0} is adopted at {1} but answers from {2}':
    'le numéro de série {0} est adopté à {1} mais répond depuis {2}',
  'Check which of the two is the tool. If it has a new radio, delete "address" of {0} in the station file.':
    'Vérifier lequel des deux est l\'outil. S\'il a une nouvelle radio, effacer "address" de {0} dans le fichier de poste.',
  'serial number {0} at {1} is {2} of this station already':
    'le numéro de série {0} à {1} est déjà {2} de ce poste',
  'Choose another device.': 'Choisir un autre appareil.',
  'the device has the name "{0}", like the tool {1}': 'l\'appareil a le nom "{0}", comme l\'outil {1}',
  'Rename one of the two in its own settings.': "Renommer l'un des deux dans ses propres réglages.",
  'station file': 'fichier de poste',
  'it does not understand the request': 'il ne comprend pas la demande',
  'it does not have the key that signs this log now; give it the new one: plugmark log vkey':
    "il n'a pas la clé qui signe ce journal maintenant ; lui donner la nouvelle : plugmark log vkey",
  'it does not know this log; give it the key of the log: plugmark log vkey':
    'il ne connaît pas ce journal ; lui donner la clé du journal : plugmark log vkey',
  'the request is too large for it': 'la demande est trop grande pour lui',
  'IT HAS ANOTHER HISTORY OF THIS LOG. Run "plugmark log check"':
    'IL A UNE AUTRE HISTOIRE DE CE JOURNAL. Lancer "plugmark log check"',
  'it has had too many requests for now': "il a eu trop de demandes pour l'instant",
  'it answered {0}': 'la réponse était {0}',
  'its answer cannot be understood': 'sa réponse ne peut pas être comprise',
  'it answers with another size each time': 'il répond chaque fois avec une autre longueur',
  'its answer has no cosignature by a key that the station file names':
    "sa réponse n'a pas de cosignature par une clé que nomme le fichier de poste",
  'it did not answer in time': "la réponse n'est pas venue à temps",
  'it cannot be reached{0}': 'injoignable{0}',
  'pages copied': 'pages copiées',
  'entries checked': 'entrées vérifiées',
  'Backed up to {0} and checked: {1}.': 'Sauvegardé dans {0} et vérifié : {1}.',
  'The backup contains the log only. Copy the folder keys and the certificates too; keep the keys private.':
    'La sauvegarde ne contient que le journal. Copier aussi le dossier keys et les certificats ; garder les clés de signature secrètes.',
  'expected either a backup or --from-archive URL': 'attendu : soit une sauvegarde, soit --from-archive URL',
  'Name the file of the backup, or the archive that the station shipped to.':
    "Nommer le fichier de la sauvegarde, ou l'archive à laquelle le poste a envoyé.",
  'the archive at {0}': "l'archive à {0}",
  'What the station wrote after its last shipping is not in the archive.':
    "Ce que le poste a écrit après son dernier envoi n'est pas dans l'archive.",
  'Checked and restored from {0}: {1}.': 'Vérifié et restauré depuis {0} : {1}.',
  'The old log is kept as {0}.': "L'ancien journal est gardé sous {0}.",
  'If work went on after this backup, later checkpoints and records show the missing end: run "plugmark log check". The station signs nothing then before you fill it in, or say that it is lost: plugmark log lost --because "..."':
    'Si le travail a continué après cette sauvegarde, des points de contrôle et relevés plus récents montrent la fin manquante : lancer "plugmark log check". Le poste ne signe alors rien avant qu\'elle soit complétée ou déclarée perdue : plugmark log lost --because "..."',
  'Restore anyway?': 'Restaurer quand même ?',
  'Use --set-aside to keep them in a file beside the log and restore the backup.':
    'Avec --set-aside elles vont dans un fichier à côté du journal, et la sauvegarde est restaurée.',
  'nothing was restored: {0}': "rien n'a été restauré : {0}",
  'Save them first with "plugmark recover". {0}': 'Les sauver d\'abord avec "plugmark recover". {0}',
  '# entry|# entries': { one: '# entrée', other: '# entrées' },
  '# more job|# more jobs': { one: '# autre ordre', other: '# autres ordres' },
  '{0} of the station itself': '{0} du poste lui-même',
  'the log and the backup took two courses behind entry {0}: {1} of the log ({2}), where the backup has {3} of its own, are set aside':
    "le journal et la sauvegarde se séparent après l'entrée {0} : {1} du journal ({2}), là où la sauvegarde en a {3} à elle, mis de côté",
  'the log and the backup took two courses behind entry {0}: {1} of the log ({2}), where the backup has {3} of its own, would be set aside':
    "le journal et la sauvegarde se séparent après l'entrée {0} : {1} du journal ({2}), là où la sauvegarde en a {3} à elle, seraient mises de côté",
  'the log that is there is another one of this station, begun anew: its {0} ({1}) are set aside':
    'le journal présent est un autre de ce poste, recommencé : ses {0} ({1}) sont mises de côté',
  'the log that is there is another one of this station, begun anew: its {0} ({1}) would be set aside':
    'le journal présent est un autre de ce poste, recommencé : ses {0} ({1}) seraient mises de côté',
  'the log that is there is damaged, and {0} newer than the backup can still be read in it: {1}; they are set aside':
    "le journal présent est endommagé, et {0} plus récentes que la sauvegarde s'y lisent encore : {1} ; elles sont mises de côté",
  'the log that is there is damaged, and {0} newer than the backup can still be read in it: {1}; they would be set aside':
    "le journal présent est endommagé, et {0} plus récentes que la sauvegarde s'y lisent encore : {1} ; elles seraient mises de côté",
  '{0} newer than the backup ({1}) are set aside':
    '{0} plus récentes que la sauvegarde ({1}) sont mises de côté',
  '{0} newer than the backup ({1}) would be set aside':
    '{0} plus récentes que la sauvegarde ({1}) seraient mises de côté',
  opened: 'ouvert',
  closed: 'clos',
  void: 'annulé',
  'went on': 'a continué',
  'It is the log of the station "{0}" ({1}). Is it yours?':
    'C\'est le journal du poste "{0}" ({1}). Est-ce le vôtre ?',
  '{0} entries, {1} jobs': '{0} entrées, {1} ordres',
  '{0} entries, {1} jobs, the last entry {2}': '{0} entrées, {1} ordres, dernière entrée {2}',
  'No measuring tool heard. Switch it on, or list every device with --all.':
    "Aucun outil de mesure entendu. L'allumer, ou lister tous les appareils avec --all.",
  address: 'adresse',
  signal: 'signal',
  kind: 'type',
  name: 'nom',
  'serial number': 'numéro de série',
  unknown: 'inconnu',
  '(no name)': '(sans nom)',
  'not read: {0}': 'non lu : {0}',
  '(none)': '(aucun)',
  'Adopted as {0}: {1} at {2} ({3}).': 'Adopté comme {0} : {1} à {2} ({3}).',
  'The link is encrypted but not authenticated (Just Works). The key is not kept.':
    "La liaison est chiffrée mais pas authentifiée (Just Works). La clé n'est pas gardée.",
  'The link is not encrypted and not authenticated. Every record states this.':
    "La liaison n'est ni chiffrée ni authentifiée. Chaque relevé l'indique.",
  '{0} packets of {1} are in {2}.': '{0} paquets de {1} sont dans {2}.',
  'listening to {0} of service {1}': "à l'écoute de {0} du service {1}",
  ok: 'bon',
  FAIL: 'DÉFAUT',
  'Everything is ready.': 'Tout est prêt.',
  'Fix {0} of these first.': "Corriger d'abord {0} de ces points.",
  'no {0} in this folder': 'pas de {0} dans ce dossier',
  'Write one with "plugmark setup", or name one with --station.':
    'En écrire un avec "plugmark setup", ou en nommer un avec --station.',
  '{0}; tools: {1}': '{0} ; outils : {1}',
  'Passed. It withstands bad bytes; whether its figures are right, only the display of the tool shows.':
    "Réussi. Il supporte de mauvais octets ; si ses valeurs sont justes, seul l'affichage de l'outil le montre.",
  'Not passed: {0} of {1} checks failed.': 'Non réussi : {0} contrôles sur {1} ont échoué.',
  '{0}: valid.': '{0} : valide.',
  notified: 'notifiées',
  read: 'lues',
  'asked for': 'demandées',
  sent: 'envoyées',
  ' every {0} ms': ' toutes les {0} ms',
  '  no value because {0}': '  pas de valeur parce que {0}',
  ', {0} ms before the frame came': ', {0} ms avant la trame',
  '  sample {0} {1}{2}{3}': '  échantillon {0} {1}{2}{3}',
  '{0} {1} ({2} counts)': '{0} {1} ({2} pas)',
  '"{0}" is not bytes in hexadecimal': '"{0}" n\'est pas une suite d\'octets en hexadécimal',
  'Give two digits a byte, for example --bytes "a5 01 00 00".':
    'Donner deux chiffres par octet, par exemple --bytes "a5 01 00 00".',
  'the station': 'le poste',
  '{0} and {1} more': '{0} et {1} autres',
  '  and {0} more': '  et {0} autres',
  'To be deleted: {0}.': 'À supprimer : {0}.',
  '  in {0}: {1}': '  dans {0} : {1}',
  "  in the station's own entries: {0}": '  dans les entrées propres du poste : {0}',
  'These free texts contain it and are deleted whole:':
    'Ces textes libres le contiennent et sont supprimés en entier :',
  '{0}: whoever was given the record or a paper still has it ({1}).':
    "{0} : qui a reçu le relevé ou un document l'a encore ({1}).",
  '# of these jobs was closed or declared void|# of these jobs were closed or declared void': {
    one: '# de ces ordres a été clos ou déclaré nul',
    other: '# de ces ordres ont été clos ou déclarés nuls',
  },
  'Backups, and files in other places, hold it until you delete them. A backup that is restored brings it back.':
    "Les sauvegardes et les fichiers ailleurs le contiennent jusqu'à ce que vous les supprimiez. Une sauvegarde restaurée le ramène.",
  '# signed entry|# signed entries': { one: '# entrée signée', other: '# entrées signées' },
  'It also stands in {0} ({1}), as in a job number or a description: there it cannot be deleted.':
    "Il figure aussi dans {0} ({1}), comme dans un numéro d'ordre ou une description : là il ne peut pas être supprimé.",
  'These files of the station hold it, or may, and are left as they are:':
    'Ces fichiers du poste le contiennent, ou peut-être, et restent tels quels :',
  'Held, and deleted all the same: {0}.': 'À conserver, et supprimé quand même : {0}.',
  'Nothing was deleted.': "Rien n'a été supprimé.",
  'Deleted: {0}. The log says where they were, and not what they said.':
    "Supprimé : {0}. Le journal indique où ils étaient, et non ce qu'ils contenaient.",
  'the log has no such text': "le journal n'a pas de tel texte",
  'Look with "plugmark ask".': 'Regarder avec "plugmark ask".',
  'NOT finished: another program has the log open, and old pages of the file may still hold the texts. Close it, then run the same command again.':
    "PAS terminé : un autre programme a le journal ouvert, et d'anciennes pages du fichier peuvent encore contenir les textes. Le fermer, puis relancer la même commande.",
  'NOT finished: old pages of the file may still hold the texts, and the disk has no room to write it anew. Free as much as the log takes, then run the same command again.':
    "PAS terminé : d'anciennes pages du fichier peuvent encore contenir les textes, et le disque n'a pas la place de le réécrire. Libérer autant que prend le journal, puis relancer la même commande.",
  'expected one of --plate, --vin, --fleet, --customer and --person':
    'attendu : un parmi --plate, --vin, --fleet, --customer et --person',
  'Name one text at a time.': 'Nommer un texte à la fois.',
  '--although-held needs --by NAME and --because TEXT': '--although-held demande --by NAME et --because TEXT',
  'Give both.': 'Donner les deux.',
  '{0} contains the text that is to be forgotten': '{0} contient le texte à oublier',
  'The log keeps who decided and why. Say it without that text.':
    'Le journal garde qui a décidé et pourquoi. Le dire sans ce texte.',
  'The retention time of the shop is not known here: it is in the station file (--station FILE).':
    "La durée de conservation de l'atelier n'est pas connue ici : elle est dans le fichier de poste (--station FILE).",
  '; and {0} more': '; et {0} autres',
  '{0} ({1}{2})': '{0} ({1}{2})',
  '# of these jobs is held|# of these jobs are held': {
    one: '# de ces ordres est à conserver',
    other: '# de ces ordres sont à conserver',
  },
  'Nothing was deleted. Wait, or answer for it: --although-held --by NAME --because TEXT.':
    "Rien n'a été supprimé. Attendre, ou en répondre : --although-held --by NAME --because TEXT.",
  'another program wrote such a text meanwhile, or deleted one':
    'un autre programme a écrit ou supprimé un tel texte entre-temps',
  'Nothing was deleted. Close the other program, then try again.':
    "Rien n'a été supprimé. Fermer l'autre programme, puis réessayer.",
  'Delete these texts for good?': 'Supprimer ces textes pour de bon ?',
  'this is not a date': "ce n'est pas une date",
  'Write it as 2026-03-02.': "L'écrire comme 2026-03-02.",
  'No job matches.': 'Aucun ordre ne correspond.',
  state: 'état',
  'opened (UTC)': 'ouvert (UTC)',
  impact: 'impact',
  '# session|# sessions': { one: '# séance', other: '# séances' },
  'opened {0}, last entry {1} (UTC); {2}, {3}': 'ouvert {0}, dernière entrée {1} (UTC) ; {2}, {3}',
  'handed over {0} from {1} to {2}': 'remis {0} de {1} à {2}',
  'note: {0}': 'remarque : {0}',
  'question about pull {0}: {1}': 'question sur la traction {0} : {1}',
  'As it was judged then:': 'Tel que jugé alors :',
  '{0} already declared job {1} void': "{0} a déjà déclaré nul l'ordre {1}",
  'There is nothing to do.': "Il n'y a rien à faire.",
  'Job {0} is VOID. Its readings stay in the log and prove nothing.':
    "L'ordre {0} est ANNULÉ. Ses valeurs restent dans le journal et ne prouvent rien.",
  'Records sealed before do not show this. Write the papers again and recall the old ones.':
    'Les relevés scellés auparavant ne le montrent pas. Réécrire les documents et rappeler les anciens.',
  'Write papers that show it: plugmark jobs papers {0}':
    'Écrire des documents qui le montrent : plugmark jobs papers {0}',
  'job {0} is closed': "l'ordre {0} est clos",
  'Only an open job can be handed over.': 'Seul un ordre ouvert peut être remis.',
  '{0} already works on job {1}': "{0} travaille déjà sur l'ordre {1}",
  'Name another person.': 'Nommer une autre personne.',
  "Job {0} is now {1}'s. Go on with: plugmark job --resume {2}\n":
    "L'ordre {0} est maintenant à {1}. Continuer avec : plugmark job --resume {2}\n",
  'job {0} is not closed': "l'ordre {0} n'est pas clos",
  'Finish it with "plugmark job --resume", or declare it void with "plugmark jobs void".':
    'Le terminer avec "plugmark job --resume", ou le déclarer nul avec "plugmark jobs void".',
  'this record is countersigned and is never overwritten': "ce relevé est contresigné et n'est jamais écrasé",
  'Name another folder with --out.': 'Nommer un autre dossier avec --out.',
  'this station has no job {0}': "ce poste n'a pas d'ordre {0}",
  'List them with "plugmark jobs".': 'Les lister avec "plugmark jobs".',
  'Compare it with {0}.': 'Le comparer avec {0}.',
  signs: 'signe',
  'until {0}': "jusqu'à {0}",
  'sign with their own keys': 'signent avec leurs propres clés',
  'do not sign (decided by the shop)': "ne signent pas (décidé par l'atelier)",
  'not decided; those with a key sign': 'non décidé ; ceux qui ont une clé signent',
  'technicians: {0}': 'techniciens : {0}',
  'trust list: {0}': 'liste de confiance : {0}',
  'no key': 'pas de clé',
  'an earlier key': 'une clé antérieure',
  'REVOKED from {0} ({1})': 'RÉVOQUÉE dès {0} ({1})',
  '"{0}" is not a reason': '"{0}" n\'est pas un motif',
  'Give retired, lost or compromised.': 'Donner retired, lost ou compromised.',
  'the log has no key {0}': "le journal n'a pas de clé {0}",
  'See "plugmark keys list".': 'Voir "plugmark keys list".',
  '{0}, choose a PIN of at least {1} characters: ': "{0}, choisir un PIN d'au moins {1} caractères : ",
  'a PIN needs at least {0} characters': 'un PIN demande au moins {0} caractères',
  'Type one, or put it into {0}.': 'Le taper, ou le mettre dans {0}.',
  '{0} signs with {1}.\n': '{0} signe avec {1}.\n',
  '"{0}" is not a decision': '"{0}" n\'est pas une décision',
  'Say sign or do-not-sign.': 'Dire sign ou do-not-sign.',
  'The key of the station is in a device, under its PIN.':
    'La clé du poste est dans un appareil, sous son PIN.',
  'Passphrase until now of {0}: ': 'Phrase secrète actuelle de {0} : ',
  'New passphrase: ': 'Nouvelle phrase secrète : ',
  'no passphrase was given': "aucune phrase secrète n'a été donnée",
  'Passphrase for the new key (Enter: none): ': 'Phrase secrète pour la nouvelle clé (Enter : aucune) : ',
  'DIVERGED at entry {0}: {1}.\n': "DIVERGENCE à l'entrée {0} : {1}.\n",
  'All {0} entries are as they were written, and the hash tree over them is whole.\n':
    "Les {0} entrées sont telles qu'elles ont été écrites, et l'arbre de hachage au-dessus est intact.\n",
  'a checkpoint of the station': 'un point de contrôle du poste',
  'LOST: the log states that it went on without entries that # checkpoint stands for.|LOST: the log states that it went on without entries that # checkpoints stand for.':
    {
      one: "PERDU : le journal indique qu'il a continué sans des entrées dont répond # point de contrôle.",
      other:
        "PERDU : le journal indique qu'il a continué sans des entrées dont répondent # points de contrôle.",
    },
  'the log goes on from every checkpoint that is here':
    'le journal prolonge chaque point de contrôle présent',
  'There is nothing to state. Look with "plugmark log check".':
    'Il n\'y a rien à déclarer. Regarder avec "plugmark log check".',
  'Stated in the log: it had {0} entries once, and went on without some of them. Every later record says so.':
    "Déclaré dans le journal : il a eu {0} entrées, et a continué sans certaines. Chaque relevé ultérieur l'indique.",
  'An auditor who kept a checkpoint of the lost entries will find that the log does not go on from it.':
    'Un auditeur qui a gardé un point de contrôle des entrées perdues constatera que le journal ne le prolonge pas.',
  '{0} of the lost entries, and good as long as the key is not changed: no proof from the log can be made for them later. Stamp each of them before: plugmark time-stamp RECORD':
    "{0} des entrées perdues, et valable tant que la clé n'est pas changée : aucune preuve ne pourra en être tirée du journal plus tard. Horodater chacun avant : plugmark time-stamp RECORD",
  'The key that this log names is not here, so that nothing was signed. Make a new one: plugmark keys rotate --lost':
    "La clé que nomme ce journal n'est pas ici, donc rien n'a été signé. En faire une nouvelle : plugmark keys rotate --lost",
  '# record here is|# records here are': { one: '# relevé ici provient', other: '# relevés ici proviennent' },
  'Every personal text is there, or was deleted with "plugmark forget".':
    'Chaque texte personnel est là, ou a été supprimé avec "plugmark forget".',
  '  entry {0}: a text ({1}) is MISSING. It was deleted, and not with "plugmark forget".':
    '  entrée {0} : un texte ({1}) MANQUE. Il a été supprimé, et pas avec "plugmark forget".',
  '  entry {0}: a text ({1}) that was forgotten is BACK.':
    '  entrée {0} : un texte ({1}) qui était oublié est REVENU.',
  '  entry {0}: a text that does NOT belong to this entry.':
    "  entrée {0} : un texte qui n'appartient PAS à cette entrée.",
  'Every verdict and every proof holds, but personal texts beside the entries are not as the log says:':
    'Chaque verdict et chaque preuve tient, mais des textes personnels à côté des entrées ne sont pas tels que le dit le journal :',
  'Checkpoint of {0} entries: nothing before it was removed or changed.':
    "Point de contrôle de {0} entrées : rien n'a été retiré ni changé avant lui.",
  'Checkpoint of {0} entries: NOT from this log. It is from another station, or the log was started again.':
    "Point de contrôle de {0} entrées : PAS de ce journal. Il vient d'un autre poste, ou le journal a été recommencé.",
  'Checkpoint of {0} entries: NOT signed by a key of this station.':
    'Point de contrôle de {0} entrées : PAS signé par une clé de ce poste.',
  'Checkpoint of {0} entries: DIVERGED. Entries {1} to {2} are missing. The end of the log was cut off, or an old copy was put back.':
    'Point de contrôle de {0} entrées : DIVERGENCE. Les entrées {1} à {2} manquent. La fin du journal a été coupée, ou une ancienne copie a été remise.',
  'Checkpoint of {0} entries: DIVERGED. Between entry {1} and entry {2} something was changed, removed or added.':
    "Point de contrôle de {0} entrées : DIVERGENCE. Entre l'entrée {1} et l'entrée {2} quelque chose a été changé, retiré ou ajouté.",
  checkpoint: 'point de contrôle',
  'the station file names no witness': 'le fichier de poste ne nomme aucun témoin',
  'Add "witnesses" to it: "plugmark manual witnesses" shows how.':
    'Y ajouter "witnesses" : "plugmark manual witnesses" montre comment.',
  'Nothing is signed yet, so there is nothing to send.':
    "Rien n'est encore signé, donc il n'y a rien à envoyer.",
  'the log': 'le journal',
  'nothing was sent: the log is not the one that the station signed':
    "rien n'a été envoyé : le journal n'est pas celui que le poste a signé",
  'Run "plugmark log check".': 'Lancer "plugmark log check".',
  '{0}: cosigned on {1}, {2} entries': '{0} : cosigné le {1}, {2} entrées',
  '{0}: HAS A LONGER LOG of this station, {1} entries; this one is signed up to {2}. Its end was cut off, or an old copy was put back. Run "plugmark log check"':
    '{0} : A UN JOURNAL PLUS LONG de ce poste, {1} entrées ; celui-ci est signé jusqu\'à {2}. Sa fin a été coupée, ou une ancienne copie a été remise. Lancer "plugmark log check"',
  '{0}: not cosigned; {1}': '{0} : pas cosigné ; {1}',
  '{0}: not cosigned; {1}. What is missing is sent the next time':
    '{0} : pas cosigné ; {1}. Ce qui manque sera envoyé la prochaine fois',
  '{0} already is this checkpoint. Nothing written.': "{0} est déjà ce point de contrôle. Rien d'écrit.",
  'Checkpoint of {0} entries written to {1}. Keep it in another place.':
    'Point de contrôle de {0} entrées écrit dans {1}. Le garder ailleurs.',
  'the file exists; a checkpoint never overwrites a file':
    "le fichier existe ; un point de contrôle n'écrase jamais un fichier",
  'Name a new file. Keep the old checkpoint: it still proves the log of its time.':
    "Nommer un nouveau fichier. Garder l'ancien point de contrôle : il prouve encore le journal de son temps.",
  'the log has entries 1 to {0}': 'le journal a les entrées 1 à {0}',
  'Name one of these.': 'En nommer une.',
  'this is not a PNG picture of at most 4 million pixels':
    "ce n'est pas une image PNG d'au plus 4 millions de pixels",
  'Save the logo as PNG, or leave "logo" out of the station file.':
    'Enregistrer le logo en PNG, ou enlever "logo" du fichier de poste.',
  'The station wrote this file and somebody changed it. Run "plugmark log check"; put the file back from your copy.':
    'Le poste a écrit ce fichier et quelqu\'un l\'a changé. Lancer "plugmark log check" ; remettre le fichier depuis votre copie.',
  'it is a checkpoint of another log': "c'est un point de contrôle d'un autre journal",
  'it is a checkpoint that no key of this station signed':
    "c'est un point de contrôle qu'aucune clé de ce poste n'a signé",
  'the station signed a log of {0} entries before, and this one is shorter: its end was cut off, or an old copy was put back':
    'le poste a déjà signé un journal de {0} entrées, et celui-ci est plus court : sa fin a été coupée, ou une ancienne copie a été remise',
  'the station signed a log of {0} entries before, and this one has other entries: something was changed, removed or added':
    "le poste a déjà signé un journal de {0} entrées, et celui-ci a d'autres entrées : quelque chose a été changé, retiré ou ajouté",
  'nothing was signed: {0}': "rien n'a été signé : {0}",
  'Run "plugmark log check". Restore a backup that has all entries, or fill them in with "plugmark recover --records". Where they are gone for good, say so: plugmark log lost --because "..."':
    'Lancer "plugmark log check". Restaurer une sauvegarde qui a toutes les entrées, ou les compléter avec "plugmark recover --records". Si elles sont perdues pour de bon, le dire : plugmark log lost --because "..."',
  'pages read': 'pages lues',
  'entries written': 'entrées écrites',
  'Left out: {0}: {1}': 'Laissé de côté : {0} : {1}',
  'No log here: rebuilt from records only.': 'Pas de journal ici : reconstruit à partir des seuls relevés.',
  'LOSSES, and NOT AS IT WAS SIGNED': 'PERTES, et PAS TEL QUE SIGNÉ',
  'NOT AS IT WAS SIGNED': 'PAS TEL QUE SIGNÉ',
  LOSSES: 'PERTES',
  'Saved everything in the records': 'Tout ce qui est dans les relevés est sauvé',
  'Saved everything that was found': 'Tout ce qui a été trouvé est sauvé',
  'Left out: {0}: not shown to belong to this log.':
    "Laissé de côté : {0} : rien ne montre qu'il appartient à ce journal.",
  '{0}: {1} entries are in {2}, from the first on without a gap.':
    '{0} : {1} entrées sont dans {2}, sans lacune depuis la première.',
  '{0}: {1} entries are in {2}, from the first on without a gap, {3} of them from records.':
    '{0} : {1} entrées sont dans {2}, sans lacune depuis la première, dont {3} venues de relevés.',
  'LOST: entry {0}.': 'PERDU : entrée {0}.',
  'LOST: entries {0} to {1}.': 'PERDU : entrées {0} à {1}.',
  '{0} readable entries after the first gap cannot be part of the log; they are in {1}.':
    '{0} entrées lisibles après la première lacune ne peuvent pas faire partie du journal ; elles sont dans {1}.',
  'Incomplete jobs: {0} and {1} more.': 'Ordres incomplets : {0} et {1} autres.',
  'Incomplete jobs: {0}.': 'Ordres incomplets : {0}.',
  'No checkpoint found: entries at the very end may be missing without a trace.':
    'Aucun point de contrôle trouvé : des entrées peuvent manquer tout à la fin sans laisser de trace.',
  'Entries were changed, removed or added. Keep the damaged file and find the cause first.':
    "Des entrées ont été changées, retirées ou ajoutées. Garder le fichier endommagé et chercher d'abord la cause.",
  'Not in any record: jobs that were never closed, changes after a record, and the length of the log.':
    'Dans aucun relevé : les ordres jamais clos, les changements après un relevé, et la longueur du journal.',
  'Put it in place: plugmark restore {0}{1}': 'Le mettre en place : plugmark restore {0}{1}',
  'Checkpoint of {0} entries: the saved log agrees with it.':
    'Point de contrôle de {0} entrées : le journal sauvé lui correspond.',
  'Checkpoint of {0} entries: entries {1} to {2} are missing.':
    'Point de contrôle de {0} entrées : les entrées {1} à {2} manquent.',
  'Checkpoint of {0} entries: DIVERGED between entry {1} and entry {2}.':
    "Point de contrôle de {0} entrées : DIVERGENCE entre l'entrée {1} et l'entrée {2}.",
  'Checkpoint of {0} entries: of another log.': "Point de contrôle de {0} entrées : d'un autre journal.",
  'Checkpoint of {0} entries: not signed by a key of this station.':
    'Point de contrôle de {0} entrées : pas signé par une clé de ce poste.',
  'records read': 'relevés lus',
  record: 'relevé',
  'not readable as a record.': 'illisible comme relevé.',
  'this folder cannot be read': 'ce dossier ne peut pas être lu',
  'Name the folder that holds the exported records.': 'Nommer le dossier qui contient les relevés exportés.',
  'the retention time is not set (1 to 100 years)': "la durée de conservation n'est pas fixée (1 à 100 ans)",
  'Ask what law and contracts require. Then set it: --years 7, or "retention" in the station file.':
    'Demander ce qu\'exigent la loi et les contrats. Puis la fixer : --years 7, ou "retention" dans le fichier de poste.',
  'last entry in': 'dernière entrée',
  jobs: 'ordres',
  'must be kept': 'à conserver',
  held: 'retenu',
  'may go': 'peut partir',
  'Retention of {0} from the last entry of a job on{1}, as of {2}.':
    "Conservation : {0} à partir de la dernière entrée d'un ordre{1}, au {2}.",
  '# year|# years': { one: '# an', other: '# ans' },
  'There are no jobs.': "Il n'y a pas d'ordres.",
  'The oldest is of {0}.': 'Le plus ancien est du {0}.',
  'The next time runs out on {0}.': 'La prochaine échéance est le {0}.',
  '  held: {0}, {1}': '  retenu : {0}, {1}',
  '  and {0} more are held': '  et {0} autres sont retenus',
  'Nothing was deleted. No entry can be taken out of the log: it is one chain of proof. You may delete papers and exported records.':
    "Rien n'a été supprimé. Aucune entrée ne peut être retirée du journal : c'est une seule chaîne de preuves. Vous pouvez supprimer documents et relevés exportés.",
  'Passphrase for the new key: ': 'Phrase secrète pour la nouvelle clé : ',
  'The station signs with {0} from now on.': 'Le poste signe désormais avec {0}.',
  'The old key is still in its device, where nothing here can destroy it: delete it there.':
    "L'ancienne clé est encore dans son appareil, où rien ici ne peut la détruire : l'y effacer.",
  'The old key was destroyed. Destroy your copies of it too.':
    "L'ancienne clé a été détruite. Détruire aussi vos copies.",
  'The old key is kept, under its passphrase; nobody needs it any more.':
    "L'ancienne clé est gardée, sous sa phrase secrète ; personne n'en a plus besoin.",
  'Give the new {0} to everybody who verifies. Who has it believes older records where the log shows them:':
    "Donner le nouveau {0} à tous ceux qui vérifient. Qui l'a croit les relevés plus anciens là où le journal les montre :",
  '{0} (*.record.json.proof); give it along. Others: plugmark log prove consistency RECORD > RECORD.proof':
    '{0} (*.record.json.proof) ; la donner avec. Les autres : plugmark log prove consistency RECORD > RECORD.proof',
  '# record here has such a proof beside it|# records here have such a proof beside them': {
    one: '# relevé ici a une telle preuve à côté',
    other: '# relevés ici ont une telle preuve à côté',
  },
  'a key in a device needs both --pkcs11 and --token': 'une clé dans un appareil demande --pkcs11 et --token',
  'Name the module of its maker, and the label of the token.':
    "Nommer le module de son fabricant et l'étiquette du jeton.",
  '{0} of entries that the log lost, as {1}: once their key has ended no proof from the log can be made for them, and whoever has the new trust list will not trust them':
    "{0} d'entrées que le journal a perdues, comme {1} : une fois leur clé finie, aucune preuve ne pourra en être tirée du journal, et qui a la nouvelle liste de confiance ne s'y fiera pas",
  'Stamp each of them first: plugmark time-stamp RECORD. Then run the command again with --even-so.':
    "Horodater chacun d'abord : plugmark time-stamp RECORD. Puis relancer la commande avec --even-so.",
  'a key that was lost cannot be kept': 'une clé perdue ne peut pas être gardée',
  'Leave out --keep or --lost.': 'Enlever --keep ou --lost.',
  'Passphrase for the old key: ': "Phrase secrète pour l'ancienne clé : ",
  'the key {0} still signs': 'la clé {0} signe encore',
  'Make a new one first: plugmark keys rotate': "En faire d'abord une nouvelle : plugmark keys rotate",
  'there is no file of a key {0}': "il n'y a pas de fichier d'une clé {0}",
  'See "plugmark doctor".': 'Voir "plugmark doctor".',
  '{0} was destroyed. Destroy your copies of it too.': '{0} a été détruit. Détruire aussi vos copies.',
  'This station has joined no archive, and its file names no witness: there is nobody to send to.':
    "Ce poste n'a rejoint aucune archive, et son fichier ne nomme aucun témoin : il n'y a personne à qui envoyer.",
  'Questions about this station. Enter takes the value in brackets; < goes back to the question before, as often as wanted. Ctrl-C cancels; nothing is written.':
    "Questions sur ce poste. Enter prend la valeur entre crochets ; < revient à la question précédente, autant de fois que voulu. Ctrl-C abandonne ; rien n'est écrit.",
  '{0} will hold:': '{0} contiendra :',
  'Write it and open the station?': "L'écrire et ouvrir le poste ?",
  'Nothing was written.': "Rien n'a été écrit.",
  'Name of the station, as records show it': 'Nom du poste, tel que les relevés le montrent',
  'Folder for log, keys and papers': 'Dossier du journal, des clés de signature et des documents',
  'Another tool?': 'Un autre outil ?',
  'Language of the screen': "Langue de l'écran",
  'Language of the papers': 'Langue des documents',
  'Torque is shown in': 'Le couple est montré en',
  'Gaps are shown in': "L'écartement est montré en",
  '{0}; enter this tool again': '{0} ; saisir cet outil à nouveau',
  'Tool {0}': 'Outil {0}',
  'What it measures': "Ce qu'il mesure",
  'A short name for it': 'Un nom court',
  'Kind of wrench (setting: it clicks)': 'Type de clé (setting : elle déclenche)',
  'Serial number on the tool': "Numéro de série sur l'outil",
  'Limit it to its range': 'Le limiter à son étendue de mesure',
  'From, in N·m or mm': 'De, en N·m ou mm',
  To: 'À',
  'Calibration certificate (file, relative to the station file)':
    "Certificat d'étalonnage (fichier, vu depuis le fichier de poste)",
  'Permissible deviation, by its class or data sheet':
    'Écart admissible, selon sa classe ou sa fiche technique',
  'Percent of the reading': 'Pour cent de la lecture',
  'Amount, in N·m or mm': 'Valeur, en N·m ou mm',
  'Step of its display, in N·m or mm': 'Pas de son affichage, en N·m ou mm',
  'Source of this figure': 'Source de cette valeur',
  'calibration certificate': "certificat d'étalonnage",
  'data sheet': 'fiche technique',
  Driver: 'Pilote',
  'Bluetooth address': 'Adresse Bluetooth',
  'Bluetooth name': 'Nom Bluetooth',
  'Profile (file)': 'Profil (fichier)',
  'Package of the driver (npm)': 'Paquet du pilote (npm)',
  'Serial port': 'Port série',
  'Unit of figures typed without one': 'Unité des valeurs saisies sans unité',
  'Recording (file)': 'Enregistrement (fichier)',
  Speed: 'Vitesse',
  People: 'Personnes',
  'Name of a technician (Enter: no more): ': "Nom d'un technicien (Enter : plus personne) : ",
  'The station {0} is set up.': 'Le poste {0} est installé.',
  'Next: check the station with "plugmark doctor"; make a key for a person with "plugmark keys technician NAME".':
    'Ensuite : contrôler le poste avec "plugmark doctor" ; faire une clé pour une personne avec "plugmark keys technician NAME".',
  'The key is a file. To keep it in a device instead (a smart card or HSM with Ed25519; a TPM has none): "plugmark manual keys".':
    'La clé est un fichier. Pour la garder plutôt dans un appareil (carte à puce ou HSM avec Ed25519 ; un TPM n\'en a pas) : "plugmark manual keys".',
  'a station file already exists': 'un fichier de poste existe déjà',
  'Edit it by hand, or name another with --station.':
    'Le modifier à la main, ou en nommer un autre avec --station.',
  'plugmark guides and proves a spark plug job. There is no station here yet.':
    "plugmark guide et prouve un remplacement de bougies. Il n'y a pas encore de poste ici.",
  'See a whole job with simulated tools': 'Voir un ordre entier avec des outils simulés',
  'Set this bay up: its tools and its people': 'Installer ce poste : ses outils et ses personnes',
  'Read how it works': 'Lire comment cela marche',
  'All commands: {0}': 'Toutes les commandes : {0}',
  'Station file: {0}\n': 'Fichier de poste : {0}\n',
  '{0} station files are in this folder: {1}': '{0} fichiers de poste sont dans ce dossier : {1}',
  'Name one with --station FILE.': 'En nommer un avec --station FILE.',
  '"{0}" appears twice; give each tool its own name':
    '"{0}" apparaît deux fois ; donner à chaque outil son propre nom',
  'expected one typed tool for {0}; a typed figure does not say which of two it was read off':
    'attendu : un seul outil à saisie pour {0} ; une valeur saisie ne dit pas sur lequel des deux elle a été lue',
  'there is no station file here': "il n'y a pas de fichier de poste ici",
  'Write one with "plugmark setup", or name yours with --station FILE.':
    'En écrire un avec "plugmark setup", ou nommer le vôtre avec --station FILE.',
  'PIN of the token {0}: ': 'PIN du jeton {0} : ',
  'the device with the key needs its PIN': "l'appareil qui tient la clé demande son PIN",
  'Type it, or put it into {0}.': 'Le taper, ou le mettre dans {0}.',
  'the key in the device is not the one that the log names':
    "la clé dans l'appareil n'est pas celle que nomme le journal",
  'Plug in the device that this station was given.': "Brancher l'appareil donné à ce poste.",
  "the station's key is revoked and cannot sign": 'la clé du poste est révoquée et ne peut pas signer',
  'Make a new one with "plugmark keys rotate --lost".':
    'En faire une nouvelle avec "plugmark keys rotate --lost".',
  "Passphrase of the station's key: ": 'Phrase secrète de la clé du poste : ',
  'the file of the station key is missing': 'le fichier de la clé du poste manque',
  'Put it back from your copy of the folder keys; a backup of the log does not contain it. If there is no copy: "plugmark keys rotate --lost".':
    'La remettre depuis votre copie du dossier keys ; une sauvegarde du journal ne la contient pas. S\'il n\'y a pas de copie : "plugmark keys rotate --lost".',
  '{0}, your PIN to sign (Enter: do not sign): ': '{0}, votre PIN pour signer (Enter : ne pas signer) : ',
  'there is no station log in this folder yet': "il n'y a pas encore de journal dans ce dossier",
  'It begins with "plugmark setup" or the first job. Another station is named with --station, or by its folder with --data.':
    'Il commence avec "plugmark setup" ou le premier ordre. Un autre poste se nomme avec --station, ou par son dossier avec --data.',
  'the log of this station is missing ({0} are still here)':
    'le journal de ce poste manque ({0} sont encore là)',
  'the log of this station is empty ({0} are still here)':
    'le journal de ce poste est vide ({0} sont encore là)',
  'Restore a backup with "plugmark restore", or rebuild from exported records with "plugmark recover". To start a new log on purpose, name another folder.':
    'Restaurer une sauvegarde avec "plugmark restore", ou reconstruire à partir de relevés exportés avec "plugmark recover". Pour commencer exprès un nouveau journal, nommer un autre dossier.',
  keys: 'des clés de signature',
  'a trust list': 'une liste de confiance',
  'a checkpoint': 'un point de contrôle',
  certificates: 'certificats',
  'Bluetooth bonds': 'des appairages Bluetooth',
  'a log that was set aside': 'un journal mis de côté',
  "the log's newest entries": 'les dernières entrées du journal',
  '{0} is read-only here; reading a copy.\n': "{0} est en lecture seule ici ; lecture d'une copie.\n",
  'The tables for look-up were damaged. They were made again from the log, which is whole.\n':
    'Les tables de consultation étaient endommagées. Elles ont été refaites à partir du journal, qui est intact.\n',
  'The last write to the log was cut off, as by a power cut. What it would have shown, nobody was shown.':
    "La dernière écriture dans le journal a été interrompue, comme par une coupure de courant. Ce qu'elle aurait montré, personne ne l'a vu.",
  'The last write to the log was cut off, as by a power cut: up to {0} entries. What it would have shown, nobody was shown.':
    "La dernière écriture dans le journal a été interrompue, comme par une coupure de courant : jusqu'à {0} entrées. Ce qu'elle aurait montré, personne ne l'a vu.",
  'jobs listed anew': 'ordres relistés',
  'jobs read for the history': "ordres lus pour l'historique",
  'this station is not set up': "ce poste n'est pas installé",
  'Set it up with "plugmark setup", or open a job.':
    'L\'installer avec "plugmark setup", ou ouvrir un ordre.',
  '{0} was {1}. It was made again from the log. Add the keys of others again: the log does not have them.':
    '{0} était {1}. Elle a été refaite à partir du journal. Rajouter les clés des autres : le journal ne les a pas.',
  '"{0}" is no step': '"{0}" n\'est pas un pas',
  'Give the smallest step of the display, for example 0.01.':
    "Donner le plus petit pas de l'affichage, par exemple 0.01.",
  'Found: {0}.': 'Trouvé : {0}.',
  'The figure that was kept back reads {0}.': 'La valeur gardée à part se lit {0}.',
  'The profile is in {0}. Bytes that were not seen here are kept raw.':
    'Le profil est dans {0}. Les octets non vus ici restent bruts.',
  'Check "advertised" in it, and try it before you rely on it: plugmark driver check, and a replay of a capture.':
    "Y vérifier \"advertised\", et l'essayer avant de s'y fier : plugmark driver check, et la relecture d'une capture.",
  'Not written: more than one layout explains all of it.':
    "Pas écrit : plus d'une structure explique le tout.",
  'Not written. {0}': 'Pas écrit. {0}',
  capture: 'capture',
  'the capture holds no packets': 'la capture ne contient aucun paquet',
  'Record the device while it lies untouched.': "Enregistrer l'appareil au repos.",
  '"{0}" is not FIGURE=FILE': '"{0}" n\'est pas FIGURE=FILE',
  'For example {0} 25.34=pull.capture.jsonl.': 'Par exemple {0} 25.34=pull.capture.jsonl.',
  '"{0}" is no unit of a profile': '"{0}" n\'est pas une unité de profil',
  'Choose one of: {0}.': 'En choisir un : {0}.',
  'the trust list cannot be read': 'la liste de confiance ne peut pas être lue',
  'Check the path and the rights on it.': 'Vérifier le chemin et les droits.',
  empty: 'vide',
  'damaged; it is kept as {0}': 'endommagée ; elle est gardée sous {0}',
  bluetooth: 'bluetooth',
  'its software loads; adapter and rights are checked when a tool connects':
    'son logiciel se charge ; adaptateur et droits sont vérifiés quand un outil se connecte',
  'Plug one in; "bluetoothctl list" shows them.': 'En brancher un ; "bluetoothctl list" les montre.',
  'no Bluetooth adapter found': 'aucun adaptateur Bluetooth trouvé',
  'adapter {0}': 'adaptateur {0}',
  '{0}, switched off': '{0}, éteint',
  'Switch it on: rfkill unblock bluetooth': "L'allumer : rfkill unblock bluetooth",
  rights: 'droits',
  'this user may not use the adapter': "cet utilisateur ne peut pas utiliser l'adaptateur",
  'not known here': 'inconnus ici',
  'Bluetooth may be used directly': 'Bluetooth peut être utilisé directement',
  'Add this user to the group plugmark, and log in again: sudo adduser "$USER" plugmark':
    'Ajouter cet utilisateur au groupe plugmark, et se reconnecter : sudo adduser "$USER" plugmark',
  'Allow the node program to use it: sudo setcap cap_net_raw,cap_net_admin+eip {0}':
    "Permettre au programme node de l'utiliser : sudo setcap cap_net_raw,cap_net_admin+eip {0}",
  'Set the clock and keep it set: timedatectl set-ntp true':
    "Régler l'horloge et la garder réglée : timedatectl set-ntp true",
  '{0} is not a plausible date': "{0} n'est pas une date plausible",
  '{0} is before the newest entry of the log, {1}': '{0} est avant la dernière entrée du journal, {1}',
  '{0} ms against the monotonic clock in {1} ms': "{0} ms par rapport à l'horloge monotone en {1} ms",
  '{0}; moved {1}': '{0} ; déplacée de {1}',
  '{0}; stepped by {1}': '{0} ; a sauté de {1}',
  'Find out what sets the clock. Records contain both clocks.':
    "Trouver ce qui règle l'horloge. Les relevés contiennent les deux horloges.",
  'clock sync': 'synchro horloge',
  'synchronised by the network': 'synchronisée par le réseau',
  'not synchronised': 'pas synchronisée',
  node: 'node',
  'Node {0}': 'Node {0}',
  'Node {0}; plugmark needs {1} or newer': 'Node {0} ; plugmark demande {1} ou plus récent',
  'Install a newer Node.': 'Installer un Node plus récent.',
  disk: 'disque',
  '{0} may not be written to': '{0} ne peut pas être écrit',
  'Change its rights, or name another folder under "data".':
    'Changer ses droits, ou nommer un autre dossier sous "data".',
  '{0} MB free at {1}': '{0} Mo libres à {1}',
  'Free some space. The log grows with every job.':
    'Libérer de la place. Le journal grandit avec chaque ordre.',
  English: 'anglais',
  German: 'allemand',
  French: 'français',
  Spanish: 'espagnol',
  '; {0} not yet read by a native of the trade':
    "; {0} pas encore relu par quelqu'un du métier dont c'est la langue",
  reads: 'langues',
  'screen {0}, papers {1}, {2}, {3}{4}': 'écran {0}, documents {1}, {2}, {3}{4}',
  database: 'base de données',
  'SQLite loads; a commit is on disk (synchronous FULL)':
    'SQLite se charge ; ce qui est écrit est sur le disque (synchronous FULL)',
  'SQLite does not work: {0}': 'SQLite ne marche pas : {0}',
  'Install plugmark again; its npm package brings SQLite for Linux, macOS and Windows on x64 and arm64.':
    'Réinstaller plugmark ; son paquet npm apporte SQLite pour Linux, macOS et Windows sur x64 et arm64.',
  'no station log yet in {0}': 'pas encore de journal dans {0}',
  'Run "plugmark setup", or open the first job.': 'Lancer "plugmark setup", ou ouvrir le premier ordre.',
  '{0}; entries and key not checked': '{0} ; entrées et clé non vérifiées',
  'Check it: plugmark log check': 'Le vérifier : plugmark log check',
  '{0} MB, more than the {1} MB that are checked on a copy':
    '{0} Mo, plus que les {1} Mo vérifiés sur une copie',
  'Keep the file as it is. Restore a backup and check it against a checkpoint (plugmark log check).':
    'Garder le fichier tel quel. Restaurer une sauvegarde et la comparer à un point de contrôle (plugmark log check).',
  'entry {0}: {1}': 'entrée {0} : {1}',
  'complete; all {0} entries are unchanged': 'complet ; les {0} entrées sont inchangées',
  '{0} not as the log says; every verdict and every proof holds':
    '{0} pas tels que le dit le journal ; chaque verdict et chaque preuve tient',
  'personal texts': 'textes personnels',
  'See which with "plugmark log check".': 'Voir lesquels avec "plugmark log check".',
  'old key': 'ancienne clé',
  '{0} signs no more, and lies here without a passphrase':
    '{0} ne signe plus, et se trouve ici sans phrase secrète',
  'Destroy it: plugmark keys destroy {0}. To keep it, lock it: plugmark keys lock':
    'La détruire : plugmark keys destroy {0}. Pour la garder, la verrouiller : plugmark keys lock',
  'trust list': 'liste de confiance',
  'none yet': 'pas encore',
  'It is made with the first key.': 'Elle se fait avec la première clé.',
  'It is made again from the log when a job is opened or a key is changed.':
    'Elle est refaite à partir du journal quand un ordre est ouvert ou une clé changée.',
  '{0} cannot be read: {1}': '{0} ne peut pas être lu : {1}',
  "{0} does not have the station's key {1}": "{0} n'a pas la clé {1} du poste",
  "{0} keys, the station's own among them": '{0} clés, dont celle du poste',
  '{0}: a key file that the log does not name': '{0} : un fichier de clé que le journal ne nomme pas',
  'Another log was here, or a change of the key was cut short. Look for a backup of that log first ("plugmark restore" compares the two). If there is none: plugmark keys destroy KID':
    "Un autre journal était ici, ou un changement de clé a été interrompu. Chercher d'abord une sauvegarde de ce journal (\"plugmark restore\" compare les deux). S'il n'y en a pas : plugmark keys destroy KID",
  'other keys': 'autres clés',
  key: 'clé',
  '{0} was revoked': '{0} a été révoquée',
  'Make a new one: plugmark keys rotate --lost': 'En faire une nouvelle : plugmark keys rotate --lost',
  '{0}, readable by its owner only': '{0}, lisible par son seul propriétaire',
  '{0}, under a passphrase, readable by its owner only':
    '{0}, sous une phrase secrète, lisible par son seul propriétaire',
  '{0}, in the token {1}': '{0}, dans le jeton {1}',
  'Start plugmark in a terminal to get the screen. Plain lines work anywhere.':
    "Lancer plugmark dans un terminal pour avoir l'écran. Les lignes simples marchent partout.",
  terminal: 'terminal',
  'none; jobs run in plain lines': 'aucun ; les ordres se font en lignes simples',
  ', with colour': ', en couleur',
  ', without colour': ', sans couleur',
  '{0}; the screen needs {1}': "{0} ; l'écran demande {1}",
  'Make the window larger, or work with --plain.': 'Agrandir la fenêtre, ou travailler avec --plain.',
  characters: 'caractères',
  'not UTF-8; drawn in plain ASCII': 'pas UTF-8 ; dessiné en ASCII simple',
  'Set LANG to a UTF-8 locale, such as C.UTF-8.': 'Mettre LANG sur une locale UTF-8, comme C.UTF-8.',
  'See why, and send what is missing: plugmark log witness':
    'Voir pourquoi, et envoyer ce qui manque : plugmark log witness',
  archive: 'archive',
  'See why, and ship what is missing: plugmark archive ship':
    'Voir pourquoi, et envoyer ce qui manque : plugmark archive ship',
  'none of {0} has cosigned this log yet': "aucun des {0} n'a encore cosigné ce journal",
  '{0} of {1} cosigned the first {2} of {3} entries that are signed':
    '{0} sur {1} ont cosigné les {2} premières des {3} entrées signées',
  '{0}, recorded in steps of 10^{1} {2}': '{0}, enregistré par pas de 10^{1} {2}',
  port: 'port',
  '{0} baud': '{0} bauds',
  readings: 'valeurs',
  found: 'trouvé',
  'by service {0}': 'par le service {0}',
  '{0} of service {1}, {2}{3}': '{0} du service {1}, {2}{3}',
  counter: 'compteur',
  unit: 'unité',
  'log and keys': 'journal et clés',
  '{0} (give it to whoever verifies)': '{0} (la donner à qui vérifie)',
  'not readable': 'illisible',
  'a step': 'un pas',
  'file of the archive': "fichier de l'archive",
  'what "plugmark archive init" writes': 'ce qu\'écrit "plugmark archive init"',
  'this station has joined no archive': "ce poste n'a rejoint aucune archive",
  'Join one: plugmark archive join URL': 'En rejoindre une : plugmark archive join URL',
  'link to the archive': "lien vers l'archive",
  'what "plugmark archive join" writes': 'ce qu\'écrit "plugmark archive join"',
  'Try again when it can be reached. Nothing is lost: the log of a station is its outbox, and an archive keeps what it has.':
    "Réessayer quand elle sera joignable. Rien n'est perdu : le journal d'un poste est sa boîte d'envoi, et une archive garde ce qu'elle a.",
  'what answers there is no archive': "ce qui répond là n'est pas une archive",
  'Take the address that "plugmark archive serve" printed.':
    'Prendre l\'adresse qu\'a affichée "plugmark archive serve".',
  'a station joins an archive over https alone, but for one on this computer':
    'un poste ne rejoint une archive que par https, sauf une sur cet ordinateur',
  'Take the address that begins with https://.': "Prendre l'adresse qui commence par https://.",
  'One-time token of {0}: ': 'Jeton à usage unique de {0} : ',
  'entries fetched': 'entrées récupérées',
  'the archive gave nothing back: it answered {0}': "l'archive n'a rien rendu : elle a répondu {0}",
  'Ask whoever runs the archive for a new token (plugmark archive give-back): each is good once.':
    "Demander à qui tient l'archive un nouveau jeton (plugmark archive give-back) : chacun sert une fois.",
  'silent for too long': 'silence trop long',
  'its answer broke off, or is not what an archive sends':
    "sa réponse s'est interrompue, ou n'est pas ce qu'envoie une archive",
  'Ask whoever runs the archive for a new token (plugmark archive give-back): each is good once. Nothing was put in place.':
    "Demander à qui tient l'archive un nouveau jeton (plugmark archive give-back) : chacun sert une fois. Rien n'a été remis en place.",
  'what the archive gave back is not the log that was signed, or not all of it':
    "ce que l'archive a rendu n'est pas le journal qui a été signé, ou pas tout",
  'Have it looked at by whoever runs the archive: plugmark archive check. Nothing was put in place.':
    "Le faire examiner par qui tient l'archive : plugmark archive check. Rien n'a été remis en place.",
  'an archive is here already': 'une archive est déjà ici',
  'Use it, or name another folder with --data.': "L'utiliser, ou nommer un autre dossier avec --data.",
  "Passphrase for the archive's key (Enter: none): ":
    "Phrase secrète pour la clé de l'archive (Enter : aucune) : ",
  'Archive {0} made in {1}.': 'Archive {0} créée dans {1}.',
  'Its key has no passphrase: whoever reads the file can sign as this archive.':
    "Sa clé n'a pas de phrase secrète : qui lit le fichier peut signer comme cette archive.",
  "Its verifier keys are in {0}: give them to those who verify. What it keeps, plates and names with it, lies in this folder or in the database that you name: keep both as you keep the shop's books.":
    "Ses clés de vérification sont dans {0} : les donner à ceux qui vérifient. Ce qu'elle garde, plaques et noms compris, est dans ce dossier ou dans la base de données que vous nommez : garder les deux comme les livres de l'atelier.",
  'To be safe in a network: name --certificate and --key when it listens beyond this computer; it refuses to do so without them. Nobody can enrol a station without a one-time token of yours.':
    'Pour être sûre dans un réseau : nommer --certificate et --key quand elle écoute au-delà de cet ordinateur ; elle le refuse sans eux. Personne ne peut inscrire un poste sans un jeton à usage unique de votre part.',
  'Next: plugmark archive enrol --tenant SHOP, then plugmark archive serve.':
    'Ensuite : plugmark archive enrol --tenant SHOP, puis plugmark archive serve.',
  'this station has joined an archive already': 'ce poste a déjà rejoint une archive',
  'Remove the file to join another one; what the first one has, it keeps.':
    'Retirer le fichier pour en rejoindre une autre ; ce que la première a, elle le garde.',
  'the archive did not take the station: {0}': "l'archive n'a pas accepté le poste : {0}",
  'Ask whoever runs the archive for a new token (plugmark archive enrol): each is good once.':
    "Demander à qui tient l'archive un nouveau jeton (plugmark archive enrol) : chacun sert une fois.",
  'the archive answered with another log, or with keys that cannot cosign':
    "l'archive a répondu avec un autre journal, ou avec des clés qui ne peuvent pas cosigner",
  'Have it looked at by whoever runs the archive. The station has not joined it.':
    "Le faire examiner par qui tient l'archive. Le poste ne l'a pas rejointe.",
  '{0} has joined {1}.': '{0} a rejoint {1}.',
  'Next: plugmark archive ship. It ships whatever the archive has not got; the log itself is the outbox.':
    "Ensuite : plugmark archive ship. Cela envoie ce que l'archive n'a pas ; le journal lui-même est la boîte d'envoi.",
  'Archive {0}, {1}': 'Archive {0}, {1}',
  '# station|# stations': { one: '# poste', other: '# postes' },
  'nothing cosigned yet': 'rien de cosigné encore',
  '{0} entries, cosigned': '{0} entrées, cosignées',
  ', {0} more on the way': ', {0} autres en route',
  '; FROZEN: it showed two histories (plugmark archive faults)':
    '; GELÉ : il a montré deux histoires (plugmark archive faults)',
  'signed another log of the same size: its history was rewritten':
    'a signé un autre journal de même longueur : son histoire a été réécrite',
  'offered a log that does not go on from the one that the archive has':
    "a présenté un journal qui ne prolonge pas celui de l'archive",
  'has a key that named two others: somebody works with a copy of its folder':
    "a une clé qui en a nommé deux autres : quelqu'un travaille avec une copie de son dossier",
  'No station has shown two histories.': "Aucun poste n'a montré deux histoires.",
  whole: 'intact',
  DAMAGED: 'ENDOMMAGÉ',
  'The archive has no station yet.': "L'archive n'a pas encore de poste.",
  'entry {0} is missing': "l'entrée {0} manque",
  'entry {0} was changed': "l'entrée {0} a été changée",
  'its entries do not lead to the root that was cosigned': 'ses entrées ne mènent pas à la racine cosignée',
  "Passphrase of the archive's key: ": "Phrase secrète de la clé de l'archive : ",
  '# log|# logs': { one: '# journal', other: '# journaux' },
  'Archive {0} listens on {1} and has {2}. Ctrl-C ends it.':
    "L'archive {0} écoute sur {1} et a {2}. Ctrl-C l'arrête.",
  'Ended. All that was acknowledged is on disk.': 'Terminé. Tout ce qui a été confirmé est sur le disque.',
  'Nothing is signed yet, so there is nothing to ship.':
    "Rien n'est encore signé, donc il n'y a rien à envoyer.",
  'entries shipped': 'entrées envoyées',
  '{0} has all {1} entries and cosigned them. The receipt lies beside the log and its records.':
    '{0} a les {1} entrées et les a cosignées. Le reçu est à côté du journal et de ses relevés.',
  'Archive {0} at {1}': 'Archive {0} à {1}',
  'It has {0} entries of this log, and this log has {1}: an old copy was put back, or its end was cut off. Run "plugmark log check".':
    'Elle a {0} entrées de ce journal, et ce journal en a {1} : une ancienne copie a été remise, ou sa fin a été coupée. Lancer "plugmark log check".',
  'It has all {0} entries.': 'Elle a les {0} entrées.',
  'It has {0} of {1} entries; {2} are to be shipped: plugmark archive ship':
    'Elle a {0} entrées sur {1} ; {2} sont à envoyer : plugmark archive ship',
  'checkpoint of the archive': "point de contrôle de l'archive",
  'the archive answered without a cosignature by its own keys':
    "l'archive a répondu sans cosignature par ses propres clés",
  'Have it looked at by whoever runs the archive. What was shipped may not be kept.':
    "Le faire examiner par qui tient l'archive. Ce qui a été envoyé n'est peut-être pas gardé.",
  'the archive has {0} entries of this log, and this log has {1}: an old copy was put back, or its end was cut off':
    "l'archive a {0} entrées de ce journal, et ce journal en a {1} : une ancienne copie a été remise, ou sa fin a été coupée",
  'Start no new job. Restore the newest backup: plugmark restore FILE. Where none has that many entries, show this to whoever runs the archive.':
    "Ne commencer aucun nouvel ordre. Restaurer la sauvegarde la plus récente : plugmark restore FILE. Si aucune n'a autant d'entrées, montrer ceci à qui tient l'archive.",
  'the archive has another history of this log: {0}': "l'archive a une autre histoire de ce journal : {0}",
  'Run "plugmark log check", and show both to whoever runs the archive: plugmark archive faults.':
    'Lancer "plugmark log check", et montrer les deux à qui tient l\'archive : plugmark archive faults.',
  'the archive took nothing: {0}': "l'archive n'a rien pris : {0}",
  'Where a copy of this station has a newer key, go on with that one alone. Otherwise show this to whoever runs the archive.':
    "Si une copie de ce poste a une clé plus récente, continuer avec elle seule. Sinon montrer ceci à qui tient l'archive.",
  'Try again later. Nothing is lost: the log is the outbox.':
    "Réessayer plus tard. Rien n'est perdu : le journal est la boîte d'envoi.",
  'this is not the key of a log that the archive has': "ce n'est pas la clé d'un journal que l'archive a",
  'Take what "plugmark log vkey" prints at the station, from somebody whom you know.':
    'Prendre ce qu\'affiche "plugmark log vkey" au poste, de quelqu\'un que vous connaissez.',
  "{0} signs with this key from now on. The archive has nobody's word for it but yours.":
    "{0} signe désormais avec cette clé. L'archive n'a pour cela que votre parole.",
  '{0} signs with this key already.': '{0} signe déjà avec cette clé.',
  '"{0}" cannot be the name of a tenant': '"{0}" ne peut pas être le nom d\'un locataire',
  'Take small letters, digits and hyphens: north-street.':
    "Prendre des minuscules, des chiffres et des traits d'union : north-street.",
  'the archive has nothing cosigned of a log "{0}"': "l'archive n'a rien de cosigné d'un journal \"{0}\"",
  'Take the origin that "plugmark archive stations" prints behind the station.':
    'Prendre l\'origine que "plugmark archive stations" affiche après le poste.',
  'Good once, for {0}. At the station: {1}, and give it this token.\n':
    'Valable une fois, pendant {0}. Au poste : {1}, et lui donner ce jeton.\n',
  certificate: 'certificat',
  '{0} names {1} on other vehicles': "{0} nomme {1} sur d'autres véhicules",
  'work order': 'ordre de travail',
  'there is no simulated technician "{0}"': 'il n\'y a pas de technicien simulé "{0}"',
  'no more events are written: {0}': "plus aucun événement n'est écrit : {0}",
  'The job goes on. The log contains all of them.': "L'ordre continue. Le journal les contient tous.",
  'nobody reads this pipe': 'personne ne lit ce tube',
  'Start its reader first.': "Démarrer d'abord son lecteur.",
  'this is no file and no pipe': "ce n'est ni un fichier ni un tube",
  'Name a file, a named pipe, or - for the standard output.':
    'Nommer un fichier, un tube nommé, ou - pour la sortie standard.',
  '  NOT POSSIBLE    {0}': '  IMPOSSIBLE      {0}',
  '  no papers: the record is not as its station sealed it':
    "  pas de documents : le relevé n'est pas tel que son poste l'a scellé",
  '  papers        {0}, {1}': '  documents     {0}, {1}',
  'this folder is a package, and whatever is added to it shows as a fault':
    'ce dossier est un paquet, et tout ce qui y est ajouté apparaît comme un défaut',
  'this record of the job is not from this log, and is never overwritten':
    "ce relevé de l'ordre n'est pas de ce journal, et n'est jamais écrasé",
  'Keep it: move it to another folder. Then run "plugmark jobs papers".':
    'Le garder : le déplacer dans un autre dossier. Puis lancer "plugmark jobs papers".',
  'the name of the technician is missing in the log, and no entry says that it was forgotten':
    "le nom du technicien manque dans le journal, et aucune entrée ne dit qu'il a été oublié",
  'Run "plugmark log check". The record that was sealed before stays good.':
    'Lancer "plugmark log check". Le relevé scellé auparavant reste bon.',
  'the job has {0}': "l'ordre a {0}",
  'Nothing is lost: the station log contains all of it. Keep station.db and a checkpoint of it as evidence.':
    "Rien n'est perdu : le journal contient tout. Garder station.db et un point de contrôle comme preuve.",
  trace: 'tracé',
  '{0}: {1} samples in {2} s, {3} above {4} N·m': '{0} : {1} échantillons en {2} s, {3} au-dessus de {4} N·m',
  '# pull|# pulls': { one: '# traction', other: '# tractions' },
  '  row {0}: {1}': '  ligne {0} : {1}',
  '  and {0} more rows like these': '  et {0} autres lignes de ce genre',
  'click {0} N·m, fell by {1} %': 'déclic à {0} N·m, chute de {1} %',
  'no click': 'pas de déclic',
  'a click could not be seen': "un déclic n'aurait pas pu se voir",
  'the readings reached the end of the scale': "les valeurs ont atteint la fin de l'échelle",
  'the readings end in the middle of the pull': "les valeurs s'arrêtent au milieu de la traction",
  'the zero was not settled': "le zéro n'était pas stable",
  'pull {0}: peak {1} N·m (u = {2}) at {3} s; {4}': 'traction {0} : pic {1} N·m (u = {2}) à {3} s ; {4}',
  '  from {0} to {1} s, rise {2} ms, highest reading {3} N·m, zero {4} N·m, noise {5} N·m':
    '  de {0} à {1} s, montée {2} ms, valeur la plus haute {3} N·m, zéro {4} N·m, bruit {5} N·m',
  '  turned {0}° to the peak, {1}° of it from 10 %; work {2} J':
    "  tourné de {0}° jusqu'au pic, dont {1}° à partir de 10 % ; travail {2} J",
  '  by its angle: {0}': "  d'après son angle : {0}",
  '  note: {0}': '  remarque : {0}',
  'a plug that was already tight, or a missing gasket': 'une bougie déjà serrée, ou un joint manquant',
  'a used gasket, or a conical seat': 'un joint usagé, ou un siège conique',
  'a new gasket': 'un joint neuf',
  'more than one gasket': "plus d'un joint",
  'it turned far and evenly, like a binding thread':
    'elle a tourné loin et régulièrement, comme un filetage qui grippe',
  'P peak': 'P pic',
  'P peak, c click': 'P pic, c déclic',
  'expected a torque above 0 N·m, found "{0}"': 'attendu : un couple au-dessus de 0 N·m, trouvé "{0}"',
  'Give the lower limit of the window in N·m, or leave it out.':
    "Donner la limite inférieure de la fenêtre en N·m, ou l'omettre.",
  '"{0}" is no unit of time here': '"{0}" n\'est pas une unité de temps ici',
  '"{0}" is no unit of torque': '"{0}" n\'est pas une unité de couple',
  'Choose for example N·m, lbf·ft, lbf·in, kgf·m or kgf·cm.':
    'Choisir par exemple N·m, lbf·ft, lbf·in, kgf·m ou kgf·cm.',
  'the station has no tool that measures {0}': "le poste n'a pas d'outil qui mesure {0}",
  'Name a station file that has one.': 'Nommer un fichier de poste qui en a un.',
  'Saved in {0} as job {1}.\n': 'Enregistré dans {0} comme ordre {1}.\n',
  recording: 'enregistrement',
  'expected a factor above 0, found "{0}"': 'attendu : un facteur au-dessus de 0, trouvé "{0}"',
  'Give 1 for the speed of the recording. Leave it out to run as fast as possible.':
    "Donner 1 pour la vitesse de l'enregistrement. L'omettre pour aller aussi vite que possible.",
  scenario: 'scénario',
  'wait {0} ms': 'attendre {0} ms',
  '{0}: pull to {1} N·m{2}': "{0} : traction jusqu'à {1} N·m{2}",
  ', no click': ', sans déclic',
  '{0}: gap {1} mm': '{0} : écartement {1} mm',
  '{0}: no value': '{0} : pas de valeur',
  '{0}: bytes {1}': '{0} : octets {1}',
  '{0}: silent for {1} ms': '{0} : silence de {1} ms',
  '{0}: unplugged for {1} ms': '{0} : débranché {1} ms',
  'something lies here already, and is not overwritten by a pseudo-terminal':
    "quelque chose est déjà là, et un pseudo-terminal ne l'écrase pas",
  'Name another port in the scenario, or remove it.': "Nommer un autre port dans le scénario, ou l'enlever.",
  'no pseudo-terminal can be made here': 'aucun pseudo-terminal ne peut être créé ici',
  'Name a port in a folder that you may write to, such as /tmp.':
    'Nommer un port dans un dossier où vous pouvez écrire, comme /tmp.',
  'socat is not installed; it makes the pseudo-terminals':
    "socat n'est pas installé ; il crée les pseudo-terminaux",
  'Install it: apt-get install socat.': "L'installer : apt-get install socat.",
  'the folder of the specifications cannot be read': 'le dossier des spécifications ne peut pas être lu',
  '{0} already has the name "{1}"': '{0} a déjà le nom "{1}"',
  'Choose another name. A new edition of a source is a new entry.':
    "Choisir un autre nom. Une nouvelle édition d'une source est une nouvelle entrée.",
  'The library {0} is empty. Add one with "plugmark specifications add".':
    'La bibliothèque {0} est vide. En ajouter une avec "plugmark specifications add".',
  'No specification matches.': 'Aucune spécification ne correspond.',
  '{0} not readable; see "plugmark specifications check"':
    '{0} illisibles ; voir "plugmark specifications check"',
  '{0} match': '{0} correspondent',
  'Name one as "plugmark specifications" lists it.':
    'En nommer une telle que "plugmark specifications" la liste.',
  '{0} is in the library: {1}': '{0} est dans la bibliothèque : {1}',
  WRONG: 'FAUX',
  '{0} specifications, {1} wrong': '{0} spécifications, {1} fausses',
  NOTE: 'NOTE',
  '{0}: put there or changed by hand; the log learns of it with the first job':
    "{0} : mise ou changée à la main ; le journal l'apprend avec le premier ordre",
  'Give --name and --by.': 'Donner --name et --by.',
  'neither a torque nor an order was named': "ni un couple ni un ordre n'a été nommé",
  'Type a range, for example "25-30 N·m", or give --order FILE.':
    'Taper une plage, par exemple "25-30 N·m", ou donner --order FILE.',
  'Give both --arm and --offset in mm, and --angle in degrees.':
    'Donner --arm et --offset en mm, et --angle en degrés.',
  'Give the bend in degrees, for example 10.': 'Donner la pliure en degrés, par exemple 10.',
  'Add a tool with "quantity": "torque" to the station file.':
    'Ajouter au fichier de poste un outil avec "quantity": "torque".',
  'Choose simple, guard-band, iso-14253-1 or probability.':
    'Choisir simple, guard-band, iso-14253-1 ou probability.',
  '"{0}" is no date': '"{0}" n\'est pas une date',
  'Write it as 2026-05-04.': "L'écrire comme 2026-05-04.",
  'nothing says where the countersigned record goes': 'rien ne dit où va le relevé contresigné',
  'Name a file with --out.': 'Nommer un fichier avec --out.',
  'Passphrase of your key: ': 'Phrase secrète de votre clé : ',
  '{0}: countersigned with {1}.\n': '{0} : contresigné avec {1}.\n',
  'there is no kind of personal text "{0}"': 'il n\'y a pas de genre de texte personnel "{0}"',
  'Choose from: {0}; or all.': 'Choisir parmi : {0} ; ou all.',
  'it is no plain file': "ce n'est pas un simple fichier",
  'it has {0} bytes, and no such file has more than {1}':
    "il a {0} octets, et aucun fichier de ce genre n'en a plus de {1}",
  package: 'paquet',
  'this file of the package is not read: {0}': "ce fichier du paquet n'est pas lu : {0}",
  'the folder holds something already, and every file of a package is in its index':
    "le dossier contient déjà quelque chose, et chaque fichier d'un paquet est dans son index",
  'Name a new folder with --out.': 'Nommer un nouveau dossier avec --out.',
  '    and {0} more: see {1}': '    et {0} autres : voir {1}',
  '  left out: job {0}, {1}': '  laissé de côté : ordre {0}, {1}',
  '{0}: {1}, {2}, {3} files, and an index that the station signed.':
    '{0} : {1}, {2}, {3} fichiers, et un index que le poste a signé.',
  'no papers': 'pas de documents',
  '  {0} in it put in question by a later impact assessment; the index says which.':
    "  {0} dedans mis en cause par une analyse d'impact ultérieure ; l'index dit lesquels.",
  '  Check it with: plugmark verify {0} --trust YOUR-LIST':
    '  Le vérifier avec : plugmark verify {0} --trust YOUR-LIST',
  "  YOUR-LIST is the station's {0}, had by another way; the one in the package is no trust.":
    '  YOUR-LIST est le {0} du poste, obtenu par une autre voie ; celui du paquet ne donne pas confiance.',
  '# paper|# papers': { one: '# document', other: '# documents' },
  'no job matches what was asked for': 'aucun ordre ne correspond à la demande',
  '{0}: no page: the record is not as its station sealed it. See "plugmark verify".':
    '{0} : pas de page : le relevé n\'est pas tel que son poste l\'a scellé. Voir "plugmark verify".',
  '{0}: job {1} with the page that verifies it. It opens in any browser, without a network.':
    "{0} : ordre {1} avec la page qui vérifie. Elle s'ouvre dans tout navigateur, sans réseau.",
  '  All that the record says goes with it: "plugmark share" makes one that says less.':
    '  Tout ce que dit le relevé part avec : "plugmark share" en fait un qui dit moins.',
  '  Whoever opens it needs your trusted-keys.json, and has to get it from you by another way than this file.':
    "  Qui l'ouvre a besoin de votre trusted-keys.json, et doit le recevoir de vous par une autre voie que ce fichier.",
  'no pull was given to a cylinder': "aucune traction n'a été attribuée à un cylindre",
  'no pull {0} was given to a cylinder': "aucune traction {0} n'a été attribuée à un cylindre",
  'There is nothing to draw.': "Il n'y a rien à dessiner.",
  'Name one of these with --pull: {0}.': 'En nommer une avec --pull : {0}.',
  policy: 'politique',
  'nothing says where the record goes': 'rien ne dit où va le relevé',
  '{0}: the same record, under the same signatures.': '{0} : le même relevé, sous les mêmes signatures.',
  '  The job number, the odometer and the texts of the program stay in it.':
    "  Le numéro d'ordre, le kilométrage et les textes du programme y restent.",
  'a time stamp is kept beside its record, so the record must be a file':
    'un horodatage est gardé à côté de son relevé, donc le relevé doit être un fichier',
  'its answer does not hold: {0}': 'sa réponse ne tient pas : {0}',
  'it answered another question': 'elle a répondu à une autre question',
  '{0}: stamped before {1}.\n': '{0} : horodaté avant {1}.\n',
  'Give its certificates with --ca FILE.': 'Donner ses certificats avec --ca FILE.',
  'time stamp': 'horodatage',
  'Give the certificates of the authority as PEM.': "Donner les certificats de l'autorité en PEM.",
  'it answered with {0}': 'elle répond {0}',
  'it cannot be reached': 'injoignable',
  'Try again later, or another authority.': 'Réessayer plus tard, ou une autre autorité.',
  'No package was made.': "Aucun paquet n'a été fait.",
  'the manual has no topic "{0}"': 'le manuel n\'a pas de sujet "{0}"',
  'Written to {0}: {1} pages.\n': 'Écrit dans {0} : {1} pages.\n',
  logo: 'logo',
  routine: 'routine',
  'Left before the first reading. Nothing was kept.': "Quitté avant la première valeur. Rien n'a été gardé.",
  'Recorded as {0}.': 'Enregistré comme {0}.',
  '{0} are kept. Go on with: {1}': '{0} sont gardées. Continuer avec : {1}',
  'a study of a wrench needs the torque to pull to, above zero':
    "une étude d'une clé demande le couple à atteindre, au-dessus de zéro",
  'Give it in N·m: --at 25.': 'Le donner en N·m : --at 25.',
  'the station file names no tool {0}': 'le fichier de poste ne nomme aucun outil {0}',
  'Use a name from the station file.': 'Prendre un nom du fichier de poste.',
  'a new study needs a tool and the people who measure with it':
    'une nouvelle étude demande un outil et les personnes qui mesurent avec',
  'Add --tool ID and --appraisers "A,B,C". Or go on with an open one: --resume GS-1.':
    'Ajouter --tool ID et --appraisers "A,B,C". Ou continuer une étude ouverte : --resume GS-1.',
  'this study was started with a tool without a serial number; in the station file {0} is another tool':
    'cette étude a commencé avec un outil sans numéro de série ; dans le fichier de poste {0} est un autre outil',
  'this study was started with serial number {0}; in the station file {1} is another tool':
    'cette étude a commencé avec le numéro de série {0} ; dans le fichier de poste {1} est un autre outil',
  'Go on with the tool that it was started with, or start a new study.':
    "Continuer avec l'outil du début, ou commencer une nouvelle étude.",
  'That line is too long, and is not taken.': "Cette ligne est trop longue, et n'est pas prise.",
  'Type "back" to take the last reading back, "pause" to stop and go on, "quit" to leave. Readings taken are kept.':
    '"back" retire la dernière valeur, "pause" arrête et reprend, "quit" quitte. Les valeurs prises sont gardées.',
  'The tool is connected.': "L'outil est connecté.",
  'The tool is lost: {0}. Waiting for it.': "Liaison avec l'outil perdue : {0}. Il est attendu.",
  '  set aside': '  mise de côté',
  'Paused: no reading is taken. Type "pause" to go on.':
    'En pause : aucune valeur n\'est prise. "pause" reprend.',
  'That is outside the usual {0} to {1} {2} and does not count yet. Measure the part again. Or press Enter to take it as it is, or type "back" to drop it.':
    'C\'est hors des {0} à {1} {2} habituels et ne compte pas encore. Mesurer la pièce à nouveau. Ou Enter pour la prendre telle quelle, ou "back" pour l\'abandonner.',
  '  taken, {0} left': '  prise, reste {0}',
  '  taken back: {0}, part {1}, trial {2}': '  retirée : {0}, pièce {1}, essai {2}',
  'All is measured. Press Enter to record it, or type "back" to take the last reading back.':
    'Tout est mesuré. Enter l\'enregistre, "back" retire la dernière valeur.',
  '[{0} of {1}] trial {2}: {3}, measure part {4}': '[{0} sur {1}] essai {2} : {3}, mesurer la pièce {4}',
  'No gauge study yet.': "Pas encore d'étude de jauge.",
  study: 'étude',
  finished: 'terminée',
  tool: 'outil',
  'appraisers x parts x trials': 'opérateurs x pièces x essais',
  'why given up': "motif d'abandon",
  'open, {0} of {1}': 'ouverte, {0} sur {1}',
  'given up, {0} of {1}': 'abandonnée, {0} sur {1}',
  ', on {0}: {1}': ', le {0} : {1}',
  '{0}: {1} readings{2}': '{0} : {1} valeurs{2}',
  'Readings typed: {0}. Taken back: {1}.': 'Valeurs saisies : {0}. Retirées : {1}.',
  '{0}: this study says nothing about the tool.': "{0} : cette étude ne dit rien de l'outil.",
  'NOT AS TAKEN: these are not the readings that the log holds one by one.':
    'PAS TELLES QUE PRISES : ce ne sont pas les valeurs que le journal contient une par une.',
  '{0} is given up. Its readings stay in the log.':
    '{0} est abandonnée. Ses valeurs restent dans le journal.',
  'another program started a study of this number meanwhile; the reading that came here was not kept':
    "un autre programme a commencé entre-temps une étude de ce numéro ; la valeur venue ici n'a pas été gardée",
  'Start again: the study gets the next number.': "Recommencer : l'étude reçoit le numéro suivant.",
  'another program works on this study and has {0} readings; what came here was not kept':
    "un autre programme travaille sur cette étude et a {0} valeurs ; ce qui est venu ici n'a pas été gardé",
  'Go on there. Or end that program and go on here: --resume {0}.':
    'Continuer là-bas. Ou arrêter ce programme et continuer ici : --resume {0}.',
  'average, range': 'moyenne, étendue',
  'variance (ANOVA)': 'variance (ANOVA)',
  'ANOVA with the interaction pooled into the error.': "ANOVA avec l'interaction regroupée dans l'erreur.",
  'ANOVA with its interaction.': 'ANOVA avec son interaction.',
  'See it again: plugmark gauge-study show {0}': 'La revoir : plugmark gauge-study show {0}',
  'the output': 'la sortie',
  'this is no language that the program knows': "ce n'est pas une langue que le programme connaît",
  'Give a language like de, fr-CH or en-GB, or none.': 'Donner une langue comme de, fr-CH ou en-GB, ou none.',
  'a fault in the program itself: {0}': 'un défaut du programme lui-même : {0}',
  'Nothing on disk is lost. Run it again with PLUGMARK_TRACE=1 and report the details.':
    "Rien n'est perdu sur le disque. Relancer avec PLUGMARK_TRACE=1 et signaler les détails.",
  'the work order cannot be read: it is a terminal':
    "l'ordre de travail ne peut pas être lu : c'est un terminal",
  'the work order is larger than 1 MB': "l'ordre de travail dépasse 1 Mo",
  'expected 1 to {0} characters': 'attendu : 1 à {0} caractères',
  'Write it in at most {0} characters.': "L'écrire en {0} caractères au plus.",
  '[{0}] {1} of {2} {3}, {4} left': '[{0}] {1} sur {2} {3}, reste {4}',
  "Passphrase for the witness's key (Enter: none): ":
    'Phrase secrète pour la clé du témoin (Enter : aucune) : ',
  'Witness {0} made in {1}.': 'Témoin {0} créé dans {1}.',
  'Its key has no passphrase: whoever reads the file can sign as this witness.':
    "Sa clé n'a pas de phrase secrète : qui lit le fichier peut signer comme ce témoin.",
  'Its verifier keys, Ed25519 and ML-DSA-44, are in {0}. Give them to the stations that it is to cosign, and to those who verify.':
    "Ses clés de vérification, Ed25519 et ML-DSA-44, sont dans {0}. Les donner aux postes qu'il doit cosigner, et à ceux qui vérifient.",
  'Next: plugmark witness add LOG-VKEY, with what "plugmark log vkey" prints at the station.':
    'Ensuite : plugmark witness add LOG-VKEY, avec ce qu\'affiche "plugmark log vkey" au poste.',
  '"{0}" cannot be the name of a witness': '"{0}" ne peut pas être le nom d\'un témoin',
  'Name it like an address, without spaces and plus: example.com/witness.':
    'Le nommer comme une adresse, sans espaces ni plus : example.com/witness.',
  'this is not an address and a port': "ce n'est pas une adresse et un port",
  'Name both, like 127.0.0.1:8017 or [::1]:8017.': 'Nommer les deux, comme 127.0.0.1:8017 ou [::1]:8017.',
  'a server with TLS needs its certificate and its key':
    'un serveur avec TLS demande son certificat et sa clé',
  'Name both files with --certificate and --key.': 'Nommer les deux fichiers avec --certificate et --key.',
  'other computers would reach this server without TLS':
    "d'autres ordinateurs atteindraient ce serveur sans TLS",
  'Name --certificate and --key. Where a proxy in front of it does TLS, say so with --without-tls.':
    'Nommer --certificate et --key. Si un proxy devant fait TLS, le dire avec --without-tls.',
  'another program listens there': 'un autre programme y écoute',
  'this user may not listen there': 'cet utilisateur ne peut pas y écouter',
  'this computer does not have that address': "cet ordinateur n'a pas cette adresse",
  'nobody knows that name': 'personne ne connaît ce nom',
  'Name another address with --listen.': 'Nommer une autre adresse avec --listen.',
  'The log {0} is known now.': 'Le journal {0} est maintenant connu.',
  'The log {0} was known with this key before.': 'Le journal {0} était déjà connu avec cette clé.',
  'Witness {0}, {1}': 'Témoin {0}, {1}',
  '{0} entries, cosigned on {1}': '{0} entrées, cosignées le {1}',
  '; TWO HISTORIES: it signed another log of the same size ({0} kept)':
    '; DEUX HISTOIRES : il a signé un autre journal de même longueur ({0} gardés)',
  'this is not the verifier key of a log (Ed25519)':
    "ce n'est pas la clé de vérification d'un journal (Ed25519)",
  'Take what "plugmark log vkey" prints at the station, and put it between quotes.':
    'Prendre ce qu\'affiche "plugmark log vkey" au poste, et le mettre entre guillemets.',
  "Passphrase of the witness's key: ": 'Phrase secrète de la clé du témoin : ',
  'Witness {0} listens on {1} and knows {2}. Ctrl-C ends it.':
    "Le témoin {0} écoute sur {1} et connaît {2}. Ctrl-C l'arrête.",
  'Ended. All that was cosigned is on disk.': 'Terminé. Tout ce qui a été cosigné est sur le disque.',
  ' (and {0} more)': ' (et {0} autres)',
  'no permission for this place': 'pas de droit sur cet emplacement',
  'Check the rights on it, or name another place.': 'Vérifier les droits, ou nommer un autre emplacement.',
  'nothing can be written here: the file system is read-only':
    'rien ne peut être écrit ici : le système de fichiers est en lecture seule',
  'Name another place.': 'Nommer un autre emplacement.',
  'the disk is full': 'le disque est plein',
  'Make room on it, or name a place on another one.':
    'Y faire de la place, ou nommer un emplacement sur un autre.',
  'the disk is full: no more may be kept on it': 'le disque est plein : on ne peut rien y garder de plus',
  'the disk did not do what was asked of it': "le disque n'a pas fait ce qui lui était demandé",
  'Check the disk, or name a place on another one.':
    'Vérifier le disque, ou nommer un emplacement sur un autre.',
  'this is a folder, and a file was expected': "c'est un dossier, un fichier était attendu",
  'Name a file.': 'Nommer un fichier.',
  'a part of this path is a file, and a folder was expected':
    'une partie de ce chemin est un fichier, un dossier était attendu',
  'Check the path.': 'Vérifier le chemin.',
  'there is no such file or folder': "il n'y a pas de tel fichier ou dossier",
  'something lies here already': 'quelque chose est déjà là',
  'the name is too long for this file system': 'le nom est trop long pour ce système de fichiers',
  'Name it shorter.': 'Le nommer plus court.',
  'links lead from here in a circle': "des liens tournent en rond à partir d'ici",
  'the program may not open as many files as it needs':
    "le programme ne peut pas ouvrir autant de fichiers qu'il en faut",
  'Allow it at least 256: ulimit -n 256, or LimitNOFILE= of the service that starts it.':
    'Lui en permettre au moins 256 : ulimit -n 256, ou LimitNOFILE= du service qui le lance.',
  'this computer has no more files to open': 'cet ordinateur ne peut plus ouvrir de fichiers',
  'Close other programs, then try again.': "Fermer d'autres programmes, puis réessayer.",
  'standard input': 'entrée standard',
  'no such file': 'pas de tel fichier',
  'no permission to read it': 'pas de droit de lecture',
  'Check the rights on it.': 'Vérifier les droits.',
  'it is a folder': "c'est un dossier",
  'it is a device': "c'est un périphérique",
  'Name a file, or - for the standard input.': "Nommer un fichier, ou - pour l'entrée standard.",
  'it is a terminal': "c'est un terminal",
  'Pipe a file into the command, or name one.': 'Diriger un fichier vers la commande, ou en nommer un.',
  'the {0} cannot be read: {1}': 'illisible ({0}) : {1}',
  'the {0} is larger than {1} MB': 'trop grand ({0}) : plus de {1} Mo',
  'This is hardly the right file.': "Ce n'est sans doute pas le bon fichier.",
  'the name of the folder is empty': 'le nom du dossier est vide',
  'Name a folder.': 'Nommer un dossier.',
  'this is a link, and no file is written through a link':
    "c'est un lien, et aucun fichier n'est écrit à travers un lien",
  'Name the file itself, or a new one.': 'Nommer le fichier lui-même, ou un nouveau.',
  'a file is there already': 'un fichier est déjà là',
  'the file cannot be written': 'le fichier ne peut pas être écrit',
  'Name another file with --out.': 'Nommer un autre fichier avec --out.',
  'This is not a figure.': "Ce n'est pas une valeur.",
  'Too soon after the last reading: not taken.': 'Trop tôt après la dernière valeur : pas prise.',
  'The pull was cut off. Pull again.': 'La traction a été coupée. Tirer à nouveau.',
  "The pull reached the end of the tool's scale. Pull again.":
    "La traction a atteint la fin de l'échelle de l'outil. Tirer à nouveau.",
  'That pull loosened: not taken.': 'Cette traction desserrait : pas prise.',
  'A reading from the memory of the tool is not taken: nobody saw which part it belongs to.':
    "Une valeur de la mémoire de l'outil n'est pas prise : personne n'a vu à quelle pièce elle appartient.",
  'The tool sent no value. Measure again.': "L'outil n'a envoyé aucune valeur. Mesurer à nouveau.",
};
