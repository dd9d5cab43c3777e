/** What the panels of the phases have in common: a draft of what will be said, keys that change it, lines that show it. */
import type { Command } from '../../job/command.ts';
import type { ListPhase } from '../../job/routine.ts';
import type { Attested } from '../../job/state.ts';
import type { Damage, ThreadState } from '../../plug/condition.ts';
import type { PlugFeature } from '../../plug/feature.ts';
import { w } from '../../words/catalogue.ts';
import type { Form } from '../form.ts';
import type { Glyphs } from '../glyphs.ts';
import type { Line } from '../line.ts';

export interface WindowsDraft {
  readonly about: 'windows';
}

export interface TrialDraft {
  readonly about: 'trial';
}

export interface ListDraft {
  readonly about: 'list';
  readonly phase: ListPhase;
  /** The item that keys speak of. */
  readonly at: number;
  /** By item; one that is missing is still to be answered. */
  readonly answers: Readonly<Record<string, Attested>>;
  /** When each item was answered, in ms since the list was shown; absent where nobody knows. */
  readonly answeredMs: readonly number[];
  /** One key answered for several. */
  readonly atOnce: boolean;
}

export interface OldPlugDraft {
  readonly about: 'old-plug';
  readonly cylinder: number;
  /** The condition that Enter says, as its place in the list. */
  readonly at: number;
  readonly damage: readonly Damage[];
  readonly thread: ThreadState;
  readonly note: string;
}

export interface NewPlugsDraft {
  readonly about: 'new-plugs';
  /** The feature that keys speak of. */
  readonly at: number;
  readonly differs: readonly PlugFeature[];
  readonly part: string;
  /** Null while nobody was asked; empty where there is none. */
  readonly lot: string | null;
  /** The one cylinder that is spoken of; null for all that are left. */
  readonly one: number | null;
}

/** What has been marked on the panel of a phase and not been said yet. */
export type Draft = WindowsDraft | TrialDraft | ListDraft | OldPlugDraft | NewPlugsDraft;

/** What a key does on a panel; null when it means nothing there. */
export type Move =
  | { readonly draft: Draft }
  | { readonly command: Command; readonly draft?: Draft }
  | { readonly form: Form }
  | { readonly notice: string }
  | null;

/** Room for a panel. */
export interface Room {
  readonly columns: number;
  readonly rows: number;
}

/** The lines about number `at` that fit into `rows`; the first and the last say how many are cut off. */
export function scrolled(lines: readonly Line[], at: number, rows: number, glyphs: Glyphs): readonly Line[] {
  if (lines.length <= rows) return lines;
  if (rows < 3)
    return lines.slice(Math.min(at, lines.length - rows), Math.min(at, lines.length - rows) + rows);
  const from = Math.max(0, Math.min(at - Math.floor(rows / 2), lines.length - rows));
  const above = from;
  const below = lines.length - from - rows;
  const more = (count: number, mark: string): Line => [{ text: w`   ${mark} ${count + 1} more`, dim: true }];
  const shown = lines.slice(from, from + rows);
  const head = above === 0 ? shown.slice(0, 1) : [more(above, glyphs.up)];
  const tail = below === 0 ? shown.slice(-1) : [more(below, glyphs.down)];
  return [...head, ...shown.slice(1, -1), ...tail];
}

/** One step up or down a list of `length`, no further than its ends. */
export function moved(at: number, key: string, length: number): number | null {
  if (key === 'up') return Math.max(0, at - 1);
  return key === 'down' ? Math.min(length - 1, at + 1) : null;
}
