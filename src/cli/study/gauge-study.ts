import { randomInt } from 'node:crypto';
import type { Readable } from 'node:stream';
import { newExercise, planFrom, turnsOf } from '../../audit/gauge-exercise.ts';
import { gaugeStudiesOf, nextStudy, openStudyOf, type StudyStarted } from '../../audit/gauge-log.ts';
import type { StudyMeasures } from '../../evidence/gauge-study-event.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { SI } from '../../quantity/shown.ts';
import type { Quantity } from '../../reading.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { hasScreen } from '../bench/run.ts';
import { clock, stamp } from '../station/clock.ts';
import { ownLanguage } from '../station/reader-language.ts';
import { showFor } from '../station/reads.ts';
import { openStation, type Station } from '../station/station.ts';
import { type LoadedStation, readStationFile } from '../station/station-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { resultLines } from './study-list.ts';
import { studyWriter } from './study-log.ts';
import { type StudyWork, workThrough } from './study-work.ts';

export interface StudyOptions {
  readonly station: string;
  readonly tool?: string;
  readonly appraisers?: string;
  /** How many, or their names with commas. */
  readonly parts: string;
  readonly trials: number;
  /** The torque that pulls come to, N·m; for a wrench. */
  readonly at?: number;
  /** The number of a study that was left open. */
  readonly resume?: string;
  readonly plain?: true;
  readonly quiet?: true;
}

/** A study that can be worked on. */
type Started = Pick<StudyWork, 'started' | 'exercise' | 'written'>;

/** A gauge study with the tool itself: says who measures which part, takes the readings, and computes the result. */
export async function runStudy(options: StudyOptions, input: Readable = process.stdin): Promise<ExitCode> {
  const file = await readStationFile(options.station);
  // Its figures are those of the parts, in the units of the record.
  await showFor(ownLanguage() ?? file.reads.screen, SI, !speaksUtf8());
  const station = await openStation(file.station, file.folder, stamp, file.domain);
  try {
    const started =
      options.resume === undefined ? begin(station, file, options) : takeUp(station, file, options.resume);
    const plain = options.plain === true || !hasScreen();
    await workThrough({ ...started, file, plain, quiet: options.quiet === true, stamp, clock, input });
    return printResult(station, started.started.study, options.station);
  } finally {
    station.log.close();
  }
}

/** What became of it, by the log. */
function printResult({ log }: Station, study: string, stationFile: string): ExitCode {
  const logged = gaugeStudiesOf(log.stationEntries()).find((one) => one.study === study);
  if (logged === undefined) {
    print([w`Left before the first reading. Nothing was kept.`]);
    return EXIT.failed;
  }
  if (logged.end?.kind === 'finished') print(['', w`Recorded as ${study}.`, '', ...resultLines(logged)]);
  else if (logged.end === null) {
    const [open = ''] = resultLines(logged);
    const again = `plugmark gauge-study run --resume ${study} --station ${safeLine(stationFile)}`;
    print([w`${open} are kept. Go on with: ${again}`]);
    return EXIT.leftOpen;
  } else print(resultLines(logged));
  return EXIT.done;
}

function begin({ log }: Station, file: LoadedStation, options: StudyOptions): Started {
  const { tool, appraisers } = options;
  if (tool === undefined || appraisers === undefined) throw new ProblemError(incomplete());
  const entry = entryOf(file, tool);
  const plan = orThrow(
    planFrom({
      appraisers: names(appraisers),
      parts: /^\d+$/.test(options.parts) ? numbered(Number(options.parts)) : names(options.parts),
      trials: options.trials,
    }),
  );
  const exercise = newExercise(plan, shuffled);
  const started: StudyStarted = {
    type: 'gauge-study-started',
    study: nextStudy(log.stationEntries()),
    tool: entry.id,
    serial: entry.serial ?? null,
    measures: measuresOf(entry.quantity, options.at),
    ...plan,
    order: turnsOf(exercise).map((turn) => [...turn]),
  };
  return { started, exercise, written: studyWriter(log, started, null, stamp) };
}

function takeUp({ log }: Station, file: LoadedStation, study: string): Started {
  const { started, exercise } = orThrow(openStudyOf(log.stationEntries(), study));
  const entry = entryOf(file, started.tool);
  if ((entry.serial ?? null) !== started.serial || entry.quantity !== started.measures.quantity)
    throw new ProblemError(otherTool(started));
  return { started, exercise, written: studyWriter(log, started, exercise.readings, stamp) };
}

function entryOf({ tools }: LoadedStation, id: string) {
  const entry = tools.find((one) => one.id === id);
  if (entry === undefined) throw new ProblemError(noTool(id));
  return entry;
}

/** Fisher-Yates with the randomness of the system: nobody can know the order beforehand. */
function shuffled(n: number): readonly number[] {
  const list = Array.from({ length: n }, (_, i) => i);
  for (let i = n - 1; i > 0; i--) {
    const j = randomInt(i + 1);
    const [a, b] = [list[i] ?? 0, list[j] ?? 0];
    list[i] = b;
    list[j] = a;
  }
  return list;
}

const names = (text: string) => text.split(',').map((name) => name.trim());
const numbered = (n: number) => Array.from({ length: Math.min(n, 99) }, (_, i) => String(i + 1));

function measuresOf(quantity: Quantity, at: number | undefined): StudyMeasures {
  if (quantity === 'length') return { quantity, unit: 'mm' };
  if (at !== undefined && at > 0) return { quantity, unit: 'N.m', aboutNm: at };
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--at',
    message: w`a study of a wrench needs the torque to pull to, above zero`,
    next: w`Give it in N·m: --at 25.`,
  });
}

const noTool = (tool: string): Problem => ({
  code: 'tool-unknown',
  where: '--tool',
  message: w`the station file names no tool ${tool}`,
  next: w`Use a name from the station file.`,
});

const incomplete = (): Problem => ({
  code: 'option-not-valid',
  where: 'gauge-study run',
  message: w`a new study needs a tool and the people who measure with it`,
  next: w`Add --tool ID and --appraisers "A,B,C". Or go on with an open one: --resume GS-1.`,
});

/** A study is about one tool. */
const otherTool = ({ study, tool, serial }: StudyStarted): Problem => ({
  code: 'study-other-tool',
  where: study,
  message:
    serial === null
      ? w`this study was started with a tool without a serial number; in the station file ${tool} is another tool`
      : w`this study was started with serial number ${serial}; in the station file ${tool} is another tool`,
  next: w`Go on with the tool that it was started with, or start a new study.`,
});

const print = (lines: readonly string[]) => void process.stdout.write(`${lines.join('\n')}\n`);
