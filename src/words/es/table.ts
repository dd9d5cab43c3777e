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
  'plug backed out, thread inspected, to be fitted again':
    'bujía aflojada, rosca revisada, se vuelve a montar',
  'plug backed out, thread inspected, to be fitted again with a new plug':
    'bujía aflojada, rosca revisada, se monta una bujía nueva',
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
  'A plug was loosened ({0}). Was it {1}?': 'Se aflojó una bujía ({0}). ¿Era {1}?',
  'The readings broke off in the middle of a pull on {0}. The torque that it reached is unknown.':
    'Las lecturas se cortaron en mitad de un tirón ({0}). Se desconoce el par alcanzado.',
  'STOP: {0}: {1}. The plug may have had far more. Back it out and look at its threads.':
    'ALTO: {0}: {1}. La bujía pudo recibir mucho más. Sacarla y revisar su rosca.',
  'STOP: {0} is due, but this plug was tight already ({1}). Was it another one, or was a cylinder left out?':
    'ALTO: toca {0}, pero esta bujía ya estaba apretada ({1}). ¿Era otra, o se omitió un cilindro?',
  'STOP: {0} had stopped short, but this looks like another plug ({1}). Was it {2}?':
    'ALTO: {0} se había quedado corto, pero esto parece otra bujía ({1}). ¿Era {2}?',
  'No click was seen on {0} ({1}). Did the wrench click?':
    'No se vio ningún clic: {0} ({1}). ¿Hizo clic la llave?',
  'STOP: a plug still turned, but every cylinder is done ({0}). Was it {1}?':
    'ALTO: una bujía aún giró, pero todos los cilindros están hechos ({0}). ¿Era {1}?',
  'Was that {0}? ({1}.)': '¿Era {0}? ({1}.)',
  'STOP: {0} was pulled too early: it proves nothing. First {1}. Back the plug out and do it again.':
    'ALTO: {0} se apretó demasiado pronto: no demuestra nada. Primero {1}. Sacar la bujía y repetir.',
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
    'SIMULADO: herramientas de esta orden eran simuladas. No se trabajó en ningún vehículo, y no demuestra nada sobre ningún motor.',
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
    '{0}, entrada a mano: {1}, con testimonio, sin demostración por instrumento',
  '{0} REPLAYED, no proof': '{0} REPRODUCIDO, sin prueba',
  '{0} SIMULATED, no proof': '{0} SIMULADO, sin prueba',
  'a person': 'una persona',
  'the gaps were looked at, not measured': 'las separaciones se miraron, no se midieron',
  'the gaps were not checked, as the specification says':
    'las separaciones no se comprobaron, como dice la especificación',
  '{0} typed: attested by a person, NOT proven by an instrument.':
    '{0}, entrada a mano: testimonio de una persona, NO demostrado por un instrumento.',
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
};
