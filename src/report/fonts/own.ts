/** The fonts that every paper embeds: the same bytes on every machine. tests/install/fonts.mjs cuts them from their packages. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { characterSetOf, type OpenFont } from './character-set.ts';

export type Face = 'regular' | 'bold' | 'mono';

const FILES: Readonly<Record<Face, string>> = {
  regular: 'arimo-regular.ttf',
  bold: 'arimo-bold.ttf',
  mono: 'cousine-regular.ttf',
};

export interface OwnFont {
  readonly bytes: Buffer;
  readonly characters: ReadonlySet<number>;
}

const fileOf = (face: Face): string => fileURLToPath(new URL(FILES[face], import.meta.url));

/** The font that a document begins with. */
export const FIRST_FONT = fileOf('regular');

const opened = new Map<Face, OwnFont>();

export function ownFont(face: Face, create: OpenFont): OwnFont {
  const there = opened.get(face);
  if (there !== undefined) return there;
  const bytes = readFileSync(fileOf(face));
  const read = characterSetOf(bytes, create);
  if (read === null) throw new Error(`${FILES[face]} is no font`);
  const font = { bytes, characters: read.characters };
  opened.set(face, font);
  return font;
}
