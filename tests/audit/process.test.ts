import { describe, expect, it } from 'vitest';
import type { AttemptRow } from '../../src/audit/attempt.ts';
import { type ProcessGroup, processGroups } from '../../src/audit/capability.ts';
import { deliveredGaps } from '../../src/audit/delivered.ts';
import { wrenchDrift } from '../../src/audit/drift.ts';
import { chartSvg } from '../../src/report/charts/chart.ts';
import { paperLines } from '../../src/report/paper-text.ts';
import { chartTitle, groupName, groupRow, groupTexts } from '../../src/report/process.ts';
import { processCharts, processPaper } from '../../src/report/process-paper.ts';
import { orThrow } from '../../src/result.ts';
import { capability } from '../../src/statistics/capability.ts';
import { inLanguage } from '../../src/words/catalogue.ts';
import { normals } from '../statistics/generator.ts';
import { PSEUDO, unspoken } from '../words/pseudo.ts';
import { pullRow, setupWith } from './rows.ts';
import { CHECKED, wrenchWith } from './shop.ts';

const setup = setupWith(wrenchWith(CHECKED));
const aPull = pullRow(setup, 27);
const row = (valueSi: number, given: Partial<AttemptRow> = {}): AttemptRow => ({
  ...aPull,
  valueSi,
  result: valueSi < 25 || valueSi > 30 ? 'NotOK' : 'OK',
  ...given,
});
const figuresOf = (group: ProcessGroup) =>
  groupTexts(group)
    .flatMap(({ paragraphs }) => paragraphs)
    .join('\n');
const values = Array.from({ length: 40 }, (_, i) => 27 + Math.sin(i * 1.7));

