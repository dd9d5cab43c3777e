/** Whatever a file or a word of the command line holds: an answer or a sentence, soon, and nothing else. */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { Random } from '../../sim/random.ts';
import { EXIT } from '../../src/cli/terminal/exit.ts';
import { type Answer, askedOfProgram, JUDGED_BY, newWorker } from './asking.ts';
import { commandsOfProgram, notReached } from './commands.ts';
import { corpusIn, type Input } from './corpus.ts';
import { manners, type Outcome, type Part, pick, whole } from './part.ts';

const MOST_MB = 500;
/** Many in one case: a program that starts anew for each would take most of the time. */
const A_CASE = 100;
/** The worker is not the program: one of so many goes through what is delivered. */
const PROGRAM_EVERY = 50;

export const mutation: Part = {
  name: 'mutation',
  what: 'commands on mutated inputs',
  cases: 200,
  short: 3,
  async prepare(folder) {
    const { inputs } = await corpusIn(folder);
    const notes = notReached(inputs.map(({ argv }) => argv('FILE', 'FOLDER')));
    await allAreRead(inputs, folder);
    let worker = newWorker();
    return {
      notes: [`a hang is an answer after more than 10 s of ${JUDGED_BY}`, ...notes],
      async one(_number, random, own) {
        const faults: string[] = [];
        let peakMb = 0;
        let slowestMs = 0;
        let throughProgram = 0;
        // What one process keeps of hundreds of commands is not the memory that a command takes.
        worker.end();
        worker = newWorker();
        for (let i = 0; i < A_CASE; i++) {
          const dir = join(own, String(i));
          const { lay, what, never } = random.chance(0.15)
            ? { lay: wordsOf(random, dir), what: 'command line', never: undefined }
            : fileOf(random, pick(random, inputs), dir);
          const isProgram = i % PROGRAM_EVERY === PROGRAM_EVERY - 1;
          if (isProgram) throughProgram++;
          let answer = await (isProgram ? askedOfProgram(lay(), dir) : worker.ask(lay()));
          if (answer.peakMb > MOST_MB && !isProgram) {
            // The peak is that of all commands before, too: once more, alone.
            worker.end();
            worker = newWorker();
            answer = await worker.ask(lay());
          }
          peakMb = Math.max(peakMb, answer.peakMb);
          slowestMs = Math.max(slowestMs, answer.ownMs);
          faults.push(...faultsOf(answer, never).map((fault) => `${what} (${dir}): ${fault}`));
        }
        return {
          faults,
          peakMb,
          counted: { inputs: A_CASE, 'through the program': throughProgram, 'longest ms': slowestMs },
        } satisfies Outcome;
      },
      end: () => worker.end(),
    };
  },
};

const faultsOf = (answer: Answer, never: RegExp | undefined): readonly string[] => [
  ...manners({ code: answer.code, signal: null, out: '', err: answer.text, ms: answer.ownMs }),
  ...(answer.hangs ? [`hangs: ${Math.round(answer.ownMs)} ms of its own time`] : []),
  ...(answer.hangs || EXIT_CODES.has(answer.code) ? [] : [`it ends with ${answer.code}`]),
  ...(never?.test(answer.text) === true ? ['a changed file is taken for a whole one'] : []),
  ...(answer.peakMb > MOST_MB ? [`${Math.round(answer.peakMb)} MB at its peak`] : []),
];
const EXIT_CODES: ReadonlySet<number | null> = new Set(Object.values(EXIT));

/** Of a command that does not look into its file, no mutation tries anything: whole and spoilt must get other answers. */
async function allAreRead(inputs: readonly Input[], folder: string): Promise<void> {
  const worker = newWorker();
  const unread: string[] = [];
  for (const [i, input] of inputs.entries()) {
    const texts: string[] = [];
    for (const bytes of [input.bytes, Buffer.from('\u0001 spoilt')]) {
      // The same place, so that names of files make no difference.
      const dir = join(folder, `read-${i}`);
      const { text } = await worker.ask(laid(input, bytes, dir)());
      texts.push(text.replaceAll(/\d/g, '0'));
    }
    if (texts[0] === texts[1]) unread.push(`${input.what}: ${texts[0]?.slice(0, 200)}`);
  }
  worker.end();
  if (unread.length > 0) throw new Error(`inputs that no command reads:\n${unread.join('\n')}`);
}

/** Puts the files of a case where they belong, and gives the command line. */
const laid = (input: Input, bytes: Buffer, dir: string) => () => {
  rmSync(dir, { recursive: true, force: true });
  mkdirSync(dir, { recursive: true });
  for (const [name, content] of [...(input.beside ?? []), [input.file, bytes] as const]) {
    mkdirSync(dirname(join(dir, name)), { recursive: true });
    // A private key is only read where nobody else can.
    writeFileSync(join(dir, name), content, { mode: 0o600 });
  }
  return input.argv(join(dir, input.file), dir);
};

const fileOf = (random: Random, input: Input, dir: string) => ({
  what: input.what,
  lay: laid(input, mutated(random, input.bytes), dir),
  never: input.never,
});

const COMMANDS = commandsOfProgram();
const WORDS = COMMANDS.flatMap(({ path, words }) => [...path, ...words]);
const OPTIONS = COMMANDS.flatMap(({ options }) => options);
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

function wordsOf(random: Random, dir: string): () => readonly string[] {
  // What asks questions or waits for a tool has parts of its own.
  const { path, options } = pick(
    random,
    COMMANDS.filter((command) => !command.waits),
  );
  const words = Array.from({ length: whole(random, 0, 6) }, () => {
    const word = pick(
      random,
      random.chance(0.3) ? HOSTILE : random.chance(0.3) ? WORDS : random.chance(0.5) ? OPTIONS : options,
    );
    return random.chance(0.2) ? mutated(random, Buffer.from(word)).toString('utf8') : word;
  });
  const argv = [
    ...[...path, ...words].map((word) => word.replaceAll('\u0000', '')),
    ...(random.chance(0.5) ? ['--data', dir] : []),
  ];
  return () => {
    rmSync(dir, { recursive: true, force: true });
    mkdirSync(dir, { recursive: true });
    return argv;
  };
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
