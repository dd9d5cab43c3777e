import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { asSealed, MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import type { TrustedTime } from '../../evidence/trust.ts';
import { inputName, readBytes } from '../../files/input.ts';
import { writeNew } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { openssl } from './openssl.ts';

const MAX_TOKEN_BYTES = 1 << 20;
const ANSWER_WITHIN_MS = 20_000;

/**
 * Asks a time-stamping authority (RFC 3161) for a token over a record as it was sealed, so that it holds with any texts
 * withheld, and keeps it beside the file as `.tsr`. The token is kept only if it holds; `ca` are the certificates that the
 * authority is believed by.
 */
export async function timeStamp(
  file: string,
  { authority, ca }: { readonly authority: string; readonly ca: string },
): Promise<ExitCode> {
  if (inputName(file) !== file)
    throw refused(file, 'a time stamp is kept beside its record, so the record must be a file');
  const bytes = await readBytes(file, 'record', MAX_RECORD_BYTES);
  const folder = await mkdtemp(join(tmpdir(), 'plugmark-'));
  try {
    const query = join(folder, 'query.tsq');
    const data = await sealedIn(folder, bytes);
    const made = await openssl('ts', '-query', '-data', data, '-sha256', '-cert', '-out', query);
    if (!made.ok) throw refused(authority, 'openssl could not make the request');
    const token = `${file}.tsr`;
    const answer = join(folder, 'answer.tsr');
    await writeFile(answer, await asked(authority, await readFile(query)));
    const held = await openssl('ts', '-verify', '-queryfile', query, '-in', answer, '-CAfile', ca);
    if (!held.ok) throw refused(authority, 'its answer does not hold');
    const { at } = await tokenIn(answer);
    writeNew(token, await readFile(answer));
    process.stdout.write(`${safeLine(token)}: stamped before ${at}.\n`);
    return EXIT.done;
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** What the token says about the record, as the file is or as it was sealed; null where nobody asked. */
export async function trustedTime(
  bytes: Uint8Array,
  { time, ca }: { readonly time?: string; readonly ca?: string },
): Promise<TrustedTime | null> {
  if (time === undefined) return null;
  if (ca === undefined)
    throw new ProblemError({
      code: 'time-ca',
      message: 'nothing says which authority to believe',
      next: 'Give its certificates with --ca FILE.',
    });
  await readBytes(time, 'time stamp', MAX_TOKEN_BYTES);
  const folder = await mkdtemp(join(tmpdir(), 'plugmark-'));
  try {
    const given = join(folder, 'given');
    await writeFile(given, bytes);
    for (const data of [given, await sealedIn(folder, bytes)])
      if ((await openssl('ts', '-verify', '-data', data, '-in', time, '-CAfile', ca)).ok) {
        const { at: before, hash } = await tokenIn(time);
        if (!SAFE_HASHES.has(hash))
          return { before: null, detail: `The time stamp is over a hash by ${hash}, which can be forged.` };
        const detail = `An authority that you named saw this record before ${before}.`;
        return { before, detail, ofWholeFile: data === given };
      }
    return {
      before: null,
      detail: 'The time stamp does not belong to this record, or nobody you named made it.',
    };
  } finally {
    await rm(folder, { recursive: true });
  }
}

/** The record as it was sealed, in a file of the folder; whatever else it is as it is. */
async function sealedIn(folder: string, bytes: Uint8Array): Promise<string> {
  const path = join(folder, 'sealed');
  const opened = openRecord(bytes);
  await writeFile(path, opened.ok ? asSealed(opened.value) : bytes);
  return path;
}

/** Nobody can make two records of one such hash. By SHA-1 somebody can: a stamp over one would hold for the other. */
const SAFE_HASHES: ReadonlySet<string> = new Set(['sha256', 'sha384', 'sha512']);

/** The time (ISO) in a token that holds, and by which hash it names what it is over. */
async function tokenIn(token: string): Promise<{ readonly at: string; readonly hash: string }> {
  const { out } = await openssl('ts', '-reply', '-in', token, '-text');
  const at = Date.parse(/^Time stamp: (.+)$/m.exec(out)?.[1] ?? '');
  const hash = /^Hash Algorithm: (\S+)$/m.exec(out)?.[1];
  if (Number.isNaN(at) || hash === undefined) throw refused(token, 'the time in it cannot be read');
  return { at: new Date(at).toISOString(), hash };
}

async function asked(authority: string, query: Buffer): Promise<Buffer> {
  try {
    const response = await fetch(authority, {
      method: 'POST',
      headers: { 'content-type': 'application/timestamp-query' },
      body: query,
      signal: AbortSignal.timeout(ANSWER_WITHIN_MS),
    });
    if (!response.ok) throw refused(authority, `it answered with ${response.status}`);
    return Buffer.from(await response.arrayBuffer());
  } catch (cause) {
    if (cause instanceof ProblemError) throw cause;
    throw refused(authority, 'it cannot be reached');
  }
}

function refused(where: string, message: string): ProblemError {
  return new ProblemError({
    code: 'time-stamp',
    where,
    message,
    next: 'Try again later, or another authority.',
  });
}
