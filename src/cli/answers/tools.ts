/** Answers about tools: calendar, drift, certificates check, impact list, impact show. */
import { z } from 'zod';
import type { CalendarLine } from '../../audit/calendar.ts';
import type { CertificateLines } from '../../audit/certificate-line.ts';
import type { WrenchDrift } from '../../audit/drift.ts';
import type { DriftFinding } from '../../audit/drift-finding.ts';
import type { Since } from '../../audit/impact-held.ts';
import type { ImpactAssessment } from '../../audit/impact-state.ts';
import { impactItemSchema } from '../../evidence/station-event.ts';
import { instrumentSchema } from '../../instrument/instrument.ts';
import { answer, count, day, decision, quantity, reason, reasonOf, time, unit, unitOf } from './answer.ts';

/** Jobs measured since with a tool as it was found, which no impact assessment holds yet. */
const since = z.strictObject({ impact: z.string(), jobs: z.array(z.string()) });
const sinceOf = (all: readonly Since[]) =>
  all.map(({ newest, jobs }) => ({ impact: newest.assessment, jobs: [...jobs] }));

export const calendarAnswer = answer('calendar', {
  today: day,
  tools: z.array(
    z.strictObject({
      tool: z.string(),
      serial: z.string().nullable(),
      state: z.enum(['out-of-tolerance', 'due', 'soon', 'in-date', 'no-certificate', 'no-date']),
      due: day.nullable(),
      dueByDate: day.nullable(),
      dueByCycles: day.nullable(),
      certificate: z.string().nullable(),
      calibrated: day.nullable(),
      cycles: count,
      cycleLimit: count.nullable(),
      lastUsed: day.nullable(),
      outOfTolerance: instrumentSchema.shape.outOfTolerance.unwrap().nullable(),
      /** By its certificates it may lie beyond what is permitted from this day on. */
      driftsBeyondOn: day.nullable(),
      next: z
        .strictObject({
          intervalDays: z.int().min(1),
          step: z.enum(['longer', 'kept', 'shorter']),
          /** The deviation that was found, as a share of what is permitted. */
          share: z.number(),
        })
        .nullable(),
    }),
  ),
  since: z.array(since),
});

export const toolCalendar = (
  today: string,
  lines: readonly CalendarLine[],
  drifting: ReadonlyMap<string, string>,
  jobs: readonly Since[],
): z.infer<typeof calendarAnswer> => ({
  form: 'plugmark/calendar/1',
  today,
  tools: lines.map(({ next, ...line }) => ({
    ...line,
    driftsBeyondOn: (line.serial === null ? undefined : drifting.get(line.serial)) ?? null,
    next: next && { intervalDays: next.days, step: next.step, share: next.share },
  })),
  since: sinceOf(jobs),
});

export const driftAnswer = answer('drift', {
  tool: z.string(),
  quantity,
  unit,
  simulated: z.boolean(),
  /** Null where nothing speaks against the tool. */
  verdict: z.enum(['WARNING', 'UNDECIDED']).nullable(),
  certificate: z.string().nullable(),
  due: day.nullable(),
  pulls: z
    .strictObject({
      days: z.array(z.strictObject({ day, pulls: count, percent: z.number() })),
      percentPerYear: z.number(),
      percentPerYearStandardUncertainty: z.number(),
      isTrend: z.boolean(),
      permissiblePercent: z.number(),
      errorPercent: z.number(),
      shiftedSince: day.nullable(),
      outsideOn: day.nullable(),
      warning: z.boolean(),
    })
    .nullable(),
  noPulls: reason.nullable(),
  certificates: z
    .strictObject({
      from: day,
      to: day,
      /** At each point of the newest certificate, in the unit above. */
      points: z.array(
        z.strictObject({
          nominal: z.number(),
          permissible: z.number(),
          perYear: z.number(),
          perYearExpandedUncertainty: z.number(),
          atEnd: z.strictObject({ value: z.number(), from: z.number(), to: z.number() }),
          outsideOn: day.nullable(),
          finding: z.enum(['within', 'warning', 'undecided']),
        }),
      ),
    })
    .nullable(),
  noCertificates: reason.nullable(),
  /** Kept certificates that are not there as they were kept. */
  lost: z.array(z.string()),
});

const DAYS_IN_YEAR = 365.25;

