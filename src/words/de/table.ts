/** German for the table of words for codes, and of refusals. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {
  OK: 'OK',
  'NOT OK': 'NICHT OK',
  UNDECIDED: 'UNENTSCHIEDEN',
  'gasket seat': 'Sitz mit Dichtring',
  'conical seat': 'Kegelsitz',
  'aluminium head': 'Zylinderkopf aus Aluminium',
  'cast-iron head': 'Zylinderkopf aus Grauguss',
  'dry threads': 'trockenes Gewinde',
  'oiled threads': 'geöltes Gewinde',
  'anti-seize threads': 'Gewinde mit Montagepaste',
  'factory-coated threads': 'ab Werk beschichtetes Gewinde',
  'the engine maker': 'der Motorhersteller',
  'the plug box': 'die Kerzenschachtel',
  'a general table': 'eine allgemeine Tabelle',
  'an invented example': 'ein erfundenes Beispiel',
  '{0} says {1}, which takes precedence over {2}':
    '{0} nennt {1}, und das geht vor: {2} steht dahinter zurück',
  'Use the better source. Put the other one under "also".':
    'Die bessere Quelle verwenden. Die andere unter "also" angeben.',
  'cylinder {0}': 'Zylinder {0}',
  'cylinder {0}, plug {1} (no. {2})': 'Zylinder {0}, Kerze {1} (Nr. {2})',
  'a cylinder number stands twice; expected each once':
    'eine Zylindernummer steht zweimal; jede darf nur einmal vorkommen',
  'expected every cylinder of banks exactly once ({0})':
    'jeder Zylinder der Bänke muss genau einmal vorkommen ({0})',
  'expected every number of banks at exactly one cylinder ({0})':
    'jede Nummer der Bänke muss bei genau einem Zylinder stehen ({0})',
  'a cylinder stands twice; expected each once':
    'ein Zylinder steht zweimal; jeder darf nur einmal vorkommen',
  'expected every cylinder once ({0})': 'jeder Zylinder muss einmal vorkommen ({0})',
  'a firing order starts with the first cylinder': 'eine Zündfolge beginnt mit dem ersten Zylinder',
  'the tightening of this cylinder': 'das Anziehen dieses Zylinders',
  'a second pull on a plug already tight (re-hit)':
    'ein zweiter Zug an einer schon festen Zündkerze (Nachziehen)',
  'no plug was turned': 'keine Zündkerze wurde gedreht',
  'a stroke that was not finished': 'ein nicht zu Ende geführter Zug',
  'plug backed out, thread inspected, to be fitted again':
    'Zündkerze herausgedreht, Gewinde angesehen, wird wieder eingesetzt',
  'plug backed out, thread inspected, to be fitted again with a new plug':
    'Zündkerze herausgedreht, Gewinde angesehen, wird mit einer neuen Zündkerze wieder bestückt',
  calibration: 'Kalibrierung',
  'calibration, beyond its points': 'Kalibrierung, außerhalb ihrer Messpunkte',
  'error, not corrected': 'Abweichung, nicht korrigiert',
  'drift since calibration': 'Drift seit der Kalibrierung',
  'permissible deviation': 'zulässige Abweichung',
  'check against its class': 'Prüfung gegen die Genauigkeitsklasse',
  resolution: 'Auflösung',
  repeatability: 'Wiederholbarkeit',
  'peak of the pull': 'Spitzenwert des Zugs',
  'arm of the wrench': 'Hebelarm des Schlüssels',
  'offset of the adapter': 'Versatz des Adapters',
  'angle of the adapter': 'Winkel des Adapters',
  'joint on the wrench': 'Gelenk am Schlüssel',
  temperature: 'Temperatur',
  'square drive': 'Antriebsvierkant',
  'position of the hand': 'Griffstelle der Hand',
  'hardness of the joint': 'Härte der Verschraubung',
  other: 'Sonstiges',
  'step, drift and noise of the angle': 'Schrittweite, Drift und Rauschen des Winkels',
  'angle of the tool': 'Winkel des Werkzeugs',
  'where the plug made contact': 'Anlagepunkt der Zündkerze',
  'wind-up of the tools': 'Verdrehung der Werkzeuge',
  'certificate {0}, {1}': 'Kalibrierschein {0}, {1}',
  '{0} readings, {1}': '{0} Messwerte, {1}',
  'step of the readings': 'Schrittweite der Messwerte',
  'its samples and its zero': 'seine Abtastwerte und sein Nullpunkt',
  'measured on the adapter': 'am Adapter gemessen',
  'a quarter of the limit, not stated': 'ein Viertel der Grenze, nicht angegeben',
  'its bend': 'seine Abwinkelung',
  'assumed, because nobody states it': 'angenommen, weil niemand es angibt',
  'published by the device itself': 'vom Gerät selbst angegeben',
  '{0} Still open: {1}.': '{0} Noch offen: {1}.',
  normal: 'normal',
  'light grey to tan, little wear, perhaps some white powder':
    'hellgrau bis rehbraun, wenig Verschleiß, eventuell etwas weißes Pulver',
  'a healthy cylinder and a plug that suits it': 'ein gesunder Zylinder und eine passende Zündkerze',
  'reddish coat': 'rötlicher Belag',
  'pink to brick red film on insulator and electrodes':
    'rosa bis ziegelroter Film auf Isolator und Elektroden',
  'an additive in the fuel; no fault of the engine': 'ein Zusatz im Kraftstoff; kein Fehler des Motors',
  'dry soot': 'trockener Ruß',
  'dull black, dry, comes off on the finger': 'mattschwarz, trocken, färbt am Finger ab',
  'rich mixture, short trips, weak spark, too cold a plug, blocked air filter':
    'fettes Gemisch, Kurzstrecken, schwacher Funke, zu kalte Zündkerze, zugesetzter Luftfilter',
  'Have mixture, air filter and ignition checked.': 'Gemisch, Luftfilter und Zündung prüfen lassen.',
  'wet with fuel': 'nass von Kraftstoff',
  'damp, smells of fuel': 'feucht, riecht nach Kraftstoff',
  'flooded, injector that leaks, no spark in this cylinder':
    'abgesoffen, undichte Einspritzdüse, kein Funke in diesem Zylinder',
  'Have injector and ignition of this cylinder checked.':
    'Einspritzdüse und Zündung dieses Zylinders prüfen lassen.',
  'wet with oil': 'ölnass',
  'black, wet and slippery': 'schwarz, nass und schmierig',
  'oil past rings, valve guides or seals, or through the crankcase vent':
    'Öl an Kolbenringen, Ventilführungen oder Schaftdichtungen vorbei oder über die Kurbelgehäuseentlüftung',
  'Have the oil consumption looked into.': 'Den Ölverbrauch untersuchen lassen.',
  ash: 'Asche',
  'pale crust on electrodes and insulator': 'helle Kruste auf Elektroden und Isolator',
  'additives of oil or fuel that do not burn; oil consumption':
    'nicht brennbare Zusätze aus Öl oder Kraftstoff; Ölverbrauch',
  worn: 'verschlissen',
  'electrodes rounded, gap grown wide': 'Elektroden verrundet, Abstand groß geworden',
  'in use beyond its life': 'über die Lebensdauer hinaus gelaufen',
  'Change the plugs sooner next time.': 'Die Zündkerzen nächstes Mal früher wechseln lassen.',
  glazed: 'verglast',
  'shiny, glassy or spotted insulator': 'glänzender, glasiger oder fleckiger Isolator',
  'deposits melted on by hard acceleration after a long slow time':
    'Ablagerungen, die bei starkem Beschleunigen nach langer Langsamfahrt aufgeschmolzen sind',
  'Have the heat range of the plug checked.': 'Den Wärmewert der Zündkerze prüfen lassen.',
  bridged: 'überbrückt',
  'a lump of deposit closes the gap': 'ein Klumpen Ablagerung schließt den Elektrodenabstand',
  'oil or soot that came loose in the chamber': 'Öl oder Ruß, der sich im Brennraum gelöst hat',
  'beads of metal': 'Metallperlen',
  'small bright beads on electrodes or insulator': 'kleine blanke Perlen auf Elektroden oder Isolator',
  'lead in the fuel, or metal from piston or valve: look into the cylinder':
    'Blei im Kraftstoff oder Metall von Kolben oder Ventil: in den Zylinder sehen',
  'Have the inside of this cylinder looked at.': 'Diesen Zylinder von innen ansehen lassen.',
  overheated: 'überhitzt',
  'chalk white insulator, dark specks, electrodes burnt blue':
    'kreideweißer Isolator, dunkle Punkte, blau angelaufene Elektroden',
  'a plug that was loose, too hot a plug, lean mixture, timing, cooling':
    'Zündkerze war locker, zu heiße Zündkerze, mageres Gemisch, Zündzeitpunkt, Kühlung',
  'Have mixture, timing and cooling checked.': 'Gemisch, Zündzeitpunkt und Kühlung prüfen lassen.',
  melted: 'geschmolzen',
  'electrode melted or gone, insulator blistered': 'Elektrode angeschmolzen oder weg, Isolator blasig',
  'ignition by a hot spot before the spark; the piston may be hurt: look into the cylinder':
    'Glühzündung an einer heißen Stelle vor dem Funken; der Kolben kann beschädigt sein: in den Zylinder sehen',
  'Drive no further before the inside of this cylinder is looked at.':
    'Nicht weiterfahren, bevor dieser Zylinder von innen angesehen ist.',
  'knocked to pieces': 'durch Klopfen zerstört',
  'insulator tip chipped, ground electrode broken without melting':
    'Isolatorfuß ausgebrochen, Masseelektrode ohne Schmelzspuren gebrochen',
  'knocking: fuel, timing, load; or a gap set with force':
    'Klopfen: Kraftstoff, Zündzeitpunkt, Last; oder mit Gewalt eingestellter Elektrodenabstand',
  'Have fuel, timing and the inside of this cylinder checked.':
    'Kraftstoff, Zündzeitpunkt und diesen Zylinder von innen prüfen lassen.',
  'insulator cracked': 'Isolator gerissen',
  'centre electrode loose': 'Mittelelektrode locker',
  'ground electrode broken': 'Masseelektrode gebrochen',
  'shell broken': 'Gehäuse gebrochen',
  'electrode bent': 'Elektrode verbogen',
  'burnt track down the outside': 'Brandspur außen am Isolator',
  'fine tip broken off: scrap, look for it in the cylinder':
    'feine Spitze abgebrochen: Ausschuss, im Zylinder danach suchen',
  sound: 'einwandfrei',
  'dirty: clean it before fitting': 'verschmutzt: vor dem Einsetzen reinigen',
  'DAMAGED: stop and repair it first': 'BESCHÄDIGT: anhalten und zuerst instand setzen',
  'An even brown ring outside, just above the shell, is normal.':
    'Ein gleichmäßiger brauner Ring außen, gleich über dem Gehäuse, ist normal.',
  thread: 'Gewinde',
  pitch: 'Steigung',
  reach: 'Gewindelänge',
  seat: 'Sitz',
  hexagon: 'Sechskant',
  'heat range': 'Wärmewert',
  resistor: 'Entstörwiderstand',
  'the specification does not allow adjusting': 'die Vorgabe erlaubt kein Einstellen',
  'the specification does not allow adjusting a used plug':
    'die Vorgabe erlaubt kein Einstellen einer gebrauchten Zündkerze',
  'only nickel tips are adjusted unless the specification allows it':
    'nur Nickelspitzen werden eingestellt, wenn die Vorgabe nichts anderes erlaubt',
  'several ground electrodes are not adjusted unless the specification allows it':
    'mehrere Masseelektroden werden nicht eingestellt, wenn die Vorgabe es nicht erlaubt',
  'the electrode was bent by {0} in all; the limit is {1}':
    'die Elektrode wurde insgesamt um {0} gebogen; die Grenze ist {1}',
  'it needs a bend of {0}; the limit is {1}': 'sie müsste um {0} gebogen werden; die Grenze ist {1}',
  'it does not look sound': 'sie sieht nicht einwandfrei aus',
  'it was bent, but {0}': 'sie wurde gebogen, aber {0}',
  'bend the ground electrode at its base by {0} and measure again':
    'die Masseelektrode an ihrem Fuß um {0} biegen und neu messen',
  'out of reach or switched off': 'außer Reichweite oder ausgeschaltet',
  'it stopped answering': 'keine Antwort mehr',
  'ended by the tool': 'vom Werkzeug beendet',
  'the tool is switching off': 'das Werkzeug schaltet sich ab',
  'ended by this station': 'von diesem Arbeitsplatz beendet',
  'the pairing failed': 'die Kopplung ist fehlgeschlagen',
  'the tool asks for a pairing that is not there': 'das Werkzeug verlangt eine Kopplung, die es nicht gibt',
  'the connection could not be established': 'die Verbindung kam nicht zustande',
  'the recording has ended': 'die Aufzeichnung ist zu Ende',
  'its serial port is gone': 'die serielle Schnittstelle ist weg',
  'the link ended': 'die Verbindung ist abgerissen',
  'its own counter jumped': 'sein eigener Zähler ist gesprungen',
  'more than the station could take': 'mehr, als der Arbeitsplatz aufnehmen konnte',
  '{0}, reason 0x{1}': '{0}, Grund 0x{1}',
  'a device at {0} has the same name as the adopted tool. Its readings are ignored':
    'ein Gerät unter {0} hat denselben Namen wie das angemeldete Werkzeug. Seine Messwerte werden nicht beachtet',
  'the device at {0} gives no serial number before pairing':
    'das Gerät unter {0} nennt vor der Kopplung keine Seriennummer',
  'the device at {0} has serial number {1}, which is not that of the adopted tool':
    'das Gerät unter {0} hat die Seriennummer {1}; das ist nicht die des angemeldeten Werkzeugs',
  'the device at {0} does not ask for encryption, but the adopted tool does. Its readings are ignored':
    'das Gerät unter {0} verlangt keine Verschlüsselung, das angemeldete Werkzeug aber schon. Seine Messwerte werden nicht beachtet',
  'the device at {0} does not send the readings of this tool':
    'das Gerät unter {0} sendet nicht die Messwerte dieses Werkzeugs',
  'the device at {0} is not as its profile describes it':
    'das Gerät unter {0} entspricht nicht seinem Profil',
  'the device at {0} presents its readings in another format than the Bluetooth SIG defines. They cannot be trusted':
    'das Gerät unter {0} gibt seine Messwerte in einem anderen Format an, als die Bluetooth SIG es festlegt. Darauf ist kein Verlass',
  '{0} and {1}': '{0} und {1}',
  'which vehicle it was: VIN, plate and the other particulars of the order are as somebody typed them':
    'welches Fahrzeug es war: Fahrgestellnummer, Kennzeichen und die übrigen Angaben des Auftrags stehen so da, wie jemand sie eingegeben hat',
  'who was at work: names are as typed, and a key signs for whoever has it':
    'wer gearbeitet hat: Namen stehen so da, wie sie eingegeben wurden, und ein Signaturschlüssel signiert für jeden, der ihn hat',
  'that a pull was on the plug that it was given to: order of work and answers of people say so, no sensor does':
    'dass ein Zug an der Zündkerze war, der er zugeordnet ist: das sagen Reihenfolge und Antworten von Menschen, kein Sensor',
  'that the station sent on what its tools sent: whoever holds its keys can write readings that no tool sent':
    'dass der Arbeitsplatz weitergab, was seine Werkzeuge sendeten: wer seine Signaturschlüssel hat, kann Messwerte schreiben, die kein Werkzeug gesendet hat',
  'where a figure came from: the station states it. One that plays a recording and calls it linked cannot be told from an honest one':
    'woher ein Wert kam: das gibt der Arbeitsplatz an. Einer, der eine Aufzeichnung abspielt und sie als vom Gerät übermittelt ausgibt, ist von einem ehrlichen nicht zu unterscheiden',
  "that the certificates are genuine: it holds their points as the station has them, not the laboratory's document":
    'dass die Kalibrierscheine echt sind: es enthält ihre Messpunkte, wie der Arbeitsplatz sie hat, nicht das Dokument des Labors',
  'that the station keeps no other history: the witnesses that your policy names say so, and nobody else':
    'dass der Arbeitsplatz keinen anderen Verlauf führt: das sagen die Zeugen, die Ihre Richtlinie nennt, und sonst niemand',
  'that the station keeps no other history: only witnesses, a checkpoint that somebody else kept, or a time stamp show that nothing was rewritten':
    'dass der Arbeitsplatz keinen anderen Verlauf führt: nur Zeugen, ein von jemand anderem aufbewahrter Prüfpunkt oder ein Zeitstempel zeigen, dass nichts umgeschrieben wurde',
  'the verdicts: they were not judged again. Verify it with the version that made it as well':
    'die Urteile: sie wurden nicht noch einmal gebildet. Auch mit der Version prüfen, die es erstellt hat',
  'that nothing of the job came behind its last entry here: a job that goes on has more entries in the log':
    'dass nach dem letzten Eintrag hier nichts mehr zum Auftrag kam: ein Auftrag, der weitergeht, hat weitere Einträge im Logbuch',
  'the times of its entries: they are those of the clock of the station. The time stamp proves by when it was sealed':
    'die Zeiten seiner Einträge: es sind die der Uhr des Arbeitsplatzes. Der Zeitstempel weist nach, bis wann es versiegelt war',
  'the times: they are those of the clock of the station':
    'die Zeiten: es sind die der Uhr des Arbeitsplatzes',
  "that the maker allows the torque limits: the source prints {0} alone, and plus/minus {1} % is the SHOP'S own rule":
    'dass der Hersteller die Drehmomentgrenzen erlaubt: die Quelle druckt nur {0}, und plus/minus {1} % ist die EIGENE Regel der Werkstatt',
  'that the readings came from the named instruments: the link of {0} was not authenticated, and another device could have taken the place of the tool':
    'dass die Messwerte von den genannten Messgeräten kamen: die Verbindung von {0} war nicht authentifiziert, und ein anderes Gerät hätte an die Stelle des Werkzeugs treten können',
  'what an instrument read: figures of {0} were typed':
    'was ein Messgerät anzeigte: Werte von {0} wurden von Hand eingegeben',
  'anything that {0} would show: the readings came from a recording':
    'was immer {0} zeigen würde: die Messwerte kamen aus einer Aufzeichnung',
  'anything that {0} would show: there was no instrument':
    'was immer {0} zeigen würde: es gab kein Messgerät',
  'No general table has a figure for this thread and seat.':
    'Keine allgemeine Tabelle hat einen Wert für dieses Gewinde und diesen Sitz.',
  'General tables say {0} to {1} {2} ({3}, {4}). No table holds the whole of this range; a better source goes before them.':
    'Allgemeine Tabellen nennen {0} bis {1} {2} ({3}, {4}). Keine Tabelle umfasst diesen ganzen Bereich; eine bessere Quelle geht ihnen vor.',
  'The publishers of general tables disagree: no torque suits all of them.':
    'Die Herausgeber allgemeiner Tabellen sind sich nicht einig: kein Drehmoment passt zu allen.',
  'GENERAL TABLE: the figure is not for this engine. Look for the engine maker’s figure first.':
    'ALLGEMEINE TABELLE: der Wert gilt nicht für diesen Motor. Zuerst den Wert des Motorherstellers suchen.',
  'Set aside: {0} ({1}) says {2} on {3}.': 'Zurückgestellt: {0} ({1}) nennt {2} für {3}.',
  'No oil and no anti-seize: the figure assumes dry threads.':
    'Kein Öl und keine Montagepaste: der Wert gilt für trockenes Gewinde.',
  "Reduced by {0} % for {1}: the shop's own rule; the source does not say so.":
    'Um {0} % verringert für {1}: eigene Regel der Werkstatt; die Quelle sagt das nicht.',
  "SHOP RULE: the source prints the single figure {0}. Plus/minus {1} % is this shop's own tolerance, not the maker's.":
    'REGEL DER WERKSTATT: die Quelle druckt den Einzelwert {0}. Plus/minus {1} % ist die eigene Toleranz dieser Werkstatt, nicht die des Herstellers.',
  "SHOP RULE: the source prints the single figure {0}. Plus/minus {1} % is this shop's own tolerance, not the maker's (basis: {2}).":
    'REGEL DER WERKSTATT: die Quelle druckt den Einzelwert {0}. Plus/minus {1} % ist die eigene Toleranz dieser Werkstatt, nicht die des Herstellers (Grundlage: {2}).',
  'For the same clamp force, friction falling from {0} to {1} would ask for {2} % less (Motosh; seat ring assumed).':
    'Für dieselbe Vorspannkraft würde bei Reibung {1} statt {0} um {2} % weniger genügen (Motosh; Sitzring angenommen).',
  'A used plug goes back into the cylinder it came from.':
    'Eine gebrauchte Zündkerze kommt wieder in den Zylinder, aus dem sie kam.',
  'A used gasket takes far less angle than a new one.':
    'Ein gebrauchter Dichtring braucht viel weniger Winkel als ein neuer.',
  'The order names an angle and no torque. The turn from contact is judged. The torque window goes from half of what general tables give for this thread and seat to a quarter more than they give: a torque outside of it is never OK.':
    'Der Auftrag nennt einen Winkel und kein Drehmoment. Beurteilt wird der Drehwinkel ab Anlage. Der Sollbereich des Drehmoments reicht von der Hälfte dessen, was allgemeine Tabellen für dieses Gewinde und diesen Sitz angeben, bis zu einem Viertel mehr: ein Drehmoment außerhalb davon ist nie OK.',
  'The angle is one figure without a tolerance: no wrench can prove it. Give two limits, or turn the plug by hand and record it so.':
    'Der Winkel ist ein Einzelwert ohne Toleranz: kein Schlüssel kann ihn nachweisen. Zwei Grenzen angeben, oder die Zündkerze von Hand drehen und so festhalten.',
  'The figure was checked by {0}.': 'Der Wert wurde geprüft von {0}.',
  'The rule for single figures was set by {0}.': 'Die Regel für Einzelwerte wurde festgelegt von {0}.',
  'The rule for {0} was set by {1}.': 'Die Regel für {0} wurde festgelegt von {1}.',
  'old plug not read': 'alte Zündkerze nicht begutachtet',
  'new plug not checked': 'neue Zündkerze nicht geprüft',
  'the new plug differs in {0}': 'die neue Zündkerze weicht ab: {0}',
  'plug to be replaced: {0}': 'Zündkerze zu ersetzen: {0}',
  'gap not measured': 'Elektrodenabstand nicht gemessen',
  'gap not proven': 'Elektrodenabstand nicht nachgewiesen',
  'no torque yet': 'noch kein Drehmoment',
  'torque not proven': 'Drehmoment nicht nachgewiesen',
  'open question about its torque': 'offene Frage zum Drehmoment',
  'windows not confirmed': 'Sollbereiche nicht bestätigt',
  'steps before removal not confirmed': 'Schritte vor dem Ausbau nicht bestätigt',
  'steps before fitting not confirmed': 'Schritte vor dem Einbau nicht bestätigt',
  'steps after fitting not confirmed': 'Schritte nach dem Einbau nicht bestätigt',
  'pull {0}: question not answered': 'Zug {0}: Frage nicht beantwortet',
  'declared void': 'für ungültig erklärt',
  'cylinder {0}: {1}': 'Zylinder {0}: {1}',
  'it is still open': 'er ist noch offen',
  '{0} entries; a record holds {1}': '{0} Einträge; ein Protokoll fasst {1}',
  '{0} attempts; a record holds {1}': '{0} Versuche; ein Protokoll fasst {1}',
  'its record has {0} bytes; one holds {1}': 'sein Protokoll hat {0} Bytes; eines fasst {1}',
  Audit: 'Audit',
  Dispute: 'Streitfall',
  '{0}, claim {1}': '{0}, Vorgang {1}',
  'This looks like a telephone number. Papers and shared records leave it out; the log contains it.':
    'Das sieht nach einer Telefonnummer aus. Papiere und weitergegebene Protokolle lassen sie weg; das Logbuch enthält sie.',
  tightening: 'Anziehen',
  continued: 'fortgesetzt',
  'run-down': 'Eindrehen',
  're-hit': 'Nachziehen',
  'check pull': 'Prüfzug',
  loosening: 'Lösen',
  handling: 'Hantieren',
  unsure: 'unsicher',
  'too little torque to turn a plug': 'zu wenig Drehmoment, um eine Zündkerze zu drehen',
  'it rose and fell like a knock': 'es stieg und fiel wie ein Stoß',
  'no cylinder is due': 'kein Zylinder ist an der Reihe',
  '{0}: the plug turned': '{0}: die Zündkerze drehte sich',
  'the first plug of this engine': 'die erste Zündkerze dieses Motors',
  'it went on from the stroke before': 'er setzte den Zug davor fort',
  '{0}: it went on after stopping short': '{0}: weiter nach zu frühem Halt',
  'it ended low': 'er endete zu niedrig',
  'a plug turned from loose and ended low: the next one':
    'eine lose Zündkerze drehte sich und endete zu niedrig: die nächste',
  'it ended without a click': 'er endete ohne Klick',
  'a low stroke while a question was open': 'ein niedriger Zug, während eine Frage offen war',
  'nothing followed: it stopped short': 'nichts folgte: zu früh aufgehört',
  '{0}: the same plug once more': '{0}: noch einmal dieselbe Zündkerze',
  '{0}: a plug already tight was tried again':
    '{0}: an einer schon festen Zündkerze wurde noch einmal gezogen',
  'sooner than anybody gets to another plug': 'schneller, als man zu einer anderen Zündkerze kommt',
  'every cylinder is done': 'alle Zylinder sind fertig',
  '{0}: the plug did not turn': '{0}: die Zündkerze drehte sich nicht',
  '{0}: a tight plug or one that still turned': '{0}: eine feste Zündkerze oder eine, die sich noch drehte',
  'the trial click, or the first plug': 'der Probeklick oder die erste Zündkerze',
  '{0}: the last plug turning, or a tight one again because one was left out':
    '{0}: die letzte Zündkerze drehte sich, oder noch einmal eine feste, weil eine ausgelassen wurde',
  '{0}: a plug turned, too soon after the last': '{0}: eine Zündkerze drehte sich, zu bald nach der letzten',
  '{0}, and the stroke before need not have turned it': '{0}, und der Zug davor muss sie nicht gedreht haben',
  'it ended below what this plug had held': 'er endete unter dem, was diese Zündkerze gehalten hatte',
  'it took {0} ms to what this plug had held':
    'es dauerte {0} ms bis zu dem, was diese Zündkerze gehalten hatte',
  'it may have been a plug that was tight already': 'es kann eine schon feste Zündkerze gewesen sein',
  'it turned from loose, which a plug that had held as much does not':
    'sie drehte sich aus dem Losen; das tut keine Zündkerze, die schon so viel gehalten hat',
  'the stroke before was on the next plug': 'der Zug davor war an der nächsten Zündkerze',
  'the plug did not turn on': 'die Zündkerze drehte sich nicht weiter',
  'a knock, or a stroke that stopped short': 'ein Stoß oder ein zu früh beendeter Zug',
  'it reached the window without a click, and nothing followed':
    'er erreichte den Sollbereich ohne Klick, und nichts folgte',
  '{0}: it went on from the pull in question': '{0}: er setzte den fraglichen Zug fort',
  'it came while a question was open': 'er kam, während eine Frage offen war',
  '{0}: a plug turned, though every cylinder is done':
    '{0}: eine Zündkerze drehte sich, obwohl alle Zylinder fertig sind',
  'if the plug turned in pull {0}, this one was on another':
    'wenn sich die Zündkerze in Zug {0} drehte, war dieser Zug an einer anderen',
  'a check pull went above the window': 'ein Prüfzug ging über den Sollbereich',
  'its end is missing': 'sein Ende fehlt',
  'the readings stood at {0}, the end of the scale':
    'die Messwerte standen bei {0}, am Ende des Messbereichs',
  '{0}, the highest torque; this tool sends nothing else of a pull':
    '{0}, das höchste Drehmoment; mehr sendet dieses Werkzeug von einem Zug nicht',
  '{0}, the first pull since the cylinder that is due changed':
    '{0}, der erste Zug, seit ein anderer Zylinder an der Reihe ist',
  'two tools felt torque at the same time': 'zwei Werkzeuge spürten gleichzeitig ein Drehmoment',
  'this plug was to be backed out': 'diese Zündkerze sollte herausgedreht werden',
  'no plug was tight yet': 'noch keine Zündkerze war fest',
  'a plug was loosened after it had been proven': 'eine Zündkerze wurde gelöst, nachdem sie nachgewiesen war',
  'it was loosened at once after it was tightened': 'sie wurde gleich nach dem Anziehen gelöst',
  'answered by the technician': 'vom Mechaniker beantwortet',
  'given to this cylinder by the technician': 'vom Mechaniker diesem Zylinder zugeordnet',
  'with pull {0}': 'mit Zug {0}',
  'pull {0} went on from it': 'Zug {0} setzte ihn fort',
  'the plug of cylinder {0} was left out': 'die Zündkerze von Zylinder {0} wurde ausgelassen',
  'rose in {0} ms': 'Anstieg in {0} ms',
  'turn measured, {0}': 'Drehung gemessen, {0}',
  '{0}, {1} s after the last': '{0}, {1} s nach dem letzten',
  '{0} in a straight line': '{0}, ganz gleichmäßig',
  '{0}, usual {1} ms': '{0}, üblich {1} ms',
  'the pull went {0} beyond it': 'der Zug ging {0} darüber hinaus',
  'trial click: the torque fell by {0}, {1}': 'Probeklick: das Drehmoment fiel um {0}, {1}',
  'trial click: weak, the torque fell by {0} only, {1}; falls like it count as clicks in this job':
    'Probeklick: schwach, das Drehmoment fiel nur um {0}, {1}; solche Abfälle gelten in diesem Auftrag als Klick',
  'trial click: readings come {0} ms apart, too far to show a click':
    'Probeklick: die Messwerte kommen alle {0} ms, zu selten, um einen Klick zu zeigen',
  'trial click: no fall was seen; after each pull you are asked whether it clicked':
    'Probeklick: kein Abfall zu sehen; nach jedem Zug wird gefragt, ob es geklickt hat',
  'it was dropped': 'sie ist heruntergefallen',
  'its tip is broken': 'ihre Spitze ist gebrochen',
  'its insulator is cracked': 'ihr Isolator ist gerissen',
  'its gap cannot be set within the rules':
    'ihr Elektrodenabstand lässt sich nach den Regeln nicht einstellen',
  'Usual for a new gasket': 'Üblich bei neuem Dichtring',
  'Usual for a used gasket': 'Üblich bei gebrauchtem Dichtring',
  'Usual for a conical seat': 'Üblich bei Kegelsitz',
  'No ramp or coin gauge: it levers on the tip and breaks a fine one.':
    'Keine Keil- oder Münzlehre: sie hebelt an der Spitze und bricht eine feine ab.',
  'the thin wire passes, the thick one does not': 'der dünne Draht geht durch, der dicke nicht',
  'the thin wire does not pass': 'der dünne Draht geht nicht durch',
  'the thick wire passes': 'der dicke Draht geht durch',
  '{0} went above the window. Back the plug out and look at its threads.':
    '{0}: über dem Sollbereich. Zündkerze herausdrehen und Gewinde ansehen.',
  '{0} went too near the upper limit to be proven. Back the plug out and look at its threads.':
    '{0}: zu nah an der oberen Grenze, um nachgewiesen zu sein. Zündkerze herausdrehen und Gewinde ansehen.',
  'A plug was loosened ({0}). Was it {1}?': 'Eine Zündkerze wurde gelöst ({0}). War es {1}?',
  'The readings broke off in the middle of a pull on {0}. The torque that it reached is unknown.':
    'Die Messwerte brachen mitten in einem Zug ab ({0}). Das erreichte Drehmoment ist unbekannt.',
  'STOP: {0}: {1}. The plug may have had far more. Back it out and look at its threads.':
    'HALT: {0}: {1}. Die Zündkerze kann viel mehr abbekommen haben. Herausdrehen und Gewinde ansehen.',
  'STOP: {0} is due, but this plug was tight already ({1}). Was it another one, or was a cylinder left out?':
    'HALT: {0} ist an der Reihe, aber diese Zündkerze war schon fest ({1}). War es eine andere, oder wurde ein Zylinder ausgelassen?',
  'STOP: {0} had stopped short, but this looks like another plug ({1}). Was it {2}?':
    'HALT: {0} war zu früh beendet, aber das sieht nach einer anderen Zündkerze aus ({1}). War es {2}?',
  'No click was seen on {0} ({1}). Did the wrench click?':
    'Kein Klick zu sehen: {0} ({1}). Hat der Schlüssel geklickt?',
  'STOP: a plug still turned, but every cylinder is done ({0}). Was it {1}?':
    'HALT: eine Zündkerze drehte sich noch, aber alle Zylinder sind fertig ({0}). War es {1}?',
  'Was that {0}? ({1}.)': 'War das {0}? ({1}.)',
  'STOP: {0} was pulled too early: it proves nothing. Back the plug out. Before it goes in again, {1}.':
    'HALT: {0} wurde zu früh angezogen: das weist nichts nach. Zündkerze herausdrehen. Bevor sie wieder hineinkommt: {1}.',
  'What was this pull? ({0}.)': 'Was war dieser Zug? ({0}.)',
  'In a hot head the threads seize, and come out with the plug.':
    'Im heißen Zylinderkopf fressen die Gewinde und kommen mit der Kerze heraus.',
  'NGK, installation advice': 'NGK, Einbauhinweise',
  'A coil that fires gives a shock that throws you.':
    'Eine zündende Spule gibt einen Schlag, der einen umwirft.',
  'Heat glues a boot to its plug. A straight pull tears the boot, or the wire in it.':
    'Hitze klebt den Stecker an die Kerze. Gerades Ziehen zerreißt ihn oder das Kabel darin.',
  'Grit in the well falls through the open hole onto the piston, and under the new seat.':
    'Schmutz im Kerzenschacht fällt durch das offene Loch auf den Kolben und unter den neuen Sitz.',
  'A power tool cracks insulators and cuts across threads before you feel it.':
    'Ein Maschinenschrauber bricht Isolatoren und schneidet Gewinde schief, ehe man es spürt.',
  'Dirt takes up torque: the wrench clicks, and the plug is loose on its seat.':
    'Schmutz schluckt Drehmoment: der Schlüssel klickt, und die Kerze sitzt locker.',
  'A crossed or dirty thread turns hard by hand. Chips must not fall in.':
    'Ein schief gefasstes oder schmutziges Gewinde geht von Hand schwer. Späne dürfen nicht hineinfallen.',
  'On greased threads the same torque pulls far harder, until the shell stretches.':
    'Auf gefettetem Gewinde zieht dasselbe Drehmoment viel stärker, bis sich das Gehäuse dehnt.',
  'NGK and Denso, installation advice': 'NGK und Denso, Einbauhinweise',
  'A hose slips when the thread is crossed; a wrench cuts on. Where a plug sits deep, use one.':
    'Ein Schlauch rutscht bei schiefem Gewinde durch, ein Schlüssel schneidet weiter. Bei tiefem Sitz verwenden.',
  'A thin film inside the boot keeps it from sticking. On threads or terminal it does harm.':
    'Ein dünner Film im Stecker verhindert das Ankleben. Auf Gewinde oder Anschluss schadet er.',
  'A boot that does not seat lets the spark jump, and burns.':
    'Bei einem nicht eingerasteten Stecker springt der Funke über, und er verbrennt.',
  'A misfire now is yours to find; next week it is a complaint.':
    'Einen Aussetzer findet man jetzt selbst; nächste Woche ist er eine Reklamation.',
  'One plug that differs from the others tells more than its shade.':
    'Eine Kerze, die von den anderen abweicht, sagt mehr als ihre Farbe.',
  'Why: {0}': 'Warum: {0}',
  'Why: {0} ({1})': 'Warum: {0} ({1})',
  'common practice, no source': 'übliche Praxis, keine Quelle',
  'linked instrument': 'Messgerät, übermittelt',
  'typed by a person': 'von Hand eingegeben',
  REPLAYED: 'ABGESPIELT',
  SIMULATED: 'SIMULIERT',
  typed: 'von Hand eingegeben',
  'SIMULATED: tools of this job were simulated. No vehicle was worked on, and it proves nothing about any engine.':
    'SIMULIERT: Werkzeuge dieses Auftrags waren simuliert. An keinem Fahrzeug wurde gearbeitet, und es weist nichts über irgendeinen Motor nach.',
  'REPLAYED: readings of this job came from a recording. It proves nothing about any engine.':
    'ABGESPIELT: Messwerte dieses Auftrags kamen aus einer Aufzeichnung. Er weist nichts über irgendeinen Motor nach.',
  'SIMULATED: at least one job in this used simulated tools. Nobody worked on a vehicle in it, and it proves nothing about an engine.':
    'SIMULIERT: mindestens ein Auftrag hierin verwendete simulierte Werkzeuge. Dabei hat niemand an einem Fahrzeug gearbeitet, und er weist nichts über einen Motor nach.',
  'REPLAYED: at least one job in this used readings from a recording. They prove nothing about an engine.':
    'ABGESPIELT: mindestens ein Auftrag hierin verwendete Messwerte aus einer Aufzeichnung. Sie weisen nichts über einen Motor nach.',
  'SIMULATED: NO REAL TOOL MEASURED THIS. NOT A RECORD OF WORK ON A VEHICLE.':
    'SIMULIERT: KEIN ECHTES WERKZEUG HAT DAS GEMESSEN. KEIN PROTOKOLL EINER ARBEIT AN EINEM FAHRZEUG.',
  'REPLAYED: READ FROM A RECORDING. NOT A RECORD OF WORK ON A VEHICLE.':
    'ABGESPIELT: AUS EINER AUFZEICHNUNG GELESEN. KEIN PROTOKOLL EINER ARBEIT AN EINEM FAHRZEUG.',
  '{0}: FIGURES PROVE NOTHING. NOT A RECORD OF WORK ON A VEHICLE.':
    '{0}: DIE WERTE WEISEN NICHTS NACH. KEIN PROTOKOLL EINER ARBEIT AN EINEM FAHRZEUG.',
  'values typed, not read from the instrument over a link: attested by a person':
    'Werte von Hand eingegeben, nicht vom Messgerät übermittelt: von einer Person bezeugt',
  'values REPLAYED from a recording, not read from the instrument: they prove nothing':
    'Werte aus einer Aufzeichnung ABGESPIELT, nicht vom Messgerät gelesen: sie weisen nichts nach',
  'SIMULATED, there was no instrument: its values prove nothing':
    'SIMULIERT, es gab kein Messgerät: seine Werte weisen nichts nach',
  '# torque|# torques': { one: '# Drehmoment', other: '# Drehmomente' },
  '# gap|# gaps': { one: '# Elektrodenabstand', other: '# Elektrodenabstände' },
  '# turn|# turns': { one: '# Drehwinkel', other: '# Drehwinkel' },
  '# torque proven by a linked wrench|# torques proven by a linked wrench': {
    one: '# Drehmoment nachgewiesen, vom Schlüssel übermittelt',
    other: '# Drehmomente nachgewiesen, vom Schlüssel übermittelt',
  },
  '# gap proven by a linked gauge|# gaps proven by a linked gauge': {
    one: '# Elektrodenabstand nachgewiesen, von der Lehre übermittelt',
    other: '# Elektrodenabstände nachgewiesen, von der Lehre übermittelt',
  },
  '# turn proven by a linked wrench|# turns proven by a linked wrench': {
    one: '# Drehwinkel nachgewiesen, vom Schlüssel übermittelt',
    other: '# Drehwinkel nachgewiesen, vom Schlüssel übermittelt',
  },
  '# torque proven|# torques proven': {
    one: '# Drehmoment nachgewiesen',
    other: '# Drehmomente nachgewiesen',
  },
  '# gap proven|# gaps proven': {
    one: '# Elektrodenabstand nachgewiesen',
    other: '# Elektrodenabstände nachgewiesen',
  },
  '# turn proven|# turns proven': { one: '# Drehwinkel nachgewiesen', other: '# Drehwinkel nachgewiesen' },
  '# torque attested|# torques attested': { one: '# Drehmoment bezeugt', other: '# Drehmomente bezeugt' },
  '# gap attested|# gaps attested': {
    one: '# Elektrodenabstand bezeugt',
    other: '# Elektrodenabstände bezeugt',
  },
  '# turn attested|# turns attested': { one: '# Drehwinkel bezeugt', other: '# Drehwinkel bezeugt' },
  '{0} typed by {1}, attested, not proven by an instrument':
    '{0} von Hand eingegeben ({1}), bezeugt, nicht durch ein Messgerät nachgewiesen',
  '{0} REPLAYED, no proof': '{0} ABGESPIELT, kein Nachweis',
  '{0} SIMULATED, no proof': '{0} SIMULIERT, kein Nachweis',
  'a person': 'eine Person',
  'the gaps were looked at, not measured': 'die Elektrodenabstände wurden angesehen, nicht gemessen',
  'the gaps were not checked, as the specification says':
    'die Elektrodenabstände wurden nicht geprüft, wie die Vorgabe es sagt',
  '{0} typed: attested by a person, NOT proven by an instrument.':
    '{0} von Hand eingegeben: von einer Person bezeugt, NICHT durch ein Messgerät nachgewiesen.',
  '{0}: {1} of {2} jobs; these prove nothing about any engine.':
    '{0}: {1} von {2} Aufträgen; diese weisen nichts über irgendeinen Motor nach.',
  'Figures of {0} of {1} jobs were typed: attested by a person, NOT proven by an instrument.':
    'Werte von {0} von {1} Aufträgen wurden von Hand eingegeben: von einer Person bezeugt, NICHT durch ein Messgerät nachgewiesen.',
  'the windows were confirmed': 'die Sollbereiche wurden bestätigt',
  '{0} was confirmed': '{0} wurde bestätigt',
  'old plug read, cylinder {0}': 'alte Zündkerze begutachtet, Zylinder {0}',
  'old plug read, cylinders {0}': 'alte Zündkerze begutachtet, Zylinder {0}',
  'gap of the old plug of cylinder {0}, {1}': 'Elektrodenabstand der alten Zündkerze von Zylinder {0}, {1}',
  'new plug checked, cylinder {0}': 'neue Zündkerze geprüft, Zylinder {0}',
  'new plug checked, cylinders {0}': 'neue Zündkerze geprüft, Zylinder {0}',
  'gap of cylinder {0}, {1}': 'Elektrodenabstand von Zylinder {0}, {1}',
  'gap of cylinder {0} looked at: good': 'Elektrodenabstand von Zylinder {0} angesehen: gut',
  'gap of cylinder {0} looked at: not good': 'Elektrodenabstand von Zylinder {0} angesehen: nicht gut',
  'plug for cylinder {0} discarded: {1}': 'Zündkerze für Zylinder {0} verworfen: {1}',
  'pull {0}, cylinder {1}, answered: {2}': 'Zug {0}, Zylinder {1}, beantwortet: {2}',
  'cylinder {0} fitted by angle': 'Zylinder {0} nach Winkel eingesetzt',
  'cylinder {0}, pull {1} left as it is': 'Zylinder {0}, Zug {1} bleibt, wie er ist',
  'the list before removal': 'die Liste vor dem Ausbau',
  'the list before fitting': 'die Liste vor dem Einbau',
  'the list for afterwards': 'die Liste für danach',
  'confirm the windows': 'die Sollbereiche bestätigen',
  'confirm the list before removal': 'die Liste vor dem Ausbau bestätigen',
  'read the old plug': 'die alte Zündkerze begutachten',
  'check the new plug': 'die neue Zündkerze prüfen',
  'measure the gap of the plug': 'den Elektrodenabstand der Zündkerze messen',
  'confirm the list before fitting': 'die Liste vor dem Einbau bestätigen',
  'confirm the list for afterwards': 'die Liste für danach bestätigen',
  'before the windows were confirmed': 'bevor die Sollbereiche bestätigt waren',
  'before the list before removal was confirmed': 'bevor die Liste vor dem Ausbau bestätigt war',
  'before its old plug was read': 'bevor die alte Zündkerze begutachtet war',
  'before its new plug was checked': 'bevor die neue Zündkerze geprüft war',
  'before the gap of its plug was proven': 'bevor der Elektrodenabstand der Zündkerze nachgewiesen war',
  'before the list before fitting was confirmed': 'bevor die Liste vor dem Einbau bestätigt war',
  'after the list for afterwards was confirmed': 'nachdem die Liste für danach bestätigt war',
  'the windows are not confirmed': 'die Sollbereiche sind nicht bestätigt',
  'the list before removal is not confirmed': 'die Liste vor dem Ausbau ist nicht bestätigt',
  'the old plugs are not read': 'die alten Zündkerzen sind nicht begutachtet',
  'the new plugs are not checked': 'die neuen Zündkerzen sind nicht geprüft',
  'the gap of this old plug was measured already':
    'der Elektrodenabstand dieser alten Zündkerze wurde schon gemessen',
  'the plug whose gap is open is in the engine':
    'die Zündkerze, deren Elektrodenabstand offen ist, sitzt im Motor',
  'a plug was pulled before its gap was measured':
    'eine Zündkerze wurde angezogen, bevor ihr Elektrodenabstand gemessen war',
  'Back that plug out and press b. Then measure it.':
    'Diese Zündkerze herausdrehen und b drücken. Dann sie messen.',
  'no gap is due': 'kein Elektrodenabstand ist an der Reihe',
  'no spark plug has such a gap': 'keine Zündkerze hat einen solchen Elektrodenabstand',
  'First confirm the windows.': 'Zuerst die Sollbereiche bestätigen.',
  'First confirm the list before removal.': 'Zuerst die Liste vor dem Ausbau bestätigen.',
  'First read the old plugs.': 'Zuerst die alten Zündkerzen begutachten.',
  'First check the new plugs.': 'Zuerst die neuen Zündkerzen prüfen.',
  'Confirm how this plug looks, then measure the next.':
    'Bestätigen, wie diese Zündkerze aussieht, dann die nächste messen.',
  'Take the plug out and start it again.': 'Zündkerze herausdrehen und neu beginnen.',
  'Go on.': 'Weitermachen.',
  'Measure again, and check the unit.': 'Neu messen und die Einheit prüfen.',
  '{0}; done again since': '{0}; inzwischen neu gemacht',
  'pull {0} on cylinder {1} came {2}': 'Zug {0} an Zylinder {1} kam, {2}',
  'an old plug was loosened (pull {0}) and came {1}': 'eine alte Zündkerze wurde gelöst (Zug {0}), {1}',
  'the old plug of cylinder {0} came {1}': 'die alte Zündkerze von Zylinder {0} kam, {1}',
  'the plug of cylinder {0}, by angle, came {1}': 'die Zündkerze von Zylinder {0}, nach Winkel, kam, {1}',
  'the gap of cylinder {0} came {1}': 'der Elektrodenabstand von Zylinder {0} kam, {1}',
  'OUT OF ORDER': 'AUSSER DER REIHE',
  '{0}: {1}.': '{0}: {1}.',
  '{0}: {1}, and {2} more.': '{0}: {1}, und {2} weitere.',
  'the angle did not come with every reading': 'der Winkel kam nicht mit jedem Messwert',
  'the angle jumped': 'der Winkel sprang',
  'the angle stood still': 'der Winkel stand still',
  'the angle ran against the pull': 'der Winkel lief gegen den Zug',
  'the angle ran by itself while the wrench was at rest':
    'der Winkel lief von selbst, während der Schlüssel ruhte',
  'turn not measured: {0}': 'Drehwinkel nicht gemessen: {0}',
  'turned {0}': 'gedreht um {0}',
  '{0}: {1} to the snug point, {2} from there': '{0}: {1} bis zur Anlage, {2} ab dort',
  '{0} to {1}': '{0} bis {1}',
  'turn not proven': 'Drehwinkel nicht nachgewiesen',
  'turn {0} ± {1}: {2}': 'Drehwinkel {0} ± {1}: {2}',
  torque: 'Drehmoment',
  length: 'Länge',
  angle: 'Winkel',
  energy: 'Energie',
  stiffness: 'Steifigkeit',
  'force or mass': 'Kraft oder Masse',
  'N·m, lbf·ft, lbf·in, kgf·m or kgf·cm': 'N·m, lbf·ft, lbf·in, kgf·m oder kgf·cm',
  '25-30 N·m or 18 N·m ±10 %': '25-30 N·m oder 18 N·m ±10 %',
  'mm, in or mil': 'mm, in oder mil',
  '0.7-0.8 mm or 1.0 +0/-0.1 mm': '0.7-0.8 mm oder 1.0 +0/-0.1 mm',
  '° or turn': '° oder Umdrehung',
  '1/2-2/3 turn or 90°': '1/2-2/3 Umdrehung oder 90°',
  '"{0}" is a single figure; a reading is compared with a range':
    '"{0}" ist ein Einzelwert; ein Messwert wird mit einem Bereich verglichen',
  'Add the tolerance that the source allows, for example {0}.':
    'Die Toleranz ergänzen, die die Quelle erlaubt, zum Beispiel {0}.',
  'expected one figure, not a range': 'erwartet wird ein einzelner Wert, kein Bereich',
  'Give one figure in {0}.': 'Einen Wert in {0} angeben.',
  'one deviation is in % and the other is not': 'eine Abweichung ist in %, die andere nicht',
  'Give both in % or both in the unit.': 'Beide in % oder beide in der Einheit angeben.',
  'the range runs from {0} down to {1}': 'der Bereich läuft von {0} abwärts bis {1}',
  'Give the lower figure first.': 'Den kleineren Wert zuerst angeben.',
  'both limits are {0}; no reading can be proven':
    'beide Grenzen sind {0}; kein Messwert lässt sich nachweisen',
  'Give the tolerance that the source allows.': 'Die Toleranz angeben, die die Quelle erlaubt.',
  '{0} is not above zero': '{0} ist nicht größer als null',
  'Expected figures above zero, for example {0}.': 'Erwartet werden Werte über null, zum Beispiel {0}.',
  '"{0}" is far too large for a spark plug': '"{0}" ist viel zu groß für eine Zündkerze',
  'Check the figure and its unit against the source.': 'Wert und Einheit mit der Quelle vergleichen.',
  '"{0}" can be read as a fraction or as a range': '"{0}" lässt sich als Bruch oder als Bereich lesen',
  'Write a range with a dash, for example {0}.': 'Einen Bereich mit Strich schreiben, zum Beispiel {0}.',
  '"{0}" can be read as a thousand or as a decimal':
    '"{0}" lässt sich als Tausender oder als Dezimalzahl lesen',
  'Write thousands without a separator and decimals without needless zeros.':
    'Tausender ohne Trennzeichen und Dezimalzahlen ohne überflüssige Nullen schreiben.',
  'a figure has a minus sign': 'ein Wert hat ein Minuszeichen',
  '"{0} {1}" can be one figure in groups of three or two figures':
    '"{0} {1}" kann eine Zahl in Dreiergruppen sein oder zwei Zahlen',
  'Write thousands without a separator and ranges with a dash.':
    'Tausender ohne Trennzeichen und Bereiche mit Strich schreiben.',
  '"{0}" is not a unit in which this {1} is printed':
    '"{0}" ist keine Einheit, in der diese Größe angegeben wird ({1})',
  'Expected {0}.': 'Erwartet: {0}.',
  '"{0}" is a unit of {1}, not of {2}': '"{0}" ist eine Einheit für {1}, nicht für {2}',
  '"{0}" is the second unit in one range': '"{0}" ist die zweite Einheit in einem Bereich',
  'Give the figures in one unit, the one that the source prints first.':
    'Die Werte in einer Einheit angeben, der, die die Quelle zuerst druckt.',
  'there is no unit': 'die Einheit fehlt',
  'expected one {0} in one unit and nothing else': 'erwartet wird: {0} in einer Einheit, sonst nichts',
  'Write for example {0}.': 'Zum Beispiel {0} schreiben.',
  'character {0} of "{1}"': 'Zeichen {0} von "{1}"',
  'the text has {0} characters; a range has a few': 'der Text hat {0} Zeichen; ein Bereich hat wenige',
  'Give the range alone, for example 25-30 N·m.': 'Nur den Bereich angeben, zum Beispiel 25-30 N·m.',
  '"{0}" cannot be read here': '"{0}" ist hier nicht lesbar',
  'Give one range in one unit, for example 25-30 N·m.':
    'Einen Bereich in einer Einheit angeben, zum Beispiel 25-30 N·m.',
  '"{0}" is not a known unit or word': '"{0}" ist keine bekannte Einheit und kein bekanntes Wort',
  'Write for example N·m, lbf·ft, lbf·in, kgf·m, mm, in, mil, ° or turn.':
    'Zum Beispiel N·m, lbf·ft, lbf·in, kgf·m, mm, in, mil, ° oder Umdrehung schreiben.',
  '"{0}" has {1} digits; no publisher prints more than {2}':
    '"{0}" hat {1} Ziffern; niemand druckt mehr als {2}',
  'Give the figure as printed in the source.': 'Den Wert so angeben, wie die Quelle ihn druckt.',
  'Write thousands without a separator and decimals with a point.':
    'Tausender ohne Trennzeichen und Dezimalzahlen mit Punkt schreiben.',
  '{0} cannot be for {1}: {2}': '{0} kann für {1} nicht sein: {2}',
  'Check figure and unit against the source.': 'Wert und Einheit mit der Quelle abgleichen.',
  '{0} on {1} is not usual: {2}': '{0} an {1} ist nicht üblich: {2}',
  'Check figure and unit. If the source gives it, name who checked it in specification.checkedBy.':
    'Wert und Einheit prüfen. Steht er so in der Quelle, in specification.checkedBy angeben, wer ihn geprüft hat.',
  'a solid thread of mild steel yields at {0} {1}': 'ein volles Gewinde aus weichem Stahl fließt bei {0} {1}',
  'no general table has a figure for this thread and seat, and {0}':
    'keine allgemeine Tabelle hat einen Wert für dieses Gewinde und diesen Sitz, und {0}',
  'general tables say {0} to {1} {2} ({3}, {4}), and {5}':
    'allgemeine Tabellen nennen {0} bis {1} {2} ({3}, {4}), und {5}',
  'plug makers advise 1/16 of a turn on a conical seat and up to 2/3 on a new gasket':
    'Kerzenhersteller raten zu 1/16 Umdrehung bei Kegelsitz und bis zu 2/3 bei neuem Dichtring',
  'gaps of spark plugs lie between 0.4 and 1.6 mm (0.016 and 0.063 in)':
    'Elektrodenabstände von Zündkerzen liegen zwischen 0.4 und 1.6 mm (0.016 und 0.063 in)',
  'plug makers let a ground electrode be bent by about {0} {1} in all':
    'Kerzenhersteller lassen eine Masseelektrode insgesamt um etwa {0} {1} biegen',
  'wires are made to a few thousandths of a millimetre':
    'Messdrähte sind auf wenige Tausendstel Millimeter genau',
  'shops reduce by 10 to 40 % for lubricated threads':
    'Werkstätten verringern bei geschmiertem Gewinde um 10 bis 40 %',
  'where makers print a tolerance on the torque of a plug it is 5 to 15 %':
    'wo Hersteller eine Toleranz für das Drehmoment einer Zündkerze drucken, sind es 5 bis 15 %',
  'threads of spark plugs are 9 to 29 mm long': 'Gewinde von Zündkerzen sind 9 bis 29 mm lang',
  'the hexagon of a plug with this thread is between {0} and {1} mm wide':
    'der Sechskant einer Zündkerze mit diesem Gewinde ist zwischen {0} und {1} mm breit',
  'the specification has no gap': 'die Vorgabe nennt keinen Elektrodenabstand',
  'Give the gap as printed, for example 0.7-0.8 mm, or set gapRules.check so that it is not measured.':
    'Den Elektrodenabstand angeben wie gedruckt, zum Beispiel 0.7-0.8 mm, oder gapRules.check so setzen, dass er nicht gemessen wird.',
  'the service limit of {0} {1} lies below the gap of a new plug':
    'die Verschleißgrenze von {0} {1} liegt unter dem Elektrodenabstand einer neuen Zündkerze',
  'Give the widest gap at which a used plug may go on.':
    'Den größten Elektrodenabstand angeben, mit dem eine gebrauchte Zündkerze weiterlaufen darf.',
  'the gap is checked by wire, but no wires are given':
    'der Elektrodenabstand wird mit Draht geprüft, aber es sind keine Drähte angegeben',
  'Give the wires, for example {"go": "0.72 mm", "noGo": "0.78 mm", "within": "0.003 mm"}.':
    'Die Drähte angeben, zum Beispiel {"go": "0.72 mm", "noGo": "0.78 mm", "within": "0.003 mm"}.',
  'the go wire is not thinner than the no-go wire': 'der Gutdraht ist nicht dünner als der Ausschussdraht',
  'Give the thinner wire as go.': 'Den dünneren Draht als go angeben.',
  'expected an adapter that leaves a lever between hand and plug':
    'erwartet wird ein Adapter, der zwischen Hand und Zündkerze einen Hebel lässt',
  'Use a straight extension, or state how far the torque may be off by it, and who measured that.':
    'Eine gerade Verlängerung verwenden, oder angeben, um wie viel das Drehmoment dadurch abweichen kann und wer das gemessen hat.',
  'nobody can compute what torque a wobble extension passes on when it is bent':
    'niemand kann berechnen, welches Drehmoment eine Kippverlängerung abgewinkelt weitergibt',
  'a universal joint bent by {0}° passes torque on too unevenly; {1}° is the most':
    'ein um {0}° abgewinkeltes Kardangelenk gibt das Drehmoment zu ungleichmäßig weiter; höchstens {1}°',
  'not every cylinder has exactly one part; named are {0}':
    'nicht jeder Zylinder hat genau ein Teil; genannt sind {0}',
  '{0} is neither the part of the order nor one of the others':
    '{0} ist weder das Teil des Auftrags noch eines der anderen',
  'Name every cylinder once, with "part" or one of "alsoParts".':
    'Jeden Zylinder einmal nennen, mit "part" oder einem aus "alsoParts".',
  'there is no torque. Give it as printed; where the source prints an angle alone, give that angle in its place':
    'das Drehmoment fehlt. So angeben, wie es gedruckt ist; druckt die Quelle nur einen Winkel, diesen an seiner Stelle angeben',
  'expected km or months': 'erwartet werden km oder Monate',
  'the figure is already for {0}; a reduction for {1} would count twice':
    'der Wert gilt schon für {0}; eine Verringerung für {1} würde doppelt zählen',
  'Remove the reduction, or give the figure for dry threads.':
    'Die Verringerung entfernen, oder den Wert für trockenes Gewinde angeben.',
  'a turn without a tolerance cannot be judged': 'ein Drehwinkel ohne Toleranz lässt sich nicht beurteilen',
  'Give two limits, such as 180-240°.': 'Zwei Grenzen angeben, etwa 180-240°.',
  'the order names an angle in place of a torque, and this belongs to a torque':
    'der Auftrag nennt einen Winkel statt eines Drehmoments, und dies gehört zu einem Drehmoment',
  'Remove it, or give the torque of the source in specification.torque.':
    'Entfernen, oder in specification.torque das Drehmoment der Quelle angeben.',
  "{0} Or give the shop's own rule for single figures: singleFigure.":
    '{0} Oder die eigene Regel der Werkstatt für Einzelwerte angeben: singleFigure.',
  'Compare it with the certificate.': 'Mit dem Kalibrierschein vergleichen.',
  'Ask the laboratory about this certificate.': 'Beim Labor nach diesem Kalibrierschein fragen.',
  'certificate {0}: {1}': 'Kalibrierschein {0}: {1}',
  'tool {0}: permissibleDeviation': 'Werkzeug {0}: permissibleDeviation',
  'the permissible deviation is missing': 'die zulässige Abweichung fehlt',
  'Give its certificate, or the limits of its class or data sheet.':
    'Den Kalibrierschein angeben, oder die Grenzen der Genauigkeitsklasse oder des Datenblatts.',
  'tool {0}: serial': 'Werkzeug {0}: serial',
  'certificate {0} is for serial number {1}; this tool has none':
    'Kalibrierschein {0} gilt für Seriennummer {1}; dieses Werkzeug hat keine',
  'Give the serial number on the tool.': 'Die Seriennummer auf dem Werkzeug angeben.',
  'it is for serial number {0}, but tool {1} is {2}':
    'er gilt für Seriennummer {0}, aber Werkzeug {1} hat {2}',
  'Use the certificate of this tool.': 'Den Kalibrierschein dieses Werkzeugs verwenden.',
  'it is dated {0}, after the day of the job, {1}': 'er trägt das Datum {0}, nach dem Tag des Auftrags, {1}',
  'Check the date of the certificate and the clock of this computer.':
    'Datum des Kalibrierscheins und Uhr dieses Rechners prüfen.',
  'it is due on {0}, before its own date, {1}': 'er ist fällig am {0}, vor seinem eigenen Datum, {1}',
  'Give the last day on which the certificate holds.':
    'Den letzten Tag angeben, an dem der Kalibrierschein gilt.',
  'its points are in {0}; tool {1} measures in {2}':
    'seine Messpunkte sind in {0}; Werkzeug {1} misst in {2}',
  'it was out of tolerance on {0} ({1}): {2} and cannot be used':
    'außer Toleranz am {0} ({1}): {2}; darf nicht verwendet werden',
  'Have it adjusted and calibrated, and give the certificate of that day or later.':
    'Justieren und kalibrieren lassen und den Kalibrierschein von diesem Tag oder später angeben.',
  'its calibration expired on {0}': 'die Kalibrierung ist abgelaufen am {0}',
  'Have it calibrated.': 'Kalibrieren lassen.',
  'it has done {0} cycles since its calibration; {1} are allowed':
    '{0} Auslösungen seit der Kalibrierung; erlaubt sind {1}',
  'it may be used {0}; this job asks for {1}': 'verwendbar {0}; dieser Auftrag braucht {1}',
  'Use one of another size.': 'Eines anderer Größe verwenden.',
  'it is calibrated {0}; this job asks for {1}': 'kalibriert {0}; dieser Auftrag braucht {1}',
  'Use one that is calibrated there, or have more points calibrated.':
    'Eines verwenden, das dort kalibriert ist, oder weitere Messpunkte kalibrieren lassen.',
  'off by {0}{1} {2} at {3} {4}': 'Abweichung {0}{1} {2} bei {3} {4}',
  'from {0} to {1} {2}': 'von {0} bis {1} {2}',
  '{0} to {1} {2}': '{0} bis {1} {2}',
  'Look at the screen and choose again.': 'Auf den Bildschirm sehen und neu wählen.',
  'expected for example "in-line 4", "V8", "flat 6", or the banks, "1 3 5 7 / 2 4 6 8"':
    'erwartet wird zum Beispiel "Reihe 4", "V8", "Boxer 6" oder die Bänke, "1 3 5 7 / 2 4 6 8"',
  'expected {0} to {1} cylinders': 'erwartet werden {0} bis {1} Zylinder',
  '"{0}" is no cylinder number': '"{0}" ist keine Zylindernummer',
  'expected cylinder numbers, such as 1 3 4 2': 'erwartet werden Zylindernummern, etwa 1 3 4 2',
  'expected a name, without spaces at its ends': 'erwartet wird ein Name ohne Leerzeichen an den Enden',
  'the source is dated {0}, after the day of the job, {1}':
    'die Quelle trägt das Datum {0}, nach dem Tag des Auftrags, {1}',
  'Check the date of the source and the clock of this computer.':
    'Datum der Quelle und Uhr dieses Rechners prüfen.',
  'tool {0}': 'Werkzeug {0}',
  'tool {0}, first step': 'Werkzeug {0}, erste Stufe',
  'a plug that fits these wires lies between {0} and {1} {2}, which is not within {3} less the guard band':
    'eine Zündkerze, die zu diesen Drähten passt, liegt zwischen {0} und {1} {2}; das ist nicht innerhalb von {3} abzüglich Schutzband',
  'Take wires between {0} and {1} {2}.': 'Drähte zwischen {0} und {1} {2} nehmen.',
  'tool {0}: {1}': 'Werkzeug {0}: {1}',
  'the station has no torque wrench': 'der Arbeitsplatz hat keinen Drehmomentschlüssel',
  'the station has no gap gauge': 'der Arbeitsplatz hat keine Lehre für den Elektrodenabstand',
  'Add a tool with "quantity": "{0}" to the station file.':
    'In der Arbeitsplatzdatei ein Werkzeug mit "quantity": "{0}" ergänzen.',
  'expected 1 to 40 letters, digits, dots, hyphens or underscores, the first a letter or digit':
    'erwartet werden 1 bis 40 Buchstaben, Ziffern, Punkte, Binde- oder Unterstriche, zuerst ein Buchstabe oder eine Ziffer',
  'the job does not start with its opening': 'der Auftrag beginnt nicht mit seiner Eröffnung',
  'these rules know no {0}': 'diese Regeln kennen kein {0}',
  'it could not have been opened so': 'so hätte er nicht eröffnet werden können',
  'its windows are not what the order and the instruments give':
    'seine Sollbereiche sind nicht die, die Auftrag und Messgeräte ergeben',
  '{0}, but the readings give nothing here': '{0}, aber die Messwerte ergeben hier nichts',
  '{0} is not what the readings give': '{0} ist nicht das, was die Messwerte ergeben',
  '{0} is missing here': '{0} fehlt hier',
  'the readings in {0} do not follow the last ones': 'die Messwerte in {0} folgen nicht auf die letzten',
  'the source in {0} does not fit the kind of its link':
    'die Herkunft in {0} passt nicht zur Art der Verbindung',
  '{0} cannot have come from a tool': '{0} kann nicht von einem Werkzeug gekommen sein',
  '{0} would have been refused here': '{0} wäre hier abgelehnt worden',
  '{0} is not what the job writes here': '{0} ist nicht das, was der Auftrag hier schreibt',
  'the close of the job does not follow from its events':
    'der Abschluss des Auftrags folgt nicht aus seinen Ereignissen',
  'event {0}': 'Ereignis {0}',
  'Do not rely on this record; keep it and ask the station for its log.':
    'Nicht auf dieses Protokoll verlassen; aufbewahren und beim Arbeitsplatz nach dem Logbuch fragen.',
  'The job is closed.': 'Der Auftrag ist abgeschlossen.',
  'This engine has no cylinder {0}.': 'Dieser Motor hat keinen Zylinder {0}.',
  'A pull is under way.': 'Ein Zug ist im Gange.',
  '{0} is at work already.': '{0} arbeitet schon.',
  '{0} works on this job already.': '{0} arbeitet schon an diesem Auftrag.',
  'A pull is under way. It belongs to the cylinder that was due.':
    'Ein Zug ist im Gange. Er gehört zum Zylinder, der an der Reihe war.',
  'There is no pull {0}.': 'Es gibt keinen Zug {0}.',
  'This job does not check the gap by eye.':
    'Dieser Auftrag prüft den Elektrodenabstand nicht nach Augenschein.',
  'This job does not check the gap by wire.': 'Dieser Auftrag prüft den Elektrodenabstand nicht mit Draht.',
  'Answer the open question first.': 'Zuerst die offene Frage beantworten.',
  'The windows are already confirmed.': 'Die Sollbereiche sind schon bestätigt.',
  'No trial click is due.': 'Kein Probeklick ist an der Reihe.',
  'This job does not record old plugs.': 'Dieser Auftrag erfasst keine alten Zündkerzen.',
  'Too early. First {0}.': 'Zu früh. Zuerst {0}.',
  'read the old plugs': 'die alten Zündkerzen begutachten',
  'check the new plugs': 'die neuen Zündkerzen prüfen',
  'measure the gaps': 'die Elektrodenabstände messen',
  'Cylinder {0} is proven by its turn.': 'Zylinder {0} ist durch den Drehwinkel nachgewiesen.',
  'Cylinder {0} is proven by torque.': 'Zylinder {0} ist durch das Drehmoment nachgewiesen.',
  'The plug of cylinder {0} is in the engine. Take it out and start it again.':
    'Die Zündkerze von Zylinder {0} sitzt im Motor. Herausdrehen und neu beginnen.',
  'No gap that came too early can be kept now.':
    'Ein zu früh gemessener Elektrodenabstand lässt sich jetzt nicht behalten.',
  'The gap for cylinder {0} is done already.': 'Der Elektrodenabstand für Zylinder {0} ist schon erledigt.',
  'No question about a pull over the window, or too early, is open for pull {0}.':
    'Zu Zug {0} ist keine Frage wegen eines Zugs über dem Sollbereich oder eines zu frühen Zugs offen.',
  'This plug was taken out since. It can no longer be left as it was.':
    'Diese Zündkerze wurde inzwischen herausgedreht. Sie kann nicht mehr bleiben, wie sie war.',
  'The gap of this plug is not proven. Take the plug out and measure it.':
    'Der Elektrodenabstand dieser Zündkerze ist nicht nachgewiesen. Zündkerze herausdrehen und messen.',
  'This torque is not OK. Take the plug out and do it again.':
    'Dieses Drehmoment ist nicht OK. Zündkerze herausdrehen und neu machen.',
  'Only the final torque can be left as it is.': 'Nur das Enddrehmoment kann bleiben, wie es ist.',
  'This job has no such list.': 'Dieser Auftrag hat keine solche Liste.',
  'This list comes last. First tighten every plug.':
    'Diese Liste kommt zuletzt. Zuerst alle Zündkerzen anziehen.',
  'Answer this item too: "{0}".': 'Auch diesen Punkt beantworten: "{0}".',
  '"{0}" is not on this list.': '"{0}" steht nicht auf dieser Liste.',
  'The answers to "{0}" are: {1}.': 'Die Antworten auf "{0}" sind: {1}.',
  'Give the reason why this is not done: "{0}".': 'Den Grund angeben, warum das nicht gemacht ist: "{0}".',
  'An item is answered twice.': 'Ein Punkt ist zweimal beantwortet.',
  'This job does not check new plugs.': 'Dieser Auftrag prüft keine neuen Zündkerzen.',
  ' or ': ' oder ',
  'Cylinder {0} takes {1}, not {2}: this engine has two different plugs.':
    'In Zylinder {0} gehört {1}, nicht {2}: dieser Motor hat zwei verschiedene Zündkerzen.',
  'The specification allows {0} in this engine, not {1}.':
    'Die Vorgabe erlaubt in diesem Motor {0}, nicht {1}.',
  '{0} declared this job void already.': '{0} hat diesen Auftrag schon für ungültig erklärt.',
  'No question is open about pull {0}.': 'Zu Zug {0} ist keine Frage offen.',
  '"{0}" does not answer this question.': '"{0}" beantwortet diese Frage nicht.',
  'No pull of cylinder {0} can belong to the next plug.':
    'Kein Zug von Zylinder {0} kann zur nächsten Zündkerze gehören.',
  'the job was opened under {0}; this program works under {1}':
    'der Auftrag wurde unter {0} eröffnet; dieses Programm arbeitet unter {1}',
  'Finish it with the version of the program that opened it, or declare it void and open it anew.':
    'Mit der Programmversion fertigstellen, die ihn eröffnet hat, oder für ungültig erklären und neu eröffnen.',
  'The engine is cold, or has cooled as long as its maker asks':
    'Der Motor ist kalt oder so lange abgekühlt, wie der Hersteller es verlangt',
  'Ignition off, key away': 'Zündung aus, Schlüssel abgezogen',
  'Boots or coils twisted loose by half a turn, pulled at the boot, never by the wire, and marked':
    'Stecker oder Spulen mit einer halben Drehung gelöst, am Stecker gezogen, nie am Kabel, und gekennzeichnet',
  'Plug wells blown clean with dry air, goggles on, before turning the first plug':
    'Kerzenschächte mit trockener Luft ausgeblasen, Schutzbrille auf, bevor die erste Zündkerze gedreht wird',
  'Hand tools only; no power tool touches a plug': 'Nur Handwerkzeug; keine Maschine kommt an eine Zündkerze',
  'Threads and seats clean, in the head and on the plugs':
    'Gewinde und Sitze sauber, im Zylinderkopf und an den Zündkerzen',
  'Threads in the head chased': 'Gewinde im Zylinderkopf nachgeschnitten',
  'not needed': 'nicht nötig',
  'with grease on the tap, piston and valves clear': 'mit Fett am Gewindebohrer, Kolben und Ventile frei',
  'Nothing on the threads but what the specification says': 'Auf dem Gewinde nur, was die Vorgabe sagt',
  'Each plug started by hand, deep ones with a piece of hose, and turned in to its seat by hand':
    'Jede Zündkerze von Hand angesetzt, tiefe mit einem Stück Schlauch, und von Hand bis zum Sitz eingedreht',
  'Compound in the boots: thin, inside only, none on threads or terminals':
    'Steckerpaste in den Kerzensteckern: dünn, nur innen, nichts auf Gewinde oder Anschluss',
  none: 'ohne',
  'as the maker allows': 'wie vom Hersteller erlaubt',
  'Boots or coils pushed on until they seat, each on its own cylinder, wires in their places':
    'Stecker oder Spulen aufgedrückt, bis sie einrasten, jeder auf seinem Zylinder, Kabel an ihrem Platz',
  'Engine run': 'Motorlauf',
  'runs without misfire': 'läuft ohne Aussetzer',
  misfires: 'hat Aussetzer',
  'not run': 'nicht gelaufen',
  'Old plugs': 'Alte Zündkerzen',
  'kept in cylinder order': 'in Zylinderreihenfolge aufbewahrt',
  'given to the customer': 'dem Kunden gegeben',
  scrapped: 'entsorgt',
  'There is nothing of that number to take back.': 'Unter dieser Nummer gibt es nichts zurückzunehmen.',
  'That was taken back already.': 'Das wurde schon zurückgenommen.',
  'Give the reason why it is taken back.': 'Den Grund angeben, warum es zurückgenommen wird.',
  'Work went on since. Correct pull {0} with c: it was on another cylinder, or its plug starts again.':
    'Seitdem ging die Arbeit weiter. Zug {0} mit c berichtigen: er war an einem anderen Zylinder, oder die Zündkerze beginnt neu.',
  'The new plug for cylinder {0} was checked, measured or pulled since. Take that back first; after a pull it stays.':
    'Die neue Zündkerze für Zylinder {0} wurde seitdem geprüft, gemessen oder angezogen. Zuerst das zurücknehmen; nach einem Zug bleibt es.',
  'the VIN has {0} characters; expected {1}': 'die Fahrgestellnummer hat {0} Zeichen; erwartet werden {1}',
  'the check digit of the VIN is {0}; expected {1}':
    'die Prüfziffer der Fahrgestellnummer ist {0}; erwartet wird {1}',
  'the check digit of the VIN is {0}; expected {1}, though not every market uses it':
    'die Prüfziffer der Fahrgestellnummer ist {0}; erwartet wird {1}, aber nicht jeder Markt verwendet sie',
  '0 or 9': '0 oder 9',
  'the VIN holds a character that is neither a letter A to Z nor a digit':
    'die Fahrgestellnummer enthält ein Zeichen, das weder Buchstabe A bis Z noch Ziffer ist',
  'the VIN holds the letter {0}, which none has; it may be {1}':
    'die Fahrgestellnummer enthält den Buchstaben {0}, den keine hat; es kann {1} sein',
  'Compare it with the vehicle, character by character.': 'Zeichen für Zeichen mit dem Fahrzeug vergleichen.',
  specification: 'Vorgabe',
  '{0} on {1}; {2}: {3}': '{0} für {1}; {2}: {3}',
  'plug and head': 'Kerze und Kopf',
  'shop rule': 'Werkstattregel',
  "single figure, plus/minus {0} %: the shop's own, not the maker's; set by {1}, basis: {2}":
    'Einzelwert, plus/minus {0} %: eigene Regel der Werkstatt, nicht des Herstellers; festgelegt von {1}, Grundlage: {2}',
  reduced: 'verringert',
  'by {0} % for {1}, set by {2}': 'um {0} % für {1}, festgelegt von {2}',
  turn: 'Drehwinkel',
  'advised turn': 'Richtwinkel',
  wrench: 'Schlüssel',
  geometry: 'Geometrie',
  'straight on the plug': 'gerade auf der Zündkerze',
  joint: 'Gelenk',
  '{0} from contact ({1}); judged': '{0} ab Anlage ({1}); wird beurteilt',
  '{0} from contact ({1}); not judged': '{0} ab Anlage ({1}); wird nicht beurteilt',
  '{0}, serial {1}': '{0}, Seriennummer {1}',
  'adapter of {0} at {1} on a wrench of {2}': 'Adapter von {0} unter {1} an einem Schlüssel von {2}',
  'universal joint': 'Kardangelenk',
  'wobble extension': 'Kippverlängerung',
  '{0}, bent by up to {1}': '{0}, abgewinkelt um bis zu {1}',
  '{0}; within {1} % by {2}': '{0}; innerhalb von {1} % laut {2}',
  'certificate {0}, {1}, {2}': 'Kalibrierschein {0}, {1}, {2}',
  'this tool cannot prove any reading between {0} and {1}: its uncertainty (U = {2}) leaves no room in the window':
    'dieses Werkzeug kann zwischen {0} und {1} keinen Messwert nachweisen: seine Messunsicherheit (U = {2}) lässt im Sollbereich keinen Platz',
  'Use an instrument with an expanded uncertainty below {0}.':
    'Ein Messgerät mit einer erweiterten Messunsicherheit unter {0} verwenden.',
  'threads dry': 'Gewinde trocken',
  'threads lightly oiled': 'Gewinde leicht geölt',
  'threads not stated': 'Gewinde nicht genannt',
  '1/16 turn': '1/16 Umdrehung',
  '1/12 turn': '1/12 Umdrehung',
  '1/2 turn': '1/2 Umdrehung',
  '1/2-2/3 turn': '1/2-2/3 Umdrehung',
  'expected an expanded uncertainty': 'erwartet wird eine erweiterte Messunsicherheit',
  'expected an uncertainty above zero': 'erwartet wird eine Messunsicherheit über null',
  'expected a coverage factor of 1 or more': 'erwartet wird ein Erweiterungsfaktor von mindestens 1',
  'expected "N.m" or "mm"; convert other figures first, 1 lbf·ft = 1.355818 N·m':
    'erwartet wird "N.m" oder "mm"; andere Werte zuerst umrechnen, 1 lbf·ft = 1.355818 N·m',
  'expected at least two points': 'erwartet werden mindestens zwei Messpunkte',
  'the reading {0} appears twice': 'der Messwert {0} kommt zweimal vor',
  'expected one of {0}': 'erwartet wird eines von {0}',
  'it is nested too deeply': 'es ist zu tief verschachtelt',
  'not a calibration certificate that can be read: {0}': 'kein lesbarer Kalibrierschein: {0}',
  'Ask the laboratory for a DCC with such points, or type the points into the JSON form.':
    'Beim Labor ein DCC mit solchen Messpunkten erbitten, oder die Messpunkte in die JSON-Form eintragen.',
  'it is far too large': 'es ist viel zu groß',
  'it declares a document type, which no DCC does': 'es deklariert einen Dokumenttyp, was kein DCC tut',
  'its root is not digitalCalibrationCertificate': 'seine Wurzel ist nicht digitalCalibrationCertificate',
  'name of the laboratory': 'Name des Labors',
  'serial number of the item': 'Seriennummer des Gegenstands',
  'it is for 0 items; expected one instrument': 'es gilt für 0 Gegenstände; erwartet wird ein Messgerät',
  'it is for {0} instruments, with the serial numbers {1}; give the tool that it is for one of them':
    'es gilt für {0} Messgeräte mit den Seriennummern {1}; dem Werkzeug, für das es gilt, eine davon geben',
  'its points are for turning counter-clockwise; a spark plug is tightened clockwise':
    'seine Messpunkte gelten gegen den Uhrzeigersinn; eine Zündkerze wird im Uhrzeigersinn angezogen',
  'its points are {0}, not newton metres or millimetres':
    'seine Messpunkte sind {0}, nicht Newtonmeter oder Millimeter',
  'no result holds readings (basic_measuredValue) with errors or reference values':
    'kein Ergebnis enthält Messwerte (basic_measuredValue) mit Abweichungen oder Referenzwerten',
  'its points carry no expanded uncertainty': 'seine Messpunkte haben keine erweiterte Messunsicherheit',
  'its lists differ in length': 'seine Listen sind verschieden lang',
  'readings and reference values do not go together': 'Messwerte und Referenzwerte passen nicht zusammen',
  '{0} is missing': 'es fehlt: {0}',
  'one list holds several units': 'eine Liste enthält mehrere Einheiten',
  'a list of "{0}" holds something that is no number':
    'eine Liste mit "{0}" enthält etwas, das keine Zahl ist',
  kelvins: 'Kelvin',
  'degrees Celsius': 'Grad Celsius',
  ohms: 'Ohm',
  volts: 'Volt',
  'newtons, a force': 'Newton, eine Kraft',
  pascals: 'Pascal',
  hectopascals: 'Hektopascal',
  kilograms: 'Kilogramm',
  grams: 'Gramm',
  'cubic centimetres': 'Kubikzentimeter',
  joules: 'Joule',
  'figures without a unit': 'Zahlen ohne Einheit',
  'per cent': 'Prozent',
  'in the unit {0}': 'in der Einheit {0}',
  'expected the number of an impact assessment, like IA-1':
    'erwartet wird die Nummer einer Auswirkungsbewertung, etwa IA-1',
  'expected a short name in small letters, digits and hyphens':
    'erwartet wird ein Kurzname aus Kleinbuchstaben, Ziffern und Bindestrichen',
  'expected the lower end first': 'erwartet wird zuerst das untere Ende',
  'all readings are the same: a spread of zero is the step of the display, not the repeatability':
    'alle Messwerte sind gleich: eine Streuung von null ist die Schrittweite der Anzeige, nicht die Wiederholbarkeit',
  'expected small letters, digits and hyphens, at most 40, a letter first':
    'erwartet werden Kleinbuchstaben, Ziffern und Bindestriche, höchstens 40, zuerst ein Buchstabe',
  '"{0}" is an answer to every item; expected another name':
    '"{0}" ist eine Antwort auf jeden Punkt; erwartet wird ein anderer Name',
  '"{0}" is there twice': '"{0}" steht zweimal da',
  '"{0}" is not one of the choices': '"{0}" ist keine der Antworten',
  'it sends bytes that its profile does not describe': 'er sendet Bytes, die sein Profil nicht beschreibt',
  'by its profile it reads figures that no tool can have':
    'nach seinem Profil liest er Werte, die kein Werkzeug haben kann',
};
