/**
 * The calibrations of one instrument in the order of their days, in periods between adjustments. What a laboratory found
 * before it adjusted is the end of a period, the certificate that it issued then the beginning of the next one.
 */
import { canonical } from '../evidence/canonical.ts';
import type { StationEntry } from '../evidence/log.ts';
import type { Certificate } from '../instrument/certificate.ts';

/**
 * How a certificate stands to the one before. `first`: there is none. `as-found`: before the laboratory adjusted.
 * `as-left`: behind an adjustment. `not-adjusted`: found and left so. `not-told`: nobody recorded what was found before it,
 * so an adjustment cannot be seen.
 */
export type Told = 'first' | 'as-found' | 'as-left' | 'not-adjusted' | 'not-stated';

export interface Check {
  readonly certificate: Certificate;
  readonly told: Told;
}

export interface Certificates {
  /** The instrument was used, or is to be used, by these. */
  readonly issued: readonly Certificate[];
  readonly asFound: readonly Certificate[];
}

/**
 * What the log holds of the instrument with that serial number, with `others` that it does not hold. Of two with one day
 * and number, the one that was recorded later is the corrected one; `others` are the latest.
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
      period.push({ certificate, told: isFound ? 'as-found' : 'first' });
      periods.push(period);
    } else if (isFound) period.push({ certificate, told: 'as-found' });
    else if (before.told !== 'as-found') period.push({ certificate, told: 'not-stated' });
    else if (canonical(before.certificate.points) === canonical(certificate.points))
      period[period.length - 1] = { certificate, told: period.length === 1 ? 'first' : 'not-adjusted' };
    else {
      period = [{ certificate, told: 'as-left' }];
      periods.push(period);
    }
  }
  return periods;
}

/** One whose figures were put right since counts as it was recorded last; some laboratories give every one the same number. */
function corrected(all: readonly Certificate[]): readonly Certificate[] {
  const key = ({ date, number, laboratory }: Certificate) => canonical([date, number, laboratory]);
  return [...new Map(all.map((one) => [key(one), one])).values()];
}

const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
