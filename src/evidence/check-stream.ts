/** Finds the first place where the entries of one stream do not follow one another. */
import { type Sentence, sentence } from '../words/catalogue.ts';
import type { AnyEntry } from './log.ts';

/** The first entry that does not follow; `index` counts from 0 in the list that was checked. */
export interface StreamBreak {
  readonly index: number;
  readonly message: Sentence;
}

/** Checks that these are all entries of one stream from its first on, in the order of the log. */
export function checkStream(entries: readonly AnyEntry[], stream: string): StreamBreak | null {
  for (const [index, entry] of entries.entries()) {
    const message = broken(entry, index + 1, entries[index - 1], stream);
    if (message !== null) return { index, message };
  }
  return null;
}

function broken(entry: AnyEntry, due: number, before: AnyEntry | undefined, stream: string): Sentence | null {
  if (entry.stream !== stream)
    return sentence`entry ${entry.seq} belongs to ${JSON.stringify(entry.stream)}, not to ${stream}`;
  if (entry.n !== due) return sentence`entry n=${entry.n} stands where n=${due} is due`;
  if (before !== undefined && entry.seq <= before.seq)
    return sentence`entry ${entry.seq} stands after entry ${before.seq}`;
  return null;
}
