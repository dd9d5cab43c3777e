import { fromBase64, toBase64 } from '../evidence/platform/bytes.ts';
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';

/**
 * Compact coding of a run of samples for the record: each list of integers is written as differences, each difference
 * zigzag-mapped ((d << 1) ^ (d >> 63)) and cut into 7-bit groups, least significant first, the top bit set on all
 * but the last; the bytes as base64. Times are coded as differences of the steps, because a sampled stream has nearly
 * equal steps; counts and angles as differences from sample to sample.
 */
export interface Samples {
  /** Arrival on the monotonic clock, whole microseconds. */
  readonly atUs: readonly number[];
  /** The tool's own integer step. */
  readonly counts: readonly number[];
  /** The angle of each, in its own step; absent where the tool sends none. */
  readonly angles?: readonly number[];
}

export interface CodedSamples {
  readonly count: number;
  readonly startUs: number;
  readonly times: string;
  readonly counts: string;
  readonly angles?: string;
}

function putVarint(out: number[], value: number): void {
  let rest = value < 0 ? -2 * value - 1 : 2 * value;
  while (rest >= 128) {
    out.push((rest % 128) | 128);
    rest = Math.floor(rest / 128);
  }
  out.push(rest);
}

/** Codes at least one sample; times must not fall. */
export function encodeSamples(samples: Samples): CodedSamples {
  const startUs = samples.atUs[0];
  if (startUs === undefined) throw new RangeError('no samples to code');
  const times: number[] = [];
  let lastAt = startUs;
  let lastStep = 0;
  samples.atUs.forEach((at, i) => {
    if (i === 0) return;
    putVarint(times, at - lastAt - lastStep);
    lastStep = at - lastAt;
    lastAt = at;
  });
  return {
    count: samples.atUs.length,
    startUs,
    times: asText(times),
    counts: differences(samples.counts),
    ...(samples.angles === undefined ? {} : { angles: differences(samples.angles) }),
  };
}

function differences(values: readonly number[]): string {
  const out: number[] = [];
  let last = 0;
  for (const value of values) {
    putVarint(out, value - last);
    last = value;
  }
  return asText(out);
}

const asText = (bytes: readonly number[]): string => toBase64(Uint8Array.from(bytes));

/** Hands over the integers of a list one by one; the place where the coding is broken, or null. */
function eachInteger(
  text: string,
  expected: number,
  where: string,
  take: (value: number) => void,
): Problem | null {
  const bytes = fromBase64(text);
  if (bytes === null) return problem(where, 'expected base64 without breaks or spare bits');
  let found = 0;
  let value = 0;
  let scale = 1;
  for (let offset = 0; offset < bytes.length; offset++) {
    const byte = bytes[offset] ?? 0;
    value += (byte & 127) * scale;
    scale *= 128;
    if (value > Number.MAX_SAFE_INTEGER) return problem(where, `byte ${offset}: the integer is too large`);
    if (byte >= 128) continue;
    if (byte === 0 && scale > 128)
      return problem(where, `byte ${offset}: expected the shortest form of the integer`);
    take(signed(value));
    found++;
    value = 0;
    scale = 1;
  }
  if (scale !== 1) return problem(where, 'the last integer is cut off');
  return found === expected ? null : problem(where, `expected ${expected} integers, found ${found}`);
}

/** 0, 1, 2, 3 … stand for 0, -1, 1, -2 …; nearly all of them are short enough for arithmetic in 32 bits. */
function signed(value: number): number {
  if (value < 2 ** 31) return (value >>> 1) ^ -(value & 1);
  return value % 2 === 0 ? value / 2 : -(value + 1) / 2;
}

function problem(where: string, message: string): Problem {
  return {
    code: 'samples-unreadable',
    where,
    message,
    next: 'The record is damaged here; ask for another copy.',
  };
}

/** When each sample was taken, one by one; the place where the coding is broken, or null. */
function eachTime({ times, count, startUs }: CodedSamples, take: (atUs: number) => void): Problem | null {
  let at = startUs;
  let step = 0;
  let n = 1;
  let back: number | null = null;
  take(at);
  const fault = eachInteger(times, count - 1, 'times', (change) => {
    step += change;
    at += step;
    n++;
    if (step < 0) back ??= n;
    take(at);
  });
  if (fault !== null || back === null) return fault;
  return problem('times', `sample ${back} lies before the one in front of it`);
}

/** When the last sample was taken; null where the coding is broken. */
export function lastTakenUs(coded: CodedSamples): number | null {
  let last = coded.startUs;
  const fault = eachTime(coded, (atUs) => {
    last = atUs;
  });
  return fault === null ? last : null;
}

/** The samples back, or the place where the coding is broken. Accepts only what {@link encodeSamples} would write. */
export function decodeSamples(coded: CodedSamples): Result<Samples> {
  const atUs: number[] = [];
  const counts: number[] = [];
  const angles: number[] = [];
  const fault =
    eachTime(coded, (at) => atUs.push(at)) ??
    eachSum(coded.counts, coded.count, 'counts', counts) ??
    (coded.angles === undefined ? null : eachSum(coded.angles, coded.count, 'angles', angles));
  if (fault !== null) return err(fault);
  return ok({ atUs, counts, ...(coded.angles === undefined ? {} : { angles }) });
}

/** Figures from their differences, one behind the other into `into`; the place where the coding is broken, or null. */
function eachSum(text: string, expected: number, where: string, into: number[]): Problem | null {
  let last = 0;
  return eachInteger(text, expected, where, (difference) => {
    last += difference;
    into.push(last);
  });
}
