/** What an archive is asked, and the lines in which it answers: JSON, a row a line, and at the end how many there were. */
import { z } from 'zod';
import type { AttemptRow, ProcessRow } from '../audit/attempt.ts';
import type { AskedJob } from '../audit/questions.ts';
import {
  attemptFilterSchema,
  jobsFilterSchema,
  type Records,
  type SpecificationUse,
  type StationOfRecords,
  type UseOfTool,
} from '../audit/records.ts';
import { setupSchema } from '../audit/setup.ts';
import { disclosuresOf, isStationEntry, signedBytes } from '../evidence/entry.ts';
import type { StationEntry } from '../evidence/log.ts';
import { fromUtf8 } from '../evidence/platform/bytes.ts';
import { outOfOrderSchema } from '../job/out-of-order.ts';
import { figureSourceSchema } from '../reading.ts';
import { entryFrom } from './entries.ts';

/** So many jobs or setups are named in one question. */
export const NAMED_AT_ONCE = 500;

const named = z.array(z.string().min(1).max(200)).max(NAMED_AT_ONCE);
export const questionSchema = z.discriminatedUnion('ask', [
  z.strictObject({ ask: z.literal('stations') }),
  z.strictObject({ ask: z.literal('attempts'), filter: attemptFilterSchema }),
  z.strictObject({ ask: z.literal('attempts-in'), jobs: named }),
  z.strictObject({ ask: z.literal('process'), filter: attemptFilterSchema }),
  z.strictObject({ ask: z.literal('jobs'), filter: jobsFilterSchema }),
  z.strictObject({ ask: z.literal('setups'), keys: named }),
  z.strictObject({ ask: z.literal('specifications') }),
  z.strictObject({ ask: z.literal('tool-use'), tool: z.string().max(200), from: z.iso.date() }),
]);
export type Question = z.infer<typeof questionSchema>;

export const endSchema = z.strictObject({
  end: z.int().nonnegative().describe('So many lines came before.'),
  behind: z
    .array(z.string().max(200))
    .describe('Names of stations whose newest entries are not in the answer.'),
});
export type AnswerEnd = z.infer<typeof endSchema>;

/** What is looked for of a person or a vehicle is noted as asked for, and no more. */
const PERSONAL: ReadonlySet<string> = new Set(['vin', 'plate', 'fleet', 'technician']);

/** A question as the archive notes it. */
export function noteOf(question: Question): string {
  const filter = 'filter' in question ? question.filter : {};
  const parts = Object.entries(filter).map(([name, value]) =>
    PERSONAL.has(name) ? name : `${name}=${value}`,
  );
  const tool = question.ask === 'tool-use' ? [`tool=${question.tool}`] : [];
  return [question.ask, ...parts, ...tool].join(' ').slice(0, 500);
}

/** The lines of an answer, without its end. */
export async function answerLines(records: Records, question: Question): Promise<readonly unknown[]> {
  switch (question.ask) {
    case 'stations':
      return (await records.stations()).flatMap(stationLines);
    case 'attempts':
      return (await records.attemptsOf(question.filter)).map(withNulls);
    case 'attempts-in':
      return (await records.attemptsIn(question.jobs.map((stream) => ({ stream })))).map(withNulls);
    case 'process':
      return (await records.processOf(question.filter)).map(withNulls);
    case 'jobs':
      return records.jobsOf(question.filter);
    case 'setups':
      return [...(await records.setupsOf(question.keys))].map(([key, setup]) => ({ key, setup }));
    case 'specifications':
      return records.specifications();
    case 'tool-use':
      return [await records.toolUse(question.tool, question.from)];
  }
}

/** JSON has no NaN, which stands for limits that there are none of. */
const limit = z
  .number()
  .nullable()
  .transform((value) => value ?? Number.NaN);
const withNulls = <T extends Pick<ProcessRow, 'lowerLimit' | 'upperLimit'>>(row: T) => ({
  ...row,
  lowerLimit: orNull(row.lowerLimit),
  upperLimit: orNull(row.upperLimit),
});
const orNull = (value: number) => (Number.isNaN(value) ? null : value);

