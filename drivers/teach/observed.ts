import type { ProfileUnit } from '../profile/unit.ts';

/** What a device sent while its display showed a figure. */

/** Packets in the order in which they came. */
export type Sent = readonly Buffer[];

export interface Stated {
  /** As the display of the tool showed it: of a pull its peak, of a gap what stood there at the end. */
  readonly figure: number;
  readonly sent: Sent;
}

export interface Observed {
  readonly quantity: 'torque' | 'length';
  /** Of the display. */
  readonly unit: ProfileUnit;
  /** The smallest step of the display, in `unit`. */
  readonly step: string;
  /** Untouched: what a wrench sends at zero. */
  readonly rest: Sent;
  readonly stated: readonly Stated[];
}

/** How the bytes may be cut into frames, and what that makes of each part. */
export interface Cutting {
  readonly frames: { readonly by: 'packet' | 'length' } | { readonly by: 'delimiter'; readonly hex: string };
  readonly of: 'bytes' | 'text';
  readonly cut: (sent: Sent) => readonly Buffer[];
}

/** The frames of each part. */
export interface Parts {
  readonly rest: readonly Buffer[];
  readonly stated: readonly { readonly figure: number; readonly frames: readonly Buffer[] }[];
}

export const partsOf = ({ rest, stated }: Observed, { cut }: Cutting): Parts => ({
  rest: cut(rest),
  stated: stated.map(({ figure, sent }) => ({ figure, frames: cut(sent) })),
});

const LONGEST = 64;
/** Fewer show nothing. */
export const FEWEST = 6;

/** Every cutting that all parts agree with, the plainest first. */
export function cuttingsOf({ rest, stated }: Observed): readonly Cutting[] {
  const parts = [rest, ...stated.map(({ sent }) => sent)];
  return [...delimiters(parts), ...packets(parts), ...lengths(parts)];
}

function* delimiters(parts: readonly Sent[]): Iterable<Cutting> {
  for (const hex of ['0d0a', '0a', '0d']) {
    const delimiter = Buffer.from(hex, 'hex');
    const cut = (sent: Sent) => split(Buffer.concat(sent), delimiter);
    const frames = parts.flatMap(cut);
    if (frames.length < FEWEST || !frames.every(isText)) continue;
    yield { frames: { by: 'delimiter', hex }, of: 'text', cut };
    return;
  }
}

/** What is between two of them; what is in front of the first and behind the last may be cut. */
function split(bytes: Buffer, delimiter: Buffer): Buffer[] {
  const frames: Buffer[] = [];
  for (let at = bytes.indexOf(delimiter); at >= 0; ) {
    const from = at + delimiter.length;
    at = bytes.indexOf(delimiter, from);
    if (at >= 0) frames.push(bytes.subarray(from, at));
  }
  return frames;
}

const isText = (frame: Buffer) => frame.length > 0 && frame.every((byte) => byte >= 0x20 && byte < 0x7f);

function* packets(parts: readonly Sent[]): Iterable<Cutting> {
  const all = parts.flat();
  const [first] = all;
  if (first === undefined || all.length < FEWEST || first.length > LONGEST) return;
  if (all.every(({ length }) => length === first.length))
    yield { frames: { by: 'packet' }, of: 'bytes', cut: (sent) => sent };
}

/** Frames of one length in a stream, which begin with bytes that come again at that distance, and only so. */
function* lengths(parts: readonly Sent[]): Iterable<Cutting> {
  const streams = parts.map((sent) => Buffer.concat(sent));
  for (let length = 3; length <= LONGEST; length++) {
    // Where the stream was first heard is no beginning: each pair of bytes that comes again may be one.
    const starts = startsOf(streams, length);
    for (const start of starts) {
      const cut = (sent: Sent) => {
        const bytes = Buffer.concat(sent);
        const frames: Buffer[] = [];
        for (let at = bytes.indexOf(start); at >= 0 && at + length <= bytes.length; at += length)
          frames.push(bytes.subarray(at, at + length));
        return frames;
      };
      yield { frames: { by: 'length' }, of: 'bytes', cut };
    }
    if (starts.length > 0) return;
  }
}

/** Two bytes at least: one comes by chance. */
function startsOf(streams: readonly Buffer[], length: number): readonly Buffer[] {
  const [first] = streams;
  if (first === undefined || first.length < FEWEST * length) return [];
  const starts: Buffer[] = [];
  for (let at = 0; at < length; at++) {
    const start = first.subarray(at, at + 2);
    const again = streams.every((stream) => {
      let from = stream.indexOf(start);
      if (from < 0 || from >= length) return false;
      for (; from + 2 <= stream.length; from += length)
        if (!stream.subarray(from, from + 2).equals(start)) return false;
      return true;
    });
    if (again) starts.push(start);
  }
  return starts;
}
