/** Spanish for the commands of the office. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  'the station file has no tool "{0}"': 'el archivo del puesto no tiene ninguna herramienta "{0}"',
  'Add it first, or name one of: {0}.': 'Añádala primero, o nombre una de estas: {0}.',
  'the device at {0} uses a changing address and was not heard again':
    'el aparato en {0} cambia de dirección y no se volvió a oír',
  'Switch off the privacy setting of the tool. This station cannot resolve such addresses.':
    'Desactive la protección de la privacidad de la herramienta. Este puesto no puede resolver esas direcciones.',
  'the device at {0} gives no serial number before pairing, so this station cannot tell it from another one':
    'el aparato en {0} no da número de serie antes de emparejarse, así que este puesto no puede distinguirlo de otro',
  'Use a tool that gives a serial number in its Device Information.':
    'Use una herramienta que dé un número de serie en sus datos (Device Information).',
  'the device at {0} has serial number {1}, but the station file says {2} for {3}':
    'el aparato en {0} tiene el número de serie {1}, pero el archivo del puesto indica {2} para {3}',
  'Adopt the right one, or correct the instrument with the data of its certificate.':
    'Adopte el correcto, o corrija el instrumento con los datos de su certificado.',
  'serial number {0} is adopted at {1} but answers from {2}':
    'el número de serie {0} está adoptado en {1} pero responde desde {2}',
  'Check which of the two is the tool. If it has a new radio, delete "address" of {0} in the station file.':
    'Compruebe cuál de los dos es la herramienta. Si tiene una radio nueva, borre "address" de {0} en el archivo del puesto.',
  'serial number {0} at {1} is {2} of this station already':
    'el número de serie {0} en {1} ya es {2} de este puesto',
  'Choose another device.': 'Elija otro aparato.',
  'the device has the name "{0}", like the tool {1}':
    'el aparato tiene el nombre "{0}", como la herramienta {1}',
  'Rename one of the two in its own settings.': 'Cambie el nombre de uno de los dos en sus propios ajustes.',
  'station file': 'archivo del puesto',
  'it does not understand the request': 'no entiende la solicitud',
  'it does not have the key that signs this log now; give it the new one: plugmark log vkey':
    'no tiene la clave que firma ahora este registro; dele la nueva: plugmark log vkey',
  'it does not know this log; give it the key of the log: plugmark log vkey':
    'no conoce este registro; dele la clave del registro: plugmark log vkey',
  'the request is too large for it': 'la solicitud es demasiado grande para él',
  'IT HAS ANOTHER HISTORY OF THIS LOG. Run "plugmark log check"':
    'TIENE OTRA HISTORIA DE ESTE REGISTRO. Ejecute "plugmark log check"',
  'it has had too many requests for now': 'ha recibido demasiadas solicitudes por ahora',
  'it answered {0}': 'respondió {0}',
  'its answer cannot be understood': 'no se entiende su respuesta',
  'it answers with another size each time': 'responde cada vez con otra longitud',
  'its answer has no cosignature by a key that the station file names':
    'su respuesta no tiene cofirma de una clave que nombre el archivo del puesto',
  'it did not answer in time': 'no respondió a tiempo',
  'it cannot be reached{0}': 'no se puede alcanzar{0}',
  'pages copied': 'páginas copiadas',
  'entries checked': 'entradas comprobadas',
  'Backed up to {0} and checked: {1}.': 'Guardado en {0} y comprobado: {1}.',
  'The backup contains the log only. Copy the folder keys and the certificates too; keep the keys private.':
    'La copia contiene solo el registro. Copie también la carpeta keys y los certificados; mantenga las claves en secreto.',
  'expected either a backup or --from-archive URL': 'se espera una copia de seguridad o --from-archive URL',
  'Name the file of the backup, or the archive that the station shipped to.':
    'Nombre el archivo de la copia, o el archivo central al que envió el puesto.',
  'the archive at {0}': 'el archivo central en {0}',
  'What the station wrote after its last shipping is not in the archive.':
    'Lo que el puesto escribió después de su último envío no está en el archivo central.',
  'Checked and restored from {0}: {1}.': 'Comprobado y restaurado desde {0}: {1}.',
  'The old log is kept as {0}.': 'El registro antiguo se conserva como {0}.',
  'If work went on after this backup, later checkpoints and records show the missing end: run "plugmark log check". The station signs nothing then before you fill it in, or say that it is lost: plugmark log lost --because "..."':
    'Si se siguió trabajando después de esta copia, puntos de control y actas posteriores muestran el final que falta: ejecute "plugmark log check". El puesto no firma nada entonces hasta que se complete o se declare perdido: plugmark log lost --because "..."',
  'Restore anyway?': '¿Restaurar de todos modos?',
  'Use --set-aside to keep them in a file beside the log and restore the backup.':
    'Con --set-aside quedan en un archivo junto al registro y se restaura la copia.',
  'nothing was restored: {0}': 'no se restauró nada: {0}',
  'Save them first with "plugmark recover". {0}': 'Sálvelas primero con "plugmark recover". {0}',
  '# entry|# entries': { one: '# entrada', other: '# entradas' },
  '# more job|# more jobs': { one: '# orden más', other: '# órdenes más' },
  '{0} of the station itself': '{0} del propio puesto',
  'the log and the backup took two courses behind entry {0}: {1} of the log ({2}), where the backup has {3} of its own, are set aside':
    'el registro y la copia se separan tras la entrada {0}: {1} del registro ({2}), donde la copia tiene {3} propias, quedan apartadas',
  'the log and the backup took two courses behind entry {0}: {1} of the log ({2}), where the backup has {3} of its own, would be set aside':
    'el registro y la copia se separan tras la entrada {0}: {1} del registro ({2}), donde la copia tiene {3} propias, quedarían apartadas',
  'the log that is there is another one of this station, begun anew: its {0} ({1}) are set aside':
    'el registro presente es otro de este puesto, empezado de nuevo: sus {0} ({1}) quedan apartadas',
  'the log that is there is another one of this station, begun anew: its {0} ({1}) would be set aside':
    'el registro presente es otro de este puesto, empezado de nuevo: sus {0} ({1}) quedarían apartadas',
  'the log that is there is damaged, and {0} newer than the backup can still be read in it: {1}; they are set aside':
    'el registro presente está dañado, y aún se leen {0} posteriores a la copia: {1}; quedan apartadas',
  'the log that is there is damaged, and {0} newer than the backup can still be read in it: {1}; they would be set aside':
    'el registro presente está dañado, y aún se leen {0} posteriores a la copia: {1}; quedarían apartadas',
  '{0} newer than the backup ({1}) are set aside': '{0} posteriores a la copia ({1}) quedan apartadas',
  '{0} newer than the backup ({1}) would be set aside':
    '{0} posteriores a la copia ({1}) quedarían apartadas',
  opened: 'abierta',
  closed: 'cerrada',
  void: 'anulada',
  'went on': 'siguió',
  'It is the log of the station "{0}" ({1}). Is it yours?':
    'Es el registro del puesto "{0}" ({1}). ¿Es el suyo?',
  '{0} entries, {1} jobs': '{0} entradas, {1} órdenes',
  '{0} entries, {1} jobs, the last entry {2}': '{0} entradas, {1} órdenes, la última entrada {2}',
  'No measuring tool heard. Switch it on, or list every device with --all.':
    'No se oye ningún instrumento. Enciéndalo, o liste todos los aparatos con --all.',
  address: 'dirección',
  signal: 'señal',
  kind: 'tipo',
  name: 'nombre',
  'serial number': 'número de serie',
  unknown: 'desconocido',
  '(no name)': '(sin nombre)',
  'not read: {0}': 'no leído: {0}',
  '(none)': '(ninguno)',
  'Adopted as {0}: {1} at {2} ({3}).': 'Adoptado como {0}: {1} en {2} ({3}).',
  'The link is encrypted but not authenticated (Just Works). The key is not kept.':
    'La conexión está cifrada pero no autenticada (Just Works). La clave no se guarda.',
  'The link is not encrypted and not authenticated. Every record states this.':
    'La conexión no está cifrada ni autenticada. Cada acta lo indica.',
  '{0} packets of {1} are in {2}.': '{0} paquetes de {1} están en {2}.',
  'listening to {0} of service {1}': 'escuchando {0} del servicio {1}',
  ok: 'bien',
  FAIL: 'FALLO',
  'Everything is ready.': 'Todo está listo.',
  'Fix {0} of these first.': 'Corrija primero {0} de estos puntos.',
  'no {0} in this folder': 'no hay {0} en esta carpeta',
  'Write one with "plugmark setup", or name one with --station.':
    'Escriba uno con "plugmark setup", o nombre uno con --station.',
  '{0}; tools: {1}': '{0}; herramientas: {1}',
  'Passed. It withstands bad bytes; whether its figures are right, only the display of the tool shows.':
    'Aprobado. Resiste bytes erróneos; si sus valores son correctos, solo lo muestra la pantalla de la herramienta.',
  'Not passed: {0} of {1} checks failed.': 'No aprobado: fallaron {0} de {1} comprobaciones.',
  '{0}: valid.': '{0}: válido.',
  notified: 'notificadas',
  read: 'leídas',
  'asked for': 'solicitadas',
  sent: 'enviadas',
  ' every {0} ms': ' cada {0} ms',
  '  no value because {0}': '  sin valor porque {0}',
  ', {0} ms before the frame came': ', {0} ms antes de la trama',
  '  sample {0} {1}{2}{3}': '  muestra {0} {1}{2}{3}',
  '{0} {1} ({2} counts)': '{0} {1} ({2} pasos)',
  '"{0}" is not bytes in hexadecimal': '"{0}" no son bytes en hexadecimal',
  'Give two digits a byte, for example --bytes "a5 01 00 00".':
    'Dé dos cifras por byte, por ejemplo --bytes "a5 01 00 00".',
  'the station': 'el puesto',
  '{0} and {1} more': '{0} y {1} más',
  '  and {0} more': '  y {0} más',
  'To be deleted: {0}.': 'Se borrará: {0}.',
  '  in {0}: {1}': '  en {0}: {1}',
  "  in the station's own entries: {0}": '  en las entradas propias del puesto: {0}',
  'These free texts contain it and are deleted whole:':
    'Estos textos libres lo contienen y se borran enteros:',
  '{0}: whoever was given the record or a paper still has it ({1}).':
    '{0}: quien recibió el acta o un documento aún lo tiene ({1}).',
  '# of these jobs was closed or declared void|# of these jobs were closed or declared void': {
    one: '# de estas órdenes fue cerrada o declarada nula',
    other: '# de estas órdenes fueron cerradas o declaradas nulas',
  },
  'Backups, and files in other places, hold it until you delete them. A backup that is restored brings it back.':
    'Las copias de seguridad y los archivos en otros lugares lo contienen hasta que usted los borre. Una copia restaurada lo devuelve.',
  '# signed entry|# signed entries': { one: '# entrada firmada', other: '# entradas firmadas' },
  'It also stands in {0} ({1}), as in a job number or a description: there it cannot be deleted.':
    'También figura en {0} ({1}), como en un número de orden o una descripción: ahí no se puede borrar.',
  'These files of the station hold it, or may, and are left as they are:':
    'Estos archivos del puesto lo contienen, o pueden contenerlo, y quedan como están:',
  'Held, and deleted all the same: {0}.': 'Debe conservarse, y se borra de todos modos: {0}.',
  'Nothing was deleted.': 'No se borró nada.',
  'Deleted: {0}. The log says where they were, and not what they said.':
    'Borrado: {0}. El registro indica dónde estaban, y no lo que contenían.',
  'the log has no such text': 'el registro no tiene tal texto',
  'Look with "plugmark ask".': 'Mírelo con "plugmark ask".',
  'NOT finished: another program has the log open, and old pages of the file may still hold the texts. Close it, then run the same command again.':
    'SIN terminar: otro programa tiene abierto el registro, y páginas antiguas del archivo pueden contener aún los textos. Ciérrelo y ejecute otra vez la misma orden.',
  'NOT finished: old pages of the file may still hold the texts, and the disk has no room to write it anew. Free as much as the log takes, then run the same command again.':
    'SIN terminar: páginas antiguas del archivo pueden contener aún los textos, y el disco no tiene sitio para escribirlo de nuevo. Libere tanto como ocupa el registro y ejecute otra vez la misma orden.',
  'expected one of --plate, --vin, --fleet, --customer and --person':
    'se espera uno de --plate, --vin, --fleet, --customer y --person',
  'Name one text at a time.': 'Nombre un texto cada vez.',
  '--although-held needs --by NAME and --because TEXT': '--although-held necesita --by NAME y --because TEXT',
  'Give both.': 'Dé los dos.',
  '{0} contains the text that is to be forgotten': '{0} contiene el texto que se ha de olvidar',
  'The log keeps who decided and why. Say it without that text.':
    'El registro guarda quién decidió y por qué. Dígalo sin ese texto.',
  'The retention time of the shop is not known here: it is in the station file (--station FILE).':
    'El plazo de conservación del taller no se conoce aquí: está en el archivo del puesto (--station FILE).',
  '; and {0} more': '; y {0} más',
  '{0} ({1}{2})': '{0} ({1}{2})',
  '# of these jobs is held|# of these jobs are held': {
    one: '# de estas órdenes debe conservarse',
    other: '# de estas órdenes deben conservarse',
  },
  'Nothing was deleted. Wait, or answer for it: --although-held --by NAME --because TEXT.':
    'No se borró nada. Espere, o responda de ello: --although-held --by NAME --because TEXT.',
  'another program wrote such a text meanwhile, or deleted one':
    'otro programa escribió o borró entretanto un texto así',
  'Nothing was deleted. Close the other program, then try again.':
    'No se borró nada. Cierre el otro programa e inténtelo otra vez.',
  'Delete these texts for good?': '¿Borrar estos textos definitivamente?',
  'this is not a date': 'esto no es una fecha',
  'Write it as 2026-03-02.': 'Escríbala como 2026-03-02.',
  'No job matches.': 'Ninguna orden coincide.',
  state: 'estado',
  'opened (UTC)': 'abierta (UTC)',
  impact: 'impacto',
  '# session|# sessions': { one: '# sesión', other: '# sesiones' },
  'opened {0}, last entry {1} (UTC); {2}, {3}': 'abierta {0}, última entrada {1} (UTC); {2}, {3}',
  'handed over {0} from {1} to {2}': 'entregada {0} de {1} a {2}',
  'note: {0}': 'nota: {0}',
  'question about pull {0}: {1}': 'pregunta sobre el tirón {0}: {1}',
  'As it was judged then:': 'Como se juzgó entonces:',
  '{0} already declared job {1} void': '{0} ya declaró nula la orden {1}',
  'There is nothing to do.': 'No hay nada que hacer.',
  'Job {0} is VOID. Its readings stay in the log and prove nothing.':
    'La orden {0} está ANULADA. Sus lecturas quedan en el registro y no prueban nada.',
  'Records sealed before do not show this. Write the papers again and recall the old ones.':
    'Las actas selladas antes no lo muestran. Escriba de nuevo los documentos y retire los antiguos.',
  'Write papers that show it: plugmark jobs papers {0}':
    'Escribir documentos que lo muestren: plugmark jobs papers {0}',
  'job {0} is closed': 'la orden {0} está cerrada',
  'Only an open job can be handed over.': 'Solo se puede entregar una orden abierta.',
  '{0} already works on job {1}': '{0} ya trabaja en la orden {1}',
  'Name another person.': 'Nombre a otra persona.',
  "Job {0} is now {1}'s. Go on with: plugmark job --resume {2}\n":
    'La orden {0} es ahora de {1}. Siga con: plugmark job --resume {2}\n',
  'job {0} is not closed': 'la orden {0} no está cerrada',
  'Finish it with "plugmark job --resume", or declare it void with "plugmark jobs void".':
    'Termínela con "plugmark job --resume", o declárela nula con "plugmark jobs void".',
  'this record is countersigned and is never overwritten': 'esta acta está refrendada y nunca se sobrescribe',
  'Name another folder with --out.': 'Nombre otra carpeta con --out.',
  'this station has no job {0}': 'este puesto no tiene ninguna orden {0}',
  'List them with "plugmark jobs".': 'Lístelas con "plugmark jobs".',
  'Compare it with {0}.': 'Compárelo con {0}.',
  signs: 'firma',
  'until {0}': 'hasta {0}',
  'sign with their own keys': 'firman con sus propias claves',
  'do not sign (decided by the shop)': 'no firman (decidido por el taller)',
  'not decided; those with a key sign': 'sin decidir; firman quienes tienen clave',
  'technicians: {0}': 'técnicos: {0}',
  'trust list: {0}': 'lista de confianza: {0}',
  'no key': 'sin clave',
  'an earlier key': 'una clave anterior',
  'REVOKED from {0} ({1})': 'REVOCADA desde {0} ({1})',
  '"{0}" is not a reason': '"{0}" no es un motivo',
  'Give retired, lost or compromised.': 'Dé retired, lost o compromised.',
  'the log has no key {0}': 'el registro no tiene ninguna clave {0}',
  'See "plugmark keys list".': 'Vea "plugmark keys list".',
  '{0}, choose a PIN of at least {1} characters: ': '{0}, elija un PIN de al menos {1} caracteres: ',
  'a PIN needs at least {0} characters': 'un PIN necesita al menos {0} caracteres',
  'Type one, or put it into {0}.': 'Escríbalo, o póngalo en {0}.',
  '{0} signs with {1}.\n': '{0} firma con {1}.\n',
  '"{0}" is not a decision': '"{0}" no es una decisión',
  'Say sign or do-not-sign.': 'Diga sign o do-not-sign.',
  'The key of the station is in a device, under its PIN.':
    'La clave del puesto está en un dispositivo, bajo su PIN.',
  'Passphrase until now of {0}: ': 'Contraseña actual de {0}: ',
  'New passphrase: ': 'Contraseña nueva: ',
  'no passphrase was given': 'no se dio ninguna contraseña',
  'Passphrase for the new key (Enter: none): ': 'Contraseña para la clave nueva (Enter: ninguna): ',
  'DIVERGED at entry {0}: {1}.\n': 'DIVERGE en la entrada {0}: {1}.\n',
  'All {0} entries are as they were written, and the hash tree over them is whole.\n':
    'Las {0} entradas están como se escribieron, y el árbol de resúmenes sobre ellas está íntegro.\n',
  'a checkpoint of the station': 'un punto de control del puesto',
  'LOST: the log states that it went on without entries that # checkpoint stands for.|LOST: the log states that it went on without entries that # checkpoints stand for.':
    {
      one: 'PERDIDO: el registro indica que siguió sin entradas de las que responde # punto de control.',
      other: 'PERDIDO: el registro indica que siguió sin entradas de las que responden # puntos de control.',
    },
  'the log goes on from every checkpoint that is here':
    'el registro continúa cada punto de control que hay aquí',
  'There is nothing to state. Look with "plugmark log check".':
    'No hay nada que declarar. Mírelo con "plugmark log check".',
  'Stated in the log: it had {0} entries once, and went on without some of them. Every later record says so.':
    'Declarado en el registro: tuvo {0} entradas y siguió sin algunas de ellas. Cada acta posterior lo indica.',
  'An auditor who kept a checkpoint of the lost entries will find that the log does not go on from it.':
    'Un auditor que guardó un punto de control de las entradas perdidas verá que el registro no lo continúa.',
  '{0} of the lost entries, and good as long as the key is not changed: no proof from the log can be made for them later. Stamp each of them before: plugmark time-stamp RECORD':
    '{0} de las entradas perdidas, y vale mientras no se cambie la clave: después no se podrá sacar del registro ninguna prueba. Séllelas antes con sello de tiempo: plugmark time-stamp RECORD',
  'The key that this log names is not here, so that nothing was signed. Make a new one: plugmark keys rotate --lost':
    'La clave que nombra este registro no está aquí, así que no se firmó nada. Cree una nueva: plugmark keys rotate --lost',
  '# record here is|# records here are': { one: '# acta aquí es', other: '# actas aquí son' },
  'Every personal text is there, or was deleted with "plugmark forget".':
    'Cada texto personal está, o se borró con "plugmark forget".',
  '  entry {0}: a text ({1}) is MISSING. It was deleted, and not with "plugmark forget".':
    '  entrada {0}: FALTA un texto ({1}). Se borró, y no con "plugmark forget".',
  '  entry {0}: a text ({1}) that was forgotten is BACK.':
    '  entrada {0}: un texto ({1}) que se olvidó ha VUELTO.',
  '  entry {0}: a text that does NOT belong to this entry.':
    '  entrada {0}: un texto que NO pertenece a esta entrada.',
  'Every verdict and every proof holds, but personal texts beside the entries are not as the log says:':
    'Cada veredicto y cada prueba se mantiene, pero hay textos personales junto a las entradas que no están como dice el registro:',
  'Checkpoint of {0} entries: nothing before it was removed or changed.':
    'Punto de control de {0} entradas: nada anterior se quitó ni se cambió.',
  'Checkpoint of {0} entries: NOT from this log. It is from another station, or the log was started again.':
    'Punto de control de {0} entradas: NO es de este registro. Es de otro puesto, o el registro se empezó de nuevo.',
  'Checkpoint of {0} entries: NOT signed by a key of this station.':
    'Punto de control de {0} entradas: NO firmado con una clave de este puesto.',
  'Checkpoint of {0} entries: DIVERGED. Entries {1} to {2} are missing. The end of the log was cut off, or an old copy was put back.':
    'Punto de control de {0} entradas: DIVERGE. Faltan las entradas {1} a {2}. Se cortó el final del registro, o se repuso una copia antigua.',
  'Checkpoint of {0} entries: DIVERGED. Between entry {1} and entry {2} something was changed, removed or added.':
    'Punto de control de {0} entradas: DIVERGE. Entre la entrada {1} y la entrada {2} algo se cambió, se quitó o se añadió.',
  checkpoint: 'punto de control',
  'the station file names no witness': 'el archivo del puesto no nombra ningún testigo',
  'Add "witnesses" to it: "plugmark manual witnesses" shows how.':
    'Añádale "witnesses": "plugmark manual witnesses" muestra cómo.',
  'Nothing is signed yet, so there is nothing to send.':
    'Aún no hay nada firmado, así que no hay nada que enviar.',
  'the log': 'el registro',
  'nothing was sent: the log is not the one that the station signed':
    'no se envió nada: el registro no es el que firmó el puesto',
  'Run "plugmark log check".': 'Ejecute "plugmark log check".',
  '{0}: cosigned on {1}, {2} entries': '{0}: cofirmado el {1}, {2} entradas',
  '{0}: HAS A LONGER LOG of this station, {1} entries; this one is signed up to {2}. Its end was cut off, or an old copy was put back. Run "plugmark log check"':
    '{0}: TIENE UN REGISTRO MÁS LARGO de este puesto, {1} entradas; este está firmado hasta {2}. Se cortó su final, o se repuso una copia antigua. Ejecute "plugmark log check"',
  '{0}: not cosigned; {1}': '{0}: no cofirmado; {1}',
  '{0}: not cosigned; {1}. What is missing is sent the next time':
    '{0}: no cofirmado; {1}. Lo que falta se envía la próxima vez',
  '{0} already is this checkpoint. Nothing written.': '{0} ya es este punto de control. No se escribió nada.',
  'Checkpoint of {0} entries written to {1}. Keep it in another place.':
    'Punto de control de {0} entradas escrito en {1}. Guárdelo en otro lugar.',
  'the file exists; a checkpoint never overwrites a file':
    'el archivo existe; un punto de control nunca sobrescribe un archivo',
  'Name a new file. Keep the old checkpoint: it still proves the log of its time.':
    'Nombre un archivo nuevo. Guarde el punto de control antiguo: aún prueba el registro de su momento.',
  'the log has entries 1 to {0}': 'el registro tiene las entradas 1 a {0}',
  'Name one of these.': 'Nombre una de ellas.',
  'this is not a PNG picture of at most 4 million pixels':
    'esto no es una imagen PNG de 4 millones de píxeles como máximo',
  'Save the logo as PNG, or leave "logo" out of the station file.':
    'Guarde el logotipo como PNG, o quite "logo" del archivo del puesto.',
  'The station wrote this file and somebody changed it. Run "plugmark log check"; put the file back from your copy.':
    'El puesto escribió este archivo y alguien lo cambió. Ejecute "plugmark log check"; reponga el archivo desde su copia.',
  'it is a checkpoint of another log': 'es un punto de control de otro registro',
  'it is a checkpoint that no key of this station signed':
    'es un punto de control que no firmó ninguna clave de este puesto',
  'the station signed a log of {0} entries before, and this one is shorter: its end was cut off, or an old copy was put back':
    'el puesto ya firmó un registro de {0} entradas, y este es más corto: se cortó su final, o se repuso una copia antigua',
  'the station signed a log of {0} entries before, and this one has other entries: something was changed, removed or added':
    'el puesto ya firmó un registro de {0} entradas, y este tiene otras: algo se cambió, se quitó o se añadió',
  'nothing was signed: {0}': 'no se firmó nada: {0}',
  'Run "plugmark log check". Restore a backup that has all entries, or fill them in with "plugmark recover --records". Where they are gone for good, say so: plugmark log lost --because "..."':
    'Ejecute "plugmark log check". Restaure una copia con todas las entradas, o complételas con "plugmark recover --records". Si se perdieron para siempre, dígalo: plugmark log lost --because "..."',
  'pages read': 'páginas leídas',
  'entries written': 'entradas escritas',
  'Left out: {0}: {1}': 'Se omite: {0}: {1}',
  'No log here: rebuilt from records only.': 'No hay registro aquí: reconstruido solo a partir de actas.',
  'LOSSES, and NOT AS IT WAS SIGNED': 'PÉRDIDAS, y NO COMO SE FIRMÓ',
  'NOT AS IT WAS SIGNED': 'NO COMO SE FIRMÓ',
  LOSSES: 'PÉRDIDAS',
  'Saved everything in the records': 'Se salvó todo lo que hay en las actas',
  'Saved everything that was found': 'Se salvó todo lo hallado',
  'Left out: {0}: not shown to belong to this log.':
    'Se omite: {0}: nada muestra que pertenezca a este registro.',
  '{0}: {1} entries are in {2}, from the first on without a gap.':
    '{0}: {1} entradas están en {2}, desde la primera sin huecos.',
  '{0}: {1} entries are in {2}, from the first on without a gap, {3} of them from records.':
    '{0}: {1} entradas están en {2}, desde la primera sin huecos, {3} de ellas de actas.',
  'LOST: entry {0}.': 'PERDIDO: entrada {0}.',
  'LOST: entries {0} to {1}.': 'PERDIDO: entradas {0} a {1}.',
  '{0} readable entries after the first gap cannot be part of the log; they are in {1}.':
    '{0} entradas legibles tras el primer hueco no pueden formar parte del registro; están en {1}.',
  'Incomplete jobs: {0} and {1} more.': 'Órdenes incompletas: {0} y {1} más.',
  'Incomplete jobs: {0}.': 'Órdenes incompletas: {0}.',
  'No checkpoint found: entries at the very end may be missing without a trace.':
    'No se halló ningún punto de control: al final pueden faltar entradas sin dejar rastro.',
  'Entries were changed, removed or added. Keep the damaged file and find the cause first.':
    'Se cambiaron, quitaron o añadieron entradas. Conserve el archivo dañado y busque primero la causa.',
  'Not in any record: jobs that were never closed, changes after a record, and the length of the log.':
    'En ninguna acta: las órdenes nunca cerradas, los cambios tras un acta y la longitud del registro.',
  'Put it in place: plugmark restore {0}{1}': 'Póngalo en su lugar: plugmark restore {0}{1}',
  'Checkpoint of {0} entries: the saved log agrees with it.':
    'Punto de control de {0} entradas: el registro salvado coincide con él.',
  'Checkpoint of {0} entries: entries {1} to {2} are missing.':
    'Punto de control de {0} entradas: faltan las entradas {1} a {2}.',
  'Checkpoint of {0} entries: DIVERGED between entry {1} and entry {2}.':
    'Punto de control de {0} entradas: DIVERGE entre la entrada {1} y la entrada {2}.',
  'Checkpoint of {0} entries: of another log.': 'Punto de control de {0} entradas: de otro registro.',
  'Checkpoint of {0} entries: not signed by a key of this station.':
    'Punto de control de {0} entradas: no firmado con una clave de este puesto.',
  'records read': 'actas leídas',
  record: 'acta',
  'not readable as a record.': 'no se puede leer como acta.',
  'this folder cannot be read': 'esta carpeta no se puede leer',
  'Name the folder that holds the exported records.': 'Nombre la carpeta que contiene las actas exportadas.',
  'the retention time is not set (1 to 100 years)': 'no está fijado el plazo de conservación (1 a 100 años)',
  'Ask what law and contracts require. Then set it: --years 7, or "retention" in the station file.':
    'Averigüe qué exigen la ley y los contratos. Luego fíjelo: --years 7, o "retention" en el archivo del puesto.',
  'last entry in': 'última entrada',
  jobs: 'órdenes',
  'must be kept': 'a conservar',
  held: 'retenidas',
  'may go': 'puede irse',
  'Retention of {0} from the last entry of a job on{1}, as of {2}.':
    'Conservación: {0} desde la última entrada de una orden{1}, a {2}.',
  '# year|# years': { one: '# año', other: '# años' },
  'There are no jobs.': 'No hay órdenes.',
  'The oldest is of {0}.': 'La más antigua es del {0}.',
  'The next time runs out on {0}.': 'El próximo plazo vence el {0}.',
  '  held: {0}, {1}': '  retenida: {0}, {1}',
  '  and {0} more are held': '  y {0} más están retenidas',
  'Nothing was deleted. No entry can be taken out of the log: it is one chain of proof. You may delete papers and exported records.':
    'No se borró nada. Del registro no se puede sacar ninguna entrada: es una sola cadena de pruebas. Puede borrar documentos y actas exportadas.',
  'Passphrase for the new key: ': 'Contraseña para la clave nueva: ',
  'The station signs with {0} from now on.': 'El puesto firma desde ahora con {0}.',
  'The old key is still in its device, where nothing here can destroy it: delete it there.':
    'La clave antigua sigue en su dispositivo, donde nada de aquí puede destruirla: bórrela allí.',
  'The old key was destroyed. Destroy your copies of it too.':
    'La clave antigua se destruyó. Destruya también sus copias.',
  'The old key is kept, under its passphrase; nobody needs it any more.':
    'La clave antigua se conserva, bajo su contraseña; ya nadie la necesita.',
  'Give the new {0} to everybody who verifies. Who has it believes older records where the log shows them:':
    'Dé el nuevo {0} a todos los que verifican. Quien lo tiene cree las actas antiguas donde el registro las muestra:',
  '{0} (*.record.json.proof); give it along. Others: plugmark log prove consistency RECORD > RECORD.proof':
    '{0} (*.record.json.proof); entréguela también. Otras: plugmark log prove consistency RECORD > RECORD.proof',
  '# record here has such a proof beside it|# records here have such a proof beside them': {
    one: '# acta aquí tiene al lado una prueba así',
    other: '# actas aquí tienen al lado una prueba así',
  },
  'a key in a device needs both --pkcs11 and --token':
    'una clave en un dispositivo necesita --pkcs11 y --token',
  'Name the module of its maker, and the label of the token.':
    'Nombre el módulo de su fabricante y la etiqueta del token.',
  '{0} of entries that the log lost, as {1}: once their key has ended no proof from the log can be made for them, and whoever has the new trust list will not trust them':
    '{0} de entradas que el registro perdió, como {1}: cuando termine su clave no se podrá sacar del registro ninguna prueba, y quien tenga la nueva lista de confianza no se fiará',
  'Stamp each of them first: plugmark time-stamp RECORD. Then run the command again with --even-so.':
    'Ponga primero sello de tiempo a cada una: plugmark time-stamp RECORD. Luego repita la orden con --even-so.',
  'a key that was lost cannot be kept': 'una clave perdida no se puede conservar',
  'Leave out --keep or --lost.': 'Quite --keep o --lost.',
  'Passphrase for the old key: ': 'Contraseña para la clave antigua: ',
  'the key {0} still signs': 'la clave {0} aún firma',
  'Make a new one first: plugmark keys rotate': 'Cree primero una nueva: plugmark keys rotate',
  'there is no file of a key {0}': 'no hay archivo de una clave {0}',
  'See "plugmark doctor".': 'Vea "plugmark doctor".',
  '{0} was destroyed. Destroy your copies of it too.': '{0} se destruyó. Destruya también sus copias.',
  'This station has joined no archive, and its file names no witness: there is nobody to send to.':
    'Este puesto no se ha unido a ningún archivo central, y su archivo no nombra ningún testigo: no hay a quién enviar.',
  'Questions about this station. Enter takes the value in brackets; < goes back to the question before, as often as wanted. Ctrl-C cancels; nothing is written.':
    'Preguntas sobre este puesto. Enter toma el valor entre corchetes; < vuelve a la pregunta anterior, cuantas veces quiera. Ctrl-C cancela; no se escribe nada.',
  '{0} will hold:': '{0} contendrá:',
  'Write it and open the station?': '¿Escribirlo y abrir el puesto?',
  'Nothing was written.': 'No se escribió nada.',
  'Name of the station, as records show it': 'Nombre del puesto, como lo muestran las actas',
  'Folder for log, keys and papers': 'Carpeta para el registro, las claves y los documentos',
  'Another tool?': '¿Otra herramienta?',
  'Language of the screen': 'Idioma de la pantalla',
  'Language of the papers': 'Idioma de los documentos',
  'Torque is shown in': 'El par se muestra en',
  'Gaps are shown in': 'La separación se muestra en',
  '{0}; enter this tool again': '{0}; introduzca otra vez esta herramienta',
  'Tool {0}': 'Herramienta {0}',
  'What it measures': 'Qué mide',
  'A short name for it': 'Un nombre corto',
  'Kind of wrench (setting: it clicks)': 'Tipo de llave (setting: salta con un clic)',
  'Serial number on the tool': 'Número de serie en la herramienta',
  'Limit it to its range': 'Limitarla a su rango',
  'From, in N·m or mm': 'Desde, en N·m o mm',
  To: 'Hasta',
  'Calibration certificate (file, relative to the station file)':
    'Certificado de calibración (archivo, visto desde el archivo del puesto)',
  'Permissible deviation, by its class or data sheet': 'Desviación admisible, según su clase u hoja de datos',
  'Percent of the reading': 'Porcentaje de la lectura',
  'Amount, in N·m or mm': 'Valor, en N·m o mm',
  'Step of its display, in N·m or mm': 'Paso de su pantalla, en N·m o mm',
  'Source of this figure': 'Fuente de este valor',
  'calibration certificate': 'certificado de calibración',
  'data sheet': 'hoja de datos',
  Driver: 'Controlador',
  'Bluetooth address': 'Dirección Bluetooth',
  'Bluetooth name': 'Nombre Bluetooth',
  'Profile (file)': 'Perfil (archivo)',
  'Package of the driver (npm)': 'Paquete del controlador (npm)',
  'Serial port': 'Puerto serie',
  'Unit of figures typed without one': 'Unidad de los valores escritos sin ella',
  'Recording (file)': 'Grabación (archivo)',
  Speed: 'Velocidad',
  People: 'Personas',
  'Name of a technician (Enter: no more): ': 'Nombre de un técnico (Enter: nadie más): ',
  'The station {0} is set up.': 'El puesto {0} está preparado.',
  'Next: check the station with "plugmark doctor"; make a key for a person with "plugmark keys technician NAME".':
    'A continuación: compruebe el puesto con "plugmark doctor"; cree una clave para una persona con "plugmark keys technician NAME".',
  'The key is a file. To keep it in a device instead (a smart card or HSM with Ed25519; a TPM has none): "plugmark manual keys".':
    'La clave es un archivo. Para guardarla en un dispositivo (tarjeta inteligente o HSM con Ed25519; un TPM no lo tiene): "plugmark manual keys".',
  'a station file already exists': 'ya existe un archivo del puesto',
  'Edit it by hand, or name another with --station.': 'Modifíquelo a mano, o nombre otro con --station.',
  'plugmark guides and proves a spark plug job. There is no station here yet.':
    'plugmark guía y demuestra un cambio de bujías. Aquí aún no hay ningún puesto.',
  'See a whole job with simulated tools': 'Ver una orden entera con herramientas simuladas',
  'Set this bay up: its tools and its people': 'Preparar este puesto: sus herramientas y su gente',
  'Read how it works': 'Leer cómo funciona',
  'All commands: {0}': 'Todas las órdenes: {0}',
  'Station file: {0}\n': 'Archivo del puesto: {0}\n',
  '{0} station files are in this folder: {1}': 'hay {0} archivos de puesto en esta carpeta: {1}',
  'Name one with --station FILE.': 'Nombre uno con --station FILE.',
  '"{0}" appears twice; give each tool its own name':
    '"{0}" aparece dos veces; dé a cada herramienta su propio nombre',
  'expected one typed tool for {0}; a typed figure does not say which of two it was read off':
    'se espera una sola herramienta de valores escritos para {0}; un valor escrito no dice en cuál de las dos se leyó',
  'there is no station file here': 'aquí no hay ningún archivo del puesto',
  'Write one with "plugmark setup", or name yours with --station FILE.':
    'Escriba uno con "plugmark setup", o nombre el suyo con --station FILE.',
  'PIN of the token {0}: ': 'PIN del token {0}: ',
  'the device with the key needs its PIN': 'el dispositivo con la clave necesita su PIN',
  'Type it, or put it into {0}.': 'Escríbalo, o póngalo en {0}.',
  'the key in the device is not the one that the log names':
    'la clave del dispositivo no es la que nombra el registro',
  'Plug in the device that this station was given.': 'Conecte el dispositivo que se dio a este puesto.',
  "the station's key is revoked and cannot sign": 'la clave del puesto está revocada y no puede firmar',
  'Make a new one with "plugmark keys rotate --lost".': 'Cree una nueva con "plugmark keys rotate --lost".',
  "Passphrase of the station's key: ": 'Contraseña de la clave del puesto: ',
  'the file of the station key is missing': 'falta el archivo de la clave del puesto',
  'Put it back from your copy of the folder keys; a backup of the log does not contain it. If there is no copy: "plugmark keys rotate --lost".':
    'Repóngala desde su copia de la carpeta keys; una copia del registro no la contiene. Si no hay copia: "plugmark keys rotate --lost".',
  '{0}, your PIN to sign (Enter: do not sign): ': '{0}, su PIN para firmar (Enter: no firmar): ',
  'there is no station log in this folder yet': 'en esta carpeta aún no hay registro',
  'It begins with "plugmark setup" or the first job. Another station is named with --station, or by its folder with --data.':
    'Empieza con "plugmark setup" o con la primera orden. Otro puesto se nombra con --station, o por su carpeta con --data.',
  'the log of this station is missing ({0} are still here)':
    'falta el registro de este puesto (aún están {0})',
  'the log of this station is empty ({0} are still here)':
    'el registro de este puesto está vacío (aún están {0})',
  'Restore a backup with "plugmark restore", or rebuild from exported records with "plugmark recover". To start a new log on purpose, name another folder.':
    'Restaure una copia con "plugmark restore", o reconstruya con actas exportadas con "plugmark recover". Para empezar a propósito un registro nuevo, nombre otra carpeta.',
  keys: 'claves',
  'a trust list': 'una lista de confianza',
  'a checkpoint': 'un punto de control',
  certificates: 'certificados',
  'Bluetooth bonds': 'emparejamientos Bluetooth',
  'a log that was set aside': 'un registro apartado',
  "the log's newest entries": 'las últimas entradas del registro',
  '{0} is read-only here; reading a copy.\n': '{0} es de solo lectura aquí; se lee una copia.\n',
  'The tables for look-up were damaged. They were made again from the log, which is whole.\n':
    'Las tablas de consulta estaban dañadas. Se rehicieron a partir del registro, que está íntegro.\n',
  'The last write to the log was cut off, as by a power cut. What it would have shown, nobody was shown.':
    'La última escritura en el registro se cortó, como por un apagón. Lo que habría mostrado no lo vio nadie.',
  'The last write to the log was cut off, as by a power cut: up to {0} entries. What it would have shown, nobody was shown.':
    'La última escritura en el registro se cortó, como por un apagón: hasta {0} entradas. Lo que habría mostrado no lo vio nadie.',
  'jobs listed anew': 'órdenes listadas de nuevo',
  'jobs read for the history': 'órdenes leídas para el historial',
  'this station is not set up': 'este puesto no está preparado',
  'Set it up with "plugmark setup", or open a job.': 'Prepárelo con "plugmark setup", o abra una orden.',
  '{0} was {1}. It was made again from the log. Add the keys of others again: the log does not have them.':
    '{0} estaba {1}. Se rehízo a partir del registro. Añada otra vez las claves de otros: el registro no las tiene.',
  '"{0}" is no step': '"{0}" no es un paso',
  'Give the smallest step of the display, for example 0.01.':
    'Dé el paso más pequeño de la pantalla, por ejemplo 0.01.',
  'Found: {0}.': 'Hallado: {0}.',
  'The figure that was kept back reads {0}.': 'El valor que se guardó aparte se lee {0}.',
  'The profile is in {0}. Bytes that were not seen here are kept raw.':
    'El perfil está en {0}. Los bytes que no se vieron aquí quedan en bruto.',
  'Check "advertised" in it, and try it before you rely on it: plugmark driver check, and a replay of a capture.':
    'Compruebe "advertised" en él, y pruébelo antes de fiarse: plugmark driver check, y la reproducción de una captura.',
  'Not written: more than one layout explains all of it.':
    'No se escribió: más de una estructura lo explica todo.',
  'Not written. {0}': 'No se escribió. {0}',
  capture: 'captura',
  'the capture holds no packets': 'la captura no contiene paquetes',
  'Record the device while it lies untouched.': 'Grabe el aparato mientras está en reposo.',
  '"{0}" is not FIGURE=FILE': '"{0}" no es FIGURE=FILE',
  'For example {0} 25.34=pull.capture.jsonl.': 'Por ejemplo {0} 25.34=pull.capture.jsonl.',
  '"{0}" is no unit of a profile': '"{0}" no es una unidad de perfil',
  'Choose one of: {0}.': 'Elija uno de: {0}.',
  'the trust list cannot be read': 'no se puede leer la lista de confianza',
  'Check the path and the rights on it.': 'Compruebe la ruta y los permisos.',
  empty: 'vacía',
  'damaged; it is kept as {0}': 'dañada; se conserva como {0}',
  bluetooth: 'bluetooth',
  'its software loads; adapter and rights are checked when a tool connects':
    'su software carga; el adaptador y los permisos se comprueban cuando se conecta una herramienta',
  'Plug one in; "bluetoothctl list" shows them.': 'Conecte uno; "bluetoothctl list" los muestra.',
  'no Bluetooth adapter found': 'no se halló ningún adaptador Bluetooth',
  'adapter {0}': 'adaptador {0}',
  '{0}, switched off': '{0}, apagado',
  'Switch it on: rfkill unblock bluetooth': 'Enciéndalo: rfkill unblock bluetooth',
  rights: 'permisos',
  'this user may not use the adapter': 'este usuario no puede usar el adaptador',
  'not known here': 'no se conocen aquí',
  'Bluetooth may be used directly': 'Bluetooth se puede usar directamente',
  'Add this user to the group plugmark, and log in again: sudo adduser "$USER" plugmark':
    'Añada este usuario al grupo plugmark y vuelva a entrar: sudo adduser "$USER" plugmark',
  'Allow the node program to use it: sudo setcap cap_net_raw,cap_net_admin+eip {0}':
    'Permita al programa node usarlo: sudo setcap cap_net_raw,cap_net_admin+eip {0}',
  'Set the clock and keep it set: timedatectl set-ntp true':
    'Ponga el reloj en hora y manténgalo: timedatectl set-ntp true',
  '{0} is not a plausible date': '{0} no es una fecha creíble',
  '{0} is before the newest entry of the log, {1}': '{0} es anterior a la última entrada del registro, {1}',
  '{0} ms against the monotonic clock in {1} ms': '{0} ms respecto al reloj monótono en {1} ms',
  '{0}; moved {1}': '{0}; se movió {1}',
  '{0}; stepped by {1}': '{0}; saltó {1}',
  'Find out what sets the clock. Records contain both clocks.':
    'Averigüe qué ajusta el reloj. Las actas contienen los dos relojes.',
  'clock sync': 'sincronización',
  'synchronised by the network': 'sincronizado por la red',
  'not synchronised': 'no sincronizado',
  node: 'node',
  'Node {0}': 'Node {0}',
  'Node {0}; plugmark needs {1} or newer': 'Node {0}; plugmark necesita {1} o posterior',
  'Install a newer Node.': 'Instale un Node más reciente.',
  disk: 'disco',
  '{0} may not be written to': 'no se puede escribir en {0}',
  'Change its rights, or name another folder under "data".':
    'Cambie sus permisos, o nombre otra carpeta en "data".',
  '{0} MB free at {1}': '{0} MB libres en {1}',
  'Free some space. The log grows with every job.': 'Libere espacio. El registro crece con cada orden.',
  English: 'inglés',
  German: 'alemán',
  French: 'francés',
  Spanish: 'español',
  '; {0} not yet read by a native of the trade':
    '; {0} aún sin leer por nadie del oficio que lo tenga como lengua materna',
  reads: 'idiomas',
  'screen {0}, papers {1}, {2}, {3}{4}': 'pantalla {0}, documentos {1}, {2}, {3}{4}',
  database: 'base de datos',
  'SQLite loads; a commit is on disk (synchronous FULL)':
    'SQLite carga; lo escrito está en el disco (synchronous FULL)',
  'SQLite does not work: {0}': 'SQLite no funciona: {0}',
  'Install plugmark again; its npm package brings SQLite for Linux, macOS and Windows on x64 and arm64.':
    'Instale plugmark de nuevo; su paquete npm trae SQLite para Linux, macOS y Windows en x64 y arm64.',
  'no station log yet in {0}': 'aún no hay registro en {0}',
  'Run "plugmark setup", or open the first job.': 'Ejecute "plugmark setup", o abra la primera orden.',
  '{0}; entries and key not checked': '{0}; entradas y clave sin comprobar',
  'Check it: plugmark log check': 'Compruébelo: plugmark log check',
  '{0} MB, more than the {1} MB that are checked on a copy':
    '{0} MB, más que los {1} MB que se comprueban en una copia',
  'Keep the file as it is. Restore a backup and check it against a checkpoint (plugmark log check).':
    'Deje el archivo como está. Restaure una copia y compárela con un punto de control (plugmark log check).',
  'entry {0}: {1}': 'entrada {0}: {1}',
  'complete; all {0} entries are unchanged': 'completo; las {0} entradas no han cambiado',
  '{0} not as the log says; every verdict and every proof holds':
    '{0} no están como dice el registro; cada veredicto y cada prueba se mantiene',
  'personal texts': 'textos personales',
  'See which with "plugmark log check".': 'Vea cuáles con "plugmark log check".',
  'old key': 'clave antigua',
  '{0} signs no more, and lies here without a passphrase': '{0} ya no firma, y está aquí sin contraseña',
  'Destroy it: plugmark keys destroy {0}. To keep it, lock it: plugmark keys lock':
    'Destrúyala: plugmark keys destroy {0}. Para conservarla, bloquéela: plugmark keys lock',
  'trust list': 'lista de confianza',
  'none yet': 'aún ninguna',
  'It is made with the first key.': 'Se crea con la primera clave.',
  'It is made again from the log when a job is opened or a key is changed.':
    'Se rehace a partir del registro cuando se abre una orden o se cambia una clave.',
  '{0} cannot be read: {1}': '{0} no se puede leer: {1}',
  "{0} does not have the station's key {1}": '{0} no tiene la clave {1} del puesto',
  "{0} keys, the station's own among them": '{0} claves, entre ellas la del puesto',
  '{0}: a key file that the log does not name': '{0}: un archivo de clave que el registro no nombra',
  'Another log was here, or a change of the key was cut short. Look for a backup of that log first ("plugmark restore" compares the two). If there is none: plugmark keys destroy KID':
    'Aquí hubo otro registro, o se cortó un cambio de clave. Busque primero una copia de aquel registro ("plugmark restore" compara los dos). Si no la hay: plugmark keys destroy KID',
  'other keys': 'otras claves',
  key: 'clave',
  '{0} was revoked': '{0} fue revocada',
  'Make a new one: plugmark keys rotate --lost': 'Cree una nueva: plugmark keys rotate --lost',
  '{0}, readable by its owner only': '{0}, legible solo por su dueño',
  '{0}, under a passphrase, readable by its owner only':
    '{0}, bajo una contraseña, legible solo por su dueño',
  '{0}, in the token {1}': '{0}, en el token {1}',
  'Start plugmark in a terminal to get the screen. Plain lines work anywhere.':
    'Inicie plugmark en un terminal para tener la pantalla. Las líneas simples funcionan en cualquier sitio.',
  terminal: 'terminal',
  'none; jobs run in plain lines': 'ninguno; las órdenes se hacen en líneas simples',
  ', with colour': ', con color',
  ', without colour': ', sin color',
  '{0}; the screen needs {1}': '{0}; la pantalla necesita {1}',
  'Make the window larger, or work with --plain.': 'Agrande la ventana, o trabaje con --plain.',
  characters: 'caracteres',
  'not UTF-8; drawn in plain ASCII': 'no UTF-8; se dibuja en ASCII simple',
  'Set LANG to a UTF-8 locale, such as C.UTF-8.': 'Ponga LANG en una configuración UTF-8, como C.UTF-8.',
  'See why, and send what is missing: plugmark log witness':
    'Vea por qué, y envíe lo que falta: plugmark log witness',
  archive: 'archivo central',
  'See why, and ship what is missing: plugmark archive ship':
    'Vea por qué, y envíe lo que falta: plugmark archive ship',
  'none of {0} has cosigned this log yet': 'ninguno de {0} ha cofirmado aún este registro',
  '{0} of {1} cosigned the first {2} of {3} entries that are signed':
    '{0} de {1} cofirmaron las primeras {2} de {3} entradas firmadas',
  '{0}, recorded in steps of 10^{1} {2}': '{0}, registrado en pasos de 10^{1} {2}',
  port: 'puerto',
  '{0} baud': '{0} baudios',
  readings: 'lecturas',
  found: 'hallado',
  'by service {0}': 'por el servicio {0}',
  '{0} of service {1}, {2}{3}': '{0} del servicio {1}, {2}{3}',
  counter: 'contador',
  unit: 'unidad',
  'log and keys': 'registro y claves',
  '{0} (give it to whoever verifies)': '{0} (désela a quien verifica)',
  'not readable': 'no se puede leer',
  'a step': 'un paso',
  'file of the archive': 'fichero del archivo central',
  'what "plugmark archive init" writes': 'lo que escribe "plugmark archive init"',
  'this station has joined no archive': 'este puesto no se ha unido a ningún archivo central',
  'Join one: plugmark archive join URL': 'Únase a uno: plugmark archive join URL',
  'link to the archive': 'enlace con el archivo central',
  'what "plugmark archive join" writes': 'lo que escribe "plugmark archive join"',
  'Try again when it can be reached. Nothing is lost: the log of a station is its outbox, and an archive keeps what it has.':
    'Inténtelo otra vez cuando se pueda alcanzar. No se pierde nada: el registro de un puesto es su bandeja de salida, y un archivo central conserva lo que tiene.',
  'what answers there is no archive': 'lo que responde allí no es un archivo central',
  'Take the address that "plugmark archive serve" printed.':
    'Use la dirección que mostró "plugmark archive serve".',
  'a station joins an archive over https alone, but for one on this computer':
    'un puesto solo se une a un archivo central por https, salvo a uno en este ordenador',
  'Take the address that begins with https://.': 'Use la dirección que empieza por https://.',
  'One-time token of {0}: ': 'Token de un solo uso de {0}: ',
  'entries fetched': 'entradas recuperadas',
  'the archive gave nothing back: it answered {0}': 'el archivo central no devolvió nada: respondió {0}',
  'Ask whoever runs the archive for a new token (plugmark archive give-back): each is good once.':
    'Pida a quien lleva el archivo central un token nuevo (plugmark archive give-back): cada uno vale una vez.',
  'silent for too long': 'en silencio demasiado tiempo',
  'its answer broke off, or is not what an archive sends':
    'su respuesta se cortó, o no es lo que envía un archivo central',
  'Ask whoever runs the archive for a new token (plugmark archive give-back): each is good once. Nothing was put in place.':
    'Pida a quien lleva el archivo central un token nuevo (plugmark archive give-back): cada uno vale una vez. No se repuso nada.',
  'what the archive gave back is not the log that was signed, or not all of it':
    'lo que devolvió el archivo central no es el registro que se firmó, o no entero',
  'Have it looked at by whoever runs the archive: plugmark archive check. Nothing was put in place.':
    'Haga que lo examine quien lleva el archivo central: plugmark archive check. No se repuso nada.',
  'an archive is here already': 'aquí ya hay un archivo central',
  'Use it, or name another folder with --data.': 'Úselo, o nombre otra carpeta con --data.',
  "Passphrase for the archive's key (Enter: none): ":
    'Contraseña para la clave del archivo central (Enter: ninguna): ',
  'Archive {0} made in {1}.': 'Archivo central {0} creado en {1}.',
  'Its key has no passphrase: whoever reads the file can sign as this archive.':
    'Su clave no tiene contraseña: quien lea el archivo puede firmar como este archivo central.',
  "Its verifier keys are in {0}: give them to those who verify. What it keeps, plates and names with it, lies in this folder or in the database that you name: keep both as you keep the shop's books.":
    'Sus claves de verificación están en {0}: déselas a quienes verifican. Lo que guarda, matrículas y nombres incluidos, está en esta carpeta o en la base de datos que usted nombre: guarde ambas como los libros del taller.',
  'To be safe in a network: name --certificate and --key when it listens beyond this computer; it refuses to do so without them. Nobody can enrol a station without a one-time token of yours.':
    'Para estar seguro en una red: nombre --certificate y --key cuando escuche más allá de este ordenador; sin ellos se niega. Nadie puede inscribir un puesto sin un token de un solo uso suyo.',
  'Next: plugmark archive enrol --tenant SHOP, then plugmark archive serve.':
    'A continuación: plugmark archive enrol --tenant SHOP, luego plugmark archive serve.',
  'this station has joined an archive already': 'este puesto ya se ha unido a un archivo central',
  'Remove the file to join another one; what the first one has, it keeps.':
    'Quite el archivo para unirse a otro; lo que tiene el primero lo conserva.',
  'the archive did not take the station: {0}': 'el archivo central no admitió el puesto: {0}',
  'Ask whoever runs the archive for a new token (plugmark archive enrol): each is good once.':
    'Pida a quien lleva el archivo central un token nuevo (plugmark archive enrol): cada uno vale una vez.',
  'the archive answered with another log, or with keys that cannot cosign':
    'el archivo central respondió con otro registro, o con claves que no pueden cofirmar',
  'Have it looked at by whoever runs the archive. The station has not joined it.':
    'Haga que lo examine quien lleva el archivo central. El puesto no se ha unido.',
  '{0} has joined {1}.': '{0} se ha unido a {1}.',
  'Next: plugmark archive ship. It ships whatever the archive has not got; the log itself is the outbox.':
    'A continuación: plugmark archive ship. Envía lo que el archivo central no tiene; el propio registro es la bandeja de salida.',
  'Archive {0}, {1}': 'Archivo central {0}, {1}',
  '# station|# stations': { one: '# puesto', other: '# puestos' },
  'nothing cosigned yet': 'nada cofirmado aún',
  '{0} entries, cosigned': '{0} entradas, cofirmadas',
  ', {0} more on the way': ', {0} más en camino',
  '; FROZEN: it showed two histories (plugmark archive faults)':
    '; BLOQUEADO: mostró dos historias (plugmark archive faults)',
  'signed another log of the same size: its history was rewritten':
    'firmó otro registro de la misma longitud: se reescribió su historia',
  'offered a log that does not go on from the one that the archive has':
    'presentó un registro que no continúa el que tiene el archivo central',
  'has a key that named two others: somebody works with a copy of its folder':
    'tiene una clave que nombró otras dos: alguien trabaja con una copia de su carpeta',
  'No station has shown two histories.': 'Ningún puesto ha mostrado dos historias.',
  whole: 'íntegro',
  DAMAGED: 'DAÑADO',
  'The archive has no station yet.': 'El archivo central aún no tiene ningún puesto.',
  'entry {0} is missing': 'falta la entrada {0}',
  'entry {0} was changed': 'la entrada {0} se cambió',
  'its entries do not lead to the root that was cosigned': 'sus entradas no llevan a la raíz cofirmada',
  "Passphrase of the archive's key: ": 'Contraseña de la clave del archivo central: ',
  '# log|# logs': { one: '# registro', other: '# registros' },
  'Archive {0} listens on {1} and has {2}. Ctrl-C ends it.':
    'El archivo central {0} escucha en {1} y tiene {2}. Ctrl-C lo termina.',
  'Ended. All that was acknowledged is on disk.': 'Terminado. Todo lo confirmado está en el disco.',
  'Nothing is signed yet, so there is nothing to ship.':
    'Aún no hay nada firmado, así que no hay nada que enviar.',
  'entries shipped': 'entradas enviadas',
  '{0} has all {1} entries and cosigned them. The receipt lies beside the log and its records.':
    '{0} tiene las {1} entradas y las cofirmó. El recibo está junto al registro y sus actas.',
  'Archive {0} at {1}': 'Archivo central {0} en {1}',
  'It has {0} entries of this log, and this log has {1}: an old copy was put back, or its end was cut off. Run "plugmark log check".':
    'Tiene {0} entradas de este registro, y este registro tiene {1}: se repuso una copia antigua, o se cortó su final. Ejecute "plugmark log check".',
  'It has all {0} entries.': 'Tiene las {0} entradas.',
  'It has {0} of {1} entries; {2} are to be shipped: plugmark archive ship':
    'Tiene {0} de {1} entradas; {2} están por enviar: plugmark archive ship',
  'checkpoint of the archive': 'punto de control del archivo central',
  'the archive answered without a cosignature by its own keys':
    'el archivo central respondió sin cofirma de sus propias claves',
  'Have it looked at by whoever runs the archive. What was shipped may not be kept.':
    'Haga que lo examine quien lleva el archivo central. Puede que lo enviado no esté guardado.',
  'the archive has {0} entries of this log, and this log has {1}: an old copy was put back, or its end was cut off':
    'el archivo central tiene {0} entradas de este registro, y este registro tiene {1}: se repuso una copia antigua, o se cortó su final',
  'Start no new job. Restore the newest backup: plugmark restore FILE. Where none has that many entries, show this to whoever runs the archive.':
    'No empiece ninguna orden nueva. Restaure la copia más reciente: plugmark restore FILE. Si ninguna tiene tantas entradas, muestre esto a quien lleva el archivo central.',
  'the archive has another history of this log: {0}':
    'el archivo central tiene otra historia de este registro: {0}',
  'Run "plugmark log check", and show both to whoever runs the archive: plugmark archive faults.':
    'Ejecute "plugmark log check", y muestre ambas a quien lleva el archivo central: plugmark archive faults.',
  'the archive took nothing: {0}': 'el archivo central no aceptó nada: {0}',
  'Where a copy of this station has a newer key, go on with that one alone. Otherwise show this to whoever runs the archive.':
    'Si una copia de este puesto tiene una clave más reciente, siga solo con ella. Si no, muestre esto a quien lleva el archivo central.',
  'Try again later. Nothing is lost: the log is the outbox.':
    'Inténtelo más tarde. No se pierde nada: el registro es la bandeja de salida.',
  'this is not the key of a log that the archive has':
    'esta no es la clave de un registro que tenga el archivo central',
  'Take what "plugmark log vkey" prints at the station, from somebody whom you know.':
    'Use lo que muestra "plugmark log vkey" en el puesto, de alguien a quien conozca.',
  "{0} signs with this key from now on. The archive has nobody's word for it but yours.":
    '{0} firma desde ahora con esta clave. El archivo central solo tiene su palabra.',
  '{0} signs with this key already.': '{0} ya firma con esta clave.',
  '"{0}" cannot be the name of a tenant': '"{0}" no puede ser el nombre de un inquilino',
  'Take small letters, digits and hyphens: north-street.': 'Use minúsculas, cifras y guiones: north-street.',
  'the archive has nothing cosigned of a log "{0}"':
    'el archivo central no tiene nada cofirmado de un registro "{0}"',
  'Take the origin that "plugmark archive stations" prints behind the station.':
    'Use el origen que "plugmark archive stations" muestra tras el puesto.',
  'Good once, for {0}. At the station: {1}, and give it this token.\n':
    'Vale una vez, durante {0}. En el puesto: {1}, y dele este token.\n',
  certificate: 'certificado',
  '{0} names {1} on other vehicles': '{0} nombra {1} en otros vehículos',
  'work order': 'orden de trabajo',
  'there is no simulated technician "{0}"': 'no hay ningún técnico simulado "{0}"',
  'no more events are written: {0}': 'ya no se escriben eventos: {0}',
  'The job goes on. The log contains all of them.': 'La orden sigue. El registro los contiene todos.',
  'nobody reads this pipe': 'nadie lee esta tubería',
  'Start its reader first.': 'Inicie primero su lector.',
  'this is no file and no pipe': 'esto no es ni un archivo ni una tubería',
  'Name a file, a named pipe, or - for the standard output.':
    'Nombre un archivo, una tubería con nombre, o - para la salida estándar.',
  '  NOT POSSIBLE    {0}': '  NO ES POSIBLE   {0}',
  '  no papers: the record is not as its station sealed it':
    '  sin documentos: el acta no está como la selló su puesto',
  '  papers        {0}, {1}': '  documentos    {0}, {1}',
  'this folder is a package, and whatever is added to it shows as a fault':
    'esta carpeta es un paquete, y lo que se le añada se muestra como fallo',
  'this record of the job is not from this log, and is never overwritten':
    'esta acta de la orden no es de este registro, y nunca se sobrescribe',
  'Keep it: move it to another folder. Then run "plugmark jobs papers".':
    'Consérvela: muévala a otra carpeta. Luego ejecute "plugmark jobs papers".',
  'the name of the technician is missing in the log, and no entry says that it was forgotten':
    'falta el nombre del técnico en el registro, y ninguna entrada dice que se olvidó',
  'Run "plugmark log check". The record that was sealed before stays good.':
    'Ejecute "plugmark log check". El acta sellada antes sigue valiendo.',
  'the job has {0}': 'la orden tiene {0}',
  'Nothing is lost: the station log contains all of it. Keep station.db and a checkpoint of it as evidence.':
    'No se pierde nada: el registro lo contiene todo. Conserve station.db y un punto de control como prueba.',
  trace: 'traza',
  '{0}: {1} samples in {2} s, {3} above {4} N·m': '{0}: {1} muestras en {2} s, {3} por encima de {4} N·m',
  '# pull|# pulls': { one: '# tirón', other: '# tirones' },
  '  row {0}: {1}': '  fila {0}: {1}',
  '  and {0} more rows like these': '  y {0} filas más como estas',
  'click {0} N·m, fell by {1} %': 'clic a {0} N·m, cayó un {1} %',
  'no click': 'sin clic',
  'a click could not be seen': 'no se podía ver un clic',
  'the readings reached the end of the scale': 'las lecturas llegaron al final de la escala',
  'the readings end in the middle of the pull': 'las lecturas terminan en mitad del tirón',
  'the zero was not settled': 'el cero no estaba estable',
  'pull {0}: peak {1} N·m (u = {2}) at {3} s; {4}': 'tirón {0}: pico {1} N·m (u = {2}) a {3} s; {4}',
  '  from {0} to {1} s, rise {2} ms, highest reading {3} N·m, zero {4} N·m, noise {5} N·m':
    '  de {0} a {1} s, subida {2} ms, lectura más alta {3} N·m, cero {4} N·m, ruido {5} N·m',
  '  turned {0}° to the peak, {1}° of it from 10 %; work {2} J':
    '  giró {0}° hasta el pico, {1}° de ellos desde el 10 %; trabajo {2} J',
  '  by its angle: {0}': '  por su ángulo: {0}',
  '  note: {0}': '  nota: {0}',
  'a plug that was already tight, or a missing gasket': 'una bujía ya apretada, o una junta que falta',
  'a used gasket, or a conical seat': 'una junta usada, o un asiento cónico',
  'a new gasket': 'una junta nueva',
  'more than one gasket': 'más de una junta',
  'it turned far and evenly, like a binding thread': 'giró mucho y por igual, como una rosca que se agarrota',
  'P peak': 'P pico',
  'P peak, c click': 'P pico, c clic',
  'expected a torque above 0 N·m, found "{0}"': 'se espera un par mayor que 0 N·m, se halló "{0}"',
  'Give the lower limit of the window in N·m, or leave it out.':
    'Dé el límite inferior de la ventana en N·m, u omítalo.',
  '"{0}" is no unit of time here': '"{0}" no es aquí una unidad de tiempo',
  '"{0}" is no unit of torque': '"{0}" no es una unidad de par',
  'Choose for example N·m, lbf·ft, lbf·in, kgf·m or kgf·cm.':
    'Elija por ejemplo N·m, lbf·ft, lbf·in, kgf·m o kgf·cm.',
  'the station has no tool that measures {0}': 'el puesto no tiene ninguna herramienta que mida {0}',
  'Name a station file that has one.': 'Nombre un archivo del puesto que la tenga.',
  'Saved in {0} as job {1}.\n': 'Guardado en {0} como orden {1}.\n',
  recording: 'grabación',
  'expected a factor above 0, found "{0}"': 'se espera un factor mayor que 0, se halló "{0}"',
  'Give 1 for the speed of the recording. Leave it out to run as fast as possible.':
    'Dé 1 para la velocidad de la grabación. Omítalo para ir lo más rápido posible.',
  scenario: 'escenario',
  'wait {0} ms': 'esperar {0} ms',
  '{0}: pull to {1} N·m{2}': '{0}: tirón hasta {1} N·m{2}',
  ', no click': ', sin clic',
  '{0}: gap {1} mm': '{0}: separación {1} mm',
  '{0}: no value': '{0}: sin valor',
  '{0}: bytes {1}': '{0}: bytes {1}',
  '{0}: silent for {1} ms': '{0}: en silencio {1} ms',
  '{0}: unplugged for {1} ms': '{0}: desconectada {1} ms',
  'something lies here already, and is not overwritten by a pseudo-terminal':
    'aquí ya hay algo, y un pseudoterminal no lo sobrescribe',
  'Name another port in the scenario, or remove it.': 'Nombre otro puerto en el escenario, o quítelo.',
  'no pseudo-terminal can be made here': 'aquí no se puede crear un pseudoterminal',
  'Name a port in a folder that you may write to, such as /tmp.':
    'Nombre un puerto en una carpeta en la que pueda escribir, como /tmp.',
  'socat is not installed; it makes the pseudo-terminals':
    'socat no está instalado; crea los pseudoterminales',
  'Install it: apt-get install socat.': 'Instálelo: apt-get install socat.',
  'the folder of the specifications cannot be read': 'la carpeta de las especificaciones no se puede leer',
  '{0} already has the name "{1}"': '{0} ya tiene el nombre "{1}"',
  'Choose another name. A new edition of a source is a new entry.':
    'Elija otro nombre. Una nueva edición de una fuente es una entrada nueva.',
  'The library {0} is empty. Add one with "plugmark specifications add".':
    'La biblioteca {0} está vacía. Añada una con "plugmark specifications add".',
  'No specification matches.': 'Ninguna especificación coincide.',
  '{0} not readable; see "plugmark specifications check"':
    '{0} no se pueden leer; vea "plugmark specifications check"',
  '{0} match': '{0} coinciden',
  'Name one as "plugmark specifications" lists it.': 'Nombre una como la lista "plugmark specifications".',
  '{0} is in the library: {1}': '{0} está en la biblioteca: {1}',
  WRONG: 'MAL',
  '{0} specifications, {1} wrong': '{0} especificaciones, {1} mal',
  NOTE: 'NOTA',
  '{0}: put there or changed by hand; the log learns of it with the first job':
    '{0}: puesta o cambiada a mano; el registro lo sabe con la primera orden',
  'Give --name and --by.': 'Dé --name y --by.',
  'neither a torque nor an order was named': 'no se nombró ni un par ni una orden',
  'Type a range, for example "25-30 N·m", or give --order FILE.':
    'Escriba un rango, por ejemplo "25-30 N·m", o dé --order FILE.',
  'Give both --arm and --offset in mm, and --angle in degrees.':
    'Dé --arm y --offset en mm, y --angle en grados.',
  'Give the bend in degrees, for example 10.': 'Dé el ángulo de doblado en grados, por ejemplo 10.',
  'Add a tool with "quantity": "torque" to the station file.':
    'Añada al archivo del puesto una herramienta con "quantity": "torque".',
  'Choose simple, guard-band, iso-14253-1 or probability.':
    'Elija simple, guard-band, iso-14253-1 o probability.',
  '"{0}" is no date': '"{0}" no es una fecha',
  'Write it as 2026-05-04.': 'Escríbala como 2026-05-04.',
  'nothing says where the countersigned record goes': 'nada dice adónde va el acta refrendada',
  'Name a file with --out.': 'Nombre un archivo con --out.',
  'Passphrase of your key: ': 'Contraseña de su clave: ',
  '{0}: countersigned with {1}.\n': '{0}: refrendada con {1}.\n',
  'there is no kind of personal text "{0}"': 'no hay ninguna clase de texto personal "{0}"',
  'Choose from: {0}; or all.': 'Elija de: {0}; o all.',
  'it is no plain file': 'no es un archivo simple',
  'it has {0} bytes, and no such file has more than {1}':
    'tiene {0} bytes, y ningún archivo así tiene más de {1}',
  package: 'paquete',
  'this file of the package is not read: {0}': 'este archivo del paquete no se lee: {0}',
  'the folder holds something already, and every file of a package is in its index':
    'la carpeta ya contiene algo, y cada archivo de un paquete está en su índice',
  'Name a new folder with --out.': 'Nombre una carpeta nueva con --out.',
  '    and {0} more: see {1}': '    y {0} más: vea {1}',
  '  left out: job {0}, {1}': '  se omite: orden {0}, {1}',
  '{0}: {1}, {2}, {3} files, and an index that the station signed.':
    '{0}: {1}, {2}, {3} archivos y un índice que firmó el puesto.',
  'no papers': 'sin documentos',
  '  {0} in it put in question by a later impact assessment; the index says which.':
    '  {0} en él puestas en duda por una evaluación de impacto posterior; el índice dice cuáles.',
  '  Check it with: plugmark verify {0} --trust YOUR-LIST':
    '  Verifíquelo con: plugmark verify {0} --trust YOUR-LIST',
  "  YOUR-LIST is the station's {0}, had by another way; the one in the package is no trust.":
    '  YOUR-LIST es el {0} del puesto, obtenido por otra vía; el del paquete no da confianza.',
  '# paper|# papers': { one: '# documento', other: '# documentos' },
  'no job matches what was asked for': 'ninguna orden coincide con lo que se pidió',
  '{0}: no page: the record is not as its station sealed it. See "plugmark verify".':
    '{0}: sin página: el acta no está como la selló su puesto. Vea "plugmark verify".',
  '{0}: job {1} with the page that verifies it. It opens in any browser, without a network.':
    '{0}: orden {1} con la página que verifica. Se abre en cualquier navegador, sin red.',
  '  All that the record says goes with it: "plugmark share" makes one that says less.':
    '  Todo lo que dice el acta va con ella: "plugmark share" hace una que dice menos.',
  '  Whoever opens it needs your trusted-keys.json, and has to get it from you by another way than this file.':
    '  Quien la abra necesita su trusted-keys.json, y debe recibirlo de usted por otra vía que este archivo.',
  'no pull was given to a cylinder': 'no se asignó ningún tirón a un cilindro',
  'no pull {0} was given to a cylinder': 'no se asignó ningún tirón {0} a un cilindro',
  'There is nothing to draw.': 'No hay nada que dibujar.',
  'Name one of these with --pull: {0}.': 'Nombre uno de estos con --pull: {0}.',
  policy: 'política',
  'nothing says where the record goes': 'nada dice adónde va el acta',
  '{0}: the same record, under the same signatures.': '{0}: la misma acta, con las mismas firmas.',
  '  The job number, the odometer and the texts of the program stay in it.':
    '  El número de orden, el kilometraje y los textos del programa quedan en ella.',
  'a time stamp is kept beside its record, so the record must be a file':
    'un sello de tiempo se guarda junto a su acta, así que el acta debe ser un archivo',
  'its answer does not hold: {0}': 'su respuesta no se sostiene: {0}',
  'it answered another question': 'respondió a otra pregunta',
  '{0}: stamped before {1}.\n': '{0}: sellado antes de {1}.\n',
  'Give its certificates with --ca FILE.': 'Dé sus certificados con --ca FILE.',
  'time stamp': 'sello de tiempo',
  'Give the certificates of the authority as PEM.': 'Dé los certificados de la autoridad en PEM.',
  'it answered with {0}': 'responde con {0}',
  'it cannot be reached': 'no se puede alcanzar',
  'Try again later, or another authority.': 'Inténtelo más tarde, o con otra autoridad.',
  'No package was made.': 'No se hizo ningún paquete.',
  'the manual has no topic "{0}"': 'el manual no tiene el tema "{0}"',
  'Written to {0}: {1} pages.\n': 'Escrito en {0}: {1} páginas.\n',
  logo: 'logotipo',
  routine: 'rutina',
  'Left before the first reading. Nothing was kept.':
    'Se dejó antes de la primera lectura. No se guardó nada.',
  'Recorded as {0}.': 'Registrado como {0}.',
  '{0} are kept. Go on with: {1}': '{0} quedan guardadas. Siga con: {1}',
  'a study of a wrench needs the torque to pull to, above zero':
    'un estudio de una llave necesita el par hasta el que se tira, mayor que cero',
  'Give it in N·m: --at 25.': 'Délo en N·m: --at 25.',
  'the station file names no tool {0}': 'el archivo del puesto no nombra ninguna herramienta {0}',
  'Use a name from the station file.': 'Use un nombre del archivo del puesto.',
  'a new study needs a tool and the people who measure with it':
    'un estudio nuevo necesita una herramienta y las personas que miden con ella',
  'Add --tool ID and --appraisers "A,B,C". Or go on with an open one: --resume GS-1.':
    'Añada --tool ID y --appraisers "A,B,C". O siga con uno abierto: --resume GS-1.',
  'this study was started with a tool without a serial number; in the station file {0} is another tool':
    'este estudio empezó con una herramienta sin número de serie; en el archivo del puesto {0} es otra herramienta',
  'this study was started with serial number {0}; in the station file {1} is another tool':
    'este estudio empezó con el número de serie {0}; en el archivo del puesto {1} es otra herramienta',
  'Go on with the tool that it was started with, or start a new study.':
    'Siga con la herramienta con la que empezó, o empiece un estudio nuevo.',
  'That line is too long, and is not taken.': 'Esta línea es demasiado larga y no se acepta.',
  'Type "back" to take the last reading back, "pause" to stop and go on, "quit" to leave. Readings taken are kept.':
    '"back" retira la última lectura, "pause" detiene y reanuda, "quit" sale. Las lecturas tomadas se guardan.',
  'The tool is connected.': 'La herramienta está conectada.',
  'The tool is lost: {0}. Waiting for it.': 'Se perdió la conexión con la herramienta: {0}. Se la espera.',
  '  set aside': '  apartada',
  'Paused: no reading is taken. Type "pause" to go on.':
    'En pausa: no se toma ninguna lectura. "pause" reanuda.',
  'That is outside the usual {0} to {1} {2} and does not count yet. Measure the part again. Or press Enter to take it as it is, or type "back" to drop it.':
    'Está fuera de lo habitual, de {0} a {1} {2}, y aún no cuenta. Mida la pieza otra vez. O Enter para tomarla así, o "back" para descartarla.',
  '  taken, {0} left': '  tomada, quedan {0}',
  '  taken back: {0}, part {1}, trial {2}': '  retirada: {0}, pieza {1}, intento {2}',
  'All is measured. Press Enter to record it, or type "back" to take the last reading back.':
    'Todo está medido. Enter lo registra, "back" retira la última lectura.',
  '[{0} of {1}] trial {2}: {3}, measure part {4}': '[{0} de {1}] intento {2}: {3}, mida la pieza {4}',
  'No gauge study yet.': 'Aún no hay ningún estudio de medición.',
  study: 'estudio',
  finished: 'terminado',
  tool: 'herramienta',
  'appraisers x parts x trials': 'operadores x piezas x intentos',
  'why given up': 'por qué se abandonó',
  'open, {0} of {1}': 'abierto, {0} de {1}',
  'given up, {0} of {1}': 'abandonado, {0} de {1}',
  ', on {0}: {1}': ', el {0}: {1}',
  '{0}: {1} readings{2}': '{0}: {1} lecturas{2}',
  'Readings typed: {0}. Taken back: {1}.': 'Lecturas escritas: {0}. Retiradas: {1}.',
  '{0}: this study says nothing about the tool.': '{0}: este estudio no dice nada de la herramienta.',
  'NOT AS TAKEN: these are not the readings that the log holds one by one.':
    'NO COMO SE TOMARON: estas no son las lecturas que el registro contiene una a una.',
  '{0} is given up. Its readings stay in the log.':
    '{0} queda abandonado. Sus lecturas siguen en el registro.',
  'another program started a study of this number meanwhile; the reading that came here was not kept':
    'otro programa empezó entretanto un estudio con este número; la lectura que llegó aquí no se guardó',
  'Start again: the study gets the next number.': 'Empiece de nuevo: el estudio recibe el número siguiente.',
  'another program works on this study and has {0} readings; what came here was not kept':
    'otro programa trabaja en este estudio y tiene {0} lecturas; lo que llegó aquí no se guardó',
  'Go on there. Or end that program and go on here: --resume {0}.':
    'Siga allí. O cierre aquel programa y siga aquí: --resume {0}.',
  'average, range': 'media, rango',
  'variance (ANOVA)': 'varianza (ANOVA)',
  'ANOVA with the interaction pooled into the error.': 'ANOVA con la interacción agrupada en el error.',
  'ANOVA with its interaction.': 'ANOVA con su interacción.',
  'See it again: plugmark gauge-study show {0}': 'Véalo otra vez: plugmark gauge-study show {0}',
  'the output': 'la salida',
  'this is no language that the program knows': 'este no es un idioma que el programa conozca',
  'Give a language like de, fr-CH or en-GB, or none.': 'Dé un idioma como de, fr-CH o en-GB, o none.',
  'a fault in the program itself: {0}': 'un fallo del propio programa: {0}',
  'Nothing on disk is lost. Run it again with PLUGMARK_TRACE=1 and report the details.':
    'No se pierde nada en el disco. Ejecútelo otra vez con PLUGMARK_TRACE=1 y comunique los detalles.',
  'the work order cannot be read: it is a terminal': 'la orden de trabajo no se puede leer: es un terminal',
  'the work order is larger than 1 MB': 'la orden de trabajo supera 1 MB',
  'expected 1 to {0} characters': 'se esperan de 1 a {0} caracteres',
  'Write it in at most {0} characters.': 'Escríbalo en {0} caracteres como máximo.',
  '[{0}] {1} of {2} {3}, {4} left': '[{0}] {1} de {2} {3}, quedan {4}',
  "Passphrase for the witness's key (Enter: none): ":
    'Contraseña para la clave del testigo (Enter: ninguna): ',
  'Witness {0} made in {1}.': 'Testigo {0} creado en {1}.',
  'Its key has no passphrase: whoever reads the file can sign as this witness.':
    'Su clave no tiene contraseña: quien lea el archivo puede firmar como este testigo.',
  'Its verifier keys, Ed25519 and ML-DSA-44, are in {0}. Give them to the stations that it is to cosign, and to those who verify.':
    'Sus claves de verificación, Ed25519 y ML-DSA-44, están en {0}. Déselas a los puestos que ha de cofirmar y a quienes verifican.',
  'Next: plugmark witness add LOG-VKEY, with what "plugmark log vkey" prints at the station.':
    'A continuación: plugmark witness add LOG-VKEY, con lo que muestra "plugmark log vkey" en el puesto.',
  '"{0}" cannot be the name of a witness': '"{0}" no puede ser el nombre de un testigo',
  'Name it like an address, without spaces and plus: example.com/witness.':
    'Nómbrelo como una dirección, sin espacios ni signos más: example.com/witness.',
  'this is not an address and a port': 'esto no es una dirección y un puerto',
  'Name both, like 127.0.0.1:8017 or [::1]:8017.': 'Nombre ambos, como 127.0.0.1:8017 o [::1]:8017.',
  'a server with TLS needs its certificate and its key':
    'un servidor con TLS necesita su certificado y su clave',
  'Name both files with --certificate and --key.': 'Nombre los dos archivos con --certificate y --key.',
  'other computers would reach this server without TLS':
    'otros ordenadores llegarían a este servidor sin TLS',
  'Name --certificate and --key. Where a proxy in front of it does TLS, say so with --without-tls.':
    'Nombre --certificate y --key. Si un proxy delante hace TLS, dígalo con --without-tls.',
  'another program listens there': 'allí escucha otro programa',
  'this user may not listen there': 'este usuario no puede escuchar allí',
  'this computer does not have that address': 'este ordenador no tiene esa dirección',
  'nobody knows that name': 'nadie conoce ese nombre',
  'Name another address with --listen.': 'Nombre otra dirección con --listen.',
  'The log {0} is known now.': 'El registro {0} ya es conocido.',
  'The log {0} was known with this key before.': 'El registro {0} ya se conocía con esta clave.',
  'Witness {0}, {1}': 'Testigo {0}, {1}',
  '{0} entries, cosigned on {1}': '{0} entradas, cofirmadas el {1}',
  '; TWO HISTORIES: it signed another log of the same size ({0} kept)':
    '; DOS HISTORIAS: firmó otro registro de la misma longitud ({0} guardados)',
  'this is not the verifier key of a log (Ed25519)':
    'esta no es la clave de verificación de un registro (Ed25519)',
  'Take what "plugmark log vkey" prints at the station, and put it between quotes.':
    'Use lo que muestra "plugmark log vkey" en el puesto, y póngalo entre comillas.',
  "Passphrase of the witness's key: ": 'Contraseña de la clave del testigo: ',
  'Witness {0} listens on {1} and knows {2}. Ctrl-C ends it.':
    'El testigo {0} escucha en {1} y conoce {2}. Ctrl-C lo termina.',
  'Ended. All that was cosigned is on disk.': 'Terminado. Todo lo cofirmado está en el disco.',
  ' (and {0} more)': ' (y {0} más)',
  'no permission for this place': 'sin permiso para este lugar',
  'Check the rights on it, or name another place.': 'Compruebe los permisos, o nombre otro lugar.',
  'nothing can be written here: the file system is read-only':
    'aquí no se puede escribir: el sistema de archivos es de solo lectura',
  'Name another place.': 'Nombre otro lugar.',
  'the disk is full': 'el disco está lleno',
  'Make room on it, or name a place on another one.': 'Haga sitio, o nombre un lugar en otro.',
  'the disk is full: no more may be kept on it': 'el disco está lleno: no se puede guardar más en él',
  'the disk did not do what was asked of it': 'el disco no hizo lo que se le pidió',
  'Check the disk, or name a place on another one.': 'Compruebe el disco, o nombre un lugar en otro.',
  'this is a folder, and a file was expected': 'esto es una carpeta, se esperaba un archivo',
  'Name a file.': 'Nombre un archivo.',
  'a part of this path is a file, and a folder was expected':
    'una parte de esta ruta es un archivo, se esperaba una carpeta',
  'Check the path.': 'Compruebe la ruta.',
  'there is no such file or folder': 'no hay tal archivo o carpeta',
  'something lies here already': 'aquí ya hay algo',
  'the name is too long for this file system': 'el nombre es demasiado largo para este sistema de archivos',
  'Name it shorter.': 'Póngale un nombre más corto.',
  'links lead from here in a circle': 'los enlaces llevan desde aquí en círculo',
  'the program may not open as many files as it needs':
    'el programa no puede abrir tantos archivos como necesita',
  'Allow it at least 256: ulimit -n 256, or LimitNOFILE= of the service that starts it.':
    'Permítale al menos 256: ulimit -n 256, o LimitNOFILE= del servicio que lo inicia.',
  'this computer has no more files to open': 'este ordenador no puede abrir más archivos',
  'Close other programs, then try again.': 'Cierre otros programas e inténtelo otra vez.',
  'standard input': 'entrada estándar',
  'no such file': 'no hay tal archivo',
  'no permission to read it': 'sin permiso para leerlo',
  'Check the rights on it.': 'Compruebe los permisos.',
  'it is a folder': 'es una carpeta',
  'it is a device': 'es un dispositivo',
  'Name a file, or - for the standard input.': 'Nombre un archivo, o - para la entrada estándar.',
  'it is a terminal': 'es un terminal',
  'Pipe a file into the command, or name one.': 'Dirija un archivo a la orden, o nombre uno.',
  'the {0} cannot be read: {1}': 'no se puede leer ({0}): {1}',
  'the {0} is larger than {1} MB': 'demasiado grande ({0}): más de {1} MB',
  'This is hardly the right file.': 'Difícilmente es el archivo correcto.',
  'the name of the folder is empty': 'el nombre de la carpeta está vacío',
  'Name a folder.': 'Nombre una carpeta.',
  'this is a link, and no file is written through a link':
    'esto es un enlace, y no se escribe ningún archivo a través de un enlace',
  'Name the file itself, or a new one.': 'Nombre el archivo mismo, o uno nuevo.',
  'a file is there already': 'ya hay un archivo',
  'the file cannot be written': 'el archivo no se puede escribir',
  'Name another file with --out.': 'Nombre otro archivo con --out.',
  'This is not a figure.': 'Esto no es un valor.',
  'Too soon after the last reading: not taken.': 'Demasiado pronto tras la última lectura: no se toma.',
  'The pull was cut off. Pull again.': 'El tirón se cortó. Tire otra vez.',
  "The pull reached the end of the tool's scale. Pull again.":
    'El tirón llegó al final de la escala de la herramienta. Tire otra vez.',
  'That pull loosened: not taken.': 'Ese tirón aflojó: no se toma.',
  'A reading from the memory of the tool is not taken: nobody saw which part it belongs to.':
    'Una lectura de la memoria de la herramienta no se toma: nadie vio a qué pieza pertenece.',
  'The tool sent no value. Measure again.': 'La herramienta no envió ningún valor. Mida otra vez.',
};
