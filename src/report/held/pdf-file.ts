/**
 * A paper as plugmark writes it, read again: one revision, every byte in an object that the table names, nothing packed. What
 * another program wrote or wrote again has another form, and is not read: two programs could see two things in it.
 */

import { LANGUAGES, type Language } from '../../words/catalogue.ts';
import type { Audience } from '../reader.ts';
import { unitsOfKeyword } from '../units-keyword.ts';
import { NotPdf, type PdfValue, pdfDictionary, pdfValues } from './pdf-values.ts';

type Dictionary = ReadonlyMap<string, PdfValue>;

interface PdfObject {
  /** What it is, where it is no dictionary. */
  readonly value: PdfValue | null;
  readonly dictionary: Dictionary | null;
  readonly stream: Uint8Array | null;
}

export interface PaperFile {
  /** The file that lies inside; null where there is none. */
  readonly attached: Uint8Array | null;
  /** The program that drew it, by its own word. */
  readonly drawnBy: string;
  /** The language and the units that it names, by which it can be made again. */
  readonly audience: Audience;
  /** The texts on each page, in the order in which they were drawn. Read when asked for. Null where a text cannot be read. */
  readonly pages: () => readonly (readonly string[])[] | null;
}

/** Null for any other file. */
export function readPaper(bytes: Uint8Array): PaperFile | null {
  return orNull(() => {
    const objects = objectsOf(bytes);
    const attached = [...objects.values()].filter(
      ({ dictionary }) => nameIn(dictionary, '/Type') === '/EmbeddedFile',
    );
    const [first, ...more] = attached;
    if (more.length > 0 || first?.dictionary?.has('/Filter')) throw new NotPdf();
    return {
      attached: first?.stream ?? null,
      drawnBy: infoOf(objects, '/Producer'),
      audience: { language: languageOf(objects), units: unitsOfKeyword(infoOf(objects, '/Keywords')) },
      pages: () => orNull(() => pagesOf(objects)),
    };
  });
}

/** Whether these bytes say that they are a PDF, of whatever program. */
export const isPdf = (bytes: Uint8Array): boolean => latin1(bytes.subarray(0, 5)) === '%PDF-';

function orNull<T>(read: () => T): T | null {
  try {
    return read();
  } catch (fault) {
    if (fault instanceof NotPdf) return null;
    throw fault;
  }
}

/** One character a byte: places in the text are places in the bytes. */
const latin1 = (bytes: Uint8Array) => new TextDecoder('latin1').decode(bytes);

const HEADER = /^%PDF-1\.\d\n%.{4}\n/s;
const END = /startxref\n(\d{1,10})\n%%EOF\n?$/;
const LINE = 20;

interface Objects extends ReadonlyMap<number, PdfObject> {
  readonly trailer: Dictionary;
}

/** Every object of the file. The table names all of them, and they touch one another. */
function objectsOf(bytes: Uint8Array): Objects {
  const tail = END.exec(latin1(bytes.subarray(-64)));
  const tableAt = Number(tail?.[1] ?? bytes.length);
  const table = latin1(bytes.subarray(tableAt));
  const [head = '', count = '0'] = /^xref\n0 (\d{1,7})\n/.exec(table) ?? [];
  const size = Number(count);
  const rows = Array.from({ length: Math.min(size, table.length / LINE) }, (_, i) =>
    table.slice(head.length + i * LINE, head.length + (i + 1) * LINE),
  );
  const trailerText = /^trailer\n([\s\S]*)\nstartxref\n/.exec(table.slice(head.length + size * LINE))?.[1];
  if (rows[0] !== '0000000000 65535 f \n' || trailerText === undefined) throw new NotPdf();
  const starts = rows
    .slice(1)
    .map((row, i) => ({ number: i + 1, at: Number(/^(\d{10}) 00000 n \n$/.exec(row)?.[1] ?? Number.NaN) }))
    .sort((a, b) => a.at - b.at);
  const header = HEADER.exec(latin1(bytes.subarray(0, 20)))?.[0].length;
  if (starts[0]?.at !== header) throw new NotPdf();
  const objects = new Map<number, PdfObject>();
  for (const [i, { number, at }] of starts.entries())
    objects.set(number, objectIn(bytes.subarray(at, starts[i + 1]?.at ?? tableAt), number));
  return Object.assign(objects, { trailer: pdfDictionary(trailerText) });
}

