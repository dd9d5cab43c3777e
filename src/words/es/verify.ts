/** Spanish for what verification finds. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  'two keys follow the same one, and a key names only one that takes its place':
    'dos claves siguen a la misma, y una clave solo nombra una que ocupa su lugar',
  'it is missing': 'falta',
  'Your policy does not name this log, {0}.': 'Su política no nombra este registro, {0}.',
  'No key of this log that your policy names signed the checkpoint inside.':
    'Ninguna clave de este registro que nombre su política firmó el punto de control que contiene.',
  'The note of the witnesses that came with it is no checkpoint.':
    'La nota de los testigos que lo acompaña no es un punto de control.',
  'The note of the witnesses that came with it is not of this log.':
    'La nota de los testigos que lo acompaña no es de este registro.',
  'The note of the witnesses that came with it does not show that they saw the log of this record.':
    'La nota de los testigos que lo acompaña no muestra que vieran el registro de esta acta.',
  'Your policy names {0} as a witness, and its key is one of the station itself: nobody is his own witness.':
    'Su política nombra a {0} como testigo, y su clave es del propio puesto: nadie es testigo de sí mismo.',
  'A cosignature of a witness that your policy names does not hold: the note was changed.':
    'La cofirma de un testigo que nombra su política no es válida: la nota se modificó.',
  '{0}, and your policy asks for more.': '{0}, y su política pide más.',
  'Your policy asks for no witness.': 'Su política no pide ningún testigo.',
  '{0}: nobody can rewrite the first {1} entries of the log without them.':
    '{0}: nadie puede reescribir sin ellos las primeras {1} entradas del registro.',
  'Cosigned by 0 of {0}': 'Cofirmado por 0 de {0}',
  'Cosigned by {0} of {1} on {2} ({3})': 'Cofirmado por {0} de {1} el {2} ({3})',
  'TWO HISTORIES: the station signed two different logs of {0} entries, and witnesses saw the other one.':
    'DOS HISTORIALES: el puesto firmó dos registros distintos de {0} entradas, y los testigos vieron el otro.',
  'entry {0} belongs to {1}, not to {2}': 'la entrada {0} pertenece a {1}, no a {2}',
  'entry n={0} stands where n={1} is due': 'la entrada n={0} está donde debe estar n={1}',
  'entry {0} stands after entry {1}': 'la entrada {0} está detrás de la entrada {1}',
  'the monotonic clock runs back at entry n={0}': 'el reloj monótono retrocede en la entrada n={0}',
  'entry n={0} holds a sample from after it was written':
    'la entrada n={0} contiene una lectura posterior a su escritura',
  'Instruments and specification are what the log says. A newer version of the program made summary and uncertainty budgets: they were not worked out again.':
    'Los instrumentos y la especificación son los del registro. Una versión más nueva del programa elaboró el resumen y los balances de incertidumbre: no se volvieron a calcular.',
  'Summary, uncertainty budgets, instruments and specification are what the entries and the log say.':
    'El resumen, los balances de incertidumbre, los instrumentos y la especificación son lo que dicen las entradas y el registro.',
  'Not looked at: a newer version of the program decides what is complete.':
    'No examinado: una versión más nueva del programa decide qué está completo.',
  'Not looked at: there is no job to look at.': 'No examinado: no hay ninguna orden que examinar.',
  'Not looked at: the job cannot be played back here.': 'No examinado: la orden no se puede reproducir aquí.',
  'OUT OF ORDER: work was done before a step that comes first. See the exceptions.':
    'FUERA DE ORDEN: se trabajó antes de un paso que va primero. Ver las excepciones.',
  'OUT OF ORDER: work on cylinder {0} was done before a step that comes first. See the exceptions.':
    'FUERA DE ORDEN: en el cilindro {0} se trabajó antes de un paso que va primero. Ver las excepciones.',
  'Each step came in its turn, as the shop has set it.':
    'Cada paso llegó en su turno, como lo fijó el taller.',
  'Each step that counts came in its turn. What had come too early was done again.':
    'Cada paso que cuenta llegó en su turno. Lo que llegó demasiado pronto se repitió.',
  'It has left {0} of {1} steps free: those may have come at any time.':
    'Dejó libres {0} de {1} pasos: esos pudieron llegar en cualquier momento.',
  'The gap of cylinder {0} was kept by name and is NOT proven.':
    'La separación del cilindro {0} se dejó así bajo un nombre y NO está demostrada.',
  '{0} on all {1} cylinders; the job is closed.': '{0} en los {1} cilindros; la orden está cerrada.',
  'cylinder {0} accepted by {1} ({2})': 'cilindro {0} aceptado por {1} ({2})',
  'cylinder {0} accepted by nobody': 'cilindro {0} no aceptado por nadie',
  '{0} on {1} of {2} cylinders; NOT proven by turn: {3}. The job is closed.':
    '{0} en {1} de {2} cilindros; NO demostrado por giro: {3}. La orden está cerrada.',
  '{0} on {1} of {2} cylinders; NOT proven by torque: {3}. The job is closed.':
    '{0} en {1} de {2} cilindros; NO demostrado por par: {3}. La orden está cerrada.',
  'Gap and torque are OK': 'Separación y par están OK',
  'Torque is OK (no gap was measured)': 'El par está OK (no se midió ninguna separación)',
  'Gap and turn are OK': 'Separación y giro están OK',
  'Turn is OK (no gap was measured)': 'El giro está OK (no se midió ninguna separación)',
  'The job was not opened exactly once.': 'La orden no se abrió exactamente una vez.',
  'The entries are not those of job {0}.': 'Las entradas no son las de la orden {0}.',
  'The job names rules that no version of the program has.':
    'La orden nombra reglas que no tiene ninguna versión del programa.',
  'The entries cannot be played back: {0}.': 'Las entradas no se pueden reproducir: {0}.',
  'The summary is not what the entries say.': 'El resumen no es lo que dicen las entradas.',
  'The uncertainty budgets are not what the instruments give.':
    'Los balances de incertidumbre no son lo que dan los instrumentos.',
  'The job was closed as complete. {0}': 'La orden se cerró como completa. {0}',
  'The job was declared VOID by {0}: {1}.': 'La orden fue ANULADA por {0}: {1}.',
  'The job was declared VOID.': 'La orden fue ANULADA.',
  'Not all of the job is done.': 'No está hecho todo en la orden.',
  'Cylinder {0} counts as done, but no OK figure stands for it.':
    'El cilindro {0} cuenta como hecho, pero ningún valor OK lo respalda.',
  'The job was not closed.': 'La orden no se cerró.',
  'The job was closed incomplete.': 'La orden se cerró incompleta.',
  'The entries do not begin with the opening of a job.':
    'Las entradas no empiezan con la apertura de una orden.',
  'The job was opened on {0}, but its certificates were looked at as on {1}.':
    'La orden se abrió el {0}, pero sus certificados se miraron con fecha de {1}.',
  "The instrument {0} is not as the station's log has it.":
    'El instrumento {0} no es como consta en el registro del puesto.',
  "The specification of the order is not as the station's log has it.":
    'La especificación de la orden no es como consta en el registro del puesto.',
  'Entry n={0} ({1}) is not by whom such an entry is.':
    'La entrada n={0} ({1}) no es de quien es una entrada así.',
  "Entry n={0}: the tool that joined as {1} does not measure what the order's instrument does.":
    'Entrada n={0}: la herramienta conectada como {1} no mide lo que mide el instrumento de la orden.',
  'Entry n={0}: the tool that joined as {1} has another serial number than the instrument.':
    'Entrada n={0}: la herramienta conectada como {1} tiene otro número de serie que el instrumento.',
  "The job's entries are not whole: {0}.": 'Las entradas de la orden no están íntegras: {0}.',
  'The checkpoint inside does not have the form of one.':
    'El punto de control que contiene no tiene la forma de uno.',
  'The checkpoint is of another log, {0}.': 'El punto de control es de otro registro, {0}.',
  'The checkpoint is not signed by the key of the station that signed the record.':
    'El punto de control no está firmado con la clave del puesto que firmó el acta.',
  'The entries are not in the log that the checkpoint signs.':
    'Las entradas no están en el registro que firma el punto de control.',
  'THE LOG LOST ENTRIES. The station states that it had {0} entries once and went on without some of them. What is in this record is in its signed log of {1} entries.':
    'EL REGISTRO PERDIÓ ENTRADAS. El puesto declara que tuvo {0} entradas y que siguió sin algunas de ellas. Lo que contiene esta acta está en su registro firmado de {1} entradas.',
  '{0} entries without a gap, all in the signed log of {1} entries (root {2}).':
    '{0} entradas sin hueco, todas en el registro firmado de {1} entradas (raíz {2}).',
  'It was judged by edition {0} of the rules; new jobs are judged by edition {1}.':
    'Se juzgó según la edición {0} de las reglas; las órdenes nuevas se juzgan según la edición {1}.',
  'It was not: a newer version of the program judged the job. Verify it with that version as well.':
    'No se hizo: una versión más nueva del programa juzgó la orden. Verificarla también con esa versión.',
  'The samples give the same {0} pulls again, each with the same verdict.':
    'Las lecturas dan otra vez los mismos {0} tirones, cada uno con el mismo resultado.',
  'The job cannot be judged again: {0}.': 'La orden no se puede juzgar de nuevo: {0}.',
  'event {0}: {1}.': 'suceso {0}: {1}.',
  'its key does not carry the name that its header gives': 'su clave no lleva el nombre que da su cabecera',
  'it does not belong to this content': 'no pertenece a este contenido',
  'its header is not canonical JSON': 'su cabecera no es JSON canónico',
  'its header asks for an algorithm other than Ed25519': 'su cabecera pide un algoritmo distinto de Ed25519',
  'its header is not of the expected form ({0})': 'su cabecera no tiene la forma esperada ({0})',
  'THE NAME OF ANOTHER STATION: your list has the name that this station calls itself for another key.':
    'EL NOMBRE DE OTRO PUESTO: su lista tiene el nombre que se da este puesto para otra clave.',
  '{0} (which calls itself "{1}")': '{0} (que se llama a sí mismo «{1}»)',
  'it is dated # day before what stands in front of it in the log|it is dated # days before what stands in front of it in the log':
    {
      one: 'su fecha es # día anterior a lo que va delante en el registro',
      other: 'su fecha es # días anterior a lo que va delante en el registro',
    },
  'it is dated # day after what stands behind it in the log|it is dated # days after what stands behind it in the log':
    {
      one: 'su fecha es # día posterior a lo que va detrás en el registro',
      other: 'su fecha es # días posterior a lo que va detrás en el registro',
    },
  'The signature of {0} {1} is missing.': 'Falta la firma de {0} {1}.',
  'The same signature stands twice.': 'La misma firma está dos veces.',
  'The signature of {0} {1} is there twice.': 'La firma de {0} {1} está dos veces.',
  'The signature of {0} {1} was not announced in the content.':
    'La firma de {0} {1} no estaba anunciada en el contenido.',
  'Signature {0} of {1} does not hold: {2}.': 'La firma {0} de {1} no es válida: {2}.',
  'Signature {0} of {1} is there twice.': 'La firma {0} de {1} está dos veces.',
  "The station's log does not name {0} as the key of {1}.":
    'El registro del puesto no nombra {0} como clave de {1}.',
  "The station's log does not name {0} as its key.": 'El registro del puesto no nombra {0} como su clave.',
  "The station's log says that {0} was revoked.": 'El registro del puesto dice que {0} fue revocada.',
  "The station's log does not call it {0}.": 'El registro del puesto no lo llama {0}.',
  'What is said about the signature of the technician is not what the log says.':
    'Lo que se dice de la firma del técnico no es lo que dice el registro.',
  'No station signed.': 'No firmó ningún puesto.',
  'Station key {0}: {1}.': 'Clave del puesto {0}: {1}.',
  'signed by the station {0} on {1}': 'firmada por el puesto {0} el {1}',
  'the key has ended since, and a later log of the station contains this':
    'la clave terminó después, y un registro posterior del puesto contiene esto',
  'countersigned by {0} on {1}': 'refrendada por {0} el {1}',
  'countersigned by {0}, who is not trusted ({1}), on {2}':
    'refrendada por {0}, en quien no se confía ({1}), el {2}',
  'the key is not on the trust list, and {0} names no key any more':
    'la clave no está en la lista de confianza, y {0} ya no nombra ninguna clave',
  '{0}, whose earlier key named this one': '{0}, cuya clave anterior nombró esta',
  'its log says that {0} signed for it before, which your list has as a key of {1}; neither that key nor your list ("follows") says that this one took its place':
    'su registro dice que antes firmó por él {0}, que su lista tiene como clave de {1}; ni esa clave ni su lista («follows») dicen que esta ocupó su lugar',
  somebody: 'alguien',
  'the key is not on the trust list': 'la clave no está en la lista de confianza',
  'the key is on the trust list as {0}, not as {1}':
    'la clave está en la lista de confianza como {0}, no como {1}',
  'the key is trusted from {0}, but signed on {1}': 'se confía en la clave desde el {0}, pero firmó el {1}',
  'the key was revoked from {0} ({1})': 'la clave está revocada desde el {0} ({1})',
  'the key named another one': 'la clave nombró otra',
  'the key was trusted until {0}': 'se confiaba en la clave hasta el {0}',
  '{0}, but signed on {1}': '{0}, pero firmó el {1}',
  '{0}, and only its own word says that it signed before: a proof from the log, or a trusted time stamp, can show it':
    '{0}, y solo su propia palabra dice que firmó antes: puede mostrarlo una prueba del registro o un sello de tiempo de confianza',
  retired: 'retirada',
  compromised: 'comprometida',
  'The time stamp does not hold: {0}.': 'El sello de tiempo no es válido: {0}.',
  'An authority that you named saw this record before {0}, under its policy {1}.':
    'Una autoridad que usted nombró vio esta acta antes del {0}, según su política {1}.',
  'it is no time stamp that can be read': 'no es un sello de tiempo legible',
  'the authority refused to stamp': 'la autoridad se negó a sellar',
  'it rests on a hash that can be forged, such as SHA-1': 'se basa en un resumen falsificable, como SHA-1',
  'it does not belong to this record': 'no pertenece a esta acta',
  'its signature does not hold': 'su firma no es válida',
  'nobody you named made it, or the certificate was not valid at its time':
    'no lo hizo nadie que usted nombrara, o el certificado no era válido en ese momento',
  'it does not say which certificate signed it': 'no dice qué certificado lo firmó',
  'the certificate that signed it is not for stamping times alone':
    'el certificado que lo firmó no es solo para sellos de tiempo',
  'Not looked at, because the file does not have the form of a record.':
    'No examinado, porque el archivo no tiene la forma de un acta.',
  'Not looked at: a newer version of the program made the file in a form that this one cannot read.':
    'No examinado: una versión más nueva del programa creó el archivo en una forma que esta no puede leer.',
  'A COUNTERSIGNATURE IS NOT GOOD. {0} What was sealed is unchanged.':
    'UN REFRENDO NO ES BUENO. {0} Lo que se selló no ha cambiado.',
  'The file is unchanged. # signature holds.|The file is unchanged. # signatures hold.': {
    one: 'El archivo no ha cambiado. # firma es válida.',
    other: 'El archivo no ha cambiado. # firmas son válidas.',
  },
  "The entries of the station's own stream are not in order.":
    'Las entradas propias del puesto no están en orden.',
  'The station was never set up.': 'El puesto nunca se configuró.',
  "The station's own stream cannot be played back: {0}.":
    'Las entradas propias del puesto no se pueden reproducir: {0}.',
  'The times cannot be true: {0}.': 'Las horas no pueden ser ciertas: {0}.',
  'Wall clock and monotonic clock agree throughout.':
    'La hora civil y el reloj monótono coinciden en todo momento.',
  '{0} s before entry n={1}': '{0} s antes de la entrada n={1}',
  'The wall clock was set before or while the job ran: {0}.':
    'La hora civil se ajustó antes del trabajo o durante él: {0}.',
  'TIMES IN DOUBT: {0}.': 'HORAS EN DUDA: {0}.',
  'Its last entry is {0} s ahead of the clock of this computer: one of the two is wrong, or the time was simulated.':
    'Su última entrada va {0} s por delante del reloj de este ordenador: uno de los dos va mal, o la hora era simulada.',
  'no reason known': 'motivo desconocido',
  '{0} and {1} more': '{0} y {1} más',
  '{0}; and {1} more': '{0}; y {1} más',
  '{0} was changed': '{0} se modificó',
  '{0} was added': '{0} se añadió',
  'All {0} files are there, and no other.': 'Están los {0} archivos, y ningún otro.',
  '{0}.': '{0}.',
  'The signature does not belong to the index.': 'La firma no pertenece al índice.',
  "The station's own entries do not name {0} as its key.":
    'Las entradas propias del puesto no nombran {0} como su clave.',
  "The station's own entries say that {0} was revoked.":
    'Las entradas propias del puesto dicen que {0} fue revocada.',
  'The index is as the station signed it.': 'El índice está como lo firmó el puesto.',
  'Nobody knows who made it.': 'Nadie sabe quién lo elaboró.',
  'It says that it is of {0}. Station key {1}: {2}.': 'Dice ser de {0}. Clave del puesto {1}: {2}.',
  'Made by the station {0} on {1}, with its key {2}.':
    'Elaborado por el puesto {0} el {1}, con su clave {2}.',
  "The station's own entries are missing.": 'Faltan las entradas propias del puesto.',
  "The station's own entries cannot be played back: {0}.":
    'Las entradas propias del puesto en el paquete no se pueden reproducir: {0}.',
  'The checkpoint is not signed by a key of the station.':
    'El punto de control no está firmado con una clave del puesto.',
  "The station's own entries are not in the log that the checkpoint signs.":
    'Las entradas propias del puesto no están en el registro que firma el punto de control.',
  "{0} of the station's own, chosen among them": '{0} propias del puesto, elegidas entre ellas',
  "the station's own from the first to entry {0} of {1} without a gap, {2} of them":
    'las propias del puesto desde la primera hasta la entrada {0} del {1} sin hueco, {2} en total',
  'A signed log of {0} entries (root {1}); {2}, stand in it.':
    'Un registro firmado de {0} entradas (raíz {1}); en él están {2}.',
  'The package was made without an older checkpoint.':
    'El paquete se elaboró sin un punto de control más antiguo.',
  'The checkpoint in {0}': 'El punto de control de {0}',
  'Your checkpoint': 'Su punto de control',
  '{0} is of another log, {1}; that of the package is {2}.':
    '{0} es de otro registro, {1}; el del paquete es {2}.',
  '{0} is not signed by a key that the station ever had.':
    '{0} no está firmado con ninguna clave que el puesto tuviera nunca.',
  '{0} stands for {1} entries, and the log of the package has only {2}: the end of the log was cut off, or the package was made before the checkpoint.':
    '{0} vale por {1} entradas, y el registro del paquete solo tiene {2}: se cortó el final del registro, o el paquete es anterior al punto de control.',
  'The package proves nothing from your checkpoint of {0} entries on; ask for one that was made with it.':
    'El paquete no demuestra nada a partir de su punto de control de {0} entradas; pedir uno elaborado con él.',
  'DIVERGED: the log does not begin with what the checkpoint of {0} entries stands for.':
    'DIVERGENTE: el registro no empieza con lo que representa el punto de control de {0} entradas.',
  '{0} stands for an empty log, and every log begins with that: it proves nothing.':
    '{0} vale por un registro vacío, y así empieza todo registro: no demuestra nada.',
  'Nothing in front of the checkpoint of {0} entries (in {1}; compare it with the one that you kept) was removed or rewritten.':
    'Nada anterior al punto de control de {0} entradas (en {1}; compararlo con el que usted guardó) se quitó ni se reescribió.',
  'Nothing in front of the checkpoint of {0} entries (that you kept) was removed or rewritten.':
    'Nada anterior al punto de control de {0} entradas (que usted guardó) se quitó ni se reescribió.',
  'The checkpoint in {0} is not one of this log.': 'El punto de control de {0} no es de este registro.',
  '{0} They have not seen {1} of {2} jobs, which came after it: {3}.':
    '{0} No vieron {1} de {2} órdenes, que llegaron después: {3}.',
  "The index does not say of job {0} what the station's own entries say.":
    'El índice no dice de la orden {0} lo que dicen las entradas propias del puesto.',
  "None of the station's entries here puts one of these jobs in question.":
    'Ninguna de las entradas del puesto aquí pone en duda una de estas órdenes.',
  'PUT IN QUESTION later: {0} of {1} jobs; see below.':
    'PUESTAS EN DUDA más tarde: {0} de {1} órdenes; ver abajo.',
  'job {0}: {1}': 'orden {0}: {1}',
  "The jobs are dated in the order in which they and the station's entries stand.":
    'Las órdenes llevan fechas en el orden en que están ellas y las entradas del puesto.',
  'The package is dated {0}, and the clock of this computer says {1}.':
    'El paquete lleva fecha de {0}, y el reloj de este ordenador marca {1}.',
  'TIMES IN DOUBT: the package is dated {0}, and a job in it ends on {1}.':
    'HORAS EN DUDA: el paquete lleva fecha de {0}, y una orden que contiene termina el {1}.',
  'Made on {0}.': 'Elaborado el {0}.',
  'Not in the log of the package: {0}.': 'No está en el registro del paquete: {0}.',
  'The record is in the log of the package.|All # records are in the log of the package.': {
    one: 'El acta está en el registro del paquete.',
    other: 'Las # actas están en el registro del paquete.',
  },
  'entry {0} differs': 'la entrada {0} difiere',
  'entries {0} to {1} differ': 'las entradas {0} a {1} difieren',
  'TWO HISTORIES of one log: {0} and {1} cannot both be true, because {2}':
    'DOS HISTORIALES de un mismo registro: {0} y {1} no pueden ser ciertos ambos, porque: {2}',
  'job {0} has two contents': 'la orden {0} tiene dos contenidos',
  'the log of {0} entries has two roots': 'el registro de {0} entradas tiene dos raíces',
  'What it says of the log cannot be read: {0}.': 'Lo que dice del registro no se puede leer: {0}.',
  '{0} of {1} that the index names are there.': 'Están {0} de las {1} que nombra el índice.',
  '{0} of {1} do not hold; {2}: {3}': '{0} de {1} no son válidas; {2}: {3}',
  '{0} of {1} do not hold; {2}: {3}; also {4}': '{0} de {1} no son válidas; {2}: {3}; también {4}',
  '{0} is of job {1}, not of the one that the index says.':
    '{0} es de la orden {1}, no de la que dice el índice.',
  'each complete': 'cada una completa',
  '{0} of a job that was not completed or is void ({1})': '{0} de una orden no completada o anulada ({1})',
  'each authentic and judged again': 'cada una auténtica y juzgada de nuevo',
  'each authentic; {0} NOT judged again, because they were judged by rules that this version does not know':
    'cada una auténtica; {0} NO juzgadas de nuevo, porque esta versión no conoce sus reglas',
  '{0} of {1} were not verified: a newer version of the program made them; {2}.':
    '{0} de {1} no se verificaron: las elaboró una versión más nueva del programa; {2}.',
  '{0}, {1}; {2}.': '{0}, {1}; {2}.',
  'No two records contradict each other.': 'Ningún acta contradice a otra.',
  '{0} records are signed by a key that is not trusted; {1}: {2}':
    '{0} actas están firmadas con una clave en la que no se confía; {1}: {2}',
  '{0} is not a checkpoint.': '{0} no es un punto de control.',
  'and {0} more: see {1}': 'y {0} más: ver {1}',
  'There is no {0} in this folder, so that nobody is trusted: name with --trust the one that the station gave you.':
    'No hay {0} en esta carpeta, así que no se confía en nadie: dar con --trust el que le entregó el puesto.',
  'The trust list is {0} of the folder that you are in: yours only if you put it there. Another one: --trust.':
    'La lista de confianza es {0} de la carpeta en la que está: es la suya solo si la puso usted ahí. Otra: --trust.',
  'The trust list {0} lies in a package and is no trust: name with --trust the one that the station gave you by another way.':
    'La lista de confianza {0} está en un paquete y no da ninguna confianza: dar con --trust la que el puesto le entregó por otra vía.',
  'there is no trust list here': 'aquí no hay ninguna lista de confianza',
  'Check the path. Without --trust it is said what can be said without trusting anybody.':
    'Comprobar la ruta. Sin --trust se dice lo que se puede decir sin confiar en nadie.',
  'NOT proven by this:': 'NO demostrado con esto:',
  'No pull was given to it.': 'No se le asignó ningún tirón.',
  '{0}: job {1}.': '{0}: orden {1}.',
  'Window {0}; accepted {1}. Dashed: the limits.':
    'Margen prescrito {0}; aceptado {1}. Discontinua: los límites.',
  'left right: cylinder  up down: pull  q: leave':
    'izquierda derecha: cilindro  arriba abajo: tirón  q: salir',
  '← → cylinder   ↑ ↓ pull   q leave': '← → cilindro   ↑ ↓ tirón   q salir',
  'pull {0}, {1}': 'tirón {0}, {1}',
  'OUT OF ORDER: {0}': 'FUERA DE ORDEN: {0}',
  'no plain file': 'no es un archivo normal',
  'larger than any record': 'mayor que cualquier acta',
  'cannot be read': 'no se puede leer',
  'no file in this folder ends in {0}': 'ningún archivo de esta carpeta termina en {0}',
  'Name a folder that holds records.': 'Nombrar una carpeta con actas.',
  'PUT IN QUESTION by what was learned later:': 'PUESTO EN DUDA por lo que se supo después:',
  'Compare the key above with the one that the station gave you by another way. If it is the same, copy {0} out of the package and name the copy with --trust.':
    'Comparar la clave de arriba con la que el puesto le dio por otra vía. Si es la misma, copiar {0} fuera del paquete y dar la copia con --trust.',
  'Not compared, because the record inside is not as it was sealed.':
    'No comparado, porque el acta que contiene no está como se selló.',
  '{0}, the record inside': '{0}, el acta que contiene',
  'Do not rely on this paper.': 'No fiarse de este documento.',
  'The pages are what the record inside gives.': 'Las páginas son lo que da el acta que contiene.',
  'The pages were NOT compared byte for byte, because another version drew them. The record inside is what counts.':
    'Las páginas NO se compararon byte a byte, porque las dibujó otra versión. Lo que cuenta es el acta que contiene.',
  'NOT the paper of the record inside. Do not rely on the pages. Make the paper anew from the record with "plugmark paper".':
    'NO es el documento del acta que contiene. No fiarse de las páginas. Volver a elaborar el documento a partir del acta con «plugmark paper».',
  'this PDF is not as plugmark writes papers: another program wrote it, or wrote it again':
    'este PDF no es como plugmark escribe documentos: lo escribió o reescribió otro programa',
  'no record is inside this paper': 'no hay ningún acta en este documento',
  'Ask for the record (*.record.json), or save it out of the PDF with a PDF reader (attachments), and verify that.':
    'Pedir el acta (*.record.json) o guardarla desde el PDF con un lector de PDF (adjuntos), y verificarla.',
  'a time stamp belongs to one record, and this is a package':
    'un sello de tiempo pertenece a un acta, y esto es un paquete',
  'Name the record in it, or leave --time out.': 'Nombrar el acta que contiene u omitir --time.',
  'the index of the package is missing, so nothing can be held against the checkpoint that you kept':
    'falta el índice del paquete, así que nada se puede comparar con el punto de control que usted guardó',
  'Check the path, or ask for the package again. Records that are no package are checked without --kept.':
    'Comprobar la ruta o pedir el paquete de nuevo. Las actas que no son un paquete se verifican sin --kept.',
  'The pages are what the record gives, byte for byte.': 'Las páginas son, byte a byte, lo que da el acta.',
  'The file is not as plugmark writes papers: another program wrote it or wrote it again, and could show anything.':
    'El archivo no es como plugmark escribe documentos: lo escribió o reescribió otro programa y podría mostrar cualquier cosa.',
  'Its words are those of the record, and something else of the file was changed.':
    'Sus palabras son las del acta, y se modificó otra cosa del archivo.',
  'It says "{0}" where the record gives "{1}".': 'Dice «{0}» donde el acta da «{1}».',
  'another program drew it': 'lo dibujó otro programa',
  '{0} drew it': 'lo dibujó {0}',
  '{0}: every word and figure is what the record gives; lines and shades were NOT compared.':
    '{0}: cada palabra y cada valor es lo que da el acta; las líneas y superficies NO se compararon.',
  '{0}, and it has figures that the record does not give: {1}.':
    '{0}, y tiene valores que el acta no da: {1}.',
  '{0}: it has other words, and every figure and verdict on it is one that the record gives; which of them is in which place, and what is drawn, was NOT compared.':
    '{0}: tiene otras palabras, y cada valor y resultado que contiene lo da el acta; cuál está en qué lugar, y lo dibujado, NO se comparó.',
  '{0}. The records are what counts.': '{0}. Lo que cuenta son las actas.',
  'The pages of papers were NOT compared: nothing draws here. "plugmark verify" on the folder compares them. The records are what counts.':
    'Las páginas de los documentos NO se compararon: aquí no se dibuja nada. «plugmark verify» sobre la carpeta las compara. Lo que cuenta son las actas.',
  'What the records give: {0}.': 'Lo que dan las actas: {0}.',
  'Of another version, its words and figures compared and what is drawn NOT: {0}.':
    'De otra versión, comparadas sus palabras y valores y NO lo dibujado: {0}.',
  'NOT held against the records: {0}.': 'NO comparado con las actas: {0}.',
  'There are none.': 'No hay ninguno.',
  '# paper|# papers': { one: '# documento', other: '# documentos' },
  '{0} is not what the records give: {1}': '{0} no es lo que dan las actas: {1}',
  '{0} names another key, {1}': '{0} nombra otra clave, {1}',
  '{0} is not what this version writes': '{0} no es lo que escribe esta versión',
  "{0} is not what the station's entries give": '{0} no es lo que dan las entradas del puesto',
  '{0} does not say of job {1} what its record says': '{0} no dice de la orden {1} lo que dice su acta',
  '{0} has a row of no record here': '{0} tiene una fila sin acta aquí',
  'You have given no trust list, so that nobody is trusted.':
    'No ha dado ninguna lista de confianza, así que no se confía en nadie.',
  'Invalid input: expected {0}, received {1}': 'Entrada no válida: se esperaba {0}, se recibió {1}',
  'Invalid input: expected {0}': 'Entrada no válida: se esperaba {0}',
  'Unrecognized key: {0}': 'Campo desconocido: {0}',
  'Too big: expected {0} to have {1} items': 'Demasiado grande: se esperaba {0} de {1} elementos',
  'Too big: expected {0} to have {1} characters': 'Demasiado largo: se esperaba {0} de {1} caracteres',
  'Too big: expected {0} to be {1}': 'Demasiado grande: se esperaba {0} {1}',
  'Too small: expected {0} to have {1} items': 'Demasiado pequeño: se esperaba {0} de {1} elementos',
  'Too small: expected {0} to have {1} characters': 'Demasiado corto: se esperaba {0} de {1} caracteres',
  'Too small: expected {0} to be {1}': 'Demasiado pequeño: se esperaba {0} {1}',
  'Invalid option: expected one of {0}': 'Opción no válida: se esperaba uno de {0}',
  'Invalid discriminator value. Expected {0}': 'Valor de distinción no válido. Se esperaba {0}',
  'Invalid string: must match pattern {0}': 'Texto no válido: debe seguir el patrón {0}',
  'Invalid {0}': 'No válido: {0}',
  '{0} (and {1} more)': '{0} (y {1} más)',
  'expected at most {0} attempts': 'se esperaban como máximo {0} intentos',
  'expected N.m for torque, m for length': 'se esperaba N.m para un par, m para una longitud',
  'only a torque tool sends an angle': 'solo una herramienta de par envía un ángulo',
  'expected 32 bytes in base64': 'se esperaban 32 bytes en base64',
  'expected each appraiser once': 'se esperaba cada evaluador una vez',
  'expected each part once': 'se esperaba cada pieza una vez',
  'this is not a checkpoint: expected the lines origin, size and root, an empty line, and one that begins with a dash':
    'no es un punto de control: se esperaban las líneas origen, tamaño y raíz, una línea vacía y una que empieza con un guion',
  'Name the file that "plugmark log checkpoint" wrote, unchanged.':
    'Dar el archivo que escribió «plugmark log checkpoint», sin cambios.',
  'this disclosure belongs to nothing in the content': 'esta divulgación no pertenece a nada del contenido',
  '{0} are more than any file has': '{0} son más de las que tiene cualquier archivo',
  'this disclosure is there twice': 'esta divulgación está dos veces',
  'longer than {0} characters': 'más largo de {0} caracteres',
  'expected JSON in strict base64url': 'se esperaba JSON en base64url estricto',
  'expected a list of three: salt, name, text': 'se esperaba una lista de tres: sal, nombre, texto',
  'expected a salt of at least 128 bits in base64url':
    'se esperaba una sal de al menos 128 bits en base64url',
  'expected the name "{0}"': 'se esperaba el nombre «{0}»',
  'expected text': 'se esperaba texto',
  'expected the canonical writing of the list': 'se esperaba la escritura canónica de la lista',
  '"..." conceals an element of a list, which no record does':
    '«...» oculta un elemento de una lista, cosa que ningún acta hace',
  'expected "_sd" alone, with one digest of SHA-256 in base64url':
    'se esperaba «_sd» solo, con un resumen SHA-256 en base64url',
  'this digest is there twice': 'este resumen está dos veces',
  'Ask for the record again from the station that made it.':
    'Pedir el acta de nuevo al puesto que la elaboró.',
  'personal text has to be concealed here': 'aquí un texto personal debe estar oculto',
  'this may not be concealed': 'esto no debe estar oculto',
  'Ask for it again from the station that wrote it.': 'Pedirlo de nuevo al puesto que lo escribió.',
  'expected the number of a gauge study, like GS-1':
    'se esperaba el número de un estudio del medio de medida, como GS-1',
  "a point of small order or in another writing is nobody's key":
    'un punto de orden pequeño o escrito de otro modo no es la clave de nadie',
  'expected an Ed25519 public key: 32 bytes in base64url':
    'se esperaba una clave pública Ed25519: 32 bytes en base64url',
  'expected strict base64url': 'se esperaba base64url estricto',
  'expected disclosures in the first signature alone':
    'las divulgaciones se esperan solo en la primera firma',
  'Make it again with "plugmark log prove consistency".':
    'Volver a crearlo con «plugmark log prove consistency».',
  'expected 128 bits in base64url': 'se esperaban 128 bits en base64url',
  'expected job: and the number of the job': 'se esperaba job: y el número de la orden',
  'the file has control characters': 'el archivo tiene caracteres de control',
  'it has more than {0} lines': 'tiene más de {0} líneas',
  'the line "quorum" is missing': 'falta la línea «quorum»',
  'expected a line of log, witness, group or quorum': 'se esperaba una línea de log, witness, group o quorum',
  'expected: log, the verifier key of the log, and its address where it has one':
    'se esperaba: log, la clave de verificación del registro y su dirección si la tiene',
  'two logs have this key': 'dos registros tienen esta clave',
  'a witness has this key, and nobody is his own witness':
    'un testigo tiene esta clave, y nadie es testigo de sí mismo',
  'expected: witness, a name, its verifier key for cosignatures (Ed25519 or ML-DSA-44), and its address where it has one':
    'se esperaba: witness, un nombre, su clave de verificación de cofirmas (Ed25519 o ML-DSA-44) y su dirección si la tiene',
  'this name is taken': 'este nombre está ocupado',
  'two witnesses have this key': 'dos testigos tienen esta clave',
  'a log has this key, and nobody is his own witness':
    'un registro tiene esta clave, y nadie es testigo de sí mismo',
  'expected: group, a name, how many of its members (or any, or all), and its members':
    'se esperaba: group, un nombre, cuántos de sus miembros (o any, o all) y sus miembros',
  'a member is defined by no line before': 'un miembro no está definido en ninguna línea anterior',
  'a member is in a group already': 'un miembro ya está en un grupo',
  'expected: quorum, and the name of a witness or a group, or none':
    'se esperaba: quorum y el nombre de un testigo o de un grupo, o none',
  'there is a second line "quorum"': 'hay una segunda línea «quorum»',
  'the quorum is defined by no line before': 'el quórum no está definido en ninguna línea anterior',
  'Compare it with "plugmark manual witnesses".': 'Compararla con «plugmark manual witnesses».',
  'expected one station': 'se esperaba un puesto',
  'the file does not end as a record does': 'el archivo no termina como un acta',
  'expected a domain in small letters, like shop.example':
    'se esperaba un dominio en minúsculas, como shop.example',
  'this is not valid UTF-8 text': 'no es texto UTF-8 válido',
  'the content is not canonical JSON': 'el contenido no es JSON canónico',
  'Ask for the file again from where it came, or correct it at that place.':
    'Pedir el archivo de nuevo a quien lo envió o corregirlo en ese lugar.',
  'a byte order mark stands before the JSON': 'hay una marca de orden de bytes delante del JSON',
  'something follows the end of the JSON': 'hay algo detrás del final del JSON',
  'expected a comma or the end of the object': 'se esperaba una coma o el final del objeto',
  'expected a name in double quotes': 'se esperaba un nombre entre comillas dobles',
  'the name __proto__ is not accepted': 'el nombre __proto__ no se acepta',
  'the name {0} stands twice in one object': 'el nombre {0} está dos veces en un objeto',
  'expected a colon': 'se esperaban dos puntos',
  'expected a comma or the end of the array': 'se esperaba una coma o el final de la lista',
  'the text ends inside a string': 'el texto termina dentro de una cadena',
  'a control character stands in a string': 'hay un carácter de control en una cadena',
  'half a surrogate pair stands in a string': 'hay medio par sustituto en una cadena',
  'an escape in a string is not one of JSON': 'un escape en una cadena no es de JSON',
  'expected a JSON value': 'se esperaba un valor JSON',
  'a number is too large or too long to be held exactly':
    'un número es demasiado grande o largo para guardarse con exactitud',
  'the number {0} would be read as {1}': 'el número {0} se leería como {1}',
  'nested deeper than {0} levels': 'anidado a más de {0} niveles',
  'Put in the public keys as "keys" of a JSON Web Key set, each with its thumbprint as "kid".':
    'Poner las claves públicas como «keys» de un conjunto JSON Web Key, cada una con su huella como «kid».',
  'expected the RFC 7638 thumbprint of the key': 'se esperaba la huella de la clave según RFC 7638',
  'a key stands twice': 'una clave está dos veces',
  'expected base64': 'se esperaba base64',
  'expected whole bytes in small hexadecimal digits':
    'se esperaban bytes enteros en cifras hexadecimales minúsculas',
  '{0} stands in the list of files, and can have no digest there':
    '{0} está en la lista de archivos y allí no puede tener resumen',
  'the file {0} stands twice in the list of files': 'el archivo {0} está dos veces en la lista de archivos',
  'job {0} names {1}, which is not in the list of files':
    'la orden {0} nombra {1}, que no está en la lista de archivos',
  'two jobs name the file {0}': 'dos órdenes nombran el archivo {0}',
  'no job names the file {0}': 'ninguna orden nombra el archivo {0}',
  "expected the station's own entries alone": 'se esperaban solo las entradas propias del puesto',
  'expected the verifier key of a witness, as "plugmark witness init" writes it':
    'se esperaba la clave de verificación de un testigo, como la escribe «plugmark witness init»',
  'the station was set up twice': 'el puesto se configuró dos veces',
  'the station was never set up': 'el puesto nunca se configuró',
  'a reading of {0} came before its link': 'una lectura de {0} llegó antes de su enlace',
  'this policy lies in a package, and nobody says in his own package whom to trust':
    'esta política está en un paquete, y nadie dice en su propio paquete en quién confiar',
  'Name with --policy one of your own.': 'Dé con --policy una propia.',
};
