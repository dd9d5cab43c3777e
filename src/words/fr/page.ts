/** French for the page that verifies. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  '{0} of {1} PUT IN QUESTION later.': '{0} sur {1} MIS EN CAUSE plus tard.',
  'job {0} of {1}: {2} by impact assessment {3} on {4} ({5}), out of tolerance {6}; {7}':
    "ordre {0} du {1} : {2} par l'analyse d'impact {3} sur {4} ({5}), hors tolérance {6} ; {7}",
  'OUT at cylinder {0}': 'DEHORS au cylindre {0}',
  'DOUBTFUL at cylinder {0}': 'DOUTEUX au cylindre {0}',
  'that the readings came from the named instruments, where the link of a tool was not authenticated: each record says so':
    "que les mesures viennent des instruments nommés, là où la liaison d'un outil n'était pas authentifiée : chaque relevé le dit",
  'that no job was left out when it was chosen: only the whole log of the station shows that':
    "qu'aucun ordre n'a été omis au moment du choix : seul le journal entier du poste le montre",
  "that no impact assessment was left out: the station's own entries here are a choice of those that bear on these jobs":
    "qu'aucune analyse d'impact n'a été omise : les entrées propres du poste ici sont un choix de celles qui touchent ces ordres",
  "that no impact assessment came behind the station's entry {0}: of what followed, up to {1}, only the entries of the records here are shown":
    "qu'aucune analyse d'impact n'a suivi l'entrée {0} du poste : de la suite, jusqu'à {1}, seules les entrées des relevés sont montrées ici",
  'that nothing was rewritten before it was made: nobody held it against an older checkpoint. Keep its {0} for the next time, and give it with --kept':
    "que rien n'a été réécrit avant sa création : personne ne l'a comparé à un point de contrôle plus ancien. Garder son {0} pour la prochaine fois, et le donner avec --kept",
  'what papers say that somebody has from elsewhere: hold each against its record with "plugmark verify PAPER.pdf"':
    "ce que disent les documents reçus d'ailleurs : comparer chacun à son relevé avec « plugmark verify PAPER.pdf »",
  'the verdicts of the jobs that were not judged again: verify them with the version that made them as well':
    'les verdicts des ordres non rejugés : les vérifier aussi avec la version qui les a créés',
  'that nothing of a job came behind its last entry here: a job that goes on has more entries in the log':
    "que rien d'un ordre n'a suivi sa dernière entrée ici : un ordre qui continue a d'autres entrées dans le journal",
  contents: 'contenu',
  'judged again': 'rejugé',
  completeness: 'complétude',
  'order of work': 'ordre des opérations',
  signatures: 'signatures',
  signer: 'signataire',
  log: 'journal',
  clock: 'horloge',
  witnesses: 'témoins',
  'trusted time': 'heure attestée',
  'one history': 'un seul historique',
  'same log': 'même journal',
  since: 'depuis',
  impacts: 'impacts',
  times: 'heures',
  made: 'création',
  vin: 'numéro de châssis',
  fleet: 'flotte',
  customer: 'client',
  person: 'personne',
  'this file of the package is not there': 'ce fichier du paquet manque',
  'Ask for the package again.': 'Redemander le paquet.',
  'Ask for it again from where it came.': "Le redemander à qui l'a envoyé.",
  'it has {0}, and no such file has more than {1}': "il a {0}, et aucun fichier de ce genre n'a plus de {1}",
  'the browser could not read this file': "le navigateur n'a pas pu lire ce fichier",
  'Choose it again.': 'Le choisir à nouveau.',
  'The page could not go on with this file. Reload it, and try another browser.':
    "La page n'a pas pu continuer avec ce fichier. La recharger, ou essayer un autre navigateur.",
  'Reading …': 'Lecture …',
  'Stopped.': 'Arrêté.',
  Stop: 'Arrêter',
  '{0} of {1} {2}': '{0} sur {1} {2}',
  'You trust nobody yet.': 'Vous ne faites encore confiance à personne.',
  'Your list: {0}': 'Votre liste : {0}',
  'Back to all records': 'Retour à tous les relevés',
  Remarks: 'Remarques',
  Records: 'Relevés',
  'Put in question by what was learned later': 'Mis en cause par ce qui a été appris plus tard',
  Withheld: 'Retenu',
  'What to know': 'À savoir',
  Record: 'Relevé',
  'Show {0}': 'Voir {0}',
  '# record|# records': { one: '# relevé', other: '# relevés' },
  'these files': 'ces fichiers',
  records: 'relevés',
  files: 'fichiers',
  'Its papers were NOT compared with the records, and could show anything.':
    "Ses documents n'ont PAS été comparés aux relevés, et pourraient montrer n'importe quoi.",
  'one {0}': 'un {0}',
  'authentic and whole': 'authentique et entier',
  '{0}; station {1}; {2}; asked for {3}': '{0} ; poste {1} ; {2} ; demandé : {3}',
  'all jobs': 'tous les ordres',
  'Compare the key that is named below with the one that the station gave you by another way. If it is the same, take {0} out of the package and add it here.':
    "Comparer la clé de signature nommée plus bas à celle que le poste vous a donnée par une autre voie. Si c'est la même, prendre {0} dans le paquet et l'ajouter ici.",
  'Left out: job {0}, {1}.': 'Omis : ordre {0}, {1}.',
  'Check a spark plug record': 'Vérifier un relevé de bougies',
  Language: 'Langue',
  'Check a record of spark plug work': 'Vérifier un relevé de travail sur les bougies',
  'Drop the file that you were given anywhere on this page. It is checked here, on your own computer: nothing is sent, and nobody is asked.':
    "Déposer le fichier reçu n'importe où sur cette page. Il est vérifié ici, sur votre propre ordinateur : rien n'est envoyé, et personne n'est interrogé.",
  'Files to check': 'Fichiers à vérifier',
  'Choose a record, PDF or package': 'Choisir un relevé, un PDF ou un paquet',
  'Choose a folder': 'Choisir un dossier',
  'Print the result': 'Imprimer le résultat',
  'Whom you trust': 'À qui vous faites confiance',
  "A record shows that it is unchanged since it was sealed. That the shop sealed it, only you can know: from the shop's trust list (trusted-keys.json), which you had from the shop itself, and not together with the record.":
    "Un relevé montre qu'il n'a pas changé depuis qu'il a été scellé. Que l'atelier l'a scellé, vous seul pouvez le savoir : par la liste de confiance de l'atelier (trusted-keys.json), reçue de l'atelier lui-même, et non avec le relevé.",
  'Add a trust list, kept checkpoint, policy or time stamp':
    'Ajouter une liste de confiance, un point de contrôle gardé, une politique ou un horodatage',
  'This page is one file without a server. It works without a network, keeps nothing, and judges a record by the rules that the record names. The same is said by the command "plugmark verify".':
    'Cette page est un seul fichier sans serveur. Elle marche sans réseau, ne garde rien, et juge un relevé par les règles que le relevé nomme. La commande « plugmark verify » dit la même chose.',
  'no record is inside this PDF': "il n'y a pas de relevé dans ce PDF",
  'Ask for the record (*.record.json), or for the PDF as the shop made it: some programs drop what is attached.':
    "Demander le relevé (*.record.json), ou le PDF tel que l'atelier l'a créé : certains programmes retirent les pièces jointes.",
  '{0} records are inside this PDF, and it should be one':
    'il y a {0} relevés dans ce PDF, et il devrait y en avoir un',
  'no samples': 'pas de courbe',
  'Log and file': 'Journal et fichier',
  'SHA-256 of the record: {0}': 'SHA-256 du relevé : {0}',
  'What was checked': 'Ce qui a été vérifié',
  passed: 'réussi',
  FAILED: 'ÉCHEC',
  'in doubt': 'en doute',
  'not looked at': 'non examiné',
  'Job {0}: {1}': 'Ordre {0} : {1}',
  'Cylinders in service order': "Cylindres dans l'ordre du travail",
  'What every plug must reach': 'Ce que chaque bougie doit atteindre',
  'Gap and torque of each cylinder': 'Écartement et couple de chaque cylindre',
  'Exceptions, and what was out of order': "Exceptions, et ce qui s'est fait hors ordre",
  'When (UTC)': 'Quand (UTC)',
  'Old plugs, new plugs, and the work around them': 'Anciennes bougies, bougies neuves, et le travail autour',
  'Tools and their calibration': 'Outils et leur étalonnage',
  'Permissible deviation': 'Écart admissible',
  'How its readings came': 'Comment ses mesures sont venues',
  'What this proves': 'Ce que ceci prouve',
  'What this does not prove': 'Ce que ceci ne prouve pas',
  'a reading here proves it': 'une mesure ici le prouve',
  'guard band: within the limits, and nobody can be sure':
    'bande de garde : dans les limites, et personne ne peut être sûr',
  'beyond the limits': 'hors des limites',
  '▼ peak, which is judged': '▼ valeur de crête, qui est jugée',
  '○ first release (the click)': '○ premier déclenchement (le déclic)',
  'Nothing was measured.': "Rien n'a été mesuré.",
  'Old gap, mm': 'Ancien écartement, mm',
  'Removal, N·m': 'Desserrage, N·m',
  'Job {0}, station {1}, {2} entries; {3}': 'Ordre {0}, poste {1}, {2} entrées ; {3}',
  paper: 'document',
  'The pages of this PDF were NOT compared with the record inside.':
    "Les pages de ce PDF n'ont PAS été comparées au relevé qu'il contient.",
  'They could show anything: what is shown here comes from the record inside, which is what counts. "plugmark verify" on the PDF compares them.':
    "Elles pourraient montrer n'importe quoi : ce qui est montré ici vient du relevé à l'intérieur, qui seul compte. « plugmark verify » sur le PDF les compare.",
  'Ask the shop for its trust list (trusted-keys.json) by another way than the one by which this came, or compare the key that is named below with one that you have from the shop. Then add the list here.':
    "Demander à l'atelier sa liste de confiance (trusted-keys.json) par une autre voie que celle par laquelle ceci est venu, ou comparer la clé de signature nommée plus bas à celle que vous tenez de l'atelier. Puis ajouter la liste ici.",
  'Withheld: {0}. What is signed holds digests of these texts; no check needs them.':
    "Retenu : {0}. Ce qui est signé contient l'empreinte de ces textes ; aucune vérification n'en a besoin.",
  'In the log {0} of {1} entries, root {2}. The station signed it; nobody else has witnessed it here.':
    "Dans le journal {0} de {1} entrées, racine {2}. Le poste l'a signé ; personne d'autre ne l'a attesté ici.",
  'Every plug must end within {0}. Allowing for what this wrench may be off, a reading proves that only within {1}.':
    "Chaque bougie doit finir dans la plage de {0}. Compte tenu de l'erreur possible de cette clé, une mesure ne le prouve que dans celle de {1}.",
  'Every plug must end within {0}. No reading of this wrench proves that: it is too coarse.':
    'Chaque bougie doit finir dans la plage de {0}. Aucune mesure de cette clé ne le prouve : elle est trop peu précise.',
  'Every gap must be within {0}. Allowing for what this gauge may be off, a reading proves that only within {1}.':
    "Chaque écartement doit être dans la plage de {0}. Compte tenu de l'erreur possible de cette jauge, une mesure ne le prouve que dans celle de {1}.",
  'Every gap must be within {0}. No reading of this gauge proves that: it is too coarse.':
    'Chaque écartement doit être dans la plage de {0}. Aucune mesure de cette jauge ne le prouve : elle est trop peu précise.',
  'click {0}': 'déclic {0}',
  'this is no record, PDF, package, trust list, checkpoint, policy or time stamp':
    "ce n'est ni un relevé, ni un PDF, ni un paquet, ni une liste de confiance, ni un point de contrôle, ni une politique, ni un horodatage",
  'Choose the *.record.json, the PDF or the package that you were given.':
    'Choisir le *.record.json, le PDF ou le paquet que vous avez reçu.',
  'an archive is verified by itself': 'une archive se vérifie seule',
  'Choose one package, or records, but not both at once.':
    'Choisir un paquet, ou des relevés, mais pas les deux à la fois.',
  'The checkpoint that you kept': 'Le point de contrôle que vous avez gardé',
  'Your policy of logs and witnesses': 'Votre politique de journaux et de témoins',
  'The time stamp': "L'horodatage",
  'The certificates of authorities that you believe': 'Les certificats des autorités que vous croyez',
  'no file in this folder ends in .record.json': 'aucun fichier de ce dossier ne finit par .record.json',
  'Choose a folder that holds records, or a package.':
    'Choisir un dossier qui contient des relevés, ou un paquet.',
  'Add the certificates of the authority as PEM.': "Ajouter les certificats de l'autorité au format PEM.",
  'nothing says which authority to believe': 'rien ne dit quelle autorité croire',
  'there is no certificate here': "il n'y a pas de certificat ici",
  'a time stamp belongs to one record, and these are many':
    'un horodatage appartient à un relevé, et il y en a ici plusieurs',
  'Open the record in it. The time stamp is left out here.':
    "Ouvrir le relevé en question. L'horodatage est laissé de côté ici.",
  'no name': 'sans nom',
  'revoked from {0}': 'révoquée à partir du {0}',
  station: 'poste',
  countersigner: 'contresignataire',
  'this browser cannot check the signatures (Ed25519), so nothing is said about the file':
    "ce navigateur ne sait pas vérifier les signatures (Ed25519) : rien n'est donc dit du fichier",
  'Open the page in a newer browser.': 'Ouvrir la page dans un navigateur plus récent.',
  'a fault in the page itself: {0}': 'une erreur de la page elle-même : {0}',
  'Check the file with "plugmark verify", and report the fault.':
    "Vérifier le fichier avec « plugmark verify », et signaler l'erreur.",
  'unpacked it would have {0} MB, more than any package':
    'décompressée, elle aurait {0} Mo, plus que tout paquet',
  'this archive is not read: {0}': "cette archive n'est pas lue : {0}",
  'it has no table of contents': "elle n'a pas de table des matières",
  'it is of the 64-bit form': 'elle est de la forme à 64 bits',
  'it is one of several parts': "c'est une partie parmi plusieurs",
  'its table of contents is larger than that of any package':
    'sa table des matières est plus grande que celle de tout paquet',
  'its table of contents is not where it should be': "sa table des matières n'est pas à sa place",
  'its table of contents is damaged': 'sa table des matières est abîmée',
  'its table of contents is cut off': 'sa table des matières est coupée',
  '{0} and {1} have the same name': '{0} et {1} ont le même nom',
  'its table of contents holds something else': 'sa table des matières contient autre chose',
  '{0} is under a password': '{0} est protégé par un mot de passe',
  '{0} is packed in another way': '{0} est compressé autrement',
  '{0} has not the size that it says': "{0} n'a pas la taille annoncée",
  '{0} is cut off': '{0} est coupé',
  '{0} is a link, or no plain file': "{0} est un lien, ou n'est pas un fichier ordinaire",
  'a name in it is not UTF-8 text': "un nom qu'elle contient n'est pas du texte UTF-8",
  'a name in it leads out of the folder, or is none: {0}':
    "un nom qu'elle contient mène hors du dossier, ou n'en est pas un : {0}",
  '{0} and {1} lie in one another': '{0} et {1} se chevauchent',
  '{0} is not there': "{0} n'y est pas",
  '{0} has another name where it lies': '{0} porte un autre nom à sa place',
};
