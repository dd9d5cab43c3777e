/** Answer of ask: jobs, or attempts. */
import { z } from 'zod';
import type { AttemptRow } from '../../audit/attempt.ts';
import { attemptException, type JobAnswer } from '../../audit/questions.ts';
import { figureSourceSchema } from '../../reading.ts';
import {
  answer,
  count,
  jobState,
  markSchema,
  outOfOrder,
  quantity,
  sources,
  time,
  unit,
  unitOf,
  vehicle,
} from './answer.ts';

const station = z.string().exactOptional().describe('Name of the station; with `--archive` only.');

const askedJob = z.strictObject({
  station,
  job: z.string().describe('Number of the job.'),
  state: jobState,
  openedAt: time.describe('When it was opened.'),
  lastAt: time.describe('When its last entry was written.'),
  ...vehicle,
  technicians: z.array(z.string()).describe('Who worked on it, by name.'),
  tools: z.array(z.string()).describe('Tools that were used, each by name and serial number.'),
  parts: z.array(z.string()).describe('Plugs that were fitted, each by part number and lot.'),
  attempts: count.describe('How many pulls and gap readings it has.'),
  proofs: count.describe('How many of these prove torque or gap of a plug that is in the engine.'),
  attested: count.describe('How many figures of such plugs were typed, and are attested by a person.'),
  sources,
  outOfOrder,
  marks: z.array(markSchema).describe('Some of its figures were simulated or replayed: it proves nothing.'),
  exceptions: z.array(z.string()).describe('What needs an explanation, each a sentence.'),
});

const askedAttempt = z.strictObject({
  station,
  at: time.describe('When it was made.'),
  job: z.string().describe('Number of the job.'),
  entry: count.describe('Number of the log entry that gave it to its cylinder.'),
  cylinder: z.int().min(1).describe('The cylinder.'),
  quantity,
  unit,
  number: count.describe('Number of the pull within the job, or of the reading.'),
  kind: z.string().describe('What the pull was; `gap` for a gap reading.'),
  reading: z.number().nullable().describe('What the tool read; null for wires.'),
  value: z
    .number()
    .nullable()
    .describe(
      'At the plug, corrected; of a pull that was cut or saturated what it came to at least. Null where there is none.',
    ),
  expandedUncertainty: z.number().nullable().describe('U of the value; null where there is none.'),
  lowerLimit: z.number().describe('Lower limit of the specification.'),
  upperLimit: z.number().describe('Upper limit of the specification.'),
  result: z
    .enum(['OK', 'NotOK', 'NotDecidable'])
    .nullable()
    .describe('The verdict, in the words of OPC 40001-101; null where it was not judged.'),
  side: z
    .enum(['inside', 'low', 'high'])
    .nullable()
    .describe('On which side of the acceptance zone it lies; null where it was not judged.'),
  censored: z
    .enum(['cut', 'saturated', 'undecided', 'bounded'])
    .nullable()
    .describe(
      'Why it has no value of its own: its samples broke off, it was at the end of the scale, nobody said what it was, or wires gave bounds only. Null where it has one.',
    ),
  first: z.boolean().describe('The first attempt on its plug.'),
  last: z.boolean().describe('The attempt that counts for the plug that is in the engine.'),
  tool: z.string().describe('Name of the tool.'),
  serial: z.string().nullable().describe('Serial number of the tool; null where it has none.'),
  certificate: z
    .string()
    .nullable()
    .describe('Number of the certificate in force; null where there was none.'),
  technician: z.string().describe('Who worked on the job then.'),
  part: z.string().describe('Part number of the plug.'),
  lot: z.string().nullable().describe('Lot of the plug; null where none was given.'),
  ...vehicle,
  specificationKey: z.string().describe('The same for the same engine, thread, seat and specification.'),
  source: figureSourceSchema.describe(
    'Where its figure came from. `replayed` and `simulated` ones prove nothing.',
  ),
  voided: z.boolean().describe('The job was declared void and proves nothing.'),
  outOfOrder: z.boolean().describe('It came before a step that comes first.'),
  exceptions: z.array(z.string()).describe('What needs an explanation, each a sentence.'),
});

export const askAnswer = answer('ask', {
  jobs: z.array(askedJob).exactOptional().describe('The jobs; not with `--attempts`.'),
  attempts: z
    .array(askedAttempt)
    .exactOptional()
    .describe('Their pulls and gap readings; with `--attempts` only.'),
}).describe('What "plugmark ask --json" prints.');

export const askedJobs = (jobs: readonly JobAnswer[]): z.infer<typeof askAnswer> => ({
  form: 'plugmark/ask/1',
  jobs: jobs.map(({ stream: _stream, questioned: _questioned, proven, marks, ...job }) => ({
    ...job,
    technicians: [...job.technicians],
    tools: [...job.tools],
    parts: [...job.parts],
    exceptions: [...job.exceptions],
    proofs: proven,
    marks: [...marks],
    sources: [...job.sources],
    outOfOrder: [...job.outOfOrder],
  })),
});

export const askedAttempts = (rows: readonly AttemptRow[]): z.infer<typeof askAnswer> => ({
  form: 'plugmark/ask/1',
  attempts: rows.map((row) => ({
    ...(row.station !== undefined && { station: row.station }),
    at: row.at,
    job: row.job,
    entry: row.seq,
    cylinder: row.cylinder,
    quantity: row.quantity,
    unit: unitOf(row.quantity),
    number: row.number,
    kind: row.kind,
    reading: row.readingSi,
    value: row.valueSi,
    expandedUncertainty: row.expanded,
    lowerLimit: row.lowerLimit,
    upperLimit: row.upperLimit,
    result: row.result,
    side: row.side,
    censored: row.censored,
    first: row.first,
    last: row.last,
    tool: row.tool,
    serial: row.serial,
    certificate: row.certificate,
    technician: row.technician,
    part: row.part,
    lot: row.lot,
    vin: row.vin,
    plate: row.plate,
    fleet: row.fleet,
    specificationKey: row.specificationKey,
    source: row.source,
    voided: row.voided,
    outOfOrder: row.early,
    exceptions: [...attemptException(row)],
  })),
});
