/** German for what old figures are asked, and what they lack. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  days: 'Tage',
  deviations: 'Abweichungen',
  'this tool has no certificate': 'dieses Werkzeug hat keinen Kalibrierschein',
  'Name its certificate in the station file, and keep older ones with "plugmark certificates keep".':
    'Seinen Kalibrierschein in der Arbeitsplatzdatei angeben und ältere mit „plugmark certificates keep“ aufheben.',
  'one certificate cannot show a drift': 'ein einziger Kalibrierschein kann keine Drift zeigen',
  'Keep older ones with "plugmark certificates keep", or look again after its next calibration.':
    'Ältere mit „plugmark certificates keep“ aufheben oder nach der nächsten Kalibrierung wieder nachsehen.',
  'no two of {0} certificates are between the same adjustments, on different days and at the same point, so none shows a drift':
    'keine zwei von {0} Kalibrierscheinen liegen zwischen denselben Justierungen, an verschiedenen Tagen und am selben Punkt, also zeigt keiner eine Drift',
  'no two of {0} certificates are of different days and at the same point, so none shows a drift':
    'keine zwei von {0} Kalibrierscheinen sind von verschiedenen Tagen und am selben Punkt, also zeigt keiner eine Drift',
  'Have it calibrated at the same points, before and after an adjustment.':
    'An denselben Punkten kalibrieren lassen, vor und nach einer Justierung.',
  'nothing says how far this tool may be off': 'nichts sagt, wie weit dieses Werkzeug abweichen darf',
  'Give it with --permissible, in per cent.': 'Mit --permissible angeben, in Prozent.',
  'the readings of a gauge show the plugs, not the gauge':
    'die Messwerte einer Lehre zeigen die Kerzen, nicht die Lehre',
  'Only its certificates can show a drift.': 'Eine Drift können nur ihre Kalibrierscheine zeigen.',
  'without a serial number nobody can tell which certificates belong to this tool':
    'ohne Seriennummer weiß niemand, welche Kalibrierscheine zu diesem Werkzeug gehören',
  'Give the serial number that is marked on the tool.':
    'Die auf dem Werkzeug angebrachte Seriennummer angeben.',
  '{0}; and {1}': '{0}; und {1}',
  '# day of use since the calibration|# days of use since the calibration': {
    one: '# Einsatztag seit der Kalibrierung',
    other: '# Einsatztage seit der Kalibrierung',
  },
  '{0}: too few; the chart needs {1}': '{0}: zu wenige; die Karte braucht {1}',
  'Look again when it was used on more days.': 'Wieder nachsehen, wenn es an mehr Tagen benutzt wurde.',
  'the first days of use all give the same figure, so there is no spread to compare with':
    'die ersten Einsatztage ergeben alle denselben Wert, also gibt es keine Streuung zum Vergleich',
  'Check whether the tool shows enough digits.': 'Prüfen, ob das Werkzeug genug Stellen anzeigt.',
  'average and range has factors for 2 or 3 trials, 2 to 10 appraisers and 2 to 10 parts, not for {0}, {1} and {2}':
    'Mittelwert und Spannweite hat Faktoren für 2 oder 3 Wiederholungen, 2 bis 10 Prüfer und 2 bis 10 Teile, nicht für {0}, {1} und {2}',
  'Use the analysis of variance, which has no such bounds.':
    'Die Varianzanalyse verwenden, die keine solchen Grenzen hat.',
  '{0} holds a value that is no finite number': '{0} enthält einen Wert, der keine endliche Zahl ist',
  'Leave the reading out and say so, or correct it where it was recorded.':
    'Den Messwert weglassen und das sagen, oder ihn dort berichtigen, wo er aufgezeichnet wurde.',
  '{0} are so large or so small that no mean and no spread can be computed from them':
    '{0}: so groß oder so klein, dass sich weder Mittelwert noch Streuung daraus berechnen lässt',
  'Leave out what no instrument can have shown, and say so.':
    'Weglassen, was kein Messgerät gezeigt haben kann, und das sagen.',
  '{0} {1} are too few; at least {2} are needed': '{0} {1} sind zu wenige; nötig sind mindestens {2}',
  'Collect more before computing this, or widen the period.':
    'Mehr sammeln, bevor dies berechnet wird, oder den Zeitraum weiter fassen.',
  'all {0} are equal, so they show no spread to compute with':
    'alle gleich ({0}): sie zeigen keine Streuung, mit der sich rechnen ließe',
  'Look whether the instrument shows enough digits, or whether one value was recorded many times.':
    'Nachsehen, ob das Messgerät genug Stellen anzeigt oder ob ein Wert vielmals aufgezeichnet wurde.',
  'a calibration without an uncertainty above zero weighs nothing, or everything':
    'eine Kalibrierung ohne Messunsicherheit über null wiegt nichts oder alles',
  'Take the uncertainty from its certificate.': 'Die Messunsicherheit dem Kalibrierschein entnehmen.',
  'all calibrations are of the same day, so there is no drift to estimate':
    'alle Kalibrierungen sind vom selben Tag, also lässt sich keine Drift schätzen',
  'Add calibrations of other days.': 'Kalibrierungen anderer Tage hinzufügen.',
  'a chart of weighted means needs 0 < λ ≤ 1, a target, and sigma and width above zero':
    'eine Karte gewichteter Mittelwerte braucht 0 < λ ≤ 1, einen Zielwert sowie Sigma und Breite über null',
  'Take λ 0.2 and width 3, and sigma from an individuals chart of a stable period.':
    'λ 0,2 und Breite 3 nehmen, und Sigma aus einer Einzelwertkarte eines stabilen Zeitraums.',
  'each reading needs a time of its own, later than the one before, and a nominal interval above zero':
    'jeder Messwert braucht eine eigene Zeit, später als die davor, und einen Nennabstand über null',
  'Sort the readings by time and merge those of the same moment.':
    'Die Messwerte nach der Zeit ordnen und die desselben Zeitpunkts zusammenfassen.',
  '{0} has no reading': '{0} hat keinen Messwert',
  'trial {0} of {1} is no finite number': 'Wiederholung {0} von {1} ist keine endliche Zahl',
  '{0} has {1} trials, the first cell has {2}': '{0} hat {1} Wiederholungen, die erste Zelle hat {2}',
  'a gauge study needs at least 2 appraisers and 2 parts; this one has {0} and {1}':
    'eine Messmittelstudie braucht mindestens 2 Prüfer und 2 Teile; diese hat {0} und {1}',
  'Plan 3 appraisers, 10 parts and 3 trials, as is usual.':
    '3 Prüfer, 10 Teile und 3 Wiederholungen vorsehen, wie üblich.',
  'every cell has one trial only, so repeatability cannot be told from the rest':
    'jede Zelle hat nur eine Wiederholung, also lässt sich die Wiederholbarkeit nicht vom Rest trennen',
  'Have every appraiser measure every part at least twice.':
    'Jeden Prüfer jedes Teil mindestens zweimal messen lassen.',
  'there are readings beyond the named appraisers and parts':
    'es gibt Messwerte jenseits der genannten Prüfer und Teile',
  'Name every appraiser and part, or leave the readings out.':
    'Jeden Prüfer und jedes Teil nennen oder die Messwerte weglassen.',
  'there is neither a lower nor an upper limit to hold the readings against':
    'es gibt weder eine untere noch eine obere Grenze, an der die Messwerte zu messen wären',
  'Give at least one limit as a finite number.': 'Mindestens eine Grenze als endliche Zahl angeben.',
  'the lower limit {0} is not below the upper limit {1}':
    'die untere Grenze {0} liegt nicht unter der oberen Grenze {1}',
  'Give the lower limit first, then the upper.': 'Erst die untere Grenze angeben, dann die obere.',
  'an interval of {0} days, bounds {1} to {2} days, and a deviation of {3} with {4} permitted do not go together':
    'ein Intervall von {0} Tagen, Grenzen von {1} bis {2} Tagen und eine Abweichung von {3} bei {4} zulässigen passen nicht zusammen',
  'Give an interval in whole days between its bounds, a finite deviation, and a permissible deviation above zero.':
    'Ein Intervall in ganzen Tagen zwischen seinen Grenzen angeben, eine endliche Abweichung und eine zulässige Abweichung über null.',
  calibrations: 'Kalibrierungen',
  gaps: 'Abstände',
};
