/** A text as pieces that one font draws in one direction, in the order in which they lie on the page from left to right. */
import bidiFactory from 'bidi-js';
import { LACKING } from './lacking.ts';
import type { Face } from './own.ts';

export interface Run {
  readonly text: string;
  /** Name of the font, as the document registered it. */
  readonly font: string;
  readonly rightToLeft: boolean;
}

/** The font for a character in a face; null where there is none. */
export type FontFor = (codePoint: number, face: Face) => string | null;

/** The text with a box for every character that cannot be drawn; neighbours that cannot be drawn are one box each. */
export function drawable(text: string, face: Face, fontFor: FontFor): string {
  if (PLAIN.test(text)) return text;
  return [...text].map((one) => (fontFor(one.codePointAt(0) ?? 0, face) === null ? LACKING : one)).join('');
}

/** What needs neither another font nor another direction: all of Latin-1. */
const PLAIN = /^[\x20-\x7e\xa0-\xff]*$/;
const SPACE = 0x20;
const RIGHT_TO_LEFT = /[\p{Script=Arabic}\p{Script=Hebrew}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u;

const bidi = bidiFactory();

/** A line that {@link drawable} gave. */
export function runsOf(line: string, face: Face, fontFor: FontFor): readonly Run[] {
  if (PLAIN.test(line) && face !== 'mono')
    return [{ text: line, font: fontFor(SPACE, face) ?? face, rightToLeft: false }];
  const levels = RIGHT_TO_LEFT.test(line) ? bidi.getEmbeddingLevels(line, 'ltr') : null;
  const runs: (Run & { readonly level: number })[] = [];
  let at = 0;
  for (const character of line) {
    const level = levels?.levels[at] ?? 0;
    at += character.length;
    const last = runs.at(-1);
    const goesOn = last !== undefined && last.level === level && /[\p{M}\u200d]/u.test(character);
    const font = goesOn ? last.font : (fontFor(character.codePointAt(0) ?? 0, face) ?? face);
    if (last !== undefined && last.font === font && last.level === level)
      runs[runs.length - 1] = { ...last, text: last.text + character };
    else runs.push({ text: character, font, rightToLeft: level % 2 === 1, level });
  }
  return inVisualOrder(runs);
}

/** Rule L2 of the Unicode Bidirectional Algorithm, over runs: from the highest level on, what lies at or above it is turned. */
function inVisualOrder(runs: readonly (Run & { readonly level: number })[]): readonly Run[] {
  let order = [...runs];
  const highest = Math.max(0, ...runs.map(({ level }) => level));
  for (let level = highest; level > 0; level--) {
    const turned: typeof order = [];
    let together: typeof order = [];
    for (const run of order) {
      if (run.level >= level) together = [run, ...together];
      else {
        turned.push(...together, run);
        together = [];
      }
    }
    order = [...turned, ...together];
  }
  return order;
}
