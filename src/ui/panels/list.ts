/**
 * A list of the routine: each item is ticked by a key, or all that need no choice by one key, once they were there to be
 * read for a moment. Nothing is ticked beforehand.
 */
import { DONE, itemsOf, type ListPhase, NOT_DONE, type RoutineItem } from '../../job/routine.ts';
import type { Attested, JobState } from '../../job/state.ts';
import { choiceText, itemText, reasonText, reasonWords } from '../../report/words/index.ts';
import { phrases, w } from '../../words/catalogue.ts';
import { folded } from '../folded.ts';
import { newForm } from '../form.ts';
import type { Glyphs } from '../glyphs.ts';
import { type KeyPress, printed } from '../key-press.ts';
import { KEY } from '../key-table.ts';
import type { Line } from '../line.ts';
import { columnsOf, printable } from '../printable.ts';
import { leftRight, spaceBar, upDown } from '../words.ts';
import { type ListDraft, type Move, moved, type Room, scrolled } from './panel.ts';

const itemsFor = ({ routine }: JobState, phase: ListPhase): readonly RoutineItem[] =>
  routine === null ? [] : itemsOf(routine, phase);

/** What was attested before is where it begins. */
export function beginList(job: JobState, phase: ListPhase): ListDraft {
  const items = itemsFor(job, phase);
  const before = items.flatMap(({ id }) => {
    const attested = job.attested[id];
    return attested === undefined ? [] : [[id, attested] as const];
  });
  const answers = Object.fromEntries(before);
  const at = Math.max(0, unsaidAfter(items, answers, 0));
  return { about: 'list', phase, at, answers, answeredMs: [], atOnce: false };
}

/** Nobody reads a list in less. Assumption. */
const READ_MS = 1500;
/** Answers so close together are told as given at once. */
const AT_ONCE_MS = 1000;

/** The first item from `from` on, then from the top, of which nothing is said; -1 for none. */
function unsaidAfter(items: readonly RoutineItem[], answers: ListDraft['answers'], from: number): number {
  const behind = items.findIndex(({ id }, i) => i >= from && answers[id] === undefined);
  return behind >= 0 ? behind : items.findIndex(({ id }) => answers[id] === undefined);
}

function answerItem(
  draft: ListDraft,
  items: readonly RoutineItem[],
  item: RoutineItem,
  as: Attested,
  shownMs: number | undefined,
): Move {
  const answers = { ...draft.answers, [item.id]: as };
  const next = unsaidAfter(items, answers, draft.at);
  const answeredMs = shownMs === undefined ? draft.answeredMs : [...draft.answeredMs, shownMs];
  return { draft: { ...draft, answers, answeredMs, at: next < 0 ? draft.at : next } };
}

function unsaid(draft: ListDraft, item: RoutineItem): Move {
  const { [item.id]: _gone, ...answers } = draft.answers;
  return { draft: { ...draft, answers } };
}

/** All that need no choice and are not answered yet; where nothing is left to choose, the list is attested by this. */
function tickedAll(draft: ListDraft, items: readonly RoutineItem[], shownMs: number | undefined): Move {
  if (shownMs !== undefined && shownMs < READ_MS)
    return { notice: w`Read the list first, then press a again.` };
  const open = items.filter(({ id, choices }) => choices === undefined && draft.answers[id] === undefined);
  const answers = { ...draft.answers, ...Object.fromEntries(open.map(({ id }) => [id, { as: DONE }])) };
  const next = unsaidAfter(items, answers, 0);
  const after = {
    ...draft,
    answers,
    atOnce: draft.atOnce || open.length > 1,
    at: next < 0 ? draft.at : next,
  };
  return next < 0 ? attest(after, items) : { draft: after };
}

