/**
 * How states, verdicts, answers and figures are worded; the screen and the plain lines use the same words.
 *
 * The rules of wording, for every text that people read: screen, plain lines, problems, help, papers.
 *
 * 1. What is, then what to do. Short sentences, active, present tense, understood at first reading. The past tense only for
 *    what happened at a known time. One thought a sentence; a second one gets a full stop and not a semicolon.
 * 2. The reader works at the bench: an instruction is an imperative ("Loosen the plug.") and names the part,
 *    the key or the command. Nobody is scolded, nothing is praised. No "please", no "we", no "I" but in an answer that the
 *    technician gives.
 * 3. Words of the trade or of a standard. Not: told, said to be, made, stands in, whose, goes on with, by whom, of it, holds
 *    against, put right, begun anew. But: reported, stated, the log contains, resume, compare with, correct, started again.
 *    One word a thing: wrench, gauge, plug, gap, torque, pull, click, window, job, record, log, certificate, station.
 * 4. A figure has a unit and a space between them: 27.41 N·m, 0.75 mm, 3 %, 90°, 12 ms. Torque to 0.01 N·m, gap to 0.001 mm,
 *    the point as decimal sign, no separator of thousands, days as 2026-03-02. A range is "25.00 to 30.00 N·m".
 * 5. CAPITALS only for a verdict or a state that stops the work: OK, NOT OK, UNDECIDED, STOP, VOID, DIVERGED, LOST, EXPIRED,
 *    SIMULATED, REPLAYED. Each also has a symbol beside it where there is room; colour never says anything alone.
 * 6. Keys in brackets before what they do: "[s] sign". In a sentence: "Press s to sign."
 * 7. A Problem: `where` is the location as the reader names it (file, field, option). `message` says what is wrong, as a clause
 *    that can follow the location: small first letter, no full stop. `next` says what to do, as whole sentences that begin with
 *    a verb where they can. tests/house/problem-codes.test.ts checks the form.
 * 8. Proven, never "good" or "safe": the program states what a reading proves, and no more. Unknown is written as unknown.
 *
 * Before: "Verdict that weighs more does not hide that the signature is not that of the content."
 * After:  "Not authentic. The signature does not match the content."
 * Before: "this log may only be read where it lies, which takes a copy"      After: "this log is read-only"
 * Before: "Put it there from your copy; a backup does not hold it."           After: "Put it back from your copy; a backup does not contain it."
 * Before: "How far may it be off by what is said of it?"                      After: "Permissible deviation, by its class or data sheet"
 */
import type { Answer } from '../job/event.ts';
import type { JobState, Question, Settlement, StepState } from '../job/state.ts';
import type { Evaluation, Judgement, Window } from '../metrology/judgement.ts';
import { EVALUATION_WORD } from '../metrology/verdict.ts';
import type { ThreadState } from '../plug/condition.ts';
import { shownDecimals, shownFigure, shownLimit, shownUnit, shownValue } from '../quantity/shown.ts';
import type { Quantity } from '../reading.ts';
import { fixed, phrases, w } from '../words/catalogue.ts';
import type { Glyphs } from './glyphs.ts';
import { KEY, letterOf } from './key-table.ts';
import { columnsOf } from './printable.ts';

/** What a colour would say; always beside a word, never instead of one. */
export type Tone = 'good' | 'bad' | 'attention';

export interface Spoken {
  readonly symbol: string;
  readonly word: string;
  readonly tone?: Tone;
}

/** A settled torque never reads like a proven one; the first word is for a cell of five columns. */
const SETTLED: Readonly<Record<Settlement['kind'], readonly [string, string]>> = phrases({
  accepted: ['as is', 'ACCEPTED'],
  'by-angle': ['angle', 'BY ANGLE'],
});

/** A step of a cylinder as symbol and word, at most 1 + 5 columns unless `roomy`. */
export function stepSpoken(step: StepState, glyphs: Glyphs, settlement?: Settlement, roomy = false): Spoken {
  switch (step) {
    case 'todo':
      return { symbol: glyphs.todo, word: w`to do` };
    case 'again':
      return { symbol: glyphs.again, word: w`again`, tone: 'bad' };
    case 'ask':
      return { symbol: glyphs.ask, word: w`ask`, tone: 'attention' };
    case 'done':
      return { symbol: glyphs.done, word: EVALUATION_WORD.OK, tone: 'good' };
    case 'settled': {
      const [brief, long] = SETTLED[settlement?.kind ?? 'accepted'];
      return { symbol: glyphs.settled, word: roomy ? long : brief, tone: 'attention' };
    }
  }
}

/** A verdict as symbol and word. */
export function verdictSpoken(result: Evaluation, glyphs: Glyphs): Spoken & { readonly tone: Tone } {
  const word = EVALUATION_WORD[result];
  switch (result) {
    case 'OK':
      return { symbol: glyphs.done, word, tone: 'good' };
    case 'NotOK':
      return { symbol: glyphs.bad, word, tone: 'bad' };
    case 'NotDecidable':
      return { symbol: glyphs.ask, word, tone: 'attention' };
  }
}

interface AnswerWords {
  readonly key: string;
  /** For a line of keys that is narrow. */
  readonly brief: string;
  /** For a line of keys that has room. */
  readonly short: string;
  /** For the log and the help. */
  readonly long: string;
}

const ANSWER_KEY: Readonly<Record<Answer, string>> = {
  fresh: KEY.tightening,
  rehit: KEY.rehit,
  unfinished: KEY.goOn,
  handling: KEY.handling,
  refit: KEY.backOut,
  replace: KEY.discard,
};

