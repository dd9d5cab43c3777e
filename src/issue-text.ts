/** What the library of schemas says of a value, in the language of its reader; types and codes stay as they are. */
import { spokenPhrase, w } from './words/catalogue.ts';

type Say = (first: string, second: string, third: string) => string;

const SENTENCES: readonly (readonly [RegExp, Say])[] = [
  [
    /^Invalid input: expected (.+), received (.+)$/s,
    (expected, received) => w`Invalid input: expected ${expected}, received ${received}`,
  ],
  [/^Invalid input: expected (.+)$/s, (expected) => w`Invalid input: expected ${expected}`],
  [/^Unrecognized keys?: (.+)$/s, (keys) => w`Unrecognized key: ${keys}`],
  [
    /^Too big: expected (\S+) to have (\S+) (items|characters)$/,
    (what, most, unit) =>
      unit === 'items'
        ? w`Too big: expected ${what} to have ${most} items`
        : w`Too big: expected ${what} to have ${most} characters`,
  ],
  [/^Too big: expected (\S+) to be (\S+)$/, (what, most) => w`Too big: expected ${what} to be ${most}`],
  [
    /^Too small: expected (\S+) to have (\S+) (items|characters)$/,
    (what, least, unit) =>
      unit === 'items'
        ? w`Too small: expected ${what} to have ${least} items`
        : w`Too small: expected ${what} to have ${least} characters`,
  ],
  [/^Too small: expected (\S+) to be (\S+)$/, (what, least) => w`Too small: expected ${what} to be ${least}`],
  [/^Invalid option: expected one of (.+)$/s, (options) => w`Invalid option: expected one of ${options}`],
  [
    /^Invalid discriminator value. Expected (.+)$/s,
    (options) => w`Invalid discriminator value. Expected ${options}`,
  ],
  [
    /^Invalid string: must match pattern (.+)$/s,
    (pattern) => w`Invalid string: must match pattern ${pattern}`,
  ],
  [/^expected at most (\d+) attempts$/, (most) => w`expected at most ${most} attempts`],
  [/^Invalid ([\w-]+(?: [\w-]+)?)$/, (form) => w`Invalid ${form}`],
];

/** Sentences of our own schemas stand in the catalogue as they are. */
export function issueText(english: string): string {
  for (const [pattern, say] of SENTENCES) {
    const [all, ...parts] = pattern.exec(english) ?? [];
    if (all !== undefined) return say(parts[0] ?? '', parts[1] ?? '', parts[2] ?? '');
  }
  return spokenPhrase(english);
}
