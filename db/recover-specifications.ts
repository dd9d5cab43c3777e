/**
 * Entries that no record holds and each proves: those by which the log came to know the specification of a job. Each was
 * written with the first entry of its job, right before it, and says again what that says.
 */
import { readCheckpoint } from '../src/evidence/checkpoint.ts';
import { type AnyEntry, STATION_STREAM } from '../src/evidence/log.ts';
import { treeOf, treeRoot } from '../src/evidence/merkle.ts';
import type { CarvedEntry } from './carve.ts';
import { type FromRecord, fromRecord } from './recover-records.ts';

type EntryAt = (seq: number) => CarvedEntry | null;

/** By number, as far as all before them is known; one counts only if the proof of a record holds with it. */
export function specificationsProven(
  records: readonly FromRecord[],
  entryAt: EntryAt,
): ReadonlyMap<number, CarvedEntry> {
  const opened = new Map(
    records.flatMap(({ entries }) =>
      entries.flatMap((entry) => (entry.event.type === 'job-opened' ? [[entry.seq, entry] as const] : [])),
    ),
  );
  const rebuilt = new Map<number, CarvedEntry>();
  if (opened.size === 0) return rebuilt;
  let n = 0;
  for (let seq = 1; ; seq++) {
    const there = entryAt(seq);
    const entry = there ?? specificationBefore(opened.get(seq + 1), n + 1);
    if (entry === null) break;
    if (there === null) rebuilt.set(seq, entry);
    if (entry.stream === STATION_STREAM) n = entry.n;
  }
  if (rebuilt.size === 0) return rebuilt;
  const entryOrRebuilt: EntryAt = (seq) => entryAt(seq) ?? rebuilt.get(seq) ?? null;
  const proofs = records.map(proofOf);
  return new Map([...rebuilt].filter(([seq]) => proofs.some((proof) => proves(proof, seq, entryOrRebuilt))));
}

function specificationBefore(opened: AnyEntry | undefined, n: number): CarvedEntry | null {
  if (opened?.event.type !== 'job-opened') return null;
  const { v, seq, at, monoUs, event } = opened;
  const recorded = { type: 'specification-recorded', specification: event.order.specification } as const;
  return fromRecord({
    v,
    seq: seq - 1,
    stream: STATION_STREAM,
    n,
    at,
    monoUs,
    by: 'station',
    event: recorded,
  });
}

/** Leaves [from, to) that a record does not hold, and the hash that its proof has for all of them. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly hash: string;
}

/** The record's signatures hold, so that each hash of its proof is the log's own. */
function proofOf({ entries, checkpoint, proof }: FromRecord): readonly Stretch[] {
  const read = readCheckpoint(checkpoint, 'a checkpoint of a record');
  if (!read.ok) return [];
  const held = entries.map(({ seq }) => seq - 1).sort((a, b) => a - b);
  const stretches: Stretch[] = [];
  const visit = (from: number, to: number, indexes: readonly number[]) => {
    if (indexes.length === 0) stretches.push({ from, to, hash: proof[stretches.length] ?? '' });
    else if (to - from > 1) {
      const middle = from + 2 ** Math.ceil(Math.log2(to - from) - 1);
      const cut = indexes.findIndex((index) => index >= middle);
      const left = cut < 0 ? indexes.length : cut;
      visit(from, middle, indexes.slice(0, left));
      visit(middle, to, indexes.slice(left));
    }
  };
  visit(0, read.value.size, held);
  return stretches;
}

function proves(proof: readonly Stretch[], seq: number, entryAt: EntryAt): boolean {
  const stretch = proof.find(({ from, to }) => from < seq && seq <= to);
  if (stretch === undefined) return false;
  const leaves: Buffer[] = [];
  for (let at = stretch.from + 1; at <= stretch.to; at++) {
    const entry = entryAt(at);
    if (entry === null) return false;
    leaves.push(entry.hash);
  }
  return treeRoot(treeOf(leaves), leaves.length).toString('base64') === stretch.hash;
}
