import type { Problem } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';

// The strict byte reader and writer that the codecs of Bluetooth's own layouts are built on (all fields little-endian).
// A fault ends the codec at once and leaves it as a Problem that names the byte offset and what was expected there.

class LayoutFault extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

/** `where` is `<what> byte <offset>`. */
function layoutProblem(what: string, offset: number, message: string): Problem {
  return {
    code: 'bluetooth-layout',
    where: `${what} byte ${offset}`,
    message: `${what}, byte ${offset}: ${message}`,
    next: 'Check the firmware of the tool with its maker; the bytes do not follow the Bluetooth layout.',
  };
}

/** Reads fields one after another; any shortfall is a fault at the field that it cuts. */
export class Cursor {
  readonly #what: string;
  readonly #bytes: Buffer;
  #at = 0;

  constructor(what: string, bytes: Uint8Array) {
    this.#what = what;
    this.#bytes = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  }

  get at(): number {
    return this.#at;
  }

  uint(size: number, field: string): number {
    return this.#bytes.readUIntLE(this.#take(size, field), size);
  }

  int(size: number, field: string): number {
    return this.#bytes.readIntLE(this.#take(size, field), size);
  }

  rest(): Uint8Array {
    const bytes = this.#bytes.subarray(this.#at);
    this.#at = this.#bytes.length;
    return bytes;
  }

  fail(offset: number, message: string): never {
    throw new LayoutFault(layoutProblem(this.#what, offset, message));
  }

  end(): void {
    const extra = this.#bytes.length - this.#at;
    if (extra > 0) this.fail(this.#at, `expected the end after ${this.#at} bytes, found ${extra} more`);
  }

  #take(size: number, field: string): number {
    const offset = this.#at;
    const left = this.#bytes.length - offset;
    if (left < size) this.fail(offset, `expected ${size} bytes of ${field}, found ${left}`);
    this.#at += size;
    return offset;
  }
}

/** Writes fields one after another; a value that does not fit its field is a fault at that field's offset. */
export class Writer {
  readonly #what: string;
  readonly #parts: Uint8Array[] = [];
  #at = 0;

  constructor(what: string) {
    this.#what = what;
  }

  uint(value: number, size: number, field: string): void {
    this.#integer(value, 0, 2 ** (8 * size) - 1, size, field);
  }

  int(value: number, size: number, field: string): void {
    const half = 2 ** (8 * size - 1);
    this.#integer(value, -half, half - 1, size, field);
  }

  raw(bytes: Uint8Array): void {
    this.#parts.push(bytes);
    this.#at += bytes.length;
  }

  fail(message: string): never {
    throw new LayoutFault(layoutProblem(this.#what, this.#at, message));
  }

  bytes(): Uint8Array {
    return Uint8Array.from(Buffer.concat(this.#parts));
  }

  #integer(value: number, min: number, max: number, size: number, field: string): void {
    if (!Number.isInteger(value) || value < min || value > max) {
      this.fail(`expected ${field} as a whole number from ${min} to ${max}, got ${value}`);
    }
    const part = Buffer.alloc(size);
    if (min < 0) part.writeIntLE(value, 0, size);
    else part.writeUIntLE(value, 0, size);
    this.raw(part);
  }
}

function caught<T>(run: () => T): Result<T, Problem> {
  try {
    return ok(run());
  } catch (error) {
    if (error instanceof LayoutFault) return err(error.problem);
    throw error;
  }
}

/** Runs `read` over all of `bytes`; bytes left over are a fault too. */
export function decode<T>(what: string, bytes: Uint8Array, read: (cursor: Cursor) => T): Result<T, Problem> {
  return caught(() => {
    const cursor = new Cursor(what, bytes);
    const value = read(cursor);
    cursor.end();
    return value;
  });
}

export function encode(what: string, write: (writer: Writer) => void): Result<Uint8Array, Problem> {
  return caught(() => {
    const writer = new Writer(what);
    write(writer);
    return writer.bytes();
  });
}
