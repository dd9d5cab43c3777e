/** What laboratories have seen of a tool: its certificates from wherever they are known, and the line through them. */

import { certificatesOf, periodsOf } from '../../audit/calibrations.ts';
import { type CertificateLines, certificateLines } from '../../audit/certificate-line.ts';
import type { StationEntry } from '../../evidence/log.ts';
import type { Certificate } from '../../instrument/certificate.ts';
import { dueDate } from '../../instrument/fitness.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import type { PermissibleDeviation } from '../../metrology/permissible.ts';
import type { Problem } from '../../problem.ts';
import { CHECK_HEAD, checkRows, lineHead, lineRows, lineWords } from '../../report/certificate-lines.ts';
import type { Unit } from '../../report/figures.ts';
import { figure, UNIT_TEXT } from '../../report/figures.ts';
import { err, type Result } from '../../result.ts';
import type { StationFolder } from '../station/station.ts';
import { textTable } from '../terminal/text-table.ts';
import { keptCertificates } from './kept-certificates.ts';

export interface Laboratory {
  readonly lines: Result<CertificateLines>;
  /** Numbers of kept certificates that are not there as they were kept. */
  readonly lost: readonly string[];
}

/**
 * The line through the certificates of an instrument: those in the log's `entries`, those that were kept, and its own, which the
 * station file may have before any job. `frozen` are those that jobs were done by, `used` the reading it is used at.
 */
export async function laboratoryOf(
  { folder }: StationFolder,
  entries: readonly StationEntry[],
  instrument: Instrument,
  asked: {
    readonly permissible: PermissibleDeviation;
    readonly frozen?: readonly Certificate[];
    readonly used?: number | null;
  },
): Promise<Laboratory> {
  const { serial, certificate } = instrument;
  if (serial === undefined) return { lines: err(noSerial(instrument)), lost: [] };
  const { certificates, lost } = await keptCertificates(folder, entries, serial);
  const others = [
    ...certificates,
    ...(asked.frozen ?? []),
    ...(certificate === undefined ? [] : [certificate]),
  ];
  const periods = periodsOf(certificatesOf(entries, serial, others));
  const { permissible, used = null } = asked;
  return { lines: certificateLines(periods, { permissible, due: dueDate(instrument), used }), lost };
}

export const unitOf = ({ quantity }: Instrument): Unit => (quantity === 'torque' ? 'N.m' : 'mm');

/** As lines for people, not yet as wide as the terminal; tables are. */
export function laboratoryLines(
  found: CertificateLines,
  instrument: Instrument,
  used: number | null,
): { readonly before: string; readonly tables: readonly string[]; readonly words: readonly string[] } {
  const unit = unitOf(instrument);
  const [name, { nominal, periods }] = [UNIT_TEXT[unit], found.inUse];
  const near = used === null ? '' : `, the point nearest to the ${figure(used, unit)} ${name} it is used at`;
  return {
    before: `Certificates: ${periods.flat().length}, at ${figure(nominal, unit)} ${name}${near}; all in ${name}.`,
    tables: [
      ...textTable(CHECK_HEAD, checkRows(found.inUse, unit)),
      '',
      ...textTable(lineHead(found), lineRows(found, unit)),
    ],
    words: lineWords(found, { unit, due: dueDate(instrument) }),
  };
}

const noSerial = ({ id }: Instrument): Problem => ({
  code: 'serial-missing',
  where: id,
  message: 'without a serial number nobody can tell which certificates are of this tool',
  next: 'Give the serial number that stands on the tool.',
});
