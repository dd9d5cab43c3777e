/** What verification names: the kinds of texts that can be withheld. */
import type { Withheld } from '../../evidence/sharing.ts';
import type { PersonalKind } from '../../personal.ts';
import { phrases, w } from '../../words/catalogue.ts';

const PERSONAL_WORDS: Readonly<Record<PersonalKind, string>> = phrases({
  plate: 'plate',
  vin: 'vin',
  vehicle: 'vehicle',
  fleet: 'fleet',
  customer: 'customer',
  complaint: 'complaint',
  person: 'person',
  note: 'note',
});

/** What did not come with a record; empty where all came. */
export const withheldText = (withheld: readonly Withheld[]): string =>
  withheld.length === 0
    ? ''
    : w`Withheld: ${withheld.map(({ kind, count }) => `${PERSONAL_WORDS[kind]} (${count})`).join(', ')}. What is signed holds digests of these texts; no check needs them.`;
