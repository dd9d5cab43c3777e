/** How a spreadsheet of some country reads CSV: what parts the cells, and what stands before the decimals. */

export interface CsvStyle {
  readonly separator: ',' | ';';
  readonly decimal: '.' | ',';
  /** Whether it begins with a byte order mark, without which the commonest spreadsheet takes UTF-8 for the local code page. */
  readonly mark: boolean;
}

/** As RFC 4180, for every program. */
export const USUAL_CSV: CsvStyle = { separator: ',', decimal: '.', mark: true };

/** For programs that take a byte order mark for a part of the first name. */
const NO_LOCALE = 'none';

/** By a language tag (BCP 47), `de-AT`, or `none`; null for anything else. */
export function csvStyleOf(locale: string): CsvStyle | null {
  if (locale === NO_LOCALE) return { ...USUAL_CSV, mark: false };
  if (!isKnown(locale)) return null;
  const parts = new Intl.NumberFormat(locale, { numberingSystem: 'latn' }).formatToParts(1.5);
  const decimal = parts.find(({ type }) => type === 'decimal')?.value === '.' ? '.' : ',';
  // A comma cannot do both.
  return { separator: decimal === ',' ? ';' : ',', decimal, mark: true };
}

function isKnown(locale: string): boolean {
  try {
    return Intl.NumberFormat.supportedLocalesOf([locale]).length === 1;
  } catch {
    return false;
  }
}
