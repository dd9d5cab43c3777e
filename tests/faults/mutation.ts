/** Whatever a file or a word of the command line holds: an answer or a sentence, soon, and nothing else. */
import { type ChildProcess, fork } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { z } from 'zod';
import type { Random } from '../../sim/random.ts';
import { corpusIn, type Input } from './corpus.ts';
import { HANGS_AFTER_MS, HERE, manners, type Outcome, type Part, pick, whole } from './part.ts';

const MOST_MB = 500;
/** Many in one case: a program that starts anew for each would take most of the time. */
const A_CASE = 100;

export const mutation: Part = {
  name: 'mutation',
  what: 'commands on mutated inputs',
  cases: 200,
  short: 3,
  async prepare(folder) {
    const { inputs } = await corpusIn(folder);
    let worker = newWorker();
    return {
      async one(_number, random, own) {
        const faults: string[] = [];
        let peakMb = 0;
        let slowestMs = 0;
        // What one process keeps of hundreds of commands is not the memory that a command takes.
        worker.kill('SIGKILL');
        worker = newWorker();
        for (let i = 0; i < A_CASE; i++) {
          const dir = join(own, String(i));
          mkdirSync(dir);
          const { argv, what, never } = random.chance(0.15)
            ? { argv: wordsOf(random, dir), what: 'command line', never: undefined }
            : fileOf(random, pick(random, inputs), dir);
          const answer = await asked(worker, argv);
          if (answer === null) worker = newWorker();
          const ran = answer ?? { code: null, text: 'HANGS', ms: HANGS_AFTER_MS, mb: 0 };
          peakMb = Math.max(peakMb, ran.mb);
          slowestMs = Math.max(slowestMs, ran.ms);
          const found = [
            ...manners({ code: ran.code, signal: null, out: '', err: ran.text, ms: ran.ms }),
            ...(never?.test(ran.text) === true ? ['a changed file is taken for a whole one'] : []),
            ...(ran.mb > MOST_MB ? [`${Math.round(ran.mb)} MB`] : []),
          ];
          faults.push(...found.map((fault) => `${what} (${dir}): ${fault}`));
          if (ran.mb > MOST_MB) {
            worker.kill('SIGKILL');
            worker = newWorker();
          }
        }
        return { faults, peakMb, counted: { inputs: A_CASE, 'longest ms': slowestMs } } satisfies Outcome;
      },
      end: () => void worker.kill('SIGKILL'),
    };
  },
};

const newWorker = (): ChildProcess => fork(join(HERE, 'mutation-worker.mjs'), { stdio: 'ignore' });
const answerSchema = z.object({ code: z.int().nullable(), text: z.string(), ms: z.number(), mb: z.number() });

/** Null where it does not answer in time. */
function asked(worker: ChildProcess, argv: readonly string[]): Promise<z.infer<typeof answerSchema> | null> {
  return new Promise((resolve) => {
    const end = (answer: z.infer<typeof answerSchema> | null) => {
      clearTimeout(timer);
      worker.off('message', heard).off('exit', gone);
      resolve(answer);
    };
    const heard = (message: unknown) => end(answerSchema.parse(message));
    const gone = (code: number | null) =>
      end({ code: 70, text: `fault in the program: it ended by itself with ${code}`, ms: 0, mb: 0 });
    const timer = setTimeout(() => {
      worker.kill('SIGKILL');
      end(null);
    }, 2 * HANGS_AFTER_MS);
    worker.on('message', heard).on('exit', gone);
    worker.send({ argv });
  });
}

function fileOf(random: Random, { what, bytes, file, beside = [], argv, never }: Input, dir: string) {
  const path = join(dir, file);
  for (const [name, content] of [...beside, [file, mutated(random, bytes)] as const]) {
    mkdirSync(dirname(join(dir, name)), { recursive: true });
    writeFileSync(join(dir, name), content);
  }
  return { what, argv: argv(path, dir), never };
}

