import type { Problem } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { hasOwnStep, readNumber, readUnsigned, sizeOf } from './number.ts';
import type { Profile } from './schema.ts';
import { scaleOf } from './unit.ts';

/** What a packet says, sample by sample. */
export interface Packet {
  /** Counts of {@link scaleOfProfile}; null where the device says that there is no value. */
  readonly samples: readonly (number | null)[];
  /** Why there is no value, in words, where there is none. */
  readonly noValue: string | undefined;
  readonly counter: number | undefined;
}

/** How the numbers of a profile become counts. */
export function scaleOfProfile({ scale, resolution, unit, packet }: Profile) {
  return scaleOf(scale, resolution ?? scale, unit, hasOwnStep(packet.samples.type));
}

/** Reads one packet. Whatever the profile does not describe is a problem that names the byte, and never a value. */
export function decodePacket(profile: Profile, bytes: Uint8Array): Result<Packet, Problem> {
  const packet = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { samples, status, counter, fixed = [] } = profile.packet;
  const { byteOrder } = profile;
  const count = sampleCount(profile, packet.length);
  if (!count.ok) return count;
  for (const { offset, hex } of fixed) {
    const actual = packet.subarray(offset, offset + hex.length / 2).toString('hex');
    if (actual !== hex) return wrong(offset, `expected the fixed bytes ${hex}, found ${actual}`);
  }
  const word = status === undefined ? 0 : readUnsigned(packet, status.offset, status.type, byteOrder);
  const described = (status?.bits ?? []).reduce((mask, { bit }) => mask + 2 ** bit, 0);
  const strange = ((word & ~described) >>> 0).toString(16);
  if (strange !== '0')
    return wrong(status?.offset ?? 0, `status bits 0x${strange} are set, which are not described`);
  const noValue = status?.bits
    .filter(({ bit, means }) => (means === 'no-value') === bitOf(word, bit) && means !== 'nothing')
    .map(({ bit, means, label }) => label ?? `status bit ${bit} is ${means === 'valid' ? 'clear' : 'set'}`);
  const values: (number | null)[] = [];
  for (let i = 0; i < count.value; i++) {
    const at = samples.offset + i * (samples.every ?? sizeOf(samples.type));
    const value = sampleAt(profile, packet, at);
    if (!value.ok) return value;
    values.push(noValue === undefined || noValue.length === 0 ? value.value : null);
  }
  return ok({
    samples: values,
    noValue: noValue?.join(', ') || undefined,
    counter:
      counter === undefined ? undefined : readUnsigned(packet, counter.offset, counter.type, byteOrder),
  });
}

const bitOf = (word: number, bit: number) => Math.floor(word / 2 ** bit) % 2 === 1;

function sampleCount({ packet: { samples } }: Profile, length: number): Result<number, Problem> {
  const size = sizeOf(samples.type);
  const every = samples.every ?? size;
  const whole = (count: number) => samples.offset + (count - 1) * every;
  if (samples.count !== 'rest') {
    const fits = length === whole(samples.count) + size || length === whole(samples.count) + every;
    return fits
      ? ok(samples.count)
      : wrong(
          Math.min(length, whole(samples.count) + size),
          `expected a packet of ${whole(samples.count) + size} bytes, found ${length}`,
        );
  }
  const count = Math.floor((length - samples.offset + every - size) / every);
  if (count < 1) return wrong(length, `expected ${size} bytes of a sample at byte ${samples.offset}`);
  const ends = [whole(count) + size, whole(count) + every];
  return ends.includes(length)
    ? ok(count)
    : wrong(whole(count) + every, `expected the end after ${count} samples, found more bytes`);
}

/** Counts; null where the number is a code for "no value". */
function sampleAt(profile: Profile, packet: Buffer, at: number): Result<number | null, Problem> {
  const { type, noValue = [] } = profile.packet.samples;
  const number = readNumber(packet, at, type, profile.byteOrder);
  if (typeof number === 'string') return ok(null);
  if (noValue.includes(number.mantissa)) return ok(null);
  const counts = Math.round(number.mantissa * 10 ** number.exponent * scaleOfProfile(profile).counts);
  if (!Number.isSafeInteger(counts)) return wrong(at, 'the number is too large to be a reading');
  return ok(counts === 0 ? 0 : counts); // never -0
}

function wrong(offset: number, message: string): Result<never, Problem> {
  return err({
    code: 'profile-packet',
    where: `byte ${offset}`,
    message: `byte ${offset}: ${message}`,
    next: 'Compare the profile with the published documentation of the device; the packet is kept as raw bytes.',
  });
}
