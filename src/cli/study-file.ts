/**
 * The file of a gauge study: its plan, the order that was drawn, and a line for each reading, on disk before anybody sees
 * it. So a study that breaks off goes on where it stood; what was typed or taken back stands there too. The log takes a
 * study only as a whole, because an open one says nothing of the tool.
 */
import {
  closeSync,
  existsSync,
  fstatSync,
  fsyncSync,
  ftruncateSync,
  mkdirSync,
  openSync,
  readdirSync,
  rmSync,
  writeSync,
} from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { drawnExercise, type Exercise, planFrom, turnsOf } from '../audit/gauge-exercise.ts';
import { continued, type Kept } from '../audit/gauge-sitting.ts';
import { parseStrictJson } from '../evidence/strict-json.ts';
import { type Problem, ProblemError, problemFromZod } from '../problem.ts';
import { orThrow } from '../result.ts';

const headSchema = z.strictObject({
  form: z.literal('plugmark/gauge-study/1'),
  study: z.string().regex(/^GS-[1-9]\d{0,5}$/),
  begun: z.iso.datetime({ precision: 3 }),
  tool: z.string().min(1).max(32),
  serial: z.string().min(1).max(60).nullable(),
  quantity: z.enum(['torque', 'length']),
  /** What the pulls of a wrench come to, N·m; 1 for a gauge. */
  at: z.number().positive(),
  plan: z.unknown(),
  turns: z.array(z.array(z.int().nonnegative()).max(30)).max(100),
});
export type StudyHead = Omit<z.infer<typeof headSchema>, 'form' | 'plan' | 'turns'>;

const at = z.iso.datetime({ precision: 3 });
const keptSchema = z.union([
  z.strictObject({ at, took: z.number(), by: z.enum(['tool', 'hand']) }),
  z.strictObject({ at, back: z.literal(true) }),
]);

/** A study as its file has it. */
export interface OpenStudy {
  readonly head: StudyHead;
  readonly exercise: Exercise;
  /** How many readings were typed by hand and stand, and how many were taken back. */
  readonly byHand: number;
  readonly takenBack: number;
}

/** A file that readings go into. */
export interface StudyWriter {
  /** On disk when it returns; throws `study-disk`, and `study-other-writer` when another program is at the same study. */
  keep(kept: Kept, at: string): void;
  /** A file that nothing was put into does not stay. */
  close(): void;
}

const FOLDER = 'studies';
const fileOf = (folder: string, study: string) => join(folder, FOLDER, `${study}.jsonl`);

/** The numbers of the studies that have a file. */
export function studyFiles(folder: string): readonly string[] {
  const path = join(folder, FOLDER);
  const names = existsSync(path) ? told(path, () => readdirSync(path)) : [];
  return names.flatMap((name) => /^(GS-[1-9]\d{0,5})\.jsonl$/.exec(name)?.[1] ?? []);
}

/** Begins the file of a new study; one that is there already is never written over. */
export function beginStudy(folder: string, head: StudyHead, exercise: Exercise): StudyWriter {
  const path = fileOf(folder, head.study);
  return told(path, () => {
    mkdirSync(join(folder, FOLDER), { recursive: true, mode: 0o700 });
    const writer = writerOn(openSync(path, 'ax', 0o600), path, []);
    const { plan } = exercise;
    writer.line({ form: 'plugmark/gauge-study/1', ...head, plan, turns: turnsOf(exercise) });
    return writer;
  });
}

/** Reads the file of a study. Problems: `study-unknown`, `study-file`, and those of reading JSON. */
export async function readStudy(folder: string, study: string): Promise<OpenStudy> {
  const path = fileOf(folder, study);
  const [first, ...lines] = (await wholeLines(path, study)).map((line, i) =>
    orThrow(parseStrictJson(line, `${path}: line ${i + 1}`)),
  );
  const parsed = headSchema.safeParse(first);
  if (!parsed.success)
    throw new ProblemError(problemFromZod(parsed.error, `${path}: line 1`, 'study-file', NEXT));
  const { form: _form, plan, turns, ...head } = parsed.data;
  const kept = lines.map((line, i) => {
    const one = keptSchema.safeParse(line);
    if (one.success) return one.data;
    throw new ProblemError(problemFromZod(one.error, `${path}: line ${i + 2}`, 'study-file', NEXT));
  });
  const exercise = continued(orThrow(drawnExercise(orThrow(planFrom(plan)), turns)), kept);
  return { head, exercise, ...howTaken(kept) };
}

/** Goes on with the file of a study; a last line that a power cut left unfinished is taken off: nobody was told of it. */
export async function goOnWith(folder: string, study: string): Promise<StudyWriter> {
  const path = fileOf(folder, study);
  const lines = await wholeLines(path, study);
  return told(path, () => {
    const file = openSync(path, 'a');
    ftruncateSync(file, sizeOf(lines));
    return writerOn(file, path, lines);
  });
}

function howTaken(kept: readonly Kept[]): Pick<OpenStudy, 'byHand' | 'takenBack'> {
  const standing: Kept[] = [];
  for (const one of kept)
    if (one.took === undefined) standing.pop();
    else standing.push(one);
  return {
    byHand: standing.filter((one) => one.took !== undefined && one.by === 'hand').length,
    takenBack: kept.filter((one) => one.took === undefined).length,
  };
}

function writerOn(file: number, path: string, before: readonly Buffer[]) {
  let lines = before.length;
  let bytes = sizeOf(before);
  const line = (value: object) =>
    told(path, () => {
      if (fstatSync(file).size !== bytes) throw new ProblemError(otherWriter(path));
      bytes += writeSync(file, `${JSON.stringify(value)}\n`);
      fsyncSync(file);
      lines += 1;
    });
  return {
    line,
    keep: (kept: Kept, at: string) => line({ at, ...kept }),
    close: () => {
      closeSync(file);
      if (lines <= 1) rmSync(path);
    },
  };
}

const sizeOf = (lines: readonly Buffer[]) => lines.reduce((bytes, line) => bytes + line.length + 1, 0);

const LINE_END = 0x0a;

async function wholeLines(path: string, study: string): Promise<readonly Buffer[]> {
  let bytes: Buffer;
  try {
    bytes = await readFile(path);
  } catch (cause) {
    throw new ProblemError(unknownStudy(study), { cause });
  }
  const lines: Buffer[] = [];
  for (let from = 0, to = bytes.indexOf(LINE_END); to >= 0; from = to + 1, to = bytes.indexOf(LINE_END, from))
    lines.push(bytes.subarray(from, to));
  return lines;
}

function told<T>(path: string, work: () => T): T {
  try {
    return work();
  } catch (cause) {
    if (cause instanceof ProblemError) throw cause;
    const code = cause instanceof Error && 'code' in cause ? String(cause.code) : '';
    if (code === '') throw cause;
    throw new ProblemError(
      {
        code: 'study-disk',
        where: path,
        message: `the file of the study cannot be written: ${code}`,
        next: 'Make room, or check the rights on it; what was taken before is kept.',
      },
      { cause },
    );
  }
}

const NEXT = 'Begin the study anew: this file was changed by something else.';

export const unknownStudy = (study: string): Problem => ({
  code: 'study-unknown',
  where: study,
  message: 'this station has no gauge study of this number',
  next: 'See "plugmark gauge-study list".',
});

const otherWriter = (path: string): Problem => ({
  code: 'study-other-writer',
  where: path,
  message: 'another program took a reading for the same study meanwhile',
  next: 'End one of the two, and go on with the other by --resume.',
});
