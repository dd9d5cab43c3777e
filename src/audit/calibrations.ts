/**
 * The calibrations of one instrument in the order of their days, in periods between adjustments. What a laboratory found
 * before it adjusted ends a period; the certificate that it issued then starts the next one.
 */
import { canonical } from '../evidence/canonical.ts';
import type { StationEntry } from '../evidence/log.ts';
import type { Certificate } from '../instrument/certificate.ts';

/**
 * What a certificate is against the one before. `first`: there is none before. `as-found`: before the laboratory adjusted.
 * `as-left`: after an adjustment. `not-adjusted`: found and left so. `not-stated`: nobody recorded what was found before it,
 * so an adjustment cannot be seen.
 */
export type CalibrationRole = 'first' | 'as-found' | 'as-left' | 'not-adjusted' | 'not-stated';

export interface Check {
  readonly certificate: Certificate;
  readonly role: CalibrationRole;
}

export interface Certificates {
  /** The instrument was used, or will be used, by these. */
  readonly issued: readonly Certificate[];
  readonly asFound: readonly Certificate[];
}

/**
 * What the log holds of the instrument with that serial number, and `others` that it does not hold. Of two with the same
 * day, number and laboratory the later one counts: it is the corrected one. `others` count as the latest.
 */
export function certificatesOf(
  entries: readonly StationEntry[],
  serial: string,
  others: readonly Certificate[] = [],
): Certificates {
  const issued = entries.flatMap(({ event }) =>
    event.type === 'instrument-recorded' && event.instrument.certificate !== undefined
      ? [event.instrument.certificate]
      : [],
  );
  const asFound = entries.flatMap(({ event }) => (event.type === 'as-found-recorded' ? [event.asFound] : []));
  const isOfIt = (certificate: Certificate) => certificate.serial === serial;
  return {
    issued: corrected([...issued, ...others].filter(isOfIt)),
    asFound: corrected(asFound.filter(isOfIt)),
  };
}

/** The periods between adjustments, the newest last; empty where there is no certificate. */
export function periodsOf({ issued, asFound }: Certificates): readonly (readonly Check[])[] {
  const all = [
    ...asFound.map((certificate) => ({ certificate, isFound: true })),
    ...issued.map((certificate) => ({ certificate, isFound: false })),
  ].sort((a, b) => byText(a.certificate.date, b.certificate.date) || Number(b.isFound) - Number(a.isFound));
  const periods: Check[][] = [];
  let period: Check[] = [];
  for (const { certificate, isFound } of all) {
    const before = period.at(-1);
    if (before === undefined) {
      period.push({ certificate, role: isFound ? 'as-found' : 'first' });
      periods.push(period);
    } else if (isFound) period.push({ certificate, role: 'as-found' });
    else if (before.role !== 'as-found') period.push({ certificate, role: 'not-stated' });
    else if (canonical(before.certificate.points) === canonical(certificate.points))
      period[period.length - 1] = { certificate, role: period.length === 1 ? 'first' : 'not-adjusted' };
    else {
      period = [{ certificate, role: 'as-left' }];
      periods.push(period);
    }
  }
  return periods;
}

/** A certificate that was recorded again with other figures counts as recorded last. A number alone does not tell: some laboratories use one for all. */
function corrected(all: readonly Certificate[]): readonly Certificate[] {
  const key = ({ date, number, laboratory }: Certificate) => canonical([date, number, laboratory]);
  return [...new Map(all.map((one) => [key(one), one])).values()];
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
