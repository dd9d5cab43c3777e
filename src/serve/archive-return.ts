/** Gives a station back what it shipped, by a one-time token that whoever runs the archive made for that log. */
import { pipeline, Readable } from 'node:stream';
import { createGzip } from 'node:zlib';
import { ENTRIES_A_BUNDLE, entriesText } from '../archive/bundle.ts';
import { tokenHash } from '../archive/enrolment.ts';
import { entriesKept } from '../archive/kept-log.ts';
import { returnedHead, returnRequestSchema } from '../archive/returned.ts';
import type { ArchiveStore } from '../archive/store.ts';

interface GivenBack {
  readonly log: string;
  /** Packed by gzip. */
  readonly stream: Readable;
}

/** Null for a token that is not valid, or not for this. A token is gone once it was tried: who broke off asks for another. */
export async function giveBack(
  { store, nowS }: { readonly store: ArchiveStore; readonly nowS: () => number },
  body: unknown,
): Promise<GivenBack | null> {
  const request = returnRequestSchema.safeParse(body);
  if (!request.success) return null;
  const use = await store.takeToken(tokenHash(request.data.token), new Date(nowS() * 1000).toISOString());
  const log = use?.use === 'restore' ? await store.log(use.log) : null;
  if (log === null || log.head === null) return null;
  const { note, size } = log.head;
  const text = Readable.from(textOf(store, log.id, { note, entries: size }));
  // Where either end breaks, both end: a reader that hangs up leaves nothing open, and a bundle that cannot be read cuts the
  // answer short, which the station takes for no log.
  const stream = createGzip();
  pipeline(text, stream, () => undefined);
  return { log: log.id, stream };
}

/** Exactly the entries of the checkpoint: what came after it is not proven whole. */
async function* textOf(
  store: ArchiveStore,
  id: string,
  head: { readonly note: string; readonly entries: number },
): AsyncIterable<string> {
  yield returnedHead(head);
  for await (const bundle of store.bundles(id, 0)) {
    const left = head.entries - bundle.number * ENTRIES_A_BUNDLE;
    if (left <= 0) return;
    const entries = entriesKept(bundle);
    if (entries === null) throw new Error(`bundle ${bundle.number} cannot be read`);
    yield entriesText(entries.slice(0, left));
  }
}
