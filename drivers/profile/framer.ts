import type { Problem } from '../../src/problem.ts';
import { decoderOf } from './decoder.ts';
import { MOST_BYTES } from './field-schema.ts';
import { ownSize } from './field-size.ts';
import { type Decoder, type Frame, wrongFrame } from './frame.ts';
import { checksumHolds } from './frame-checksum.ts';
import { Held, type Piece } from './held.ts';
import type { Frames, Layout } from './layout-schema.ts';
import { type ByteOrder, readUnsigned, sizeOf } from './number.ts';

/*
 * Cuts what a device sends into frames. Whatever is in none of them comes out as well, so that no byte is lost unseen. Each
 * byte is looked at in a bounded number of frames, of a bounded length.
 */

/** A piece of what was sent: a frame, or bytes that are none, with the reason. */
export interface Cut extends Piece {
  readonly frame?: Frame;
  readonly problem?: Problem;
  /** It came whole, and the profile does not describe it. */
  readonly isStrange?: true;
}
type Out = (cut: Cut) => void;

const QUIET_MS = 1_000;

export interface FramerOptions {
  /** When the first byte could have come. */
  readonly openedUs: number;
  /** The device says nothing until it is asked, so the first byte begins a frame. */
  readonly fromStart: boolean;
}

/** Holds the stream of one link. Time comes in with the bytes, and where none come, by `pause`. */
export abstract class Framer {
  readonly quietUs: number;
  protected readonly held = new Held();
  protected readonly decode: Decoder;
  protected readonly layout: Layout;
  /** The frame whose bytes come next was whole. */
  protected isStrange = false;
  /** What comes belongs to no frame that began here. */
  protected skipping: boolean;
  #lastUs: number;

  constructor(layout: Layout, quietMs: number, isStartKnown: boolean, openedUs: number) {
    this.layout = layout;
    this.decode = decoderOf(layout);
    this.quietUs = quietMs * 1_000;
    this.skipping = !isStartKnown;
    this.#lastUs = openedUs;
  }

  push(bytes: Uint8Array, atUs: number, out: Out): void {
    if (atUs - this.#lastUs >= this.quietUs) this.pause(out);
    this.#lastUs = atUs;
    this.held.add(bytes, atUs);
    this.cut(out, false);
  }

  /** Nothing came for `quietUs`: what is unfinished stays so, and the next byte begins a frame. */
  pause(out: Out): void {
    if (this.held.length > 0) this.cut(out, true);
    if (this.held.length > 0) this.raw(this.held.length, UNFINISHED, out);
    this.skipping = false;
  }

  /** Whether a pause would change anything. */
  get isWaiting(): boolean {
    return this.held.length > 0 || this.skipping;
  }

  /** `final`: nothing more belongs to what is held. */
  protected abstract cut(out: Out, final: boolean): void;

  protected raw(length: number, why: string, out: Out): void {
    const problem = wrongFrame(0, why);
    out({ ...this.held.take(length), problem, ...(this.isStrange && { isStrange: true }) });
    this.isStrange = false;
  }

  protected whole(length: number, behind: number, out: Out): void {
    const piece = this.held.take(length + behind);
    const frame = piece.bytes.subarray(0, length);
    const decoded = this.decode(frame);
    const { bytes, atUs } = piece;
    if (decoded.ok) {
      out({ bytes, atUs, frame: decoded.value });
      return;
    }
    const isStrange = checksumHolds(this.layout, frame) !== false;
    out({ bytes, atUs, problem: decoded.error, ...(isStrange && { isStrange }) });
  }
}

const UNFINISHED = 'the frame was not finished';
const NO_START = 'it is not known where the frame began';
const TOO_LONG = `a frame is not longer than ${MOST_BYTES} bytes`;

class PacketFramer extends Framer {
  protected override cut(out: Out): void {
    this.whole(this.held.length, 0, out);
  }
}

class DelimiterFramer extends Framer {
  readonly #delimiter: Buffer;
  /** Bytes of what is held in which no delimiter begins. */
  #searched = 0;

  constructor(delimiter: Buffer, ...rest: ConstructorParameters<typeof Framer>) {
    super(...rest);
    this.#delimiter = delimiter;
  }

