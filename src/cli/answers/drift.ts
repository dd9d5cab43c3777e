/** Answers about drift: drift, certificates check. */
import { z } from 'zod';
import type { CertificateLines } from '../../audit/certificate-line.ts';
import type { WrenchDrift } from '../../audit/drift.ts';
import type { DriftFinding } from '../../audit/drift-finding.ts';
import { marksOf } from '../../job/proof.ts';
import { answer, count, day, markSchema, quantity, reason, reasonOf, unit, unitOf } from './answer.ts';

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
