/**
 * The edition of the rules that jobs are opened under now. A job names it in its opening, and is judged by it for good;
 * `npm run close-edition` raises it.
 */
export const OPEN_EDITION = 2;

const NAME = 'plugmark/rules/';

/** The name that a job signs. */
export const RULES = `${NAME}${OPEN_EDITION}`;

/** The number of the edition that a job names; null for a name that no version of this program writes. */
export function editionIn(rules: string): number | null {
  const number = rules.startsWith(NAME) ? rules.slice(NAME.length) : '';
  return /^[1-9]\d{0,3}$/.test(number) ? Number(number) : null;
}
