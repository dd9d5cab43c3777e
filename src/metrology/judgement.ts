import { z } from 'zod';

/** Result of a comparison with a window, in the words of OPC 40001-101 (ResultEvaluationEnum). */
const evaluationSchema = z.enum(['OK', 'NotOK', 'NotDecidable']);
export type Evaluation = z.infer<typeof evaluationSchema>;

/** The four grades of the non-binary statement with guard band (ILAC-G8:09/2019). */
const gradeSchema = z.enum(['pass', 'conditional-pass', 'conditional-fail', 'fail']);
export type Grade = z.infer<typeof gradeSchema>;

/**
 * The limits of a specification and the narrower zone in which a reading proves conformity (JCGM 106, 3.3).
 * Torque in N·m, gap in mm. The guard band is r·U at each limit, U being the expanded uncertainty there (k = 2).
 */
export const windowSchema = z.strictObject({
  unit: z.enum(['N.m', 'mm']).describe('Torque in N·m, gap in mm.'),
  lowerLimit: z.number().describe('Lower limit of the specification.'),
  upperLimit: z.number().describe('Upper limit of the specification.'),
  guardBandFactor: z.number().nonnegative().describe('Width of the guard band as a share of U.'),
  expandedAtLower: z.number().positive().describe('U of a reading at the lower limit.'),
  expandedAtUpper: z.number().positive().describe('U of a reading at the upper limit.'),
  acceptLower: z.number().describe('A reading from here on proves the lower limit.'),
  acceptUpper: z.number().describe('A reading up to here proves the upper limit.'),
  decidable: z
    .boolean()
    .describe('False where the guard bands meet: no reading of this instrument can prove conformity.'),
});
export type Window = z.infer<typeof windowSchema>;

/** The same, in any unit. */
export type Zoned<U extends string> = Omit<Window, 'unit'> & { readonly unit: U };

/** One reading held against a {@link Window}; `value` and `expandedUncertainty` in the window's unit. */
export const judgementSchema = z.strictObject({
  result: evaluationSchema.describe('The verdict, in the words of OPC 40001-101.'),
  side: z.enum(['inside', 'low', 'high']).describe('On which side of the acceptance zone the reading lies.'),
  grade: gradeSchema.describe('The grade of ILAC-G8:09/2019.'),
  value: z.number().describe('The value that was judged, at the plug.'),
  expandedUncertainty: z.number().positive().describe('U of this value.'),
  conformanceProbability: z
    .number()
    .min(0)
    .max(1)
    .describe('The probability that the true value lies within the limits (JCGM 106, 7.2).'),
});
export type Judgement = z.infer<typeof judgementSchema>;

/** The turn of a plug from contact, held against the limits that the specification names for it. Degrees. */
export const turnJudgementSchema = z.strictObject({
  ...judgementSchema.shape,
  value: z.number().describe('How far the plug was turned from contact, all strokes together, in degrees.'),
  expandedUncertainty: z.number().positive().describe('U of that.'),
});
