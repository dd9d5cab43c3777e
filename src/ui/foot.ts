/** The two lowest lines: how the tools are, how much is on disk, which keys count now. */

import type { JobState, ToolState } from '../job/state.ts';
import type { Glyphs } from './glyphs.ts';
import { apart, columnsOfLine, type Line, type Span } from './line.ts';
import { allProven } from './next-step.ts';
import { printable } from './printable.ts';
import type { BenchView } from './view.ts';
import { answerKeys } from './words.ts';

const LOW_BATTERY_PERCENT = 20;
const ORDER: readonly ToolState['link'][] = ['lost', 'seeking', 'linked'];

function charge({ description, link }: ToolState, always: boolean): string {
  const percent = description?.batteryPercent;
  if (link !== 'linked' || percent === undefined) return '';
  if (percent <= LOW_BATTERY_PERCENT) return `, battery low ${percent} %`;
  return always ? `, battery ${percent} %` : '';
}

function toolSpan(tool: ToolState, always: boolean, glyphs: Glyphs): Span {
  const clean = (text: string) => printable(text, 32, glyphs.ascii);
  const symbol = { seeking: glyphs.todo, linked: glyphs.done, lost: glyphs.bad }[tool.link];
  const why = tool.link === 'lost' && tool.reason !== undefined ? ` (${clean(tool.reason)})` : '';
  const text = ` ${clean(tool.tool)} ${symbol} ${tool.link}${charge(tool, always)}${why} `;
  return tool.link === 'lost' ? { text, tone: 'bad', bold: true } : { text };
}

/** Tools, lost ones first, and the entries on disk, which are never cut off; charges only where there is room. */
export function toolsLine(view: BenchView, columns: number, glyphs: Glyphs): Line {
  const tools = Object.values(view.job.tools).sort((a, b) => ORDER.indexOf(a.link) - ORDER.indexOf(b.link));
  const right: Line = [{ text: `${view.logEntries} entries on disk ` }];
  const full = tools.map((tool) => toolSpan(tool, true, glyphs));
  const fits = columnsOfLine([...full, ...right]) + 2 <= columns;
  return apart(
    fits ? full : tools.map((tool) => toolSpan(tool, false, glyphs)),
    right,
    columns,
    glyphs.cutMark,
  );
}

/** The keys that mean something now. */
export function keysLine(job: JobState, columns: number): Line {
  const question = job.questions[0];
  if (job.closed !== null) return [{ text: ' [q] leave' }];
  if (question !== undefined)
    return [{ text: ` ${answerKeys(question, columns - 1)}`, bold: true, tone: 'attention' }];
  return allProven(job)
    ? [{ text: ' [s] sign', bold: true }, { text: '  [left right] cylinder  [?] help  [q] leave' }]
    : [{ text: ' [left right] cylinder  [up down] gap  [?] help  [q] leave' }];
}
