import { err, ok } from '../../src/result.ts';
import { checksumOf, checksumSize } from './checksum.ts';
import type { TextField } from './field-schema.ts';
import { scalingOf, unitCodes } from './figure.ts';
import { countsOf, type Decoder, Draft, TOO_LARGE, wrongFrame } from './frame.ts';
import type { Layout } from './layout-schema.ts';

/*
 * A layout of text. Each field takes what it can from where the one before ended, and never gives anything back: one pass,
 * whatever the profile and the device say. There are no regular expressions in it.
 */

/** Where the field ends, or what is wrong. */
type Read = (text: Buffer, at: number, into: TextDraft) => number | string;

class TextDraft extends Draft {
  decimals = -1;
  angleDecimals = -1;
}

export function textDecoder(layout: Extract<Layout, { readonly of: 'text' }>): Decoder {
  const reads = layout.fields.map(readOf);
  const value = scalingOf(layout, 'value');
  const angle = scalingOf(layout, 'angle');
  const codes = unitCodes(layout);
  return (text) => {
    const draft = new TextDraft();
    let at = 0;
    for (const read of reads) {
      const end = read(text, at, draft);
      if (typeof end === 'string') return wrong(at, end);
      at = end;
    }
    if (at < text.length) return wrong(at, `expected the end, found ${shown(text, at)}`);
    const decimals = value?.decimals[draft.unit] ?? 0;
    if (!draft.value.none && draft.decimals !== decimals)
      return wrong(0, `expected ${decimals} digits behind the decimal mark, found ${draft.decimals}`);
    const angleDecimals = angle?.decimals[0] ?? -1;
    if (angle !== undefined && !draft.angle.none && draft.angleDecimals !== angleDecimals)
      return wrong(
        0,
        `expected ${angleDecimals} digits behind the mark of the angle, found ${draft.angleDecimals}`,
      );
    const counts = countsOf(draft.value, value?.counts[draft.unit] ?? Number.NaN, draft.negative);
    const turned = angle === undefined ? null : countsOf(draft.angle, angle.counts[0] ?? Number.NaN, false);
    if (Number.isNaN(counts) || Number.isNaN(turned)) return wrong(0, TOO_LARGE);
    const unit = codes[draft.unit]?.unit;
    const known = draft.why === undefined;
    return ok({
      counts: [known ? counts : null],
      angleCounts: angle === undefined ? undefined : [known ? turned : null],
      noValue: draft.why,
      counter: draft.counter,
      unit: unit === '°' || unit === 'turn' ? undefined : unit,
    });
  };
}

const wrong = (at: number, message: string) => err(wrongFrame(at, message));

const shown = (text: Buffer, at: number) =>
  at >= text.length ? 'the end' : JSON.stringify(text.toString('latin1', at, at + 16));

function readOf(field: TextField): Read {
  switch (field.is) {
    case 'text':
      return literal(Buffer.from(field.text, 'latin1'));
    case 'fixed':
      return literal(Buffer.from(field.hex, 'hex'));
    case 'blanks':
      return (text, at) => pastBlanks(text, at);
    case 'value':
    case 'angle':
      return figure(field);
    case 'unit': {
      const find = oneOf(field.texts.map(({ text }) => text));
      return (text, at, into) => {
        const found = find(text, at);
        if (found === undefined) return `the unit ${shown(text, at)} is not described`;
        into.unit = found.index;
        return found.end;
      };
    }
    case 'status': {
      const find = oneOf(field.texts.map(({ text }) => text));
      return (text, at, into) => {
        const found = find(text, at);
        const entry = field.texts[found?.index ?? -1];
        if (found === undefined || entry === undefined)
          return `the status ${shown(text, at)} is not described`;
        if (entry.means !== 'valid') into.means(entry.means, true, entry.label ?? entry.text);
        return found.end;
      };
    }
    case 'counter':
      return digitsRead(field.digits);
    case 'unused':
      return unusedRead(field);
    case 'checksum': {
      const { kind, from = 0 } = field;
      const sum = checksumOf(kind);
      const digits = 2 * checksumSize(kind);
      return (text, at) => {
        const stated = hexIn(text, at, digits);
        if (stated === undefined)
          return `expected ${digits} hexadecimal digits of a checksum, found ${shown(text, at)}`;
        const actual = sum(text, from, at, at, at);
        return stated === actual
          ? at + digits
          : `the checksum is ${stated.toString(16)}, but the text makes ${actual.toString(16)}`;
      };
    }
  }
}

