-- The log: what is written here stays. `body` is what is signed: canonical JSON, stored as one byte that names a dictionary
-- and then raw deflate (RFC 1951), with its salt taken out (`"salt":""`), which lies in `salt`. `hash` is the leaf hash
-- (RFC 9162) of the body with its salt in the Merkle tree over all entries. `kind` is 0 for samples, 2 for what opens,
-- closes or voids a job, 1 for all else; it repeats a part of the body for look-up, as `seq`, `stream` and `n` do.
PRAGMA application_id = 0x504C4D4B;

-- Entries are much alike: text that they are deflated with the help of, so that any program that knows RFC 1951 can read
-- them with nothing but this file.
CREATE TABLE dictionaries (
  id   INTEGER PRIMARY KEY CHECK (id BETWEEN 1 AND 255),
  text TEXT    NOT NULL
) STRICT;

CREATE TABLE streams (
  id   INTEGER PRIMARY KEY,
  name TEXT    NOT NULL UNIQUE
) STRICT;

CREATE TABLE entries (
  seq    INTEGER PRIMARY KEY,
  stream INTEGER NOT NULL REFERENCES streams (id),
  n      INTEGER NOT NULL,
  kind   INTEGER NOT NULL CHECK (kind IN (0, 1, 2)),
  hash   BLOB    NOT NULL CHECK (length(hash) = 32),
  salt   BLOB    NOT NULL CHECK (length(salt) = 16),
  body   BLOB    NOT NULL,
  UNIQUE (stream, n)
) STRICT;

-- The personal texts of entries, each with the salt of its digest in the body. They are no part of the log: a person can
-- be forgotten, and every hash holds. `place` is seq * 65536 and the number of the text in the entry, counted from 0;
-- `kind` is the word for what it is.
CREATE TABLE disclosures (
  place INTEGER PRIMARY KEY,
  kind  TEXT    NOT NULL,
  salt  BLOB    NOT NULL CHECK (length(salt) = 16),
  text  TEXT    NOT NULL
) STRICT;

-- The roots of all whole subtrees of 32 leaves and more; smaller ones are made again from their leaves when asked for.
-- Subtree `index` of `level` (2^level leaves) lies at index * 2^(level + 1) + 2^level - 1: numbered from left to right, so
-- that appending goes on at the end.
CREATE TABLE subtrees (
  place INTEGER PRIMARY KEY,
  hash  BLOB NOT NULL CHECK (length(hash) = 32)
) STRICT;

-- Every checkpoint that was ever signed.
CREATE TABLE checkpoints (
  place INTEGER PRIMARY KEY,
  size  INTEGER NOT NULL,
  note  TEXT    NOT NULL
) STRICT;

CREATE TRIGGER entries_stay BEFORE DELETE ON entries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry cannot be deleted');
END;

CREATE TRIGGER entries_do_not_change BEFORE UPDATE ON entries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry cannot be changed');
END;

-- INSERT OR REPLACE deletes without firing a trigger unless recursive_triggers is on, so that these refuse whatever could
-- collide with an entry that is there.
CREATE TRIGGER entries_follow_in_log BEFORE INSERT ON entries
WHEN NEW.seq IS NOT (SELECT coalesce(max(seq), 0) + 1 FROM entries)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: seq must follow the last entry');
END;

CREATE TRIGGER entries_follow_in_stream BEFORE INSERT ON entries
WHEN NEW.n IS NOT (SELECT coalesce(max(n), 0) + 1 FROM entries WHERE stream = NEW.stream)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: n must follow the last entry of the stream');
END;

-- Foreign keys bind only connections that ask for it.
CREATE TRIGGER entries_have_a_stream BEFORE INSERT ON entries
WHEN NOT EXISTS (SELECT 1 FROM streams WHERE id = NEW.stream)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: an entry belongs to a stream that is there');
END;

CREATE TRIGGER streams_stay BEFORE DELETE ON streams
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a stream cannot be deleted');
END;

