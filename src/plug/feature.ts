import { z } from 'zod';

/** What of a new plug is held against the old one and the specification. */
export const plugFeatureSchema = z.enum([
  'thread',
  'pitch',
  'reach',
  'seat',
  'hex',
  'heat-range',
  'resistor',
]);
export type PlugFeature = z.infer<typeof plugFeatureSchema>;