const WORDS = [
  'jobs',
  'verify',
  'ask',
  'log',
  'check',
  'keys',
  'list',
  'paper',
  'window',
  'pulls',
  'impact',
  'package',
  'manual',
  'schema',
  'capability',
  'drift',
  'calendar',
  'forget',
  'retention',
  'dispute',
  'share',
  'replay',
  'complete',
  'completion',
];
const OPTIONS = [
  '--station',
  '--data',
  '--out',
  '--json',
  '--from',
  '--to',
  '--vin',
  '--job',
  '--trust',
  '--tool',
  '--by',
  '--because',
  '--on',
  '--plate',
  '--help',
  '--version',
  '--without',
  '--order',
];
const HOSTILE = [
  '\u001b[31mred\u001b[0m',
  '\u0007',
  '--\u001b]0;title\u0007',
  '\u202egnp',
  '-1',
  '1e999',
  '../../../etc/passwd',
  '',
  ' ',
  '\n',
  'x'.repeat(100_000),
  "'; DROP TABLE jobs; --",
  '%s%n',
  '\u0000',
  '2026-02-30',
  'NaN',
  '\ud800',
  '=cmd()',
  '-',
];

function wordsOf(random: Random, dir: string): readonly string[] {
  const words = Array.from({ length: whole(random, 1, 6) }, () => {
    const word = pick(random, random.chance(0.3) ? HOSTILE : random.chance(0.5) ? WORDS : OPTIONS);
    return random.chance(0.2) ? mutated(random, Buffer.from(word)).toString('utf8') : word;
  });
  // What asks questions or waits for a tool has parts of its own.
  const first = WORDS.includes(words[0] ?? '') ? words : [pick(random, WORDS), ...words];
  return [
    ...first.map((word) => word.replaceAll('\u0000', '')),
    ...(random.chance(0.5) ? ['--data', dir] : []),
  ];
}

/** One to four changes of bytes, of pieces, or of what stands for a value. */
export function mutated(random: Random, bytes: Buffer): Buffer {
  let changed: Buffer = Buffer.from(bytes);
  for (let i = whole(random, 1, 4); i > 0; i--) changed = pick(random, CHANGES)(changed, random);
  return changed.equals(bytes) ? Buffer.concat([bytes, Buffer.from('\u0000')]) : changed;
}

type Change = (bytes: Buffer, random: Random) => Buffer;
const place = (bytes: Buffer, random: Random) => whole(random, 0, Math.max(0, bytes.length - 1));
const spliced = (bytes: Buffer, at: number, drop: number, put: Buffer) =>
  Buffer.concat([bytes.subarray(0, at), put, bytes.subarray(Math.min(bytes.length, at + drop))]);

const CHANGES: readonly Change[] = [
  (bytes, random) => {
    const at = place(bytes, random);
    if (bytes.length > 0) bytes[at] = (bytes[at] ?? 0) ^ (1 << whole(random, 0, 7));
    return bytes;
  },
  (bytes, random) => spliced(bytes, place(bytes, random), 1, Buffer.of(whole(random, 0, 255))),
  (bytes, random) => bytes.subarray(0, place(bytes, random)),
  (bytes, random) => spliced(bytes, place(bytes, random), whole(random, 1, 200), Buffer.alloc(0)),
  (bytes, random) => {
    const from = place(bytes, random);
    return spliced(bytes, place(bytes, random), 0, bytes.subarray(from, from + whole(random, 1, 400)));
  },
  (bytes, random) => spliced(bytes, place(bytes, random), 0, Buffer.from(pick(random, HOSTILE))),
  // Long runs, against what takes quadratic time.
  (bytes, random) =>
    spliced(
      bytes,
      place(bytes, random),
      0,
      Buffer.from(
        pick(random, ['a', ' ', '0', '(', '"', '\\', '-', '[', '1,', '<a>', 'é']).repeat(
          whole(random, 100, 30_000),
        ),
      ),
    ),
  inText(/"(?:[^"\\]|\\.){0,300}"/g, (random) => JSON.stringify(pick(random, HOSTILE))),
  inText(/-?\d+(?:\.\d+)?/g, (random) =>
    pick(random, ['0', '-1', '1e308', '-0', '9007199254740993', '1e-320', 'null', '0.1', '""']),
  ),
  inText(/[{[]/g, (random) => pick(random, ['{'.repeat(3000), '['.repeat(3000), '[', '{"__proto__":'])),
  inText(/\btrue\b|\bfalse\b|\bnull\b/g, (random) => pick(random, ['true', 'null', '1', '"x"', '{}'])),
];

/** Changes one of the places that the pattern finds. */
function inText(pattern: RegExp, by: (random: Random) => string): Change {
  return (bytes, random) => {
    if (bytes.length > 2_000_000) return bytes;
    const text = bytes.toString('latin1');
    const found = [...text.matchAll(pattern)];
    if (found.length === 0) return bytes;
    const one = pick(random, found);
    return spliced(bytes, one.index, one[0].length, Buffer.from(by(random)));
  };
}