export const toolDrift = (one: DriftFinding, lost: readonly string[]): z.infer<typeof driftAnswer> => {
  const { pulls, certificates, instrument, rows } = one;
  return {
    form: 'plugmark/drift/1',
    tool: one.name,
    quantity: instrument.quantity,
    unit: unitOf(instrument.quantity),
    simulated: rows.some((row) => row.simulated),
    verdict: one.verdict,
    certificate: instrument.certificate?.number ?? null,
    due: one.due,
    pulls: pulls.ok ? pullsOf(pulls.value) : null,
    noPulls: pulls.ok ? null : reasonOf(pulls.error),
    certificates: certificates.ok ? linesOf(certificates.value) : null,
    noCertificates: certificates.ok ? null : reasonOf(certificates.error),
    lost: [...lost],
  };
};

const pullsOf = ({ days, drift, warn, chart: _chart, ...rest }: WrenchDrift) => ({
  days: days.map(({ day: on, pulls, percent }) => ({ day: on, pulls, percent })),
  percentPerYear: DAYS_IN_YEAR * drift.perDay,
  percentPerYearStandardUncertainty: DAYS_IN_YEAR * drift.perDayUncertainty,
  ...rest,
  warning: warn,
});

const linesOf = ({ from, to, lines }: CertificateLines) => ({
  from,
  to,
  points: lines.map((line) => ({
    nominal: line.nominal,
    permissible: line.permissible,
    perYear: line.perYear,
    perYearExpandedUncertainty: line.perYearExpanded,
    atEnd: { value: line.atEnd.value, from: line.atEnd.from, to: line.atEnd.to },
    outsideOn: line.outsideOn,
    finding: line.finding,
  })),
});

export const certificatesCheckAnswer = answer('certificates-check', {
  certificates: z.array(
    z.strictObject({
      certificate: z.string(),
      serial: z.string(),
      sha256: z.string(),
      state: z.enum(['as-kept', 'missing', 'changed']),
      file: z.string(),
    }),
  ),
});

export type CertificatesAnswer = z.infer<typeof certificatesCheckAnswer>;

export const impactListAnswer = answer('impact-list', {
  impacts: z.array(
    z.strictObject({
      impact: z.string(),
      state: z.enum(['open', 'closed']),
      at: time,
      tool: z.string(),
      serial: z.string(),
      from: day,
      to: day,
      jobs: count,
      openJobs: count,
    }),
  ),
  since: z.array(since),
});

export const listedImpacts = (
  impacts: readonly ImpactAssessment[],
  jobs: readonly Since[],
): z.infer<typeof impactListAnswer> => ({
  form: 'plugmark/impact-list/1',
  impacts: impacts.map(({ assessment, closed, at, assessed, items }) => ({
    impact: assessment,
    state: closed === null ? 'open' : 'closed',
    at,
    tool: assessed.tool,
    serial: assessed.serial,
    from: assessed.from,
    to: assessed.to,
    jobs: items.length,
    openJobs: items.filter((item) => item.open).length,
  })),
  since: sinceOf(jobs),
});

export const impactShowAnswer = answer('impact-show', {
  impact: z.string(),
  at: time,
  by: z.string(),
  tool: z.string(),
  serial: z.string(),
  asFound: z.string(),
  lastGood: z.strictObject({ number: z.string(), date: day }).nullable(),
  foundOn: day,
  from: day,
  to: day,
  simulated: z.boolean(),
  attempts: count,
  /** Proofs that jobs rest on. */
  proofs: z.strictObject({ stillIn: count, doubtful: count, out: count }),
  jobs: z.array(
    impactItemSchema.extend({
      open: z.boolean(),
      decided: z.array(
        z.strictObject({
          decision,
          redoneIn: z.string().nullable(),
          because: z.string(),
          by: z.string(),
          at: time,
        }),
      ),
    }),
  ),
  closed: z.strictObject({ at: time, by: z.string(), because: z.string() }).nullable(),
  since: z.array(since),
});

export const shownImpact = (
  { assessment, at, by, assessed, items, closed }: ImpactAssessment,
  jobs: readonly Since[],
): z.infer<typeof impactShowAnswer> => ({
  form: 'plugmark/impact-show/1',
  impact: assessment,
  at,
  by,
  tool: assessed.tool,
  serial: assessed.serial,
  asFound: assessed.asFound,
  lastGood: assessed.lastGood,
  foundOn: assessed.foundOn,
  from: assessed.from,
  to: assessed.to,
  simulated: assessed.simulated,
  attempts: assessed.attempts,
  proofs: { stillIn: assessed.stillIn, doubtful: assessed.doubtful, out: assessed.out },
  jobs: items.map((item) => ({ ...item, decided: [...item.decided] })),
  closed,
  since: sinceOf(jobs),
});
