/** French for what old figures are asked, and what they lack. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  days: 'jours',
  deviations: 'écarts',
  'this tool has no certificate': "cet outil n'a pas de certificat",
  'Name its certificate in the station file, and keep older ones with "plugmark certificates keep".':
    'Nommer son certificat dans le fichier du poste, et garder les anciens avec « plugmark certificates keep ».',
  'one certificate cannot show a drift': 'un seul certificat ne peut pas montrer de dérive',
  'Keep older ones with "plugmark certificates keep", or look again after its next calibration.':
    'Garder les anciens avec « plugmark certificates keep », ou revoir après son prochain étalonnage.',
  'no two of {0} certificates are between the same adjustments, on different days and at the same point, so none shows a drift':
    "aucune paire de {0} certificats n'est entre les mêmes ajustages, à des jours différents et au même point : aucun ne montre de dérive",
  'no two of {0} certificates are of different days and at the same point, so none shows a drift':
    "aucune paire de {0} certificats n'est de jours différents et au même point : aucun ne montre de dérive",
  'Have it calibrated at the same points, before and after an adjustment.':
    'Le faire étalonner aux mêmes points, avant et après un ajustage.',
  'nothing says how far this tool may be off': "rien ne dit de combien cet outil peut s'écarter",
  'Give it with --permissible, in per cent.': 'Le donner avec --permissible, en pour cent.',
  'the readings of a gauge show the plugs, not the gauge':
    "les mesures d'une jauge montrent les bougies, non la jauge",
  'Only its certificates can show a drift.': 'Seuls ses certificats peuvent montrer une dérive.',
  'without a serial number nobody can tell which certificates belong to this tool':
    'sans numéro de série, nul ne peut dire quels certificats appartiennent à cet outil',
  'Give the serial number that is marked on the tool.': "Donner le numéro de série marqué sur l'outil.",
  '{0}; and {1}': '{0} ; et {1}',
  '# day of use since the calibration|# days of use since the calibration': {
    one: "# jour d'emploi depuis l'étalonnage",
    other: "# jours d'emploi depuis l'étalonnage",
  },
  '{0}: too few; the chart needs {1}': '{0} : trop peu ; la carte en demande {1}',
  'Look again when it was used on more days.': 'Revoir quand il aura servi plus de jours.',
  'the first days of use all give the same figure, so there is no spread to compare with':
    "les premiers jours d'emploi donnent tous la même valeur : il n'y a pas de dispersion à comparer",
  'Check whether the tool shows enough digits.': "Vérifier si l'outil affiche assez de chiffres.",
  'average and range has factors for 2 or 3 trials, 2 to 10 appraisers and 2 to 10 parts, not for {0}, {1} and {2}':
    'moyenne et étendue a des facteurs pour 2 ou 3 essais, 2 à 10 opérateurs et 2 à 10 pièces, non pour {0}, {1} et {2}',
  'Use the analysis of variance, which has no such bounds.':
    "Employer l'analyse de la variance, qui n'a pas de telles bornes.",
  '{0} holds a value that is no finite number': "{0} contient une valeur qui n'est pas un nombre fini",
  'Leave the reading out and say so, or correct it where it was recorded.':
    'Omettre la mesure et le dire, ou la corriger là où elle a été enregistrée.',
  '{0} are so large or so small that no mean and no spread can be computed from them':
    '{0} : trop grand ou trop petit pour en calculer moyenne et dispersion',
  'Leave out what no instrument can have shown, and say so.':
    "Omettre ce qu'aucun instrument n'a pu montrer, et le dire.",
  '{0} {1} are too few; at least {2} are needed': "{0} {1}, c'est trop peu ; il en faut au moins {2}",
  'Collect more before computing this, or widen the period.':
    'En réunir davantage avant ce calcul, ou élargir la période.',
  'all {0} are equal, so they show no spread to compute with':
    'aucune différence ({0}) : rien ne montre de dispersion pour le calcul',
  'Look whether the instrument shows enough digits, or whether one value was recorded many times.':
    "Voir si l'instrument affiche assez de chiffres, ou si une valeur a été enregistrée plusieurs fois.",
  'a calibration without an uncertainty above zero weighs nothing, or everything':
    'un étalonnage sans incertitude supérieure à zéro ne pèse rien, ou tout',
  'Take the uncertainty from its certificate.': "Prendre l'incertitude sur son certificat.",
  'all calibrations are of the same day, so there is no drift to estimate':
    "tous les étalonnages sont du même jour : il n'y a pas de dérive à estimer",
  'Add calibrations of other days.': "Ajouter des étalonnages d'autres jours.",
  'a chart of weighted means needs 0 < λ ≤ 1, a target, and sigma and width above zero':
    'une carte de moyennes pondérées demande 0 < λ ≤ 1, une cible, et sigma et largeur supérieurs à zéro',
  'Take λ 0.2 and width 3, and sigma from an individuals chart of a stable period.':
    "Prendre λ 0,2 et largeur 3, et sigma d'une carte des valeurs individuelles d'une période stable.",
  'each reading needs a time of its own, later than the one before, and a nominal interval above zero':
    'chaque mesure demande une heure à elle, plus tardive que la précédente, et un intervalle nominal supérieur à zéro',
  'Sort the readings by time and merge those of the same moment.':
    'Trier les mesures par heure et réunir celles du même instant.',
  '{0} has no reading': "{0} n'a pas de mesure",
  'trial {0} of {1} is no finite number': "l'essai {0} de {1} n'est pas un nombre fini",
  '{0} has {1} trials, the first cell has {2}': '{0} a {1} essais, la première case en a {2}',
  'a gauge study needs at least 2 appraisers and 2 parts; this one has {0} and {1}':
    'une étude de moyen de mesure demande au moins 2 opérateurs et 2 pièces ; celle-ci en a {0} et {1}',
  'Plan 3 appraisers, 10 parts and 3 trials, as is usual.':
    "Prévoir 3 opérateurs, 10 pièces et 3 essais, comme d'usage.",
  'every cell has one trial only, so repeatability cannot be told from the rest':
    "chaque case n'a qu'un essai : la répétabilité ne se distingue pas du reste",
  'Have every appraiser measure every part at least twice.':
    'Faire mesurer chaque pièce au moins deux fois par chaque opérateur.',
  'there are readings beyond the named appraisers and parts':
    'il y a des mesures hors des opérateurs et pièces nommés',
  'Name every appraiser and part, or leave the readings out.':
    'Nommer chaque opérateur et chaque pièce, ou omettre les mesures.',
  'there is neither a lower nor an upper limit to hold the readings against':
    "il n'y a ni limite basse ni limite haute à quoi comparer les mesures",
  'Give at least one limit as a finite number.': 'Donner au moins une limite comme nombre fini.',
  'the lower limit {0} is not below the upper limit {1}':
    "la limite basse {0} n'est pas sous la limite haute {1}",
  'Give the lower limit first, then the upper.': "Donner d'abord la limite basse, puis la haute.",
  'an interval of {0} days, bounds {1} to {2} days, and a deviation of {3} with {4} permitted do not go together':
    'un intervalle de {0} jours, des bornes de {1} à {2} jours, et un écart de {3} pour {4} permis ne vont pas ensemble',
  'Give an interval in whole days between its bounds, a finite deviation, and a permissible deviation above zero.':
    'Donner un intervalle en jours entiers entre ses bornes, un écart fini, et un écart admissible supérieur à zéro.',
  calibrations: "valeurs d'étalonnage",
  gaps: 'écartements',
};
