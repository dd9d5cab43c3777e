/** A job is worked on while other programs use the same log: none of them ends it, and no reading is lost. */
import { cpSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { openStationLog } from '../../db/log.ts';
import type { Random } from '../../sim/random.ts';
import { generate } from '../bench/history/generate.ts';
import { BIN, HERE, manners, type Outcome, type Part, pauseMs, ran, started, whole } from './part.ts';
import { typedStation } from './typed-station.ts';

/** Jobs that nobody has asked about yet. */
const UNFOLDED = 2000;
const FIGURES = 8;
const CROWD = ['ask', 'capability', 'backup', 'log check', 'jobs', 'impact', 'writer', 'lock'] as const;
type Neighbour = (typeof CROWD)[number];

export const concurrency: Part = {
  name: 'concurrency',
  what: 'jobs beside other programs on the same log',
  cases: 40,
  short: 2,
  async prepare(folder) {
    const model = join(folder, 'model');
    mkdirSync(model);
    await generate(join(model, 'station.db'), UNFOLDED, () => {});
    // The key of an invented history is nobody's.
    const rotated = await ran(['keys', 'rotate', '--lost', '--data', model], { patienceMs: 120_000 });
    if (rotated.code !== 0) throw new Error(rotated.err);
    return { one: (number, random, own) => beside(number, random, own, model) };
  },
};

async function beside(number: number, random: Random, folder: string, model: string): Promise<Outcome> {
  const { station, order } = typedStation(folder);
  const data = join(folder, 'data');
  cpSync(model, data, { recursive: true });
  const log = join(data, 'station.db');
  const job = started(process.execPath, [BIN, 'job', '--order', order, '--station', station, '--plain'], {
    patienceMs: 900_000,
  });
  await job.says('gauge  linked');
  const faults: string[] = [];
  // The first case has all of them at once, the second the lock alone.
  const crowd =
    number === 0 ? CROWD : number === 1 ? (['lock'] as const) : CROWD.filter(() => random.chance(0.5));
  let working = true;
  let runs = 0;
  let toldBusy = 0;
  const neighbours = crowd.map(async (one) => {
    for (let i = 0; working; i++) {
      const ended = await neighbour(one, data, log, folder, `${one}-${i}`, whole(random, 500, 5000));
      runs++;
      faults.push(...manners(ended).map((fault) => `${one}: ${fault}`));
      // Their patience is 5 s, and they say so: in a crowd that holds the log for as long, that breaks no promise.
      if (ended.code !== 0 && /another program/.test(ended.err)) toldBusy++;
      await pauseMs(20);
    }
  });
  let longestMs = 0;
  for (let i = 1; i <= FIGURES; i++) {
    const sentMs = performance.now();
    const cylinder = ((i - 1) % 4) + 1;
    const before = job.out().length;
    job.type(i > 4 ? `${cylinder}` : '');
    job.type(`0.7${i} mm`);
    while (
      !/gap {2}(OK|NOT OK|UNDECIDED)/.test(job.out().slice(before)) &&
      performance.now() - sentMs < 20_000
    )
      await pauseMs(10);
    longestMs = Math.max(longestMs, performance.now() - sentMs);
    await pauseMs(whole(random, 0, 400));
  }
  working = false;
  await Promise.all(neighbours);
  job.kill('SIGINT');
  const ended = await job.ended;
  faults.push(...manners(ended));
  if (ended.code !== 5) faults.push(`the job ended with ${ended.code}: ${ended.err.slice(0, 300)}`);
  const shown = [...ended.out.matchAll(/gap {2}(?:OK|NOT OK|UNDECIDED)/g)].length;
  const held = await gapsIn(log);
  if (held < shown) faults.push(`${shown} verdicts were shown, ${held} are in the log`);
  if (held < FIGURES) faults.push(`${FIGURES} figures were typed, ${held} are in the log`);
  return {
    faults,
    counted: {
      readings: held,
      'runs of others': runs,
      'told that it is in use': toldBusy,
      'longest wait ms': longestMs,
    },
  };
}

function neighbour(one: Neighbour, data: string, log: string, folder: string, name: string, heldMs: number) {
  // Two cores have eight programs to run: how long a question takes is not asked here.
  const long = { patienceMs: 600_000 };
  switch (one) {
    case 'writer':
      return started(process.execPath, [join(HERE, 'writer.mjs'), log, name, '0', '60'], long).ended;
    case 'lock':
      return started(process.execPath, [join(HERE, 'holder.mjs'), log, String(heldMs)], long).ended;
    case 'backup':
      return ran(['backup', join(folder, `${name}.db`), '--data', data], long);
    case 'log check':
      return ran(['log', 'check', '--data', data], long);
    case 'impact':
      return ran(['impact', 'list', '--data', data], long);
    default:
      return ran([one, '--data', data], long);
  }
}

async function gapsIn(path: string): Promise<number> {
  const log = await openStationLog(path);
  try {
    return log.entries('job:EX-4001').filter(({ event }) => event.type === 'gap-measured').length;
  } finally {
    log.close();
  }
}
