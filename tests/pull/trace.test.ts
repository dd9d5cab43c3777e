import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeSamples, encodeSamples, lastTakenUs } from '../../src/pull/trace.ts';

/** Time stamps that start at `startUs` and rise by the steps of all rows but the first. */
function risen(startUs: number, rows: readonly { step: number }[]): number[] {
  let at = startUs;
  return rows.map(({ step }, i) => {
    if (i > 0) at += step;
    return at;
  });
}

const streams = fc
  .array(
    fc.record({
      step: fc.integer({ min: 0, max: 2_000_000 }),
      counts: fc.integer({ min: -(2 ** 31), max: 2 ** 31 - 1 }),
    }),
    {
      minLength: 1,
      maxLength: 200,
    },
  )
  .chain((rows) =>
    fc.integer({ min: 0, max: 2 ** 45 }).map((startUs) => {
      const atUs = risen(startUs, rows);
      return { atUs, counts: rows.map(({ counts }) => counts) };
    }),
  );

describe('the compact coding of samples', () => {
  it('gives back exactly what was put in', () => {
    fc.assert(
      fc.property(streams, (samples) => {
        const coded = encodeSamples(samples);
        expect(decodeSamples(coded)).toEqual({ ok: true, value: samples });
        expect(lastTakenUs(coded)).toBe(samples.atUs.at(-1));
      }),
    );
  });

  it('gives back the angles too, and codes them as it codes the counts', () => {
    fc.assert(
      fc.property(streams, (samples) => {
        const angles = samples.counts.toReversed();
        const coded = encodeSamples({ ...samples, angles });
        expect(decodeSamples(coded)).toEqual({ ok: true, value: { ...samples, angles } });
        expect(coded.angles).toBe(encodeSamples({ ...samples, counts: angles }).counts);
        const { angles: _angles, ...without } = coded;
        expect(without).toEqual(encodeSamples(samples));
      }),
    );
  });

  it('refuses angles that are not as many as the samples', () => {
    const coded = { ...encodeSamples({ atUs: [1, 2], counts: [3, 4] }), angles: 'AA==' };
    expect(decodeSamples(coded)).toMatchObject({ ok: false, error: { where: 'angles' } });
  });

  it('is written as documented: zigzag differences in 7-bit groups, low group first', () => {
    const coded = encodeSamples({ atUs: [1000, 11_000, 21_000, 30_000], counts: [5, 4, 300, 300] });
    expect(coded.startUs).toBe(1000);
    // Steps 10000, 10000, 9000: differences 10000, 0, -1000; zigzag 20000, 0, 1999.
    expect([...Buffer.from(coded.times, 'base64')]).toEqual([0xa0, 0x9c, 0x01, 0x00, 0xcf, 0x0f]);
    // Differences 5, -1, 296, 0; zigzag 10, 1, 592, 0.
    expect([...Buffer.from(coded.counts, 'base64')]).toEqual([10, 1, 0xd0, 0x04, 0]);
  });

  it.each([
    ['spare bits in the base64', { count: 1, startUs: 0, times: '', counts: 'Cg=' }],
    ['fewer integers than samples', { count: 3, startUs: 0, times: 'AA==', counts: 'AAA=' }],
    ['a cut integer', { count: 1, startUs: 0, times: '', counts: Buffer.from([0x80]).toString('base64') }],
    [
      'a longer form than needed',
      { count: 1, startUs: 0, times: '', counts: Buffer.from([0x80, 0x00]).toString('base64') },
    ],
    [
      'time running backwards',
      { count: 2, startUs: 9, times: Buffer.from([1]).toString('base64'), counts: 'AAA=' },
    ],
    [
      'an integer beyond 2^53',
      { count: 1, startUs: 0, times: '', counts: Buffer.alloc(9, 0xff).toString('base64') },
    ],
  ])('refuses %s and names the place', (_what, coded) => {
    const out = decodeSamples(coded);
    expect(out.ok).toBe(false);
    if (!out.ok) expect(out.error.where).toMatch(/^(times|counts)$/);
  });

  it('never throws on text that is not its own', () => {
    fc.assert(
      fc.property(fc.nat(300), fc.nat(), fc.base64String(), fc.string(), (count, startUs, times, counts) => {
        const out = decodeSamples({ count: count + 1, startUs, times, counts });
        if (out.ok) expect(encodeSamples(out.value)).toEqual({ count: count + 1, startUs, times, counts });
      }),
    );
  });
});
