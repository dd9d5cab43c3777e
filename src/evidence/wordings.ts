/** Pieces that many checks have in common. */
import { joined, type Sentence, sentence } from '../words/catalogue.ts';

/** What a fault says of itself, which is English for whoever reads it. */
export const reasonOf = (fault: unknown): string | Sentence =>
  fault instanceof Error ? fault.message : sentence`no reason known`;

/** The first of a list, and how many more there are. */
export const andMore = (some: Sentence, more: number): Sentence =>
  more <= 0 ? some : sentence`${some} and ${more} more`;

/** The first of so many findings, one behind the other, and how many more there are. */
export const firstOf = (all: readonly Sentence[], most: number): Sentence => {
  const some = joined(all.slice(0, most), '; ');
  return all.length <= most ? some : sentence`${some}; and ${all.length - most} more`;
};
