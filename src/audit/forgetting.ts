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

/** A text that goes with another one, because it holds it among other words. */
export const isFree = ({ kind }: KeptText): boolean => FREE.has(kind);

/**
 * The texts that are to go: each of that kind that says just this, whatever its capitals, spaces and hyphens, and every free
 * text in which it stands as words of its own.
 */
export function wantedTexts(wanted: Wanted, texts: Iterable<KeptText>): readonly KeptText[] {
  const { whole, within } = patternsOf(wanted);
  const found: KeptText[] = [];
  for (const one of texts) {
    const content = plain(one.content);
    const isIt = one.kind === wanted.kind && whole.test(content);
    if (isIt || (isFree(one) && within.test(content))) found.push(one);
  }
  return found;
}

/** Whether it stands in a text as words of its own. */
export function standsIn(wanted: Wanted): (text: string) => boolean {
  const { within } = patternsOf(wanted);
  return (text) => within.test(plain(text));
}

/** Whether it stands in text, whatever is beside it there, as in the bytes of a database. */
export function standsAnywhere(wanted: Wanted): (text: string) => boolean {
  const { anywhere } = patternsOf(wanted);
  return (text) => anywhere.test(plain(text));
}

/** Members whose texts are made by the program from figures, and say nothing that somebody typed. */
const MADE: ReadonlySet<string> = new Set([
  '_sd',
  'salt',
  'key',
  'kid',
  'statement',
  'digest',
  'counts',
  'times',
]);
const TIME = /^\d{4}-\d\d-\d\d(?:T[\d:.]+Z)?$/;

/** The texts in what is signed of an entry in which something could have been typed: there nothing can be forgotten. */
export function textsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return TIME.test(value) ? [] : [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, member]) => (MADE.has(name) ? [] : textsIn(member)));
}

/** One writing for what looks alike. */
const plain = (text: string) => text.normalize('NFKC');

/** What people write between the parts of a number or a name, or leave out. */
const BETWEEN = '\\s\\p{Pd}\\p{Cf}';
const BETWEEN_SIGNS = `[${BETWEEN}._/·]`;
const BETWEEN_NAMES = `[${BETWEEN}]`;

const isName = (kind: ForgettableKind) => kind === 'person' || kind === 'customer';

/** What has to be there, in order. */
const partsOf = ({ kind, text }: Wanted): readonly string[] =>
  isName(kind)
    ? plain(text)
        .split(new RegExp(`${BETWEEN_NAMES}+`, 'u'))
        .filter((part) => part !== '')
    : [...plain(text).replace(new RegExp(BETWEEN_SIGNS, 'gu'), '')];

function patternsOf(wanted: Wanted) {
  const between = isName(wanted.kind) ? `${BETWEEN_NAMES}+` : `${BETWEEN_SIGNS}*`;
  const written = partsOf(wanted)
    .map((part) => part.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&'))
    .join(between);
  return {
    whole: new RegExp(`^[${BETWEEN}]*${written}[${BETWEEN}]*$`, 'iu'),
    within: new RegExp(`(?<![\\p{L}\\p{N}])${written}(?![\\p{L}\\p{N}])`, 'iu'),
    anywhere: new RegExp(written, 'iu'),
  };
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
export const isNothing = (wanted: Wanted): boolean =>
  partsOf(wanted).length === 0 || wanted.text.includes(WITHHELD);
