/** Answers about jobs: jobs list, jobs show. */
import { z } from 'zod';
import type { JobRow } from '../../../db/jobs.ts';
import type { ImpactAssessment } from '../../audit/impact-state.ts';
import { againstJob } from '../../audit/impact-vehicle.ts';
import type { LogEntry } from '../../evidence/log.ts';
import { byName } from '../../evidence/writers.ts';
import { openItems } from '../../job/closing.ts';
import type { CylinderState, JobState } from '../../job/state.ts';
import { judgementSchema } from '../../metrology/judgement.ts';
import { noteLines, openItemText } from '../../report/words/index.ts';
import { summaryOf } from '../../rules/summary.ts';
import { answer, count, decision, figures, jobState, outOfOrder, sources, time, vehicle } from './answer.ts';

const impact = z.strictObject({
  impact: z.string().describe('Number of the impact assessment.'),
  worst: z
    .enum(['doubtful', 'out'])
    .describe('The worst of its attempts: too near a limit to tell, or beyond it.'),
  decision: decision.nullable().describe('What was decided last for this job; null while nobody decided.'),
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
