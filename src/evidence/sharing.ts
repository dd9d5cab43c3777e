/** Giving evidence away without some of its personal texts: the same signatures, the same verdict, fewer disclosures. */
import { z } from 'zod';
import { type PersonalKind, personalKindSchema } from '../personal.ts';
import { orThrow } from '../result.ts';
import { disclosureOf } from './disclosures.ts';
import { isStationEntry, personalTexts, readEntry, signedEntry } from './entry.ts';
import { withDisclosures } from './jws.ts';
import type { AnyEntry, StationEntry } from './log.ts';
import type { PersonalPlace } from './personal-places.ts';
import { fileBytes, type JobRecord, type OpenedRecord } from './record.ts';

export type Kinds = ReadonlySet<PersonalKind>;

/** How many texts of a kind are withheld. */
export const withheldSchema = z.strictObject({
  kind: personalKindSchema.describe('What they are about.'),
  count: z.int().min(1).describe('How many.'),
});
export type Withheld = z.infer<typeof withheldSchema>;

/** The file of the record without its texts of these kinds. */
export function sharedRecord({ jws, record }: OpenedRecord, kinds: Kinds): Uint8Array {
  const disclosures = entriesOf(record).flatMap((entry) =>
    disclosuresBut(entry, ({ kind }) => kinds.has(kind)),
  );
  return fileBytes(withDisclosures(jws, disclosures));
}

/** The same entries without some of their texts. */
export const withoutTexts = (
  entries: readonly StationEntry[],
  isWithheld: (entry: StationEntry, text: PersonalPlace) => boolean,
): readonly StationEntry[] =>
  entries
    .map((entry) => {
      const disclosures = disclosuresBut(entry, (text) => isWithheld(entry, text));
      return orThrow(readEntry(signedEntry(entry), disclosures, `entry ${entry.seq}`));
    })
    .filter(isStationEntry);

/** The same without those of some kinds. */
export const withoutKinds = (entries: readonly StationEntry[], kinds: Kinds): readonly StationEntry[] =>
  kinds.size === 0 ? entries : withoutTexts(entries, (_entry, { kind }) => kinds.has(kind));

/** A personal text that is there. */
export interface KeptText {
  /** Number of its entry in the log, and which of the entry's texts it is, from 0. */
  readonly entry: number;
  readonly text: number;
  readonly kind: PersonalKind;
  readonly content: string;
  readonly stream: string;
}

/** What is withheld of these entries, in the order of the kinds. */
export const withheldIn = (entries: readonly AnyEntry[]): readonly Withheld[] =>
  addedUp(
    entries.flatMap(saltedTexts).flatMap(({ kind, salt }) => (salt === null ? [{ kind, count: 1 }] : [])),
  );

/** One number for each kind that there is, in the order of the kinds. */
export function addedUp(all: readonly Withheld[]): readonly Withheld[] {
  const counts = new Map<PersonalKind, number>();
  for (const { kind, count } of all) counts.set(kind, (counts.get(kind) ?? 0) + count);
  return personalKindSchema.options.flatMap((kind) => {
    const count = counts.get(kind);
    return count === undefined ? [] : [{ kind, count }];
  });
}

export const entriesOf = ({ background, entries }: JobRecord): readonly AnyEntry[] => [
  ...background,
  ...entries,
];

/** The disclosures of an entry but for the texts that are withheld; texts are numbered from 0. */
export const disclosuresBut = (
  entry: AnyEntry,
  isWithheld: (text: PersonalPlace, number: number) => boolean,
): readonly string[] =>
  saltedTexts(entry).flatMap(({ salt, ...one }, i) =>
    salt === null || isWithheld(one, i) ? [] : [disclosureOf(salt, one.text)],
  );

/** The personal texts of an entry, each with the salt of its digest; null where it is withheld. */
export function saltedTexts(entry: AnyEntry): readonly (PersonalPlace & { readonly salt: string | null })[] {
  const salts = new Map(entry.concealed.map((one) => [one.place.join('.'), 'salt' in one ? one.salt : null]));
  return personalTexts(entry).map((one) => ({ ...one, salt: salts.get(one.place.join('.')) ?? null }));
}