  protected override cut(out: Out): void {
    const { length } = this.#delimiter;
    for (;;) {
      const end = this.held.bytes.indexOf(this.#delimiter, this.#searched);
      if (end < 0) break;
      this.#searched = 0;
      if (this.skipping) this.raw(end + length, NO_START, out);
      else this.whole(end, length, out);
      this.skipping = false;
    }
    this.#searched = Math.max(0, this.held.length - length + 1);
    if (this.held.length < MOST_BYTES + length) return;
    this.#searched = 0;
    this.raw(this.held.length, TOO_LONG, out);
    this.skipping = true;
  }

  override pause(out: Out): void {
    super.pause(out);
    this.#searched = 0;
  }
}

class TimeFramer extends Framer {
  protected override cut(out: Out, final: boolean): void {
    if (this.held.length > MOST_BYTES) {
      this.raw(this.held.length, TOO_LONG, out);
      this.skipping = true;
    }
    if (!final || this.held.length === 0) return;
    if (this.skipping) this.raw(this.held.length, NO_START, out);
    else this.whole(this.held.length, 0, out);
  }
}

interface SizeField {
  readonly at: number;
  readonly size: number;
  readonly adds: number;
  readonly order: ByteOrder;
}

/** How long a frame is: always as long, or as its field says. */
type Length = { readonly always: number } | SizeField;

class LengthFramer extends Framer {
  readonly #length: Length;
  readonly #start: Buffer;

  constructor(length: Length, start: Buffer, ...rest: ConstructorParameters<typeof Framer>) {
    super(...rest);
    this.#length = length;
    this.#start = start;
  }

  protected override cut(out: Out, final: boolean): void {
    let why = NO_START;
    if (this.skipping && this.held.length > 0) this.raw(this.held.length, NO_START, out);
    while (this.held.length > 0) {
      if (!this.#seek(0, why, out, final)) return;
      const length = this.#lengthNow();
      if (length === undefined || length > this.held.length) {
        if (!final) return;
        why = UNFINISHED;
      } else if (length > 0) {
        const frame = this.held.bytes.subarray(0, length);
        const decoded = this.decode(frame);
        if (decoded.ok) {
          out({ ...this.held.take(length), frame: decoded.value });
          continue;
        }
        why = decoded.error.message;
        // Without a checksum it may as well be the wrong place to begin.
        this.isStrange = checksumHolds(this.layout, frame) === true;
      } else why = 'its size is none of a frame';
      // It was no frame: the next one may begin within it, where its beginning can be told.
      if (this.#start.length > 0) {
        if (!this.#seek(1, why, out, final)) return;
      } else {
        this.raw(this.held.length, why, out);
        this.skipping = !final;
      }
    }
  }

  /** Leaves out what is in front of the bytes that every frame begins with. False where they are not there yet. */
  #seek(from: number, why: string, out: Out, final: boolean): boolean {
    const start = this.#start;
    if (start.length === 0) return true;
    const { bytes } = this.held;
    const at = bytes.indexOf(start, from);
    const junk = at >= 0 ? at : final ? bytes.length : Math.max(from, partlyAt(bytes, start, from));
    if (junk > 0) this.raw(junk, why, out);
    return at >= 0;
  }

  /** Undefined where too little is there to tell, 0 where it is impossible. */
  #lengthNow(): number | undefined {
    const length = this.#length;
    if ('always' in length) return length.always;
    if (this.held.length < length.at + length.size) return undefined;
    const stated = readUnsigned(this.held.bytes, length.at, length.size, length.order) + length.adds;
    return stated >= length.at + length.size && stated <= MOST_BYTES ? stated : 0;
  }
}

/** Where the end of `bytes` may be the beginning of `start`. */
function partlyAt(bytes: Buffer, start: Buffer, from: number): number {
  for (let at = Math.max(from, bytes.length - start.length + 1); at < bytes.length; at++)
    if (bytes.subarray(at).equals(start.subarray(0, bytes.length - at))) return at;
  return bytes.length;
}

/** For one link, or one answer of the device's memory. */
export function framerOf(
  { frames, layout }: { readonly frames: Frames; readonly layout: Layout },
  { openedUs, fromStart }: FramerOptions,
): Framer {
  const start = startOf(layout);
  const quietMs = frames.by === 'packet' ? QUIET_MS : (frames.quietMs ?? QUIET_MS);
  const rest = [layout, quietMs, fromStart || start.length > 0, openedUs] as const;
  switch (frames.by) {
    case 'packet':
      return new PacketFramer(layout, QUIET_MS, true, openedUs);
    case 'delimiter':
      return new DelimiterFramer(Buffer.from(frames.hex, 'hex'), ...rest);
    case 'time':
      return new TimeFramer(...rest);
    case 'length':
      return new LengthFramer(lengthOf(layout), start, ...rest);
  }
}

/** Bytes that every frame begins with. */
function startOf({ fields: [first] }: Layout): Buffer {
  if (first?.is === 'fixed') return Buffer.from(first.hex, 'hex');
  return first?.is === 'text' ? Buffer.from(first.text, 'latin1') : Buffer.alloc(0);
}

function lengthOf(layout: Layout): Length {
  if (layout.of === 'text') throw new Error('text has no length of its own');
  const { fields, byteOrder: order } = layout;
  const i = fields.findIndex(({ is }) => is === 'size');
  const field = fields[i];
  if (field?.is !== 'size') return { always: ownSize(fields) };
  return { at: ownSize(fields.slice(0, i)), size: sizeOf(field.type), adds: field.adds, order };
}
