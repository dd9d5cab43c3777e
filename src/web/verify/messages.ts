/** What the page and its worker say to each other. */
import type { PackedWords } from '../../words/packed.ts';
import type { HeldFiles, NamedFile, Refusal, Shown, TrustShown } from './shown.ts';

/** Files to verify. */
export interface Ask {
  readonly kind: 'files';
  readonly given: readonly NamedFile[];
  readonly held: HeldFiles;
  /** Of many records, the one to show whole; null for all of them. */
  readonly one: string | null;
  /** The reader's clock (ISO). */
  readonly readAt: string;
}

/** What the worker is asked for. */
export type Asked =
  | Ask
  /** To speak another language; null for English. */
  | { readonly kind: 'language'; readonly words: PackedWords | null }
  /** To go on with the helpers that it wanted. */
  | { readonly kind: 'helpers'; readonly ports: readonly MessagePort[] }
  /** To be one of these. */
  | { readonly kind: 'help'; readonly port: MessagePort };

export type Told =
  | { readonly kind: 'helpers-wanted'; readonly count: number }
  | { readonly kind: 'progress'; readonly what: string; readonly done: number; readonly total: number }
  | {
      readonly kind: 'answer';
      /** What was said before, in another language. */
      readonly isAgain: boolean;
      readonly held: HeldFiles;
      readonly trust: TrustShown | null;
      /** What else of the reader's own is used, a line each. */
      readonly own: readonly string[];
      readonly shown: Shown | null;
      readonly refusals: readonly Refusal[];
    };
