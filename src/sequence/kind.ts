import { z } from 'zod';

/**
 * What a pull was. `run-down`: a stroke on the way that ended low without a click. `continuation`: going on after
 * stopping short. `rehit`: on a plug already tight. `unsure` always leads to a question and never to an OK.
 */
export const pullKindSchema = z.enum([
  'tightening',
  'continuation',
  'run-down',
  'rehit',
  'loosening',
  'handling',
  'unsure',
]);
export type PullKind = z.infer<typeof pullKindSchema>;
