/** The archive that a station has joined, and how it is reached. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { z } from 'zod';
import type { Line, Reply } from '../../archive/outbox.ts';
import { ProblemError } from '../../problem.ts';
import { shortText } from '../station/ask-witness.ts';
import { readJson } from '../station/json-file.ts';

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
      message: 'this station has joined no archive',
      next: 'Join one: plugmark archive join URL',
    });
  return readJson(path, archiveLinkSchema, 'link to the archive', 'what "plugmark archive join" writes');
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
    if (!(cause instanceof Error)) throw cause;
    const under =
      cause.cause instanceof Error && 'code' in cause.cause ? ` (${String(cause.cause.code)})` : '';
    const why = cause.name === 'TimeoutError' ? 'it did not answer in time' : `it cannot be reached${under}`;
    throw new ProblemError(
      {
        code: 'archive-not-reached',
        where: url,
        message: `nothing was shipped: ${why}`,
        next: 'Nothing is lost: the log is the outbox. What is missing is shipped the next time.',
      },
      { cause },
    );
  }
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
