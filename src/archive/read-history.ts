/** Brings the history of a log up to what is cosigned of it, part by part, and judges its jobs; where both lie is a port. */
import { STATION_STREAM } from '../evidence/log.ts';
import { MAX_RECORD_BYTES } from '../evidence/record.ts';
import { ENTRIES_A_BUNDLE } from './bundle.ts';
import { aboutEntry, isOfStation, type NumberedEntry } from './entries.ts';
import { type HistoryMark, type HistoryPart, type HistoryStore, type JobPlace, keptJob } from './history.ts';
import { type JobJudged, judged } from './judged.ts';
import { entriesKept, type KeptBundle } from './kept-log.ts';

/** What is read at once: no more than this, and one job that began before it, is in memory. */
const BUNDLES_A_PART = 16;
const LENGTH_OF_A_PART = 64 << 20;
/** A job whose entries are longer has no record. Whoever has the key of a log may sign one that no memory holds. */
const MOST_OF_A_JOB = MAX_RECORD_BYTES;

/** Where the bundles of a log are. */
export interface BundleStore {
  bundles(log: string, from: number): AsyncIterable<KeptBundle>;
  /** Of these numbers those that are there, in their order. */
  bundlesOf(log: string, numbers: readonly number[]): Promise<readonly KeptBundle[]>;
  readonly history: HistoryStore;
}

export async function bringUpToDate(store: BundleStore, log: string): Promise<void> {
  for (;;) {
    const mark = await store.history.mark(log);
    if (mark === null || mark.read >= mark.size) return;
    // Where somebody else was faster, or the log forgot something meanwhile, it begins again from what is there.
    await store.history.write(log, mark, await nextPart(store, log, mark));
  }
}

async function nextPart(store: BundleStore, log: string, mark: HistoryMark): Promise<HistoryPart> {
  const first = Math.floor(mark.read / ENTRIES_A_BUNDLE);
  const fresh: NumberedEntry[] = [];
  let to = mark.read;
  for (
    let [number, length] = [first, 0];
    to < mark.size && number < first + BUNDLES_A_PART && length < LENGTH_OF_A_PART;
    number++
  ) {
    to = Math.min(mark.size, (number + 1) * ENTRIES_A_BUNDLE);
    for (const entry of entriesOf(await store.bundlesOf(log, [number]))) {
      if (entry.seq <= mark.read || entry.seq > to) continue;
      fresh.push(entry);
      length += lengthOf(entry);
    }
    if (fresh.length !== to - mark.read) throw new Error(`entries of the log ${log} are missing`);
  }
  const places = new Map<string, JobPlace>();
  const own = new Map<string, NumberedEntry[]>();
  const station = [];
  for (const entry of fresh) {
    const about = aboutEntry(entry);
    if (about === null) continue;
    if (about.stream === STATION_STREAM) {
      if (isOfStation(entry)) station.push(entry);
      continue;
    }
    places.set(about.stream, withEntry(places.get(about.stream), about.stream, entry.seq));
    if (about.isSamples) continue;
    const list = own.get(about.stream);
    if (list === undefined) own.set(about.stream, [entry]);
    else list.push(entry);
  }
  const jobs = [];
  const before = await store.history.places(log, [...places.keys()]);
  for (const [stream, place] of places) {
    const there = before.find((one) => one.stream === stream);
    const whole = there === undefined ? place : joined(there, place);
    const earlier = there === undefined ? [] : await entriesIn(store, log, there, mark.read);
    jobs.push(
      earlier === null ? { ...whole, job: null } : keptJob(whole, [...earlier, ...(own.get(stream) ?? [])]),
    );
  }
  return { read: to, jobs, station };
}

function withEntry(place: JobPlace | undefined, stream: string, seq: number): JobPlace {
  const bundle = Math.floor((seq - 1) / ENTRIES_A_BUNDLE);
  if (place === undefined) return { stream, opened: seq, last: seq, bundles: [bundle] };
  const bundles = place.bundles.at(-1) === bundle ? place.bundles : [...place.bundles, bundle];
  return { ...place, last: seq, bundles };
}

const joined = (earlier: JobPlace, later: JobPlace): JobPlace => ({
  ...earlier,
  last: later.last,
  bundles: [...new Set([...earlier.bundles, ...later.bundles])],
});

/** The entries of a job that the history has, without its samples; null where they are too long. */
const entriesIn = (store: BundleStore, log: string, place: JobPlace, read: number) =>
  entriesWhere(store, log, place, (entry) => {
    const about = entry.seq <= read ? aboutEntry(entry) : null;
    return about?.stream === place.stream && !about.isSamples;
  });

/** One bundle after the other, for a job may lie in any number of them. */
async function entriesWhere(
  store: BundleStore,
  log: string,
  { bundles }: JobPlace,
  isWanted: (entry: NumberedEntry) => boolean,
): Promise<readonly NumberedEntry[] | null> {
  const wanted: NumberedEntry[] = [];
  let length = 0;
  for (const number of bundles)
    for (const entry of entriesOf(await store.bundlesOf(log, [number]))) {
      if (!isWanted(entry)) continue;
      wanted.push(entry);
      length += lengthOf(entry);
      if (length > MOST_OF_A_JOB) return null;
    }
  return wanted;
}

const lengthOf = ({ body, disclosures }: NumberedEntry): number =>
  disclosures.reduce((length, one) => length + one.length, body.length);

function entriesOf(bundles: readonly KeptBundle[]): readonly NumberedEntry[] {
  return bundles.flatMap((bundle) => {
    const entries = entriesKept(bundle);
    if (entries === null) throw new Error(`bundle ${bundle.number} cannot be read`);
    return entries.map((entry, i) => ({ ...entry, seq: bundle.number * ENTRIES_A_BUNDLE + i + 1 }));
  });
}

/** Jobs that are read at once before they are judged. */
const JOBS_AT_ONCE = 50;

/**
 * Judges the jobs of a log that wait for it. `pause` is waited for behind each, so that whoever ships meanwhile is answered;
 * it says whether to go on.
 */
export async function judgeWaiting(
  store: BundleStore,
  log: string,
  pause: () => Promise<boolean> | boolean = () => true,
): Promise<readonly (JobPlace & { readonly judged: JobJudged })[]> {
  await bringUpToDate(store, log);
  const done = [];
  for (;;) {
    const waiting = await store.history.toJudge(log, JOBS_AT_ONCE);
    if (waiting.length === 0) return done;
    for (const place of waiting) {
      const entries = await allEntriesOf(store, log, place);
      const outcome: JobJudged = entries === null ? { as: 'too-long' } : judged(entries);
      await store.history.putJudged(log, place, outcome);
      done.push({ ...place, judged: outcome });
      if (!(await pause())) return done;
    }
  }
}

const allEntriesOf = (store: BundleStore, log: string, place: JobPlace) =>
  entriesWhere(
    store,
    log,
    place,
    (entry) => entry.seq <= place.last && aboutEntry(entry)?.stream === place.stream,
  );
