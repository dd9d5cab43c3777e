import { openTools } from '../../drivers/index.ts';
import type { Stamp } from '../evidence/log.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { type Bench, createBench } from '../job/bench.ts';
import { fold } from '../job/fold.ts';
import { openJob } from '../job/open.ts';
import { workOrderSchema } from '../job/order.ts';
import { replay } from '../job/replay.ts';
import { ProblemError } from '../problem.ts';
import { orThrow } from '../result.ts';
import { EXIT, type ExitCode, safeLine } from './exit.ts';
import { finish } from './finish.ts';
import { readJson } from './input.ts';
import { hasScreen, runWork } from './run.ts';
import { openStation, type Station } from './station.ts';
import { type LoadedStation, readStationFile } from './station-file.ts';

export interface JobOptions {
  readonly order?: string;
  readonly resume?: true;
  readonly job?: string;
  readonly station: string;
  readonly plain?: true;
}

interface Begun {
  readonly stream: string;
  readonly bench: Bench;
}

/** A real job: opened from a work order, or taken up again where it was left. */
export async function job(options: JobOptions): Promise<ExitCode> {
  const file = await readStationFile(options.station);
  const station = await openStation(file.station, file.folder);
  try {
    const begun =
      options.resume === true ? takeUp(station, options.job) : await begin(station, file, options);
    const tools = await openTools(file.tools, { base: file.base, clock });
    const plain = options.plain === true || !hasScreen();
    try {
      const outcome = await runWork({
        station,
        ...begun,
        tools: tools.tools,
        simulated: false,
        plain,
        stamp,
      });
      if (outcome === 'closed') return await finish(station, begun.stream, file.folder, stamp().at);
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

async function begin(station: Station, file: LoadedStation, { order: path }: JobOptions): Promise<Begun> {
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
  const instruments = file.tools.map(({ driver: _driver, ...instrument }): Instrument => instrument);
  const opened = openJob(order, instruments);
  if (!opened.ok) throw new ProblemError({ ...opened.error, where: `${path}: ${opened.error.where ?? ''}` });
  station.log.append(stream, [{ by: order.technician, event: opened.value }], stamp());
  return { stream, bench: createBench(fold(null, opened.value)) };
}

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
