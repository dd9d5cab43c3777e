/** What tables and specifications go by, in words. */
import { phrases } from '../words/catalogue.ts';
import type { TableRow } from './general-table.ts';
import type { Fit, Specification } from './specification.ts';

export const SEAT_WORDS: Readonly<Record<Fit['seat'], string>> = phrases({
  gasket: 'gasket seat',
  conical: 'conical seat',
});

export const HEAD_WORDS: Readonly<Record<Fit['head'], string>> = phrases({
  aluminium: 'aluminium head',
  'cast-iron': 'cast-iron head',
});

export const THREADS_WORDS: Readonly<Record<Specification['threads'], string>> = phrases({
  dry: 'dry threads',
  oiled: 'oiled threads',
  'anti-seize': 'anti-seize threads',
  'factory-coated': 'factory-coated threads',
});

/** The threads that a general table assumes, in a list of tables. */
export const TABLE_THREADS: Readonly<Record<TableRow['threads'], string>> = phrases({
  dry: 'threads dry',
  'lightly oiled': 'threads lightly oiled',
  'not stated': 'threads not stated',
});
