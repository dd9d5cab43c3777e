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
import { marksOf } from '../../job/proof.ts';
import { figureSourceSchema } from '../../reading.ts';
import {
  answer,
  count,
  day,
  decision,
  markSchema,
  quantity,
  reason,
  reasonOf,
  time,
  unit,
  unitOf,
} from './answer.ts';

const since = z.strictObject({
  impact: z.string().describe('The newest impact assessment on the finding.'),
  jobs: z.array(z.string()).describe('The jobs.'),
});
const sinceOf = (all: readonly Since[]) =>
  all.map(({ newest, jobs }) => ({ impact: newest.assessment, jobs: [...jobs] }));

export const calendarAnswer = answer('calendar', {
  today: day.describe('The day that is taken as today.'),
  tools: z
    .array(
      z.strictObject({
        tool: z.string().describe('Name of the tool.'),
        serial: z.string().nullable().describe('Serial number of the tool; null where it has none.'),
        state: z
          .enum(['out-of-tolerance', 'due', 'soon', 'in-date', 'data-sheet', 'no-certificate'])
          .describe(
            'How its calibration is. `data-sheet`: nobody calibrated it, and it is not due yet; `no-certificate`: the same of a tool that was never used.',
          ),
        onDataSheetSince: day
          .nullable()
          .describe('The first use of a tool that nobody calibrated; null of others.'),
        byUsualMonths: z
          .boolean()
          .describe('Nobody named a due day: it is counted in the twelve months that are usual.'),
        due: day
          .nullable()
          .describe(
            'When it is due: by date or by cycles, whichever comes first. Null where nothing says so.',
          ),
        dueByDate: day
          .nullable()
          .describe(
            'The last day on which its certificate, or else its data sheet, is relied on; null where nothing says so.',
          ),
        dueByCycles: day
          .nullable()
          .describe('When its cycles run out at the pace so far; null without a limit or a pace.'),
        certificate: z.string().nullable().describe('Number of its certificate; null where it has none.'),
        calibrated: day.nullable().describe('The day of its calibration; null where it has no certificate.'),
        cycles: count.describe(
          'Gap readings, or pulls on a plug, since that day; its own counter where that is ahead.',
        ),
        cycleLimit: count.nullable().describe('After how many cycles it is due; null without a limit.'),
        lastUsed: day.nullable().describe('When it was used last; null where it never was.'),
        outOfTolerance: instrumentSchema.shape.outOfTolerance
          .unwrap()
          .nullable()
          .describe('A finding that no later certificate has put right; null where there is none.'),
        driftsBeyondOn: day
          .nullable()
          .describe(
            'From when on it may lie beyond what is permitted, by its certificates; null where it stays within.',
          ),
        next: z
          .strictObject({
            intervalDays: z.int().min(1).describe('The interval in days.'),
            step: z.enum(['longer', 'kept', 'shorter']).describe('Against the interval of now.'),
            share: z.number().describe('The deviation that was found, as a share of what is permitted.'),
          })
          .nullable()
          .describe(
            'The next interval by the staircase; null where it was not asked for or cannot be computed.',
          ),
      }),
    )
    .describe('The tools, the one that is due first in front.'),
  since: z
    .array(since)
    .describe('Jobs done since with a tool that is out of tolerance, which no impact assessment holds yet.'),
}).describe('What "plugmark calendar --json" prints.');

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
  tool: z.string().describe('Serial number of the tool, else its name.'),
  quantity,
  unit,
  marks: z.array(markSchema).describe('Some of its figures were simulated or replayed, and prove nothing.'),
  verdict: z
    .enum(['WARNING', 'UNDECIDED'])
    .nullable()
    .describe('What the two sides come to; null where nothing speaks against the tool.'),
  certificate: z.string().nullable().describe('Number of its certificate; null where it has none.'),
  due: day.nullable().describe('When it is due by date; null where nothing says so.'),
  pulls: z
    .strictObject({
      days: z
        .array(
          z.strictObject({
            day: day.describe('The day.'),
            pulls: count.describe('How many first pulls it has.'),
            percent: z
              .number()
              .describe('Their mean distance from the middle of their limits, in per cent of it.'),
          }),
        )
        .describe('The days of use since the calibration.'),
      percentPerYear: z.number().describe('Slope of the straight line through the days, in per cent a year.'),
      percentPerYearStandardUncertainty: z
        .number()
        .describe('Standard uncertainty of the slope, in per cent a year.'),
      isTrend: z.boolean().describe('The slope is more than chance: its 95 % interval does not hold zero.'),
      permissiblePercent: z.number().describe('What is permitted, in per cent of the middle of the limits.'),
      errorPercent: z
        .number()
        .describe('The error on the certificate, in per cent of the middle of the limits.'),
      shiftedSince: day
        .nullable()
        .describe('The first day of a shift that still lasts; null where the mean is within its limits.'),
      outsideOn: day
        .nullable()
        .describe(
          'From when on the 95 % band of the line is beyond what is permitted; null where it is not before the due day.',
        ),
      warning: z.boolean().describe('The mean has shifted, or the line goes beyond what is permitted.'),
    })
    .nullable()
    .describe('By its pulls since the calibration; null where they say nothing.'),
  noPulls: reason.nullable().describe('Why the pulls say nothing; null where they do.'),
  certificates: z
    .strictObject({
      from: day.describe('The day of the newest certificate.'),
      to: day.describe('The due day, or a year later where none is known.'),
      points: z
        .array(
          z.strictObject({
            nominal: z.number().describe('The point.'),
            permissible: z.number().describe('What is permitted there.'),
            perYear: z.number().describe('The drift in a year.'),
            perYearExpandedUncertainty: z.number().describe('U of the drift in a year.'),
            atEnd: z
              .strictObject({
                value: z.number().describe('The error.'),
                from: z.number().describe('Lower end of its 95 % interval.'),
                to: z.number().describe('Upper end of its 95 % interval.'),
              })
              .describe('The error that a laboratory will find on the day `to`.'),
            outsideOn: day
              .nullable()
              .describe('From when on its interval lies beyond what is permitted; null where it does not.'),
            finding: z
              .enum(['within', 'warning', 'undecided'])
              .describe('It will be within what is permitted, it may not be, or too little is known.'),
          }),
        )
        .describe('Each point of the newest certificate.'),
    })
    .nullable()
    .describe('By its certificates, in the unit above; null where they say nothing.'),
  noCertificates: reason.nullable().describe('Why the certificates say nothing; null where they do.'),
  lost: z.array(z.string()).describe('Kept certificates that are missing or changed.'),
}).describe('What "plugmark drift --json" prints.');

