/** The part for eyes two metres away: the torque during a pull, a question, the last verdict, or how to begin. */

import { isByAngle } from '../job/click.ts';
import type { JobState } from '../job/state.ts';
import { turnSoFar } from '../job/turn.ts';
import type { Judgement } from '../metrology/judgement.ts';
import { EVALUATION_WORD } from '../metrology/verdict.ts';
import { openItemText, turnVerdictText } from '../report/words/index.ts';
import { fixed, w } from '../words/catalogue.ts';
import { dueCylinder, dueLine } from './due.ts';
import { folded } from './folded.ts';
import type { Glyphs } from './glyphs.ts';
import { lettersAt, scaleFor } from './letters.ts';
import type { Line } from './line.ts';
import { earlySentence, nextTask } from './next-step.ts';
import { columnsOf, printable } from './printable.ts';
import { completeBrief } from './summary.ts';
import type { BenchView } from './view.ts';
import {
  cautions,
  figure,
  quantityWord,
  roughTorque,
  sideWords,
  type Tone,
  unitWord,
  verdictSpoken,
  windowFigures,
  windowOf,
} from './words.ts';

interface Large {
  readonly caption: Line;
  /** For the large letters: the word, and a figure that may be left out. */
  readonly word: string;
  readonly figure: string;
  readonly tone?: Tone | undefined;
}

/** The first pieces that fit whole, and at least the first. */
const asManyAsFit = (pieces: readonly string[], columns: number): string =>
  pieces.reduce((text, piece) => (columnsOf(text + piece) <= columns ? text + piece : text));

/** For large letters a shorter word may stand than in a line. */
const largeWord = ({ result }: Judgement): string =>
  result === 'NotDecidable' ? w` UNDECIDED`.trim() : EVALUATION_WORD[result];

function lastVerdict(job: JobState, columns: number, glyphs: Glyphs): Large | null {
  const last = job.lastVerdict;
  if (last === null) return null;
  const { judgement, cylinder, quantity, turn } = last;
  const { symbol, word, tone } = verdictSpoken(judgement.result, glyphs);
  const window = windowOf(job, quantity);
  if (window === null) return null;
  if (quantity === 'torque' && isByAngle(job.basis)) {
    const { symbol, word, tone } = verdictSpoken(judgement.result, glyphs);
    const turned = turnVerdictText(turn) ?? '';
    const at = w`, torque ${figure(judgement.value, 'N.m')} ${unitWord('N.m', glyphs)}`;
    const text = asManyAsFit([w` ${symbol} Cylinder ${cylinder} ${word}, ${turned}`, at], columns);
    const large = turn === null || turn === undefined ? '' : fixed(turn.value, 0);
    return { caption: [{ text, tone, bold: true }], word: largeWord(judgement), figure: large, tone };
  }
  const value = figure(judgement.value, window.unit);
  const pieces = [
    w` ${symbol} Cylinder ${cylinder} ${quantityWord(quantity)} ${word} ${value} ${unitWord(window.unit, glyphs)}`,
    sideWords(judgement),
    `, U ${figure(judgement.expandedUncertainty, window.unit)}`,
    w`, window ${windowFigures(window)}`,
  ];
  return {
    caption: [{ text: asManyAsFit(pieces, columns), tone, bold: true }],
    word: largeWord(judgement),
    figure: value,
    tone,
  };
}

function closedText(job: JobState, glyphs: Glyphs): Large | null {
  if (job.closed === null) return null;
  const open = job.closed.open.map((item) => printable(openItemText(item), 80, glyphs.ascii)).join('; ');
  return job.closed.complete
    ? {
        caption: [{ text: ` ${glyphs.done} ${completeBrief(job)}` }],
        word: w`COMPLETE`,
        figure: '',
        tone: 'good',
      }
    : {
        caption: [{ text: w` ${glyphs.bad} Still open: ${open}`, bold: true }],
        word: w`INCOMPLETE`,
        figure: '',
        tone: 'bad',
      };
}

/** A question hides an older verdict, so that nobody takes that for the answer; its own NOT OK stays. */
function asked(job: JobState, columns: number, glyphs: Glyphs): Large | null {
  const task = nextTask(job);
  if (task.kind !== 'answer') return null;
  const own = job.lastVerdict?.quantity === 'torque' && job.lastVerdict.cylinder === task.cylinder;
  const verdict = own && task.question.kind === 'over-window' ? lastVerdict(job, columns, glyphs) : null;
  const text = w` ${glyphs.ask} Cylinder ${task.cylinder}: pull ${task.question.pull} waits for your answer.`;
  return (
    verdict ?? {
      caption: [{ text, bold: true, tone: 'attention' }],
      word: task.question.kind === 'early' ? w`TOO EARLY` : w`ASK`,
      figure: '',
      tone: 'attention',
    }
  );
}

