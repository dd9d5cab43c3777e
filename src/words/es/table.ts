/** Spanish for the table of words for codes, and of refusals. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  OK: 'OK',
  'NOT OK': 'NO OK',
  UNDECIDED: 'INDECISO',
  'gasket seat': 'asiento con junta',
  'conical seat': 'asiento cónico',
  'aluminium head': 'culata de aluminio',
  'cast-iron head': 'culata de fundición',
  'dry threads': 'rosca seca',
  'oiled threads': 'rosca aceitada',
  'anti-seize threads': 'rosca con pasta antigripante',
  'factory-coated threads': 'rosca recubierta de fábrica',
  'the engine maker': 'el fabricante del motor',
  'the plug box': 'la caja de la bujía',
  'a general table': 'una tabla general',
  'an invented example': 'un ejemplo inventado',
  '{0} says {1}, which takes precedence over {2}': '{0} indica {1}, y eso prevalece: {2} va detrás',
  'Use the better source. Put the other one under "also".':
    'Utilizar la fuente mejor. Indicar la otra en "also".',
  'cylinder {0}': 'cilindro {0}',
  'cylinder {0}, plug {1} (no. {2})': 'cilindro {0}, bujía {1} (n.º {2})',
  'a cylinder number stands twice; expected each once':
    'un número de cilindro aparece dos veces; cada uno debe aparecer una sola vez',
  'expected every cylinder of banks exactly once ({0})':
    'cada cilindro de las bancadas debe aparecer exactamente una vez ({0})',
  'expected every number of banks at exactly one cylinder ({0})':
    'cada número de las bancadas debe corresponder exactamente a un cilindro ({0})',
  'a cylinder stands twice; expected each once':
    'un cilindro aparece dos veces; cada uno debe aparecer una sola vez',
  'expected every cylinder once ({0})': 'cada cilindro debe aparecer una vez ({0})',
  'a firing order starts with the first cylinder': 'un orden de encendido empieza por el primer cilindro',
  'the tightening of this cylinder': 'el apriete de este cilindro',
  'a second pull on a plug already tight (re-hit)': 'un segundo tirón en una bujía ya apretada (reapriete)',
  'no plug was turned': 'no se giró ninguna bujía',
  'a stroke that was not finished': 'un tirón sin terminar',
  'plug backed out, thread inspected, to be fitted again': 'bujía sacada, rosca revisada, se vuelve a montar',
  'plug backed out, thread inspected, to be fitted again with a new plug':
    'bujía sacada, rosca revisada, se monta una bujía nueva',
  calibration: 'calibración',
  'calibration, beyond its points': 'calibración, fuera de sus puntos',
  'error, not corrected': 'error, sin corregir',
  'drift since calibration': 'deriva desde la calibración',
  'permissible deviation': 'desviación admisible',
  'check against its class': 'comprobación frente a su clase',
  resolution: 'resolución',
  repeatability: 'repetibilidad',
  'peak of the pull': 'valor máximo del tirón',
  'arm of the wrench': 'brazo de la llave',
  'offset of the adapter': 'desplazamiento del adaptador',
  'angle of the adapter': 'ángulo del adaptador',
  'joint on the wrench': 'articulación en la llave',
  temperature: 'temperatura',
  'square drive': 'cuadradillo de accionamiento',
  'position of the hand': 'posición de la mano',
  'hardness of the joint': 'rigidez de la unión',
  other: 'otros',
  'step, drift and noise of the angle': 'paso, deriva y ruido del ángulo',
  'angle of the tool': 'ángulo de la herramienta',
  'where the plug made contact': 'punto de contacto de la bujía',
  'wind-up of the tools': 'torsión de las herramientas',
  'certificate {0}, {1}': 'certificado {0}, {1}',
  '{0} readings, {1}': '{0} lecturas, {1}',
  'step of the readings': 'paso de las lecturas',
  'its samples and its zero': 'sus muestras y su cero',
  'measured on the adapter': 'medido en el adaptador',
  'a quarter of the limit, not stated': 'un cuarto del límite, no indicado',
  'its bend': 'su inclinación',
  'assumed, because nobody states it': 'supuesto, porque nadie lo indica',
  'published by the device itself': 'publicado por el propio aparato',
  '{0} Still open: {1}.': '{0} Aún pendiente: {1}.',
  normal: 'normal',
  'light grey to tan, little wear, perhaps some white powder':
    'gris claro a marrón claro, poco desgaste, quizá algo de polvo blanco',
  'a healthy cylinder and a plug that suits it': 'un cilindro sano y una bujía adecuada',
  'reddish coat': 'capa rojiza',
  'pink to brick red film on insulator and electrodes':
    'película rosa a rojo ladrillo en aislador y electrodos',
  'an additive in the fuel; no fault of the engine': 'un aditivo del combustible; no es un fallo del motor',
  'dry soot': 'hollín seco',
  'dull black, dry, comes off on the finger': 'negro mate, seco, mancha el dedo',
  'rich mixture, short trips, weak spark, too cold a plug, blocked air filter':
    'mezcla rica, trayectos cortos, chispa débil, bujía demasiado fría, filtro de aire obstruido',
  'Have mixture, air filter and ignition checked.':
    'Haga revisar la mezcla, el filtro de aire y el encendido.',
  'wet with fuel': 'mojada de combustible',
  'damp, smells of fuel': 'húmeda, huele a combustible',
  'flooded, injector that leaks, no spark in this cylinder':
    'motor ahogado, inyector que gotea, sin chispa en este cilindro',
  'Have injector and ignition of this cylinder checked.':
    'Haga revisar el inyector y el encendido de este cilindro.',
  'wet with oil': 'mojada de aceite',
  'black, wet and slippery': 'negra, mojada y resbaladiza',
  'oil past rings, valve guides or seals, or through the crankcase vent':
    'aceite que pasa por segmentos, guías o retenes de válvula, o por la ventilación del cárter',
  'Have the oil consumption looked into.': 'Haga revisar el consumo de aceite.',
  ash: 'ceniza',
  'pale crust on electrodes and insulator': 'costra clara en electrodos y aislador',
  'additives of oil or fuel that do not burn; oil consumption':
    'aditivos de aceite o combustible que no arden; consumo de aceite',
  worn: 'desgastada',
  'electrodes rounded, gap grown wide': 'electrodos redondeados, separación agrandada',
  'in use beyond its life': 'usada más allá de su vida útil',
  'Change the plugs sooner next time.': 'Cambie las bujías antes la próxima vez.',
  glazed: 'vitrificada',
  'shiny, glassy or spotted insulator': 'aislador brillante, vidrioso o manchado',
  'deposits melted on by hard acceleration after a long slow time':
    'depósitos fundidos al acelerar a fondo tras mucho tiempo a marcha lenta',
  'Have the heat range of the plug checked.': 'Haga comprobar el grado térmico de la bujía.',
  bridged: 'puenteada',
  'a lump of deposit closes the gap': 'un grumo de depósito cierra la separación',
  'oil or soot that came loose in the chamber': 'aceite u hollín desprendido en la cámara',
  'beads of metal': 'perlas de metal',
  'small bright beads on electrodes or insulator': 'pequeñas perlas brillantes en electrodos o aislador',
  'lead in the fuel, or metal from piston or valve: look into the cylinder':
    'plomo en el combustible, o metal del pistón o de una válvula: mirar dentro del cilindro',
  'Have the inside of this cylinder looked at.': 'Haga revisar el interior de este cilindro.',
  overheated: 'sobrecalentada',
  'chalk white insulator, dark specks, electrodes burnt blue':
    'aislador blanco tiza, puntos oscuros, electrodos azulados',
  'a plug that was loose, too hot a plug, lean mixture, timing, cooling':
    'bujía floja, bujía demasiado caliente, mezcla pobre, avance del encendido, refrigeración',
  'Have mixture, timing and cooling checked.':
    'Haga revisar la mezcla, el avance del encendido y la refrigeración.',
  melted: 'fundida',
  'electrode melted or gone, insulator blistered': 'electrodo fundido o desaparecido, aislador ampollado',
  'ignition by a hot spot before the spark; the piston may be hurt: look into the cylinder':
    'encendido por un punto caliente antes de la chispa; el pistón puede estar dañado: mirar dentro del cilindro',
  'Drive no further before the inside of this cylinder is looked at.':
    'No siga circulando hasta que se revise el interior de este cilindro.',
  'knocked to pieces': 'rota por picado',
  'insulator tip chipped, ground electrode broken without melting':
    'punta del aislador astillada, electrodo de masa roto sin fundirse',
  'knocking: fuel, timing, load; or a gap set with force':
    'picado: combustible, avance, carga; o separación ajustada a la fuerza',
  'Have fuel, timing and the inside of this cylinder checked.':
    'Haga revisar el combustible, el avance del encendido y el interior de este cilindro.',
  'insulator cracked': 'aislador agrietado',
  'centre electrode loose': 'electrodo central suelto',
  'ground electrode broken': 'electrodo de masa roto',
  'shell broken': 'casquillo roto',
  'electrode bent': 'electrodo doblado',
  'burnt track down the outside': 'rastro quemado por fuera',
  'fine tip broken off: scrap, look for it in the cylinder':
    'punta fina rota: desecho, buscarla en el cilindro',
  sound: 'en buen estado',
  'dirty: clean it before fitting': 'sucia: limpiar antes de montar',
  'DAMAGED: stop and repair it first': 'DAÑADA: parar y reparar primero',
  'An even brown ring outside, just above the shell, is normal.':
    'Un anillo marrón uniforme por fuera, justo encima del casquillo, es normal.',
  thread: 'rosca',
  pitch: 'paso',
  reach: 'longitud de rosca',
  seat: 'asiento',
  hexagon: 'hexágono',
  'heat range': 'grado térmico',
  resistor: 'resistencia',
  'the specification does not allow adjusting': 'la especificación no permite el ajuste',
  'the specification does not allow adjusting a used plug':
    'la especificación no permite ajustar una bujía usada',
  'only nickel tips are adjusted unless the specification allows it':
    'solo se ajustan puntas de níquel, salvo que la especificación lo permita',
  'several ground electrodes are not adjusted unless the specification allows it':
    'varios electrodos de masa no se ajustan, salvo que la especificación lo permita',
  'the electrode was bent by {0} in all; the limit is {1}':
    'el electrodo se dobló {0} en total; el límite es {1}',
  'it needs a bend of {0}; the limit is {1}': 'habría que doblar {0}; el límite es {1}',
  'it does not look sound': 'no parece en buen estado',
  'it was bent, but {0}': 'se dobló, pero {0}',
  'bend the ground electrode at its base by {0} and measure again':
    'doblar el electrodo de masa en su base {0} y volver a medir',
  'out of reach or switched off': 'fuera de alcance o apagada',
  'it stopped answering': 'dejó de responder',
  'ended by the tool': 'terminado por la herramienta',
  'the tool is switching off': 'la herramienta se apaga',
  'ended by this station': 'terminado por este puesto',
  'the pairing failed': 'el emparejamiento falló',
  'the tool asks for a pairing that is not there': 'la herramienta pide un emparejamiento que no existe',
  'the connection could not be established': 'no se pudo establecer la conexión',
  'the recording has ended': 'la grabación ha terminado',
  'its serial port is gone': 'su puerto serie ha desaparecido',
  'the link ended': 'el enlace se interrumpió',
  'its own counter jumped': 'su propio contador saltó',
  'more than the station could take': 'más de lo que el puesto podía recibir',
  '{0}, reason 0x{1}': '{0}, motivo 0x{1}',
  'a device at {0} has the same name as the adopted tool. Its readings are ignored':
    'un aparato en {0} tiene el mismo nombre que la herramienta adoptada. Sus lecturas se ignoran',
  'the device at {0} gives no serial number before pairing':
    'el aparato en {0} no da número de serie antes del emparejamiento',
  'the device at {0} has serial number {1}, which is not that of the adopted tool':
    'el aparato en {0} tiene el número de serie {1}, que no es el de la herramienta adoptada',
  'the device at {0} does not ask for encryption, but the adopted tool does. Its readings are ignored':
    'el aparato en {0} no pide cifrado, pero la herramienta adoptada sí. Sus lecturas se ignoran',
  'the device at {0} does not send the readings of this tool':
    'el aparato en {0} no envía las lecturas de esta herramienta',
  'the device at {0} is not as its profile describes it':
    'el aparato en {0} no es como lo describe su perfil',
  'the device at {0} presents its readings in another format than the Bluetooth SIG defines. They cannot be trusted':
    'el aparato en {0} presenta sus lecturas en otro formato que el definido por el Bluetooth SIG. No son fiables',
  '{0} and {1}': '{0} y {1}',
  'which vehicle it was: VIN, plate and the other particulars of the order are as somebody typed them':
    'qué vehículo era: bastidor, matrícula y demás datos de la orden están como alguien los introdujo',
  'who was at work: names are as typed, and a key signs for whoever has it':
    'quién trabajó: los nombres están como se introdujeron, y una clave firma por quien la tenga',
  'that a pull was on the plug that it was given to: order of work and answers of people say so, no sensor does':
    'que un tirón fue en la bujía a la que se asignó: lo dicen el orden de las operaciones y las respuestas de personas, ningún sensor',
  'that the station sent on what its tools sent: whoever holds its keys can write readings that no tool sent':
    'que el puesto transmitió lo que enviaron sus herramientas: quien tenga sus claves puede escribir lecturas que ninguna herramienta envió',
  'where a figure came from: the station states it. One that plays a recording and calls it linked cannot be told from an honest one':
    'de dónde vino un valor: lo indica el puesto. Uno que reproduce una grabación y la da por transmitida por la herramienta no se distingue de uno honrado',
  "that the certificates are genuine: it holds their points as the station has them, not the laboratory's document":
    'que los certificados son auténticos: contiene sus puntos como los tiene el puesto, no el documento del laboratorio',
  'that the station keeps no other history: the witnesses that your policy names say so, and nobody else':
    'que el puesto no lleva otro historial: lo dicen los testigos que nombra su política, y nadie más',
  'that the station keeps no other history: only witnesses, a checkpoint that somebody else kept, or a time stamp show that nothing was rewritten':
    'que el puesto no lleva otro historial: solo testigos, un punto de control guardado por otra persona o un sello de tiempo muestran que nada se reescribió',
  'the verdicts: they were not judged again. Verify it with the version that made it as well':
    'los veredictos: no se volvieron a juzgar. Verificar también con la versión que lo creó',
  'that nothing of the job came behind its last entry here: a job that goes on has more entries in the log':
    'que nada de la orden siguió a la última entrada de aquí: una orden que continúa tiene más entradas en el registro',
  'the times of its entries: they are those of the clock of the station. The time stamp proves by when it was sealed':
    'las horas de sus entradas: son las del reloj del puesto. El sello de tiempo demuestra antes de cuándo se selló',
  'the times: they are those of the clock of the station': 'las horas: son las del reloj del puesto',
  "that the maker allows the torque limits: the source prints {0} alone, and plus/minus {1} % is the SHOP'S own rule":
    'que el fabricante permite los límites de par: la fuente imprime solo {0}, y más/menos {1} % es la regla PROPIA DEL TALLER',
  'that the readings came from the named instruments: the link of {0} was not authenticated, and another device could have taken the place of the tool':
    'que las lecturas vinieron de los instrumentos nombrados: el enlace de {0} no estaba autenticado, y otro aparato pudo ocupar el lugar de la herramienta',
  'what an instrument read: figures of {0} were typed':
    'lo que leyó un instrumento: valores de {0} se introdujeron a mano',
  'anything that {0} would show: the readings came from a recording':
    'nada de lo que {0} mostraría: las lecturas vinieron de una grabación',
  'anything that {0} would show: there was no instrument':
    'nada de lo que {0} mostraría: no hubo instrumento',
  'No general table has a figure for this thread and seat.':
    'Ninguna tabla general tiene un valor para esta rosca y este asiento.',
  'General tables say {0} to {1} {2} ({3}, {4}). No table holds the whole of this range; a better source goes before them.':
    'Las tablas generales indican de {0} a {1} {2} ({3}, {4}). Ninguna tabla cubre todo este margen; una fuente mejor prevalece sobre ellas.',
  'The publishers of general tables disagree: no torque suits all of them.':
    'Los editores de tablas generales no coinciden: ningún par vale para todos.',
  'GENERAL TABLE: the figure is not for this engine. Look for the engine maker’s figure first.':
    'TABLA GENERAL: el valor no es para este motor. Busque primero el del fabricante del motor.',
  'Set aside: {0} ({1}) says {2} on {3}.': 'Descartado: {0} ({1}) indica {2} para {3}.',
  'No oil and no anti-seize: the figure assumes dry threads.':
    'Sin aceite ni pasta antigripante: el valor supone rosca seca.',
  "Reduced by {0} % for {1}: the shop's own rule; the source does not say so.":
    'Reducido un {0} % para {1}: regla propia del taller; la fuente no lo dice.',
  "SHOP RULE: the source prints the single figure {0}. Plus/minus {1} % is this shop's own tolerance, not the maker's.":
    'REGLA DEL TALLER: la fuente imprime el valor único {0}. Más/menos {1} % es la tolerancia propia de este taller, no la del fabricante.',
  "SHOP RULE: the source prints the single figure {0}. Plus/minus {1} % is this shop's own tolerance, not the maker's (basis: {2}).":
    'REGLA DEL TALLER: la fuente imprime el valor único {0}. Más/menos {1} % es la tolerancia propia de este taller, no la del fabricante (base: {2}).',
  'For the same clamp force, friction falling from {0} to {1} would ask for {2} % less (Motosh; seat ring assumed).':
    'Para la misma fuerza de apriete, un rozamiento que baja de {0} a {1} pediría un {2} % menos (Motosh; anillo de asiento supuesto).',
  'A used plug goes back into the cylinder it came from.':
    'Una bujía usada vuelve al cilindro del que salió.',
  'A used gasket takes far less angle than a new one.':
    'Una junta usada necesita mucho menos ángulo que una nueva.',
  'The order names an angle and no torque. The turn from contact is judged. The torque window goes from half of what general tables give for this thread and seat to a quarter more than they give: a torque outside of it is never OK.':
    'La orden indica un ángulo y ningún par. Se juzga el giro desde el contacto. El margen de par va de la mitad de lo que las tablas generales dan para esta rosca y este asiento a un cuarto más: un par fuera de él nunca es OK.',
  'The angle is one figure without a tolerance: no wrench can prove it. Give two limits, or turn the plug by hand and record it so.':
    'El ángulo es un valor único sin tolerancia: ninguna llave puede demostrarlo. Dar dos límites, o girar la bujía a mano y registrarlo así.',
  'The figure was checked by {0}.': 'El valor fue comprobado por {0}.',
  'The rule for single figures was set by {0}.': 'La regla para valores únicos la fijó {0}.',
  'The rule for {0} was set by {1}.': 'La regla para {0} la fijó {1}.',
  'old plug not read': 'bujía vieja no revisada',
  'new plug not checked': 'bujía nueva no comprobada',
  'the new plug differs in {0}': 'la bujía nueva difiere en: {0}',
  'plug to be replaced: {0}': 'bujía a sustituir: {0}',
  'gap not measured': 'separación no medida',
  'gap not proven': 'separación no demostrada',
  'no torque yet': 'aún sin par',
  'torque not proven': 'par no demostrado',
  'open question about its torque': 'pregunta abierta sobre su par',
  'windows not confirmed': 'márgenes no confirmados',
  'steps before removal not confirmed': 'pasos antes del desmontaje no confirmados',
  'steps before fitting not confirmed': 'pasos antes del montaje no confirmados',
  'steps after fitting not confirmed': 'pasos después del montaje no confirmados',
  'pull {0}: question not answered': 'tirón {0}: pregunta sin responder',
  'declared void': 'declarado anulado',
  'cylinder {0}: {1}': 'cilindro {0}: {1}',
  'it is still open': 'aún está abierta',
  '{0} entries; a record holds {1}': '{0} entradas; un acta admite {1}',
  '{0} attempts; a record holds {1}': '{0} intentos; un acta admite {1}',
  'its record has {0} bytes; one holds {1}': 'su acta tiene {0} bytes; un acta admite {1}',
  Audit: 'Auditoría',
  Dispute: 'Reclamación',
  '{0}, claim {1}': '{0}, expediente {1}',
  'This looks like a telephone number. Papers and shared records leave it out; the log contains it.':
    'Esto parece un número de teléfono. Los papeles y las actas compartidas lo omiten; el registro lo contiene.',
  tightening: 'apriete',
  continued: 'continuación',
  'run-down': 'enroscado',
  're-hit': 'reapriete',
  'check pull': 'tirón de control',
  loosening: 'aflojado',
  handling: 'manipulación',
  unsure: 'dudoso',
  'too little torque to turn a plug': 'muy poco par para girar una bujía',
  'it rose and fell like a knock': 'subió y bajó como un golpe',
  'no cylinder is due': 'no toca ningún cilindro',
  '{0}: the plug turned': '{0}: la bujía giró',
  'the first plug of this engine': 'la primera bujía de este motor',
  'it went on from the stroke before': 'continuó el tirón anterior',
  '{0}: it went on after stopping short': '{0}: siguió tras quedarse corto',
  'it ended low': 'terminó bajo',
  'a plug turned from loose and ended low: the next one':
    'una bujía suelta giró y terminó baja: la siguiente',
  'it ended without a click': 'terminó sin clic',
  'a low stroke while a question was open': 'un tirón bajo con una pregunta abierta',
  'nothing followed: it stopped short': 'nada siguió: se quedó corto',
  '{0}: the same plug once more': '{0}: otra vez la misma bujía',
  '{0}: a plug already tight was tried again': '{0}: se volvió a tirar de una bujía ya apretada',
  'sooner than anybody gets to another plug': 'antes de lo que nadie llega a otra bujía',
  'every cylinder is done': 'todos los cilindros están hechos',
  '{0}: the plug did not turn': '{0}: la bujía no giró',
  '{0}: a tight plug or one that still turned': '{0}: una bujía apretada o una que aún giraba',
  'the trial click, or the first plug': 'el clic de prueba, o la primera bujía',
  '{0}: the last plug turning, or a tight one again because one was left out':
    '{0}: la última bujía giraba, o una apretada otra vez porque se omitió una',
  '{0}: a plug turned, too soon after the last': '{0}: una bujía giró, demasiado pronto tras la última',
  '{0}, and the stroke before need not have turned it': '{0}, y el tirón anterior quizá no la giró',
  'it ended below what this plug had held': 'terminó por debajo de lo que esta bujía había aguantado',
  'it took {0} ms to what this plug had held': 'tardó {0} ms en llegar a lo que esta bujía había aguantado',
  'it may have been a plug that was tight already': 'pudo ser una bujía ya apretada',
  'it turned from loose, which a plug that had held as much does not':
    'giró desde suelta, lo que no hace una bujía que ya había aguantado tanto',
  'the stroke before was on the next plug': 'el tirón anterior fue en la bujía siguiente',
  'the plug did not turn on': 'la bujía no siguió girando',
  'a knock, or a stroke that stopped short': 'un golpe, o un tirón que se quedó corto',
  'it reached the window without a click, and nothing followed': 'llegó al margen sin clic, y nada siguió',
  '{0}: it went on from the pull in question': '{0}: continuó el tirón en cuestión',
  'it came while a question was open': 'llegó con una pregunta abierta',
  '{0}: a plug turned, though every cylinder is done':
    '{0}: una bujía giró, aunque todos los cilindros están hechos',
  'if the plug turned in pull {0}, this one was on another':
    'si la bujía giró en el tirón {0}, este fue en otra',
  'a check pull went above the window': 'un tirón de control superó el margen',
  'its end is missing': 'falta su final',
  'the readings stood at {0}, the end of the scale': 'las lecturas se quedaron en {0}, el final de la escala',
  '{0}, the highest torque; this tool sends nothing else of a pull':
    '{0}, el par más alto; esta herramienta no envía nada más de un tirón',
  '{0}, the first pull since the cylinder that is due changed':
    '{0}, el primer tirón desde que cambió el cilindro que toca',
  'two tools felt torque at the same time': 'dos herramientas sintieron par al mismo tiempo',
  'this plug was to be backed out': 'esta bujía debía sacarse',
  'no plug was tight yet': 'aún no había ninguna bujía apretada',
  'a plug was loosened after it had been proven': 'una bujía se aflojó después de haberse demostrado',
  'it was loosened at once after it was tightened': 'se aflojó justo después de apretarla',
  'answered by the technician': 'respondido por el técnico',
  'given to this cylinder by the technician': 'asignado a este cilindro por el técnico',
  'with pull {0}': 'con el tirón {0}',
  'pull {0} went on from it': 'el tirón {0} lo continuó',
  'the plug of cylinder {0} was left out': 'la bujía del cilindro {0} se omitió',
  'rose in {0} ms': 'subida en {0} ms',
  'turn measured, {0}': 'giro medido, {0}',
  '{0}, {1} s after the last': '{0}, {1} s después del último',
  '{0} in a straight line': '{0} en línea recta',
  '{0}, usual {1} ms': '{0}, habitual {1} ms',
  'the pull went {0} beyond it': 'el tirón lo superó en un {0}',
  'trial click: the torque fell by {0}, {1}': 'clic de prueba: el par cayó un {0}, {1}',
  'trial click: weak, the torque fell by {0} only, {1}; falls like it count as clicks in this job':
    'clic de prueba: débil, el par cayó solo un {0}, {1}; caídas así cuentan como clic en esta orden',
  'trial click: readings come {0} ms apart, too far to show a click':
    'clic de prueba: las lecturas llegan cada {0} ms, demasiado separadas para mostrar un clic',
  'trial click: no fall was seen; after each pull you are asked whether it clicked':
    'clic de prueba: no se vio ninguna caída; tras cada tirón se pregunta si hizo clic',
  'it was dropped': 'se cayó',
  'its tip is broken': 'su punta está rota',
  'its insulator is cracked': 'su aislador está agrietado',
  'its gap cannot be set within the rules': 'su separación no se puede ajustar según las reglas',
  'Usual for a new gasket': 'Habitual con junta nueva',
  'Usual for a used gasket': 'Habitual con junta usada',
  'Usual for a conical seat': 'Habitual con asiento cónico',
  'No ramp or coin gauge: it levers on the tip and breaks a fine one.':
    'Sin galga de rampa ni de moneda: hace palanca en la punta y rompe una fina.',
  'the thin wire passes, the thick one does not': 'el alambre fino pasa, el grueso no',
  'the thin wire does not pass': 'el alambre fino no pasa',
  'the thick wire passes': 'el alambre grueso pasa',
  '{0} went above the window. Back the plug out and look at its threads.':
    '{0}: por encima del margen. Sacar la bujía y revisar su rosca.',
  '{0} went too near the upper limit to be proven. Back the plug out and look at its threads.':
    '{0}: demasiado cerca del límite superior para quedar demostrado. Sacar la bujía y revisar su rosca.',
  'A plug was loosened ({0}). Was it {1}?': 'Se aflojó una bujía ({0}). ¿Era el {1}?',
  'The readings broke off in the middle of a pull on {0}. The torque that it reached is unknown.':
    'Las lecturas se cortaron en mitad de un tirón ({0}). Se desconoce el par alcanzado.',
  'STOP: {0}: {1}. The plug may have had far more. Back it out and look at its threads.':
    'ALTO: {0}: {1}. La bujía pudo recibir mucho más. Sacarla y revisar su rosca.',
  'STOP: {0} is due, but this plug was tight already ({1}). Was it another one, or was a cylinder left out?':
    'ALTO: toca el {0}, pero esta bujía ya estaba apretada ({1}). ¿Era otra, o se omitió un cilindro?',
  'STOP: {0} had stopped short, but this looks like another plug ({1}). Was it {2}?':
    'ALTO: el {0} se había quedado corto, pero esto parece otra bujía ({1}). ¿Era el {2}?',
  'No click was seen on {0} ({1}). Did the wrench click?':
    'No se vio ningún clic: {0} ({1}). ¿Hizo clic la llave?',
  'STOP: a plug still turned, but every cylinder is done ({0}). Was it {1}?':
    'ALTO: una bujía aún giró, pero todos los cilindros están hechos ({0}). ¿Era el {1}?',
  'Was that {0}? ({1}.)': '¿Era el {0}? ({1}.)',
  'STOP: {0} was pulled too early: it proves nothing. Back the plug out. Before it goes in again, {1}.':
    'ALTO: el {0} se apretó demasiado pronto: no demuestra nada. Sacar la bujía. Antes de volver a montarla: {1}.',
  'What was this pull? ({0}.)': '¿Qué fue este tirón? ({0}.)',
  'In a hot head the threads seize, and come out with the plug.':
    'En una culata caliente la rosca se agarrota y sale con la bujía.',
  'NGK, installation advice': 'NGK, consejos de montaje',
  'A coil that fires gives a shock that throws you.': 'Una bobina que dispara da una descarga que te tira.',
  'Heat glues a boot to its plug. A straight pull tears the boot, or the wire in it.':
    'El calor pega el capuchón a la bujía. Tirar recto rompe el capuchón o su cable.',
  'Grit in the well falls through the open hole onto the piston, and under the new seat.':
    'La suciedad del pozo cae por el orificio al pistón, y bajo el nuevo asiento.',
  'A power tool cracks insulators and cuts across threads before you feel it.':
    'Una herramienta a motor raja aisladores y cruza roscas antes de notarlo.',
  'Dirt takes up torque: the wrench clicks, and the plug is loose on its seat.':
    'La suciedad se lleva par: la llave hace clic y la bujía queda floja en su asiento.',
  'A crossed or dirty thread turns hard by hand. Chips must not fall in.':
    'Una rosca cruzada o sucia gira dura a mano. No deben caer virutas dentro.',
  'On greased threads the same torque pulls far harder, until the shell stretches.':
    'Con rosca engrasada el mismo par tira mucho más, hasta estirar el casquillo.',
  'NGK and Denso, installation advice': 'NGK y Denso, consejos de montaje',
  'A hose slips when the thread is crossed; a wrench cuts on. Where a plug sits deep, use one.':
    'Una manguera patina si la rosca está cruzada; una llave sigue cortando. Úsela si la bujía está honda.',
  'A thin film inside the boot keeps it from sticking. On threads or terminal it does harm.':
    'Una capa fina dentro del capuchón evita que se pegue. En rosca o terminal hace daño.',
  'A boot that does not seat lets the spark jump, and burns.':
    'Un capuchón mal asentado deja saltar la chispa y se quema.',
  'A misfire now is yours to find; next week it is a complaint.':
    'Un fallo de encendido se busca ahora; la semana que viene es una reclamación.',
  'One plug that differs from the others tells more than its shade.':
    'Una bujía distinta de las demás dice más que su color.',
  'Why: {0}': 'Por qué: {0}',
  'Why: {0} ({1})': 'Por qué: {0} ({1})',
  'common practice, no source': 'práctica común, sin fuente',
  'linked instrument': 'instrumento, transmitido',
  'typed by a person': 'introducido a mano',
  REPLAYED: 'REPRODUCIDO',
  SIMULATED: 'SIMULADO',
  typed: 'introducido a mano',
  'SIMULATED: tools of this job were simulated. No vehicle was worked on, and it proves nothing about any engine.':
    'SIMULADO: algunas herramientas de esta orden eran simuladas. No se trabajó en ningún vehículo, y no demuestra nada sobre ningún motor.',
  'REPLAYED: readings of this job came from a recording. It proves nothing about any engine.':
    'REPRODUCIDO: lecturas de esta orden vinieron de una grabación. No demuestra nada sobre ningún motor.',
  'SIMULATED: at least one job in this used simulated tools. Nobody worked on a vehicle in it, and it proves nothing about an engine.':
    'SIMULADO: al menos una orden de aquí usó herramientas simuladas. Nadie trabajó en un vehículo en ella, y no demuestra nada sobre un motor.',
  'REPLAYED: at least one job in this used readings from a recording. They prove nothing about an engine.':
    'REPRODUCIDO: al menos una orden de aquí usó lecturas de una grabación. No demuestran nada sobre un motor.',
  'SIMULATED: NO REAL TOOL MEASURED THIS. NOT A RECORD OF WORK ON A VEHICLE.':
    'SIMULADO: NINGUNA HERRAMIENTA REAL MIDIÓ ESTO. NO ES UN ACTA DE TRABAJO EN UN VEHÍCULO.',
  'REPLAYED: READ FROM A RECORDING. NOT A RECORD OF WORK ON A VEHICLE.':
    'REPRODUCIDO: LEÍDO DE UNA GRABACIÓN. NO ES UN ACTA DE TRABAJO EN UN VEHÍCULO.',
  '{0}: FIGURES PROVE NOTHING. NOT A RECORD OF WORK ON A VEHICLE.':
    '{0}: LOS VALORES NO DEMUESTRAN NADA. NO ES UN ACTA DE TRABAJO EN UN VEHÍCULO.',
  'values typed, not read from the instrument over a link: attested by a person':
    'valores introducidos a mano, no transmitidos por el instrumento: atestiguados por una persona',
  'values REPLAYED from a recording, not read from the instrument: they prove nothing':
    'valores REPRODUCIDOS de una grabación, no leídos del instrumento: no demuestran nada',
  'SIMULATED, there was no instrument: its values prove nothing':
    'SIMULADO, no hubo instrumento: sus valores no demuestran nada',
  '# torque|# torques': { one: '# par', other: '# pares' },
  '# gap|# gaps': { one: '# separación', other: '# separaciones' },
  '# turn|# turns': { one: '# giro', other: '# giros' },
  '# torque proven by a linked wrench|# torques proven by a linked wrench': {
    one: '# par demostrado, transmitido por la llave',
    other: '# pares demostrados, transmitidos por la llave',
  },
  '# gap proven by a linked gauge|# gaps proven by a linked gauge': {
    one: '# separación demostrada, transmitida por la galga',
    other: '# separaciones demostradas, transmitidas por la galga',
  },
  '# turn proven by a linked wrench|# turns proven by a linked wrench': {
    one: '# giro demostrado, transmitido por la llave',
    other: '# giros demostrados, transmitidos por la llave',
  },
  '# torque proven|# torques proven': { one: '# par demostrado', other: '# pares demostrados' },
  '# gap proven|# gaps proven': { one: '# separación demostrada', other: '# separaciones demostradas' },
  '# turn proven|# turns proven': { one: '# giro demostrado', other: '# giros demostrados' },
  '# torque attested|# torques attested': { one: '# par atestiguado', other: '# pares atestiguados' },
  '# gap attested|# gaps attested': { one: '# separación atestiguada', other: '# separaciones atestiguadas' },
  '# turn attested|# turns attested': { one: '# giro atestiguado', other: '# giros atestiguados' },
  '{0} typed by {1}, attested, not proven by an instrument':
    '{0}, por entrada manual de {1}: con testimonio, sin demostración por instrumento',
  '{0} REPLAYED, no proof': '{0}: REPRODUCIDO, sin prueba',
  '{0} SIMULATED, no proof': '{0}: SIMULADO, sin prueba',
  'a person': 'una persona',
  'the gaps were looked at, not measured': 'las separaciones se miraron, no se midieron',
  'the gaps were not checked, as the specification says':
    'las separaciones no se comprobaron, como dice la especificación',
  '{0} typed: attested by a person, NOT proven by an instrument.':
    '{0}, por entrada manual: testimonio de una persona, NO demostrado por un instrumento.',
  '{0}: {1} of {2} jobs; these prove nothing about any engine.':
    '{0}: {1} de {2} órdenes; estas no demuestran nada sobre ningún motor.',
  'Figures of {0} of {1} jobs were typed: attested by a person, NOT proven by an instrument.':
    'Valores de {0} de {1} órdenes se introdujeron a mano: atestiguados por una persona, NO demostrados por un instrumento.',
  'the windows were confirmed': 'se confirmaron los márgenes',
  '{0} was confirmed': '{0} se confirmó',
  'old plug read, cylinder {0}': 'bujía vieja revisada, cilindro {0}',
  'old plug read, cylinders {0}': 'bujía vieja revisada, cilindros {0}',
  'gap of the old plug of cylinder {0}, {1}': 'separación de la bujía vieja del cilindro {0}, {1}',
  'new plug checked, cylinder {0}': 'bujía nueva comprobada, cilindro {0}',
  'new plug checked, cylinders {0}': 'bujía nueva comprobada, cilindros {0}',
  'gap of cylinder {0}, {1}': 'separación del cilindro {0}, {1}',
  'gap of cylinder {0} looked at: good': 'separación del cilindro {0} mirada: buena',
  'gap of cylinder {0} looked at: not good': 'separación del cilindro {0} mirada: no buena',
  'plug for cylinder {0} discarded: {1}': 'bujía para el cilindro {0} desechada: {1}',
  'pull {0}, cylinder {1}, answered: {2}': 'tirón {0}, cilindro {1}, respuesta: {2}',
  'cylinder {0} fitted by angle': 'cilindro {0} montado por ángulo',
  'cylinder {0}, pull {1} left as it is': 'cilindro {0}, tirón {1} se deja como está',
  'the list before removal': 'la lista antes del desmontaje',
  'the list before fitting': 'la lista antes del montaje',
  'the list for afterwards': 'la lista para después',
  'confirm the windows': 'confirmar los márgenes',
  'confirm the list before removal': 'confirmar la lista antes del desmontaje',
  'read the old plug': 'revisar la bujía vieja',
  'check the new plug': 'comprobar la bujía nueva',
  'measure the gap of the plug': 'medir la separación de la bujía',
  'confirm the list before fitting': 'confirmar la lista antes del montaje',
  'confirm the list for afterwards': 'confirmar la lista para después',
  'before the windows were confirmed': 'antes de confirmar los márgenes',
  'before the list before removal was confirmed': 'antes de confirmar la lista previa al desmontaje',
  'before its old plug was read': 'antes de revisar su bujía vieja',
  'before its new plug was checked': 'antes de comprobar su bujía nueva',
  'before the gap of its plug was proven': 'antes de demostrar la separación de su bujía',
  'before the list before fitting was confirmed': 'antes de confirmar la lista previa al montaje',
  'after the list for afterwards was confirmed': 'después de confirmar la lista para después',
  'the windows are not confirmed': 'los márgenes no están confirmados',
  'the list before removal is not confirmed': 'la lista antes del desmontaje no está confirmada',
  'the old plugs are not read': 'las bujías viejas no están revisadas',
  'the new plugs are not checked': 'las bujías nuevas no están comprobadas',
  'the gap of this old plug was measured already': 'la separación de esta bujía vieja ya se midió',
  'the plug whose gap is open is in the engine': 'la bujía cuya separación está pendiente está en el motor',
  'a plug was pulled before its gap was measured': 'se apretó una bujía antes de medir su separación',
  'Back that plug out and press b. Then measure it.': 'Sacar esa bujía y pulsar b. Después medirla.',
  'no gap is due': 'no toca ninguna separación',
  'no spark plug has such a gap': 'ninguna bujía tiene una separación así',
  'First confirm the windows.': 'Primero confirmar los márgenes.',
  'First confirm the list before removal.': 'Primero confirmar la lista antes del desmontaje.',
  'First read the old plugs.': 'Primero revisar las bujías viejas.',
  'First check the new plugs.': 'Primero comprobar las bujías nuevas.',
  'Confirm how this plug looks, then measure the next.':
    'Confirmar el aspecto de esta bujía y medir la siguiente.',
  'Take the plug out and start it again.': 'Sacar la bujía y empezar de nuevo.',
  'Go on.': 'Continuar.',
  'Measure again, and check the unit.': 'Medir de nuevo y comprobar la unidad.',
  '{0}; done again since': '{0}; repetido desde entonces',
  'pull {0} on cylinder {1} came {2}': 'el tirón {0} en el cilindro {1} llegó {2}',
  'an old plug was loosened (pull {0}) and came {1}': 'se aflojó una bujía vieja (tirón {0}) {1}',
  'the old plug of cylinder {0} came {1}': 'la bujía vieja del cilindro {0} llegó {1}',
  'the plug of cylinder {0}, by angle, came {1}': 'la bujía del cilindro {0}, por ángulo, llegó {1}',
  'the gap of cylinder {0} came {1}': 'la separación del cilindro {0} llegó {1}',
  'OUT OF ORDER': 'FUERA DE ORDEN',
  '{0}: {1}.': '{0}: {1}.',
  '{0}: {1}, and {2} more.': '{0}: {1}, y {2} más.',
  'the angle did not come with every reading': 'el ángulo no llegó con cada lectura',
  'the angle jumped': 'el ángulo saltó',
  'the angle stood still': 'el ángulo se quedó parado',
  'the angle ran against the pull': 'el ángulo iba contra el tirón',
  'the angle ran by itself while the wrench was at rest': 'el ángulo se movía solo con la llave en reposo',
  'turn not measured: {0}': 'giro no medido: {0}',
  'turned {0}': 'girada {0}',
  '{0}: {1} to the snug point, {2} from there': '{0}: {1} hasta el contacto firme, {2} desde ahí',
  '{0} to {1}': '{0} a {1}',
  'turn not proven': 'giro no demostrado',
  'turn {0} ± {1}: {2}': 'giro {0} ± {1}: {2}',
  torque: 'par',
  length: 'longitud',
  angle: 'ángulo',
  energy: 'energía',
  stiffness: 'rigidez',
  'force or mass': 'fuerza o masa',
  'N·m, lbf·ft, lbf·in, kgf·m or kgf·cm': 'N·m, lbf·ft, lbf·in, kgf·m o kgf·cm',
  '25-30 N·m or 18 N·m ±10 %': '25-30 N·m o 18 N·m ±10 %',
  'mm, in or mil': 'mm, in o mil',
  '0.7-0.8 mm or 1.0 +0/-0.1 mm': '0.7-0.8 mm o 1.0 +0/-0.1 mm',
  '° or turn': '° o vuelta',
  '1/2-2/3 turn or 90°': '1/2-2/3 vuelta o 90°',
  '"{0}" is a single figure; a reading is compared with a range':
    '"{0}" es un valor único; una lectura se compara con un margen',
  'Add the tolerance that the source allows, for example {0}.':
    'Añadir la tolerancia que permite la fuente, por ejemplo {0}.',
  'expected one figure, not a range': 'se espera un solo valor, no un margen',
  'Give one figure in {0}.': 'Dar un valor en {0}.',
  'one deviation is in % and the other is not': 'una desviación está en % y la otra no',
  'Give both in % or both in the unit.': 'Dar ambas en % o ambas en la unidad.',
  'the range runs from {0} down to {1}': 'el margen va de {0} hacia abajo hasta {1}',
  'Give the lower figure first.': 'Dar primero el valor menor.',
  'both limits are {0}; no reading can be proven':
    'ambos límites son {0}; no se puede demostrar ninguna lectura',
  'Give the tolerance that the source allows.': 'Dar la tolerancia que permite la fuente.',
  '{0} is not above zero': '{0} no es mayor que cero',
  'Expected figures above zero, for example {0}.': 'Se esperan valores mayores que cero, por ejemplo {0}.',
  '"{0}" is far too large for a spark plug': '"{0}" es demasiado grande para una bujía',
  'Check the figure and its unit against the source.': 'Comprobar el valor y su unidad con la fuente.',
  '"{0}" can be read as a fraction or as a range': '"{0}" se puede leer como fracción o como margen',
  'Write a range with a dash, for example {0}.': 'Escribir un margen con guion, por ejemplo {0}.',
  '"{0}" can be read as a thousand or as a decimal': '"{0}" se puede leer como millar o como decimal',
  'Write thousands without a separator and decimals without needless zeros.':
    'Escribir los millares sin separador y los decimales sin ceros sobrantes.',
  'a figure has a minus sign': 'un valor lleva signo menos',
  '"{0} {1}" can be one figure in groups of three or two figures':
    '"{0} {1}" puede ser un número en grupos de tres o dos números',
  'Write thousands without a separator and ranges with a dash.':
    'Escribir los millares sin separador y los márgenes con guion.',
  '"{0}" is not a unit in which this {1} is printed':
    '"{0}" no es una unidad en la que se imprima esta magnitud ({1})',
  'Expected {0}.': 'Se espera: {0}.',
  '"{0}" is a unit of {1}, not of {2}': '"{0}" es una unidad de {1}, no de {2}',
  '"{0}" is the second unit in one range': '"{0}" es la segunda unidad en un margen',
  'Give the figures in one unit, the one that the source prints first.':
    'Dar los valores en una sola unidad, la que la fuente imprime primero.',
  'there is no unit': 'falta la unidad',
  'expected one {0} in one unit and nothing else': 'se espera: {0} en una sola unidad y nada más',
  'Write for example {0}.': 'Escribir por ejemplo {0}.',
  'character {0} of "{1}"': 'carácter {0} de "{1}"',
  'the text has {0} characters; a range has a few': 'el texto tiene {0} caracteres; un margen tiene pocos',
  'Give the range alone, for example 25-30 N·m.': 'Dar solo el margen, por ejemplo 25-30 N·m.',
  '"{0}" cannot be read here': '"{0}" no se puede leer aquí',
  'Give one range in one unit, for example 25-30 N·m.':
    'Dar un margen en una sola unidad, por ejemplo 25-30 N·m.',
  '"{0}" is not a known unit or word': '"{0}" no es una unidad ni una palabra conocida',
  'Write for example N·m, lbf·ft, lbf·in, kgf·m, mm, in, mil, ° or turn.':
    'Escribir por ejemplo N·m, lbf·ft, lbf·in, kgf·m, mm, in, mil, ° o vuelta.',
  '"{0}" has {1} digits; no publisher prints more than {2}':
    '"{0}" tiene {1} cifras; ningún editor imprime más de {2}',
  'Give the figure as printed in the source.': 'Dar el valor como está impreso en la fuente.',
  'Write thousands without a separator and decimals with a point.':
    'Escribir los millares sin separador y los decimales con punto.',
  '{0} cannot be for {1}: {2}': '{0} no puede ser para {1}: {2}',
  'Check figure and unit against the source.': 'Comprobar valor y unidad con la fuente.',
  '{0} on {1} is not usual: {2}': '{0} en {1} no es habitual: {2}',
  'Check figure and unit. If the source gives it, name who checked it in specification.checkedBy.':
    'Comprobar valor y unidad. Si la fuente lo da, indicar en specification.checkedBy quién lo comprobó.',
  'a solid thread of mild steel yields at {0} {1}': 'una rosca maciza de acero dulce cede a {0} {1}',
  'no general table has a figure for this thread and seat, and {0}':
    'ninguna tabla general tiene un valor para esta rosca y este asiento, y {0}',
  'general tables say {0} to {1} {2} ({3}, {4}), and {5}':
    'las tablas generales indican de {0} a {1} {2} ({3}, {4}), y {5}',
  'plug makers advise 1/16 of a turn on a conical seat and up to 2/3 on a new gasket':
    'los fabricantes de bujías aconsejan 1/16 de vuelta con asiento cónico y hasta 2/3 con junta nueva',
  'gaps of spark plugs lie between 0.4 and 1.6 mm (0.016 and 0.063 in)':
    'las separaciones de bujías van de 0.4 a 1.6 mm (0.016 a 0.063 in)',
  'plug makers let a ground electrode be bent by about {0} {1} in all':
    'los fabricantes de bujías permiten doblar un electrodo de masa unos {0} {1} en total',
  'wires are made to a few thousandths of a millimetre':
    'los alambres se fabrican a unas milésimas de milímetro',
  'shops reduce by 10 to 40 % for lubricated threads':
    'los talleres reducen de un 10 a un 40 % con rosca lubricada',
  'where makers print a tolerance on the torque of a plug it is 5 to 15 %':
    'donde los fabricantes imprimen una tolerancia para el par de una bujía, es del 5 al 15 %',
  'threads of spark plugs are 9 to 29 mm long': 'las roscas de bujías tienen de 9 a 29 mm de largo',
  'the hexagon of a plug with this thread is between {0} and {1} mm wide':
    'el hexágono de una bujía con esta rosca mide entre {0} y {1} mm',
  'the specification has no gap': 'la especificación no tiene separación',
  'Give the gap as printed, for example 0.7-0.8 mm, or set gapRules.check so that it is not measured.':
    'Dar la separación como está impresa, por ejemplo 0.7-0.8 mm, o poner gapRules.check para que no se mida.',
  'the service limit of {0} {1} lies below the gap of a new plug':
    'el límite de servicio de {0} {1} está por debajo de la separación de una bujía nueva',
  'Give the widest gap at which a used plug may go on.':
    'Dar la mayor separación con la que una bujía usada puede seguir.',
  'the gap is checked by wire, but no wires are given':
    'la separación se comprueba con alambre, pero no se indican alambres',
  'Give the wires, for example {"go": "0.72 mm", "noGo": "0.78 mm", "within": "0.003 mm"}.':
    'Indicar los alambres, por ejemplo {"go": "0.72 mm", "noGo": "0.78 mm", "within": "0.003 mm"}.',
  'the go wire is not thinner than the no-go wire':
    'el alambre que debe pasar no es más fino que el que no debe pasar',
  'Give the thinner wire as go.': 'Indicar el alambre más fino como go.',
  'expected an adapter that leaves a lever between hand and plug':
    'se espera un adaptador que deje una palanca entre mano y bujía',
  'Use a straight extension, or state how far the torque may be off by it, and who measured that.':
    'Utilizar una extensión recta, o indicar cuánto puede desviarse el par por ella y quién lo midió.',
  'nobody can compute what torque a wobble extension passes on when it is bent':
    'nadie puede calcular qué par transmite una extensión basculante cuando está inclinada',
  'a universal joint bent by {0}° passes torque on too unevenly; {1}° is the most':
    'una junta cardán inclinada {0}° transmite el par de forma demasiado irregular; {1}° como máximo',
  'not every cylinder has exactly one part; named are {0}':
    'no cada cilindro tiene exactamente una pieza; se nombran {0}',
  '{0} is neither the part of the order nor one of the others':
    '{0} no es ni la pieza de la orden ni una de las otras',
  'Name every cylinder once, with "part" or one of "alsoParts".':
    'Nombrar cada cilindro una vez, con "part" o uno de "alsoParts".',
  'there is no torque. Give it as printed; where the source prints an angle alone, give that angle in its place':
    'falta el par. Darlo como está impreso; si la fuente imprime solo un ángulo, dar ese ángulo en su lugar',
  'expected km or months': 'se esperan km o meses',
  'the figure is already for {0}; a reduction for {1} would count twice':
    'el valor ya es para {0}; una reducción para {1} contaría dos veces',
  'Remove the reduction, or give the figure for dry threads.':
    'Quitar la reducción, o dar el valor para rosca seca.',
  'a turn without a tolerance cannot be judged': 'un giro sin tolerancia no se puede juzgar',
  'Give two limits, such as 180-240°.': 'Dar dos límites, como 180-240°.',
  'the order names an angle in place of a torque, and this belongs to a torque':
    'la orden indica un ángulo en lugar de un par, y esto corresponde a un par',
  'Remove it, or give the torque of the source in specification.torque.':
    'Quitarlo, o dar el par de la fuente en specification.torque.',
  "{0} Or give the shop's own rule for single figures: singleFigure.":
    '{0} O dar la regla propia del taller para valores únicos: singleFigure.',
  'Compare it with the certificate.': 'Compararlo con el certificado.',
  'Ask the laboratory about this certificate.': 'Preguntar al laboratorio por este certificado.',
  'certificate {0}: {1}': 'certificado {0}: {1}',
  'tool {0}: permissibleDeviation': 'herramienta {0}: permissibleDeviation',
  'the permissible deviation is missing': 'falta la desviación admisible',
  'Give its certificate, or the limits of its class or data sheet.':
    'Dar su certificado, o los límites de su clase o ficha técnica.',
  'tool {0}: serial': 'herramienta {0}: serial',
  'certificate {0} is for serial number {1}; this tool has none':
    'el certificado {0} es para el número de serie {1}; esta herramienta no tiene',
  'Give the serial number on the tool.': 'Dar el número de serie de la herramienta.',
  'it is for serial number {0}, but tool {1} is {2}':
    'es para el número de serie {0}, pero la herramienta {1} tiene {2}',
  'Use the certificate of this tool.': 'Utilizar el certificado de esta herramienta.',
  'it is dated {0}, after the day of the job, {1}': 'lleva fecha {0}, posterior al día de la orden, {1}',
  'Check the date of the certificate and the clock of this computer.':
    'Comprobar la fecha del certificado y el reloj de este ordenador.',
  'it is due on {0}, before its own date, {1}': 'vence el {0}, antes de su propia fecha, {1}',
  'Give the last day on which the certificate holds.': 'Dar el último día de validez del certificado.',
  'its points are in {0}; tool {1} measures in {2}':
    'sus puntos están en {0}; la herramienta {1} mide en {2}',
  'it was out of tolerance on {0} ({1}): {2} and cannot be used':
    'estaba fuera de tolerancia el {0} ({1}): {2} y no se puede usar',
  'Have it adjusted and calibrated, and give the certificate of that day or later.':
    'Hacerlo ajustar y calibrar, y dar el certificado de ese día o posterior.',
  'its calibration expired on {0}': 'su calibración venció el {0}',
  'Have it calibrated.': 'Hacerlo calibrar.',
  'it has done {0} cycles since its calibration; {1} are allowed':
    'ha hecho {0} ciclos desde su calibración; se permiten {1}',
  'it may be used {0}; this job asks for {1}': 'se puede usar {0}; esta orden pide {1}',
  'Use one of another size.': 'Utilizar uno de otro tamaño.',
  'it is calibrated {0}; this job asks for {1}': 'está calibrado {0}; esta orden pide {1}',
  'Use one that is calibrated there, or have more points calibrated.':
    'Utilizar uno calibrado ahí, o hacer calibrar más puntos.',
  'off by {0}{1} {2} at {3} {4}': 'desviación de {0}{1} {2} a {3} {4}',
  'from {0} to {1} {2}': 'de {0} a {1} {2}',
  '{0} to {1} {2}': '{0} a {1} {2}',
  'Look at the screen and choose again.': 'Mirar la pantalla y elegir de nuevo.',
  'expected for example "in-line 4", "V8", "flat 6", or the banks, "1 3 5 7 / 2 4 6 8"':
    'se espera por ejemplo "en línea 4", "V8", "bóxer 6", o las bancadas, "1 3 5 7 / 2 4 6 8"',
  'expected {0} to {1} cylinders': 'se esperan de {0} a {1} cilindros',
  '"{0}" is no cylinder number': '"{0}" no es un número de cilindro',
  'expected cylinder numbers, such as 1 3 4 2': 'se esperan números de cilindro, como 1 3 4 2',
  'expected a name, without spaces at its ends': 'se espera un nombre, sin espacios en sus extremos',
  'the source is dated {0}, after the day of the job, {1}':
    'la fuente lleva fecha {0}, posterior al día de la orden, {1}',
  'Check the date of the source and the clock of this computer.':
    'Comprobar la fecha de la fuente y el reloj de este ordenador.',
  'tool {0}': 'herramienta {0}',
  'tool {0}, first step': 'herramienta {0}, primera etapa',
  'a plug that fits these wires lies between {0} and {1} {2}, which is not within {3} less the guard band':
    'una bujía que encaja con estos alambres está entre {0} y {1} {2}, lo que no queda dentro de {3} menos la banda de guarda',
  'Take wires between {0} and {1} {2}.': 'Tomar alambres entre {0} y {1} {2}.',
  'tool {0}: {1}': 'herramienta {0}: {1}',
  'the station has no torque wrench': 'el puesto no tiene llave dinamométrica',
  'the station has no gap gauge': 'el puesto no tiene galga de separación',
  'Add a tool with "quantity": "{0}" to the station file.':
    'Añadir al archivo del puesto una herramienta con "quantity": "{0}".',
  'expected 1 to 40 letters, digits, dots, hyphens or underscores, the first a letter or digit':
    'se esperan de 1 a 40 letras, cifras, puntos, guiones o guiones bajos, primero una letra o cifra',
  'the job does not start with its opening': 'la orden no empieza con su apertura',
  'these rules know no {0}': 'estas reglas no conocen {0}',
  'it could not have been opened so': 'no se habría podido abrir así',
  'its windows are not what the order and the instruments give':
    'sus márgenes no son los que dan la orden y los instrumentos',
  '{0}, but the readings give nothing here': '{0}, pero las lecturas no dan nada aquí',
  '{0} is not what the readings give': '{0} no es lo que dan las lecturas',
  '{0} is missing here': 'falta {0} aquí',
  'the readings in {0} do not follow the last ones': 'las lecturas en {0} no siguen a las últimas',
  'the source in {0} does not fit the kind of its link':
    'el origen en {0} no encaja con el tipo de su enlace',
  '{0} cannot have come from a tool': '{0} no puede haber venido de una herramienta',
  '{0} would have been refused here': '{0} se habría rechazado aquí',
  '{0} is not what the job writes here': '{0} no es lo que la orden escribe aquí',
  'the close of the job does not follow from its events': 'el cierre de la orden no se sigue de sus eventos',
  'event {0}': 'evento {0}',
  'Do not rely on this record; keep it and ask the station for its log.':
    'No fiarse de esta acta; guardarla y pedir al puesto su registro.',
  'The job is closed.': 'La orden está cerrada.',
  'This engine has no cylinder {0}.': 'Este motor no tiene cilindro {0}.',
  'A pull is under way.': 'Hay un tirón en curso.',
  '{0} is at work already.': '{0} ya está trabajando.',
  '{0} works on this job already.': '{0} ya trabaja en esta orden.',
  'A pull is under way. It belongs to the cylinder that was due.':
    'Hay un tirón en curso. Pertenece al cilindro que tocaba.',
  'There is no pull {0}.': 'No hay ningún tirón {0}.',
  'This job does not check the gap by eye.': 'Esta orden no comprueba la separación a ojo.',
  'This job does not check the gap by wire.': 'Esta orden no comprueba la separación con alambre.',
  'Answer the open question first.': 'Responder primero la pregunta abierta.',
  'The windows are already confirmed.': 'Los márgenes ya están confirmados.',
  'No trial click is due.': 'No toca ningún clic de prueba.',
  'This job does not record old plugs.': 'Esta orden no registra bujías viejas.',
  'Too early. First {0}.': 'Demasiado pronto. Primero {0}.',
  'read the old plugs': 'revisar las bujías viejas',
  'check the new plugs': 'comprobar las bujías nuevas',
  'measure the gaps': 'medir las separaciones',
  'Cylinder {0} is proven by its turn.': 'El cilindro {0} está demostrado por su giro.',
  'Cylinder {0} is proven by torque.': 'El cilindro {0} está demostrado por el par.',
  'The plug of cylinder {0} is in the engine. Take it out and start it again.':
    'La bujía del cilindro {0} está en el motor. Sacarla y empezar de nuevo.',
  'No gap that came too early can be kept now.':
    'Ahora no se puede conservar ninguna separación medida antes de tiempo.',
  'The gap for cylinder {0} is done already.': 'La separación del cilindro {0} ya está hecha.',
  'No question about a pull over the window, or too early, is open for pull {0}.':
    'No hay ninguna pregunta abierta sobre un tirón por encima del margen, o demasiado pronto, para el tirón {0}.',
  'This plug was taken out since. It can no longer be left as it was.':
    'Esta bujía se sacó desde entonces. Ya no se puede dejar como estaba.',
  'The gap of this plug is not proven. Take the plug out and measure it.':
    'La separación de esta bujía no está demostrada. Sacar la bujía y medirla.',
  'This torque is not OK. Take the plug out and do it again.': 'Este par no es OK. Sacar la bujía y repetir.',
  'Only the final torque can be left as it is.': 'Solo el par final se puede dejar como está.',
  'This job has no such list.': 'Esta orden no tiene esa lista.',
  'This list comes last. First tighten every plug.':
    'Esta lista va al final. Primero apretar todas las bujías.',
  'Answer this item too: "{0}".': 'Responder también este punto: "{0}".',
  '"{0}" is not on this list.': '"{0}" no está en esta lista.',
  'The answers to "{0}" are: {1}.': 'Las respuestas a "{0}" son: {1}.',
  'Give the reason why this is not done: "{0}".': 'Dar el motivo por el que esto no está hecho: "{0}".',
  'An item is answered twice.': 'Un punto está respondido dos veces.',
  'This job does not check new plugs.': 'Esta orden no comprueba bujías nuevas.',
  ' or ': ' o ',
  'Cylinder {0} takes {1}, not {2}: this engine has two different plugs.':
    'El cilindro {0} lleva {1}, no {2}: este motor tiene dos bujías distintas.',
  'The specification allows {0} in this engine, not {1}.':
    'La especificación permite {0} en este motor, no {1}.',
  '{0} declared this job void already.': '{0} ya declaró anulada esta orden.',
  'No question is open about pull {0}.': 'No hay ninguna pregunta abierta sobre el tirón {0}.',
  '"{0}" does not answer this question.': '"{0}" no responde a esta pregunta.',
  'No pull of cylinder {0} can belong to the next plug.':
    'Ningún tirón del cilindro {0} puede pertenecer a la bujía siguiente.',
  'the job was opened under {0}; this program works under {1}':
    'la orden se abrió con {0}; este programa trabaja con {1}',
  'Finish it with the version of the program that opened it, or declare it void and open it anew.':
    'Terminarla con la versión del programa que la abrió, o declararla anulada y abrirla de nuevo.',
  'The engine is cold, or has cooled as long as its maker asks':
    'El motor está frío, o se ha enfriado el tiempo que pide su fabricante',
  'Ignition off, key away': 'Encendido apagado, llave de contacto retirada',
  'Boots or coils twisted loose by half a turn, pulled at the boot, never by the wire, and marked':
    'Capuchones o bobinas soltados con media vuelta, tirando del capuchón, nunca del cable, y marcados',
  'Plug wells blown clean with dry air, goggles on, before turning the first plug':
    'Pozos de bujía soplados con aire seco, con gafas de protección, antes de girar la primera bujía',
  'Hand tools only; no power tool touches a plug':
    'Solo herramientas manuales; ninguna herramienta a motor toca una bujía',
  'Threads and seats clean, in the head and on the plugs':
    'Roscas y asientos limpios, en la culata y en las bujías',
  'Threads in the head chased': 'Roscas de la culata repasadas con macho',
  'not needed': 'no hizo falta',
  'with grease on the tap, piston and valves clear': 'con grasa en el macho, pistón y válvulas libres',
  'Nothing on the threads but what the specification says':
    'Nada en la rosca salvo lo que dice la especificación',
  'Each plug started by hand, deep ones with a piece of hose, and turned in to its seat by hand':
    'Cada bujía empezada a mano, las hondas con un trozo de manguera, y enroscada a mano hasta su asiento',
  'Compound in the boots: thin, inside only, none on threads or terminals':
    'Pasta en los capuchones: fina, solo por dentro, nada en rosca ni terminal',
  none: 'nada',
  'as the maker allows': 'como permite el fabricante',
  'Boots or coils pushed on until they seat, each on its own cylinder, wires in their places':
    'Capuchones o bobinas encajados a fondo, cada uno en su cilindro, cables en su sitio',
  'Engine run': 'Motor en marcha',
  'runs without misfire': 'funciona sin fallos de encendido',
  misfires: 'tiene fallos de encendido',
  'not run': 'no se puso en marcha',
  'Old plugs': 'Bujías viejas',
  'kept in cylinder order': 'guardadas en orden de cilindros',
  'given to the customer': 'entregadas al cliente',
  scrapped: 'desechadas',
  'There is nothing of that number to take back.': 'No hay nada con ese número que retirar.',
  'That was taken back already.': 'Eso ya se retiró.',
  'Give the reason why it is taken back.': 'Dar el motivo por el que se retira.',
  'Work went on since. Correct pull {0} with c: it was on another cylinder, or its plug starts again.':
    'El trabajo siguió desde entonces. Corregir el tirón {0} con c: fue en otro cilindro, o su bujía empieza de nuevo.',
  'The new plug for cylinder {0} was checked, measured or pulled since. Take that back first; after a pull it stays.':
    'La bujía nueva del cilindro {0} se comprobó, midió o apretó desde entonces. Retirar eso primero; tras un tirón se queda.',
  'the VIN has {0} characters; expected {1}': 'el bastidor (VIN) tiene {0} caracteres; se esperan {1}',
  'the check digit of the VIN is {0}; expected {1}': 'el dígito de control del VIN es {0}; se espera {1}',
  'the check digit of the VIN is {0}; expected {1}, though not every market uses it':
    'el dígito de control del VIN es {0}; se espera {1}, aunque no todos los mercados lo usan',
  '0 or 9': '0 o 9',
  'the VIN holds a character that is neither a letter A to Z nor a digit':
    'el VIN contiene un carácter que no es ni letra A a Z ni cifra',
  'the VIN holds the letter {0}, which none has; it may be {1}':
    'el VIN contiene la letra {0}, que ninguno tiene; puede ser {1}',
  'Compare it with the vehicle, character by character.':
    'Compararlo con el vehículo, carácter por carácter.',
  specification: 'especificación',
  '{0} on {1}; {2}: {3}': '{0} para {1}; {2}: {3}',
  'plug and head': 'bujía y culata',
  'shop rule': 'regla taller',
  "single figure, plus/minus {0} %: the shop's own, not the maker's; set by {1}, basis: {2}":
    'valor único, más/menos {0} %: propio del taller, no del fabricante; fijado por {1}, base: {2}',
  reduced: 'reducido',
  'by {0} % for {1}, set by {2}': 'un {0} % para {1}, fijado por {2}',
  turn: 'giro',
  'advised turn': 'giro aconsejado',
  wrench: 'llave',
  geometry: 'geometría',
  'straight on the plug': 'recto sobre la bujía',
  joint: 'articulación',
  '{0} from contact ({1}); judged': '{0} desde el contacto ({1}); se juzga',
  '{0} from contact ({1}); not judged': '{0} desde el contacto ({1}); no se juzga',
  '{0}, serial {1}': '{0}, n.º de serie {1}',
  'adapter of {0} at {1} on a wrench of {2}': 'adaptador de {0} a {1} en una llave de {2}',
  'universal joint': 'junta cardán',
  'wobble extension': 'extensión basculante',
  '{0}, bent by up to {1}': '{0}, con inclinación de hasta {1}',
  '{0}; within {1} % by {2}': '{0}; dentro de un {1} % según {2}',
  'certificate {0}, {1}, {2}': 'certificado {0}, {1}, {2}',
  'this tool cannot prove any reading between {0} and {1}: its uncertainty (U = {2}) leaves no room in the window':
    'esta herramienta no puede demostrar ninguna lectura entre {0} y {1}: su incertidumbre (U = {2}) no deja sitio en el margen',
  'Use an instrument with an expanded uncertainty below {0}.':
    'Utilizar un instrumento con incertidumbre expandida inferior a {0}.',
  'threads dry': 'rosca seca',
  'threads lightly oiled': 'rosca poco aceitada',
  'threads not stated': 'rosca no indicada',
  '1/16 turn': '1/16 vuelta',
  '1/12 turn': '1/12 vuelta',
  '1/2 turn': '1/2 vuelta',
  '1/2-2/3 turn': '1/2-2/3 vuelta',
  'expected an expanded uncertainty': 'se espera una incertidumbre expandida',
  'expected an uncertainty above zero': 'se espera una incertidumbre mayor que cero',
  'expected a coverage factor of 1 or more': 'se espera un factor de cobertura de 1 o más',
  'expected "N.m" or "mm"; convert other figures first, 1 lbf·ft = 1.355818 N·m':
    'se espera "N.m" o "mm"; convertir antes otros valores, 1 lbf·ft = 1.355818 N·m',
  'expected at least two points': 'se esperan al menos dos puntos',
  'the reading {0} appears twice': 'la lectura {0} aparece dos veces',
  'expected one of {0}': 'se espera uno de {0}',
  'it is nested too deeply': 'está anidado a demasiada profundidad',
  'not a calibration certificate that can be read: {0}': 'no es un certificado de calibración legible: {0}',
  'Ask the laboratory for a DCC with such points, or type the points into the JSON form.':
    'Pedir al laboratorio un DCC con esos puntos, o introducir los puntos en la forma JSON.',
  'it is far too large': 'es demasiado grande',
  'it declares a document type, which no DCC does': 'declara un tipo de documento, cosa que ningún DCC hace',
  'its root is not digitalCalibrationCertificate': 'su raíz no es digitalCalibrationCertificate',
  'name of the laboratory': 'nombre del laboratorio',
  'serial number of the item': 'número de serie del objeto',
  'it is for 0 items; expected one instrument': 'es para 0 objetos; se espera un instrumento',
  'it is for {0} instruments, with the serial numbers {1}; give the tool that it is for one of them':
    'es para {0} instrumentos, con los números de serie {1}; dar uno de ellos a la herramienta correspondiente',
  'its points are for turning counter-clockwise; a spark plug is tightened clockwise':
    'sus puntos son para giro antihorario; una bujía se aprieta en sentido horario',
  'its points are {0}, not newton metres or millimetres':
    'sus puntos son {0}, no newton metros ni milímetros',
  'no result holds readings (basic_measuredValue) with errors or reference values':
    'ningún resultado contiene lecturas (basic_measuredValue) con errores o valores de referencia',
  'its points carry no expanded uncertainty': 'sus puntos no llevan incertidumbre expandida',
  'its lists differ in length': 'sus listas tienen distinta longitud',
  'readings and reference values do not go together': 'lecturas y valores de referencia no van juntos',
  '{0} is missing': 'falta: {0}',
  'one list holds several units': 'una lista contiene varias unidades',
  'a list of "{0}" holds something that is no number': 'una lista de "{0}" contiene algo que no es un número',
  kelvins: 'kelvin',
  'degrees Celsius': 'grados Celsius',
  ohms: 'ohmios',
  volts: 'voltios',
  'newtons, a force': 'newtons, una fuerza',
  pascals: 'pascales',
  hectopascals: 'hectopascales',
  kilograms: 'kilogramos',
  grams: 'gramos',
  'cubic centimetres': 'centímetros cúbicos',
  joules: 'julios',
  'figures without a unit': 'números sin unidad',
  'per cent': 'por ciento',
  'in the unit {0}': 'en la unidad {0}',
  'expected the number of an impact assessment, like IA-1':
    'se espera el número de una evaluación de impacto, como IA-1',
  'expected a short name in small letters, digits and hyphens':
    'se espera un nombre corto en minúsculas, cifras y guiones',
  'expected the lower end first': 'se espera primero el extremo inferior',
  'all readings are the same: a spread of zero is the step of the display, not the repeatability':
    'todas las lecturas son iguales: una dispersión nula es el paso del indicador, no la repetibilidad',
  'expected small letters, digits and hyphens, at most 40, a letter first':
    'se esperan minúsculas, cifras y guiones, 40 como máximo, primero una letra',
  '"{0}" is an answer to every item; expected another name':
    '"{0}" es una respuesta a todo punto; se espera otro nombre',
  '"{0}" is there twice': '"{0}" aparece dos veces',
  '"{0}" is not one of the choices': '"{0}" no es una de las opciones',
  'it sends bytes that its profile does not describe': 'envía bytes que su perfil no describe',
  'by its profile it reads figures that no tool can have':
    'según su perfil lee valores que ninguna herramienta puede dar',
};
