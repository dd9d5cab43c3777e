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
import { hasPoppler, pages, poppler } from './poppler.ts';
import { outside, overlapping, wordsByPage } from './printed-words.ts';

describe.runIf(hasPoppler)('the pages', () => {
  test('sixteen plugs are all there, on two pages behind the customer sheet; twenty-four in one line too, on three', async () => {
    const { pdf: sixteen } = await pdfOf(SIXTEEN);
    expect(pages(sixteen)).toBe(1 + 2);
    const text = poppler('pdftotext', sixteen, ['-raw', '{pdf}', '-']);
    for (let cylinder = 1; cylinder <= 16; cylinder++) expect(text).toContain(`Cyl. ${cylinder}: OK`);
    const { pdf: inline } = await pdfOf({ banks: [Array.from({ length: 24 }, (_, i) => i + 1)] });
    expect(pages(inline)).toBe(1 + 3);
  });

  test('eight cylinders as hands do them, with some exceptions, take two pages behind the customer sheet', async () => {
    const { pdf } = await pdfOf({ ...V8_BY_HAND, source: 'simulated' });
    expect(pages(pdf)).toBe(1 + 2);
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