describe('capability', () => {
  it('of the process stands on first attempts, of the product on those that plugs stand with', () => {
    const rows = values.flatMap((value, i) =>
      i % 10 === 0
        ? [row(23, { first: true, last: false }), row(value, { first: false, last: true })]
        : [row(value)],
    );
    const [group, ...others] = processGroups(rows, 'specification');
    expect(others).toEqual([]);
    const firsts = values.map((value, i) => (i % 10 === 0 ? 23 : value));
    const limits = { lower: 25, upper: 30 };
    expect(group?.process.capability).toEqual(orThrow(capability(firsts, limits)));
    expect(group?.product.capability).toEqual(orThrow(capability(values, limits)));
    expect(group?.notOkFirst).toMatchObject({ count: 4, n: 40, share: 0.1 });
  });

  it('never takes in what has no value of its own, and counts it', () => {
    const rows = [
      ...values.map((value) => row(value)),
      row(12, { result: null, valueSi: null, censored: 'cut' }),
      row(60, { censored: 'saturated' }),
      row(27, { result: null, valueSi: null, censored: 'undecided' }),
    ];
    const [group] = processGroups(rows, 'specification');
    expect(group?.process.n).toBe(40);
    expect(group?.product.n).toBe(40);
    expect(group?.leftOut).toEqual({ cut: 1, saturated: 1, undecided: 1, bounded: 0 });
  });

  const bounded = (result: AttemptRow['result']) => row(27, { censored: 'bounded', result });

  it('counts verdicts without a figure in the share of NOT OK, and in no mean', () => {
    const rows = [...Array(36).fill(bounded('OK')), ...Array(4).fill(bounded('NotOK'))];
    const [group] = processGroups(rows, 'specification');
    expect(group?.notOkFirst).toMatchObject({ count: 4, n: 40, share: 0.1 });
    expect(group?.notOkAtWorst).toEqual(group?.notOkFirst);
    expect(group?.process).toMatchObject({ n: 0, mean: null });
    expect(group?.leftOut.bounded).toBe(40);
  });

  it('counts as NOT OK what went over the limit before its end was lost, and no other', () => {
    const lost = (valueSi: number, censored: 'cut' | 'saturated') =>
      row(valueSi, { result: null, expanded: 0.5, censored });
    const rows = [
      ...Array.from({ length: 36 }, () => row(27)),
      ...Array.from({ length: 3 }, () => lost(60, 'saturated')),
      lost(30.6, 'cut'),
      lost(30.4, 'cut'),
      lost(29, 'saturated'),
      row(60, { result: null, expanded: 0.5, censored: 'undecided' }),
    ];
    const [group] = processGroups(rows, 'specification');
    expect(group?.notOkFirst).toMatchObject({ count: 4, n: 40, share: 0.1 });
    expect(group?.notOkAtWorst).toMatchObject({ count: 7, n: 43 });
    expect(group?.process).toMatchObject({ n: 36, mean: 27 });
    const said = group === undefined ? '' : figuresOf(group);
    expect(said).toContain('NOT OK at the first attempt: 4 of 40, 10.0 %');
    expect(said).toContain('3 first attempts have no verdict. If all of them were NOT OK: 7 of 43, 16.3 %');
  });

  it('never puts simulated and real jobs together, and says which is which', () => {
    const rows = [row(27), ...[28, 29].map((value) => row(value, { source: 'simulated' })), row(26)];
    const groups = processGroups(rows, 'specification');
    expect(groups.map(({ mark, process: { n, mean } }) => ({ mark, n, mean }))).toEqual([
      { mark: null, n: 2, mean: 26.5 },
      { mark: 'simulated', n: 2, mean: 28.5 },
    ]);
    expect(groups.map((group) => groupName(group).endsWith('SIMULATED'))).toEqual([false, true]);
    expect(groups.map((group) => groupRow(group).join(' ').includes('SIMULATED'))).toEqual([false, true]);
  });

  it('says where the steps of the instrument are too coarse for an index', () => {
    const next = normals(3);
    const read = Array.from({ length: 100 }, () => Math.round((27 + 0.02 * next()) * 10) / 10);
    const [group] = processGroups(
      [...read, 27.1].map((value) => row(value)),
      'specification',
    );
    if (group === undefined) throw new Error('no group');
    expect(figuresOf(group)).toContain('COARSE STEPS: 3 different values, 0.10 N·m apart.');
    expect(groupRow(group).join(' ')).toContain(' coarse ');
    expect(chartTitle(group)).toContain('COARSE STEPS');
    const about = { station: 'S', program: 'p', madeAt: '2026-05-04T09:30:00.000Z' };
    expect(processPaper(group, processCharts(group, 50), about).status.word).toBe('STEPS TOO COARSE TO SAY');
  });

  it('gives no expected share of readings in three groups, and says that the index does not hold', () => {
    const next = normals(5);
    const rows = Array.from({ length: 120 }, (_, i) => row(25.5 + 1.5 * (i % 3) + 0.1 * next()));
    const [group] = processGroups(rows, 'specification');
    if (group === undefined) throw new Error('no group');
    expect(figuresOf(group)).toContain('NOT NORMAL');
    expect(figuresOf(group)).not.toContain('a normal distribution would have');
    expect(groupRow(group).join(' ')).toContain(' not normal ');
  });

  it('is said through the catalogue, with its charts', () => {
    const rows = values.map((value, i) => row(value, i % 9 === 0 ? { first: false } : {}));
    const [group] = processGroups(rows, 'specification');
    if (group === undefined) throw new Error('no group');
    const about = { station: 'S', program: 'p', madeAt: '2026-05-04T09:30:00.000Z' };
    const text = inLanguage(PSEUDO, () =>
      [
        ...paperLines(processPaper(group, processCharts(group, 50), about), { columns: 400, ascii: false }),
        chartSvg(processCharts(group, 50).histogram, { width: 900, height: 320 }).replaceAll(/<[^>]*>/g, ' '),
      ].join('\n'),
    );
    const facts = [/Cpk?|Ppk?|N·m|Anderson-Darling|EWMA|OK\b/, /\b[0-9a-f]{4,}\b/, group.engine ?? ''];
    expect([...new Set(unspoken(text, facts))]).toEqual([]);
  });

  it('says how many plugs of the product were done again', () => {
    const [first, again] = [row(24, { last: false, result: 'NotOK' }), row(27, { first: false })];
    const [group] = processGroups([first, again, row(27.2)], 'specification');
    expect(group === undefined ? '' : figuresOf(group)).toContain(
      '1 of 2 stand on a later attempt: they were done again.',
    );
  });

  it('leaves out void jobs and the first of two steps', () => {
    const rows = [row(27), row(26, { voided: true }), row(14, { stage: 'first', first: false })];
    expect(processGroups(rows, 'specification')[0]?.process).toMatchObject({ n: 1, mean: 27 });
  });

  it('says why there are no indices where attempts are few', () => {
    const [group] = processGroups([row(27), row(28)], 'specification');
    expect(group?.process).toMatchObject({ n: 2, mean: 27.5, capability: { code: 'too-few' } });
  });

  it('tells apart by tool, technician or cylinder, and never mixes limits', () => {
    const rows = [
      row(27, { cylinder: 2, technician: 'B', serial: 'W-2' }),
      row(27, { cylinder: 10, technician: 'A', serial: 'W-1' }),
      row(27, { cylinder: 10, technician: 'A', serial: 'W-1', lowerLimit: 20 }),
    ];
    const members = (by: Parameters<typeof processGroups>[1]) =>
      processGroups(rows, by).map(({ member, lowerLimit }) => `${member}/${lowerLimit}`);
    expect(members('specification')).toEqual(['/25', '/20']);
    expect(members('tool').sort()).toEqual(['W-1/20', 'W-1/25', 'W-2/25']);
    expect(members('technician').sort()).toEqual(['A/20', 'A/25', 'B/25']);
    expect(members('cylinder')).toEqual(['2/25', '10/25', '10/20']);
  });
});

