import { z } from 'zod';
import { permissibleDeviationSchema } from './permissible.ts';

/**
 * What else a shop knows of its readings, beyond certificate and class: what ISO 6789-2 names and a certificate was made
 * without, or anything with a basis.
 */
export const furtherTermSchema = z.strictObject({
  cause: z
    .enum(['temperature', 'drive', 'hand-position', 'joint', 'other'])
    .describe(
      'Work outside 18 to 28 °C, the position of the square drive, where the hand holds, the hardness of the joint, or something else.',
    ),
  within: permissibleDeviationSchema.describe('How far a reading may be off by it.'),
  spread: z
    .enum(['rectangular', 'triangular', 'arcsine', 'normal'])
    .exactOptional()
    .describe(
      'Anywhere within (`rectangular`, unless given), nearer the middle (`triangular`), nearer the ends (`arcsine`), or `normal`: `within` is U with k = 2.',
    ),
  basis: z.string().min(1).max(160).describe('Where the figure comes from.'),
});
export type FurtherTerm = z.infer<typeof furtherTermSchema>;
