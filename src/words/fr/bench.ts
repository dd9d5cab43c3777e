/** French for the bench: screen, plain lines, keys. Not yet read by a native of the trade. */
import type { Entries } from '../catalogue.ts';

export const ENTRIES: Entries = {};
