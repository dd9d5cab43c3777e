/** Fetches a log back from an archive into a new file, and believes nothing that does not lead to the signed checkpoint. */

import { Readable } from 'node:stream';
import { createGunzip } from 'node:zlib';
import type { CarvedEntry } from '../../../db/carve.ts';
import { writeLog } from '../../../db/new-log.ts';
import { MAX_REQUEST_BYTES } from '../../archive/bundle.ts';
import { type ReturnedHead, readReturnedHead, returnedEntry } from '../../archive/returned.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { watched } from '../terminal/progress.ts';
import { askSecret } from '../terminal/secret.ts';
import { archiveAt, notReached } from './archive-link.ts';

/** A line that is silent for so long is broken. */
const PATIENCE_MS = 120_000;
const ENTRIES_A_BATCH = 2000;

/** Writes the log to `out`, a new file. Problems: `archive-not-reached`, `archive-refused`. */
export async function fetchBack(url: string, out: string): Promise<void> {
  const archive = await archiveAt(url);
  const token = (await askSecret('enrolment', w`One-time token of ${safeLine(archive)}: `))?.trim() ?? '';
  const lines = linesOf(await answerOf(url, token), url);
  const first = await lines.next();
  const head = first.done === true ? null : readReturnedHead(first.value);
  if (head === null) throw new ProblemError(notALog(url));
  const watch = watched(w`entries fetched`);
  const { size, checkpoints } = await writeLog(out, entriesIn(lines, head.entries, url), {
    notes: [head.note],
    written: (count) => watch(count, head.entries),
  });
  if (size !== head.entries || !isWhole(checkpoints, head)) throw new ProblemError(notALog(url));
}

const isWhole = (checkpoints: Awaited<ReturnType<typeof writeLog>>['checkpoints'], head: ReturnedHead) =>
  checkpoints.length === 1 &&
  checkpoints.every(({ kind, size }) => kind === 'extends' && size === head.entries);

async function answerOf(url: string, token: string): Promise<AsyncIterable<Uint8Array>> {
  const broken = new AbortController();
  const response = await fetch(`${url.replace(/\/$/, '')}/return`, {
    method: 'POST',
    body: JSON.stringify({ token }),
    headers: { 'content-type': 'application/json' },
    redirect: 'error',
    signal: broken.signal,
  }).catch((cause: unknown) => {
    throw notReached(url, cause);
  });
  if (response.status !== 200 || response.body === null)
    throw new ProblemError({
      code: 'archive-refused',
      where: url,
      message: w`the archive gave nothing back: it answered ${response.status}`,
      next: w`Ask whoever runs the archive for a new token (plugmark archive give-back): each is good once.`,
    });
  return patiently(response.body, broken);
}

/** Breaks off where nothing comes for long. */
async function* patiently(
  body: AsyncIterable<Uint8Array>,
  broken: AbortController,
): AsyncIterable<Uint8Array> {
  const silent = () => broken.abort(new DOMException(w`silent for too long`, 'TimeoutError'));
  let timer = setTimeout(silent, PATIENCE_MS);
  try {
    for await (const part of body) {
      clearTimeout(timer);
      yield part;
      timer = setTimeout(silent, PATIENCE_MS);
    }
  } finally {
    clearTimeout(timer);
  }
}

/** The lines of what is packed; none is longer than a request with it could have been. */
async function* linesOf(packed: AsyncIterable<Uint8Array>, url: string): AsyncGenerator<string, void> {
  const text = Readable.from(packed).pipe(createGunzip());
  let parts: Uint8Array[] = [];
  let bytes = 0;
  try {
    for await (const part of text as AsyncIterable<Uint8Array>) {
      let from = 0;
      for (let end = part.indexOf(LINE_FEED); end >= 0; end = part.indexOf(LINE_FEED, from)) {
        yield Buffer.concat([...parts, part.subarray(from, end)]).toString('utf8');
        parts = [];
        bytes = 0;
        from = end + 1;
      }
      parts.push(part.subarray(from));
      bytes += part.length - from;
      if (bytes > MAX_REQUEST_BYTES) throw new ProblemError(notALog(url));
    }
  } catch (cause) {
    throw cause instanceof ProblemError ? cause : new ProblemError(brokenOff(url), { cause });
  }
}
const LINE_FEED = 0x0a;

/** As many as were announced: one more, and nothing further is read or written. */
async function* entriesIn(
  lines: AsyncGenerator<string, void>,
  announced: number,
  url: string,
): AsyncIterable<readonly CarvedEntry[]> {
  let batch: CarvedEntry[] = [];
  let body: string | null = null;
  let count = 0;
  for await (const line of lines) {
    if (body === null) {
      body = line;
      continue;
    }
    const entry = returnedEntry(body, line);
    count += 1;
    if (entry === null || count > announced) throw new ProblemError(notALog(url));
    batch.push({ ...entry, hash: Buffer.from(entry.hash) });
    body = null;
    if (batch.length < ENTRIES_A_BATCH) continue;
    yield batch;
    batch = [];
  }
  yield batch;
}

const brokenOff = (url: string): Problem => ({
  code: 'archive-not-reached',
  where: url,
  message: w`its answer broke off, or is not what an archive sends`,
  next: w`Ask whoever runs the archive for a new token (plugmark archive give-back): each is good once. Nothing was put in place.`,
});

const notALog = (url: string): Problem => ({
  code: 'archive-refused',
  where: url,
  message: w`what the archive gave back is not the log that was signed, or not all of it`,
  next: w`Have it looked at by whoever runs the archive: plugmark archive check. Nothing was put in place.`,
});