CREATE TRIGGER streams_do_not_change BEFORE UPDATE ON streams
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a stream cannot be changed');
END;

CREATE TRIGGER streams_follow BEFORE INSERT ON streams
WHEN NEW.id IS NOT (SELECT coalesce(max(id), 0) + 1 FROM streams)
  OR EXISTS (SELECT 1 FROM streams WHERE name = NEW.name)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a stream must follow the last one');
END;

CREATE TRIGGER dictionaries_stay BEFORE DELETE ON dictionaries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a dictionary cannot be deleted');
END;

CREATE TRIGGER dictionaries_do_not_change BEFORE UPDATE ON dictionaries
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a dictionary cannot be changed');
END;

CREATE TRIGGER dictionaries_are_new BEFORE INSERT ON dictionaries
WHEN EXISTS (SELECT 1 FROM dictionaries WHERE id = NEW.id)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a dictionary is there already');
END;

CREATE TRIGGER subtrees_stay BEFORE DELETE ON subtrees
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a subtree cannot be deleted');
END;

CREATE TRIGGER subtrees_do_not_change BEFORE UPDATE ON subtrees
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a subtree cannot be changed');
END;

CREATE TRIGGER subtrees_are_new BEFORE INSERT ON subtrees
WHEN EXISTS (SELECT 1 FROM subtrees WHERE place = NEW.place)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a subtree is there already');
END;

CREATE TRIGGER checkpoints_stay BEFORE DELETE ON checkpoints
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a checkpoint cannot be deleted');
END;

CREATE TRIGGER checkpoints_do_not_change BEFORE UPDATE ON checkpoints
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a checkpoint cannot be changed');
END;

CREATE TRIGGER checkpoints_follow BEFORE INSERT ON checkpoints
WHEN NEW.place IS NOT (SELECT coalesce(max(place), 0) + 1 FROM checkpoints)
BEGIN
  SELECT RAISE(ABORT, 'the log is append-only: a checkpoint must follow the last one');
END;

-- A text may go, and never become another one.
CREATE TRIGGER disclosures_do_not_change BEFORE UPDATE ON disclosures
BEGIN
  SELECT RAISE(ABORT, 'a disclosed text cannot be changed');
END;

CREATE TRIGGER disclosures_are_new BEFORE INSERT ON disclosures
WHEN EXISTS (SELECT 1 FROM disclosures WHERE place = NEW.place)
BEGIN
  SELECT RAISE(ABORT, 'this text is disclosed already');
END;

