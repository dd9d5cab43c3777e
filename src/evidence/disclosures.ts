/**
 * Personal text beside what is signed, in the manner of SD-JWT (RFC 9901). What is signed has `{"_sd":[digest]}` in the
 * place of the text; the disclosure `["salt","value","text"]` travels beside it. The digest is SHA-256 over the ASCII of the
 * disclosure in base64url. Narrower than the RFC: each concealed text is an object of its own with one digest, so that a
 * reader sees that something is withheld, and where; elements of arrays are never concealed, so that none can vanish.
 */
import { WITHHELD } from '../personal.ts';
import { type Problem, pathText, spokenProblem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';
import { canonicalBytes, isList, type JsonValue } from './canonical.ts';
import { type Place, replacedAt } from './personal-places.ts';
import { fromBase64url, isSame, toBase64url, utf8 } from './platform/bytes.ts';
import { sha256 } from './platform/hash.ts';
import { parseStrictJson } from './strict-json.ts';

/** The hash that all digests are made with, as `_sd_alg` names it. */
export const DIGEST_NAME = 'sha-256';
/** Name of the one member in a concealed object. */
const MEMBER = 'value';
/** 128 bits in base64url. */
const SALT_CHARACTERS = 22;
const DIGEST = /^[A-Za-z0-9_-]{43}$/;
/** A text of 1000 characters, each of them three bytes, in base64url. */
const MAX_DISCLOSURE = 5000;
/** Of the entries of a station in a package; a record has fewer, as its form says. */
const MAX_DISCLOSURES = 200_000;

/** One personal text of an entry: where it stands, and its salt; or, where the text is withheld, its digest alone. */
export type Concealed =
  | { readonly place: Place; readonly salt: string }
  | { readonly place: Place; readonly digest: string };

/** The disclosure of a text, in base64url as it is hashed and written. */
export const disclosureOf = (salt: string, text: string): string =>
  toBase64url(canonicalBytes([salt, MEMBER, text]));

export const digestOf = (disclosure: string): string => toBase64url(sha256(utf8(disclosure)));

/** A value as it is signed: digests in place of its personal texts. `texts` gives what stands at each place. */
export function concealedValue(
  value: unknown,
  concealed: readonly Concealed[],
  textAt: (place: Place) => string,
): unknown {
  const replacements = concealed.map((one) => {
    const digest = 'salt' in one ? digestOf(disclosureOf(one.salt, textAt(one.place))) : one.digest;
    return { place: one.place, by: { _sd: [digest] } };
  });
  return replacedAt(value, replacements);
}

/** A signed value with its texts back in their places, {@link WITHHELD} where one is not disclosed. */
export interface Revealed {
  readonly value: JsonValue;
  readonly concealed: readonly Concealed[];
}

/**
 * Puts disclosed texts back. Refused (problem `disclosure`, with the place): a disclosure that is not the one writing of
 * salt, name and text, or whose salt is short; one that no digest in the value belongs to; one that is there twice; a digest
 * that is there twice; `_sd` in any other form; and `...`, which conceals elements of arrays.
 */
export function revealed(
  signed: JsonValue,
  disclosures: readonly string[],
  source: string,
): Result<Revealed> {
  const read = readDisclosures(disclosures, source);
  if (!read.ok) return read;
  const reveal = new Revealing(read.value, source);
  try {
    const value = reveal.of(signed);
    const [unused] = reveal.unused();
    if (unused !== undefined)
      return err(
        problem(
          `${source}: disclosures[${unused}]`,
          sentence`this disclosure belongs to nothing in the content`,
        ),
      );
    return ok({ value, concealed: reveal.concealed });
  } catch (fault) {
    if (fault instanceof Refused) return err(fault.problem);
    throw fault;
  }
}

interface Disclosed {
  readonly index: number;
  readonly salt: string;
  readonly text: string;
}

function readDisclosures(
  disclosures: readonly string[],
  source: string,
): Result<ReadonlyMap<string, Disclosed>> {
  if (disclosures.length > MAX_DISCLOSURES)
    return err(problem(`${source}: disclosures`, sentence`${disclosures.length} are more than any file has`));
  const byDigest = new Map<string, Disclosed>();
  for (const [index, disclosure] of disclosures.entries()) {
    const where = `${source}: disclosures[${index}]`;
    const one = readDisclosure(disclosure);
    if (typeof one === 'function') return err(problem(where, one));
    const digest = digestOf(disclosure);
    if (byDigest.has(digest)) return err(problem(where, sentence`this disclosure is there twice`));
    byDigest.set(digest, { index, ...one });
  }
  return ok(byDigest);
}

function readDisclosure(disclosure: string): { readonly salt: string; readonly text: string } | Sentence {
  if (disclosure.length > MAX_DISCLOSURE) return sentence`longer than ${MAX_DISCLOSURE} characters`;
  const bytes = fromBase64url(disclosure);
  const json = bytes === null ? null : parseStrictJson(bytes, 'disclosure');
  if (bytes === null || !json?.ok) return sentence`expected JSON in strict base64url`;
  const { value } = json;
  if (!Array.isArray(value) || value.length !== 3)
    return sentence`expected a list of three: salt, name, text`;
  const [salt, name, text] = value;
  if (typeof salt !== 'string' || fromBase64url(salt) === null || salt.length < SALT_CHARACTERS)
    return sentence`expected a salt of at least 128 bits in base64url`;
  if (name !== MEMBER) return sentence`expected the name "${MEMBER}"`;
  if (typeof text !== 'string') return sentence`expected text`;
  return isSame(canonicalBytes(value), bytes)
    ? { salt, text }
    : sentence`expected the canonical writing of the list`;
}

class Refused extends Error {
  readonly problem: Problem;
  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

class Revealing {
  readonly concealed: Concealed[] = [];
  readonly #byDigest: ReadonlyMap<string, Disclosed>;
  readonly #source: string;
  readonly #digests = new Set<string>();
  readonly #path: (string | number)[] = [];

  constructor(byDigest: ReadonlyMap<string, Disclosed>, source: string) {
    this.#byDigest = byDigest;
    this.#source = source;
  }

  /** Copies only what is on the way to a text: most of a record is samples. */
  of(value: JsonValue): JsonValue {
    if (typeof value !== 'object' || value === null) return value;
    if (isList(value)) {
      let list: JsonValue[] | null = null;
      for (const [i, item] of value.entries()) {
        const revealed = this.#at(i, item);
        if (revealed === item) continue;
        list ??= [...value];
        list[i] = revealed;
      }
      return list ?? value;
    }
    if ('_sd' in value) return this.#text(value, [...this.#path]);
    if ('...' in value)
      throw this.#refused(this.#path, sentence`"..." conceals an element of a list, which no record does`);
    let changed: [string, JsonValue][] | null = null;
    for (const name of Object.keys(value)) {
      const member = value[name] ?? null;
      const revealed = this.#at(name, member);
      if (revealed === member) continue;
      changed ??= [];
      changed.push([name, revealed]);
    }
    return changed === null ? value : { ...value, ...Object.fromEntries(changed) };
  }

  #at(step: string | number, value: JsonValue): JsonValue {
    this.#path.push(step);
    const revealed = this.of(value);
    this.#path.pop();
    return revealed;
  }

  unused(): readonly number[] {
    return [...this.#byDigest].flatMap(([digest, { index }]) => (this.#digests.has(digest) ? [] : [index]));
  }

  #text(value: object, place: Place): string {
    const [[, digests] = [], ...others] = Object.entries(value);
    const [digest, ...more] = Array.isArray(digests) ? digests : [];
    if (others.length > 0 || more.length > 0 || typeof digest !== 'string' || !DIGEST.test(digest))
      throw this.#refused(place, sentence`expected "_sd" alone, with one digest of SHA-256 in base64url`);
    if (this.#digests.has(digest)) throw this.#refused(place, sentence`this digest is there twice`);
    this.#digests.add(digest);
    const disclosed = this.#byDigest.get(digest);
    this.concealed.push(disclosed === undefined ? { place, digest } : { place, salt: disclosed.salt });
    return disclosed?.text ?? WITHHELD;
  }

  #refused(place: Place, message: Sentence): Refused {
    return new Refused(problem(`${this.#source}: ${pathText(place)}`, message));
  }
}

const problem = (where: string, message: Sentence): Problem =>
  spokenProblem(
    'disclosure',
    where,
    message,
    sentence`Ask for the record again from the station that made it.`,
  );
