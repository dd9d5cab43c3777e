/** The plugs that came out, in the order of the work: how each looks, what is broken, its thread, gap and removal torque. */
import type { Command } from '../../job/command.ts';
import { attemptOf } from '../../job/situation.ts';
import type { JobState, OldPlug } from '../../job/state.ts';
import {
  type Condition,
  conditionSchema,
  type Damage,
  damageSchema,
  threadStateSchema,
} from '../../plug/condition.ts';
import { CONDITIONS, DAMAGE, stainText, THREADS } from '../../report/words/condition.ts';
import { called } from '../../sequence/plan.ts';
import { w } from '../../words/catalogue.ts';
import { folded } from '../folded.ts';
import { newForm } from '../form.ts';
import type { Glyphs } from '../glyphs.ts';
import { type KeyPress, printed } from '../key-press.ts';
import { KEY } from '../key-table.ts';
import type { Line, Span } from '../line.ts';
import { columnsOf, fill, printable } from '../printable.ts';
import { leftRight, roughGap, roughTorque, threadWords, unitWord } from '../words.ts';
import { outlier } from './outlier.ts';
import { type Move, moved, type OldPlugDraft, type Room, scrolled } from './panel.ts';

const CLASSES = conditionSchema.options;
const DAMAGES = damageSchema.options;
const STATES = threadStateSchema.options;

/** What is known of a plug already is where the draft begins. */
export function beginOldPlug(job: JobState, cylinder: number): OldPlugDraft {
  const read = job.oldPlugs[cylinder]?.read ?? null;
  return {
    about: 'old-plug',
    cylinder,
    at: read === null ? 0 : CLASSES.indexOf(read.condition),
    damage: read?.damage ?? [],
    thread: read?.thread ?? 'sound',
    note: read?.note ?? '',
  };
}

const unread = (job: JobState): number[] =>
  job.cylinders.map((c) => c.cylinder).filter((cylinder) => (job.oldPlugs[cylinder]?.read ?? null) === null);

function commandFor(draft: OldPlugDraft, condition: Condition, cylinders: readonly number[]): Command {
  const { damage, thread, note } = draft;
  return {
    do: 'read-old-plugs',
    cylinders: [...cylinders],
    condition,
    damage: [...damage],
    thread,
    ...(note === '' ? {} : { note }),
  };
}

const untouched = ({ at, damage, thread, note }: OldPlugDraft): boolean =>
  at === 0 && damage.length === 0 && thread === 'sound' && note === '';

function allNormal(draft: OldPlugDraft, job: JobState): Move {
  return untouched(draft)
    ? { command: commandFor(draft, 'normal', unread(job)) }
    : { notice: w`You marked the plug of cylinder ${draft.cylinder}. Press Enter to confirm it first.` };
}

function beside(draft: OldPlugDraft, job: JobState, step: 1 | -1): Move {
  const order = job.cylinders.map(({ cylinder }) => cylinder);
  const cylinder = order[order.indexOf(draft.cylinder) + step];
  return cylinder === undefined
    ? null
    : { command: { do: 'choose-cylinder', quantity: 'old-plug', cylinder } };
}

export const toggled = (damage: readonly Damage[], one: Damage): Damage[] =>
  DAMAGES.filter((other) => damage.includes(other) !== (other === one));

export function pressedOldPlug(draft: OldPlugDraft, press: KeyPress, job: JobState): Move {
  const at = moved(draft.at, press.key, CLASSES.length);
  if (at !== null) return { draft: { ...draft, at } };
  if (press.key === 'left') return beside(draft, job, -1);
  if (press.key === 'right') return beside(draft, job, 1);
  if (press.key === 'enter')
    return { command: commandFor(draft, CLASSES[draft.at] ?? 'normal', [draft.cylinder]) };
  const key = printed(press)?.toLowerCase();
  if (key === KEY.normal) return { command: commandFor(draft, 'normal', [draft.cylinder]) };
  if (key === KEY.all) return allNormal(draft, job);
  if (key === KEY.note) return { form: newForm('old-plug-note', draft.cylinder) };
  if (key === KEY.not) return { form: newForm('damage', draft.cylinder) };
  if (key === KEY.thread) {
    const thread = STATES[(STATES.indexOf(draft.thread) + 1) % STATES.length] ?? 'sound';
    return { draft: { ...draft, thread } };
  }
  return null;
}

export function oldPlugSentence(draft: OldPlugDraft, job: JobState): string {
  const where = called(job.order.engine, draft.cylinder);
  return w`How does the old plug of ${where} look? n: normal. a: all others too. Or choose, then Enter.`;
}

export const oldPlugKeys = (): readonly string[] => [
  w`[n] normal`,
  w`[a] all normal`,
  w`[Enter] as marked`,
  w`[x] damage`,
  w`[${leftRight()}] cylinder`,
];

/** Removal torque in N·m, as far as a wrench felt it. */
function removalNm(job: JobState, plug: OldPlug): number | null {
  const felt = plug.removal === null ? undefined : attemptOf(job, plug.removal);
  return felt === undefined ? null : Math.abs(felt.pull.peakNm);
}

