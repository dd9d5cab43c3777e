/** Engines as people type them: `in-line 4`, `V8`, `flat 6`, in four languages, or bank by bank, `1 3 5 7 / 2 4 6 8`. */
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { type Engine, MAX_CYLINDERS } from './order.ts';

/** Banks as in a work order: seen from above, each from front to rear. */
export type Banks = Engine['banks'];

/** What was typed, and every way in which makers number such an engine; one only where nothing is left open. */
export interface TypedEngine {
  /** `V8`; null where the banks themselves were typed. */
  readonly name: string | null;
  readonly numberings: readonly Banks[];
}

const FORMS: readonly {
  readonly form: RegExp;
  readonly named: (count: number) => string;
  readonly banks: 1 | 2;
}[] = [
  {
    form: /^(?:in-?line|straight|i|reihe|r|(?:en )?ligne|l|(?:en )?l[ií]nea)$/,
    named: (count) => `in-line ${count}`,
    banks: 1,
  },
  { form: /^v$/, named: (count) => `V${count}`, banks: 2 },
  { form: /^(?:flat|b[oó]xer|(?:[àa] )?plat)$/, named: (count) => `flat ${count}`, banks: 2 },
];

/**
 * Reads an engine. The numbers of a V or a flat engine differ from maker to maker, so all usual ways are given and none
 * is preferred. Problems: `engine-not-understood`, `engine-too-large`.
 */
export function typedEngine(text: string): Result<TypedEngine, string> {
  const given = text.trim().toLowerCase();
  if (/^[\d\s,;/-]+$/.test(given) && /\d\D+\d/.test(given)) return typedBanks(given);
  const [, word = '', digits = ''] = /^([a-záàíó-][a-záàíó -]*?)[\s-]*(\d{1,2})$/.exec(given) ?? [];
  const form = FORMS.find(({ form }) => form.test(word));
  if (form === undefined)
    return err(w`expected for example "in-line 4", "V8", "flat 6", or the banks, "1 3 5 7 / 2 4 6 8"`);
  const count = Number(digits);
  if (count < form.banks || count > MAX_CYLINDERS)
    return err(w`expected ${form.banks} to ${MAX_CYLINDERS} cylinders`);
  return ok({ name: form.named(count), numberings: form.banks === 1 ? [[upTo(count)]] : twoBanks(count) });
}

/** Numbers in a row, `1 3 4 2`, however they are set apart. */
export function typedNumbers(text: string): Result<number[], string> {
  const words = text.split(/[\s,;-]+/).filter((word) => word !== '');
  const wrong = words.find((word) => !/^\d{1,2}$/.test(word));
  if (wrong !== undefined) return err(w`"${wrong}" is no cylinder number`);
  return words.length === 0 ? err(w`expected cylinder numbers, such as 1 3 4 2`) : ok(words.map(Number));
}

function typedBanks(text: string): Result<TypedEngine, string> {
  const banks: number[][] = [];
  for (const part of text.split('/')) {
    const bank = typedNumbers(part);
    if (!bank.ok) return bank;
    banks.push(bank.value);
  }
  return ok({ name: null, numberings: [banks] });
}

const upTo = (count: number) => Array.from({ length: count }, (_, i) => i + 1);

/** Counted across or bank by bank, the first cylinder in either bank; the first bank has the odd one of an uneven engine. */
function twoBanks(count: number): Banks[] {
  const all = upTo(count);
  const [odd, even] = [all.filter((n) => n % 2 === 1), all.filter((n) => n % 2 === 0)];
  const [first, second] = [all.slice(0, odd.length), all.slice(odd.length)];
  const two: Banks[] = [
    [odd, even],
    [even, odd],
  ];
  // With one cylinder a bank both ways are the same.
  return count === 2 ? two : [...two, [first, second], [second, first]];
}

/** The same engine with two plugs a cylinder: a row of second plugs behind each bank, numbered on from the last cylinder. */
export function withTwoPlugs(banks: Banks): Required<Pick<Engine, 'banks' | 'plugs'>> {
  const cylinders = banks.flat();
  const last = Math.max(...cylinders);
  return {
    banks: banks.flatMap((bank) => [bank, bank.map((cylinder) => cylinder + last)]),
    plugs: [...cylinders]
      .sort((a, b) => a - b)
      .map((cylinder) => ({ cylinder, plugs: [cylinder, cylinder + last] })),
  };
}
