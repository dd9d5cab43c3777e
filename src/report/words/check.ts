/** What a check of a record found, with what is open in the job. */
import type { Check } from '../../evidence/check.ts';
import { w } from '../../words/catalogue.ts';
import { openItemsText } from './open-item.ts';

export const checkText = ({ detail, open = [] }: Pick<Check, 'detail' | 'open'>): string =>
  open.length === 0 ? detail : w`${detail} Still open: ${openItemsText(open)}.`;