function cylinderLine(
  job: JobState,
  cylinder: number,
  draft: OldPlugDraft,
  columns: number,
  glyphs: Glyphs,
): Line {
  const plug = job.oldPlugs[cylinder];
  const read = plug?.read ?? null;
  const here = cylinder === draft.cylinder;
  const felt = plug === undefined ? null : removalNm(job, plug);
  const parts = [
    read === null
      ? w`${glyphs.todo} to read`
      : `${read.damage.length === 0 ? glyphs.done : glyphs.bad} ${CONDITIONS[read.condition].word}`,
    ...(read === null ? [] : read.damage.map((one) => DAMAGE[one].words)),
    ...(read === null || read.thread === 'sound' ? [] : [threadWords(read.thread)]),
    ...(plug?.gap == null ? [] : [`${roughGap(plug.gap.gapMm)} ${unitWord('mm', glyphs)}`]),
    ...(felt === null ? [] : [w`${roughTorque(felt, 0)} ${unitWord('N.m', glyphs)} off`]),
  ];
  const text = `${here ? glyphs.pointer : ' '}${String(cylinder).padStart(2)} ${parts.join(', ')}`;
  return [{ text: fill(text, columns, glyphs.cutMark), bold: here, inverse: here }];
}

function classSpan(at: number, draft: OldPlugDraft, columns: number, glyphs: Glyphs): Span {
  const condition = CLASSES[at];
  const here = at === draft.at;
  const word = condition === undefined ? '' : CONDITIONS[condition].word;
  return {
    text: fill(` ${here ? glyphs.pointer : ' '}${word}`, columns, glyphs.cutMark),
    bold: here,
    inverse: here,
  };
}

const CLASS_COLUMNS = 22;
/** On a wide screen the two lists stay side by side. */
const WIDEST = 90;

/** Cylinders at the left, condition classes at the right. */
function lists(draft: OldPlugDraft, job: JobState, columns: number, rows: number, glyphs: Glyphs): Line[] {
  const left = Math.min(columns, WIDEST) - CLASS_COLUMNS - 1;
  const order = job.cylinders.map(({ cylinder }) => cylinder);
  const cylinders = scrolled(
    order.map((cylinder) => cylinderLine(job, cylinder, draft, left, glyphs)),
    order.indexOf(draft.cylinder),
    rows,
    glyphs,
  );
  const classes = scrolled(
    CLASSES.map((_, at): Line => [classSpan(at, draft, CLASS_COLUMNS, glyphs)]),
    draft.at,
    rows,
    glyphs,
  );
  const height = Math.min(rows, Math.max(cylinders.length, classes.length));
  return Array.from(
    { length: height },
    (_, row): Line => [
      ...(cylinders[row] ?? [{ text: ' '.repeat(left) }]),
      { text: ' ' },
      ...(classes[row] ?? []),
    ],
  );
}

function damageLine(draft: OldPlugDraft, glyphs: Glyphs): Line {
  const spans = draft.damage.flatMap((one): Span[] => [
    { text: `${glyphs.bad} ${DAMAGE[one].words}`, inverse: true, tone: 'bad' },
    { text: '  ' },
  ]);
  return [{ text: ' ' }, { text: w`[x] damage: ` }, ...(spans.length === 0 ? [{ text: w`none` }] : spans)];
}

/** A line of spans broken where it would be too wide. */
function broken(line: Line, columns: number): Line[] {
  const lines: Span[][] = [[{ text: ' ' }]];
  let used = 1;
  for (const span of line.slice(1)) {
    if (used + columnsOf(span.text) > columns) {
      lines.push([{ text: ' ' }]);
      used = 1;
      if (span.text.trim() === '') continue;
    }
    lines.at(-1)?.push(span);
    used += columnsOf(span.text);
  }
  return lines;
}

export function oldPlugLines(
  draft: OldPlugDraft,
  job: JobState,
  { columns, rows }: Room,
  glyphs: Glyphs,
): Line[] {
  const { looks, causes } = CONDITIONS[CLASSES[draft.at] ?? 'normal'];
  const text = (label: string, words: string, most: number): Line[] =>
    folded(printable(w`${label}: ${words}`, 200, glyphs.ascii), columns - 2, most, glyphs.cutMark).map(
      (part) => [{ text: ` ${part}` }],
    );
  const thread: Line = [
    { text: w` [t] thread in the head: ` },
    {
      text: THREADS[draft.thread],
      bold: true,
      ...(draft.thread === 'sound' ? {} : { tone: 'attention' as const }),
    },
    { text: `   ${w`[w] note`}${draft.note === '' ? '' : `: ${printable(draft.note, 60, glyphs.ascii)}`}` },
  ];
  const outlierText = outlier(job);
  const below: Line[] = [
    ...text(w`Looks`, looks, 1),
    ...text(w`Likely from`, causes, 2),
    ...broken(damageLine(draft, glyphs), columns),
    thread,
    [
      {
        text: ` ${outlierText ?? stainText()}`,
        ...(outlierText === null ? { dim: true } : { tone: 'attention' as const, bold: true }),
      },
    ],
  ];
  return [...lists(draft, job, columns, Math.max(3, rows - below.length), glyphs), ...below];
}
