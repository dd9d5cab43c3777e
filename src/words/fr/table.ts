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
  hexagon: 'hexagone',
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
  'old plug not read': 'vieille bougie non examinée',
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
  'A plug was loosened ({0}). Was it {1}?': 'Une bougie a été desserrée ({0}). Était-ce {1} ?',
  'The readings broke off in the middle of a pull on {0}. The torque that it reached is unknown.':
    "Les mesures se sont interrompues au milieu d'une traction ({0}). Le couple atteint est inconnu.",
  'STOP: {0}: {1}. The plug may have had far more. Back it out and look at its threads.':
    'STOP : {0} : {1}. La bougie a pu recevoir bien plus. La dévisser et examiner son filetage.',
  'STOP: {0} is due, but this plug was tight already ({1}). Was it another one, or was a cylinder left out?':
    'STOP : {0} est à faire, mais cette bougie était déjà serrée ({1}). Était-ce une autre, ou un cylindre a-t-il été oublié ?',
  'STOP: {0} had stopped short, but this looks like another plug ({1}). Was it {2}?':
    "STOP : {0} s'était arrêté trop tôt, mais ceci ressemble à une autre bougie ({1}). Était-ce {2} ?",
  'No click was seen on {0} ({1}). Did the wrench click?':
    'Aucun déclic vu : {0} ({1}). La clé a-t-elle déclenché ?',
  'STOP: a plug still turned, but every cylinder is done ({0}). Was it {1}?':
    'STOP : une bougie tournait encore, mais tous les cylindres sont faits ({0}). Était-ce {1} ?',
  'Was that {0}? ({1}.)': 'Était-ce {0} ? ({1}.)',
  'STOP: {0} was pulled too early: it proves nothing. First {1}. Back the plug out and do it again.':
    "STOP : {0} a été serré trop tôt : cela ne prouve rien. D'abord {1}. Dévisser la bougie et recommencer.",
  'What was this pull? ({0}.)': "Qu'était cette traction ? ({0}.)",
  'In a hot head the threads seize, and come out with the plug.':
    'Dans une culasse chaude, le filetage grippe et sort avec la bougie.',
  'NGK, installation advice': 'NGK, conseils de montage',
  'A coil that fires gives a shock that throws you.':
    'Une bobine qui donne envoie une décharge qui vous projette.',
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
    '{0}, saisie à la main : {1}, attestation, sans preuve par un instrument',
  '{0} REPLAYED, no proof': '{0} REJOUÉ, aucune preuve',
  '{0} SIMULATED, no proof': '{0} SIMULÉ, aucune preuve',
  'a person': 'une personne',
  'the gaps were looked at, not measured': 'les écartements ont été regardés, non mesurés',
  'the gaps were not checked, as the specification says':
    "les écartements n'ont pas été contrôlés, comme le dit la spécification",
  '{0} typed: attested by a person, NOT proven by an instrument.':
    "{0}, saisie à la main : attestation d'une personne, PAS de preuve par un instrument.",
  '{0}: {1} of {2} jobs; these prove nothing about any engine.':
    '{0} : {1} ordres sur {2} ; ceux-ci ne prouvent rien sur aucun moteur.',
  'Figures of {0} of {1} jobs were typed: attested by a person, NOT proven by an instrument.':
    'Des valeurs de {0} ordres sur {1} ont été saisies à la main : attestées par une personne, NON prouvées par un instrument.',
  'the windows were confirmed': 'les plages ont été confirmées',
  '{0} was confirmed': '{0} a été confirmée',
  'old plug read, cylinder {0}': 'vieille bougie examinée, cylindre {0}',
  'old plug read, cylinders {0}': 'vieille bougie examinée, cylindres {0}',
  'gap of the old plug of cylinder {0}, {1}': 'écartement de la vieille bougie du cylindre {0}, {1}',
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
  'read the old plug': 'examiner la vieille bougie',
  'check the new plug': 'contrôler la bougie neuve',
  'measure the gap of the plug': "mesurer l'écartement de la bougie",
  'confirm the list before fitting': 'confirmer la liste avant le montage',
  'confirm the list for afterwards': 'confirmer la liste pour la fin',
  'before the windows were confirmed': 'avant que les plages soient confirmées',
  'before the list before removal was confirmed': 'avant que la liste avant la dépose soit confirmée',
  'before its old plug was read': 'avant que sa vieille bougie soit examinée',
  'before its new plug was checked': 'avant que sa bougie neuve soit contrôlée',
  'before the gap of its plug was proven': "avant que l'écartement de sa bougie soit prouvé",
  'before the list before fitting was confirmed': 'avant que la liste avant le montage soit confirmée',
  'after the list for afterwards was confirmed': 'après que la liste pour la fin a été confirmée',
  'the windows are not confirmed': 'les plages ne sont pas confirmées',
  'the list before removal is not confirmed': "la liste avant la dépose n'est pas confirmée",
  'the old plugs are not read': 'les vieilles bougies ne sont pas examinées',
  'the new plugs are not checked': 'les bougies neuves ne sont pas contrôlées',
  'the gap of this old plug was measured already': "l'écartement de cette vieille bougie a déjà été mesuré",
  'the plug whose gap is open is in the engine':
    "la bougie dont l'écartement reste à mesurer est dans le moteur",
  'no gap is due': "aucun écartement n'est à mesurer",
  'no spark plug has such a gap': "aucune bougie n'a un tel écartement",
  'First confirm the windows.': "Confirmer d'abord les plages.",
  'First confirm the list before removal.': "Confirmer d'abord la liste avant la dépose.",
  'First read the old plugs.': "Examiner d'abord les vieilles bougies.",
  'First check the new plugs.': "Contrôler d'abord les bougies neuves.",
  'Confirm how this plug looks, then measure the next.':
    "Confirmer l'aspect de cette bougie, puis mesurer la suivante.",
  'Take the plug out and start it again.': 'Retirer la bougie et recommencer.',
  'Go on.': 'Continuer.',
  'Measure again, and check the unit.': "Mesurer à nouveau et vérifier l'unité.",
  '{0}; done again since': '{0} ; refait depuis',
  'pull {0} on cylinder {1} came {2}': 'la traction {0} sur le cylindre {1} est venue {2}',
  'an old plug was loosened (pull {0}) and came {1}': 'une vieille bougie a été desserrée (traction {0}) {1}',
  'the old plug of cylinder {0} came {1}': 'la vieille bougie du cylindre {0} est venue {1}',
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
};
