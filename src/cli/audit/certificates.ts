/** Files of calibration certificates, kept in the station's folder under their SHA-256. */

import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { dirname, extname, join, resolve } from 'node:path';
import type { StationEvent } from '../../evidence/station-event.ts';
import { readBytes } from '../../files/input.ts';
import { makeFolder, writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { stamp } from '../station/clock.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { recordStation, type StationFolder } from '../station/station.ts';
import { readStationFile } from '../station/station-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { readCertificate } from './certificate.ts';

const MAX_BYTES = 16 << 20;
/** A name of our own making: what is kept is found by its digest. */
const KEPT = /^([0-9a-f]{64})(\.[a-z0-9]{1,8})?$/;

/** Keeps the certificates that the station file names, and files given by name, in the station's folder under their SHA-256. */
export async function keepCertificates(
  files: readonly string[],
  options: Scope & { readonly for?: string },
): Promise<ExitCode> {
  const named = files.length > 0 ? files.map((file) => resolve(file)) : await certificatesOf(options);
  return withStationFolder(options, async (stationFolder) => {
    const news: StationEvent[] = [];
    for (const file of new Set(named)) {
      const kept = await keep(stationFolder, file, options.for);
      if (kept.event !== null) news.push(kept.event);
      process.stdout.write(`${kept.said}: ${safeLine(file)}\n`);
    }
    if (news.length > 0) await recordStation(stationFolder, news, stamp());
    return EXIT.done;
  });
}

async function certificatesOf({ station, data }: Scope): Promise<readonly string[]> {
  if (data !== undefined)
    throw new ProblemError({
      code: 'certificates-not-named',
      where: '--data',
      message: 'only a station file says which certificates there are',
      next: 'Name the files, or the station file with --station.',
    });
  const { tools } = await readStationFile(station);
  const base = dirname(resolve(station));
  return tools.flatMap(({ certificate }) => (certificate === undefined ? [] : [resolve(base, certificate)]));
}

/** The event is null where the log knows of this very file; its copy is written again if it is not there as it was. */
async function keep(
  { folder, log }: StationFolder,
  file: string,
  number: string | undefined,
): Promise<{ readonly event: StationEvent | null; readonly said: string }> {
  const bytes = await readBytes(file, 'certificate', MAX_BYTES);
  if (bytes.length === 0) throw empty(file);
  const digest = sha256(bytes);
  const about = await aboutWhat(
    { file, bytes },
    number,
    log.stationEntries().map(({ event }) => event),
  );
  const known = log
    .stationEntries()
    .some(({ event }) => event.type === 'certificate-kept' && event.digest === digest);
  const ending = extname(file).toLowerCase();
  const target = join(folder, 'certificates', digest + (KEPT.test(digest + ending) ? ending : ''));
  const isThere = existsSync(target) && sha256(await readFile(target)) === digest;
  if (!isThere) {
    makeFolder(dirname(target), 0o700);
    await writeWhole(target, bytes);
  }
  if (known) return { event: null, said: isThere ? 'was kept already' : 'kept again' };
  return { event: { type: 'certificate-kept', ...about, digest, bytes: bytes.length }, said: 'kept' };
}

/** A certificate in a form that can be read says of what it is; of any other file, a scan perhaps, somebody has to. */
async function aboutWhat(
  { file, bytes }: { readonly file: string; readonly bytes: Uint8Array },
  number: string | undefined,
  events: readonly StationEvent[],
): Promise<{ readonly certificate: string; readonly serial: string }> {
  if (number === undefined) {
    if (!saysItself(bytes)) throw ofWhich(file);
    const { number: certificate, serial } = await readCertificate(file);
    return { certificate, serial };
  }
  for (const event of events)
    if (event.type === 'instrument-recorded' && event.instrument.certificate?.number === number)
      return { certificate: number, serial: event.instrument.certificate.serial };
  throw new ProblemError({
    code: 'certificate-unknown',
    where: '--for',
    message: 'no tool of this station has a certificate with this number',
    next: 'Use the number as "plugmark calendar" shows it.',
  });
}

/** Whether all certificates that were kept are there as they were. Exit code 1 where one is not. */
export function checkCertificates(options: Scope): Promise<ExitCode> {
  return withStationFolder(options, async ({ folder, log }) => {
    const kept = log
      .stationEntries()
      .flatMap(({ event }) => (event.type === 'certificate-kept' ? [event] : []));
    const where = join(folder, 'certificates');
    const names = existsSync(where) ? await readdir(where) : [];
    const byDigest = new Map(names.map((name) => [KEPT.exec(name)?.[1] ?? '', name]));
    const found = await Promise.all(
      kept.map(async ({ certificate, serial, digest }) => {
        const name = byDigest.get(digest);
        const file = join(where, name ?? digest);
        const there = name !== undefined && sha256(await readFile(file)) === digest;
        const state = there ? 'as kept' : name === undefined ? '! MISSING' : '! CHANGED';
        return { file, there, row: [state, certificate, serial, digest.slice(0, 16)] };
      }),
    );
    const bad = found.filter(({ there }) => !there);
    print([
      ...(found.length === 0
        ? ['No certificate was kept yet.']
        : textTable(
            CERTIFICATE_HEAD,
            found.map(({ row }) => row),
          )),
      ...bad.flatMap(({ file, row: [state = ''] }) => ['', `${state}: ${safeLine(file)}`]),
      ...(bad.length === 0 ? [] : ['', AGAIN]),
    ]);
    return bad.length === 0 ? EXIT.done : EXIT.failed;
  });
}

const CERTIFICATE_HEAD = ['state', 'certificate', 'serial', 'SHA-256'] as const;
const AGAIN =
  'Keep the original again: "plugmark certificates keep FILE", with --for NUMBER where it is a scan. The very same file takes the place of the one that is missing or changed; another one is kept beside it.';

function empty(file: string): ProblemError {
  return new ProblemError({
    code: 'certificate-empty',
    where: file,
    message: 'the file is empty',
    next: 'Name the certificate, or scan it again. Nothing was kept of this file.',
  });
}

/** XML or JSON, by the first character that is no space; a scan begins otherwise, whatever it is called. */
const saysItself = (bytes: Uint8Array) => /^\s*[<{]/.test(new TextDecoder().decode(bytes.subarray(0, 256)));

/** Of which certificate a scan is, only a person can say. */
function ofWhich(file: string): ProblemError {
  return new ProblemError({
    code: 'certificate-for',
    where: file,
    message: 'only XML and JSON say by themselves of which certificate they are',
    next: 'Say it with --for NUMBER, the number of the certificate as "plugmark calendar" shows it.',
  });
}
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