const DAYS_IN_YEAR = 365.25;

export const toolDrift = (one: DriftFinding, lost: readonly string[]): z.infer<typeof driftAnswer> => {
  const { pulls, certificates, instrument, rows } = one;
  return {
    form: 'plugmark/drift/1',
    tool: one.name,
    quantity: instrument.quantity,
    unit: unitOf(instrument.quantity),
    marks: [...marksOf(rows.map(({ source }) => source))],
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
  certificates: z
    .array(
      z.strictObject({
        certificate: z.string().describe('Number of the certificate.'),
        serial: z.string().describe('Serial number of the tool.'),
        sha256: z.string().describe('SHA-256 of the certificate, as the log has it.'),
        state: z.enum(['as-kept', 'missing', 'changed']).describe('Whether its file is as it was kept.'),
        file: z.string().describe('Its file.'),
      }),
    )
    .describe('The kept certificates.'),
}).describe('What "plugmark certificates check --json" prints.');

export type CertificatesAnswer = z.infer<typeof certificatesCheckAnswer>;

export const impactListAnswer = answer('impact-list', {
  impacts: z
    .array(
      z.strictObject({
        impact: z.string().describe('Number of the impact assessment.'),
        state: z.enum(['open', 'closed']).describe('Open or closed.'),
        at: time.describe('When it was made.'),
        tool: z.string().describe('Name of the tool.'),
        serial: z.string().describe('Serial number of the tool.'),
        from: day.describe('The first day that was looked at.'),
        to: day.describe('The last day that was looked at.'),
        jobs: count.describe('How many jobs it touches.'),
        openJobs: count.describe('How many of them are not decided, or recalled and not redone yet.'),
      }),
    )
    .describe('The impact assessments.'),
  since: z
    .array(since)
    .describe('Jobs done since with a tool that is out of tolerance, which no impact assessment holds yet.'),
}).describe('What "plugmark impact list --json" prints.');

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
  impact: z.string().describe('Number of the impact assessment.'),
  at: time.describe('When it was made.'),
  by: z.string().describe('Who made it.'),
  tool: z.string().describe('Name of the tool.'),
  serial: z.string().describe('Serial number of the tool.'),
  asFound: z.string().describe('Number of the as-found certificate.'),
  lastGood: z
    .strictObject({
      number: z.string().describe('Number of its certificate.'),
      date: day.describe('Its day.'),
    })
    .nullable()
    .describe('The last good check; null where the log holds none.'),
  foundOn: day.describe('The day of the finding.'),
  from: day.describe('The first day that was looked at.'),
  to: day.describe('The last day that was looked at.'),
  sources: z
    .array(figureSourceSchema)
    .describe('Where the figures that were judged again came from, each source once.'),
  attempts: count.describe('How many attempts were judged again.'),
  proofs: z
    .strictObject({
      stillIn: count.describe('How many still hold.'),
      doubtful: count.describe('How many are too near a limit to tell.'),
      out: count.describe('How many are beyond a limit.'),
    })
    .describe('The proofs that jobs rest on.'),
  jobs: z
    .array(
      impactItemSchema.extend({
        open: z.boolean().describe('Not decided, or recalled and not redone yet.'),
        decided: z
          .array(
            z.strictObject({
              decision,
              redoneIn: z
                .string()
                .nullable()
                .describe('The later job that did it again; null with any other decision.'),
              because: z.string().describe('Why.'),
              by: z.string().describe('Who decided.'),
              at: time.describe('When.'),
            }),
          )
          .describe('All decisions, the earliest first; the last one counts.'),
      }),
    )
    .describe('The jobs that it touches.'),
  closed: z
    .strictObject({
      at: time.describe('When.'),
      by: z.string().describe('Who closed it.'),
      because: z
        .string()
        .nullable()
        .describe(
          'Why it could be closed; null where every proof holds, so that nothing was left to decide.',
        ),
    })
    .nullable()
    .describe('Its closing; null while it is open.'),
  since: z
    .array(since)
    .describe('Jobs done since with a tool that is out of tolerance, which no impact assessment holds yet.'),
}).describe('What "plugmark impact show --json" prints.');

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
  sources: [...assessed.sources],
  attempts: assessed.attempts,
  proofs: { stillIn: assessed.stillIn, doubtful: assessed.doubtful, out: assessed.out },
  jobs: items.map((item) => ({ ...item, decided: [...item.decided] })),
  closed,
  since: sinceOf(jobs),
});
