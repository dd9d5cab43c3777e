import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AttemptRow } from '../../src/audit/attempt.ts';
import { inQuestion, judgeAgain } from '../../src/audit/impact.ts';
import { assess } from '../../src/audit/impact-items.ts';
import { pullRow, setupsOf, setupWith } from './rows.ts';
import { CHECKED, certificate, wrenchWith } from './shop.ts';

const ADAPTER = {
  armMm: 400,
  offsetMm: 50,
  angleDeg: 30,
  within: { armMm: 1, offsetMm: 0.5, angleDeg: 2 },
};
const wrench = wrenchWith(CHECKED);
const plain = setupWith(wrench);
const adapted = setupWith(wrench, { adapter: ADAPTER });
const repeated = setupWith({
  ...wrench,
  repeatability: { readings: [25, 25.1, 25.05], basis: 'three clicks' },
});
const setups = setupsOf(plain, adapted, repeated);

const reading = fc.double({ min: 15, max: 45, noNaN: true });
const peakStandardSi = fc.option(fc.double({ min: 0.001, max: 2, noNaN: true }));
const kind = fc.constantFrom<AttemptRow['kind']>('tightening', 'continuation', 'rehit', 'check');
const setup = fc.constantFrom(plain, adapted, repeated);

const only = <T>(list: readonly T[]): T => {
  const [one, ...more] = list;
  if (one === undefined || more.length > 0) throw new Error(`expected one, found ${list.length}`);
  return one;
};
const again = (row: AttemptRow, found = certificate('AF-1', '2026-09-01')) =>
  only(judgeAgain([row], { certificate: found, setups }));

describe('what a finding can put in question', () => {
  it('is all that was measured under a certificate from before its day, or under none, whatever the numbers', () => {
    const under = (checked: Parameters<typeof wrenchWith>[0]) => setupWith(wrenchWith(checked));
    const old = under(certificate('7', '2026-01-12'));
    const [asLeft, later] = [under(certificate('7', '2026-03-01')), under(certificate('8', '2026-04-01'))];
    const never = under(null);
    const rows = [old, asLeft, later, never].map((job) => pullRow(job, 27));
    const left = inQuestion(rows, setupsOf(old, asLeft, later, never), '2026-03-01');
    expect(left).toEqual([rows[0], rows[3]]);
  });
});

