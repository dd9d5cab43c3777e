/** Fetches a log back from an archive into a new file, and believes nothing that does not lead to the signed checkpoint. */
import type { CarvedEntry } from '../../../db/carve.ts';
import { writeLog } from '../../../db/new-log.ts';
import { type ReturnedHead, readReturnedHead, returnedEntry } from '../../archive/returned.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { watched } from '../terminal/progress.ts';
import { askSecret } from '../terminal/secret.ts';
import { archiveAt, notReached } from './archive-link.ts';
import { linesOf, patiently } from './packed-lines.ts';

const ENTRIES_A_BATCH = 2000;

/** Writes the log to `out`, a new file. Problems: `archive-not-reached`, `archive-refused`. */
export async function fetchBack(url: string, out: string): Promise<void> {
  const archive = await archiveAt(url);
  const token = (await askSecret('enrolment', w`One-time token of ${safeLine(archive)}: `))?.trim() ?? '';
  const lines = linesOf(await answerOf(url, token), { broken: brokenOff(url), tooLong: notALog(url) });
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