/** The words of every answer to a question; see {@link answerWords}. */
export const ANSWERS: Readonly<Record<Answer, Omit<AnswerWords, 'key'>>> = phrases({
  fresh: {
    brief: 'fresh',
    short: 'it was the tightening',
    long: 'it was the tightening of this cylinder',
  },
  rehit: {
    brief: 're-hit',
    short: 're-hit',
    long: 're-hit: a second pull on a plug already tight',
  },
  unfinished: {
    brief: 'not done',
    short: 'not finished, I go on',
    long: 'a stroke on the way, not finished',
  },
  handling: {
    brief: 'handling',
    short: 'no plug turned',
    long: 'handling: no plug was turned',
  },
  refit: {
    brief: 'refit',
    short: 'backed out, fit again',
    long: 'plug backed out, to be fitted again',
  },
  replace: {
    brief: 'discard',
    short: 'discard, new plug',
    long: 'backed out and discarded; a new plug goes in',
  },
});

/** Where the question is whether it was this cylinder. */
const yes = (): AnswerWords => ({
  key: KEY.yes,
  brief: w`yes`,
  short: w`yes, this cylinder`,
  long: ANSWERS.fresh.long,
});

/** The key and the words of an answer to a question of this kind. */
export const answerWords = (kind: Question['kind'], answer: Answer): AnswerWords =>
  kind === 'by-plan' && answer === 'fresh' ? yes() : { key: ANSWER_KEY[answer], ...ANSWERS[answer] };

/** The keys that answer a question: `[f] it was the tightening   [r] re-hit`, in briefer words where needed. */
export function answerKeys({ kind, answers }: Question, columns = Number.POSITIVE_INFINITY): string {
  const listed = (how: 'short' | 'brief', space: string) =>
    answers
      .map((answer) => answerWords(kind, answer))
      .map((words) => `[${letterOf(words.key)}] ${words[how]}`)
      .join(space);
  const roomy = listed('short', '   ');
  return columnsOf(roomy) <= columns ? roomy : listed('brief', ' ');
}

/** Said before the first reading; the maker of the vehicle has the last word. */
export const cautions = (): string =>
  w`Before you start: engine cold, ignition off, hand tools only. The maker's service information decides, not this program.`;

/** From here down a battery is spoken of. Assumption. */
export const LOW_BATTERY_PERCENT = 20;

/** What the tool of a quantity is called. */
export const toolWord = (quantity: Quantity): string => (quantity === 'torque' ? w`wrench` : w`gauge`);
export const quantityWord = (quantity: Quantity): string => (quantity === 'torque' ? w`torque` : w`gap`);

/** The unit that the shop reads figures of this kind in. */
export const unitWord = (unit: Window['unit'], { ascii }: Pick<Glyphs, 'ascii'>): string =>
  ascii ? shownUnit(unit).replace('·', '.') : shownUnit(unit);

/** Of a thread in the head that is not sound. */
export const threadWords = (thread: ThreadState): string =>
  thread === 'dirty' ? w`thread dirty` : w`thread damaged`;

/** Keys that have a name and no letter, as a line of keys names them. */
export const upDown = (): string => w`up down`;
export const leftRight = (): string => w`left right`;
export const anyArrow = (): string => w`arrows`;
export const spaceBar = (): string => w`space`;

/** The two measured quantities for a cell of six columns. */
export const quantityBrief = (quantity: Quantity): string =>
  (quantity === 'torque' ? w` torque` : w` gap`).trim();

/** The first letter a capital. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A figure in the shop's unit without the unit: torque to 0.01 N·m, gap to 0.001 mm. */
export const figure = (value: number, unit: Window['unit']): string => shownFigure(value, unit);

/** The same with fewer decimals, for a place where a rough figure does: a bar that moves, an old plug. */
export const roughTorque = (nm: number, decimals: 0 | 1): string => fixed(shownValue(nm, 'N.m'), decimals);
export const roughGap = (mm: number): string => fixed(shownValue(mm, 'mm'), shownDecimals('mm') - 1);

/** `25.00 to 30.00`, without the unit. */
export const rangeFigures = (lower: number, upper: number, unit: Window['unit']): string =>
  w`${shownLimit(lower, unit, 'lower')} to ${shownLimit(upper, unit, 'upper')}`;

export const windowFigures = ({ lowerLimit, upperLimit, unit }: Window): string =>
  rangeFigures(lowerLimit, upperLimit, unit);

/** Where a reading that did not prove itself lies: `, over the window`; empty for an OK. */
export function sideWords({ result, side }: Judgement): string {
  if (result === 'OK') return '';
  if (side === 'inside') return w`, the reading itself is too uncertain`;
  if (result === 'NotOK') return side === 'low' ? w`, under the window` : w`, over the window`;
  return side === 'low' ? w`, too near the lower limit` : w`, too near the upper limit`;
}

/** The verdict and the figure it rests on: `OK` and `27.41 N·m (window 25.00 to 30.00, U 0.64)`. */
export function judgementParts(
  judgement: Judgement,
  window: Window,
  glyphs: Glyphs,
  called: 'window' | 'usual' = 'window',
): readonly [string, string] {
  const { unit } = window;
  const value = `${figure(judgement.value, unit)} ${unitWord(unit, glyphs)}`;
  const uncertainty = figure(judgement.expandedUncertainty, unit);
  const { word } = verdictSpoken(judgement.result, glyphs);
  const limits = windowFigures(window);
  return [
    word,
    called === 'usual'
      ? w`${value} (usual ${limits}, U ${uncertainty})`
      : w`${value} (window ${limits}, U ${uncertainty})`,
  ];
}

export const windowOf = (state: JobState, quantity: Quantity): Window | null =>
  quantity === 'torque' ? state.torqueWindow : state.gapWindow;
