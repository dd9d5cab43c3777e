/** Spanish for the page that verifies. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  '{0} of {1} PUT IN QUESTION later.': '{0} de {1} PUESTAS EN DUDA más tarde.',
  'job {0} of {1}: {2} by impact assessment {3} on {4} ({5}), out of tolerance {6}; {7}':
    'orden {0} del {1}: {2} por la evaluación de impacto {3} de {4} ({5}), fuera de tolerancia {6}; {7}',
  'OUT at cylinder {0}': 'FUERA en el cilindro {0}',
  'DOUBTFUL at cylinder {0}': 'DUDOSO en el cilindro {0}',
  'that the readings came from the named instruments, where the link of a tool was not authenticated: each record says so':
    'que las lecturas vinieran de los instrumentos nombrados, donde el enlace de una herramienta no estaba autenticado: cada acta lo dice',
  'that no job was left out when it was chosen: only the whole log of the station shows that':
    'que no se omitiera ninguna orden al elegirlas: solo lo muestra el registro completo del puesto',
  "that no impact assessment was left out: the station's own entries here are a choice of those that bear on these jobs":
    'que no se omitiera ninguna evaluación de impacto: las entradas propias del puesto aquí son una selección de las que afectan a estas órdenes',
  "that no impact assessment came behind the station's entry {0}: of what followed, up to {1}, only the entries of the records here are shown":
    'que no hubiera ninguna evaluación de impacto tras la entrada {0} del puesto: de lo que siguió, hasta {1}, aquí solo se muestran las entradas de las actas',
  'that nothing was rewritten before it was made: nobody held it against an older checkpoint. Keep its {0} for the next time, and give it with --kept':
    'que no se reescribiera nada antes de crearlo: nadie lo comparó con un punto de control más antiguo. Guardar su {0} para la próxima vez y darlo con --kept',
  'what papers say that somebody has from elsewhere: hold each against its record with "plugmark verify PAPER.pdf"':
    'lo que digan documentos recibidos por otra vía: comparar cada uno con su acta con «plugmark verify PAPER.pdf»',
  'the verdicts of the jobs that were not judged again: verify them with the version that made them as well':
    'los veredictos de las órdenes que no se juzgaron de nuevo: verificarlas también con la versión que las creó',
  'that nothing of a job came behind its last entry here: a job that goes on has more entries in the log':
    'que nada de una orden siguiera a su última entrada aquí: una orden que continúa tiene más entradas en el registro',
  contents: 'contenido',
  'judged again': 'juzgada de nuevo',
  completeness: 'integridad del trabajo',
  'order of work': 'orden de las operaciones',
  signatures: 'firmas',
  signer: 'firmante',
  log: 'registro',
  clock: 'reloj',
  witnesses: 'testigos',
  'trusted time': 'hora acreditada',
  'one history': 'un solo historial',
  'same log': 'mismo registro',
  since: 'desde entonces',
  impacts: 'impactos',
  times: 'horas',
  made: 'creación',
  vin: 'número de bastidor',
  fleet: 'flota',
  customer: 'cliente',
  person: 'persona',
  'this file of the package is not there': 'falta este archivo del paquete',
  'Ask for the package again.': 'Pedir el paquete de nuevo.',
  'Ask for it again from where it came.': 'Pedirlo de nuevo a quien lo envió.',
  'it has {0}, and no such file has more than {1}': 'tiene {0}, y ningún archivo así tiene más de {1}',
  'the browser could not read this file': 'el navegador no pudo leer este archivo',
  'Choose it again.': 'Elegirlo de nuevo.',
  'The page could not go on with this file. Reload it, and try another browser.':
    'La página no pudo seguir con este archivo. Recargarla o probar con otro navegador.',
  'Reading …': 'Leyendo …',
  'Stopped.': 'Detenido.',
  Stop: 'Detener',
  '{0} of {1} {2}': '{0} de {1} {2}',
  'You trust nobody yet.': 'Todavía no confía en nadie.',
  'Your list: {0}': 'Su lista: {0}',
  'Back to all records': 'Volver a todas las actas',
  Remarks: 'Observaciones',
  Records: 'Actas',
  'Put in question by what was learned later': 'Puesto en duda por lo que se supo después',
  Withheld: 'Retenido',
  'What to know': 'Qué saber',
  Record: 'Acta',
  'Show {0}': 'Ver {0}',
  '# record|# records': { one: '# acta', other: '# actas' },
  'these files': 'estos archivos',
  records: 'actas',
  files: 'archivos',
  'Its papers were NOT compared with the records, and could show anything.':
    'Sus documentos NO se compararon con las actas y podrían mostrar cualquier cosa.',
  'one {0}': 'un {0}',
  'authentic and whole': 'auténtico e íntegro',
  '{0}; station {1}; {2}; asked for {3}': '{0}; puesto {1}; {2}; solicitado {3}',
  'all jobs': 'todas las órdenes',
  'Compare the key that is named below with the one that the station gave you by another way. If it is the same, take {0} out of the package and add it here.':
    'Comparar la clave que se nombra abajo con la que el puesto le dio por otra vía. Si es la misma, sacar {0} del paquete y añadirlo aquí.',
  'Left out: job {0}, {1}.': 'Omitida: orden {0}, {1}.',
  'Check a spark plug record': 'Verificar un acta de bujías',
  Language: 'Idioma',
  'Check a record of spark plug work': 'Verificar un acta de trabajo en bujías',
  'Drop the file that you were given anywhere on this page. It is checked here, on your own computer: nothing is sent, and nobody is asked.':
    'Soltar el archivo recibido en cualquier lugar de esta página. Se verifica aquí, en su propio ordenador: no se envía nada ni se pregunta a nadie.',
  'Files to check': 'Archivos que verificar',
  'Choose a record, PDF or package': 'Elegir un acta, un PDF o un paquete',
  'Choose a folder': 'Elegir una carpeta',
  'Print the result': 'Imprimir el resultado',
  'Whom you trust': 'En quién confía',
  "A record shows that it is unchanged since it was sealed. That the shop sealed it, only you can know: from the shop's trust list (trusted-keys.json), which you had from the shop itself, and not together with the record.":
    'Un acta muestra que no ha cambiado desde que se selló. Que la selló el taller, solo usted puede saberlo: por la lista de confianza del taller (trusted-keys.json), recibida del propio taller y no junto con el acta.',
  'Add a trust list, kept checkpoint, policy or time stamp':
    'Añadir una lista de confianza, un punto de control guardado, una política o un sello de tiempo',
  'This page is one file without a server. It works without a network, keeps nothing, and judges a record by the rules that the record names. The same is said by the command "plugmark verify".':
    'Esta página es un solo archivo sin servidor. Funciona sin red, no guarda nada y juzga un acta por las reglas que el acta nombra. Lo mismo dice la orden «plugmark verify».',
  'no record is inside this PDF': 'no hay ningún acta dentro de este PDF',
  'Ask for the record (*.record.json), or for the PDF as the shop made it: some programs drop what is attached.':
    'Pedir el acta (*.record.json) o el PDF tal como lo creó el taller: algunos programas quitan los adjuntos.',
  '{0} records are inside this PDF, and it should be one':
    'hay {0} actas dentro de este PDF, y debería haber una',
  'no samples': 'sin curva',
  'Log and file': 'Registro y archivo',
  'SHA-256 of the record: {0}': 'SHA-256 del acta: {0}',
  'What was checked': 'Qué se verificó',
  passed: 'superado',
  FAILED: 'FALLIDO',
  'in doubt': 'en duda',
  'not looked at': 'no examinado',
  'Job {0}: {1}': 'Orden {0}: {1}',
  'Cylinders in service order': 'Cilindros en el orden del trabajo',
  'What every plug must reach': 'Lo que cada bujía debe alcanzar',
  'Gap and torque of each cylinder': 'Separación y par de cada cilindro',
  'Exceptions, and what was out of order': 'Excepciones, y lo que se hizo fuera de orden',
  'When (UTC)': 'Cuándo (UTC)',
  'Old plugs, new plugs, and the work around them': 'Bujías viejas, bujías nuevas y el trabajo con ellas',
  'Tools and their calibration': 'Herramientas y su calibración',
  'Permissible deviation': 'Desviación admisible',
  'How its readings came': 'Cómo llegaron sus lecturas',
  'What this proves': 'Lo que esto demuestra',
  'What this does not prove': 'Lo que esto no demuestra',
  'a reading here proves it': 'una lectura aquí lo demuestra',
  'guard band: within the limits, and nobody can be sure':
    'banda de guarda: dentro de los límites, y nadie puede estar seguro',
  'beyond the limits': 'fuera de los límites',
  '▼ peak, which is judged': '▼ valor máximo, que se juzga',
  '○ first release (the click)': '○ primer disparo (el clic)',
  'Nothing was measured.': 'No se midió nada.',
  'Old gap, mm': 'Separación anterior, mm',
  'Removal, N·m': 'Aflojado, N·m',
  'Job {0}, station {1}, {2} entries; {3}': 'Orden {0}, puesto {1}, {2} entradas; {3}',
  paper: 'documento',
  'The pages of this PDF were NOT compared with the record inside.':
    'Las páginas de este PDF NO se compararon con el acta que contiene.',
  'They could show anything: what is shown here comes from the record inside, which is what counts. "plugmark verify" on the PDF compares them.':
    'Podrían mostrar cualquier cosa: lo que se ve aquí viene del acta de dentro, que es lo que cuenta. «plugmark verify» sobre el PDF las compara.',
  'Ask the shop for its trust list (trusted-keys.json) by another way than the one by which this came, or compare the key that is named below with one that you have from the shop. Then add the list here.':
    'Pedir al taller su lista de confianza (trusted-keys.json) por otra vía que aquella por la que llegó esto, o comparar la clave que se nombra abajo con la que tiene del taller. Después añadir la lista aquí.',
  'Withheld: {0}. What is signed holds digests of these texts; no check needs them.':
    'Retenido: {0}. Lo firmado contiene los resúmenes de estos textos; ninguna verificación los necesita.',
  'In the log {0} of {1} entries, root {2}. The station signed it; nobody else has witnessed it here.':
    'En el registro {0} de {1} entradas, raíz {2}. Lo firmó el puesto; nadie más lo ha atestiguado aquí.',
  'Every plug must end within {0}. Allowing for what this wrench may be off, a reading proves that only within {1}.':
    'Cada bujía debe quedar en el margen de {0}. Contando con el posible error de esta llave, una lectura solo lo demuestra en el de {1}.',
  'Every plug must end within {0}. No reading of this wrench proves that: it is too coarse.':
    'Cada bujía debe quedar en el margen de {0}. Ninguna lectura de esta llave lo demuestra: es demasiado imprecisa.',
  'Every gap must be within {0}. Allowing for what this gauge may be off, a reading proves that only within {1}.':
    'Cada separación debe estar en el margen de {0}. Contando con el posible error de esta galga, una lectura solo lo demuestra en el de {1}.',
  'Every gap must be within {0}. No reading of this gauge proves that: it is too coarse.':
    'Cada separación debe estar en el margen de {0}. Ninguna lectura de esta galga lo demuestra: es demasiado imprecisa.',
  'click {0}': 'clic {0}',
  'this is no record, PDF, package, trust list, checkpoint, policy or time stamp':
    'esto no es un acta, PDF, paquete, lista de confianza, punto de control, política ni sello de tiempo',
  'Choose the *.record.json, the PDF or the package that you were given.':
    'Elegir el *.record.json, el PDF o el paquete que recibió.',
  'an archive is verified by itself': 'un archivo comprimido se verifica por separado',
  'Choose one package, or records, but not both at once.':
    'Elegir un paquete o actas, pero no ambos a la vez.',
  'The checkpoint that you kept': 'El punto de control que guardó',
  'Your policy of logs and witnesses': 'Su política de registros y testigos',
  'The time stamp': 'El sello de tiempo',
  'The certificates of authorities that you believe': 'Los certificados de las autoridades en las que cree',
  'no file in this folder ends in .record.json': 'ningún archivo de esta carpeta termina en .record.json',
  'Choose a folder that holds records, or a package.': 'Elegir una carpeta con actas, o un paquete.',
  'Add the certificates of the authority as PEM.': 'Añadir los certificados de la autoridad en PEM.',
  'nothing says which authority to believe': 'nada dice en qué autoridad creer',
  'there is no certificate here': 'aquí no hay ningún certificado',
  'a time stamp belongs to one record, and these are many':
    'un sello de tiempo pertenece a un acta, y aquí hay muchas',
  'Open the record in it. The time stamp is left out here.':
    'Abrir el acta en cuestión. Aquí se deja fuera el sello de tiempo.',
  'no name': 'sin nombre',
  'revoked from {0}': 'revocada desde {0}',
  station: 'puesto',
  countersigner: 'refrendante',
  'this browser cannot check the signatures (Ed25519), so nothing is said about the file':
    'este navegador no puede verificar las firmas (Ed25519), así que no se dice nada del archivo',
  'Open the page in a newer browser.': 'Abrir la página en un navegador más reciente.',
  'a fault in the page itself: {0}': 'un fallo de la propia página: {0}',
  'Check the file with "plugmark verify", and report the fault.':
    'Verificar el archivo con «plugmark verify» y comunicar el fallo.',
  'unpacked it would have {0} MB, more than any package':
    'descomprimido tendría {0} MB, más que cualquier paquete',
  'this archive is not read: {0}': 'este archivo comprimido no se lee: {0}',
  'it has no table of contents': 'no tiene índice',
  'it is of the 64-bit form': 'es de la forma de 64 bits',
  'it is one of several parts': 'es una de varias partes',
  'its table of contents is larger than that of any package':
    'su índice es mayor que el de cualquier paquete',
  'its table of contents is not where it should be': 'su índice no está donde debería',
  'its table of contents is damaged': 'su índice está dañado',
  'its table of contents is cut off': 'su índice está cortado',
  '{0} and {1} have the same name': '{0} y {1} tienen el mismo nombre',
  'its table of contents holds something else': 'su índice contiene otra cosa',
  '{0} is under a password': '{0} está protegido con contraseña',
  '{0} is packed in another way': '{0} está comprimido de otra manera',
  '{0} has not the size that it says': '{0} no tiene el tamaño que declara',
  '{0} is cut off': '{0} está cortado',
  '{0} is a link, or no plain file': '{0} es un enlace o no es un archivo normal',
  'a name in it is not UTF-8 text': 'un nombre en él no es texto UTF-8',
  'a name in it leads out of the folder, or is none: {0}':
    'un nombre en él lleva fuera de la carpeta o no es un nombre: {0}',
  '{0} and {1} lie in one another': '{0} y {1} se solapan',
  '{0} is not there': '{0} no está',
  '{0} has another name where it lies': '{0} tiene otro nombre en su sitio',
};
