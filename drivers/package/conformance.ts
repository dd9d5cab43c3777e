/** What a driver must withstand before a shop trusts it: a stricter link and clock than any real one, and bytes that no tool sends. */
import { isSession, type Made, madeListSchema, type Testable } from './contract.ts';

export interface Checked {
  readonly check: string;
  /** Null where it passed. */
  readonly fault: string | null;
  /** A fault of the tool's own form, which no driver can help: frames without a checksum. */
  readonly isWarning: boolean;
}

/** What a frame shows, in steps of the driver; null where it has no value. */
interface Frame {
  readonly bytes: Uint8Array;
  readonly counts: readonly (number | null)[];
}

class Fault extends Error {}

/** Runs every check of the suite. Nothing is written or joined; the driver's code runs in this process. */
export function conformance(driver: Testable, seed = 1): readonly Checked[] {
  const frames = framesOf(driver);
  return CHECKS.map(([check, body, kind]) => {
    const isWarning = kind === 'warns';
    try {
      withoutClock(() => body(driver, frames, seed));
      return { check, isWarning, fault: null };
    } catch (error) {
      return { check, isWarning, fault: error instanceof Error ? error.message : String(error) };
    }
  });
}

type Body = (driver: Testable, frames: readonly Frame[], seed: number) => void;

const CHECKS: readonly (readonly [check: string, body: Body, kind?: 'warns'])[] = [
  ['its examples are read as the display shows them', eachExample],
  ['the examples hold several figures, and for a wrench one below zero', figuresDiffer],
  ['what the tool sends when it has no value is no figure', unknownValues],
  ['frames that come in pieces, or several at once, are read the same', pieces],
  ['a frame that comes twice is read as the same figure', duplicates],
  ['a frame that is cut short gives no other figure', cutFrames],
  ['a frame that lacks a byte gives no other figure', lostBytes, 'warns'],
  ['after a lost frame the next ones are read as they are', gaps],
  ['nothing of a link that ended gets into the next one', disconnects],
  ['two links at once do not disturb each other', twoLinks],
  ['bytes that it was given stay as they are, and are not needed later', bytesAreLent],
  ['any damaged bit, and any noise, gives readings of the contract or raw bytes', noise],
  ['bytes that it cannot read come back raw', keepsRaw],
];

const framesOf = ({ examples, exponent, quantity }: Testable): readonly Frame[] =>
  examples.map(({ hex, shows }) => ({
    bytes: Uint8Array.from(Buffer.from(hex, 'hex')),
    counts: shows.map((figure) =>
      figure === null ? null : Math.round(figure * 10 ** (-exponent - (quantity === 'length' ? 3 : 0))),
    ),
  }));

function opened({ session }: Testable) {
  const made = session();
  if (!isSession(made)) throw new Fault('session() gives no object with take()');
  const take = (bytes: Uint8Array): readonly Made[] => {
    const list = madeListSchema.safeParse(made.take(bytes));
    if (!list.success)
      throw new Fault(
        `take(${hexOf(bytes)}) gives what is no list of readings: ${list.error.issues[0]?.message}`,
      );
    return list.data;
  };
  return take;
}

const countsOf = (made: readonly Made[]) => made.flatMap((one) => ('value' in one ? [one.value] : []));
const rawOf = (made: readonly Made[]) =>
  made.reduce((sum, one) => sum + ('raw' in one ? one.raw.length : 0), 0);
const hexOf = (bytes: Uint8Array) => Buffer.from(bytes).toString('hex').slice(0, 80);
const wordsOf = (counts: readonly (number | null)[]) =>
  counts.length === 0 ? 'nothing' : counts.map((one) => one ?? 'no value').join(', ');

function same(bytes: Uint8Array, read: readonly (number | null)[], wanted: readonly (number | null)[]): void {
  if (read.length === wanted.length && read.every((one, i) => one === wanted[i])) return;
  throw new Fault(
    `${hexOf(bytes)} is read as ${wordsOf(read)} instead of ${wordsOf(wanted)} (in steps of the driver)`,
  );
}

function eachExample(driver: Testable, frames: readonly Frame[]): void {
  for (const { bytes, counts } of frames) same(bytes, countsOf(opened(driver)(bytes)), counts);
}

function figuresDiffer({ quantity }: Testable, frames: readonly Frame[]): void {
  const figures = new Set(frames.flatMap(({ counts }) => counts.filter((one) => one !== null)));
  if (figures.size < 3) throw new Fault(`there are ${figures.size} different figures; three are needed`);
  if (quantity === 'torque' && ![...figures].some((one) => one < 0))
    throw new Fault('no figure is below zero, as when a plug is loosened');
}

function unknownValues(driver: Testable, frames: readonly Frame[]): void {
  const without = frames.filter(({ counts }) => counts.includes(null));
  if (without.length === 0 && driver.alwaysHasValue !== true)
    throw new Fault(
      'no example shows what the tool sends when it has no value; say alwaysHasValue where it always has one',
    );
  for (const { bytes, counts } of without) same(bytes, countsOf(opened(driver)(bytes)), counts);
}

const joined = (parts: readonly Uint8Array[]) => Uint8Array.from(parts.flatMap((part) => [...part]));

function pieces(driver: Testable, frames: readonly Frame[]): void {
  if (!driver.streams) return;
  const all = joined(frames.map(({ bytes }) => bytes));
  const wanted = frames.flatMap(({ counts }) => counts);
  for (let size = 1; size <= all.length; size++) {
    const take = opened(driver);
    const read: (number | null)[] = [];
    for (let at = 0; at < all.length; at += size) read.push(...countsOf(take(all.slice(at, at + size))));
    same(all, read, wanted);
  }
}

