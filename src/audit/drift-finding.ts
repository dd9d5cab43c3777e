/** Has a tool drifted? By its pulls since its calibration, and by its certificates; each half says for itself what it lacks. */
import type { StationEntry } from '../evidence/log.ts';
import type { Certificate } from '../instrument/certificate.ts';
import { dueDate } from '../instrument/fitness.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { calibratedAt } from '../metrology/calibration.ts';
import type { PermissibleDeviation } from '../metrology/permissible.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import type { AttemptRow } from './attempt.ts';
import { certificatesOf, periodsOf } from './calibrations.ts';
import { type CertificateLines, certificateLines, firstBeyond } from './certificate-line.ts';
import { type WrenchDrift, wrenchDrift } from './drift.ts';

/** The tool that is asked about. */
export interface DriftSubject {
  /** Its serial number, else its name. */
  readonly name: string;
  /** As the station file has it, else as the log has it last. */
  readonly instrument: Instrument;
  /** All its attempts, the oldest first. */
  readonly rows: readonly AttemptRow[];
  readonly permissible: PermissibleDeviation;
}

export interface DriftFinding extends DriftSubject {
  readonly pulls: Result<WrenchDrift>;
  readonly certificates: Result<CertificateLines>;
  /** The median reading that it is used at; null where it was never used. */
  readonly usedAt: number | null;
  /** ISO day of its next calibration; null where nobody knows. */
  readonly due: string | null;
  /** Null where nothing speaks against the tool. */
  readonly verdict: 'WARNING' | 'UNDECIDED' | null;
}

/** `kept` are certificates that the station's `entries` do not hold. Problem: where neither half has anything to say. */
export function driftFinding(
  subject: DriftSubject,
  entries: readonly StationEntry[],
  kept: readonly Certificate[],
): Result<DriftFinding> {
  const { name, instrument, rows, permissible } = subject;
  const pulls = pullsOf(subject);
  const usedAt = median(rows.flatMap(({ readingSi }) => (readingSi === null ? [] : [readingSi])));
  const certificates = certificateDrift(instrument, entries, kept, { permissible, usedAt });
  if (!pulls.ok && !certificates.ok) return err(nothingToSay(name, pulls.error, certificates.error));
  const verdict = verdictOf(pulls, certificates);
  return ok({ ...subject, pulls, certificates, usedAt, due: dueDate(instrument), verdict });
}

/** The line through the certificates of an instrument: those in the log, those that were kept, and its own. */
export function certificateDrift(
  instrument: Instrument,
  entries: readonly StationEntry[],
  kept: readonly Certificate[],
  { permissible, usedAt }: { readonly permissible: PermissibleDeviation; readonly usedAt: number | null },
): Result<CertificateLines> {
  const { serial, certificate } = instrument;
  if (serial === undefined) return err(noSerial(instrument));
  const others = certificate === undefined ? kept : [...kept, certificate];
  const periods = periodsOf(certificatesOf(entries, serial, others));
  return certificateLines(periods, { permissible, due: dueDate(instrument), used: usedAt });
}

function verdictOf(
  pulls: Result<WrenchDrift>,
  certificates: Result<CertificateLines>,
): DriftFinding['verdict'] {
  const first = certificates.ok ? firstBeyond(certificates.value) : null;
  if ((pulls.ok && pulls.value.warn) || first?.finding === 'warning') return 'WARNING';
  return first === null ? null : 'UNDECIDED';
}

/** Pulls under the certificate of today: a wrench that came back from the laboratory starts anew. */
function pullsOf({ instrument, rows, permissible }: DriftSubject): Result<WrenchDrift> {
  const { quantity, certificate } = instrument;
  if (quantity === 'length') return err(noPulls());
  // By its day as well: laboratories use numbers again.
  const current = rows.filter(
    (row) => row.certificate === (certificate?.number ?? null) && row.on >= (certificate?.date ?? ''),
  );
  const points = certificate?.points ?? [];
  const errorAt = (nm: number) => (points.length === 0 ? 0 : calibratedAt(points, nm).error);
  return wrenchDrift(current, { permissible, errorAt, due: dueDate(instrument) });
}

/** What was given in per cent, else what the tool's own data permit. Problem: `permissible-deviation-missing`. */
export function permissibleOf(
  { permissibleDeviation, id }: Instrument,
  percent: number | undefined,
): Result<PermissibleDeviation> {
  if (percent !== undefined) return ok({ kind: 'relative', percent });
  if (permissibleDeviation !== undefined) return ok(permissibleDeviation);
  return err({
    code: 'permissible-deviation-missing',
    where: id,
    message: w`nothing says how far this tool may be off`,
    next: w`Give it with --permissible, in per cent.`,
  });
}

function median(values: readonly number[]): number | null {
  return [...values].sort((a, b) => a - b)[values.length >> 1] ?? null;
}

const noPulls = (): Problem => ({
  code: 'no-pulls',
  message: w`the readings of a gauge show the plugs, not the gauge`,
  next: w`Only its certificates can show a drift.`,
});

const noSerial = ({ id }: Instrument): Problem => ({
  code: 'serial-missing',
  where: id,
  message: w`without a serial number nobody can tell which certificates belong to this tool`,
  next: w`Give the serial number that is marked on the tool.`,
});

const nothingToSay = (name: string, pulls: Problem, certificates: Problem): Problem => ({
  code: pulls.code,
  where: name,
  message: w`${pulls.message}; and ${certificates.message}`,
  next: certificates.next,
});