describe('gaps as delivered', () => {
  const gap = (valueSi: number, given: Partial<AttemptRow> = {}) =>
    row(valueSi, { quantity: 'length', kind: 'gap', lowerLimit: 0.7, upperLimit: 0.8, ...given });

  it('are the first readings of new plugs, by part and lot', () => {
    const rows = [
      ...Array.from({ length: 9 }, () => gap(0.75, { lot: 'L-1' })),
      gap(0.83, { lot: 'L-1' }),
      gap(0.75, { lot: 'L-1', first: false }),
      gap(0.75, { lot: null }),
      gap(0.6, { lot: 'L-1', voided: true }),
      gap(0.6, { lot: 'L-1', setupKey: 'used' }),
      gap(0.6, { lot: 'L-1', censored: 'bounded', result: null }),
    ];
    const [found] = orThrow(deliveredGaps(rows, (key) => key !== 'used')).under;
    expect(found?.lots.map(({ lot, n, outside }) => ({ lot, n, out: outside.count }))).toEqual([
      { lot: 'L-1', n: 10, out: 1 },
      { lot: null, n: 1, out: 0 },
    ]);
  });

  it('take a verdict of wires for a verdict, and no figure from them', () => {
    const wires = (result: AttemptRow['result'], side: AttemptRow['side']) =>
      gap(0.9, { lot: 'L-1', censored: 'bounded', result, side });
    const rows = [
      ...Array.from({ length: 8 }, () => gap(0.75, { lot: 'L-1' })),
      wires('OK', 'inside'),
      wires('NotOK', 'high'),
      wires('NotOK', 'low'),
      wires('NotDecidable', 'low'),
    ];
    const [lot] = orThrow(deliveredGaps(rows, () => true)).under[0]?.lots ?? [];
    expect(lot).toMatchObject({
      n: 12,
      measured: 8,
      meanMm: 0.75,
      largestMm: 0.75,
      counts: { below: 1, within: 9, above: 1 },
      outside: { count: 2, n: 11 },
      outsideAtWorst: { count: 3, n: 12 },
    });
    const [tried] = orThrow(deliveredGaps([wires('OK', 'inside')], () => true)).under[0]?.lots ?? [];
    expect(tried).toMatchObject({ n: 1, measured: 0, meanMm: null, smallestMm: null, outside: { n: 1 } });
  });

  it('of simulated and replayed jobs are left out where there are others, and counted', () => {
    const played = gap(0.9, { source: 'replayed' });
    const found = orThrow(deliveredGaps([gap(0.75), played, played], () => true));
    expect(found).toMatchObject({ marks: [], markedLeftOut: 2 });
    expect(found.under[0]?.lots.map(({ n }) => n)).toEqual([1]);
    expect(orThrow(deliveredGaps([played], () => true))).toMatchObject({
      marks: ['replayed'],
      markedLeftOut: 0,
      under: [{ lots: [{ n: 1 }] }],
    });
  });
});

