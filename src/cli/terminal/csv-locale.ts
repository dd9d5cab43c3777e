import { ProblemError } from '../../problem.ts';
import { type CsvStyle, csvStyleOf, USUAL_CSV } from '../../report/csv-style.ts';
import { w } from '../../words/catalogue.ts';

/** What `--csv-locale` names; RFC 4180 where it is not given. */
export function csvStyle(locale: string | undefined): CsvStyle {
  const style = locale === undefined ? USUAL_CSV : csvStyleOf(locale);
  if (style !== null) return style;
  throw new ProblemError({
    code: 'option-not-valid',
    where: '--csv-locale',
    message: w`this is no language that the program knows`,
    next: w`Give a language like de, fr-CH or en-GB, or none.`,
  });
}
