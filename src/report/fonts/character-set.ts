/** Which characters a font file can draw. */
import type { create } from 'fontkit';

export type OpenFont = typeof create;

export interface FontFace {
  /** Names the font within a collection; empty where the file is one font. */
  readonly family: string;
  readonly characters: ReadonlySet<number>;
}

/** Of a font, or of the first one in a collection; null where the file cannot be read as one. */
export function characterSetOf(bytes: Buffer, create: OpenFont): FontFace | null {
  try {
    const opened = create(bytes);
    const font = 'fonts' in opened ? opened.fonts[0] : opened;
    if (font === undefined) return null;
    return {
      family: 'fonts' in opened ? font.postscriptName : '',
      characters: new Set(font.characterSet),
    };
  } catch {
    return null;
  }
}
