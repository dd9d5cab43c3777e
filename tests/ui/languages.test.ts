/** The screen in every language: nothing is said past the catalogue, nothing is wider than the terminal, no key is lost. */
import { describe, expect, it } from 'vitest';
import { inUnits } from '../../src/quantity/shown.ts';
import type { FormKind } from '../../src/ui/form.ts';
import { newForm } from '../../src/ui/form.ts';
import { newInputState } from '../../src/ui/input-state.ts';
import { letterOf } from '../../src/ui/key-table.ts';
import { canDraw, pixelsWide } from '../../src/ui/letters.ts';
import { columnsOf } from '../../src/ui/printable.ts';
import { summaryLines } from '../../src/ui/summary.ts';
import { windowFigures } from '../../src/ui/words.ts';
import { inLanguage, LANGUAGES, w } from '../../src/words/catalogue.ts';
import { dictionary } from '../../src/words/dictionaries.ts';
import { inPlainLetters } from '../../src/words/plain-letters.ts';
import { PSEUDO, unspoken } from '../words/pseudo.ts';
import { inkColumns, linesOf } from './drawn.tsx';
import { VIEWS } from './views.ts';

const SIZES = [
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
] as const;

/** Names, numbers of parts, units and keys. */
const FACTS: readonly (string | RegExp)[] = [
  /N·m|\bmm\b|M14(x1\.25)?|\b1\.25\b|EX[ -]\d+|Example \w+|A\. Example|bay 2|Technician One|Enter|Esc|Ctrl/,
  // Tools by their names.
  /(?:wrench|gauge) [✓·✗]|with wrench/,
  // What the order says of its source.
  /Invented for the tests|by test|test|"[^"]*"/,
];

const views = Object.entries(VIEWS);
const FORMS: readonly FormKind[] = [
  'exceptions',
  'give-pull',
  'start-again',
  'fit-by-angle',
  'at-work',
  'hand-over',
  'scrap',
  'take-back',
  'damage',
  'not-done',
  'old-plug-note',
  'part',
  'lot',
];

describe('what goes past the catalogue', () => {
  it.each(views)('%s: nothing', (_name, view) => {
    const size = { columns: 200, rows: 60 };
    const text = inLanguage(PSEUDO, () =>
      [...linesOf(view, size), ...linesOf(view, { ...size, help: true }), ...summaryLines(view.job)].join(
        '\n',
      ),
    );
    expect(unspoken(text, FACTS)).toEqual([]);
  });
  it.each(FORMS)('%s: nothing', (kind) => {
    const view = VIEWS['ok'] ?? expect.fail();
    const input = { ...newInputState(), form: newForm(kind, 2) };
    const text = inLanguage(PSEUDO, () => linesOf(view, { columns: 200, rows: 60, input }).join('\n'));
    expect(unspoken(text, FACTS)).toEqual([]);
  });
});

const keysIn = (lines: readonly string[]) =>
  [...new Set([...lines.join('\n').matchAll(/\[([a-z?])\]/g)].map(([, key]) => key))].sort();

describe.each(LANGUAGES)('the screen in %s', (language) => {
  it.each(views)('%s fits, in Unicode and in ASCII, and keeps its keys', async (_name, view) => {
    const words = await dictionary(language);
    for (const size of SIZES) {
      const english = linesOf(view, size);
      const lines = inLanguage(words, () => linesOf(view, size));
      expect(lines).toHaveLength(size.rows - 1);
      for (const line of lines) expect(columnsOf(line), line).toBeLessThanOrEqual(size.columns);
      const letters = inLanguage(words, () =>
        keysIn(english)
          .map((key) => letterOf(key ?? ''))
          .sort(),
      );
      expect(keysIn(lines), lines.join('\n')).toEqual(letters);
      const plain = inLanguage(inPlainLetters(words), () => linesOf(view, { ...size, ascii: true }));
      expect(plain.join('')).toMatch(/^[\x20-\x7e]*$/);
    }
  });
});

describe.each(LANGUAGES)('large letters in %s', (language) => {
  it('draw every word that is said large, beside the number of the cylinder, in the smallest window', async () => {
    const words = await dictionary(language);
    for (const [name, view] of views) {
      const lines = inLanguage(words, () => linesOf(view, { columns: 60, rows: 20 })).join('\n');
      const english = linesOf(view, { columns: 60, rows: 20 }).join('\n');
      expect(/[▀▄█]{2}/.test(lines), name).toBe(/[▀▄█]{2}/.test(english));
    }
    const spoken = inLanguage(words, () => [
      w`COMPLETE`,
      w`INCOMPLETE`,
      w`TOO EARLY`,
      w`ASK`,
      w` OUT OF ORDER`.trim(),
      w` UNDECIDED`.trim(),
      w`NOT OK`,
      w`PAUSE`,
      w`DONE`,
      w`GOOD`,
      w`WEAK`,
      w`NOT FIT`,
    ]);
    for (const word of spoken) {
      expect(canDraw(word), word).toBe(true);
      expect(pixelsWide(word), word).toBeLessThanOrEqual(56);
    }
  });
});

describe('names in other scripts', () => {
  const view = VIEWS['ok'] ?? expect.fail('no view');
  const named = (technician: string, plate: string) => ({
    ...view,
    station: technician,
    job: {
      ...view.job,
      technician,
      order: { ...view.job.order, technician, vehicle: { plate, description: plate } },
    },
  });

  it.each([
    ['Arabic', 'محمد عبد الرحمن الفارسي', 'أ ب ج ١٢٣٤'],
    ['Chinese', '王小明技术员高级技师', '京A·12345 黑色轿车'],
    ['Hebrew with a mark of direction', '\u202eדוד לוי', '\u2067ab'],
  ])('%s keep every line within the terminal, and no mark of direction', (_script, technician, plate) => {
    for (const size of SIZES)
      for (const help of [false, true]) {
        const lines = linesOf(named(technician, plate), { ...size, help });
        expect(lines).toHaveLength(size.rows - 1);
        expect(inkColumns(lines).every((columns) => columns <= size.columns)).toBe(true);
        expect(lines.join('')).not.toMatch(/[\p{Cf}]/u);
      }
    expect(linesOf(named(technician, plate), { columns: 120, rows: 40 })[0]).toContain(
      technician.replace(/\p{Cf}/gu, ''),
    );
  });
});

describe('the shop reads lbf·ft and inches', () => {
  const pounds = { torque: '[ft_i].[lbf_av]', length: '[in_i]' } as const;

  it.each(views)('%s shows no figure in another unit but beside its own', (_name, view) => {
    const text = inUnits(pounds, () =>
      [...linesOf(view, { columns: 120, rows: 40 }), ...summaryLines(view.job)].join('\n'),
    );
    // What the order says of thread, reach and hexagon is in mm for every reader; what is printed stands in quotation marks.
    const own = text.replace(/"[^"]*"|\([^)]*N·m\)|\([^)]*mm\)|^.*(pitch|reach|hexagon).*$/gmu, '');
    expect(own).not.toMatch(/N·m|\bmm\b/);
  });

  it('rounds limits into the window', () => {
    const window = VIEWS['ok']?.job.torqueWindow ?? expect.fail('no view');
    expect(inUnits(pounds, () => windowFigures(window))).toBe('18.44 to 22.12');
    expect(windowFigures(window)).toBe('25.00 to 30.00');
  });
});
