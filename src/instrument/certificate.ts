import { z } from 'zod';
import { type Problem, problemFromZod } from '../problem.ts';
import type { ProblemCode } from '../problem-code.ts';
import { err, ok, type Result } from '../result.ts';

const text = z.string().min(1).max(160);
const figure = z.number().min(-1e6).max(1e6);

/** One line of a certificate: `reading` of the instrument, `error` = reading less reference, `expanded` = k·u. */
const pointSchema = z.strictObject({
  reading: figure.nonnegative(),
  error: figure,
  expanded: z
    .number('expected an expanded uncertainty')
    .positive('expected an uncertainty above zero')
    .max(1e6),
  k: z.number().min(1, 'expected a coverage factor of 1 or more').max(10),
});

/** A calibration certificate as the job freezes it, whichever form it came in. Points in N·m or mm. */
export const certificateSchema = z.strictObject({
  number: text,
  laboratory: text,
  /** Serial number of the calibrated instrument. */
  serial: text,
  /** The day of the calibration. */
  date: z.iso.date(),
  /** The last day on which it may be relied on, where the certificate or the shop says so. */
  due: z.iso.date().exactOptional(),
  unit: z.enum(['N.m', 'mm'], 'expected "N.m" or "mm"; convert other figures first, 1 lbf·ft = 1.355818 N·m'),
  points: z
    .array(pointSchema)
    .min(2, 'expected at least two points')
    .max(200)
    .superRefine((points, ctx) => {
      points.forEach(({ reading }, i) => {
        if (points.findIndex((other) => other.reading === reading) < i)
          ctx.addIssue({
            code: 'custom',
            path: [i, 'reading'],
            message: `the reading ${reading} appears twice`,
          });
      });
    }),
});
export type Certificate = z.infer<typeof certificateSchema>;

/** The simple form of a certificate in a file. */
const certificateFileSchema = z.strictObject({
  form: z.literal('plugmark/certificate/1'),
  ...certificateSchema.shape,
});

/** A certificate from its JSON form. Problems name the field. */
export function certificateFromJson(value: unknown, file: string): Result<Certificate> {
  const parsed = certificateFileSchema.safeParse(value);
  if (!parsed.success)
    return err(
      problemFromZod(parsed.error, file, 'certificate-not-valid', 'Compare it with the certificate.'),
    );
  const { form: _form, ...certificate } = parsed.data;
  return ok(certificate);
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
          'Ask the laboratory about this certificate.',
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
  return { code, where: `certificate ${number}: ${field}`, message, next };
}
