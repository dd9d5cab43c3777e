import { z } from 'zod';

/**
 * What a pull was. `run-down`: a stroke on the way that ended low or without a click. `continuation`: going on after
 * stopping short. `rehit`: once more on the plug just tightened; `check`: the same later, on a plug tight already.
 * `unsure` always leads to a question and never to an OK.
 */
export const pullKindSchema = z.enum([
  'tightening',
  'continuation',
  'run-down',
  'rehit',
  'check',
  'loosening',
  'handling',
  'unsure',
]);
export type PullKind = z.infer<typeof pullKindSchema>;

/**
 * What there is to ask about an `unsure` pull. `held`: it came while another question was open. `cut`: its end is
 * missing. `which`: a tight plug or a turning one. `already-tight`: the plug of the due cylinder did not turn.
 * `other-plug`: not the plug that had stopped short. `no-click`: in the window without a click. `loose`: a plug turned
 * though all are done. `loosened`: a proven plug was loosened. `end-of-scale`: the readings stood at the end of the tool's
 * scale, so that nobody knows what the plug saw. `by-plan`: the tool sends the highest torque alone, and a person confirms the
 * cylinder that the order of work gave it to.
 */
export const askSchema = z.enum([
  'held',
  'cut',
  'which',
  'already-tight',
  'other-plug',
  'no-click',
  'loose',
  'loosened',
  'end-of-scale',
  'by-plan',
]);
export type Ask = z.infer<typeof askSchema>;
