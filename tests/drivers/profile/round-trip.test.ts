import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decoderOf } from '../../../drivers/profile/decoder.ts';
import { scalingOf } from '../../../drivers/profile/figure.ts';
import { encodeFrame } from '../../../sim/devices/encode.ts';
import { scaled } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { byteCase, type Case, textCase } from './described.ts';

/** N·m in one of each; by definition of pound, foot and standard gravity. */
const NM = { N·m: 1, cN·m: 0.01, lbf·ft: 0.3048 * 0.45359237 * 9.80665, kgf·cm: 0.0980665 };

/** What was put in comes out, to a thousandth of the step of its numbers. */
function holds({ layout, content, scale, step, unit }: Case): void {
  const frame = good(decoderOf(layout)(encodeFrame(layout, content)));
  const value = scalingOf(layout, 'value');
  const angle = scalingOf(layout, 'angle');
  expect(frame.counts).toHaveLength(content.samples.length);
  for (const [i, told] of content.samples.entries()) {
    const counts = frame.counts[i] ?? null;
    if (told.value === null) expect(counts).toBeNull();
    else {
      const nm = told.value * scale * NM[unit];
      expect(Math.abs(scaled(counts ?? Number.NaN, value?.exponent ?? 0) - nm)).toBeLessThanOrEqual(
        (step * NM[unit]) / 1_000 + Math.abs(nm) * 1e-12,
      );
    }
    if (angle !== undefined)
      expect(frame.angleCounts?.[i]).toBe(told.value === null ? null : (told.angle ?? 0) * 5);
  }
  if (layout.fields.some(({ is }) => is === 'counter')) expect(frame.counter).toBe(content.counter);
  if (layout.fields.some(({ is }) => is === 'unit')) expect(frame.unit).toBe(unit);
}

describe('what is written by a description is read by it', () => {
  test('bytes', () => {
    fc.assert(fc.property(byteCase, holds), { numRuns: 3_000 });
  });
  test('text', () => {
    fc.assert(fc.property(textCase, holds), { numRuns: 1_000 });
  });
});

describe('what is not written by it is no reading', () => {
  test('cut short or longer, a frame of a length of its own is raw', () => {
    fc.assert(
      fc.property(
        byteCase,
        fc.nat(40),
        fc.uint8Array({ minLength: 1, maxLength: 5 }),
        ({ layout, content }, cut, more) => {
          fc.pre(layout.fields.every((field) => field.is !== 'samples' || field.count !== 'rest'));
          const frame = encodeFrame(layout, content);
          const decode = decoderOf(layout);
          expect(decode(frame.subarray(0, cut % frame.length)).ok).toBe(false);
          expect(decode(Buffer.concat([frame, more])).ok).toBe(false);
        },
      ),
      { numRuns: 1_000 },
    );
  });

  test('a spoilt bit under a CRC is raw', () => {
    let spoilt = 0;
    fc.assert(
      fc.property(byteCase, fc.nat(), ({ layout, content }, at) => {
        const sum = layout.fields.find(({ is }) => is === 'checksum');
        fc.pre(sum?.is === 'checksum' && sum.kind.startsWith('crc'));
        const frame = encodeFrame(layout, content);
        const sumAt = layout.fields.findIndex(({ is }) => is === 'checksum');
        const covers = 'to' in sum && sum.to === 'end' ? frame.length : null;
        const decode = decoderOf(layout);
        const bit = at % (8 * frame.length);
        const before = good(decode(frame));
        frame[bit >> 3] = (frame[bit >> 3] ?? 0) ^ (1 << (bit & 7));
        const after = decode(frame);
        if (covers !== null) {
          expect(after.ok, `field ${sumAt}`).toBe(false);
          spoilt += 1;
        } else if (after.ok) expect(after.value.counts.length).toBe(before.counts.length); // behind what it covers
      }),
      { numRuns: 3_000 },
    );
    expect(spoilt).toBeGreaterThan(100);
  });

  test('no bytes make any decoder throw', () => {
    fc.assert(
      fc.property(
        fc.oneof(byteCase, textCase),
        fc.uint8Array({ maxLength: 64 }),
        ({ layout, content }, noise) => {
          const decode = decoderOf(layout);
          const frame = encodeFrame(layout, content);
          for (const bytes of [Buffer.from(noise), Buffer.concat([frame.subarray(0, 8), noise])]) {
            const made = decode(bytes);
            if (made.ok)
              for (const counts of made.value.counts)
                expect(counts === null || Number.isSafeInteger(counts)).toBe(true);
          }
        },
      ),
      { numRuns: 3_000 },
    );
  });
});
