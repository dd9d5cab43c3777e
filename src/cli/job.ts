import { Subject } from 'rxjs';
import { openTools } from '../../drivers/index.ts';
import type { Stamp } from '../evidence/log.ts';
import { type Bench, createBench } from '../job/bench.ts';
import { foldAll } from '../job/fold.ts';
import { type Override, openJob } from '../job/open.ts';
import { workOrderSchema } from '../job/order.ts';
import { replay } from '../job/replay.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { finish } from './finish.ts';
import { readJson } from './input.ts';
import { hasScreen, runWork } from './run.ts';
import { openInLog, openStation, type Station } from './station.ts';
import { type LoadedStation, readStationFile } from './station-file.ts';

export interface JobOptions {
  readonly order?: string;
  readonly resume?: true;
  readonly job?: string;
  readonly station: string;
  readonly plain?: true;
  /** A supervisor answers for this tool, with name and reason. */
  readonly override?: string;
  readonly by?: string;
  readonly reason?: string;
}

interface Begun {
  readonly stream: string;
  readonly bench: Bench;
}

/** A real job: opened from a work order, or taken up again where it was left. */
export async function job(options: JobOptions): Promise<ExitCode> {
  const file = await readStationFile(options.station);
  const station = await openStation(file.station, file.folder, stamp);
  try {
    const begun =
      options.resume === true ? takeUp(station, options.job) : await begin(station, file, options);
    const typed$ = new Subject<string>();
    const tools = await openTools(file.tools, { base: file.base, clock, typed$ });
    // The screen takes single keys; figures come as lines.
    const types = file.tools.some(({ driver }) => driver.use === 'typed');
    const plain = options.plain === true || types || !hasScreen();
    try {
      const outcome = await runWork({
        station,
        ...begun,
        tools: tools.tools,
        simulated: false,
        plain,
        typed$,
        stamp,
      });
      if (outcome === 'closed') return await finish(station, begun.stream, file.folder, stamp);
    } finally {
      await tools.close();
    }
    const again = `plugmark job --resume --station ${safeLine(options.station)}`;
    process.stdout.write(`The job was left open; all that was read is kept. Go on with: ${again}\n`);
    return EXIT.done;
  } finally {
    station.log.close();
  }
}

async function begin(station: Station, file: LoadedStation, options: JobOptions): Promise<Begun> {
  const path = options.order;
  if (path === undefined)
    throw new ProblemError({
      code: 'nothing-to-do',
      message: 'neither a new job nor an open one was named',
      next: 'Give --order FILE to open a job, or --resume to go on with the one that was left open.',
    });
  const order = await readJson(path, workOrderSchema, 'work order', 'the example in the README');
  const stream = `job:${order.job}`;
  if (station.log.streams().includes(stream))
    throw new ProblemError({
      code: 'job-exists',
      where: path,
      message: `this station already has a job ${order.job}`,
      next: 'Go on with it by --resume, or give the new order a number of its own.',
    });
  const now = stamp();
  const opening = { on: now.at.slice(0, 10), decision: file.decision, overrides: overridesOf(options) };
  const opened = openJob(order, file.instruments, opening);
  if (!opened.ok) throw new ProblemError({ ...opened.error, where: `${path}: ${opened.error.where ?? ''}` });
  const drafts = opened.value.map((event) => ({
    by: event.type === 'instrument-overridden' ? event.by : order.technician,
    event,
  }));
  for (const note of opened.value[0].basis.notes) process.stdout.write(`note: ${safeLine(note)}\n`);
  const state = foldAll(await openInLog(station, drafts, now));
  if (state === null) throw new Error('a job without an opening');
  for (const note of state.basis.notes) process.stdout.write(`Note: ${safeLine(note)}\n`);
  return { stream, bench: createBench(state) };
}

function overridesOf({ override, by, reason }: JobOptions): Override[] {
  if (override === undefined) return [];
  if (!(isText(by, 80) && isText(reason, 200)))
    throw new ProblemError({
      code: 'override-incomplete',
      where: '--override',
      message: 'somebody has to answer for an instrument that would be refused, in a few words',
      next: 'Add --by NAME (up to 80 characters) and --reason TEXT (up to 200).',
    });
  return [{ tool: override, by, reason }];
}

const isText = (text: string | undefined, most: number): text is string =>
  text !== undefined && text.trim() !== '' && text.length <= most;

/** The bench as it stood when the program stopped, however it stopped. */
function takeUp(station: Station, wanted: string | undefined): Begun {
  const open = station.log.lastJobs(1000).filter(({ state }) => state === 'open');
  const matching = wanted === undefined ? open : open.filter((row) => row.job === wanted);
  const [row, ...others] = matching;
  if (row === undefined || others.length > 0)
    throw new ProblemError(
      notOne(
        matching.map((one) => one.job),
        wanted,
      ),
    );
  const entries = station.log.entries(row.stream);
  return { stream: row.stream, bench: orThrow(replay(entries.map(({ event }) => event))) };
}

function notOne(jobs: readonly string[], wanted: string | undefined) {
  if (jobs.length > 1)
    return {
      code: 'several-open',
      message: `${jobs.length} jobs are open: ${jobs.join(', ')}`,
      next: 'Name one with --job.',
    };
  const message =
    wanted === undefined ? 'no job of this station is open' : `no open job has the number ${wanted}`;
  return { code: 'none-open', message, next: 'Open a job with --order FILE.' };
}

const originUs = process.hrtime.bigint();
const clock = { nowUs: () => Number((process.hrtime.bigint() - originUs) / 1000n) };
const stamp = (): Stamp => ({ at: new Date().toISOString(), monoUs: clock.nowUs() });