function duplicates(driver: Testable, frames: readonly Frame[]): void {
  for (const { bytes, counts } of frames) {
    const take = opened(driver);
    take(bytes);
    const again = countsOf(take(bytes));
    if (again.length > 0) same(bytes, again, counts);
  }
}

/** No figure may come of it that the whole frame does not show. */
function noOther(bytes: Uint8Array, read: readonly (number | null)[], { counts }: Frame): void {
  const other = read.find((one) => one !== null && !counts.includes(one));
  if (other !== undefined)
    throw new Fault(`${hexOf(bytes)}, a part of a frame, is read as ${other} (in steps of the driver)`);
}

function cutFrames(driver: Testable, frames: readonly Frame[]): void {
  for (const frame of frames)
    for (let end = 1; end < frame.bytes.length; end++) {
      const cut = frame.bytes.slice(0, end);
      noOther(cut, countsOf(opened(driver)(cut)), frame);
    }
}

function lostBytes(driver: Testable, frames: readonly Frame[]): void {
  for (const frame of frames)
    for (let at = 0; at < frame.bytes.length && frame.bytes.length > 1; at++) {
      const without = joined([frame.bytes.slice(0, at), frame.bytes.slice(at + 1)]);
      noOther(without, countsOf(opened(driver)(without)), frame);
    }
}

function gaps(driver: Testable, frames: readonly Frame[]): void {
  for (let lost = 0; lost < frames.length; lost++) {
    const take = opened(driver);
    for (const [i, { bytes, counts }] of frames.entries())
      if (i !== lost) same(bytes, countsOf(take(bytes)), counts);
  }
}

function disconnects(driver: Testable, frames: readonly Frame[]): void {
  for (const before of frames)
    for (const { bytes, counts } of frames) {
      opened(driver)(before.bytes.slice(0, Math.ceil(before.bytes.length / 2)));
      const made = opened(driver)(bytes);
      same(bytes, countsOf(made), counts);
      if (rawOf(made) > 0) throw new Fault(`bytes of the link before come out with ${hexOf(bytes)}`);
    }
}

function twoLinks(driver: Testable, frames: readonly Frame[]): void {
  const [one, other] = [opened(driver), opened(driver)];
  for (const { bytes, counts } of frames) {
    if (driver.streams) {
      const half = Math.floor(bytes.length / 2);
      const first = countsOf(one(bytes.slice(0, half)));
      same(bytes, countsOf(other(bytes)), counts);
      same(bytes, [...first, ...countsOf(one(bytes.slice(half)))], counts);
    } else {
      same(bytes, countsOf(one(bytes)), counts);
      same(bytes, countsOf(other(bytes)), counts);
    }
  }
}

function bytesAreLent(driver: Testable, frames: readonly Frame[]): void {
  for (const { bytes, counts } of frames) {
    const take = opened(driver);
    const parts = driver.streams ? [bytes.slice(0, 1), bytes.slice(1)] : [bytes.slice()];
    const read = parts.flatMap((part) => {
      const before = part.slice();
      const made = countsOf(take(part));
      if (!part.every((byte, i) => byte === before[i]))
        throw new Fault(`take(${hexOf(before)}) changes the bytes`);
      part.fill(0xee);
      return made;
    });
    same(bytes, read, counts);
  }
}

/** Small, and the same on every machine. */
function draws(seed: number): () => number {
  let state = seed >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

const NOISE = 5_000;

function noise(driver: Testable, frames: readonly Frame[], seed: number): void {
  const random = draws(seed);
  const one = opened(driver);
  for (const { bytes } of frames)
    for (let bit = 0; bit < 8 * bytes.length; bit++) {
      const damaged = bytes.slice();
      damaged[bit >> 3] = (damaged[bit >> 3] ?? 0) ^ (1 << (bit & 7));
      opened(driver)(damaged);
      one(damaged);
    }
  for (let i = 0; i < NOISE; i++) {
    const bytes = Uint8Array.from({ length: 1 + Math.floor(random() * 40) }, () =>
      Math.floor(random() * 256),
    );
    const made = one(bytes);
    if (made.length > 1 + 41 + bytes.length)
      throw new Fault(`${made.length} readings come of ${bytes.length} bytes`);
  }
}

function keepsRaw(driver: Testable, _frames: readonly Frame[], seed: number): void {
  const random = draws(seed + 1);
  const take = opened(driver);
  let raw = 0;
  for (let i = 0; i < 500; i++)
    raw += rawOf(take(Uint8Array.from({ length: 20 }, () => Math.floor(random() * 256))));
  if (raw === 0) throw new Fault('of 10 000 bytes of noise none came back raw: bytes are passed over unseen');
}

/** The station gives the time; a driver that looks at a clock of its own, waits or draws lots cannot be replayed. */
function withoutClock<T>(work: () => T): T {
  const used = (what: string) => () => {
    throw new Fault(`the driver uses ${what}; the station has the clock`);
  };
  const { Date: RealDate, setTimeout: later, setInterval: again, queueMicrotask: soon } = globalThis;
  const { random } = Math;
  const now = performance.now;
  globalThis.Date = new Proxy(RealDate, { construct: used('Date'), apply: used('Date'), get: used('Date') });
  Object.assign(globalThis, {
    setTimeout: used('setTimeout'),
    setInterval: used('setInterval'),
    queueMicrotask: used('queueMicrotask'),
  });
  Math.random = used('Math.random');
  performance.now = used('performance.now');
  try {
    return work();
  } finally {
    Object.assign(globalThis, {
      Date: RealDate,
      setTimeout: later,
      setInterval: again,
      queueMicrotask: soon,
    });
    Math.random = random;
    performance.now = now;
  }
}
