/**
 * A frame of the screen of a gauge study: pure lines from a {@link StudyView} and the size of the terminal.
 * One row fewer than the terminal, no line wider than it.
 */

import { phrases, plural, w } from '../words/catalogue.ts';
import { folded } from './folded.ts';
import { fitting, toolsAnd } from './foot.ts';
import { type Glyphs, glyphsFor } from './glyphs.ts';
import { keyLines } from './help.ts';
import { KEY } from './key-table.ts';
import { isLargeEnough, type Size, tooSmallText } from './layout.ts';
import { apart, cutLine, exactly, type Line } from './line.ts';
import { printable } from './printable.ts';
import { gridLines } from './study-grid.ts';
import type { StudyInputState } from './study-input-state.ts';
import { studyLarge } from './study-large.ts';
import { resultLines } from './study-result.ts';
import { type StudyView, takenOf, unitOf } from './study-view.ts';
import { figure, roughTorque, unitWord, upDown } from './words.ts';

export interface StudyFrame {
  readonly view: StudyView;
  readonly size: Size;
  readonly ascii: boolean;
  readonly input: StudyInputState;
}

/** What to do now. */
function nextOf(view: StudyView, glyphs: Glyphs): string {
  const { quantity, due, tool, appraisers, parts, asked } = view;
  const gauge = quantity === 'length';
  if (view.result !== null) return w`${view.study} is recorded. q leaves.`;
  if (view.paused) return w`Paused: nothing is taken. e goes on.`;
  if (due === null)
    return w`All ${view.steps} readings are taken. Enter records them and shows the result; u takes the last one back.`;
  const part = parts[due.part] ?? '';
  if (asked !== null) {
    const [value = '', lower = '', upper = ''] = [asked.value, asked.lower, asked.upper].map((one) =>
      figure(one, unitOf(view)),
    );
    const unit = unitWord(unitOf(view), glyphs);
    return gauge
      ? w`${value} ${unit}, far from what is believed (${lower} to ${upper}), does not count yet. Measure part ${part} once more; Enter takes it as it is.`
      : w`${value} ${unit}, far from what is believed (${lower} to ${upper}), does not count yet. Pull part ${part} once more; Enter takes it as it is.`;
  }
  if (tool.link === 'lost')
    return gauge
      ? w`The gauge is lost: it is listened for. Nothing that was taken is lost; a figure may be typed.`
      : w`The wrench is lost: it is listened for. Nothing that was taken is lost; a figure may be typed.`;
  if (tool.link === 'seeking') return gauge ? w`Switch on the gauge.` : w`Switch on the wrench.`;
  const person = appraisers[due.appraiser] ?? '';
  const who = view.handOver ? w`Now ${person}` : person;
  if (view.types) return w`${who}: measure part ${part}, type the figure, Enter.`;
  return quantity === 'length'
    ? w`${who}: measure part ${part} and press the send key of the gauge.`
    : w`${who}: pull part ${part} once; its peak is taken.`;
}

function sentenceLines(view: StudyView, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const isNotice = view.result === null && view.notice !== null;
  const text = isNotice ? `${view.notice.words} ${nextOf(view, glyphs)}` : nextOf(view, glyphs);
  const mark = isNotice || view.asked !== null ? glyphs.again : glyphs.pointer;
  const wants = isNotice || view.asked !== null || view.handOver || view.paused || view.tool.link === 'lost';
  return folded(printable(text, 400, glyphs.ascii), columns - 4, rows, glyphs.cutMark).map((part, row) => [
    {
      text: row === 0 ? ` ${mark} ${part}` : `   ${part}`,
      bold: true,
      ...(wants && view.result === null ? { tone: 'attention' as const } : {}),
    },
  ]);
}

/** What was done last, and how many readings stand and are left. */
function takenLine(view: StudyView, columns: number, glyphs: Glyphs): Line {
  const { last, steps, appraisers, parts } = view;
  const taken = takenOf(view);
  const right: Line = [{ text: w` ${taken} taken, ${steps - taken} left `, bold: true }];
  if (last === null) return apart([], right, columns, glyphs.cutMark);
  const what = printable(
    w`${appraisers[last.appraiser] ?? ''}, part ${parts[last.part] ?? ''}`,
    columns,
    glyphs.ascii,
  );
  const value =
    last.value === null ? '' : ` ${figure(last.value, unitOf(view))} ${unitWord(unitOf(view), glyphs)}`;
  const left: Line =
    last.done === 'taken'
      ? [{ text: w` ${glyphs.done} taken${value}  ${what}`, tone: 'good' }]
      : [{ text: w` ${glyphs.again} taken back  ${what}`, tone: 'attention' }];
  return apart(left, right, columns, glyphs.cutMark);
}

