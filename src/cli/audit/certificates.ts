/** Files of calibration certificates, kept in the station's folder under their SHA-256. */

import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { dirname, extname, join, resolve } from 'node:path';
import type { StationEvent } from '../../evidence/station-event.ts';
import { readBytes } from '../../files/input.ts';
import { makeFolder, writeWhole } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { phrases, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import type { CertificatesAnswer } from '../answers/drift.ts';
import { stamp } from '../station/clock.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { recordStation, type StationFolder } from '../station/station.ts';
import { readStationFile } from '../station/station-file.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { textTable } from '../terminal/text-table.ts';
import { print } from '../terminal/wrapped.ts';
import { readCertificate } from './certificate.ts';

const MAX_BYTES = 16 << 20;
/** The program's own name for a kept file: its digest, then the ending. */
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
      process.stdout.write(`${OUTCOME_WORDS[kept.outcome]}: ${safeLine(file)}\n`);
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
      message: w`only a station file lists certificates`,
      next: w`Name the files, or the station file with --station.`,
    });
  const { tools } = await readStationFile(station);
  const base = dirname(resolve(station));
  return tools.flatMap(({ certificate }) => (certificate === undefined ? [] : [resolve(base, certificate)]));
}

const OUTCOME_WORDS = phrases({ kept: 'kept', again: 'kept again', before: 'was kept already' });

/** The event is null where the log holds this file already; a missing or changed copy is written again. */
async function keep(
  { folder, log }: StationFolder,
  file: string,
  number: string | undefined,
): Promise<{ readonly event: StationEvent | null; readonly outcome: keyof typeof OUTCOME_WORDS }> {
  const bytes = await readBytes(file, w`calibration certificate`, MAX_BYTES);
  if (bytes.length === 0) throw empty(file);
  const digest = sha256(bytes);
  const about = await identityOf(
    { file, bytes },
    number,
    log.stationEntries().map(({ event }) => event),
  );
  const isHeld = log
    .stationEntries()
    .some(({ event }) => event.type === 'certificate-kept' && event.digest === digest);
  const ending = extname(file).toLowerCase();
  const target = join(folder, 'certificates', digest + (KEPT.test(digest + ending) ? ending : ''));
  const isThere = existsSync(target) && sha256(await readFile(target)) === digest;
  if (!isThere) {
    makeFolder(dirname(target), 0o700);
    writeWhole(target, bytes);
  }
  if (isHeld) return { event: null, outcome: isThere ? 'before' : 'again' };
  return { event: { type: 'certificate-kept', ...about, digest, bytes: bytes.length }, outcome: 'kept' };
}

/** A certificate in XML or JSON names itself; for any other file, such as a scan, somebody must name it. */
async function identityOf(
  { file, bytes }: { readonly file: string; readonly bytes: Uint8Array },
  number: string | undefined,
  events: readonly StationEvent[],
): Promise<{ readonly certificate: string; readonly serial: string }> {
  if (number === undefined) {
    if (!namesItself(bytes)) throw ofWhich(file);
    const serials = events.flatMap((event) =>
      event.type === 'instrument-recorded' ? (event.instrument.serial ?? []) : [],
    );
    const { number: certificate, serial } = await readCertificate(file, serials);
    return { certificate, serial };
  }
  for (const event of events)
    if (event.type === 'instrument-recorded' && event.instrument.certificate?.number === number)
      return { certificate: number, serial: event.instrument.certificate.serial };
  throw new ProblemError({
    code: 'certificate-unknown',
    where: '--for',
    message: w`no tool of this station has a certificate with this number`,
    next: w`Use the number that "plugmark calendar" shows.`,
  });
}

/** Whether all kept certificates are there, unchanged. Exit code 1 where one is not. */
export function checkCertificates(options: Scope & { readonly json?: true }): Promise<ExitCode> {
  return withStationFolder(options, async ({ folder, log }) => {
    const kept = log
      .stationEntries()
      .flatMap(({ event }) => (event.type === 'certificate-kept' ? [event] : []));
    const where = join(folder, 'certificates');
    const names = existsSync(where) ? await readdir(where) : [];
    const byDigest = new Map(names.map((name) => [KEPT.exec(name)?.[1] ?? '', name]));
    const checked = await Promise.all(
      kept.map(async ({ certificate, serial, digest }) => {
        const name = byDigest.get(digest);
        const file = join(where, name ?? digest);
        const there = name !== undefined && sha256(await readFile(file)) === digest;
        const state = there ? 'as-kept' : name === undefined ? 'missing' : 'changed';
        return { certificate, serial, sha256: digest, state, file } as const;
      }),
    );
    const bad = checked.filter(({ state }) => state !== 'as-kept');
    const code = bad.length === 0 ? EXIT.done : EXIT.failed;
    if (options.json === true) {
      printJson({
        form: 'plugmark/certificates-check/1',
        certificates: checked,
      } satisfies CertificatesAnswer);
      return code;
    }
    print([
      ...(checked.length === 0
        ? [w`No certificate is kept yet.`]
        : textTable(
            [w`state`, w`calibration certificate`, w`serial number`, 'SHA-256'],
            checked.map(({ state, certificate, serial, sha256 }) => [
              STATE_WORDS[state],
              certificate,
              serial,
              sha256.slice(0, 16),
            ]),
          )),
      ...bad.flatMap(({ file, state }) => ['', `${STATE_WORDS[state]}: ${safeLine(file)}`]),
      ...(bad.length === 0 ? [] : ['', again()]),
    ]);
    return code;
  });
}

const STATE_WORDS = phrases({ 'as-kept': 'as kept', missing: '! MISSING', changed: '! CHANGED' });
const again = () =>
  w`Keep the original again: "plugmark certificates keep FILE", with --for NUMBER for a scan. The same file replaces the missing or changed one; another file is kept beside it.`;

function empty(file: string): ProblemError {
  return new ProblemError({
    code: 'certificate-empty',
    where: file,
    message: w`the file is empty`,
    next: w`Nothing of it was kept. Name the certificate, or scan it again.`,
  });
}

/** XML or JSON, by the first character that is no space; a scan begins otherwise, whatever it is called. */
const namesItself = (bytes: Uint8Array) => /^\s*[<{]/.test(new TextDecoder().decode(bytes.subarray(0, 256)));

/** Only a person can say which certificate a scan is. */
function ofWhich(file: string): ProblemError {
  return new ProblemError({
    code: 'certificate-for',
    where: file,
    message: w`this file is neither XML nor JSON, so it does not say which certificate it is`,
    next: w`Name it with --for NUMBER, the number that "plugmark calendar" shows.`,
  });
}
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