/** The items were answered by one key, or so fast that it comes to the same. */
const isTogether = ({ atOnce, answeredMs }: ListDraft): boolean =>
  atOnce || (answeredMs.length > 1 && Math.max(...answeredMs) - Math.min(...answeredMs) < AT_ONCE_MS);

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
  // With Enter alone a list can be gone through, for a pedal or a presenter.
  if (press.key === 'enter' && item.choices === undefined && draft.answers[item.id] === undefined)
    return answerItem(draft, items, item, { as: DONE }, press.shownMs);
  if (press.key === 'enter') return attest(draft, items);
  const key = printed(press)?.toLowerCase();
  if (key === KEY.all) return tickedAll(draft, items, press.shownMs);
  if (key === KEY.tick && item.choices === undefined)
    return draft.answers[item.id]?.as === DONE
      ? unsaid(draft, item)
      : answerItem(draft, items, item, { as: DONE }, press.shownMs);
  if (key === KEY.not)
    return draft.answers[item.id]?.as === NOT_DONE
      ? unsaid(draft, item)
      : { form: newForm('not-done', item.id) };
  const chosen = key !== undefined && /^[1-6]$/.test(key) ? item.choices?.[Number(key) - 1] : undefined;
  if (chosen !== undefined) return answerItem(draft, items, item, { as: chosen.id }, press.shownMs);
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
  const together = isTogether(draft) ? ({ together: true } as const) : {};
  return { command: { do: 'attest', phase: draft.phase, steps, ...together } };
}

/** The draft with an item struck as not done, because of what was typed. */
export const struck = (draft: ListDraft, item: string, why: string): ListDraft => ({
  ...draft,
  answers: { ...draft.answers, [item]: { as: NOT_DONE, why } },
});

const HEADINGS: Readonly<Record<ListPhase, string>> = phrases({
  'before-removal': 'Before the first plug is turned',
  fitting: 'Before the wrench',
  afterwards: 'Afterwards',
});

export function listSentence(draft: ListDraft, job: JobState): string {
  const items = itemsFor(job, draft.phase);
  const item = items.find(({ id }) => draft.answers[id] === undefined);
  if (item !== undefined) {
    const how = item.choices === undefined ? w`Space ticks it; a ticks all.` : w`Choose one.`;
    return w`${HEADINGS[draft.phase]}: ${itemText(item)}? ${how}`;
  }
  const struckOut = items.filter(({ id }) => draft.answers[id]?.as === NOT_DONE).length;
  return struckOut === 0
    ? w`${HEADINGS[draft.phase]}. Enter: everything is done.`
    : w`${HEADINGS[draft.phase]}. Enter: everything else is done, ${struckOut} not done.`;
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
  const texts = folded(printable(itemText(item), 200, glyphs.ascii), columns - 6, 3, glyphs.cutMark);
  const reason = pointed ? reasonText(item) : null;
  const lines: Line[] = texts.map((text, row) => [
    { text: row === 0 ? ` ${pointed ? glyphs.pointer : ' '}${mark} ` : '    ', bold: pointed, tone },
    { text, bold: pointed },
  ]);
  if (not) {
    const why = printable(w`not done: ${reasonWords(answer?.why ?? '')}`, columns - 8, glyphs.ascii);
    return [...lines, [{ text: `      ${why}`, tone: 'bad' }]];
  }
  const why =
    reason === null ? [] : folded(printable(reason, 240, glyphs.ascii), columns - 6, 2, glyphs.cutMark);
  return [
    ...lines,
    ...why.map((text): Line => [{ text: '    ' }, { text, dim: true }]),
    ...choiceLines(item, answer?.as, columns, glyphs),
  ];
}

function choiceLines(item: RoutineItem, answer: string | undefined, columns: number, glyphs: Glyphs): Line[] {
  const spans = (item.choices ?? []).map(({ id }, i) => ({
    text: `[${i + 1}]${id === answer ? glyphs.done : ' '}${printable(choiceText(item, id), columns - 12, glyphs.ascii)}`,
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
  return [...scrolled(blocks.flat(), middle, rows, glyphs)];
}

/** `types`: a gauge of the station types digits, so that arrows are left to choose with. */
export function listKeys(draft: ListDraft, job: JobState, types: boolean): readonly string[] {
  const choices = itemsFor(job, draft.phase)[draft.at]?.choices;
  const choose =
    choices === undefined ? [] : [types ? w`[${leftRight()}] choose` : w`[1-${choices.length}] choose`];
  const all = itemsFor(job, draft.phase).some(
    (item) => item.choices === undefined && draft.answers[item.id] === undefined,
  );
  const tick = choices === undefined ? [w`[${spaceBar()}] tick`] : choose;
  const whole = all ? w`[a] all, read` : w`[Enter] confirm`;
  return [...tick, whole, w`[x] not done`, w`[${upDown()}] item`];
}
