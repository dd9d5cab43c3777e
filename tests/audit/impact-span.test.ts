import { describe, expect, it } from 'vitest';
import { asFoundPoints, spanOf } from '../../src/audit/impact-span.ts';
import type { StationEntry } from '../../src/evidence/log.ts';
import type { Certificate } from '../../src/instrument/certificate.ts';
import { stationEntry } from '../evidence/entries.ts';
import { certificate, wrenchWith } from './shop.ts';

const recorded = (
  on: string,
  checked: Certificate | null,
  serial: string | null = 'EXAMPLE-W-1',
  id = 'wrench',
) => {
  const { serial: _, ...rest } = wrenchWith(checked);
  const wrench = { ...rest, id };
  const instrument = serial === null ? wrench : { ...wrench, serial };
  return (n: number) =>
    stationEntry({ type: 'instrument-recorded', instrument }, { seq: n, at: `${on}T08:00:00.000Z` });
};
const log = (...entries: readonly ReturnType<typeof recorded>[]) => entries.map((make, i) => make(i + 1));

const A = certificate('CAL-A', '2025-01-10');
const B = certificate('CAL-B', '2026-01-12');
const FOUND = certificate('AF-1', '2026-09-01');

const spanned = (entries: readonly StationEntry[], asFound = FOUND, since: string | null = null) =>
  spanOf(entries, { tool: 'wrench', asFound, since, today: '2026-11-25' });
const code = (result: ReturnType<typeof spanned>) => (result.ok ? 'ok' : result.error.code);

