/** The screen in every language: nothing is said past the catalogue, nothing is wider than the terminal, no key is lost. */
import { describe, expect, it } from 'vitest';
import type { FormKind } from '../../src/ui/form.ts';
import { newForm } from '../../src/ui/form.ts';
import { newInputState } from '../../src/ui/input-state.ts';
import { columnsOf } from '../../src/ui/printable.ts';
import { summaryLines } from '../../src/ui/summary.ts';
import { inLanguage, LANGUAGES } from '../../src/words/catalogue.ts';
import { dictionary } from '../../src/words/dictionaries.ts';
import { inPlainLetters } from '../../src/words/plain-letters.ts';
import { PSEUDO, unspoken } from '../words/pseudo.ts';
import { linesOf } from './drawn.tsx';
import { VIEWS } from './views.ts';

const SIZES = [
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
] as const;

/** Names, numbers of parts, units and keys. */
const FACTS: readonly (string | RegExp)[] = [
  /N·m|\bmm\b|M14|EX[ -]\d+|Example \w+|A\. Example|bay 2|Technician One|Enter|Esc|Ctrl/,
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
      expect(keysIn(lines), lines.join('\n')).toEqual(keysIn(english));
      const plain = inLanguage(inPlainLetters(words), () => linesOf(view, { ...size, ascii: true }));
      expect(plain.join('')).toMatch(/^[\x20-\x7e]*$/);
    }
  });
});
