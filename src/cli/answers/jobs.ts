/** Answers about jobs: ask, jobs list, jobs show, retention. */

import { z } from 'zod';
import type { JobRow } from '../../../db/jobs.ts';
import type { AttemptRow } from '../../audit/attempt.ts';
import type { ImpactAssessment } from '../../audit/impact-state.ts';
import { againstJob } from '../../audit/impact-vehicle.ts';
import { attemptException, type JobAnswer } from '../../audit/questions.ts';
import { type Kept, type Retention, retentionSchema } from '../../audit/retention.ts';
import type { LogEntry } from '../../evidence/log.ts';
import { byName } from '../../evidence/writers.ts';
import { openItems } from '../../job/closing.ts';
import type { CylinderState, JobState } from '../../job/state.ts';
import { judgementSchema } from '../../metrology/judgement.ts';
import { figureSourceSchema } from '../../reading.ts';
import { noteLines, openItemText } from '../../report/words/index.ts';
import { summaryOf } from '../../rules/summary.ts';
import {
  answer,
  count,
  day,
  decision,
  figures,
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

const impact = z.strictObject({
  impact: z.string().describe('Number of the impact assessment.'),
  worst: z
    .enum(['doubtful', 'out'])
    .describe('The worst of its attempts: too near a limit to tell, or beyond it.'),
  decision: decision.nullable().describe('What was decided last for this job; null while nobody decided.'),
});

const askedJob = z.strictObject({
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

export const jobsListAnswer = answer('jobs-list', {
  jobs: z
    .array(
      z.strictObject({
        job: z.string().describe('Number of the job.'),
        state: jobState,
        openedAt: time.describe('When it was opened.'),
        lastAt: time.describe('When its last entry was written.'),
        ...vehicle,
        sources,
        outOfOrder,
        impacts: z.array(impact).describe('Impact assessments that touch it.'),
      }),
    )
    .describe('The jobs, the latest first.'),
}).describe('What "plugmark jobs --json" prints.');

export const listedJobs = (
  rows: readonly JobRow[],
  impacts: readonly ImpactAssessment[],
): z.infer<typeof jobsListAnswer> => ({
  form: 'plugmark/jobs-list/1',
  jobs: rows.map(({ stream: _stream, ...row }) => ({ ...row, impacts: impactsOn(row.job, impacts) })),
});

const impactsOn = (job: string, impacts: readonly ImpactAssessment[]): z.infer<typeof impact>[] =>
  againstJob(impacts, job).map(({ impact: { assessment }, item }) => ({
    impact: assessment,
    worst: item.sort,
    decision: item.decided.at(-1)?.decision ?? null,
  }));

const step = z
  .enum(['todo', 'again', 'ask', 'done', 'settled'])
  .describe(
    'Nothing yet, not proven and to be done again, waits for an answer, OK, or not proven and left so by somebody who answers for it.',
  );

export const jobsShowAnswer = answer('jobs-show', {
  job: z.string().describe('Number of the job.'),
  state: jobState,
  openedAt: time.describe('When it was opened.'),
  lastAt: time.describe('When its last entry was written.'),
  ...vehicle,
  technician: z.string().describe('Who answers for it now.'),
  sessions: count.describe('How many times work on it was started.'),
  entries: count.describe('How many entries of the log are about it.'),
  sources,
  figures,
  outOfOrder,
  handedOver: z
    .array(
      z.strictObject({
        at: time.describe('When.'),
        from: z.string().describe('Who gave it.'),
        to: z.string().describe('Who took it over.'),
      }),
    )
    .describe('From whom to whom it was handed over, the earliest first.'),
  cylinders: z
    .array(
      z.strictObject({
        cylinder: z.int().min(1).describe('The cylinder.'),
        gap: z
          .strictObject({
            step,
            readings: count.describe('How many gap readings it has.'),
            gapMm: z
              .number()
              .nullable()
              .describe('The last gap that was judged, in mm; null where there is none.'),
            last: judgementSchema.nullable().describe('The verdict on it, in mm; null where there is none.'),
          })
          .describe('Its gap.'),
        torque: z
          .strictObject({
            step,
            pulls: count.describe('How many pulls it has.'),
            peakNm: z
              .number()
              .nullable()
              .describe('The last peak that was judged, in N·m; null where there is none.'),
            last: judgementSchema.nullable().describe('The verdict on it, in N·m; null where there is none.'),
          })
          .describe('Its torque.'),
      }),
    )
    .describe('Each cylinder of the job.'),
  open: z.array(z.string()).describe('What is still to do, each a sentence.'),
  questions: z
    .array(
      z.strictObject({
        pull: count.describe('Number of the pull that is asked about.'),
        cylinder: z.int().min(1).describe('The cylinder.'),
        kind: z.string().describe('What is asked.'),
      }),
    )
    .describe('Questions that nobody has answered yet.'),
  notes: z.array(z.string()).describe('What a reader should know about the figures, each a sentence.'),
  voided: z
    .strictObject({ by: z.string().describe('Who declared it void.'), because: z.string().describe('Why.') })
    .nullable()
    .describe('Who declared it void and why; null where nobody did.'),
  impacts: z.array(impact).describe('Impact assessments that touch it.'),
}).describe('What "plugmark jobs show --json" prints.');

export const shownJob = (
  state: JobState,
  entries: readonly LogEntry[],
  impacts: readonly ImpactAssessment[],
): z.infer<typeof jobsShowAnswer> => {
  const { order, closed, voided } = state;
  const summary = summaryOf(state);
  const { vin = null, plate = null, fleet = null } = order.vehicle;
  return {
    form: 'plugmark/jobs-show/1',
    job: order.job,
    state: voided !== null ? 'void' : closed === null ? 'open' : closed.complete ? 'complete' : 'incomplete',
    openedAt: entries[0]?.at ?? '',
    lastAt: entries.at(-1)?.at ?? '',
    vin,
    plate,
    fleet,
    technician: state.technician,
    sessions: state.session,
    entries: entries.length,
    sources: summary.sources,
    figures: summary.figures,
    outOfOrder: summary.outOfOrder ?? [],
    handedOver: byName(entries).flatMap(({ at, by, event }) =>
      event.type === 'job-handed-over' ? [{ at, from: by, to: event.to }] : [],
    ),
    cylinders: state.cylinders.map(cylinderOf),
    open: (closed?.open ?? openItems(state)).map(openItemText),
    questions: state.questions.map(({ pull, cylinder, kind }) => ({ pull, cylinder, kind })),
    notes: [...noteLines(state.order, state.basis.notes)],
    voided: voided && { by: voided.by, because: voided.reason },
    impacts: impactsOn(order.job, impacts),
  };
};

function cylinderOf({ cylinder, gap, gaps, torque, pulls }: CylinderState) {
  const gapped = gaps.at(-1)?.judgement ?? null;
  const pulled = pulls.findLast(({ judgement }) => judgement !== null)?.judgement ?? null;
  return {
    cylinder,
    gap: { step: gap, readings: gaps.length, gapMm: gapped?.value ?? null, last: gapped },
    torque: { step: torque, pulls: pulls.length, peakNm: pulled?.value ?? null, last: pulled },
  };
}

export const retentionAnswer = answer('retention', {
  today: day.describe('The day that is taken as today.'),
  rule: retentionSchema.describe("The shop's own retention time."),
  jobs: z
    .array(
      z.strictObject({
        job: z.string().describe('Number of the job.'),
        state: jobState,
        lastOn: day.describe('The day of its last entry.'),
        until: day.describe('The last day on which it must be kept.'),
        standing: z
          .enum(['must', 'held', 'may'])
          .describe(
            'It must be kept, its time is over but something still rests on it, or it need not be kept.',
          ),
        because: z.string().nullable().describe('What still rests on it; null where nothing does.'),
      }),
    )
    .describe('What the rule says of each job.'),
}).describe('What "plugmark retention --json" prints.');

export const retained = (
  today: string,
  rule: Retention,
  kept: readonly Kept[],
): z.infer<typeof retentionAnswer> => ({ form: 'plugmark/retention/1', today, rule, jobs: [...kept] });