/** Said at once, and larger than anything that was right before. */
function early(job: JobState, glyphs: Glyphs): Large | null {
  const sentence = earlySentence(job);
  if (sentence === null) return null;
  return {
    caption: [{ text: ` ${glyphs.again} ${sentence}`, bold: true, tone: 'attention' }],
    word: job.tooEarly?.what === 'pull' ? w` OUT OF ORDER`.trim() : w`TOO EARLY`,
    figure: '',
    tone: 'attention',
  };
}

function pulled(view: BenchView, glyphs: Glyphs): Large | null {
  const { pulling, nowNm } = view.live;
  if (!pulling || nowNm === null) return null;
  const { torqueTarget } = view.job;
  const soFar = isByAngle(view.job.basis) ? turnSoFar(view.job, view.live) : null;
  if (soFar !== null)
    return {
      caption: [
        {
          text:
            torqueTarget === null
              ? w` Pull, degrees turned`
              : w` Pull on cylinder ${torqueTarget}, degrees turned`,
        },
      ],
      word: fixed(soFar, 0),
      figure: '',
    };
  const unit = unitWord('N.m', glyphs);
  const caption =
    torqueTarget === null
      ? w` Pull, torque now in ${unit}`
      : w` Pull on cylinder ${torqueTarget}, torque now in ${unit}`;
  return { caption: [{ text: caption }], word: roughTorque(nowNm, 1), figure: '' };
}

/** A verdict that is not OK is as large as one that is: both are drawn in the size in which the longer one fits. */
const longestVerdict = (): string => EVALUATION_WORD.NotOK;

function letterLines({ word, figure, tone }: Large, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const isVerdict = word === EVALUATION_WORD.OK || word === longestVerdict();
  const scale = scaleFor(isVerdict ? longestVerdict() : word, columns, rows, glyphs);
  if (scale === null) return [];
  const plain = lettersAt(word, scale, glyphs);
  const both = figure === '' ? plain : lettersAt(`${word}  ${figure}`, scale, glyphs);
  const drawn = (both[0]?.length ?? 0) <= columns ? both : plain;
  const loud = word === longestVerdict();
  return drawn.map((text) => [{ text: loud ? ` ${text} ` : `${text} `, tone, bold: true }]);
}

/** The cylinder that is due, in the largest figures; empty where none is. */
function numberLines(view: BenchView, columns: number, rows: number, glyphs: Glyphs): readonly string[] {
  const due = dueCylinder(view.job);
  if (due === null || rows < 3) return [];
  const text = String(due);
  const scales = rows >= 10 ? [4, 3] : [3, 2];
  const high = rows >= 10 ? 2 : rows >= 5 ? 1 : 0.5;
  if (high < 1 && glyphs.ascii) return [];
  const word = scaleFor(longestVerdict(), columns, rows, glyphs);
  // As large as it can be without making the verdict smaller.
  const drawn = scales.map((wide) => lettersAt(text, { wide, high }, glyphs));
  const rest = (lines: readonly string[]) => columns - (lines[0]?.length ?? 0) - BESIDE;
  const keeps = (lines: readonly string[]) =>
    scaleFor(longestVerdict(), rest(lines), rows, glyphs)?.wide === word?.wide;
  return drawn.find(keeps) ?? drawn.at(-1) ?? [];
}

/** Between the number and what stands beside it. */
const BESIDE = 5;

/**
 * The cylinder that is due and the caption of what is beside it; in `rows` more rows both in large letters. At the start the
 * cautions stand beside the number.
 */
export function largeLines(view: BenchView, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const { job } = view;
  const large =
    closedText(job, glyphs) ??
    asked(job, columns, glyphs) ??
    pulled(view, glyphs) ??
    early(job, glyphs) ??
    lastVerdict(job, columns, glyphs);
  const due = dueLine(job, columns, glyphs);
  const head = due === null ? [] : [due];
  const number = numberLines(view, columns - 4, rows, glyphs);
  const room = number.length === 0 ? columns - 4 : columns - (number[0]?.length ?? 0) - BESIDE - 2;
  const beside = large === null ? [] : letterLines(large, room, rows, glyphs);
  const warned =
    large === null && job.pullCount === 0 ? folded(cautions(), room, rows + 1, glyphs.cutMark) : [];
  const captions: Line[] =
    large !== null
      ? [large.caption]
      : number.length === 0
        ? warned.map((text) => [{ text: ` ${text}`, bold: true }])
        : [[]];
  if (number.length === 0) return [...head, ...captions, ...beside.map((line) => [{ text: '  ' }, ...line])];
  const spoken: readonly Line[] = large === null ? warned.map((text) => [{ text, bold: true }]) : beside;
  const height = Math.max(number.length, spoken.length);
  const body = Array.from(
    { length: height },
    (_, row): Line => [
      { text: `  ${number[row] ?? ' '.repeat(number[0]?.length ?? 0)}  `, bold: true },
      { text: `${glyphs.peak} `, dim: true },
      ...(spoken[row] ?? []),
    ],
  );
  return [...head, ...captions, ...body];
}
