/**
 * The record inside a PDF. plugmark puts it in as it is; a program that saved the file again may have packed it. Of the pages
 * nothing is read here.
 */
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import { w } from '../../words/catalogue.ts';
import { refused, tooLarge } from './given.ts';
import { unpacked } from './unpacked.ts';

/** Pages of a few hundred kilobytes around a record. */
export const MAX_PDF_BYTES = 2 * MAX_RECORD_BYTES;
const BEGINNING = '{"payload":"';
/** A dictionary in front of a stream is short. */
const DICTIONARY = 4000;

/** Problems: `no-record-in-pdf`, `file-too-large`. */
export async function recordInPdf(name: string, bytes: Uint8Array): Promise<Uint8Array> {
  // One character a byte: places in the text are places in the bytes.
  const pdf = new TextDecoder('latin1').decode(bytes);
  const found: Uint8Array[] = [];
  for (const { dictionary, from, to } of streamsIn(pdf)) {
    const content = await contentOf(name, bytes.subarray(from, to), dictionary);
    if (content !== null) found.push(content);
  }
  const [first, ...more] = found;
  if (first === undefined)
    throw refused(
      'no-record-in-pdf',
      name,
      () => w`no record is inside this PDF`,
      () =>
        w`Ask for the record (*.record.json), or for the PDF as the shop made it: some programs drop what is attached.`,
    );
  if (more.length > 0)
    throw refused(
      'no-record-in-pdf',
      name,
      () => w`${found.length} records are inside this PDF, and it should be one`,
    );
  return first;
}

interface Stream {
  readonly dictionary: string;
  readonly from: number;
  readonly to: number;
}

function* streamsIn(pdf: string): Generator<Stream> {
  const starts = /stream\r?\n/g;
  for (let start = starts.exec(pdf); start !== null; start = starts.exec(pdf)) {
    const from = start.index + start[0].length;
    const before = pdf.slice(Math.max(0, start.index - DICTIONARY), start.index);
    const dictionary = before.slice(before.lastIndexOf(' obj') + 1);
    if (pdf.startsWith('end', start.index - 3) || !/>>\s*$/.test(dictionary)) continue;
    const to = endOf(pdf, dictionary, from);
    yield { dictionary, from, to };
    starts.lastIndex = to;
  }
}

/** By the length that is stated, directly or in another object; else by the word behind it. */
function endOf(pdf: string, dictionary: string, from: number): number {
  const [, first = '', reference] = /\/Length\s+(\d{1,9})(\s+\d+\s+R)?/.exec(dictionary) ?? [];
  const stated =
    reference === undefined
      ? Number(first)
      : Number(
          new RegExp(`(?:^|[\\r\\n ])${first}\\s+\\d+\\s+obj\\s+(\\d{1,9})\\s`).exec(pdf)?.[1] ?? Number.NaN,
        );
  if (/^\s*endstream/.test(pdf.slice(from + stated, from + stated + 20))) return from + stated;
  const end = pdf.indexOf('endstream', from);
  return end < 0 ? pdf.length : end;
}

/** Null for any other stream. */
async function contentOf(name: string, stream: Uint8Array, dictionary: string): Promise<Uint8Array | null> {
  const isPacked = /\/Filter\s*\[?\s*\/FlateDecode\s*\]?/.test(dictionary);
  if (!isPacked) return begins(stream) ? stream : null;
  if (!/\/EmbeddedFile\b/.test(dictionary) && !/\/Params\b/.test(dictionary)) return null;
  const content = await unpacked(new Blob([Uint8Array.from(stream)]), 'deflate', MAX_RECORD_BYTES);
  if (content === 'too-large') throw tooLarge(name, MAX_RECORD_BYTES + 1, MAX_RECORD_BYTES);
  return typeof content !== 'string' && begins(content) ? content : null;
}

const begins = (bytes: Uint8Array): boolean =>
  [...BEGINNING].every((character, i) => bytes[i] === character.charCodeAt(0));
