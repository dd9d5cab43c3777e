/** The part for eyes two metres away: the torque during a pull, a question, the last verdict, or how to begin. */

import { isByAngle } from '../job/click.ts';
import type { JobState } from '../job/state.ts';
import { turnSoFar } from '../job/turn.ts';
import { openItemText, turnVerdictText } from '../report/words/index.ts';
import { folded } from './folded.ts';
import type { Glyphs } from './glyphs.ts';
import { largeLetters } from './letters.ts';
import type { Line } from './line.ts';
import { earlySentence, nextTask } from './next-step.ts';
import { printable } from './printable.ts';
import { completeBrief } from './summary.ts';
import type { BenchView } from './view.ts';
import {
  CAUTIONS,
  figure,
  fixed,
  quantityWord,
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
  pieces.reduce((text, piece) => (text.length + piece.length <= columns ? text + piece : text));

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
    const at = `, torque ${figure(judgement.value, 'N.m')} ${unitWord('N.m', glyphs)}`;
    const text = asManyAsFit([` ${symbol} Cylinder ${cylinder} ${word}, ${turned}`, at], columns);
    const large = turn === null || turn === undefined ? '' : fixed(turn.value, 0);
    return { caption: [{ text, tone, bold: true }], word, figure: large, tone };
  }
  const value = figure(judgement.value, window.unit);
  const pieces = [
    ` ${symbol} Cylinder ${cylinder} ${quantityWord(quantity)} ${word} ${value} ${unitWord(window.unit, glyphs)}`,
    sideWords(judgement),
    `, U ${figure(judgement.expandedUncertainty, window.unit)}`,
    `, window ${windowFigures(window)}`,
  ];
  return { caption: [{ text: asManyAsFit(pieces, columns), tone, bold: true }], word, figure: value, tone };
}

function closedText(job: JobState, glyphs: Glyphs): Large | null {
  if (job.closed === null) return null;
  const open = job.closed.open.map((item) => printable(openItemText(item), 80, glyphs.ascii)).join('; ');
  return job.closed.complete
    ? {
        caption: [{ text: ` ${glyphs.done} ${completeBrief(job)}` }],
        word: 'COMPLETE',
        figure: '',
        tone: 'good',
      }
    : {
        caption: [{ text: ` ${glyphs.bad} Still open: ${open}`, bold: true }],
        word: 'INCOMPLETE',
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
  const text = ` ${glyphs.ask} Cylinder ${task.cylinder}: pull ${task.question.pull} waits for your answer.`;
  return (
    verdict ?? {
      caption: [{ text, bold: true, tone: 'attention' }],
      word: task.question.kind === 'early' ? 'TOO EARLY' : 'ASK',
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
    word: job.tooEarly?.what === 'pull' ? 'OUT OF ORDER' : 'TOO EARLY',
    figure: '',
    tone: 'attention',
  };
}

function pulled(view: BenchView, glyphs: Glyphs): Large | null {
  const { pulling, nowNm } = view.live;
  if (!pulling || nowNm === null) return null;
  const { torqueTarget } = view.job;
  const where = torqueTarget === null ? '' : ` on cylinder ${torqueTarget}`;
  const soFar = isByAngle(view.job.basis) ? turnSoFar(view.job, view.live) : null;
  if (soFar !== null)
    return { caption: [{ text: ` Pull${where}, degrees turned` }], word: fixed(soFar, 0), figure: '' };
  const caption = ` Pull${where}, torque now in ${glyphs.newtonMetre}`;
  return { caption: [{ text: caption }], word: fixed(nowNm, 1), figure: '' };
}

function letterLines({ word, figure, tone }: Large, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const room = columns - 4;
  const plain = largeLetters(word, room, rows, glyphs);
  const both = figure === '' ? null : largeLetters(`${word}  ${figure}`, room, rows, glyphs);
  const drawn = both !== null && both.length === plain?.length ? both : plain;
  return (drawn ?? []).map((text) => [{ text: `  ${text}`, tone, bold: true }]);
}

/** The caption and, in `rows` more rows, the large letters; at the start the cautions instead. */
export function largeLines(view: BenchView, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const { job } = view;
  const large =
    closedText(job, glyphs) ??
    asked(job, columns, glyphs) ??
    pulled(view, glyphs) ??
    early(job, glyphs) ??
    lastVerdict(job, columns, glyphs);
  if (large === null && job.pullCount > 0) return [];
  if (large === null) {
    const cautions = folded(CAUTIONS, columns - 2, rows + 1, glyphs.cutMark);
    return cautions.map((text) => [{ text: ` ${text}`, bold: true }]);
  }
  return [large.caption, ...letterLines(large, columns, rows, glyphs)];
}
