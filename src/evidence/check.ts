import type { OpenItem } from '../job/open-item.ts';

/** One thing that verification looked at, and how it came out. */
export interface Check {
  readonly name: string;
  readonly outcome: 'passed' | 'failed' | 'not-applicable';
  /** One sentence for people. */
  readonly detail: string;
  /** What is open in the job, where that is the fault. */
  readonly open?: readonly OpenItem[];
}

export const passed = (name: string, detail: string): Check => ({ name, outcome: 'passed', detail });
export const failed = (name: string, detail: string, open?: readonly OpenItem[]): Check => ({
  name,
  outcome: 'failed',
  detail,
  ...(open === undefined ? {} : { open }),
});
