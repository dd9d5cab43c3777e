/** German for the commands of the office. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  'Give it as "plugmark devices scan" shows it.': 'Geben Sie ihn an, wie „plugmark devices scan“ ihn zeigt.',
  'Record the device again.': 'Zeichnen Sie das Gerät noch einmal auf.',
  'the characteristic {0} sent packets, and the capture does not list it as one that sends':
    'das Merkmal {0} hat Pakete gesendet, und die Aufnahme führt es nicht als eines auf, das sendet',
  'this is longer than any serial number': 'das ist länger als jede Seriennummer',
  'this is no UUID of 4 or 32 digits': 'das ist keine UUID mit 4 oder 32 Ziffern',
  'the station file has no tool "{0}"': 'die Arbeitsplatzdatei hat kein Werkzeug "{0}"',
  'Add it first, or name one of: {0}.': 'Zuerst eintragen, oder eines von diesen nennen: {0}.',
  'the device at {0} uses a changing address and was not heard again':
    'das Gerät unter {0} wechselt seine Adresse und war nicht wieder zu hören',
  'Switch off the privacy setting of the tool. This station cannot resolve such addresses.':
    'Den Schutz der Privatsphäre am Werkzeug ausschalten. Dieser Arbeitsplatz kann solche Adressen nicht auflösen.',
  'the device at {0} gives no serial number before pairing, so this station cannot tell it from another one':
    'das Gerät unter {0} nennt vor der Kopplung keine Seriennummer, also kann dieser Arbeitsplatz es nicht von einem anderen unterscheiden',
  'Use a tool that gives a serial number in its Device Information.':
    'Ein Werkzeug nehmen, das in seinen Geräteangaben (Device Information) eine Seriennummer nennt.',
  'the device at {0} has serial number {1}, but the station file says {2} for {3}':
    'das Gerät unter {0} hat die Seriennummer {1}, die Arbeitsplatzdatei nennt für {3} aber {2}',
  'Adopt the right one, or correct the instrument with the data of its certificate.':
    'Das richtige übernehmen, oder die Angaben des Messgeräts nach seinem Kalibrierschein berichtigen.',
  'serial number {0} is adopted at {1} but answers from {2}':
    'Seriennummer {0} ist unter {1} übernommen, antwortet aber von {2}',
  'Check which of the two is the tool. If it has a new radio, delete "address" of {0} in the station file.':
    'Prüfen, welches von beiden das Werkzeug ist. Hat es ein neues Funkmodul, in der Arbeitsplatzdatei "address" von {0} löschen.',
  'serial number {0} at {1} is {2} of this station already':
    'Seriennummer {0} unter {1} ist schon {2} dieses Arbeitsplatzes',
  'Choose another device.': 'Ein anderes Gerät wählen.',
  'the device has the name "{0}", like the tool {1}': 'das Gerät hat den Namen "{0}", wie das Werkzeug {1}',
  'Rename one of the two in its own settings.':
    'Eines der beiden in seinen eigenen Einstellungen umbenennen.',
  'station file': 'Arbeitsplatzdatei',
  'it does not understand the request': 'er versteht die Anfrage nicht',
  'it does not have the key that signs this log now; give it the new one: plugmark log vkey':
    'er hat den Signaturschlüssel nicht, der dieses Logbuch jetzt signiert; ihm den neuen geben: plugmark log vkey',
  'it does not know this log; give it the key of the log: plugmark log vkey':
    'er kennt dieses Logbuch nicht; ihm den Schlüssel des Logbuchs geben: plugmark log vkey',
  'the request is too large for it': 'die Anfrage ist ihm zu groß',
  'IT HAS ANOTHER HISTORY OF THIS LOG. Run "plugmark log check"':
    'ER HAT EINE ANDERE GESCHICHTE DIESES LOGBUCHS. "plugmark log check" ausführen',
  'it has had too many requests for now': 'er hatte für jetzt zu viele Anfragen',
  'it answered {0}': 'geantwortet wurde {0}',
  'its answer cannot be understood': 'seine Antwort ist nicht zu verstehen',
  'it answers with another size each time': 'er antwortet jedes Mal mit einer anderen Länge',
  'its answer has no cosignature by a key that the station file names':
    'seine Antwort enthält keine Gegensignatur mit einem Schlüssel, den die Arbeitsplatzdatei nennt',
  'it did not answer in time': 'die Antwort kam nicht rechtzeitig',
  'it cannot be reached{0}': 'nicht erreichbar{0}',
  'pages copied': 'Seiten kopiert',
  'entries checked': 'Einträge geprüft',
  'Backed up to {0} and checked: {1}.': 'Gesichert in {0} und geprüft: {1}.',
  'The backup contains the log only. Copy the folder keys and the certificates too; keep the keys private.':
    'Die Sicherung enthält nur das Logbuch. Auch den Ordner keys und die Kalibrierscheine kopieren; die Signaturschlüssel geheim halten.',
  'expected either a backup or --from-archive URL':
    'erwartet: entweder eine Sicherung oder --from-archive URL',
  'Name the file of the backup, or the archive that the station shipped to.':
    'Die Datei der Sicherung nennen, oder das Archiv, an das der Arbeitsplatz gesendet hat.',
  'the archive at {0}': 'dem Archiv unter {0}',
  'What the station wrote after its last shipping is not in the archive.':
    'Was der Arbeitsplatz nach der letzten Sendung schrieb, ist nicht im Archiv.',
  'Checked and restored from {0}: {1}.': 'Geprüft und wiederhergestellt aus {0}: {1}.',
  'The old log is kept as {0}.': 'Das alte Logbuch ist aufgehoben als {0}.',
  'If work went on after this backup, later checkpoints and records show the missing end: run "plugmark log check". The station signs nothing then before you fill it in, or say that it is lost: plugmark log lost --because "..."':
    'Wenn nach dieser Sicherung gearbeitet wurde, zeigen spätere Prüfpunkte und Protokolle das fehlende Ende: "plugmark log check" ausführen. Der Arbeitsplatz signiert dann nichts, bevor es ergänzt oder als verloren erklärt ist: plugmark log lost --because "..."',
  'Restore anyway?': 'Trotzdem wiederherstellen?',
  'Use --set-aside to keep them in a file beside the log and restore the backup.':
    'Mit --set-aside kommen sie in eine Datei neben dem Logbuch, und die Sicherung wird wiederhergestellt.',
  'nothing was restored: {0}': 'nichts wurde wiederhergestellt: {0}',
  'Save them first with "plugmark recover". {0}': 'Zuerst mit "plugmark recover" retten. {0}',
  '# entry|# entries': { one: '# Eintrag', other: '# Einträge' },
  '# more job|# more jobs': { one: '# weiterer Auftrag', other: '# weitere Aufträge' },
  '{0} of the station itself': '{0} des Arbeitsplatzes selbst',
  'the log and the backup took two courses behind entry {0}: {1} of the log ({2}), where the backup has {3} of its own, are set aside':
    'Logbuch und Sicherung gehen hinter Eintrag {0} auseinander: {1} des Logbuchs ({2}), wo die Sicherung {3} eigene hat, werden beiseitegelegt',
  'the log and the backup took two courses behind entry {0}: {1} of the log ({2}), where the backup has {3} of its own, would be set aside':
    'Logbuch und Sicherung gehen hinter Eintrag {0} auseinander: {1} des Logbuchs ({2}), wo die Sicherung {3} eigene hat, würden beiseitegelegt',
  'the log that is there is another one of this station, begun anew: its {0} ({1}) are set aside':
    'das Logbuch hier ist ein anderes dieses Arbeitsplatzes, neu begonnen: seine {0} ({1}) werden beiseitegelegt',
  'the log that is there is another one of this station, begun anew: its {0} ({1}) would be set aside':
    'das Logbuch hier ist ein anderes dieses Arbeitsplatzes, neu begonnen: seine {0} ({1}) würden beiseitegelegt',
  'the log that is there is damaged, and {0} newer than the backup can still be read in it: {1}; they are set aside':
    'das Logbuch hier ist beschädigt, und {0}, neuer als die Sicherung, sind noch zu lesen: {1}; sie werden beiseitegelegt',
  'the log that is there is damaged, and {0} newer than the backup can still be read in it: {1}; they would be set aside':
    'das Logbuch hier ist beschädigt, und {0}, neuer als die Sicherung, sind noch zu lesen: {1}; sie würden beiseitegelegt',
  '{0} newer than the backup ({1}) are set aside':
    '{0}, neuer als die Sicherung ({1}), werden beiseitegelegt',
  '{0} newer than the backup ({1}) would be set aside':
    '{0}, neuer als die Sicherung ({1}), würden beiseitegelegt',
  opened: 'eröffnet',
  closed: 'abgeschlossen',
  void: 'ungültig',
  'went on': 'ging weiter',
  'It is the log of the station "{0}" ({1}). Is it yours?':
    'Es ist das Logbuch des Arbeitsplatzes "{0}" ({1}). Ist es Ihres?',
  '{0}, the last entry {1}': '{0}, der letzte Eintrag {1}',
  'No measuring tool heard. Switch it on, or list every device with --all.':
    'Kein Messgerät zu hören. Einschalten, oder mit --all alle Geräte auflisten.',
  address: 'Adresse',
  signal: 'Signal',
  kind: 'Art',
  name: 'Name',
  'serial number': 'Seriennummer',
  unknown: 'unbekannt',
  '(no name)': '(ohne Namen)',
  'not read: {0}': 'nicht gelesen: {0}',
  '(none)': '(keine)',
  'Adopted as {0}: {1} at {2} ({3}).': 'Übernommen als {0}: {1} unter {2} ({3}).',
  'The link is encrypted but not authenticated (Just Works). The key is not kept.':
    'Die Verbindung ist verschlüsselt, aber nicht authentisiert (Just Works). Der Schlüssel wird nicht aufgehoben.',
  'The link is not encrypted and not authenticated. Every record states this.':
    'Die Verbindung ist weder verschlüsselt noch authentisiert. Jedes Protokoll gibt das an.',
  '{0} packets of {1} are in {2}.': '{0} Pakete von {1} sind in {2}.',
  'listening to {0} of service {1}': 'hört auf {0} des Dienstes {1}',
  ok: 'gut',
  FAIL: 'FEHLER',
  'Everything is ready.': 'Alles ist bereit.',
  'Fix {0} of these first.': 'Zuerst {0} davon beheben.',
  'no {0} in this folder': 'keine {0} in diesem Ordner',
  'Write one with "plugmark setup", or name one with --station.':
    'Mit "plugmark setup" eine schreiben, oder eine mit --station nennen.',
  '{0}; tools: {1}': '{0}; Werkzeuge: {1}',
  'Passed. It withstands bad bytes; whether its figures are right, only the display of the tool shows.':
    'Bestanden. Er verträgt falsche Bytes; ob seine Werte stimmen, zeigt nur die Anzeige des Werkzeugs.',
  'Not passed: {0} of {1} checks failed.': 'Nicht bestanden: {0} von {1} Prüfungen schlugen fehl.',
  '{0}: valid.': '{0}: gültig.',
  notified: 'gemeldet',
  read: 'gelesen',
  'asked for': 'abgefragt',
  sent: 'gesendet',
  ' every {0} ms': ' alle {0} ms',
  '  no value because {0}': '  kein Wert, weil {0}',
  ', {0} ms before the frame came': ', {0} ms vor dem Telegramm',
  '  sample {0} {1}{2}{3}': '  Messpunkt {0} {1}{2}{3}',
  '{0} {1} ({2} counts)': '{0} {1} ({2} Schritte)',
  '"{0}" is not bytes in hexadecimal': '"{0}" sind keine Bytes in hexadezimaler Form',
  'Give two digits a byte, for example --bytes "a5 01 00 00".':
    'Zwei Ziffern je Byte angeben, zum Beispiel --bytes "a5 01 00 00".',
  'the station': 'der Arbeitsplatz',
  '  and {0} more': '  und {0} weitere',
  'To be deleted: {0}.': 'Zu löschen: {0}.',
  '  in {0}: {1}': '  in {0}: {1}',
  "  in the station's own entries: {0}": '  in den eigenen Einträgen des Arbeitsplatzes: {0}',
  'These free texts contain it and are deleted whole:':
    'Diese freien Texte enthalten ihn und werden ganz gelöscht:',
  '{0}: whoever was given the record or a paper still has it ({1}).':
    '{0}: wem das Protokoll oder ein Dokument gegeben wurde, der hat es noch ({1}).',
  '# of these jobs was closed or declared void|# of these jobs were closed or declared void': {
    one: '# dieser Aufträge wurde abgeschlossen oder für ungültig erklärt',
    other: '# dieser Aufträge wurden abgeschlossen oder für ungültig erklärt',
  },
  'Backups, and files in other places, hold it until you delete them. A backup that is restored brings it back.':
    'Sicherungen und Dateien an anderen Orten enthalten ihn, bis Sie sie löschen. Eine wiederhergestellte Sicherung bringt ihn zurück.',
  '# signed entry|# signed entries': { one: '# signierten Eintrag', other: '# signierten Einträgen' },
  'It also stands in {0} ({1}), as in a job number or a description: there it cannot be deleted.':
    'Er steht auch in {0} ({1}), etwa in einer Auftragsnummer oder einer Beschreibung: dort kann er nicht gelöscht werden.',
  'These files of the station hold it, or may, and are left as they are:':
    'Diese Dateien des Arbeitsplatzes enthalten ihn, oder könnten es, und bleiben wie sie sind:',
  'Held, and deleted all the same: {0}.': 'Aufbewahrungspflichtig und dennoch gelöscht: {0}.',
  'Nothing was deleted.': 'Nichts wurde gelöscht.',
  'Deleted: {0}. The log says where they were, and not what they said.':
    'Gelöscht: {0}. Das Logbuch hält fest, wo sie standen, nicht was sie enthielten.',
  'the log has no such text': 'das Logbuch hat keinen solchen Text',
  'Look with "plugmark ask".': 'Mit "plugmark ask" nachsehen.',
  'NOT finished: another program has the log open, and old pages of the file may still hold the texts. Close it, then run the same command again.':
    'NICHT fertig: ein anderes Programm hat das Logbuch geöffnet, und alte Seiten der Datei können die Texte noch enthalten. Es schließen und denselben Befehl noch einmal ausführen.',
  'NOT finished: old pages of the file may still hold the texts, and the disk has no room to write it anew. Free as much as the log takes, then run the same command again.':
    'NICHT fertig: alte Seiten der Datei können die Texte noch enthalten, und auf dem Datenträger ist kein Platz, sie neu zu schreiben. So viel Platz schaffen, wie das Logbuch braucht, und denselben Befehl noch einmal ausführen.',
  'expected one of --plate, --vin, --fleet, --customer and --person':
    'erwartet: eines von --plate, --vin, --fleet, --customer und --person',
  'Name one text at a time.': 'Einen Text auf einmal nennen.',
  '--although-held needs --by NAME and --because TEXT':
    '--although-held braucht --by NAME und --because TEXT',
  'Give both.': 'Beide angeben.',
  '{0} contains the text that is to be forgotten': '{0} enthält den Text, der vergessen werden soll',
  'The log keeps who decided and why. Say it without that text.':
    'Das Logbuch hält fest, wer entscheidet und warum. Es ohne diesen Text sagen.',
  'The retention time of the shop is not known here: it is in the station file (--station FILE).':
    'Die Aufbewahrungsfrist der Werkstatt ist hier nicht bekannt: sie steht in der Arbeitsplatzdatei (--station FILE).',
  '; and {0} more': '; und {0} weitere',
  '{0} ({1}{2})': '{0} ({1}{2})',
  '# of these jobs is held|# of these jobs are held': {
    one: '# dieser Aufträge ist aufzubewahren',
    other: '# dieser Aufträge sind aufzubewahren',
  },
  'Nothing was deleted. Wait, or answer for it: --although-held --by NAME --because TEXT.':
    'Nichts wurde gelöscht. Abwarten, oder dafür einstehen: --although-held --by NAME --because TEXT.',
  'another program wrote such a text meanwhile, or deleted one':
    'ein anderes Programm hat inzwischen einen solchen Text geschrieben oder gelöscht',
  'Nothing was deleted. Close the other program, then try again.':
    'Nichts wurde gelöscht. Das andere Programm schließen, dann noch einmal versuchen.',
  'Delete these texts for good?': 'Diese Texte endgültig löschen?',
  'this is not a date': 'das ist kein Datum',
  'Write it as 2026-03-02.': 'So schreiben: 2026-03-02.',
  'No job matches.': 'Kein Auftrag passt.',
  state: 'Stand',
  'opened (UTC)': 'eröffnet (UTC)',
  impact: 'Auswirkung',
  '# session|# sessions': { one: '# Sitzung', other: '# Sitzungen' },
  'opened {0}, last entry {1} (UTC); {2}, {3}': 'eröffnet {0}, letzter Eintrag {1} (UTC); {2}, {3}',
  'handed over {0} from {1} to {2}': 'übergeben {0} von {1} an {2}',
  'note: {0}': 'Hinweis: {0}',
  'question about pull {0}: {1}': 'Frage zu Zug {0}: {1}',
  'As it was judged then:': 'Wie es damals beurteilt wurde:',
  '{0} already declared job {1} void': '{0} hat Auftrag {1} schon für ungültig erklärt',
  'There is nothing to do.': 'Es ist nichts zu tun.',
  'Job {0} is VOID. Its readings stay in the log and prove nothing.':
    'Auftrag {0} ist UNGÜLTIG. Seine Messwerte bleiben im Logbuch und beweisen nichts.',
  'Records sealed before do not show this. Write the papers again and recall the old ones.':
    'Vorher versiegelte Protokolle zeigen das nicht. Die Dokumente neu schreiben und die alten zurückrufen.',
  'Write papers that show it: plugmark jobs papers {0}':
    'Dokumente schreiben, die es zeigen: plugmark jobs papers {0}',
  'job {0} is closed': 'Auftrag {0} ist abgeschlossen',
  'Only an open job can be handed over.': 'Nur ein offener Auftrag kann übergeben werden.',
  '{0} already works on job {1}': '{0} arbeitet schon an Auftrag {1}',
  'Name another person.': 'Eine andere Person nennen.',
  "Job {0} is now {1}'s. Go on with: plugmark job --resume {2}\n":
    'Auftrag {0} gehört jetzt {1}. Weiter mit: plugmark job --resume {2}\n',
  'job {0} is not closed': 'Auftrag {0} ist nicht abgeschlossen',
  'Finish it with "plugmark job --resume", or declare it void with "plugmark jobs void".':
    'Mit "plugmark job --resume" zu Ende bringen, oder mit "plugmark jobs void" für ungültig erklären.',
  'this record is countersigned and is never overwritten':
    'dieses Protokoll ist gegengezeichnet und wird nie überschrieben',
  'Name another folder with --out.': 'Mit --out einen anderen Ordner nennen.',
  'this station has no job {0}': 'dieser Arbeitsplatz hat keinen Auftrag {0}',
  'List them with "plugmark jobs".': 'Mit "plugmark jobs" auflisten.',
  'Compare it with {0}.': 'Mit {0} vergleichen.',
  signs: 'signiert',
  'until {0}': 'bis {0}',
  'sign with their own keys': 'signieren mit eigenen Signaturschlüsseln',
  'do not sign (decided by the shop)': 'signieren nicht (von der Werkstatt entschieden)',
  'not decided; those with a key sign': 'nicht entschieden; wer einen Signaturschlüssel hat, signiert',
  'technicians: {0}': 'Mechaniker: {0}',
  'trust list: {0}': 'Vertrauensliste: {0}',
  'no key': 'kein Signaturschlüssel',
  'an earlier key': 'ein früherer Signaturschlüssel',
  'REVOKED from {0} ({1})': 'WIDERRUFEN ab {0} ({1})',
  '"{0}" is not a reason': '"{0}" ist kein Grund',
  'Give retired, lost or compromised.': 'retired, lost oder compromised angeben.',
  'the log has no key {0}': 'das Logbuch hat keinen Signaturschlüssel {0}',
  'See "plugmark keys list".': 'Siehe "plugmark keys list".',
  '{0}, choose a PIN of at least {1} characters: ': '{0}, eine PIN mit mindestens {1} Zeichen wählen: ',
  'a PIN needs at least {0} characters': 'eine PIN braucht mindestens {0} Zeichen',
  'Type one, or put it into {0}.': 'Eintippen, oder in {0} angeben.',
  '{0} signs with {1}.\n': '{0} signiert mit {1}.\n',
  '"{0}" is not a decision': '"{0}" ist keine Entscheidung',
  'Say sign or do-not-sign.': 'sign oder do-not-sign angeben.',
  'The key of the station is in a device, under its PIN.':
    'Der Signaturschlüssel des Arbeitsplatzes ist in einem Gerät, unter dessen PIN.',
  'Passphrase until now of {0}: ': 'Bisheriges Passwort von {0}: ',
  'New passphrase: ': 'Neues Passwort: ',
  'no passphrase was given': 'es wurde kein Passwort angegeben',
  'Passphrase for the new key (Enter: none): ': 'Passwort für den neuen Signaturschlüssel (Enter: keines): ',
  'DIVERGED at entry {0}: {1}.\n': 'ABWEICHUNG bei Eintrag {0}: {1}.\n',
  'All {0} entries are as they were written, and the hash tree over them is whole.':
    'Alle {0} Einträge sind, wie sie geschrieben wurden, und der Hashbaum darüber ist unversehrt.',
  'a checkpoint of the station': 'ein Prüfpunkt des Arbeitsplatzes',
  'LOST: the log states that it went on without entries that # checkpoint stands for.|LOST: the log states that it went on without entries that # checkpoints stand for.':
    {
      one: 'VERLOREN: das Logbuch hält fest, dass es ohne Einträge weiterging, für die # Prüfpunkt steht.',
      other:
        'VERLOREN: das Logbuch hält fest, dass es ohne Einträge weiterging, für die # Prüfpunkte stehen.',
    },
  'the log goes on from every checkpoint that is here':
    'das Logbuch setzt jeden Prüfpunkt fort, der hier ist',
  'There is nothing to state. Look with "plugmark log check".':
    'Es ist nichts zu erklären. Mit "plugmark log check" nachsehen.',
  'Stated in the log: it had {0} entries once, and went on without some of them. Every later record says so.':
    'Im Logbuch erklärt: es hatte einmal {0} Einträge und ging ohne einige davon weiter. Jedes spätere Protokoll gibt das an.',
  'An auditor who kept a checkpoint of the lost entries will find that the log does not go on from it.':
    'Ein Auditor, der einen Prüfpunkt der verlorenen Einträge aufgehoben hat, wird feststellen, dass das Logbuch ihn nicht fortsetzt.',
  '{0} of the lost entries, and good as long as the key is not changed: no proof from the log can be made for them later. Stamp each of them before: plugmark time-stamp RECORD':
    '{0} aus den verlorenen Einträgen, und gut, solange der Signaturschlüssel nicht gewechselt wird: später lässt sich dafür kein Nachweis aus dem Logbuch machen. Jedes vorher mit einem Zeitstempel versehen: plugmark time-stamp RECORD',
  'The key that this log names is not here, so that nothing was signed. Make a new one: plugmark keys rotate --lost':
    'Der Signaturschlüssel, den dieses Logbuch nennt, ist nicht hier, also wurde nichts signiert. Einen neuen machen: plugmark keys rotate --lost',
  '# record here is|# records here are': { one: '# Protokoll hier ist', other: '# Protokolle hier sind' },
  'Every personal text is there, or was deleted with "plugmark forget".':
    'Jeder persönliche Text ist da oder wurde mit "plugmark forget" gelöscht.',
  '  entry {0}: a text ({1}) is MISSING. It was deleted, and not with "plugmark forget".':
    '  Eintrag {0}: ein Text ({1}) FEHLT. Er wurde gelöscht, und nicht mit "plugmark forget".',
  '  entry {0}: a text ({1}) that was forgotten is BACK.':
    '  Eintrag {0}: ein Text ({1}), der vergessen war, ist WIEDER DA.',
  '  entry {0}: a text that does NOT belong to this entry.':
    '  Eintrag {0}: ein Text, der NICHT zu diesem Eintrag gehört.',
  'Every verdict and every proof holds, but personal texts beside the entries are not as the log says:':
    'Jedes Urteil und jeder Nachweis hält, aber persönliche Texte neben den Einträgen sind nicht, wie das Logbuch angibt:',
  'Checkpoint of {0} entries: nothing before it was removed or changed.':
    'Prüfpunkt über {0} Einträge: davor wurde nichts entfernt oder geändert.',
  'Checkpoint of {0} entries: NOT from this log. It is from another station, or the log was started again.':
    'Prüfpunkt über {0} Einträge: NICHT von diesem Logbuch. Er ist von einem anderen Arbeitsplatz, oder das Logbuch wurde neu begonnen.',
  'Checkpoint of {0} entries: NOT signed by a key of this station.':
    'Prüfpunkt über {0} Einträge: NICHT mit einem Signaturschlüssel dieses Arbeitsplatzes signiert.',
  'Checkpoint of {0} entries: DIVERGED. Entries {1} to {2} are missing. The end of the log was cut off, or an old copy was put back.':
    'Prüfpunkt über {0} Einträge: ABWEICHUNG. Die Einträge {1} bis {2} fehlen. Das Ende des Logbuchs wurde abgeschnitten, oder eine alte Kopie wurde zurückgelegt.',
  'Checkpoint of {0} entries: DIVERGED. Between entry {1} and entry {2} something was changed, removed or added.':
    'Prüfpunkt über {0} Einträge: ABWEICHUNG. Zwischen Eintrag {1} und Eintrag {2} wurde etwas geändert, entfernt oder hinzugefügt.',
  checkpoint: 'Prüfpunkt',
  'the station file names no witness': 'die Arbeitsplatzdatei nennt keinen Zeugen',
  'Add "witnesses" to it: "plugmark manual witnesses" shows how.':
    '"witnesses" eintragen: "plugmark manual witnesses" zeigt wie.',
  'Nothing is signed yet, so there is nothing to send.':
    'Noch ist nichts signiert, also ist nichts zu senden.',
  'the log': 'das Logbuch',
  'nothing was sent: the log is not the one that the station signed':
    'nichts wurde gesendet: das Logbuch ist nicht das, das der Arbeitsplatz signiert hat',
  'Run "plugmark log check".': '"plugmark log check" ausführen.',
  '{0}: cosigned on {1}, {2} entries': '{0}: gegensigniert am {1}, {2} Einträge',
  '{0}: HAS A LONGER LOG of this station, {1} entries; this one is signed up to {2}. Its end was cut off, or an old copy was put back. Run "plugmark log check"':
    '{0}: HAT EIN LÄNGERES LOGBUCH dieses Arbeitsplatzes, {1} Einträge; dieses ist bis {2} signiert. Sein Ende wurde abgeschnitten, oder eine alte Kopie wurde zurückgelegt. "plugmark log check" ausführen',
  '{0}: not cosigned; {1}': '{0}: nicht gegensigniert; {1}',
  '{0}: not cosigned; {1}. What is missing is sent the next time':
    '{0}: nicht gegensigniert; {1}. Was fehlt, wird das nächste Mal gesendet',
  '{0} already is this checkpoint. Nothing written.': '{0} ist schon dieser Prüfpunkt. Nichts geschrieben.',
  'Checkpoint of {0} entries written to {1}. Keep it in another place.':
    'Prüfpunkt über {0} Einträge in {1} geschrieben. An einem anderen Ort aufheben.',
  'the file exists; a checkpoint never overwrites a file':
    'die Datei besteht schon; ein Prüfpunkt überschreibt nie eine Datei',
  'Name a new file. Keep the old checkpoint: it still proves the log of its time.':
    'Eine neue Datei nennen. Den alten Prüfpunkt aufheben: er beweist noch das Logbuch seiner Zeit.',
  'the log has entries 1 to {0}': 'das Logbuch hat die Einträge 1 bis {0}',
  'Name one of these.': 'Einen davon nennen.',
  'this is not a PNG picture of at most 4 million pixels':
    'das ist kein PNG-Bild mit höchstens 4 Millionen Bildpunkten',
  'Save the logo as PNG, or leave "logo" out of the station file.':
    'Das Logo als PNG speichern, oder "logo" in der Arbeitsplatzdatei weglassen.',
  'The station wrote this file and somebody changed it. Run "plugmark log check"; put the file back from your copy.':
    'Der Arbeitsplatz hat diese Datei geschrieben, und jemand hat sie geändert. "plugmark log check" ausführen; die Datei aus der eigenen Kopie zurücklegen.',
  'it is a checkpoint of another log': 'es ist ein Prüfpunkt eines anderen Logbuchs',
  'it is a checkpoint that no key of this station signed':
    'es ist ein Prüfpunkt, den kein Signaturschlüssel dieses Arbeitsplatzes signiert hat',
  'the station signed a log of {0} entries before, and this one is shorter: its end was cut off, or an old copy was put back':
    'der Arbeitsplatz hat schon ein Logbuch mit {0} Einträgen signiert, und dieses ist kürzer: sein Ende wurde abgeschnitten, oder eine alte Kopie wurde zurückgelegt',
  'the station signed a log of {0} entries before, and this one has other entries: something was changed, removed or added':
    'der Arbeitsplatz hat schon ein Logbuch mit {0} Einträgen signiert, und dieses hat andere Einträge: etwas wurde geändert, entfernt oder hinzugefügt',
  'nothing was signed: {0}': 'nichts wurde signiert: {0}',
  'Run "plugmark log check". Restore a backup that has all entries, or fill them in with "plugmark recover --records". Where they are gone for good, say so: plugmark log lost --because "..."':
    '"plugmark log check" ausführen. Eine Sicherung mit allen Einträgen wiederherstellen, oder sie mit "plugmark recover --records" ergänzen. Sind sie endgültig weg, das erklären: plugmark log lost --because "..."',
  'pages read': 'Seiten gelesen',
  'entries written': 'Einträge geschrieben',
  'Left out: {0}: {1}': 'Weggelassen: {0}: {1}',
  'No log here: rebuilt from records only.': 'Kein Logbuch hier: nur aus Protokollen aufgebaut.',
  'LOSSES, and NOT AS IT WAS SIGNED': 'VERLUSTE, und NICHT, WIE ES SIGNIERT WURDE',
  'NOT AS IT WAS SIGNED': 'NICHT, WIE ES SIGNIERT WURDE',
  LOSSES: 'VERLUSTE',
  'Saved everything in the records': 'Alles aus den Protokollen gerettet',
  'Saved everything that was found': 'Alles Gefundene gerettet',
  'Left out: {0}: not shown to belong to this log.':
    'Weggelassen: {0}: dass es zu diesem Logbuch gehört, ist nicht gezeigt.',
  '{0}: {1} entries are in {2}, from the first on without a gap.':
    '{0}: {1} Einträge sind in {2}, vom ersten an ohne Lücke.',
  '{0}: {1} entries are in {2}, from the first on without a gap, {3} of them from records.':
    '{0}: {1} Einträge sind in {2}, vom ersten an ohne Lücke, {3} davon aus Protokollen.',
  'LOST: entry {0}.': 'VERLOREN: Eintrag {0}.',
  'LOST: entries {0} to {1}.': 'VERLOREN: Einträge {0} bis {1}.',
  '{0} readable entries after the first gap cannot be part of the log; they are in {1}.':
    '{0} lesbare Einträge hinter der ersten Lücke können nicht zum Logbuch gehören; sie sind in {1}.',
  'Incomplete jobs: {0} and {1} more.': 'Unvollständige Aufträge: {0} und {1} weitere.',
  'Incomplete jobs: {0}.': 'Unvollständige Aufträge: {0}.',
  'No checkpoint found: entries at the very end may be missing without a trace.':
    'Kein Prüfpunkt gefunden: ganz am Ende können Einträge fehlen, ohne dass es eine Spur gibt.',
  'Entries were changed, removed or added. Keep the damaged file and find the cause first.':
    'Einträge wurden geändert, entfernt oder hinzugefügt. Die beschädigte Datei aufheben und zuerst die Ursache suchen.',
  'Not in any record: jobs that were never closed, changes after a record, and the length of the log.':
    'In keinem Protokoll: Aufträge, die nie abgeschlossen wurden, Änderungen nach einem Protokoll und die Länge des Logbuchs.',
  'Put it in place: plugmark restore {0}{1}': 'An seinen Platz legen: plugmark restore {0}{1}',
  'Checkpoint of {0} entries: the saved log agrees with it.':
    'Prüfpunkt über {0} Einträge: das gerettete Logbuch stimmt damit überein.',
  'Checkpoint of {0} entries: entries {1} to {2} are missing.':
    'Prüfpunkt über {0} Einträge: die Einträge {1} bis {2} fehlen.',
  'Checkpoint of {0} entries: DIVERGED between entry {1} and entry {2}.':
    'Prüfpunkt über {0} Einträge: ABWEICHUNG zwischen Eintrag {1} und Eintrag {2}.',
  'Checkpoint of {0} entries: of another log.': 'Prüfpunkt über {0} Einträge: von einem anderen Logbuch.',
  'Checkpoint of {0} entries: not signed by a key of this station.':
    'Prüfpunkt über {0} Einträge: nicht mit einem Signaturschlüssel dieses Arbeitsplatzes signiert.',
  'records read': 'Protokolle gelesen',
  record: 'Protokoll',
  'not readable as a record.': 'nicht als Protokoll lesbar.',
  'this folder cannot be read': 'dieser Ordner kann nicht gelesen werden',
  'Name the folder that holds the exported records.':
    'Den Ordner nennen, der die ausgegebenen Protokolle enthält.',
  'the retention time is not set (1 to 100 years)':
    'die Aufbewahrungsfrist ist nicht gesetzt (1 bis 100 Jahre)',
  'Ask what law and contracts require. Then name it: --years 7. Each shop of an archive may have its own.':
    'Fragen, was Gesetz und Verträge verlangen. Dann angeben: --years 7. Jede Werkstatt eines Archivs kann ihre eigene Frist haben.',
  'Ask what law and contracts require. Then set it: --years 7, or "retention" in the station file.':
    'Erfragen, was Gesetz und Verträge verlangen. Dann setzen: --years 7, oder "retention" in der Arbeitsplatzdatei.',
  'last entry in': 'letzter Eintrag',
  jobs: 'Aufträge',
  'must be kept': 'aufzubewahren',
  held: 'gesperrt',
  'may go': 'darf weg',
  'Retention of {0} from the last entry of a job on{1}, as of {2}.':
    'Aufbewahrung: {0} ab dem letzten Eintrag eines Auftrags{1}, Stand {2}.',
  '# year|# years': { one: '# Jahr', other: '# Jahre' },
  'There are no jobs.': 'Es gibt keine Aufträge.',
  'The oldest is of {0}.': 'Der älteste ist vom {0}.',
  'The next time runs out on {0}.': 'Die nächste Frist läuft ab am {0}.',
  '  held: {0}, {1}': '  gesperrt: {0}, {1}',
  '  and {0} more are held': '  und {0} weitere sind gesperrt',
  'Nothing was deleted. No entry can be taken out of the log: it is one chain of proof. You may delete papers and exported records.':
    'Nichts wurde gelöscht. Aus dem Logbuch kann kein Eintrag genommen werden: es ist eine Kette von Nachweisen. Dokumente und ausgegebene Protokolle dürfen Sie löschen.',
  'Passphrase for the new key: ': 'Passwort für den neuen Signaturschlüssel: ',
  'The station signs with {0} from now on.': 'Der Arbeitsplatz signiert ab jetzt mit {0}.',
  'The old key is still in its device, where nothing here can destroy it: delete it there.':
    'Der alte Signaturschlüssel ist noch in seinem Gerät, wo ihn von hier aus nichts zerstören kann: dort löschen.',
  'The old key was destroyed. Destroy your copies of it too.':
    'Der alte Signaturschlüssel wurde zerstört. Auch Ihre Kopien davon zerstören.',
  'The old key is kept, under its passphrase; nobody needs it any more.':
    'Der alte Signaturschlüssel ist aufgehoben, unter seinem Passwort; niemand braucht ihn mehr.',
  'Give the new {0} to everybody who verifies. Who has it believes older records where the log shows them:':
    'Die neue {0} allen geben, die prüfen. Wer sie hat, glaubt älteren Protokollen, wo das Logbuch sie zeigt:',
  '{0} (*.record.json.proof); give it along. Others: plugmark log prove consistency RECORD > RECORD.proof':
    '{0} (*.record.json.proof); ihn mitgeben. Andere: plugmark log prove consistency RECORD > RECORD.proof',
  '# record here has such a proof beside it|# records here have such a proof beside them': {
    one: '# Protokoll hier hat einen solchen Nachweis neben sich',
    other: '# Protokolle hier haben einen solchen Nachweis neben sich',
  },
  'a key in a device needs both --pkcs11 and --token':
    'ein Signaturschlüssel in einem Gerät braucht --pkcs11 und --token',
  'Name the module of its maker, and the label of the token.':
    'Das Modul seines Herstellers und den Namen des Tokens nennen.',
  '{0} of entries that the log lost, as {1}: once their key has ended no proof from the log can be made for them, and whoever has the new trust list will not trust them':
    '{0} aus Einträgen, die das Logbuch verloren hat, etwa {1}: endet sein Signaturschlüssel, lässt sich dafür kein Nachweis aus dem Logbuch machen, und wer die neue Vertrauensliste hat, vertraut ihm nicht',
  'Stamp each of them first: plugmark time-stamp RECORD. Then run the command again with --even-so.':
    'Jedes zuerst mit einem Zeitstempel versehen: plugmark time-stamp RECORD. Dann den Befehl mit --even-so wiederholen.',
  'a key that was lost cannot be kept': 'ein verlorener Signaturschlüssel kann nicht aufgehoben werden',
  'Leave out --keep or --lost.': '--keep oder --lost weglassen.',
  'Passphrase for the old key: ': 'Passwort für den alten Signaturschlüssel: ',
  'the key {0} still signs': 'der Signaturschlüssel {0} signiert noch',
  'Make a new one first: plugmark keys rotate': 'Zuerst einen neuen machen: plugmark keys rotate',
  'there is no file of a key {0}': 'es gibt keine Datei eines Signaturschlüssels {0}',
  'See "plugmark doctor".': 'Siehe "plugmark doctor".',
  '{0} was destroyed. Destroy your copies of it too.':
    '{0} wurde zerstört. Auch Ihre Kopien davon zerstören.',
  'This station has joined no archive, and its file names no witness: there is nobody to send to.':
    'Dieser Arbeitsplatz ist keinem Archiv beigetreten, und seine Datei nennt keinen Zeugen: es gibt niemanden, an den zu senden wäre.',
  'Questions about this station. Enter takes the value in brackets; < goes back to the question before, as often as wanted. Ctrl-C cancels; nothing is written.':
    'Fragen zu diesem Arbeitsplatz. Enter übernimmt den Wert in Klammern; < geht zur Frage davor, so oft man will. Strg-C bricht ab; nichts wird geschrieben.',
  '{0} will hold:': '{0} wird enthalten:',
  'Write it and open the station?': 'Schreiben und den Arbeitsplatz eröffnen?',
  'Nothing was written.': 'Nichts wurde geschrieben.',
  'Name of the station, as records show it': 'Name des Arbeitsplatzes, wie ihn Protokolle zeigen',
  'Folder for log, keys and papers': 'Ordner für Logbuch, Signaturschlüssel und Dokumente',
  'Another tool?': 'Noch ein Werkzeug?',
  'Language of the screen': 'Sprache des Bildschirms',
  'Language of the papers': 'Sprache der Dokumente',
  'Torque is shown in': 'Drehmoment wird gezeigt in',
  'Gaps are shown in': 'Elektrodenabstand wird gezeigt in',
  '{0}; enter this tool again': '{0}; dieses Werkzeug noch einmal eingeben',
  'Tool {0}': 'Werkzeug {0}',
  'What it measures': 'Was es misst',
  'A short name for it': 'Ein kurzer Name dafür',
  'Kind of wrench (setting: it clicks)': 'Art des Schlüssels (setting: er löst aus)',
  'Serial number on the tool': 'Seriennummer auf dem Werkzeug',
  'Limit it to its range': 'Auf seinen Messbereich begrenzen',
  'From, in N·m or mm': 'Von, in N·m oder mm',
  To: 'Bis',
  'Calibration certificate (file, relative to the station file)':
    'Kalibrierschein (Datei, von der Arbeitsplatzdatei aus gesehen)',
  'Permissible deviation, by its class or data sheet': 'Zulässige Abweichung, nach Klasse oder Datenblatt',
  'Percent of the reading': 'Prozent des Messwerts',
  'Amount, in N·m or mm': 'Betrag, in N·m oder mm',
  'Step of its display, in N·m or mm': 'Schritt seiner Anzeige, in N·m oder mm',
  'Source of this figure': 'Quelle dieser Angabe',
  'calibration certificate': 'Kalibrierschein',
  'data sheet': 'Datenblatt',
  Driver: 'Treiber',
  'Bluetooth address': 'Bluetooth-Adresse',
  'Bluetooth name': 'Bluetooth-Name',
  'Profile (file)': 'Profil (Datei)',
  'Package of the driver (npm)': 'Paket des Treibers (npm)',
  'Serial port': 'Serieller Anschluss',
  'Unit of figures typed without one': 'Einheit von Werten, die ohne Einheit eingegeben werden',
  'Recording (file)': 'Aufzeichnung (Datei)',
  Speed: 'Geschwindigkeit',
  People: 'Personen',
  'Name of a technician (Enter: no more): ': 'Name eines Mechanikers (Enter: keine weiteren): ',
  'The station {0} is set up.': 'Der Arbeitsplatz {0} ist eingerichtet.',
  'Next: check the station with "plugmark doctor"; make a key for a person with "plugmark keys technician NAME".':
    'Weiter: den Arbeitsplatz mit "plugmark doctor" prüfen; mit "plugmark keys technician NAME" einen Signaturschlüssel für eine Person machen.',
  'The key is a file. To keep it in a device instead (a smart card or HSM with Ed25519; a TPM has none): "plugmark manual keys".':
    'Der Signaturschlüssel ist eine Datei. Um ihn stattdessen in einem Gerät zu halten (Chipkarte oder HSM mit Ed25519; ein TPM hat das nicht): "plugmark manual keys".',
  'a station file already exists': 'eine Arbeitsplatzdatei besteht schon',
  'Edit it by hand, or name another with --station.':
    'Von Hand bearbeiten, oder mit --station eine andere nennen.',
  'plugmark guides and proves a spark plug job. There is no station here yet.':
    'plugmark führt durch einen Zündkerzen-Auftrag und weist ihn nach. Hier ist noch kein Arbeitsplatz.',
  'See a whole job with simulated tools': 'Einen ganzen Auftrag mit simulierten Werkzeugen ansehen',
  'Set this bay up: its tools and its people': 'Diesen Platz einrichten: seine Werkzeuge und seine Leute',
  'Read how it works': 'Lesen, wie es geht',
  'All commands: {0}': 'Alle Befehle: {0}',
  'Station file: {0}\n': 'Arbeitsplatzdatei: {0}\n',
  '{0} station files are in this folder: {1}': '{0} Arbeitsplatzdateien sind in diesem Ordner: {1}',
  'Name one with --station FILE.': 'Eine mit --station FILE nennen.',
  '"{0}" appears twice; give each tool its own name':
    '"{0}" kommt zweimal vor; jedem Werkzeug einen eigenen Namen geben',
  'expected one typed tool for {0}; a typed figure does not say which of two it was read off':
    'erwartet: ein Werkzeug mit eingegebenen Werten für {0}; ein eingegebener Wert sagt nicht, an welchem von zweien er abgelesen wurde',
  'there is no station file here': 'hier ist keine Arbeitsplatzdatei',
  'Write one with "plugmark setup", or name yours with --station FILE.':
    'Mit "plugmark setup" eine schreiben, oder die eigene mit --station FILE nennen.',
  'PIN of the token {0}: ': 'PIN des Tokens {0}: ',
  'the device with the key needs its PIN': 'das Gerät mit dem Signaturschlüssel braucht seine PIN',
  'Type it, or put it into {0}.': 'Eintippen, oder in {0} angeben.',
  'the key in the device is not the one that the log names':
    'der Signaturschlüssel im Gerät ist nicht der, den das Logbuch nennt',
  'Plug in the device that this station was given.':
    'Das Gerät anschließen, das dieser Arbeitsplatz bekommen hat.',
  "the station's key is revoked and cannot sign":
    'der Signaturschlüssel des Arbeitsplatzes ist widerrufen und kann nicht signieren',
  'Make a new one with "plugmark keys rotate --lost".':
    'Mit "plugmark keys rotate --lost" einen neuen machen.',
  "Passphrase of the station's key: ": 'Passwort des Signaturschlüssels des Arbeitsplatzes: ',
  'the file of the station key is missing': 'die Datei des Signaturschlüssels des Arbeitsplatzes fehlt',
  'Put it back from your copy of the folder keys; a backup of the log does not contain it. If there is no copy: "plugmark keys rotate --lost".':
    'Aus der eigenen Kopie des Ordners keys zurücklegen; eine Sicherung des Logbuchs enthält ihn nicht. Gibt es keine Kopie: "plugmark keys rotate --lost".',
  '{0}, your PIN to sign (Enter: do not sign): ': '{0}, Ihre PIN zum Signieren (Enter: nicht signieren): ',
  'there is no station log in this folder yet': 'in diesem Ordner ist noch kein Logbuch',
  'It begins with "plugmark setup" or the first job. Another station is named with --station, or by its folder with --data.':
    'Es beginnt mit "plugmark setup" oder dem ersten Auftrag. Ein anderer Arbeitsplatz wird mit --station genannt, oder sein Ordner mit --data.',
  'the log of this station is missing ({0} are still here)':
    'das Logbuch dieses Arbeitsplatzes fehlt ({0} sind noch da)',
  'the log of this station is empty ({0} are still here)':
    'das Logbuch dieses Arbeitsplatzes ist leer ({0} sind noch da)',
  'Restore a backup with "plugmark restore", or rebuild from exported records with "plugmark recover". To start a new log on purpose, name another folder.':
    'Mit "plugmark restore" eine Sicherung wiederherstellen, oder mit "plugmark recover" aus ausgegebenen Protokollen aufbauen. Um absichtlich ein neues Logbuch zu beginnen, einen anderen Ordner nennen.',
  keys: 'Signaturschlüssel',
  'a trust list': 'eine Vertrauensliste',
  'a checkpoint': 'ein Prüfpunkt',
  certificates: 'Kalibrierscheine',
  'Bluetooth bonds': 'Bluetooth-Kopplungen',
  'a log that was set aside': 'ein beiseitegelegtes Logbuch',
  "the log's newest entries": 'die neuesten Einträge des Logbuchs',
  '{0} is read-only here; reading a copy.\n': '{0} ist hier schreibgeschützt; eine Kopie wird gelesen.\n',
  'The tables for look-up were damaged. They were made again from the log, which is whole.\n':
    'Die Tabellen zum Nachschlagen waren beschädigt. Sie wurden aus dem Logbuch, das unversehrt ist, neu gemacht.\n',
  'The last write to the log was cut off, as by a power cut. What it would have shown, nobody was shown.':
    'Der letzte Schreibvorgang ins Logbuch wurde abgebrochen, wie durch einen Stromausfall. Was er gezeigt hätte, hat niemand gesehen.',
  'The last write to the log was cut off, as by a power cut: up to {0} entries. What it would have shown, nobody was shown.':
    'Der letzte Schreibvorgang ins Logbuch wurde abgebrochen, wie durch einen Stromausfall: bis zu {0} Einträge. Was er gezeigt hätte, hat niemand gesehen.',
  'jobs listed anew': 'Aufträge neu aufgelistet',
  'jobs read for the history': 'Aufträge für den Verlauf gelesen',
  'this station is not set up': 'dieser Arbeitsplatz ist nicht eingerichtet',
  'Set it up with "plugmark setup", or open a job.':
    'Mit "plugmark setup" einrichten, oder einen Auftrag eröffnen.',
  '{0} was {1}. It was made again from the log. Add the keys of others again: the log does not have them.':
    '{0} war {1}. Sie wurde aus dem Logbuch neu gemacht. Die Schlüssel anderer wieder eintragen: das Logbuch hat sie nicht.',
  '"{0}" is no step': '"{0}" ist kein Schritt',
  'Give the smallest step of the display, for example 0.01.':
    'Den kleinsten Schritt der Anzeige angeben, zum Beispiel 0.01.',
  'Found: {0}.': 'Gefunden: {0}.',
  'The figure that was kept back reads {0}.': 'Der zurückgehaltene Wert liest sich als {0}.',
  'The profile is in {0}. Bytes that were not seen here are kept raw.':
    'Das Profil ist in {0}. Bytes, die hier nicht vorkamen, bleiben roh.',
  'Check "advertised" in it, and try it before you rely on it: plugmark driver check, and a replay of a capture.':
    '"advertised" darin prüfen, und es versuchen, bevor man sich darauf verlässt: plugmark driver check, und das Abspielen einer Aufnahme.',
  'Not written: more than one layout explains all of it.':
    'Nicht geschrieben: mehr als ein Aufbau erklärt alles.',
  'Not written. {0}': 'Nicht geschrieben. {0}',
  capture: 'Aufnahme',
  'the capture holds no packets': 'die Aufnahme enthält keine Pakete',
  'Record the device while it lies untouched.': 'Das Gerät aufzeichnen, während es unberührt liegt.',
  '"{0}" is not FIGURE=FILE': '"{0}" ist nicht FIGURE=FILE',
  'For example {0} 25.34=pull.capture.jsonl.': 'Zum Beispiel {0} 25.34=pull.capture.jsonl.',
  '"{0}" is no unit of a profile': '"{0}" ist keine Einheit eines Profils',
  'Choose one of: {0}.': 'Eines davon wählen: {0}.',
  'the trust list cannot be read': 'die Vertrauensliste kann nicht gelesen werden',
  'Check the path and the rights on it.': 'Pfad und Rechte prüfen.',
  empty: 'leer',
  'damaged; it is kept as {0}': 'beschädigt; sie ist aufgehoben als {0}',
  bluetooth: 'Bluetooth',
  'its software loads; adapter and rights are checked when a tool connects':
    'die Software dafür lädt; Adapter und Rechte werden geprüft, wenn sich ein Werkzeug verbindet',
  'Plug one in; "bluetoothctl list" shows them.': 'Einen anschließen; "bluetoothctl list" zeigt sie.',
  'no Bluetooth adapter found': 'kein Bluetooth-Adapter gefunden',
  'adapter {0}': 'Adapter {0}',
  '{0}, switched off': '{0}, ausgeschaltet',
  'Switch it on: rfkill unblock bluetooth': 'Einschalten: rfkill unblock bluetooth',
  rights: 'Rechte',
  'this user may not use the adapter': 'dieser Benutzer darf den Adapter nicht verwenden',
  'not known here': 'hier nicht bekannt',
  'Bluetooth may be used directly': 'Bluetooth darf direkt verwendet werden',
  'Add this user to the group plugmark, and log in again: sudo adduser "$USER" plugmark':
    'Diesen Benutzer in die Gruppe plugmark aufnehmen und neu anmelden: sudo adduser "$USER" plugmark',
  'Allow the node program to use it: sudo setcap cap_net_raw,cap_net_admin+eip {0}':
    'Dem Node-Programm die Verwendung erlauben: sudo setcap cap_net_raw,cap_net_admin+eip {0}',
  'Set the clock and keep it set: timedatectl set-ntp true':
    'Die Uhr stellen und gestellt halten: timedatectl set-ntp true',
  '{0} is not a plausible date': '{0} ist kein glaubhaftes Datum',
  '{0} is before the newest entry of the log, {1}': '{0} liegt vor dem neuesten Eintrag des Logbuchs, {1}',
  '{0} ms against the monotonic clock in {1} ms': '{0} ms gegen die gleichmäßig laufende Uhr in {1} ms',
  '{0}; moved {1}': '{0}; bewegt um {1}',
  '{0}; stepped by {1}': '{0}; gesprungen um {1}',
  'Find out what sets the clock. Records contain both clocks.':
    'Herausfinden, was die Uhr stellt. Protokolle enthalten beide Uhren.',
  'clock sync': 'Uhrenabgleich',
  'synchronised by the network': 'über das Netz abgeglichen',
  'not synchronised': 'nicht abgeglichen',
  node: 'Node',
  'Node {0}': 'Node {0}',
  'Node {0}; plugmark needs {1} or newer': 'Node {0}; plugmark braucht {1} oder neuer',
  'Install a newer Node.': 'Ein neueres Node installieren.',
  disk: 'Datenträger',
  '{0} may not be written to': 'in {0} darf nicht geschrieben werden',
  'Change its rights, or name another folder under "data".':
    'Die Rechte ändern, oder unter "data" einen anderen Ordner nennen.',
  '{0} MB free at {1}': '{0} MB frei bei {1}',
  'Free some space. The log grows with every job.': 'Platz schaffen. Das Logbuch wächst mit jedem Auftrag.',
  English: 'Englisch',
  German: 'Deutsch',
  French: 'Französisch',
  Spanish: 'Spanisch',
  '; {0} not yet read by a native of the trade':
    '; {0} noch von niemandem aus dem Fach mit dieser Muttersprache gelesen',
  reads: 'Sprache',
  'screen {0}, papers {1}, {2}, {3}{4}': 'Bildschirm {0}, Dokumente {1}, {2}, {3}{4}',
  database: 'Datenbank',
  'SQLite loads; a commit is on disk (synchronous FULL)':
    'SQLite lädt; was geschrieben ist, liegt auf dem Datenträger (synchronous FULL)',
  'SQLite does not work: {0}': 'SQLite arbeitet nicht: {0}',
  'Install plugmark again; its npm package brings SQLite for Linux, macOS and Windows on x64 and arm64.':
    'plugmark neu installieren; sein npm-Paket bringt SQLite für Linux, macOS und Windows auf x64 und arm64 mit.',
  'no station log yet in {0}': 'noch kein Logbuch in {0}',
  'Run "plugmark setup", or open the first job.':
    '"plugmark setup" ausführen, oder den ersten Auftrag eröffnen.',
  '{0}; entries and key not checked': '{0}; Einträge und Signaturschlüssel nicht geprüft',
  'Check it: plugmark log check': 'Prüfen: plugmark log check',
  '{0} MB, more than the {1} MB that are checked on a copy':
    '{0} MB, mehr als die {1} MB, die an einer Kopie geprüft werden',
  'Keep the file as it is. Restore a backup and check it against a checkpoint (plugmark log check).':
    'Die Datei lassen, wie sie ist. Eine Sicherung wiederherstellen und gegen einen Prüfpunkt prüfen (plugmark log check).',
  'entry {0}: {1}': 'Eintrag {0}: {1}',
  'complete; its # entry is unchanged|complete; all # entries are unchanged': {
    one: 'vollständig; sein einer Eintrag ist unverändert',
    other: 'vollständig; alle # Einträge unverändert',
  },
  '{0} not as the log says; every verdict and every proof holds':
    '{0} nicht, wie das Logbuch angibt; jedes Urteil und jeder Nachweis hält',
  'personal texts': 'persönliche Texte',
  'See which with "plugmark log check".': 'Welche, zeigt "plugmark log check".',
  'old key': 'alter Schlüssel',
  '{0} signs no more, and lies here without a passphrase':
    '{0} signiert nicht mehr und liegt hier ohne Passwort',
  'Destroy it: plugmark keys destroy {0}. To keep it, lock it: plugmark keys lock':
    'Zerstören: plugmark keys destroy {0}. Um ihn zu behalten, sperren: plugmark keys lock',
  'trust list': 'Vertrauensliste',
  'none yet': 'noch keine',
  'It is made with the first key.': 'Sie entsteht mit dem ersten Signaturschlüssel.',
  'It is made again from the log when a job is opened or a key is changed.':
    'Sie wird aus dem Logbuch neu gemacht, wenn ein Auftrag eröffnet oder ein Signaturschlüssel gewechselt wird.',
  '{0} cannot be read: {1}': '{0} kann nicht gelesen werden: {1}',
  "{0} does not have the station's key {1}": '{0} hat den Signaturschlüssel {1} des Arbeitsplatzes nicht',
  "# key, the station's own|# keys, the station's own among them": {
    one: '# Schlüssel, der des Arbeitsplatzes',
    other: '# Schlüssel, der des Arbeitsplatzes darunter',
  },
  '{0}: a key file that the log does not name': '{0}: eine Schlüsseldatei, die das Logbuch nicht nennt',
  'Another log was here, or a change of the key was cut short. Look for a backup of that log first ("plugmark restore" compares the two). If there is none: plugmark keys destroy KID':
    'Hier war ein anderes Logbuch, oder ein Schlüsselwechsel wurde abgebrochen. Zuerst eine Sicherung jenes Logbuchs suchen ("plugmark restore" vergleicht beide). Gibt es keine: plugmark keys destroy KID',
  'other keys': 'andere Schlüssel',
  key: 'Schlüssel',
  '{0} was revoked': '{0} wurde widerrufen',
  'Make a new one: plugmark keys rotate --lost': 'Einen neuen machen: plugmark keys rotate --lost',
  '{0}, readable by its owner only': '{0}, nur für den Eigentümer lesbar',
  '{0}, under a passphrase, readable by its owner only':
    '{0}, unter einem Passwort, nur für den Eigentümer lesbar',
  '{0}, in the token {1}': '{0}, im Token {1}',
  'Start plugmark in a terminal to get the screen. Plain lines work anywhere.':
    'plugmark in einem Terminal starten, um den Bildschirm zu bekommen. Einfache Zeilen gehen überall.',
  terminal: 'Terminal',
  'none; jobs run in plain lines': 'keines; Aufträge laufen in einfachen Zeilen',
  ', with colour': ', mit Farbe',
  ', without colour': ', ohne Farbe',
  '{0}; the screen needs {1}': '{0}; der Bildschirm braucht {1}',
  'Make the window larger, or work with --plain.': 'Das Fenster größer machen, oder mit --plain arbeiten.',
  characters: 'Zeichen',
  'not UTF-8; drawn in plain ASCII': 'nicht UTF-8; in reinem ASCII gezeichnet',
  'Set LANG to a UTF-8 locale, such as C.UTF-8.': 'LANG auf eine UTF-8-Einstellung setzen, etwa C.UTF-8.',
  'See why, and send what is missing: plugmark log witness':
    'Sehen, warum, und Fehlendes senden: plugmark log witness',
  archive: 'Archiv',
  'See why, and ship what is missing: plugmark archive ship':
    'Sehen, warum, und Fehlendes senden: plugmark archive ship',
  'none of {0} has cosigned this log yet': 'keiner von {0} hat dieses Logbuch bisher gegensigniert',
  '{0} of {1} cosigned the first {2} of {3} entries that are signed':
    '{0} von {1} haben die ersten {2} von {3} signierten Einträgen gegensigniert',
  '{0}, recorded in steps of 10^{1} {2}': '{0}, aufgezeichnet in Schritten von 10^{1} {2}',
  port: 'Anschluss',
  '{0} baud': '{0} Baud',
  readings: 'Messwerte',
  found: 'gefunden',
  'by service {0}': 'über den Dienst {0}',
  '{0} of service {1}, {2}{3}': '{0} des Dienstes {1}, {2}{3}',
  counter: 'Zähler',
  unit: 'Einheit',
  'log and keys': 'Logbuch und Schlüssel',
  '{0} (give it to whoever verifies)': '{0} (allen geben, die prüfen)',
  'a step': 'Schritt',
  'file of the archive': 'Datei des Archivs',
  'what "plugmark archive init" writes': 'dem, was "plugmark archive init" schreibt',
  'this station has joined no archive': 'dieser Arbeitsplatz ist keinem Archiv beigetreten',
  'Join one: plugmark archive join URL': 'Einem beitreten: plugmark archive join URL',
  'link to the archive': 'Verbindung zum Archiv',
  'what "plugmark archive join" writes': 'dem, was "plugmark archive join" schreibt',
  'Try again when it can be reached. Nothing is lost: the log of a station is its outbox, and an archive keeps what it has.':
    'Noch einmal versuchen, wenn es erreichbar ist. Nichts ist verloren: das Logbuch eines Arbeitsplatzes ist sein Postausgang, und ein Archiv behält, was es hat.',
  'what answers there is no archive': 'was dort antwortet, ist kein Archiv',
  'Take the address that "plugmark archive serve" printed.':
    'Die Adresse nehmen, die "plugmark archive serve" ausgegeben hat.',
  'a station joins an archive over https alone, but for one on this computer':
    'ein Arbeitsplatz tritt einem Archiv nur über https bei, außer einem auf diesem Computer',
  'Take the address that begins with https://.': 'Die Adresse nehmen, die mit https:// beginnt.',
  'One-time token of {0}: ': 'Einmal-Token von {0}: ',
  'entries fetched': 'Einträge geholt',
  'the archive gave nothing back: it answered {0}':
    'das Archiv hat nichts zurückgegeben: geantwortet wurde {0}',
  'Ask whoever runs the archive for a new token (plugmark archive give-back): each is good once.':
    'Beim Betreiber des Archivs ein neues Token erbitten (plugmark archive give-back): jedes gilt einmal.',
  'silent for too long': 'zu lange still',
  'its answer broke off, or is not what an archive sends':
    'die Antwort brach ab, oder sie ist nicht, was ein Archiv sendet',
  'Ask whoever runs the archive for a new token (plugmark archive give-back): each is good once. Nothing was put in place.':
    'Beim Betreiber des Archivs ein neues Token erbitten (plugmark archive give-back): jedes gilt einmal. Nichts wurde zurückgelegt.',
  'what the archive gave back is not the log that was signed, or not all of it':
    'was das Archiv zurückgab, ist nicht das signierte Logbuch, oder nicht das ganze',
  'Have it looked at by whoever runs the archive: plugmark archive check. Nothing was put in place.':
    'Vom Betreiber des Archivs ansehen lassen: plugmark archive check. Nichts wurde zurückgelegt.',
  'an archive is here already': 'hier ist schon ein Archiv',
  'Use it, or name another folder with --data.': 'Es verwenden, oder mit --data einen anderen Ordner nennen.',
  "Passphrase for the archive's key (Enter: none): ":
    'Passwort für den Signaturschlüssel des Archivs (Enter: keines): ',
  'Archive {0} made in {1}.': 'Archiv {0} angelegt in {1}.',
  'Its key has no passphrase: whoever reads the file can sign as this archive.':
    'Sein Signaturschlüssel hat kein Passwort: wer die Datei liest, kann als dieses Archiv signieren.',
  "Its verifier keys are in {0}: give them to those who verify. What it keeps, plates and names with it, lies in this folder or in the database that you name: keep both as you keep the shop's books.":
    'Seine Prüfschlüssel sind in {0}: denen geben, die prüfen. Was es aufbewahrt, auch Kennzeichen und Namen, liegt in diesem Ordner oder in der Datenbank, die Sie nennen: beides verwahren wie die Bücher der Werkstatt.',
  'To be safe in a network: name --certificate and --key when it listens beyond this computer; it refuses to do so without them. Nobody can enrol a station without a one-time token of yours.':
    'Für den sicheren Betrieb im Netz: --certificate und --key nennen, wenn es über diesen Computer hinaus lauscht; ohne sie weigert es sich. Ohne ein Einmal-Token von Ihnen kann niemand einen Arbeitsplatz anmelden.',
  'Next: plugmark archive enrol --tenant SHOP, then plugmark archive serve.':
    'Weiter: plugmark archive enrol --tenant SHOP, dann plugmark archive serve.',
  'this station has joined an archive already': 'dieser Arbeitsplatz ist schon einem Archiv beigetreten',
  'Remove the file to join another one; what the first one has, it keeps.':
    'Die Datei entfernen, um einem anderen beizutreten; was das erste hat, behält es.',
  'the archive has a log of the same origin already, with another key or of another tenant':
    'das Archiv hat bereits ein Logbuch desselben Ursprungs, mit einem anderen Schlüssel oder von einem anderen Mandanten',
  "If this folder is a copy of another station's, set up a station of its own: plugmark setup. If this station has a new key, have it taken in there: plugmark archive take-key.":
    'Ist dieser Ordner die Kopie eines anderen Arbeitsplatzes, einen eigenen Arbeitsplatz einrichten: plugmark setup. Hat dieser Arbeitsplatz einen neuen Schlüssel, ihn dort aufnehmen lassen: plugmark archive take-key.',
  'the archive did not take the station: {0}': 'das Archiv hat den Arbeitsplatz nicht aufgenommen: {0}',
  'Ask whoever runs the archive for a new token (plugmark archive enrol): each is good once.':
    'Beim Betreiber des Archivs ein neues Token erbitten (plugmark archive enrol): jedes gilt einmal.',
  'the archive answered with another log, or with keys that cannot cosign':
    'das Archiv antwortete mit einem anderen Logbuch, oder mit Schlüsseln, die nicht gegensignieren können',
  'Have it looked at by whoever runs the archive. The station has not joined it.':
    'Vom Betreiber des Archivs ansehen lassen. Der Arbeitsplatz ist ihm nicht beigetreten.',
  '{0} has joined {1}.': '{0} ist {1} beigetreten.',
  'Next: plugmark archive ship. It ships whatever the archive has not got; the log itself is the outbox.':
    'Weiter: plugmark archive ship. Es sendet, was das Archiv nicht hat; das Logbuch selbst ist der Postausgang.',
  'Archive {0}, {1}': 'Archiv {0}, {1}',
  '# station|# stations': { one: '# Arbeitsplatz', other: '# Arbeitsplätze' },
  'nothing cosigned yet': 'noch nichts gegensigniert',
  '{0} entries, cosigned': '{0} Einträge, gegensigniert',
  ', {0} more on the way': ', {0} weitere unterwegs',
  '; FROZEN: it showed two histories (plugmark archive faults)':
    '; GESPERRT: er hat zwei Geschichten gezeigt (plugmark archive faults)',
  'signed another log of the same size: its history was rewritten':
    'hat ein anderes Logbuch derselben Länge signiert: seine Geschichte wurde umgeschrieben',
  'offered a log that does not go on from the one that the archive has':
    'hat ein Logbuch angeboten, das nicht das des Archivs fortsetzt',
  'has a key that named two others: somebody works with a copy of its folder':
    'hat einen Schlüssel, der zwei andere benannt hat: jemand arbeitet mit einer Kopie seines Ordners',
  'No station has shown two histories.': 'Kein Arbeitsplatz hat zwei Geschichten gezeigt.',
  whole: 'unversehrt',
  DAMAGED: 'BESCHÄDIGT',
  'The archive has no station yet.': 'Das Archiv hat noch keinen Arbeitsplatz.',
  'entry {0} is missing': 'Eintrag {0} fehlt',
  'entry {0} was changed': 'Eintrag {0} wurde geändert',
  'its entries do not lead to the root that was cosigned':
    'seine Einträge führen nicht zur gegensignierten Wurzel',
  "Passphrase of the archive's key: ": 'Passwort des Signaturschlüssels des Archivs: ',
  '# log|# logs': { one: '# Logbuch', other: '# Logbücher' },
  'Archive {0} listens on {1} and has {2}. Ctrl-C ends it.':
    'Archiv {0} lauscht auf {1} und hat {2}. Strg-C beendet es.',
  'Ended. All that was acknowledged is on disk.': 'Beendet. Alles Bestätigte liegt auf dem Datenträger.',
  'Nothing is signed yet, so there is nothing to ship.':
    'Noch ist nichts signiert, also ist nichts zu senden.',
  'entries shipped': 'Einträge gesendet',
  '{0} has all {1} entries and cosigned them. The receipt lies beside the log and its records.':
    '{0} hat alle {1} Einträge und hat sie gegensigniert. Die Quittung liegt neben dem Logbuch und seinen Protokollen.',
  'Archive {0} at {1}': 'Archiv {0} unter {1}',
  'It has {0} entries of this log, and this log has {1}: an old copy was put back, or its end was cut off. Run "plugmark log check".':
    'Es hat {0} Einträge dieses Logbuchs, und dieses Logbuch hat {1}: eine alte Kopie wurde zurückgelegt, oder sein Ende wurde abgeschnitten. "plugmark log check" ausführen.',
  'It has all {0} entries.': 'Es hat alle {0} Einträge.',
  'It has {0} of {1} entries; {2} are to be shipped: plugmark archive ship':
    'Es hat {0} von {1} Einträgen; {2} sind zu senden: plugmark archive ship',
  'checkpoint of the archive': 'Prüfpunkt des Archivs',
  'the archive answered without a cosignature by its own keys':
    'das Archiv antwortete ohne Gegensignatur mit seinen eigenen Schlüsseln',
  'Have it looked at by whoever runs the archive. What was shipped may not be kept.':
    'Vom Betreiber des Archivs ansehen lassen. Was gesendet wurde, ist vielleicht nicht aufbewahrt.',
  'the archive has {0} entries of this log, and this log has {1}: an old copy was put back, or its end was cut off':
    'das Archiv hat {0} Einträge dieses Logbuchs, und dieses Logbuch hat {1}: eine alte Kopie wurde zurückgelegt, oder sein Ende wurde abgeschnitten',
  'Start no new job. Restore the newest backup: plugmark restore FILE. Where none has that many entries, show this to whoever runs the archive.':
    'Keinen neuen Auftrag beginnen. Die neueste Sicherung wiederherstellen: plugmark restore FILE. Hat keine so viele Einträge, das dem Betreiber des Archivs zeigen.',
  'the archive has another history of this log: {0}':
    'das Archiv hat eine andere Geschichte dieses Logbuchs: {0}',
  'Run "plugmark log check", and show both to whoever runs the archive: plugmark archive faults.':
    '"plugmark log check" ausführen, und beides dem Betreiber des Archivs zeigen: plugmark archive faults.',
  'the archive took nothing: {0}': 'das Archiv hat nichts angenommen: {0}',
  'Where a copy of this station has a newer key, go on with that one alone. Otherwise show this to whoever runs the archive.':
    'Hat eine Kopie dieses Arbeitsplatzes einen neueren Schlüssel, nur mit ihr weitermachen. Sonst das dem Betreiber des Archivs zeigen.',
  'Try again later. Nothing is lost: the log is the outbox.':
    'Später noch einmal versuchen. Nichts ist verloren: das Logbuch ist der Postausgang.',
  'this is not the key of a log that the archive has':
    'das ist nicht der Schlüssel eines Logbuchs, das das Archiv hat',
  'Take what "plugmark log vkey" prints at the station, from somebody whom you know.':
    'Nehmen, was "plugmark log vkey" am Arbeitsplatz ausgibt, von jemandem, den Sie kennen.',
  "{0} signs with this key from now on. The archive has nobody's word for it but yours.":
    '{0} signiert ab jetzt mit diesem Schlüssel. Das Archiv hat dafür niemandes Wort als Ihres.',
  '{0} signs with this key already.': '{0} signiert schon mit diesem Schlüssel.',
  '"{0}" cannot be the name of a tenant': '"{0}" kann nicht der Name eines Mandanten sein',
  'Take small letters, digits and hyphens: north-street.':
    'Kleinbuchstaben, Ziffern und Bindestriche nehmen: north-street.',
  'the archive has nothing cosigned of a log "{0}"':
    'das Archiv hat von einem Logbuch "{0}" nichts Gegensigniertes',
  'Take the origin that "plugmark archive stations" prints behind the station.':
    'Den Ursprung nehmen, den "plugmark archive stations" hinter dem Arbeitsplatz ausgibt.',
  'Good once, for {0}. At the station: {1}, and give it this token.\n':
    'Gilt einmal, {0} lang. Am Arbeitsplatz: {1}, und dort dieses Token angeben.\n',
  certificate: 'Zertifikat',
  '{0} names {1} on other vehicles': '{0} nennt {1} an anderen Fahrzeugen',
  'work order': 'Arbeitsauftrag',
  'there is no simulated technician "{0}"': 'es gibt keinen simulierten Mechaniker "{0}"',
  'no more events are written: {0}': 'es werden keine Ereignisse mehr geschrieben: {0}',
  'The job goes on. The log contains all of them.': 'Der Auftrag geht weiter. Das Logbuch enthält sie alle.',
  'nobody reads this pipe': 'niemand liest aus dieser Pipe',
  'Start its reader first.': 'Zuerst ihren Leser starten.',
  'this is no file and no pipe': 'das ist keine Datei und keine Pipe',
  'Name a file, a named pipe, or - for the standard output.':
    'Eine Datei, eine benannte Pipe oder - für die Standardausgabe nennen.',
  '  NOT POSSIBLE    {0}': '  NICHT MÖGLICH   {0}',
  '  no papers: the record is not as its station sealed it':
    '  keine Dokumente: das Protokoll ist nicht, wie sein Arbeitsplatz es versiegelt hat',
  '  papers        {0}, {1}': '  Dokumente     {0}, {1}',
  'this folder is a package, and whatever is added to it shows as a fault':
    'dieser Ordner ist ein Paket, und was ihm hinzugefügt wird, zeigt sich als Fehler',
  'this record of the job is not from this log, and is never overwritten':
    'dieses Protokoll des Auftrags ist nicht aus diesem Logbuch und wird nie überschrieben',
  'Keep it: move it to another folder. Then run "plugmark jobs papers".':
    'Aufheben: in einen anderen Ordner verschieben. Dann "plugmark jobs papers" ausführen.',
  'the name of the technician is missing in the log, and no entry says that it was forgotten':
    'der Name des Mechanikers fehlt im Logbuch, und kein Eintrag sagt, dass er vergessen wurde',
  'Run "plugmark log check". The record that was sealed before stays good.':
    '"plugmark log check" ausführen. Das vorher versiegelte Protokoll bleibt gut.',
  'the job has {0}': 'der Auftrag hat {0}',
  'Nothing is lost: the station log contains all of it. Keep station.db and a checkpoint of it as evidence.':
    'Nichts ist verloren: das Logbuch enthält alles. station.db und einen Prüfpunkt davon als Nachweis aufheben.',
  trace: 'Verlauf',
  '{0}: {1} samples in {2} s, {3} above {4} N·m': '{0}: {1} Messpunkte in {2} s, {3} über {4} N·m',
  '# pull|# pulls': { one: '# Zug', other: '# Züge' },
  '  row {0}: {1}': '  Zeile {0}: {1}',
  '  and {0} more rows like these': '  und {0} weitere solche Zeilen',
  'click {0} N·m, fell by {1} %': 'Auslösen bei {0} N·m, Abfall {1} %',
  'no click': 'kein Auslösen',
  'a click could not be seen': 'ein Auslösen war nicht zu sehen',
  'the readings reached the end of the scale': 'die Messwerte erreichten das Ende des Messbereichs',
  'the readings end in the middle of the pull': 'die Messwerte enden mitten im Zug',
  'the zero was not settled': 'der Nullpunkt war nicht ruhig',
  'pull {0}: peak {1} N·m (u = {2}) at {3} s; {4}': 'Zug {0}: Spitze {1} N·m (u = {2}) bei {3} s; {4}',
  '  from {0} to {1} s, rise {2} ms, highest reading {3} N·m, zero {4} N·m, noise {5} N·m':
    '  von {0} bis {1} s, Anstieg {2} ms, höchster Messwert {3} N·m, Nullpunkt {4} N·m, Rauschen {5} N·m',
  '  turned {0}° to the peak, {1}° of it from 10 %; work {2} J':
    '  gedreht {0}° bis zur Spitze, davon {1}° ab 10 %; Arbeit {2} J',
  '  by its angle: {0}': '  nach seinem Winkel: {0}',
  '  note: {0}': '  Hinweis: {0}',
  'a plug that was already tight, or a missing gasket':
    'eine schon feste Zündkerze, oder ein fehlender Dichtring',
  'a used gasket, or a conical seat': 'ein gebrauchter Dichtring, oder ein Kegelsitz',
  'a new gasket': 'ein neuer Dichtring',
  'more than one gasket': 'mehr als ein Dichtring',
  'it turned far and evenly, like a binding thread':
    'sie drehte weit und gleichmäßig, wie ein klemmendes Gewinde',
  'P peak': 'P Spitze',
  'P peak, c click': 'P Spitze, c Auslösen',
  'expected a torque above 0 N·m, found "{0}"': 'erwartet: ein Drehmoment über 0 N·m, gefunden: "{0}"',
  'Give the lower limit of the window in N·m, or leave it out.':
    'Die untere Grenze des Fensters in N·m angeben, oder weglassen.',
  '"{0}" is no unit of time here': '"{0}" ist hier keine Zeiteinheit',
  '"{0}" is no unit of torque': '"{0}" ist keine Einheit des Drehmoments',
  'Choose for example N·m, lbf·ft, lbf·in, kgf·m or kgf·cm.':
    'Zum Beispiel N·m, lbf·ft, lbf·in, kgf·m oder kgf·cm wählen.',
  'the station has no tool that measures {0}': 'der Arbeitsplatz hat kein Werkzeug, das {0} misst',
  'Name a station file that has one.': 'Eine Arbeitsplatzdatei nennen, die eines hat.',
  'Saved in {0} as job {1}.\n': 'Gespeichert in {0} als Auftrag {1}.\n',
  recording: 'Aufzeichnung',
  'expected a factor above 0, found "{0}"': 'erwartet: ein Faktor über 0, gefunden: "{0}"',
  'Give 1 for the speed of the recording. Leave it out to run as fast as possible.':
    '1 für die Geschwindigkeit der Aufzeichnung angeben. Weglassen, um so schnell wie möglich zu laufen.',
  scenario: 'Ablauf',
  'wait {0} ms': '{0} ms warten',
  '{0}: pull to {1} N·m{2}': '{0}: Zug bis {1} N·m{2}',
  ', no click': ', ohne Auslösen',
  '{0}: gap {1} mm': '{0}: Elektrodenabstand {1} mm',
  '{0}: no value': '{0}: kein Wert',
  '{0}: bytes {1}': '{0}: Bytes {1}',
  '{0}: silent for {1} ms': '{0}: {1} ms lang still',
  'something lies here already, and is not overwritten by a pseudo-terminal':
    'hier liegt schon etwas, und ein Pseudoterminal überschreibt es nicht',
  'Name another port in the scenario, or remove it.':
    'Im Ablauf einen anderen Anschluss nennen, oder es entfernen.',
  'this is no plain name for a pseudo-terminal': 'das ist kein einfacher Name für ein Pseudoterminal',
  'Name a port with letters, digits, dots, dashes and slashes alone, such as /tmp/wrench.':
    'Einen Anschluss allein aus Buchstaben, Ziffern, Punkten, Strichen und Schrägstrichen nennen, etwa /tmp/wrench.',
  'no pseudo-terminal can be made here': 'hier kann kein Pseudoterminal angelegt werden',
  'Name a port in a folder that you may write to, such as /tmp.':
    'Einen Anschluss in einem Ordner nennen, in den Sie schreiben dürfen, etwa /tmp.',
  'socat is not installed; it makes the pseudo-terminals':
    'socat ist nicht installiert; es legt die Pseudoterminals an',
  'Install it: apt-get install socat.': 'Installieren: apt-get install socat.',
  'the folder of the specifications cannot be read': 'der Ordner der Vorgaben kann nicht gelesen werden',
  '{0} already has the name "{1}"': '{0} hat schon den Namen "{1}"',
  'Choose another name. A new edition of a source is a new entry.':
    'Einen anderen Namen wählen. Eine neue Ausgabe einer Quelle ist ein neuer Eintrag.',
  'The library {0} is empty. Add one with "plugmark specifications add".':
    'Die Sammlung {0} ist leer. Mit "plugmark specifications add" etwas hinzufügen.',
  'No specification matches.': 'Keine Vorgabe passt.',
  '{0} not readable; see "plugmark specifications check"':
    '{0} nicht lesbar; siehe "plugmark specifications check"',
  '{0} match': '{0} passen',
  'Name one as "plugmark specifications" lists it.':
    'Eine so nennen, wie "plugmark specifications" sie auflistet.',
  '{0} is in the library: {1}': '{0} ist in der Sammlung: {1}',
  WRONG: 'FALSCH',
  '{0} specifications, {1} wrong': '{0} Vorgaben, {1} falsch',
  NOTE: 'HINWEIS',
  '{0}: put there or changed by hand; the log learns of it with the first job':
    '{0}: von Hand abgelegt oder geändert; das Logbuch erfährt davon mit dem ersten Auftrag',
  'Give --name and --by.': '--name und --by angeben.',
  'neither a torque nor an order was named': 'weder ein Drehmoment noch ein Auftrag wurde genannt',
  'Type a range, for example "25-30 N·m", or give --order FILE.':
    'Einen Bereich eingeben, zum Beispiel "25-30 N·m", oder --order FILE angeben.',
  'Give both --arm and --offset in mm, and --angle in degrees.':
    '--arm und --offset in mm angeben, und --angle in Grad.',
  'Give the bend in degrees, for example 10.': 'Die Abwinkelung in Grad angeben, zum Beispiel 10.',
  'Add a tool with "quantity": "torque" to the station file.':
    'In der Arbeitsplatzdatei ein Werkzeug mit "quantity": "torque" eintragen.',
  'Choose simple, guard-band, iso-14253-1 or probability.':
    'simple, guard-band, iso-14253-1 oder probability wählen.',
  '"{0}" is no date': '"{0}" ist kein Datum',
  'Write it as 2026-05-04.': 'So schreiben: 2026-05-04.',
  'nothing says where the countersigned record goes':
    'nichts sagt, wohin das gegengezeichnete Protokoll kommt',
  'Name a file with --out.': 'Mit --out eine Datei nennen.',
  'Passphrase of your key: ': 'Passwort Ihres Signaturschlüssels: ',
  '{0}: countersigned with {1}.\n': '{0}: gegengezeichnet mit {1}.\n',
  'there is no kind of personal text "{0}"': 'es gibt keine Art persönlicher Texte "{0}"',
  'Choose from: {0}; or all.': 'Wählen aus: {0}; oder all.',
  'it is no plain file': 'es ist keine einfache Datei',
  'it has {0} bytes, and no such file has more than {1}':
    'sie hat {0} Byte, und keine solche Datei hat mehr als {1}',
  package: 'Paket',
  'this file of the package is not read: {0}': 'diese Datei des Pakets wird nicht gelesen: {0}',
  'the folder holds something already, and every file of a package is in its index':
    'der Ordner enthält schon etwas, und jede Datei eines Pakets steht in seinem Verzeichnis',
  'Name a new folder with --out.': 'Mit --out einen neuen Ordner nennen.',
  '  left out: job {0}, {1}': '  weggelassen: Auftrag {0}, {1}',
  '{0}: {1}, {2}, {3} files, and an index that the station signed.':
    '{0}: {1}, {2}, {3} Dateien und ein Verzeichnis, das der Arbeitsplatz signiert hat.',
  'no papers': 'keine Dokumente',
  '  {0} in it put in question by a later impact assessment; the index says which.':
    '  {0} darin später durch eine Auswirkungsbewertung in Frage gestellt; das Verzeichnis sagt welche.',
  '  Check it with: plugmark verify {0} --trust YOUR-LIST':
    '  Prüfen mit: plugmark verify {0} --trust YOUR-LIST',
  "  YOUR-LIST is the station's {0}, had by another way; the one in the package is no trust.":
    '  YOUR-LIST ist die {0} des Arbeitsplatzes, auf anderem Weg erhalten; die im Paket begründet kein Vertrauen.',
  'no job matches what was asked for': 'kein Auftrag passt zu dem, was verlangt wurde',
  '{0}: no page: the record is not as its station sealed it. See "plugmark verify".':
    '{0}: keine Seite: das Protokoll ist nicht, wie sein Arbeitsplatz es versiegelt hat. Siehe "plugmark verify".',
  '{0}: job {1} with the page that verifies it. It opens in any browser, without a network.':
    '{0}: Auftrag {1} mit der Seite, die prüft. Sie öffnet sich in jedem Browser, ohne Netz.',
  '  All that the record says goes with it: "plugmark share" makes one that says less.':
    '  Alles, was das Protokoll sagt, geht mit: "plugmark share" macht eines, das weniger sagt.',
  '  Whoever opens it needs your trusted-keys.json, and has to get it from you by another way than this file.':
    '  Wer sie öffnet, braucht Ihre trusted-keys.json und muss sie von Ihnen auf anderem Weg als mit dieser Datei bekommen.',
  'no pull was given to a cylinder': 'kein Zug wurde einem Zylinder gegeben',
  'no pull {0} was given to a cylinder': 'kein Zug {0} wurde einem Zylinder gegeben',
  'There is nothing to draw.': 'Es ist nichts zu zeichnen.',
  'Name one of these with --pull: {0}.': 'Einen davon mit --pull nennen: {0}.',
  policy: 'Richtlinie',
  'nothing says where the record goes': 'nichts sagt, wohin das Protokoll kommt',
  '{0}: the same record, under the same signatures.': '{0}: dasselbe Protokoll, unter denselben Signaturen.',
  '  The job number, the odometer and the texts of the program stay in it.':
    '  Auftragsnummer, Kilometerstand und die Texte des Programms bleiben darin.',
  'a time stamp is kept beside its record, so the record must be a file':
    'ein Zeitstempel liegt neben seinem Protokoll, also muss das Protokoll eine Datei sein',
  'its answer does not hold: {0}': 'die Antwort hält nicht: {0}',
  'it answered another question': 'beantwortet wurde eine andere Frage',
  '{0}: stamped before {1}.\n': '{0}: gestempelt vor {1}.\n',
  'Give its certificates with --ca FILE.': 'Ihre Zertifikate mit --ca FILE angeben.',
  'time stamp': 'Zeitstempel',
  'Give the certificates of the authority as PEM.': 'Die Zertifikate der Stelle als PEM angeben.',
  'it answered with {0}': 'geantwortet wurde mit {0}',
  'it cannot be reached': 'nicht erreichbar',
  'Try again later, or another authority.': 'Später noch einmal versuchen, oder eine andere Stelle.',
  'No package was made.': 'Es wurde kein Paket gemacht.',
  'the manual has no topic "{0}"': 'das Handbuch hat kein Thema "{0}"',
  'Written to {0}: {1} pages.\n': 'Geschrieben in {0}: {1} Seiten.\n',
  logo: 'Logo',
  routine: 'Arbeitsfolge',
  'Left before the first reading. Nothing was kept.':
    'Vor dem ersten Messwert verlassen. Nichts wurde aufgehoben.',
  'Recorded as {0}.': 'Aufgezeichnet als {0}.',
  '{0} are kept. Go on with: {1}': '{0} sind aufgehoben. Weiter mit: {1}',
  'a study of a wrench needs the torque to pull to, above zero':
    'eine Studie mit einem Schlüssel braucht das Drehmoment, bis zu dem gezogen wird, über null',
  'Give it in N·m: --at 25.': 'In N·m angeben: --at 25.',
  'the station file names no tool {0}': 'die Arbeitsplatzdatei nennt kein Werkzeug {0}',
  'Use a name from the station file.': 'Einen Namen aus der Arbeitsplatzdatei nehmen.',
  'a new study needs a tool and the people who measure with it':
    'eine neue Studie braucht ein Werkzeug und die Personen, die damit messen',
  'Add --tool ID and --appraisers "A,B,C". Or go on with an open one: --resume GS-1.':
    '--tool ID und --appraisers "A,B,C" angeben. Oder eine offene fortsetzen: --resume GS-1.',
  'this study was started with a tool without a serial number; in the station file {0} is another tool':
    'diese Studie wurde mit einem Werkzeug ohne Seriennummer begonnen; in der Arbeitsplatzdatei ist {0} ein anderes Werkzeug',
  'this study was started with serial number {0}; in the station file {1} is another tool':
    'diese Studie wurde mit Seriennummer {0} begonnen; in der Arbeitsplatzdatei ist {1} ein anderes Werkzeug',
  'Go on with the tool that it was started with, or start a new study.':
    'Mit dem Werkzeug weitermachen, mit dem sie begonnen wurde, oder eine neue Studie beginnen.',
  'That line is too long, and is not taken.': 'Diese Zeile ist zu lang und wird nicht angenommen.',
  'Type "back" to take the last reading back, "pause" to stop and go on, "quit" to leave. Readings taken are kept.':
    '"back" nimmt den letzten Messwert zurück, "pause" hält an und geht weiter, "quit" beendet. Angenommene Messwerte bleiben.',
  'The tool is connected.': 'Das Werkzeug ist verbunden.',
  'The tool is lost: {0}. Waiting for it.': 'Keine Verbindung zum Werkzeug: {0}. Es wird darauf gewartet.',
  '  set aside': '  beiseitegelegt',
  'Paused: no reading is taken. Type "pause" to go on.':
    'Angehalten: kein Messwert wird angenommen. "pause" geht weiter.',
  'That is outside the usual {0} to {1} {2} and does not count yet. Measure the part again. Or press Enter to take it as it is, or type "back" to drop it.':
    'Das liegt außerhalb der üblichen {0} bis {1} {2} und zählt noch nicht. Das Teil noch einmal messen. Oder Enter, um es so anzunehmen, oder "back", um es zu verwerfen.',
  '  taken, {0} left': '  angenommen, noch {0}',
  '  taken back: {0}, part {1}, trial {2}': '  zurückgenommen: {0}, Teil {1}, Wiederholung {2}',
  'All is measured. Press Enter to record it, or type "back" to take the last reading back.':
    'Alles ist gemessen. Enter zeichnet es auf, "back" nimmt den letzten Messwert zurück.',
  '[{0} of {1}] trial {2}: {3}, measure part {4}': '[{0} von {1}] Wiederholung {2}: {3}, Teil {4} messen',
  'No gauge study yet.': 'Noch keine Messmittelstudie.',
  study: 'Studie',
  finished: 'beendet',
  tool: 'Werkzeug',
  'appraisers x parts x trials': 'Prüfer x Teile x Wiederholungen',
  'why given up': 'warum aufgegeben',
  'open, {0} of {1}': 'offen, {0} von {1}',
  'given up, {0} of {1}': 'aufgegeben, {0} von {1}',
  ', on {0}: {1}': ', am {0}: {1}',
  '{0}: {1} readings{2}': '{0}: {1} Messwerte{2}',
  'Readings typed: {0}. Taken back: {1}.': 'Eingegebene Messwerte: {0}. Zurückgenommen: {1}.',
  '{0}: this study says nothing about the tool.': '{0}: diese Studie sagt nichts über das Werkzeug.',
  'NOT AS TAKEN: these are not the readings that the log holds one by one.':
    'NICHT WIE GENOMMEN: das sind nicht die Messwerte, die das Logbuch einzeln enthält.',
  '{0} is given up. Its readings stay in the log.': '{0} ist aufgegeben. Die Messwerte bleiben im Logbuch.',
  'another program started a study of this number meanwhile; the reading that came here was not kept':
    'ein anderes Programm hat inzwischen eine Studie dieser Nummer begonnen; der Messwert, der hier kam, wurde nicht aufgehoben',
  'Start again: the study gets the next number.': 'Neu beginnen: die Studie bekommt die nächste Nummer.',
  'another program works on this study and has {0} readings; what came here was not kept':
    'ein anderes Programm arbeitet an dieser Studie und hat {0} Messwerte; was hier kam, wurde nicht aufgehoben',
  'Go on there. Or end that program and go on here: --resume {0}.':
    'Dort weitermachen. Oder jenes Programm beenden und hier weitermachen: --resume {0}.',
  'average, range': 'Mittelwert, Spannweite',
  'variance (ANOVA)': 'Varianz (ANOVA)',
  'ANOVA with the interaction pooled into the error.':
    'ANOVA mit der Wechselwirkung im Fehler zusammengefasst.',
  'ANOVA with its interaction.': 'ANOVA mit ihrer Wechselwirkung.',
  'See it again: plugmark gauge-study show {0}': 'Noch einmal ansehen: plugmark gauge-study show {0}',
  'the output': 'die Ausgabe',
  'this is no language that the program knows': 'das ist keine Sprache, die das Programm kennt',
  'Give a language like de, fr-CH or en-GB, or none.':
    'Eine Sprache wie de, fr-CH oder en-GB angeben, oder none.',
  'a fault in the program itself: {0}': 'ein Fehler im Programm selbst: {0}',
  'Nothing on disk is lost. Run it again with PLUGMARK_TRACE=1 and report the details.':
    'Nichts auf dem Datenträger ist verloren. Mit PLUGMARK_TRACE=1 noch einmal ausführen und die Einzelheiten melden.',
  'the work order cannot be read: it is a terminal':
    'der Arbeitsauftrag kann nicht gelesen werden: es ist ein Terminal',
  'the work order is larger than 1 MB': 'der Arbeitsauftrag ist größer als 1 MB',
  'expected 1 to {0} characters': 'erwartet: 1 bis {0} Zeichen',
  'Write it in at most {0} characters.': 'In höchstens {0} Zeichen schreiben.',
  '[{0}] {1} of {2} {3}, {4} left': '[{0}] {1} von {2} {3}, noch {4}',
  "Passphrase for the witness's key (Enter: none): ":
    'Passwort für den Signaturschlüssel des Zeugen (Enter: keines): ',
  'Witness {0} made in {1}.': 'Zeuge {0} angelegt in {1}.',
  'Its key has no passphrase: whoever reads the file can sign as this witness.':
    'Sein Signaturschlüssel hat kein Passwort: wer die Datei liest, kann als dieser Zeuge signieren.',
  'Its verifier keys, Ed25519 and ML-DSA-44, are in {0}. Give them to the stations that it is to cosign, and to those who verify.':
    'Seine Prüfschlüssel, Ed25519 und ML-DSA-44, sind in {0}. Den Arbeitsplätzen geben, für die er gegensignieren soll, und denen, die prüfen.',
  'Next: plugmark witness add LOG-VKEY, with what "plugmark log vkey" prints at the station.':
    'Weiter: plugmark witness add LOG-VKEY, mit dem, was "plugmark log vkey" am Arbeitsplatz ausgibt.',
  '"{0}" cannot be the name of a witness': '"{0}" kann nicht der Name eines Zeugen sein',
  'Name it like an address, without spaces and plus: example.com/witness.':
    'Wie eine Adresse benennen, ohne Leerzeichen und Plus: example.com/witness.',
  'this is not an address and a port': 'das ist keine Adresse mit Port',
  'Name both, like 127.0.0.1:8017 or [::1]:8017.': 'Beides nennen, wie 127.0.0.1:8017 oder [::1]:8017.',
  'a server with TLS needs its certificate and its key':
    'ein Server mit TLS braucht sein Zertifikat und seinen Schlüssel',
  'Name both files with --certificate and --key.': 'Beide Dateien mit --certificate und --key nennen.',
  'other computers would reach this server without TLS':
    'andere Computer würden diesen Server ohne TLS erreichen',
  'Name --certificate and --key. Where a proxy in front of it does TLS, say so with --without-tls.':
    '--certificate und --key nennen. Macht ein Proxy davor TLS, das mit --without-tls sagen.',
  'another program listens there': 'dort lauscht schon ein anderes Programm',
  'this user may not listen there': 'dieser Benutzer darf dort nicht lauschen',
  'this computer does not have that address': 'dieser Computer hat diese Adresse nicht',
  'nobody knows that name': 'niemand kennt diesen Namen',
  'Name another address with --listen.': 'Mit --listen eine andere Adresse nennen.',
  'The log {0} is known now.': 'Das Logbuch {0} ist jetzt bekannt.',
  'The log {0} was known with this key before.': 'Das Logbuch {0} war mit diesem Schlüssel schon bekannt.',
  'Witness {0}, {1}': 'Zeuge {0}, {1}',
  '{0} entries, cosigned on {1}': '{0} Einträge, gegensigniert am {1}',
  '; TWO HISTORIES: it signed another log of the same size ({0} kept)':
    '; ZWEI GESCHICHTEN: es hat ein anderes Logbuch derselben Länge signiert ({0} aufgehoben)',
  'this is not the verifier key of a log (Ed25519)':
    'das ist nicht der Prüfschlüssel eines Logbuchs (Ed25519)',
  'Take what "plugmark log vkey" prints at the station, and put it between quotes.':
    'Nehmen, was "plugmark log vkey" am Arbeitsplatz ausgibt, und in Anführungszeichen setzen.',
  "Passphrase of the witness's key: ": 'Passwort des Signaturschlüssels des Zeugen: ',
  'Witness {0} listens on {1} and knows {2}. Ctrl-C ends it.':
    'Zeuge {0} lauscht auf {1} und kennt {2}. Strg-C beendet ihn.',
  'Ended. All that was cosigned is on disk.': 'Beendet. Alles Gegensignierte liegt auf dem Datenträger.',
  'no permission for this place': 'keine Berechtigung für diesen Ort',
  'Check the rights on it, or name another place.': 'Die Rechte daran prüfen, oder einen anderen Ort nennen.',
  'nothing can be written here: the file system is read-only':
    'hier kann nichts geschrieben werden: das Dateisystem ist schreibgeschützt',
  'Name another place.': 'Einen anderen Ort nennen.',
  'the disk is full': 'der Datenträger ist voll',
  'Make room on it, or name a place on another one.':
    'Platz darauf schaffen, oder einen Ort auf einem anderen nennen.',
  'the disk is full: no more may be kept on it':
    'der Datenträger ist voll: mehr darf darauf nicht abgelegt werden',
  'the disk did not do what was asked of it': 'der Datenträger hat nicht getan, was von ihm verlangt wurde',
  'Check the disk, or name a place on another one.':
    'Den Datenträger prüfen, oder einen Ort auf einem anderen nennen.',
  'this is a folder, and a file was expected': 'das ist ein Ordner, erwartet war eine Datei',
  'Name a file.': 'Eine Datei nennen.',
  'a part of this path is a file, and a folder was expected':
    'ein Teil dieses Pfads ist eine Datei, erwartet war ein Ordner',
  'Check the path.': 'Den Pfad prüfen.',
  'there is no such file or folder': 'eine solche Datei oder einen solchen Ordner gibt es nicht',
  'something lies here already': 'hier liegt schon etwas',
  'the name is too long for this file system': 'der Name ist für dieses Dateisystem zu lang',
  'Name it shorter.': 'Kürzer benennen.',
  'links lead from here in a circle': 'Verknüpfungen führen von hier im Kreis',
  'the program may not open as many files as it needs':
    'das Programm darf nicht so viele Dateien öffnen, wie es braucht',
  'Allow it at least 256: ulimit -n 256, or LimitNOFILE= of the service that starts it.':
    'Mindestens 256 erlauben: ulimit -n 256, oder LimitNOFILE= des Dienstes, der es startet.',
  'this computer has no more files to open': 'dieser Computer kann keine weiteren Dateien öffnen',
  'Close other programs, then try again.': 'Andere Programme schließen, dann noch einmal versuchen.',
  'standard input': 'Standardeingabe',
  'no such file': 'keine solche Datei',
  'no permission to read it': 'keine Berechtigung, sie zu lesen',
  'Check the rights on it.': 'Die Rechte daran prüfen.',
  'it is a folder': 'es ist ein Ordner',
  'it is a device': 'es ist ein Gerät',
  'Name a file, or - for the standard input.': 'Eine Datei nennen, oder - für die Standardeingabe.',
  'it is a terminal': 'es ist ein Terminal',
  'Pipe a file into the command, or name one.': 'Eine Datei in den Befehl leiten, oder eine nennen.',
  'the {0} cannot be read: {1}': 'nicht lesbar ({0}): {1}',
  'the {0} is larger than {1} MB': 'zu groß ({0}): mehr als {1} MB',
  'This is hardly the right file.': 'Das ist kaum die richtige Datei.',
  'the name of the folder is empty': 'der Name des Ordners ist leer',
  'Name a folder.': 'Einen Ordner nennen.',
  'this is a link, and no file is written through a link':
    'das ist eine Verknüpfung, und durch eine Verknüpfung wird keine Datei geschrieben',
  'Name the file itself, or a new one.': 'Die Datei selbst nennen, oder eine neue.',
  'a file is there already': 'eine Datei ist schon da',
  'the file cannot be written': 'die Datei kann nicht geschrieben werden',
  'Name another file with --out.': 'Mit --out eine andere Datei nennen.',
  'This is not a figure.': 'Das ist kein Wert.',
  'Too soon after the last reading: not taken.': 'Zu bald nach dem letzten Messwert: nicht angenommen.',
  'The pull was cut off. Pull again.': 'Der Zug brach ab. Noch einmal ziehen.',
  "The pull reached the end of the tool's scale. Pull again.":
    'Der Zug erreichte das Ende des Messbereichs. Noch einmal ziehen.',
  'That pull loosened: not taken.': 'Dieser Zug hat gelöst: nicht angenommen.',
  'A reading from the memory of the tool is not taken: nobody saw which part it belongs to.':
    'Ein Messwert aus dem Speicher des Werkzeugs wird nicht angenommen: niemand hat gesehen, zu welchem Teil er gehört.',
  'The tool sent no value. Measure again.': 'Das Werkzeug hat keinen Wert gesendet. Noch einmal messen.',
  'prints the help of a command': 'gibt die Hilfe eines Befehls aus',
  'prints this help': 'gibt diese Hilfe aus',
  'prints the version': 'gibt die Version aus',
  'Guides and proves a spark plug job: every gap and every pull of the torque wrench, judged and signed.':
    'Führt durch einen Zündkerzen-Auftrag und weist ihn nach: jeder Elektrodenabstand und jeder Zug des Drehmomentschlüssels, beurteilt und signiert.',
  'keep it in PostgreSQL instead of a file there: postgres://user@host/name':
    'in PostgreSQL aufbewahren statt in einer Datei dort: postgres://user@host/name',
  'the folder of the archive': 'der Ordner des Archivs',
  'keeps the logs of many stations, and cosigns each for as long as it only goes on':
    'verwahrt die Logbücher vieler Arbeitsplätze und gegensigniert jedes, solange es nur weitergeht',
  'its name, like an address: example.com/archive': 'sein Name, wie eine Adresse: example.com/archive',
  'makes an archive: its key, and the folder that it is in':
    'legt ein Archiv an: seinen Signaturschlüssel und seinen Ordner',
  'for this log alone: what "plugmark log vkey" prints before the first +':
    'nur für dieses Logbuch: was "plugmark log vkey" vor dem ersten + ausgibt',
  'the shop or the fleet that the station belongs to':
    'die Werkstatt oder der Fuhrpark, zu dem der Arbeitsplatz gehört',
  'prints a one-time token with which a station joins':
    'gibt ein Einmal-Token aus, mit dem ein Arbeitsplatz beitritt',
  'what "plugmark log vkey" prints there': 'was "plugmark log vkey" dort ausgibt',
  'takes in the new key of a station that lost its old one':
    'nimmt den neuen Signaturschlüssel eines Arbeitsplatzes auf, der seinen alten verloren hat',
  'the origin of its log, as "plugmark archive stations" prints it':
    'der Ursprung seines Logbuchs, wie ihn "plugmark archive stations" ausgibt',
  'prints a one-time token with which a lost station gets its log back':
    'gibt ein Einmal-Token aus, mit dem ein verlorener Arbeitsplatz sein Logbuch zurückbekommt',
  'listen without TLS beyond this computer, because a proxy in front does it':
    'ohne TLS über diesen Computer hinaus lauschen, weil ein Proxy davor es macht',
  'with --certificate: its key (PEM)': 'mit --certificate: sein Schlüssel (PEM)',
  'its certificate for TLS (PEM), with those above it': 'sein Zertifikat für TLS (PEM), mit denen darüber',
  'address and port': 'Adresse und Port',
  'takes what stations ship until you end it': 'nimmt an, was Arbeitsplätze senden, bis Sie es beenden',
  'lists the stations and how much of their logs is here':
    'listet die Arbeitsplätze auf und wie viel von ihren Logbüchern hier ist',
  'a station showed two histories': 'ein Arbeitsplatz hat zwei Geschichten gezeigt',
  'prints the notes that prove two histories of a log':
    'gibt die Prüfpunkte aus, die zwei Geschichten eines Logbuchs beweisen',
  'reads all that is kept and holds it against what was cosigned':
    'liest alles Aufbewahrte und vergleicht es mit dem Gegensignierten',
  'something kept was changed or is missing': 'etwas Aufbewahrtes wurde geändert oder fehlt',
  'where it answers': 'wo es antwortet',
  'at a station: joins an archive by its one-time token':
    'am Arbeitsplatz: tritt mit einem Einmal-Token einem Archiv bei',
  'only up to the last checkpoint that was signed, for which no key is needed':
    'nur bis zum letzten signierten Prüfpunkt, wofür kein Signaturschlüssel nötig ist',
  'at a station: ships all that the archive has not got, and keeps its receipt':
    'am Arbeitsplatz: sendet alles, was das Archiv nicht hat, und hebt seine Quittung auf',
  'at a station: says how much of the log the archive has':
    'am Arbeitsplatz: sagt, wie viel vom Logbuch das Archiv hat',
  'the archive has more of the log than the station': 'das Archiv hat mehr vom Logbuch als der Arbeitsplatz',
  'a tool was out of tolerance at calibration: which proofs still hold, which vehicles to recall':
    'ein Werkzeug war bei der Kalibrierung außer Toleranz: welche Nachweise noch halten, welche Fahrzeuge zurückzurufen sind',
  "folder for the PDF and the lists; that of the station's data unless given":
    'Ordner für das PDF und die Listen; der der Daten des Arbeitsplatzes, wenn nicht angegeben',
  'the last good check, if the log leaves it open: NUMBER or "NUMBER of DATE"':
    'die letzte gute Prüfung, wenn das Logbuch es offen lässt: NUMBER oder "NUMBER of DATE"',
  'who assesses': 'wer bewertet',
  'what the laboratory found, in the form of a certificate':
    'was das Labor festgestellt hat, in der Form eines Kalibrierscheins',
  'the tool, as in the station file': 'das Werkzeug, wie in der Arbeitsplatzdatei',
  'judges everything since the last good check again; runs where you name no other command':
    'beurteilt alles seit der letzten guten Prüfung neu; läuft, wenn kein anderer Befehl genannt ist',
  'every proof still holds': 'jeder Nachweis hält noch',
  'some proofs do not hold': 'einige Nachweise halten nicht',
  'an input is not as it should be; nothing was written':
    'eine Eingabe ist nicht, wie sie sein sollte; nichts wurde geschrieben',
  'only those that are still open': 'nur die, die noch offen sind',
  'lists all impact assessments, the latest first':
    'listet alle Auswirkungsbewertungen auf, die neueste zuerst',
  'write its PDF and its list of vehicles again, into this folder':
    'sein PDF und seine Fahrzeugliste noch einmal in diesen Ordner schreiben',
  'the impact assessment, such as IA-1': 'die Auswirkungsbewertung, etwa IA-1',
  'shows the jobs that an impact assessment touches, and what was decided':
    'zeigt die Aufträge, die eine Auswirkungsbewertung betrifft, und was entschieden wurde',
  'who decides': 'wer entscheidet',
  why: 'warum',
  'with redone: the later job; found by the vehicle unless given':
    'mit redone: der spätere Auftrag; nach dem Fahrzeug gefunden, wenn nicht angegeben',
  'the jobs; part of a number is enough where it fits only one':
    'die Aufträge; ein Teil der Nummer genügt, wo er nur auf einen passt',
  'decides what happens to jobs that it touches': 'entscheidet, was mit betroffenen Aufträgen geschieht',
  'recall: call the vehicle back; inform: its owner was told; accept: leave it as it is; redone: done again':
    'recall: das Fahrzeug zurückrufen; inform: der Halter wurde benachrichtigt; accept: so lassen; redone: noch einmal gemacht',
  'all jobs of this sort that are not decided yet':
    'alle Aufträge dieser Art, über die noch nicht entschieden ist',
  'who closes it': 'wer sie abschließt',
  'why it can be closed': 'warum sie abgeschlossen werden kann',
  'closes an impact assessment, once every job is decided and every recall redone':
    'schließt eine Auswirkungsbewertung ab, wenn über jeden Auftrag entschieden und jeder Rückruf erledigt ist',
  'the answer as CSV': 'die Antwort als CSV',
  'every pull and gap reading instead of the jobs': 'jeder Zug und jede Abstandsmessung statt der Aufträge',
  'only what needs an explanation, with the reason': 'nur was eine Erklärung braucht, mit dem Grund',
  'finds jobs or attempts by vehicle, fleet, part, lot, person, tool or day':
    'findet Aufträge oder Versuche nach Fahrzeug, Fuhrpark, Teil, Charge, Person, Werkzeug oder Tag',
  'personal texts that are withheld, as "plugmark share" takes them':
    'persönliche Texte, die zurückgehalten werden, wie sie "plugmark share" annimmt',
  'records without their PDFs: a quarter of the size, a fifth of the time':
    'Protokolle ohne ihre PDFs: ein Viertel der Größe, ein Fünftel der Zeit',
  'only jobs that need an explanation': 'nur Aufträge, die eine Erklärung brauchen',
  'the checkpoint that the auditor kept from before':
    'der Prüfpunkt, den der Auditor von früher aufgehoben hat',
  'a new folder': 'ein neuer Ordner',
  'writes a folder for an auditor: records, proofs and an index, to be checked offline':
    'schreibt einen Ordner für einen Auditor: Protokolle, Nachweise und ein Verzeichnis, ohne Netz zu prüfen',
  'the log does not go on from the checkpoint; no package was written':
    'das Logbuch setzt den Prüfpunkt nicht fort; es wurde kein Paket geschrieben',
  'also of jobs that are open, in an open impact assessment, or inside the retention time':
    'auch von Aufträgen, die offen sind, in einer offenen Auswirkungsbewertung oder in der Aufbewahrungsfrist',
  'without asking': 'ohne zu fragen',
  'somebody who worked, answered or decided': 'jemand, der gearbeitet, geantwortet oder entschieden hat',
  'a customer': 'ein Kunde',
  'a fleet number': 'eine Flottennummer',
  'a VIN': 'eine Fahrgestellnummer (VIN)',
  'a number plate, and every free text with it': 'ein Kennzeichen, und jeder freie Text damit',
  'deletes personal texts from the log for good; every signature and verdict stays':
    'löscht persönliche Texte endgültig aus dem Logbuch; jede Signatur und jedes Urteil bleibt',
  'nothing was deleted; or another program keeps the texts until it is closed':
    'nichts wurde gelöscht; oder ein anderes Programm hält die Texte, bis es geschlossen ist',
  'every job, as CSV': 'jeder Auftrag, als CSV',
  'the retention time, instead of the one in the station file':
    'die Aufbewahrungsfrist, statt der in der Arbeitsplatzdatei',
  'shows how old the records are, and what the retention time of the shop says':
    'zeigt, wie alt die Protokolle sind, und was die Aufbewahrungsfrist der Werkstatt dazu sagt',
  'records without their PDFs': 'Protokolle ohne ihre PDFs',
  'the checkpoint that the other side kept from before':
    'der Prüfpunkt, den die andere Seite von früher aufgehoben hat',
  'only jobs opened on this day (UTC) or earlier':
    'nur Aufträge, die an diesem Tag (UTC) oder früher eröffnet wurden',
  'only jobs opened on this day (UTC) or later':
    'nur Aufträge, die an diesem Tag (UTC) oder später eröffnet wurden',
  'the vehicle, by its fleet number': 'das Fahrzeug, nach seiner Flottennummer',
  'the vehicle, by its plate': 'das Fahrzeug, nach seinem Kennzeichen',
  'the vehicle, by its VIN': 'das Fahrzeug, nach seiner VIN',
  'number or name of the claim': 'Nummer oder Name der Reklamation',
  'writes the file of a claim about one vehicle: what was known then, what was learned since':
    'schreibt die Akte einer Reklamation zu einem Fahrzeug: was damals bekannt war, was seither dazukam',
  'the log does not go on from the checkpoint; nothing was written':
    'das Logbuch setzt den Prüfpunkt nicht fort; nichts wurde geschrieben',
  'the copy; a file that does not exist yet': 'die Kopie; eine Datei, die es noch nicht gibt',
  'copies the station log, also while a job runs, and checks the whole copy':
    'kopiert das Logbuch, auch während ein Auftrag läuft, und prüft die ganze Kopie',
  'restore even if the log has entries that the backup lacks; they are kept beside it':
    'auch wiederherstellen, wenn das Logbuch Einträge hat, die der Sicherung fehlen; sie werden daneben aufgehoben',
  'in place of a backup: what the archive has, by its one-time token':
    'statt einer Sicherung: was das Archiv hat, mit dessen Einmal-Token',
  'the backup': 'die Sicherung',
  'checks a whole backup and puts it in the place of the station log':
    'prüft eine ganze Sicherung und legt sie an die Stelle des Logbuchs',
  "the keys that you trust (JWK set); the station's own list unless given":
    'die Schlüssel, denen Sie vertrauen (JWK-Satz); die eigene Liste des Arbeitsplatzes, wenn nicht angegeben',
  'a folder of exported records, to fill gaps or where the log is gone':
    'ein Ordner ausgegebener Protokolle, um Lücken zu füllen oder wenn das Logbuch weg ist',
  'the new log; a file that does not exist yet': 'das neue Logbuch; eine Datei, die es noch nicht gibt',
  'saves what can be read of a damaged station log and of exported records into a new log':
    'rettet aus einem beschädigten Logbuch und ausgegebenen Protokollen, was lesbar ist, in ein neues Logbuch',
  'everything known was saved': 'alles Bekannte wurde gerettet',
  'something is lost; the output says what': 'etwas ist verloren; die Ausgabe sagt was',
  "the folder of the station's data, instead of a station file":
    'der Ordner der Daten des Arbeitsplatzes, statt einer Arbeitsplatzdatei',
  'the station file': 'die Arbeitsplatzdatei',
  'CSV as spreadsheets of that language read it, for example de; none: without byte order mark':
    'CSV, wie Tabellenprogramme dieser Sprache es lesen, zum Beispiel de; none: ohne Byte-Order-Mark',
  'language of the papers; else as the station file says, or English':
    'Sprache der Dokumente; sonst wie in der Arbeitsplatzdatei, oder Englisch',
  'units on the papers; else as the station file says, or N·m and mm':
    'Einheiten in den Dokumenten; sonst wie in der Arbeitsplatzdatei, oder N·m und mm',
  'Bluetooth tools: find them, adopt them, record what they send':
    'Bluetooth-Werkzeuge: finden, übernehmen, aufzeichnen, was sie senden',
  'do not connect to ask for serial numbers': 'nicht verbinden, um Seriennummern zu erfragen',
  'list every device, not only measuring tools': 'alle Geräte auflisten, nicht nur Messgeräte',
  'also look for the device in this profile': 'auch nach dem Gerät dieses Profils suchen',
  'how long to listen': 'wie lange gehört wird',
  'lists the measuring tools in reach, with their serial numbers':
    'listet die Messgeräte in Reichweite auf, mit ihren Seriennummern',
  'the profile of the device, as the station file is to name it':
    'das Profil des Geräts, wie es die Arbeitsplatzdatei nennen soll',
  'which tool of the station file it is': 'welches Werkzeug der Arbeitsplatzdatei es ist',
  'as "devices scan" lists it': 'wie "devices scan" es auflistet',
  'makes a device a tool of the station, by its serial number and address':
    'macht ein Gerät zum Werkzeug des Arbeitsplatzes, nach Seriennummer und Adresse',
  'how long; Ctrl-C stops sooner': 'wie lange; Strg-C hört früher auf',
  'the capture; a file that does not exist yet': 'die Aufnahme; eine Datei, die es noch nicht gibt',
  'records every byte that a device sends, in a file that "plugmark job" can play':
    'zeichnet jedes Byte auf, das ein Gerät sendet, in eine Datei, die "plugmark job" abspielen kann',
  'drivers: profiles without code, and packages of others':
    'Treiber: Profile ohne Code, und Pakete von anderen',
  'what was sent, in hexadecimal digits; may be given several times':
    'was gesendet wurde, in hexadezimalen Ziffern; mehrmals möglich',
  'the profile (JSON)': 'das Profil (JSON)',
  'checks a profile and shows what it makes of bytes': 'prüft ein Profil und zeigt, was es aus Bytes macht',
  'name of the package (plugmark-driver-...), its folder, or a profile (JSON)':
    'Name des Pakets (plugmark-driver-...), sein Ordner, oder ein Profil (JSON)',
  'tries a driver package, or a profile, with cut, lost, doubled and damaged bytes':
    'erprobt ein Treiberpaket oder ein Profil mit abgeschnittenen, verlorenen, doppelten und beschädigten Bytes',
  'a check failed': 'eine Prüfung schlug fehl',
  'the profile; a file that does not exist yet': 'das Profil; eine Datei, die es noch nicht gibt',
  'a name for the device': 'ein Name für das Gerät',
  'the service that it advertises; that of its readings unless given':
    'der Dienst, den es anzeigt; der seiner Messwerte, wenn nicht angegeben',
  'FIGURE=FILE: one more, which is kept back to prove the profile with':
    'FIGURE=FILE: noch eine, die zurückgehalten wird, um das Profil zu beweisen',
  'FIGURE=FILE: a capture, with what the display showed; three at least':
    'FIGURE=FILE: eine Aufnahme, mit dem, was die Anzeige zeigte; mindestens drei',
  'a capture of it untouched': 'eine Aufnahme von ihm, unberührt',
  'smallest step of its display': 'kleinster Schritt seiner Anzeige',
  'unit of its display: N.m, lbf.ft, mm and the like':
    'Einheit seiner Anzeige: N.m, lbf.ft, mm und dergleichen',
  'no profile explains all of it, or more than one': 'kein Profil erklärt alles, oder mehr als eines',
  'with a package: the checkpoint that you kept from before':
    'mit einem Paket: der Prüfpunkt, den Sie von früher aufgehoben haben',
  'with --time: the certificates of its authority (PEM)': 'mit --time: die Zertifikate seiner Stelle (PEM)',
  'a time stamp for the record (*.tsr)': 'ein Zeitstempel für das Protokoll (*.tsr)',
  'which logs you trust, which witnesses must have cosigned, and how many (C2SP tlog-policy)':
    'welchen Logbüchern Sie vertrauen, welche Zeugen gegensigniert haben müssen, und wie viele (C2SP tlog-policy)',
  'the keys that you trust (JWK set), never the list in a package; trusted-keys.json unless given':
    'die Schlüssel, denen Sie vertrauen (JWK-Satz), nie die Liste in einem Paket; trusted-keys.json, wenn nicht angegeben',
  'a record (*.record.json), its paper (PDF), a package, or a folder of records; - reads the standard input':
    'ein Protokoll (*.record.json), sein Dokument (PDF), ein Paket oder ein Ordner mit Protokollen; - liest die Standardeingabe',
  'checks that a job record, an audit package, or every record in a folder is authentic':
    'prüft, ob ein Auftragsprotokoll, ein Prüfpaket oder jedes Protokoll eines Ordners echt ist',
  'authentic, signed by somebody you trust; a single record is complete and proven too':
    'echt, von jemandem signiert, dem Sie vertrauen; ein einzelnes Protokoll ist auch vollständig und nachgewiesen',
  'not authentic; a single record that is not complete, or rests on simulated or replayed figures; or a paper that is not what its record gives':
    'nicht echt; ein einzelnes Protokoll, das nicht vollständig ist oder auf simulierten oder abgespielten Werten beruht; oder ein Dokument, das nicht ist, was sein Protokoll ergibt',
  'not readable as a record or a package': 'nicht als Protokoll oder Paket lesbar',
  'as it was sealed, but the signer is not on your trust list':
    'wie es versiegelt wurde, aber der Unterzeichner steht nicht auf Ihrer Vertrauensliste',
  'authentic, but judged by rules that this version does not know; or a paper that another version drew':
    'echt, aber nach Regeln beurteilt, die diese Version nicht kennt; oder ein Dokument, das eine andere Version gezeichnet hat',
  'the keys that you trust (JWK set); trusted-keys.json unless given':
    'die Schlüssel, denen Sie vertrauen (JWK-Satz); trusted-keys.json, wenn nicht angegeben',
  'with --svg: which pull; the last one that was judged unless given':
    'mit --svg: welcher Zug; der zuletzt beurteilte, wenn nicht angegeben',
  'instead, a picture of one pull with its window': 'stattdessen ein Bild eines Zugs mit seinem Fenster',
  'lines of text, without keys': 'Textzeilen, ohne Tasten',
  'the record (*.record.json)': 'das Protokoll (*.record.json)',
  'shows a record: verdicts, times of the steps, and each pull as a curve':
    'zeigt ein Protokoll: Urteile, Zeiten der Schritte, und jeden Zug als Kurve',
  'shown, but not authentic, or the job is not complete or not proven':
    'gezeigt, aber nicht echt, oder der Auftrag ist nicht vollständig oder nicht nachgewiesen',
  'shown, but the signer is not on your trust list':
    'gezeigt, aber der Unterzeichner steht nicht auf Ihrer Vertrauensliste',
  'shown, but judged by rules that this version does not know':
    'gezeigt, aber nach Regeln beurteilt, die diese Version nicht kennt',
  'folder for the papers': 'Ordner für die Dokumente',
  'makes the PDF and the CSV of a record again, from the record alone':
    'macht PDF und CSV eines Protokolls noch einmal, aus dem Protokoll allein',
  'not authentic, and no paper was written; or written, but the job is not complete or not proven':
    'nicht echt, und kein Dokument wurde geschrieben; oder geschrieben, aber der Auftrag ist nicht vollständig oder nicht nachgewiesen',
  'written, but the signer is not on your trust list':
    'geschrieben, aber der Unterzeichner steht nicht auf Ihrer Vertrauensliste',
  'written, but judged by rules that this version does not know':
    'geschrieben, aber nach Regeln beurteilt, die diese Version nicht kennt',
  'file for the results; the standard output unless given':
    'Datei für die Ergebnisse; die Standardausgabe, wenn nicht angegeben',
  'writes the results of a record as JSON in the names of OPC UA for joining systems':
    'schreibt die Ergebnisse eines Protokolls als JSON in den Namen von OPC UA für Fügesysteme',
  'not authentic, and nothing was written; or the job is not complete or not proven':
    'nicht echt, und nichts wurde geschrieben; oder der Auftrag ist nicht vollständig oder nicht nachgewiesen',
  'file for the page (*.html), which does not exist yet':
    'Datei für die Seite (*.html), die es noch nicht gibt',
  'writes a page with a record inside, which verifies itself in any browser':
    'schreibt eine Seite mit einem Protokoll darin, die sich in jedem Browser selbst prüft',
  'the record is not as its station sealed it, and no page was written':
    'das Protokoll ist nicht, wie sein Arbeitsplatz es versiegelt hat, und keine Seite wurde geschrieben',
  'file for the countersigned record': 'Datei für das gegengezeichnete Protokoll',
  'the key that signs (PEM)': 'der Signaturschlüssel (PEM)',
  'the record': 'das Protokoll',
  'adds a signature to a record, as a new file': 'fügt einem Protokoll eine Signatur hinzu, als neue Datei',
  'file for the shared record': 'Datei für das weitergegebene Protokoll',
  'keep free texts that contain a telephone number; they are withheld unless asked for':
    'freie Texte behalten, die eine Telefonnummer enthalten; sie werden zurückgehalten, wenn nicht verlangt',
  'what is withheld, with commas: plate, vin, vehicle, fleet, customer, complaint, person (names), note (free text); or all':
    'was zurückgehalten wird, mit Kommas: plate, vin, vehicle, fleet, customer, complaint, person (Namen), note (freier Text); oder all',
  'writes a record without some of its personal texts; signatures and verdict stay the same':
    'schreibt ein Protokoll ohne einige seiner persönlichen Texte; Signaturen und Urteil bleiben dieselben',
  'the certificates of the authority (PEM)': 'die Zertifikate der Stelle (PEM)',
  'address of the time-stamping authority': 'Adresse der Zeitstempelstelle',
  'fetches a trusted time stamp (RFC 3161) for a record':
    'holt einen vertrauenswürdigen Zeitstempel (RFC 3161) für ein Protokoll',
  'checkpoints and proofs of the station log': 'Prüfpunkte und Nachweise des Logbuchs',
  'write it to this file, which does not exist yet': 'in diese Datei schreiben, die es noch nicht gibt',
  'signs the log as it is now; keep the checkpoint elsewhere':
    'signiert das Logbuch, wie es jetzt ist; den Prüfpunkt anderswo aufheben',
  'prints the key that checkpoints are checked by (C2SP verifier key)':
    'gibt den Schlüssel aus, mit dem Prüfpunkte geprüft werden (C2SP verifier key)',
  'sends what is new to the archive and to the witnesses; every job does so by itself':
    'sendet Neues an das Archiv und die Zeugen; jeder Auftrag macht das von selbst',
  'all have it': 'alle haben es',
  'one has not; the output says why': 'einer nicht; die Ausgabe sagt warum',
  'sends the newest checkpoint to the witnesses of the station file':
    'sendet den neuesten Prüfpunkt an die Zeugen der Arbeitsplatzdatei',
  'all cosigned': 'alle haben gegensigniert',
  'one did not; the output says why': 'einer nicht; die Ausgabe sagt warum',
  'proofs that other programs can check (RFC 9162), as JSON':
    'Nachweise, die andere Programme prüfen können (RFC 9162), als JSON',
  'its number': 'seine Nummer',
  'proves that the log contains an entry': 'beweist, dass das Logbuch einen Eintrag enthält',
  'JSON, or the text of c2sp.org/tlog-proof': 'JSON, oder der Text von c2sp.org/tlog-proof',
  'the checkpoint, or a record, which contains one': 'der Prüfpunkt, oder ein Protokoll, das einen enthält',
  'proves that the log goes on from an old checkpoint':
    'beweist, dass das Logbuch einen alten Prüfpunkt fortsetzt',
  'the log does not go on from the checkpoint': 'das Logbuch setzt den Prüfpunkt nicht fort',
  'what happened': 'was geschehen ist',
  'states that entries are gone for good, so that the station can sign again':
    'erklärt, dass Einträge endgültig weg sind, damit der Arbeitsplatz wieder signieren kann',
  'checkpoints that were kept, or records, which contain one each':
    'aufgehobene Prüfpunkte, oder Protokolle, die je einen enthalten',
  'checks that nothing in the log was removed or changed, or says where':
    'prüft, dass im Logbuch nichts entfernt oder geändert wurde, oder sagt wo',
  'nothing was removed or changed': 'nichts wurde entfernt oder geändert',
  'something was removed or changed': 'etwas wurde entfernt oder geändert',
  'the keys of the station and its people': 'die Signaturschlüssel des Arbeitsplatzes und seiner Leute',
  'lists all keys, and which of them sign; runs where you name no other command':
    'listet alle Signaturschlüssel auf und welche davon signieren; läuft, wenn kein anderer Befehl genannt ist',
  'keep the file of the old key, under a passphrase; it is destroyed unless given':
    'die Datei des alten Signaturschlüssels unter einem Passwort behalten; sonst wird sie zerstört',
  'also where records here are of entries that the log lost, and have no proof then':
    'auch wenn Protokolle hier aus Einträgen sind, die das Logbuch verloren hat, und dann keinen Nachweis haben',
  'with --pkcs11: the token, by its label': 'mit --pkcs11: das Token, nach seinem Namen',
  'make the new key in a device, by the module (PKCS#11) of its maker; with --token':
    'den neuen Signaturschlüssel in einem Gerät machen, mit dem Modul (PKCS#11) seines Herstellers; mit --token',
  'with --lost: what happened': 'mit --lost: was geschehen ist',
  'the old key is lost or not to be trusted, and cannot vouch for the new one':
    'der alte Signaturschlüssel ist verloren oder nicht vertrauenswürdig, und kann für den neuen nicht bürgen',
  'makes a new key for the station; the old one vouches for it':
    'macht einen neuen Signaturschlüssel für den Arbeitsplatz; der alte bürgt für ihn',
  'from this day on; now unless given': 'von diesem Tag an; ab jetzt, wenn nicht angegeben',
  'the key, by its thumbprint': 'der Signaturschlüssel, nach seinem Fingerabdruck',
  'revokes a key: from that day on nobody is to trust it':
    'widerruft einen Signaturschlüssel: von diesem Tag an soll ihm niemand trauen',
  'take the passphrase off': 'das Passwort entfernen',
  'puts all keys of the station that are here under a passphrase':
    'legt alle Signaturschlüssel des Arbeitsplatzes, die hier sind, unter ein Passwort',
  'writes over and deletes the file of a key that signs no more':
    'überschreibt und löscht die Datei eines Signaturschlüssels, der nicht mehr signiert',
  'name of the technician': 'Name des Mechanikers',
  'makes a key for a technician, under a PIN':
    'macht einen Signaturschlüssel für einen Mechaniker, unter einer PIN',
  'decides whether technicians sign': 'entscheidet, ob Mechaniker signieren',
  'what the shop decides': 'was die Werkstatt entscheidet',
  'name of the owner, as trust lists show it': 'Name des Inhabers, wie ihn Vertrauenslisten zeigen',
  'file for the key (PEM); it does not exist yet':
    'Datei für den Signaturschlüssel (PEM); es gibt sie noch nicht',
  'makes a key for somebody outside the station, such as a foreman who countersigns':
    'macht einen Signaturschlüssel für jemanden außerhalb des Arbeitsplatzes, etwa einen Meister, der gegenzeichnet',
  'what the key signs as': 'als was der Schlüssel signiert',
  'why it is revoked': 'warum er widerrufen wird',
  'which one; a command with --json has one for its answer, such as jobs-list':
    'welche; ein Befehl mit --json hat eine für seine Antwort, etwa jobs-list',
  'prints the JSON Schema of a form that plugmark reads or writes, or the list of all forms':
    'gibt das JSON-Schema einer Form aus, die plugmark liest oder schreibt, oder die Liste aller Formen',
  'prints the completion of commands and options for a shell':
    'gibt die Vervollständigung von Befehlen und Optionen für eine Shell aus',
  'your shell': 'Ihre Shell',
  'write all pages for man into this folder': 'alle Seiten für man in diesen Ordner schreiben',
  'as a page for man': 'als Seite für man',
  'which one; "commands" is the reference of all commands':
    'welches; "commands" ist das Verzeichnis aller Befehle',
  'prints a topic of the manual, or the list of topics':
    'gibt ein Thema des Handbuchs aus, oder die Liste der Themen',
  'the words of the command line so far': 'die Wörter der Befehlszeile bis hier',
  'tool, job, open-job, person, impact, study or kid': 'tool, job, open-job, person, impact, study oder kid',
  'prints names of this station for the completion of a shell, one a line':
    'gibt Namen dieses Arbeitsplatzes für die Vervollständigung einer Shell aus, einen je Zeile',
  'also write a PDF and the charts as SVG; each of several groups into its own folder':
    'auch ein PDF und die Diagramme als SVG schreiben; bei mehreren Gruppen jede in ihren eigenen Ordner',
  'how many readings the charts show': 'wie viele Messwerte die Diagramme zeigen',
  'gaps instead of torques': 'Elektrodenabstände statt Drehmomente',
  'only this cylinder': 'nur dieser Zylinder',
  'one specification, by its key or the start of it': 'eine Vorgabe, nach ihrem Schlüssel oder dessen Anfang',
  'shows what the process can do, by specification': 'zeigt, was der Prozess kann, nach Vorgabe',
  'one group for each': 'eine Gruppe für jede',
  'shows the gaps of new plugs as they came, by part and lot':
    'zeigt die Abstände neuer Zündkerzen, wie sie kamen, nach Teil und Charge',
  'also writes a PDF and the charts as SVG': 'schreibt auch ein PDF und die Diagramme als SVG',
  'how many days the chart shows': 'wie viele Tage das Diagramm zeigt',
  'how far it may be off; as stated for the tool unless given':
    'wie weit es abweichen darf; wie für das Werkzeug angegeben, wenn nicht genannt',
  'its serial number, or its name in the station file':
    'seine Seriennummer, oder sein Name in der Arbeitsplatzdatei',
  'shows whether a tool has drifted: by its pulls since calibration, and by its certificates':
    'zeigt, ob ein Werkzeug weggedriftet ist: nach seinen Zügen seit der Kalibrierung und nach seinen Kalibrierscheinen',
  'nothing speaks against the tool': 'nichts spricht gegen das Werkzeug',
  'WARNING or UNDECIDED: have the tool checked sooner':
    'ACHTUNG oder UNENTSCHIEDEN: das Werkzeug früher prüfen lassen',
  'repeatability and reproducibility of a tool, measured with the tool':
    'Wiederholpräzision und Vergleichspräzision eines Werkzeugs, mit dem Werkzeug gemessen',
  'no bell': 'kein Ton',
  'plain lines instead of the screen': 'einfache Zeilen statt des Bildschirms',
  'for a wrench: the torque of its pulls, in N·m': 'für einen Schlüssel: das Drehmoment seiner Züge, in N·m',
  'how often each person measures each part': 'wie oft jede Person jedes Teil misst',
  'how many parts, or their names separated by commas':
    'wie viele Teile, oder ihre Namen mit Kommas getrennt',
  'who measures, separated by commas': 'wer misst, mit Kommas getrennt',
  'which tool of the station file': 'welches Werkzeug der Arbeitsplatzdatei',
  'leads you through a study and computes it, by average and range and by analysis of variance':
    'führt durch eine Studie und berechnet sie, nach Mittelwert und Spannweite und nach Varianzanalyse',
  'go on with a study that was left open, such as GS-1': 'eine offen gelassene Studie fortsetzen, etwa GS-1',
  'you left before the first reading; nothing was kept':
    'vor dem ersten Messwert verlassen; nichts wurde aufgehoben',
  'the study is still open; go on with: plugmark gauge-study run --resume':
    'die Studie ist noch offen; weiter mit: plugmark gauge-study run --resume',
  'lists all studies: made, open, given up': 'listet alle Studien auf: beendete, offene, aufgegebene',
  'its number, such as GS-1': 'ihre Nummer, etwa GS-1',
  'shows one study': 'zeigt eine Studie',
  'gives up an open study; its readings stay in the log':
    'gibt eine offene Studie auf; ihre Messwerte bleiben im Logbuch',
  'also write it for a calendar program (iCalendar)': 'auch für ein Kalenderprogramm schreiben (iCalendar)',
  'the longest interval': 'das längste Intervall',
  'the shortest interval': 'das kürzeste Intervall',
  'add the next interval, longer or shorter by what the laboratory found':
    'das nächste Intervall hinzufügen, länger oder kürzer nach dem, was das Labor festgestellt hat',
  'a tool is due soon this many days ahead': 'ein Werkzeug ist so viele Tage vorher bald fällig',
  'shows when each tool must be calibrated again': 'zeigt, wann jedes Werkzeug wieder kalibriert werden muss',
  'no tool is due': 'kein Werkzeug ist fällig',
  'a tool is due, or out of tolerance': 'ein Werkzeug ist fällig, oder außer Toleranz',
  'calibration certificates, kept as files and found by their digest':
    'Kalibrierscheine, als Dateien aufbewahrt und nach ihrer Prüfsumme gefunden',
  'the certificate that the file belongs to, for a scan':
    'der Kalibrierschein, zu dem die Datei gehört, bei einem Scan',
  'the files; those in the station file unless given':
    'die Dateien; die in der Arbeitsplatzdatei, wenn nicht angegeben',
  "keeps certificates in the folder of the station's data":
    'bewahrt Kalibrierscheine im Ordner der Daten des Arbeitsplatzes auf',
  'checks that all kept certificates are there, unchanged':
    'prüft, dass alle aufbewahrten Kalibrierscheine da und unverändert sind',
  'all are there, unchanged': 'alle sind da, unverändert',
  'one is missing or changed': 'einer fehlt oder ist geändert',
  'unit of the torques: N·m, lbf·ft, lbf·in, kgf·m or kgf·cm':
    'Einheit der Drehmomente: N·m, lbf·ft, lbf·in, kgf·m oder kgf·cm',
  'column of the angles in degrees; angle_deg where the file has one':
    'Spalte der Winkel in Grad; angle_deg, wenn die Datei eine hat',
  'column of the torques': 'Spalte der Drehmomente',
  'column of the times': 'Spalte der Zeiten',
  'unit of the times': 'Einheit der Zeiten',
  'the tool sent the highest torque of each work cycle, not the torque itself':
    'das Werkzeug hat das höchste Drehmoment jedes Arbeitsgangs gesendet, nicht das Drehmoment selbst',
  'lower limit of the window in N·m; what stays far below it is no pull':
    'untere Grenze des Fensters in N·m; was weit darunter bleibt, ist kein Zug',
  'the trace (CSV with a header line); - reads the standard input':
    'der Verlauf (CSV mit Kopfzeile); - liest die Standardeingabe',
  'finds the pulls in a torque trace and draws them':
    'findet die Züge in einem Drehmomentverlauf und zeichnet sie',
  'folder for the station log of the replay': 'Ordner für das Logbuch des Abspielens',
  '1 as recorded, 10 ten times as fast; as fast as it goes unless given':
    '1 wie aufgezeichnet, 10 zehnmal so schnell; so schnell es geht, wenn nicht angegeben',
  'the station file with the wrench; an example unless given':
    'die Arbeitsplatzdatei mit dem Schlüssel; ein Beispiel, wenn nicht angegeben',
  'the work order; an example with four cylinders unless given':
    'der Arbeitsauftrag; ein Beispiel mit vier Zylindern, wenn nicht angegeben',
  'a recording (plugmark/readings/1) or a trace (CSV); - reads the standard input':
    'eine Aufzeichnung (plugmark/readings/1) oder ein Verlauf (CSV); - liest die Standardeingabe',
  'plays a recording or a trace through the whole program, as if the wrench were there':
    'spielt eine Aufzeichnung oder einen Verlauf durch das ganze Programm, als wäre der Schlüssel da',
  'you left before the recording ended': 'vor dem Ende der Aufzeichnung verlassen',
  'the station file to write': 'die Arbeitsplatzdatei, die geschrieben wird',
  'guides you through the first day: asks for station, tools and people, writes the station file':
    'führt durch den ersten Tag: fragt nach Arbeitsplatz, Werkzeugen und Personen, schreibt die Arbeitsplatzdatei',
  'you stopped; no station file was written':
    'Sie haben aufgehört; keine Arbeitsplatzdatei wurde geschrieben',
  'the station file; the one at hand where there is one':
    'die Arbeitsplatzdatei; die vorhandene, wo es eine gibt',
  'checks program, Bluetooth, log, key, clock, disk and terminal; changes nothing':
    'prüft Programm, Bluetooth, Logbuch, Signaturschlüssel, Uhr, Datenträger und Terminal; ändert nichts',
  'everything that plugmark needs is there': 'alles, was plugmark braucht, ist da',
  'something is missing': 'etwas fehlt',
  "the shop's own library of engines, plugs and figures":
    'die eigene Sammlung der Werkstatt: Motoren, Zündkerzen und Werte',
  'only those with all these words in their name, plug or source':
    'nur die mit allen diesen Wörtern in Name, Zündkerze oder Quelle',
  'lists the specifications; runs where you name no other command':
    'listet die Vorgaben auf; läuft, wenn kein anderer Befehl genannt ist',
  'its name, or words that no other one has': 'ihr Name, oder Wörter, die keine andere hat',
  'shows one specification, with its engine drawn': 'zeigt eine Vorgabe, mit gezeichnetem Motor',
  'with --order: who enters it; the technician of the order unless given':
    'mit --order: wer sie einträgt; der Mechaniker des Auftrags, wenn nicht angegeben',
  'with --order: the name of the specification; that of the engine unless given':
    'mit --order: der Name der Vorgabe; der des Motors, wenn nicht angegeben',
  'the work order whose engine, plug and figures are kept':
    'der Arbeitsauftrag, dessen Motor, Zündkerze und Werte aufbewahrt werden',
  'adds the figures of a work order, or asks for them one by one':
    'nimmt die Werte eines Arbeitsauftrags auf, oder fragt sie einzeln ab',
  'you stopped; nothing was written': 'Sie haben aufgehört; nichts wurde geschrieben',
  'checks that each can be read, and that a job could be opened with it today':
    'prüft, dass jede lesbar ist, und dass heute ein Auftrag damit eröffnet werden könnte',
  'all can be used': 'alle sind verwendbar',
  'one cannot be used': 'eine ist nicht verwendbar',
  'the jobs in the station log: list, show, void, hand over':
    'die Aufträge im Logbuch: auflisten, zeigen, für ungültig erklären, übergeben',
  'only vehicles with this in their fleet number': 'nur Fahrzeuge mit diesem in ihrer Flottennummer',
  'only vehicles with this in their plate': 'nur Fahrzeuge mit diesem in ihrem Kennzeichen',
  'only vehicles with this in their VIN': 'nur Fahrzeuge mit diesem in ihrer VIN',
  'only jobs with this in their number': 'nur Aufträge mit diesem in ihrer Nummer',
  'lists jobs, the latest first; runs where you name no other command':
    'listet Aufträge auf, die neuesten zuerst; läuft, wenn kein anderer Befehl genannt ist',
  'shows where a job stands': 'zeigt, wo ein Auftrag steht',
  'who declares it': 'wer es erklärt',
  'declares a job void: its readings stay in the log and prove nothing':
    'erklärt einen Auftrag für ungültig: seine Messwerte bleiben im Logbuch und beweisen nichts',
  'who goes on with it': 'wer damit weitermacht',
  'gives an open job to another technician': 'übergibt einen offenen Auftrag einem anderen Mechaniker',
  "folder for the papers; that of the station's data unless given":
    'Ordner für die Dokumente; der der Daten des Arbeitsplatzes, wenn nicht angegeben',
  'writes record, PDF and CSV of a closed job again, from the log':
    'schreibt Protokoll, PDF und CSV eines abgeschlossenen Auftrags noch einmal, aus dem Logbuch',
  'written, but the job is not complete or not proven':
    'geschrieben, aber der Auftrag ist nicht vollständig oder nicht nachgewiesen',
  'written, but the job was declared void': 'geschrieben, aber der Auftrag wurde für ungültig erklärt',
  'judge certificates by this day instead of today':
    'Kalibrierscheine nach diesem Tag statt nach heute beurteilen',
  'also a picture of the window with the reading over it':
    'auch ein Bild des Fensters mit dem Messwert darüber',
  'standard deviation of the pulls of this shop; adds the risks':
    'Standardabweichung der Züge dieser Werkstatt; fügt die Risiken hinzu',
  'add the four grades of ILAC-G8': 'die vier Stufen von ILAC-G8 hinzufügen',
  'with probability: from 0.5 to 0.9999': 'mit probability: von 0.5 bis 0.9999',
  'with guard-band: its width in U': 'mit guard-band: seine Breite in U',
  'readings a second that the wrench sends: says whether they are enough':
    'Messwerte je Sekunde, die der Schlüssel sendet: sagt, ob es genug sind',
  'judge this reading of the wrench, for example "29.5 N·m"':
    'diesen Messwert des Schlüssels beurteilen, zum Beispiel "29.5 N·m"',
  'with a universal joint: how far it is bent': 'mit einem Kreuzgelenk: wie weit es abgewinkelt ist',
  'with an adapter: 0 in line, 90 square, 180 folded back':
    'mit einem Adapter: 0 in einer Linie, 90 quer, 180 zurückgeklappt',
  'with an adapter: from the drive to the plug': 'mit einem Adapter: vom Antrieb bis zur Zündkerze',
  'with an adapter: from the drive to the hand': 'mit einem Adapter: vom Antrieb bis zur Hand',
  'how far the wrench may be off, of the reading': 'wie weit der Schlüssel abweichen darf, vom Messwert',
  'take the wrench and the decision rule from this station file':
    'Schlüssel und Entscheidungsregel aus dieser Arbeitsplatzdatei nehmen',
  'take the specification from this work order': 'die Vorgabe aus diesem Arbeitsauftrag nehmen',
  'as printed, for example "25-30 N·m"': 'wie gedruckt, zum Beispiel "25-30 N·m"',
  'shows the torque window of a specification: guard band, uncertainty, what a reading is worth':
    'zeigt das Drehmomentfenster einer Vorgabe: Schutzband, Unsicherheit, was ein Messwert wert ist',
  'thread of the plug': 'Gewinde der Zündkerze',
  'seat of the plug': 'Sitz der Zündkerze',
  'cylinder head': 'Zylinderkopf',
  'the threads that the torque is printed for': 'die Gewinde, für die das Drehmoment gedruckt ist',
  'the decision rule': 'die Entscheidungsregel',
  'this wrench can prove this window': 'dieser Schlüssel kann dieses Fenster nachweisen',
  'it cannot, or the wrench would be refused': 'er kann es nicht, oder der Schlüssel würde abgelehnt',
  'the folder of the witness': 'der Ordner des Zeugen',
  'holds stations to their history: cosigns their logs for as long as nothing is rewritten':
    'hält Arbeitsplätze an ihrer Geschichte fest: gegensigniert ihre Logbücher, solange nichts umgeschrieben wird',
  'its name, like an address: example.com/witness': 'sein Name, wie eine Adresse: example.com/witness',
  'makes a witness: its key, and the file of what it cosigned':
    'legt einen Zeugen an: seinen Signaturschlüssel und die Datei dessen, was er gegensigniert hat',
  'what "plugmark log vkey" prints at the station': 'was "plugmark log vkey" am Arbeitsplatz ausgibt',
  'lists the logs and what was cosigned last; runs where you name no other command':
    'listet die Logbücher auf und was zuletzt gegensigniert wurde; läuft, wenn kein anderer Befehl genannt ist',
  'a log has two histories': 'ein Logbuch hat zwei Geschichten',
  'answers logs over HTTP until you end it (C2SP tlog-witness)':
    'antwortet Logbüchern über HTTP, bis Sie es beenden (C2SP tlog-witness)',
  'language of the screen; else as the station file says':
    'Sprache des Bildschirms; sonst wie in der Arbeitsplatzdatei',
  'you press every key; the simulated technician does what this file says, a line each: fit 1, pull 1 careful, measure 1':
    'Sie drücken jede Taste; der simulierte Mechaniker tut, was diese Datei sagt, je Zeile eines: fit 1, pull 1 careful, measure 1',
  'go on with the demo job that was left open in this folder':
    'den Vorführauftrag fortsetzen, der in diesem Ordner offen blieb',
  'the simulated wrench sends the highest torque of each pull, and nothing else':
    'der simulierte Schlüssel sendet das höchste Drehmoment jedes Zugs, und sonst nichts',
  'the wrench sends how far it was turned too': 'der Schlüssel sendet auch, wie weit er gedreht wurde',
  'join the simulated tools without the Bluetooth stack':
    'die simulierten Werkzeuge ohne den Bluetooth-Stapel verbinden',
  'folder for the station log, the record, the PDF and the CSV': 'Ordner für Logbuch, Protokoll, PDF und CSV',
  'do not wait for the simulated technician; plain lines instead of the screen':
    'nicht auf den simulierten Mechaniker warten; einfache Zeilen statt des Bildschirms',
  'another engine, other plugs, other habits': 'ein anderer Motor, andere Zündkerzen, andere Gewohnheiten',
  'runs a whole job with simulated tools, on the live screen':
    'führt einen ganzen Auftrag mit simulierten Werkzeugen aus, auf dem Bildschirm',
  'cylinders of the engine': 'Zylinder des Motors',
  'how the simulated technician works': 'wie der simulierte Mechaniker arbeitet',
  'units of the screen': 'Einheiten des Bildschirms',
  'how many times as fast': 'wie viel mal so schnell',
  'the job was closed but is not complete': 'der Auftrag wurde abgeschlossen, ist aber nicht vollständig',
  'you left the job open; it is kept': 'Sie haben den Auftrag offen gelassen; er ist aufgehoben',
  'simulated tools that other programs, or a job, can join':
    'simulierte Werkzeuge, mit denen sich andere Programme oder ein Auftrag verbinden können',
  'the scenario (JSON)': 'der Ablauf (JSON)',
  'a line of JSON for all that happens, to the end of a file, into a named pipe, or - for the standard output':
    'eine Zeile JSON für alles, was geschieht, ans Ende einer Datei, in eine benannte Pipe, oder - für die Standardausgabe',
  'with --override: why': 'mit --override: warum',
  'with --override: the supervisor': 'mit --override: der Vorgesetzte',
  'use a tool that would be refused; a supervisor answers for it':
    'ein Werkzeug verwenden, das abgelehnt würde; ein Vorgesetzter steht dafür ein',
  'go on with the job that was left open; name it where several are open':
    'den offen gebliebenen Auftrag fortsetzen; ihn nennen, wenn mehrere offen sind',
  'the work order, or - for the standard input; opens a new job without questions':
    'der Arbeitsauftrag, oder - für die Standardeingabe; eröffnet einen neuen Auftrag ohne Fragen',
  'runs a real job; asks for its figures, or takes them from a work order':
    'führt einen echten Auftrag aus; fragt nach seinen Werten, oder nimmt sie aus einem Arbeitsauftrag',
  'the job is complete and proven': 'der Auftrag ist vollständig und nachgewiesen',
  'no job was opened, or the job was closed but is not complete or not proven':
    'kein Auftrag wurde eröffnet, oder der Auftrag wurde abgeschlossen, ist aber nicht vollständig oder nicht nachgewiesen',
  'the job is still open; go on with: plugmark job --resume':
    'der Auftrag ist noch offen; weiter mit: plugmark job --resume',
  'the job was declared void': 'der Auftrag wurde für ungültig erklärt',
  'See: {0} --help': 'Siehe: {0} --help',
  'The old log is never thrown away. It stays beside the restored one; the command prints where.':
    'Das alte Logbuch wird nie weggeworfen. Es bleibt neben dem wiederhergestellten; der Befehl gibt aus, wo.',
  'Exit codes:': 'Exit-Codes:',
  'Example:': 'Beispiel:',
  'Examples:': 'Beispiele:',
  'the answer as JSON; "plugmark schema {0}" prints its form':
    'die Antwort als JSON; "plugmark schema {0}" gibt ihre Form aus',
  'expected a whole number.': 'erwartet: eine ganze Zahl.',
  'expected 1 or more.': 'erwartet: 1 oder mehr.',
  'expected a number above zero.': 'erwartet: eine Zahl über null.',
  'expected a number.': 'erwartet: eine Zahl.',
  'of this vehicle; capitals, spaces and hyphens make no difference here and below':
    'von diesem Fahrzeug; Großbuchstaben, Leerzeichen und Bindestriche machen hier und unten keinen Unterschied',
  'of the vehicle with this plate': 'von dem Fahrzeug mit diesem Kennzeichen',
  'of the vehicle with this fleet number': 'von dem Fahrzeug mit dieser Flottennummer',
  'plugs of this part number': 'Zündkerzen dieser Teilenummer',
  'plugs of this lot': 'Zündkerzen dieser Charge',
  'in which this person worked': 'in denen diese Person gearbeitet hat',
  'with this tool, by its name or its serial number': 'mit diesem Werkzeug, nach Name oder Seriennummer',
  'on this day (UTC) or later': 'an diesem Tag (UTC) oder später',
  'on this day (UTC) or earlier': 'an diesem Tag (UTC) oder früher',
  'expected {0} at most.': 'erwartet: höchstens {0}.',
  'default: {0}': 'sonst: {0}',
  'Usage:': 'Aufruf:',
  'Arguments:': 'Argumente:',
  'Options:': 'Optionen:',
  'Commands:': 'Befehle:',
  'choices: {0}': 'Auswahl: {0}',
  "unknown option '{0}'": "unbekannte Option '{0}'",
  "unknown command '{0}'": "unbekannter Befehl '{0}'",
  "missing required argument '{0}'": "das Argument '{0}' fehlt",
  "option '{0}' argument missing": "der Option '{0}' fehlt ihr Wert",
  "required option '{0}' not specified": "die Option '{0}' muss angegeben werden",
  'too many arguments: expected {0}, found {1}': 'zu viele Argumente: erwartet {0}, gefunden {1}',
  "'{0}': '{1}' is not valid. {2}": "'{0}': '{1}' ist nicht gültig. {2}",
  'Allowed choices are {0}.': 'Möglich sind {0}.',
  '(Did you mean {0}?)': '(Gemeint: {0}?)',
  done: 'erledigt',
  'done, and the answer is good': 'erledigt, und die Antwort ist gut',
  failed: 'fehlgeschlagen',
  'the answer is bad, or it could not be done; the output says why':
    'die Antwort ist schlecht, oder es ging nicht; die Ausgabe sagt warum',
  'bad input': 'falsche Eingabe',
  'the command line, a file or a device is not as it should be; one sentence says what to do':
    'Befehlszeile, Datei oder Gerät ist nicht, wie es sein sollte; ein Satz sagt, was zu tun ist',
  'other rules': 'andere Regeln',
  'made or judged by a newer version of the program, whose form or rules this one does not know':
    'von einer neueren Version des Programms gemacht oder beurteilt, deren Form oder Regeln diese nicht kennt',
  'left open': 'offen gelassen',
  'not finished; all that was read is kept': 'nicht fertig; alles Gelesene ist aufgehoben',
  'the job was declared void; its readings are kept and prove nothing':
    'der Auftrag wurde für ungültig erklärt; seine Messwerte sind aufgehoben und beweisen nichts',
  fault: 'Programmfehler',
  'a fault in the program itself; what was on disk is kept':
    'ein Fehler im Programm selbst; was auf dem Datenträger war, bleibt',
  'Work on a cold engine with the ignition off, by hand, never with a power tool.':
    'An kaltem Motor mit ausgeschalteter Zündung arbeiten, von Hand, nie mit einem Maschinenschrauber.',
  'The service information of the engine maker decides every figure.':
    'Jeden Wert bestimmen die Serviceunterlagen des Motorherstellers.',
  'This program checks the work and does not replace licensed practice.':
    'Dieses Programm prüft die Arbeit und ersetzt nicht die Fachkraft.',
  'The topics of the manual are in English. The help of every command (--help) is not.':
    'Die Themen des Handbuchs sind auf Englisch. Die Hilfe jedes Befehls (--help) nicht.',
  'Every command also has --help.': 'Jeder Befehl hat auch --help.',
  'the entries of this job are damaged': 'die Einträge dieses Auftrags sind beschädigt',
  'Run "plugmark log check". It names the first changed entry.':
    '"plugmark log check" ausführen. Es nennt den ersten geänderten Eintrag.',
  'the file exists; a backup never overwrites a file':
    'die Datei besteht schon; eine Sicherung überschreibt nie eine Datei',
  'Name a new file.': 'Eine neue Datei nennen.',
  'its pages do not fit together': 'ihre Seiten passen nicht zueinander',
  'this copy is damaged: {0}': 'diese Kopie ist beschädigt: {0}',
  'Use another backup.': 'Eine andere Sicherung nehmen.',
  'there is no such file': 'diese Datei gibt es nicht',
  'this is a folder or a device, not a backup': 'das ist ein Ordner oder ein Gerät, keine Sicherung',
  'Name the file that "plugmark backup" made.': 'Die Datei nennen, die "plugmark backup" gemacht hat.',
  'Use another backup. If you have none, save what can be read of the log with "plugmark recover".':
    'Eine andere Sicherung nehmen. Gibt es keine, mit "plugmark recover" aus dem Logbuch retten, was lesbar ist.',
  'Free some space on that disk, then try again.':
    'Auf diesem Datenträger Platz schaffen, dann noch einmal versuchen.',
  'it cannot be copied beside the station log ({0})': 'sie kann nicht neben das Logbuch kopiert werden ({0})',
  "Check the rights on it, and on the folder of the station's data.":
    'Die Rechte daran und am Ordner der Daten des Arbeitsplatzes prüfen.',
  'another program wrote to the station log': 'ein anderes Programm hat in das Logbuch geschrieben',
  'Close the other program, then try again.': 'Das andere Programm schließen, dann noch einmal versuchen.',
  'entries are missing or out of order': 'Einträge fehlen oder sind nicht in der Reihenfolge',
  'the log names a stream without entries': 'das Logbuch nennt eine Folge ohne Einträge',
  'the hash tree has nodes after the last entry': 'der Hashbaum hat Knoten hinter dem letzten Eintrag',
  'entry {0} is not what its hash was made of': 'Eintrag {0} ist nicht, woraus sein Hash gemacht wurde',
  'entry {0} is not written as an entry is': 'Eintrag {0} ist nicht geschrieben wie ein Eintrag',
  'entry {0} has n={1} in its stream where n={2} is due':
    'Eintrag {0} hat n={1} in seiner Folge, wo n={2} an der Reihe ist',
  'entry {0} is not the one that the hash tree was made of, or one shortly before it':
    'Eintrag {0} ist nicht der, aus dem der Hashbaum gemacht wurde, oder einer kurz davor',
  'this is the log of another station: {0}; the station here ({1}) has the key {2}':
    'das ist das Logbuch eines anderen Arbeitsplatzes: {0}; der Arbeitsplatz hier ({1}) hat den Schlüssel {2}',
  'this is the log of another station: {0}; the station here ({1}) is {2}':
    'das ist das Logbuch eines anderen Arbeitsplatzes: {0}; der Arbeitsplatz hier ({1}) ist {2}',
  'Name a backup of this station, or the folder of the other one with --data or --station.':
    'Eine Sicherung dieses Arbeitsplatzes nennen, oder den Ordner des anderen mit --data oder --station.',
  'this station log has no entries': 'dieses Logbuch hat keine Einträge',
  'entry {0} of the station log was changed': 'Eintrag {0} des Logbuchs wurde geändert',
  'this file does not say in which device the key is':
    'diese Datei sagt nicht, in welchem Gerät der Schlüssel ist',
  'Put it back from your copy of the folder keys.': 'Aus der eigenen Kopie des Ordners keys zurücklegen.',
  'it does not have this key': 'es hat diesen Schlüssel nicht',
  'its public key cannot be read': 'sein öffentlicher Schlüssel kann nicht gelesen werden',
  'it does not take this PIN': 'es nimmt diese PIN nicht an',
  'there is no token "{0}" in it': 'es enthält kein Token "{0}"',
  'this device does not sign with Ed25519, as a TPM does not':
    'dieses Gerät signiert nicht mit Ed25519, so wie ein TPM es nicht tut',
  'Take another device, or keep the key in a file: plugmark keys lock':
    'Ein anderes Gerät nehmen, oder den Schlüssel in einer Datei halten: plugmark keys lock',
  'the module is not there': 'das Modul ist nicht da',
  'a key in a device needs the package {0}, which is not installed':
    'ein Schlüssel in einem Gerät braucht das Paket {0}, das nicht installiert ist',
  'Install it beside plugmark: npm install --global {0}. It needs a compiler.':
    'Neben plugmark installieren: npm install --global {0}. Es braucht einen Compiler.',
  'it says: {0}': 'es meldet: {0}',
  'no reason': 'kein Grund',
  '{0}, token {1}': '{0}, Token {1}',
  'the device with the key cannot be used: {0}':
    'das Gerät mit dem Schlüssel kann nicht verwendet werden: {0}',
  'Plug it in and try again. If it is lost: "plugmark keys rotate --lost".':
    'Anschließen und noch einmal versuchen. Ist es verloren: "plugmark keys rotate --lost".',
  'the station log was deleted, moved or replaced while it was in use; nothing more is written to it':
    'das Logbuch wurde während der Benutzung gelöscht, verschoben oder ersetzt; es wird nichts mehr hineingeschrieben',
  'It could not be saved elsewhere either. Keep this screen: what was shown last is not on disk.':
    'Auch anderswo konnte es nicht gesichert werden. Diesen Bildschirm aufheben: was zuletzt gezeigt wurde, ist nicht auf dem Datenträger.',
  'All of it, to the last reading, is in {0}. Find out what happened, then put it in place with "plugmark restore".':
    'Alles, bis zum letzten Messwert, ist in {0}. Herausfinden, was geschah, dann mit "plugmark restore" an seinen Platz legen.',
  'this is not an Ed25519 private key in PKCS#8 PEM form':
    'das ist kein privater Ed25519-Schlüssel in PKCS#8-PEM-Form',
  'Name a key file made by plugmark, or make a new key.':
    'Eine Schlüsseldatei nennen, die plugmark gemacht hat, oder einen neuen Schlüssel machen.',
  'the private key needs its passphrase': 'der private Schlüssel braucht sein Passwort',
  'Run plugmark in a terminal and type it, or set it in the environment.':
    'plugmark in einem Terminal ausführen und es eintippen, oder es in der Umgebung setzen.',
  'the passphrase is wrong, or the key file is damaged':
    'das Passwort ist falsch, oder die Schlüsseldatei ist beschädigt',
  'Try again. Without it the key is lost: "plugmark manual keys" says what to do then.':
    'Noch einmal versuchen. Ohne es ist der Schlüssel verloren: "plugmark manual keys" sagt, was dann zu tun ist.',
  'other users of this computer can read the private key':
    'andere Benutzer dieses Computers können den privaten Schlüssel lesen',
  'Run chmod 600 on it. If somebody may have copied it, make a new key and remove the old one from the trust lists.':
    'chmod 600 darauf ausführen. Hat ihn vielleicht jemand kopiert, einen neuen Schlüssel machen und den alten aus den Vertrauenslisten nehmen.',
  'the file exists; a key is never overwritten':
    'die Datei besteht schon; ein Schlüssel wird nie überschrieben',
  'Use that key, or name another file.': 'Diesen Schlüssel verwenden, oder eine andere Datei nennen.',
  'Check the path, or make a key.': 'Den Pfad prüfen, oder einen Schlüssel machen.',
  'the file cannot be opened': 'die Datei kann nicht geöffnet werden',
  'another program wrote to {0} at the same time': 'ein anderes Programm hat gleichzeitig in {0} geschrieben',
  'Close the other program, then open the job again.':
    'Das andere Programm schließen, dann den Auftrag wieder öffnen.',
  'the database file is damaged': 'die Datenbankdatei ist beschädigt',
  'the file is empty; a station log never is': 'die Datei ist leer; ein Logbuch ist es nie',
  'Restore a backup. If the log was never used, delete the file and start again.':
    'Eine Sicherung wiederherstellen. Wurde das Logbuch nie verwendet, die Datei löschen und neu beginnen.',
  'this is a database, but not a station log': 'das ist eine Datenbank, aber kein Logbuch',
  'Name the station log, or a new file.': 'Das Logbuch nennen, oder eine neue Datei.',
  'a newer version of the program wrote this log (form {0}; this one knows {1})':
    'eine neuere Version des Programms hat dieses Logbuch geschrieben (Form {0}; diese kennt {1})',
  'Use the newer version of the program.': 'Die neuere Version des Programms verwenden.',
  'Keep the file as it is. Restore a backup with "plugmark restore". If you have none, save what can be read with "plugmark recover".':
    'Die Datei lassen, wie sie ist. Mit "plugmark restore" eine Sicherung wiederherstellen. Gibt es keine, mit "plugmark recover" retten, was lesbar ist.',
  'this file cannot be read as a station log: its start is damaged, or it is another file':
    'diese Datei ist nicht als Logbuch lesbar: ihr Anfang ist beschädigt, oder es ist eine andere Datei',
  'another program is writing to the station log': 'ein anderes Programm schreibt gerade in das Logbuch',
  'this is not a station log': 'das ist kein Logbuch',
  'Check that the folder exists and may be written to.':
    'Prüfen, ob es den Ordner gibt und darin geschrieben werden darf.',
  'the file cannot be written to': 'in die Datei kann nicht geschrieben werden',
  'Check the rights on the file and its folder.': 'Die Rechte an der Datei und ihrem Ordner prüfen.',
  'Free some space and try again. The last step was not saved.':
    'Platz schaffen und noch einmal versuchen. Der letzte Schritt wurde nicht gespeichert.',
  'the disk did not accept the data': 'der Datenträger hat die Daten nicht angenommen',
  'Check the disk. The last step was not saved.':
    'Den Datenträger prüfen. Der letzte Schritt wurde nicht gespeichert.',
  '{0} MB, too large for a copy in {1}': '{0} MB, zu groß für eine Kopie in {1}',
  'this log is read-only, and there is no room for the copy that reading needs: {0}':
    'dieses Logbuch ist schreibgeschützt, und für die Kopie, die das Lesen braucht, ist kein Platz: {0}',
  'Free some space, set TMPDIR to a folder with space, or get the right to write.':
    'Platz schaffen, TMPDIR auf einen Ordner mit Platz setzen, oder sich das Schreibrecht geben lassen.',
  'this log is read-only here, and the command must write to it':
    'dieses Logbuch ist hier schreibgeschützt, und der Befehl muss hineinschreiben',
  'Get the right to write to the file and its folder, or run the command at the station.':
    'Sich das Schreibrecht an Datei und Ordner geben lassen, oder den Befehl am Arbeitsplatz ausführen.',
  'a checkpoint of a record': 'ein Prüfpunkt eines Protokolls',
  'its entry {0} differs from the one in the log or in an earlier record':
    'sein Eintrag {0} weicht von dem im Logbuch oder in einem früheren Protokoll ab',
  'The log split in two, as after restoring an old backup. Name a folder with the records of one of them.':
    'Das Logbuch hat sich geteilt, wie nach dem Wiederherstellen einer alten Sicherung. Einen Ordner mit den Protokollen eines der beiden nennen.',
  'the records are from several logs, and no key shows which one is this station':
    'die Protokolle sind aus mehreren Logbüchern, und kein Schlüssel zeigt, welches dieser Arbeitsplatz ist',
  'Name a folder with the records of one station only.':
    'Einen Ordner mit den Protokollen nur eines Arbeitsplatzes nennen.',
  'the file exists; nothing is overwritten': 'die Datei besteht schon; nichts wird überschrieben',
  'Name a new file with --out.': 'Mit --out eine neue Datei nennen.',
  'the first entry of the log is lost, and no valid record contains it':
    'der erste Eintrag des Logbuchs ist verloren, und kein gültiges Protokoll enthält ihn',
  'Restore a backup. If you have none, only the exported records of the jobs remain.':
    'Eine Sicherung wiederherstellen. Gibt es keine, bleiben nur die ausgegebenen Protokolle der Aufträge.',
  'the newest part of the log is damaged: {0} pages that were written behind the damage would be lost':
    'der neueste Teil des Logbuchs ist beschädigt: {0} Seiten, die hinter dem Schaden geschrieben wurden, gingen verloren',
  'Keep station.db and station.db-wal as they are. Save what can be read with "plugmark recover", then put it in place with "plugmark restore".':
    'station.db und station.db-wal lassen, wie sie sind. Mit "plugmark recover" retten, was lesbar ist, und mit "plugmark restore" an seinen Platz legen.',
  'the newest part of the log is missing: the program was stopped before it was taken into station.db':
    'der neueste Teil des Logbuchs fehlt: das Programm wurde beendet, bevor er in station.db übernommen war',
  'Put the file back. If it is lost, so are the entries in it: delete station.db-shm, then "plugmark log check" compares what is left with the checkpoints.':
    'Die Datei zurücklegen. Ist sie verloren, sind es auch ihre Einträge: station.db-shm löschen, dann vergleicht "plugmark log check" das Übrige mit den Prüfpunkten.',
  'a witness is here already': 'hier ist schon ein Zeuge',
  'there is no witness here': 'hier ist kein Zeuge',
  'Make one with "plugmark witness init", or name its folder with --data.':
    'Mit "plugmark witness init" einen anlegen, oder seinen Ordner mit --data nennen.',
  'this is not the file of a witness': 'das ist nicht die Datei eines Zeugen',
  'Name the folder of the witness with --data.': 'Den Ordner des Zeugen mit --data nennen.',
  'the file of the witness cannot be used ({0})': 'die Datei des Zeugen kann nicht verwendet werden ({0})',
  'Check the disk and the rights on the file. Never put back an old copy: the witness would cosign a second history. Make a new witness instead.':
    'Datenträger und Rechte an der Datei prüfen. Nie eine alte Kopie zurücklegen: der Zeuge würde eine zweite Geschichte gegensignieren. Stattdessen einen neuen Zeugen anlegen.',
  'the driver {0} reads a serial port, and the station file names none':
    'der Treiber {0} liest einen seriellen Anschluss, und die Arbeitsplatzdatei nennt keinen',
  'Add "port" to the driver of this tool.': 'Beim Treiber dieses Werkzeugs "port" eintragen.',
  'the tool {0} is not adopted: the station file names no device for it':
    'das Werkzeug {0} ist nicht übernommen: die Arbeitsplatzdatei nennt kein Gerät dafür',
  'Adopt it with plugmark devices adopt ADDRESS --tool {0}.':
    'Übernehmen mit: plugmark devices adopt ADDRESS --tool {0}.',
  'the tool {0} should measure {1}, but its driver measures {2}':
    'das Werkzeug {0} sollte {1} messen, sein Treiber misst aber {2}',
  'Correct the quantity or the driver of the tool in the station file.':
    'In der Arbeitsplatzdatei die Messgröße oder den Treiber des Werkzeugs berichtigen.',
  'nothing heard from {0} within {1} s': 'von {0} war in {1} s nichts zu hören',
  'Switch the tool on, bring it closer and disconnect phones and other programs from it.':
    'Das Werkzeug einschalten, näher bringen, und Telefone und andere Programme davon trennen.',
  'the Bluetooth part of plugmark is not installed on this machine':
    'der Bluetooth-Teil von plugmark ist auf diesem Rechner nicht installiert',
  'Install plugmark again, or run with the simulated tools.':
    'plugmark neu installieren, oder mit den simulierten Werkzeugen arbeiten.',
  'this machine has no Bluetooth support in its kernel (EAFNOSUPPORT), as is usual in containers and WSL':
    'dieser Rechner hat in seinem Kernel kein Bluetooth (EAFNOSUPPORT), wie üblich in Containern und WSL',
  'Run plugmark on the host itself, on a machine with Bluetooth, or run with the simulated tools.':
    'plugmark auf dem Wirtsrechner selbst ausführen, auf einem Rechner mit Bluetooth, oder mit den simulierten Werkzeugen arbeiten.',
  'this user is not allowed to use the Bluetooth adapter':
    'dieser Benutzer darf den Bluetooth-Adapter nicht verwenden',
  'Give the right to the node program; plugmark doctor shows the command.':
    'Dem Node-Programm das Recht geben; plugmark doctor zeigt den Befehl.',
  'the Bluetooth adapter is switched off': 'der Bluetooth-Adapter ist ausgeschaltet',
  'Switch it on (rfkill unblock bluetooth; bluetoothctl power on) and start again.':
    'Einschalten (rfkill unblock bluetooth; bluetoothctl power on) und neu starten.',
  'no Bluetooth adapter answered': 'kein Bluetooth-Adapter hat geantwortet',
  'Plug one in or name another one (bluetoothctl list shows them), or run with the simulated tools.':
    'Einen anschließen oder einen anderen nennen (bluetoothctl list zeigt sie), oder mit den simulierten Werkzeugen arbeiten.',
  'the Bluetooth adapter does not speak Bluetooth Low Energy':
    'der Bluetooth-Adapter spricht kein Bluetooth Low Energy',
  'Use an adapter for Bluetooth 4.0 or later.': 'Einen Adapter für Bluetooth 4.0 oder neuer verwenden.',
  'the Bluetooth adapter is already closed': 'der Bluetooth-Adapter ist schon geschlossen',
  'Start plugmark again.': 'plugmark neu starten.',
  'the Bluetooth adapter could not be opened': 'der Bluetooth-Adapter konnte nicht geöffnet werden',
  'Look at the cause named here, try again as another user or with another adapter, or run with the simulated tools.':
    'Die hier genannte Ursache ansehen, es als anderer Benutzer oder mit einem anderen Adapter versuchen, oder mit den simulierten Werkzeugen arbeiten.',
  'The tool does not send what its profile says: not taken.':
    'Das Werkzeug sendet nicht, was sein Profil sagt: nicht genommen.',
  'Reach the Bluetooth tools with {0} in front of a command.':
    'Die Bluetooth-Werkzeuge sind mit {0} vor einem Befehl erreichbar.',
  'on {0}': 'auf {0}',
  'at {0}': 'unter {0}',
  '{0}: gone for {1} ms': '{0}: {1} ms lang weg',
  'something lies here already, and is not overwritten by a socket':
    'hier liegt schon etwas, und ein Socket überschreibt es nicht',
  'Name another socket, or remove it.': 'Einen anderen Socket nennen, oder es entfernen.',
  'no socket can be made here': 'hier kann kein Socket angelegt werden',
  'Name a socket in a folder that you may write to, such as /tmp.':
    'Einen Socket in einem Ordner nennen, in den Sie schreiben dürfen, etwa /tmp.',
  'judges again the jobs that wait for it, and says how all came out':
    'beurteilt die wartenden Aufträge neu und sagt, wie alle ausgingen',
  'the samples of a job do not give its verdicts, or it could not be judged':
    'die Messpunkte eines Auftrags ergeben nicht seine Urteile, oder er ließ sich nicht beurteilen',
  'how long it is good': 'wie lange es gilt',
  'of this log alone, as "plugmark archive stations" prints it':
    'nur dieses Logbuchs, wie "plugmark archive stations" es ausgibt',
  'whom the token is given to': 'wem das Token gegeben wird',
  'whose records may be read': 'wessen Protokolle gelesen werden dürfen',
  'prints a token with which somebody may ask the archive':
    'gibt ein Token aus, mit dem jemand das Archiv abfragen darf',
  'lists who may ask the archive, and until when': 'listet auf, wer das Archiv abfragen darf und bis wann',
  'whom they were given to': 'wem sie gegeben wurden',
  'whose records he could read': 'wessen Protokolle der Leser lesen konnte',
  'takes back all tokens of a reader': 'nimmt alle Token eines Lesers zurück',
  'so many, the newest': 'so viele, die neuesten',
  'lists what was asked, by whom and when': 'listet auf, was abgefragt wurde, von wem und wann',
  'write every reading that was judged again, as CSV': 'jeden neu beurteilten Messwert als CSV schreiben',
  'the last good check, if the logs leave it open: NUMBER or "NUMBER of DATE"':
    'die letzte gute Prüfung, wenn die Logbücher sie offen lassen: NUMBER oder "NUMBER of DATE"',
  'the archive': 'das Archiv',
  'the serial number of the tool': 'die Seriennummer des Werkzeugs',
  'judges again, over all stations of an archive, what a tool was used for; records nothing':
    'beurteilt über alle Arbeitsplätze eines Archivs neu, wofür ein Werkzeug benutzt wurde; zeichnet nichts auf',
  'the answer as a file that ends in .csv, .xlsx (a workbook) or .parquet':
    'die Antwort als Datei, die auf .csv, .xlsx (eine Arbeitsmappe) oder .parquet endet',
  'all stations of the archive there, instead of one station':
    'alle Arbeitsplätze des Archivs dort, statt eines Arbeitsplatzes',
  'of a serial port: bits a second': 'bei einem seriellen Anschluss: Bits pro Sekunde',
  'as "devices scan" lists it, or a serial port':
    'wie "devices scan" es auflistet, oder ein serieller Anschluss',
  'how long the device is left untouched': 'wie lange das Gerät unberührt bleibt',
  'its Bluetooth address or its serial port; left out: from captures':
    'seine Bluetooth-Adresse oder sein serieller Anschluss; weggelassen: aus Aufnahmen',
  'finds the profile of a device that nobody has documented, from what its display shows':
    'findet das Profil eines Geräts, das niemand beschrieben hat, aus dem, was seine Anzeige zeigt',
  'makes the witness cosign a log; a new key of a log retires the one before it':
    'lässt den Zeugen ein Logbuch gegensignieren; ein neuer Signaturschlüssel eines Logbuchs löst den vorigen ab',
  'plays the tools of a scenario: on a virtual Bluetooth controller, or on pseudo-terminals (with socat)':
    'spielt die Werkzeuge eines Ablaufs: an einem virtuellen Bluetooth-Controller oder an Pseudoterminals (mit socat)',
  'how long a pseudo-terminal waits before it sends': 'wie lange ein Pseudoterminal wartet, bevor es sendet',
  'of a capture from a serial port: the name of the pseudo-terminal':
    'bei einer Aufnahme von einem seriellen Anschluss: der Name des Pseudoterminals',
  'of a Bluetooth capture: the service that it advertises; the busiest unless given':
    'bei einer Bluetooth-Aufnahme: der Dienst, den es anzeigt; der meistbenutzte, wenn nicht angegeben',
  'of a Bluetooth capture: the serial number that the device gives':
    'bei einer Bluetooth-Aufnahme: die Seriennummer, die das Gerät nennt',
  'of a Bluetooth capture: the Unix socket of the virtual controller':
    'bei einer Bluetooth-Aufnahme: der Unix-Socket des virtuellen Controllers',
  'the capture, of "plugmark devices record"': 'die Aufnahme, von "plugmark devices record"',
  'plays a capture back as the device that sent it':
    'spielt eine Aufnahme ab, als das Gerät, das sie gesendet hat',
  'advertises {0}': 'zeigt {0} an',
  'neither a device nor captures are named': 'weder ein Gerät noch Aufnahmen sind genannt',
  'Name the address or the serial port of the device, or give --rest, --figure and --proof.':
    'Die Adresse oder den seriellen Anschluss des Geräts nennen, oder --rest, --figure und --proof angeben.',
  'The log {0} is signed by this key from now on; what its key of before signs is not cosigned any more.':
    'Das Logbuch {0} wird von jetzt an mit diesem Schlüssel signiert; was sein voriger Schlüssel signiert, wird nicht mehr gegensigniert.',
  'the one before it retired|the # before it retired': {
    one: 'der vorige abgelöst',
    other: 'die # vorigen abgelöst',
  },
  'key {0} since {1}': 'Schlüssel {0} seit {1}',
  'this is the key of the witness itself, and nobody is his own witness':
    'das ist der Schlüssel des Zeugen selbst, und niemand ist sein eigener Zeuge',
  'Take what "plugmark log vkey" prints at the station.':
    'Nehmen, was "plugmark log vkey" am Arbeitsplatz ausgibt.',
  'this key of the log was retired here when a newer one was added, and it does not come back':
    'dieser Schlüssel des Logbuchs wurde hier abgelöst, als ein neuerer dazukam, und er kommt nicht zurück',
  'Take the key of now: "plugmark log vkey" at the station. Where the newer one was added by mistake, the station has to make a new key first: plugmark keys rotate':
    'Den jetzigen Schlüssel nehmen: "plugmark log vkey" am Arbeitsplatz. Wurde der neuere aus Versehen hinzugefügt, muss der Arbeitsplatz zuerst einen neuen Schlüssel erzeugen: plugmark keys rotate',
  'expected an address such as c2:00:00:00:00:01': 'erwartet wird eine Adresse wie c2:00:00:00:00:01',
  'expected a name that begins with plugmark-driver-':
    'erwartet wird ein Name, der mit plugmark-driver- beginnt',
  'expected a version such as 1.0.0': 'erwartet wird eine Version wie 1.0.0',
  'expected a JavaScript file of the package': 'erwartet wird eine JavaScript-Datei des Pakets',
  'expected a figure above 0': 'erwartet wird eine Zahl über 0',
  'expected a decimal figure in quotes, such as "0.01"':
    'erwartet wird eine Dezimalzahl in Anführungszeichen, etwa "0.01"',
  'expected a figure other than 0': 'erwartet wird eine Zahl, die nicht 0 ist',
  'expected a decimal figure in quotes, such as "0.02"':
    'erwartet wird eine Dezimalzahl in Anführungszeichen, etwa "0.02"',
  'expected up to 32 printable characters of ASCII': 'erwartet werden bis zu 32 druckbare ASCII-Zeichen',
  'expected a UUID of 4 digits, or of 32 with dashes':
    'erwartet wird eine UUID aus 4 Ziffern, oder aus 32 mit Bindestrichen',
  'expected whole bytes in hexadecimal digits': 'erwartet werden ganze Bytes in hexadezimalen Ziffern',
  'expected a UUID in small digits without dashes':
    'erwartet wird eine UUID in Kleinbuchstaben ohne Bindestriche',
  'expected as many angles as counts': 'erwartet werden so viele Winkel wie Zählwerte',
  'expected as many counts as stamps': 'erwartet werden so viele Zählwerte wie Zeitmarken',
  'below 0 where bit {0} of byte {1} is set': 'unter 0, wo Bit {0} von Byte {1} gesetzt ist',
  'big end first': 'höchstwertiges Byte zuerst',
  'little end first': 'niederwertigstes Byte zuerst',
  '{0} at byte {1} ({2})': '{0} ab Byte {1} ({2})',
  '{0} samples': '{0} Messpunkte',
  'Measure a large gap and hold it.': 'Einen großen Elektrodenabstand messen und halten.',
  'Measure a small gap and hold it.': 'Einen kleinen Elektrodenabstand messen und halten.',
  'Measure another gap and hold it.': 'Einen anderen Elektrodenabstand messen und halten.',
  'Pull once against the tightening direction; give that figure with a minus.':
    'Einmal gegen die Anziehrichtung ziehen; diesen Wert mit einem Minus angeben.',
  'Pull once more, to any other torque: it proves the profile.':
    'Noch einmal ziehen, auf irgendein anderes Drehmoment: es beweist das Profil.',
  'Pull once to a large torque.': 'Einmal auf ein großes Drehmoment ziehen.',
  'Pull once to a small torque and let go.': 'Einmal auf ein kleines Drehmoment ziehen und loslassen.',
  '{0} figures did not tell these apart: {1}.': '{0} Werte haben diese nicht unterschieden: {1}.',
  'A number follows the figures, but bytes {0} of the frame change and nothing explains them. They could say that the number does not count, so no profile is written.':
    'Eine Zahl folgt den Werten, aber die Bytes {0} des Telegramms ändern sich, und nichts erklärt sie. Sie könnten sagen, dass die Zahl nicht zählt; darum wird kein Profil geschrieben.',
  'Give one more figure, clearly above {0} {1}.': 'Noch einen Wert angeben, deutlich über {0} {1}.',
  'No number in its frames follows the figures. The device may encrypt what it sends, or compute it in a way that cannot be described.':
    'Keine Zahl in seinen Telegrammen folgt den Werten. Das Gerät verschlüsselt vielleicht, was es sendet, oder berechnet es auf eine Art, die sich nicht beschreiben lässt.',
  'No way was found to cut what it sends into frames. It may send too little, or nothing regular.':
    'Es fand sich kein Weg, was es sendet in Telegramme zu zerlegen. Vielleicht sendet es zu wenig oder nichts Regelmäßiges.',
  'Pull once against the tightening direction, and give that figure with a minus.':
    'Einmal gegen die Anziehrichtung ziehen und diesen Wert mit einem Minus angeben.',
  'The only layout that explains the others ({0}) does not read the figure that was kept back: {1} {2}. Nothing was written.':
    'Der einzige Aufbau, der die anderen erklärt ({0}), liest den zurückgehaltenen Wert nicht: {1} {2}. Nichts wurde geschrieben.',
  'Three figures at least are needed, and one to prove it with; there are {0}.':
    'Mindestens drei Werte sind nötig, und einer, um es zu beweisen; es gibt {0}.',
  'figure {0} of the line, in {1}': 'Zahl {0} der Zeile, in {1}',
  'Ask again.': 'Noch einmal abfragen.',
  'Ask for a shorter time with --from and --to, or for less.':
    'Mit --from und --to eine kürzere Zeit abfragen, oder weniger.',
  'Ask whoever runs the archive for one (plugmark archive reader), and give it in {0}.':
    'Beim Betreiber des Archivs eines erbitten (plugmark archive reader) und es in {0} angeben.',
  'Bring the program here and at the archive to the same version.':
    'Das Programm hier und beim Archiv auf dieselbe Version bringen.',
  'Have it looked at by whoever runs the archive.': 'Den Betreiber des Archivs nachsehen lassen.',
  'Not in the answer: the newest entries of {0}. Have it looked at by whoever runs the archive: plugmark archive check.':
    'Nicht in der Antwort: die neuesten Einträge von {0}. Den Betreiber des Archivs nachsehen lassen: plugmark archive check.',
  'Try again in a minute.': 'In einer Minute noch einmal versuchen.',
  'its answer broke off': 'seine Antwort brach ab',
  'the answer would be too long': 'die Antwort wäre zu lang',
  'the archive did not answer the question: it answered {0}':
    'das Archiv hat die Frage nicht beantwortet: es antwortete {0}',
  'the archive does not know the token of this reader, or its time is over':
    'das Archiv kennt das Token dieses Lesers nicht, oder seine Zeit ist abgelaufen',
  'too many questions were asked in a short time': 'in kurzer Zeit wurden zu viele Fragen gestellt',
  'what the archive answered is not what this version of the program reads':
    'was das Archiv antwortete, ist nicht, was diese Version des Programms liest',
  '# job judged again|# jobs judged again': {
    one: '# Auftrag neu beurteilt',
    other: '# Aufträge neu beurteilt',
  },
  'NOT JUDGED: it is longer than a record may be':
    'NICHT BEURTEILT: er ist länger, als ein Protokoll sein darf',
  'NOT JUDGED: its entries are no job that a bench wrote, or of a newer version of the program':
    'NICHT BEURTEILT: seine Einträge sind kein Auftrag, den ein Arbeitsplatz schrieb, oder von einer neueren Version des Programms',
  'NOT JUDGED: no version of the program has rules of that name':
    'NICHT BEURTEILT: keine Version des Programms hat Regeln dieses Namens',
  'NOT THE SAME: the samples do not give its event {0} ({1})':
    'NICHT DIESELBEN: die Messpunkte ergeben nicht sein Ereignis {0} ({1})',
  'not judged: its rules are of a newer version of the program':
    'nicht beurteilt: seine Regeln sind von einer neueren Version des Programms',
  'the same verdicts': 'dieselben Urteile',
  '{0}, opened in entry {1}: {2}': '{0}, eröffnet in Eintrag {1}: {2}',
  '{0}: {1}, {2} with the same verdicts': '{0}: {1}, {2} mit denselben Urteilen',
  'Make another one when its time is over.': 'Ein neues ausgeben, wenn seine Zeit abgelaufen ist.',
  'Nobody has asked this archive yet.': 'Noch niemand hat dieses Archiv abgefragt.',
  'Nobody may ask this archive.': 'Niemand darf dieses Archiv abfragen.',
  'See "plugmark archive readers".': 'Siehe "plugmark archive readers".',
  'See "plugmark archive stations".': 'Siehe "plugmark archive stations".',
  'Until {0} whoever has it reads all records of {1}, names and plates with them. There: {2}=TOKEN plugmark ask --archive URL':
    'Bis {0} liest, wer es hat, alle Protokolle von {1}, mit Namen und Kennzeichen. Dort: {2}=TOKEN plugmark ask --archive URL',
  '"{0}" has no token': '"{0}" hat kein Token',
  'a token is good for {0} days at most': 'ein Token gilt höchstens {0} Tage',
  'all stations': 'alle Arbeitsplätze',
  'may read': 'darf lesen',
  'no station of "{0}" has joined': 'von "{0}" ist kein Arbeitsplatz beigetreten',
  question: 'Frage',
  reader: 'Leser',
  tenant: 'Mandant',
  'that tenant has no such log': 'dieser Mandant hat kein solches Logbuch',
  'time (UTC)': 'Zeit (UTC)',
  until: 'bis',
  '{0} reads nothing more. What was read before is in "plugmark archive reads".':
    '{0} liest nichts mehr. Was vorher gelesen wurde, steht in "plugmark archive reads".',
  'Ask whoever runs it for one (plugmark archive reader), and give it in {0}.':
    'Bei seinem Betreiber eines erbitten (plugmark archive reader) und es in {0} angeben.',
  'Token of a reader of {0}: ': 'Token eines Lesers von {0}: ',
  'This is the word of the archive {0}, and no proof. What a station has not shipped yet is not in it.':
    'Das sagt das Archiv {0}, und es ist kein Nachweis. Was ein Arbeitsplatz noch nicht gesendet hat, fehlt darin.',
  'an archive answers only whoever has the token of a reader':
    'ein Archiv antwortet nur dem, der das Token eines Lesers hat',
  'Reach it with {0} in front of a command. Ctrl-C ends it.':
    'Erreichbar mit {0} vor einem Befehl. Strg-C beendet es.',
  'Record the device while it sends.': 'Das Gerät aufzeichnen, während es sendet.',
  'somebody listens: it plays from the beginning': 'jemand hört zu: es spielt von Anfang an',
  'the device': 'das Gerät',
  'the link ended before all was sent': 'die Verbindung endete, bevor alles gesendet war',
  '{0} at {1}, serial number {2}': '{0} unter {1}, Seriennummer {2}',
  '{0} on {1}; it sends in {2} s': '{0} auf {1}; es sendet in {2} s',
  '{0} packets sent': '{0} Pakete gesendet',
  'Close the gauge, or leave it as it is. Enter, and leave it untouched. ':
    'Die Lehre schließen oder lassen, wie sie ist. Enter, und sie unberührt lassen. ',
  'Give one line for each question, with the figure of the display.':
    'Für jede Frage eine Zeile angeben, mit dem Wert der Anzeige.',
  'Keep it near, switched on and charged, and begin again.':
    'Es in der Nähe halten, eingeschaltet und geladen, und von vorn beginnen.',
  'Lay the wrench down. Enter, and leave it untouched. ':
    'Den Drehmomentschlüssel hinlegen. Enter, und ihn unberührt lassen. ',
  'Linked with {0}.': 'Verbunden mit {0}.',
  'Listening at {0}, {1} baud.': 'Höre auf {0}, {1} Baud.',
  'One layout explains all of it so far: {0}.': 'Ein Aufbau erklärt bisher alles: {0}.',
  'Switch it on and set it to send by itself. One that sends only what it is asked for cannot be taught.':
    'Es einschalten und so einstellen, dass es von selbst sendet. Eines, das nur auf Anfrage sendet, kann nicht angelernt werden.',
  'That is not a figure. Type it as the display showed it, for example 25.34; "back" takes the last one back.':
    'Das ist keine Zahl. Wie auf der Anzeige eingeben, zum Beispiel 25.34; "back" nimmt die letzte zurück.',
  'Was the last figure mistyped? Type "back" to give it again; Enter ends. ':
    'War der letzte Wert vertippt? "back" eingeben, um ihn neu anzugeben; Enter beendet. ',
  'the device has gone in the middle of the lesson': 'das Gerät ist mitten im Anlernen verschwunden',
  'the device sent nothing while it lay untouched': 'das Gerät sendete nichts, während es unberührt lag',
  'this is not a figure': 'das ist keine Zahl',
  '{0} layouts explain all of it so far:': '{0} Aufbauten erklären bisher alles:',
  '{0}. {1} Then type what its display showed, in {2}: ':
    '{0}. {1} Dann eingeben, was die Anzeige zeigte, in {2}: ',
  'Cycles: gap readings or pulls on a plug since the certificate or the first use, re-hits, checks and low strokes too; or the counter of the tool where that is higher. Pulls on no plug do not count.':
    'Zyklen: Abstandsmessungen oder Züge an einer Zündkerze seit dem Kalibrierschein oder dem ersten Einsatz, auch Nachziehen, Prüfzüge und niedrige Züge; oder der Zähler des Werkzeugs, wo er höher steht. Züge an keiner Zündkerze zählen nicht.',
  'Begin the study anew: this order was not drawn for its plan.':
    'Die Studie neu beginnen: diese Reihenfolge wurde nicht für ihren Plan gezogen.',
  'Measure them all: a study with holes says nothing about who differs from whom.':
    'Alle messen: eine Studie mit Lücken sagt nichts darüber, wer von wem abweicht.',
  'there are turns too many or too few': 'es gibt Durchgänge zu viel oder zu wenig',
  'turn {0} does not name each part once': 'Durchgang {0} nennt nicht jedes Teil einmal',
  '{0} of {1} readings are missing': '{0} von {1} Messwerten fehlen',
  'See "plugmark gauge-study list".': 'Siehe "plugmark gauge-study list".',
  'See "plugmark gauge-study show {0}".': 'Siehe "plugmark gauge-study show {0}".',
  'Start a new one. The readings of this one stay in the log.':
    'Eine neue beginnen. Die Messwerte dieser bleiben im Logbuch.',
  'this station has no gauge study of this number':
    'dieser Arbeitsplatz hat keine Messmittelstudie dieser Nummer',
  'this study is finished and recorded': 'diese Studie ist beendet und aufgezeichnet',
  'this study was given up: {0}': 'diese Studie wurde aufgegeben: {0}',
  '# attempt.|# attempts.': { one: '# Versuch.', other: '# Versuche.' },
  '# job.|# jobs.': { one: '# Auftrag.', other: '# Aufträge.' },
  '# row|# rows': { one: '# Zeile', other: '# Zeilen' },
  'CSV, JSON or a file at once': 'CSV, JSON oder eine Datei zugleich',
  'Choose one of them.': 'Eines davon wählen.',
  'Let it end in .csv, .xlsx or .parquet.': 'Auf .csv, .xlsx oder .parquet enden lassen.',
  'Name the earlier day first.': 'Den früheren Tag zuerst nennen.',
  'Written: {0}, {1}': 'Geschrieben: {0}, {1}',
  exceptions: 'Ausnahmen',
  proofs: 'Nachweise',
  'the name of this file does not say what it is to be':
    'der Name dieser Datei sagt nicht, was sie werden soll',
  value: 'Wert',
  what: 'was',
  '{0} is after {1}': '{0} liegt nach {1}',
  '  in date': '  gültig',
  '  on data sheet': '  nach Datenblatt',
  '! DUE': '! FÄLLIG',
  '! OUT OF TOLERANCE': '! AUSSER TOLERANZ',
  '* Nobody named a day: {0} months after the calibration or the first use are usual. Give the tool an interval in the station file for another.':
    '* Niemand hat einen Tag genannt: üblich sind {0} Monate nach der Kalibrierung oder dem ersten Einsatz. Für einen anderen dem Werkzeug in der Arbeitsplatzdatei ein Intervall geben.',
  '? not used yet, no certificate': '? noch nicht benutzt, kein Kalibrierschein',
  'A tool gets a due day with its certificate or with its first job.':
    'Ein Werkzeug bekommt einen Fälligkeitstag mit seinem Kalibrierschein oder mit seinem ersten Auftrag.',
  'A tool gets onto the calendar with its first job.':
    'Ein Werkzeug kommt mit seinem ersten Auftrag in den Kalender.',
  'Drift: by its certificates {0} may lie beyond what is permitted from {1} on; see "plugmark drift {2}".':
    'Drift: nach seinen Kalibrierscheinen kann {0} ab {1} außerhalb des Zulässigen liegen; siehe "plugmark drift {2}".',
  'Give the shortest interval first, one day or more.':
    'Das kürzeste Intervall zuerst angeben, einen Tag oder mehr.',
  'On data sheet: nobody calibrated the tool. Its data sheet says what it was when it was made, and not what it is now.':
    'Nach Datenblatt: niemand hat das Werkzeug kalibriert. Sein Datenblatt sagt, was es war, als es hergestellt wurde, und nicht, was es jetzt ist.',
  'Out of tolerance: {0} ({1}) on {2}, {3}; see "plugmark impact show {4}". It is due now. A certificate of that day or later makes it fit again.':
    'Außer Toleranz: {0} ({1}) am {2}, {3}; siehe "plugmark impact show {4}". Es ist jetzt fällig. Ein Kalibrierschein von diesem Tag oder später macht es wieder brauchbar.',
  'Written: {0}': 'Geschrieben: {0}',
  calibrated: 'kalibriert',
  cycles: 'Zyklen',
  due: 'fällig',
  'intervals from {0} to {1} days leave no room': 'Intervalle von {0} bis {1} Tagen lassen keinen Raum',
  'last used': 'zuletzt benutzt',
  longer: 'länger',
  shorter: 'kürzer',
  unchanged: 'unverändert',
  'next interval': 'nächstes Intervall',
  'no tool of this station has a due day, so there is nothing to write':
    'kein Werkzeug dieses Arbeitsplatzes hat einen Fälligkeitstag, also gibt es nichts zu schreiben',
  'no tool was ever used at this station': 'an diesem Arbeitsplatz wurde noch kein Werkzeug benutzt',
  '{0} by cycles': '{0} nach Zyklen',
  '{0}, drift': '{0}, Drift',
  '{0}, now': '{0}, jetzt',
  '{0}, on data sheet': '{0}, nach Datenblatt',
  '~ in date': '~ gültig',
  '~ soon': '~ bald',
  'groups written': 'Gruppen geschrieben',
  ' and {0} more': ' und {0} weitere',
  '# first attempt|# first attempts': { one: '# ersten Versuch', other: '# ersten Versuchen' },
  '# group|# groups': { one: '# Gruppe', other: '# Gruppen' },
  'Ask for a longer period, or for less; "plugmark ask --attempts" shows what there is.':
    'Einen längeren Zeitraum abfragen, oder weniger einschränken; "plugmark ask --attempts" zeigt, was es gibt.',
  'For charts name one group: --specification, and a tool, a technician or a cylinder. Or write all of them with --out.':
    'Für Diagramme eine Gruppe nennen: --specification, und ein Werkzeug, einen Mechaniker oder einen Zylinder. Oder mit --out alle schreiben.',
  'Leave it out for one line a specification.': 'Für eine Zeile je Vorgabe weglassen.',
  'Left out: {0} ({1}) with {2}.': 'Weggelassen: {0} ({1}) mit {2}.',
  'No attempt matches.': 'Kein Versuch passt.',
  'No job has an attempt yet.': 'Noch kein Auftrag hat einen Versuch.',
  'There are: {0}{1}.': 'Es gibt: {0}{1}.',
  'expected {0}': 'erwartet: {0}',
  'no attempt matches, so there is nothing to write': 'kein Versuch passt, also gibt es nichts zu schreiben',
  'no job used a specification whose key starts with "{0}"':
    'kein Auftrag benutzte eine Vorgabe, deren Schlüssel mit "{0}" beginnt',
  '{0}: {1} of {2} groups; they say nothing about an engine.':
    '{0}: {1} von {2} Gruppen; sie sagen nichts über einen Motor.',
  'Save it as UTF-8.': 'Als UTF-8 speichern.',
  'the calibration certificate is not UTF-8 text': 'der Kalibrierschein ist kein UTF-8-Text',
  '! CHANGED': '! VERÄNDERT',
  '! MISSING': '! FEHLT',
  'Keep the original again: "plugmark certificates keep FILE", with --for NUMBER for a scan. The same file replaces the missing or changed one; another file is kept beside it.':
    'Das Original wieder aufbewahren: "plugmark certificates keep FILE", mit --for NUMBER für einen Scan. Dieselbe Datei ersetzt die fehlende oder veränderte; eine andere wird daneben aufbewahrt.',
  'Name it with --for NUMBER, the number that "plugmark calendar" shows.':
    'Mit --for NUMBER benennen, der Nummer, die "plugmark calendar" zeigt.',
  'Name the files, or the station file with --station.':
    'Die Dateien nennen, oder mit --station die Arbeitsplatzdatei.',
  'No certificate is kept yet.': 'Noch kein Kalibrierschein ist aufbewahrt.',
  'Nothing of it was kept. Name the certificate, or scan it again.':
    'Nichts davon wurde aufbewahrt. Den Kalibrierschein nennen, oder ihn neu scannen.',
  'Use the number that "plugmark calendar" shows.': 'Die Nummer nehmen, die "plugmark calendar" zeigt.',
  'as kept': 'wie aufbewahrt',
  'kept again': 'wieder aufbewahrt',
  kept: 'aufbewahrt',
  'no tool of this station has a certificate with this number':
    'kein Werkzeug dieses Arbeitsplatzes hat einen Kalibrierschein mit dieser Nummer',
  'only a station file lists certificates': 'nur eine Arbeitsplatzdatei führt Kalibrierscheine auf',
  'the file is empty': 'die Datei ist leer',
  'this file is neither XML nor JSON, so it does not say which certificate it is':
    'diese Datei ist weder XML noch JSON, also sagt sie nicht, welcher Kalibrierschein sie ist',
  'was kept already': 'war schon aufbewahrt',
  'Gaps as delivered, limits {0} to {1} mm': 'Elektrodenabstände bei Lieferung, Grenzen {0} bis {1} mm',
  'Left out: {0} gaps that were SIMULATED or REPLAYED.':
    'Weggelassen: {0} Elektrodenabstände, die SIMULIERT oder ABGESPIELT waren.',
  'No gap of a new plug matches.': 'Kein Elektrodenabstand einer neuen Zündkerze passt.',
  'Plugs not measured were tried with wires. "At worst" counts those as out of gap that wires could not decide.':
    'Nicht gemessene Zündkerzen wurden mit Drähten geprüft. "Schlimmstens" zählt die als außerhalb, über die die Drähte nicht entscheiden konnten.',
  largest: 'größter',
  smallest: 'kleinster',
  lot: 'Charge',
  'out of gap (95 %)': 'außerhalb (95 %)',
  part: 'Teil',
  plugs: 'Zündkerzen',
  '{0}: this says nothing about real plugs.': '{0}: das sagt nichts über echte Zündkerzen.',
  '  In {0} {1}: of these only the figures are in it; what names the vehicles is withheld.':
    '  In {0} {1}: davon sind nur die Zahlen darin; was die Fahrzeuge nennt, ist zurückgehalten.',
  '  Left out: {0}, without a VIN but with the same plate or fleet number. Name --plate or --fleet to include them.':
    '  Weggelassen: {0}, ohne FIN, aber mit demselben Kennzeichen oder derselben Fuhrparknummer. --plate oder --fleet nennen, um sie aufzunehmen.',
  'Give it with --claim.': 'Mit --claim angeben.',
  'Look with "plugmark ask"; an older job may have only its plate.':
    'Mit "plugmark ask" nachsehen; ein älterer Auftrag hat vielleicht nur das Kennzeichen.',
  'Name it with --vin, --plate or --fleet.': 'Mit --vin, --plate oder --fleet nennen.',
  'Name the one of the claim with --vin.': 'Das der Reklamation mit --vin nennen.',
  'a claim has a number or a name of 1 to 80 characters':
    'eine Reklamation hat eine Nummer oder einen Namen von 1 bis 80 Zeichen',
  'no vehicle is named': 'kein Fahrzeug ist genannt',
  'these jobs are of {0} vehicles: {1}': 'diese Aufträge sind von {0} Fahrzeugen: {1}',
  'this station has no job on this vehicle in that time':
    'dieser Arbeitsplatz hat in dieser Zeit keinen Auftrag an diesem Fahrzeug',
  'See "plugmark calendar" for the tools of this station.':
    'Die Werkzeuge dieses Arbeitsplatzes zeigt "plugmark calendar".',
  'neither the log nor the station file has a tool of this name or serial number':
    'weder das Logbuch noch die Arbeitsplatzdatei hat ein Werkzeug dieses Namens oder dieser Seriennummer',
  'Written into {0}: {1}': 'Geschrieben in {0}: {1}',
  '; done again since': '; seither neu gemacht',
  "at the end of the tool's scale": 'am Ende der Skala des Werkzeugs',
  'by angle': 'nach Drehwinkel',
  'closed with work open': 'mit offener Arbeit abgeschlossen',
  'cylinder {0}, ': 'Zylinder {0}, ',
  'cylinder {0}, gap reading {1}': 'Zylinder {0}, Abstandsmessung {1}',
  'cylinder {0}, pull {1}': 'Zylinder {0}, Zug {1}',
  'impact assessment {0} on {1} ({2}): {3}, {4}': 'Auswirkungsbewertung {0} zu {1} ({2}): {3}, {4}',
  'nobody said what it was': 'niemand hat gesagt, was es war',
  'not decided': 'nicht entschieden',
  'too far out': 'zu weit daneben',
  'too high': 'zu hoch',
  'too low': 'zu niedrig',
  '{0} used although {1}': '{0} benutzt, obwohl: {1}',
  '{0}: OUT OF ORDER, not proven by itself{1}': '{0}: AUSSER DER REIHE, für sich nicht nachgewiesen{1}',
  '{0}: OUT OF ORDER{1}': '{0}: AUSSER DER REIHE{1}',
  '--since "{0}" may mean {1}': '--since "{0}" kann {1} meinen',
  'Say which one counts: {0}. An earlier one looks back further.':
    'Sagen, welche zählt: {0}. Eine frühere blickt weiter zurück.',
  'certificate {0} of {1} was taken up again after {2} of {3}':
    'Kalibrierschein {0} vom {1} wurde nach {2} vom {3} wieder aufgenommen',
  'certificates {0} are of one day, {1}': 'die Kalibrierscheine {0} sind von einem Tag, {1}',
  'the log has no certificate {0} of this tool from before {1}':
    'das Logbuch hat keinen Kalibrierschein {0} dieses Werkzeugs von vor dem {1}',
  '{0}, so nobody can tell which was the last good check':
    '{0}; also weiß niemand, welche die letzte gute Prüfung war',
  'does not hold itself, see {0}': 'hält selbst nicht, siehe {0}',
  'has no proof of the gap of cylinder {0}': 'hat keinen Nachweis des Elektrodenabstands von Zylinder {0}',
  'has no proof of the torque of cylinder {0}': 'hat keinen Nachweis des Drehmoments von Zylinder {0}',
  'is not complete': 'ist nicht vollständig',
  replayed: 'abgespielten',
  'rests on {0} figures, and proves nothing': 'beruht auf {0} Werten und weist nichts nach',
  simulated: 'simulierten',
  'used {0}, which was out of tolerance': 'benutzte {0}, das außer Toleranz war',
  'Give the file of what was found of this tool.': 'Die Datei des Befunds dieses Werkzeugs angeben.',
  'It has: {0}.': 'Vorhanden: {0}.',
  'Without a serial number nobody can tell which tool was used; look at its jobs with "plugmark ask --tool".':
    'Ohne Seriennummer weiß niemand, welches Werkzeug benutzt wurde; seine Aufträge mit "plugmark ask --tool" ansehen.',
  'it is dated {0}, after today, {1}': 'er ist vom {0}, nach heute, dem {1}',
  'it is dated {0}, and {1} ({2}) is in the log only from {3} on':
    'er ist vom {0}, und {1} ({2}) ist erst ab {3} im Logbuch',
  'it is for serial number {0}; tool {1} has none in the log':
    'er ist für Seriennummer {0}; Werkzeug {1} hat im Logbuch keine',
  'the log of this station has no tool of that name':
    'das Logbuch dieses Arbeitsplatzes hat kein Werkzeug dieses Namens',
  'Decide about each, for example: plugmark impact decide {0} {1} --as {2} --because "..." --by NAME':
    'Über jeden entscheiden, zum Beispiel: plugmark impact decide {0} {1} --as {2} --because "..." --by NAME',
  'The decisions stand. Assess again if something new was found.':
    'Die Entscheidungen bleiben. Neu bewerten, wenn etwas Neues gefunden wurde.',
  'There is nothing more to do.': 'Es ist nichts mehr zu tun.',
  'this impact assessment was closed by {0} on {1}':
    'diese Auswirkungsbewertung wurde von {0} am {1} abgeschlossen',
  '{0} of {1} jobs are still open: {2} not decided, {3} recalled and not redone':
    '{0} von {1} Aufträgen sind noch offen: {2} nicht entschieden, {3} zurückgerufen und nicht neu gemacht',
  '; it stays open until it is redone': '; er bleibt offen, bis er neu gemacht ist',
  '; they stay open until they are redone': '; sie bleiben offen, bis sie neu gemacht sind',
  'Close it with: plugmark impact close {0} --because "..." --by NAME':
    'Abschließen mit: plugmark impact close {0} --because "..." --by NAME',
  'Impact assessment {0} is closed. Its paper: plugmark impact show {1} --out FOLDER':
    'Auswirkungsbewertung {0} ist abgeschlossen. Ihr Dokument: plugmark impact show {1} --out FOLDER',
  'Leave it out, or decide redone.': 'Weglassen, oder redone entscheiden.',
  'List them with "plugmark impact show {0}".': 'Mit "plugmark impact show {0}" auflisten.',
  'Name jobs, or use --undecided doubtful, out or any; see "plugmark impact show {0}".':
    'Aufträge nennen, oder --undecided doubtful, out oder any nehmen; siehe "plugmark impact show {0}".',
  'No impact assessment.': 'Keine Auswirkungsbewertung.',
  OPEN: 'OFFEN',
  assessed: 'bewertet',
  'expected one of: {0}': 'erwartet eines von: {0}',
  'it names the job that did it again, which only --as redone has':
    'es nennt den Auftrag, der es neu gemacht hat; den hat nur --as redone',
  'job {0} is not among the jobs that this impact assessment touches':
    'Auftrag {0} ist nicht unter denen, die diese Auswirkungsbewertung betrifft',
  'no job is named, or all of them are decided': 'kein Auftrag ist genannt, oder über alle ist entschieden',
  '{0} may mean {1}': '{0} kann {1} meinen',
  '{0}: {1}{2}. {3} of {4} still open.': '{0}: {1}{2}. {3} von {4} noch offen.',
  'doubtful on cylinder {0}': 'zweifelhaft an Zylinder {0}',
  'out on cylinder {0}': 'außerhalb an Zylinder {0}',
  '{0}: of its job {1} of {2}, {3}. When this job is complete: plugmark impact decide {4} {5} --as redone --because TEXT --by NAME':
    '{0}: zu seinem Auftrag {1} vom {2}, {3}. Wenn dieser Auftrag vollständig ist: plugmark impact decide {4} {5} --as redone --because TEXT --by NAME',
  '{0}: {1} ({2}) was out of tolerance on {3}; {4}.': '{0}: {1} ({2}) war am {3} außer Toleranz; {4}.',
  'Do it again in a job with the same VIN, plate or fleet number and a fit tool, and name that job with --in. Or decide inform or accept, and say why.':
    'In einem Auftrag mit derselben FIN, demselben Kennzeichen oder derselben Fuhrparknummer und einem brauchbaren Werkzeug neu machen und diesen mit --in nennen. Oder inform oder accept entscheiden und sagen warum.',
  'it is not redone: {0}': 'er ist nicht neu gemacht: {0}',
  'job {0} {1}': 'Auftrag {0} {1}',
  'the log holds no later job on that vehicle':
    'das Logbuch enthält keinen späteren Auftrag an diesem Fahrzeug',
  'the log holds no later job {0} on that vehicle':
    'das Logbuch enthält keinen späteren Auftrag {0} an diesem Fahrzeug',
  '{0}, job {1}': '{0}, Auftrag {1}',
  'List them with "plugmark impact list".': 'Mit "plugmark impact list" auflisten.',
  'this station has no impact assessment of that number':
    'dieser Arbeitsplatz hat keine Auswirkungsbewertung dieser Nummer',
  'Since {0}: {1} with {2} ({3}) as it was found, in no impact assessment: {4}{5}. Assess again with the same file: plugmark impact {6} --as-found FILE --by NAME':
    'Seit {0}: {1} mit {2} ({3}) im gefundenen Zustand, in keiner Auswirkungsbewertung: {4}{5}. Mit derselben Datei neu bewerten: plugmark impact {6} --as-found FILE --by NAME',
  'Still to be recorded and decided at {0}: plugmark impact {1} --as-found FILE --by NAME':
    'Noch aufzuzeichnen und zu entscheiden bei {0}: plugmark impact {1} --as-found FILE --by NAME',
  'Take the certificate of this tool.': 'Den Kalibrierschein dieses Werkzeugs nehmen.',
  'The survey records nothing.': 'Die Umschau zeichnet nichts auf.',
  'Used in that time at {0} of {1} stations.': 'In dieser Zeit an {0} von {1} Arbeitsplätzen benutzt.',
  attempts: 'Versuche',
  cylinders: 'Zylinder',
  day: 'Tag',
  'decided there': 'dort entschieden',
  doubtful: 'zweifelhaft',
  'it is of {0}, and not of {1}': 'er ist von {0} und nicht von {1}',
  'its first use on {0}': 'seinem ersten Einsatz am {0}',
  'jobs touched': 'betroffene Aufträge',
  'not recorded': 'nicht aufgezeichnet',
  'not yet': 'noch nicht',
  out: 'außerhalb',
  'proofs still in': 'Nachweise noch innerhalb',
  'recorded there': 'dort aufgezeichnet',
  sort: 'Art',
  '{0}, by what {1} of {2} found: everything since {3} judged again.':
    '{0}, nach dem Befund {1} vom {2}: alles seit {3} neu beurteilt.',
  '{0}: it says nothing about real engines.': '{0}: das sagt nichts über echte Motoren.',
  'It did not move since {0}, as far as the uncertainty of both can tell.':
    'Es hat sich seit {0} nicht verstellt, soweit die Messunsicherheit beider das zeigen kann.',
  'It did not move since {0}, as far as the uncertainty of both can tell; its errors are smaller now.':
    'Es hat sich seit {0} nicht verstellt, soweit die Messunsicherheit beider das zeigen kann; seine Abweichungen sind jetzt kleiner.',
  'It moved at {0} of {1} points since {2}, by more than the uncertainty of both.':
    'Es hat sich an {0} von {1} Punkten seit {2} verstellt, um mehr als die Messunsicherheit beider.',
  'Jobs that went on since are in both: {0}. A decision in one counts in the other.':
    'Aufträge, die seither weitergingen, sind in beiden: {0}. Eine Entscheidung in einer zählt in der anderen.',
  'Nothing was written, and jobs still open with it. Give it the certificate of that calibration; check serial number and dates. "plugmark ask --tool" shows when it was used.':
    'Nichts wurde geschrieben, und es eröffnet weiter Aufträge. Ihm den Kalibrierschein dieser Kalibrierung geben; Seriennummer und Daten prüfen. "plugmark ask --tool" zeigt, wann es benutzt wurde.',
  'See "plugmark impact show {0}".': 'Siehe "plugmark impact show {0}".',
  'That check and this finding have one number. If they are one calibration, date the finding {0} too, and assess again.':
    'Diese Prüfung und dieser Befund haben eine Nummer. Sind sie eine Kalibrierung, den Befund ebenfalls auf {0} datieren und neu bewerten.',
  'The log holds no good check before it, so everything since its first use was judged again.':
    'Das Logbuch enthält davor keine gute Prüfung, also wurde alles seit dem ersten Einsatz neu beurteilt.',
  'readings judged again': 'Messwerte neu beurteilt',
  'the log holds no attempt with it from {0} on that the finding of {1} can put in question':
    'das Logbuch enthält ab {0} keinen Versuch damit, den der Befund vom {1} in Frage stellen kann',
  'this file was assessed on {0} by {1}, and nothing was measured with the tool in that state since':
    'diese Datei wurde am {0} von {1} bewertet, und seither wurde mit dem Werkzeug in diesem Zustand nichts gemessen',
  '{0} ({1}) judged {2} to {3} as well. Jobs in both: {4}; decide about them in each.':
    '{0} ({1}) hat {2} bis {3} ebenfalls beurteilt. Aufträge in beiden: {4}; über sie in jeder entscheiden.',
  '{0} goes on from {1} on the same file. It holds only what was entered since, or lies further back.':
    '{0} setzt {1} zur selben Datei fort. Sie enthält nur, was seither eingetragen wurde oder weiter zurückliegt.',
  '{0} of {1}': '{0} vom {1}',
  '{0}, serial number {1}': '{0}, Seriennummer {1}',
  'OUT OF ORDER: {0}{1}, {2}{3}': 'AUSSER DER REIHE: {0}{1}, {2}{3}',
  'another version of the program made the file of this witness':
    'eine andere Version des Programms hat die Datei dieses Zeugen angelegt',
  'Use that version, or make a new witness in another folder.':
    'Diese Version verwenden, oder einen neuen Zeugen in einem anderen Ordner anlegen.',
  'expected one field "value", found {0}': 'erwartet wird ein Feld "value", gefunden wurden {0}',
  'the angle is there twice': 'der Winkel ist zweimal da',
  'expected the angle beside the value': 'erwartet wird der Winkel neben dem Wert',
  'the unit is given here and told by the frame': 'die Einheit steht hier und auch im Rahmen',
  '{0} is no unit of {1}': '{0} ist keine Einheit für {1}',
  'expected a step that the numbers can tell, not {0}':
    'erwartet wird ein Schritt, den die Zahlen wiedergeben können, nicht {0}',
  'a {0} has codes of its own for that': '{0} hat dafür eigene Codes',
  'expected the value of 1': 'erwartet wird der Wert von 1',
  'expected a unit, or a field that tells it': 'erwartet wird eine Einheit, oder ein Feld, das sie nennt',
  'expected the smallest step of the tool, because the numbers do not tell it':
    'erwartet wird der kleinste Schritt des Werkzeugs, denn die Zahlen verraten ihn nicht',
  'there is a "{0}" already': 'es gibt schon ein "{0}"',
  'expected the counter outside of the samples': 'erwartet wird der Zähler außerhalb der Abtastwerte',
  'there are no "samples" that it could count': 'es gibt keine "samples", die es zählen könnte',
  'expected the "value" in the samples': 'erwartet wird "value" in den Abtastwerten',
  'a {0} has no bit {1}': '{0} hat kein Bit {1}',
  'bit {0} is there twice': 'Bit {0} ist zweimal da',
  'a decimal digit takes 4 bits': 'eine Dezimalziffer braucht 4 Bit',
  'a serial port has no packets': 'eine serielle Schnittstelle hat keine Pakete',
  'text has no length of its own; expected "delimiter", "time" or "packet"':
    'Text hat keine eigene Länge; erwartet wird "delimiter", "time" oder "packet"',
  'expected a field "size" in front, because nothing else tells where the frame ends':
    'erwartet wird davor ein Feld "size", denn sonst verrät nichts, wo der Rahmen endet',
  'expected a pause, a checksum, or fixed bytes at the end: without them a lost byte would shift every number unseen':
    'erwartet wird eine Pause, eine Prüfsumme oder feste Bytes am Ende: ohne sie würde ein verlorenes Byte unbemerkt jede Zahl verschieben',
  '{0} bytes are more than the {1} of the longest frame':
    '{0} Bytes sind mehr als die {1} des längsten Rahmens',
  'it would cover nothing': 'sie würde nichts abdecken',
  'a sample has no bytes': 'ein Abtastwert hat keine Bytes',
  'expected either "characters" or "until"': 'erwartet wird entweder "characters" oder "until"',
  'nothing tells where the figure in front of it ends': 'nichts verrät, wo die Zahl davor endet',
  'this step is too fine or too coarse to be recorded':
    'dieser Schritt ist zu fein oder zu grob zum Aufzeichnen',
  'it is longer than {0} bytes': 'sie ist länger als {0} Bytes',
  'it is not UTF-8 text': 'es ist kein UTF-8-Text',
  'Correct the place named; "plugmark manual profiles" describes every field.':
    'Die genannte Stelle berichtigen; „plugmark manual profiles“ beschreibt jedes Feld.',
  'a Bluetooth tool': 'ein Bluetooth-Werkzeug',
  'a tool on a serial port': 'ein Werkzeug an einer seriellen Schnittstelle',
  'the profile "{0}" describes a link "{1}", not {2}':
    'das Profil "{0}" beschreibt eine Verbindung "{1}", nicht: {2}',
  'In the station file use "profile" for Bluetooth tools and "serial" for those on a serial port.':
    'In der Arbeitsplatzdatei "profile" für Bluetooth-Werkzeuge verwenden und "serial" für solche an einer seriellen Schnittstelle.',
  'the profile cannot be read: {0}': 'das Profil lässt sich nicht lesen: {0}',
  'Name a profile in JSON.': 'Ein Profil in JSON nennen.',
  'the device at {0} has no characteristic {1}, which the profile "{2}" names':
    'das Gerät unter {0} hat kein Merkmal {1}, das das Profil "{2}" nennt',
  'Choose the profile of this device, or correct it by the published documentation.':
    'Das Profil dieses Geräts wählen, oder es nach den veröffentlichten Unterlagen berichtigen.',
  'expected a move such as "pull 1 hurried"': 'erwartet wird ein Handgriff wie "pull 1 hurried"',
  '"{0}" appears twice': '"{0}" kommt zweimal vor',
  'expected either "port" or "address"': 'erwartet wird entweder "port" oder "address"',
  'expected it where a tool has an address': 'erwartet, sobald ein Werkzeug eine Adresse hat',
  'there is no tool "{0}"': 'es gibt kein Werkzeug "{0}"',
  'expected it above the lower limit': 'erwartet oberhalb der unteren Grenze',
  'expected an "engine" to work at': 'erwartet wird ein "engine", an dem gearbeitet wird',
  'there is no cylinder {0}': 'es gibt keinen Zylinder {0}',
  'the plug of cylinder {0} is not in the head: "fit {1}" first':
    'die Zündkerze von Zylinder {0} sitzt nicht im Kopf: zuerst "fit {1}"',
};
