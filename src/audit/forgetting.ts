/** Which personal texts are meant when a vehicle, a person or a customer is to be forgotten, and what stands against it. */
import type { KeptText } from '../evidence/sharing.ts';
import { type PersonalKind, WITHHELD } from '../personal.ts';
import type { ImpactAssessment } from './impact-state.ts';
import type { AskedJob } from './questions.ts';
import { keptOf, type Retention } from './retention.ts';

/** What can be asked to be forgotten. Free text goes where it holds one of these. */
export type ForgettableKind = Extract<PersonalKind, 'plate' | 'vin' | 'fleet' | 'customer' | 'person'>;

export interface Wanted {
  readonly kind: ForgettableKind;
  readonly text: string;
}

/** Kinds of text in which anything may have been written. */
const FREE: ReadonlySet<PersonalKind> = new Set<PersonalKind>(['vehicle', 'customer', 'complaint', 'note']);

/**
 * The texts that are to go: each of that kind that says just this, whatever its capitals, spaces and hyphens, and every free
 * text in which it stands as words of its own.
 */
export function wantedTexts(wanted: Wanted, texts: Iterable<KeptText>): readonly KeptText[] {
  const [whole, within] = patternsOf(wanted);
  const found: KeptText[] = [];
  for (const one of texts) {
    const isIt = one.kind === wanted.kind && whole.test(one.content);
    if (isIt || (FREE.has(one.kind) && within.test(one.content))) found.push(one);
  }
  return found;
}

/** Text of any kind, or none of these, in which it stands: in what is signed nothing can be forgotten. */
export const stands = (wanted: Wanted, text: string): boolean => patternsOf(wanted)[1].test(text);

function patternsOf({ kind, text }: Wanted): readonly [whole: RegExp, within: RegExp] {
  const isName = kind === 'person' || kind === 'customer';
  const parts = isName ? text.trim().split(/\s+/) : [...text.replace(/[\s-]+/g, '')];
  const written = parts
    .map((part) => part.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&'))
    .join(isName ? '\\s+' : '[\\s-]*');
  return [
    new RegExp(`^\\s*${written}\\s*$`, 'iu'),
    new RegExp(`(?<![\\p{L}\\p{N}])${written}(?![\\p{L}\\p{N}])`, 'iu'),
  ];
}

/** A job whose texts are not to go yet, and why. */
export interface HeldJob {
  readonly job: string;
  readonly because: string;
}

/**
 * The jobs among them that something rests on: still open, in an impact assessment that is not closed, or inside the shop's
 * own retention time, where it has one. `today` is an ISO date.
 */
export function heldJobs(
  jobs: readonly AskedJob[],
  retention: Retention | null,
  impacts: readonly ImpactAssessment[],
  today: string,
): readonly HeldJob[] {
  const kept = keptOf(jobs, retention ?? { years: 1 }, impacts, today);
  return kept.flatMap(({ job, because, until }) => {
    if (because !== null) return [{ job, because }];
    return retention !== null && until >= today ? [{ job, because: `it is to be kept until ${until}` }] : [];
  });
}

/** Nothing is to be forgotten by the sign that stands where something was. */
export const isNothing = ({ text }: Wanted): boolean =>
  text.replace(/[\s-]+/g, '') === '' || text === WITHHELD;
