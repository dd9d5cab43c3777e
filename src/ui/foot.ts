/** The two lowest lines: how the tools are, how much is on disk, which keys count now. */

import { dueDate } from '../instrument/fitness.ts';
import type { JobState, Question, ToolState } from '../job/state.ts';
import { hasSeveral } from '../job/tool-in-use.ts';
import { linkEndText } from '../report/words/index.ts';
import { phrases, w } from '../words/catalogue.ts';
import { canStay, exceptionsNow } from './exceptions.ts';
import type { Glyphs } from './glyphs.ts';
import type { InputState } from './input-state.ts';
import { KEY, letterOf } from './key-table.ts';
import { apart, columnsOfLine, type Line, type Span } from './line.ts';
import { allProven } from './next-step.ts';
import { panelKeys } from './panels/index.ts';
import { columnsOf, printable } from './printable.ts';
import { asTaken } from './typed-figure.ts';
import type { BenchView } from './view.ts';
import { answerKeys, anyArrow, LOW_BATTERY_PERCENT, upDown } from './words.ts';

const LINK: Readonly<Record<ToolState['link'], string>> = phrases({
  seeking: 'seeking',
  linked: 'linked',
  lost: 'lost',
});

const ORDER: readonly ToolState['link'][] = ['lost', 'seeking', 'linked'];

function charge({ description, link }: ToolState, always: boolean): string {
  const percent = description?.batteryPercent;
  if (link !== 'linked' || percent === undefined) return '';
  if (percent <= LOW_BATTERY_PERCENT) return w`, battery low ${percent} %`;
  return always ? w`, battery ${percent} %` : '';
}

/** What is known of calibrations, and the day on which it is asked for. */
export interface Calibrations {
  readonly instruments: JobState['instruments'];
  readonly basis: Pick<JobState['basis'], 'on'>;
  /** Null of a study, which has one tool. */
  readonly inUse?: JobState['inUse'];
}

/** Until when the calibration of a tool holds; one that is over is said at any width. */
function calibrated({ tool }: ToolState, { instruments, basis }: Calibrations, always: boolean): string {
  const instrument = instruments.find(({ id }) => id === tool);
  const due = instrument === undefined ? null : dueDate(instrument);
  if (due !== null && due < basis.on) return w`, calibration EXPIRED on ${due}`;
  if (!always || instrument === undefined) return '';
  if (instrument.certificate === undefined) return w`, no certificate`;
  return due === null ? w`, calibrated` : w`, calibrated to ${due}`;
}

/** How much is said of each tool: `all`, or without its calibration, or no more than what wants a look. */
type Detail = 'all' | 'charge' | 'least';

/** Of several of a kind, the one that is in hand, as its readings show. */
function usedText({ tool, link }: ToolState, { instruments, inUse }: Calibrations): string {
  const quantity = instruments.find(({ id }) => id === tool)?.quantity;
  if (link !== 'linked' || quantity === undefined || inUse?.[quantity] !== tool) return '';
  return hasSeveral({ instruments }, quantity) ? w`, IN USE` : '';
}

function toolSpan(tool: ToolState, calibrations: Calibrations, detail: Detail, glyphs: Glyphs): Span {
  const clean = (text: string) => printable(text, 32, glyphs.ascii);
  if (tool.stopped === true && tool.link === 'linked')
    return {
      text: ` ${clean(tool.tool)} ${glyphs.bad} ${w`STOPPED, not as its profile says`} `,
      tone: 'bad',
      bold: true,
    };
  const symbol = { seeking: glyphs.todo, linked: glyphs.done, lost: glyphs.bad }[tool.link];
  const why = tool.link === 'lost' && tool.end !== undefined ? ` (${clean(linkEndText(tool.end))})` : '';
  const state =
    usedText(tool, calibrations) +
    charge(tool, detail !== 'least') +
    calibrated(tool, calibrations, detail === 'all');
  // What is simulated or replayed is in the title for all to see.
  const link = tool.link === 'linked' && tool.source === 'typed' ? w`typed` : LINK[tool.link];
  const text = ` ${clean(tool.tool)} ${symbol} ${link}${why}${state} `;
  return tool.link === 'lost' ? { text, tone: 'bad', bold: true } : { text };
}

