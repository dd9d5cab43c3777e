/** What was done with a tool that is out of tolerance, in answers. */
import { z } from 'zod';
import type { Since } from '../../audit/impact-held.ts';

export const since = z.strictObject({
  impact: z.string().describe('The newest impact assessment on the finding.'),
  jobs: z.array(z.string()).describe('The jobs.'),
});
export const sinceOf = (all: readonly Since[]) =>
  all.map(({ newest, jobs }) => ({ impact: newest.assessment, jobs: [...jobs] }));
