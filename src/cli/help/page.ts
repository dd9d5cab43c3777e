/** A page of the manual, from whatever it was made: the terminal and man print the same one. */

/** `code` is what somebody types or finds in a file as it stands. */
export interface Span {
  readonly text: string;
  readonly style: 'plain' | 'code' | 'strong' | 'topic';
}
export type Text = readonly Span[];

export type Block =
  | { readonly kind: 'heading'; readonly level: number; readonly text: Text }
  | { readonly kind: 'paragraph'; readonly text: Text }
  /** As it stands, never broken. */
  | { readonly kind: 'lines'; readonly text: string }
  | { readonly kind: 'list'; readonly items: readonly Item[] }
  | { readonly kind: 'table'; readonly head: readonly Text[]; readonly rows: readonly (readonly Text[])[] }
  /** A term with what it means. */
  | { readonly kind: 'entry'; readonly term: Text; readonly text: Text };

export interface Item {
  /** `-`, or `1.` and so on. */
  readonly mark: string;
  readonly text: Text;
}

export interface Page {
  /** What `plugmark manual` takes. */
  readonly name: string;
  /** What it is about, in one line. */
  readonly about: string;
  readonly blocks: readonly Block[];
}

export const plain = (text: string): Text => [{ text, style: 'plain' }];
export const code = (text: string): Text => [{ text, style: 'code' }];
export const strong = (text: string): Text => [{ text, style: 'strong' }];
