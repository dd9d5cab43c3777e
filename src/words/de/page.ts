/** German for the page that verifies. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  '{0} of {1} PUT IN QUESTION later.': '{0} von {1} später IN FRAGE GESTELLT.',
  'job {0} of {1}: {2} by impact assessment {3} on {4} ({5}), out of tolerance {6}; {7}':
    'Auftrag {0} vom {1}: {2} durch Auswirkungsbewertung {3} zu {4} ({5}), außer Toleranz {6}; {7}',
  'OUT at cylinder {0}': 'AUSSERHALB an Zylinder {0}',
  'DOUBTFUL at cylinder {0}': 'ZWEIFELHAFT an Zylinder {0}',
  'that the readings came from the named instruments, where the link of a tool was not authenticated: each record says so':
    'dass die Messwerte von den genannten Geräten kamen, wo die Verbindung eines Werkzeugs nicht authentifiziert war: jedes Protokoll nennt es',
  'that no job was left out when it was chosen: only the whole log of the station shows that':
    'dass bei der Auswahl kein Auftrag weggelassen wurde: das zeigt nur das ganze Logbuch des Arbeitsplatzes',
  "that no impact assessment was left out: the station's own entries here are a choice of those that bear on these jobs":
    'dass keine Auswirkungsbewertung weggelassen wurde: die eigenen Einträge des Arbeitsplatzes hier sind eine Auswahl derer, die diese Aufträge betreffen',
  "that no impact assessment came behind the station's entry {0}: of what followed, up to {1}, only the entries of the records here are shown":
    'dass hinter dem Eintrag {0} des Arbeitsplatzes keine Auswirkungsbewertung kam: von dem, was bis {1} folgte, sind nur die Einträge der Protokolle hier zu sehen',
  'that nothing was rewritten before it was made: nobody held it against an older checkpoint. Keep its {0} for the next time, and give it with --kept':
    'dass vor der Erstellung nichts umgeschrieben wurde: niemand hat es mit einem älteren Prüfpunkt verglichen. {0} daraus für das nächste Mal aufheben und mit --kept angeben',
  'what papers say that somebody has from elsewhere: hold each against its record with "plugmark verify PAPER.pdf"':
    'was Dokumente sagen, die jemand von anderswo hat: jedes mit „plugmark verify PAPER.pdf“ an seinem Protokoll prüfen',
  'the verdicts of the jobs that were not judged again: verify them with the version that made them as well':
    'die Urteile der Aufträge, die nicht neu beurteilt wurden: diese auch mit der Version prüfen, die sie erstellt hat',
  'that nothing of a job came behind its last entry here: a job that goes on has more entries in the log':
    'dass von einem Auftrag nichts hinter seinem letzten Eintrag hier kam: ein Auftrag, der weitergeht, hat mehr Einträge im Logbuch',
  contents: 'Inhalt',
  'judged again': 'neu beurteilt',
  completeness: 'Vollständigkeit',
  'order of work': 'Reihenfolge',
  signatures: 'Signaturen',
  signer: 'Unterzeichner',
  log: 'Logbuch',
  clock: 'Uhr',
  witnesses: 'Zeugen',
  'trusted time': 'gesicherte Zeit',
  'one history': 'eine Historie',
  'same log': 'gleiches Logbuch',
  since: 'seither',
  impacts: 'Auswirkungen',
  times: 'Zeiten',
  made: 'Erstellung',
  vin: 'Fahrgestellnummer',
  fleet: 'Fuhrpark',
  customer: 'Kunde',
  person: 'Person',
  'this file of the package is not there': 'diese Datei des Pakets fehlt',
  'Ask for the package again.': 'Das Paket noch einmal anfordern.',
  'Ask for it again from where it came.': 'Noch einmal anfordern, wo es herkam.',
  'it has {0}, and no such file has more than {1}': 'sie hat {0}, und keine solche Datei hat mehr als {1}',
  'the browser could not read this file': 'der Browser konnte diese Datei nicht lesen',
  'Choose it again.': 'Noch einmal auswählen.',
  'The page could not go on with this file. Reload it, and try another browser.':
    'Die Seite kam mit dieser Datei nicht weiter. Seite neu laden oder einen anderen Browser nehmen.',
  'Reading …': 'Wird gelesen …',
  'Stopped.': 'Abgebrochen.',
  Stop: 'Abbrechen',
  '{0} of {1} {2}': '{0} von {1} {2}',
  'You trust nobody yet.': 'Sie vertrauen noch niemandem.',
  'Your list: {0}': 'Ihre Liste: {0}',
  'Back to all records': 'Zurück zu allen Protokollen',
  Remarks: 'Anmerkungen',
  Records: 'Protokolle',
  'Put in question by what was learned later': 'In Frage gestellt durch spätere Erkenntnisse',
  Withheld: 'Zurückgehalten',
  'What to know': 'Was zu wissen ist',
  Record: 'Protokoll',
  'Show {0}': '{0} zeigen',
  '# record|# records': { one: '# Protokoll', other: '# Protokolle' },
  'these files': 'diese Dateien',
  records: 'Protokolle',
  files: 'Dateien',
  'Its papers were NOT compared with the records, and could show anything.':
    'Seine Dokumente wurden NICHT mit den Protokollen verglichen und könnten alles zeigen.',
  'one {0}': 'ein {0}',
  'authentic and whole': 'authentisch und unversehrt',
  '{0}; station {1}; {2}; asked for {3}': '{0}; Arbeitsplatz {1}; {2}; angefragt {3}',
  'all jobs': 'alle Aufträge',
  'Compare the key that is named below with the one that the station gave you by another way. If it is the same, take {0} out of the package and add it here.':
    'Den unten genannten Schlüssel mit dem vergleichen, den der Arbeitsplatz Ihnen auf anderem Weg gegeben hat. Ist es derselbe, {0} aus dem Paket nehmen und hier hinzufügen.',
  'Left out: job {0}, {1}.': 'Weggelassen: Auftrag {0}, {1}.',
  'Check a spark plug record': 'Zündkerzen-Protokoll prüfen',
  Language: 'Sprache',
  'Check a record of spark plug work': 'Protokoll einer Zündkerzenarbeit prüfen',
  'Drop the file that you were given anywhere on this page. It is checked here, on your own computer: nothing is sent, and nobody is asked.':
    'Die Datei, die Sie bekommen haben, irgendwo auf diese Seite ziehen. Sie wird hier auf Ihrem eigenen Rechner geprüft: nichts wird gesendet und niemand gefragt.',
  'Files to check': 'Zu prüfende Dateien',
  'Choose a record, PDF or package': 'Protokoll, PDF oder Paket auswählen',
  'Choose a folder': 'Ordner auswählen',
  'Print the result': 'Ergebnis drucken',
  'Whom you trust': 'Wem Sie vertrauen',
  "A record shows that it is unchanged since it was sealed. That the shop sealed it, only you can know: from the shop's trust list (trusted-keys.json), which you had from the shop itself, and not together with the record.":
    'Ein Protokoll zeigt, dass es seit dem Versiegeln unverändert ist. Dass die Werkstatt es versiegelt hat, können nur Sie wissen: aus der Vertrauensliste der Werkstatt (trusted-keys.json), die Sie von der Werkstatt selbst haben und nicht zusammen mit dem Protokoll.',
  'Add a trust list, kept checkpoint, policy or time stamp':
    'Vertrauensliste, aufgehobenen Prüfpunkt, Richtlinie oder Zeitstempel hinzufügen',
  'This page is one file without a server. It works without a network, keeps nothing, and judges a record by the rules that the record names. The same is said by the command "plugmark verify".':
    'Diese Seite ist eine einzige Datei ohne Server. Sie arbeitet ohne Netz, speichert nichts und beurteilt ein Protokoll nach den Regeln, die das Protokoll nennt. Dasselbe sagt der Befehl „plugmark verify“.',
  'no record is inside this PDF': 'in diesem PDF steckt kein Protokoll',
  'Ask for the record (*.record.json), or for the PDF as the shop made it: some programs drop what is attached.':
    'Das Protokoll (*.record.json) anfordern oder das PDF, wie die Werkstatt es erstellt hat: manche Programme lassen Anhänge weg.',
  '{0} records are inside this PDF, and it should be one':
    'in diesem PDF stecken {0} Protokolle, und es sollte eines sein',
  'no samples': 'keine Kurve',
  'Log and file': 'Logbuch und Datei',
  'SHA-256 of the record: {0}': 'SHA-256 des Protokolls: {0}',
  'What was checked': 'Was geprüft wurde',
  passed: 'bestanden',
  FAILED: 'NICHT BESTANDEN',
  'in doubt': 'zweifelhaft',
  'not looked at': 'nicht angesehen',
  'Job {0}: {1}': 'Auftrag {0}: {1}',
  'Cylinders in service order': 'Zylinder in Arbeitsreihenfolge',
  'What every plug must reach': 'Was jede Zündkerze erreichen muss',
  'Gap and torque of each cylinder': 'Elektrodenabstand und Drehmoment jedes Zylinders',
  'Exceptions, and what was out of order': 'Ausnahmen, und was außer der Reihe war',
  'When (UTC)': 'Wann (UTC)',
  'Old plugs, new plugs, and the work around them': 'Alte und neue Zündkerzen und die Arbeit daran',
  'Tools and their calibration': 'Werkzeuge und ihre Kalibrierung',
  'Permissible deviation': 'Zulässige Abweichung',
  'How its readings came': 'Wie seine Messwerte kamen',
  'What this proves': 'Was dies nachweist',
  'What this does not prove': 'Was dies nicht nachweist',
  'a reading here proves it': 'ein Messwert hier weist es nach',
  'guard band: within the limits, and nobody can be sure':
    'Schutzband: innerhalb der Grenzen, und niemand kann sicher sein',
  'beyond the limits': 'außerhalb der Grenzen',
  '▼ peak, which is judged': '▼ Spitzenwert, der beurteilt wird',
  '○ first release (the click)': '○ erstes Auslösen (der Klick)',
  'Nothing was measured.': 'Nichts wurde gemessen.',
  'Old gap, mm': 'Alter Abstand, mm',
  'Removal, N·m': 'Lösen, N·m',
  'Job {0}, station {1}, {2} entries; {3}': 'Auftrag {0}, Arbeitsplatz {1}, {2} Einträge; {3}',
  paper: 'Dokument',
  'The pages of this PDF were NOT compared with the record inside.':
    'Die Seiten dieses PDF wurden NICHT mit dem Protokoll darin verglichen.',
  'They could show anything: what is shown here comes from the record inside, which is what counts. "plugmark verify" on the PDF compares them.':
    'Sie könnten alles zeigen: was hier steht, kommt aus dem Protokoll darin, und das zählt. „plugmark verify“ auf das PDF vergleicht sie.',
  'Ask the shop for its trust list (trusted-keys.json) by another way than the one by which this came, or compare the key that is named below with one that you have from the shop. Then add the list here.':
    'Die Vertrauensliste der Werkstatt (trusted-keys.json) auf einem anderen Weg anfordern als dem, auf dem dies kam, oder den unten genannten Signaturschlüssel mit einem vergleichen, den Sie von der Werkstatt haben. Dann die Liste hier hinzufügen.',
  'Withheld: {0}. What is signed holds digests of these texts; no check needs them.':
    'Zurückgehalten: {0}. Signiert sind Prüfsummen dieser Texte; keine Prüfung braucht sie.',
  'In the log {0} of {1} entries, root {2}. The station signed it; nobody else has witnessed it here.':
    'Im Logbuch {0} mit {1} Einträgen, Wurzel {2}. Der Arbeitsplatz hat es signiert; sonst hat es hier niemand bezeugt.',
  'Every plug must end within {0}. Allowing for what this wrench may be off, a reading proves that only within {1}.':
    'Jede Zündkerze muss am Ende bei {0} liegen. Mit dem, was dieser Schlüssel falsch zeigen kann, weist ein Messwert das nur bei {1} nach.',
  'Every plug must end within {0}. No reading of this wrench proves that: it is too coarse.':
    'Jede Zündkerze muss am Ende bei {0} liegen. Kein Messwert dieses Schlüssels weist das nach: er ist zu ungenau.',
  'Every gap must be within {0}. Allowing for what this gauge may be off, a reading proves that only within {1}.':
    'Jeder Elektrodenabstand muss bei {0} liegen. Mit dem, was diese Lehre falsch zeigen kann, weist ein Messwert das nur bei {1} nach.',
  'Every gap must be within {0}. No reading of this gauge proves that: it is too coarse.':
    'Jeder Elektrodenabstand muss bei {0} liegen. Kein Messwert dieser Lehre weist das nach: sie ist zu ungenau.',
  'click {0}': 'Klick {0}',
  'this is no record, PDF, package, trust list, checkpoint, policy or time stamp':
    'das ist kein Protokoll, PDF, Paket, keine Vertrauensliste, kein Prüfpunkt, keine Richtlinie und kein Zeitstempel',
  'Choose the *.record.json, the PDF or the package that you were given.':
    'Die *.record.json, das PDF oder das Paket auswählen, das Sie bekommen haben.',
  'an archive is verified by itself': 'ein Archiv wird für sich geprüft',
  'Choose one package, or records, but not both at once.':
    'Ein Paket oder Protokolle auswählen, aber nicht beides zugleich.',
  'The checkpoint that you kept': 'Der Prüfpunkt, den Sie aufgehoben haben',
  'Your policy of logs and witnesses': 'Ihre Richtlinie zu Logbüchern und Zeugen',
  'The time stamp': 'Der Zeitstempel',
  'The certificates of authorities that you believe': 'Die Zertifikate der Stellen, denen Sie glauben',
  'no file in this folder ends in .record.json': 'keine Datei in diesem Ordner endet auf .record.json',
  'Choose a folder that holds records, or a package.':
    'Einen Ordner mit Protokollen oder ein Paket auswählen.',
  'Add the certificates of the authority as PEM.': 'Die Zertifikate der Stelle als PEM hinzufügen.',
  'nothing says which authority to believe': 'nichts sagt, welcher Stelle zu glauben ist',
  'there is no certificate here': 'hier ist kein Zertifikat',
  'a time stamp belongs to one record, and these are many':
    'ein Zeitstempel gehört zu einem Protokoll, und dies sind viele',
  'Open the record in it. The time stamp is left out here.':
    'Das Protokoll daraus öffnen. Der Zeitstempel bleibt hier außer Acht.',
  'no name': 'ohne Namen',
  'revoked from {0}': 'widerrufen ab {0}',
  station: 'Arbeitsplatz',
  countersigner: 'Gegenzeichner',
  'this browser cannot check the signatures (Ed25519), so nothing is said about the file':
    'dieser Browser kann die Signaturen (Ed25519) nicht prüfen, darum wird über die Datei nichts gesagt',
  'Open the page in a newer browser.': 'Die Seite in einem neueren Browser öffnen.',
  'a fault in the page itself: {0}': 'ein Fehler in der Seite selbst: {0}',
  'Check the file with "plugmark verify", and report the fault.':
    'Die Datei mit „plugmark verify“ prüfen und den Fehler melden.',
  'unpacked it would have {0} MB, more than any package': 'entpackt hätte es {0} MB, mehr als jedes Paket',
  'this archive is not read: {0}': 'dieses Archiv wird nicht gelesen: {0}',
  'it has no table of contents': 'es hat kein Inhaltsverzeichnis',
  'it is of the 64-bit form': 'es hat die 64-Bit-Form',
  'it is one of several parts': 'es ist einer von mehreren Teilen',
  'its table of contents is larger than that of any package':
    'sein Inhaltsverzeichnis ist größer als das jedes Pakets',
  'its table of contents is not where it should be': 'sein Inhaltsverzeichnis ist nicht, wo es sein sollte',
  'its table of contents is damaged': 'sein Inhaltsverzeichnis ist beschädigt',
  'its table of contents is cut off': 'sein Inhaltsverzeichnis ist abgeschnitten',
  '{0} and {1} have the same name': '{0} und {1} haben denselben Namen',
  'its table of contents holds something else': 'sein Inhaltsverzeichnis enthält noch etwas anderes',
  '{0} is under a password': '{0} ist mit einem Passwort geschützt',
  '{0} is packed in another way': '{0} ist auf andere Weise gepackt',
  '{0} has not the size that it says': '{0} hat nicht die Größe, die angegeben ist',
  '{0} is cut off': '{0} ist abgeschnitten',
  '{0} is a link, or no plain file': '{0} ist eine Verknüpfung oder keine gewöhnliche Datei',
  'a name in it is not UTF-8 text': 'ein Name darin ist kein UTF-8-Text',
  'a name in it leads out of the folder, or is none: {0}':
    'ein Name darin führt aus dem Ordner hinaus oder ist keiner: {0}',
  '{0} and {1} lie in one another': '{0} und {1} liegen ineinander',
  '{0} is not there': '{0} ist nicht da',
  '{0} has another name where it lies': '{0} hat an seiner Stelle einen anderen Namen',
};
