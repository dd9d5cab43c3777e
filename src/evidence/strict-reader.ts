/** The reader behind `parseStrictJson`: character by character, so that it can name the place of every fault. */
import type { ProblemCode } from '../problem-code.ts';
import { type Sentence, sentence } from '../words/catalogue.ts';
import type { JsonValue } from './canonical.ts';

export const MAX_DEPTH = 64;
/** No double needs more text than this; the bound keeps the comparison of digits cheap. */
const MAX_NUMBER_LENGTH = 40;

/** A fault at an offset of the text, counted in UTF-16 units, and the JSON path to it. */
export class Fault extends Error {
  readonly code: ProblemCode;
  readonly sentence: Sentence;
  readonly at: number;
  readonly path: string;
  constructor(code: ProblemCode, message: Sentence, at: number, path: string) {
    super(message());
    this.sentence = message;
    this.code = code;
    this.at = at;
    this.path = path;
  }
}

/** Reads one JSON text; throws a {@link Fault}. */
export class StrictReader {
  private readonly text: string;
  private at = 0;
  private readonly path: (string | number)[] = [];

  constructor(text: string) {
    this.text = text;
  }

  document(): JsonValue {
    if (this.text.startsWith('\uFEFF'))
      this.fail('json-syntax', sentence`a byte order mark stands before the JSON`);
    const value = this.value();
    if (this.at < this.text.length) this.fail('json-syntax', sentence`something follows the end of the JSON`);
    return value;
  }

  private value(): JsonValue {
    this.space();
    const value = this.bare();
    this.space();
    return value;
  }

  private bare(): JsonValue {
    switch (this.text[this.at]) {
      case '{':
        return this.object();
      case '[':
        return this.array();
      case '"':
        return this.string();
      case 't':
        return this.word('true', true);
      case 'f':
        return this.word('false', false);
      case 'n':
        return this.word('null', null);
      default:
        return this.number();
    }
  }

  private object(): JsonValue {
    const members: Record<string, JsonValue> = {};
    this.enter();
    this.space();
    if (!this.take('}')) {
      do this.member(members);
      while (this.take(','));
      this.expect('}', sentence`expected a comma or the end of the object`);
    }
    return members;
  }

  private member(members: Record<string, JsonValue>): void {
    this.space();
    const start = this.at;
    if (this.text[start] !== '"') this.fail('json-syntax', sentence`expected a name in double quotes`);
    const name = this.string();
    // An assignment to it would change the prototype and leave no member behind.
    if (name === '__proto__') this.fail('json-name', sentence`the name __proto__ is not accepted`, start);
    if (Object.hasOwn(members, name))
      this.fail('json-duplicate-name', sentence`the name ${shown(name)} stands twice in one object`, start);
    this.space();
    this.expect(':', sentence`expected a colon`);
    this.path.push(name);
    members[name] = this.value();
    this.path.pop();
  }

  private array(): JsonValue {
    const items: JsonValue[] = [];
    this.enter();
    this.space();
    if (!this.take(']')) {
      do {
        this.path.push(items.length);
        items.push(this.value());
        this.path.pop();
      } while (this.take(','));
      this.expect(']', sentence`expected a comma or the end of the array`);
    }
    return items;
  }

  private string(): string {
    const start = this.at++;
    let escaped = false;
    for (;;) {
      const code = this.text.charCodeAt(this.at);
      if (Number.isNaN(code)) this.fail('json-syntax', sentence`the text ends inside a string`);
      if (code < 0x20) this.fail('json-syntax', sentence`a control character stands in a string`);
      this.at++;
      if (code === 0x22) break;
      if (code === 0x5c) {
        escaped = true;
        this.escape();
      }
    }
    const token = this.text.slice(start, this.at);
    const value: string = escaped ? JSON.parse(token) : token.slice(1, -1);
    if (escaped && /\p{Surrogate}/u.test(value))
      this.fail('json-string', sentence`half a surrogate pair stands in a string`, start);
    return value;
  }

  private escape(): void {
    const form = /["\\/bfnrt]|u[0-9a-fA-F]{4}/y;
    form.lastIndex = this.at;
    const found = form.exec(this.text);
    if (found === null) this.fail('json-syntax', sentence`an escape in a string is not one of JSON`);
    this.at += found[0].length;
  }

  private number(): number {
    const form = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
    form.lastIndex = this.at;
    const text = form.exec(this.text)?.[0];
    if (text === undefined) this.fail('json-syntax', sentence`expected a JSON value`);
    const value = Number(text);
    if (
      text.length > MAX_NUMBER_LENGTH ||
      !Number.isFinite(value) ||
      Math.abs(value) > Number.MAX_SAFE_INTEGER
    )
      this.fail('json-number', sentence`a number is too large or too long to be held exactly`);
    if (decimal(text) !== decimal(JSON.stringify(value)))
      this.fail('json-number', sentence`the number ${text} would be read as ${value}`);
    this.at += text.length;
    return value;
  }

  private word<T extends JsonValue>(word: string, value: T): T {
    this.expect(word, sentence`expected a JSON value`);
    return value;
  }

  private enter(): void {
    // Every array or object on the way down has left one step in the path.
    if (this.path.length >= MAX_DEPTH)
      this.fail('json-depth', sentence`nested deeper than ${MAX_DEPTH} levels`);
    this.at++;
  }

  private space(): void {
    while (' \t\n\r'.includes(this.text[this.at] ?? 'end')) this.at++;
  }

  private take(token: string): boolean {
    const there = this.text.startsWith(token, this.at);
    if (there) this.at += token.length;
    return there;
  }

  private expect(token: string, message: Sentence): void {
    if (!this.take(token)) this.fail('json-syntax', message);
  }

  private fail(code: ProblemCode, message: Sentence, at = this.at): never {
    const steps = this.path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${shown(step)}`));
    throw new Fault(code, message, at, steps.join('').replace(/^\./, ''));
  }
}

/** A name from a hostile file, short and without anything that moves the cursor. */
function shown(name: string): string {
  return /^\w{1,40}$/.test(name) ? name : JSON.stringify(name.slice(0, 40).replace(/[^\x20-\x7e]/g, '?'));
}

/** Sign, digits and power of ten: `4.50`, `45e-1` and `4.5` are one number, `-0` and `0` are not. */
function decimal(text: string): string {
  const [, sign = '', whole = '', fraction = '', power = '0'] =
    /^(-?)(\d+)(?:\.(\d+))?(?:[eE]([+-]?\d+))?$/.exec(text) ?? [];
  const digits = (whole + fraction).replace(/^0+/, '');
  const significant = digits.replace(/0+$/, '');
  if (significant === '') return `${sign}0`;
  return `${sign}${significant}e${Number(power) - fraction.length + digits.length - significant.length}`;
}