describe('the drift of a wrench in use', () => {
  const normal = normals(7);
  /** Eight pulls a working day; `at` is what they come to on average on that day. */
  const days = (count: number, at: (day: number) => number) =>
    Array.from({ length: count }, (_, i) => i).flatMap((i) => {
      const day = new Date(Date.UTC(2026, 0, 12 + i)).toISOString().slice(0, 10);
      return Array.from({ length: 8 }, () =>
        row(at(i) + 0.4 * normal(), { day, at: `${day}T10:00:00.000Z` }),
      );
    });
  const settings = {
    permissible: { kind: 'relative', percent: 4 } as const,
    errorAt: () => 0,
    due: '2027-01-12',
  };
  /** So many pulls a day, about an aim that stays where it is. */
  const steady = (counts: readonly number[], random: () => number) =>
    counts.flatMap((count, i) => {
      const day = new Date(Date.UTC(2026, 0, 12 + i)).toISOString().slice(0, 10);
      return Array.from({ length: count }, () =>
        row(27.5 + 0.4 * random(), { day, at: `${day}T10:00:00.000Z` }),
      );
    });
  const falseAlarms = (counts: (i: number) => number, runs = 150) => {
    const random = normals(11);
    const warned = Array.from({ length: runs }, () =>
      orThrow(
        wrenchDrift(
          steady(
            Array.from({ length: 80 }, (_, i) => counts(i)),
            random,
          ),
          settings,
        ),
      ),
    ).filter(({ warn }) => warn).length;
    return warned / runs;
  };

  it('raises no warning while nothing moves', () => {
    const found = orThrow(
      wrenchDrift(
        days(60, () => 27.5),
        settings,
      ),
    );
    expect(found).toMatchObject({ warn: false, shiftedSince: null, outsideOn: null });
    expect(found.days).toHaveLength(60);
  });

  it('warns before the due day when the line will leave what is permitted', () => {
    const found = orThrow(
      wrenchDrift(
        days(80, (i) => 27.5 + 0.008 * i),
        settings,
      ),
    );
    expect(found.warn).toBe(true);
    expect(found.isTrend).toBe(true);
    const day = found.outsideOn ?? '';
    // 4 % of 27.5 N·m at 0.008 N·m a day: near day 137, the end of May.
    expect(day > '2026-04-20' && day < '2026-07-20').toBe(true);
  });

  it('says since when the weighted mean has been beyond its limits', () => {
    const found = orThrow(
      wrenchDrift(
        days(60, (i) => (i < 40 ? 27.5 : 28.4)),
        settings,
      ),
    );
    expect(found.warn).toBe(true);
    expect(found.shiftedSince !== null && found.shiftedSince >= '2026-02-21').toBe(true);
    expect(found.shiftedSince !== null && found.shiftedSince <= '2026-02-28').toBe(true);
  });

  it.each([
    ['eight pulls a day', () => 8],
    ['busy days first and quiet ones later', (i: number) => (i < 20 ? 24 : 4)],
    ['days of every size', (i: number) => 1 + ((i * 7) % 16)],
  ])('hardly ever warns of a wrench that is as it was: %s', (_what, counts) => {
    expect(falseAlarms(counts)).toBeLessThan(0.04);
  });

  it('takes no pull that stopped short and was carried on for a sign of the wrench, and no simulated one', () => {
    const rows = days(40, () => 27.5);
    const plug = (job: string) => ({ job, day: '2026-02-18', at: '2026-02-18T11:00:00.000Z' });
    const short = Array.from({ length: 6 }, (_, i) => [
      row(14, plug(`S-${i}`)),
      row(27.5, { ...plug(`S-${i}`), kind: 'continuation', first: false }),
    ]).flat();
    const played = Array.from({ length: 6 }, (_, i) =>
      row(40, { ...plug(`P-${i}`), source: 'replayed' as const }),
    );
    const found = orThrow(wrenchDrift([...rows, ...short, ...played], settings));
    expect(found).toMatchObject({ warn: false, days: orThrow(wrenchDrift(rows, settings)).days });
    const asFirst = short.map((one) => ({ ...one, kind: 'tightening' as const }));
    expect(orThrow(wrenchDrift([...rows, ...asFirst], settings)).days).not.toEqual(found.days);
  });

  it('counts from the error on the certificate: less is left of what is permitted', () => {
    const rows = days(80, (i) => 27.5 + 0.006 * i);
    const at = (errorNm: number) => orThrow(wrenchDrift(rows, { ...settings, errorAt: () => errorNm }));
    // 4 % of 27.5 N·m is 1.1; the line comes to 2.2 on the day it is due, its near edge to 1.5.
    expect(at(0.5).outsideOn).not.toBeNull();
    expect(at(-0.9).outsideOn).toBeNull();
    expect(at(0.5).errorPercent).toBeCloseTo(1.818, 3);
  });

  it('carries no line on that was seen for less than two months', () => {
    const found = orThrow(
      wrenchDrift(
        days(40, (i) => 27.5 + 0.008 * i),
        settings,
      ),
    );
    expect(found).toMatchObject({ isTrend: true, outsideOn: null });
  });

  it('rests on first pulls alone, and says when there are too few days', () => {
    const rows = days(30, () => 27.5).map((one) => ({ ...one, first: false }));
    expect(wrenchDrift(rows, settings)).toMatchObject({ ok: false, error: { code: 'too-few' } });
  });
});

