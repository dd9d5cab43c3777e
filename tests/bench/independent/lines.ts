/** The generator's jobs, one after the other, as they come out of it. */
import { spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { z } from 'zod';

export const CELLS = [
  'pulls',
  'unclicked',
  'weak',
  'trial',
  'drag',
  'filter',
  'coarse',
  'slow',
  'jitter',
  'loss',
  'leftout',
  'gyroscopes',
  'people',
  'handling',
  'cost',
] as const;
export type Cell = (typeof CELLS)[number];

const truthSchema = z.strictObject({
  /** Null for handling. */
  plug: z.int().nullable(),
  /** `fresh`, `stage`, `again`, `in place of the last`, `loosened`, `loosened unseen`, or what was done with the tool. */
  was: z.string(),
  fromUs: z.number(),
  toUs: z.number(),
  peakNm: z.number(),
  peakUs: z.number(),
  turnedDeg: z.number(),
  clickNm: z.number().nullable(),
  /** `arc`: a stroke of a ratchet on the way. */
  ended: z.enum(['click', 'goal', 'arc', 'out', 'handling']),
  /** Where readings were lost: what the others show, and how high it may have gone in between. */
  seenNm: z.number().optional(),
  mayBeNm: z.number().optional(),
});
export type Truth = z.infer<typeof truthSchema>;

const headSchema = z.strictObject({
  job: z.strictObject({
    cell: z.string(),
    key: z.record(z.string(), z.union([z.string(), z.number(), z.boolean()])),
    seat: z.enum(['new gasket', 'used gasket', 'cone']),
    lowerNm: z.number(),
    upperNm: z.number(),
    cylinders: z.int(),
    clicks: z.boolean(),
    /** The step of the tool in 0.01 N·m. */
    stepCounts: z.int(),
  }),
  truth: z.array(truthSchema),
});
const partSchema = z.union([
  z.strictObject({
    t: z.array(z.int()),
    c: z.array(z.int()),
    a: z.array(z.int()).optional(),
  }),
  z.strictObject({ missed: z.strictObject({ fromUs: z.int(), atUs: z.int(), readings: z.int() }) }),
  z.strictObject({ command: z.strictObject({ do: z.literal('start-again'), cylinder: z.int() }) }),
]);
const endSchema = z.strictObject({ end: z.int() });
const lineSchema = z.union([partSchema, headSchema, endSchema]);

export type Part = z.infer<typeof partSchema>;
export interface Tape extends z.infer<typeof headSchema> {
  readonly parts: readonly Part[];
}

/** Runs the generator for a cell; jobs come in an order that the seed alone decides. */
export async function* tapes(
  cell: Cell,
  { seed, size, angle }: { readonly seed: number; readonly size: number; readonly angle: boolean },
): AsyncGenerator<Tape> {
  const script = fileURLToPath(new URL('generate.py', import.meta.url));
  const options = ['--seed', String(seed), '--size', String(size), ...(angle ? ['--angle'] : [])];
  const python = spawn('python3', ['-B', script, cell, ...options], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const ended = new Promise<number | null>((resolve, reject) => {
    python.on('error', reject);
    python.on('close', resolve);
  });
  let head: z.infer<typeof headSchema> | null = null;
  let parts: Part[] = [];
  for await (const text of createInterface({ input: python.stdout })) {
    const line = lineSchema.parse(JSON.parse(text));
    if ('job' in line) head = line;
    else if (!('end' in line)) parts.push(line);
    else if (head === null) throw new Error('the generator ended a job that it had not begun');
    else {
      yield { ...head, parts };
      parts = [];
      head = null;
    }
  }
  const code = await ended;
  if (code !== 0) throw new Error(`the generator ended with ${code}`);
}
