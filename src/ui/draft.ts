/**
 * What stands between the keys and the job: marks that are not said yet, text being typed, a chain of questions that is
 * half answered. Pure: a key makes another desk, and now and then a command. Nothing on it is part of the job's record.
 */
import { openItems } from '../job/closing.ts';
import type { Command } from '../job/command.ts';
import { phaseOf } from '../job/phase.ts';
import { refused } from '../job/refusal.ts';
import type { JobState } from '../job/state.ts';
import { editorWith, textOf } from './editor.ts';
import { exceptionsNow, wantedBy } from './exceptions.ts';
import { figurePressed, isFigure } from './figure-keys.ts';
import { type Form, newForm, pressedForm, ready } from './form.ts';
import { isQuit, type KeyPress, printed } from './key-press.ts';
import { benchCommand } from './keys.ts';
import { draftFor, filled, pressedPanel } from './panels/index.ts';
import { THEN_AGREED } from './panels/new-plugs.ts';
import type { Draft, Move } from './panels/panel.ts';

export interface Desk {
  readonly help: boolean;
  /** No bell. */
  readonly quiet: boolean;
  /** A gauge of this station types its figures: digits are never keys then, whatever phase it is. */
  readonly types: boolean;
  /** The figure that is being typed by such a gauge. */
  readonly figure: string;
  readonly form: Form | null;
  readonly draft: Draft | null;
  /** Why the last key was not taken. */
  readonly notice: string | null;
}

export const newDesk = (more: Partial<Pick<Desk, 'quiet' | 'types'>> = {}): Desk => ({
  help: false,
  quiet: false,
  types: false,
  figure: '',
  form: null,
  draft: null,
  notice: null,
  ...more,
});

/** What a key led to beside another desk. */
export type Out = Command | 'quit' | { readonly typed: string };

export interface Pressed {
  readonly desk: Desk;
  readonly out: Out | null;
  /** False where the key means nothing now. */
  readonly taken: boolean;
}

const stays = (desk: Desk): Pressed => ({ desk, out: null, taken: true });
const nothing = (desk: Desk): Pressed => ({ desk, out: null, taken: false });

/** The desk as it belongs to the job now: marks about a phase that is over are gone. */
export const deskFor = (desk: Desk, job: JobState): Desk => {
  const draft = draftFor(desk.draft, job);
  return draft === desk.draft ? desk : { ...desk, draft };
};

/** A command goes out unless the job would refuse it: then the desk says why. */
function commanded(
  desk: Desk,
  command: Command,
  job: JobState,
  pulling: boolean,
  draft: Draft | null,
): Pressed {
  const refusal = refused(job, command, pulling);
  if (refusal !== null) return stays({ ...desk, form: null, notice: refusal });
  return { desk: { ...desk, form: null, draft }, out: command, taken: true };
}

/** Opens or goes on with a form; one that is complete becomes a command or fills the marks of the panel. */
function advanced(desk: Desk, form: Form, job: JobState, pulling: boolean): Pressed {
  const wanted = wantedBy(form, job);
  switch (wanted.want) {
    case 'answer':
      return stays({ ...desk, form: ready(form, wanted) });
    case 'form':
      return advanced(desk, wanted.form, job, pulling);
    case 'command':
      return commanded(desk, wanted.command, job, pulling, null);
    case 'draft': {
      const after: Desk = {
        ...desk,
        form: null,
        draft: desk.draft === null ? null : filled(desk.draft, form),
      };
      const goesOn = form.about === THEN_AGREED && after.draft !== null;
      return goesOn
        ? done(after, pressedPanel(after.draft, { key: 'enter' }, job), job, pulling)
        : stays(after);
    }
  }
}

function done(desk: Desk, move: Move, job: JobState, pulling: boolean): Pressed {
  if (move === null) return nothing(desk);
  if ('command' in move) return commanded(desk, move.command, job, pulling, move.draft ?? null);
  if ('form' in move) return advanced(desk, move.form, job, pulling);
  return stays('draft' in move ? { ...desk, draft: move.draft } : { ...desk, notice: move.notice });
}

function inForm(desk: Desk, form: Form, press: KeyPress, job: JobState, pulling: boolean): Pressed {
  const wanted = wantedBy(form, job);
  if (wanted.want !== 'answer') return stays({ ...desk, form: null });
  const text = form.text === null ? '' : textOf(form.text);
  if (desk.types && press.key === 'enter' && isFigure(text))
    return { desk: { ...desk, form: { ...form, text: editorWith('') } }, out: { typed: text }, taken: true };
  const next = pressedForm(form, wanted, press);
  return next === null ? stays({ ...desk, form: null }) : advanced(desk, next, job, pulling);
}

/** Keys that mean the same in every phase of an open job. */
function anywhere(desk: Desk, key: string | undefined, job: JobState, pulling: boolean): Pressed | null {
  const question = job.questions[0];
  if (key === 'c' && exceptionsNow(job).length > 0)
    return advanced(desk, newForm('exceptions'), job, pulling);
  if (key === 'a' && question?.kind === 'over-window')
    return advanced(desk, newForm('accept', question.pull), job, pulling);
  return null;
}

/** What a key does, the job being as it is; `pulling` while a pull is under way. */
export function pressed(before: Desk, press: KeyPress, job: JobState, pulling: boolean): Pressed {
  const desk: Desk = { ...deskFor(before, job), notice: null };
  if (press.ctrl === true && isQuit(press)) return { desk, out: 'quit', taken: true };
  if (desk.form !== null) return inForm(desk, desk.form, press, job, pulling);
  const figure = desk.types ? figurePressed(desk.figure, press) : null;
  if (figure !== null) {
    const out = figure.typed === null ? null : { typed: figure.typed };
    return { desk: { ...desk, figure: figure.figure }, out, taken: true };
  }
  return byKey({ ...desk, figure: '' }, press, job, pulling);
}

function byKey(desk: Desk, press: KeyPress, job: JobState, pulling: boolean): Pressed {
  if (press.key === '?') return stays({ ...desk, help: !desk.help });
  if (isQuit(press)) return { desk, out: 'quit', taken: true };
  const open: Desk = { ...desk, help: false };
  const key = printed(press)?.toLowerCase();
  if (key === 'm') return stays({ ...open, quiet: !desk.quiet });
  if (job.closed !== null) return nothing(open);
  const always = anywhere(open, key, job, pulling);
  if (always !== null) return always;
  const asking = job.questions.length > 0;
  if (!asking && open.draft !== null) return done(open, pressedPanel(open.draft, press, job), job, pulling);
  const command = benchCommand(press, job, pulling);
  if (command === null && key === 's' && !asking && !pulling) return stays({ ...open, notice: notYet(job) });
  return command === null ? nothing(open) : commanded(open, command, job, pulling, open.draft);
}

/** Why the job cannot be signed. */
function notYet(job: JobState): string {
  const [first = '', ...others] = openItems(job);
  return `Not yet: ${first}${others.length === 0 ? '' : `, and ${others.length} more`}. q leaves it open and lists them.`;
}

/** What a person has before their eyes, as far as an answer to it goes: keys for something else come too late. */
export const inView = (job: JobState): string => `${phaseOf(job)} ${job.questions[0]?.pull ?? ''}`;