describe('an attempt judged again', () => {
  it('has guard bands as wide as that very pull wants, as on its day: what hides a break in the link proves nothing', () => {
    const row = pullRow(plain, 27.5, { peakStandardSi: 0.5 });
    const off = {
      ...certificate('AF-1', '2026-09-01'),
      points: [10, 20, 30, 40, 60].map((at) => ({ reading: at, error: 2.2, expanded: 0.2, k: 2 })),
    };
    const judged = again(row, off);
    expect(judged.again?.value).toBeCloseTo(25.3, 6);
    expect(judged.again?.conformanceProbability).toBeLessThan(0.8);
    expect(judged.sort).toBe('doubtful');
  });

  it('keeps its verdict, value and uncertainty where the tool was found as it had been checked', () => {
    fc.assert(
      fc.property(setup, reading, peakStandardSi, (job, at, peak) => {
        const row = pullRow(job, at, { peakStandardSi: peak });
        const { again: judged } = again(row, { ...CHECKED, number: 'AF-1', date: '2026-09-01' });
        expect(judged).toMatchObject({
          result: row.result,
          side: row.side,
          value: row.valueSi,
          expandedUncertainty: row.expanded,
        });
      }),
    );
  });

  it('comes to the same whether the tool reads more by e, or the reading was less by e', () => {
    fc.assert(
      fc.property(setup, reading, fc.double({ min: -3, max: 3, noNaN: true }), (job, at, e) => {
        const shifted = again(pullRow(job, at), certificate('AF-1', '2026-09-01', { error: e }));
        const moved = again(pullRow(job, at - e));
        expect(shifted.again?.value).toBeCloseTo(moved.again?.value ?? Number.NaN, 9);
        expect(shifted.again?.expandedUncertainty).toBeCloseTo(moved.again?.expandedUncertainty ?? 0, 9);
      }),
    );
  });

  it('is never surer for a larger uncertainty of what was found', () => {
    fc.assert(
      fc.property(setup, reading, fc.double({ min: 0.2, max: 1, noNaN: true }), (job, at, expanded) => {
        const sure = again(pullRow(job, at));
        const less = again(pullRow(job, at), certificate('AF-1', '2026-09-01', { expanded }));
        if (less.again?.result === 'OK') expect(sure.again?.result).toBe('OK');
        if (less.again?.result === 'NotOK') expect(sure.again?.result).toBe('NotOK');
      }),
    );
  });

  it('is OK with every error between two with which it is OK', () => {
    const error = fc.double({ min: -3, max: 3, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(reading, error, error, share, (at, one, other, part) => {
        const okWith = (e: number) =>
          again(pullRow(plain, at), certificate('AF-1', '2026-09-01', { error: e })).again?.result === 'OK';
        if (okWith(one) && okWith(other)) expect(okWith(one + part * (other - one))).toBe(true);
      }),
    );
  });

  it('is sorted into still in, doubtful and out', () => {
    const sortOf = (at: number, error: number) =>
      again(pullRow(plain, at), certificate('AF-1', '2026-09-01', { error })).sort;
    expect([sortOf(27, 0), sortOf(27, 1), sortOf(27, 1.9), sortOf(27, 2.3)]).toEqual([
      'still-in',
      'still-in',
      'doubtful',
      'out',
    ]);
  });

  it('is doubtful beyond the points that the laboratory looked at, whatever it comes to', () => {
    const { points } = CHECKED;
    const found = { ...CHECKED, date: '2026-09-01', points: points.filter(({ reading: r }) => r <= 20) };
    expect(again(pullRow(plain, 27), found)).toMatchObject({ sort: 'doubtful', covered: false });
  });

  it('takes the error between two points from the straight line between them', () => {
    const found = certificate('AF-1', '2026-09-01');
    const points = found.points.map((point) => ({ ...point, error: point.reading / 10 }));
    expect(again(pullRow(plain, 27), { ...found, points }).again?.value).toBeCloseTo(24.3, 9);
  });

  it('is held against the acceptance zone that the uncertainty of what was found leaves', () => {
    const row = pullRow(plain, 25.35);
    expect(row.result).toBe('OK');
    expect(again(row, certificate('AF-1', '2026-09-01', { expanded: 0.5 })).sort).toBe('doubtful');
  });

  it('leaves the drift out that was allowed for since the last check: it has been seen', () => {
    const drifting = setupWith({
      ...wrench,
      driftPerYear: { within: { kind: 'relative', percent: 4 }, basis: 'data sheet' },
    });
    // After the finding the tool would count as drifting again.
    const row = pullRow(drifting, 27, { on: '2026-11-04' });
    const { again: judged } = only(
      judgeAgain([row], { certificate: { ...CHECKED, date: '2026-09-01' }, setups: setupsOf(drifting) }),
    );
    const asChecked = pullRow(plain, 27).expanded ?? Number.NaN;
    expect(judged?.expandedUncertainty).toBeCloseTo(asChecked, 9);
    expect(row.expanded).toBeGreaterThan(asChecked);
  });

  it('is not judged where nothing was: a run-down, a pull nobody could name, a reading without a value', () => {
    const rows = [
      pullRow(plain, 12, { kind: 'run-down', result: null, side: null }),
      pullRow(plain, 27, { kind: 'unsure', result: null, side: null }),
      pullRow(plain, 27, { readingSi: null }),
    ];
    const judged = judgeAgain(rows, { certificate: CHECKED, setups });
    expect(judged.map(({ sort }) => sort)).toEqual([null, null, null]);
  });

  it('counts as a re-hit only for having gone above the window, as on its day', () => {
    const rehit = pullRow(plain, 29, { kind: 'rehit', result: null, side: null });
    expect(again(rehit).sort).toBeNull();
    expect(again(rehit, certificate('AF-1', '2026-09-01', { error: -1.5 })).sort).toBe('out');
  });

  it('throws for a job of which nothing is known, instead of leaving it out', () => {
    const row = pullRow(plain, 27, { setupKey: 'another' });
    expect(() => judgeAgain([row], { certificate: CHECKED, setups })).toThrow('J-1');
  });
});

describe('what an impact assessment comes to', () => {
  const low = certificate('AF-1', '2026-09-01', { error: 1.9 });
  const assessed = (rows: readonly AttemptRow[], found = low) =>
    assess(judgeAgain(rows, { certificate: found, setups }));

  it('counts what each cylinder rests on, and names the jobs that do not stand', () => {
    const rows = [
      pullRow(plain, 24, { number: 1, last: false }),
      pullRow(plain, 27, { number: 2 }),
      pullRow(plain, 28.5, { number: 3, cylinder: 2 }),
      pullRow(plain, 28.5, { stream: 'job:J-2', job: 'J-2' }),
    ];
    const { attempts, stillIn, doubtful, out, items } = assessed(rows);
    expect({ attempts, stillIn, doubtful, out }).toEqual({ attempts: 4, stillIn: 2, doubtful: 1, out: 0 });
    expect(
      items.map(({ job, sort, attempts: which }) => [job, sort, which.map(({ number }) => number)]),
    ).toEqual([['J-1', 'doubtful', [2]]]);
  });

  it('takes an OK away where a later pull on the same plug went above the window after all', () => {
    const high = certificate('AF-1', '2026-09-01', { error: -1.5 });
    const rows = [
      pullRow(plain, 27, { number: 1 }),
      pullRow(plain, 29.5, { number: 2, kind: 'rehit', result: null, side: null, last: false }),
    ];
    expect(assessed(rows, high).items).toMatchObject([
      { sort: 'out', attempts: [{ number: 2, sort: 'out' }] },
    ]);
    expect(assessed([...rows].reverse(), high).items).toHaveLength(1);
  });

  it('counts no pull from before the one that the cylinder stands with: that was on a plug backed off since', () => {
    const high = certificate('AF-1', '2026-09-01', { error: -1.5 });
    const rows = [
      pullRow(plain, 29.5, { number: 1, kind: 'rehit', result: null, side: null, last: false }),
      pullRow(plain, 27, { number: 2 }),
    ];
    expect(assessed(rows, high)).toMatchObject({ stillIn: 1, items: [] });
  });

  describe('where the proof came from another tool', () => {
    const high = certificate('AF-1', '2026-09-01', { error: -1.5 });
    const repeat = (number: number, at = 29.5) =>
      pullRow(plain, at, { number, kind: 'rehit', result: null, side: null, last: false });
    const proof = (number: number, given: Partial<AttemptRow> = {}) =>
      pullRow(plain, 27, { number, tool: 'other', serial: 'EXAMPLE-W-2', ...given });
    const withProof = (rows: readonly AttemptRow[], ...others: readonly AttemptRow[]) =>
      assess(judgeAgain(rows, { certificate: high, setups }), [...others, ...rows]);

    it.each(['rehit', 'check'] as const)('counts a %s above the window by itself', (kind) => {
      const { stillIn, out, items } = withProof([{ ...repeat(2), kind }], proof(1));
      expect({ stillIn, out }).toEqual({ stillIn: 0, out: 1 });
      expect(items).toMatchObject([{ job: 'J-1', sort: 'out', attempts: [{ number: 2, sort: 'out' }] }]);
    });

    it('counts the worst of several, in whatever order', () => {
      const rows = [repeat(2, 29.5), repeat(3, 28.5)];
      for (const given of [rows, [...rows].reverse()])
        expect(withProof(given, proof(1)).items).toMatchObject([{ attempts: [{ number: 2, sort: 'out' }] }]);
    });

    it.each([
      ['nothing was proven', []],
      ['the plug was proven again behind it', [proof(3)]],
      ['the proof was of another cylinder', [proof(1, { cylinder: 2 })]],
      ['the proof was of another job', [proof(1, { stream: 'job:J-2', job: 'J-2' })]],
      ['what stands was not OK', [proof(1, { result: 'NotOK' })]],
    ])('counts none where %s', (_, others) => {
      expect(withProof([repeat(2)], ...others)).toMatchObject({ doubtful: 0, out: 0, items: [] });
    });
  });

  it('puts nothing in question that was not proven, nor a void job', () => {
    const rows = [
      pullRow(plain, 24, { number: 1 }),
      pullRow(plain, 27, { stream: 'job:J-2', job: 'J-2', voided: true }),
    ];
    expect(assessed(rows)).toMatchObject({ attempts: 2, stillIn: 0, doubtful: 0, out: 0, items: [] });
  });

  it('never counts a proof twice, nor loses one', () => {
    const rows = fc.array(
      fc.record({
        at: reading,
        kind,
        cylinder: fc.integer({ min: 1, max: 3 }),
        job: fc.integer({ min: 1, max: 3 }),
      }),
      { maxLength: 30 },
    );
    fc.assert(
      fc.property(rows, fc.double({ min: -3, max: 3, noNaN: true }), (given, error) => {
        const last = new Map(given.map(({ job, cylinder }, i) => [`${job} ${cylinder}`, i]));
        const made = given.map(({ at, kind: what, cylinder, job }, i) =>
          pullRow(plain, at, {
            stream: `job:${job}`,
            job: String(job),
            cylinder,
            number: i + 1,
            kind: what,
            last: last.get(`${job} ${cylinder}`) === i,
          }),
        );
        const proofs = made.filter((row) => row.last && row.result === 'OK').length;
        const { stillIn, doubtful, out, items } = assessed(
          made,
          certificate('AF-1', '2026-09-01', { error }),
        );
        const proven = made.filter((row) => row.last && row.result === 'OK' && repeats(row)).length;
        expect(stillIn + doubtful + out).toBeLessThanOrEqual(proofs);
        expect(stillIn + doubtful + out).toBeGreaterThanOrEqual(proofs - proven);
        expect(items.flatMap(({ attempts }) => attempts)).toHaveLength(doubtful + out);
      }),
    );
  });
});

const repeats = ({ kind: what }: AttemptRow) => what === 'rehit' || what === 'check';
