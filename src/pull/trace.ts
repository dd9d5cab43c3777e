import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';

/**
 * Compact coding of a run of samples for the record: each list of integers is written as differences, each difference
 * zigzag-mapped ((d << 1) ^ (d >> 63)) and cut into 7-bit groups, least significant first, the top bit set on all
 * but the last; the bytes as base64. Times are coded as differences of the steps, because a sampled stream has nearly
 * equal steps; counts as differences from sample to sample.
 */
export interface Samples {
  /** Arrival on the monotonic clock, whole microseconds. */
  readonly atUs: readonly number[];
  /** The tool's own integer step. */
  readonly counts: readonly number[];
}

export interface CodedSamples {
  readonly count: number;
  readonly startUs: number;
  readonly times: string;
  readonly counts: string;
}

function putVarint(out: number[], value: number): void {
  let rest = value < 0 ? -2 * value - 1 : 2 * value;
  while (rest >= 128) {
    out.push((rest % 128) + 128);
    rest = Math.floor(rest / 128);
  }
  out.push(rest);
}

/** Codes at least one sample; times must not fall. */
export function encodeSamples(samples: Samples): CodedSamples {
  const startUs = samples.atUs[0];
  if (startUs === undefined) throw new RangeError('no samples to code');
  const times: number[] = [];
  const counts: number[] = [];
  let lastAt = startUs;
  let lastStep = 0;
  let lastCount = 0;
  samples.atUs.forEach((at, i) => {
    if (i > 0) {
      putVarint(times, at - lastAt - lastStep);
      lastStep = at - lastAt;
      lastAt = at;
    }
    const count = samples.counts[i] ?? 0;
    putVarint(counts, count - lastCount);
    lastCount = count;
  });
  const text = (bytes: number[]) => Buffer.from(bytes).toString('base64');
  return { count: samples.atUs.length, startUs, times: text(times), counts: text(counts) };
}

function varints(text: string, expected: number, where: string): Result<number[]> {
  const bad = (message: string): Result<number[]> => err(problem(where, message));
  const bytes = Buffer.from(text, 'base64');
  if (bytes.toString('base64') !== text) return bad('expected base64 without breaks or spare bits');
  const out: number[] = [];
  let value = 0;
  let scale = 1;
  for (let offset = 0; offset < bytes.length; offset++) {
    const byte = bytes[offset] ?? 0;
    value += (byte & 127) * scale;
    scale *= 128;
    if (value > Number.MAX_SAFE_INTEGER) return bad(`byte ${offset}: the integer is too large`);
    if (byte >= 128) continue;
    if (byte === 0 && scale > 128) return bad(`byte ${offset}: expected the shortest form of the integer`);
    out.push(signed(value));
    value = 0;
    scale = 1;
  }
  if (scale !== 1) return bad('the last integer is cut off');
  if (out.length !== expected) return bad(`expected ${expected} integers, found ${out.length}`);
  return ok(out);
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

/** When the samples were taken, or the place where the coding is broken. */
export function decodeTimes({ times, count, startUs }: CodedSamples): Result<number[]> {
  const steps = varints(times, count - 1, 'times');
  if (!steps.ok) return steps;
  const atUs = [startUs];
  let at = startUs;
  let step = 0;
  for (const change of steps.value) {
    step += change;
    if (step < 0)
      return err(problem('times', `sample ${atUs.length + 1} lies before the one in front of it`));
    at += step;
    atUs.push(at);
  }
  return ok(atUs);
}

/** The samples back, or the place where the coding is broken. Accepts only what {@link encodeSamples} would write. */
export function decodeSamples(coded: CodedSamples): Result<Samples> {
  const atUs = decodeTimes(coded);
  if (!atUs.ok) return atUs;
  const differences = varints(coded.counts, coded.count, 'counts');
  if (!differences.ok) return differences;
  let count = 0;
  const counts = differences.value.map((difference) => {
    count += difference;
    return count;
  });
  return ok({ atUs: atUs.value, counts });
}
