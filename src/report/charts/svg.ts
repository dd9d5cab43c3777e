import { clean } from '../clean.ts';

/** In user units, which a browser takes for pixels. */
export interface SvgSize {
  readonly width: number;
  readonly height: number;
}

/** Room for the captions, whatever was asked. */
export function atLeast({ width, height }: SvgSize): SvgSize {
  return { width: Math.max(320, width), height: Math.max(180, height) };
}

/** Where the plot lies within the picture. */
export interface Frame {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

const INK = '#1a1a1a';
const GREY = '#6a6a6a';

/** A picture with its content in words for who cannot see it; one grey and one ink, nothing told by colour. */
export function picture(
  { width, height }: SvgSize,
  { title, words }: { readonly title: string; readonly words: string },
  parts: readonly string[],
): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${at(width)}" height="${at(height)}" viewBox="0 0 ${at(width)} ${at(height)}" font-family="sans-serif" font-size="11">`,
    `<title>${escaped(title)}</title>`,
    `<desc>${escaped(words)}</desc>`,
    `<rect width="${at(width)}" height="${at(height)}" fill="#ffffff"/>`,
    ...parts,
    '</svg>',
    '',
  ].join('\n');
}

export function text(
  x: number,
  y: number,
  content: string,
  anchor: 'start' | 'middle' | 'end' = 'start',
): string {
  return `<text x="${at(x)}" y="${at(y)}" text-anchor="${anchor}" fill="${INK}">${escaped(content)}</text>`;
}

/** `dash` tells lines apart where there is more than one. */
export function path(points: readonly (readonly [x: number, y: number])[], dash = '', width = 1): string {
  const dashed = dash === '' ? '' : ` stroke-dasharray="${dash}"`;
  const list = points.map(([x, y]) => `${at(x)},${at(y)}`).join(' ');
  return `<polyline points="${list}" fill="none" stroke="${dash === '' ? INK : GREY}" stroke-width="${width}"${dashed}/>`;
}

export function dot(x: number, y: number): string {
  return `<circle cx="${at(x)}" cy="${at(y)}" r="2.5" fill="#ffffff" stroke="${INK}"/>`;
}

/** A filled triangle that points where the value went, with its reason where a pointer rests on it. */
export function signalMark(x: number, y: number, side: 'above' | 'below', reason: string): string {
  const tip = side === 'above' ? -6 : 6;
  const points = `${at(x)},${at(y + tip)} ${at(x - 5)},${at(y - tip / 2)} ${at(x + 5)},${at(y - tip / 2)}`;
  return `<polygon points="${points}" fill="${INK}"><title>${escaped(reason)}</title></polygon>`;
}

/** A bar, grey or filled with ink. */
export function bar(
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
  filled: boolean,
): string {
  return `<rect x="${at(box.x)}" y="${at(box.y)}" width="${at(box.width)}" height="${at(box.height)}" fill="${filled ? INK : '#d9d9d9'}" stroke="${INK}"/>`;
}

/** Text from outside cannot end an element or an attribute, and holds no character that XML forbids. */
function escaped(content: string): string {
  return clean(content)
    .replace(/[\uFFFE\uFFFF]/g, '\uFFFD')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&apos;');
}

function at(value: number): string {
  return String(Math.round(value * 100) / 100);
}
