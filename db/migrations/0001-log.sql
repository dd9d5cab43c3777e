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
{"at":"2026-11-29T14:41:37.569Z","by":"technician","event":{"basis":{"decision":{"grades":false,"rule":{"kind":"guard-band","r":1}},"firstTorqueWindow":null,"gap":{"adjustable":true,"bendMostMm":0.2,"check":"gauge"},"notes":[{"code":"threads-dry"}],"on":"2026-11-29"},"gapWindow":{"acceptLower":0.712909944487358,"acceptUpper":0.787090055512642,"decidable":true,"expandedAtLower":0.012909944487358056,"expandedAtUpper":0.012909944487358056,"guardBandFactor":1,"lowerLimit":0.7,"unit":"mm","upperLimit":0.8},"instruments":[{"basis":"invented data sheet of the simulated wrench","id":"wrench","permissibleDeviation":{"kind":"relative","percent":2},"quantity":"torque","range":{"from":5,"to":60},"resolution":0.01,"serial":"SIM-W-0001","type":"setting"},{"basis":"invented data sheet of the simulated gauge","id":"gauge","permissibleDeviation":{"amount":0.01,"kind":"absolute"},"quantity":"length","resolution":0.01,"serial":"SIM-G-0001"}],"order":{"engine":{"banks":[[1,3,5,7],[2,4,6,8]],"headMaterial":"aluminium","serviceOrder":[1,3,5,7,2,4,6,8]},"form":"plugmark/work-order/1","job":"EX-8001-1","plug":{"gasket":"new","hexMm":16,"part":"EXAMPLE-14G","reachMm":19,"seat":"gasket","thread":"M14x1.25"},"specification":{"gap":"0.7-0.8 mm","source":{"edition":"1","kind":"invented-example","title":"Invented figures for trying the program. Not for any engine."},"threads":"dry","torque":"25-30 N·m"},"technician":{"_sd":[""]},"vehicle":{"description":{"_sd":[""]},"odometerKm":84210,"plate":{"_sd":[""]},"vin":{"_sd":[""]}}},"routine":{"afterwards":[{"choices":[{"id":"none","text":"none"},{"id":"as-allowed","text":"as the maker allows"}],"id":"boot-compound","text":"Compound in the boots"},{"id":"boots-seated","text":"Boots or coils fully seated, wires in their places"},{"choices":[{"id":"runs-well","text":"runs without misfire"},{"id":"misfires","text":"misfires"},{"id":"not-run","text":"not run"}],"id":"engine-run","notable":["misfires","not-run"],"text":"Engine run"},{"choices":[{"id":"kept","text":"kept in cylinder order"},{"id":"given-to-customer","text":"given to the customer"},{"id":"scrapped","text":"scrapped"}],"id":"old-parts","text":"Old plugs"}],"beforeRemoval":[{"id":"engine-cold","text":"The engine is cold, or has cooled as long as its maker asks"},{"id":"ignition-off","text":"Ignition off, key away"},{"id":"boots","text":"Boots or coils taken off with a twist, never pulled by the wire, and marked"},{"id":"blown-clean","text":"Plug wells blown clean before turning the first plug"},{"id":"hand-tools","text":"Hand tools only; no power tool touches a plug"}],"confirmWindows":true,"fitting":[{"id":"threads-clean","text":"Threads and seats clean, in the head and on the plugs"},{"choices":[{"id":"not-needed","text":"not needed"},{"id":"chased-with-grease","text":"with grease on the tap, piston and valves clear"}],"id":"chased","text":"Threads in the head chased"},{"id":"lubricant","text":"Nothing on the threads but what the specification says"},{"id":"by-hand","text":"Each plug started by hand and turned in to its seat by hand"}],"form":"plugmark/routine/1","newPlugs":true,"oldPlugs":true},"rules":"plugmark/rules/1","torqueWindow":{"acceptLower":25.577379135981435,"acceptUpper":29.30715562112886,"decidable":true,"expandedAtLower":0.5773791359814335,"expandedAtUpper":0.6928443788711383,"guardBandFactor":1,"lowerLimit":25,"unit":"N.m","upperLimit":30},"type":"job-opened"},"monoUs":0,"n":1,"salt":"","seq":6,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:41:37.569Z","by":"station","event":{"platform":"node 24.22.3 linux x64","program":"plugmark 0.1.0","session":1,"type":"session-started"},"monoUs":0,"n":2,"salt":"","seq":7,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:41:40.049Z","by":"technician","event":{"type":"windows-confirmed"},"monoUs":2480000,"n":6,"salt":"","seq":11,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:41:53.473Z","by":"technician","event":{"cylinders":[1,3,5,7,2,4,6,8],"differs":[],"lot":"LOT-0001","part":"EXAMPLE-14G","type":"new-plugs-checked"},"monoUs":15904500,"n":26,"salt":"","seq":31,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:44:00.522Z","by":"technician","event":{"complete":true,"open":[],"type":"job-closed"},"monoUs":142953000,"n":200,"salt":"","seq":205,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:41:37.569Z","by":"station","event":{"description":{"batteryPercent":83,"exponent":-2,"link":{"authenticated":false,"kind":"direct"},"maker":"Simulated","quantity":"torque","resolutionCounts":1,"samplingFunction":"instantaneous","serial":"SIM-W-0001","unit":"N.m"},"detection":{"range":null,"silentMs":2000,"startNm":2,"stepNm":0.01,"stream":"samples"},"driver":"simulated","source":"simulated","tool":"wrench","type":"tool-linked"},"monoUs":0,"n":3,"salt":"","seq":8,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:41:41.807Z","by":"technician","event":{"phase":"before-removal","steps":[{"as":"done","item":"engine-cold"},{"as":"done","item":"ignition-off"},{"as":"done","item":"boots"},{"as":"done","item":"blown-clean"},{"as":"done","item":"hand-tools"}],"type":"steps-attested"},"monoUs":4238500,"n":8,"salt":"","seq":13,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:41:43.285Z","by":"technician","event":{"condition":"normal","cylinders":[1],"damage":[],"thread":"sound","type":"old-plugs-read"},"monoUs":5716500,"n":10,"salt":"","seq":15,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:41:57.518Z","by":"station","event":{"atUs":19949000,"cylinder":1,"judgement":{"conformanceProbability":0.999998,"expandedUncertainty":0.0129099,"grade":"pass","result":"OK","side":"inside","value":0.77},"reading":1,"source":"simulated","tool":"gauge","type":"gap-measured"},"monoUs":19949000,"n":28,"salt":"","seq":33,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:42:25.748Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":48050163,"highestNm":6.184295,"intervalUs":10002.1,"longestGapUs":10606,"noiseNm":0.025554,"peakNm":6.149295,"peakStandardNm":0.045267,"peakUs":47999714,"pull":1,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":6.070875,"reachedMs":[0,0,0,28.44,83.542,171.946,308.417,524.243,840.072],"setbackNm":0,"slopeAtTopNmPerS":1.719},"riseMs":524.243,"samples":143,"saturated":false,"sinceLastMs":null,"source":"simulated","startUs":46759992,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.055705,"zeroSettled":true},"monoUs":48179772,"n":51,"salt":"","seq":56,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:42:32.328Z","by":"station","event":{"cut":null,"dropShare":0.300285,"endUs":54639834,"highestNm":26.644083,"intervalUs":10001.8,"longestGapUs":10651,"noiseNm":0.024964,"peakNm":26.673825,"peakStandardNm":0.031681,"peakUs":54312560,"pull":4,"release":"seen","releaseNm":26.673825,"releaseUs":54312560,"rise":{"impulseNms":10.82123,"reachedMs":[0.805,9.278,17.609,25.752,33.729,41.594,49.402,122.765,227.824],"setbackNm":0,"slopeAtTopNmPerS":14.834},"riseMs":113.488,"samples":94,"saturated":false,"sinceLastMs":2280.215,"source":"simulated","startUs":53830159,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.055917,"zeroSettled":true},"monoUs":54759933,"n":68,"salt":"","seq":73,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:42:50.859Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":73170040,"highestNm":4.612422,"intervalUs":10001.4,"longestGapUs":10797,"noiseNm":0.025957,"peakNm":4.549264,"peakStandardNm":0.014934,"peakUs":73109953,"pull":7,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":4.024157,"reachedMs":[0,0,0,0,37.524,110.129,213.503,361.193,578.068],"setbackNm":0,"slopeAtTopNmPerS":1.302},"riseMs":361.193,"samples":125,"saturated":false,"sinceLastMs":5209.808,"source":"simulated","startUs":72049871,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.057578,"zeroSettled":true},"monoUs":73290079,"n":88,"salt":"","seq":93,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:42:56.139Z","by":"station","event":{"cut":null,"dropShare":0.333058,"endUs":78440106,"highestNm":26.762051,"intervalUs":10001.8,"longestGapUs":10649,"noiseNm":0.025834,"peakNm":26.79701,"peakStandardNm":0.031529,"peakUs":78112513,"pull":10,"release":"seen","releaseNm":26.79701,"releaseUs":78112513,"rise":{"impulseNms":18.996523,"reachedMs":[1.823,13.347,25.105,36.671,48.022,229.989,390.509,519.136,692.16],"setbackNm":0,"slopeAtTopNmPerS":12.372},"riseMs":505.789,"samples":142,"saturated":false,"sinceLastMs":490.318,"source":"simulated","startUs":77160183,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.057949,"zeroSettled":true},"monoUs":78570038,"n":106,"salt":"","seq":111,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:43:11.698Z","by":"station","event":{"cut":null,"dropShare":0.268705,"endUs":94000145,"highestNm":26.728682,"intervalUs":9998.9,"longestGapUs":10461,"noiseNm":0.024697,"peakNm":26.758927,"peakStandardNm":0.035528,"peakUs":93595459,"pull":13,"release":"seen","releaseNm":26.758927,"releaseUs":93595459,"rise":{"impulseNms":15.433269,"reachedMs":[0,8.173,19.187,30.072,41.174,51.778,62.705,77.505,401.774],"setbackNm":0,"slopeAtTopNmPerS":8.803},"riseMs":69.332,"samples":123,"saturated":false,"sinceLastMs":2709.799,"source":"simulated","startUs":92909987,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.061318,"zeroSettled":true},"monoUs":94129979,"n":128,"salt":"","seq":133,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:43:30.868Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":113170018,"highestNm":9.52431,"intervalUs":10001.2,"longestGapUs":10679,"noiseNm":0.026258,"peakNm":9.48931,"peakStandardNm":0.022964,"peakUs":113100047,"pull":16,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":7.510821,"reachedMs":[0,0,0,0,0.639,7.346,368.479,638.474,804.813],"setbackNm":0,"slopeAtTopNmPerS":4.977},"riseMs":638.474,"samples":123,"saturated":false,"sinceLastMs":459.956,"source":"simulated","startUs":112080239,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.05569,"zeroSettled":true},"monoUs":113299923,"n":150,"salt":"","seq":155,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:43:42.039Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":124340089,"highestNm":6.551177,"intervalUs":9999.3,"longestGapUs":10669,"noiseNm":0.025012,"peakNm":6.49451,"peakStandardNm":0.020874,"peakUs":124210114,"pull":19,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":6.906734,"reachedMs":[0,0,0,38.094,107.138,222.7,424.341,673.065,1053.246],"setbackNm":0,"slopeAtTopNmPerS":1.812},"riseMs":673.065,"samples":166,"saturated":false,"sinceLastMs":5999.791,"source":"simulated","startUs":122820147,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.058823,"zeroSettled":true},"monoUs":124470016,"n":168,"salt":"","seq":173,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:43:55.219Z","by":"station","event":{"cut":null,"dropShare":null,"endUs":137529807,"highestNm":6.728122,"intervalUs":9999.4,"longestGapUs":10489,"noiseNm":0.025481,"peakNm":6.680122,"peakStandardNm":0.016487,"peakUs":137479822,"pull":22,"release":"none","releaseNm":null,"releaseUs":null,"rise":{"impulseNms":9.584021,"reachedMs":[0,0,0,53.948,159.293,329.086,613.205,1017.298,1466.475],"setbackNm":0,"slopeAtTopNmPerS":1.531},"riseMs":1017.298,"samples":207,"saturated":false,"sinceLastMs":5949.804,"source":"simulated","startUs":135589981,"stream":"samples","tool":"wrench","turn":null,"type":"pull-detected","zeroNm":0.061878,"zeroSettled":true},"monoUs":137650079,"n":188,"salt":"","seq":193,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:42:25.748Z","by":"station","event":{"because":"ended-low","cylinder":1,"evidence":{"angleDeg":null,"bend":-1.663,"heldRiseMs":null,"impulseNms":6.071,"knock":0,"riseNmPerS":7,"sinceLastMs":null,"slowdown":null,"turned":0,"workJ":null},"judgement":null,"kind":"run-down","pull":1,"type":"pull-placed"},"monoUs":48179772,"n":52,"salt":"","seq":57,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:42:32.328Z","by":"station","event":{"because":"went-on-from-stroke","cylinder":1,"evidence":{"angleDeg":null,"bend":-1.292,"heldRiseMs":35.3,"impulseNms":10.821,"knock":0,"riseNmPerS":141,"sinceLastMs":2280,"slowdown":11.22,"turned":0,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.619283,"grade":"pass","result":"OK","side":"inside","value":26.673825},"kind":"tightening","pull":4,"type":"pull-placed"},"monoUs":54759933,"n":69,"salt":"","seq":74,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:42:50.859Z","by":"station","event":{"because":"ended-low","cylinder":5,"evidence":{"angleDeg":null,"bend":-2.155,"heldRiseMs":null,"impulseNms":4.024,"knock":0,"riseNmPerS":7.6,"sinceLastMs":5210,"slowdown":null,"turned":0,"workJ":null},"judgement":null,"kind":"run-down","pull":7,"type":"pull-placed"},"monoUs":73290079,"n":89,"salt":"","seq":94,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:42:56.139Z","by":"station","event":{"because":"went-on-from-stroke","cylinder":5,"evidence":{"angleDeg":null,"bend":-2.609,"heldRiseMs":35.3,"impulseNms":18.997,"knock":0,"riseNmPerS":31.8,"sinceLastMs":490,"slowdown":13.84,"turned":0,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.622082,"grade":"pass","result":"OK","side":"inside","value":26.79701},"kind":"tightening","pull":10,"type":"pull-placed"},"monoUs":78570038,"n":107,"salt":"","seq":112,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:43:10.269Z","by":"station","event":{"because":"stopped-short","cylinder":7,"evidence":{"angleDeg":null,"bend":1.231,"heldRiseMs":null,"impulseNms":31.558,"knock":0,"riseNmPerS":4.8,"sinceLastMs":6990,"slowdown":null,"turned":1,"workJ":null},"judgement":{"conformanceProbability":0.000001,"expandedUncertainty":0.478348,"grade":"fail","result":"NotOK","side":"low","value":20.642627},"kind":"tightening","pull":12,"type":"pull-placed"},"monoUs":92700211,"n":124,"salt":"","seq":129,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:43:29.318Z","by":"station","event":{"because":"ended-low","cylinder":4,"evidence":{"angleDeg":null,"bend":-1.552,"heldRiseMs":null,"impulseNms":4.396,"knock":0,"riseNmPerS":10.2,"sinceLastMs":6180,"slowdown":null,"turned":0,"workJ":null},"judgement":null,"kind":"run-down","pull":15,"type":"pull-placed"},"monoUs":111749910,"n":146,"salt":"","seq":151,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:43:34.518Z","by":"station","event":{"because":"same-plug-again","cylinder":4,"evidence":{"angleDeg":null,"bend":-0.026,"heldRiseMs":null,"impulseNms":1.732,"knock":0,"riseNmPerS":205.1,"sinceLastMs":1280,"slowdown":null,"turned":0,"workJ":null},"judgement":null,"kind":"rehit","pull":18,"type":"pull-placed"},"monoUs":116949855,"n":162,"salt":"","seq":167,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:43:47.339Z","by":"station","event":{"because":"went-on-from-stroke","cylinder":6,"evidence":{"angleDeg":null,"bend":-2.501,"heldRiseMs":19.1,"impulseNms":15.304,"knock":0,"riseNmPerS":48.7,"sinceLastMs":2090,"slowdown":18.9,"turned":0,"workJ":null},"judgement":{"conformanceProbability":0.999999,"expandedUncertainty":0.61887,"grade":"pass","result":"OK","side":"inside","value":26.613332},"kind":"tightening","pull":21,"type":"pull-placed"},"monoUs":129770264,"n":182,"salt":"","seq":187,"stream":"job:EX-8001-1","v":1}
{"at":"2026-11-29T14:41:40.049Z","by":"station","event":{"count":247,"counts":"","first":1,"startUs":9803,"times":"","tool":"wrench","type":"readings"},"monoUs":2480000,"n":5,"salt":"","seq":10,"stream":"job:EX-8001-1","v":1}');
