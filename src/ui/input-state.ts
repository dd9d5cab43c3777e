/**
 * What stands between the keys and the job: marks that are not said yet, text being typed, a chain of questions that is
 * half answered. Pure: a key makes another desk, and now and then a command. Nothing on it is part of the job's record.
 */
import { openItems } from '../job/closing.ts';
import type { Command } from '../job/command.ts';
import { heldGapStep } from '../job/held-gap.ts';
import { phaseOf } from '../job/phase.ts';
import { refused } from '../job/refusal.ts';
import type { JobState, Question } from '../job/state.ts';
import { openItemText } from '../report/words/index.ts';
import { w } from '../words/catalogue.ts';
import { edited, editorWith, textOf } from './editor.ts';
import { canStay, exceptionsNow, NO_TIMES, type PullTimes, wantedBy } from './exceptions.ts';
import { figurePressed, isFigure } from './figure-keys.ts';
import { type Form, newForm, pressedForm, ready } from './form.ts';
import { isQuit, type KeyPress, printed } from './key-press.ts';
import { KEY, keyOfLetter } from './key-table.ts';
import { benchCommand } from './keys.ts';
import { draftFor, filled, pressedPanel } from './panels/index.ts';
import { THEN_AGREED } from './panels/new-plugs.ts';
import type { Draft, Move } from './panels/panel.ts';
import { impossibleTorque, type TypedUnits } from './typed-figure.ts';

export interface InputState {
  readonly help: boolean;
  /** No bell. */
  readonly quiet: boolean;
  /** A gauge of this station types its figures: digits are never keys then, whatever phase it is. */
  readonly types: boolean;
  readonly typedUnits: TypedUnits;
  /** The figure that is being typed by such a gauge. */
  readonly figure: string;
  readonly form: Form | null;
  readonly draft: Draft | null;
  /** Why the last key was not taken. */
  readonly notice: string | null;
  /** The answer to a question that the arrows have marked; Enter gives it. */
  readonly marked: { readonly pull: number; readonly at: number } | null;
  readonly pullTimes: PullTimes;
}

export const newInputState = (
  more: Partial<Pick<InputState, 'quiet' | 'types' | 'typedUnits' | 'pullTimes'>> = {},
): InputState => ({
  help: false,
  quiet: false,
  types: false,
  typedUnits: {},
  figure: '',
  form: null,
  draft: null,
  notice: null,
  marked: null,
  pullTimes: NO_TIMES,
  ...more,
});

/** What a key led to beside another desk. */
export type Out = Command | 'quit' | { readonly typed: string };

export interface Pressed {
  readonly input: InputState;
  readonly out: Out | null;
  /** False where the key means nothing now. */
  readonly taken: boolean;
}

const stays = (input: InputState): Pressed => ({ input, out: null, taken: true });
const nothing = (input: InputState): Pressed => ({ input, out: null, taken: false });

/** The desk as it belongs to the job now: marks about a phase that is over are gone. */
export const inputStateFor = (input: InputState, job: JobState): InputState => {
  const draft = draftFor(input.draft, job);
  return draft === input.draft ? input : { ...input, draft };
};

/** A command goes out unless the job would refuse it: then the desk says why. */
function commanded(
  input: InputState,
  command: Command,
  job: JobState,
  pulling: boolean,
  draft: Draft | null,
): Pressed {
  const refusal = refused(job, command, pulling);
  if (refusal !== null) return stays({ ...input, form: null, notice: refusal });
  return { input: { ...input, form: null, draft }, out: command, taken: true };
}

