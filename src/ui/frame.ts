/**
 * A frame of the live screen: pure lines from a {@link BenchView} and the size of the terminal.
 * One row fewer than the terminal, no line wider than it, whatever stands in the names.
 */
import { torqueWindowOf } from '../job/stage.ts';
import { w } from '../words/catalogue.ts';
import { adviceOnLast } from './advice-words.ts';
import { engineLines } from './engine.ts';
import { wantedBy } from './exceptions.ts';
import { folded } from './folded.ts';
import { keysLine, toolsLine } from './foot.ts';
import { forecastWarning } from './forecast-words.ts';
import type { Form } from './form.ts';
import { formLines } from './form-lines.ts';
import { type Glyphs, glyphsFor } from './glyphs.ts';
import { helpLines } from './help.ts';
import { type InputState, inputStateFor } from './input-state.ts';
import { largeLines } from './large.ts';
import { engineWithin, isLargeEnough, layoutFor, type Size, tooSmallText } from './layout.ts';
import { cutLine, exactly, type Line } from './line.ts';
import { nextSentence } from './next-step.ts';
import { panelLines } from './panels/index.ts';
import type { Draft } from './panels/panel.ts';
import { columnsOf, printable } from './printable.ts';
import { titleLine } from './title.ts';
import { torqueLines } from './torque-bar.ts';
import { traceRows } from './trace.ts';
import type { BenchView } from './view.ts';
import { scaleFor } from './zones.ts';

export interface FrameWanted {
  readonly view: BenchView;
  readonly size: Size;
  readonly ascii: boolean;
  readonly input: InputState;
}

/** The one sentence that counts now: a form's question, why a key was not taken, or the next step. */
function sentenceOf({ job }: BenchView, { form, notice, draft, pullTimes }: InputState): string {
  const wanted = form === null ? null : wantedBy(form, job, pullTimes);
  if (wanted?.want === 'answer') return wanted.ask;
  return notice ?? nextSentence(job, draft);
}

function nextLines(
  view: BenchView,
  input: InputState,
  columns: number,
  rows: number,
  glyphs: Glyphs,
): Line[] {
  const sentence = printable(sentenceOf(view, input), 400, glyphs.ascii);
  const lines = folded(sentence, columns - 4, rows, glyphs.cutMark);
  const isNotice = input.form === null && input.notice !== null;
  const mark = isNotice ? glyphs.again : glyphs.pointer;
  const tone = isNotice ? ('attention' as const) : undefined;
  return lines.map((text, row) => [
    { text: row === 0 ? ` ${mark} ${text}` : `   ${text}`, bold: true, tone },
  ]);
}

function traceLines(view: BenchView, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const top = scaleFor(torqueWindowOf(view.job, view.job.torqueTarget), columns).top;
  const named = w` trace `;
  const drawn = traceRows(view.live.trace, columns - columnsOf(named) - 1, rows, top, glyphs);
  const label = (row: number) => (row === rows - 1 ? named : ' '.repeat(columnsOf(named)));
  return drawn.map((text, row): Line => [{ text: label(row) + text, dim: true }]);
}

/** No question of the job takes more from sixty columns on. */
const MOST_SENTENCE_ROWS = 4;

function benchLines(view: BenchView, input: InputState, size: Size, glyphs: Glyphs): Line[] {
  const { columns } = size;
  const sentence = nextLines(view, input, columns, MOST_SENTENCE_ROWS, glyphs);
  const layout = layoutFor(size, view.job.order.engine.banks, sentence.length);
  const breath = (nth: number): Line[] => (layout.breaths >= nth ? [[]] : []);
  return [
    ...breath(4),
    ...exactly(nextLines(view, input, columns, layout.next, glyphs), layout.next),
    ...breath(3),
    ...engineLines(view.job, layout.engine, glyphs),
    ...breath(1),
    ...torqueLines(view, columns, layout, glyphs),
    ...breath(2),
    ...exactly(largeLines(view, columns, layout.letters, glyphs), 2 + layout.letters),
    ...exactly(adviceLines(view, columns, glyphs), layout.advice),
    ...traceLines(view, columns, layout.trace, glyphs),
  ];
}

/** One thing at a time: nothing while a pull is under way or another question is open. */
function adviceLines({ job, live, forecast }: BenchView, columns: number, glyphs: Glyphs): Line[] {
  const asked = job.questions[0];
  const quiet = live.pulling || (asked !== undefined && asked.kind !== 'over-window');
  const before = forecast === null ? null : forecastWarning(forecast);
  const advice = quiet ? null : (adviceOnLast(job) ?? before);
  return advice === null ? [] : [[{ text: ` ${printable(advice, columns - 2, glyphs.ascii)}` }]];
}

/** The torque goes on being shown beneath whatever is read, marked or typed. */
function stripLines(view: BenchView, { columns, rows }: Size, glyphs: Glyphs): Line[] {
  const lines = torqueLines(view, columns, { bar: 1, scaleFigures: false }, glyphs);
  return rows >= 24 ? lines : lines.slice(0, 2);
}