function objectIn(bytes: Uint8Array, number: number): PdfObject {
  const text = latin1(bytes);
  const head = `${number} 0 obj\n`;
  if (!text.startsWith(head) || !text.endsWith('\nendobj\n')) throw new NotPdf();
  const body = text.slice(head.length, -'\nendobj\n'.length);
  const streamAt = body.indexOf('\nstream\n');
  if (streamAt < 0) {
    const [value = null, ...more] = pdfValues(body);
    if (more.length > 0) throw new NotPdf();
    return { value, dictionary: value?.is === 'dictionary' ? value.of : null, stream: null };
  }
  const dictionary = pdfDictionary(body.slice(0, streamAt));
  const length = numberIn(dictionary, '/Length');
  const from = head.length + streamAt + '\nstream\n'.length;
  if (length === null || text.slice(from + length) !== '\nendstream\nendobj\n') throw new NotPdf();
  return { value: null, dictionary, stream: bytes.subarray(from, from + length) };
}

const infoOf = (objects: Objects, name: string): string =>
  stringOf(objects, objects.get(referenceIn(objects.trailer, '/Info'))?.dictionary?.get(name));

function stringOf(objects: Objects, stated: PdfValue | undefined): string {
  const value = stated?.is === 'reference' ? objects.get(stated.of)?.value : stated;
  return value?.is === 'string' ? value.of : '';
}

/** English where it names none that papers are written in. */
function languageOf(objects: Objects): Language {
  const root = objects.get(referenceIn(objects.trailer, '/Root'))?.dictionary;
  const stated = stringOf(objects, root?.get('/Lang'));
  return LANGUAGES.find((language) => language === stated) ?? 'en';
}

/** A page that has more than these has more on it than was drawn. */
const OF_PAGE = [
  '/Type',
  '/Parent',
  '/MediaBox',
  '/Contents',
  '/Resources',
  '/UserUnit',
  '/StructParents',
  '/Tabs',
];

function pagesOf(objects: Objects): readonly (readonly string[])[] {
  const catalog = objects.get(referenceIn(objects.trailer, '/Root'))?.dictionary;
  const kids = objects.get(referenceIn(catalog, '/Pages'))?.dictionary?.get('/Kids');
  if (kids?.is !== 'array') throw new NotPdf();
  return kids.of.map((kid) => {
    const page = kid.is === 'reference' ? objects.get(kid.of)?.dictionary : null;
    if (page == null || [...page.keys()].some((key) => !OF_PAGE.includes(key))) throw new NotPdf();
    const { stream, dictionary } = objects.get(referenceIn(page, '/Contents')) ?? {};
    if (stream == null || dictionary?.has('/Filter')) throw new NotPdf();
    const fonts = objects.get(referenceIn(page, '/Resources'))?.dictionary?.get('/Font');
    return textsIn(latin1(stream), fonts?.is === 'dictionary' ? fonts.of : new Map(), objects);
  });
}

/** What is written on a page, one text for each time that the pen writes. */
function textsIn(content: string, fonts: Dictionary, objects: Objects): readonly string[] {
  const decoders = new Map<string, (bytes: string) => string>();
  const texts: string[] = [];
  let decode: ((bytes: string) => string) | null = null;
  let operands: PdfValue[] = [];
  for (const value of pdfValues(content)) {
    if (value.is !== 'word') {
      operands.push(value);
      continue;
    }
    const [last, before] = [operands.at(-1), operands.at(-2)];
    if (value.of === 'Tf' && before?.is === 'name') {
      decode = decoders.get(before.of) ?? decoderOf(fonts.get(before.of), objects);
      decoders.set(before.of, decode);
    } else if (WRITES.includes(value.of)) {
      if (decode === null) throw new NotPdf();
      const text = decode(stringsIn(last));
      if (text.trim() !== '') texts.push(text.trim());
    } else if (value.of === 'Do' || value.of === 'BI') texts.push(PICTURE);
    operands = [];
  }
  return texts;
}

