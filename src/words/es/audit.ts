/** Spanish for what old figures are asked, and what they lack. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  days: 'días',
  deviations: 'desviaciones',
  'this tool has no certificate': 'esta herramienta no tiene certificado',
  'Name its certificate in the station file, and keep older ones with "plugmark certificates keep".':
    'Indicar su certificado en el archivo del puesto y guardar los anteriores con «plugmark certificates keep».',
  'one certificate cannot show a drift': 'un solo certificado no puede mostrar una deriva',
  'Keep older ones with "plugmark certificates keep", or look again after its next calibration.':
    'Guardar los anteriores con «plugmark certificates keep» o volver a mirar tras su próxima calibración.',
  'no two of {0} certificates are between the same adjustments, on different days and at the same point, so none shows a drift':
    'no hay dos de {0} certificados entre los mismos ajustes, en días distintos y en el mismo punto, así que ninguno muestra una deriva',
  'no two of {0} certificates are of different days and at the same point, so none shows a drift':
    'no hay dos de {0} certificados de días distintos y en el mismo punto, así que ninguno muestra una deriva',
  'Have it calibrated at the same points, before and after an adjustment.':
    'Hacerla calibrar en los mismos puntos, antes y después de un ajuste.',
  'nothing says how far this tool may be off': 'nada dice cuánto puede desviarse esta herramienta',
  'Give it with --permissible, in per cent.': 'Darlo con --permissible, en tanto por ciento.',
  'the readings of a gauge show the plugs, not the gauge':
    'las lecturas de una galga muestran las bujías, no la galga',
  'Only its certificates can show a drift.': 'Solo sus certificados pueden mostrar una deriva.',
  'without a serial number nobody can tell which certificates belong to this tool':
    'sin número de serie nadie puede decir qué certificados pertenecen a esta herramienta',
  'Give the serial number that is marked on the tool.': 'Dar el número de serie marcado en la herramienta.',
  '{0}; and {1}': '{0}; y {1}',
  '# day of use since the calibration|# days of use since the calibration': {
    one: '# día de uso desde la calibración',
    other: '# días de uso desde la calibración',
  },
  '{0}: too few; the chart needs {1}': '{0}: muy pocos; el gráfico necesita {1}',
  'Look again when it was used on more days.': 'Volver a mirar cuando se haya usado más días.',
  'the first days of use all give the same figure, so there is no spread to compare with':
    'los primeros días de uso dan todos el mismo valor, así que no hay dispersión con la que comparar',
  'Check whether the tool shows enough digits.': 'Comprobar si la herramienta muestra suficientes cifras.',
  'average and range has factors for 2 or 3 trials, 2 to 10 appraisers and 2 to 10 parts, not for {0}, {1} and {2}':
    'media y rango tiene factores para 2 o 3 repeticiones, 2 a 10 evaluadores y 2 a 10 piezas, no para {0}, {1} y {2}',
  'Use the analysis of variance, which has no such bounds.':
    'Usar el análisis de varianza, que no tiene esos límites.',
  '{0} holds a value that is no finite number': '{0} contiene un valor que no es un número finito',
  'Leave the reading out and say so, or correct it where it was recorded.':
    'Omitir la lectura y decirlo, o corregirla donde se registró.',
  '{0} are so large or so small that no mean and no spread can be computed from them':
    '{0}: demasiado grande o demasiado pequeño para calcular media y dispersión',
  'Leave out what no instrument can have shown, and say so.':
    'Omitir lo que ningún instrumento pudo mostrar, y decirlo.',
  '{0} {1} are too few; at least {2} are needed': '{0} {1} no bastan; hacen falta al menos {2}',
  'Collect more before computing this, or widen the period.':
    'Reunir más antes de calcular esto o ampliar el período.',
  'all {0} are equal, so they show no spread to compute with':
    'sin ninguna diferencia ({0}): no muestran dispersión con la que calcular',
  'Look whether the instrument shows enough digits, or whether one value was recorded many times.':
    'Mirar si el instrumento muestra suficientes cifras o si un valor se registró muchas veces.',
  'a calibration without an uncertainty above zero weighs nothing, or everything':
    'una calibración sin incertidumbre mayor que cero no pesa nada, o lo pesa todo',
  'Take the uncertainty from its certificate.': 'Tomar la incertidumbre de su certificado.',
  'all calibrations are of the same day, so there is no drift to estimate':
    'todas las calibraciones son del mismo día, así que no hay deriva que estimar',
  'Add calibrations of other days.': 'Añadir calibraciones de otros días.',
  'a chart of weighted means needs 0 < λ ≤ 1, a target, and sigma and width above zero':
    'un gráfico de medias ponderadas necesita 0 < λ ≤ 1, un objetivo, y sigma y anchura mayores que cero',
  'Take λ 0.2 and width 3, and sigma from an individuals chart of a stable period.':
    'Tomar λ 0,2 y anchura 3, y sigma de un gráfico de individuales de un período estable.',
  'each reading needs a time of its own, later than the one before, and a nominal interval above zero':
    'cada lectura necesita su propia hora, posterior a la anterior, y un intervalo nominal mayor que cero',
  'Sort the readings by time and merge those of the same moment.':
    'Ordenar las lecturas por hora y unir las del mismo momento.',
  '{0} has no reading': '{0} no tiene lectura',
  'trial {0} of {1} is no finite number': 'la repetición {0} de {1} no es un número finito',
  '{0} has {1} trials, the first cell has {2}': '{0} tiene {1} repeticiones, la primera celda tiene {2}',
  'a gauge study needs at least 2 appraisers and 2 parts; this one has {0} and {1}':
    'un estudio del medio de medida necesita al menos 2 evaluadores y 2 piezas; este tiene {0} y {1}',
  'Plan 3 appraisers, 10 parts and 3 trials, as is usual.':
    'Prever 3 evaluadores, 10 piezas y 3 repeticiones, como es habitual.',
  'every cell has one trial only, so repeatability cannot be told from the rest':
    'cada celda tiene una sola repetición, así que la repetibilidad no se distingue del resto',
  'Have every appraiser measure every part at least twice.':
    'Hacer que cada evaluador mida cada pieza al menos dos veces.',
  'there are readings beyond the named appraisers and parts':
    'hay lecturas fuera de los evaluadores y piezas nombrados',
  'Name every appraiser and part, or leave the readings out.':
    'Nombrar cada evaluador y cada pieza u omitir las lecturas.',
  'there is neither a lower nor an upper limit to hold the readings against':
    'no hay límite inferior ni superior con el que comparar las lecturas',
  'Give at least one limit as a finite number.': 'Dar al menos un límite como número finito.',
  'the lower limit {0} is not below the upper limit {1}':
    'el límite inferior {0} no está por debajo del límite superior {1}',
  'Give the lower limit first, then the upper.': 'Dar primero el límite inferior y luego el superior.',
  'an interval of {0} days, bounds {1} to {2} days, and a deviation of {3} with {4} permitted do not go together':
    'un intervalo de {0} días, límites de {1} a {2} días y una desviación de {3} con {4} permitidos no van juntos',
  'Give an interval in whole days between its bounds, a finite deviation, and a permissible deviation above zero.':
    'Dar un intervalo en días enteros entre sus límites, una desviación finita y una desviación permitida mayor que cero.',
  calibrations: 'calibraciones',
  gaps: 'separaciones',
};
