/** German for what verification finds. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  'two keys follow the same one, and a key names only one that takes its place':
    'zwei Schlüssel folgen demselben, und ein Schlüssel nennt nur einen, der an seine Stelle tritt',
  'it is missing': 'es fehlt',
  'Your policy does not name this log, {0}.': 'Ihre Richtlinie nennt dieses Logbuch nicht, {0}.',
  'No key of this log that your policy names signed the checkpoint inside.':
    'Kein Signaturschlüssel dieses Logbuchs, den Ihre Richtlinie nennt, hat den Prüfpunkt darin signiert.',
  'The note of the witnesses that came with it is no checkpoint.':
    'Die mitgelieferte Notiz der Zeugen ist kein Prüfpunkt.',
  'The note of the witnesses that came with it is not of this log.':
    'Die mitgelieferte Notiz der Zeugen gehört nicht zu diesem Logbuch.',
  'The note of the witnesses that came with it does not show that they saw the log of this record.':
    'Die mitgelieferte Notiz der Zeugen zeigt nicht, dass sie das Logbuch dieses Protokolls gesehen haben.',
  'Your policy names {0} as a witness, and its key is one of the station itself: nobody is his own witness.':
    'Ihre Richtlinie nennt {0} als Zeugen, und dessen Signaturschlüssel gehört dem Arbeitsplatz selbst: niemand ist sein eigener Zeuge.',
  'A cosignature of a witness that your policy names does not hold: the note was changed.':
    'Die Mitsignatur eines Zeugen, den Ihre Richtlinie nennt, stimmt nicht: die Notiz wurde verändert.',
  '{0}, and your policy asks for more.': '{0}, und Ihre Richtlinie verlangt mehr.',
  'Your policy asks for no witness.': 'Ihre Richtlinie verlangt keinen Zeugen.',
  '{0}: nobody can rewrite the first {1} entries of the log without them.':
    '{0}: ohne sie kann niemand die ersten {1} Einträge des Logbuchs umschreiben.',
  'Cosigned by 0 of {0}': 'Mitsigniert von 0 von {0}',
  'Cosigned by {0} of {1} on {2} ({3})': 'Mitsigniert von {0} von {1} am {2} ({3})',
  'TWO HISTORIES: the station signed two different logs of {0} entries, and witnesses saw the other one.':
    'ZWEI HISTORIEN: der Arbeitsplatz hat zwei verschiedene Logbücher mit {0} Einträgen signiert, und Zeugen haben das andere gesehen.',
  'entry {0} belongs to {1}, not to {2}': 'Eintrag {0} gehört zu {1}, nicht zu {2}',
  'entry n={0} stands where n={1} is due': 'Eintrag n={0} steht da, wo n={1} hingehört',
  'entry {0} stands after entry {1}': 'Eintrag {0} steht hinter Eintrag {1}',
  'the monotonic clock runs back at entry n={0}': 'die monotone Uhr läuft bei Eintrag n={0} rückwärts',
  'entry n={0} holds a sample from after it was written':
    'Eintrag n={0} enthält einen Messwert aus der Zeit nach seiner Niederschrift',
  'Instruments and specification are what the log says. A newer version of the program made summary and uncertainty budgets: they were not worked out again.':
    'Messgeräte und Vorgaben sind die des Logbuchs. Zusammenfassung und Messunsicherheitsbudgets hat eine neuere Version des Programms erstellt: sie wurden nicht neu berechnet.',
  'Summary, uncertainty budgets, instruments and specification are what the entries and the log say.':
    'Zusammenfassung, Messunsicherheitsbudgets, Messgeräte und Vorgaben sind, was Einträge und Logbuch sagen.',
  'Not looked at: a newer version of the program decides what is complete.':
    'Nicht angesehen: was vollständig ist, entscheidet eine neuere Version des Programms.',
  'Not looked at: there is no job to look at.': 'Nicht angesehen: es ist kein Auftrag da.',
  'Not looked at: the job cannot be played back here.':
    'Nicht angesehen: der Auftrag lässt sich hier nicht abspielen.',
  'OUT OF ORDER: work was done before a step that comes first. See the exceptions.':
    'AUSSER DER REIHE: gearbeitet wurde vor einem Schritt, der zuerst kommt. Siehe Ausnahmen.',
  'OUT OF ORDER: work on cylinder {0} was done before a step that comes first. See the exceptions.':
    'AUSSER DER REIHE: an Zylinder {0} wurde vor einem Schritt gearbeitet, der zuerst kommt. Siehe Ausnahmen.',
  'Each step came in its turn, as the shop has set it.':
    'Jeder Schritt kam an seiner Stelle, wie die Werkstatt es festgelegt hat.',
  'Each step that counts came in its turn. What had come too early was done again.':
    'Jeder Schritt, der zählt, kam an seiner Stelle. Was zu früh gekommen war, wurde wiederholt.',
  'It has left {0} of {1} steps free: those may have come at any time.':
    'Sie hat {0} von {1} Schritten freigestellt: diese können jederzeit gekommen sein.',
  'The gap of cylinder {0} was kept by name and is NOT proven.':
    'Der Elektrodenabstand von Zylinder {0} wurde namentlich so belassen und ist NICHT nachgewiesen.',
  '{0} on all {1} cylinders; the job is closed.':
    '{0} an allen {1} Zylindern; der Auftrag ist abgeschlossen.',
  'cylinder {0} accepted by {1} ({2})': 'Zylinder {0} angenommen von {1} ({2})',
  'cylinder {0} accepted by nobody': 'Zylinder {0} von niemandem angenommen',
  '{0} on {1} of {2} cylinders; NOT proven by turn: {3}. The job is closed.':
    '{0} an {1} von {2} Zylindern; NICHT durch Drehwinkel nachgewiesen: {3}. Der Auftrag ist abgeschlossen.',
  '{0} on {1} of {2} cylinders; NOT proven by torque: {3}. The job is closed.':
    '{0} an {1} von {2} Zylindern; NICHT durch Drehmoment nachgewiesen: {3}. Der Auftrag ist abgeschlossen.',
  'Gap and torque are OK': 'Elektrodenabstand und Drehmoment sind OK',
  'Torque is OK (no gap was measured)': 'Drehmoment ist OK (kein Elektrodenabstand wurde gemessen)',
  'Gap and turn are OK': 'Elektrodenabstand und Drehwinkel sind OK',
  'Turn is OK (no gap was measured)': 'Drehwinkel ist OK (kein Elektrodenabstand wurde gemessen)',
  'The job was not opened exactly once.': 'Der Auftrag wurde nicht genau einmal eröffnet.',
  'The entries are not those of job {0}.': 'Die Einträge sind nicht die von Auftrag {0}.',
  'The job names rules that no version of the program has.':
    'Der Auftrag nennt Regeln, die keine Version des Programms hat.',
  'The entries cannot be played back: {0}.': 'Die Einträge lassen sich nicht abspielen: {0}.',
  'The summary is not what the entries say.': 'Die Zusammenfassung ist nicht, was die Einträge sagen.',
  'The uncertainty budgets are not what the instruments give.':
    'Die Messunsicherheitsbudgets sind nicht, was die Messgeräte ergeben.',
  'The job was closed as complete. {0}': 'Der Auftrag wurde als vollständig abgeschlossen. {0}',
  'The job was declared VOID by {0}: {1}.': 'Der Auftrag wurde von {0} für UNGÜLTIG erklärt: {1}.',
  'The job was declared VOID.': 'Der Auftrag wurde für UNGÜLTIG erklärt.',
  'Not all of the job is done.': 'Nicht alles am Auftrag ist getan.',
  'Cylinder {0} counts as done, but no OK figure stands for it.':
    'Zylinder {0} gilt als fertig, aber kein Wert mit OK steht dafür.',
  'The job was not closed.': 'Der Auftrag wurde nicht abgeschlossen.',
  'The job was closed incomplete.': 'Der Auftrag wurde unvollständig abgeschlossen.',
  'The entries do not begin with the opening of a job.':
    'Die Einträge beginnen nicht mit der Eröffnung eines Auftrags.',
  'The job was opened on {0}, but its certificates were looked at as on {1}.':
    'Der Auftrag wurde am {0} eröffnet, aber seine Kalibrierscheine wurden zum {1} angesehen.',
  "The instrument {0} is not as the station's log has it.":
    'Das Messgerät {0} ist nicht, wie es im Logbuch des Arbeitsplatzes steht.',
  "The specification of the order is not as the station's log has it.":
    'Die Vorgaben des Auftrags sind nicht, wie sie im Logbuch des Arbeitsplatzes stehen.',
  'Entry n={0} ({1}) is not by whom such an entry is.':
    'Eintrag n={0} ({1}) stammt nicht von dem, von dem ein solcher Eintrag stammt.',
  "Entry n={0}: the tool that joined as {1} does not measure what the order's instrument does.":
    'Eintrag n={0}: das als {1} angemeldete Werkzeug misst nicht, was das Messgerät des Auftrags misst.',
  'Entry n={0}: the tool that joined as {1} has another serial number than the instrument.':
    'Eintrag n={0}: das als {1} angemeldete Werkzeug hat eine andere Seriennummer als das Messgerät.',
  "The job's entries are not whole: {0}.": 'Die Einträge des Auftrags sind nicht vollständig: {0}.',
  'The checkpoint inside does not have the form of one.':
    'Der Prüfpunkt darin hat nicht die Form eines Prüfpunkts.',
  'The checkpoint is of another log, {0}.': 'Der Prüfpunkt gehört zu einem anderen Logbuch, {0}.',
  'The checkpoint is not signed by the key of the station that signed the record.':
    'Der Prüfpunkt ist nicht mit dem Schlüssel des Arbeitsplatzes signiert, mit dem das Protokoll signiert ist.',
  'The entries are not in the log that the checkpoint signs.':
    'Die Einträge sind nicht in dem Logbuch, das der Prüfpunkt signiert.',
  'THE LOG LOST ENTRIES. The station states that it had {0} entries once and went on without some of them. What is in this record is in its signed log of {1} entries.':
    'DAS LOGBUCH HAT EINTRÄGE VERLOREN. Der Arbeitsplatz gibt an, einmal {0} Einträge gehabt zu haben und ohne einige davon weitergegangen zu sein. Was in diesem Protokoll steht, ist in seinem signierten Logbuch mit {1} Einträgen.',
  '{0} entries without a gap, all in the signed log of {1} entries (root {2}).':
    '{0} Einträge ohne Lücke, alle im signierten Logbuch mit {1} Einträgen (Wurzel {2}).',
  'It was judged by edition {0} of the rules; new jobs are judged by edition {1}.':
    'Beurteilt wurde nach Ausgabe {0} der Regeln; neue Aufträge werden nach Ausgabe {1} beurteilt.',
  'It was not: a newer version of the program judged the job. Verify it with that version as well.':
    'Nicht geschehen: eine neuere Version des Programms hat den Auftrag beurteilt. Auch mit dieser Version prüfen.',
  'The samples give the same {0} pulls again, each with the same verdict.':
    'Die Messwerte ergeben wieder dieselben {0} Züge, jeden mit demselben Ergebnis.',
  'The job cannot be judged again: {0}.': 'Der Auftrag lässt sich nicht neu beurteilen: {0}.',
  'event {0}: {1}.': 'Ereignis {0}: {1}.',
  'its key does not carry the name that its header gives':
    'ihr Signaturschlüssel trägt nicht den Namen, den ihr Kopf angibt',
  'it does not belong to this content': 'sie gehört nicht zu diesem Inhalt',
  'its header is not canonical JSON': 'ihr Kopf ist kein kanonisches JSON',
  'its header asks for an algorithm other than Ed25519':
    'ihr Kopf verlangt ein anderes Verfahren als Ed25519',
  'its header is not of the expected form ({0})': 'ihr Kopf hat nicht die erwartete Form ({0})',
  'THE NAME OF ANOTHER STATION: your list has the name that this station calls itself for another key.':
    'DER NAME EINES ANDEREN ARBEITSPLATZES: auf Ihrer Liste steht der Name, den sich dieser Arbeitsplatz gibt, bei einem anderen Schlüssel.',
  '{0} (which calls itself "{1}")': '{0} (der sich „{1}“ nennt)',
  'it is dated # day before what stands in front of it in the log|it is dated # days before what stands in front of it in the log':
    {
      one: 'sein Datum liegt # Tag vor dem, was im Logbuch davor steht',
      other: 'sein Datum liegt # Tage vor dem, was im Logbuch davor steht',
    },
  'it is dated # day after what stands behind it in the log|it is dated # days after what stands behind it in the log':
    {
      one: 'sein Datum liegt # Tag nach dem, was im Logbuch dahinter steht',
      other: 'sein Datum liegt # Tage nach dem, was im Logbuch dahinter steht',
    },
  'The signature of {0} {1} is missing.': 'Die Signatur von {0} {1} fehlt.',
  'The same signature stands twice.': 'Dieselbe Signatur ist zweimal da.',
  'The signature of {0} {1} is there twice.': 'Die Signatur von {0} {1} ist zweimal da.',
  'The signature of {0} {1} was not announced in the content.':
    'Die Signatur von {0} {1} war im Inhalt nicht angekündigt.',
  'Signature {0} of {1} does not hold: {2}.': 'Signatur {0} von {1} ist nicht gültig: {2}.',
  'Signature {0} of {1} is there twice.': 'Signatur {0} von {1} ist zweimal da.',
  "The station's log does not name {0} as the key of {1}.":
    'Das Logbuch des Arbeitsplatzes nennt {0} nicht als Signaturschlüssel von {1}.',
  "The station's log does not name {0} as its key.":
    'Das Logbuch des Arbeitsplatzes nennt {0} nicht als seinen Signaturschlüssel.',
  "The station's log says that {0} was revoked.":
    'Das Logbuch des Arbeitsplatzes sagt, dass {0} widerrufen wurde.',
  "The station's log does not call it {0}.": 'Das Logbuch des Arbeitsplatzes nennt ihn nicht {0}.',
  'What is said about the signature of the technician is not what the log says.':
    'Was über die Signatur des Mechanikers gesagt ist, ist nicht, was das Logbuch sagt.',
  'No station signed.': 'Kein Arbeitsplatz hat signiert.',
  'Station key {0}: {1}.': 'Signaturschlüssel des Arbeitsplatzes {0}: {1}.',
  'signed by the station {0} on {1}': 'signiert vom Arbeitsplatz {0} am {1}',
  'the key has ended since, and a later log of the station contains this':
    'der Signaturschlüssel gilt seither nicht mehr, und ein späteres Logbuch des Arbeitsplatzes enthält dies',
  'countersigned by {0} on {1}': 'gegengezeichnet von {0} am {1}',
  'countersigned by {0}, who is not trusted ({1}), on {2}':
    'gegengezeichnet von {0}, dem nicht vertraut wird ({1}), am {2}',
  'the key is not on the trust list, and {0} names no key any more':
    'der Signaturschlüssel steht nicht auf der Vertrauensliste, und {0} benennt keinen Schlüssel mehr',
  '{0}, whose earlier key named this one': '{0}, dessen früherer Signaturschlüssel diesen benannt hat',
  'its log says that {0} signed for it before, which your list has as a key of {1}; neither that key nor your list ("follows") says that this one took its place':
    'sein Logbuch sagt, dass früher {0} für ihn signiert hat, auf Ihrer Liste ein Schlüssel von {1}; weder dieser Schlüssel noch Ihre Liste („follows“) sagt, dass der jetzige an seine Stelle trat',
  somebody: 'jemandem',
  'the key is not on the trust list': 'der Signaturschlüssel steht nicht auf der Vertrauensliste',
  'the key is on the trust list as {0}, not as {1}':
    'der Signaturschlüssel steht auf der Vertrauensliste als {0}, nicht als {1}',
  'the key is trusted from {0}, but signed on {1}':
    'dem Signaturschlüssel wird ab {0} vertraut, signiert hat er am {1}',
  'the key was revoked from {0} ({1})': 'der Signaturschlüssel ist ab {0} widerrufen ({1})',
  'the key named another one': 'der Signaturschlüssel hat einen anderen benannt',
  'the key was trusted until {0}': 'dem Signaturschlüssel wurde bis {0} vertraut',
  '{0}, but signed on {1}': '{0}, signiert hat er aber am {1}',
  '{0}, and only its own word says that it signed before: a proof from the log, or a trusted time stamp, can show it':
    '{0}, und nur er selbst sagt, dass er davor signiert hat: ein Beleg aus dem Logbuch oder ein vertrauenswürdiger Zeitstempel kann es zeigen',
  retired: 'außer Dienst',
  compromised: 'in fremden Händen',
  'The time stamp does not hold: {0}.': 'Der Zeitstempel ist nicht gültig: {0}.',
  'An authority that you named saw this record before {0}, under its policy {1}.':
    'Eine von Ihnen genannte Stelle hat dieses Protokoll vor {0} gesehen, nach ihrer Richtlinie {1}.',
  'it is no time stamp that can be read': 'das ist kein lesbarer Zeitstempel',
  'the authority refused to stamp': 'die Stelle hat das Stempeln abgelehnt',
  'it rests on a hash that can be forged, such as SHA-1':
    'er beruht auf einer fälschbaren Prüfsumme wie SHA-1',
  'it does not belong to this record': 'er gehört nicht zu diesem Protokoll',
  'its signature does not hold': 'seine Signatur ist nicht gültig',
  'nobody you named made it, or the certificate was not valid at its time':
    'niemand, den Sie genannt haben, hat ihn erstellt, oder das Zertifikat war zu seiner Zeit nicht gültig',
  'it does not say which certificate signed it': 'er sagt nicht, welches Zertifikat ihn signiert hat',
  'the certificate that signed it is not for stamping times alone':
    'das Zertifikat, das ihn signiert hat, ist nicht allein für Zeitstempel',
  'Not looked at, because the file does not have the form of a record.':
    'Nicht angesehen, weil die Datei nicht die Form eines Protokolls hat.',
  'Not looked at: a newer version of the program made the file in a form that this one cannot read.':
    'Nicht angesehen: eine neuere Version des Programms hat die Datei in einer Form erstellt, die diese nicht lesen kann.',
  'A COUNTERSIGNATURE IS NOT GOOD. {0} What was sealed is unchanged.':
    'EINE GEGENZEICHNUNG STIMMT NICHT. {0} Was versiegelt wurde, ist unverändert.',
  'The file is unchanged. # signature holds.|The file is unchanged. # signatures hold.': {
    one: 'Die Datei ist unverändert. # Signatur ist gültig.',
    other: 'Die Datei ist unverändert. # Signaturen sind gültig.',
  },
  "The entries of the station's own stream are not in order.":
    'Die eigenen Einträge des Arbeitsplatzes sind nicht in der Reihenfolge.',
  'The station was never set up.': 'Der Arbeitsplatz wurde nie eingerichtet.',
  "The station's own stream cannot be played back: {0}.":
    'Die eigenen Einträge des Arbeitsplatzes lassen sich nicht abspielen: {0}.',
  'The times cannot be true: {0}.': 'Die Zeiten können nicht stimmen: {0}.',
  'Wall clock and monotonic clock agree throughout.': 'Wanduhr und monotone Uhr stimmen durchgehend überein.',
  '{0} s before entry n={1}': '{0} s vor Eintrag n={1}',
  'The wall clock was set before or while the job ran: {0}.':
    'Die Wanduhr wurde vor oder während der Arbeit gestellt: {0}.',
  'TIMES IN DOUBT: {0}.': 'ZEITEN ZWEIFELHAFT: {0}.',
  'Its last entry is {0} s ahead of the clock of this computer: one of the two is wrong, or the time was simulated.':
    'Sein letzter Eintrag ist der Uhr dieses Rechners {0} s voraus: eine von beiden geht falsch, oder die Zeit war simuliert.',
  'no reason known': 'kein Grund bekannt',
  '{0} and {1} more': '{0} und {1} weitere',
  '{0}; and {1} more': '{0}; und {1} weitere',
  '{0} was changed': '{0} wurde verändert',
  '{0} was added': '{0} wurde hinzugefügt',
  'All {0} files are there, and no other.': 'Alle {0} Dateien sind da, und keine andere.',
  '{0}.': '{0}.',
  'The signature does not belong to the index.': 'Die Signatur gehört nicht zum Index.',
  "The station's own entries do not name {0} as its key.":
    'Die eigenen Einträge des Arbeitsplatzes nennen {0} nicht als seinen Signaturschlüssel.',
  "The station's own entries say that {0} was revoked.":
    'Die eigenen Einträge des Arbeitsplatzes sagen, dass {0} widerrufen wurde.',
  'The index is as the station signed it.': 'Der Index ist, wie der Arbeitsplatz ihn signiert hat.',
  'Nobody knows who made it.': 'Niemand weiß, wer es erstellt hat.',
  'It says that it is of {0}. Station key {1}: {2}.':
    'Es gibt an, von {0} zu sein. Signaturschlüssel des Arbeitsplatzes {1}: {2}.',
  'Made by the station {0} on {1}, with its key {2}.':
    'Erstellt vom Arbeitsplatz {0} am {1}, mit seinem Signaturschlüssel {2}.',
  "The station's own entries are missing.": 'Die eigenen Einträge des Arbeitsplatzes fehlen.',
  "The station's own entries cannot be played back: {0}.":
    'Die eigenen Einträge des Arbeitsplatzes im Paket lassen sich nicht abspielen: {0}.',
  'The checkpoint is not signed by a key of the station.':
    'Der Prüfpunkt ist nicht mit einem Schlüssel des Arbeitsplatzes signiert.',
  "The station's own entries are not in the log that the checkpoint signs.":
    'Die eigenen Einträge des Arbeitsplatzes sind nicht in dem Logbuch, das der Prüfpunkt signiert.',
  "{0} of the station's own, chosen among them": '{0} eigene des Arbeitsplatzes, eine Auswahl',
  "the station's own from the first to entry {0} of {1} without a gap, {2} of them":
    'die eigenen des Arbeitsplatzes vom ersten bis Eintrag {0} vom {1} ohne Lücke, {2} davon',
  'A signed log of {0} entries (root {1}); {2}, stand in it.':
    'Ein signiertes Logbuch mit {0} Einträgen (Wurzel {1}); darin stehen {2}.',
  'The package was made without an older checkpoint.': 'Das Paket wurde ohne älteren Prüfpunkt erstellt.',
  'The checkpoint in {0}': 'Der Prüfpunkt in {0}',
  'Your checkpoint': 'Ihr Prüfpunkt',
  '{0} is of another log, {1}; that of the package is {2}.':
    '{0} gehört zu einem anderen Logbuch, {1}; das des Pakets ist {2}.',
  '{0} is not signed by a key that the station ever had.':
    '{0} ist mit keinem Schlüssel signiert, den der Arbeitsplatz je hatte.',
  '{0} stands for {1} entries, and the log of the package has only {2}: the end of the log was cut off, or the package was made before the checkpoint.':
    '{0} steht für {1} Einträge, und das Logbuch des Pakets hat nur {2}: das Ende des Logbuchs wurde abgeschnitten, oder das Paket ist älter als der Prüfpunkt.',
  'The package proves nothing from your checkpoint of {0} entries on; ask for one that was made with it.':
    'Das Paket weist von Ihrem Prüfpunkt mit {0} Einträgen an nichts nach; eines anfordern, das damit erstellt wurde.',
  'DIVERGED: the log does not begin with what the checkpoint of {0} entries stands for.':
    'ABGEWICHEN: das Logbuch beginnt nicht mit dem, wofür der Prüfpunkt mit {0} Einträgen steht.',
  '{0} stands for an empty log, and every log begins with that: it proves nothing.':
    '{0} steht für ein leeres Logbuch, und so beginnt jedes Logbuch: das weist nichts nach.',
  'Nothing in front of the checkpoint of {0} entries (in {1}; compare it with the one that you kept) was removed or rewritten.':
    'Nichts vor dem Prüfpunkt mit {0} Einträgen (in {1}; mit dem vergleichen, den Sie aufgehoben haben) wurde entfernt oder umgeschrieben.',
  'Nothing in front of the checkpoint of {0} entries (that you kept) was removed or rewritten.':
    'Nichts vor dem Prüfpunkt mit {0} Einträgen (den Sie aufgehoben haben) wurde entfernt oder umgeschrieben.',
  'The checkpoint in {0} is not one of this log.': 'Der Prüfpunkt in {0} gehört nicht zu diesem Logbuch.',
  '{0} They have not seen {1} of {2} jobs, which came after it: {3}.':
    '{0} Nicht gesehen haben sie {1} von {2} Aufträgen, die später kamen: {3}.',
  "The index does not say of job {0} what the station's own entries say.":
    'Der Index sagt zu Auftrag {0} nicht, was die eigenen Einträge des Arbeitsplatzes sagen.',
  "None of the station's entries here puts one of these jobs in question.":
    'Keiner der Einträge des Arbeitsplatzes hier stellt einen dieser Aufträge in Frage.',
  'PUT IN QUESTION later: {0} of {1} jobs; see below.':
    'Später IN FRAGE GESTELLT: {0} von {1} Aufträgen; siehe unten.',
  'job {0}: {1}': 'Auftrag {0}: {1}',
  "The jobs are dated in the order in which they and the station's entries stand.":
    'Die Aufträge tragen Daten in der Reihenfolge, in der sie und die Einträge des Arbeitsplatzes stehen.',
  'The package is dated {0}, and the clock of this computer says {1}.':
    'Das Paket trägt das Datum {0}, und die Uhr dieses Rechners zeigt {1}.',
  'TIMES IN DOUBT: the package is dated {0}, and a job in it ends on {1}.':
    'ZEITEN ZWEIFELHAFT: das Paket trägt das Datum {0}, und ein Auftrag darin endet am {1}.',
  'Made on {0}.': 'Erstellt am {0}.',
  'Not in the log of the package: {0}.': 'Nicht im Logbuch des Pakets: {0}.',
  'The record is in the log of the package.|All # records are in the log of the package.': {
    one: 'Das Protokoll ist im Logbuch des Pakets.',
    other: 'Alle # Protokolle sind im Logbuch des Pakets.',
  },
  'entry {0} differs': 'Eintrag {0} weicht ab',
  'entries {0} to {1} differ': 'die Einträge {0} bis {1} weichen ab',
  'TWO HISTORIES of one log: {0} and {1} cannot both be true, because {2}':
    'ZWEI HISTORIEN eines Logbuchs: {0} und {1} können nicht beide wahr sein, denn: {2}',
  'job {0} has two contents': 'Auftrag {0} hat zwei Inhalte',
  'the log of {0} entries has two roots': 'das Logbuch mit {0} Einträgen hat zwei Wurzeln',
  'What it says of the log cannot be read: {0}.': 'Was es über das Logbuch sagt, ist nicht lesbar: {0}.',
  '{0} of {1} that the index names are there.': '{0} von {1}, die der Index nennt, sind da.',
  '{0} of {1} do not hold; {2}: {3}': '{0} von {1} sind nicht gültig; {2}: {3}',
  '{0} of {1} do not hold; {2}: {3}; also {4}': '{0} von {1} sind nicht gültig; {2}: {3}; ebenso {4}',
  '{0} is of job {1}, not of the one that the index says.':
    '{0} gehört zu Auftrag {1}, nicht zu dem, den der Index nennt.',
  'each complete': 'jedes vollständig',
  '{0} of a job that was not completed or is void ({1})':
    '{0} von einem Auftrag, der nicht vollständig oder ungültig ist ({1})',
  'each authentic and judged again': 'jedes authentisch und neu beurteilt',
  'each authentic; {0} NOT judged again, because they were judged by rules that this version does not know':
    'jedes authentisch; {0} NICHT neu beurteilt, weil diese Version ihre Regeln nicht kennt',
  '{0} of {1} were not verified: a newer version of the program made them; {2}.':
    '{0} von {1} wurden nicht geprüft: eine neuere Version des Programms hat sie erstellt; {2}.',
  '{0}, {1}; {2}.': '{0}, {1}; {2}.',
  'No two records contradict each other.': 'Keine zwei Protokolle widersprechen einander.',
  '{0} records are signed by a key that is not trusted; {1}: {2}':
    '{0} Protokolle sind mit einem Schlüssel signiert, dem nicht vertraut wird; {1}: {2}',
  '{0} is not a checkpoint.': '{0} ist kein Prüfpunkt.',
  'and {0} more: see {1}': 'und {0} weitere: siehe {1}',
  'There is no {0} in this folder, so that nobody is trusted: name with --trust the one that the station gave you.':
    'In diesem Ordner ist keine {0}, also wird niemandem vertraut: mit --trust die angeben, die Sie vom Arbeitsplatz haben.',
  'The trust list is {0} of the folder that you are in: yours only if you put it there. Another one: --trust.':
    'Die Vertrauensliste ist {0} in dem Ordner, in dem Sie sind: Ihre eigene nur, wenn Sie sie dorthin gelegt haben. Eine andere: --trust.',
  'The trust list {0} lies in a package and is no trust: name with --trust the one that the station gave you by another way.':
    'Die Vertrauensliste {0} liegt in einem Paket und begründet kein Vertrauen: mit --trust die angeben, die Sie auf anderem Weg vom Arbeitsplatz haben.',
  'there is no trust list here': 'hier ist keine Vertrauensliste',
  'Check the path. Without --trust it is said what can be said without trusting anybody.':
    'Den Pfad prüfen. Ohne --trust wird gesagt, was sich sagen lässt, ohne jemandem zu vertrauen.',
  'NOT proven by this:': 'Hiermit NICHT nachgewiesen:',
  'No pull was given to it.': 'Ihm wurde kein Zug zugeordnet.',
  '{0}: job {1}.': '{0}: Auftrag {1}.',
  'Window {0}; accepted {1}. Dashed: the limits.':
    'Sollbereich {0}; angenommen {1}. Gestrichelt: die Grenzen.',
  'left right: cylinder  up down: pull  q: leave': 'links rechts: Zylinder  auf ab: Zug  q: verlassen',
  '← → cylinder   ↑ ↓ pull   q leave': '← → Zylinder   ↑ ↓ Zug   q verlassen',
  'pull {0}, {1}': 'Zug {0}, {1}',
  'OUT OF ORDER: {0}': 'AUSSER DER REIHE: {0}',
  'no plain file': 'keine gewöhnliche Datei',
  'larger than any record': 'größer als jedes Protokoll',
  'cannot be read': 'nicht lesbar',
  'no file in this folder ends in {0}': 'keine Datei in diesem Ordner endet auf {0}',
  'Name a folder that holds records.': 'Einen Ordner mit Protokollen nennen.',
  'PUT IN QUESTION by what was learned later:': 'IN FRAGE GESTELLT durch spätere Erkenntnisse:',
  'Compare the key above with the one that the station gave you by another way. If it is the same, copy {0} out of the package and name the copy with --trust.':
    'Den Signaturschlüssel oben mit dem vergleichen, den Sie auf anderem Weg vom Arbeitsplatz haben. Ist es derselbe, {0} aus dem Paket kopieren und die Kopie mit --trust angeben.',
  'Not compared, because the record inside is not as it was sealed.':
    'Nicht verglichen, weil das Protokoll darin nicht ist, wie es versiegelt wurde.',
  '{0}, the record inside': '{0}, das Protokoll darin',
  'Do not rely on this paper.': 'Nicht auf dieses Dokument verlassen.',
  'The pages are what the record inside gives.': 'Die Seiten sind, was das Protokoll darin ergibt.',
  'The pages were NOT compared byte for byte, because another version drew them. The record inside is what counts.':
    'Die Seiten wurden NICHT Byte für Byte verglichen, weil eine andere Version sie gezeichnet hat. Es zählt das Protokoll darin.',
  'NOT the paper of the record inside. Do not rely on the pages. Make the paper anew from the record with "plugmark paper".':
    'NICHT das Dokument des Protokolls darin. Nicht auf die Seiten verlassen. Das Dokument mit „plugmark paper“ neu aus dem Protokoll erstellen.',
  'this PDF is not as plugmark writes papers: another program wrote it, or wrote it again':
    'dieses PDF ist nicht, wie plugmark Dokumente schreibt: ein anderes Programm hat es geschrieben oder neu geschrieben',
  'no record is inside this paper': 'in diesem Dokument steckt kein Protokoll',
  'Ask for the record (*.record.json), or save it out of the PDF with a PDF reader (attachments), and verify that.':
    'Das Protokoll (*.record.json) anfordern oder es mit einem PDF-Leser (Anlagen) aus dem PDF speichern, und dieses prüfen.',
  'a time stamp belongs to one record, and this is a package':
    'ein Zeitstempel gehört zu einem Protokoll, und dies ist ein Paket',
  'Name the record in it, or leave --time out.': 'Das Protokoll darin nennen oder --time weglassen.',
  'the index of the package is missing, so nothing can be held against the checkpoint that you kept':
    'der Index des Pakets fehlt, also lässt sich nichts mit dem Prüfpunkt vergleichen, den Sie aufgehoben haben',
  'Check the path, or ask for the package again. Records that are no package are checked without --kept.':
    'Den Pfad prüfen oder das Paket noch einmal anfordern. Protokolle, die kein Paket sind, werden ohne --kept geprüft.',
  'The pages are what the record gives, byte for byte.':
    'Die Seiten sind Byte für Byte, was das Protokoll ergibt.',
  'The file is not as plugmark writes papers: another program wrote it or wrote it again, and could show anything.':
    'Die Datei ist nicht, wie plugmark Dokumente schreibt: ein anderes Programm hat sie geschrieben oder neu geschrieben und könnte alles zeigen.',
  'Its words are those of the record, and something else of the file was changed.':
    'Seine Worte sind die des Protokolls, und etwas anderes an der Datei wurde verändert.',
  'It says "{0}" where the record gives "{1}".': 'Es sagt „{0}“, wo das Protokoll „{1}“ ergibt.',
  'another program drew it': 'ein anderes Programm hat es gezeichnet',
  '{0} drew it': '{0} hat es gezeichnet',
  '{0}: every word and figure is what the record gives; lines and shades were NOT compared.':
    '{0}: jedes Wort und jede Zahl ist, was das Protokoll ergibt; Linien und Flächen wurden NICHT verglichen.',
  '{0}, and it has figures that the record does not give: {1}.':
    '{0}, und es enthält Zahlen, die das Protokoll nicht ergibt: {1}.',
  '{0}: it has other words, and every figure and verdict on it is one that the record gives; which of them is in which place, and what is drawn, was NOT compared.':
    '{0}: es hat andere Worte, und jede Zahl und jedes Ergebnis darauf ergibt auch das Protokoll; was davon an welcher Stelle steht und was gezeichnet ist, wurde NICHT verglichen.',
  '{0}. The records are what counts.': '{0}. Es zählen die Protokolle.',
  'The pages of papers were NOT compared: nothing draws here. "plugmark verify" on the folder compares them. The records are what counts.':
    'Die Seiten der Dokumente wurden NICHT verglichen: hier zeichnet nichts. „plugmark verify“ auf den Ordner vergleicht sie. Es zählen die Protokolle.',
  'What the records give: {0}.': 'Was die Protokolle ergeben: {0}.',
  'Of another version, its words and figures compared and what is drawn NOT: {0}.':
    'Von einer anderen Version, Worte und Zahlen verglichen und das Gezeichnete NICHT: {0}.',
  'NOT held against the records: {0}.': 'NICHT mit den Protokollen verglichen: {0}.',
  'There are none.': 'Es gibt keine.',
  '# paper|# papers': { one: '# Dokument', other: '# Dokumente' },
  '{0} is not what the records give: {1}': '{0} ist nicht, was die Protokolle ergeben: {1}',
  '{0} names another key, {1}': '{0} nennt einen anderen Signaturschlüssel, {1}',
  '{0} is not what this version writes': '{0} ist nicht, was diese Version schreibt',
  "{0} is not what the station's entries give": '{0} ist nicht, was die Einträge des Arbeitsplatzes ergeben',
  '{0} does not say of job {1} what its record says':
    '{0} sagt zu Auftrag {1} nicht, was sein Protokoll sagt',
  '{0} has a row of no record here': '{0} hat eine Zeile ohne Protokoll hier',
  'You have given no trust list, so that nobody is trusted.':
    'Sie haben keine Vertrauensliste angegeben, also wird niemandem vertraut.',
  'Invalid input: expected {0}, received {1}': 'Eingabe ungültig: erwartet {0}, erhalten {1}',
  'Invalid input: expected {0}': 'Eingabe ungültig: erwartet {0}',
  'Unrecognized key: {0}': 'Unbekanntes Feld: {0}',
  'Too big: expected {0} to have {1} items': 'Zu groß: erwartet {0} mit {1} Elementen',
  'Too big: expected {0} to have {1} characters': 'Zu lang: erwartet {0} mit {1} Zeichen',
  'Too big: expected {0} to be {1}': 'Zu groß: erwartet {0} {1}',
  'Too small: expected {0} to have {1} items': 'Zu klein: erwartet {0} mit {1} Elementen',
  'Too small: expected {0} to have {1} characters': 'Zu kurz: erwartet {0} mit {1} Zeichen',
  'Too small: expected {0} to be {1}': 'Zu klein: erwartet {0} {1}',
  'Invalid option: expected one of {0}': 'Ungültige Wahl: erwartet eines von {0}',
  'Invalid discriminator value. Expected {0}': 'Ungültiger Wert zur Unterscheidung. Erwartet {0}',
  'Invalid string: must match pattern {0}': 'Ungültiger Text: muss dem Muster {0} entsprechen',
  'Invalid {0}': 'Ungültig: {0}',
  '{0} (and {1} more)': '{0} (und {1} weitere)',
  'expected at most {0} attempts': 'erwartet sind höchstens {0} Versuche',
  'expected N.m for torque, m for length': 'erwartet wird N.m für Drehmoment, m für Länge',
  'only a torque tool sends an angle': 'einen Winkel sendet nur ein Drehmomentwerkzeug',
  'expected 32 bytes in base64': 'erwartet werden 32 Bytes in base64',
  'expected each appraiser once': 'erwartet wird jeder Prüfer einmal',
  'expected each part once': 'erwartet wird jedes Teil einmal',
  'this is not a checkpoint: expected the lines origin, size and root, an empty line, and one that begins with a dash':
    'das ist kein Prüfpunkt: erwartet werden die Zeilen Ursprung, Größe und Wurzel, eine Leerzeile und eine, die mit einem Strich beginnt',
  'Name the file that "plugmark log checkpoint" wrote, unchanged.':
    'Die Datei angeben, die „plugmark log checkpoint“ geschrieben hat, unverändert.',
  'this disclosure belongs to nothing in the content': 'diese Offenlegung gehört zu nichts im Inhalt',
  '{0} are more than any file has': '{0} sind mehr, als irgendeine Datei hat',
  'this disclosure is there twice': 'diese Offenlegung ist zweimal da',
  'longer than {0} characters': 'länger als {0} Zeichen',
  'expected JSON in strict base64url': 'erwartet wird JSON in strengem base64url',
  'expected a list of three: salt, name, text': 'erwartet wird eine Liste aus drei: Salz, Name, Text',
  'expected a salt of at least 128 bits in base64url':
    'erwartet wird ein Salz von mindestens 128 Bit in base64url',
  'expected the name "{0}"': 'erwartet wird der Name „{0}“',
  'expected text': 'erwartet wird Text',
  'expected the canonical writing of the list': 'erwartet wird die kanonische Schreibweise der Liste',
  '"..." conceals an element of a list, which no record does':
    '„...“ verdeckt ein Element einer Liste, was kein Protokoll tut',
  'expected "_sd" alone, with one digest of SHA-256 in base64url':
    'erwartet wird „_sd“ allein, mit einer Prüfsumme SHA-256 in base64url',
  'this digest is there twice': 'diese Prüfsumme ist zweimal da',
  'Ask for the record again from the station that made it.':
    'Das Protokoll noch einmal vom Arbeitsplatz anfordern, der es erstellt hat.',
  'personal text has to be concealed here': 'persönlicher Text muss hier verdeckt sein',
  'this may not be concealed': 'das darf nicht verdeckt sein',
  'Ask for it again from the station that wrote it.':
    'Noch einmal vom Arbeitsplatz anfordern, der es geschrieben hat.',
  'expected the number of a gauge study, like GS-1':
    'erwartet wird die Nummer einer Messmittelstudie, etwa GS-1',
  "a point of small order or in another writing is nobody's key":
    'ein Punkt kleiner Ordnung oder in anderer Schreibweise ist niemandes Schlüssel',
  'expected an Ed25519 public key: 32 bytes in base64url':
    'erwartet wird ein öffentlicher Schlüssel Ed25519: 32 Bytes in base64url',
  'expected strict base64url': 'erwartet wird strenges base64url',
  'expected disclosures in the first signature alone':
    'Offenlegungen werden nur in der ersten Signatur erwartet',
  'Make it again with "plugmark log prove consistency".':
    'Neu erstellen mit „plugmark log prove consistency“.',
  'expected 128 bits in base64url': 'erwartet werden 128 Bit in base64url',
  'expected job: and the number of the job': 'erwartet wird job: und die Nummer des Auftrags',
  'the file has control characters': 'die Datei hat Steuerzeichen',
  'it has more than {0} lines': 'sie hat mehr als {0} Zeilen',
  'the line "quorum" is missing': 'die Zeile „quorum“ fehlt',
  'expected a line of log, witness, group or quorum':
    'erwartet wird eine Zeile mit log, witness, group oder quorum',
  'expected: log, the verifier key of the log, and its address where it has one':
    'erwartet: log, der Prüfschlüssel des Logbuchs und seine Adresse, wo es eine hat',
  'two logs have this key': 'zwei Logbücher haben diesen Schlüssel',
  'a witness has this key, and nobody is his own witness':
    'ein Zeuge hat diesen Schlüssel, und niemand ist sein eigener Zeuge',
  'expected: witness, a name, its verifier key for cosignatures (Ed25519 or ML-DSA-44), and its address where it has one':
    'erwartet: witness, ein Name, sein Prüfschlüssel für Mitsignaturen (Ed25519 oder ML-DSA-44) und seine Adresse, wo er eine hat',
  'this name is taken': 'dieser Name ist vergeben',
  'two witnesses have this key': 'zwei Zeugen haben diesen Schlüssel',
  'a log has this key, and nobody is his own witness':
    'ein Logbuch hat diesen Schlüssel, und niemand ist sein eigener Zeuge',
  'expected: group, a name, how many of its members (or any, or all), and its members':
    'erwartet: group, ein Name, wie viele ihrer Mitglieder (oder any oder all) und ihre Mitglieder',
  'a member is defined by no line before': 'ein Mitglied ist in keiner Zeile davor festgelegt',
  'a member is in a group already': 'ein Mitglied ist schon in einer Gruppe',
  'expected: quorum, and the name of a witness or a group, or none':
    'erwartet: quorum und der Name eines Zeugen oder einer Gruppe, oder none',
  'there is a second line "quorum"': 'es gibt eine zweite Zeile „quorum“',
  'the quorum is defined by no line before': 'das Quorum ist in keiner Zeile davor festgelegt',
  'Compare it with "plugmark manual witnesses".': 'Mit „plugmark manual witnesses“ vergleichen.',
  'expected one station': 'erwartet wird ein Arbeitsplatz',
  'the file does not end as a record does': 'die Datei endet nicht wie ein Protokoll',
  'expected a domain in small letters, like shop.example':
    'erwartet wird eine Domäne in Kleinbuchstaben, etwa shop.example',
  'this is not valid UTF-8 text': 'das ist kein gültiger UTF-8-Text',
  'the content is not canonical JSON': 'der Inhalt ist kein kanonisches JSON',
  'Ask for the file again from where it came, or correct it at that place.':
    'Die Datei noch einmal anfordern, wo sie herkam, oder an dieser Stelle berichtigen.',
  'a byte order mark stands before the JSON': 'vor dem JSON steht eine Bytereihenfolge-Marke',
  'something follows the end of the JSON': 'hinter dem Ende des JSON steht noch etwas',
  'expected a comma or the end of the object': 'erwartet wird ein Komma oder das Ende des Objekts',
  'expected a name in double quotes': 'erwartet wird ein Name in doppelten Anführungszeichen',
  'the name __proto__ is not accepted': 'der Name __proto__ wird nicht angenommen',
  'the name {0} stands twice in one object': 'der Name {0} steht zweimal in einem Objekt',
  'expected a colon': 'erwartet wird ein Doppelpunkt',
  'expected a comma or the end of the array': 'erwartet wird ein Komma oder das Ende der Liste',
  'the text ends inside a string': 'der Text endet mitten in einer Zeichenkette',
  'a control character stands in a string': 'in einer Zeichenkette steht ein Steuerzeichen',
  'half a surrogate pair stands in a string': 'in einer Zeichenkette steht ein halbes Ersatzzeichenpaar',
  'an escape in a string is not one of JSON': 'ein Escape in einer Zeichenkette gibt es in JSON nicht',
  'expected a JSON value': 'erwartet wird ein JSON-Wert',
  'a number is too large or too long to be held exactly':
    'eine Zahl ist zu groß oder zu lang, um genau gehalten zu werden',
  'the number {0} would be read as {1}': 'die Zahl {0} würde als {1} gelesen',
  'nested deeper than {0} levels': 'tiefer als {0} Ebenen verschachtelt',
  'Put in the public keys as "keys" of a JSON Web Key set, each with its thumbprint as "kid".':
    'Die öffentlichen Schlüssel als „keys“ eines JSON-Web-Key-Satzes eintragen, jeden mit seinem Fingerabdruck als „kid“.',
  'expected the RFC 7638 thumbprint of the key':
    'erwartet wird der Fingerabdruck des Schlüssels nach RFC 7638',
  'a key stands twice': 'ein Schlüssel steht zweimal da',
  'expected base64': 'erwartet wird base64',
  'expected whole bytes in small hexadecimal digits':
    'erwartet werden ganze Bytes in kleinen Hexadezimalziffern',
  '{0} stands in the list of files, and can have no digest there':
    '{0} steht in der Liste der Dateien und kann dort keine Prüfsumme haben',
  'the file {0} stands twice in the list of files': 'die Datei {0} steht zweimal in der Liste der Dateien',
  'job {0} names {1}, which is not in the list of files':
    'Auftrag {0} nennt {1}, das nicht in der Liste der Dateien steht',
  'two jobs name the file {0}': 'zwei Aufträge nennen die Datei {0}',
  'no job names the file {0}': 'kein Auftrag nennt die Datei {0}',
  "expected the station's own entries alone": 'erwartet werden nur die eigenen Einträge des Arbeitsplatzes',
  'expected the verifier key of a witness, as "plugmark witness init" writes it':
    'erwartet wird der Prüfschlüssel eines Zeugen, wie „plugmark witness init“ ihn schreibt',
  'the station was set up twice': 'der Arbeitsplatz wurde zweimal eingerichtet',
  'the station was never set up': 'der Arbeitsplatz wurde nie eingerichtet',
  'a reading of {0} came before its link': 'ein Messwert von {0} kam vor seiner Verbindung',
  'this policy lies in a package, and nobody says in his own package whom to trust':
    'diese Richtlinie liegt in einem Paket, und niemand sagt im eigenen Paket, wem zu vertrauen ist',
  'Name with --policy one of your own.': 'Mit --policy eine eigene angeben.',
};