const WRITES = ['TJ', 'Tj', "'", '"'];
/** Stands among the texts for what no text says. */
const PICTURE = '(a picture)';

const stringsIn = (value: PdfValue | undefined): string =>
  value?.is === 'array'
    ? value.of.flatMap((one) => (one.is === 'string' ? [one.of] : [])).join('')
    : value?.is === 'string'
      ? value.of
      : '';

/** From bytes to characters: Windows-1252 of a standard font, or the table that an embedded one carries. */
function decoderOf(font: PdfValue | undefined, objects: Objects): (bytes: string) => string {
  const dictionary = font?.is === 'reference' ? objects.get(font.of)?.dictionary : null;
  if (nameIn(dictionary, '/Subtype') === '/Type1' && nameIn(dictionary, '/Encoding') === '/WinAnsiEncoding')
    return (bytes) =>
      new TextDecoder('windows-1252').decode(Uint8Array.from(bytes, (one) => one.charCodeAt(0)));
  const table = objects.get(referenceIn(dictionary, '/ToUnicode'));
  if (
    nameIn(dictionary, '/Subtype') !== '/Type0' ||
    table?.stream == null ||
    table.dictionary?.has('/Filter')
  )
    throw new NotPdf();
  const characters = charactersOf(latin1(table.stream));
  return (bytes) =>
    (bytes.match(/[\s\S]{2}/g) ?? []).map((pair) => characters.get(codeOf(pair)) ?? '\uFFFD').join('');
}

const codeOf = (bytes: string) => [...bytes].reduce((code, one) => code * 256 + one.charCodeAt(0), 0);
const utf16 = (bytes: string) =>
  new TextDecoder('utf-16be').decode(Uint8Array.from(bytes, (one) => one.charCodeAt(0)));

/** A ToUnicode table (ISO 32000-1, 9.10.3). */
function charactersOf(table: string): ReadonlyMap<number, string> {
  const characters = new Map<number, string>();
  for (const [, part = ''] of table.matchAll(/beginbfchar\s([\s\S]*?)endbfchar/g)) {
    const values = pdfValues(part);
    for (let i = 0; i + 1 < values.length; i += 2)
      characters.set(codeOf(stringsIn(values[i])), utf16(stringsIn(values[i + 1])));
  }
  for (const [, part = ''] of table.matchAll(/beginbfrange\s([\s\S]*?)endbfrange/g)) {
    const values = pdfValues(part);
    for (let i = 0; i + 2 < values.length; i += 3) {
      const [from, to] = [codeOf(stringsIn(values[i])), codeOf(stringsIn(values[i + 1]))];
      const target = values[i + 2];
      if (to - from > 0xffff || target === undefined) throw new NotPdf();
      for (let code = from; code <= to; code++)
        characters.set(
          code,
          target.is === 'array'
            ? utf16(stringsIn(target.of[code - from]))
            : String.fromCodePoint(codeOf(stringsIn(target)) + code - from),
        );
    }
  }
  return characters;
}

function nameIn(dictionary: Dictionary | null | undefined, key: string): string | null {
  const value = dictionary?.get(key);
  return value?.is === 'name' ? value.of : null;
}

function numberIn(dictionary: Dictionary, key: string): number | null {
  const value = dictionary.get(key);
  return value?.is === 'number' ? value.of : null;
}

function referenceIn(dictionary: Dictionary | null | undefined, key: string): number {
  const value = dictionary?.get(key);
  if (value?.is !== 'reference') throw new NotPdf();
  return value.of;
}
