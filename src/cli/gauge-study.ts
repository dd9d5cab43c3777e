import { randomInt } from 'node:crypto';
import { Subject } from 'rxjs';
import { openTools } from '../../drivers/index.ts';
import { newExercise, planFrom, studyOf } from '../audit/gauge-exercise.ts';
import type { Stamp } from '../evidence/log.ts';
import type { StationEvent } from '../evidence/station-event.ts';
import { ProblemError } from '../problem.ts';
import type { Unit } from '../report/figures.ts';
import { studyLines } from '../report/gauge-study.ts';
import { orThrow } from '../result.ts';
import { EXIT, type ExitCode } from './exit.ts';
import { type Archive, openStation, recordStation } from './station.ts';
import { readStationFile } from './station-file.ts';
import { exerciseWith } from './study-run.ts';
import { studyValues } from './study-values.ts';
import { textTable } from './text-table.ts';
import { type Whose, withArchive } from './whose.ts';

export interface StudyOptions {
  readonly station: string;
  readonly tool: string;
  readonly appraisers: string;
  /** How many, or their names with commas. */
  readonly parts: string;
  readonly trials: number;
  /** The torque that pulls come to, N·m; for a wrench. */
  readonly at?: number;
}

/** A gauge study with the tool itself: says who measures what, takes the reading, and computes when all is measured. */
export async function runStudy(options: StudyOptions): Promise<ExitCode> {
  const file = await readStationFile(options.station);
  const entry = file.tools.find(({ id }) => id === options.tool);
  if (entry === undefined) throw noTool(options.tool, options.station);
  const atNm = expectedNm(entry.quantity, options.at);
  const plan = orThrow(
    planFrom({
      appraisers: names(options.appraisers),
      parts: /^\d+$/.test(options.parts) ? numbered(Number(options.parts)) : names(options.parts),
      trials: options.trials,
    }),
  );
  const unit: Unit = entry.quantity === 'torque' ? 'N.m' : 'mm';
  const station = await openStation(file.station, file.folder, stamp);
  try {
    const typed$ = new Subject<string>();
    const { tools, close } = await openTools([entry], { base: file.base, clock, typed$ });
    const [tool] = tools;
    if (tool === undefined) throw new Error('a tool that was opened is not there');
    try {
      const value$ = studyValues(tool, atNm);
      const exercise = newExercise(plan, shuffled);
      const whole = await exerciseWith(exercise, {
        value$,
        typed$,
        unit,
        connect: () => tool.connect(),
        input: process.stdin,
        say: (line) => print([line]),
      });
      if (whole === null) {
        process.stdout.write('Left before its end: nothing was recorded.\n');
        return EXIT.failed;
      }
      const number = `GS-${studiesOf(station).length + 1}`;
      const { appraisers, parts, readings } = orThrow(studyOf(whole));
      const event: StudyEvent = {
        type: 'gauge-study-made',
        study: number,
        tool: entry.id,
        serial: entry.serial ?? null,
        unit,
        appraisers: [...appraisers],
        parts: [...parts],
        readings: readings.map((row) => row.map((cell) => [...cell])),
      };
      await recordStation(station, [event], stamp());
      print(['', `Recorded as ${number}.`, '', ...studyLines(event)]);
      return EXIT.done;
    } finally {
      await close();
    }
  } finally {
    station.log.close();
  }
}

type StudyEvent = Extract<StationEvent, { readonly type: 'gauge-study-made' }>;

/** Fisher and Yates, by the system's own chance: nobody can know the order beforehand. */
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

/** The studies that the station made. */
export function listStudies(options: Whose): Promise<ExitCode> {
  return withArchive(options, (archive) => {
    const rows = studiesOf(archive).map(({ event, at }) => [
      event.study,
      at.slice(0, 10),
      event.serial ?? event.tool,
      `${event.appraisers.length} x ${event.parts.length} x ${event.readings[0]?.[0]?.length ?? 0}`,
    ]);
    print(rows.length === 0 ? ['No gauge study was made yet.'] : textTable(HEAD, rows));
    return EXIT.done;
  });
}

const HEAD = ['study', 'made', 'tool', 'appraisers x parts x trials'] as const;

/** One study by both methods, computed anew from its readings. */
export function showStudy(number: string, options: Whose): Promise<ExitCode> {
  return withArchive(options, (archive) => {
    const found = studiesOf(archive).find(({ event }) => event.study === number);
    if (found === undefined)
      throw new ProblemError({
        code: 'study-unknown',
        where: number,
        message: 'this station made no gauge study of this number',
        next: 'See "plugmark gauge-study list".',
      });
    print(studyLines(found.event));
    return EXIT.done;
  });
}

function studiesOf({ log }: Archive): readonly { readonly event: StudyEvent; readonly at: string }[] {
  return log
    .stationEntries()
    .flatMap(({ event, at }) => (event.type === 'gauge-study-made' ? [{ event, at }] : []));
}

const names = (text: string) => text.split(',').map((name) => name.trim());
const numbered = (n: number) => Array.from({ length: Math.min(n, 99) }, (_, i) => String(i + 1));

/** Below a share of it nothing counts as a pull. */
function expectedNm(quantity: 'torque' | 'length', at: number | undefined): number {
  if (quantity === 'length') return 1;
  if (at !== undefined && at > 0) return at;
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--at',
    message: 'a study of a wrench needs the torque that its pulls come to, above zero',
    next: 'Give it in N·m: --at 25.',
  });
}

function noTool(tool: string, station: string): ProblemError {
  return new ProblemError({
    code: 'tool-unknown',
    where: '--tool',
    message: `the station file names no tool ${tool}`,
    next: `Use a name as it stands in ${station}.`,
  });
}

const print = (lines: readonly string[]) => void process.stdout.write(`${lines.join('\n')}\n`);
const originUs = process.hrtime.bigint();
const clock = { nowUs: () => Number((process.hrtime.bigint() - originUs) / 1000n) };
const stamp = (): Stamp => ({ at: new Date().toISOString(), monoUs: clock.nowUs() });
