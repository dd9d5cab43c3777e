/**
 * What a station ships to its archive, and in which order. The log itself is the outbox: what the archive has not got is
 * behind the size that it names. Whatever breaks off, the next attempt goes on from there.
 */
import { consistencyProof, type Subtrees, setProof } from '../evidence/merkle.ts';
import { addCheckpointText } from '../evidence/witness.ts';
import {
  BUNDLES_A_REQUEST,
  type Bundle,
  ENTRIES_A_BUNDLE,
  entriesOf,
  type ShippedEntry,
  shipmentText,
} from './bundle.ts';
import { nextSchema } from './message.ts';

/** The log of the station, as far as a checkpoint goes that is signed and kept. */
export interface Outbox {
  readonly size: number;
  /** The checkpoint of that size, signed. */
  readonly note: string;
  readonly tree: Subtrees;
  /** The entries from the index `from` on, before the index `to`. */
  readonly entries: (from: number, to: number) => readonly ShippedEntry[];
  /** The statements by which each key of the log names the next one, the oldest first. */
  readonly successions: readonly string[];
}

export interface Reply {
  readonly status: number;
  readonly text: string;
}

/** How the archive is reached. */
export interface Line {
  readonly checkpoint: (text: string) => Promise<Reply>;
  readonly entries: (text: string) => Promise<Reply>;
  readonly key: (statement: string) => Promise<Reply>;
  /** Hears how far it is. */
  readonly shipped: (entries: number, of: number) => void;
}

export type Shipped =
  /** All is there; the note has the archive's cosignatures. */
  | { readonly as: 'kept'; readonly note: string }
  /** The archive has more of this log than the station: an old copy of the log was put back. */
  | { readonly as: 'ahead'; readonly size: number }
  /** What the archive has of this log is not what the station has. */
  | { readonly as: 'parted'; readonly why: string }
  | { readonly as: 'refused'; readonly status: number; readonly why: string };

/** A request is sent as soon as its bundles hold so many characters. */
const ENOUGH_CHARACTERS = 12 << 20;

/** Ships what is missing. `known` is the size that the archive named last; a wrong one costs a request. */
export async function ship(outbox: Outbox, line: Line, known: number): Promise<Shipped> {
  const reply = await offered(outbox, line, Math.min(known, outbox.size));
  if (reply.status === 200) return { as: 'kept', note: reply.text };
  // An old copy from before a new key is refused for its key; that the archive has more says why.
  if (reply.status === 403 && known > outbox.size) return { as: 'ahead', size: known };
  if (reply.status !== 202) return notTaken(outbox, reply);
  return shipEntries(outbox, line, nextIn(reply));
}

/** Offers the checkpoint from the size that the archive has; with the keys since, where it does not know the newest. */
async function offered(outbox: Outbox, line: Line, known: number): Promise<Reply> {
  const { size, note, tree, successions } = outbox;
  const offer = (from: number) =>
    line.checkpoint(addCheckpointText(from, consistencyProof(tree, from, size), note));
  const elsewhere = (reply: Reply): Reply | Promise<Reply> => {
    const has = reply.status === 409 ? Number(reply.text) : Number.NaN;
    return Number.isSafeInteger(has) && has >= 0 && has <= size ? offer(has) : reply;
  };
  const first = await elsewhere(await offer(known));
  if (first.status !== 403 || successions.length === 0) return first;
  for (const statement of successions) await line.key(statement);
  return elsewhere(await offer(known));
}

function notTaken({ size }: Outbox, { status, text }: Reply): Shipped {
  if (status === 409 && Number(text) > size) return { as: 'ahead', size: Number(text) };
  if (status === 422 || status === 423) return { as: 'parted', why: text.trim() };
  return { as: 'refused', status, why: text.trim() };
}

async function shipEntries(outbox: Outbox, line: Line, from: number): Promise<Shipped> {
  for (let next = from; ; ) {
    line.shipped(next, outbox.size);
    const reply = await line.entries(shipmentText({ size: outbox.size, bundles: bundlesFrom(outbox, next) }));
    if (reply.status === 200) {
      line.shipped(outbox.size, outbox.size);
      return { as: 'kept', note: reply.text };
    }
    const goesOn = reply.status === 202 ? nextIn(reply) : next;
    if (goesOn <= next) return notTaken(outbox, reply);
    next = goesOn;
  }
}

/** The bundles from the one on that has the entry with this index. */
export function bundlesFrom({ size, tree, entries }: Outbox, index: number): readonly Bundle[] {
  const bundles: Bundle[] = [];
  let characters = 0;
  for (let number = Math.floor(index / ENTRIES_A_BUNDLE); bundles.length < BUNDLES_A_REQUEST; number++) {
    const count = entriesOf(number, size);
    if (count === 0 || characters >= ENOUGH_CHARACTERS) break;
    const from = number * ENTRIES_A_BUNDLE;
    const shipped = entries(from, from + count);
    const indexes = Array.from({ length: count }, (_, i) => from + i);
    bundles.push({ number, entries: shipped, proof: setProof(tree, indexes, size) });
    characters += shipped.reduce((sum, { body }) => sum + body.length, 0);
  }
  return bundles;
}

function nextIn({ text }: Reply): number {
  try {
    return nextSchema.parse(JSON.parse(text)).next;
  } catch {
    return -1;
  }
}