function literal(wanted: Buffer): Read {
  return (text, at) =>
    startsWith(text, at, wanted)
      ? at + wanted.length
      : `expected ${JSON.stringify(wanted.toString('latin1'))}, found ${shown(text, at)}`;
}

function startsWith(text: Buffer, at: number, wanted: Buffer): boolean {
  for (let i = 0; i < wanted.length; i++) if (text[at + i] !== wanted[i]) return false;
  return true;
}

/** The longest of the texts that is there. */
function oneOf(texts: readonly string[]) {
  const sorted = texts
    .map((text, index) => ({ wanted: Buffer.from(text, 'latin1'), index }))
    .toSorted((a, b) => b.wanted.length - a.wanted.length);
  return (text: Buffer, at: number): { readonly index: number; readonly end: number } | undefined => {
    for (const { wanted, index } of sorted)
      if (startsWith(text, at, wanted)) return { index, end: at + wanted.length };
    return undefined;
  };
}

const isDigit = (byte: number | undefined): byte is number =>
  byte !== undefined && byte >= 0x30 && byte <= 0x39;

function pastBlanks(text: Buffer, at: number): number {
  let i = at;
  while (text[i] === 0x20 || text[i] === 0x09) i += 1;
  return i;
}

/** More digits are no figure of a tool, and would not be exact. */
const MOST_DIGITS = 15;

/** Blanks, a sign, blanks, digits with or without a decimal mark. */
function figure(field: Extract<TextField, { readonly is: 'value' | 'angle' }>): Read {
  const isValue = field.is === 'value';
  const mark = field.decimalMark.charCodeAt(0);
  const none = oneOf(field.noValue ?? []);
  return (text, at, into) => {
    const slot = isValue ? into.value : into.angle;
    let i = pastBlanks(text, at);
    const code = none(text, i);
    slot.none = code !== undefined;
    if (code !== undefined) return code.end;
    const isNegative = text[i] === 0x2d;
    if (isNegative || text[i] === 0x2b) i = pastBlanks(text, i + 1);
    let digits = 0;
    let mantissa = 0;
    let decimals = 0;
    let behind = false;
    for (; i < text.length; i++) {
      const byte = text[i];
      if (isDigit(byte)) {
        mantissa = mantissa * 10 + byte - 0x30;
        digits += 1;
        if (behind) decimals += 1;
      } else if (byte === mark && !behind && isDigit(text[i + 1])) behind = true;
      else break;
    }
    if (digits === 0) return `expected a figure, found ${shown(text, at)}`;
    if (digits > MOST_DIGITS) return `a figure of ${digits} digits is no reading`;
    slot.mantissa = isNegative ? -mantissa : mantissa;
    if (isValue) into.decimals = decimals;
    else into.angleDecimals = decimals;
    return i;
  };
}

function digitsRead(digits: number): Read {
  return (text, at, into) => {
    let counter = 0;
    for (let i = at; i < at + digits; i++) {
      const byte = text[i];
      if (!isDigit(byte)) return `expected a counter of ${digits} digits, found ${shown(text, at)}`;
      counter = counter * 10 + byte - 0x30;
    }
    into.counter = counter;
    return at + digits;
  };
}

function unusedRead({ characters = 0, until }: Extract<TextField, { readonly is: 'unused' }>): Read {
  if (until === undefined)
    return (text, at) =>
      at + characters <= text.length
        ? at + characters
        : `expected ${characters} characters, found ${shown(text, at)}`;
  const wanted = Buffer.from(until, 'latin1');
  return (text, at) => {
    const end = text.indexOf(wanted, at);
    return end < 0 ? `expected ${JSON.stringify(until)} further on` : end;
  };
}

function hexIn(text: Buffer, at: number, digits: number): number | undefined {
  const hex = text.toString('latin1', at, at + digits);
  let value = 0;
  for (const character of hex) {
    const digit = '0123456789abcdef'.indexOf(character.toLowerCase());
    if (digit < 0) return undefined;
    value = value * 16 + digit;
  }
  return hex.length === digits ? value : undefined;
}
