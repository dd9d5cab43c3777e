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

-- The roots of all whole subtrees of eight leaves and more; smaller ones are made again from their leaves when asked for.
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
{"at":"2026-11-29T12:37:13.906Z","by":"technician","event":{"basis":{"decision":{"grades":false,"rule":{"kind":"guard-band","r":1}},"firstTorqueWindow":null,"notes":["No oil and no anti-seize: the figure assumes dry threads."],"on":"2026-11-29"},"gapWindow":{"acceptLower":0.712909944487358,"acceptUpper":0.787090055512642,"decidable":true,"expandedAtLower":0.012909944487358056,"expandedAtUpper":0.012909944487358056,"guardBandFactor":1,"lowerLimit":0.7,"unit":"mm","upperLimit":0.8},"instruments":[{"basis":"invented data sheet of the simulated wrench","id":"wrench","permissibleDeviation":{"kind":"relative","percent":2},"quantity":"torque","range":{"from":5,"to":60},"resolution":0.01,"serial":"SIM-W-0001","type":"setting"},{"basis":"invented data sheet of the simulated gauge","id":"gauge","permissibleDeviation":{"amount":0.01,"kind":"absolute"},"quantity":"length","resolution":0.01,"serial":"SIM-G-0001"}],"order":{"engine":{"banks":[[1,3,5,7],[2,4,6,8]],"headMaterial":"aluminium","serviceOrder":[1,3,5,7,2,4,6,8]},"form":"plugmark/work-order/1","job":"EX-8001-1","plug":{"gasket":"new","hexMm":16,"part":"EXAMPLE-14G","reachMm":19,"seat":"gasket","thread":"M14x1.25"},"specification":{"gap":"0.7-0.8 mm","source":{"edition":"1","kind":"invented-example","title":"Invented figures for trying the program. Not for any engine."},"threads":"dry","torque":"25-30 N·m"},"technician":{"_sd":[""]},"vehicle":{"description":{"_sd":[""]},"odometerKm":84210,"plate":{"_sd":[""]},"vin":{"_sd":[""]}}},"routine":{"afterwards":[{"choices":["none","as the maker allows"],"id":"boot-compound","text":"Compound in the boots"},{"id":"boots-seated","text":"Boots or coils fully seated, wires in their places"},{"choices":["runs without misfire","misfires","not run"],"id":"engine-run","notable":["misfires","not run"],"text":"Engine run"},{"choices":["kept in cylinder order","given to the customer","scrapped"],"id":"old-parts","text":"Old plugs"}],"beforeRemoval":[{"id":"engine-cold","text":"The engine is cold, or has cooled as long as its maker asks"},{"id":"ignition-off","text":"Ignition off, key away"},{"id":"boots","text":"Boots or coils taken off with a twist, never pulled by the wire, and marked"},{"id":"blown-clean","text":"Plug wells blown clean before turning the first plug"},{"id":"hand-tools","text":"Hand tools only; no power tool touches a plug"}],"confirmWindows":true,"fitting":[{"id":"threads-clean","text":"Threads and seats clean, in the head and on the plugs"},{"choices":["not needed","with grease on the tap, piston and valves clear"],"id":"chased","text":"Threads in the head chased"},{"id":"lubricant","text":"Nothing on the threads but what the specification says"},{"id":"by-hand","text":"Each plug started by hand and turned in to its seat by hand"}],"form":"plugmark/routine/1","newPlugs":true,"oldPlugs":true},"rules":"plugmark/rules/3","torqueWindow":{"acceptLower":25.577379135981435,"acceptUpper":29.30715562112886,"decidable":true,"expandedAtLower":0.5773791359814335,"expandedAtUpper":0.6928443788711383,"guardBandFactor":1,"lowerLimit":25,"unit":"N.m","upperLimit":30},"type":"job-opened"},"monoUs":0,"n":1,"salt":"","seq":6,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:13.906Z","by":"station","event":{"platform":"node 24.22.3 linux x64","program":"plugmark 0.1.0","session":1,"simulated":true,"type":"session-started"},"monoUs":0,"n":2,"salt":"","seq":7,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:15.601Z","by":"technician","event":{"type":"windows-confirmed"},"monoUs":1695000,"n":6,"salt":"","seq":11,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:32.793Z","by":"technician","event":{"cylinders":[1,3,5,7,2,4,6,8],"differs":[],"lot":"LOT-0001","part":"EXAMPLE-14G","type":"new-plugs-checked"},"monoUs":18887500,"n":26,"salt":"","seq":31,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:38:23.176Z","by":"technician","event":{"answer":"refit","pull":2,"type":"question-answered"},"monoUs":69270000,"n":77,"salt":"","seq":82,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:39:49.991Z","by":"technician","event":{"complete":true,"open":[],"type":"job-closed"},"monoUs":156085500,"n":181,"salt":"","seq":186,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:13.906Z","by":"station","event":{"description":{"batteryPercent":83,"exponent":-2,"link":{"authenticated":false,"kind":"direct"},"maker":"Simulated","quantity":"torque","resolutionCounts":1,"samplingFunction":"instantaneous","serial":"SIM-W-0001","unit":"N.m"},"driver":"simulated","tool":"wrench","type":"tool-linked"},"monoUs":0,"n":3,"salt":"","seq":8,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:13.906Z","by":"station","event":{"description":{"batteryPercent":64,"exponent":-7,"link":{"authenticated":false,"kind":"direct"},"maker":"Simulated","quantity":"length","resolutionCounts":100,"samplingFunction":"instantaneous","serial":"SIM-G-0001","unit":"m"},"driver":"simulated","tool":"gauge","type":"tool-linked"},"monoUs":0,"n":4,"salt":"","seq":9,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:17.505Z","by":"technician","event":{"phase":"before-removal","steps":[{"as":"done","item":"engine-cold"},{"as":"done","item":"ignition-off"},{"as":"done","item":"boots"},{"as":"done","item":"blown-clean"},{"as":"done","item":"hand-tools"}],"type":"steps-attested"},"monoUs":3599500,"n":8,"salt":"","seq":13,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:39:49.991Z","by":"technician","event":{"phase":"afterwards","steps":[{"as":"none","item":"boot-compound"},{"as":"done","item":"boots-seated"},{"as":"runs without misfire","item":"engine-run"},{"as":"kept in cylinder order","item":"old-parts"}],"type":"steps-attested"},"monoUs":156085500,"n":180,"salt":"","seq":185,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:18.643Z","by":"technician","event":{"condition":"normal","cylinders":[1],"damage":[],"thread":"sound","type":"old-plugs-read"},"monoUs":4737000,"n":10,"salt":"","seq":15,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:26.703Z","by":"technician","event":{"condition":"normal","cylinders":[2],"damage":[],"thread":"sound","type":"old-plugs-read"},"monoUs":12797500,"n":18,"salt":"","seq":23,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:36.231Z","by":"station","event":{"atUs":22325500,"cylinder":1,"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.0129099,"grade":"pass","result":"OK","side":"inside","value":0.75},"reading":1,"tool":"gauge","type":"gap-measured"},"monoUs":22325500,"n":28,"salt":"","seq":33,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:37:46.806Z","by":"station","event":{"atUs":32900000,"cylinder":2,"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.0129099,"grade":"pass","result":"OK","side":"inside","value":0.75},"reading":5,"tool":"gauge","type":"gap-measured"},"monoUs":32900000,"n":37,"salt":"","seq":42,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:38:08.456Z","by":"station","event":{"cut":null,"dropShare":0.344954,"endUs":54419941,"highestNm":27.235397,"intervalUs":10000.7,"longestGapUs":10627,"noiseNm":0.025868,"peakNm":27.227686,"peakStandardNm":0.031657,"peakUs":54119774,"pull":1,"release":"seen","releaseNm":27.227686,"releaseUs":54119774,"rise":{"impulseNms":38.68343,"reachedMs":[78.436,1333.243,2235.658,2579.866,2806.5,2984.633,3129.603,3261.978,3539.005],"setbackNm":0,"slopeAtTopNmPerS":10.123},"riseMs":1928.735,"samples":424,"saturated":false,"sinceLastMs":null,"startUs":50319856,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":-0.015397,"zeroSettled":true},"monoUs":54550060,"n":57,"salt":"","seq":62,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:38:40.446Z","by":"station","event":{"cut":null,"dropShare":0.309055,"endUs":86410238,"highestNm":27.34811,"intervalUs":9999.7,"longestGapUs":10449,"noiseNm":0.026858,"peakNm":27.539262,"peakStandardNm":0.063615,"peakUs":86068973,"pull":6,"release":"seen","releaseNm":27.539262,"releaseUs":86068973,"rise":{"impulseNms":4.954324,"reachedMs":[2.408,11.785,21.052,30.024,39.112,48.193,57.237,66.573,116.847],"setbackNm":0,"slopeAtTopNmPerS":31.971},"riseMs":54.788,"samples":72,"saturated":false,"sinceLastMs":1989.864,"startUs":85830123,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":-0.01811,"zeroSettled":true},"monoUs":86540183,"n":92,"salt":"","seq":97,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:39:04.536Z","by":"station","event":{"cut":null,"dropShare":0.326413,"endUs":110510121,"highestNm":27.386911,"intervalUs":9998.6,"longestGapUs":10603,"noiseNm":0.02482,"peakNm":27.400943,"peakStandardNm":0.029389,"peakUs":110179801,"pull":10,"release":"seen","releaseNm":27.400943,"releaseUs":110179801,"rise":{"impulseNms":32.697574,"reachedMs":[72.448,1065.949,1987.827,2308.713,2518.649,2663.746,2791.238,2901.19,3032.918],"setbackNm":0,"slopeAtTopNmPerS":14.097},"riseMs":1835.241,"samples":375,"saturated":false,"sinceLastMs":8539.627,"startUs":106889857,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":-0.016911,"zeroSettled":true},"monoUs":110630294,"n":124,"salt":"","seq":129,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:39:25.426Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":131399966,"highestNm":20.075218,"intervalUs":9997.5,"longestGapUs":10558,"noiseNm":0.024328,"peakNm":20.02744,"peakStandardNm":0.020301,"peakUs":131229967,"pull":14,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":42.749943,"reachedMs":[0,455.614,1976.791,2855.218,3271.135,3586.072,3844.524,4098.87,4391.686],"setbackNm":0,"slopeAtTopNmPerS":5.553},"riseMs":3643.256,"samples":512,"saturated":false,"sinceLastMs":6059.719,"startUs":126409725,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":-0.015218,"zeroSettled":true},"monoUs":131520001,"n":155,"salt":"","seq":160,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:38:08.456Z","by":"station","event":{"because":"rose in 1929 ms: the plug turned","cylinder":1,"evidence":{"angleDeg":null,"bend":1.174,"heldRiseMs":null,"impulseNms":38.683,"knock":0,"riseNmPerS":8.5,"sinceLastMs":null,"slowdown":null,"turned":1,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.632002,"grade":"pass","result":"OK","side":"inside","value":27.227686},"kind":"tightening","pull":1,"type":"pull-placed"},"monoUs":54550060,"n":58,"salt":"","seq":63,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:38:40.446Z","by":"station","event":{"because":"it went on from the stroke before","cylinder":3,"evidence":{"angleDeg":null,"bend":-0.005,"heldRiseMs":44.4,"impulseNms":4.954,"knock":0.000232,"riseNmPerS":301.6,"sinceLastMs":1990,"slowdown":5.51,"turned":0,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.648619,"grade":"pass","result":"OK","side":"inside","value":27.539262},"kind":"tightening","pull":6,"type":"pull-placed"},"monoUs":86540183,"n":93,"salt":"","seq":98,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:39:04.536Z","by":"station","event":{"because":"rose in 1835 ms, 8.5 s after the last: the plug turned","cylinder":7,"evidence":{"angleDeg":null,"bend":1.334,"heldRiseMs":null,"impulseNms":32.698,"knock":0,"riseNmPerS":9,"sinceLastMs":8540,"slowdown":null,"turned":1,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.635548,"grade":"pass","result":"OK","side":"inside","value":27.400943},"kind":"tightening","pull":10,"type":"pull-placed"},"monoUs":110630294,"n":125,"salt":"","seq":130,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T12:39:25.426Z","by":"station","event":{"because":"it ended low","cylinder":4,"evidence":{"angleDeg":null,"bend":1.224,"heldRiseMs":null,"impulseNms":42.75,"knock":0,"riseNmPerS":3.3,"sinceLastMs":6060,"slowdown":null,"turned":1,"workJ":null},"judgement":null,"kind":"run-down","pull":14,"type":"pull-placed"},"monoUs":131520001,"n":156,"salt":"","seq":161,"stream":"job:EX-8001-1","v":1}');