-- What entries are packed with: entries of an invented job, as `npm run bench -- dictionary` makes them. It never changes;
-- a better one is a migration of its own, and takes the next number.
INSERT INTO dictionaries (id, text) VALUES (1, '{"basis":"calibration certificate","certificate":{"date":"2026-01-15","laboratory":"Calibration Laboratory","number":"2026-0001","points":[{"error":0.01,"expanded":0.2,"k":2,"reading":5},{"error":0.01,"expanded":0.2,"k":2,"reading":10},{"error":0.01,"expanded":0.2,"k":2,"reading":20},{"error":0.01,"expanded":0.2,"k":2,"reading":30},{"error":0.01,"expanded":0.2,"k":2,"reading":40},{"error":0.01,"expanded":0.2,"k":2,"reading":60}],"serial":"0001","unit":"N.m"},"id":"wrench","interval":{"cycles":5000,"months":12},"quantity":"torque","range":{"from":10,"to":60},"resolution":0.01,"serial":"0001","type":"setting"}
{"at":"2026-11-29T13:44:14.085Z","by":"technician","event":{"basis":{"decision":{"grades":false,"rule":{"kind":"guard-band","r":1}},"firstTorqueWindow":null,"notes":["No oil and no anti-seize: the figure assumes dry threads."],"on":"2026-11-29"},"gapWindow":{"acceptLower":0.712909944487358,"acceptUpper":0.787090055512642,"decidable":true,"expandedAtLower":0.012909944487358056,"expandedAtUpper":0.012909944487358056,"guardBandFactor":1,"lowerLimit":0.7,"unit":"mm","upperLimit":0.8},"instruments":[{"basis":"invented data sheet of the simulated wrench","id":"wrench","permissibleDeviation":{"kind":"relative","percent":2},"quantity":"torque","range":{"from":5,"to":60},"resolution":0.01,"serial":"SIM-W-0001","type":"setting"},{"basis":"invented data sheet of the simulated gauge","id":"gauge","permissibleDeviation":{"amount":0.01,"kind":"absolute"},"quantity":"length","resolution":0.01,"serial":"SIM-G-0001"}],"order":{"engine":{"banks":[[1,3,5,7],[2,4,6,8]],"headMaterial":"aluminium","serviceOrder":[1,3,5,7,2,4,6,8]},"form":"plugmark/work-order/1","job":"EX-8001-1","plug":{"gasket":"new","hexMm":16,"part":"EXAMPLE-14G","reachMm":19,"seat":"gasket","thread":"M14x1.25"},"specification":{"gap":"0.7-0.8 mm","source":{"edition":"1","kind":"invented-example","title":"Invented figures for trying the program. Not for any engine."},"threads":"dry","torque":"25-30 N·m"},"technician":{"_sd":[""]},"vehicle":{"description":{"_sd":[""]},"odometerKm":84210,"plate":{"_sd":[""]},"vin":{"_sd":[""]}}},"routine":{"afterwards":[{"choices":["none","as the maker allows"],"id":"boot-compound","text":"Compound in the boots"},{"id":"boots-seated","text":"Boots or coils fully seated, wires in their places"},{"choices":["runs without misfire","misfires","not run"],"id":"engine-run","notable":["misfires","not run"],"text":"Engine run"},{"choices":["kept in cylinder order","given to the customer","scrapped"],"id":"old-parts","text":"Old plugs"}],"beforeRemoval":[{"id":"engine-cold","text":"The engine is cold, or has cooled as long as its maker asks"},{"id":"ignition-off","text":"Ignition off, key away"},{"id":"boots","text":"Boots or coils taken off with a twist, never pulled by the wire, and marked"},{"id":"blown-clean","text":"Plug wells blown clean before turning the first plug"},{"id":"hand-tools","text":"Hand tools only; no power tool touches a plug"}],"confirmWindows":true,"fitting":[{"id":"threads-clean","text":"Threads and seats clean, in the head and on the plugs"},{"choices":["not needed","with grease on the tap, piston and valves clear"],"id":"chased","text":"Threads in the head chased"},{"id":"lubricant","text":"Nothing on the threads but what the specification says"},{"id":"by-hand","text":"Each plug started by hand and turned in to its seat by hand"}],"form":"plugmark/routine/1","newPlugs":true,"oldPlugs":true},"rules":"plugmark/rules/3","torqueWindow":{"acceptLower":25.577379135981435,"acceptUpper":29.30715562112886,"decidable":true,"expandedAtLower":0.5773791359814335,"expandedAtUpper":0.6928443788711383,"guardBandFactor":1,"lowerLimit":25,"unit":"N.m","upperLimit":30},"type":"job-opened"},"monoUs":0,"n":1,"salt":"","seq":6,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:14.085Z","by":"station","event":{"platform":"node 24.22.3 linux x64","program":"plugmark 0.1.0","session":1,"simulated":true,"type":"session-started"},"monoUs":0,"n":2,"salt":"","seq":7,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:16.565Z","by":"technician","event":{"type":"windows-confirmed"},"monoUs":2480000,"n":6,"salt":"","seq":11,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:29.989Z","by":"technician","event":{"cylinders":[1,3,5,7,2,4,6,8],"differs":[],"lot":"LOT-0001","part":"EXAMPLE-14G","type":"new-plugs-checked"},"monoUs":15904500,"n":26,"salt":"","seq":31,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:37.038Z","by":"technician","event":{"complete":true,"open":[],"type":"job-closed"},"monoUs":142953000,"n":200,"salt":"","seq":205,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:14.085Z","by":"station","event":{"description":{"batteryPercent":83,"exponent":-2,"link":{"authenticated":false,"kind":"direct"},"maker":"Simulated","quantity":"torque","resolutionCounts":1,"samplingFunction":"instantaneous","serial":"SIM-W-0001","unit":"N.m"},"driver":"simulated","tool":"wrench","type":"tool-linked"},"monoUs":0,"n":3,"salt":"","seq":8,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:14.085Z","by":"station","event":{"description":{"batteryPercent":64,"exponent":-7,"link":{"authenticated":false,"kind":"direct"},"maker":"Simulated","quantity":"length","resolutionCounts":100,"samplingFunction":"instantaneous","serial":"SIM-G-0001","unit":"m"},"driver":"simulated","tool":"gauge","type":"tool-linked"},"monoUs":0,"n":4,"salt":"","seq":9,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:18.323Z","by":"technician","event":{"phase":"before-removal","steps":[{"as":"done","item":"engine-cold"},{"as":"done","item":"ignition-off"},{"as":"done","item":"boots"},{"as":"done","item":"blown-clean"},{"as":"done","item":"hand-tools"}],"type":"steps-attested"},"monoUs":4238500,"n":8,"salt":"","seq":13,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:37.038Z","by":"technician","event":{"phase":"afterwards","steps":[{"as":"none","item":"boot-compound"},{"as":"done","item":"boots-seated"},{"as":"runs without misfire","item":"engine-run"},{"as":"kept in cylinder order","item":"old-parts"}],"type":"steps-attested"},"monoUs":142953000,"n":199,"salt":"","seq":204,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:19.801Z","by":"technician","event":{"condition":"normal","cylinders":[1],"damage":[],"thread":"sound","type":"old-plugs-read"},"monoUs":5716500,"n":10,"salt":"","seq":15,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:24.631Z","by":"technician","event":{"condition":"normal","cylinders":[2],"damage":[],"thread":"sound","type":"old-plugs-read"},"monoUs":10546500,"n":18,"salt":"","seq":23,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:34.034Z","by":"station","event":{"atUs":19949000,"cylinder":1,"judgement":{"conformanceProbability":0.999998,"expandedUncertainty":0.0129099,"grade":"pass","result":"OK","side":"inside","value":0.77},"reading":1,"tool":"gauge","type":"gap-measured"},"monoUs":19949000,"n":28,"salt":"","seq":33,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:43.994Z","by":"station","event":{"atUs":29909000,"cylinder":2,"judgement":{"conformanceProbability":0.999998,"expandedUncertainty":0.0129099,"grade":"pass","result":"OK","side":"inside","value":0.77},"reading":5,"tool":"gauge","type":"gap-measured"},"monoUs":29909000,"n":37,"salt":"","seq":42,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:02.264Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":48050163,"highestNm":6.184295,"intervalUs":10002.1,"longestGapUs":10606,"noiseNm":0.025554,"peakNm":6.149295,"peakStandardNm":0.045267,"peakUs":47999714,"pull":1,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":6.070875,"reachedMs":[0,0,0,28.44,83.542,171.946,308.417,524.243,840.072],"setbackNm":0,"slopeAtTopNmPerS":1.719},"riseMs":524.243,"samples":143,"saturated":false,"sinceLastMs":null,"startUs":46759992,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.055705,"zeroSettled":true},"monoUs":48179772,"n":51,"salt":"","seq":56,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:08.844Z","by":"station","event":{"cut":null,"dropShare":0.300285,"endUs":54639834,"highestNm":26.644083,"intervalUs":10001.8,"longestGapUs":10651,"noiseNm":0.024964,"peakNm":26.673825,"peakStandardNm":0.031681,"peakUs":54312560,"pull":4,"release":"seen","releaseNm":26.673825,"releaseUs":54312560,"rise":{"impulseNms":10.82123,"reachedMs":[0.805,9.278,17.609,25.752,33.729,41.594,49.402,122.765,227.824],"setbackNm":0,"slopeAtTopNmPerS":14.834},"riseMs":113.488,"samples":94,"saturated":false,"sinceLastMs":2280.215,"startUs":53830159,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.055917,"zeroSettled":true},"monoUs":54759933,"n":68,"salt":"","seq":73,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:21.045Z","by":"station","event":{"cut":null,"dropShare":0.298473,"endUs":66840063,"highestNm":26.713102,"intervalUs":10001,"longestGapUs":10620,"noiseNm":0.02503,"peakNm":26.788842,"peakStandardNm":0.041734,"peakUs":66418593,"pull":6,"release":"seen","releaseNm":26.788842,"releaseUs":66418593,"rise":{"impulseNms":23.516783,"reachedMs":[0,3.924,322.892,570.425,723.412,861.009,973.687,1075.862,1269.4],"setbackNm":0.074849,"slopeAtTopNmPerS":11.581},"riseMs":1071.938,"samples":209,"saturated":false,"sinceLastMs":600.013,"startUs":64880084,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.056898,"zeroSettled":true},"monoUs":66960088,"n":82,"salt":"","seq":87,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:29.095Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":74889948,"highestNm":6.362422,"intervalUs":10001.6,"longestGapUs":10550,"noiseNm":0.025957,"peakNm":6.408249,"peakStandardNm":0.047792,"peakUs":74838565,"pull":8,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":6.7029,"reachedMs":[0,0,0,0,1.844,5.203,8.563,496.953,911.473],"setbackNm":0.080216,"slopeAtTopNmPerS":1.705},"riseMs":496.953,"samples":143,"saturated":false,"sinceLastMs":419.905,"startUs":73589945,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.057578,"zeroSettled":true},"monoUs":75010088,"n":94,"salt":"","seq":99,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:33.735Z","by":"station","event":{"cut":null,"dropShare":0.250396,"endUs":79529824,"highestNm":26.331938,"intervalUs":10003,"longestGapUs":10413,"noiseNm":0.026256,"peakNm":26.456545,"peakStandardNm":0.159408,"peakUs":79211088,"pull":11,"release":"seen","releaseNm":26.456545,"releaseUs":79211088,"rise":{"impulseNms":1.122218,"reachedMs":[0,3.799,11.509,19.113,26.538,33.98,41.472,49.007,56.705],"setbackNm":0,"slopeAtTopNmPerS":240.071},"riseMs":45.207,"samples":52,"saturated":false,"sinceLastMs":699.935,"startUs":79140041,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.058062,"zeroSettled":true},"monoUs":79650046,"n":110,"salt":"","seq":115,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:48.214Z","by":"station","event":{"cut":null,"dropShare":0.268705,"endUs":94000145,"highestNm":26.728682,"intervalUs":9998.9,"longestGapUs":10461,"noiseNm":0.024697,"peakNm":26.758927,"peakStandardNm":0.035528,"peakUs":93595459,"pull":13,"release":"seen","releaseNm":26.758927,"releaseUs":93595459,"rise":{"impulseNms":15.433269,"reachedMs":[0,8.173,19.187,30.072,41.174,51.778,62.705,77.505,401.774],"setbackNm":0,"slopeAtTopNmPerS":8.803},"riseMs":69.332,"samples":123,"saturated":false,"sinceLastMs":2709.799,"startUs":92909987,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.061318,"zeroSettled":true},"monoUs":94129979,"n":128,"salt":"","seq":133,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:05.834Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":111620283,"highestNm":5.914148,"intervalUs":10000.8,"longestGapUs":10533,"noiseNm":0.026323,"peakNm":5.870148,"peakStandardNm":0.017031,"peakUs":111539913,"pull":15,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":4.395645,"reachedMs":[0,0,0,13.334,60.555,122.881,206.926,346.397,568.369],"setbackNm":0,"slopeAtTopNmPerS":2.047},"riseMs":346.397,"samples":114,"saturated":false,"sinceLastMs":6180.109,"startUs":110620019,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.055852,"zeroSettled":true},"monoUs":111749910,"n":145,"salt":"","seq":150,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:11.034Z","by":"station","event":{"cut":null,"dropShare":0.328953,"endUs":116820356,"highestNm":25.991592,"intervalUs":10001.3,"longestGapUs":10649,"noiseNm":0.02626,"peakNm":27.273198,"peakStandardNm":0.300992,"peakUs":116497985,"pull":18,"release":"seen","releaseNm":27.273198,"releaseUs":116497985,"rise":{"impulseNms":1.732227,"reachedMs":[3.055,15.921,28.639,42.11,55.28,68.676,82.099,95.692,110.802],"setbackNm":0,"slopeAtTopNmPerS":169.596},"riseMs":79.771,"samples":59,"saturated":false,"sinceLastMs":1280.304,"startUs":116370130,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.058408,"zeroSettled":true},"monoUs":116949855,"n":161,"salt":"","seq":166,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:20.705Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":126499874,"highestNm":14.061239,"intervalUs":9999.7,"longestGapUs":10494,"noiseNm":0.024706,"peakNm":14.010239,"peakStandardNm":0.019562,"peakUs":126410189,"pull":20,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":14.344761,"reachedMs":[0,0,3.448,8.223,125.762,470.008,689.539,883.718,1099.349],"setbackNm":0.03647,"slopeAtTopNmPerS":5.226},"riseMs":883.718,"samples":164,"saturated":false,"sinceLastMs":650.181,"startUs":124990270,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.058761,"zeroSettled":true},"monoUs":126620002,"n":175,"salt":"","seq":180,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:31.735Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":137529807,"highestNm":6.728122,"intervalUs":9999.4,"longestGapUs":10489,"noiseNm":0.025481,"peakNm":6.680122,"peakStandardNm":0.016487,"peakUs":137479822,"pull":22,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":9.584021,"reachedMs":[0,0,0,53.948,159.293,329.086,613.205,1017.298,1466.475],"setbackNm":0,"slopeAtTopNmPerS":1.531},"riseMs":1017.298,"samples":207,"saturated":false,"sinceLastMs":5949.804,"startUs":135589981,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.061878,"zeroSettled":true},"monoUs":137650079,"n":188,"salt":"","seq":193,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:02.264Z","by":"station","event":{"because":"it ended low","cylinder":1,"evidence":{"angleDeg":null,"bend":-1.663,"heldRiseMs":null,"impulseNms":6.071,"knock":0,"riseNmPerS":7,"sinceLastMs":null,"slowdown":null,"turned":0,"workJ":null},"judgement":null,"kind":"run-down","pull":1,"type":"pull-placed"},"monoUs":48179772,"n":52,"salt":"","seq":57,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:08.844Z","by":"station","event":{"because":"it went on from the stroke before","cylinder":1,"evidence":{"angleDeg":null,"bend":-1.292,"heldRiseMs":35.3,"impulseNms":10.821,"knock":0,"riseNmPerS":141,"sinceLastMs":2280,"slowdown":11.22,"turned":0,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.619283,"grade":"pass","result":"OK","side":"inside","value":26.673825},"kind":"tightening","pull":4,"type":"pull-placed"},"monoUs":54759933,"n":69,"salt":"","seq":74,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:21.045Z","by":"station","event":{"because":"it went on from the stroke before","cylinder":3,"evidence":{"angleDeg":null,"bend":0.714,"heldRiseMs":3.6,"impulseNms":23.517,"knock":0,"riseNmPerS":15,"sinceLastMs":600,"slowdown":null,"turned":1,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.624294,"grade":"pass","result":"OK","side":"inside","value":26.788842},"kind":"tightening","pull":6,"type":"pull-placed"},"monoUs":66960088,"n":83,"salt":"","seq":88,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:30.874Z","by":"station","event":{"because":"it ended low","cylinder":5,"evidence":{"angleDeg":null,"bend":-1.365,"heldRiseMs":9.2,"impulseNms":10.259,"knock":0,"riseNmPerS":9.4,"sinceLastMs":490,"slowdown":62.24,"turned":0,"workJ":null},"judgement":null,"kind":"run-down","pull":9,"type":"pull-placed"},"monoUs":76789868,"n":101,"salt":"","seq":106,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:33.735Z","by":"station","event":{"because":"rose in 45 ms, 0.7 s after the last: the same plug once more","cylinder":5,"evidence":{"angleDeg":null,"bend":0.012,"heldRiseMs":null,"impulseNms":1.122,"knock":0,"riseNmPerS":351.1,"sinceLastMs":700,"slowdown":null,"turned":0,"workJ":null},"judgement":null,"kind":"rehit","pull":11,"type":"pull-placed"},"monoUs":79650046,"n":111,"salt":"","seq":116,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:46.785Z","by":"station","event":{"because":"nothing followed: it stopped short","cylinder":7,"evidence":{"angleDeg":null,"bend":1.231,"heldRiseMs":null,"impulseNms":31.558,"knock":0,"riseNmPerS":4.8,"sinceLastMs":6990,"slowdown":null,"turned":1,"workJ":null},"judgement":{"conformanceProbability":0.000001,"expandedUncertainty":0.478348,"grade":"fail","result":"NotOK","side":"low","value":20.642627},"kind":"tightening","pull":12,"type":"pull-placed"},"monoUs":92700211,"n":124,"salt":"","seq":129,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:05.834Z","by":"station","event":{"because":"it ended low","cylinder":4,"evidence":{"angleDeg":null,"bend":-1.552,"heldRiseMs":null,"impulseNms":4.396,"knock":0,"riseNmPerS":10.2,"sinceLastMs":6180,"slowdown":null,"turned":0,"workJ":null},"judgement":null,"kind":"run-down","pull":15,"type":"pull-placed"},"monoUs":111749910,"n":146,"salt":"","seq":151,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:09.294Z","by":"station","event":{"because":"it went on from the stroke before","cylinder":4,"evidence":{"angleDeg":null,"bend":-0.092,"heldRiseMs":11.4,"impulseNms":19.128,"knock":0,"riseNmPerS":22.8,"sinceLastMs":510,"slowdown":25.61,"turned":1,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.622363,"grade":"pass","result":"OK","side":"inside","value":26.668204},"kind":"tightening","pull":17,"type":"pull-placed"},"monoUs":115209942,"n":157,"salt":"","seq":162,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:20.705Z","by":"station","event":{"because":"it ended low","cylinder":6,"evidence":{"angleDeg":null,"bend":-1.796,"heldRiseMs":6.8,"impulseNms":14.345,"knock":0,"riseNmPerS":9.5,"sinceLastMs":650,"slowdown":94.83,"turned":0,"workJ":null},"judgement":null,"kind":"run-down","pull":20,"type":"pull-placed"},"monoUs":126620002,"n":176,"salt":"","seq":181,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:46:31.735Z","by":"station","event":{"because":"it ended low","cylinder":8,"evidence":{"angleDeg":null,"bend":-1.684,"heldRiseMs":null,"impulseNms":9.584,"knock":0,"riseNmPerS":3.9,"sinceLastMs":5950,"slowdown":null,"turned":0,"workJ":null},"judgement":null,"kind":"run-down","pull":22,"type":"pull-placed"},"monoUs":137650079,"n":189,"salt":"","seq":194,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:44:16.565Z","by":"station","event":{"count":247,"counts":"","exponent":-2,"first":1,"startUs":9803,"times":"","tool":"wrench","type":"readings"},"monoUs":2480000,"n":5,"salt":"","seq":10,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T13:45:33.735Z","by":"station","event":{"count":51,"counts":"","exponent":-2,"first":7915,"startUs":79150012,"times":"","tool":"wrench","type":"readings"},"monoUs":79650046,"n":109,"salt":"","seq":114,"stream":"job:EX-8001-1","v":1}');
