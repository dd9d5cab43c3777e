/** The station as its log tells it: keys, people, instruments, and how it decided about technicians' signatures. */
import type { Instrument } from '../instrument/instrument.ts';
import { isWithheld } from '../personal.ts';
import { type Specification, withoutNames } from '../plug/specification.ts';
import { w } from '../words/catalogue.ts';
import { canonical } from './canonical.ts';
import { originOf } from './checkpoint.ts';
import { forgottenWith, type TextPlace } from './forgotten.ts';
import { type PublicJwk, thumbprint } from './jwk.ts';
import type { StationEntry } from './log.ts';
import type { StationEvent } from './station-event.ts';

export interface Revocation {
  readonly from: string;
  readonly reason: 'retired' | 'lost' | 'compromised';
}

/** A key that signs or signed for the station. */
export interface KeyOfStation {
  readonly kid: string;
  readonly jwk: PublicJwk;
  readonly since: string;
  /** By what the key before it named this one; null for the first, and for one that replaced a lost key. */
  readonly statement: string | null;
}

/** Somebody who works here. */
export interface Person {
  /** `WITHHELD` where it was forgotten or is not disclosed: nobody can tell whether two of those are one person. */
  readonly name: string;
  /** The key that this person signs with now; null for somebody who has none. */
  readonly key: PublicJwk | null;
  readonly earlierKeys: readonly PublicJwk[];
}

export interface StationState {
  readonly name: string;
  /** Names the log in checkpoints. */
  readonly origin: string;
  /** In the order of time; the last one signs. */
  readonly keys: readonly KeyOfStation[];
  /** By thumbprint, of the station's keys and of technicians'. */
  readonly revoked: ReadonlyMap<string, Revocation>;
  /** In the order in which they were recorded. */
  readonly people: readonly Person[];
  readonly technicians: 'sign' | 'do-not-sign' | null;
  readonly instruments: ReadonlyMap<string, Instrument>;
  /** Canonical text of every specification that was used here. */
  readonly specifications: ReadonlySet<string>;
  /** Checkpoints over entries that the station states to have lost. */
  readonly lost: readonly { readonly size: number; readonly root: string }[];
}

/** Folds the station's stream; null before it was set up. Throws where it does not begin with that. */
export function stationOf(entries: readonly Pick<StationEntry, 'event' | 'at'>[]): StationState | null {
  let state: StationState | null = null;
  for (const { event, at } of entries) state = next(state, event, at);
  return state;
}

function next(state: StationState | null, event: StationEvent, at: string): StationState {
  if (event.type === 'station-set-up') {
    if (state !== null) throw new Error(w`the station was set up twice`);
    return {
      name: event.station,
      origin: originOf(thumbprint(event.key), event.domain),
      keys: [keyOf(event.key, at, null)],
      revoked: new Map(),
      people: [],
      technicians: null,
      instruments: new Map(),
      specifications: new Set(),
      lost: [],
    };
  }
  if (state === null) throw new Error(w`the station was never set up`);
  switch (event.type) {
    case 'station-renamed':
      return { ...state, name: event.station };
    case 'key-rotated':
      return withKey(state, keyOf(event.key, at, event.statement));
    case 'key-replaced':
      return withKey(state, keyOf(event.key, at, null));
    case 'key-revoked':
      return { ...state, revoked: new Map(state.revoked).set(event.kid, event) };
    case 'person-recorded':
      return { ...state, people: withPerson(state.people, event.person, event.key) };
    case 'technicians-decided':
      return { ...state, technicians: event.technicians };
    case 'instrument-recorded':
      return {
        ...state,
        instruments: new Map(state.instruments).set(event.instrument.id, event.instrument),
      };
    case 'specification-recorded':
      return {
        ...state,
        specifications: new Set(state.specifications).add(canonical(withoutNames(event.specification))),
      };
    case 'entries-lost':
      return { ...state, lost: [...state.lost, ...event.checkpoints] };
    case 'as-found-recorded':
    case 'assessment-made':
    case 'item-decided':
    case 'assessment-closed':
    case 'certificate-kept':
    case 'texts-forgotten':
    case 'gauge-study-started':
    case 'gauge-study-read':
    case 'gauge-study-taken-back':
    case 'gauge-study-dropped':
    case 'gauge-study-finished':
      return state;
  }
}

