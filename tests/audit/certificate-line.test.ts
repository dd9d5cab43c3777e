import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { periodsOf } from '../../src/audit/calibrations.ts';
import { type CertificateLines, certificateLines, firstBeyond } from '../../src/audit/certificate-line.ts';
import { dayNumber, isoDay } from '../../src/audit/days.ts';
import type { Certificate } from '../../src/instrument/certificate.ts';
import { accepted, problemOf } from '../statistics/outcome.ts';
import { certificate } from './shop.ts';

const FOUR_PERCENT = { kind: 'relative', percent: 4 } as const;
const settings = { permissible: FOUR_PERCENT, due: '2025-12-31', used: 27 };
const lines = (issued: readonly Certificate[], asFound: readonly Certificate[] = [], given = {}) =>
  certificateLines(periodsOf({ issued, asFound }), { ...settings, ...given });

// 365 days from each to the next, and to the due day.
const WORKED = [
  certificate('CAL-1', '2023-01-01'),
  certificate('CAL-2', '2024-01-01', { error: 0.3 }),
  certificate('CAL-3', '2024-12-31', { error: 0.6 }),
];

describe('the line through certificates', () => {
  it('comes to what is worked out by hand', () => {
    const { inUse, from, to } = accepted(lines(WORKED));
    expect({ from, to, nominal: inUse.nominal }).toEqual({
      from: '2024-12-31',
      to: '2025-12-31',
      nominal: 30,
    });
    // 0.3 N·m a 365 days; u of each 0.1, so u of the slope 0.1/(365·√2) a day.
    expect(inUse.perYear).toBeCloseTo((0.3 * 365.25) / 365, 12);
    expect(inUse.perYearExpanded).toBeCloseTo((2 * 0.1 * 365.25) / (365 * Math.SQRT2), 9);
    // 0.9 with u² = 0.1²·(1 + 1/3 + 2), k = 2.
    expect(inUse.atEnd.value).toBeCloseTo(0.9, 12);
    expect(inUse.atEnd.to).toBeCloseTo(0.9 + 0.2 * Math.sqrt(10 / 3), 9);
    expect(inUse.permissible).toBeCloseTo(1.2, 12);
    expect(inUse).toMatchObject({ lineOutsideOn: null });
    // Within on the newest day (0.6 + 0.27), beyond 1.2 before it is due (0.9 + 0.37).
    expect(inUse.outsideOn !== null && inUse.outsideOn > '2025-06-01').toBe(true);
    expect(inUse.outsideOn !== null && inUse.outsideOn < '2025-12-31').toBe(true);
  });

  it('is drawn at each nominal of the newest certificate, and the one that is beyond first is named', () => {
    const found = accepted(lines(WORKED));
    expect(found.lines.map(({ nominal }) => nominal)).toEqual([10, 20, 30, 40, 50]);
    // 0.4 N·m are permitted at 10 N·m: 0.6 were found there already.
    expect(firstBeyond(found)).toMatchObject({ nominal: 10, outsideOn: '2024-12-31' });
    expect(found.lines.at(-1)?.outsideOn).toBeNull();
    const absolute = accepted(lines(WORKED, [], { permissible: { kind: 'absolute', amount: 2 } }));
    expect(firstBeyond(absolute)).toBeNull();
  });

  it('warns where there is reason to, and is undecided where nothing but its interval reaches out', () => {
    const at30 = (...errors: readonly number[]) => {
      const issued = errors.map((error, i) =>
        certificate(`CAL-${i}`, `${2025 - errors.length + i}-01-01`, { error }),
      );
      const found = accepted(
        lines(issued, [], { permissible: { kind: 'absolute', amount: 0.5 }, due: null }),
      );
      return found.inUse.finding;
    };
    expect(at30(0, 0, 0, 0)).toBe('within');
    expect(at30(0.2, 0.22)).toBe('undecided');
    expect(at30(0, 0.3)).toBe('warning');
    expect(at30(0, -0.2, -0.4)).toBe('warning');
    // On no line: knocked, or adjusted without a word.
    expect(at30(0, 0.3, 0.4, 0)).toBe('warning');
  });

  it('sees the drift that yearly adjustments hide', () => {
    const left = ['2023-01-01', '2024-01-01', '2024-12-31'].map((date, i) => certificate(`CAL-${i}`, date));
    const found = ['2024-01-01', '2024-12-31'].map((date, i) =>
      certificate(`CAL-${i + 1}`, date, { error: 0.5 }),
    );
    const hidden = accepted(lines(left)).inUse;
    expect(hidden.perYear).toBe(0);
    const seen = accepted(lines(left, found)).inUse;
    expect(seen.perYear).toBeCloseTo((0.5 * 365.25) / 365, 12);
    expect(seen.atEnd.value).toBeCloseTo(0.5, 12);
    expect(seen.periods.map(({ length }) => length)).toEqual([2, 2, 1]);
  });

  it('takes the errors between the points of another certificate on straight lines, and leaves out what it does not cover', () => {
    const sparse = {
      ...certificate('CAL-1', '2023-01-01'),
      points: [
        { reading: 20, error: 0.2, expanded: 0.1, k: 2 },
        { reading: 40, error: 0.4, expanded: 0.3, k: 2 },
      ],
    };
    const found = accepted(lines([sparse, ...WORKED.slice(1)]));
    const [first] = found.inUse.periods.flat();
    expect(first?.error).toBeCloseTo(0.3, 12);
    // The larger uncertainty of the two neighbours.
    expect(first?.expanded).toBeCloseTo(0.3, 12);
    expect(found.lines.map(({ periods }) => periods.flat().length)).toEqual([2, 3, 3, 3, 2]);
  });

  it('is drawn nowhere that nothing is permitted', () => {
    const fromZero = WORKED.map((one) => ({
      ...one,
      points: [{ reading: 0, error: 0, expanded: 0.2, k: 2 }, ...one.points],
    }));
    expect(accepted(lines(fromZero)).lines.map(({ nominal }) => nominal)).toEqual([10, 20, 30, 40, 50]);
    const absolute = accepted(lines(fromZero, [], { permissible: { kind: 'absolute', amount: 2 } }));
    expect(absolute.lines[0]?.nominal).toBe(0);
  });

  it('looks to the due day, and a year ahead where none is known or it is past', () => {
    const to = (due: string | null) => accepted(lines(WORKED, [], { due })).to;
    expect([to('2025-06-30'), to(null), to('2024-06-30')]).toEqual([
      '2025-06-30',
      '2025-12-31',
      '2025-12-31',
    ]);
  });

  it('says what it lacks', () => {
    const [first, second] = WORKED as [Certificate, Certificate];
    expect(problemOf(lines([])).code).toBe('no-certificate');
    expect(problemOf(lines([first])).code).toBe('one-certificate');
    expect(problemOf(lines([first, { ...second, date: first.date }])).code).toBe('no-line');
    const adjusted = lines([second], [{ ...first, number: 'AF-1' }]);
    expect(problemOf(adjusted).code).toBe('no-line');
  });
});

