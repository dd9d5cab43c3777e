/** French for the table of words for codes, and of refusals. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  OK: 'OK',
  'NOT OK': 'NON OK',
  UNDECIDED: 'INDÉCIS',
  'gasket seat': 'siège à joint',
  'conical seat': 'siège conique',
  'aluminium head': 'culasse en aluminium',
  'cast-iron head': 'culasse en fonte',
  'dry threads': 'filetage sec',
  'oiled threads': 'filetage huilé',
  'anti-seize threads': 'filetage avec pâte antigrippante',
  'factory-coated threads': "filetage revêtu d'usine",
  'the engine maker': 'le constructeur du moteur',
  'the plug box': 'la boîte de la bougie',
  'a general table': 'un tableau général',
  'an invented example': 'un exemple inventé',
  '{0} says {1}, which takes precedence over {2}': '{0} indique {1}, et cela prime : {2} vient après',
  'Use the better source. Put the other one under "also".':
    'Utiliser la meilleure source. Indiquer l\'autre sous "also".',
  'cylinder {0}': 'cylindre {0}',
  'cylinder {0}, plug {1} (no. {2})': 'cylindre {0}, bougie {1} (n° {2})',
  'a cylinder number stands twice; expected each once':
    "un numéro de cylindre figure deux fois ; chacun ne doit figurer qu'une fois",
  'expected every cylinder of banks exactly once ({0})':
    'chaque cylindre des rangées doit figurer exactement une fois ({0})',
  'expected every number of banks at exactly one cylinder ({0})':
    'chaque numéro des rangées doit figurer à exactement un cylindre ({0})',
  'a cylinder stands twice; expected each once':
    "un cylindre figure deux fois ; chacun ne doit figurer qu'une fois",
  'expected every cylinder once ({0})': 'chaque cylindre doit figurer une fois ({0})',
  'a firing order starts with the first cylinder': "un ordre d'allumage commence par le premier cylindre",
  'the tightening of this cylinder': 'le serrage de ce cylindre',
  'a second pull on a plug already tight (re-hit)':
    'une seconde traction sur une bougie déjà serrée (resserrage)',
  'no plug was turned': "aucune bougie n'a été tournée",
  'a stroke that was not finished': 'une traction inachevée',
  'plug backed out, thread inspected, to be fitted again': 'bougie dévissée, filetage examiné, à remonter',
  'plug backed out, thread inspected, to be fitted again with a new plug':
    'bougie dévissée, filetage examiné, à remonter avec une bougie neuve',
  calibration: 'étalonnage',
  'calibration, beyond its points': 'étalonnage, hors de ses points',
  'error, not corrected': 'erreur, non corrigée',
  'drift since calibration': "dérive depuis l'étalonnage",
  'permissible deviation': 'écart admissible',
  'check against its class': 'contrôle par rapport à sa classe',
  resolution: 'résolution',
  repeatability: 'répétabilité',
  'peak of the pull': 'valeur de crête de la traction',
  'arm of the wrench': 'bras de la clé',
  'offset of the adapter': "déport de l'adaptateur",
  'angle of the adapter': "angle de l'adaptateur",
  'joint on the wrench': 'articulation sur la clé',
  temperature: 'température',
  'square drive': "carré d'entraînement",
  'position of the hand': 'position de la main',
  'hardness of the joint': "raideur de l'assemblage",
  other: 'autre',
  'step, drift and noise of the angle': "pas, dérive et bruit de l'angle",
  'angle of the tool': "angle de l'outil",
  'where the plug made contact': 'point de contact de la bougie',
  'wind-up of the tools': 'torsion des outils',
  'certificate {0}, {1}': 'certificat {0}, {1}',
  '{0} readings, {1}': '{0} mesures, {1}',
  'step of the readings': 'pas des mesures',
  'its samples and its zero': 'ses échantillons et son zéro',
  'measured on the adapter': "mesuré sur l'adaptateur",
  'a quarter of the limit, not stated': 'un quart de la limite, non indiqué',
  'its bend': 'son inclinaison',
  'assumed, because nobody states it': "supposé, car personne ne l'indique",
  'published by the device itself': "indiqué par l'appareil lui-même",
  '{0} Still open: {1}.': '{0} Reste à faire : {1}.',
  normal: 'normale',
  'light grey to tan, little wear, perhaps some white powder':
    "gris clair à brun clair, peu d'usure, parfois un peu de poudre blanche",
  'a healthy cylinder and a plug that suits it': 'un cylindre sain et une bougie adaptée',
  'reddish coat': 'dépôt rougeâtre',
  'pink to brick red film on insulator and electrodes':
    "film rose à rouge brique sur l'isolant et les électrodes",
  'an additive in the fuel; no fault of the engine': 'un additif du carburant ; aucun défaut du moteur',
  'dry soot': 'suie sèche',
  'dull black, dry, comes off on the finger': 'noir mat, sec, tache le doigt',
  'rich mixture, short trips, weak spark, too cold a plug, blocked air filter':
    'mélange riche, petits trajets, étincelle faible, bougie trop froide, filtre à air bouché',
  'Have mixture, air filter and ignition checked.':
    "Faire contrôler le mélange, le filtre à air et l'allumage.",
  'wet with fuel': 'mouillée de carburant',
  'damp, smells of fuel': 'humide, sent le carburant',
  'flooded, injector that leaks, no spark in this cylinder':
    "moteur noyé, injecteur qui fuit, pas d'étincelle dans ce cylindre",
  'Have injector and ignition of this cylinder checked.':
    "Faire contrôler l'injecteur et l'allumage de ce cylindre.",
  'wet with oil': "mouillée d'huile",
  'black, wet and slippery': 'noire, mouillée et glissante',
  'oil past rings, valve guides or seals, or through the crankcase vent':
    'huile passant par les segments, les guides ou les joints de soupape, ou par le reniflard',
  'Have the oil consumption looked into.': "Faire examiner la consommation d'huile.",
  ash: 'cendres',
  'pale crust on electrodes and insulator': "croûte claire sur les électrodes et l'isolant",
  'additives of oil or fuel that do not burn; oil consumption':
    "additifs d'huile ou de carburant qui ne brûlent pas ; consommation d'huile",
  worn: 'usée',
  'electrodes rounded, gap grown wide': 'électrodes arrondies, écartement agrandi',
  'in use beyond its life': 'utilisée au-delà de sa durée de vie',
  'Change the plugs sooner next time.': 'Changer les bougies plus tôt la prochaine fois.',
  glazed: 'vitrifiée',
  'shiny, glassy or spotted insulator': 'isolant brillant, vitreux ou tacheté',
  'deposits melted on by hard acceleration after a long slow time':
    'dépôts fondus par une forte accélération après une longue marche lente',
  'Have the heat range of the plug checked.': "Faire vérifier l'indice thermique de la bougie.",
  bridged: 'pontée',
  'a lump of deposit closes the gap': "un amas de dépôt ferme l'écartement",
  'oil or soot that came loose in the chamber': 'huile ou suie détachée dans la chambre',
  'beads of metal': 'perles de métal',
  'small bright beads on electrodes or insulator':
    "petites perles brillantes sur les électrodes ou l'isolant",
  'lead in the fuel, or metal from piston or valve: look into the cylinder':
    "plomb dans le carburant, ou métal du piston ou d'une soupape : regarder dans le cylindre",
  'Have the inside of this cylinder looked at.': "Faire examiner l'intérieur de ce cylindre.",
  overheated: 'surchauffée',
  'chalk white insulator, dark specks, electrodes burnt blue':
    'isolant blanc craie, points sombres, électrodes bleuies',
  'a plug that was loose, too hot a plug, lean mixture, timing, cooling':
    "bougie desserrée, bougie trop chaude, mélange pauvre, avance à l'allumage, refroidissement",
  'Have mixture, timing and cooling checked.':
    "Faire contrôler le mélange, l'avance à l'allumage et le refroidissement.",
  melted: 'fondue',
  'electrode melted or gone, insulator blistered': 'électrode fondue ou disparue, isolant boursouflé',
  'ignition by a hot spot before the spark; the piston may be hurt: look into the cylinder':
    "allumage par un point chaud avant l'étincelle ; le piston peut être abîmé : regarder dans le cylindre",
  'Drive no further before the inside of this cylinder is looked at.':
    "Ne plus rouler avant que l'intérieur de ce cylindre ait été examiné.",
  'knocked to pieces': 'détruite par le cliquetis',
  'insulator tip chipped, ground electrode broken without melting':
    "bec d'isolant ébréché, électrode de masse cassée sans fusion",
  'knocking: fuel, timing, load; or a gap set with force':
    'cliquetis : carburant, avance, charge ; ou écartement réglé de force',
  'Have fuel, timing and the inside of this cylinder checked.':
    "Faire contrôler le carburant, l'avance à l'allumage et l'intérieur de ce cylindre.",
  'insulator cracked': 'isolant fissuré',
  'centre electrode loose': 'électrode centrale desserrée',
  'ground electrode broken': 'électrode de masse cassée',
  'shell broken': 'culot cassé',
  'electrode bent': 'électrode tordue',
  'burnt track down the outside': "trace de brûlure à l'extérieur",
  'fine tip broken off: scrap, look for it in the cylinder':
    'pointe fine cassée : rebut, la chercher dans le cylindre',
  sound: 'bon état',
  'dirty: clean it before fitting': 'sale : nettoyer avant le montage',
  'DAMAGED: stop and repair it first': "ABÎMÉ : arrêter et réparer d'abord",
  'An even brown ring outside, just above the shell, is normal.':
    "Un anneau brun régulier à l'extérieur, juste au-dessus du culot, est normal.",
  thread: 'filetage',
  pitch: 'pas',
  reach: 'longueur de filetage',
  seat: 'siège',
  hexagon: 'six-pans',
  'heat range': 'indice thermique',
  resistor: 'résistance',
  'the specification does not allow adjusting': "la spécification n'autorise pas le réglage",
  'the specification does not allow adjusting a used plug':
    "la spécification n'autorise pas le réglage d'une bougie usagée",
  'only nickel tips are adjusted unless the specification allows it':
    "seules les pointes en nickel se règlent, sauf si la spécification l'autorise",
  'several ground electrodes are not adjusted unless the specification allows it':
    "plusieurs électrodes de masse ne se règlent pas, sauf si la spécification l'autorise",
  'the electrode was bent by {0} in all; the limit is {1}':
    "l'électrode a été pliée de {0} au total ; la limite est {1}",
  'it needs a bend of {0}; the limit is {1}': 'il faudrait plier de {0} ; la limite est {1}',
  'it does not look sound': 'elle ne paraît pas en bon état',
  'it was bent, but {0}': 'elle a été pliée, mais {0}',
  'bend the ground electrode at its base by {0} and measure again':
    "plier l'électrode de masse à sa base de {0} et mesurer à nouveau",
  'out of reach or switched off': 'hors de portée ou éteint',
  'it stopped answering': 'ne répond plus',
  'ended by the tool': "terminé par l'outil",
  'the tool is switching off': "l'outil s'éteint",
  'ended by this station': 'terminé par ce poste',
  'the pairing failed': "l'appairage a échoué",
  'the tool asks for a pairing that is not there': "l'outil demande un appairage inexistant",
  'the connection could not be established': "la connexion n'a pas pu être établie",
  'the recording has ended': "l'enregistrement est terminé",
  'its serial port is gone': 'son port série a disparu',
  'the link ended': "la liaison s'est interrompue",
  'its own counter jumped': 'son propre compteur a sauté',
  'more than the station could take': 'plus que le poste ne pouvait recevoir',
  '{0}, reason 0x{1}': '{0}, motif 0x{1}',
  'a device at {0} has the same name as the adopted tool. Its readings are ignored':
    "un appareil à {0} porte le même nom que l'outil adopté. Ses mesures sont ignorées",
  'the device at {0} gives no serial number before pairing':
    "l'appareil à {0} ne donne pas de numéro de série avant l'appairage",
  'the device at {0} has serial number {1}, which is not that of the adopted tool':
    "l'appareil à {0} porte le numéro de série {1}, qui n'est pas celui de l'outil adopté",
  'the device at {0} does not ask for encryption, but the adopted tool does. Its readings are ignored':
    "l'appareil à {0} ne demande pas de chiffrement, alors que l'outil adopté en demande. Ses mesures sont ignorées",
  'the device at {0} does not send the readings of this tool':
    "l'appareil à {0} n'envoie pas les mesures de cet outil",
  'the device at {0} is not as its profile describes it': "l'appareil à {0} ne correspond pas à son profil",
  'the device at {0} presents its readings in another format than the Bluetooth SIG defines. They cannot be trusted':
    "l'appareil à {0} présente ses mesures dans un autre format que celui défini par le Bluetooth SIG. On ne peut pas s'y fier",
  '{0} and {1}': '{0} et {1}',
  'which vehicle it was: VIN, plate and the other particulars of the order are as somebody typed them':
    "de quel véhicule il s'agissait : VIN, plaque et autres indications de l'ordre sont tels que quelqu'un les a saisis",
  'who was at work: names are as typed, and a key signs for whoever has it':
    'qui a travaillé : les noms sont tels que saisis, et une clé de signature signe pour quiconque la détient',
  'that a pull was on the plug that it was given to: order of work and answers of people say so, no sensor does':
    "qu'une traction portait sur la bougie à laquelle elle est attribuée : l'ordre des opérations et les réponses des personnes le disent, aucun capteur",
  'that the station sent on what its tools sent: whoever holds its keys can write readings that no tool sent':
    "que le poste a transmis ce que ses outils ont envoyé : quiconque détient ses clés de signature peut écrire des mesures qu'aucun outil n'a envoyées",
  'where a figure came from: the station states it. One that plays a recording and calls it linked cannot be told from an honest one':
    "d'où venait une valeur : c'est le poste qui l'indique. Un poste qui rejoue un enregistrement et le dit transmis par l'outil ne se distingue pas d'un poste honnête",
  "that the certificates are genuine: it holds their points as the station has them, not the laboratory's document":
    'que les certificats sont authentiques : il contient leurs points tels que le poste les a, non le document du laboratoire',
  'that the station keeps no other history: the witnesses that your policy names say so, and nobody else':
    "que le poste ne tient pas d'autre historique : les témoins nommés par votre politique le disent, et personne d'autre",
  'that the station keeps no other history: only witnesses, a checkpoint that somebody else kept, or a time stamp show that nothing was rewritten':
    "que le poste ne tient pas d'autre historique : seuls des témoins, un point de contrôle gardé par quelqu'un d'autre ou un horodatage montrent que rien n'a été réécrit",
  'the verdicts: they were not judged again. Verify it with the version that made it as well':
    "les verdicts : ils n'ont pas été rejugés. Vérifier aussi avec la version qui l'a établi",
  'that nothing of the job came behind its last entry here: a job that goes on has more entries in the log':
    "que rien de l'ordre n'a suivi la dernière entrée ici : un ordre qui se poursuit a d'autres entrées au journal",
  'the times of its entries: they are those of the clock of the station. The time stamp proves by when it was sealed':
    "les heures de ses entrées : ce sont celles de l'horloge du poste. L'horodatage prouve avant quand il a été scellé",
  'the times: they are those of the clock of the station':
    "les heures : ce sont celles de l'horloge du poste",
  "that the maker allows the torque limits: the source prints {0} alone, and plus/minus {1} % is the SHOP'S own rule":
    "que le constructeur autorise les limites de couple : la source imprime {0} seul, et plus/moins {1} % est la règle PROPRE À L'ATELIER",
  'that the readings came from the named instruments: the link of {0} was not authenticated, and another device could have taken the place of the tool':
    "que les mesures venaient des instruments nommés : la liaison de {0} n'était pas authentifiée, et un autre appareil aurait pu prendre la place de l'outil",
  'what an instrument read: figures of {0} were typed':
    "ce qu'un instrument a lu : des valeurs de {0} ont été saisies à la main",
  'anything that {0} would show: the readings came from a recording':
    "tout ce que {0} montrerait : les mesures venaient d'un enregistrement",
  'anything that {0} would show: there was no instrument':
    "tout ce que {0} montrerait : il n'y avait pas d'instrument",
  'No general table has a figure for this thread and seat.':
    "Aucun tableau général n'a de valeur pour ce filetage et ce siège.",
  'General tables say {0} to {1} {2} ({3}, {4}). No table holds the whole of this range; a better source goes before them.':
    'Les tableaux généraux indiquent {0} à {1} {2} ({3}, {4}). Aucun tableau ne couvre toute cette plage ; une meilleure source prime sur eux.',
  'The publishers of general tables disagree: no torque suits all of them.':
    'Les éditeurs de tableaux généraux ne concordent pas : aucun couple ne convient à tous.',
  'GENERAL TABLE: the figure is not for this engine. Look for the engine maker’s figure first.':
    "TABLEAU GÉNÉRAL : la valeur n'est pas pour ce moteur. Chercher d'abord celle du constructeur du moteur.",
  'Set aside: {0} ({1}) says {2} on {3}.': 'Écarté : {0} ({1}) indique {2} pour {3}.',
  'No oil and no anti-seize: the figure assumes dry threads.':
    'Ni huile ni pâte antigrippante : la valeur suppose un filetage sec.',
  "Reduced by {0} % for {1}: the shop's own rule; the source does not say so.":
    "Réduit de {0} % pour {1} : règle propre à l'atelier ; la source ne le dit pas.",
  "SHOP RULE: the source prints the single figure {0}. Plus/minus {1} % is this shop's own tolerance, not the maker's.":
    "RÈGLE DE L'ATELIER : la source imprime la valeur unique {0}. Plus/moins {1} % est la tolérance propre à cet atelier, non celle du constructeur.",
  "SHOP RULE: the source prints the single figure {0}. Plus/minus {1} % is this shop's own tolerance, not the maker's (basis: {2}).":
    "RÈGLE DE L'ATELIER : la source imprime la valeur unique {0}. Plus/moins {1} % est la tolérance propre à cet atelier, non celle du constructeur (base : {2}).",
  'For the same clamp force, friction falling from {0} to {1} would ask for {2} % less (Motosh; seat ring assumed).':
    "Pour la même force de serrage, un frottement passant de {0} à {1} demanderait {2} % de moins (Motosh ; anneau d'appui supposé).",
  'A used plug goes back into the cylinder it came from.':
    "Une bougie usagée retourne dans le cylindre d'où elle vient.",
  'A used gasket takes far less angle than a new one.':
    "Un joint usagé demande bien moins d'angle qu'un joint neuf.",
  'The order names an angle and no torque. The turn from contact is judged. The torque window goes from half of what general tables give for this thread and seat to a quarter more than they give: a torque outside of it is never OK.':
    "L'ordre indique un angle et aucun couple. On juge la rotation à partir du contact. La plage de couple va de la moitié de ce que les tableaux généraux donnent pour ce filetage et ce siège à un quart de plus : un couple hors de cette plage n'est jamais OK.",
  'The angle is one figure without a tolerance: no wrench can prove it. Give two limits, or turn the plug by hand and record it so.':
    "L'angle est une valeur unique sans tolérance : aucune clé ne peut le prouver. Donner deux limites, ou tourner la bougie à la main et l'enregistrer ainsi.",
  'The figure was checked by {0}.': 'La valeur a été vérifiée par {0}.',
  'The rule for single figures was set by {0}.': 'La règle des valeurs uniques a été fixée par {0}.',
  'The rule for {0} was set by {1}.': 'La règle pour {0} a été fixée par {1}.',
  'old plug not read': 'ancienne bougie non examinée',
  'new plug not checked': 'bougie neuve non contrôlée',
  'the new plug differs in {0}': 'la bougie neuve diffère : {0}',
  'plug to be replaced: {0}': 'bougie à remplacer : {0}',
  'gap not measured': 'écartement non mesuré',
  'gap not proven': 'écartement non prouvé',
  'no torque yet': 'pas encore de couple',
  'torque not proven': 'couple non prouvé',
  'open question about its torque': 'question ouverte sur son couple',
  'windows not confirmed': 'plages non confirmées',
  'steps before removal not confirmed': 'opérations avant la dépose non confirmées',
  'steps before fitting not confirmed': 'opérations avant le montage non confirmées',
  'steps after fitting not confirmed': 'opérations après le montage non confirmées',
  'pull {0}: question not answered': 'traction {0} : question sans réponse',
  'declared void': 'déclaré annulé',
  'cylinder {0}: {1}': 'cylindre {0} : {1}',
  'it is still open': 'il est encore ouvert',
  '{0} entries; a record holds {1}': '{0} entrées ; un relevé en contient {1}',
  '{0} attempts; a record holds {1}': '{0} essais ; un relevé en contient {1}',
  'its record has {0} bytes; one holds {1}': 'son relevé a {0} octets ; un relevé en contient {1}',
  Audit: 'Audit',
  Dispute: 'Litige',
  '{0}, claim {1}': '{0}, réclamation {1}',
  'This looks like a telephone number. Papers and shared records leave it out; the log contains it.':
    "Cela ressemble à un numéro de téléphone. Les papiers et les relevés partagés l'omettent ; le journal le contient.",
  tightening: 'serrage',
  continued: 'poursuite',
  'run-down': 'vissage',
  're-hit': 'resserrage',
  'check pull': 'traction de contrôle',
  loosening: 'desserrage',
  handling: 'manipulation',
  unsure: 'incertain',
  'too little torque to turn a plug': 'couple trop faible pour tourner une bougie',
  'it rose and fell like a knock': 'il est monté et retombé comme un choc',
  'no cylinder is due': "aucun cylindre n'est à faire",
  '{0}: the plug turned': '{0} : la bougie a tourné',
  'the first plug of this engine': 'la première bougie de ce moteur',
  'it went on from the stroke before': 'elle prolongeait la traction précédente',
  '{0}: it went on after stopping short': '{0} : elle a repris après un arrêt trop tôt',
  'it ended low': "elle s'est terminée trop bas",
  'a plug turned from loose and ended low: the next one':
    "une bougie libre a tourné et s'est arrêtée trop bas : la suivante",
  'it ended without a click': "elle s'est terminée sans déclic",
  'a low stroke while a question was open': "une traction faible pendant qu'une question était ouverte",
  'nothing followed: it stopped short': "rien n'a suivi : arrêtée trop tôt",
  '{0}: the same plug once more': '{0} : encore la même bougie',
  '{0}: a plug already tight was tried again': '{0} : on a repris une bougie déjà serrée',
  'sooner than anybody gets to another plug': "plus vite qu'on ne peut passer à une autre bougie",
  'every cylinder is done': 'tous les cylindres sont faits',
  '{0}: the plug did not turn': "{0} : la bougie n'a pas tourné",
  '{0}: a tight plug or one that still turned': '{0} : une bougie serrée ou une qui tournait encore',
  'the trial click, or the first plug': "le déclic d'essai, ou la première bougie",
  '{0}: the last plug turning, or a tight one again because one was left out':
    "{0} : la dernière bougie tournait, ou une bougie serrée a été reprise parce qu'une autre a été oubliée",
  '{0}: a plug turned, too soon after the last': '{0} : une bougie a tourné, trop tôt après la précédente',
  '{0}, and the stroke before need not have turned it':
    "{0}, et la traction précédente ne l'a pas forcément tournée",
  'it ended below what this plug had held': "elle s'est terminée sous ce que cette bougie avait tenu",
  'it took {0} ms to what this plug had held':
    'il a fallu {0} ms pour atteindre ce que cette bougie avait tenu',
  'it may have been a plug that was tight already': "c'était peut-être une bougie déjà serrée",
  'it turned from loose, which a plug that had held as much does not':
    "elle a tourné depuis l'état libre, ce que ne fait pas une bougie qui a déjà tenu autant",
  'the stroke before was on the next plug': 'la traction précédente était sur la bougie suivante',
  'the plug did not turn on': "la bougie n'a pas tourné davantage",
  'a knock, or a stroke that stopped short': 'un choc, ou une traction arrêtée trop tôt',
  'it reached the window without a click, and nothing followed':
    "elle a atteint la plage sans déclic, et rien n'a suivi",
  '{0}: it went on from the pull in question': '{0} : elle prolongeait la traction en question',
  'it came while a question was open': "elle est venue pendant qu'une question était ouverte",
  '{0}: a plug turned, though every cylinder is done':
    '{0} : une bougie a tourné, alors que tous les cylindres sont faits',
  'if the plug turned in pull {0}, this one was on another':
    'si la bougie a tourné à la traction {0}, celle-ci portait sur une autre',
  'a check pull went above the window': 'une traction de contrôle a dépassé la plage',
  'its end is missing': 'sa fin manque',
  'the readings stood at {0}, the end of the scale': "les mesures sont restées à {0}, la fin d'échelle",
  '{0}, the highest torque; this tool sends nothing else of a pull':
    "{0}, le couple le plus élevé ; cet outil n'envoie rien d'autre d'une traction",
  '{0}, the first pull since the cylinder that is due changed':
    '{0}, la première traction depuis que le cylindre à faire a changé',
  'two tools felt torque at the same time': 'deux outils ont senti un couple en même temps',
  'this plug was to be backed out': 'cette bougie devait être dévissée',
  'no plug was tight yet': "aucune bougie n'était encore serrée",
  'a plug was loosened after it had been proven': 'une bougie a été desserrée après avoir été prouvée',
  'it was loosened at once after it was tightened': 'elle a été desserrée aussitôt après le serrage',
  'answered by the technician': 'réponse du technicien',
  'given to this cylinder by the technician': 'attribuée à ce cylindre par le technicien',
  'with pull {0}': 'avec la traction {0}',
  'pull {0} went on from it': "la traction {0} l'a prolongée",
  'the plug of cylinder {0} was left out': 'la bougie du cylindre {0} a été oubliée',
  'rose in {0} ms': 'montée en {0} ms',
  'turn measured, {0}': 'rotation mesurée, {0}',
  '{0}, {1} s after the last': '{0}, {1} s après la précédente',
  '{0} in a straight line': '{0} en ligne droite',
  '{0}, usual {1} ms': '{0}, habituel {1} ms',
  'the pull went {0} beyond it': "la traction l'a dépassé de {0}",
  'trial click: the torque fell by {0}, {1}': "déclic d'essai : le couple est tombé de {0}, {1}",
  'trial click: weak, the torque fell by {0} only, {1}; falls like it count as clicks in this job':
    "déclic d'essai : faible, le couple n'est tombé que de {0}, {1} ; des chutes pareilles comptent comme déclics dans cet ordre",
  'trial click: readings come {0} ms apart, too far to show a click':
    "déclic d'essai : les mesures arrivent toutes les {0} ms, trop espacées pour montrer un déclic",
  'trial click: no fall was seen; after each pull you are asked whether it clicked':
    "déclic d'essai : aucune chute vue ; après chaque traction on demande s'il y a eu un déclic",
  'it was dropped': 'elle est tombée',
  'its tip is broken': 'sa pointe est cassée',
  'its insulator is cracked': 'son isolant est fissuré',
  'its gap cannot be set within the rules': 'son écartement ne peut pas être réglé selon les règles',
  'Usual for a new gasket': 'Usuel pour un joint neuf',
  'Usual for a used gasket': 'Usuel pour un joint usagé',
  'Usual for a conical seat': 'Usuel pour un siège conique',
  'No ramp or coin gauge: it levers on the tip and breaks a fine one.':
    'Pas de jauge en rampe ou en pièce : elle fait levier sur la pointe et casse une pointe fine.',
  'the thin wire passes, the thick one does not': 'le fil mince passe, le gros ne passe pas',
  'the thin wire does not pass': 'le fil mince ne passe pas',
  'the thick wire passes': 'le gros fil passe',
  '{0} went above the window. Back the plug out and look at its threads.':
    '{0} : au-dessus de la plage. Dévisser la bougie et examiner son filetage.',
  '{0} went too near the upper limit to be proven. Back the plug out and look at its threads.':
    '{0} : trop près de la limite supérieure pour être prouvé. Dévisser la bougie et examiner son filetage.',
  'A plug was loosened ({0}). Was it {1}?': 'Une bougie a été desserrée ({0}). Était-ce le {1} ?',
  'The readings broke off in the middle of a pull on {0}. The torque that it reached is unknown.':
    "Les mesures se sont interrompues au milieu d'une traction ({0}). Le couple atteint est inconnu.",
  'STOP: {0}: {1}. The plug may have had far more. Back it out and look at its threads.':
    'STOP : {0} : {1}. La bougie a pu recevoir bien plus. La dévisser et examiner son filetage.',
  'STOP: {0} is due, but this plug was tight already ({1}). Was it another one, or was a cylinder left out?':
    'STOP : le {0} est à faire, mais cette bougie était déjà serrée ({1}). Était-ce une autre, ou un cylindre a-t-il été oublié ?',
  'STOP: {0} had stopped short, but this looks like another plug ({1}). Was it {2}?':
    "STOP : le {0} s'était arrêté trop tôt, mais ceci ressemble à une autre bougie ({1}). Était-ce le {2} ?",
  'No click was seen on {0} ({1}). Did the wrench click?':
    'Aucun déclic vu : {0} ({1}). La clé a-t-elle déclenché ?',
  'STOP: a plug still turned, but every cylinder is done ({0}). Was it {1}?':
    'STOP : une bougie tournait encore, mais tous les cylindres sont faits ({0}). Était-ce le {1} ?',
  'Was that {0}? ({1}.)': 'Était-ce le {0} ? ({1}.)',
  'STOP: {0} was pulled too early: it proves nothing. Back the plug out. Before it goes in again, {1}.':
    'STOP : le {0} a été serré trop tôt : cela ne prouve rien. Dévisser la bougie. Avant de la remettre : {1}.',
  'What was this pull? ({0}.)': "Qu'était cette traction ? ({0}.)",
  'In a hot head the threads seize, and come out with the plug.':
    'Dans une culasse chaude, le filetage grippe et sort avec la bougie.',
  'NGK, installation advice': 'NGK, conseils de montage',
  'A coil that fires gives a shock that throws you.':
    'Une bobine sous tension envoie une décharge qui vous projette.',
  'Heat glues a boot to its plug. A straight pull tears the boot, or the wire in it.':
    'La chaleur colle le capuchon à la bougie. Tirer droit déchire le capuchon ou son fil.',
  'Grit in the well falls through the open hole onto the piston, and under the new seat.':
    'La saleté du puits tombe par le trou ouvert sur le piston, et sous le nouveau siège.',
  'A power tool cracks insulators and cuts across threads before you feel it.':
    "Un outil motorisé fend les isolants et fausse les filets avant qu'on le sente.",
  'Dirt takes up torque: the wrench clicks, and the plug is loose on its seat.':
    'La saleté absorbe du couple : la clé déclenche, et la bougie est lâche sur son siège.',
  'A crossed or dirty thread turns hard by hand. Chips must not fall in.':
    'Un filetage faussé ou sale tourne dur à la main. Aucun copeau ne doit tomber dedans.',
  'On greased threads the same torque pulls far harder, until the shell stretches.':
    "Sur un filetage graissé, le même couple tire bien plus fort, jusqu'à étirer le culot.",
  'NGK and Denso, installation advice': 'NGK et Denso, conseils de montage',
  'A hose slips when the thread is crossed; a wrench cuts on. Where a plug sits deep, use one.':
    'Un tuyau glisse si le filetage est faussé ; une clé continue à couper. À utiliser en puits profond.',
  'A thin film inside the boot keeps it from sticking. On threads or terminal it does harm.':
    "Un film mince dans le capuchon l'empêche de coller. Sur le filetage ou la borne, il nuit.",
  'A boot that does not seat lets the spark jump, and burns.':
    "Un capuchon mal enfoncé laisse sauter l'étincelle, et brûle.",
  'A misfire now is yours to find; next week it is a complaint.':
    "Un raté se trouve maintenant ; la semaine prochaine, c'est une réclamation.",
  'One plug that differs from the others tells more than its shade.':
    'Une bougie qui diffère des autres en dit plus que sa teinte.',
  'Why: {0}': 'Pourquoi : {0}',
  'Why: {0} ({1})': 'Pourquoi : {0} ({1})',
  'common practice, no source': 'pratique courante, sans source',
  'linked instrument': 'instrument, transmis',
  'typed by a person': 'saisi à la main',
  REPLAYED: 'REJOUÉ',
  SIMULATED: 'SIMULÉ',
  typed: 'saisi à la main',
  'SIMULATED: tools of this job were simulated. No vehicle was worked on, and it proves nothing about any engine.':
    "SIMULÉ : des outils de cet ordre étaient simulés. On n'a travaillé sur aucun véhicule, et cela ne prouve rien sur aucun moteur.",
  'REPLAYED: readings of this job came from a recording. It proves nothing about any engine.':
    "REJOUÉ : des mesures de cet ordre venaient d'un enregistrement. Cela ne prouve rien sur aucun moteur.",
  'SIMULATED: at least one job in this used simulated tools. Nobody worked on a vehicle in it, and it proves nothing about an engine.':
    "SIMULÉ : au moins un ordre ici a utilisé des outils simulés. Personne n'y a travaillé sur un véhicule, et il ne prouve rien sur un moteur.",
  'REPLAYED: at least one job in this used readings from a recording. They prove nothing about an engine.':
    "REJOUÉ : au moins un ordre ici a utilisé des mesures d'un enregistrement. Elles ne prouvent rien sur un moteur.",
  'SIMULATED: NO REAL TOOL MEASURED THIS. NOT A RECORD OF WORK ON A VEHICLE.':
    "SIMULÉ : AUCUN OUTIL RÉEL N'A MESURÉ CECI. CE N'EST PAS UN RELEVÉ DE TRAVAIL SUR UN VÉHICULE.",
  'REPLAYED: READ FROM A RECORDING. NOT A RECORD OF WORK ON A VEHICLE.':
    "REJOUÉ : LU DANS UN ENREGISTREMENT. CE N'EST PAS UN RELEVÉ DE TRAVAIL SUR UN VÉHICULE.",
  '{0}: FIGURES PROVE NOTHING. NOT A RECORD OF WORK ON A VEHICLE.':
    "{0} : LES VALEURS NE PROUVENT RIEN. CE N'EST PAS UN RELEVÉ DE TRAVAIL SUR UN VÉHICULE.",
  'values typed, not read from the instrument over a link: attested by a person':
    "valeurs saisies à la main, non transmises par l'instrument : attestées par une personne",
  'values REPLAYED from a recording, not read from the instrument: they prove nothing':
    "valeurs REJOUÉES d'un enregistrement, non lues de l'instrument : elles ne prouvent rien",
  'SIMULATED, there was no instrument: its values prove nothing':
    "SIMULÉ, il n'y avait pas d'instrument : ses valeurs ne prouvent rien",
  '# torque|# torques': { one: '# couple', other: '# couples' },
  '# gap|# gaps': { one: '# écartement', other: '# écartements' },
  '# turn|# turns': { one: '# angle de rotation', other: '# angles de rotation' },
  '# torque proven by a linked wrench|# torques proven by a linked wrench': {
    one: '# couple prouvé, transmis par la clé',
    other: '# couples prouvés, transmis par la clé',
  },
  '# gap proven by a linked gauge|# gaps proven by a linked gauge': {
    one: '# écartement prouvé, transmis par la jauge',
    other: '# écartements prouvés, transmis par la jauge',
  },
  '# turn proven by a linked wrench|# turns proven by a linked wrench': {
    one: '# angle de rotation prouvé, transmis par la clé',
    other: '# angles de rotation prouvés, transmis par la clé',
  },
  '# torque proven|# torques proven': { one: '# couple prouvé', other: '# couples prouvés' },
  '# gap proven|# gaps proven': { one: '# écartement prouvé', other: '# écartements prouvés' },
  '# turn proven|# turns proven': {
    one: '# angle de rotation prouvé',
    other: '# angles de rotation prouvés',
  },
  '# torque attested|# torques attested': { one: '# couple attesté', other: '# couples attestés' },
  '# gap attested|# gaps attested': { one: '# écartement attesté', other: '# écartements attestés' },
  '# turn attested|# turns attested': {
    one: '# angle de rotation attesté',
    other: '# angles de rotation attestés',
  },
  '{0} typed by {1}, attested, not proven by an instrument':
    '{0}, par saisie manuelle de {1} : attestation, sans preuve par un instrument',
  '{0} REPLAYED, no proof': '{0} : REJOUÉ, aucune preuve',
  '{0} SIMULATED, no proof': '{0} : SIMULÉ, aucune preuve',
  'a person': 'une personne',
  'the gaps were looked at, not measured': 'les écartements ont été regardés, non mesurés',
  'the gaps were not checked, as the specification says':
    "les écartements n'ont pas été contrôlés, comme le dit la spécification",
  '{0} typed: attested by a person, NOT proven by an instrument.':
    "{0}, par saisie manuelle : attestation d'une personne, PAS de preuve par un instrument.",
  '{0}: {1} of {2} jobs; these prove nothing about any engine.':
    '{0} : {1} ordres sur {2} ; ceux-ci ne prouvent rien sur aucun moteur.',
  'Figures of {0} of {1} jobs were typed: attested by a person, NOT proven by an instrument.':
    'Des valeurs de {0} ordres sur {1} ont été saisies à la main : attestées par une personne, NON prouvées par un instrument.',
  'the windows were confirmed': 'les plages ont été confirmées',
  '{0} was confirmed': '{0} a été confirmée',
  'old plug read, cylinder {0}': 'ancienne bougie examinée, cylindre {0}',
  'old plug read, cylinders {0}': 'ancienne bougie examinée, cylindres {0}',
  'gap of the old plug of cylinder {0}, {1}': "écartement de l'ancienne bougie du cylindre {0}, {1}",
  'new plug checked, cylinder {0}': 'bougie neuve contrôlée, cylindre {0}',
  'new plug checked, cylinders {0}': 'bougie neuve contrôlée, cylindres {0}',
  'gap of cylinder {0}, {1}': 'écartement du cylindre {0}, {1}',
  'gap of cylinder {0} looked at: good': 'écartement du cylindre {0} regardé : bon',
  'gap of cylinder {0} looked at: not good': 'écartement du cylindre {0} regardé : pas bon',
  'plug for cylinder {0} discarded: {1}': 'bougie du cylindre {0} rebutée : {1}',
  'pull {0}, cylinder {1}, answered: {2}': 'traction {0}, cylindre {1}, réponse : {2}',
  'cylinder {0} fitted by angle': "cylindre {0} monté à l'angle",
  'cylinder {0}, pull {1} left as it is': 'cylindre {0}, traction {1} laissée telle quelle',
  'the list before removal': 'la liste avant la dépose',
  'the list before fitting': 'la liste avant le montage',
  'the list for afterwards': 'la liste pour la fin',
  'confirm the windows': 'confirmer les plages',
  'confirm the list before removal': 'confirmer la liste avant la dépose',
  'read the old plug': "examiner l'ancienne bougie",
  'check the new plug': 'contrôler la bougie neuve',
  'measure the gap of the plug': "mesurer l'écartement de la bougie",
  'confirm the list before fitting': 'confirmer la liste avant le montage',
  'confirm the list for afterwards': 'confirmer la liste pour la fin',
  'before the windows were confirmed': 'avant que les plages soient confirmées',
  'before the list before removal was confirmed': 'avant que la liste avant la dépose soit confirmée',
  'before its old plug was read': 'avant que son ancienne bougie soit examinée',
  'before its new plug was checked': 'avant que sa bougie neuve soit contrôlée',
  'before the gap of its plug was proven': "avant que l'écartement de sa bougie soit prouvé",
  'before the list before fitting was confirmed': 'avant que la liste avant le montage soit confirmée',
  'after the list for afterwards was confirmed': 'après que la liste pour la fin a été confirmée',
  'the windows are not confirmed': 'les plages ne sont pas confirmées',
  'the list before removal is not confirmed': "la liste avant la dépose n'est pas confirmée",
  'the old plugs are not read': 'les anciennes bougies ne sont pas examinées',
  'the new plugs are not checked': 'les bougies neuves ne sont pas contrôlées',
  'the gap of this old plug was measured already': "l'écartement de cette ancienne bougie a déjà été mesuré",
  'the plug whose gap is open is in the engine':
    "la bougie dont l'écartement reste à mesurer est dans le moteur",
  'a plug was pulled before its gap was measured':
    'une bougie a été serrée avant que son écartement soit mesuré',
  'Back that plug out and press b. Then measure it.':
    'Dévisser cette bougie et appuyer sur b. Puis la mesurer.',
  'no gap is due': "aucun écartement n'est à mesurer",
  'no spark plug has such a gap': "aucune bougie n'a un tel écartement",
  'First confirm the windows.': "Confirmer d'abord les plages.",
  'First confirm the list before removal.': "Confirmer d'abord la liste avant la dépose.",
  'First read the old plugs.': "Examiner d'abord les anciennes bougies.",
  'First check the new plugs.': "Contrôler d'abord les bougies neuves.",
  'Confirm how this plug looks, then measure the next.':
    "Confirmer l'aspect de cette bougie, puis mesurer la suivante.",
  'Take the plug out and start it again.': 'Retirer la bougie et recommencer.',
  'Go on.': 'Continuer.',
  'Measure again, and check the unit.': "Mesurer à nouveau et vérifier l'unité.",
  '{0}; done again since': '{0} ; refait depuis',
  'pull {0} on cylinder {1} came {2}': 'la traction {0} sur le cylindre {1} est venue {2}',
  'an old plug was loosened (pull {0}) and came {1}':
    'une ancienne bougie a été desserrée (traction {0}) {1}',
  'the old plug of cylinder {0} came {1}': "l'ancienne bougie du cylindre {0} est venue {1}",
  'the plug of cylinder {0}, by angle, came {1}': "la bougie du cylindre {0}, à l'angle, est venue {1}",
  'the gap of cylinder {0} came {1}': "l'écartement du cylindre {0} est venu {1}",
  'OUT OF ORDER': 'HORS ORDRE',
  '{0}: {1}.': '{0} : {1}.',
  '{0}: {1}, and {2} more.': '{0} : {1}, et {2} de plus.',
  'the angle did not come with every reading': "l'angle n'est pas venu avec chaque mesure",
  'the angle jumped': "l'angle a sauté",
  'the angle stood still': "l'angle est resté immobile",
  'the angle ran against the pull': "l'angle allait contre la traction",
  'the angle ran by itself while the wrench was at rest': "l'angle bougeait seul, la clé étant au repos",
  'turn not measured: {0}': 'rotation non mesurée : {0}',
  'turned {0}': 'tournée de {0}',
  '{0}: {1} to the snug point, {2} from there': "{0} : {1} jusqu'à l'accostage, {2} à partir de là",
  '{0} to {1}': '{0} à {1}',
  'turn not proven': 'rotation non prouvée',
  'turn {0} ± {1}: {2}': 'rotation {0} ± {1} : {2}',
  torque: 'couple',
  length: 'longueur',
  angle: 'angle',
  energy: 'énergie',
  stiffness: 'raideur',
  'force or mass': 'force ou masse',
  'N·m, lbf·ft, lbf·in, kgf·m or kgf·cm': 'N·m, lbf·ft, lbf·in, kgf·m ou kgf·cm',
  '25-30 N·m or 18 N·m ±10 %': '25-30 N·m ou 18 N·m ±10 %',
  'mm, in or mil': 'mm, in ou mil',
  '0.7-0.8 mm or 1.0 +0/-0.1 mm': '0.7-0.8 mm ou 1.0 +0/-0.1 mm',
  '° or turn': '° ou tour',
  '1/2-2/3 turn or 90°': '1/2-2/3 tour ou 90°',
  '"{0}" is a single figure; a reading is compared with a range':
    '"{0}" est une valeur unique ; une mesure se compare à une plage',
  'Add the tolerance that the source allows, for example {0}.':
    'Ajouter la tolérance que la source autorise, par exemple {0}.',
  'expected one figure, not a range': 'une seule valeur est attendue, pas une plage',
  'Give one figure in {0}.': 'Donner une valeur en {0}.',
  'one deviation is in % and the other is not': "un écart est en %, l'autre non",
  'Give both in % or both in the unit.': "Donner les deux en % ou les deux dans l'unité.",
  'the range runs from {0} down to {1}': 'la plage descend de {0} à {1}',
  'Give the lower figure first.': "Donner d'abord la plus petite valeur.",
  'both limits are {0}; no reading can be proven':
    'les deux limites sont {0} ; aucune mesure ne peut être prouvée',
  'Give the tolerance that the source allows.': 'Donner la tolérance que la source autorise.',
  '{0} is not above zero': "{0} n'est pas supérieur à zéro",
  'Expected figures above zero, for example {0}.':
    'Des valeurs supérieures à zéro sont attendues, par exemple {0}.',
  '"{0}" is far too large for a spark plug': '"{0}" est bien trop grand pour une bougie',
  'Check the figure and its unit against the source.': 'Vérifier la valeur et son unité avec la source.',
  '"{0}" can be read as a fraction or as a range': '"{0}" peut se lire comme une fraction ou comme une plage',
  'Write a range with a dash, for example {0}.': 'Écrire une plage avec un tiret, par exemple {0}.',
  '"{0}" can be read as a thousand or as a decimal':
    '"{0}" peut se lire comme des milliers ou comme un décimal',
  'Write thousands without a separator and decimals without needless zeros.':
    'Écrire les milliers sans séparateur et les décimaux sans zéros inutiles.',
  'a figure has a minus sign': 'une valeur porte un signe moins',
  '"{0} {1}" can be one figure in groups of three or two figures':
    '"{0} {1}" peut être un nombre par groupes de trois ou deux nombres',
  'Write thousands without a separator and ranges with a dash.':
    'Écrire les milliers sans séparateur et les plages avec un tiret.',
  '"{0}" is not a unit in which this {1} is printed':
    '"{0}" n\'est pas une unité dans laquelle on imprime cette grandeur ({1})',
  'Expected {0}.': 'Attendu : {0}.',
  '"{0}" is a unit of {1}, not of {2}': '"{0}" est une unité pour {1}, non pour {2}',
  '"{0}" is the second unit in one range': '"{0}" est la seconde unité dans une plage',
  'Give the figures in one unit, the one that the source prints first.':
    'Donner les valeurs dans une seule unité, celle que la source imprime en premier.',
  'there is no unit': "l'unité manque",
  'expected one {0} in one unit and nothing else': "attendu : {0} dans une seule unité, et rien d'autre",
  'Write for example {0}.': 'Écrire par exemple {0}.',
  'character {0} of "{1}"': 'caractère {0} de "{1}"',
  'the text has {0} characters; a range has a few': 'le texte a {0} caractères ; une plage en a quelques-uns',
  'Give the range alone, for example 25-30 N·m.': 'Donner la plage seule, par exemple 25-30 N·m.',
  '"{0}" cannot be read here': '"{0}" ne peut pas être lu ici',
  'Give one range in one unit, for example 25-30 N·m.':
    'Donner une plage dans une seule unité, par exemple 25-30 N·m.',
  '"{0}" is not a known unit or word': '"{0}" n\'est ni une unité ni un mot connu',
  'Write for example N·m, lbf·ft, lbf·in, kgf·m, mm, in, mil, ° or turn.':
    'Écrire par exemple N·m, lbf·ft, lbf·in, kgf·m, mm, in, mil, ° ou tour.',
  '"{0}" has {1} digits; no publisher prints more than {2}':
    '"{0}" a {1} chiffres ; aucun éditeur n\'en imprime plus de {2}',
  'Give the figure as printed in the source.': "Donner la valeur telle qu'imprimée dans la source.",
  'Write thousands without a separator and decimals with a point.':
    'Écrire les milliers sans séparateur et les décimaux avec un point.',
  '{0} cannot be for {1}: {2}': '{0} est impossible pour {1} : {2}',
  'Check figure and unit against the source.': 'Vérifier valeur et unité avec la source.',
  '{0} on {1} is not usual: {2}': "{0} sur {1} n'est pas usuel : {2}",
  'Check figure and unit. If the source gives it, name who checked it in specification.checkedBy.':
    "Vérifier valeur et unité. Si la source la donne, indiquer dans specification.checkedBy qui l'a vérifiée.",
  'a solid thread of mild steel yields at {0} {1}': 'un filetage plein en acier doux cède à {0} {1}',
  'no general table has a figure for this thread and seat, and {0}':
    "aucun tableau général n'a de valeur pour ce filetage et ce siège, et {0}",
  'general tables say {0} to {1} {2} ({3}, {4}), and {5}':
    'les tableaux généraux indiquent {0} à {1} {2} ({3}, {4}), et {5}',
  'plug makers advise 1/16 of a turn on a conical seat and up to 2/3 on a new gasket':
    "les fabricants de bougies conseillent 1/16 de tour sur siège conique et jusqu'à 2/3 avec un joint neuf",
  'gaps of spark plugs lie between 0.4 and 1.6 mm (0.016 and 0.063 in)':
    'les écartements de bougies vont de 0.4 à 1.6 mm (0.016 à 0.063 in)',
  'plug makers let a ground electrode be bent by about {0} {1} in all':
    "les fabricants de bougies permettent de plier une électrode de masse d'environ {0} {1} au total",
  'wires are made to a few thousandths of a millimetre':
    'les fils calibrés sont faits à quelques millièmes de millimètre',
  'shops reduce by 10 to 40 % for lubricated threads':
    'les ateliers réduisent de 10 à 40 % pour un filetage lubrifié',
  'where makers print a tolerance on the torque of a plug it is 5 to 15 %':
    "quand les constructeurs impriment une tolérance sur le couple d'une bougie, elle est de 5 à 15 %",
  'threads of spark plugs are 9 to 29 mm long': 'les filetages de bougies ont 9 à 29 mm de long',
  'the hexagon of a plug with this thread is between {0} and {1} mm wide':
    "l'hexagone d'une bougie à ce filetage fait entre {0} et {1} mm",
  'the specification has no gap': "la spécification n'a pas d'écartement",
  'Give the gap as printed, for example 0.7-0.8 mm, or set gapRules.check so that it is not measured.':
    "Donner l'écartement tel qu'imprimé, par exemple 0.7-0.8 mm, ou régler gapRules.check pour qu'il ne soit pas mesuré.",
  'the service limit of {0} {1} lies below the gap of a new plug':
    "la limite d'usure de {0} {1} est inférieure à l'écartement d'une bougie neuve",
  'Give the widest gap at which a used plug may go on.':
    'Donner le plus grand écartement auquel une bougie usagée peut continuer.',
  'the gap is checked by wire, but no wires are given':
    "l'écartement se contrôle au fil, mais aucun fil n'est indiqué",
  'Give the wires, for example {"go": "0.72 mm", "noGo": "0.78 mm", "within": "0.003 mm"}.':
    'Indiquer les fils, par exemple {"go": "0.72 mm", "noGo": "0.78 mm", "within": "0.003 mm"}.',
  'the go wire is not thinner than the no-go wire':
    "le fil qui doit passer n'est pas plus mince que celui qui ne doit pas passer",
  'Give the thinner wire as go.': 'Indiquer le fil le plus mince comme go.',
  'expected an adapter that leaves a lever between hand and plug':
    'un adaptateur laissant un bras de levier entre la main et la bougie est attendu',
  'Use a straight extension, or state how far the torque may be off by it, and who measured that.':
    "Utiliser une rallonge droite, ou indiquer de combien le couple peut s'en écarter et qui l'a mesuré.",
  'nobody can compute what torque a wobble extension passes on when it is bent':
    'nul ne peut calculer quel couple transmet une rallonge inclinable quand elle est inclinée',
  'a universal joint bent by {0}° passes torque on too unevenly; {1}° is the most':
    'un cardan incliné de {0}° transmet le couple trop irrégulièrement ; {1}° au plus',
  'not every cylinder has exactly one part; named are {0}':
    "chaque cylindre n'a pas exactement une pièce ; sont nommés {0}",
  '{0} is neither the part of the order nor one of the others':
    "{0} n'est ni la pièce de l'ordre ni l'une des autres",
  'Name every cylinder once, with "part" or one of "alsoParts".':
    'Nommer chaque cylindre une fois, avec "part" ou l\'un de "alsoParts".',
  'there is no torque. Give it as printed; where the source prints an angle alone, give that angle in its place':
    "le couple manque. Le donner tel qu'imprimé ; si la source n'imprime qu'un angle, donner cet angle à sa place",
  'expected km or months': 'km ou mois attendus',
  'the figure is already for {0}; a reduction for {1} would count twice':
    'la valeur est déjà pour {0} ; une réduction pour {1} compterait deux fois',
  'Remove the reduction, or give the figure for dry threads.':
    'Supprimer la réduction, ou donner la valeur pour filetage sec.',
  'a turn without a tolerance cannot be judged': 'une rotation sans tolérance ne peut pas être jugée',
  'Give two limits, such as 180-240°.': 'Donner deux limites, comme 180-240°.',
  'the order names an angle in place of a torque, and this belongs to a torque':
    "l'ordre indique un angle au lieu d'un couple, et ceci va avec un couple",
  'Remove it, or give the torque of the source in specification.torque.':
    'Le supprimer, ou donner le couple de la source dans specification.torque.',
  "{0} Or give the shop's own rule for single figures: singleFigure.":
    "{0} Ou donner la règle propre à l'atelier pour les valeurs uniques : singleFigure.",
  'Compare it with the certificate.': 'Comparer avec le certificat.',
  'Ask the laboratory about this certificate.': 'Interroger le laboratoire sur ce certificat.',
  'certificate {0}: {1}': 'certificat {0} : {1}',
  'tool {0}: permissibleDeviation': 'outil {0} : permissibleDeviation',
  'the permissible deviation is missing': "l'écart admissible manque",
  'Give its certificate, or the limits of its class or data sheet.':
    'Donner son certificat, ou les limites de sa classe ou de sa fiche technique.',
  'tool {0}: serial': 'outil {0} : serial',
  'certificate {0} is for serial number {1}; this tool has none':
    "le certificat {0} est pour le numéro de série {1} ; cet outil n'en a pas",
  'Give the serial number on the tool.': "Donner le numéro de série figurant sur l'outil.",
  'it is for serial number {0}, but tool {1} is {2}':
    "il est pour le numéro de série {0}, mais l'outil {1} a {2}",
  'Use the certificate of this tool.': 'Utiliser le certificat de cet outil.',
  'it is dated {0}, after the day of the job, {1}': "il est daté du {0}, après le jour de l'ordre, {1}",
  'Check the date of the certificate and the clock of this computer.':
    "Vérifier la date du certificat et l'horloge de cet ordinateur.",
  'it is due on {0}, before its own date, {1}': 'il échoit le {0}, avant sa propre date, {1}',
  'Give the last day on which the certificate holds.': 'Donner le dernier jour de validité du certificat.',
  'its points are in {0}; tool {1} measures in {2}': "ses points sont en {0} ; l'outil {1} mesure en {2}",
  'it was out of tolerance on {0} ({1}): {2} and cannot be used':
    'il était hors tolérance le {0} ({1}) : {2} et ne peut pas être utilisé',
  'Have it adjusted and calibrated, and give the certificate of that day or later.':
    "Le faire ajuster et étalonner, et donner le certificat de ce jour ou d'après.",
  'its calibration expired on {0}': 'son étalonnage a expiré le {0}',
  'Have it calibrated.': 'Le faire étalonner.',
  'it has done {0} cycles since its calibration; {1} are allowed':
    'il a fait {0} cycles depuis son étalonnage ; {1} sont autorisés',
  'it may be used {0}; this job asks for {1}': 'utilisable {0} ; cet ordre demande {1}',
  'Use one of another size.': "En utiliser un d'une autre taille.",
  'it is calibrated {0}; this job asks for {1}': 'étalonné {0} ; cet ordre demande {1}',
  'Use one that is calibrated there, or have more points calibrated.':
    "En utiliser un étalonné dans cette plage, ou faire étalonner d'autres points.",
  'off by {0}{1} {2} at {3} {4}': 'écart de {0}{1} {2} à {3} {4}',
  'from {0} to {1} {2}': 'de {0} à {1} {2}',
  '{0} to {1} {2}': '{0} à {1} {2}',
  'Look at the screen and choose again.': "Regarder l'écran et choisir à nouveau.",
  'expected for example "in-line 4", "V8", "flat 6", or the banks, "1 3 5 7 / 2 4 6 8"':
    'attendu par exemple "en ligne 4", "V8", "à plat 6", ou les rangées, "1 3 5 7 / 2 4 6 8"',
  'expected {0} to {1} cylinders': 'de {0} à {1} cylindres attendus',
  '"{0}" is no cylinder number': '"{0}" n\'est pas un numéro de cylindre',
  'expected cylinder numbers, such as 1 3 4 2': 'numéros de cylindre attendus, comme 1 3 4 2',
  'expected a name, without spaces at its ends': 'un nom sans espaces à ses extrémités est attendu',
  'the source is dated {0}, after the day of the job, {1}':
    "la source est datée du {0}, après le jour de l'ordre, {1}",
  'Check the date of the source and the clock of this computer.':
    "Vérifier la date de la source et l'horloge de cet ordinateur.",
  'tool {0}': 'outil {0}',
  'tool {0}, first step': 'outil {0}, première passe',
  'a plug that fits these wires lies between {0} and {1} {2}, which is not within {3} less the guard band':
    "une bougie qui convient à ces fils se situe entre {0} et {1} {2}, ce qui n'est pas dans {3} moins la bande de garde",
  'Take wires between {0} and {1} {2}.': 'Prendre des fils entre {0} et {1} {2}.',
  'tool {0}: {1}': 'outil {0} : {1}',
  'the station has no torque wrench': "le poste n'a pas de clé dynamométrique",
  'the station has no gap gauge': "le poste n'a pas de jauge d'écartement",
  'Add a tool with "quantity": "{0}" to the station file.':
    'Ajouter au fichier du poste un outil avec "quantity": "{0}".',
  'expected 1 to 40 letters, digits, dots, hyphens or underscores, the first a letter or digit':
    "attendu : 1 à 40 lettres, chiffres, points, traits d'union ou soulignés, une lettre ou un chiffre d'abord",
  'the job does not start with its opening': "l'ordre ne commence pas par son ouverture",
  'these rules know no {0}': 'ces règles ne connaissent pas {0}',
  'it could not have been opened so': "il n'aurait pas pu être ouvert ainsi",
  'its windows are not what the order and the instruments give':
    "ses plages ne sont pas celles que donnent l'ordre et les instruments",
  '{0}, but the readings give nothing here': '{0}, mais les mesures ne donnent rien ici',
  '{0} is not what the readings give': "{0} n'est pas ce que donnent les mesures",
  '{0} is missing here': '{0} manque ici',
  'the readings in {0} do not follow the last ones': 'les mesures dans {0} ne suivent pas les dernières',
  'the source in {0} does not fit the kind of its link':
    'la provenance dans {0} ne va pas avec le type de sa liaison',
  '{0} cannot have come from a tool': "{0} ne peut pas être venu d'un outil",
  '{0} would have been refused here': '{0} aurait été refusé ici',
  '{0} is not what the job writes here': "{0} n'est pas ce que l'ordre écrit ici",
  'the close of the job does not follow from its events':
    "la clôture de l'ordre ne découle pas de ses événements",
  'event {0}': 'événement {0}',
  'Do not rely on this record; keep it and ask the station for its log.':
    'Ne pas se fier à ce relevé ; le garder et demander son journal au poste.',
  'The job is closed.': "L'ordre est clos.",
  'This engine has no cylinder {0}.': "Ce moteur n'a pas de cylindre {0}.",
  'A pull is under way.': 'Une traction est en cours.',
  '{0} is at work already.': '{0} travaille déjà.',
  '{0} works on this job already.': '{0} travaille déjà sur cet ordre.',
  'A pull is under way. It belongs to the cylinder that was due.':
    'Une traction est en cours. Elle revient au cylindre qui était à faire.',
  'There is no pull {0}.': "Il n'y a pas de traction {0}.",
  'This job does not check the gap by eye.': "Cet ordre ne contrôle pas l'écartement à l'œil.",
  'This job does not check the gap by wire.': "Cet ordre ne contrôle pas l'écartement au fil.",
  'Answer the open question first.': "Répondre d'abord à la question ouverte.",
  'The windows are already confirmed.': 'Les plages sont déjà confirmées.',
  'No trial click is due.': "Aucun déclic d'essai n'est à faire.",
  'This job does not record old plugs.': 'Cet ordre ne relève pas les anciennes bougies.',
  'Too early. First {0}.': "Trop tôt. D'abord {0}.",
  'read the old plugs': 'examiner les anciennes bougies',
  'check the new plugs': 'contrôler les bougies neuves',
  'measure the gaps': 'mesurer les écartements',
  'Cylinder {0} is proven by its turn.': 'Le cylindre {0} est prouvé par sa rotation.',
  'Cylinder {0} is proven by torque.': 'Le cylindre {0} est prouvé par le couple.',
  'The plug of cylinder {0} is in the engine. Take it out and start it again.':
    'La bougie du cylindre {0} est dans le moteur. La retirer et recommencer.',
  'No gap that came too early can be kept now.':
    'Aucun écartement venu trop tôt ne peut être gardé maintenant.',
  'The gap for cylinder {0} is done already.': "L'écartement du cylindre {0} est déjà fait.",
  'No question about a pull over the window, or too early, is open for pull {0}.':
    "Aucune question de traction au-dessus de la plage, ou trop tôt, n'est ouverte pour la traction {0}.",
  'This plug was taken out since. It can no longer be left as it was.':
    'Cette bougie a été retirée depuis. Elle ne peut plus être laissée telle quelle.',
  'The gap of this plug is not proven. Take the plug out and measure it.':
    "L'écartement de cette bougie n'est pas prouvé. Retirer la bougie et le mesurer.",
  'This torque is not OK. Take the plug out and do it again.':
    "Ce couple n'est pas OK. Retirer la bougie et recommencer.",
  'Only the final torque can be left as it is.': 'Seul le couple final peut être laissé tel quel.',
  'This job has no such list.': "Cet ordre n'a pas de telle liste.",
  'This list comes last. First tighten every plug.':
    "Cette liste vient en dernier. Serrer d'abord toutes les bougies.",
  'Answer this item too: "{0}".': 'Répondre aussi à ce point : "{0}".',
  '"{0}" is not on this list.': '"{0}" n\'est pas sur cette liste.',
  'The answers to "{0}" are: {1}.': 'Les réponses à "{0}" sont : {1}.',
  'Give the reason why this is not done: "{0}".':
    'Donner la raison pour laquelle ceci n\'est pas fait : "{0}".',
  'An item is answered twice.': 'Un point a deux réponses.',
  'This job does not check new plugs.': 'Cet ordre ne contrôle pas les bougies neuves.',
  ' or ': ' ou ',
  'Cylinder {0} takes {1}, not {2}: this engine has two different plugs.':
    'Le cylindre {0} prend {1}, pas {2} : ce moteur a deux bougies différentes.',
  'The specification allows {0} in this engine, not {1}.':
    'La spécification autorise {0} dans ce moteur, pas {1}.',
  '{0} declared this job void already.': '{0} a déjà déclaré cet ordre annulé.',
  'No question is open about pull {0}.': "Aucune question n'est ouverte sur la traction {0}.",
  '"{0}" does not answer this question.': '"{0}" ne répond pas à cette question.',
  'No pull of cylinder {0} can belong to the next plug.':
    'Aucune traction du cylindre {0} ne peut revenir à la bougie suivante.',
  'the job was opened under {0}; this program works under {1}':
    "l'ordre a été ouvert sous {0} ; ce programme travaille sous {1}",
  'Finish it with the version of the program that opened it, or declare it void and open it anew.':
    "Le terminer avec la version du programme qui l'a ouvert, ou le déclarer annulé et l'ouvrir à nouveau.",
  'The engine is cold, or has cooled as long as its maker asks':
    'Le moteur est froid, ou a refroidi aussi longtemps que le demande son constructeur',
  'Ignition off, key away': 'Contact coupé, clé de contact retirée',
  'Boots or coils twisted loose by half a turn, pulled at the boot, never by the wire, and marked':
    "Capuchons ou bobines décollés d'un demi-tour, tirés par le capuchon, jamais par le fil, et repérés",
  'Plug wells blown clean with dry air, goggles on, before turning the first plug':
    "Puits de bougie soufflés à l'air sec, lunettes de protection portées, avant de tourner la première bougie",
  'Hand tools only; no power tool touches a plug':
    'Outils à main seulement ; aucun outil motorisé ne touche une bougie',
  'Threads and seats clean, in the head and on the plugs':
    'Filetages et sièges propres, dans la culasse et sur les bougies',
  'Threads in the head chased': 'Filetages de la culasse repris au taraud',
  'not needed': 'pas nécessaire',
  'with grease on the tap, piston and valves clear':
    'avec de la graisse sur le taraud, piston et soupapes dégagés',
  'Nothing on the threads but what the specification says':
    'Rien sur le filetage que ce que dit la spécification',
  'Each plug started by hand, deep ones with a piece of hose, and turned in to its seat by hand':
    "Chaque bougie engagée à la main, les profondes avec un bout de tuyau, et vissée à la main jusqu'à son siège",
  'Compound in the boots: thin, inside only, none on threads or terminals':
    "Pâte dans les capuchons : mince, à l'intérieur seulement, rien sur le filetage ni la borne",
  none: 'néant',
  'as the maker allows': "comme le constructeur l'autorise",
  'Boots or coils pushed on until they seat, each on its own cylinder, wires in their places':
    'Capuchons ou bobines enfoncés à fond, chacun sur son cylindre, fils à leur place',
  'Engine run': 'Essai du moteur',
  'runs without misfire': 'tourne sans raté',
  misfires: 'a des ratés',
  'not run': 'pas tourné',
  'Old plugs': 'Anciennes bougies',
  'kept in cylinder order': "gardées dans l'ordre des cylindres",
  'given to the customer': 'remises au client',
  scrapped: 'mises au rebut',
  'There is nothing of that number to take back.': "Il n'y a rien à reprendre sous ce numéro.",
  'That was taken back already.': 'Cela a déjà été repris.',
  'Give the reason why it is taken back.': 'Donner la raison de cette reprise.',
  'Work went on since. Correct pull {0} with c: it was on another cylinder, or its plug starts again.':
    'Le travail a continué depuis. Corriger la traction {0} avec c : elle était sur un autre cylindre, ou sa bougie recommence.',
  'The new plug for cylinder {0} was checked, measured or pulled since. Take that back first; after a pull it stays.':
    "La bougie neuve du cylindre {0} a été contrôlée, mesurée ou serrée depuis. Reprendre cela d'abord ; après une traction, cela reste.",
  'the VIN has {0} characters; expected {1}': 'le VIN a {0} caractères ; {1} attendus',
  'the check digit of the VIN is {0}; expected {1}': 'le chiffre de contrôle du VIN est {0} ; attendu {1}',
  'the check digit of the VIN is {0}; expected {1}, though not every market uses it':
    "le chiffre de contrôle du VIN est {0} ; attendu {1}, mais tous les marchés ne l'utilisent pas",
  '0 or 9': '0 ou 9',
  'the VIN holds a character that is neither a letter A to Z nor a digit':
    "le VIN contient un caractère qui n'est ni une lettre A à Z ni un chiffre",
  'the VIN holds the letter {0}, which none has; it may be {1}':
    "le VIN contient la lettre {0}, qu'aucun n'a ; c'est peut-être {1}",
  'Compare it with the vehicle, character by character.':
    'Le comparer avec le véhicule, caractère par caractère.',
  specification: 'spécification',
  '{0} on {1}; {2}: {3}': '{0} pour {1} ; {2} : {3}',
  'plug and head': 'bougie, culasse',
  'shop rule': 'règle atelier',
  "single figure, plus/minus {0} %: the shop's own, not the maker's; set by {1}, basis: {2}":
    "valeur unique, plus/moins {0} % : propre à l'atelier, non au constructeur ; fixé par {1}, base : {2}",
  reduced: 'réduit',
  'by {0} % for {1}, set by {2}': 'de {0} % pour {1}, fixé par {2}',
  turn: 'rotation',
  'advised turn': 'rotation conseillée',
  wrench: 'clé',
  geometry: 'géométrie',
  'straight on the plug': 'droit sur la bougie',
  joint: 'articulation',
  '{0} from contact ({1}); judged': '{0} à partir du contact ({1}) ; jugé',
  '{0} from contact ({1}); not judged': '{0} à partir du contact ({1}) ; non jugé',
  '{0}, serial {1}': '{0}, n° de série {1}',
  'adapter of {0} at {1} on a wrench of {2}': 'adaptateur de {0} à {1} sur une clé de {2}',
  'universal joint': 'cardan',
  'wobble extension': 'rallonge inclinable',
  '{0}, bent by up to {1}': "{0}, inclinaison jusqu'à {1}",
  '{0}; within {1} % by {2}': '{0} ; à {1} % près selon {2}',
  'certificate {0}, {1}, {2}': 'certificat {0}, {1}, {2}',
  'this tool cannot prove any reading between {0} and {1}: its uncertainty (U = {2}) leaves no room in the window':
    'cet outil ne peut prouver aucune mesure entre {0} et {1} : son incertitude (U = {2}) ne laisse pas de place dans la plage',
  'Use an instrument with an expanded uncertainty below {0}.':
    "Utiliser un instrument d'incertitude élargie inférieure à {0}.",
  'threads dry': 'filetage sec',
  'threads lightly oiled': 'filetage peu huilé',
  'threads not stated': 'filetage non précisé',
  '1/16 turn': '1/16 tour',
  '1/12 turn': '1/12 tour',
  '1/2 turn': '1/2 tour',
  '1/2-2/3 turn': '1/2-2/3 tour',
  'expected an expanded uncertainty': 'une incertitude élargie est attendue',
  'expected an uncertainty above zero': 'une incertitude supérieure à zéro est attendue',
  'expected a coverage factor of 1 or more': "un facteur d'élargissement d'au moins 1 est attendu",
  'expected "N.m" or "mm"; convert other figures first, 1 lbf·ft = 1.355818 N·m':
    '"N.m" ou "mm" attendu ; convertir d\'abord les autres valeurs, 1 lbf·ft = 1.355818 N·m',
  'expected at least two points': 'au moins deux points sont attendus',
  'the reading {0} appears twice': 'la mesure {0} figure deux fois',
  'expected one of {0}': "attendu : l'un de {0}",
  'it is nested too deeply': 'il est imbriqué trop profondément',
  'not a calibration certificate that can be read: {0}':
    "ce n'est pas un certificat d'étalonnage lisible : {0}",
  'Ask the laboratory for a DCC with such points, or type the points into the JSON form.':
    'Demander au laboratoire un DCC avec de tels points, ou saisir les points dans la forme JSON.',
  'it is far too large': 'il est bien trop grand',
  'it declares a document type, which no DCC does':
    'il déclare un type de document, ce que ne fait aucun DCC',
  'its root is not digitalCalibrationCertificate': "sa racine n'est pas digitalCalibrationCertificate",
  'name of the laboratory': 'nom du laboratoire',
  'serial number of the item': "numéro de série de l'objet",
  'it is for 0 items; expected one instrument': 'il est pour 0 objet ; un instrument est attendu',
  'it is for {0} instruments, with the serial numbers {1}; give the tool that it is for one of them':
    "il est pour {0} instruments, de numéros de série {1} ; donner l'un d'eux à l'outil concerné",
  'its points are for turning counter-clockwise; a spark plug is tightened clockwise':
    'ses points sont pour le sens antihoraire ; une bougie se serre dans le sens horaire',
  'its points are {0}, not newton metres or millimetres':
    'ses points sont : {0}, et non newtons-mètres ou millimètres',
  'no result holds readings (basic_measuredValue) with errors or reference values':
    'aucun résultat ne contient de mesures (basic_measuredValue) avec erreurs ou valeurs de référence',
  'its points carry no expanded uncertainty': "ses points ne portent pas d'incertitude élargie",
  'its lists differ in length': "ses listes n'ont pas la même longueur",
  'readings and reference values do not go together': 'mesures et valeurs de référence ne vont pas ensemble',
  '{0} is missing': 'il manque : {0}',
  'one list holds several units': 'une liste contient plusieurs unités',
  'a list of "{0}" holds something that is no number':
    'une liste de "{0}" contient quelque chose qui n\'est pas un nombre',
  kelvins: 'kelvins',
  'degrees Celsius': 'degrés Celsius',
  ohms: 'ohms',
  volts: 'volts',
  'newtons, a force': 'newtons, une force',
  pascals: 'pascals',
  hectopascals: 'hectopascals',
  kilograms: 'kilogrammes',
  grams: 'grammes',
  'cubic centimetres': 'centimètres cubes',
  joules: 'joules',
  'figures without a unit': 'nombres sans unité',
  'per cent': 'pour cent',
  'in the unit {0}': "dans l'unité {0}",
  'expected the number of an impact assessment, like IA-1':
    "le numéro d'une évaluation d'impact est attendu, comme IA-1",
  'expected a short name in small letters, digits and hyphens':
    "un nom court en minuscules, chiffres et traits d'union est attendu",
  'expected the lower end first': 'la borne inférieure est attendue en premier',
  'all readings are the same: a spread of zero is the step of the display, not the repeatability':
    "toutes les mesures sont égales : une dispersion nulle est le pas de l'affichage, non la répétabilité",
  'expected small letters, digits and hyphens, at most 40, a letter first':
    "attendu : minuscules, chiffres et traits d'union, 40 au plus, une lettre d'abord",
  '"{0}" is an answer to every item; expected another name':
    '"{0}" est une réponse à tout point ; un autre nom est attendu',
  '"{0}" is there twice': '"{0}" figure deux fois',
  '"{0}" is not one of the choices': '"{0}" n\'est pas l\'un des choix',
  'it sends bytes that its profile does not describe': 'il envoie des octets que son profil ne décrit pas',
  'by its profile it reads figures that no tool can have':
    "selon son profil il lit des valeurs qu'aucun outil ne peut donner",
};
