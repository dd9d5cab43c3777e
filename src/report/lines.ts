const ELLIPSIS = '…';

/**
 * Text broken into at most `most` lines no wider than `width`: at spaces, after a hyphen before a letter, and inside a
 * word only when it is wider than a line. What does not fit ends in an ellipsis. `measure` gives a text's width. A line
 * keeps the space that it was broken at, so that the lines read aloud or copied are the text again.
 */
export function wrapped(
  text: string,
  width: number,
  most: number,
  measure: (text: string) => number,
): { readonly lines: readonly string[]; readonly clipped: boolean } {
  const lines: string[] = [];
  let line = '';
  for (const piece of pieces(text)) {
    if (measure((line + piece).trimEnd()) <= width) {
      line += piece;
      continue;
    }
    if (line !== '') lines.push(line);
    const cut = hardCut(piece, width, measure);
    lines.push(...cut.slice(0, -1));
    line = cut.at(-1) ?? '';
  }
  lines.push(line.trimEnd());
  if (lines.length <= most) return { lines, clipped: false };
  return {
    lines: [...lines.slice(0, most - 1), ended(lines[most - 1] ?? '', width, measure)],
    clipped: true,
  };
}

function pieces(text: string): readonly string[] {
  return text.split(/(?<= )(?! )|(?<=-)(?=\p{L})/u);
}

function hardCut(word: string, width: number, measure: (text: string) => number): string[] {
  const parts: string[] = [];
  let part = '';
  for (const character of word) {
    if (part !== '' && measure((part + character).trimEnd()) > width) {
      parts.push(part);
      part = '';
    }
    part += character;
  }
  return [...parts, part];
}

function ended(line: string, width: number, measure: (text: string) => number): string {
  let kept = [...line];
  while (kept.length > 0 && measure(kept.join('') + ELLIPSIS) > width) kept = kept.slice(0, -1);
  return kept.join('').trimEnd() + ELLIPSIS;
}
