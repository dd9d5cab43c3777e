/** A list of the routine: read once, attested as a whole by one key; what has choices is answered first. */
import { DONE, itemsOf, type ListPhase, NOT_DONE, type RoutineItem } from '../../job/routine.ts';
import type { Attested, JobState } from '../../job/state.ts';
import { folded } from '../folded.ts';
import { newForm } from '../form.ts';
import type { Glyphs } from '../glyphs.ts';
import { type KeyPress, printed } from '../key-press.ts';
import type { Line } from '../line.ts';
import { columnsOf, printable } from '../printable.ts';
import { type ListDraft, type Move, moved, type Room, scrolled } from './panel.ts';

const itemsFor = ({ routine }: JobState, phase: ListPhase): readonly RoutineItem[] =>
  routine === null ? [] : itemsOf(routine, phase);

/** All that needs no choice stands as done, because the key that attests says so. */
export function beginList(job: JobState, phase: ListPhase): ListDraft {
  const items = itemsFor(job, phase);
  const answers: Record<string, Attested> = {};
  for (const { id, choices } of items) {
    const before = job.attested[id];
    if (before !== undefined) answers[id] = before;
    else if (choices === undefined) answers[id] = { as: DONE };
  }
  return { about: 'list', phase, at: Math.max(0, unsaidAfter(items, answers, 0)), answers };
}

/** The first item from `from` on, then from the top, of which nothing is said; -1 for none. */
function unsaidAfter(items: readonly RoutineItem[], answers: ListDraft['answers'], from: number): number {
  const behind = items.findIndex(({ id }, i) => i >= from && answers[id] === undefined);
  return behind >= 0 ? behind : items.findIndex(({ id }) => answers[id] === undefined);
}

function answerItem(draft: ListDraft, items: readonly RoutineItem[], item: RoutineItem, as: Attested): Move {
  const answers = { ...draft.answers, [item.id]: as };
  const next = unsaidAfter(items, answers, draft.at);
  return { draft: { ...draft, answers, at: next < 0 ? draft.at : next } };
}

function unsaid(draft: ListDraft, item: RoutineItem): Move {
  const { [item.id]: _gone, ...answers } = draft.answers;
  return {
    draft: {
      ...draft,
      answers: item.choices === undefined ? { ...answers, [item.id]: { as: DONE } } : answers,
    },
  };
}

/** The choice before or behind the one that is said. */
function cycled(item: RoutineItem, attested: Attested | undefined, step: 1 | -1): string | undefined {
  const choices = (item.choices ?? []).map(({ id }) => id);
  const at = choices.indexOf(attested?.as ?? '');
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
    return draft.answers[item.id]?.as === NOT_DONE
      ? unsaid(draft, item)
      : { form: newForm('not-done', item.id) };
  const chosen = key !== undefined && /^[1-6]$/.test(key) ? item.choices?.[Number(key) - 1] : undefined;
  if (chosen !== undefined) return answerItem(draft, items, item, { as: chosen.id });
  const step = press.key === 'right' ? 1 : press.key === 'left' ? -1 : null;
  const next = step === null ? undefined : cycled(item, draft.answers[item.id], step);
  return next === undefined
    ? null
    : { draft: { ...draft, answers: { ...draft.answers, [item.id]: { as: next } } } };
}

function attest(draft: ListDraft, items: readonly RoutineItem[]): Move {
  const missing = items.findIndex(({ id }) => draft.answers[id] === undefined);
  if (missing >= 0) return { draft: { ...draft, at: missing } };
  const steps = items.map(({ id }) => ({ item: id, ...(draft.answers[id] ?? { as: DONE }) }));
  return { command: { do: 'attest', phase: draft.phase, steps } };
}

/** The draft with an item struck as not done, because of what was typed. */
export const struck = (draft: ListDraft, item: string, why: string): ListDraft => ({
  ...draft,
  answers: { ...draft.answers, [item]: { as: NOT_DONE, why } },
});

const HEADINGS: Readonly<Record<ListPhase, string>> = {
  'before-removal': 'Before the first plug is turned',
  fitting: 'Before the wrench',
  afterwards: 'Afterwards',
};

export function listSentence(draft: ListDraft, job: JobState): string {
  const items = itemsFor(job, draft.phase);
  const item = items.find(({ id }) => draft.answers[id] === undefined);
  if (item !== undefined)
    return `${HEADINGS[draft.phase]}: ${item.text}? Choose, then Enter for the whole list.`;
  const struckOut = items.filter(({ id }) => draft.answers[id]?.as === NOT_DONE).length;
  const all = struckOut === 0 ? 'everything is done' : `everything else is done, ${struckOut} not done`;
  return `${HEADINGS[draft.phase]}. Enter: ${all}.`;
}

function itemLines(
  item: RoutineItem,
  draft: ListDraft,
  columns: number,
  pointed: boolean,
  glyphs: Glyphs,
): Line[] {
  const answer = draft.answers[item.id];
  const not = answer?.as === NOT_DONE;
  const mark = answer === undefined ? glyphs.ask : not ? glyphs.bad : glyphs.done;
  const tone = answer === undefined ? ('attention' as const) : not ? ('bad' as const) : undefined;
  const texts = folded(printable(item.text, 200, glyphs.ascii), columns - 6, 3, glyphs.cutMark);
  const lines: Line[] = texts.map((text, row) => [
    { text: row === 0 ? ` ${pointed ? glyphs.pointer : ' '}${mark} ` : '    ', bold: pointed, tone },
    { text, bold: pointed },
  ]);
  if (not) {
    const why = printable(`not done: ${answer?.why ?? ''}`, columns - 8, glyphs.ascii);
    return [...lines, [{ text: `      ${why}`, tone: 'bad' }]];
  }
  return [...lines, ...choiceLines(item, answer?.as, columns, glyphs)];
}

function choiceLines(item: RoutineItem, answer: string | undefined, columns: number, glyphs: Glyphs): Line[] {
  const spans = (item.choices ?? []).map(({ id, text }, i) => ({
    text: `[${i + 1}]${id === answer ? glyphs.done : ' '}${printable(text, columns - 12, glyphs.ascii)}`,
    inverse: id === answer,
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
  return ['[Enter] confirm', ...choose, '[x] not done', '[up down] item'];
}