const stationLines = ({ log, name, entries }: StationOfRecords): readonly unknown[] => [
  { log, name },
  ...entries.map((entry) => ({
    seq: entry.seq,
    body: fromUtf8(signedBytes(entry)),
    disclosures: disclosuresOf(entry),
  })),
];

const text = z.string();
const result = z.enum(['OK', 'NotOK', 'NotDecidable']).nullable();
const process = {
  stream: text,
  day: z.iso.date(),
  quantity: z.enum(['torque', 'length']),
  cylinder: z.int(),
  tool: text,
  serial: text.nullable(),
  technician: text,
  result,
  valueSi: z.number().nullable(),
  expanded: z.number().nullable(),
  stage: z.enum(['first', 'final']),
  censored: z.enum(['cut', 'saturated', 'undecided', 'bounded']).nullable(),
  first: z.boolean(),
  last: z.boolean(),
  lowerLimit: limit,
  upperLimit: limit,
  specificationKey: text,
  engine: text.nullable(),
  source: figureSourceSchema,
  voided: z.boolean(),
  open: z.boolean(),
};
export const processRowSchema: z.ZodType<ProcessRow, unknown> = z.strictObject(process);

const vehicle = { vin: text.nullable(), plate: text.nullable(), fleet: text.nullable() };
export const attemptRowSchema: z.ZodType<AttemptRow, unknown> = z.strictObject({
  ...process,
  ...vehicle,
  seq: z.int(),
  at: z.iso.datetime(),
  number: z.int(),
  kind: z.enum([
    'tightening',
    'continuation',
    'run-down',
    'rehit',
    'check',
    'loosening',
    'handling',
    'unsure',
    'gap',
  ]),
  side: z.enum(['inside', 'low', 'high']).nullable(),
  readingSi: z.number().nullable(),
  peakStandardSi: z.number().nullable(),
  early: z.boolean(),
  held: z.boolean(),
  part: text,
  lot: text.nullable(),
  job: text,
  on: z.iso.date(),
  certificate: text.nullable(),
  setupKey: text,
  station: text,
});

export const askedJobSchema: z.ZodType<AskedJob, unknown> = z.strictObject({
  ...vehicle,
  stream: text,
  job: text,
  state: z.enum(['open', 'complete', 'incomplete', 'void']),
  openedAt: z.iso.datetime(),
  lastAt: z.iso.datetime(),
  sources: z.array(figureSourceSchema),
  outOfOrder: z.array(outOfOrderSchema),
  station: text,
});

export const keyedSetupSchema = z.strictObject({ key: text, setup: setupSchema });
export const specificationUseSchema: z.ZodType<SpecificationUse, unknown> = z.strictObject({
  specificationKey: text,
  setup: setupSchema,
  jobs: z.int(),
});
export const toolUseSchema: z.ZodType<UseOfTool, unknown> = z.strictObject({
  count: z.int(),
  lastAt: z.iso.datetime().nullable(),
});

const stationLineSchema = z.union([
  z.strictObject({ log: text.nullable(), name: text }),
  z.strictObject({ seq: z.int().min(1), body: text, disclosures: z.array(text) }),
]);

/** The stations in the lines of an answer; null where they are none. */
export function stationsIn(lines: readonly unknown[]): readonly StationOfRecords[] | null {
  const stations: (Omit<StationOfRecords, 'entries'> & { readonly entries: StationEntry[] })[] = [];
  for (const line of lines) {
    const read = stationLineSchema.safeParse(line);
    if (!read.success) return null;
    if ('name' in read.data) stations.push({ ...read.data, entries: [] });
    else {
      const entry = entryFrom(read.data);
      const station = stations.at(-1);
      if (entry === null || !isStationEntry(entry) || station === undefined) return null;
      station.entries.push(entry);
    }
  }
  return stations;
}
