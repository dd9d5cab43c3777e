/** Values and operators as they are written in a PDF (ISO 32000-1, 7.3), read strictly and without guessing. */

/** A name keeps its slash, so that it is told from a string; a reference is `12 0 R`. */
export type PdfValue =
  | { readonly is: 'number'; readonly of: number }
  | { readonly is: 'name' | 'string' | 'word'; readonly of: string }
  | { readonly is: 'reference'; readonly of: number }
  | { readonly is: 'array'; readonly of: readonly PdfValue[] }
  | { readonly is: 'dictionary'; readonly of: ReadonlyMap<string, PdfValue> };

/** The text cannot be read as values. */
export class NotPdf extends Error {}

/** Nothing that plugmark writes is nested deeper. */
const DEEPEST = 12;

const TOKEN =
  /[\s\0]*(?:(?<dictionary><<)|(?<end>>>|\])|(?<array>\[)|<(?<hex>[0-9A-Fa-f\s]*)>|(?<open>\()|(?<name>\/[^\s\0()<>[\]{}/%]*)|(?<number>[+-]?(?:\d+\.?\d*|\.\d+)(?![\w.]))|(?<word>[A-Za-z'"*][A-Za-z0-9*]*))/y;

/** Every value of a text, in its order. Operators of a page are words. Throws {@link NotPdf}. */
export function pdfValues(text: string): readonly PdfValue[] {
  const { values, at } = read(text, 0, '', 0);
  if (text.slice(at).trim() !== '') throw new NotPdf();
  return values;
}

/** The one dictionary that a text is. Throws {@link NotPdf}. */
export function pdfDictionary(text: string): ReadonlyMap<string, PdfValue> {
  const [value, ...more] = pdfValues(text);
  if (value?.is !== 'dictionary' || more.length > 0) throw new NotPdf();
  return value.of;
}

function read(
  text: string,
  from: number,
  end: string,
  depth: number,
): { readonly values: readonly PdfValue[]; readonly at: number } {
  if (depth > DEEPEST) throw new NotPdf();
  const values: PdfValue[] = [];
  let at = from;
  while (true) {
    TOKEN.lastIndex = at;
    const found = TOKEN.exec(text);
    if (found === null) {
      if (end !== '') throw new NotPdf();
      return { values, at };
    }
    at = TOKEN.lastIndex;
    const { dictionary, array, hex, open, name, number, word, end: ended } = found.groups ?? {};
    if (ended !== undefined) {
      if (ended !== end) throw new NotPdf();
      return { values, at };
    }
    if (dictionary !== undefined || array !== undefined) {
      const inside = read(text, at, dictionary === undefined ? ']' : '>>', depth + 1);
      at = inside.at;
      values.push(array === undefined ? dictionaryOf(inside.values) : { is: 'array', of: inside.values });
    } else if (open !== undefined) {
      const string = literal(text, at);
      at = string.at;
      values.push({ is: 'string', of: string.of });
    } else if (hex !== undefined) values.push({ is: 'string', of: fromHex(hex.replace(/\s+/g, '')) });
    else if (name !== undefined) values.push({ is: 'name', of: name });
    else if (number !== undefined) values.push({ is: 'number', of: Number(number) });
    else if (word === 'R') values.push(reference(values));
    else if (word !== undefined) values.push({ is: 'word', of: word });
  }
}

function reference(values: PdfValue[]): PdfValue {
  const [generation, object] = [values.pop(), values.pop()];
  if (generation?.is !== 'number' || generation.of !== 0 || object?.is !== 'number') throw new NotPdf();
  return { is: 'reference', of: object.of };
}

function dictionaryOf(values: readonly PdfValue[]): PdfValue {
  const of = new Map<string, PdfValue>();
  for (let i = 0; i < values.length; i += 2) {
    const [key, value] = [values[i], values[i + 1]];
    if (key?.is !== 'name' || value === undefined || of.has(key.of)) throw new NotPdf();
    of.set(key.of, value);
  }
  return { is: 'dictionary', of };
}

/** A string in brackets, from behind the first one; its bytes as characters. */
function literal(text: string, from: number): { readonly of: string; readonly at: number } {
  let open = 1;
  let of = '';
  for (let at = from; at < text.length; at++) {
    const character = text[at] ?? '';
    if (character === '\\') {
      at += 1;
      of += ESCAPED[text[at] ?? ''] ?? text[at] ?? '';
      continue;
    }
    if (character === '(') open += 1;
    if (character === ')') open -= 1;
    if (open === 0) return { of, at: at + 1 };
    of += character;
  }
  throw new NotPdf();
}

const ESCAPED: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };

function fromHex(hex: string): string {
  if (hex.length % 2 !== 0) throw new NotPdf();
  return (hex.match(/../g) ?? []).map((pair) => String.fromCharCode(Number.parseInt(pair, 16))).join('');
}