/** Opens or goes on with a form; one that is complete becomes a command or fills the marks of the panel. */
function advanced(input: InputState, form: Form, job: JobState, pulling: boolean): Pressed {
  const wanted = wantedBy(form, job, input.pullTimes);
  switch (wanted.want) {
    case 'answer':
      return stays({ ...input, form: ready(form, wanted) });
    case 'form':
      return advanced(input, wanted.form, job, pulling);
    case 'command':
      return commanded(input, wanted.command, job, pulling, null);
    case 'draft': {
      const after: InputState = {
        ...input,
        form: null,
        draft: input.draft === null ? null : filled(input.draft, form),
      };
      const goesOn = form.about === THEN_AGREED && after.draft !== null;
      return goesOn
        ? done(after, pressedPanel(after.draft, { key: 'enter' }, job), job, pulling)
        : stays(after);
    }
  }
}

function done(input: InputState, move: Move, job: JobState, pulling: boolean): Pressed {
  if (move === null) return nothing(input);
  if ('command' in move) return commanded(input, move.command, job, pulling, move.draft ?? null);
  if ('form' in move) return advanced(input, move.form, job, pulling);
  return stays('draft' in move ? { ...input, draft: move.draft } : { ...input, notice: move.notice });
}

/** A figure that a gauge typed, or somebody who read one: to its tool, unless no tool can have shown it. */
function typedOut(input: InputState, typed: string, job: JobState): Pressed {
  const notice = impossibleTorque(typed, job, input.typedUnits);
  return notice === null ? { input, out: { typed }, taken: true } : stays({ ...input, notice });
}

function inForm(input: InputState, form: Form, press: KeyPress, job: JobState, pulling: boolean): Pressed {
  const wanted = wantedBy(form, job, input.pullTimes);
  if (wanted.want !== 'answer') return stays({ ...input, form: null });
  const text = form.text === null ? '' : textOf(form.text);
  if (input.types && press.key === 'enter' && isFigure(text))
    return typedOut({ ...input, form: { ...form, text: editorWith('') } }, text, job);
  const next = pressedForm(form, wanted, press);
  return next === null ? stays({ ...input, form: null }) : advanced(input, next, job, pulling);
}

/** Keys that mean the same in every phase of an open job. */
function anywhere(
  input: InputState,
  key: string | undefined,
  job: JobState,
  pulling: boolean,
): Pressed | null {
  const question = job.questions[0];
  if (key === KEY.otherwise && exceptionsNow(job).length > 0)
    return advanced(input, newForm('exceptions'), job, pulling);
  if (key === KEY.takeBack && job.statements.some(({ takenBack }) => takenBack !== true))
    return advanced(input, newForm('take-back'), job, pulling);
  if (key === KEY.keep && canStay(question))
    return advanced(input, newForm('accept', question.pull), job, pulling);
  if (key === KEY.keep && question === undefined && heldGapStep(job) !== null)
    return advanced(input, newForm('keep-gap'), job, pulling);
  if (key === KEY.discard && question?.answers.includes('replace') === true)
    return advanced(input, newForm('replace', question.pull), job, pulling);
  return null;
}

/** What a key does, the job being as it is; `pulling` while a pull is under way. */
export function pressed(before: InputState, press: KeyPress, job: JobState, pulling: boolean): Pressed {
  const input: InputState = { ...inputStateFor(before, job), notice: null };
  if (press.ctrl === true && isQuit(press)) return { input, out: 'quit', taken: true };
  if (input.form !== null && (input.form.text !== null || !input.types))
    return inForm(input, input.form, press, job, pulling);
  const figure = input.types
    ? figurePressed(input.figure, press, input.typedUnits.torque !== undefined)
    : null;
  if (figure !== null) {
    const after: InputState = { ...input, figure: figure.figure };
    return figure.typed === null ? stays(after) : typedOut(after, figure.typed, job);
  }
  return input.form !== null
    ? inForm({ ...input, figure: '' }, input.form, press, job, pulling)
    : byKey({ ...input, figure: '' }, press, job, pulling);
}