/** Rows for the sentence above a panel or a form: it is not cut where there is room for all of it. */
function sentenceRows(view: BenchView, input: InputState, { columns, rows }: Size, glyphs: Glyphs): number {
  const usual = columns < 80 ? 3 : 2;
  if (rows < 24) return usual;
  return Math.max(usual, nextLines(view, input, columns, MOST_SENTENCE_ROWS, glyphs).length);
}

/** The pull under way or the last verdict, as large as `rows` allow; nothing where there is neither. */
function verdictLines(view: BenchView, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const { lastVerdict, tooEarly } = view.job;
  if ((lastVerdict === null && tooEarly === null && !view.live.pulling) || rows < 1) return [];
  return exactly(largeLines(view, columns, Math.min(5, rows - 1), glyphs), Math.min(6, rows));
}

/** While the steps before the wrench are said there is time to fetch another one. */
function forecastLines({ forecast }: BenchView, columns: number, glyphs: Glyphs): Line[] {
  const warning = forecast === null ? null : forecastWarning(forecast);
  if (warning === null) return [];
  const lines = folded(printable(warning, 400, glyphs.ascii), columns - 4, 2, glyphs.cutMark);
  return lines.map((text, row) => [
    { text: row === 0 ? ` ${glyphs.again} ${text}` : `   ${text}`, tone: 'attention' },
  ]);
}

function panelMiddle(view: BenchView, input: InputState, draft: Draft, size: Size, glyphs: Glyphs): Line[] {
  const { columns } = size;
  const next = sentenceRows(view, input, size, glyphs);
  const strip = [...forecastLines(view, columns, glyphs), ...stripLines(view, size, glyphs)];
  const rows = size.rows - 4 - next - strip.length;
  // What came too early is said large; the panel can be scrolled.
  const kept = view.job.tooEarly !== null && rows >= 12 ? 6 : 0;
  const panel = panelLines(draft, view.job, { columns, rows: rows - kept }, glyphs);
  const verdict = verdictLines(view, columns, Math.max(kept, rows - panel.length - 1), glyphs);
  const spare = rows - panel.length - verdict.length;
  const engine = engineWithin(columns, spare - 2, view.job.order.engine.banks);
  const below = [...(engine === null ? [] : [...engineLines(view.job, engine, glyphs), []]), ...verdict];
  return [
    ...exactly(nextLines(view, input, columns, next, glyphs), next),
    ...exactly(panel, rows - below.length),
    ...below,
    ...strip,
  ];
}

/** A form, and under it as much as there is room for of what it is about. */
function formMiddle(view: BenchView, input: InputState, form: Form, size: Size, glyphs: Glyphs): Line[] {
  const { columns } = size;
  const next = sentenceRows(view, input, size, glyphs);
  const strip = stripLines(view, size, glyphs);
  const room = size.rows - 4 - next - strip.length;
  const asked = formLines(form, view.job, { columns, rows: Math.max(4, Math.min(room, 9)) }, glyphs, input);
  const rest = room - asked.length - 1;
  const { draft } = input;
  const engine = engineWithin(columns, rest - 2, view.job.order.engine.banks);
  const below: Line[] =
    draft === null || view.job.questions.length > 0
      ? [
          ...largeLines(view, columns, 0, glyphs),
          [],
          ...(engine === null ? [] : engineLines(view.job, engine, glyphs)),
        ]
      : [...panelLines(draft, view.job, { columns, rows: rest }, glyphs)];
  return [
    ...exactly(nextLines(view, input, columns, next, glyphs), next),
    ...asked,
    [],
    ...exactly(below, Math.max(0, rest)),
    ...strip,
  ];
}

function middleLines(view: BenchView, input: InputState, size: Size, glyphs: Glyphs): Line[] {
  if (input.help) return helpLines(view.job, input);
  if (input.form !== null) return formMiddle(view, input, input.form, size, glyphs);
  return input.draft === null
    ? benchLines(view, input, size, glyphs)
    : panelMiddle(view, input, input.draft, size, glyphs);
}

function tooSmall(view: BenchView, input: InputState, size: Size, glyphs: Glyphs): Line[] {
  return exactly(
    [[{ text: tooSmallText(size) }], ...nextLines(view, input, size.columns, 3, glyphs)],
    size.rows - 2,
  );
}

/** The lines of a frame: `size.rows - 1` of them, each at most `size.columns` wide. */
export function frameLines({ view, size, ascii, input: given }: FrameWanted): Line[] {
  const { columns, rows } = size;
  const glyphs = glyphsFor(ascii);
  const input = inputStateFor(given, view.job);
  const fits = isLargeEnough(size);
  const foot = [toolsLine(view, input.quiet, columns, glyphs), keysLine(view.job, input, columns)];
  const body = fits
    ? [...exactly(middleLines(view, input, size, glyphs), rows - 4), ...foot]
    : tooSmall(view, input, size, glyphs);
  return [titleLine(view, size, glyphs), ...body].map((line) => cutLine(line, columns, glyphs.cutMark));
}
