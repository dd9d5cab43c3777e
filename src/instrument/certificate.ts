import { z } from 'zod';
import { type Problem, problemFromZod } from '../problem.ts';
import type { ProblemCode } from '../problem-code.ts';
import { millimetres } from '../quantity/length.ts';
import { newtonMetres } from '../quantity/torque.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';

const text = z.string().min(1).max(160);
const figure = z.number().min(-1e6).max(1e6);

/** One line of a certificate: `reading` of the instrument, `error` = reading less reference, `expanded` = k·u. */
const pointSchema = z.strictObject({
  reading: figure.nonnegative().describe('What the instrument read.'),
  error: figure.describe('Reading less reference.'),
  expanded: z
    .number({ error: () => w`expected an expanded uncertainty` })
    .positive({ error: () => w`expected an uncertainty above zero` })
    .max(1e6)
    .describe('Expanded uncertainty U, as printed.'),
  k: z
    .number()
    .min(1, { error: () => w`expected a coverage factor of 1 or more` })
    .max(10)
    .describe('Its coverage factor.'),
});

/** A calibration certificate as the job freezes it, whichever form it came in. Points in N·m or mm. */
export const certificateSchema = z.strictObject({
  number: text.describe('As printed.'),
  laboratory: text.describe('As printed.'),
  serial: text.describe('Serial number of the calibrated instrument. The tool must have the same.'),
  date: z.iso.date().describe('The day of the calibration.'),
  due: z.iso
    .date()
    .exactOptional()
    .describe('The last day on which it holds, where the certificate or the shop says so.'),
  unit: z
    .enum(['N.m', 'mm'], {
      error: () => w`expected "N.m" or "mm"; convert other figures first, 1 lbf·ft = 1.355818 N·m`,
    })
    .describe('Unit of the points.'),
  points: z
    .array(pointSchema)
    .min(2, { error: () => w`expected at least two points` })
    .max(200)
    .superRefine((points, ctx) => {
      points.forEach(({ reading }, i) => {
        if (points.findIndex((other) => other.reading === reading) < i)
          ctx.addIssue({
            code: 'custom',
            path: [i, 'reading'],
            message: w`the reading ${reading} appears twice`,
          });
      });
    })
    .describe('The calibrated points; at least two, no reading twice.'),
});
export type Certificate = z.infer<typeof certificateSchema>;

/** Units that a certificate may be printed in, and how many of ours they are. */
const PRINTED = {
  'N.m': ['N.m', 1],
  'lbf.ft': ['N.m', newtonMetres(1, '[ft_i].[lbf_av]')],
  'lbf.in': ['N.m', newtonMetres(1, '[in_i].[lbf_av]')],
  mm: ['mm', 1],
  in: ['mm', millimetres(1, '[in_i]')],
} as const;
const printedUnits = ['N.m', 'lbf.ft', 'lbf.in', 'mm', 'in'] as const;

/** The simple form of a certificate in a file. */
export const certificateFileSchema = z.strictObject({
  form: z.literal('plugmark/certificate/1'),
  ...certificateSchema.shape,
  unit: z
    .enum(printedUnits, { error: () => w`expected one of ${printedUnits.join(', ')}` })
    .describe('Unit of the points, as printed.'),
});

/** A certificate from its JSON form. Problems name the field. */
export function certificateFromJson(value: unknown, file: string): Result<Certificate> {
  const parsed = certificateFileSchema.safeParse(value);
  if (!parsed.success)
    return err(
      problemFromZod(parsed.error, file, 'certificate-not-valid', w`Compare it with the certificate.`),
    );
  const { form: _form, unit: printed, points, ...certificate } = parsed.data;
  const [unit, scale] = PRINTED[printed];
  const inOurs = (figure: number) => Number((figure * scale).toPrecision(12));
  return ok({
    ...certificate,
    unit,
    points: points.map(({ reading, error, expanded, k }) => ({
      reading: inOurs(reading),
      error: inOurs(error),
      expanded: inOurs(expanded),
      k,
    })),
  });
}

/** A certificate put together from another form, held against the same rules. */
export function certificateFrom(value: unknown, file: string): Result<Certificate> {
  const parsed = certificateSchema.safeParse(value);
  return parsed.success
    ? ok(parsed.data)
    : err(
        problemFromZod(
          parsed.error,
          file,
          'certificate-not-valid',
          w`Ask the laboratory about this certificate.`,
        ),
      );
}

/** A problem of a certificate with its field. */
export function certificateProblem(
  code: ProblemCode,
  { number }: Pick<Certificate, 'number'>,
  field: string,
  message: string,
  next: string,
): Problem {
  return { code, where: w`certificate ${number}: ${field}`, message, next };
}
