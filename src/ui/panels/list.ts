/** A list of the routine: read once, attested as a whole by one key; what has choices is answered first. */
import { itemsOf, type ListPhase, type RoutineItem } from '../../job/routine.ts';
import type { Attested, JobState } from '../../job/state.ts';
import { folded } from '../folded.ts';
import { newForm } from '../form.ts';
import type { Glyphs } from '../glyphs.ts';
import { type KeyPress, printed } from '../key-press.ts';
import type { Line } from '../line.ts';
import { columnsOf, printable } from '../printable.ts';
import { type ListDraft, type Move, moved, type Room, scrolled } from './panel.ts';

const DONE = 'done';
const NOT_DONE = 'not-done';

const itemsFor = ({ routine }: JobState, phase: ListPhase): readonly RoutineItem[] =>
  routine === null ? [] : itemsOf(routine, phase);

/** All that needs no choice stands as done, because the key that attests says so. */
export function beginList(job: JobState, phase: ListPhase): ListDraft {
  const items = itemsFor(job, phase);
  const said: Record<string, Attested> = {};
  for (const { id, choices } of items) {
    const before = job.attested[id];
    if (before !== undefined) said[id] = before;
    else if (choices === undefined) said[id] = { as: DONE };
  }
  return { about: 'list', phase, at: Math.max(0, unsaidAfter(items, said, 0)), said };
}

/** The first item from `from` on, then from the top, of which nothing is said; -1 for none. */
function unsaidAfter(items: readonly RoutineItem[], said: ListDraft['said'], from: number): number {
  const behind = items.findIndex(({ id }, i) => i >= from && said[id] === undefined);
  return behind >= 0 ? behind : items.findIndex(({ id }) => said[id] === undefined);
}

function say(draft: ListDraft, items: readonly RoutineItem[], item: RoutineItem, as: Attested): Move {
  const said = { ...draft.said, [item.id]: as };
  const next = unsaidAfter(items, said, draft.at);
  return { draft: { ...draft, said, at: next < 0 ? draft.at : next } };
}

function unsaid(draft: ListDraft, item: RoutineItem): Move {
  const { [item.id]: _gone, ...said } = draft.said;
  return {
    draft: { ...draft, said: item.choices === undefined ? { ...said, [item.id]: { as: DONE } } : said },
  };
}

/** The choice before or behind the one that is said. */
function cycled(item: RoutineItem, said: Attested | undefined, step: 1 | -1): string | undefined {
  const choices = item.choices ?? [];
  const at = choices.indexOf(said?.as ?? '');
  if (at < 0) return step === 1 ? choices[0] : choices.at(-1);
  return choices[(at + step + choices.length) % choices.length];
}

export function pressedList(draft: ListDraft, press: KeyPress, job: JobState): Move {
  const items = itemsFor(job, draft.phase);
  const item = items[draft.at];
  if (item === undefined) return null;
  const at = moved(draft.at, press.key, items.length);
  if (at !== null) return { draft: { ...draft, at } };
  if (press.key === 'enter') return attest(draft, items);
  const key = printed(press)?.toLowerCase();
  if (key === 'x')
    return draft.said[item.id]?.as === NOT_DONE
      ? unsaid(draft, item)
      : { form: newForm('not-done', item.id) };
  const chosen = key !== undefined && /^[1-6]$/.test(key) ? item.choices?.[Number(key) - 1] : undefined;
  if (chosen !== undefined) return say(draft, items, item, { as: chosen });
  const step = press.key === 'right' ? 1 : press.key === 'left' ? -1 : null;
  const next = step === null ? undefined : cycled(item, draft.said[item.id], step);
  return next === undefined
    ? null
    : { draft: { ...draft, said: { ...draft.said, [item.id]: { as: next } } } };
}

function attest(draft: ListDraft, items: readonly RoutineItem[]): Move {
  const missing = items.findIndex(({ id }) => draft.said[id] === undefined);
  if (missing >= 0) return { draft: { ...draft, at: missing } };
  const said = items.map(({ id }) => ({ item: id, ...(draft.said[id] ?? { as: DONE }) }));
  return { command: { do: 'attest', phase: draft.phase, said } };
}

