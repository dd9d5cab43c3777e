/** Reads back what "plugmark certificates keep" kept: among it older certificates that no job was ever done with. */
import { existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { StationEntry } from '../../evidence/log.ts';
import type { Certificate } from '../../instrument/certificate.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import { ProblemError } from '../../problem.ts';
import type { StationFolder } from '../station/station.ts';
import { readCertificateFile } from './certificate.ts';

/** Files that a certificate can be read from; a scan is for people. */
const READABLE = ['.json', '.xml'] as const;

/**
 * The kept certificates of an instrument, and the numbers of those that cannot be read as they were kept. Left out is what
 * an impact assessment recorded as found: the tool did not leave the laboratory with it.
 */
export async function keptFor(
  { folder }: Pick<StationFolder, 'folder'>,
  entries: readonly StationEntry[],
  { serial }: Instrument,
): Promise<{ readonly certificates: readonly Certificate[]; readonly lost: readonly string[] }> {
  if (serial === undefined) return { certificates: [], lost: [] };
  const asFound = new Set(
    entries.flatMap(({ event }) => (event.type === 'as-found-recorded' ? [event.digest] : [])),
  );
  const where = join(folder, 'certificates');
  const names = existsSync(where) ? await readdir(where) : [];
  const certificates: Certificate[] = [];
  const lost: string[] = [];
  for (const { event } of entries) {
    if (event.type !== 'certificate-kept' || event.serial !== serial || asFound.has(event.digest)) continue;
    const { digest, certificate: number } = event;
    const name = names.find((one) => one.startsWith(digest));
    if (name !== undefined && !READABLE.some((ending) => name.endsWith(ending))) continue;
    const read = name === undefined ? null : await readKept(join(where, name), digest);
    if (read === null) lost.push(number);
    else if (read.serial === serial) certificates.push(read);
  }
  return { certificates, lost };
}

async function readKept(file: string, digest: string): Promise<Certificate | null> {
  try {
    const read = await readCertificateFile(file);
    return read.digest === digest ? read.certificate : null;
  } catch (cause) {
    if (cause instanceof ProblemError) return null;
    throw cause;
  }
}
