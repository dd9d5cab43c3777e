/** An invented station in memory: keys from published seeds, its own clock and salts, so that sealing twice gives the same bytes. */
import { createPrivateKey, hash, type KeyObject } from 'node:crypto';
import { isDeepStrictEqual } from 'node:util';
import { signCheckpoint } from '../../src/evidence/checkpoint.ts';
import { type End, entryHash, isJobEntry, isStationEntry, written } from '../../src/evidence/entry.ts';
import { type PublicJwk, publicJwk, thumbprint } from '../../src/evidence/jwk.ts';
import type { Role } from '../../src/evidence/jws.ts';
import { type AnyEntry, type Draft, type LogEntry, STATION_STREAM } from '../../src/evidence/log.ts';
import { treeOf, treeRoot } from '../../src/evidence/merkle.ts';
import { sealRecord } from '../../src/evidence/seal.ts';
import { type StationState, stationOf } from '../../src/evidence/station.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { stateSuccession } from '../../src/evidence/succession.ts';
import { commandOf } from '../../src/job/command-event.ts';
import type { JobEvent, JobEventOf } from '../../src/job/event.ts';
import { decodeSamples } from '../../src/pull/trace.ts';
import { salts } from '../evidence/entries.ts';

export const TECHNICIAN = 'Technician One';
const PROGRAM = { name: 'plugmark', version: '0.1.0' };
const DAY_MS = 86_400_000;
const FIRST_DAY = Date.parse('2026-03-02T08:00:00.000Z');

/** The private key of a published seed: good for nothing but this. */
export function keyOf(name: string): KeyObject {
  const seed = hash('sha256', `plugmark golden artefacts, key of ${name}: published, proves nothing`, 'hex');
  const der = Buffer.from(`302e020100300506032b657004220420${seed}`, 'hex');
  return createPrivateKey({ key: der, format: 'der', type: 'pkcs8' });
}

/** A line of a trust list. */
export const trusted = (key: KeyObject, name: string, role?: Role) => {
  const jwk = publicJwk(key);
  return { ...jwk, kid: thumbprint(jwk), name, ...(role !== undefined && { role }) };
};

export class GoldenStation {
  readonly #entries: AnyEntry[] = [];
  readonly #salt = salts();
  #key: KeyObject;
  #atMs = FIRST_DAY;

  constructor(name = 'the station') {
    this.#key = keyOf(name);
    const key = publicJwk(this.#key);
    this.record({ type: 'station-set-up', station: 'Example bay', key });
    this.record({ type: 'person-recorded', person: TECHNICIAN, key: publicJwk(keyOf('the technician')) });
  }

  get key(): KeyObject {
    return this.#key;
  }

  /** The day of the next job. */
  get today(): string {
    return this.#at().slice(0, 10);
  }

  record(event: StationEvent): void {
    this.#append(STATION_STREAM, { by: 'station', event }, 0);
  }

  /** From here on another key signs, named by the one before. */
  rotateKey(): void {
    const next = keyOf('the station, the second');
    const key: PublicJwk = publicJwk(next);
    const statement = stateSuccession({ log: this.state().origin, next: key, at: this.#at() }, this.#key);
    this.record({ type: 'key-rotated', key, statement });
    this.#key = next;
  }

  /** A whole job, each entry written when its last sample had come; the next job is on the next day. */
  work(job: string, events: readonly JobEvent[]): void {
    for (const event of events) if (event.type === 'job-opened') this.#bring(event);
    const startMs = this.#atMs;
    let monoUs = 1000;
    for (const event of events) {
      monoUs = Math.max(monoUs, lastUs(event));
      this.#atMs = startMs + monoUs / 1000;
      this.#append(`job:${job}`, { by: byOf(event), event }, monoUs);
    }
    this.#atMs = startMs + DAY_MS;
  }

  state(): StationState {
    const state = stationOf(this.stationEntries());
    if (state === null) throw new Error('no station');
    return state;
  }

  stationEntries = () => this.#entries.filter(isStationEntry);

  entries = (stream: string): readonly LogEntry[] =>
    this.#entries.filter(isJobEntry).filter((entry) => entry.stream === stream);

  tree = () => treeOf(this.#entries.map(entryHash));

  checkpoint(): string {
    const tree = this.tree();
    return signCheckpoint(
      { origin: this.state().origin, size: tree.size, root: treeRoot(tree, tree.size) },
      this.#key,
    );
  }

  seal(job: string, { technicianSigns = true } = {}): Uint8Array {
    const tree = this.tree();
    const signedAt = this.#at();
    const technician = { privateKey: keyOf('the technician'), role: 'technician' as const, signedAt };
    return sealRecord(
      {
        program: PROGRAM,
        station: this.stationEntries(),
        entries: this.entries(`job:${job}`),
        log: { tree, size: tree.size },
      },
      [{ privateKey: this.#key, role: 'station', signedAt }, ...(technicianSigns ? [technician] : [])],
    ).bytes;
  }

  /** Instruments and specification are recorded before the first job that they are used in as they are. */
  #bring({ instruments, order: { specification } }: JobEventOf<'job-opened'>): void {
    const { instruments: recorded } = this.state();
    for (const instrument of instruments)
      if (!isDeepStrictEqual(recorded.get(instrument.id), instrument))
        this.record({ type: 'instrument-recorded', instrument });
    const isKnown = this.stationEntries().some(
      ({ event }) =>
        event.type === 'specification-recorded' && isDeepStrictEqual(event.specification, specification),
    );
    if (!isKnown) this.record({ type: 'specification-recorded', specification });
  }

  #at = () => new Date(this.#atMs).toISOString();

  #append(stream: string, draft: Draft<JobEvent | StationEvent>, monoUs: number): void {
    const end: End = {
      seq: this.#entries.length,
      n: this.#entries.filter((e) => e.stream === stream).length,
    };
    for (const { entry } of written(end, stream, [draft], { at: this.#at(), monoUs }, this.#salt))
      this.#entries.push(entry);
  }
}

function byOf(event: JobEvent): string {
  if (event.type === 'instrument-overridden' || event.type === 'job-voided') return event.by;
  return event.type === 'job-opened' || commandOf(event) !== null ? 'technician' : 'station';
}

function lastUs(event: JobEvent): number {
  const samples = event.type === 'readings' ? decodeSamples(event) : null;
  return samples?.ok === true ? (samples.value.atUs.at(-1) ?? 0) : 0;
}
