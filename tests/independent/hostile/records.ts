/** Files that were made to mislead, or to keep a reader busy. Each is one change of a record that holds. */
import { clock, contents, judging } from './contents.ts';
import { form } from './form.ts';
import { background, log } from './log.ts';
import { headers, signatures, weakKeys } from './signatures.ts';
import { texts } from './texts.ts';
import type { Variant } from './variant.ts';
import { bits, json, noRecord, writing } from './writing.ts';

/** All of them, each under a name of its own. */
export const hostileRecords = (): readonly Variant[] => [
  ...bits(),
  ...writing(),
  ...noRecord(),
  ...headers(),
  ...signatures(),
  ...weakKeys(),
  ...json(),
  ...form(),
  ...texts(),
  ...log(),
  ...background(),
  ...contents(),
  ...clock(),
  ...judging(),
];