describe('whoever looks', () => {
  const errors = fc.array(fc.integer({ min: -80, max: 80 }), { minLength: 2, maxLength: 6 });
  const days = fc.uniqueArray(fc.integer({ min: 0, max: 3000 }), { minLength: 6, maxLength: 6 });
  /** The same station seen at another time, in another unit, or with the sign turned round. */
  const seen = (
    at: readonly number[],
    found: readonly number[],
    { shift = 0, unit = 1, sign = 1 } = {},
  ): CertificateLines => {
    const newest = Math.max(...at.slice(0, found.length));
    const issued = found.map((error, i) => ({
      ...certificate(`CAL-${i}`, isoDay(19_000 + shift + (at[i] ?? 0))),
      points: [10, 30].map((reading) => ({
        reading: unit * reading,
        error: (sign * unit * error) / 100,
        expanded: unit * 0.2,
        k: 2,
      })),
    }));
    const due = isoDay(19_000 + shift + newest + 300);
    return accepted(lines(issued, [], { due, used: 27 * unit }));
  };
  /** A crossing at midnight may be rounded to either day. */
  const sameDay = (one: string | null, other: string | null, by = 0) => {
    expect(one === null).toBe(other === null);
    if (one !== null && other !== null)
      expect(Math.abs(dayNumber(one) - dayNumber(other) - by)).toBeLessThanOrEqual(1);
  };

  it('and when, sees the same line that many days later', () => {
    fc.assert(
      fc.property(days, errors, fc.integer({ min: -4000, max: 4000 }), (at, found, shift) => {
        const [plain, moved] = [seen(at, found).inUse, seen(at, found, { shift }).inUse];
        expect(moved.perYear).toBeCloseTo(plain.perYear, 9);
        expect(moved.atEnd.to).toBeCloseTo(plain.atEnd.to, 9);
        sameDay(moved.outsideOn, plain.outsideOn, shift);
      }),
    );
  });

  it('in whatever unit and sign, gets the warning on the same day', () => {
    fc.assert(
      fc.property(days, errors, fc.constantFrom(2, 4, 0.5), (at, found, unit) => {
        const plain = seen(at, found).inUse;
        const scaled = seen(at, found, { unit }).inUse;
        const turned = seen(at, found, { sign: -1 }).inUse;
        expect(scaled.perYear).toBeCloseTo(unit * plain.perYear, 8);
        expect(turned.atEnd.from).toBeCloseTo(-plain.atEnd.to, 9);
        sameDay(scaled.outsideOn, plain.outsideOn);
        sameDay(turned.outsideOn, plain.outsideOn);
      }),
    );
  });
});
