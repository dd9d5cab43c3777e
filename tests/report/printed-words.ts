/** The words of a PDF where they are printed. */
import { expect } from 'vitest';
import { poppler, withoutCopies } from './poppler.ts';

export interface Word {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The words as printed: the texts that stand beside them for copying have no place of their own on the paper. */
export function wordsByPage(pdf: Uint8Array): Word[][] {
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

export function outside(words: readonly Word[]): string[] {
  expect(words.length).toBeGreaterThan(20);
  return words
    .filter(({ left, right, top, bottom }) => left < 30 || right > 566 || top < 10 || bottom > 832)
    .map(({ text }) => `off the page: ${text}`);
}

/** Boxes are as high as the font's tallest signs, so lines may touch: only a real overlap counts. */
export function overlapping(words: readonly Word[]): string[] {
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
