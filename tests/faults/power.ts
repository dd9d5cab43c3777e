/** The power goes at any moment: images of the disk, rebuilt from the order of writes and fsyncs. */
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { acknowledgedIn, heldAgainst } from './log-facts.ts';
import { BIN, HERE, type Outcome, type Part, started, whole } from './part.ts';
import { imageOf, saidBefore, TRACED, type Trace, traceOf } from './trace.ts';
import { typedStation } from './typed-station.ts';

interface Scene {
  readonly folder: string;
  /** Steps that every disk has: what was there before. */
  readonly from: number;
  readonly trace: Trace;
  readonly check: (image: string, said: string) => Promise<Outcome>;
}

export const power: Part = {
  name: 'power',
  what: 'images of the disk after a power cut',
  cases: 2000,
  short: 60,
  async prepare(folder) {
    // A long one for the rounds of the write-ahead log, short ones for the beginning and the end.
    const lengths = [1500, 40, 300];
    const scenes: Scene[] = [];
    for (const [i, length] of lengths.entries())
      scenes.push(await traced(join(folder, `trace-${i}`), length));
    const rotated = await rotation(join(folder, 'trace-keys'));
    if ([...scenes, rotated].some(({ from, trace }) => trace.length <= from))
      return { one: () => Promise.resolve({ faults: [], skipped: 'strace is not there' }) };
    return {
      one: (number, random, own) => {
        const scene = (number % 10 === 9 ? rotated : scenes[number % 3]) ?? rotated;
        const cut = whole(random, scene.from, scene.trace.length);
        const image = join(own, 'image');
        mkdirSync(image);
        imageOf(scene.trace, cut, random, scene.folder, image);
        return scene.check(image, saidBefore(scene.trace, cut));
      },
    };
  },
};

async function traced(folder: string, length: number): Promise<Scene> {
  mkdirSync(folder);
  const args = [join(HERE, 'writer.mjs'), join(folder, 'station.db'), 'P', '0', String(length)];
  return {
    folder,
    from: 1,
    trace: await traceBy(folder, args),
    async check(image, said) {
      const path = join(image, 'station.db');
      const acknowledged = acknowledgedIn(said);
      // Before the first acknowledgement there need not be a log.
      const { faults, held, told } = await heldAgainst(path, 'P', acknowledged);
      const early = acknowledged === 0 && faults.every((fault) => /empty|cannot be opened/.test(fault));
      return {
        faults: early ? [] : faults,
        counted: {
          acknowledged,
          'kept beyond': held - acknowledged,
          'told as cut off': told === null ? 0 : 1,
        },
      };
    },
  };
}

/** A new key with its file and its list. */
async function rotation(folder: string): Promise<Scene> {
  mkdirSync(folder);
  const { station, order } = typedStation(folder);
  const job = started(process.execPath, [BIN, 'job', '--order', order, '--station', station, '--plain']);
  await job.says('gauge  linked');
  job.kill('SIGINT');
  await job.ended;
  const data = join(folder, 'data');
  const before = readFileSync(join(data, 'trusted-keys.json'));
  const base: Trace = [
    { do: 'create', file: join(data, 'trusted-keys.json') },
    { do: 'write', file: join(data, 'trusted-keys.json'), at: 0, bytes: before },
    { do: 'sync', file: join(data, 'trusted-keys.json') },
  ];
  const trace = await traceBy(data, [BIN, 'keys', 'rotate', '--data', data]);
  return {
    folder: data,
    from: base.length,
    trace: [...base, ...trace.filter((step) => step.do === 'say' || !step.file.includes('station.db'))],
    check(image) {
      const list = join(image, 'trusted-keys.json');
      if (!existsSync(list)) return Promise.resolve({ faults: ['the trust list is gone'] });
      const read = parseTrustList(readFileSync(list), 'the list');
      return Promise.resolve({ faults: read.ok ? [] : [`the trust list: ${read.error.message}`] });
    },
  };
}

async function traceBy(folder: string, args: readonly string[]): Promise<Trace> {
  const file = `${folder}.strace`;
  const strace = ['-y', '-xx', '-s', '70000', '-o', file, '-e', `trace=${TRACED}`, process.execPath, ...args];
  const { code } = await started('strace', strace, { patienceMs: 120_000 }).ended.catch(() => ({
    code: null,
  }));
  return code === 0 ? traceOf(file, folder) : [];
}
