/**
 * Canonical JSON (RFC 8785): one value, one sequence of bytes. Hashes and signatures rest on it.
 */
import { utf8 } from './platform/bytes.ts';

export type JsonValue =
  | null
  | boolean
  | number
  | string
  | readonly JsonValue[]
  | { readonly [name: string]: JsonValue };

/** Of JSON, which `Array.isArray` cannot tell from an object where the list may not be written to. */
export const isList = (value: JsonValue): value is readonly JsonValue[] => Array.isArray(value);

const LONE_SURROGATE = /\p{Surrogate}/u;

/**
 * The canonical text of plain data. Throws a TypeError that names the place for anything JSON cannot carry whole:
 * undefined, NaN, infinities, lone surrogates, holes, functions, and objects other than plain ones. -0 becomes 0.
 */
export function canonical(value: unknown): string {
  return textOf(value, '$');
}

/** The UTF-8 bytes of {@link canonical}. */
export function canonicalBytes(value: unknown): Uint8Array {
  return utf8(canonical(value));
}

function textOf(value: unknown, place: string): string {
  if (value === null || typeof value === 'boolean') return String(value);
  if (typeof value === 'number') return numberText(value, place);
  if (typeof value === 'string') return stringText(value, place);
  if (Array.isArray(value)) return arrayText(value, place);
  if (typeof value === 'object') return objectText(value, place);
  throw new TypeError(`${place}: ${typeof value} has no canonical JSON`);
}

function numberText(value: number, place: string): string {
  if (!Number.isFinite(value)) throw new TypeError(`${place}: ${value} has no canonical JSON`);
  return JSON.stringify(value);
}

function stringText(value: string, place: string): string {
  if (LONE_SURROGATE.test(value)) throw new TypeError(`${place}: a lone surrogate has no UTF-8`);
  return JSON.stringify(value);
}

function arrayText(value: readonly unknown[], place: string): string {
  // Array.from visits holes too, which map() would skip.
  return `[${Array.from(value, (item, i) => textOf(item, `${place}[${i}]`)).join()}]`;
}

function objectText(value: object, place: string): string {
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype !== Object.prototype && prototype !== null)
    throw new TypeError(`${place}: only plain objects have canonical JSON`);
  if (Object.getOwnPropertySymbols(value).length > 0)
    throw new TypeError(`${place}: a symbol has no canonical JSON`);
  // The default order of sort() is by UTF-16 code units, which is what RFC 8785 3.2.3 asks.
  const members = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${members.map(([name, item]) => `${stringText(name, place)}:${textOf(item, `${place}.${name}`)}`).join()}}`;
}
