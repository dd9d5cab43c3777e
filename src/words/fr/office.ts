/** French for the commands of the office. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  'Give it as "plugmark devices scan" shows it.': 'Donnez-le comme « plugmark devices scan » le montre.',
  'Record the device again.': "Enregistrez l'appareil encore une fois.",
  'the characteristic {0} sent packets, and the capture does not list it as one that sends':
    'la caractéristique {0} a envoyé des paquets, et la capture ne la compte pas parmi celles qui envoient',
  'this is longer than any serial number': "c'est plus long que tout numéro de série",
  'this is no UUID of 4 or 32 digits': "ce n'est pas un UUID de 4 ou 32 chiffres",
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
  '{0}, the last entry {1}': '{0}, dernière entrée {1}',
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
  'All {0} entries are as they were written, and the hash tree over them is whole.':
    "Les {0} entrées sont telles qu'elles ont été écrites, et l'arbre de hachage au-dessus est intact.",
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
  'Ask what law and contracts require. Then name it: --years 7. Each shop of an archive may have its own.':
    "Demander ce qu'exigent la loi et les contrats. Puis l'indiquer : --years 7. Chaque atelier d'une archive peut avoir la sienne.",
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
  'complete; its # entry is unchanged|complete; all # entries are unchanged': {
    one: 'complet ; sa seule entrée est inchangée',
    other: 'complet ; les # entrées sont inchangées',
  },
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
  "# key, the station's own|# keys, the station's own among them": {
    one: '# clé, celle du poste',
    other: '# clés, dont celle du poste',
  },
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
    "Ses clés de vérification sont dans {0} : les donner à ceux qui vérifient. Ce qu'elle garde, immatriculations et noms compris, est dans ce dossier ou dans la base de données que vous nommez : garder les deux comme les livres de l'atelier.",
  'To be safe in a network: name --certificate and --key when it listens beyond this computer; it refuses to do so without them. Nobody can enrol a station without a one-time token of yours.':
    'Pour être sûre dans un réseau : nommer --certificate et --key quand elle écoute au-delà de cet ordinateur ; elle le refuse sans eux. Personne ne peut inscrire un poste sans un jeton à usage unique de votre part.',
  'Next: plugmark archive enrol --tenant SHOP, then plugmark archive serve.':
    'Ensuite : plugmark archive enrol --tenant SHOP, puis plugmark archive serve.',
  'this station has joined an archive already': 'ce poste a déjà rejoint une archive',
  'Remove the file to join another one; what the first one has, it keeps.':
    'Retirer le fichier pour en rejoindre une autre ; ce que la première a, elle le garde.',
  'the archive has a log of the same origin already, with another key or of another tenant':
    "l'archive a déjà un journal de même origine, avec une autre clé ou d'un autre locataire",
  "If this folder is a copy of another station's, set up a station of its own: plugmark setup. If this station has a new key, have it taken in there: plugmark archive take-key.":
    "Si ce dossier est la copie de celui d'un autre poste, installer un poste à part : plugmark setup. Si ce poste a une nouvelle clé, la faire prendre en compte là-bas : plugmark archive take-key.",
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
  'something lies here already, and is not overwritten by a pseudo-terminal':
    "quelque chose est déjà là, et un pseudo-terminal ne l'écrase pas",
  'Name another port in the scenario, or remove it.': "Nommer un autre port dans le scénario, ou l'enlever.",
  'this is no plain name for a pseudo-terminal': "ce n'est pas un nom simple de pseudo-terminal",
  'Name a port with letters, digits, dots, dashes and slashes alone, such as /tmp/wrench.':
    'Nommer un port avec seulement des lettres, chiffres, points, tirets et barres obliques, comme /tmp/wrench.',
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
  'prints the help of a command': "affiche l'aide d'une commande",
  'prints this help': 'affiche cette aide',
  'prints the version': 'affiche la version',
  'Guides and proves a spark plug job: every gap and every pull of the torque wrench, judged and signed.':
    'Guide et prouve un remplacement de bougies : chaque écartement et chaque traction de la clé dynamométrique, jugés et signés.',
  'keep it in PostgreSQL instead of a file there: postgres://user@host/name':
    "le garder dans PostgreSQL au lieu d'un fichier là : postgres://user@host/name",
  'the folder of the archive': "le dossier de l'archive",
  'keeps the logs of many stations, and cosigns each for as long as it only goes on':
    "garde les journaux de nombreux postes, et cosigne chacun tant qu'il ne fait que continuer",
  'its name, like an address: example.com/archive': 'son nom, comme une adresse : example.com/archive',
  'makes an archive: its key, and the folder that it is in':
    'crée une archive : sa clé, et le dossier qui la contient',
  'for this log alone: what "plugmark log vkey" prints before the first +':
    'pour ce journal seul : ce qu\'affiche "plugmark log vkey" avant le premier +',
  'the shop or the fleet that the station belongs to': "l'atelier ou le parc dont fait partie le poste",
  'prints a one-time token with which a station joins':
    "affiche un jeton à usage unique avec lequel un poste rejoint l'archive",
  'what "plugmark log vkey" prints there': 'ce qu\'y affiche "plugmark log vkey"',
  'takes in the new key of a station that lost its old one':
    "prend la nouvelle clé d'un poste qui a perdu l'ancienne",
  'the origin of its log, as "plugmark archive stations" prints it':
    'l\'origine de son journal, telle que l\'affiche "plugmark archive stations"',
  'prints a one-time token with which a lost station gets its log back':
    'affiche un jeton à usage unique avec lequel un poste perdu récupère son journal',
  'listen without TLS beyond this computer, because a proxy in front does it':
    "écouter sans TLS au-delà de cet ordinateur, parce qu'un proxy devant le fait",
  'with --certificate: its key (PEM)': 'avec --certificate : sa clé (PEM)',
  'its certificate for TLS (PEM), with those above it': 'son certificat TLS (PEM), avec ceux au-dessus',
  'address and port': 'adresse et port',
  'takes what stations ship until you end it':
    "prend ce qu'envoient les postes jusqu'à ce que vous l'arrêtiez",
  'lists the stations and how much of their logs is here':
    'liste les postes et ce qui est ici de leurs journaux',
  'a station showed two histories': 'un poste a montré deux histoires',
  'prints the notes that prove two histories of a log':
    "affiche les points de contrôle qui prouvent deux histoires d'un journal",
  'reads all that is kept and holds it against what was cosigned':
    'lit tout ce qui est gardé et le compare à ce qui a été cosigné',
  'something kept was changed or is missing': 'quelque chose de gardé a été changé ou manque',
  'where it answers': 'où elle répond',
  'at a station: joins an archive by its one-time token':
    'au poste : rejoint une archive avec son jeton à usage unique',
  'only up to the last checkpoint that was signed, for which no key is needed':
    "seulement jusqu'au dernier point de contrôle signé, pour lequel aucune clé n'est nécessaire",
  'at a station: ships all that the archive has not got, and keeps its receipt':
    "au poste : envoie tout ce que l'archive n'a pas, et garde son reçu",
  'at a station: says how much of the log the archive has': "au poste : dit ce que l'archive a du journal",
  'the archive has more of the log than the station': "l'archive a plus du journal que le poste",
  'a tool was out of tolerance at calibration: which proofs still hold, which vehicles to recall':
    "un outil était hors tolérance à l'étalonnage : quelles preuves tiennent encore, quels véhicules rappeler",
  "folder for the PDF and the lists; that of the station's data unless given":
    'dossier du PDF et des listes ; celui des données du poste si omis',
  'the last good check, if the log leaves it open: NUMBER or "NUMBER of DATE"':
    'le dernier bon contrôle, si le journal le laisse ouvert : NUMBER ou "NUMBER of DATE"',
  'who assesses': 'qui évalue',
  'what the laboratory found, in the form of a certificate':
    'ce que le laboratoire a constaté, sous forme de certificat',
  'the tool, as in the station file': "l'outil, comme dans le fichier de poste",
  'judges everything since the last good check again; runs where you name no other command':
    "juge à nouveau tout depuis le dernier bon contrôle ; se lance si aucune autre commande n'est nommée",
  'every proof still holds': 'chaque preuve tient encore',
  'some proofs do not hold': 'certaines preuves ne tiennent pas',
  'an input is not as it should be; nothing was written':
    "une entrée n'est pas comme elle devrait ; rien n'a été écrit",
  'only those that are still open': 'seulement ceux encore ouverts',
  'lists all impact assessments, the latest first':
    "liste toutes les analyses d'impact, la plus récente d'abord",
  'write its PDF and its list of vehicles again, into this folder':
    'réécrire son PDF et sa liste de véhicules dans ce dossier',
  'the impact assessment, such as IA-1': "l'analyse d'impact, comme IA-1",
  'shows the jobs that an impact assessment touches, and what was decided':
    "montre les ordres que touche une analyse d'impact, et ce qui a été décidé",
  'who decides': 'qui décide',
  why: 'pourquoi',
  'with redone: the later job; found by the vehicle unless given':
    "avec redone : l'ordre ultérieur ; trouvé par le véhicule si omis",
  'the jobs; part of a number is enough where it fits only one':
    "les ordres ; une partie du numéro suffit si elle n'en désigne qu'un",
  'decides what happens to jobs that it touches': 'décide de ce qui arrive aux ordres touchés',
  'recall: call the vehicle back; inform: its owner was told; accept: leave it as it is; redone: done again':
    'recall : rappeler le véhicule ; inform : son propriétaire a été prévenu ; accept : le laisser tel quel ; redone : refait',
  'all jobs of this sort that are not decided yet': 'tous les ordres de cette sorte pas encore décidés',
  'who closes it': 'qui la clôt',
  'why it can be closed': 'pourquoi elle peut être close',
  'closes an impact assessment, once every job is decided and every recall redone':
    "clôt une analyse d'impact, une fois chaque ordre décidé et chaque rappel refait",
  'the answer as CSV': 'la réponse en CSV',
  'every pull and gap reading instead of the jobs':
    "chaque traction et chaque mesure d'écartement au lieu des ordres",
  'only what needs an explanation, with the reason':
    'seulement ce qui demande une explication, avec le motif',
  'finds jobs or attempts by vehicle, fleet, part, lot, person, tool or day':
    'trouve des ordres ou des essais par véhicule, parc, pièce, lot, personne, outil ou jour',
  'personal texts that are withheld, as "plugmark share" takes them':
    'textes personnels retenus, comme les prend "plugmark share"',
  'records without their PDFs: a quarter of the size, a fifth of the time':
    'relevés sans leurs PDF : un quart de la taille, un cinquième du temps',
  'only jobs that need an explanation': 'seulement les ordres qui demandent une explication',
  'the checkpoint that the auditor kept from before': "le point de contrôle que l'auditeur a gardé d'avant",
  'a new folder': 'un nouveau dossier',
  'writes a folder for an auditor: records, proofs and an index, to be checked offline':
    'écrit un dossier pour un auditeur : relevés, preuves et un index, à vérifier hors ligne',
  'the log does not go on from the checkpoint; no package was written':
    "le journal ne prolonge pas le point de contrôle ; aucun paquet n'a été écrit",
  'also of jobs that are open, in an open impact assessment, or inside the retention time':
    "aussi d'ordres ouverts, dans une analyse d'impact ouverte, ou dans la durée de conservation",
  'without asking': 'sans demander',
  'somebody who worked, answered or decided': "quelqu'un qui a travaillé, répondu ou décidé",
  'a customer': 'un client',
  'a fleet number': 'un numéro de parc',
  'a VIN': 'un VIN',
  'a number plate, and every free text with it': 'une immatriculation, et chaque texte libre qui la contient',
  'deletes personal texts from the log for good; every signature and verdict stays':
    'supprime pour de bon des textes personnels du journal ; chaque signature et chaque verdict reste',
  'nothing was deleted; or another program keeps the texts until it is closed':
    "rien n'a été supprimé ; ou un autre programme garde les textes jusqu'à sa fermeture",
  'every job, as CSV': 'chaque ordre, en CSV',
  'the retention time, instead of the one in the station file':
    'la durée de conservation, au lieu de celle du fichier de poste',
  'shows how old the records are, and what the retention time of the shop says':
    "montre l'âge des relevés, et ce qu'en dit la durée de conservation de l'atelier",
  'records without their PDFs': 'relevés sans leurs PDF',
  'the checkpoint that the other side kept from before':
    "le point de contrôle que l'autre partie a gardé d'avant",
  'only jobs opened on this day (UTC) or earlier': 'seulement les ordres ouverts ce jour (UTC) ou avant',
  'only jobs opened on this day (UTC) or later': 'seulement les ordres ouverts ce jour (UTC) ou après',
  'the vehicle, by its fleet number': 'le véhicule, par son numéro de parc',
  'the vehicle, by its plate': 'le véhicule, par son immatriculation',
  'the vehicle, by its VIN': 'le véhicule, par son VIN',
  'number or name of the claim': 'numéro ou nom de la réclamation',
  'writes the file of a claim about one vehicle: what was known then, what was learned since':
    "écrit le dossier d'une réclamation sur un véhicule : ce qui était connu alors, ce qui a été appris depuis",
  'the log does not go on from the checkpoint; nothing was written':
    "le journal ne prolonge pas le point de contrôle ; rien n'a été écrit",
  'the copy; a file that does not exist yet': "la copie ; un fichier qui n'existe pas encore",
  'copies the station log, also while a job runs, and checks the whole copy':
    'copie le journal du poste, même pendant un ordre, et vérifie toute la copie',
  'restore even if the log has entries that the backup lacks; they are kept beside it':
    "restaurer même si le journal a des entrées que la sauvegarde n'a pas ; elles sont gardées à côté",
  'in place of a backup: what the archive has, by its one-time token':
    "au lieu d'une sauvegarde : ce qu'a l'archive, avec son jeton à usage unique",
  'the backup': 'la sauvegarde',
  'checks a whole backup and puts it in the place of the station log':
    'vérifie toute une sauvegarde et la met à la place du journal du poste',
  "the keys that you trust (JWK set); the station's own list unless given":
    'les clés auxquelles vous vous fiez (JWK set) ; la liste du poste si omis',
  'a folder of exported records, to fill gaps or where the log is gone':
    'un dossier de relevés exportés, pour combler des lacunes ou si le journal a disparu',
  'the new log; a file that does not exist yet': "le nouveau journal ; un fichier qui n'existe pas encore",
  'saves what can be read of a damaged station log and of exported records into a new log':
    "sauve ce qui se lit d'un journal endommagé et de relevés exportés dans un nouveau journal",
  'everything known was saved': 'tout ce qui est connu a été sauvé',
  'something is lost; the output says what': 'quelque chose est perdu ; la sortie dit quoi',
  "the folder of the station's data, instead of a station file":
    "le dossier des données du poste, au lieu d'un fichier de poste",
  'the station file': 'le fichier de poste',
  'CSV as spreadsheets of that language read it, for example de; none: without byte order mark':
    "CSV tel que le lisent les tableurs de cette langue, par exemple de ; none : sans marque d'ordre des octets",
  'language of the papers; else as the station file says, or English':
    "langue des documents ; sinon celle du fichier de poste, ou l'anglais",
  'units on the papers; else as the station file says, or N·m and mm':
    'unités des documents ; sinon celles du fichier de poste, ou N·m et mm',
  'Bluetooth tools: find them, adopt them, record what they send':
    "outils Bluetooth : les trouver, les adopter, enregistrer ce qu'ils envoient",
  'do not connect to ask for serial numbers': 'ne pas se connecter pour demander les numéros de série',
  'list every device, not only measuring tools':
    'lister tous les appareils, pas seulement les outils de mesure',
  'also look for the device in this profile': "chercher aussi l'appareil de ce profil",
  'how long to listen': "durée d'écoute",
  'lists the measuring tools in reach, with their serial numbers':
    'liste les outils de mesure à portée, avec leurs numéros de série',
  'the profile of the device, as the station file is to name it':
    "le profil de l'appareil, tel que le fichier de poste doit le nommer",
  'which tool of the station file it is': "quel outil du fichier de poste c'est",
  'as "devices scan" lists it': 'comme le liste "devices scan"',
  'makes a device a tool of the station, by its serial number and address':
    "fait d'un appareil un outil du poste, par son numéro de série et son adresse",
  'how long; Ctrl-C stops sooner': 'combien de temps ; Ctrl-C arrête plus tôt',
  'the capture; a file that does not exist yet': "la capture ; un fichier qui n'existe pas encore",
  'records every byte that a device sends, in a file that "plugmark job" can play':
    'enregistre chaque octet qu\'envoie un appareil, dans un fichier que "plugmark job" peut rejouer',
  'drivers: profiles without code, and packages of others':
    "pilotes : profils sans code, et paquets d'autres",
  'what was sent, in hexadecimal digits; may be given several times':
    'ce qui a été envoyé, en chiffres hexadécimaux ; peut être donné plusieurs fois',
  'the profile (JSON)': 'le profil (JSON)',
  'checks a profile and shows what it makes of bytes': "vérifie un profil et montre ce qu'il fait d'octets",
  'name of the package (plugmark-driver-...), its folder, or a profile (JSON)':
    'nom du paquet (plugmark-driver-...), son dossier, ou un profil (JSON)',
  'tries a driver package, or a profile, with cut, lost, doubled and damaged bytes':
    'essaie un paquet de pilote, ou un profil, avec des octets coupés, perdus, doublés et endommagés',
  'a check failed': 'un contrôle a échoué',
  'the profile; a file that does not exist yet': "le profil ; un fichier qui n'existe pas encore",
  'a name for the device': "un nom pour l'appareil",
  'the service that it advertises; that of its readings unless given':
    "le service qu'il annonce ; celui de ses valeurs si omis",
  'FIGURE=FILE: one more, which is kept back to prove the profile with':
    'FIGURE=FILE : une de plus, gardée à part pour prouver le profil',
  'FIGURE=FILE: a capture, with what the display showed; three at least':
    "FIGURE=FILE : une capture, avec ce que montrait l'affichage ; trois au moins",
  'a capture of it untouched': 'une capture de lui au repos',
  'smallest step of its display': 'plus petit pas de son affichage',
  'unit of its display: N.m, lbf.ft, mm and the like': 'unité de son affichage : N.m, lbf.ft, mm et autres',
  'no profile explains all of it, or more than one': "aucun profil n'explique tout, ou plus d'un",
  'with a package: the checkpoint that you kept from before':
    "avec un paquet : le point de contrôle que vous avez gardé d'avant",
  'with --time: the certificates of its authority (PEM)':
    'avec --time : les certificats de son autorité (PEM)',
  'a time stamp for the record (*.tsr)': 'un horodatage du relevé (*.tsr)',
  'which logs you trust, which witnesses must have cosigned, and how many (C2SP tlog-policy)':
    'à quels journaux vous vous fiez, quels témoins doivent avoir cosigné, et combien (C2SP tlog-policy)',
  'the keys that you trust (JWK set), never the list in a package; trusted-keys.json unless given':
    "les clés auxquelles vous vous fiez (JWK set), jamais la liste d'un paquet ; trusted-keys.json si omis",
  'a record (*.record.json), its paper (PDF), a package, or a folder of records; - reads the standard input':
    "un relevé (*.record.json), son document (PDF), un paquet, ou un dossier de relevés ; - lit l'entrée standard",
  'checks that a job record, an audit package, or every record in a folder is authentic':
    "vérifie qu'un relevé d'ordre, un paquet d'audit, ou chaque relevé d'un dossier est authentique",
  'authentic, signed by somebody you trust; a single record is complete and proven too':
    "authentique, signé par quelqu'un à qui vous vous fiez ; un relevé seul est aussi complet et prouvé",
  'not authentic; a single record that is not complete, or rests on simulated or replayed figures; or a paper that is not what its record gives':
    "pas authentique ; un relevé seul incomplet, ou fondé sur des valeurs simulées ou rejouées ; ou un document qui n'est pas ce que donne son relevé",
  'not readable as a record or a package': 'illisible comme relevé ou paquet',
  'as it was sealed, but the signer is not on your trust list':
    "tel que scellé, mais le signataire n'est pas sur votre liste de confiance",
  'authentic, but judged by rules that this version does not know; or a paper that another version drew':
    'authentique, mais jugé selon des règles que cette version ne connaît pas ; ou un document dessiné par une autre version',
  'the keys that you trust (JWK set); trusted-keys.json unless given':
    'les clés auxquelles vous vous fiez (JWK set) ; trusted-keys.json si omis',
  'with --svg: which pull; the last one that was judged unless given':
    'avec --svg : quelle traction ; la dernière jugée si omis',
  'instead, a picture of one pull with its window': "à la place, une image d'une traction avec sa fenêtre",
  'lines of text, without keys': 'lignes de texte, sans touches',
  'the record (*.record.json)': 'le relevé (*.record.json)',
  'shows a record: verdicts, times of the steps, and each pull as a curve':
    'montre un relevé : verdicts, heures des étapes, et chaque traction en courbe',
  'shown, but not authentic, or the job is not complete or not proven':
    "montré, mais pas authentique, ou l'ordre est incomplet ou non prouvé",
  'shown, but the signer is not on your trust list':
    "montré, mais le signataire n'est pas sur votre liste de confiance",
  'shown, but judged by rules that this version does not know':
    'montré, mais jugé selon des règles que cette version ne connaît pas',
  'folder for the papers': 'dossier des documents',
  'makes the PDF and the CSV of a record again, from the record alone':
    "refait le PDF et le CSV d'un relevé, à partir du seul relevé",
  'not authentic, and no paper was written; or written, but the job is not complete or not proven':
    "pas authentique, et aucun document écrit ; ou écrit, mais l'ordre est incomplet ou non prouvé",
  'written, but the signer is not on your trust list':
    "écrit, mais le signataire n'est pas sur votre liste de confiance",
  'written, but judged by rules that this version does not know':
    'écrit, mais jugé selon des règles que cette version ne connaît pas',
  'file for the results; the standard output unless given':
    'fichier des résultats ; la sortie standard si omis',
  'writes the results of a record as JSON in the names of OPC UA for joining systems':
    "écrit les résultats d'un relevé en JSON avec les noms d'OPC UA pour les systèmes d'assemblage",
  'not authentic, and nothing was written; or the job is not complete or not proven':
    "pas authentique, et rien n'a été écrit ; ou l'ordre est incomplet ou non prouvé",
  'file for the page (*.html), which does not exist yet':
    "fichier de la page (*.html), qui n'existe pas encore",
  'writes a page with a record inside, which verifies itself in any browser':
    'écrit une page avec un relevé dedans, qui se vérifie elle-même dans tout navigateur',
  'the record is not as its station sealed it, and no page was written':
    "le relevé n'est pas tel que son poste l'a scellé, et aucune page n'a été écrite",
  'file for the countersigned record': 'fichier du relevé contresigné',
  'the key that signs (PEM)': 'la clé qui signe (PEM)',
  'the record': 'le relevé',
  'adds a signature to a record, as a new file': 'ajoute une signature à un relevé, dans un nouveau fichier',
  'file for the shared record': 'fichier du relevé partagé',
  'keep free texts that contain a telephone number; they are withheld unless asked for':
    'garder les textes libres qui contiennent un numéro de téléphone ; ils sont retenus sauf demande',
  'what is withheld, with commas: plate, vin, vehicle, fleet, customer, complaint, person (names), note (free text); or all':
    'ce qui est retenu, avec des virgules : plate, vin, vehicle, fleet, customer, complaint, person (noms), note (texte libre) ; ou all',
  'writes a record without some of its personal texts; signatures and verdict stay the same':
    'écrit un relevé sans certains de ses textes personnels ; signatures et verdict restent les mêmes',
  'the certificates of the authority (PEM)': "les certificats de l'autorité (PEM)",
  'address of the time-stamping authority': "adresse de l'autorité d'horodatage",
  'fetches a trusted time stamp (RFC 3161) for a record':
    'obtient un horodatage de confiance (RFC 3161) pour un relevé',
  'checkpoints and proofs of the station log': 'points de contrôle et preuves du journal du poste',
  'write it to this file, which does not exist yet': "l'écrire dans ce fichier, qui n'existe pas encore",
  'signs the log as it is now; keep the checkpoint elsewhere':
    "signe le journal tel qu'il est ; garder le point de contrôle ailleurs",
  'prints the key that checkpoints are checked by (C2SP verifier key)':
    'affiche la clé qui vérifie les points de contrôle (C2SP verifier key)',
  'sends what is new to the archive and to the witnesses; every job does so by itself':
    "envoie ce qui est nouveau à l'archive et aux témoins ; chaque ordre le fait de lui-même",
  'all have it': "tous l'ont",
  'one has not; the output says why': "l'un ne l'a pas ; la sortie dit pourquoi",
  'sends the newest checkpoint to the witnesses of the station file':
    'envoie le dernier point de contrôle aux témoins du fichier de poste',
  'all cosigned': 'tous ont cosigné',
  'one did not; the output says why': "l'un ne l'a pas fait ; la sortie dit pourquoi",
  'proofs that other programs can check (RFC 9162), as JSON':
    "preuves que d'autres programmes peuvent vérifier (RFC 9162), en JSON",
  'its number': 'son numéro',
  'proves that the log contains an entry': 'prouve que le journal contient une entrée',
  'JSON, or the text of c2sp.org/tlog-proof': 'JSON, ou le texte de c2sp.org/tlog-proof',
  'the checkpoint, or a record, which contains one': 'le point de contrôle, ou un relevé, qui en contient un',
  'proves that the log goes on from an old checkpoint':
    'prouve que le journal prolonge un ancien point de contrôle',
  'the log does not go on from the checkpoint': 'le journal ne prolonge pas le point de contrôle',
  'what happened': "ce qui s'est passé",
  'states that entries are gone for good, so that the station can sign again':
    'déclare que des entrées sont perdues pour de bon, pour que le poste puisse signer à nouveau',
  'checkpoints that were kept, or records, which contain one each':
    'points de contrôle gardés, ou relevés, qui en contiennent un chacun',
  'checks that nothing in the log was removed or changed, or says where':
    "vérifie que rien n'a été retiré ou changé dans le journal, ou dit où",
  'nothing was removed or changed': "rien n'a été retiré ni changé",
  'something was removed or changed': 'quelque chose a été retiré ou changé',
  'the keys of the station and its people': 'les clés de signature du poste et de ses personnes',
  'lists all keys, and which of them sign; runs where you name no other command':
    "liste toutes les clés, et celles qui signent ; se lance si aucune autre commande n'est nommée",
  'keep the file of the old key, under a passphrase; it is destroyed unless given':
    "garder le fichier de l'ancienne clé, sous une phrase secrète ; détruit si omis",
  'also where records here are of entries that the log lost, and have no proof then':
    "même si des relevés ici sont d'entrées que le journal a perdues, et n'ont alors aucune preuve",
  'with --pkcs11: the token, by its label': 'avec --pkcs11 : le jeton, par son étiquette',
  'make the new key in a device, by the module (PKCS#11) of its maker; with --token':
    'faire la nouvelle clé dans un appareil, par le module (PKCS#11) de son fabricant ; avec --token',
  'with --lost: what happened': "avec --lost : ce qui s'est passé",
  'the old key is lost or not to be trusted, and cannot vouch for the new one':
    "l'ancienne clé est perdue ou n'est pas sûre, et ne peut pas garantir la nouvelle",
  'makes a new key for the station; the old one vouches for it':
    "fait une nouvelle clé pour le poste ; l'ancienne la garantit",
  'from this day on; now unless given': 'à partir de ce jour ; maintenant si omis',
  'the key, by its thumbprint': 'la clé, par son empreinte',
  'revokes a key: from that day on nobody is to trust it':
    "révoque une clé : à partir de ce jour personne ne doit s'y fier",
  'take the passphrase off': 'enlever la phrase secrète',
  'puts all keys of the station that are here under a passphrase':
    'met toutes les clés du poste qui sont ici sous une phrase secrète',
  'writes over and deletes the file of a key that signs no more':
    "écrase et supprime le fichier d'une clé qui ne signe plus",
  'name of the technician': 'nom du technicien',
  'makes a key for a technician, under a PIN': 'fait une clé pour un technicien, sous un PIN',
  'decides whether technicians sign': 'décide si les techniciens signent',
  'what the shop decides': "ce que décide l'atelier",
  'name of the owner, as trust lists show it':
    'nom du titulaire, tel que le montrent les listes de confiance',
  'file for the key (PEM); it does not exist yet': "fichier de la clé (PEM) ; il n'existe pas encore",
  'makes a key for somebody outside the station, such as a foreman who countersigns':
    "fait une clé pour quelqu'un hors du poste, comme un chef d'atelier qui contresigne",
  'what the key signs as': 'en quelle qualité la clé signe',
  'why it is revoked': 'pourquoi elle est révoquée',
  'which one; a command with --json has one for its answer, such as jobs-list':
    'laquelle ; une commande avec --json en a une pour sa réponse, comme jobs-list',
  'prints the JSON Schema of a form that plugmark reads or writes, or the list of all forms':
    "affiche le schéma JSON d'une forme que plugmark lit ou écrit, ou la liste de toutes",
  'prints the completion of commands and options for a shell':
    'affiche la complétion des commandes et options pour un shell',
  'your shell': 'votre shell',
  'write all pages for man into this folder': 'écrire toutes les pages pour man dans ce dossier',
  'as a page for man': 'comme page pour man',
  'which one; "commands" is the reference of all commands':
    'lequel ; "commands" est la référence de toutes les commandes',
  'prints a topic of the manual, or the list of topics': 'affiche un sujet du manuel, ou la liste des sujets',
  'the words of the command line so far': "les mots de la ligne de commande jusqu'ici",
  'tool, job, open-job, person, impact, study or kid': 'tool, job, open-job, person, impact, study ou kid',
  'prints names of this station for the completion of a shell, one a line':
    "affiche des noms de ce poste pour la complétion d'un shell, un par ligne",
  'also write a PDF and the charts as SVG; each of several groups into its own folder':
    'écrire aussi un PDF et les graphiques en SVG ; chaque groupe dans son propre dossier',
  'how many readings the charts show': 'combien de valeurs montrent les graphiques',
  'gaps instead of torques': 'écartements au lieu des couples',
  'only this cylinder': 'seulement ce cylindre',
  'one specification, by its key or the start of it': 'une spécification, par sa clé ou le début de celle-ci',
  'shows what the process can do, by specification': 'montre ce que peut le procédé, par spécification',
  'one group for each': 'un groupe pour chacun',
  'shows the gaps of new plugs as they came, by part and lot':
    'montre les écartements des bougies neuves à réception, par pièce et lot',
  'also writes a PDF and the charts as SVG': 'écrit aussi un PDF et les graphiques en SVG',
  'how many days the chart shows': 'combien de jours montre le graphique',
  'how far it may be off; as stated for the tool unless given':
    "de combien il peut s'écarter ; comme indiqué pour l'outil si omis",
  'its serial number, or its name in the station file':
    'son numéro de série, ou son nom dans le fichier de poste',
  'shows whether a tool has drifted: by its pulls since calibration, and by its certificates':
    "montre si un outil a dérivé : par ses tractions depuis l'étalonnage, et par ses certificats",
  'nothing speaks against the tool': "rien ne parle contre l'outil",
  'WARNING or UNDECIDED: have the tool checked sooner':
    "ATTENTION ou INDÉCIS : faire contrôler l'outil plus tôt",
  'repeatability and reproducibility of a tool, measured with the tool':
    "répétabilité et reproductibilité d'un outil, mesurées avec l'outil",
  'no bell': 'sans son',
  'plain lines instead of the screen': "lignes simples au lieu de l'écran",
  'for a wrench: the torque of its pulls, in N·m': 'pour une clé : le couple de ses tractions, en N·m',
  'how often each person measures each part': 'combien de fois chaque personne mesure chaque pièce',
  'how many parts, or their names separated by commas':
    'combien de pièces, ou leurs noms séparés par des virgules',
  'who measures, separated by commas': 'qui mesure, séparé par des virgules',
  'which tool of the station file': 'quel outil du fichier de poste',
  'leads you through a study and computes it, by average and range and by analysis of variance':
    'guide dans une étude et la calcule, par moyenne et étendue et par analyse de variance',
  'go on with a study that was left open, such as GS-1': 'continuer une étude restée ouverte, comme GS-1',
  'you left before the first reading; nothing was kept':
    "quittée avant la première valeur ; rien n'a été gardé",
  'the study is still open; go on with: plugmark gauge-study run --resume':
    "l'étude est encore ouverte ; continuer avec : plugmark gauge-study run --resume",
  'lists all studies: made, open, given up': 'liste toutes les études : faites, ouvertes, abandonnées',
  'its number, such as GS-1': 'son numéro, comme GS-1',
  'shows one study': 'montre une étude',
  'gives up an open study; its readings stay in the log':
    'abandonne une étude ouverte ; ses valeurs restent dans le journal',
  'also write it for a calendar program (iCalendar)': "l'écrire aussi pour un agenda (iCalendar)",
  'the longest interval': "l'intervalle le plus long",
  'the shortest interval': "l'intervalle le plus court",
  'add the next interval, longer or shorter by what the laboratory found':
    "ajouter le prochain intervalle, plus long ou plus court selon ce qu'a constaté le laboratoire",
  'a tool is due soon this many days ahead': 'un outil arrive bientôt à échéance ce nombre de jours avant',
  'shows when each tool must be calibrated again': 'montre quand chaque outil doit être étalonné à nouveau',
  'no tool is due': "aucun outil n'est à échéance",
  'a tool is due, or out of tolerance': 'un outil est à échéance, ou hors tolérance',
  'calibration certificates, kept as files and found by their digest':
    "certificats d'étalonnage, gardés comme fichiers et retrouvés par leur empreinte",
  'the certificate that the file belongs to, for a scan':
    'le certificat dont relève le fichier, pour une numérisation',
  'the files; those in the station file unless given': 'les fichiers ; ceux du fichier de poste si omis',
  "keeps certificates in the folder of the station's data":
    'garde des certificats dans le dossier des données du poste',
  'checks that all kept certificates are there, unchanged':
    'vérifie que tous les certificats gardés sont là, inchangés',
  'all are there, unchanged': 'tous sont là, inchangés',
  'one is missing or changed': "l'un manque ou a changé",
  'unit of the torques: N·m, lbf·ft, lbf·in, kgf·m or kgf·cm':
    'unité des couples : N·m, lbf·ft, lbf·in, kgf·m ou kgf·cm',
  'column of the angles in degrees; angle_deg where the file has one':
    'colonne des angles en degrés ; angle_deg si le fichier en a une',
  'column of the torques': 'colonne des couples',
  'column of the times': 'colonne des temps',
  'unit of the times': 'unité des temps',
  'the tool sent the highest torque of each work cycle, not the torque itself':
    "l'outil a envoyé le couple le plus haut de chaque cycle, et non le couple lui-même",
  'lower limit of the window in N·m; what stays far below it is no pull':
    "limite inférieure de la fenêtre en N·m ; ce qui reste loin dessous n'est pas une traction",
  'the trace (CSV with a header line); - reads the standard input':
    "le tracé (CSV avec une ligne d'en-tête) ; - lit l'entrée standard",
  'finds the pulls in a torque trace and draws them':
    'trouve les tractions dans un tracé de couple et les dessine',
  'folder for the station log of the replay': 'dossier du journal de la relecture',
  '1 as recorded, 10 ten times as fast; as fast as it goes unless given':
    '1 comme enregistré, 10 dix fois plus vite ; au plus vite si omis',
  'the station file with the wrench; an example unless given':
    'le fichier de poste avec la clé ; un exemple si omis',
  'the work order; an example with four cylinders unless given':
    "l'ordre de travail ; un exemple à quatre cylindres si omis",
  'a recording (plugmark/readings/1) or a trace (CSV); - reads the standard input':
    "un enregistrement (plugmark/readings/1) ou un tracé (CSV) ; - lit l'entrée standard",
  'plays a recording or a trace through the whole program, as if the wrench were there':
    'rejoue un enregistrement ou un tracé dans tout le programme, comme si la clé était là',
  'you left before the recording ended': "quitté avant la fin de l'enregistrement",
  'the station file to write': 'le fichier de poste à écrire',
  'guides you through the first day: asks for station, tools and people, writes the station file':
    'guide le premier jour : demande poste, outils et personnes, écrit le fichier de poste',
  'you stopped; no station file was written': "vous avez arrêté ; aucun fichier de poste n'a été écrit",
  'the station file; the one at hand where there is one':
    "le fichier de poste ; celui qui est là s'il y en a un",
  'checks program, Bluetooth, log, key, clock, disk and terminal; changes nothing':
    'contrôle programme, Bluetooth, journal, clé, horloge, disque et terminal ; ne change rien',
  'everything that plugmark needs is there': "tout ce qu'il faut à plugmark est là",
  'something is missing': 'quelque chose manque',
  "the shop's own library of engines, plugs and figures":
    "la bibliothèque de l'atelier : moteurs, bougies et valeurs",
  'only those with all these words in their name, plug or source':
    'seulement celles qui ont tous ces mots dans leur nom, bougie ou source',
  'lists the specifications; runs where you name no other command':
    "liste les spécifications ; se lance si aucune autre commande n'est nommée",
  'its name, or words that no other one has': "son nom, ou des mots qu'aucune autre n'a",
  'shows one specification, with its engine drawn': 'montre une spécification, avec son moteur dessiné',
  'with --order: who enters it; the technician of the order unless given':
    "avec --order : qui la saisit ; le technicien de l'ordre si omis",
  'with --order: the name of the specification; that of the engine unless given':
    'avec --order : le nom de la spécification ; celui du moteur si omis',
  'the work order whose engine, plug and figures are kept':
    "l'ordre de travail dont moteur, bougie et valeurs sont gardés",
  'adds the figures of a work order, or asks for them one by one':
    "ajoute les valeurs d'un ordre de travail, ou les demande une à une",
  'you stopped; nothing was written': "vous avez arrêté ; rien n'a été écrit",
  'checks that each can be read, and that a job could be opened with it today':
    "vérifie que chacune se lit, et qu'un ordre pourrait être ouvert avec elle aujourd'hui",
  'all can be used': 'toutes sont utilisables',
  'one cannot be used': "l'une n'est pas utilisable",
  'the jobs in the station log: list, show, void, hand over':
    'les ordres du journal : lister, montrer, annuler, remettre',
  'only vehicles with this in their fleet number':
    'seulement les véhicules avec ceci dans leur numéro de parc',
  'only vehicles with this in their plate': 'seulement les véhicules avec ceci dans leur immatriculation',
  'only vehicles with this in their VIN': 'seulement les véhicules avec ceci dans leur VIN',
  'only jobs with this in their number': 'seulement les ordres avec ceci dans leur numéro',
  'lists jobs, the latest first; runs where you name no other command':
    "liste les ordres, le plus récent d'abord ; se lance si aucune autre commande n'est nommée",
  'shows where a job stands': 'montre où en est un ordre',
  'who declares it': 'qui le déclare',
  'declares a job void: its readings stay in the log and prove nothing':
    'déclare un ordre nul : ses valeurs restent dans le journal et ne prouvent rien',
  'who goes on with it': 'qui le continue',
  'gives an open job to another technician': 'remet un ordre ouvert à un autre technicien',
  "folder for the papers; that of the station's data unless given":
    'dossier des documents ; celui des données du poste si omis',
  'writes record, PDF and CSV of a closed job again, from the log':
    "réécrit relevé, PDF et CSV d'un ordre clos, à partir du journal",
  'written, but the job is not complete or not proven': "écrit, mais l'ordre est incomplet ou non prouvé",
  'written, but the job was declared void': "écrit, mais l'ordre a été déclaré nul",
  'judge certificates by this day instead of today': "juger les certificats à ce jour au lieu d'aujourd'hui",
  'also a picture of the window with the reading over it':
    'aussi une image de la fenêtre avec la valeur au-dessus',
  'standard deviation of the pulls of this shop; adds the risks':
    'écart type des tractions de cet atelier ; ajoute les risques',
  'add the four grades of ILAC-G8': "ajouter les quatre degrés d'ILAC-G8",
  'with probability: from 0.5 to 0.9999': 'avec probability : de 0.5 à 0.9999',
  'with guard-band: its width in U': 'avec guard-band : sa largeur en U',
  'readings a second that the wrench sends: says whether they are enough':
    "valeurs par seconde qu'envoie la clé : dit si cela suffit",
  'judge this reading of the wrench, for example "29.5 N·m"':
    'juger cette valeur de la clé, par exemple "29.5 N·m"',
  'with a universal joint: how far it is bent': 'avec un cardan : de combien il est plié',
  'with an adapter: 0 in line, 90 square, 180 folded back':
    "avec un adaptateur : 0 aligné, 90 d'équerre, 180 replié",
  'with an adapter: from the drive to the plug': "avec un adaptateur : de l'entraînement à la bougie",
  'with an adapter: from the drive to the hand': "avec un adaptateur : de l'entraînement à la main",
  'how far the wrench may be off, of the reading': "de combien la clé peut s'écarter, de la valeur",
  'take the wrench and the decision rule from this station file':
    'prendre la clé et la règle de décision de ce fichier de poste',
  'take the specification from this work order': 'prendre la spécification de cet ordre de travail',
  'as printed, for example "25-30 N·m"': 'comme imprimé, par exemple "25-30 N·m"',
  'shows the torque window of a specification: guard band, uncertainty, what a reading is worth':
    "montre la fenêtre de couple d'une spécification : bande de garde, incertitude, ce que vaut une valeur",
  'thread of the plug': 'filetage de la bougie',
  'seat of the plug': 'siège de la bougie',
  'cylinder head': 'culasse',
  'the threads that the torque is printed for': 'le filetage pour lequel le couple est imprimé',
  'the decision rule': 'la règle de décision',
  'this wrench can prove this window': 'cette clé peut prouver cette fenêtre',
  'it cannot, or the wrench would be refused': 'elle ne le peut pas, ou la clé serait refusée',
  'the folder of the witness': 'le dossier du témoin',
  'holds stations to their history: cosigns their logs for as long as nothing is rewritten':
    "tient les postes à leur histoire : cosigne leurs journaux tant que rien n'est réécrit",
  'its name, like an address: example.com/witness': 'son nom, comme une adresse : example.com/witness',
  'makes a witness: its key, and the file of what it cosigned':
    "crée un témoin : sa clé, et le fichier de ce qu'il a cosigné",
  'what "plugmark log vkey" prints at the station': 'ce qu\'affiche "plugmark log vkey" au poste',
  'lists the logs and what was cosigned last; runs where you name no other command':
    "liste les journaux et ce qui a été cosigné en dernier ; se lance si aucune autre commande n'est nommée",
  'a log has two histories': 'un journal a deux histoires',
  'answers logs over HTTP until you end it (C2SP tlog-witness)':
    "répond aux journaux par HTTP jusqu'à ce que vous l'arrêtiez (C2SP tlog-witness)",
  'language of the screen; else as the station file says':
    "langue de l'écran ; sinon celle du fichier de poste",
  'you press every key; the simulated technician does what this file says, a line each: fit 1, pull 1 careful, measure 1':
    'vous appuyez sur chaque touche ; le technicien simulé fait ce que dit ce fichier, un par ligne : fit 1, pull 1 careful, measure 1',
  'go on with the demo job that was left open in this folder':
    "continuer l'ordre de démonstration resté ouvert dans ce dossier",
  'the simulated wrench sends the highest torque of each pull, and nothing else':
    "la clé simulée envoie le couple le plus haut de chaque traction, et rien d'autre",
  'the wrench sends how far it was turned too': 'la clé envoie aussi de combien elle a été tournée',
  'join the simulated tools without the Bluetooth stack': 'joindre les outils simulés sans la pile Bluetooth',
  'folder for the station log, the record, the PDF and the CSV':
    'dossier du journal, du relevé, du PDF et du CSV',
  'do not wait for the simulated technician; plain lines instead of the screen':
    "ne pas attendre le technicien simulé ; lignes simples au lieu de l'écran",
  'another engine, other plugs, other habits': "un autre moteur, d'autres bougies, d'autres habitudes",
  'runs a whole job with simulated tools, on the live screen':
    "exécute un ordre entier avec des outils simulés, à l'écran",
  'cylinders of the engine': 'cylindres du moteur',
  'how the simulated technician works': 'comment travaille le technicien simulé',
  'units of the screen': "unités de l'écran",
  'how many times as fast': 'combien de fois plus vite',
  'the job was closed but is not complete': "l'ordre a été clos mais n'est pas complet",
  'you left the job open; it is kept': "vous avez laissé l'ordre ouvert ; il est gardé",
  'simulated tools that other programs, or a job, can join':
    "outils simulés que d'autres programmes, ou un ordre, peuvent joindre",
  'the scenario (JSON)': 'le scénario (JSON)',
  'a line of JSON for all that happens, to the end of a file, into a named pipe, or - for the standard output':
    "une ligne de JSON pour tout ce qui se passe, à la fin d'un fichier, dans un tube nommé, ou - pour la sortie standard",
  'with --override: why': 'avec --override : pourquoi',
  'with --override: the supervisor': 'avec --override : le responsable',
  'use a tool that would be refused; a supervisor answers for it':
    'utiliser un outil qui serait refusé ; un responsable en répond',
  'go on with the job that was left open; name it where several are open':
    "continuer l'ordre resté ouvert ; le nommer si plusieurs sont ouverts",
  'the work order, or - for the standard input; opens a new job without questions':
    "l'ordre de travail, ou - pour l'entrée standard ; ouvre un nouvel ordre sans questions",
  'runs a real job; asks for its figures, or takes them from a work order':
    "exécute un vrai ordre ; demande ses valeurs, ou les prend d'un ordre de travail",
  'the job is complete and proven': "l'ordre est complet et prouvé",
  'no job was opened, or the job was closed but is not complete or not proven':
    "aucun ordre n'a été ouvert, ou l'ordre a été clos mais est incomplet ou non prouvé",
  'the job is still open; go on with: plugmark job --resume':
    "l'ordre est encore ouvert ; continuer avec : plugmark job --resume",
  'the job was declared void': "l'ordre a été déclaré nul",
  'See: {0} --help': 'Voir : {0} --help',
  'The old log is never thrown away. It stays beside the restored one; the command prints where.':
    "L'ancien journal n'est jamais jeté. Il reste à côté du journal restauré ; la commande dit où.",
  'Exit codes:': 'Codes de sortie :',
  'Example:': 'Exemple :',
  'Examples:': 'Exemples :',
  'the answer as JSON; "plugmark schema {0}" prints its form':
    'la réponse en JSON ; "plugmark schema {0}" en affiche la forme',
  'expected a whole number.': 'attendu : un nombre entier.',
  'expected 1 or more.': 'attendu : 1 ou plus.',
  'expected a number above zero.': 'attendu : un nombre au-dessus de zéro.',
  'expected a number.': 'attendu : un nombre.',
  'of this vehicle; capitals, spaces and hyphens make no difference here and below':
    "de ce véhicule ; majuscules, espaces et traits d'union sont indifférents ici et plus bas",
  'of the vehicle with this plate': 'du véhicule de cette immatriculation',
  'of the vehicle with this fleet number': 'du véhicule de ce numéro de parc',
  'plugs of this part number': 'bougies de cette référence',
  'plugs of this lot': 'bougies de ce lot',
  'in which this person worked': 'où cette personne a travaillé',
  'with this tool, by its name or its serial number': 'avec cet outil, par son nom ou son numéro de série',
  'on this day (UTC) or later': 'ce jour (UTC) ou après',
  'on this day (UTC) or earlier': 'ce jour (UTC) ou avant',
  'expected {0} at most.': 'attendu : {0} au plus.',
  'default: {0}': 'par défaut : {0}',
  'Usage:': 'Usage :',
  'Arguments:': 'Arguments :',
  'Options:': 'Options :',
  'Commands:': 'Commandes :',
  'choices: {0}': 'choix : {0}',
  "unknown option '{0}'": "option inconnue '{0}'",
  "unknown command '{0}'": "commande inconnue '{0}'",
  "missing required argument '{0}'": "l'argument '{0}' manque",
  "option '{0}' argument missing": "il manque la valeur de l'option '{0}'",
  "required option '{0}' not specified": "l'option '{0}' doit être donnée",
  'too many arguments: expected {0}, found {1}': "trop d'arguments : attendu {0}, trouvé {1}",
  "'{0}': '{1}' is not valid. {2}": "'{0}' : '{1}' n'est pas valable. {2}",
  'Allowed choices are {0}.': 'Possibles : {0}.',
  '(Did you mean {0}?)': '(Vouliez-vous dire {0} ?)',
  done: 'fait',
  'done, and the answer is good': 'fait, et la réponse est bonne',
  failed: 'échec',
  'the answer is bad, or it could not be done; the output says why':
    "la réponse est mauvaise, ou ce n'était pas possible ; la sortie dit pourquoi",
  'bad input': 'mauvaise entrée',
  'the command line, a file or a device is not as it should be; one sentence says what to do':
    "la ligne de commande, un fichier ou un appareil n'est pas comme il devrait ; une phrase dit quoi faire",
  'other rules': 'autres règles',
  'made or judged by a newer version of the program, whose form or rules this one does not know':
    'fait ou jugé par une version plus récente du programme, dont celle-ci ne connaît pas la forme ou les règles',
  'left open': 'laissé ouvert',
  'not finished; all that was read is kept': 'pas terminé ; tout ce qui a été lu est gardé',
  'the job was declared void; its readings are kept and prove nothing':
    "l'ordre a été déclaré nul ; ses valeurs sont gardées et ne prouvent rien",
  fault: 'défaut',
  'a fault in the program itself; what was on disk is kept':
    'un défaut du programme lui-même ; ce qui était sur le disque est gardé',
  'Work on a cold engine with the ignition off, by hand, never with a power tool.':
    'Travailler moteur froid et contact coupé, à la main, jamais avec un outil motorisé.',
  'The service information of the engine maker decides every figure.':
    "Les documents d'atelier du motoriste décident de chaque valeur.",
  'This program checks the work and does not replace licensed practice.':
    'Ce programme contrôle le travail et ne remplace pas un professionnel qualifié.',
  'The topics of the manual are in English. The help of every command (--help) is not.':
    "Les sujets du manuel sont en anglais. L'aide de chaque commande (--help) ne l'est pas.",
  'Every command also has --help.': 'Chaque commande a aussi --help.',
  'the entries of this job are damaged': 'les entrées de cet ordre sont endommagées',
  'Run "plugmark log check". It names the first changed entry.':
    'Lancer "plugmark log check". Il nomme la première entrée changée.',
  'the file exists; a backup never overwrites a file':
    "le fichier existe ; une sauvegarde n'écrase jamais un fichier",
  'Name a new file.': 'Nommer un nouveau fichier.',
  'its pages do not fit together': 'ses pages ne vont pas ensemble',
  'this copy is damaged: {0}': 'cette copie est endommagée : {0}',
  'Use another backup.': 'Prendre une autre sauvegarde.',
  'there is no such file': "il n'y a pas de tel fichier",
  'this is a folder or a device, not a backup': "c'est un dossier ou un périphérique, pas une sauvegarde",
  'Name the file that "plugmark backup" made.': 'Nommer le fichier qu\'a fait "plugmark backup".',
  'Use another backup. If you have none, save what can be read of the log with "plugmark recover".':
    'Prendre une autre sauvegarde. S\'il n\'y en a pas, sauver ce qui se lit du journal avec "plugmark recover".',
  'Free some space on that disk, then try again.': 'Libérer de la place sur ce disque, puis réessayer.',
  'it cannot be copied beside the station log ({0})': 'elle ne peut pas être copiée à côté du journal ({0})',
  "Check the rights on it, and on the folder of the station's data.":
    'Vérifier ses droits, et ceux du dossier des données du poste.',
  'another program wrote to the station log': 'un autre programme a écrit dans le journal du poste',
  'Close the other program, then try again.': "Fermer l'autre programme, puis réessayer.",
  'entries are missing or out of order': "des entrées manquent ou ne sont pas dans l'ordre",
  'the log names a stream without entries': 'le journal nomme une suite sans entrées',
  'the hash tree has nodes after the last entry': "l'arbre de hachage a des nœuds après la dernière entrée",
  'entry {0} is not what its hash was made of': "l'entrée {0} n'est pas ce dont son hachage a été fait",
  'entry {0} is not written as an entry is': "l'entrée {0} n'est pas écrite comme une entrée",
  'entry {0} has n={1} in its stream where n={2} is due':
    "l'entrée {0} a n={1} dans sa suite où n={2} est attendu",
  'entry {0} is not the one that the hash tree was made of, or one shortly before it':
    "l'entrée {0} n'est pas celle dont l'arbre de hachage a été fait, ou une peu avant",
  'this is the log of another station: {0}; the station here ({1}) has the key {2}':
    "c'est le journal d'un autre poste : {0} ; le poste ici ({1}) a la clé {2}",
  'this is the log of another station: {0}; the station here ({1}) is {2}':
    "c'est le journal d'un autre poste : {0} ; le poste ici ({1}) est {2}",
  'Name a backup of this station, or the folder of the other one with --data or --station.':
    "Nommer une sauvegarde de ce poste, ou le dossier de l'autre avec --data ou --station.",
  'this station log has no entries': "ce journal n'a pas d'entrées",
  'entry {0} of the station log was changed': "l'entrée {0} du journal a été changée",
  'this file does not say in which device the key is': 'ce fichier ne dit pas dans quel appareil est la clé',
  'Put it back from your copy of the folder keys.': 'Le remettre depuis votre copie du dossier keys.',
  'it does not have this key': "il n'a pas cette clé",
  'its public key cannot be read': 'sa clé publique ne peut pas être lue',
  'it does not take this PIN': "il n'accepte pas ce PIN",
  'there is no token "{0}" in it': 'il ne contient pas de jeton "{0}"',
  'this device does not sign with Ed25519, as a TPM does not':
    'cet appareil ne signe pas avec Ed25519, comme un TPM',
  'Take another device, or keep the key in a file: plugmark keys lock':
    'Prendre un autre appareil, ou garder la clé dans un fichier : plugmark keys lock',
  'the module is not there': "le module n'est pas là",
  'a key in a device needs the package {0}, which is not installed':
    "une clé dans un appareil demande le paquet {0}, qui n'est pas installé",
  'Install it beside plugmark: npm install --global {0}. It needs a compiler.':
    "L'installer à côté de plugmark : npm install --global {0}. Il demande un compilateur.",
  'it says: {0}': 'il dit : {0}',
  'no reason': 'aucun motif',
  '{0}, token {1}': '{0}, jeton {1}',
  'the device with the key cannot be used: {0}': "l'appareil qui tient la clé ne peut pas être utilisé : {0}",
  'Plug it in and try again. If it is lost: "plugmark keys rotate --lost".':
    'Le brancher et réessayer. S\'il est perdu : "plugmark keys rotate --lost".',
  'the station log was deleted, moved or replaced while it was in use; nothing more is written to it':
    "le journal a été supprimé, déplacé ou remplacé pendant son utilisation ; rien n'y est plus écrit",
  'It could not be saved elsewhere either. Keep this screen: what was shown last is not on disk.':
    "Il n'a pas pu être sauvé ailleurs non plus. Garder cet écran : ce qui a été montré en dernier n'est pas sur le disque.",
  'All of it, to the last reading, is in {0}. Find out what happened, then put it in place with "plugmark restore".':
    'Tout, jusqu\'à la dernière valeur, est dans {0}. Trouver ce qui s\'est passé, puis le remettre en place avec "plugmark restore".',
  'this is not an Ed25519 private key in PKCS#8 PEM form':
    "ce n'est pas une clé privée Ed25519 au format PKCS#8 PEM",
  'Name a key file made by plugmark, or make a new key.':
    'Nommer un fichier de clé fait par plugmark, ou faire une nouvelle clé.',
  'the private key needs its passphrase': 'la clé privée demande sa phrase secrète',
  'Run plugmark in a terminal and type it, or set it in the environment.':
    "Lancer plugmark dans un terminal et la taper, ou la mettre dans l'environnement.",
  'the passphrase is wrong, or the key file is damaged':
    'la phrase secrète est fausse, ou le fichier de clé est endommagé',
  'Try again. Without it the key is lost: "plugmark manual keys" says what to do then.':
    'Réessayer. Sans elle la clé est perdue : "plugmark manual keys" dit quoi faire alors.',
  'other users of this computer can read the private key':
    "d'autres utilisateurs de cet ordinateur peuvent lire la clé privée",
  'Run chmod 600 on it. If somebody may have copied it, make a new key and remove the old one from the trust lists.':
    "Lancer chmod 600 dessus. Si quelqu'un a pu la copier, faire une nouvelle clé et retirer l'ancienne des listes de confiance.",
  'the file exists; a key is never overwritten': "le fichier existe ; une clé n'est jamais écrasée",
  'Use that key, or name another file.': 'Utiliser cette clé, ou nommer un autre fichier.',
  'Check the path, or make a key.': 'Vérifier le chemin, ou faire une clé.',
  'the file cannot be opened': 'le fichier ne peut pas être ouvert',
  'another program wrote to {0} at the same time': 'un autre programme a écrit dans {0} en même temps',
  'Close the other program, then open the job again.': "Fermer l'autre programme, puis rouvrir l'ordre.",
  'the database file is damaged': 'le fichier de base de données est endommagé',
  'the file is empty; a station log never is': "le fichier est vide ; un journal ne l'est jamais",
  'Restore a backup. If the log was never used, delete the file and start again.':
    "Restaurer une sauvegarde. Si le journal n'a jamais servi, supprimer le fichier et recommencer.",
  'this is a database, but not a station log': "c'est une base de données, mais pas un journal de poste",
  'Name the station log, or a new file.': 'Nommer le journal du poste, ou un nouveau fichier.',
  'a newer version of the program wrote this log (form {0}; this one knows {1})':
    'une version plus récente du programme a écrit ce journal (forme {0} ; celle-ci connaît {1})',
  'Use the newer version of the program.': 'Utiliser la version plus récente du programme.',
  'Keep the file as it is. Restore a backup with "plugmark restore". If you have none, save what can be read with "plugmark recover".':
    'Garder le fichier tel quel. Restaurer une sauvegarde avec "plugmark restore". S\'il n\'y en a pas, sauver ce qui se lit avec "plugmark recover".',
  'this file cannot be read as a station log: its start is damaged, or it is another file':
    "ce fichier ne se lit pas comme un journal : son début est endommagé, ou c'est un autre fichier",
  'another program is writing to the station log': 'un autre programme écrit dans le journal du poste',
  'this is not a station log': "ce n'est pas un journal de poste",
  'Check that the folder exists and may be written to.': 'Vérifier que le dossier existe et peut être écrit.',
  'the file cannot be written to': 'le fichier ne peut pas être écrit',
  'Check the rights on the file and its folder.': 'Vérifier les droits sur le fichier et son dossier.',
  'Free some space and try again. The last step was not saved.':
    "Libérer de la place et réessayer. La dernière étape n'a pas été enregistrée.",
  'the disk did not accept the data': "le disque n'a pas accepté les données",
  'Check the disk. The last step was not saved.':
    "Vérifier le disque. La dernière étape n'a pas été enregistrée.",
  '{0} MB, too large for a copy in {1}': '{0} Mo, trop grand pour une copie dans {1}',
  'this log is read-only, and there is no room for the copy that reading needs: {0}':
    "ce journal est en lecture seule, et il n'y a pas de place pour la copie qu'il faut pour lire : {0}",
  'Free some space, set TMPDIR to a folder with space, or get the right to write.':
    "Libérer de la place, mettre TMPDIR sur un dossier qui en a, ou obtenir le droit d'écrire.",
  'this log is read-only here, and the command must write to it':
    'ce journal est en lecture seule ici, et la commande doit y écrire',
  'Get the right to write to the file and its folder, or run the command at the station.':
    "Obtenir le droit d'écrire le fichier et son dossier, ou lancer la commande au poste.",
  'a checkpoint of a record': "un point de contrôle d'un relevé",
  'its entry {0} differs from the one in the log or in an earlier record':
    "son entrée {0} diffère de celle du journal ou d'un relevé antérieur",
  'The log split in two, as after restoring an old backup. Name a folder with the records of one of them.':
    "Le journal s'est divisé, comme après la restauration d'une ancienne sauvegarde. Nommer un dossier avec les relevés de l'un d'eux.",
  'the records are from several logs, and no key shows which one is this station':
    'les relevés viennent de plusieurs journaux, et aucune clé ne montre lequel est ce poste',
  'Name a folder with the records of one station only.':
    "Nommer un dossier avec les relevés d'un seul poste.",
  'the file exists; nothing is overwritten': "le fichier existe ; rien n'est écrasé",
  'Name a new file with --out.': 'Nommer un nouveau fichier avec --out.',
  'the first entry of the log is lost, and no valid record contains it':
    'la première entrée du journal est perdue, et aucun relevé valide ne la contient',
  'Restore a backup. If you have none, only the exported records of the jobs remain.':
    "Restaurer une sauvegarde. S'il n'y en a pas, il ne reste que les relevés exportés des ordres.",
  'the newest part of the log is damaged: {0} pages that were written behind the damage would be lost':
    'la partie la plus récente du journal est endommagée : {0} pages écrites après le dommage seraient perdues',
  'Keep station.db and station.db-wal as they are. Save what can be read with "plugmark recover", then put it in place with "plugmark restore".':
    'Garder station.db et station.db-wal tels quels. Sauver ce qui se lit avec "plugmark recover", puis le mettre en place avec "plugmark restore".',
  'the newest part of the log is missing: the program was stopped before it was taken into station.db':
    "la partie la plus récente du journal manque : le programme a été arrêté avant qu'elle soit reprise dans station.db",
  'Put the file back. If it is lost, so are the entries in it: delete station.db-shm, then "plugmark log check" compares what is left with the checkpoints.':
    'Remettre le fichier. S\'il est perdu, ses entrées le sont aussi : supprimer station.db-shm, puis "plugmark log check" compare le reste aux points de contrôle.',
  'a witness is here already': 'un témoin est déjà ici',
  'there is no witness here': "il n'y a pas de témoin ici",
  'Make one with "plugmark witness init", or name its folder with --data.':
    'En créer un avec "plugmark witness init", ou nommer son dossier avec --data.',
  'this is not the file of a witness': "ce n'est pas le fichier d'un témoin",
  'Name the folder of the witness with --data.': 'Nommer le dossier du témoin avec --data.',
  'the file of the witness cannot be used ({0})': 'le fichier du témoin ne peut pas être utilisé ({0})',
  'Check the disk and the rights on the file. Never put back an old copy: the witness would cosign a second history. Make a new witness instead.':
    'Vérifier le disque et les droits du fichier. Ne jamais remettre une ancienne copie : le témoin cosignerait une seconde histoire. Créer plutôt un nouveau témoin.',
  'the driver {0} reads a serial port, and the station file names none':
    "le pilote {0} lit un port série, et le fichier de poste n'en nomme aucun",
  'Add "port" to the driver of this tool.': 'Ajouter "port" au pilote de cet outil.',
  'the tool {0} is not adopted: the station file names no device for it':
    "l'outil {0} n'est pas adopté : le fichier de poste ne nomme aucun appareil pour lui",
  'Adopt it with plugmark devices adopt ADDRESS --tool {0}.':
    "L'adopter avec plugmark devices adopt ADDRESS --tool {0}.",
  'the tool {0} should measure {1}, but its driver measures {2}':
    "l'outil {0} devrait mesurer {1}, mais son pilote mesure {2}",
  'Correct the quantity or the driver of the tool in the station file.':
    "Corriger la grandeur ou le pilote de l'outil dans le fichier de poste.",
  'nothing heard from {0} within {1} s': 'rien entendu de {0} en {1} s',
  'Switch the tool on, bring it closer and disconnect phones and other programs from it.':
    "Allumer l'outil, l'approcher, et en déconnecter téléphones et autres programmes.",
  'the Bluetooth part of plugmark is not installed on this machine':
    "la partie Bluetooth de plugmark n'est pas installée sur cette machine",
  'Install plugmark again, or run with the simulated tools.':
    'Réinstaller plugmark, ou travailler avec les outils simulés.',
  'this machine has no Bluetooth support in its kernel (EAFNOSUPPORT), as is usual in containers and WSL':
    "cette machine n'a pas Bluetooth dans son noyau (EAFNOSUPPORT), comme d'habitude dans les conteneurs et WSL",
  'Run plugmark on the host itself, on a machine with Bluetooth, or run with the simulated tools.':
    "Lancer plugmark sur l'hôte lui-même, sur une machine avec Bluetooth, ou travailler avec les outils simulés.",
  'this user is not allowed to use the Bluetooth adapter':
    "cet utilisateur ne peut pas utiliser l'adaptateur Bluetooth",
  'Give the right to the node program; plugmark doctor shows the command.':
    'Donner le droit au programme node ; plugmark doctor montre la commande.',
  'the Bluetooth adapter is switched off': "l'adaptateur Bluetooth est éteint",
  'Switch it on (rfkill unblock bluetooth; bluetoothctl power on) and start again.':
    "L'allumer (rfkill unblock bluetooth; bluetoothctl power on) et recommencer.",
  'no Bluetooth adapter answered': "aucun adaptateur Bluetooth n'a répondu",
  'Plug one in or name another one (bluetoothctl list shows them), or run with the simulated tools.':
    'En brancher un ou en nommer un autre (bluetoothctl list les montre), ou travailler avec les outils simulés.',
  'the Bluetooth adapter does not speak Bluetooth Low Energy':
    "l'adaptateur Bluetooth ne parle pas Bluetooth Low Energy",
  'Use an adapter for Bluetooth 4.0 or later.': 'Utiliser un adaptateur Bluetooth 4.0 ou plus récent.',
  'the Bluetooth adapter is already closed': "l'adaptateur Bluetooth est déjà fermé",
  'Start plugmark again.': 'Relancer plugmark.',
  'the Bluetooth adapter could not be opened': "l'adaptateur Bluetooth n'a pas pu être ouvert",
  'Look at the cause named here, try again as another user or with another adapter, or run with the simulated tools.':
    'Regarder la cause nommée ici, réessayer avec un autre utilisateur ou un autre adaptateur, ou travailler avec les outils simulés.',
  'The tool does not send what its profile says: not taken.':
    "L'outil n'envoie pas ce que dit son profil : pas pris.",
  'Reach the Bluetooth tools with {0} in front of a command.':
    'Atteindre les outils Bluetooth avec {0} devant une commande.',
  'on {0}': 'sur {0}',
  'at {0}': "à l'adresse {0}",
  '{0}: gone for {1} ms': '{0} : absent pendant {1} ms',
  'something lies here already, and is not overwritten by a socket':
    "quelque chose est déjà là, et un socket ne l'écrase pas",
  'Name another socket, or remove it.': "Nommer un autre socket, ou l'enlever.",
  'no socket can be made here': 'aucun socket ne peut être créé ici',
  'Name a socket in a folder that you may write to, such as /tmp.':
    'Nommer un socket dans un dossier où vous pouvez écrire, comme /tmp.',
  'judges again the jobs that wait for it, and says how all came out':
    'juge à nouveau les ordres en attente, et dit ce que tous ont donné',
  'the samples of a job do not give its verdicts, or it could not be judged':
    "les échantillons d'un ordre ne donnent pas ses verdicts, ou il n'a pas pu être jugé",
  'how long it is good': 'sa durée de validité',
  'of this log alone, as "plugmark archive stations" prints it':
    'de ce seul journal, comme "plugmark archive stations" l\'affiche',
  'whom the token is given to': 'à qui le jeton est donné',
  'whose records may be read': 'de qui les relevés peuvent être lus',
  'prints a token with which somebody may ask the archive':
    "affiche un jeton avec lequel quelqu'un peut interroger l'archive",
  'lists who may ask the archive, and until when': "liste qui peut interroger l'archive, et jusqu'à quand",
  'whom they were given to': 'à qui ils ont été donnés',
  'whose records he could read': 'de qui il pouvait lire les relevés',
  'takes back all tokens of a reader': "retire tous les jetons d'un lecteur",
  'so many, the newest': 'autant, les plus récentes',
  'lists what was asked, by whom and when': 'liste ce qui a été demandé, par qui et quand',
  'write every reading that was judged again, as CSV': 'écrire chaque valeur jugée à nouveau, en CSV',
  'the last good check, if the logs leave it open: NUMBER or "NUMBER of DATE"':
    'la dernière bonne vérification, si les journaux la laissent ouverte : NUMBER ou "NUMBER of DATE"',
  'the archive': "l'archive",
  'the serial number of the tool': "le numéro de série de l'outil",
  'judges again, over all stations of an archive, what a tool was used for; records nothing':
    "juge à nouveau, sur tous les postes d'une archive, ce à quoi un outil a servi ; n'enregistre rien",
  'the answer as a file that ends in .csv, .xlsx (a workbook) or .parquet':
    'la réponse en un fichier qui finit par .csv, .xlsx (un classeur) ou .parquet',
  'all stations of the archive there, instead of one station':
    "tous les postes de l'archive qui s'y trouve, au lieu d'un poste",
  'of a serial port: bits a second': "d'un port série : bits par seconde",
  'as "devices scan" lists it, or a serial port': 'comme "devices scan" le liste, ou un port série',
  'how long the device is left untouched': "combien de temps l'appareil reste au repos",
  'its Bluetooth address or its serial port; left out: from captures':
    'son adresse Bluetooth ou son port série ; si omis : à partir de captures',
  'finds the profile of a device that nobody has documented, from what its display shows':
    "trouve le profil d'un appareil que personne n'a documenté, d'après ce que montre son écran",
  'makes the witness cosign a log; a new key of a log retires the one before it':
    "fait cosigner un journal par le témoin ; une nouvelle clé d'un journal retire la précédente",
  'plays the tools of a scenario: on a virtual Bluetooth controller, or on pseudo-terminals (with socat)':
    "joue les outils d'un scénario : sur un contrôleur Bluetooth virtuel, ou sur des pseudo-terminaux (avec socat)",
  'how long a pseudo-terminal waits before it sends':
    "combien de temps un pseudo-terminal attend avant d'envoyer",
  'of a capture from a serial port: the name of the pseudo-terminal':
    "d'une capture d'un port série : le nom du pseudo-terminal",
  'of a Bluetooth capture: the service that it advertises; the busiest unless given':
    "d'une capture Bluetooth : le service qu'il annonce ; le plus actif si omis",
  'of a Bluetooth capture: the serial number that the device gives':
    "d'une capture Bluetooth : le numéro de série que donne l'appareil",
  'of a Bluetooth capture: the Unix socket of the virtual controller':
    "d'une capture Bluetooth : le socket Unix du contrôleur virtuel",
  'the capture, of "plugmark devices record"': 'la capture, de "plugmark devices record"',
  'plays a capture back as the device that sent it': "rejoue une capture comme l'appareil qui l'a envoyée",
  'advertises {0}': 'annonce {0}',
  'neither a device nor captures are named': 'ni appareil ni captures ne sont nommés',
  'Name the address or the serial port of the device, or give --rest, --figure and --proof.':
    "Nommer l'adresse ou le port série de l'appareil, ou donner --rest, --figure et --proof.",
  'The log {0} is signed by this key from now on; what its key of before signs is not cosigned any more.':
    "Le journal {0} est signé par cette clé à partir de maintenant ; ce que signe sa clé d'avant n'est plus cosigné.",
  'the one before it retired|the # before it retired': {
    one: 'la précédente retirée',
    other: 'les # précédentes retirées',
  },
  'key {0} since {1}': 'clé {0} depuis {1}',
  'this is the key of the witness itself, and nobody is his own witness':
    "c'est la clé du témoin lui-même, et personne n'est son propre témoin",
  'Take what "plugmark log vkey" prints at the station.':
    'Prendre ce que "plugmark log vkey" affiche au poste.',
  'this key of the log was retired here when a newer one was added, and it does not come back':
    'cette clé du journal a été retirée ici quand une plus récente a été ajoutée, et elle ne revient pas',
  'Take the key of now: "plugmark log vkey" at the station. Where the newer one was added by mistake, the station has to make a new key first: plugmark keys rotate':
    'Prendre la clé actuelle : "plugmark log vkey" au poste. Si la plus récente a été ajoutée par erreur, le poste doit d\'abord créer une nouvelle clé : plugmark keys rotate',
  'expected an address such as c2:00:00:00:00:01': 'attendu : une adresse comme c2:00:00:00:00:01',
  'expected a name that begins with plugmark-driver-': 'attendu : un nom qui commence par plugmark-driver-',
  'expected a version such as 1.0.0': 'attendu : une version comme 1.0.0',
  'expected a JavaScript file of the package': 'attendu : un fichier JavaScript du paquet',
  'expected a figure above 0': 'attendu : un nombre au-dessus de 0',
  'expected a decimal figure in quotes, such as "0.01"':
    'attendu : un nombre décimal entre guillemets, comme "0.01"',
  'expected a figure other than 0': 'attendu : un nombre autre que 0',
  'expected a decimal figure in quotes, such as "0.02"':
    'attendu : un nombre décimal entre guillemets, comme "0.02"',
  'expected up to 32 printable characters of ASCII': "attendu : jusqu'à 32 caractères ASCII imprimables",
  'expected a UUID of 4 digits, or of 32 with dashes':
    'attendu : un UUID de 4 chiffres, ou de 32 avec tirets',
  'expected whole bytes in hexadecimal digits': 'attendu : des octets entiers en chiffres hexadécimaux',
  'expected a UUID in small digits without dashes': 'attendu : un UUID en minuscules sans tirets',
  'expected as many angles as counts': "attendu : autant d'angles que de comptes",
  'expected as many counts as stamps': 'attendu : autant de comptes que de marques de temps',
  'below 0 where bit {0} of byte {1} is set': "sous 0 où le bit {0} de l'octet {1} est à 1",
  'big end first': "octet de poids fort d'abord",
  'little end first': "octet de poids faible d'abord",
  '{0} at byte {1} ({2})': "{0} à l'octet {1} ({2})",
  '{0} samples': '{0} échantillons',
  'Measure a large gap and hold it.': 'Mesurer un grand écartement et tenir.',
  'Measure a small gap and hold it.': 'Mesurer un petit écartement et tenir.',
  'Measure another gap and hold it.': 'Mesurer un autre écartement et tenir.',
  'Pull once against the tightening direction; give that figure with a minus.':
    'Tirer une fois contre le sens de serrage ; donner cette valeur avec un moins.',
  'Pull once more, to any other torque: it proves the profile.':
    "Tirer encore une fois, à n'importe quel autre couple : il prouve le profil.",
  'Pull once to a large torque.': "Tirer une fois jusqu'à un grand couple.",
  'Pull once to a small torque and let go.': "Tirer une fois jusqu'à un petit couple et relâcher.",
  '{0} figures did not tell these apart: {1}.': "{0} valeurs n'ont pas départagé ceux-ci : {1}.",
  'A number follows the figures, but bytes {0} of the frame change and nothing explains them. They could say that the number does not count, so no profile is written.':
    "Un nombre suit les valeurs, mais les octets {0} de la trame changent et rien ne les explique. Ils pourraient dire que le nombre ne compte pas ; aucun profil n'est donc écrit.",
  'Give one more figure, clearly above {0} {1}.':
    'Donner une valeur de plus, nettement au-dessus de {0} {1}.',
  'No number in its frames follows the figures. The device may encrypt what it sends, or compute it in a way that cannot be described.':
    "Aucun nombre dans ses trames ne suit les valeurs. L'appareil chiffre peut-être ce qu'il envoie, ou le calcule d'une façon qui ne peut pas être décrite.",
  'No way was found to cut what it sends into frames. It may send too little, or nothing regular.':
    "Aucun moyen n'a été trouvé de découper en trames ce qu'il envoie. Il envoie peut-être trop peu, ou rien de régulier.",
  'Pull once against the tightening direction, and give that figure with a minus.':
    'Tirer une fois contre le sens de serrage, et donner cette valeur avec un moins.',
  'The only layout that explains the others ({0}) does not read the figure that was kept back: {1} {2}. Nothing was written.':
    "La seule structure qui explique les autres ({0}) ne lit pas la valeur gardée pour la preuve : {1} {2}. Rien n'a été écrit.",
  'Three figures at least are needed, and one to prove it with; there are {0}.':
    'Il faut au moins trois valeurs, et une pour la preuve ; il y en a {0}.',
  'figure {0} of the line, in {1}': 'nombre {0} de la ligne, en {1}',
  'Ask again.': 'Demander de nouveau.',
  'Ask for a shorter time with --from and --to, or for less.':
    'Demander une période plus courte avec --from et --to, ou moins.',
  'Ask whoever runs the archive for one (plugmark archive reader), and give it in {0}.':
    "En demander un à qui tient l'archive (plugmark archive reader), et le donner dans {0}.",
  'Bring the program here and at the archive to the same version.':
    "Mettre le programme ici et celui de l'archive à la même version.",
  'Have it looked at by whoever runs the archive.': "Le faire examiner par qui tient l'archive.",
  'Not in the answer: the newest entries of {0}. Have it looked at by whoever runs the archive: plugmark archive check.':
    "Pas dans la réponse : les entrées les plus récentes de {0}. Faire examiner par qui tient l'archive : plugmark archive check.",
  'Try again in a minute.': 'Réessayer dans une minute.',
  'its answer broke off': "sa réponse s'est interrompue",
  'the answer would be too long': 'la réponse serait trop longue',
  'the archive did not answer the question: it answered {0}':
    "l'archive n'a pas répondu à la question : elle a répondu {0}",
  'the archive does not know the token of this reader, or its time is over':
    "l'archive ne connaît pas le jeton de ce lecteur, ou il a expiré",
  'too many questions were asked in a short time': 'trop de questions ont été posées en peu de temps',
  'what the archive answered is not what this version of the program reads':
    "ce que l'archive a répondu n'est pas ce que lit cette version du programme",
  '# job judged again|# jobs judged again': {
    one: '# ordre jugé à nouveau',
    other: '# ordres jugés à nouveau',
  },
  'NOT JUDGED: it is longer than a record may be': "PAS JUGÉ : il est plus long qu'un relevé ne peut l'être",
  'NOT JUDGED: its entries are no job that a bench wrote, or of a newer version of the program':
    "PAS JUGÉ : ses entrées ne sont pas un ordre qu'un poste a écrit, ou sont d'une version plus récente du programme",
  'NOT JUDGED: no version of the program has rules of that name':
    "PAS JUGÉ : aucune version du programme n'a de règles de ce nom",
  'NOT THE SAME: the samples do not give its event {0} ({1})':
    'PAS LES MÊMES : les échantillons ne donnent pas son événement {0} ({1})',
  'not judged: its rules are of a newer version of the program':
    "pas jugé : ses règles sont d'une version plus récente du programme",
  'the same verdicts': 'les mêmes verdicts',
  '{0}, opened in entry {1}: {2}': "{0}, ouvert à l'entrée {1} : {2}",
  '{0}: {1}, {2} with the same verdicts': '{0} : {1}, {2} avec les mêmes verdicts',
  'Make another one when its time is over.': 'En faire un autre quand il aura expiré.',
  'Nobody has asked this archive yet.': "Personne n'a encore interrogé cette archive.",
  'Nobody may ask this archive.': 'Personne ne peut interroger cette archive.',
  'See "plugmark archive readers".': 'Voir "plugmark archive readers".',
  'See "plugmark archive stations".': 'Voir "plugmark archive stations".',
  'Until {0} whoever has it reads all records of {1}, names and plates with them. There: {2}=TOKEN plugmark ask --archive URL':
    "Jusqu'au {0}, qui l'a lit tous les relevés de {1}, noms et plaques compris. Là-bas : {2}=TOKEN plugmark ask --archive URL",
  '"{0}" has no token': '"{0}" n\'a pas de jeton',
  'a token is good for {0} days at most': 'un jeton vaut au plus {0} jours',
  'all stations': 'tous les postes',
  'may read': 'peut lire',
  'no station of "{0}" has joined': 'aucun poste de "{0}" n\'a rejoint',
  question: 'question',
  reader: 'lecteur',
  tenant: 'locataire',
  'that tenant has no such log': "ce locataire n'a pas de tel journal",
  'time (UTC)': 'heure (UTC)',
  until: "jusqu'au",
  '{0} reads nothing more. What was read before is in "plugmark archive reads".':
    '{0} ne lit plus rien. Ce qui a été lu avant est dans "plugmark archive reads".',
  'Ask whoever runs it for one (plugmark archive reader), and give it in {0}.':
    'En demander un à qui la tient (plugmark archive reader), et le donner dans {0}.',
  'Token of a reader of {0}: ': "Jeton d'un lecteur de {0} : ",
  'This is the word of the archive {0}, and no proof. What a station has not shipped yet is not in it.':
    "C'est ce que dit l'archive {0}, et non une preuve. Ce qu'un poste n'a pas encore envoyé n'y est pas.",
  'an archive answers only whoever has the token of a reader':
    "une archive ne répond qu'à qui a le jeton d'un lecteur",
  'Reach it with {0} in front of a command. Ctrl-C ends it.':
    "L'atteindre avec {0} devant une commande. Ctrl-C y met fin.",
  'Record the device while it sends.': "Enregistrer l'appareil pendant qu'il envoie.",
  'somebody listens: it plays from the beginning': "quelqu'un écoute : lecture depuis le début",
  'the device': "l'appareil",
  'the link ended before all was sent': 'la liaison a pris fin avant que tout soit envoyé',
  '{0} at {1}, serial number {2}': "{0} à l'adresse {1}, numéro de série {2}",
  '{0} on {1}; it sends in {2} s': '{0} sur {1} ; envoi dans {2} s',
  '{0} packets sent': '{0} paquets envoyés',
  'Close the gauge, or leave it as it is. Enter, and leave it untouched. ':
    'Fermer la jauge, ou la laisser telle quelle. Enter, et ne pas y toucher. ',
  'Give one line for each question, with the figure of the display.':
    "Donner une ligne pour chaque question, avec la valeur de l'écran.",
  'Keep it near, switched on and charged, and begin again.':
    'Le garder près, allumé et chargé, et recommencer.',
  'Lay the wrench down. Enter, and leave it untouched. ': 'Poser la clé. Enter, et ne pas y toucher. ',
  'Linked with {0}.': 'Lié à {0}.',
  'Listening at {0}, {1} baud.': 'Écoute sur {0}, {1} bauds.',
  'One layout explains all of it so far: {0}.': "Une structure explique le tout jusqu'ici : {0}.",
  'Switch it on and set it to send by itself. One that sends only what it is asked for cannot be taught.':
    "L'allumer et le régler pour qu'il envoie de lui-même. Un appareil qui n'envoie que sur demande ne peut pas être appris.",
  'That is not a figure. Type it as the display showed it, for example 25.34; "back" takes the last one back.':
    "Ce n'est pas un nombre. Le saisir comme l'écran l'a montré, par exemple 25.34 ; \"back\" retire le dernier.",
  'Was the last figure mistyped? Type "back" to give it again; Enter ends. ':
    'La dernière valeur est-elle une faute de frappe ? Saisir "back" pour la redonner ; Enter termine. ',
  'the device has gone in the middle of the lesson': "l'appareil a disparu au milieu de l'apprentissage",
  'the device sent nothing while it lay untouched': "l'appareil n'a rien envoyé au repos",
  'this is not a figure': "ce n'est pas un nombre",
  '{0} layouts explain all of it so far:': "{0} structures expliquent le tout jusqu'ici :",
  '{0}. {1} Then type what its display showed, in {2}: ':
    '{0}. {1} Puis saisir ce que son écran a montré, en {2} : ',
  'Cycles: gap readings or pulls on a plug since the certificate or the first use, re-hits, checks and low strokes too; or the counter of the tool where that is higher. Pulls on no plug do not count.':
    "Cycles : mesures d'écartement ou tractions sur une bougie depuis le certificat ou le premier emploi, resserrages, contrôles et tractions faibles compris ; ou le compteur de l'outil s'il est plus haut. Les tractions sans bougie ne comptent pas.",
  'Begin the study anew: this order was not drawn for its plan.':
    "Recommencer l'étude : cet ordre n'a pas été tiré pour son plan.",
  'Measure them all: a study with holes says nothing about who differs from whom.':
    'Les mesurer toutes : une étude à trous ne dit rien de qui diffère de qui.',
  'there are turns too many or too few': 'il y a des passages en trop ou en moins',
  'turn {0} does not name each part once': 'le passage {0} ne nomme pas chaque pièce une fois',
  '{0} of {1} readings are missing': '{0} valeurs sur {1} manquent',
  'See "plugmark gauge-study list".': 'Voir "plugmark gauge-study list".',
  'See "plugmark gauge-study show {0}".': 'Voir "plugmark gauge-study show {0}".',
  'Start a new one. The readings of this one stay in the log.':
    'En commencer une nouvelle. Les valeurs de celle-ci restent dans le journal.',
  'this station has no gauge study of this number': "ce poste n'a pas d'étude de jauge de ce numéro",
  'this study is finished and recorded': 'cette étude est finie et enregistrée',
  'this study was given up: {0}': 'cette étude a été abandonnée : {0}',
  '# attempt.|# attempts.': { one: '# essai.', other: '# essais.' },
  '# job.|# jobs.': { one: '# ordre.', other: '# ordres.' },
  '# row|# rows': { one: '# ligne', other: '# lignes' },
  'CSV, JSON or a file at once': 'CSV, JSON ou un fichier à la fois',
  'Choose one of them.': 'En choisir un.',
  'Let it end in .csv, .xlsx or .parquet.': 'Le faire finir par .csv, .xlsx ou .parquet.',
  'Name the earlier day first.': "Nommer d'abord le premier jour.",
  'Written: {0}, {1}': 'Écrit : {0}, {1}',
  exceptions: 'exceptions',
  proofs: 'preuves',
  'the name of this file does not say what it is to be': "le nom de ce fichier ne dit pas ce qu'il doit être",
  value: 'valeur',
  what: 'quoi',
  '{0} is after {1}': '{0} est après {1}',
  '  in date': '  valable',
  '  on data sheet': '  sur fiche technique',
  '! DUE': '! À ÉCHÉANCE',
  '! OUT OF TOLERANCE': '! HORS TOLÉRANCE',
  '* Nobody named a day: {0} months after the calibration or the first use are usual. Give the tool an interval in the station file for another.':
    "* Personne n'a nommé de jour : {0} mois après l'étalonnage ou le premier emploi sont d'usage. Pour un autre, donner à l'outil un intervalle dans le fichier de poste.",
  '? not used yet, no certificate': '? pas encore employé, pas de certificat',
  'A tool gets a due day with its certificate or with its first job.':
    'Un outil reçoit une échéance avec son certificat ou avec son premier ordre.',
  'A tool gets onto the calendar with its first job.': 'Un outil entre au calendrier avec son premier ordre.',
  'Drift: by its certificates {0} may lie beyond what is permitted from {1} on; see "plugmark drift {2}".':
    'Dérive : d\'après ses certificats {0} peut dépasser ce qui est admis à partir du {1} ; voir "plugmark drift {2}".',
  'Give the shortest interval first, one day or more.':
    "Donner d'abord l'intervalle le plus court, un jour ou plus.",
  'On data sheet: nobody calibrated the tool. Its data sheet says what it was when it was made, and not what it is now.':
    "Sur fiche technique : personne n'a étalonné l'outil. Sa fiche dit ce qu'il était à sa fabrication, et non ce qu'il est maintenant.",
  'Out of tolerance: {0} ({1}) on {2}, {3}; see "plugmark impact show {4}". It is due now. A certificate of that day or later makes it fit again.':
    'Hors tolérance : {0} ({1}) le {2}, {3} ; voir "plugmark impact show {4}". Il est à échéance maintenant. Un certificat de ce jour ou plus tard le rend de nouveau apte.',
  'Written: {0}': 'Écrit : {0}',
  calibrated: 'étalonné',
  cycles: 'cycles',
  due: 'échéance',
  'intervals from {0} to {1} days leave no room':
    'des intervalles de {0} à {1} jours ne laissent pas de place',
  'last used': 'dernier emploi',
  longer: 'plus long',
  shorter: 'plus court',
  unchanged: 'inchangé',
  'next interval': 'intervalle suivant',
  'no tool of this station has a due day, so there is nothing to write':
    "aucun outil de ce poste n'a d'échéance, il n'y a donc rien à écrire",
  'no tool was ever used at this station': "aucun outil n'a jamais été employé à ce poste",
  '{0} by cycles': '{0} par les cycles',
  '{0}, drift': '{0}, dérive',
  '{0}, now': '{0}, maintenant',
  '{0}, on data sheet': '{0}, sur fiche technique',
  '~ in date': '~ valable',
  '~ soon': '~ bientôt',
  'groups written': 'groupes écrits',
  ' and {0} more': ' et {0} autres',
  '# first attempt|# first attempts': { one: '# premier essai', other: '# premiers essais' },
  '# group|# groups': { one: '# groupe', other: '# groupes' },
  'Ask for a longer period, or for less; "plugmark ask --attempts" shows what there is.':
    'Demander une période plus longue, ou avec moins de conditions ; "plugmark ask --attempts" montre ce qu\'il y a.',
  'For charts name one group: --specification, and a tool, a technician or a cylinder. Or write all of them with --out.':
    'Pour les graphiques, nommer un groupe : --specification, et un outil, un technicien ou un cylindre. Ou les écrire tous avec --out.',
  'Leave it out for one line a specification.': "L'omettre pour une ligne par spécification.",
  'Left out: {0} ({1}) with {2}.': 'Omis : {0} ({1}) avec {2}.',
  'No attempt matches.': 'Aucun essai ne correspond.',
  'No job has an attempt yet.': "Aucun ordre n'a encore d'essai.",
  'There are: {0}{1}.': 'Il y a : {0}{1}.',
  'expected {0}': 'attendu : {0}',
  'no attempt matches, so there is nothing to write':
    "aucun essai ne correspond, il n'y a donc rien à écrire",
  'no job used a specification whose key starts with "{0}"':
    'aucun ordre n\'a employé de spécification dont la clé commence par "{0}"',
  '{0}: {1} of {2} groups; they say nothing about an engine.':
    "{0} : {1} groupes sur {2} ; ils ne disent rien d'un moteur.",
  'Save it as UTF-8.': "L'enregistrer en UTF-8.",
  'the calibration certificate is not UTF-8 text': "le certificat d'étalonnage n'est pas un texte UTF-8",
  '! CHANGED': '! MODIFIÉ',
  '! MISSING': '! MANQUE',
  'Keep the original again: "plugmark certificates keep FILE", with --for NUMBER for a scan. The same file replaces the missing or changed one; another file is kept beside it.':
    'Garder de nouveau l\'original : "plugmark certificates keep FILE", avec --for NUMBER pour un scan. Le même fichier remplace celui qui manque ou a changé ; un autre est gardé à côté.',
  'Name it with --for NUMBER, the number that "plugmark calendar" shows.':
    'Le nommer avec --for NUMBER, le numéro que montre "plugmark calendar".',
  'Name the files, or the station file with --station.':
    'Nommer les fichiers, ou le fichier de poste avec --station.',
  'No certificate is kept yet.': "Aucun certificat n'est encore gardé.",
  'Nothing of it was kept. Name the certificate, or scan it again.':
    "Rien n'en a été gardé. Nommer le certificat, ou le numériser de nouveau.",
  'Use the number that "plugmark calendar" shows.': 'Prendre le numéro que montre "plugmark calendar".',
  'as kept': 'tel que gardé',
  'kept again': 'gardé de nouveau',
  kept: 'gardé',
  'no tool of this station has a certificate with this number':
    "aucun outil de ce poste n'a de certificat avec ce numéro",
  'only a station file lists certificates': 'seul un fichier de poste liste des certificats',
  'the file is empty': 'le fichier est vide',
  'this file is neither XML nor JSON, so it does not say which certificate it is':
    "ce fichier n'est ni XML ni JSON, il ne dit donc pas quel certificat il est",
  'was kept already': 'était déjà gardé',
  'Gaps as delivered, limits {0} to {1} mm': 'Écartements à la livraison, limites {0} à {1} mm',
  'Left out: {0} gaps that were SIMULATED or REPLAYED.': 'Omis : {0} écartements SIMULÉS ou REJOUÉS.',
  'No gap of a new plug matches.': 'Aucun écartement de bougie neuve ne correspond.',
  'Plugs not measured were tried with wires. "At worst" counts those as out of gap that wires could not decide.':
    'Les bougies non mesurées ont été essayées avec des fils. "Au pire" compte hors limites celles que les fils n\'ont pas pu décider.',
  largest: 'plus grand',
  smallest: 'plus petit',
  lot: 'lot',
  'out of gap (95 %)': 'hors limites (95 %)',
  part: 'pièce',
  plugs: 'bougies',
  '{0}: this says nothing about real plugs.': '{0} : cela ne dit rien de vraies bougies.',
  '  In {0} {1}: of these only the figures are in it; what names the vehicles is withheld.':
    '  Dans {0} {1} : seuls les chiffres y sont ; ce qui nomme les véhicules est retenu.',
  '  Left out: {0}, without a VIN but with the same plate or fleet number. Name --plate or --fleet to include them.':
    '  Omis : {0}, sans VIN mais avec la même plaque ou le même numéro de parc. Nommer --plate ou --fleet pour les inclure.',
  'Give it with --claim.': 'La donner avec --claim.',
  'Look with "plugmark ask"; an older job may have only its plate.':
    'Chercher avec "plugmark ask" ; un ordre plus ancien n\'a peut-être que sa plaque.',
  'Name it with --vin, --plate or --fleet.': 'Le nommer avec --vin, --plate ou --fleet.',
  'Name the one of the claim with --vin.': 'Nommer celui de la réclamation avec --vin.',
  'a claim has a number or a name of 1 to 80 characters':
    'une réclamation a un numéro ou un nom de 1 à 80 caractères',
  'no vehicle is named': "aucun véhicule n'est nommé",
  'these jobs are of {0} vehicles: {1}': 'ces ordres sont de {0} véhicules : {1}',
  'this station has no job on this vehicle in that time':
    "ce poste n'a pas d'ordre sur ce véhicule pendant ce temps",
  'See "plugmark calendar" for the tools of this station.':
    'Voir "plugmark calendar" pour les outils de ce poste.',
  'neither the log nor the station file has a tool of this name or serial number':
    "ni le journal ni le fichier de poste n'a d'outil de ce nom ou numéro de série",
  'Written into {0}: {1}': 'Écrit dans {0} : {1}',
  '; done again since': '; refait depuis',
  "at the end of the tool's scale": "au bout de l'échelle de l'outil",
  'by angle': "à l'angle",
  'closed with work open': 'clos avec du travail ouvert',
  'cylinder {0}, ': 'cylindre {0}, ',
  'cylinder {0}, gap reading {1}': "cylindre {0}, mesure d'écartement {1}",
  'cylinder {0}, pull {1}': 'cylindre {0}, traction {1}',
  'impact assessment {0} on {1} ({2}): {3}, {4}': "analyse d'impact {0} sur {1} ({2}) : {3}, {4}",
  'nobody said what it was': "personne n'a dit ce que c'était",
  'not decided': 'pas décidé',
  'too far out': 'trop loin',
  'too high': 'trop haut',
  'too low': 'trop bas',
  '{0} used although {1}': '{0} employé alors que : {1}',
  '{0}: OUT OF ORDER, not proven by itself{1}': '{0} : HORS ORDRE, pas prouvé en soi{1}',
  '{0}: OUT OF ORDER{1}': '{0} : HORS ORDRE{1}',
  '--since "{0}" may mean {1}': '--since "{0}" peut désigner {1}',
  'Say which one counts: {0}. An earlier one looks back further.':
    'Dire laquelle compte : {0}. Une plus ancienne remonte plus loin.',
  'certificate {0} of {1} was taken up again after {2} of {3}':
    'le certificat {0} du {1} a été repris après {2} du {3}',
  'certificates {0} are of one day, {1}': "les certificats {0} sont d'un même jour, {1}",
  'the log has no certificate {0} of this tool from before {1}':
    "le journal n'a pas de certificat {0} de cet outil d'avant le {1}",
  '{0}, so nobody can tell which was the last good check':
    '{0} ; personne ne peut donc dire quelle fut la dernière bonne vérification',
  'does not hold itself, see {0}': 'ne tient pas lui-même, voir {0}',
  'has no proof of the gap of cylinder {0}': "n'a pas de preuve de l'écartement du cylindre {0}",
  'has no proof of the torque of cylinder {0}': "n'a pas de preuve du couple du cylindre {0}",
  'is not complete': "n'est pas complet",
  replayed: 'rejouées',
  'rests on {0} figures, and proves nothing': 'repose sur des valeurs {0}, et ne prouve rien',
  simulated: 'simulées',
  'used {0}, which was out of tolerance': 'a employé {0}, qui était hors tolérance',
  'Give the file of what was found of this tool.': 'Donner le fichier de ce qui a été trouvé de cet outil.',
  'It has: {0}.': 'Il a : {0}.',
  'Without a serial number nobody can tell which tool was used; look at its jobs with "plugmark ask --tool".':
    'Sans numéro de série, personne ne peut dire quel outil a servi ; regarder ses ordres avec "plugmark ask --tool".',
  'it is dated {0}, after today, {1}': "il est daté du {0}, après aujourd'hui, le {1}",
  'it is dated {0}, and {1} ({2}) is in the log only from {3} on':
    "il est daté du {0}, et {1} ({2}) n'est au journal qu'à partir du {3}",
  'it is for serial number {0}; tool {1} has none in the log':
    "il est pour le numéro de série {0} ; l'outil {1} n'en a pas au journal",
  'the log of this station has no tool of that name': "le journal de ce poste n'a pas d'outil de ce nom",
  'Decide about each, for example: plugmark impact decide {0} {1} --as {2} --because "..." --by NAME':
    'Décider de chacun, par exemple : plugmark impact decide {0} {1} --as {2} --because "..." --by NAME',
  'The decisions stand. Assess again if something new was found.':
    'Les décisions restent. Refaire une analyse si du nouveau a été trouvé.',
  'There is nothing more to do.': "Il n'y a plus rien à faire.",
  'this impact assessment was closed by {0} on {1}': "cette analyse d'impact a été close par {0} le {1}",
  '{0} of {1} jobs are still open: {2} not decided, {3} recalled and not redone':
    '{0} ordres sur {1} sont encore ouverts : {2} pas décidés, {3} rappelés et pas refaits',
  '; it stays open until it is redone': "; il reste ouvert tant qu'il n'est pas refait",
  '; they stay open until they are redone': "; ils restent ouverts tant qu'ils ne sont pas refaits",
  'Close it with: plugmark impact close {0} --because "..." --by NAME':
    'La clore avec : plugmark impact close {0} --because "..." --by NAME',
  'Impact assessment {0} is closed. Its paper: plugmark impact show {1} --out FOLDER':
    "L'analyse d'impact {0} est close. Son document : plugmark impact show {1} --out FOLDER",
  'Leave it out, or decide redone.': "L'omettre, ou décider redone.",
  'List them with "plugmark impact show {0}".': 'Les lister avec "plugmark impact show {0}".',
  'Name jobs, or use --undecided doubtful, out or any; see "plugmark impact show {0}".':
    'Nommer des ordres, ou prendre --undecided doubtful, out ou any ; voir "plugmark impact show {0}".',
  'No impact assessment.': "Pas d'analyse d'impact.",
  OPEN: 'OUVERTE',
  assessed: 'analysé',
  'expected one of: {0}': 'attendu : un parmi {0}',
  'it names the job that did it again, which only --as redone has':
    "il nomme l'ordre qui l'a refait, que seul --as redone a",
  'job {0} is not among the jobs that this impact assessment touches':
    "l'ordre {0} n'est pas parmi ceux que touche cette analyse d'impact",
  'no job is named, or all of them are decided': "aucun ordre n'est nommé, ou tous sont décidés",
  '{0} may mean {1}': '{0} peut désigner {1}',
  '{0}: {1}{2}. {3} of {4} still open.': '{0} : {1}{2}. {3} sur {4} encore ouverts.',
  'doubtful on cylinder {0}': 'douteux au cylindre {0}',
  'out on cylinder {0}': 'hors limites au cylindre {0}',
  '{0}: of its job {1} of {2}, {3}. When this job is complete: plugmark impact decide {4} {5} --as redone --because TEXT --by NAME':
    '{0} : de son ordre {1} du {2}, {3}. Quand cet ordre est complet : plugmark impact decide {4} {5} --as redone --because TEXT --by NAME',
  '{0}: {1} ({2}) was out of tolerance on {3}; {4}.': '{0} : {1} ({2}) était hors tolérance le {3} ; {4}.',
  'Do it again in a job with the same VIN, plate or fleet number and a fit tool, and name that job with --in. Or decide inform or accept, and say why.':
    'Le refaire dans un ordre avec les mêmes VIN, plaque ou numéro de parc et un outil apte, et nommer cet ordre avec --in. Ou décider inform ou accept, et dire pourquoi.',
  'it is not redone: {0}': "il n'est pas refait : {0}",
  'job {0} {1}': "l'ordre {0} {1}",
  'the log holds no later job on that vehicle':
    "le journal ne contient pas d'ordre ultérieur sur ce véhicule",
  'the log holds no later job {0} on that vehicle':
    "le journal ne contient pas d'ordre ultérieur {0} sur ce véhicule",
  '{0}, job {1}': '{0}, ordre {1}',
  'List them with "plugmark impact list".': 'Les lister avec "plugmark impact list".',
  'this station has no impact assessment of that number': "ce poste n'a pas d'analyse d'impact de ce numéro",
  'Since {0}: {1} with {2} ({3}) as it was found, in no impact assessment: {4}{5}. Assess again with the same file: plugmark impact {6} --as-found FILE --by NAME':
    "Depuis {0} : {1} avec {2} ({3}) dans l'état trouvé, dans aucune analyse d'impact : {4}{5}. Refaire l'analyse avec le même fichier : plugmark impact {6} --as-found FILE --by NAME",
  'Still to be recorded and decided at {0}: plugmark impact {1} --as-found FILE --by NAME':
    'Encore à enregistrer et à décider à {0} : plugmark impact {1} --as-found FILE --by NAME',
  'Take the certificate of this tool.': 'Prendre le certificat de cet outil.',
  'The survey records nothing.': "Ce tour d'horizon n'enregistre rien.",
  'Used in that time at {0} of {1} stations.': 'Employé pendant ce temps à {0} postes sur {1}.',
  attempts: 'essais',
  cylinders: 'cylindres',
  day: 'jour',
  'decided there': 'décidé là-bas',
  doubtful: 'douteux',
  'it is of {0}, and not of {1}': 'il est de {0}, et non de {1}',
  'its first use on {0}': 'son premier emploi le {0}',
  'jobs touched': 'ordres touchés',
  'not recorded': 'pas enregistré',
  'not yet': 'pas encore',
  out: 'hors limites',
  'proofs still in': 'preuves encore valables',
  'recorded there': 'enregistré là-bas',
  sort: 'sorte',
  '{0}, by what {1} of {2} found: everything since {3} judged again.':
    "{0}, d'après {1} du {2} : tout depuis {3} jugé à nouveau.",
  '{0}: it says nothing about real engines.': '{0} : cela ne dit rien de vrais moteurs.',
  'It did not move since {0}, as far as the uncertainty of both can tell.':
    "Il n'a pas bougé depuis {0}, autant que l'incertitude des deux permet de le dire.",
  'It did not move since {0}, as far as the uncertainty of both can tell; its errors are smaller now.':
    "Il n'a pas bougé depuis {0}, autant que l'incertitude des deux permet de le dire ; ses erreurs sont plus petites maintenant.",
  'It moved at {0} of {1} points since {2}, by more than the uncertainty of both.':
    "Il a bougé en {0} points sur {1} depuis {2}, de plus que l'incertitude des deux.",
  'Jobs that went on since are in both: {0}. A decision in one counts in the other.':
    "Les ordres qui ont continué depuis sont dans les deux : {0}. Une décision dans l'une compte dans l'autre.",
  'Nothing was written, and jobs still open with it. Give it the certificate of that calibration; check serial number and dates. "plugmark ask --tool" shows when it was used.':
    'Rien n\'a été écrit, et il ouvre toujours des ordres. Lui donner le certificat de cet étalonnage ; vérifier numéro de série et dates. "plugmark ask --tool" montre quand il a servi.',
  'See "plugmark impact show {0}".': 'Voir "plugmark impact show {0}".',
  'That check and this finding have one number. If they are one calibration, date the finding {0} too, and assess again.':
    "Cette vérification et ce constat ont un même numéro. S'ils sont un seul étalonnage, dater aussi le constat du {0}, et refaire l'analyse.",
  'The log holds no good check before it, so everything since its first use was judged again.':
    'Le journal ne contient pas de bonne vérification avant, donc tout depuis son premier emploi a été jugé à nouveau.',
  'readings judged again': 'valeurs jugées à nouveau',
  'the log holds no attempt with it from {0} on that the finding of {1} can put in question':
    'le journal ne contient, à partir du {0}, aucun essai avec lui que le constat du {1} puisse mettre en cause',
  'this file was assessed on {0} by {1}, and nothing was measured with the tool in that state since':
    "ce fichier a été analysé le {0} par {1}, et rien n'a été mesuré depuis avec l'outil dans cet état",
  '{0} ({1}) judged {2} to {3} as well. Jobs in both: {4}; decide about them in each.':
    '{0} ({1}) a jugé aussi {2} à {3}. Ordres dans les deux : {4} ; en décider dans chacune.',
  '{0} goes on from {1} on the same file. It holds only what was entered since, or lies further back.':
    '{0} continue {1} sur le même fichier. Elle ne contient que ce qui a été inscrit depuis, ou remonte plus loin.',
  '{0} of {1}': '{0} du {1}',
  '{0}, serial number {1}': '{0}, numéro de série {1}',
  'OUT OF ORDER: {0}{1}, {2}{3}': 'HORS ORDRE : {0}{1}, {2}{3}',
  'another version of the program made the file of this witness':
    'une autre version du programme a créé le fichier de ce témoin',
  'Use that version, or make a new witness in another folder.':
    'Utiliser cette version, ou créer un nouveau témoin dans un autre dossier.',
  'expected one field "value", found {0}': 'attendu : un champ "value", trouvé : {0}',
  'the angle is there twice': "l'angle figure deux fois",
  'expected the angle beside the value': "attendu : l'angle à côté de la valeur",
  'the unit is given here and told by the frame': "l'unité est donnée ici et aussi par la trame",
  '{0} is no unit of {1}': "{0} n'est pas une unité de {1}",
  'expected a step that the numbers can tell, not {0}':
    'attendu : un pas que les nombres peuvent rendre, et non {0}',
  'a {0} has codes of its own for that': '{0} a ses propres codes pour cela',
  'expected the value of 1': 'attendu : la valeur de 1',
  'expected a unit, or a field that tells it': "attendu : une unité, ou un champ qui l'indique",
  'expected the smallest step of the tool, because the numbers do not tell it':
    "attendu : le plus petit pas de l'outil, car les nombres ne l'indiquent pas",
  'there is a "{0}" already': 'il y a déjà un "{0}"',
  'expected the counter outside of the samples': 'attendu : le compteur hors des échantillons',
  'there are no "samples" that it could count': 'il n\'y a pas de "samples" qu\'il pourrait compter',
  'expected the "value" in the samples': 'attendu : "value" dans les échantillons',
  'a {0} has no bit {1}': "{0} n'a pas de bit {1}",
  'bit {0} is there twice': 'le bit {0} figure deux fois',
  'a decimal digit takes 4 bits': 'un chiffre décimal prend 4 bits',
  'a serial port has no packets': "un port série n'a pas de paquets",
  'text has no length of its own; expected "delimiter", "time" or "packet"':
    'un texte n\'a pas de longueur propre ; attendu : "delimiter", "time" ou "packet"',
  'expected a field "size" in front, because nothing else tells where the frame ends':
    'attendu : un champ "size" devant, car rien d\'autre n\'indique où finit la trame',
  'expected a pause, a checksum, or fixed bytes at the end: without them a lost byte would shift every number unseen':
    'attendu : une pause, une somme de contrôle ou des octets fixes à la fin : sans eux, un octet perdu décalerait chaque nombre sans que cela se voie',
  '{0} bytes are more than the {1} of the longest frame':
    '{0} octets dépassent les {1} de la plus longue trame',
  'it would cover nothing': 'elle ne couvrirait rien',
  'a sample has no bytes': "un échantillon n'a pas d'octets",
  'expected either "characters" or "until"': 'attendu : soit "characters", soit "until"',
  'nothing tells where the figure in front of it ends': "rien n'indique où finit le nombre qui précède",
  'this step is too fine or too coarse to be recorded':
    'ce pas est trop fin ou trop grossier pour être enregistré',
  'it is longer than {0} bytes': 'il dépasse {0} octets',
  'it is not UTF-8 text': "ce n'est pas un texte UTF-8",
  'Correct the place named; "plugmark manual profiles" describes every field.':
    'Corriger l\'endroit indiqué ; "plugmark manual profiles" décrit chaque champ.',
  'a Bluetooth tool': 'un outil Bluetooth',
  'a tool on a serial port': 'un outil sur un port série',
  'the profile "{0}" describes a link "{1}", not {2}': 'le profil "{0}" décrit une liaison "{1}", et non {2}',
  'In the station file use "profile" for Bluetooth tools and "serial" for those on a serial port.':
    'Dans le fichier du poste, utiliser "profile" pour les outils Bluetooth et "serial" pour ceux d\'un port série.',
  'the profile cannot be read: {0}': 'le profil ne peut pas être lu : {0}',
  'Name a profile in JSON.': 'Nommer un profil en JSON.',
  'the device at {0} has no characteristic {1}, which the profile "{2}" names':
    'l\'appareil à {0} n\'a pas la caractéristique {1}, que le profil "{2}" nomme',
  'Choose the profile of this device, or correct it by the published documentation.':
    "Choisir le profil de cet appareil, ou le corriger d'après la documentation publiée.",
  'expected a move such as "pull 1 hurried"': 'attendu : un geste tel que "pull 1 hurried"',
  '"{0}" appears twice': '"{0}" figure deux fois',
  'expected either "port" or "address"': 'attendu : soit "port", soit "address"',
  'expected it where a tool has an address': "attendu dès qu'un outil a une adresse",
  'there is no tool "{0}"': 'il n\'y a pas d\'outil "{0}"',
  'expected it above the lower limit': 'attendu au-dessus de la limite inférieure',
  'expected an "engine" to work at': 'attendu : un "engine" sur lequel travailler',
  'there is no cylinder {0}': "il n'y a pas de cylindre {0}",
  'the plug of cylinder {0} is not in the head: "fit {1}" first':
    'la bougie du cylindre {0} n\'est pas dans la culasse : d\'abord "fit {1}"',
};
