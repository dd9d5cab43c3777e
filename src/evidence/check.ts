import type { OpenItem } from '../job/open-item.ts';
import { phrases, type Sentence } from '../words/catalogue.ts';

/** One thing that verification looked at, and how it came out. */
export interface Check {
  readonly name: string;
  /** `doubtful`: no fault that can be proven, and a reader should know of it before anything else. */
  readonly outcome: 'passed' | 'doubtful' | 'failed' | 'not-applicable';
  /** One sentence for people, in the language in which it is read. */
  readonly detail: string;
  /** What is open in the job, where that is the fault. */
  readonly open?: readonly OpenItem[];
}

const check = (
  name: string,
  outcome: Check['outcome'],
  detail: Sentence,
  open?: readonly OpenItem[],
): Check => ({
  name,
  outcome,
  get detail() {
    return detail();
  },
  ...(open === undefined ? {} : { open }),
});

export const passed = (name: string, detail: Sentence): Check => check(name, 'passed', detail);
export const doubtful = (name: string, detail: Sentence): Check => check(name, 'doubtful', detail);
export const notLookedAt = (name: string, detail: Sentence): Check => check(name, 'not-applicable', detail);
export const failed = (name: string, detail: Sentence, open?: readonly OpenItem[]): Check =>
  check(name, 'failed', detail, open);

/** By the name that a check has in code, which is the English one. */
const CHECK_NAMES: Readonly<Record<string, string>> = phrases({
  contents: 'contents',
  'judged again': 'judged again',
  completeness: 'completeness',
  'order of work': 'order of work',
  signatures: 'signatures',
  signer: 'signer',
  log: 'log',
  clock: 'clock',
  witnesses: 'witnesses',
  'trusted time': 'trusted time',
  files: 'files',
  records: 'records',
  'one history': 'one history',
  'same log': 'same log',
  since: 'since',
  impacts: 'impacts',
  times: 'times',
  made: 'made',
  paper: 'paper',
  papers: 'papers',
});

/** As a reader is told of it. */
export const checkName = (name: string): string => CHECK_NAMES[name] ?? name;
