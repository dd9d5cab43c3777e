/** The fonts that every paper embeds: the same bytes on every machine. tests/install/fonts.mjs cuts them from their packages. */
import { readFileSync } from 'node:fs';
import type { Font } from 'fontkit';
import type { OpenFont } from './character-set.ts';

export type Face = 'regular' | 'bold' | 'mono';

const FILES: Readonly<Record<Face, string>> = {
  regular: 'arimo-regular.ttf',
  bold: 'arimo-bold.ttf',
  mono: 'cousine-regular.ttf',
};

export interface OwnFont {
  /** As a document takes it: opened once for all papers, because opening costs more than drawing a page. */
  readonly font: Font;
  readonly characters: ReadonlySet<number>;
}

const opened = new Map<Face, OwnFont>();

export function ownFont(face: Face, create: OpenFont): OwnFont {
  const there = opened.get(face);
  if (there !== undefined) return there;
  const font = create(readFileSync(new URL(FILES[face], import.meta.url)));
  if ('fonts' in font) throw new Error(`${FILES[face]} is a collection, and no font`);
  const own = { font, characters: new Set(font.characterSet) };
  opened.set(face, own);
  return own;
}
