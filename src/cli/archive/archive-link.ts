/** The archive that a station has joined, and how it is reached. */

import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { z } from 'zod';
import { jsonIn } from '../../archive/json.ts';
import { aboutSchema } from '../../archive/message.ts';
import type { Line, Reply } from '../../archive/outbox.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { shortText } from '../station/ask-witness.ts';
import { readJson } from '../station/json-file.ts';
import { isLoopback } from '../witness/listening.ts';

export const archiveLinkSchema = z.strictObject({
  form: z.literal('plugmark/archive-link/1'),
  url: z.url({ protocol: /^https?$/ }).max(400),
  archive: z.string().min(1).max(200),
  log: z.string().max(40),
  vkeys: z.array(z.string().max(4000)).min(1).max(8),
});
export type ArchiveLink = z.infer<typeof archiveLinkSchema>;

const linkPath = (folder: string) => join(folder, 'archive-link.json');

export { linkPath };

export function archiveLink(folder: string): Promise<ArchiveLink> {
  const path = linkPath(folder);
  if (!existsSync(path))
    throw new ProblemError({
      code: 'archive-not-joined',
      where: folder,
      message: w`this station has joined no archive`,
      next: w`Join one: plugmark archive join URL`,
    });
  return readJson(path, archiveLinkSchema, w`link to the archive`, w`what "plugmark archive join" writes`);
}

/** A request with many entries may take its time on a slow line. */
const PATIENCE_MS = 120_000;
/** Nothing that an archive has to say is longer: a note with the cosignatures of some witnesses. */
const MOST_BYTES = 256_000;

/** Asks the archive; what it answers is text. Problem: `archive-not-reached`. */
export async function ask(
  url: string,
  path: string,
  body?: { readonly type: string; readonly content: string | Uint8Array<ArrayBuffer> },
): Promise<Reply> {
  try {
    const response = await fetch(`${url.replace(/\/$/, '')}${path}`, {
      ...(body !== undefined && {
        method: 'POST',
        body: body.content,
        headers: { 'content-type': body.type },
      }),
      redirect: 'error',
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    return { status: response.status, text: await shortText(response, MOST_BYTES) };
  } catch (cause) {
    throw notReached(url, cause);
  }
}

/** Why it did not answer, as a problem; what is no error of the network stays what it is. */
export function notReached(url: string, cause: unknown): unknown {
  if (!(cause instanceof Error)) return cause;
  const under = cause.cause instanceof Error && 'code' in cause.cause ? ` (${String(cause.cause.code)})` : '';
  const why = cause.name === 'TimeoutError' ? w`it did not answer in time` : w`it cannot be reached${under}`;
  return new ProblemError(
    {
      code: 'archive-not-reached',
      where: url,
      message: why,
      next: w`Try again when it can be reached. Nothing is lost: the log of a station is its outbox, and an archive keeps what it has.`,
    },
    { cause },
  );
}

/** The name of the archive at this address. Problems: `archive-not-reached`, `archive-refused`, `option-not-valid` where it would be asked in the clear. */
export async function archiveAt(url: string): Promise<string> {
  refuseInClear(url);
  const about = aboutSchema.safeParse(jsonIn((await ask(url, '/')).text));
  if (about.success) return about.data.archive;
  throw new ProblemError({
    code: 'archive-refused',
    where: url,
    message: w`what answers there is no archive`,
    next: w`Take the address that "plugmark archive serve" printed.`,
  });
}

/** The line on which a station ships. */
export function lineTo({ url, log }: ArchiveLink, shipped: Line['shipped']): Line {
  const at = (path: string) => `/logs/${log}/${path}`;
  return {
    checkpoint: (content) => ask(url, at('add-checkpoint'), { type: 'text/plain; charset=utf-8', content }),
    entries: (text) =>
      ask(url, at('entries'), { type: 'application/gzip', content: Uint8Array.from(gzipSync(text)) }),
    key: (statement) =>
      ask(url, at('key'), { type: 'application/json', content: JSON.stringify({ statement }) }),
    shipped,
  };
}

/** Plates, names and the token would go over the network for anybody to read. */
function refuseInClear(url: string): void {
  const at = URL.canParse(url) ? new URL(url) : null;
  if (
    at?.protocol === 'https:' ||
    (at?.protocol === 'http:' && isLoopback(at.hostname.replace(/^\[|\]$/g, '')))
  )
    return;
  throw new ProblemError({
    code: 'option-not-valid',
    where: 'URL',
    message: w`a station joins an archive over https alone, but for one on this computer`,
    next: w`Take the address that begins with https://.`,
  });
}