describe('the span of an impact assessment', () => {
  it('goes from the last good check to the day of the finding', () => {
    const span = spanned(log(recorded('2025-02-01', A), recorded('2026-02-01', B)));
    expect(span).toMatchObject({
      ok: true,
      value: { from: '2026-01-12', foundOn: '2026-09-01', lastGood: { number: 'CAL-B' } },
    });
  });

  it('takes no certificate of the same calibration, nor a later one, for the last good check', () => {
    const asLeft = certificate('CAL-C', '2026-09-01');
    const span = spanned(log(recorded('2026-02-01', B), recorded('2026-09-03', asLeft)));
    expect(span.ok && span.value.lastGood?.number).toBe('CAL-B');
  });

  it('goes back to the first use where there was never a certificate', () => {
    const span = spanned(log(recorded('2026-03-05', null)));
    expect(span).toMatchObject({ ok: true, value: { from: '2026-03-05', lastGood: null } });
  });

  it('follows the serial number where the tool was given another name', () => {
    const renamed = log(
      recorded('2025-02-01', A, 'EXAMPLE-W-1', 'old-name'),
      recorded('2026-03-05', null),
      recorded('2026-04-01', B, 'EXAMPLE-W-2', 'old-name'),
    );
    expect(spanned(renamed)).toMatchObject({
      ok: true,
      value: { from: '2025-01-10', lastGood: { number: 'CAL-A' } },
    });
    const never = log(
      recorded('2025-02-01', A, 'EXAMPLE-W-1', 'old-name'),
      recorded('2026-03-05', null, 'X-9'),
    );
    expect(code(spanned(never))).toBe('certificate-other-serial');
  });

  describe('where the laboratory gives every certificate the same number', () => {
    const [first, second] = [certificate('7', '2025-01-10'), certificate('7', '2026-01-12')];
    const both = log(recorded('2025-02-01', first), recorded('2026-02-01', second));
    const error = (result: ReturnType<typeof spanned>) => {
      if (result.ok) throw new Error('expected a problem');
      return result.error;
    };

    it('tells them apart by their days', () => {
      expect(spanned(both)).toMatchObject({ ok: true, value: { from: '2026-01-12' } });
      const asLeft = recorded('2026-09-03', certificate('7', '2026-09-01'));
      expect(spanned(log(recorded('2026-02-01', second), asLeft))).toMatchObject({
        value: { from: '2026-01-12' },
      });
    });

    it('names both where it cannot tell which counts, and takes the one that is said by number and day', () => {
      const again = log(
        recorded('2025-02-01', first),
        recorded('2026-02-01', second),
        recorded('2026-04-01', first),
      );
      for (const since of [null, '7']) {
        const { code: why, message, next } = error(spanned(again, FOUND, since));
        expect(why).toBe('certificates-overlap');
        for (const day of ['2025-01-10', '2026-01-12']) {
          expect(message).toContain(`7 of ${day}`);
          expect(next).toContain(`--since "7 of ${day}"`);
        }
      }
      expect(spanned(again, FOUND, '7 of 2025-01-10')).toMatchObject({ value: { from: '2025-01-10' } });
      expect(spanned(again, FOUND, '7 of 2026-01-12')).toMatchObject({ value: { from: '2026-01-12' } });
      expect(code(spanned(again, FOUND, '7 of 2024-01-12'))).toBe('certificate-unknown');
    });

    it('names the laboratories where two gave the same number on the same day', () => {
      const other = { ...second, laboratory: 'Other Laboratory' };
      const entries = log(recorded('2026-02-01', second), recorded('2026-02-02', other));
      const { next } = error(spanned(entries));
      expect(next).toContain('--since "7 of 2026-01-12 by Other Laboratory"');
      expect(spanned(entries, FOUND, '7 of 2026-01-12 by Other Laboratory')).toMatchObject({
        value: { lastGood: { laboratory: 'Other Laboratory' } },
      });
    });
  });

  it('takes a certificate whose figures were put right for the same one, as it was recorded last', () => {
    const right = { ...B, due: '2027-01-12' };
    expect(spanned(log(recorded('2026-02-01', B), recorded('2026-03-01', right)))).toMatchObject({
      ok: true,
      value: { lastGood: { due: '2027-01-12' } },
    });
  });

  it('refuses what was found of another tool, and names both serial numbers', () => {
    const result = spanned(
      log(recorded('2026-02-01', B)),
      certificate('AF-1', '2026-09-01', { serial: 'X-9' }),
    );
    expect(result).toMatchObject({ ok: false, error: { code: 'certificate-other-serial' } });
    expect(!result.ok && result.error.message).toContain('X-9');
    expect(!result.ok && result.error.message).toContain('EXAMPLE-W-1');
  });

  it('says so where certificates overlap, and takes the one that is named', () => {
    const sameDay = log(recorded('2026-02-01', B), recorded('2026-02-02', { ...B, number: 'CAL-B2' }));
    expect(code(spanned(sameDay))).toBe('certificates-overlap');
    expect(spanned(sameDay, FOUND, 'CAL-B2')).toMatchObject({ value: { lastGood: { number: 'CAL-B2' } } });
    const takenUpAgain = log(recorded('2025-02-01', A), recorded('2026-02-01', B), recorded('2026-04-01', A));
    expect(code(spanned(takenUpAgain))).toBe('certificates-overlap');
    expect(spanned(takenUpAgain, FOUND, 'CAL-A')).toMatchObject({ value: { from: '2025-01-10' } });
    expect(code(spanned(takenUpAgain, FOUND, 'CAL-Z'))).toBe('certificate-unknown');
  });

  it('takes the same certificate recorded again for one', () => {
    const changed = { ...wrenchWith(B), cyclesUsed: 12 };
    const [first, second] = log(recorded('2026-02-01', B), recorded('2026-03-01', B));
    if (first === undefined || second === undefined) throw new Error('two entries');
    const again: StationEntry = { ...second, event: { type: 'instrument-recorded', instrument: changed } };
    expect(code(spanned([first, again]))).toBe('ok');
  });

  it.each([
    ['an unknown tool', [], FOUND, 'tool-unknown'],
    ['a tool without a serial number', [recorded('2026-02-01', null, null)], FOUND, 'serial-missing'],
    [
      'points in another unit',
      [recorded('2026-02-01', B)],
      { ...FOUND, unit: 'mm' as const },
      'certificate-unit',
    ],
    [
      'a finding from the future',
      [recorded('2026-02-01', B)],
      { ...FOUND, date: '2026-12-01' },
      'certificate-in-future',
    ],
    [
      'a finding from before the first use',
      [recorded('2026-02-01', B)],
      { ...FOUND, date: '2026-01-02' },
      'as-found-too-early',
    ],
  ])('refuses %s', (_, entries, asFound, expected) => {
    expect(code(spanned(log(...entries), asFound))).toBe(expected);
  });
});

describe('what was found, beside the last good check', () => {
  it('says at which points it moved by more than the uncertainty of both', () => {
    const found = certificate('AF-1', '2026-09-01', { error: 0.25 });
    const points = asFoundPoints(
      { ...found, points: found.points.map((p, i) => ({ ...p, error: i / 10 })) },
      B,
    );
    // Uncertainties of 0.2 each: a difference is uncertain by 0.28.
    expect(points.map(({ finding }) => finding)).toEqual([
      'not-moved',
      'not-moved',
      'not-moved',
      'moved',
      'moved',
    ]);
    expect(asFoundPoints(found, null).map(({ finding }) => finding)).toEqual(Array(5).fill('unknown'));
  });

  it('states U at k = 2, whatever factor the certificates used', () => {
    const thrice = { ...B, points: B.points.map((p) => ({ ...p, expanded: 0.3, k: 3 })) };
    const [point] = asFoundPoints(thrice, thrice);
    expect(point?.expanded).toBeCloseTo(0.2, 12);
    expect(point?.was?.expanded).toBeCloseTo(0.2, 12);
  });
});
