/** One thing that verification looked at, and how it came out. */
export interface Check {
  readonly name: string;
  /** `doubtful`: no fault that can be proven, and a reader should know of it before anything else. */
  readonly outcome: 'passed' | 'doubtful' | 'failed' | 'not-applicable';
  /** One sentence for people. */
  readonly detail: string;
}

export const passed = (name: string, detail: string): Check => ({ name, outcome: 'passed', detail });
export const doubtful = (name: string, detail: string): Check => ({ name, outcome: 'doubtful', detail });
export const failed = (name: string, detail: string): Check => ({ name, outcome: 'failed', detail });