/** The tool as it is now: a gauge says nothing until it sends. */
function liveLine({ quantity, live, types, tool }: StudyView, glyphs: Glyphs): Line {
  if (quantity === 'length')
    return [{ text: tool.link === 'linked' && !types ? w` Gauge  waits for its send key` : '' }];
  if (live === null) return [{ text: types ? '' : w` Torque  no reading yet` }];
  return [
    { text: w` Torque ${roughTorque(live.nowNm, 1).padStart(5)} ${unitWord('N.m', glyphs)}`, bold: true },
  ];
}

function middleLines(view: StudyView, input: StudyInputState, size: Size, glyphs: Glyphs): readonly Line[] {
  const { columns } = size;
  const next = columns < 80 ? 3 : 2;
  const head = exactly(sentenceLines(view, columns, next, glyphs), next);
  const room = size.rows - 4 - next;
  if (input.help) return [...head, ...keyLines(KEYS)];
  if (view.result !== null)
    return [...head, ...resultLines(view.result, { columns, rows: room }, input.from, glyphs)];
  // First letters that can be read from afar, then the grid, then larger letters, then air.
  const grid = view.appraisers.length + 2;
  const letters = room - 3 - grid >= 10 ? 10 : room - 3 - 5 >= 3 ? 5 : 3;
  const large = studyLarge(view, columns, letters, glyphs);
  const rest = room - large.length - 2;
  const air = Math.min(3, Math.max(0, rest - grid));
  const breath = (nth: number): Line[] => (air >= nth ? [[]] : []);
  return [
    ...head,
    ...breath(3),
    ...large,
    ...breath(1),
    takenLine(view, columns, glyphs),
    liveLine(view, glyphs),
    ...breath(2),
    ...gridLines(view, columns, rest - air, glyphs),
  ];
}

const KEYS = phrases([
  ['0 to 9', 'begins a figure that is typed, Enter ends it, Esc drops it'],
  [KEY.takeBack, 'takes the last reading back, or sets aside the one that is asked about'],
  [KEY.pause, 'pause: nothing is taken until e again'],
  ['Enter', 'records the study, once all is measured; takes what is asked about'],
  [KEY.bell, 'bell on and off'],
  [KEY.help, 'this list on and off'],
  ['q, Ctrl-C', 'leave; all is saved, resume with --resume'],
]);

function keysLine(view: StudyView, { figure: typed }: StudyInputState, columns: number): Line {
  if (typed !== '') return [{ text: w` typed so far: ${typed}  [Enter] confirm  [Esc] drop it`, bold: true }];
  if (view.result !== null) return [{ text: w` [${upDown()}] scroll  [q] leave` }];
  const record = view.due === null ? [w`[Enter] record`] : [];
  const back = takenOf(view) === 0 ? [] : [w`[u] take back`];
  const answers = view.asked === null ? back : [w`[Enter] take it`, w`[u] set aside`];
  const pause = view.paused ? w`[e] go on` : w`[e] pause`;
  return [{ text: fitting([...record, ...answers, pause, w`[0-9] type a figure`], columns) }];
}

function titleLine(view: StudyView, { columns }: Size, glyphs: Glyphs): Line {
  const { study, appraisers, parts, trials, station } = view;
  const sizes = w`${appraisers.length} appraisers, ${parts.length} parts, ${trials} trials`;
  const head = [study, sizes, printable(station, 60, glyphs.ascii)];
  return apart([{ text: ` ${head.join(glyphs.between)}`, inverse: true }], [], columns, glyphs.cutMark);
}

/** The lines of a frame: `size.rows - 1` of them, each at most `size.columns` wide. */
export function studyFrame({ view, size, ascii, input }: StudyFrame): Line[] {
  const { columns, rows } = size;
  const glyphs = glyphsFor(ascii);
  const count = takenOf(view);
  const onDisk = plural(count, { one: '# reading on disk', other: '# readings on disk' });
  const kept = `${input.quiet ? w`no bell, ` : ''}${onDisk} `;
  const body = isLargeEnough(size)
    ? [
        ...exactly(middleLines(view, input, size, glyphs), rows - 4),
        toolsAnd(kept, [view.tool], view.calibrations, columns, glyphs),
        keysLine(view, input, columns),
      ]
    : exactly([[{ text: tooSmallText(size) }], ...sentenceLines(view, columns, 3, glyphs)], rows - 2);
  return [titleLine(view, size, glyphs), ...body].map((line) => cutLine(line, columns, glyphs.cutMark));
}