/** Each key signs once, from one time to another: one that came back would be before and behind the same others. */
function withKey(state: StationState, key: KeyOfStation): StationState {
  if (state.keys.some(({ kid }) => kid === key.kid)) throw new Error('a key that was changed came back');
  return { ...state, keys: [...state.keys, key] };
}

/** A name that is withheld is nobody's: each key under one stays by itself, so that it can still be revoked. */
function withPerson(people: readonly Person[], name: string, key: PublicJwk | null): readonly Person[] {
  if (isWithheld(name)) return key === null ? people : [...people, { name, key, earlierKeys: [] }];
  const known = people.find((person) => person.name === name);
  if (known === undefined) return [...people, { name, key, earlierKeys: [] }];
  const now = { name, key, earlierKeys: keysOf(known) };
  return people.map((person) => (person === known ? now : person));
}

/** All keys that the log names for a person, the one of now last. */
export const keysOf = ({ key, earlierKeys }: Person): readonly PublicJwk[] =>
  key === null ? earlierKeys : [...earlierKeys, key];

/** Who works here, without those whose names are withheld. */
export const namesOf = ({ people }: StationState): readonly string[] =>
  people.flatMap(({ name }) => (isWithheld(name) ? [] : [name]));

/** Null for somebody whom the log does not name, and for a name that is withheld. */
export const personNamed = ({ people }: StationState, name: string): Person | null =>
  (isWithheld(name) ? undefined : people.find((person) => person.name === name)) ?? null;

const keyOf = (jwk: PublicJwk, since: string, statement: string | null): KeyOfStation => ({
  kid: thumbprint(jwk),
  jwk,
  since,
  statement,
});

/** What a job brings that the station's stream does not hold yet: to be recorded before the job is opened. */
export function newsOf(
  state: StationState,
  job: {
    readonly station: string;
    readonly technician: string;
    readonly instruments: readonly Instrument[];
    readonly specification: Specification;
  },
): readonly StationEvent[] {
  const { station, technician, instruments, specification } = job;
  const news: StationEvent[] = [];
  if (station !== state.name) news.push({ type: 'station-renamed', station });
  if (personNamed(state, technician) === null)
    news.push({ type: 'person-recorded', person: technician, key: null });
  for (const instrument of instruments) {
    const known = state.instruments.get(instrument.id);
    if (known === undefined || canonical(known) !== canonical(instrument))
      news.push({ type: 'instrument-recorded', instrument });
  }
  if (!state.specifications.has(canonical(withoutNames(specification))))
    news.push({ type: 'specification-recorded', specification });
  return news;
}

/**
 * The entries of the station's stream that a record of this job must hold to stand by itself: its keys, the technician's
 * key, what was decided about signing, and the instruments as they stood when the job was opened.
 */
export function backgroundOf(
  entries: readonly StationEntry[],
  job: {
    readonly technician: string;
    /** Where the log has the name of the technician. */
    readonly technicianAt: TextPlace;
    readonly instruments: readonly Instrument[];
    readonly specification: Specification;
    readonly openedSeq: number;
  },
): readonly StationEntry[] {
  const latest = new Map<string, number>();
  for (const { seq, event } of entries)
    if (event.type === 'instrument-recorded' && seq < job.openedSeq) latest.set(event.instrument.id, seq);
  const wanted = new Set(job.instruments.map(({ id }) => latest.get(id)));
  const written = canonical(withoutNames(job.specification));
  const forgotten = forgottenWith(entries, job.technicianAt);
  return entries.filter(({ seq, event }) => {
    if (event.type === 'instrument-recorded') return wanted.has(seq);
    if (event.type === 'person-recorded')
      return isWithheld(event.person) ? forgotten.has(seq) : event.person === job.technician;
    // Once in a log; with it the entries around a job can be put back from records alone.
    if (event.type === 'specification-recorded')
      return seq < job.openedSeq && canonical(withoutNames(event.specification)) === written;
    return EXPLAINS_SIGNERS.has(event.type);
  });
}

const EXPLAINS_SIGNERS: ReadonlySet<StationEvent['type']> = new Set<StationEvent['type']>([
  'station-set-up',
  'station-renamed',
  'key-rotated',
  'key-replaced',
  'key-revoked',
  'technicians-decided',
  'entries-lost',
]);
