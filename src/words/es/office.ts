/** Spanish for the commands of the office. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  'Give it as "plugmark devices scan" shows it.': 'Indíquelo como lo muestra «plugmark devices scan».',
  'Record the device again.': 'Grabe el aparato otra vez.',
  'the characteristic {0} sent packets, and the capture does not list it as one that sends':
    'la característica {0} ha enviado paquetes, y la captura no la incluye entre las que envían',
  'this is longer than any serial number': 'esto es más largo que cualquier número de serie',
  'this is no UUID of 4 or 32 digits': 'esto no es un UUID de 4 o 32 dígitos',
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
  '{0}, the last entry {1}': '{0}, la última entrada {1}',
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
  'All {0} entries are as they were written, and the hash tree over them is whole.':
    'Las {0} entradas están como se escribieron, y el árbol de resúmenes sobre ellas está íntegro.',
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
  'Ask what law and contracts require. Then name it: --years 7. Each shop of an archive may have its own.':
    'Pregunte qué exigen la ley y los contratos. Después indíquelo: --years 7. Cada taller de un archivo central puede tener el suyo.',
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
  'complete; its # entry is unchanged|complete; all # entries are unchanged': {
    one: 'completo; su única entrada no ha cambiado',
    other: 'completo; las # entradas no han cambiado',
  },
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
  "# key, the station's own|# keys, the station's own among them": {
    one: '# clave, la del puesto',
    other: '# claves, entre ellas la del puesto',
  },
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
  'the archive has a log of the same origin already, with another key or of another tenant':
    'el archivo central ya tiene un registro del mismo origen, con otra clave o de otro inquilino',
  "If this folder is a copy of another station's, set up a station of its own: plugmark setup. If this station has a new key, have it taken in there: plugmark archive take-key.":
    'Si esta carpeta es copia de la de otro puesto, instale un puesto propio: plugmark setup. Si este puesto tiene una clave nueva, haga que la admitan allí: plugmark archive take-key.',
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
  'something lies here already, and is not overwritten by a pseudo-terminal':
    'aquí ya hay algo, y un pseudoterminal no lo sobrescribe',
  'Name another port in the scenario, or remove it.': 'Nombre otro puerto en el escenario, o quítelo.',
  'this is no plain name for a pseudo-terminal': 'no es un nombre sencillo para un pseudoterminal',
  'Name a port with letters, digits, dots, dashes and slashes alone, such as /tmp/wrench.':
    'Nombre un puerto solo con letras, cifras, puntos, guiones y barras, como /tmp/wrench.',
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
  'prints the help of a command': 'muestra la ayuda de una orden',
  'prints this help': 'muestra esta ayuda',
  'prints the version': 'muestra la versión',
  'Guides and proves a spark plug job: every gap and every pull of the torque wrench, judged and signed.':
    'Guía y demuestra un cambio de bujías: cada separación y cada tirón de la llave dinamométrica, juzgados y firmados.',
  'keep it in PostgreSQL instead of a file there: postgres://user@host/name':
    'guardarlo en PostgreSQL en lugar de un archivo allí: postgres://user@host/name',
  'the folder of the archive': 'la carpeta del archivo central',
  'keeps the logs of many stations, and cosigns each for as long as it only goes on':
    'guarda los registros de muchos puestos, y cofirma cada uno mientras solo continúe',
  'its name, like an address: example.com/archive': 'su nombre, como una dirección: example.com/archive',
  'makes an archive: its key, and the folder that it is in': 'crea un archivo central: su clave y su carpeta',
  'for this log alone: what "plugmark log vkey" prints before the first +':
    'solo para este registro: lo que muestra "plugmark log vkey" antes del primer +',
  'the shop or the fleet that the station belongs to': 'el taller o la flota a la que pertenece el puesto',
  'prints a one-time token with which a station joins':
    'muestra un token de un solo uso con el que se une un puesto',
  'what "plugmark log vkey" prints there': 'lo que muestra allí "plugmark log vkey"',
  'takes in the new key of a station that lost its old one':
    'admite la clave nueva de un puesto que perdió la antigua',
  'the origin of its log, as "plugmark archive stations" prints it':
    'el origen de su registro, como lo muestra "plugmark archive stations"',
  'prints a one-time token with which a lost station gets its log back':
    'muestra un token de un solo uso con el que un puesto perdido recupera su registro',
  'listen without TLS beyond this computer, because a proxy in front does it':
    'escuchar sin TLS más allá de este ordenador, porque lo hace un proxy delante',
  'with --certificate: its key (PEM)': 'con --certificate: su clave (PEM)',
  'its certificate for TLS (PEM), with those above it': 'su certificado TLS (PEM), con los superiores',
  'address and port': 'dirección y puerto',
  'takes what stations ship until you end it': 'recibe lo que envían los puestos hasta que usted lo termine',
  'lists the stations and how much of their logs is here':
    'lista los puestos y cuánto de sus registros hay aquí',
  'a station showed two histories': 'un puesto mostró dos historias',
  'prints the notes that prove two histories of a log':
    'muestra los puntos de control que prueban dos historias de un registro',
  'reads all that is kept and holds it against what was cosigned':
    'lee todo lo guardado y lo compara con lo cofirmado',
  'something kept was changed or is missing': 'algo guardado se cambió o falta',
  'where it answers': 'dónde responde',
  'at a station: joins an archive by its one-time token':
    'en el puesto: se une a un archivo central con su token de un solo uso',
  'only up to the last checkpoint that was signed, for which no key is needed':
    'solo hasta el último punto de control firmado, para el que no hace falta clave',
  'at a station: ships all that the archive has not got, and keeps its receipt':
    'en el puesto: envía todo lo que el archivo central no tiene, y guarda su recibo',
  'at a station: says how much of the log the archive has':
    'en el puesto: dice cuánto del registro tiene el archivo central',
  'the archive has more of the log than the station':
    'el archivo central tiene más del registro que el puesto',
  'a tool was out of tolerance at calibration: which proofs still hold, which vehicles to recall':
    'una herramienta estaba fuera de tolerancia en la calibración: qué pruebas se mantienen, qué vehículos hay que llamar',
  "folder for the PDF and the lists; that of the station's data unless given":
    'carpeta para el PDF y las listas; la de los datos del puesto si no se da',
  'the last good check, if the log leaves it open: NUMBER or "NUMBER of DATE"':
    'la última comprobación buena, si el registro lo deja abierto: NUMBER o "NUMBER of DATE"',
  'who assesses': 'quién evalúa',
  'what the laboratory found, in the form of a certificate':
    'lo que constató el laboratorio, en forma de certificado',
  'the tool, as in the station file': 'la herramienta, como en el archivo del puesto',
  'judges everything since the last good check again; runs where you name no other command':
    'juzga de nuevo todo desde la última comprobación buena; se ejecuta si no se nombra otra orden',
  'every proof still holds': 'todas las pruebas se mantienen',
  'some proofs do not hold': 'algunas pruebas no se mantienen',
  'an input is not as it should be; nothing was written':
    'una entrada no es como debería; no se escribió nada',
  'only those that are still open': 'solo las que siguen abiertas',
  'lists all impact assessments, the latest first':
    'lista todas las evaluaciones de impacto, la última primero',
  'write its PDF and its list of vehicles again, into this folder':
    'escribir otra vez su PDF y su lista de vehículos en esta carpeta',
  'the impact assessment, such as IA-1': 'la evaluación de impacto, como IA-1',
  'shows the jobs that an impact assessment touches, and what was decided':
    'muestra las órdenes que afecta una evaluación de impacto, y qué se decidió',
  'who decides': 'quién decide',
  why: 'por qué',
  'with redone: the later job; found by the vehicle unless given':
    'con redone: la orden posterior; se halla por el vehículo si no se da',
  'the jobs; part of a number is enough where it fits only one':
    'las órdenes; basta parte del número si solo corresponde a una',
  'decides what happens to jobs that it touches': 'decide qué pasa con las órdenes afectadas',
  'recall: call the vehicle back; inform: its owner was told; accept: leave it as it is; redone: done again':
    'recall: llamar al vehículo; inform: se avisó a su dueño; accept: dejarlo como está; redone: hecho de nuevo',
  'all jobs of this sort that are not decided yet': 'todas las órdenes de esta clase aún sin decidir',
  'who closes it': 'quién la cierra',
  'why it can be closed': 'por qué se puede cerrar',
  'closes an impact assessment, once every job is decided and every recall redone':
    'cierra una evaluación de impacto, cuando cada orden está decidida y cada llamada rehecha',
  'the answer as CSV': 'la respuesta como CSV',
  'every pull and gap reading instead of the jobs':
    'cada tirón y cada medida de separación en lugar de las órdenes',
  'only what needs an explanation, with the reason': 'solo lo que necesita explicación, con el motivo',
  'finds jobs or attempts by vehicle, fleet, part, lot, person, tool or day':
    'halla órdenes o intentos por vehículo, flota, pieza, lote, persona, herramienta o día',
  'personal texts that are withheld, as "plugmark share" takes them':
    'textos personales que se retienen, como los toma "plugmark share"',
  'records without their PDFs: a quarter of the size, a fifth of the time':
    'actas sin sus PDF: un cuarto del tamaño, un quinto del tiempo',
  'only jobs that need an explanation': 'solo órdenes que necesitan explicación',
  'the checkpoint that the auditor kept from before': 'el punto de control que el auditor guardó de antes',
  'a new folder': 'una carpeta nueva',
  'writes a folder for an auditor: records, proofs and an index, to be checked offline':
    'escribe una carpeta para un auditor: actas, pruebas y un índice, para verificar sin conexión',
  'the log does not go on from the checkpoint; no package was written':
    'el registro no continúa el punto de control; no se escribió ningún paquete',
  'also of jobs that are open, in an open impact assessment, or inside the retention time':
    'también de órdenes abiertas, en una evaluación de impacto abierta, o dentro del plazo de conservación',
  'without asking': 'sin preguntar',
  'somebody who worked, answered or decided': 'alguien que trabajó, respondió o decidió',
  'a customer': 'un cliente',
  'a fleet number': 'un número de flota',
  'a VIN': 'un VIN',
  'a number plate, and every free text with it': 'una matrícula, y cada texto libre con ella',
  'deletes personal texts from the log for good; every signature and verdict stays':
    'borra definitivamente textos personales del registro; cada firma y cada veredicto queda',
  'nothing was deleted; or another program keeps the texts until it is closed':
    'no se borró nada; o otro programa conserva los textos hasta que se cierre',
  'every job, as CSV': 'cada orden, como CSV',
  'the retention time, instead of the one in the station file':
    'el plazo de conservación, en lugar del del archivo del puesto',
  'shows how old the records are, and what the retention time of the shop says':
    'muestra la antigüedad de las actas, y qué dice el plazo de conservación del taller',
  'records without their PDFs': 'actas sin sus PDF',
  'the checkpoint that the other side kept from before':
    'el punto de control que la otra parte guardó de antes',
  'only jobs opened on this day (UTC) or earlier': 'solo órdenes abiertas ese día (UTC) o antes',
  'only jobs opened on this day (UTC) or later': 'solo órdenes abiertas ese día (UTC) o después',
  'the vehicle, by its fleet number': 'el vehículo, por su número de flota',
  'the vehicle, by its plate': 'el vehículo, por su matrícula',
  'the vehicle, by its VIN': 'el vehículo, por su VIN',
  'number or name of the claim': 'número o nombre de la reclamación',
  'writes the file of a claim about one vehicle: what was known then, what was learned since':
    'escribe el expediente de una reclamación sobre un vehículo: lo que se sabía entonces, lo que se supo después',
  'the log does not go on from the checkpoint; nothing was written':
    'el registro no continúa el punto de control; no se escribió nada',
  'the copy; a file that does not exist yet': 'la copia; un archivo que aún no existe',
  'copies the station log, also while a job runs, and checks the whole copy':
    'copia el registro del puesto, también durante una orden, y comprueba toda la copia',
  'restore even if the log has entries that the backup lacks; they are kept beside it':
    'restaurar aunque el registro tenga entradas que faltan en la copia; se guardan al lado',
  'in place of a backup: what the archive has, by its one-time token':
    'en lugar de una copia: lo que tiene el archivo central, con su token de un solo uso',
  'the backup': 'la copia de seguridad',
  'checks a whole backup and puts it in the place of the station log':
    'comprueba una copia entera y la pone en el lugar del registro del puesto',
  "the keys that you trust (JWK set); the station's own list unless given":
    'las claves en las que confía (JWK set); la lista del puesto si no se da',
  'a folder of exported records, to fill gaps or where the log is gone':
    'una carpeta de actas exportadas, para llenar huecos o si falta el registro',
  'the new log; a file that does not exist yet': 'el registro nuevo; un archivo que aún no existe',
  'saves what can be read of a damaged station log and of exported records into a new log':
    'salva lo legible de un registro dañado y de actas exportadas en un registro nuevo',
  'everything known was saved': 'se salvó todo lo conocido',
  'something is lost; the output says what': 'algo se perdió; la salida dice qué',
  "the folder of the station's data, instead of a station file":
    'la carpeta de los datos del puesto, en lugar de un archivo del puesto',
  'the station file': 'el archivo del puesto',
  'CSV as spreadsheets of that language read it, for example de; none: without byte order mark':
    'CSV como lo leen las hojas de cálculo de ese idioma, por ejemplo de; none: sin marca de orden de bytes',
  'language of the papers; else as the station file says, or English':
    'idioma de los documentos; si no, el del archivo del puesto, o inglés',
  'units on the papers; else as the station file says, or N·m and mm':
    'unidades de los documentos; si no, las del archivo del puesto, o N·m y mm',
  'Bluetooth tools: find them, adopt them, record what they send':
    'herramientas Bluetooth: hallarlas, adoptarlas, grabar lo que envían',
  'do not connect to ask for serial numbers': 'no conectarse para pedir números de serie',
  'list every device, not only measuring tools': 'listar todos los aparatos, no solo los de medida',
  'also look for the device in this profile': 'buscar también el aparato de este perfil',
  'how long to listen': 'cuánto tiempo escuchar',
  'lists the measuring tools in reach, with their serial numbers':
    'lista los instrumentos al alcance, con sus números de serie',
  'the profile of the device, as the station file is to name it':
    'el perfil del aparato, como lo ha de nombrar el archivo del puesto',
  'which tool of the station file it is': 'qué herramienta del archivo del puesto es',
  'as "devices scan" lists it': 'como lo lista "devices scan"',
  'makes a device a tool of the station, by its serial number and address':
    'hace de un aparato una herramienta del puesto, por su número de serie y su dirección',
  'how long; Ctrl-C stops sooner': 'cuánto tiempo; Ctrl-C para antes',
  'the capture; a file that does not exist yet': 'la captura; un archivo que aún no existe',
  'records every byte that a device sends, in a file that "plugmark job" can play':
    'graba cada byte que envía un aparato, en un archivo que "plugmark job" puede reproducir',
  'drivers: profiles without code, and packages of others':
    'controladores: perfiles sin código, y paquetes de otros',
  'what was sent, in hexadecimal digits; may be given several times':
    'lo que se envió, en cifras hexadecimales; se puede dar varias veces',
  'the profile (JSON)': 'el perfil (JSON)',
  'checks a profile and shows what it makes of bytes': 'comprueba un perfil y muestra qué hace de unos bytes',
  'name of the package (plugmark-driver-...), its folder, or a profile (JSON)':
    'nombre del paquete (plugmark-driver-...), su carpeta, o un perfil (JSON)',
  'tries a driver package, or a profile, with cut, lost, doubled and damaged bytes':
    'prueba un paquete de controlador, o un perfil, con bytes cortados, perdidos, dobles y dañados',
  'a check failed': 'falló una comprobación',
  'the profile; a file that does not exist yet': 'el perfil; un archivo que aún no existe',
  'a name for the device': 'un nombre para el aparato',
  'the service that it advertises; that of its readings unless given':
    'el servicio que anuncia; el de sus lecturas si no se da',
  'FIGURE=FILE: one more, which is kept back to prove the profile with':
    'FIGURE=FILE: una más, que se guarda aparte para probar el perfil',
  'FIGURE=FILE: a capture, with what the display showed; three at least':
    'FIGURE=FILE: una captura, con lo que mostraba la pantalla; tres como mínimo',
  'a capture of it untouched': 'una captura suya en reposo',
  'smallest step of its display': 'paso más pequeño de su pantalla',
  'unit of its display: N.m, lbf.ft, mm and the like': 'unidad de su pantalla: N.m, lbf.ft, mm y similares',
  'no profile explains all of it, or more than one': 'ningún perfil lo explica todo, o más de uno',
  'with a package: the checkpoint that you kept from before':
    'con un paquete: el punto de control que usted guardó de antes',
  'with --time: the certificates of its authority (PEM)':
    'con --time: los certificados de su autoridad (PEM)',
  'a time stamp for the record (*.tsr)': 'un sello de tiempo del acta (*.tsr)',
  'which logs you trust, which witnesses must have cosigned, and how many (C2SP tlog-policy)':
    'en qué registros confía, qué testigos deben haber cofirmado, y cuántos (C2SP tlog-policy)',
  'the keys that you trust (JWK set), never the list in a package; trusted-keys.json unless given':
    'las claves en las que confía (JWK set), nunca la lista de un paquete; trusted-keys.json si no se da',
  'a record (*.record.json), its paper (PDF), a package, or a folder of records; - reads the standard input':
    'un acta (*.record.json), su documento (PDF), un paquete, o una carpeta de actas; - lee la entrada estándar',
  'checks that a job record, an audit package, or every record in a folder is authentic':
    'verifica que un acta, un paquete de auditoría, o cada acta de una carpeta es auténtica',
  'authentic, signed by somebody you trust; a single record is complete and proven too':
    'auténtico, firmado por alguien en quien confía; un acta sola además está completa y probada',
  'not authentic; a single record that is not complete, or rests on simulated or replayed figures; or a paper that is not what its record gives':
    'no auténtico; un acta sola que no está completa, o se basa en valores simulados o reproducidos; o un documento que no es lo que da su acta',
  'not readable as a record or a package': 'no se puede leer como acta ni paquete',
  'as it was sealed, but the signer is not on your trust list':
    'como se selló, pero el firmante no está en su lista de confianza',
  'authentic, but judged by rules that this version does not know; or a paper that another version drew':
    'auténtico, pero juzgado con reglas que esta versión no conoce; o un documento que dibujó otra versión',
  'the keys that you trust (JWK set); trusted-keys.json unless given':
    'las claves en las que confía (JWK set); trusted-keys.json si no se da',
  'with --svg: which pull; the last one that was judged unless given':
    'con --svg: qué tirón; el último juzgado si no se da',
  'instead, a picture of one pull with its window': 'en su lugar, una imagen de un tirón con su ventana',
  'lines of text, without keys': 'líneas de texto, sin teclas',
  'the record (*.record.json)': 'el acta (*.record.json)',
  'shows a record: verdicts, times of the steps, and each pull as a curve':
    'muestra un acta: veredictos, horas de los pasos, y cada tirón como curva',
  'shown, but not authentic, or the job is not complete or not proven':
    'mostrada, pero no auténtica, o la orden no está completa o no está probada',
  'shown, but the signer is not on your trust list':
    'mostrada, pero el firmante no está en su lista de confianza',
  'shown, but judged by rules that this version does not know':
    'mostrada, pero juzgada con reglas que esta versión no conoce',
  'folder for the papers': 'carpeta para los documentos',
  'makes the PDF and the CSV of a record again, from the record alone':
    'hace otra vez el PDF y el CSV de un acta, solo a partir del acta',
  'not authentic, and no paper was written; or written, but the job is not complete or not proven':
    'no auténtica, y no se escribió ningún documento; o escrito, pero la orden no está completa o no está probada',
  'written, but the signer is not on your trust list':
    'escrito, pero el firmante no está en su lista de confianza',
  'written, but judged by rules that this version does not know':
    'escrito, pero juzgado con reglas que esta versión no conoce',
  'file for the results; the standard output unless given':
    'archivo para los resultados; la salida estándar si no se da',
  'writes the results of a record as JSON in the names of OPC UA for joining systems':
    'escribe los resultados de un acta como JSON con los nombres de OPC UA para sistemas de unión',
  'not authentic, and nothing was written; or the job is not complete or not proven':
    'no auténtica, y no se escribió nada; o la orden no está completa o no está probada',
  'file for the page (*.html), which does not exist yet':
    'archivo para la página (*.html), que aún no existe',
  'writes a page with a record inside, which verifies itself in any browser':
    'escribe una página con un acta dentro, que se verifica sola en cualquier navegador',
  'the record is not as its station sealed it, and no page was written':
    'el acta no está como la selló su puesto, y no se escribió ninguna página',
  'file for the countersigned record': 'archivo para el acta refrendada',
  'the key that signs (PEM)': 'la clave que firma (PEM)',
  'the record': 'el acta',
  'adds a signature to a record, as a new file': 'añade una firma a un acta, como archivo nuevo',
  'file for the shared record': 'archivo para el acta compartida',
  'keep free texts that contain a telephone number; they are withheld unless asked for':
    'conservar los textos libres que contienen un número de teléfono; se retienen si no se pide',
  'what is withheld, with commas: plate, vin, vehicle, fleet, customer, complaint, person (names), note (free text); or all':
    'lo que se retiene, con comas: plate, vin, vehicle, fleet, customer, complaint, person (nombres), note (texto libre); o all',
  'writes a record without some of its personal texts; signatures and verdict stay the same':
    'escribe un acta sin algunos de sus textos personales; firmas y veredicto siguen iguales',
  'the certificates of the authority (PEM)': 'los certificados de la autoridad (PEM)',
  'address of the time-stamping authority': 'dirección de la autoridad de sellado de tiempo',
  'fetches a trusted time stamp (RFC 3161) for a record':
    'obtiene un sello de tiempo de confianza (RFC 3161) para un acta',
  'checkpoints and proofs of the station log': 'puntos de control y pruebas del registro del puesto',
  'write it to this file, which does not exist yet': 'escribirlo en este archivo, que aún no existe',
  'signs the log as it is now; keep the checkpoint elsewhere':
    'firma el registro como está ahora; guarde el punto de control en otro lugar',
  'prints the key that checkpoints are checked by (C2SP verifier key)':
    'muestra la clave con la que se verifican los puntos de control (C2SP verifier key)',
  'sends what is new to the archive and to the witnesses; every job does so by itself':
    'envía lo nuevo al archivo central y a los testigos; cada orden lo hace sola',
  'all have it': 'todos lo tienen',
  'one has not; the output says why': 'uno no; la salida dice por qué',
  'sends the newest checkpoint to the witnesses of the station file':
    'envía el último punto de control a los testigos del archivo del puesto',
  'all cosigned': 'todos cofirmaron',
  'one did not; the output says why': 'uno no; la salida dice por qué',
  'proofs that other programs can check (RFC 9162), as JSON':
    'pruebas que otros programas pueden verificar (RFC 9162), como JSON',
  'its number': 'su número',
  'proves that the log contains an entry': 'prueba que el registro contiene una entrada',
  'JSON, or the text of c2sp.org/tlog-proof': 'JSON, o el texto de c2sp.org/tlog-proof',
  'the checkpoint, or a record, which contains one': 'el punto de control, o un acta, que contiene uno',
  'proves that the log goes on from an old checkpoint':
    'prueba que el registro continúa un punto de control antiguo',
  'the log does not go on from the checkpoint': 'el registro no continúa el punto de control',
  'what happened': 'qué pasó',
  'states that entries are gone for good, so that the station can sign again':
    'declara que hay entradas perdidas para siempre, para que el puesto pueda volver a firmar',
  'checkpoints that were kept, or records, which contain one each':
    'puntos de control guardados, o actas, que contienen uno cada una',
  'checks that nothing in the log was removed or changed, or says where':
    'comprueba que nada se quitó ni se cambió en el registro, o dice dónde',
  'nothing was removed or changed': 'nada se quitó ni se cambió',
  'something was removed or changed': 'algo se quitó o se cambió',
  'the keys of the station and its people': 'las claves del puesto y de su gente',
  'lists all keys, and which of them sign; runs where you name no other command':
    'lista todas las claves, y cuáles firman; se ejecuta si no se nombra otra orden',
  'keep the file of the old key, under a passphrase; it is destroyed unless given':
    'conservar el archivo de la clave antigua, bajo una contraseña; se destruye si no se da',
  'also where records here are of entries that the log lost, and have no proof then':
    'también si hay actas de entradas que el registro perdió, y que entonces no tienen prueba',
  'with --pkcs11: the token, by its label': 'con --pkcs11: el token, por su etiqueta',
  'make the new key in a device, by the module (PKCS#11) of its maker; with --token':
    'crear la clave nueva en un dispositivo, con el módulo (PKCS#11) de su fabricante; con --token',
  'with --lost: what happened': 'con --lost: qué pasó',
  'the old key is lost or not to be trusted, and cannot vouch for the new one':
    'la clave antigua se perdió o no es de fiar, y no puede avalar la nueva',
  'makes a new key for the station; the old one vouches for it':
    'crea una clave nueva para el puesto; la antigua la avala',
  'from this day on; now unless given': 'desde este día; ahora si no se da',
  'the key, by its thumbprint': 'la clave, por su huella',
  'revokes a key: from that day on nobody is to trust it':
    'revoca una clave: desde ese día nadie debe confiar en ella',
  'take the passphrase off': 'quitar la contraseña',
  'puts all keys of the station that are here under a passphrase':
    'pone todas las claves del puesto que hay aquí bajo una contraseña',
  'writes over and deletes the file of a key that signs no more':
    'sobrescribe y borra el archivo de una clave que ya no firma',
  'name of the technician': 'nombre del técnico',
  'makes a key for a technician, under a PIN': 'crea una clave para un técnico, bajo un PIN',
  'decides whether technicians sign': 'decide si los técnicos firman',
  'what the shop decides': 'qué decide el taller',
  'name of the owner, as trust lists show it': 'nombre del titular, como lo muestran las listas de confianza',
  'file for the key (PEM); it does not exist yet': 'archivo para la clave (PEM); aún no existe',
  'makes a key for somebody outside the station, such as a foreman who countersigns':
    'crea una clave para alguien de fuera del puesto, como un jefe de taller que refrenda',
  'what the key signs as': 'en calidad de qué firma la clave',
  'why it is revoked': 'por qué se revoca',
  'which one; a command with --json has one for its answer, such as jobs-list':
    'cuál; una orden con --json tiene una para su respuesta, como jobs-list',
  'prints the JSON Schema of a form that plugmark reads or writes, or the list of all forms':
    'muestra el esquema JSON de una forma que plugmark lee o escribe, o la lista de todas',
  'prints the completion of commands and options for a shell':
    'muestra el autocompletado de órdenes y opciones para un shell',
  'your shell': 'su shell',
  'write all pages for man into this folder': 'escribir todas las páginas para man en esta carpeta',
  'as a page for man': 'como página para man',
  'which one; "commands" is the reference of all commands':
    'cuál; "commands" es la referencia de todas las órdenes',
  'prints a topic of the manual, or the list of topics': 'muestra un tema del manual, o la lista de temas',
  'the words of the command line so far': 'las palabras de la línea de órdenes hasta aquí',
  'tool, job, open-job, person, impact, study or kid': 'tool, job, open-job, person, impact, study o kid',
  'prints names of this station for the completion of a shell, one a line':
    'muestra nombres de este puesto para el autocompletado de un shell, uno por línea',
  'also write a PDF and the charts as SVG; each of several groups into its own folder':
    'escribir también un PDF y los gráficos como SVG; cada grupo en su propia carpeta',
  'how many readings the charts show': 'cuántas lecturas muestran los gráficos',
  'gaps instead of torques': 'separaciones en lugar de pares',
  'only this cylinder': 'solo este cilindro',
  'one specification, by its key or the start of it':
    'una especificación, por su clave o el comienzo de ella',
  'shows what the process can do, by specification': 'muestra de qué es capaz el proceso, por especificación',
  'one group for each': 'un grupo para cada uno',
  'shows the gaps of new plugs as they came, by part and lot':
    'muestra las separaciones de bujías nuevas como llegaron, por pieza y lote',
  'also writes a PDF and the charts as SVG': 'escribe también un PDF y los gráficos como SVG',
  'how many days the chart shows': 'cuántos días muestra el gráfico',
  'how far it may be off; as stated for the tool unless given':
    'cuánto puede desviarse; lo indicado para la herramienta si no se da',
  'its serial number, or its name in the station file':
    'su número de serie, o su nombre en el archivo del puesto',
  'shows whether a tool has drifted: by its pulls since calibration, and by its certificates':
    'muestra si una herramienta ha derivado: por sus tirones desde la calibración, y por sus certificados',
  'nothing speaks against the tool': 'nada habla en contra de la herramienta',
  'WARNING or UNDECIDED: have the tool checked sooner':
    'ATENCIÓN o INDECISO: haga revisar antes la herramienta',
  'repeatability and reproducibility of a tool, measured with the tool':
    'repetibilidad y reproducibilidad de una herramienta, medidas con ella',
  'no bell': 'sin sonido',
  'plain lines instead of the screen': 'líneas simples en lugar de la pantalla',
  'for a wrench: the torque of its pulls, in N·m': 'para una llave: el par de sus tirones, en N·m',
  'how often each person measures each part': 'cuántas veces mide cada persona cada pieza',
  'how many parts, or their names separated by commas': 'cuántas piezas, o sus nombres separados por comas',
  'who measures, separated by commas': 'quién mide, separado por comas',
  'which tool of the station file': 'qué herramienta del archivo del puesto',
  'leads you through a study and computes it, by average and range and by analysis of variance':
    'guía por un estudio y lo calcula, por media y rango y por análisis de varianza',
  'go on with a study that was left open, such as GS-1': 'seguir con un estudio que quedó abierto, como GS-1',
  'you left before the first reading; nothing was kept':
    'se dejó antes de la primera lectura; no se guardó nada',
  'the study is still open; go on with: plugmark gauge-study run --resume':
    'el estudio sigue abierto; siga con: plugmark gauge-study run --resume',
  'lists all studies: made, open, given up': 'lista todos los estudios: hechos, abiertos, abandonados',
  'its number, such as GS-1': 'su número, como GS-1',
  'shows one study': 'muestra un estudio',
  'gives up an open study; its readings stay in the log':
    'abandona un estudio abierto; sus lecturas quedan en el registro',
  'also write it for a calendar program (iCalendar)':
    'escribirlo también para un programa de calendario (iCalendar)',
  'the longest interval': 'el intervalo más largo',
  'the shortest interval': 'el intervalo más corto',
  'add the next interval, longer or shorter by what the laboratory found':
    'añadir el próximo intervalo, más largo o más corto según lo que constató el laboratorio',
  'a tool is due soon this many days ahead': 'una herramienta vence pronto este número de días antes',
  'shows when each tool must be calibrated again':
    'muestra cuándo hay que calibrar de nuevo cada herramienta',
  'no tool is due': 'ninguna herramienta vence',
  'a tool is due, or out of tolerance': 'una herramienta vence, o está fuera de tolerancia',
  'calibration certificates, kept as files and found by their digest':
    'certificados de calibración, guardados como archivos y hallados por su resumen',
  'the certificate that the file belongs to, for a scan':
    'el certificado al que pertenece el archivo, si es un escaneo',
  'the files; those in the station file unless given':
    'los archivos; los del archivo del puesto si no se dan',
  "keeps certificates in the folder of the station's data":
    'guarda certificados en la carpeta de los datos del puesto',
  'checks that all kept certificates are there, unchanged':
    'comprueba que todos los certificados guardados están, sin cambios',
  'all are there, unchanged': 'todos están, sin cambios',
  'one is missing or changed': 'uno falta o ha cambiado',
  'unit of the torques: N·m, lbf·ft, lbf·in, kgf·m or kgf·cm':
    'unidad de los pares: N·m, lbf·ft, lbf·in, kgf·m o kgf·cm',
  'column of the angles in degrees; angle_deg where the file has one':
    'columna de los ángulos en grados; angle_deg si el archivo la tiene',
  'column of the torques': 'columna de los pares',
  'column of the times': 'columna de los tiempos',
  'unit of the times': 'unidad de los tiempos',
  'the tool sent the highest torque of each work cycle, not the torque itself':
    'la herramienta envió el par más alto de cada ciclo, no el par mismo',
  'lower limit of the window in N·m; what stays far below it is no pull':
    'límite inferior de la ventana en N·m; lo que queda muy por debajo no es un tirón',
  'the trace (CSV with a header line); - reads the standard input':
    'la traza (CSV con línea de cabecera); - lee la entrada estándar',
  'finds the pulls in a torque trace and draws them': 'halla los tirones en una traza de par y los dibuja',
  'folder for the station log of the replay': 'carpeta para el registro de la reproducción',
  '1 as recorded, 10 ten times as fast; as fast as it goes unless given':
    '1 como se grabó, 10 diez veces más rápido; lo más rápido posible si no se da',
  'the station file with the wrench; an example unless given':
    'el archivo del puesto con la llave; un ejemplo si no se da',
  'the work order; an example with four cylinders unless given':
    'la orden de trabajo; un ejemplo con cuatro cilindros si no se da',
  'a recording (plugmark/readings/1) or a trace (CSV); - reads the standard input':
    'una grabación (plugmark/readings/1) o una traza (CSV); - lee la entrada estándar',
  'plays a recording or a trace through the whole program, as if the wrench were there':
    'reproduce una grabación o una traza por todo el programa, como si la llave estuviera',
  'you left before the recording ended': 'se dejó antes del final de la grabación',
  'the station file to write': 'el archivo del puesto que se escribe',
  'guides you through the first day: asks for station, tools and people, writes the station file':
    'guía el primer día: pregunta por puesto, herramientas y personas, escribe el archivo del puesto',
  'you stopped; no station file was written': 'usted paró; no se escribió ningún archivo del puesto',
  'the station file; the one at hand where there is one': 'el archivo del puesto; el que haya, si lo hay',
  'checks program, Bluetooth, log, key, clock, disk and terminal; changes nothing':
    'comprueba programa, Bluetooth, registro, clave, reloj, disco y terminal; no cambia nada',
  'everything that plugmark needs is there': 'está todo lo que plugmark necesita',
  'something is missing': 'falta algo',
  "the shop's own library of engines, plugs and figures":
    'la biblioteca propia del taller: motores, bujías y valores',
  'only those with all these words in their name, plug or source':
    'solo las que tienen todas estas palabras en su nombre, bujía o fuente',
  'lists the specifications; runs where you name no other command':
    'lista las especificaciones; se ejecuta si no se nombra otra orden',
  'its name, or words that no other one has': 'su nombre, o palabras que no tiene ninguna otra',
  'shows one specification, with its engine drawn': 'muestra una especificación, con su motor dibujado',
  'with --order: who enters it; the technician of the order unless given':
    'con --order: quién la introduce; el técnico de la orden si no se da',
  'with --order: the name of the specification; that of the engine unless given':
    'con --order: el nombre de la especificación; el del motor si no se da',
  'the work order whose engine, plug and figures are kept':
    'la orden de trabajo cuyo motor, bujía y valores se guardan',
  'adds the figures of a work order, or asks for them one by one':
    'añade los valores de una orden de trabajo, o los pregunta uno a uno',
  'you stopped; nothing was written': 'usted paró; no se escribió nada',
  'checks that each can be read, and that a job could be opened with it today':
    'comprueba que cada una se puede leer, y que hoy se podría abrir una orden con ella',
  'all can be used': 'todas se pueden usar',
  'one cannot be used': 'una no se puede usar',
  'the jobs in the station log: list, show, void, hand over':
    'las órdenes del registro: listar, mostrar, anular, entregar',
  'only vehicles with this in their fleet number': 'solo vehículos con esto en su número de flota',
  'only vehicles with this in their plate': 'solo vehículos con esto en su matrícula',
  'only vehicles with this in their VIN': 'solo vehículos con esto en su VIN',
  'only jobs with this in their number': 'solo órdenes con esto en su número',
  'lists jobs, the latest first; runs where you name no other command':
    'lista las órdenes, la última primero; se ejecuta si no se nombra otra orden',
  'shows where a job stands': 'muestra cómo va una orden',
  'who declares it': 'quién lo declara',
  'declares a job void: its readings stay in the log and prove nothing':
    'declara nula una orden: sus lecturas quedan en el registro y no prueban nada',
  'who goes on with it': 'quién sigue con ella',
  'gives an open job to another technician': 'entrega una orden abierta a otro técnico',
  "folder for the papers; that of the station's data unless given":
    'carpeta para los documentos; la de los datos del puesto si no se da',
  'writes record, PDF and CSV of a closed job again, from the log':
    'escribe otra vez acta, PDF y CSV de una orden cerrada, a partir del registro',
  'written, but the job is not complete or not proven':
    'escrito, pero la orden no está completa o no está probada',
  'written, but the job was declared void': 'escrito, pero la orden fue declarada nula',
  'judge certificates by this day instead of today': 'juzgar los certificados a este día en lugar de hoy',
  'also a picture of the window with the reading over it':
    'también una imagen de la ventana con la lectura encima',
  'standard deviation of the pulls of this shop; adds the risks':
    'desviación típica de los tirones de este taller; añade los riesgos',
  'add the four grades of ILAC-G8': 'añadir los cuatro grados de ILAC-G8',
  'with probability: from 0.5 to 0.9999': 'con probability: de 0.5 a 0.9999',
  'with guard-band: its width in U': 'con guard-band: su anchura en U',
  'readings a second that the wrench sends: says whether they are enough':
    'lecturas por segundo que envía la llave: dice si bastan',
  'judge this reading of the wrench, for example "29.5 N·m"':
    'juzgar esta lectura de la llave, por ejemplo "29.5 N·m"',
  'with a universal joint: how far it is bent': 'con una junta universal: cuánto está doblada',
  'with an adapter: 0 in line, 90 square, 180 folded back':
    'con un adaptador: 0 en línea, 90 en escuadra, 180 hacia atrás',
  'with an adapter: from the drive to the plug': 'con un adaptador: del cuadrado a la bujía',
  'with an adapter: from the drive to the hand': 'con un adaptador: del cuadrado a la mano',
  'how far the wrench may be off, of the reading': 'cuánto puede desviarse la llave, de la lectura',
  'take the wrench and the decision rule from this station file':
    'tomar la llave y la regla de decisión de este archivo del puesto',
  'take the specification from this work order': 'tomar la especificación de esta orden de trabajo',
  'as printed, for example "25-30 N·m"': 'como está impreso, por ejemplo "25-30 N·m"',
  'shows the torque window of a specification: guard band, uncertainty, what a reading is worth':
    'muestra la ventana de par de una especificación: banda de guarda, incertidumbre, qué vale una lectura',
  'thread of the plug': 'rosca de la bujía',
  'seat of the plug': 'asiento de la bujía',
  'cylinder head': 'culata',
  'the threads that the torque is printed for': 'la rosca para la que está impreso el par',
  'the decision rule': 'la regla de decisión',
  'this wrench can prove this window': 'esta llave puede probar esta ventana',
  'it cannot, or the wrench would be refused': 'no puede, o la llave se rechazaría',
  'the folder of the witness': 'la carpeta del testigo',
  'holds stations to their history: cosigns their logs for as long as nothing is rewritten':
    'sujeta los puestos a su historia: cofirma sus registros mientras no se reescriba nada',
  'its name, like an address: example.com/witness': 'su nombre, como una dirección: example.com/witness',
  'makes a witness: its key, and the file of what it cosigned':
    'crea un testigo: su clave y el archivo de lo que cofirmó',
  'what "plugmark log vkey" prints at the station': 'lo que muestra "plugmark log vkey" en el puesto',
  'lists the logs and what was cosigned last; runs where you name no other command':
    'lista los registros y lo último que se cofirmó; se ejecuta si no se nombra otra orden',
  'a log has two histories': 'un registro tiene dos historias',
  'answers logs over HTTP until you end it (C2SP tlog-witness)':
    'responde a los registros por HTTP hasta que usted lo termine (C2SP tlog-witness)',
  'language of the screen; else as the station file says':
    'idioma de la pantalla; si no, el del archivo del puesto',
  'you press every key; the simulated technician does what this file says, a line each: fit 1, pull 1 careful, measure 1':
    'usted pulsa cada tecla; el técnico simulado hace lo que dice este archivo, uno por línea: fit 1, pull 1 careful, measure 1',
  'go on with the demo job that was left open in this folder':
    'seguir con la orden de demostración que quedó abierta en esta carpeta',
  'the simulated wrench sends the highest torque of each pull, and nothing else':
    'la llave simulada envía el par más alto de cada tirón, y nada más',
  'the wrench sends how far it was turned too': 'la llave envía también cuánto se giró',
  'join the simulated tools without the Bluetooth stack':
    'unir las herramientas simuladas sin la pila Bluetooth',
  'folder for the station log, the record, the PDF and the CSV':
    'carpeta para el registro, el acta, el PDF y el CSV',
  'do not wait for the simulated technician; plain lines instead of the screen':
    'no esperar al técnico simulado; líneas simples en lugar de la pantalla',
  'another engine, other plugs, other habits': 'otro motor, otras bujías, otras costumbres',
  'runs a whole job with simulated tools, on the live screen':
    'hace una orden entera con herramientas simuladas, en la pantalla',
  'cylinders of the engine': 'cilindros del motor',
  'how the simulated technician works': 'cómo trabaja el técnico simulado',
  'units of the screen': 'unidades de la pantalla',
  'how many times as fast': 'cuántas veces más rápido',
  'the job was closed but is not complete': 'la orden se cerró pero no está completa',
  'you left the job open; it is kept': 'usted dejó abierta la orden; se conserva',
  'simulated tools that other programs, or a job, can join':
    'herramientas simuladas a las que pueden unirse otros programas, o una orden',
  'the scenario (JSON)': 'el escenario (JSON)',
  'a line of JSON for all that happens, to the end of a file, into a named pipe, or - for the standard output':
    'una línea de JSON por todo lo que pasa, al final de un archivo, en una tubería con nombre, o - para la salida estándar',
  'with --override: why': 'con --override: por qué',
  'with --override: the supervisor': 'con --override: el supervisor',
  'use a tool that would be refused; a supervisor answers for it':
    'usar una herramienta que se rechazaría; un supervisor responde',
  'go on with the job that was left open; name it where several are open':
    'seguir con la orden que quedó abierta; nómbrela si hay varias abiertas',
  'the work order, or - for the standard input; opens a new job without questions':
    'la orden de trabajo, o - para la entrada estándar; abre una orden nueva sin preguntas',
  'runs a real job; asks for its figures, or takes them from a work order':
    'hace una orden real; pregunta sus valores, o los toma de una orden de trabajo',
  'the job is complete and proven': 'la orden está completa y probada',
  'no job was opened, or the job was closed but is not complete or not proven':
    'no se abrió ninguna orden, o se cerró pero no está completa o no está probada',
  'the job is still open; go on with: plugmark job --resume':
    'la orden sigue abierta; siga con: plugmark job --resume',
  'the job was declared void': 'la orden fue declarada nula',
  'See: {0} --help': 'Vea: {0} --help',
  'The old log is never thrown away. It stays beside the restored one; the command prints where.':
    'El registro antiguo nunca se tira. Queda junto al restaurado; la orden dice dónde.',
  'Exit codes:': 'Códigos de salida:',
  'Example:': 'Ejemplo:',
  'Examples:': 'Ejemplos:',
  'the answer as JSON; "plugmark schema {0}" prints its form':
    'la respuesta como JSON; "plugmark schema {0}" muestra su forma',
  'expected a whole number.': 'se espera un número entero.',
  'expected 1 or more.': 'se espera 1 o más.',
  'expected a number above zero.': 'se espera un número mayor que cero.',
  'expected a number.': 'se espera un número.',
  'of this vehicle; capitals, spaces and hyphens make no difference here and below':
    'de este vehículo; mayúsculas, espacios y guiones son indiferentes aquí y abajo',
  'of the vehicle with this plate': 'del vehículo con esta matrícula',
  'of the vehicle with this fleet number': 'del vehículo con este número de flota',
  'plugs of this part number': 'bujías de esta referencia',
  'plugs of this lot': 'bujías de este lote',
  'in which this person worked': 'en las que trabajó esta persona',
  'with this tool, by its name or its serial number':
    'con esta herramienta, por su nombre o su número de serie',
  'on this day (UTC) or later': 'ese día (UTC) o después',
  'on this day (UTC) or earlier': 'ese día (UTC) o antes',
  'expected {0} at most.': 'se espera {0} como máximo.',
  'default: {0}': 'por defecto: {0}',
  'Usage:': 'Uso:',
  'Arguments:': 'Argumentos:',
  'Options:': 'Opciones:',
  'Commands:': 'Órdenes:',
  'choices: {0}': 'opciones: {0}',
  "unknown option '{0}'": "opción desconocida '{0}'",
  "unknown command '{0}'": "orden desconocida '{0}'",
  "missing required argument '{0}'": "falta el argumento '{0}'",
  "option '{0}' argument missing": "falta el valor de la opción '{0}'",
  "required option '{0}' not specified": "hay que dar la opción '{0}'",
  'too many arguments: expected {0}, found {1}': 'demasiados argumentos: se esperan {0}, se hallaron {1}',
  "'{0}': '{1}' is not valid. {2}": "'{0}': '{1}' no es válido. {2}",
  'Allowed choices are {0}.': 'Posibles: {0}.',
  '(Did you mean {0}?)': '(¿Quiso decir {0}?)',
  done: 'hecho',
  'done, and the answer is good': 'hecho, y la respuesta es buena',
  failed: 'fallo',
  'the answer is bad, or it could not be done; the output says why':
    'la respuesta es mala, o no se pudo hacer; la salida dice por qué',
  'bad input': 'mala entrada',
  'the command line, a file or a device is not as it should be; one sentence says what to do':
    'la línea de órdenes, un archivo o un aparato no es como debería; una frase dice qué hacer',
  'other rules': 'otras reglas',
  'made or judged by a newer version of the program, whose form or rules this one does not know':
    'hecho o juzgado por una versión más reciente del programa, cuya forma o reglas esta no conoce',
  'left open': 'dejado abierto',
  'not finished; all that was read is kept': 'sin terminar; todo lo leído se conserva',
  'the job was declared void; its readings are kept and prove nothing':
    'la orden fue declarada nula; sus lecturas se conservan y no prueban nada',
  fault: 'fallo interno',
  'a fault in the program itself; what was on disk is kept':
    'un fallo del propio programa; lo que había en el disco se conserva',
  'Work on a cold engine with the ignition off, by hand, never with a power tool.':
    'Trabaje con el motor frío y el encendido apagado, a mano, nunca con una herramienta motorizada.',
  'The service information of the engine maker decides every figure.':
    'La información de servicio del fabricante del motor decide cada valor.',
  'This program checks the work and does not replace licensed practice.':
    'Este programa comprueba el trabajo y no sustituye a un profesional cualificado.',
  'The topics of the manual are in English. The help of every command (--help) is not.':
    'Los temas del manual están en inglés. La ayuda de cada orden (--help) no.',
  'Every command also has --help.': 'Cada orden tiene también --help.',
  'the entries of this job are damaged': 'las entradas de esta orden están dañadas',
  'Run "plugmark log check". It names the first changed entry.':
    'Ejecute "plugmark log check". Nombra la primera entrada cambiada.',
  'the file exists; a backup never overwrites a file':
    'el archivo existe; una copia nunca sobrescribe un archivo',
  'Name a new file.': 'Nombre un archivo nuevo.',
  'its pages do not fit together': 'sus páginas no encajan',
  'this copy is damaged: {0}': 'esta copia está dañada: {0}',
  'Use another backup.': 'Use otra copia de seguridad.',
  'there is no such file': 'no hay tal archivo',
  'this is a folder or a device, not a backup': 'esto es una carpeta o un dispositivo, no una copia',
  'Name the file that "plugmark backup" made.': 'Nombre el archivo que hizo "plugmark backup".',
  'Use another backup. If you have none, save what can be read of the log with "plugmark recover".':
    'Use otra copia. Si no la hay, salve lo legible del registro con "plugmark recover".',
  'Free some space on that disk, then try again.': 'Libere espacio en ese disco e inténtelo otra vez.',
  'it cannot be copied beside the station log ({0})': 'no se puede copiar junto al registro ({0})',
  "Check the rights on it, and on the folder of the station's data.":
    'Compruebe sus permisos y los de la carpeta de los datos del puesto.',
  'another program wrote to the station log': 'otro programa escribió en el registro del puesto',
  'Close the other program, then try again.': 'Cierre el otro programa e inténtelo otra vez.',
  'entries are missing or out of order': 'faltan entradas o están desordenadas',
  'the log names a stream without entries': 'el registro nombra una serie sin entradas',
  'the hash tree has nodes after the last entry': 'el árbol de resúmenes tiene nodos tras la última entrada',
  'entry {0} is not what its hash was made of': 'la entrada {0} no es aquello de lo que se hizo su resumen',
  'entry {0} is not written as an entry is': 'la entrada {0} no está escrita como una entrada',
  'entry {0} has n={1} in its stream where n={2} is due':
    'la entrada {0} tiene n={1} en su serie donde toca n={2}',
  'entry {0} is not the one that the hash tree was made of, or one shortly before it':
    'la entrada {0} no es aquella de la que se hizo el árbol de resúmenes, o una poco anterior',
  'this is the log of another station: {0}; the station here ({1}) has the key {2}':
    'es el registro de otro puesto: {0}; el puesto de aquí ({1}) tiene la clave {2}',
  'this is the log of another station: {0}; the station here ({1}) is {2}':
    'es el registro de otro puesto: {0}; el puesto de aquí ({1}) es {2}',
  'Name a backup of this station, or the folder of the other one with --data or --station.':
    'Nombre una copia de este puesto, o la carpeta del otro con --data o --station.',
  'this station log has no entries': 'este registro no tiene entradas',
  'entry {0} of the station log was changed': 'la entrada {0} del registro se cambió',
  'this file does not say in which device the key is':
    'este archivo no dice en qué dispositivo está la clave',
  'Put it back from your copy of the folder keys.': 'Repóngalo desde su copia de la carpeta keys.',
  'it does not have this key': 'no tiene esta clave',
  'its public key cannot be read': 'no se puede leer su clave pública',
  'it does not take this PIN': 'no acepta este PIN',
  'there is no token "{0}" in it': 'no contiene ningún token "{0}"',
  'this device does not sign with Ed25519, as a TPM does not':
    'este dispositivo no firma con Ed25519, como tampoco un TPM',
  'Take another device, or keep the key in a file: plugmark keys lock':
    'Use otro dispositivo, o guarde la clave en un archivo: plugmark keys lock',
  'the module is not there': 'el módulo no está',
  'a key in a device needs the package {0}, which is not installed':
    'una clave en un dispositivo necesita el paquete {0}, que no está instalado',
  'Install it beside plugmark: npm install --global {0}. It needs a compiler.':
    'Instálelo junto a plugmark: npm install --global {0}. Necesita un compilador.',
  'it says: {0}': 'dice: {0}',
  'no reason': 'ningún motivo',
  '{0}, token {1}': '{0}, token {1}',
  'the device with the key cannot be used: {0}': 'el dispositivo con la clave no se puede usar: {0}',
  'Plug it in and try again. If it is lost: "plugmark keys rotate --lost".':
    'Conéctelo e inténtelo otra vez. Si se perdió: "plugmark keys rotate --lost".',
  'the station log was deleted, moved or replaced while it was in use; nothing more is written to it':
    'el registro se borró, movió o sustituyó mientras se usaba; ya no se escribe nada en él',
  'It could not be saved elsewhere either. Keep this screen: what was shown last is not on disk.':
    'Tampoco se pudo guardar en otro lugar. Conserve esta pantalla: lo último mostrado no está en el disco.',
  'All of it, to the last reading, is in {0}. Find out what happened, then put it in place with "plugmark restore".':
    'Todo, hasta la última lectura, está en {0}. Averigüe qué pasó, y póngalo en su lugar con "plugmark restore".',
  'this is not an Ed25519 private key in PKCS#8 PEM form':
    'esto no es una clave privada Ed25519 en forma PKCS#8 PEM',
  'Name a key file made by plugmark, or make a new key.':
    'Nombre un archivo de clave hecho por plugmark, o cree una clave nueva.',
  'the private key needs its passphrase': 'la clave privada necesita su contraseña',
  'Run plugmark in a terminal and type it, or set it in the environment.':
    'Ejecute plugmark en un terminal y escríbala, o póngala en el entorno.',
  'the passphrase is wrong, or the key file is damaged':
    'la contraseña es incorrecta, o el archivo de clave está dañado',
  'Try again. Without it the key is lost: "plugmark manual keys" says what to do then.':
    'Inténtelo otra vez. Sin ella la clave está perdida: "plugmark manual keys" dice qué hacer entonces.',
  'other users of this computer can read the private key':
    'otros usuarios de este ordenador pueden leer la clave privada',
  'Run chmod 600 on it. If somebody may have copied it, make a new key and remove the old one from the trust lists.':
    'Ejecute chmod 600 sobre él. Si alguien pudo copiarla, cree una clave nueva y quite la antigua de las listas de confianza.',
  'the file exists; a key is never overwritten': 'el archivo existe; una clave nunca se sobrescribe',
  'Use that key, or name another file.': 'Use esa clave, o nombre otro archivo.',
  'Check the path, or make a key.': 'Compruebe la ruta, o cree una clave.',
  'the file cannot be opened': 'el archivo no se puede abrir',
  'another program wrote to {0} at the same time': 'otro programa escribió en {0} al mismo tiempo',
  'Close the other program, then open the job again.': 'Cierre el otro programa y abra la orden otra vez.',
  'the database file is damaged': 'el archivo de la base de datos está dañado',
  'the file is empty; a station log never is': 'el archivo está vacío; un registro nunca lo está',
  'Restore a backup. If the log was never used, delete the file and start again.':
    'Restaure una copia. Si el registro nunca se usó, borre el archivo y empiece de nuevo.',
  'this is a database, but not a station log': 'es una base de datos, pero no un registro de puesto',
  'Name the station log, or a new file.': 'Nombre el registro del puesto, o un archivo nuevo.',
  'a newer version of the program wrote this log (form {0}; this one knows {1})':
    'una versión más reciente del programa escribió este registro (forma {0}; esta conoce {1})',
  'Use the newer version of the program.': 'Use la versión más reciente del programa.',
  'Keep the file as it is. Restore a backup with "plugmark restore". If you have none, save what can be read with "plugmark recover".':
    'Deje el archivo como está. Restaure una copia con "plugmark restore". Si no la hay, salve lo legible con "plugmark recover".',
  'this file cannot be read as a station log: its start is damaged, or it is another file':
    'este archivo no se puede leer como registro: su comienzo está dañado, o es otro archivo',
  'another program is writing to the station log': 'otro programa está escribiendo en el registro del puesto',
  'this is not a station log': 'esto no es un registro de puesto',
  'Check that the folder exists and may be written to.':
    'Compruebe que la carpeta existe y se puede escribir en ella.',
  'the file cannot be written to': 'no se puede escribir en el archivo',
  'Check the rights on the file and its folder.': 'Compruebe los permisos del archivo y de su carpeta.',
  'Free some space and try again. The last step was not saved.':
    'Libere espacio e inténtelo otra vez. El último paso no se guardó.',
  'the disk did not accept the data': 'el disco no aceptó los datos',
  'Check the disk. The last step was not saved.': 'Compruebe el disco. El último paso no se guardó.',
  '{0} MB, too large for a copy in {1}': '{0} MB, demasiado grande para una copia en {1}',
  'this log is read-only, and there is no room for the copy that reading needs: {0}':
    'este registro es de solo lectura, y no hay sitio para la copia que hace falta para leerlo: {0}',
  'Free some space, set TMPDIR to a folder with space, or get the right to write.':
    'Libere espacio, ponga TMPDIR en una carpeta con sitio, u obtenga el permiso de escritura.',
  'this log is read-only here, and the command must write to it':
    'este registro es de solo lectura aquí, y la orden debe escribir en él',
  'Get the right to write to the file and its folder, or run the command at the station.':
    'Obtenga permiso de escritura en el archivo y su carpeta, o ejecute la orden en el puesto.',
  'a checkpoint of a record': 'un punto de control de un acta',
  'its entry {0} differs from the one in the log or in an earlier record':
    'su entrada {0} difiere de la del registro o de un acta anterior',
  'The log split in two, as after restoring an old backup. Name a folder with the records of one of them.':
    'El registro se dividió, como tras restaurar una copia antigua. Nombre una carpeta con las actas de uno de ellos.',
  'the records are from several logs, and no key shows which one is this station':
    'las actas son de varios registros, y ninguna clave muestra cuál es este puesto',
  'Name a folder with the records of one station only.':
    'Nombre una carpeta con las actas de un solo puesto.',
  'the file exists; nothing is overwritten': 'el archivo existe; no se sobrescribe nada',
  'Name a new file with --out.': 'Nombre un archivo nuevo con --out.',
  'the first entry of the log is lost, and no valid record contains it':
    'la primera entrada del registro se perdió, y ninguna acta válida la contiene',
  'Restore a backup. If you have none, only the exported records of the jobs remain.':
    'Restaure una copia. Si no la hay, solo quedan las actas exportadas de las órdenes.',
  'the newest part of the log is damaged: {0} pages that were written behind the damage would be lost':
    'la parte más reciente del registro está dañada: se perderían {0} páginas escritas tras el daño',
  'Keep station.db and station.db-wal as they are. Save what can be read with "plugmark recover", then put it in place with "plugmark restore".':
    'Deje station.db y station.db-wal como están. Salve lo legible con "plugmark recover" y póngalo en su lugar con "plugmark restore".',
  'the newest part of the log is missing: the program was stopped before it was taken into station.db':
    'falta la parte más reciente del registro: el programa se detuvo antes de que pasara a station.db',
  'Put the file back. If it is lost, so are the entries in it: delete station.db-shm, then "plugmark log check" compares what is left with the checkpoints.':
    'Reponga el archivo. Si se perdió, también sus entradas: borre station.db-shm, y "plugmark log check" compara lo que queda con los puntos de control.',
  'a witness is here already': 'aquí ya hay un testigo',
  'there is no witness here': 'aquí no hay ningún testigo',
  'Make one with "plugmark witness init", or name its folder with --data.':
    'Cree uno con "plugmark witness init", o nombre su carpeta con --data.',
  'this is not the file of a witness': 'esto no es el archivo de un testigo',
  'Name the folder of the witness with --data.': 'Nombre la carpeta del testigo con --data.',
  'the file of the witness cannot be used ({0})': 'el archivo del testigo no se puede usar ({0})',
  'Check the disk and the rights on the file. Never put back an old copy: the witness would cosign a second history. Make a new witness instead.':
    'Compruebe el disco y los permisos del archivo. Nunca reponga una copia antigua: el testigo cofirmaría una segunda historia. Cree en su lugar un testigo nuevo.',
  'the driver {0} reads a serial port, and the station file names none':
    'el controlador {0} lee un puerto serie, y el archivo del puesto no nombra ninguno',
  'Add "port" to the driver of this tool.': 'Añada "port" al controlador de esta herramienta.',
  'the tool {0} is not adopted: the station file names no device for it':
    'la herramienta {0} no está adoptada: el archivo del puesto no nombra ningún aparato para ella',
  'Adopt it with plugmark devices adopt ADDRESS --tool {0}.':
    'Adóptela con plugmark devices adopt ADDRESS --tool {0}.',
  'the tool {0} should measure {1}, but its driver measures {2}':
    'la herramienta {0} debería medir {1}, pero su controlador mide {2}',
  'Correct the quantity or the driver of the tool in the station file.':
    'Corrija la magnitud o el controlador de la herramienta en el archivo del puesto.',
  'nothing heard from {0} within {1} s': 'no se oyó nada de {0} en {1} s',
  'Switch the tool on, bring it closer and disconnect phones and other programs from it.':
    'Encienda la herramienta, acérquela, y desconecte de ella teléfonos y otros programas.',
  'the Bluetooth part of plugmark is not installed on this machine':
    'la parte Bluetooth de plugmark no está instalada en esta máquina',
  'Install plugmark again, or run with the simulated tools.':
    'Instale plugmark de nuevo, o trabaje con las herramientas simuladas.',
  'this machine has no Bluetooth support in its kernel (EAFNOSUPPORT), as is usual in containers and WSL':
    'esta máquina no tiene Bluetooth en su núcleo (EAFNOSUPPORT), como es habitual en contenedores y WSL',
  'Run plugmark on the host itself, on a machine with Bluetooth, or run with the simulated tools.':
    'Ejecute plugmark en el propio anfitrión, en una máquina con Bluetooth, o trabaje con las herramientas simuladas.',
  'this user is not allowed to use the Bluetooth adapter':
    'este usuario no puede usar el adaptador Bluetooth',
  'Give the right to the node program; plugmark doctor shows the command.':
    'Dé el permiso al programa node; plugmark doctor muestra la orden.',
  'the Bluetooth adapter is switched off': 'el adaptador Bluetooth está apagado',
  'Switch it on (rfkill unblock bluetooth; bluetoothctl power on) and start again.':
    'Enciéndalo (rfkill unblock bluetooth; bluetoothctl power on) y empiece de nuevo.',
  'no Bluetooth adapter answered': 'no respondió ningún adaptador Bluetooth',
  'Plug one in or name another one (bluetoothctl list shows them), or run with the simulated tools.':
    'Conecte uno o nombre otro (bluetoothctl list los muestra), o trabaje con las herramientas simuladas.',
  'the Bluetooth adapter does not speak Bluetooth Low Energy':
    'el adaptador Bluetooth no habla Bluetooth Low Energy',
  'Use an adapter for Bluetooth 4.0 or later.': 'Use un adaptador para Bluetooth 4.0 o posterior.',
  'the Bluetooth adapter is already closed': 'el adaptador Bluetooth ya está cerrado',
  'Start plugmark again.': 'Inicie plugmark de nuevo.',
  'the Bluetooth adapter could not be opened': 'no se pudo abrir el adaptador Bluetooth',
  'Look at the cause named here, try again as another user or with another adapter, or run with the simulated tools.':
    'Mire la causa que se nombra aquí, inténtelo con otro usuario u otro adaptador, o trabaje con las herramientas simuladas.',
  'The tool does not send what its profile says: not taken.':
    'La herramienta no envía lo que dice su perfil: no se toma.',
  'Reach the Bluetooth tools with {0} in front of a command.':
    'Las herramientas Bluetooth se alcanzan con {0} delante de un comando.',
  'on {0}': 'en {0}',
  'at {0}': 'en la dirección {0}',
  '{0}: gone for {1} ms': '{0}: ausente {1} ms',
  'something lies here already, and is not overwritten by a socket':
    'aquí ya hay algo, y un socket no lo sobrescribe',
  'Name another socket, or remove it.': 'Nombre otro socket, o quítelo.',
  'no socket can be made here': 'aquí no se puede crear un socket',
  'Name a socket in a folder that you may write to, such as /tmp.':
    'Nombre un socket en una carpeta donde pueda escribir, como /tmp.',
  'judges again the jobs that wait for it, and says how all came out':
    'vuelve a juzgar las órdenes que lo esperan, y dice qué resultó de todas',
  'the samples of a job do not give its verdicts, or it could not be judged':
    'las muestras de una orden no dan sus veredictos, o no se pudo juzgar',
  'how long it is good': 'cuánto tiempo vale',
  'of this log alone, as "plugmark archive stations" prints it':
    'solo de este registro, como lo muestra "plugmark archive stations"',
  'whom the token is given to': 'a quién se da el token',
  'whose records may be read': 'de quién se pueden leer las actas',
  'prints a token with which somebody may ask the archive':
    'muestra un token con el que alguien puede consultar el archivo central',
  'lists who may ask the archive, and until when':
    'lista quién puede consultar el archivo central, y hasta cuándo',
  'whom they were given to': 'a quién se dieron',
  'whose records he could read': 'de quién podía leer las actas',
  'takes back all tokens of a reader': 'retira todos los tokens de un lector',
  'so many, the newest': 'tantas, las más recientes',
  'lists what was asked, by whom and when': 'lista qué se consultó, quién y cuándo',
  'write every reading that was judged again, as CSV': 'escribir cada lectura juzgada de nuevo, como CSV',
  'the last good check, if the logs leave it open: NUMBER or "NUMBER of DATE"':
    'la última comprobación buena, si los registros la dejan abierta: NUMBER o "NUMBER of DATE"',
  'the archive': 'el archivo central',
  'the serial number of the tool': 'el número de serie de la herramienta',
  'judges again, over all stations of an archive, what a tool was used for; records nothing':
    'vuelve a juzgar, en todos los puestos de un archivo central, aquello para lo que se usó una herramienta; no registra nada',
  'the answer as a file that ends in .csv, .xlsx (a workbook) or .parquet':
    'la respuesta como archivo que termina en .csv, .xlsx (un libro de cálculo) o .parquet',
  'all stations of the archive there, instead of one station':
    'todos los puestos del archivo central que hay allí, en lugar de un puesto',
  'of a serial port: bits a second': 'de un puerto serie: bits por segundo',
  'as "devices scan" lists it, or a serial port': 'como lo lista "devices scan", o un puerto serie',
  'how long the device is left untouched': 'cuánto tiempo se deja el aparato en reposo',
  'its Bluetooth address or its serial port; left out: from captures':
    'su dirección Bluetooth o su puerto serie; si se omite: de capturas',
  'finds the profile of a device that nobody has documented, from what its display shows':
    'encuentra el perfil de un aparato que nadie ha documentado, a partir de lo que muestra su pantalla',
  'makes the witness cosign a log; a new key of a log retires the one before it':
    'hace que el testigo cofirme un registro; una clave nueva de un registro retira la anterior',
  'plays the tools of a scenario: on a virtual Bluetooth controller, or on pseudo-terminals (with socat)':
    'hace funcionar las herramientas de un escenario: en un controlador Bluetooth virtual, o en pseudoterminales (con socat)',
  'how long a pseudo-terminal waits before it sends': 'cuánto espera un pseudoterminal antes de enviar',
  'of a capture from a serial port: the name of the pseudo-terminal':
    'de una captura de un puerto serie: el nombre del pseudoterminal',
  'of a Bluetooth capture: the service that it advertises; the busiest unless given':
    'de una captura Bluetooth: el servicio que anuncia; el más activo si no se da',
  'of a Bluetooth capture: the serial number that the device gives':
    'de una captura Bluetooth: el número de serie que da el aparato',
  'of a Bluetooth capture: the Unix socket of the virtual controller':
    'de una captura Bluetooth: el socket Unix del controlador virtual',
  'the capture, of "plugmark devices record"': 'la captura, de "plugmark devices record"',
  'plays a capture back as the device that sent it': 'reproduce una captura como el aparato que la envió',
  'advertises {0}': 'anuncia {0}',
  'neither a device nor captures are named': 'no se nombran ni un aparato ni capturas',
  'Name the address or the serial port of the device, or give --rest, --figure and --proof.':
    'Nombre la dirección o el puerto serie del aparato, o dé --rest, --figure y --proof.',
  'The log {0} is signed by this key from now on; what its key of before signs is not cosigned any more.':
    'El registro {0} se firma con esta clave desde ahora; lo que firme su clave anterior ya no se cofirma.',
  'the one before it retired|the # before it retired': {
    one: 'la anterior retirada',
    other: 'las # anteriores retiradas',
  },
  'key {0} since {1}': 'clave {0} desde {1}',
  'this is the key of the witness itself, and nobody is his own witness':
    'esta es la clave del propio testigo, y nadie es testigo de sí mismo',
  'Take what "plugmark log vkey" prints at the station.':
    'Tome lo que muestra "plugmark log vkey" en el puesto.',
  'this key of the log was retired here when a newer one was added, and it does not come back':
    'esta clave del registro se retiró aquí cuando se añadió una más nueva, y no vuelve',
  'Take the key of now: "plugmark log vkey" at the station. Where the newer one was added by mistake, the station has to make a new key first: plugmark keys rotate':
    'Tome la clave actual: "plugmark log vkey" en el puesto. Si la más nueva se añadió por error, el puesto tiene que crear primero una clave nueva: plugmark keys rotate',
  'expected an address such as c2:00:00:00:00:01': 'se espera una dirección como c2:00:00:00:00:01',
  'expected a name that begins with plugmark-driver-': 'se espera un nombre que empiece por plugmark-driver-',
  'expected a version such as 1.0.0': 'se espera una versión como 1.0.0',
  'expected a JavaScript file of the package': 'se espera un archivo JavaScript del paquete',
  'expected a figure above 0': 'se espera una cifra mayor que 0',
  'expected a decimal figure in quotes, such as "0.01"':
    'se espera una cifra decimal entre comillas, como "0.01"',
  'expected a figure other than 0': 'se espera una cifra distinta de 0',
  'expected a decimal figure in quotes, such as "0.02"':
    'se espera una cifra decimal entre comillas, como "0.02"',
  'expected up to 32 printable characters of ASCII': 'se esperan hasta 32 caracteres ASCII imprimibles',
  'expected a UUID of 4 digits, or of 32 with dashes': 'se espera un UUID de 4 cifras, o de 32 con guiones',
  'expected whole bytes in hexadecimal digits': 'se esperan bytes enteros en cifras hexadecimales',
  'expected a UUID in small digits without dashes': 'se espera un UUID en minúsculas sin guiones',
  'expected as many angles as counts': 'se esperan tantos ángulos como cuentas',
  'expected as many counts as stamps': 'se esperan tantas cuentas como marcas de tiempo',
  'below 0 where bit {0} of byte {1} is set': 'bajo 0 donde el bit {0} del byte {1} está a 1',
  'big end first': 'byte más significativo primero',
  'little end first': 'byte menos significativo primero',
  '{0} at byte {1} ({2})': '{0} en el byte {1} ({2})',
  '{0} samples': '{0} muestras',
  'Measure a large gap and hold it.': 'Mida una separación grande y manténgala.',
  'Measure a small gap and hold it.': 'Mida una separación pequeña y manténgala.',
  'Measure another gap and hold it.': 'Mida otra separación y manténgala.',
  'Pull once against the tightening direction; give that figure with a minus.':
    'Tire una vez en contra del sentido de apriete; dé esa cifra con un menos.',
  'Pull once more, to any other torque: it proves the profile.':
    'Tire una vez más, hasta cualquier otro par: demuestra el perfil.',
  'Pull once to a large torque.': 'Tire una vez hasta un par grande.',
  'Pull once to a small torque and let go.': 'Tire una vez hasta un par pequeño y suelte.',
  '{0} figures did not tell these apart: {1}.': '{0} cifras no distinguieron estas: {1}.',
  'A number follows the figures, but bytes {0} of the frame change and nothing explains them. They could say that the number does not count, so no profile is written.':
    'Un número sigue a las cifras, pero los bytes {0} de la trama cambian y nada los explica. Podrían decir que el número no cuenta, así que no se escribe ningún perfil.',
  'Give one more figure, clearly above {0} {1}.': 'Dé una cifra más, claramente mayor que {0} {1}.',
  'No number in its frames follows the figures. The device may encrypt what it sends, or compute it in a way that cannot be described.':
    'Ningún número de sus tramas sigue a las cifras. Quizá el aparato cifra lo que envía, o lo calcula de un modo que no se puede describir.',
  'No way was found to cut what it sends into frames. It may send too little, or nothing regular.':
    'No se halló manera de cortar en tramas lo que envía. Quizá envía muy poco, o nada regular.',
  'Pull once against the tightening direction, and give that figure with a minus.':
    'Tire una vez en contra del sentido de apriete, y dé esa cifra con un menos.',
  'The only layout that explains the others ({0}) does not read the figure that was kept back: {1} {2}. Nothing was written.':
    'La única estructura que explica las demás ({0}) no lee la cifra que se reservó: {1} {2}. No se escribió nada.',
  'Three figures at least are needed, and one to prove it with; there are {0}.':
    'Se necesitan al menos tres cifras, y una para demostrarlo; hay {0}.',
  'figure {0} of the line, in {1}': 'cifra {0} de la línea, en {1}',
  'Ask again.': 'Consulte de nuevo.',
  'Ask for a shorter time with --from and --to, or for less.':
    'Pida un tiempo más corto con --from y --to, o menos.',
  'Ask whoever runs the archive for one (plugmark archive reader), and give it in {0}.':
    'Pida uno a quien lleva el archivo central (plugmark archive reader), y delo en {0}.',
  'Bring the program here and at the archive to the same version.':
    'Ponga el programa de aquí y el del archivo central en la misma versión.',
  'Have it looked at by whoever runs the archive.': 'Haga que lo revise quien lleva el archivo central.',
  'Not in the answer: the newest entries of {0}. Have it looked at by whoever runs the archive: plugmark archive check.':
    'No está en la respuesta: las entradas más recientes de {0}. Haga que lo revise quien lleva el archivo central: plugmark archive check.',
  'Try again in a minute.': 'Inténtelo de nuevo dentro de un minuto.',
  'its answer broke off': 'su respuesta se cortó',
  'the answer would be too long': 'la respuesta sería demasiado larga',
  'the archive did not answer the question: it answered {0}':
    'el archivo central no contestó a la pregunta: respondió {0}',
  'the archive does not know the token of this reader, or its time is over':
    'el archivo central no conoce el token de este lector, o ya caducó',
  'too many questions were asked in a short time': 'se hicieron demasiadas preguntas en poco tiempo',
  'what the archive answered is not what this version of the program reads':
    'lo que respondió el archivo central no es lo que lee esta versión del programa',
  '# job judged again|# jobs judged again': {
    one: '# orden juzgada de nuevo',
    other: '# órdenes juzgadas de nuevo',
  },
  'NOT JUDGED: it is longer than a record may be': 'NO JUZGADA: es más larga de lo que puede ser un acta',
  'NOT JUDGED: its entries are no job that a bench wrote, or of a newer version of the program':
    'NO JUZGADA: sus entradas no son una orden que escribiera un puesto, o son de una versión más nueva del programa',
  'NOT JUDGED: no version of the program has rules of that name':
    'NO JUZGADA: ninguna versión del programa tiene reglas con ese nombre',
  'NOT THE SAME: the samples do not give its event {0} ({1})':
    'NO LOS MISMOS: las muestras no dan su suceso {0} ({1})',
  'not judged: its rules are of a newer version of the program':
    'no juzgada: sus reglas son de una versión más nueva del programa',
  'the same verdicts': 'los mismos veredictos',
  '{0}, opened in entry {1}: {2}': '{0}, abierta en la entrada {1}: {2}',
  '{0}: {1}, {2} with the same verdicts': '{0}: {1}, {2} con los mismos veredictos',
  'Make another one when its time is over.': 'Cree otro cuando haya caducado.',
  'Nobody has asked this archive yet.': 'Aún nadie ha consultado este archivo central.',
  'Nobody may ask this archive.': 'Nadie puede consultar este archivo central.',
  'See "plugmark archive readers".': 'Vea "plugmark archive readers".',
  'See "plugmark archive stations".': 'Vea "plugmark archive stations".',
  'Until {0} whoever has it reads all records of {1}, names and plates with them. There: {2}=TOKEN plugmark ask --archive URL':
    'Hasta el {0} quien lo tenga lee todas las actas de {1}, con nombres y matrículas. Allí: {2}=TOKEN plugmark ask --archive URL',
  '"{0}" has no token': '"{0}" no tiene token',
  'a token is good for {0} days at most': 'un token vale como mucho {0} días',
  'all stations': 'todos los puestos',
  'may read': 'puede leer',
  'no station of "{0}" has joined': 'no se ha unido ningún puesto de "{0}"',
  question: 'pregunta',
  reader: 'lector',
  tenant: 'inquilino',
  'that tenant has no such log': 'ese inquilino no tiene tal registro',
  'time (UTC)': 'hora (UTC)',
  until: 'hasta',
  '{0} reads nothing more. What was read before is in "plugmark archive reads".':
    '{0} ya no lee nada. Lo que leyó antes está en "plugmark archive reads".',
  'Ask whoever runs it for one (plugmark archive reader), and give it in {0}.':
    'Pida uno a quien lo lleva (plugmark archive reader), y delo en {0}.',
  'Token of a reader of {0}: ': 'Token de un lector de {0}: ',
  'This is the word of the archive {0}, and no proof. What a station has not shipped yet is not in it.':
    'Es la palabra del archivo central {0}, y no una prueba. Lo que un puesto todavía no ha enviado no está en ella.',
  'an archive answers only whoever has the token of a reader':
    'un archivo central solo responde a quien tiene el token de un lector',
  'Reach it with {0} in front of a command. Ctrl-C ends it.':
    'Se alcanza con {0} delante de un comando. Ctrl-C lo termina.',
  'Record the device while it sends.': 'Grabe el aparato mientras envía.',
  'somebody listens: it plays from the beginning': 'alguien escucha: se reproduce desde el principio',
  'the device': 'el aparato',
  'the link ended before all was sent': 'el enlace terminó antes de enviarlo todo',
  '{0} at {1}, serial number {2}': '{0} en la dirección {1}, número de serie {2}',
  '{0} on {1}; it sends in {2} s': '{0} en {1}; envía dentro de {2} s',
  '{0} packets sent': '{0} paquetes enviados',
  'Close the gauge, or leave it as it is. Enter, and leave it untouched. ':
    'Cierre el calibre, o déjelo como está. Enter, y no lo toque. ',
  'Give one line for each question, with the figure of the display.':
    'Dé una línea por cada pregunta, con la cifra de la pantalla.',
  'Keep it near, switched on and charged, and begin again.':
    'Téngalo cerca, encendido y cargado, y empiece de nuevo.',
  'Lay the wrench down. Enter, and leave it untouched. ': 'Deje la llave en reposo. Enter, y no la toque. ',
  'Linked with {0}.': 'Enlazado con {0}.',
  'Listening at {0}, {1} baud.': 'Escuchando en {0}, {1} baudios.',
  'One layout explains all of it so far: {0}.': 'Una estructura lo explica todo hasta ahora: {0}.',
  'Switch it on and set it to send by itself. One that sends only what it is asked for cannot be taught.':
    'Enciéndalo y ajústelo para que envíe por sí mismo. A uno que solo envía lo que se le pide no se le puede tomar el perfil.',
  'That is not a figure. Type it as the display showed it, for example 25.34; "back" takes the last one back.':
    'Eso no es una cifra. Escríbala como la mostró la pantalla, por ejemplo 25.34; "back" retira la última.',
  'Was the last figure mistyped? Type "back" to give it again; Enter ends. ':
    '¿Se escribió mal la última cifra? Escriba "back" para darla otra vez; Enter termina. ',
  'the device has gone in the middle of the lesson': 'el aparato desapareció en mitad del aprendizaje',
  'the device sent nothing while it lay untouched': 'el aparato no envió nada mientras estaba en reposo',
  'this is not a figure': 'esto no es una cifra',
  '{0} layouts explain all of it so far:': '{0} estructuras lo explican todo hasta ahora:',
  '{0}. {1} Then type what its display showed, in {2}: ':
    '{0}. {1} Luego escriba lo que mostró su pantalla, en {2}: ',
  'Cycles: gap readings or pulls on a plug since the certificate or the first use, re-hits, checks and low strokes too; or the counter of the tool where that is higher. Pulls on no plug do not count.':
    'Ciclos: mediciones de separación o tirones en una bujía desde el certificado o el primer uso, también reaprietes, controles y tirones bajos; o el contador de la herramienta si es mayor. Los tirones sin bujía no cuentan.',
  'Begin the study anew: this order was not drawn for its plan.':
    'Empiece el estudio de nuevo: este orden no se sorteó para su plan.',
  'Measure them all: a study with holes says nothing about who differs from whom.':
    'Mídalas todas: un estudio con huecos no dice nada de quién difiere de quién.',
  'there are turns too many or too few': 'hay vueltas de más o de menos',
  'turn {0} does not name each part once': 'la vuelta {0} no nombra cada pieza una vez',
  '{0} of {1} readings are missing': 'faltan {0} de {1} lecturas',
  'See "plugmark gauge-study list".': 'Vea "plugmark gauge-study list".',
  'See "plugmark gauge-study show {0}".': 'Vea "plugmark gauge-study show {0}".',
  'Start a new one. The readings of this one stay in the log.':
    'Empiece otro. Las lecturas de este quedan en el registro.',
  'this station has no gauge study of this number':
    'este puesto no tiene ningún estudio de calibre con ese número',
  'this study is finished and recorded': 'este estudio está terminado y registrado',
  'this study was given up: {0}': 'este estudio se abandonó: {0}',
  '# attempt.|# attempts.': { one: '# intento.', other: '# intentos.' },
  '# job.|# jobs.': { one: '# orden.', other: '# órdenes.' },
  '# row|# rows': { one: '# fila', other: '# filas' },
  'CSV, JSON or a file at once': 'CSV, JSON o un archivo a la vez',
  'Choose one of them.': 'Elija uno de ellos.',
  'Let it end in .csv, .xlsx or .parquet.': 'Haga que termine en .csv, .xlsx o .parquet.',
  'Name the earlier day first.': 'Nombre primero el día anterior.',
  'Written: {0}, {1}': 'Escrito: {0}, {1}',
  exceptions: 'excepciones',
  proofs: 'pruebas',
  'the name of this file does not say what it is to be': 'el nombre de este archivo no dice qué ha de ser',
  value: 'valor',
  what: 'qué',
  '{0} is after {1}': '{0} es posterior a {1}',
  '  in date': '  vigente',
  '  on data sheet': '  con hoja de datos',
  '! DUE': '! VENCIDA',
  '! OUT OF TOLERANCE': '! FUERA DE TOLERANCIA',
  '* Nobody named a day: {0} months after the calibration or the first use are usual. Give the tool an interval in the station file for another.':
    '* Nadie nombró un día: lo habitual son {0} meses tras la calibración o el primer uso. Para otro, dé a la herramienta un intervalo en el archivo del puesto.',
  '? not used yet, no certificate': '? aún sin usar, sin certificado',
  'A tool gets a due day with its certificate or with its first job.':
    'Una herramienta recibe su vencimiento con su certificado o con su primera orden.',
  'A tool gets onto the calendar with its first job.':
    'Una herramienta entra en el calendario con su primera orden.',
  'Drift: by its certificates {0} may lie beyond what is permitted from {1} on; see "plugmark drift {2}".':
    'Deriva: según sus certificados {0} puede superar lo admitido desde el {1}; vea "plugmark drift {2}".',
  'Give the shortest interval first, one day or more.': 'Dé primero el intervalo más corto, un día o más.',
  'On data sheet: nobody calibrated the tool. Its data sheet says what it was when it was made, and not what it is now.':
    'Con hoja de datos: nadie calibró la herramienta. Su hoja dice lo que era cuando se fabricó, y no lo que es ahora.',
  'Out of tolerance: {0} ({1}) on {2}, {3}; see "plugmark impact show {4}". It is due now. A certificate of that day or later makes it fit again.':
    'Fuera de tolerancia: {0} ({1}) el {2}, {3}; vea "plugmark impact show {4}". Vence ahora. Un certificado de ese día o posterior la hace apta de nuevo.',
  'Written: {0}': 'Escrito: {0}',
  calibrated: 'calibrada',
  cycles: 'ciclos',
  due: 'vence',
  'intervals from {0} to {1} days leave no room': 'intervalos de {0} a {1} días no dejan margen',
  'last used': 'último uso',
  longer: 'más largo',
  shorter: 'más corto',
  unchanged: 'sin cambio',
  'next interval': 'intervalo siguiente',
  'no tool of this station has a due day, so there is nothing to write':
    'ninguna herramienta de este puesto tiene vencimiento, así que no hay nada que escribir',
  'no tool was ever used at this station': 'en este puesto nunca se usó ninguna herramienta',
  '{0} by cycles': '{0} por ciclos',
  '{0}, drift': '{0}, deriva',
  '{0}, now': '{0}, ahora',
  '{0}, on data sheet': '{0}, con hoja de datos',
  '~ in date': '~ vigente',
  '~ soon': '~ pronto',
  'groups written': 'grupos escritos',
  ' and {0} more': ' y {0} más',
  '# first attempt|# first attempts': { one: '# primer intento', other: '# primeros intentos' },
  '# group|# groups': { one: '# grupo', other: '# grupos' },
  'Ask for a longer period, or for less; "plugmark ask --attempts" shows what there is.':
    'Pida un período más largo, o con menos condiciones; "plugmark ask --attempts" muestra lo que hay.',
  'For charts name one group: --specification, and a tool, a technician or a cylinder. Or write all of them with --out.':
    'Para los gráficos nombre un grupo: --specification, y una herramienta, un técnico o un cilindro. O escríbalos todos con --out.',
  'Leave it out for one line a specification.': 'Omítalo para una línea por especificación.',
  'Left out: {0} ({1}) with {2}.': 'Omitido: {0} ({1}) con {2}.',
  'No attempt matches.': 'Ningún intento coincide.',
  'No job has an attempt yet.': 'Ninguna orden tiene aún un intento.',
  'There are: {0}{1}.': 'Hay: {0}{1}.',
  'expected {0}': 'se espera {0}',
  'no attempt matches, so there is nothing to write':
    'ningún intento coincide, así que no hay nada que escribir',
  'no job used a specification whose key starts with "{0}"':
    'ninguna orden usó una especificación cuya clave empiece por "{0}"',
  '{0}: {1} of {2} groups; they say nothing about an engine.':
    '{0}: {1} de {2} grupos; no dicen nada de un motor.',
  'Save it as UTF-8.': 'Guárdelo como UTF-8.',
  'the calibration certificate is not UTF-8 text': 'el certificado de calibración no es texto UTF-8',
  '! CHANGED': '! CAMBIADO',
  '! MISSING': '! FALTA',
  'Keep the original again: "plugmark certificates keep FILE", with --for NUMBER for a scan. The same file replaces the missing or changed one; another file is kept beside it.':
    'Guarde el original de nuevo: "plugmark certificates keep FILE", con --for NUMBER para un escaneo. El mismo archivo sustituye al que falta o cambió; otro se guarda al lado.',
  'Name it with --for NUMBER, the number that "plugmark calendar" shows.':
    'Nómbrelo con --for NUMBER, el número que muestra "plugmark calendar".',
  'Name the files, or the station file with --station.':
    'Nombre los archivos, o el archivo del puesto con --station.',
  'No certificate is kept yet.': 'Aún no se guarda ningún certificado.',
  'Nothing of it was kept. Name the certificate, or scan it again.':
    'No se guardó nada. Nombre el certificado, o escanéelo de nuevo.',
  'Use the number that "plugmark calendar" shows.': 'Use el número que muestra "plugmark calendar".',
  'as kept': 'como se guardó',
  'kept again': 'guardado de nuevo',
  kept: 'guardado',
  'no tool of this station has a certificate with this number':
    'ninguna herramienta de este puesto tiene un certificado con ese número',
  'only a station file lists certificates': 'solo un archivo de puesto enumera certificados',
  'the file is empty': 'el archivo está vacío',
  'this file is neither XML nor JSON, so it does not say which certificate it is':
    'este archivo no es ni XML ni JSON, así que no dice qué certificado es',
  'was kept already': 'ya estaba guardado',
  'Gaps as delivered, limits {0} to {1} mm': 'Separaciones de fábrica, límites de {0} a {1} mm',
  'Left out: {0} gaps that were SIMULATED or REPLAYED.':
    'Omitido: {0} separaciones SIMULADAS o REPRODUCIDAS.',
  'No gap of a new plug matches.': 'Ninguna separación de una bujía nueva coincide.',
  'Plugs not measured were tried with wires. "At worst" counts those as out of gap that wires could not decide.':
    'Las bujías no medidas se probaron con alambres. "En el peor caso" cuenta fuera de límites las que los alambres no pudieron decidir.',
  largest: 'mayor',
  smallest: 'menor',
  lot: 'lote',
  'out of gap (95 %)': 'fuera de límites (95 %)',
  part: 'pieza',
  plugs: 'bujías',
  '{0}: this says nothing about real plugs.': '{0}: esto no dice nada de bujías reales.',
  '  In {0} {1}: of these only the figures are in it; what names the vehicles is withheld.':
    '  En {0} {1}: de estas solo están las cifras; lo que nombra los vehículos se retiene.',
  '  Left out: {0}, without a VIN but with the same plate or fleet number. Name --plate or --fleet to include them.':
    '  Omitido: {0}, sin VIN pero con la misma matrícula o número de flota. Nombre --plate o --fleet para incluirlas.',
  'Give it with --claim.': 'Dela con --claim.',
  'Look with "plugmark ask"; an older job may have only its plate.':
    'Busque con "plugmark ask"; una orden antigua puede tener solo la matrícula.',
  'Name it with --vin, --plate or --fleet.': 'Nómbrelo con --vin, --plate o --fleet.',
  'Name the one of the claim with --vin.': 'Nombre el de la reclamación con --vin.',
  'a claim has a number or a name of 1 to 80 characters':
    'una reclamación tiene un número o un nombre de 1 a 80 caracteres',
  'no vehicle is named': 'no se nombra ningún vehículo',
  'these jobs are of {0} vehicles: {1}': 'estas órdenes son de {0} vehículos: {1}',
  'this station has no job on this vehicle in that time':
    'este puesto no tiene ninguna orden de este vehículo en ese tiempo',
  'See "plugmark calendar" for the tools of this station.':
    'Vea "plugmark calendar" para las herramientas de este puesto.',
  'neither the log nor the station file has a tool of this name or serial number':
    'ni el registro ni el archivo del puesto tienen una herramienta con ese nombre o número de serie',
  'Written into {0}: {1}': 'Escrito en {0}: {1}',
  '; done again since': '; rehecho desde entonces',
  "at the end of the tool's scale": 'en el extremo de la escala de la herramienta',
  'by angle': 'por ángulo',
  'closed with work open': 'cerrada con trabajo pendiente',
  'cylinder {0}, ': 'cilindro {0}, ',
  'cylinder {0}, gap reading {1}': 'cilindro {0}, medición de separación {1}',
  'cylinder {0}, pull {1}': 'cilindro {0}, tirón {1}',
  'impact assessment {0} on {1} ({2}): {3}, {4}': 'evaluación de impacto {0} de {1} ({2}): {3}, {4}',
  'nobody said what it was': 'nadie dijo qué era',
  'not decided': 'no decidido',
  'too far out': 'demasiado lejos',
  'too high': 'demasiado alto',
  'too low': 'demasiado bajo',
  '{0} used although {1}': '{0} usada aunque: {1}',
  '{0}: OUT OF ORDER, not proven by itself{1}': '{0}: FUERA DE ORDEN, no demostrado por sí mismo{1}',
  '{0}: OUT OF ORDER{1}': '{0}: FUERA DE ORDEN{1}',
  '--since "{0}" may mean {1}': '--since "{0}" puede significar {1}',
  'Say which one counts: {0}. An earlier one looks back further.':
    'Diga cuál cuenta: {0}. Una anterior mira más atrás.',
  'certificate {0} of {1} was taken up again after {2} of {3}':
    'el certificado {0} del {1} se retomó después de {2} del {3}',
  'certificates {0} are of one day, {1}': 'los certificados {0} son de un mismo día, {1}',
  'the log has no certificate {0} of this tool from before {1}':
    'el registro no tiene ningún certificado {0} de esta herramienta anterior al {1}',
  '{0}, so nobody can tell which was the last good check':
    '{0}; así que nadie puede decir cuál fue la última comprobación buena',
  'does not hold itself, see {0}': 'no se sostiene, vea {0}',
  'has no proof of the gap of cylinder {0}': 'no tiene prueba de la separación del cilindro {0}',
  'has no proof of the torque of cylinder {0}': 'no tiene prueba del par del cilindro {0}',
  'is not complete': 'no está completa',
  replayed: 'reproducidas',
  'rests on {0} figures, and proves nothing': 'se basa en cifras {0}, y no demuestra nada',
  simulated: 'simuladas',
  'used {0}, which was out of tolerance': 'usó {0}, que estaba fuera de tolerancia',
  'Give the file of what was found of this tool.': 'Dé el archivo de lo que se halló de esta herramienta.',
  'It has: {0}.': 'Tiene: {0}.',
  'Without a serial number nobody can tell which tool was used; look at its jobs with "plugmark ask --tool".':
    'Sin número de serie nadie puede decir qué herramienta se usó; mire sus órdenes con "plugmark ask --tool".',
  'it is dated {0}, after today, {1}': 'tiene fecha {0}, posterior a hoy, {1}',
  'it is dated {0}, and {1} ({2}) is in the log only from {3} on':
    'tiene fecha {0}, y {1} ({2}) solo está en el registro desde el {3}',
  'it is for serial number {0}; tool {1} has none in the log':
    'es para el número de serie {0}; la herramienta {1} no tiene ninguno en el registro',
  'the log of this station has no tool of that name':
    'el registro de este puesto no tiene ninguna herramienta con ese nombre',
  'Decide about each, for example: plugmark impact decide {0} {1} --as {2} --because "..." --by NAME':
    'Decida sobre cada una, por ejemplo: plugmark impact decide {0} {1} --as {2} --because "..." --by NAME',
  'The decisions stand. Assess again if something new was found.':
    'Las decisiones quedan. Evalúe de nuevo si se halló algo nuevo.',
  'There is nothing more to do.': 'No hay nada más que hacer.',
  'this impact assessment was closed by {0} on {1}': 'esta evaluación de impacto la cerró {0} el {1}',
  '{0} of {1} jobs are still open: {2} not decided, {3} recalled and not redone':
    '{0} de {1} órdenes siguen abiertas: {2} sin decidir, {3} llamadas y no rehechas',
  '; it stays open until it is redone': '; queda abierta hasta que se rehaga',
  '; they stay open until they are redone': '; quedan abiertas hasta que se rehagan',
  'Close it with: plugmark impact close {0} --because "..." --by NAME':
    'Ciérrela con: plugmark impact close {0} --because "..." --by NAME',
  'Impact assessment {0} is closed. Its paper: plugmark impact show {1} --out FOLDER':
    'La evaluación de impacto {0} está cerrada. Su documento: plugmark impact show {1} --out FOLDER',
  'Leave it out, or decide redone.': 'Omítalo, o decida redone.',
  'List them with "plugmark impact show {0}".': 'Lístelas con "plugmark impact show {0}".',
  'Name jobs, or use --undecided doubtful, out or any; see "plugmark impact show {0}".':
    'Nombre órdenes, o use --undecided doubtful, out o any; vea "plugmark impact show {0}".',
  'No impact assessment.': 'Ninguna evaluación de impacto.',
  OPEN: 'ABIERTA',
  assessed: 'evaluada',
  'expected one of: {0}': 'se espera uno de: {0}',
  'it names the job that did it again, which only --as redone has':
    'nombra la orden que lo rehizo, que solo tiene --as redone',
  'job {0} is not among the jobs that this impact assessment touches':
    'la orden {0} no está entre las que afecta esta evaluación de impacto',
  'no job is named, or all of them are decided': 'no se nombra ninguna orden, o todas están decididas',
  '{0} may mean {1}': '{0} puede significar {1}',
  '{0}: {1}{2}. {3} of {4} still open.': '{0}: {1}{2}. {3} de {4} aún abiertas.',
  'doubtful on cylinder {0}': 'dudoso en el cilindro {0}',
  'out on cylinder {0}': 'fuera en el cilindro {0}',
  '{0}: of its job {1} of {2}, {3}. When this job is complete: plugmark impact decide {4} {5} --as redone --because TEXT --by NAME':
    '{0}: de su orden {1} del {2}, {3}. Cuando esta orden esté completa: plugmark impact decide {4} {5} --as redone --because TEXT --by NAME',
  '{0}: {1} ({2}) was out of tolerance on {3}; {4}.':
    '{0}: {1} ({2}) estaba fuera de tolerancia el {3}; {4}.',
  'Do it again in a job with the same VIN, plate or fleet number and a fit tool, and name that job with --in. Or decide inform or accept, and say why.':
    'Rehágala en una orden con el mismo VIN, matrícula o número de flota y una herramienta apta, y nombre esa orden con --in. O decida inform o accept, y diga por qué.',
  'it is not redone: {0}': 'no está rehecha: {0}',
  'job {0} {1}': 'la orden {0} {1}',
  'the log holds no later job on that vehicle':
    'el registro no contiene ninguna orden posterior de ese vehículo',
  'the log holds no later job {0} on that vehicle':
    'el registro no contiene ninguna orden posterior {0} de ese vehículo',
  '{0}, job {1}': '{0}, orden {1}',
  'List them with "plugmark impact list".': 'Lístelas con "plugmark impact list".',
  'this station has no impact assessment of that number':
    'este puesto no tiene ninguna evaluación de impacto con ese número',
  'Since {0}: {1} with {2} ({3}) as it was found, in no impact assessment: {4}{5}. Assess again with the same file: plugmark impact {6} --as-found FILE --by NAME':
    'Desde {0}: {1} con {2} ({3}) tal como se halló, en ninguna evaluación de impacto: {4}{5}. Evalúe de nuevo con el mismo archivo: plugmark impact {6} --as-found FILE --by NAME',
  'Still to be recorded and decided at {0}: plugmark impact {1} --as-found FILE --by NAME':
    'Falta registrar y decidir en {0}: plugmark impact {1} --as-found FILE --by NAME',
  'Take the certificate of this tool.': 'Tome el certificado de esta herramienta.',
  'The survey records nothing.': 'Esta revisión no registra nada.',
  'Used in that time at {0} of {1} stations.': 'Usada en ese tiempo en {0} de {1} puestos.',
  attempts: 'intentos',
  cylinders: 'cilindros',
  day: 'día',
  'decided there': 'decidido allí',
  doubtful: 'dudosas',
  'it is of {0}, and not of {1}': 'es de {0}, y no de {1}',
  'its first use on {0}': 'su primer uso el {0}',
  'jobs touched': 'órdenes afectadas',
  'not recorded': 'no registrado',
  'not yet': 'aún no',
  out: 'fuera',
  'proofs still in': 'pruebas aún dentro',
  'recorded there': 'registrado allí',
  sort: 'clase',
  '{0}, by what {1} of {2} found: everything since {3} judged again.':
    '{0}, según lo hallado en {1} del {2}: todo desde {3} juzgado de nuevo.',
  '{0}: it says nothing about real engines.': '{0}: no dice nada de motores reales.',
  'It did not move since {0}, as far as the uncertainty of both can tell.':
    'No se movió desde {0}, hasta donde la incertidumbre de ambas permite decirlo.',
  'It did not move since {0}, as far as the uncertainty of both can tell; its errors are smaller now.':
    'No se movió desde {0}, hasta donde la incertidumbre de ambas permite decirlo; sus errores son menores ahora.',
  'It moved at {0} of {1} points since {2}, by more than the uncertainty of both.':
    'Se movió en {0} de {1} puntos desde {2}, más que la incertidumbre de ambas.',
  'Jobs that went on since are in both: {0}. A decision in one counts in the other.':
    'Las órdenes que siguieron desde entonces están en ambas: {0}. Una decisión en una cuenta en la otra.',
  'Nothing was written, and jobs still open with it. Give it the certificate of that calibration; check serial number and dates. "plugmark ask --tool" shows when it was used.':
    'No se escribió nada, y sigue abriendo órdenes. Dele el certificado de esa calibración; compruebe número de serie y fechas. "plugmark ask --tool" muestra cuándo se usó.',
  'See "plugmark impact show {0}".': 'Vea "plugmark impact show {0}".',
  'That check and this finding have one number. If they are one calibration, date the finding {0} too, and assess again.':
    'Esa comprobación y este hallazgo tienen un mismo número. Si son una sola calibración, feche también el hallazgo {0}, y evalúe de nuevo.',
  'The log holds no good check before it, so everything since its first use was judged again.':
    'El registro no contiene ninguna comprobación buena anterior, así que todo desde su primer uso se juzgó de nuevo.',
  'readings judged again': 'lecturas juzgadas de nuevo',
  'the log holds no attempt with it from {0} on that the finding of {1} can put in question':
    'el registro no contiene, desde el {0}, ningún intento con ella que el hallazgo del {1} pueda poner en duda',
  'this file was assessed on {0} by {1}, and nothing was measured with the tool in that state since':
    'este archivo lo evaluó {1} el {0}, y desde entonces no se midió nada con la herramienta en ese estado',
  '{0} ({1}) judged {2} to {3} as well. Jobs in both: {4}; decide about them in each.':
    '{0} ({1}) también juzgó de {2} a {3}. Órdenes en ambas: {4}; decida sobre ellas en cada una.',
  '{0} goes on from {1} on the same file. It holds only what was entered since, or lies further back.':
    '{0} continúa {1} sobre el mismo archivo. Solo contiene lo anotado desde entonces, o lo que está más atrás.',
  '{0} of {1}': '{0} del {1}',
  '{0}, serial number {1}': '{0}, número de serie {1}',
  'OUT OF ORDER: {0}{1}, {2}{3}': 'FUERA DE ORDEN: {0}{1}, {2}{3}',
  'another version of the program made the file of this witness':
    'otra versión del programa creó el archivo de este testigo',
  'Use that version, or make a new witness in another folder.':
    'Use esa versión, o cree un testigo nuevo en otra carpeta.',
  'expected one field "value", found {0}': 'se espera un campo "value", se encontraron {0}',
  'the angle is there twice': 'el ángulo está dos veces',
  'expected the angle beside the value': 'se espera el ángulo junto al valor',
  'the unit is given here and told by the frame': 'la unidad se indica aquí y también en la trama',
  '{0} is no unit of {1}': '{0} no es una unidad de {1}',
  'expected a step that the numbers can tell, not {0}':
    'se espera un paso que los números puedan expresar, no {0}',
  'a {0} has codes of its own for that': '{0} tiene códigos propios para eso',
  'expected the value of 1': 'se espera el valor de 1',
  'expected a unit, or a field that tells it': 'se espera una unidad, o un campo que la indique',
  'expected the smallest step of the tool, because the numbers do not tell it':
    'se espera el paso más pequeño de la herramienta, porque los números no lo indican',
  'there is a "{0}" already': 'ya hay un "{0}"',
  'expected the counter outside of the samples': 'se espera el contador fuera de las muestras',
  'there are no "samples" that it could count': 'no hay "samples" que pudiera contar',
  'expected the "value" in the samples': 'se espera "value" dentro de las muestras',
  'a {0} has no bit {1}': '{0} no tiene bit {1}',
  'bit {0} is there twice': 'el bit {0} está dos veces',
  'a decimal digit takes 4 bits': 'una cifra decimal ocupa 4 bits',
  'a serial port has no packets': 'un puerto serie no tiene paquetes',
  'text has no length of its own; expected "delimiter", "time" or "packet"':
    'un texto no tiene longitud propia; se espera "delimiter", "time" o "packet"',
  'expected a field "size" in front, because nothing else tells where the frame ends':
    'se espera delante un campo "size", porque nada más indica dónde acaba la trama',
  'expected a pause, a checksum, or fixed bytes at the end: without them a lost byte would shift every number unseen':
    'se espera una pausa, una suma de comprobación o bytes fijos al final: sin ellos, un byte perdido desplazaría cada número sin que se note',
  '{0} bytes are more than the {1} of the longest frame': '{0} bytes superan los {1} de la trama más larga',
  'it would cover nothing': 'no cubriría nada',
  'a sample has no bytes': 'una muestra no tiene bytes',
  'expected either "characters" or "until"': 'se espera "characters" o "until", uno de los dos',
  'nothing tells where the figure in front of it ends': 'nada indica dónde acaba la cifra anterior',
  'this step is too fine or too coarse to be recorded':
    'este paso es demasiado fino o demasiado grueso para registrarlo',
  'it is longer than {0} bytes': 'ocupa más de {0} bytes',
  'it is not UTF-8 text': 'no es texto UTF-8',
  'Correct the place named; "plugmark manual profiles" describes every field.':
    'Corrija el lugar indicado; "plugmark manual profiles" describe cada campo.',
  'a Bluetooth tool': 'una herramienta Bluetooth',
  'a tool on a serial port': 'una herramienta en un puerto serie',
  'the profile "{0}" describes a link "{1}", not {2}': 'el perfil "{0}" describe un enlace "{1}", no {2}',
  'In the station file use "profile" for Bluetooth tools and "serial" for those on a serial port.':
    'En el archivo del puesto, use "profile" para las herramientas Bluetooth y "serial" para las de un puerto serie.',
  'the profile cannot be read: {0}': 'el perfil no se puede leer: {0}',
  'Name a profile in JSON.': 'Indique un perfil en JSON.',
  'the device at {0} has no characteristic {1}, which the profile "{2}" names':
    'el dispositivo en {0} no tiene la característica {1}, que el perfil "{2}" nombra',
  'Choose the profile of this device, or correct it by the published documentation.':
    'Elija el perfil de este dispositivo, o corríjalo según la documentación publicada.',
  'expected a move such as "pull 1 hurried"': 'se espera un movimiento como "pull 1 hurried"',
  '"{0}" appears twice': '"{0}" aparece dos veces',
  'expected either "port" or "address"': 'se espera "port" o "address", uno de los dos',
  'expected it where a tool has an address': 'se espera cuando una herramienta tiene dirección',
  'there is no tool "{0}"': 'no hay ninguna herramienta "{0}"',
  'expected it above the lower limit': 'se espera por encima del límite inferior',
  'expected an "engine" to work at': 'se espera un "engine" en el que trabajar',
  'there is no cylinder {0}': 'no hay cilindro {0}',
  'the plug of cylinder {0} is not in the head: "fit {1}" first':
    'la bujía del cilindro {0} no está en la culata: primero "fit {1}"',
};
