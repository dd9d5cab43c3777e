/**
 * What takes more than one key: a chain of questions, each one sentence, answered by a key or by typed text. A form is
 * only what was answered so far; what it asks next is worked out from that and from the job.
 */
import type { Command } from '../job/command.ts';
import { type Editor, edited, proposed, textOf } from './editor.ts';
import { type KeyPress, printed } from './key-press.ts';

export type FormKind =
  | 'exceptions'
  | 'give-pull'
  | 'left-out'
  | 'start-again'
  | 'accept'
  | 'fit-by-angle'
  | 'at-work'
  | 'hand-over'
  | 'scrap'
  | 'replace'
  | 'keep-gap'
  | 'take-back'
  | 'damage'
  | 'not-done'
  | 'old-plug-note'
  | 'part'
  | 'lot';

export interface Form {
  readonly kind: FormKind;
  /** The pull, cylinder or item that it is about, where that was plain when it was opened. */
  readonly about?: number | string;
  readonly answers: readonly string[];
  /** Text being typed; null while one of the options is to be chosen. */
  readonly text: Editor | null;
  /** The option that Enter takes. */
  readonly at: number;
  /** Why the last answer was not taken. */
  readonly fault: string | null;
}

/** Its key is its place in the list, from 1. */
export interface Option {
  readonly words: string;
  readonly value: string;
}

/** Text that may be typed. `fault` says what is wrong with it, null for nothing. */
export interface Typed {
  readonly label: string;
  readonly most: number;
  readonly start?: string;
  readonly fault?: (text: string) => string | null;
}

/** What a form wants next: an answer, another form in its place, or nothing more. */
export type Wanted =
  | {
      readonly want: 'answer';
      readonly ask: string;
      readonly options: readonly Option[];
      readonly typed: Typed | null;
    }
  | { readonly want: 'form'; readonly form: Form }
  | { readonly want: 'command'; readonly command: Command }
  /** The panel that asked for it takes the answers. */
  | { readonly want: 'draft' };

export const newForm = (kind: FormKind, about?: number | string, answers: readonly string[] = []): Form => ({
  kind,
  ...(about === undefined ? {} : { about }),
  answers,
  text: null,
  at: 0,
  fault: null,
});

/** Opens the line to type in where there is nothing to choose from. */
export function ready(form: Form, wanted: Wanted): Form {
  const types = wanted.want === 'answer' && wanted.options.length === 0 && form.text === null;
  return types && wanted.typed !== null ? { ...form, text: proposed(wanted.typed.start ?? '') } : form;
}

const answered = (form: Form, value: string): Form => ({
  ...form,
  answers: [...form.answers, value],
  text: null,
  at: 0,
  fault: null,
});

/** The form one answer back; null when there is none: it is left. */
function back(form: Form, wanted: Wanted & { want: 'answer' }): Form | null {
  if (form.text !== null && wanted.options.length > 0) return { ...form, text: null, fault: null };
  return form.answers.length === 0
    ? null
    : { ...form, answers: form.answers.slice(0, -1), text: null, at: 0, fault: null };
}

function typing(form: Form, text: Editor, press: KeyPress, typed: Typed): Form {
  if (press.key !== 'enter') return { ...form, text: edited(text, press, typed.most), fault: null };
  const answer = textOf(text).trim();
  const fault = typed.fault?.(answer) ?? null;
  return fault === null ? answered(form, answer) : { ...form, fault };
}

/** The form after one more key; null when it is left. Every key means something here or nothing: none falls through. */
export function pressedForm(form: Form, wanted: Wanted & { want: 'answer' }, press: KeyPress): Form | null {
  if (press.key === 'escape') return back(form, wanted);
  const { options, typed } = wanted;
  if (form.text !== null && typed !== null) return typing(form, form.text, press, typed);
  const last = options.length - 1 + (typed === null ? 0 : 1);
  const digit = /^[1-9]$/.test(printed(press) ?? '') ? Number(press.key) - 1 : null;
  const chosen = press.key === 'enter' ? form.at : digit;
  const option = chosen === null ? undefined : options[chosen];
  if (option !== undefined) return answered(form, option.value);
  if (typed !== null && chosen === last) return { ...form, text: proposed(typed.start ?? ''), fault: null };
  if (press.key === 'up') return { ...form, at: Math.max(0, form.at - 1) };
  return press.key === 'down' ? { ...form, at: Math.min(last, form.at + 1) } : form;
}