/** Tools, lost ones first, and the entries on disk, which are never cut off; more of each tool where there is room. */
export function toolsLine(view: BenchView, quiet: boolean, columns: number, glyphs: Glyphs): Line {
  const { job } = view;
  const onDisk = view.waits === true ? w`WAITING FOR THE LOG` : w`${view.logEntries} entries on disk`;
  const kept = `${quiet ? w`no bell, ` : ''}${onDisk} `;
  return toolsAnd(kept, Object.values(job.tools), job, columns, glyphs);
}

/** The tools, and at the right what is always said whole. */
export function toolsAnd(
  kept: string,
  those: readonly ToolState[],
  calibrations: Calibrations,
  columns: number,
  glyphs: Glyphs,
): Line {
  const tools = [...those].sort((a, b) => ORDER.indexOf(a.link) - ORDER.indexOf(b.link));
  const right: Line = [{ text: kept }];
  const spans = (detail: Detail) => tools.map((tool) => toolSpan(tool, calibrations, detail, glyphs));
  const fits = (detail: Detail) => columnsOfLine([...spans(detail), ...right]) + 2 <= columns;
  const detail = (['all', 'charge'] as const).find(fits) ?? 'least';
  return apart(spans(detail), right, columns, glyphs.cutMark);
}

/** As many of the keys as fit, the most needed first; help and the way out always. */
export function fitting(keys: readonly string[], columns: number): string {
  const always = [w`[?] help`, w`[q] leave`];
  const text = (some: readonly string[], between: string) => ` ${[...some, ...always].join(between)}`;
  // Closer together sooner than one key less.
  const lines = keys
    .map((_, i) => keys.slice(0, keys.length - i))
    .flatMap((some) => [text(some, '  '), text(some, ' ')]);
  return lines.find((line) => columnsOf(line) <= columns) ?? text([], '  ');
}

/** The answers in as many words as fit, and where something else is to be said. */
function questionKeys(job: JobState, question: Question, columns: number): string {
  const over = canStay(question) ? [w`[k] keep it, by name`] : [];
  const long = [...over, w`[c] another plug, left out`].join('   ');
  const short = canStay(question) ? w`[k] keep [c] else` : w`[c] else`;
  const help = w`[?] help`;
  const brief = answerKeys(question, 0);
  const lines = [
    `${answerKeys(question)}   ${long}   ${help}`,
    `${answerKeys(question)}   ${long}`,
    `${brief}  ${long}   ${help}`,
    `${brief} ${short} ${help}`,
    `${brief} ${short} [${KEY.help}]`,
    `${brief}  ${long}`,
    `${brief} ${short}`,
  ];
  return lines.find((line) => exceptionsNow(job).length > 0 && columnsOf(line) <= columns) ?? brief;
}

/** The keys that mean something now. */
export function keysLine(job: JobState, input: InputState, columns: number): Line {
  const question = job.questions[0];
  if (input.form !== null)
    return [
      {
        text:
          input.form.text === null
            ? input.types
              ? w` [${upDown()}] mark  [Enter] choose  [Esc] back`
              : w` [${upDown()}] or a number  [Enter] choose  [Esc] back`
            : w` [Enter] confirm  [Esc] back`,
        bold: true,
      },
    ];
  if (input.figure !== '')
    return [
      {
        text: w` typed so far: ${asTaken(input.figure, job, input.typedUnits)}  [Enter] confirm  [Esc] drop it`,
        bold: true,
      },
    ];
  if (job.closed !== null) return [{ text: ` ${w`[q] leave`}` }];
  if (question !== undefined)
    return [{ text: ` ${questionKeys(job, question, columns - 1)}`, bold: true, tone: 'attention' }];
  if (input.draft !== null) return [{ text: fitting(panelKeys(input.draft, job, input.types), columns) }];
  return allProven(job)
    ? [
        { text: w` [${letterOf(KEY.sign)}] sign`, bold: true },
        { text: `  ${w`[c] something went wrong`}  ${w`[?] help`}  ${w`[q] leave`}` },
      ]
    : [
        {
          text: fitting(
            [w`[c] else`, w`[u] take back`, w`[d] discard`, w`[${anyArrow()}] cylinder`],
            columns,
          ),
        },
      ];
}
