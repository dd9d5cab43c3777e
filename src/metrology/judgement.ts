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
  unit: z.enum(['N.m', 'mm']),
  lowerLimit: z.number(),
  upperLimit: z.number(),
  guardBandFactor: z.number().nonnegative(),
  expandedAtLower: z.number().positive(),
  expandedAtUpper: z.number().positive(),
  acceptLower: z.number(),
  acceptUpper: z.number(),
  /** False when the guard bands meet: then no reading of this instrument can prove conformity. */
  decidable: z.boolean(),
});
export type Window = z.infer<typeof windowSchema>;

/** One reading held against a {@link Window}; `value` and `expandedUncertainty` in the window's unit. */
export const judgementSchema = z.strictObject({
  result: evaluationSchema,
  /** Which side of the acceptance zone the reading lies on. */
  side: z.enum(['inside', 'low', 'high']),
  grade: gradeSchema,
  value: z.number(),
  expandedUncertainty: z.number().positive(),
  /** Probability that the true value lies within the limits (JCGM 106, 7.2), both tails counted. */
  conformanceProbability: z.number().min(0).max(1),
});
export type Judgement = z.infer<typeof judgementSchema>;
