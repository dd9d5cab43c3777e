/** The shapes of verdicts, those of the papers: each can be told from the others without its colour. */
import type { Check } from '../../evidence/check.ts';
import type { Verdict } from '../../report/verdict.ts';
import { svg } from './dom.ts';
import type { Tone } from './shown.ts';

const CHECK_MARK = 'M2 11 8 17 18 4';
const CROSS = 'M4 4 16 16M16 4 4 16';
const DIAMOND = 'M10 2 18 10 10 18 2 10Z';
const DASH = 'M3 10H17';
const CIRCLE = 'M10 3a7 7 0 1 0 .01 0Z';
const QUESTION = 'M5 6C5-1 16-1 15 6 14 10 10 9 10 13M10 18v.1';
const EXCLAMATION = 'M10 2V12M10 17v.1';

const OF_VERDICT: Readonly<Record<Verdict, string>> = {
  ok: CHECK_MARK,
  'not-ok': CROSS,
  'not-decidable': DIAMOND,
  question: QUESTION,
  'not-judged': DASH,
  'not-done': CIRCLE,
  accepted: 'M4 2 16 13M16 2 4 13M2 18H18',
  'by-angle': 'M17 3 2 17H18',
};

const OF_TONE: Readonly<Record<Tone, string>> = { good: CHECK_MARK, caution: EXCLAMATION, bad: CROSS };

const OF_CHECK: Readonly<Record<Check['outcome'], string>> = {
  passed: CHECK_MARK,
  failed: CROSS,
  doubtful: EXCLAMATION,
  'not-applicable': DASH,
};

const drawn = (path: string) =>
  svg('svg', { class: 'symbol', viewBox: '0 0 20 20', 'aria-hidden': 'true' }, svg('path', { d: path }));

export const verdictSymbol = (verdict: Verdict) => drawn(OF_VERDICT[verdict]);
export const toneSymbol = (tone: Tone) => drawn(OF_TONE[tone]);
export const checkSymbol = (outcome: Check['outcome']) => drawn(OF_CHECK[outcome]);