function byKey(input: InputState, given: KeyPress, job: JobState, pulling: boolean): Pressed {
  const press = { ...given, key: keyOfLetter(given.key) };
  if (press.key === KEY.help) return stays({ ...input, help: !input.help });
  if (isQuit(press)) return { input, out: 'quit', taken: true };
  const open: InputState = { ...input, help: false };
  const key = printed(press)?.toLowerCase();
  if (key === KEY.bell) return stays({ ...open, quiet: !input.quiet });
  if (job.closed !== null) return nothing(open);
  const always = anywhere(open, key, job, pulling);
  if (always !== null) return always;
  const [question] = job.questions;
  const asking = question !== undefined;
  const answered = question === undefined ? null : markedAnswer(open, question, press, job, pulling);
  if (answered !== null) return answered;
  if (!asking && open.draft !== null) return done(open, pressedPanel(open.draft, press, job), job, pulling);
  const plug = job.gapTarget ?? job.torqueTarget;
  if (key === KEY.discard && !asking && !pulling && plug !== null)
    return advanced(open, newForm('scrap', plug), job, pulling);
  const command = benchCommand(press, job, pulling);
  if (command === null && key === KEY.sign && !asking && !pulling)
    return stays({ ...open, notice: notYet(job) });
  return command === null ? nothing(open) : commanded(open, command, job, pulling, open.draft);
}

/** Arrows mark an answer and Enter gives it: for a pedal, a presenter, or a row of keys. None is marked beforehand. */
function markedAnswer(
  input: InputState,
  question: Question,
  { key }: KeyPress,
  job: JobState,
  pulling: boolean,
): Pressed | null {
  const { answers, pull } = question;
  const at = input.marked?.pull === pull ? input.marked.at : null;
  const step = key === 'right' || key === 'down' ? 1 : key === 'left' || key === 'up' ? -1 : 0;
  if (step !== 0) {
    const from = at ?? (step === 1 ? -1 : 0);
    return stays({ ...input, marked: { pull, at: (from + step + answers.length) % answers.length } });
  }
  if (key !== 'enter') return null;
  const answer = at === null ? undefined : answers[at];
  if (answer === undefined)
    return stays({
      ...input,
      notice: w`Press the key of an answer, or mark one with the arrows. Then press Enter.`,
    });
  if (answer === 'replace') return advanced(input, newForm('replace', pull), job, pulling);
  return commanded(input, { do: 'answer', pull, answer }, job, pulling, input.draft);
}

/** Longer text than anything that is asked for; the rest of what was pasted is not looked at. */
const MOST_PASTED = 400;

/** Pasted text goes where text is typed, as far as it fits there, and acts as no key anywhere else. */
export function pasted(before: InputState, text: string, job: JobState): Pressed {
  const input: InputState = { ...inputStateFor(before, job), notice: null };
  const wanted = input.form === null ? null : wantedBy(input.form, job, input.pullTimes);
  const typed = wanted?.want === 'answer' ? wanted.typed : null;
  if (input.form === null || input.form.text === null || typed === null)
    return stays({ ...input, notice: w`Pasted text is taken only where text is asked for.` });
  const [line = ''] = text
    .slice(0, MOST_PASTED)
    .trimStart()
    .split(/[\r\n]/u, 1);
  const pieces = [...line].map((key) => ({ key }));
  const after = pieces.reduce((editor, key) => edited(editor, key, typed.most), input.form.text);
  return stays({ ...input, form: { ...input.form, text: after, fault: null } });
}

/** Why the job cannot be signed. */
function notYet(job: JobState): string {
  const [first, ...others] = openItems(job);
  const what = first === undefined ? '' : openItemText(first);
  return others.length === 0
    ? w`Not yet: ${what}. q leaves it open and lists them.`
    : w`Not yet: ${what}, and ${others.length} more. q leaves it open and lists them.`;
}

/** What a person has before their eyes, as far as an answer to it goes: keys for something else come too late. */
export const inView = (job: JobState): string => `${phaseOf(job)} ${job.questions[0]?.pull ?? ''}`;
