import { describe, expect, test } from 'vitest';
import {
  type JobOptions,
  LONG_NAMES,
  OTHER_SCRIPTS,
  pdfOf,
  SIXTEEN,
  TROUBLED,
  V8_BY_HAND,
  V8_WITH_REDO,
} from './fixtures.ts';
import { hasPoppler, pages, poppler, withoutCopies } from './poppler.ts';

describe.runIf(hasPoppler)('the pages', () => {
  test('sixteen plugs are all there, on two pages; twenty-four in one line too, on three', async () => {
    const { pdf: sixteen } = await pdfOf(SIXTEEN);
    expect(pages(sixteen)).toBe(2);
    const text = poppler('pdftotext', sixteen, ['-raw', '{pdf}', '-']);
    for (let cylinder = 1; cylinder <= 16; cylinder++) expect(text).toContain(`Cyl. ${cylinder}: OK`);
    const { pdf: inline } = await pdfOf({ banks: [Array.from({ length: 24 }, (_, i) => i + 1)] });
    expect(pages(inline)).toBe(3);
  });

  test('eight cylinders as hands do them, with some exceptions, take two pages', async () => {
    const { pdf } = await pdfOf({ ...V8_BY_HAND, source: 'simulated' });
    expect(pages(pdf)).toBe(2);
    const text = poppler('pdftotext', pdf, ['-raw', '{pdf}', '-']);
    expect(text.match(/run-down/g)?.length).toBe(15);
    for (const words of ['Link to wrench lost', 'the same plug once more', 'What this document proves'])
      expect(text).toContain(words);
  });

  const everyShape: readonly (readonly [string, JobOptions])[] = [
    ['eight cylinders, one done again', V8_WITH_REDO],
    ['eight by hand', V8_BY_HAND],
    ['pulls up to number 140', { runDowns: { 1: 3, 3: 60, 5: 12, 7: 50, 8: 6 } }],
    ['sixteen', SIXTEEN],
    ['one', { banks: [[1]] }],
    ['long names', LONG_NAMES],
    ['other scripts', OTHER_SCRIPTS],
    ['all exceptions', TROUBLED],
    ['nothing done', { skip: [1, 2, 3, 4, 5, 6, 7, 8] }],
  ];
  test.each(everyShape)('no word leaves the page or lies on another: %s', async (_, options) => {
    const { pdf: shape } = await pdfOf(options);
    const problems = wordsByPage(shape).flatMap((words) => [...outside(words), ...overlapping(words)]);
    expect(problems).toEqual([]);
  });
});

interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The words as printed: the texts that stand beside them for copying have no place of their own on the paper. */
function wordsByPage(pdf: Uint8Array): Word[][] {
  const pages = poppler('pdftotext', withoutCopies(pdf), ['-bbox', '{pdf}', '-']).split('<page ').slice(1);
  const pattern = /<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/g;
  return pages.map((page) =>
    [...page.matchAll(pattern)].map(([, left, top, right, bottom, text]) => ({
      text: text ?? '',
      left: Number(left),
      top: Number(top),
      right: Number(right),
      bottom: Number(bottom),
    })),
  );
}

function outside(words: readonly Word[]): string[] {
  expect(words.length).toBeGreaterThan(20);
  return words
    .filter(({ left, right, top, bottom }) => left < 30 || right > 566 || top < 10 || bottom > 832)
    .map(({ text }) => `off the page: ${text}`);
}

/** Boxes are as high as the font's tallest signs, so lines may touch: only a real overlap counts. */
function overlapping(words: readonly Word[]): string[] {
  const found: string[] = [];
  words.forEach((a, index) => {
    for (const b of words.slice(index + 1)) {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      if (across > 0.5 && down > 2.5) found.push(`${a.text} lies on ${b.text}`);
    }
  });
  return found;
}
