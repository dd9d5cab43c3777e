/**
 * A JSON reader (RFC 8259) for files that somebody may have tampered with: what it accepts has exactly one meaning.
 * Beyond plain JSON.parse it refuses duplicate names, `__proto__`, numbers that a double cannot hold as written,
 * lone surrogates, invalid UTF-8, a byte order mark, and nesting deeper than {@link MAX_DEPTH}.
 */

import { type Problem, spokenProblem } from '../problem.ts';
import type { ProblemCode } from '../problem-code.ts';
import { err, ok, type Result } from '../result.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';
import { canonicalBytes, isList, type JsonValue } from './canonical.ts';
import { fromUtf8, isSame, utf8 } from './platform/bytes.ts';
import { Fault, MAX_DEPTH, StrictReader } from './strict-reader.ts';
import { firstInvalidByte } from './utf8.ts';

/**
 * Reads one JSON text. `source` names it in the problem, whose `where` ends in the byte offset and the JSON path;
 * codes: `not-utf8`, `json-syntax`, `json-duplicate-name`, `json-name`, `json-number`, `json-string`, `json-depth`.
 */
export function parseStrictJson(bytes: Uint8Array, source: string): Result<JsonValue> {
  const quick = quickly(bytes);
  return quick === undefined ? parseSlowly(bytes, source) : ok(quick);
}

function parseSlowly(bytes: Uint8Array, source: string): Result<JsonValue> {
  const bad = firstInvalidByte(bytes);
  if (bad !== null)
    return err(problem('not-utf8', `${source}: byte ${bad}`, sentence`this is not valid UTF-8 text`));
  const text = fromUtf8(bytes);
  try {
    return ok(new StrictReader(text).document());
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const byte = utf8(text.slice(0, fault.at)).length;
    const place = fault.path === '' ? '' : `, ${fault.path}`;
    return err(problem(fault.code, `${source}: byte ${byte}${place}`, fault.sentence));
  }
}

/** Reads one JSON text that must also stand in canonical form (RFC 8785); codes: those above and `json-not-canonical`. */
export function parseCanonicalJson(bytes: Uint8Array, source: string): Result<JsonValue> {
  const quick = quickly(bytes);
  if (quick !== undefined) return ok(quick);
  const json = parseSlowly(bytes, source);
  if (!json.ok || isSame(canonicalBytes(json.value), bytes)) return json;
  return err(problem('json-not-canonical', source, sentence`the content is not canonical JSON`));
}

/**
 * The value, where the engine writes what it read in the same bytes and its names are sorted: that is canonical form, and
 * read so some twenty times faster than below. Any doubt is `undefined`, and left to the reader that can name it: names that look like numbers, which the engine moves, and escapes that may be half a surrogate.
 */
function quickly(bytes: Uint8Array): JsonValue | undefined {
  if (firstInvalidByte(bytes) !== null) return undefined;
  const text = fromUtf8(bytes);
  if (text.includes('\\ud')) return undefined;
  try {
    const value: JsonValue = JSON.parse(text);
    return JSON.stringify(value) === text && isPlain(value, MAX_DEPTH) ? value : undefined;
  } catch {
    return undefined;
  }
}

/** Whether names are sorted and none is `__proto__`, numbers are held exactly, and nothing is nested too deep. */
function isPlain(value: JsonValue, depth: number): boolean {
  if (typeof value === 'number') return Math.abs(value) <= Number.MAX_SAFE_INTEGER;
  if (typeof value !== 'object' || value === null) return true;
  if (depth === 0) return false;
  if (isList(value)) return value.every((item) => isPlain(item, depth - 1));
  let before = '';
  for (const name of Object.keys(value)) {
    if (name < before || name === '__proto__' || !isPlain(value[name] ?? null, depth - 1)) return false;
    before = name;
  }
  return true;
}

const problem = (code: ProblemCode, where: string, message: Sentence): Problem =>
  spokenProblem(code, where, message, NEXT);

const NEXT = sentence`Ask for the file again from where it came, or correct it at that place.`;