describe('what was delivered', () => {
  const plug = (stream: string, given: Partial<AttemptRow>) => row(27.5, { stream, ...given });
  it('loses no plug: one that nothing stands for is counted, and one of an open job is not delivered yet', () => {
    const rows = [
      plug('job:A', {}),
      // Too low, and then a pull that nobody placed: nothing stands.
      plug('job:B', { valueSi: 24.1, result: 'NotOK', last: false }),
      plug('job:B', { kind: 'unsure', result: null, first: false, last: false }),
      plug('job:C', { open: true }),
      plug('job:D', { valueSi: 24.1, result: 'NotOK' }),
    ];
    const [group] = processGroups(rows, 'specification');
    expect(group?.product.n).toBe(2);
    expect(group?.notProven).toMatchObject({ count: 2, n: 3 });
  });
});

describe('whether a process is stable', () => {
  const normal = normals(3);
  const of = (values: readonly number[]) =>
    processGroups(
      values.map((value, i) => row(value, { stream: `job:${i}` })),
      'specification',
    )[0]?.process.stability;

  it('is doubted where it signals more often than chance, and only then', () => {
    const steady = Array.from({ length: 400 }, () => 27.5 + 0.3 * normal());
    expect(of(steady)).toMatchObject({ readings: 400, unstable: false });
    const stepped = steady.map((value, i) => (i < 200 ? value : value + 0.6));
    expect(of(stepped)).toMatchObject({ unstable: true });
    expect(of(steady.slice(0, 5))).toBeNull();
  });

  it('signals as often by chance as is published, and is hardly ever doubted then', () => {
    const runs = Array.from({ length: 60 }, () =>
      of(Array.from({ length: 1000 }, () => 27.5 + 0.3 * normal())),
    );
    const signals = runs.reduce((sum, one) => sum + (one?.signals ?? 0), 0);
    // Champ and Woodall: every 91.75 readings, from memory; 650 signals tell it to about 8 % at two sigma.
    expect(60_000 / signals).toBeGreaterThan(84);
    expect(60_000 / signals).toBeLessThan(100);
    expect(runs.filter((one) => one?.unstable === true).length).toBeLessThan(4);
  });
});
