import { clean } from './clean.ts';

/**
 * The standard fonts of a PDF know Windows-1252 and nothing else. A letter with an accent outside it loses the accent,
 * a few letters that are no letter plus accent stand in `BASE`, and every other character is written as its code point
 * between square brackets, neighbours together: `[U+738B 5C0F 660E]`. `changed` tells the page to say so, and the text
 * as it was goes into the PDF beside the printed one, so that a reader program and a copy show the name itself.
 */
export interface Latin {
  readonly text: string;
  readonly changed: boolean;
}

const WINDOWS_1252_EXTRAS = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

const BASE: Readonly<Record<string, string>> = {
  Đ: 'D',
  đ: 'd',
  Ħ: 'H',
  ħ: 'h',
  ı: 'i',
  Ł: 'L',
  ł: 'l',
  Ŧ: 'T',
  ŧ: 't',
  ẞ: 'SS',
  '\u2010': '-',
  '\u2011': '-',
  '\u2212': '-',
  Ω: 'Ohm',
};

/** Text that the standard fonts can draw; see {@link Latin}. */
export function latin(raw: string): Latin {
  const asked = clean(raw).normalize('NFC');
  const parts: string[] = [];
  let foreign: string[] = [];
  const endForeign = () => {
    if (foreign.length > 0) parts.push(`[U+${foreign.join(' ')}]`);
    foreign = [];
  };
  for (const character of asked) {
    const plain = drawable(character);
    if (plain === null) foreign.push(codePoint(character));
    else {
      endForeign();
      parts.push(plain);
    }
  }
  endForeign();
  const text = parts.join('');
  return { text, changed: text !== asked };
}

function drawable(character: string): string | null {
  if (inWindows1252(character)) return character;
  const base = BASE[character] ?? character.normalize('NFD').replace(/\p{M}+/gu, '');
  return base !== '' && [...base].every(inWindows1252) ? base : null;
}

function codePoint(character: string): string {
  return (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
}

function inWindows1252(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  return (
    (code >= 0x20 && code <= 0x7e) ||
    (code >= 0xa0 && code <= 0xff) ||
    WINDOWS_1252_EXTRAS.includes(character)
  );
}
