/** One thing that verification looked at, and how it came out. */
export interface Check {
  readonly name: string;
  readonly outcome: 'passed' | 'failed' | 'not-applicable';
  /** One sentence for people. */
  readonly detail: string;
}

export const passed = (name: string, detail: string): Check => ({ name, outcome: 'passed', detail });
export const failed = (name: string, detail: string): Check => ({ name, outcome: 'failed', detail });
