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
import { notesOnJob } from '../../job/open.ts';
import type { CylinderState, JobState } from '../../job/state.ts';
import { judgementSchema } from '../../metrology/judgement.ts';
import { answer, count, day, decision, jobState, quantity, time, unit, unitOf, vehicle } from './answer.ts';

const impact = z.strictObject({
  impact: z.string(),
  worst: z.enum(['doubtful', 'out']),
  /** Null while nobody decided. */
  decision: decision.nullable(),
});

const askedJob = z.strictObject({
  job: z.string(),
  state: jobState,
  openedAt: time,
  lastAt: time,
  ...vehicle,
  technicians: z.array(z.string()),
  tools: z.array(z.string()),
  parts: z.array(z.string()),
  attempts: count,
  proofs: count,
  simulated: z.boolean(),
  /** What needs an explanation, each a sentence. */
  exceptions: z.array(z.string()),
});

const askedAttempt = z.strictObject({
  at: time,
  job: z.string(),
  entry: count,
  cylinder: z.int().min(1),
  quantity,
  unit,
  number: count,
  kind: z.string(),
  reading: z.number().nullable(),
  value: z.number().nullable(),
  expandedUncertainty: z.number().nullable(),
  lowerLimit: z.number(),
  upperLimit: z.number(),
  result: z.enum(['OK', 'NotOK', 'NotDecidable']).nullable(),
  side: z.enum(['inside', 'low', 'high']).nullable(),
  censored: z.enum(['cut', 'saturated', 'undecided', 'bounded']).nullable(),
  first: z.boolean(),
  last: z.boolean(),
  tool: z.string(),
  serial: z.string().nullable(),
  certificate: z.string().nullable(),
  technician: z.string(),
  part: z.string(),
  lot: z.string().nullable(),
  ...vehicle,
  specificationKey: z.string(),
  simulated: z.boolean(),
  voided: z.boolean(),
  exceptions: z.array(z.string()),
});

/** Jobs, or attempts with `--attempts`. */
export const askAnswer = answer('ask', {
  jobs: z.array(askedJob).exactOptional(),
  attempts: z.array(askedAttempt).exactOptional(),
});

export const askedJobs = (jobs: readonly JobAnswer[]): z.infer<typeof askAnswer> => ({
  form: 'plugmark/ask/1',
  jobs: jobs.map(({ stream: _stream, questioned: _questioned, proven, ...job }) => ({
    ...job,
    technicians: [...job.technicians],
    tools: [...job.tools],
    parts: [...job.parts],
    exceptions: [...job.exceptions],
    proofs: proven,
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
    simulated: row.simulated,
    voided: row.voided,
    exceptions: [...attemptException(row)],
  })),
});

export const jobsListAnswer = answer('jobs-list', {
  jobs: z.array(
    z.strictObject({
      job: z.string(),
      state: jobState,
      openedAt: time,
      lastAt: time,
      ...vehicle,
      impacts: z.array(impact),
    }),
  ),
});

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

const step = z.enum(['todo', 'again', 'ask', 'done', 'settled']);

export const jobsShowAnswer = answer('jobs-show', {
  job: z.string(),
  state: jobState,
  openedAt: time,
  lastAt: time,
  ...vehicle,
  technician: z.string(),
  sessions: count,
  entries: count,
  simulated: z.boolean(),
  handedOver: z.array(z.strictObject({ at: time, from: z.string(), to: z.string() })),
  cylinders: z.array(
    z.strictObject({
      cylinder: z.int().min(1),
      gap: z.strictObject({
        step,
        readings: count,
        gapMm: z.number().nullable(),
        last: judgementSchema.nullable(),
      }),
      torque: z.strictObject({
        step,
        pulls: count,
        peakNm: z.number().nullable(),
        last: judgementSchema.nullable(),
      }),
    }),
  ),
  /** What is still to do, each a sentence. */
  open: z.array(z.string()),
  questions: z.array(z.strictObject({ pull: count, cylinder: z.int().min(1), kind: z.string() })),
  notes: z.array(z.string()),
  voided: z.strictObject({ by: z.string(), because: z.string() }).nullable(),
  impacts: z.array(impact),
});

export const shownJob = (
  state: JobState,
  entries: readonly LogEntry[],
  impacts: readonly ImpactAssessment[],
): z.infer<typeof jobsShowAnswer> => {
  const { order, closed, voided } = state;
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
    simulated: state.simulated,
    handedOver: byName(entries).flatMap(({ at, by, event }) =>
      event.type === 'job-handed-over' ? [{ at, from: by, to: event.to }] : [],
    ),
    cylinders: state.cylinders.map(cylinderOf),
    open: [...(closed?.open ?? openItems(state))],
    questions: state.questions.map(({ pull, cylinder, kind }) => ({ pull, cylinder, kind })),
    notes: notesOnJob(state),
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
  today: day,
  rule: retentionSchema,
  jobs: z.array(
    z.strictObject({
      job: z.string(),
      state: jobState,
      lastOn: day,
      until: day,
      standing: z.enum(['must', 'held', 'may']),
      because: z.string().nullable(),
    }),
  ),
});

export const retained = (
  today: string,
  rule: Retention,
  kept: readonly Kept[],
): z.infer<typeof retentionAnswer> => ({ form: 'plugmark/retention/1', today, rule, jobs: [...kept] });