/** The draft with an item struck as not done, because of what was typed. */
export const struck = (draft: ListDraft, item: string, why: string): ListDraft => ({
  ...draft,
  said: { ...draft.said, [item]: { as: NOT_DONE, why } },
});

const HEADINGS: Readonly<Record<ListPhase, string>> = {
  'before-removal': 'Before the first plug is turned',
  fitting: 'Before the wrench',
  afterwards: 'Afterwards',
};

export function listSentence(draft: ListDraft, job: JobState): string {
  const items = itemsFor(job, draft.phase);
  const item = items.find(({ id }) => draft.said[id] === undefined);
  if (item !== undefined)
    return `${HEADINGS[draft.phase]}: ${item.text}? Choose, then Enter for the whole list.`;
  const struckOut = items.filter(({ id }) => draft.said[id]?.as === NOT_DONE).length;
  const all = struckOut === 0 ? 'all of this is done' : `all of this holds, ${struckOut} not done`;
  return `${HEADINGS[draft.phase]}. Enter: ${all}.`;
}

function itemLines(
  item: RoutineItem,
  draft: ListDraft,
  columns: number,
  pointed: boolean,
  glyphs: Glyphs,
): Line[] {
  const said = draft.said[item.id];
  const not = said?.as === NOT_DONE;
  const mark = said === undefined ? glyphs.ask : not ? glyphs.bad : glyphs.done;
  const tone = said === undefined ? ('attention' as const) : not ? ('bad' as const) : undefined;
  const texts = folded(printable(item.text, 200, glyphs.ascii), columns - 6, 3, glyphs.cutMark);
  const lines: Line[] = texts.map((text, row) => [
    { text: row === 0 ? ` ${pointed ? glyphs.pointer : ' '}${mark} ` : '    ', bold: pointed, tone },
    { text, bold: pointed },
  ]);
  if (not) {
    const why = printable(`not done: ${said?.why ?? ''}`, columns - 8, glyphs.ascii);
    return [...lines, [{ text: `      ${why}`, tone: 'bad' }]];
  }
  return [...lines, ...choiceLines(item, said?.as, columns, glyphs)];
}

function choiceLines(item: RoutineItem, said: string | undefined, columns: number, glyphs: Glyphs): Line[] {
  const spans = (item.choices ?? []).map((choice, i) => ({
    text: `[${i + 1}]${choice === said ? glyphs.done : ' '}${printable(choice, columns - 12, glyphs.ascii)}`,
    inverse: choice === said,
  }));
  const lines: Line[] = [];
  let used = columns;
  for (const span of spans) {
    const width = columnsOf(span.text) + 2;
    if (used + width > columns) {
      lines.push([{ text: '      ' }]);
      used = 6;
    }
    lines[lines.length - 1] = [...(lines.at(-1) ?? []), span, { text: '  ' }];
    used += width;
  }
  return lines;
}

export function listLines(draft: ListDraft, job: JobState, { columns, rows }: Room, glyphs: Glyphs): Line[] {
  const items = itemsFor(job, draft.phase);
  const blocks = items.map((item, i) => itemLines(item, draft, columns, i === draft.at, glyphs));
  const before = blocks.slice(0, draft.at).flat().length;
  const middle = before + Math.floor((blocks[draft.at]?.length ?? 1) / 2);
  return [...scrolled(blocks.flat(), middle, rows)];
}

/** `types`: a gauge of the station types digits, so that arrows are left to choose with. */
export function listKeys(draft: ListDraft, job: JobState, types: boolean): readonly string[] {
  const choices = itemsFor(job, draft.phase)[draft.at]?.choices;
  const choose =
    choices === undefined ? [] : [types ? '[left right] choose' : `[1-${choices.length}] choose`];
  return ['[Enter] attest', ...choose, '[x] not done', '[up down] item'];
}
