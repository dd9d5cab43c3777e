import { describe, expect, test } from 'vitest';
import { reportModel } from '../../src/report/model.ts';
import { madeJob, modelOf, TORQUE_WINDOW, TROUBLED, traceOf } from './fixtures.ts';

const INVENTED = {
  torque: '20 N·m',
  gap: '0.8 mm',
  threads: 'dry',
  source: { kind: 'invented-example', title: 'Example' },
} as const;

describe('status', () => {
  test('complete only when closed as such with every cylinder proven', () => {
    expect(modelOf().model.status).toEqual({ word: 'COMPLETE', text: '8 of 8 cylinders OK.' });
    expect(modelOf({ close: false }).model.status.word).toBe('NOT CLOSED');
    expect(modelOf({ skip: [2] }).model.status).toEqual({
      word: 'NOT COMPLETE',
      text: '7 of 8 cylinders OK; the job was closed with work open.',
    });
  });

  test('a closing event that calls itself complete does not make an unproven job so', () => {
    const { input } = madeJob({ skip: [2] });
    const lying = { ...input, state: { ...input.state, closed: { complete: true, open: [] } } };
    expect(reportModel(lying).status.word).toBe('NOT COMPLETE');
  });

  test.each([
    ['simulated', 'SIMULATED: COMPLETE'],
    ['replayed', 'REPLAYED: COMPLETE'],
    ['typed', 'COMPLETE'],
  ] as const)('a job of %s figures has the status %s', (source, word) => {
    const { model } = modelOf({ source });
    expect(model.status.word).toBe(word);
    expect(model.marks).toEqual(source === 'typed' ? [] : [source]);
    expect(model.proves.join(' ').includes('the named instruments reported')).toBe(source === 'typed');
    expect(model.proves.join(' ').includes('proves nothing about any engine')).toBe(source !== 'typed');
  });
});

describe('verdict of a cylinder', () => {
  const verdicts = (options = {}) =>
    Object.fromEntries(modelOf(options).model.cylinders.map(({ cylinder, verdict }) => [cylinder, verdict]));

  test('a failed pull that was done again is OK, and both pulls are on the record', () => {
    const { model } = modelOf({ firstPull: { 3: 31.42 } });
    const row = model.cylinders.find(({ cylinder }) => cylinder === 3);
    expect(row?.verdict).toBe('ok');
    expect(row?.pulls.map(({ verdictWord }) => verdictWord)).toEqual(['NOT OK', 'OK']);
  });

  test('each state has its own', () => {
    const judgement = {
      result: 'NotDecidable',
      side: 'low',
      grade: 'conditional-pass',
      value: 25.2,
      expandedUncertainty: 0.6,
      conformanceProbability: 0.7,
    } as const;
    const late = [
      { type: 'pull-placed', pull: 1, cylinder: 1, kind: 'tightening', because: 'plug-turned', judgement },
      {
        type: 'pull-placed',
        pull: 2,
        cylinder: 2,
        kind: 'unsure',
        because: 'during-question',
        judgement: null,
      },
    ] as const;
    expect(verdicts({ banks: [[1, 2, 3, 4]], skip: [4], late, close: false })).toEqual({
      1: 'not-decidable',
      2: 'question',
      3: 'ok',
      4: 'not-done',
    });
  });

  test('a proven plug that was loosened again is not OK any more', () => {
    expect(verdicts(TROUBLED)[1]).toBe('not-done');
  });
});

describe('exceptions', () => {
  test('none on a job without any', () => {
    expect(modelOf().model.exceptions).toEqual([]);
  });

  test('all that went out of the ordinary, in order, with who', () => {
    const { exceptions } = modelOf(TROUBLED).model;
    expect(exceptions.map(({ what }) => what)).toEqual([
      'wrench: reports serial W-9999, the station lists W-1187.',
      'Pull 2, cylinder 2, tightening (rose in 412 ms: the plug turned), peak 31.42 N·m: NOT OK, 31.42 N·m is above the acceptance zone.',
      'Question on pull 2 answered: plug backed out, thread inspected, to be fitted again.',
      'Program started again on this job (session 2).',
      'Next pull given to cylinder 3 by hand.',
      'Link to wrench lost: out of reach or switched off.',
      'Readings of wrench missed for 1.25 s: out of reach or switched off.',
      'gauge sent at least one reading without a value.',
      'gauge sent values in an unknown layout (0x2A00). They are kept as bytes and not judged.',
      'Pull 5, cylinder 3, unsure (its end is missing), peak 26.20 N·m, cut off when the link was lost.',
      'Question on pull 5 answered: no plug was turned.',
      'Pull 5 placed again, on no cylinder, handling (answered by the technician), peak 26.20 N·m, cut off when the link was lost.',
      'Pull 6, cylinder 3, re-hit (rose in 61 ms: the same plug once more), peak 28.40 N·m.',
      'Pull 7, cylinder 1, loosening (this plug was to be backed out), peak -14.30 N·m.',
      'wrench: link not authenticated: another device could pretend to be this tool.',
      'gauge: values typed, not read from the instrument over a link: attested by a person.',
      'The job is not closed.',
    ]);
    expect(new Set(exceptions.slice(0, -1).map(({ who }) => who))).toEqual(new Set(['Ann Example']));
  });

  test('closing with work open names what is open and who accepted it', () => {
    expect(modelOf({ skip: [2, 7] }).model.exceptions).toEqual([
      {
        at: '2025-06-03 08:17:34 UTC',
        what: 'Closed and accepted with work open: cylinder 2: no torque yet; cylinder 7: no torque yet.',
        who: 'Ann Example',
        matters: true,
      },
    ]);
  });

  test('a reading in the guard band is called not decidable, never OK', () => {
    const { exceptions } = modelOf({ firstPull: { 1: 25.2 } }).model;
    expect(exceptions.map(({ what }) => what)).toEqual([
      expect.stringContaining('UNDECIDED, 25.20 N·m is below'),
    ]);
  });
});

describe('what stands on every record', () => {
  test('torque is not clamp force, and the maker decides', () => {
    const { proves, cautions } = modelOf().model;
    expect(proves.join(' ')).toContain('Torque proves torque, not clamp force');
    expect(cautions.join(' ')).toContain("vehicle maker's service information decides");
    expect(cautions.join(' ')).toMatch(/cold engine.*ignition off.*no power tools/);
  });

  test('a job that was declared void is said to prove nothing', () => {
    const { input } = madeJob();
    const voided = { by: 'Owner One', reason: 'wrong vehicle' };
    const { proves, proof } = reportModel({ ...input, state: { ...input.state, voided } });
    expect(proves[0]).toContain('declared VOID');
    expect(proves.join(' ')).not.toContain('It proves which');
    expect(proof).toBe('');
  });

  test('an invented specification is called one', () => {
    const { model } = modelOf({ order: { specification: INVENTED } });
    expect(model.inventedSpecification).toBe(true);
    expect(model.cautions.join(' ')).toContain('INVENTED EXAMPLE');
    expect(modelOf().model.cautions.join(' ')).not.toContain('INVENTED');
  });

  test('a window that no reading can satisfy has no acceptance zone', () => {
    const { input } = madeJob();
    const torqueWindow = { ...TORQUE_WINDOW, decidable: false };
    expect(
      reportModel({ ...input, state: { ...input.state, torqueWindow } }).torqueWindow.acceptance,
    ).toContain('none');
  });
});

test('marks and samples of a pull share one clock and one torque scale', () => {
  const { model } = modelOf({ firstPull: { 3: 31.42 } });
  const [first] = model.plots;
  expect(first?.pulls[0]?.peak).toEqual({ tMs: 1120, nm: 27.1 });
  expect(first?.pulls[0]?.trace).toEqual(traceOf(27.1, 26.694));
  expect(new Set(model.plots.map(({ scale }) => scale.highNm))).toEqual(new Set([31.42 * 1.1]));
  expect(first?.alt).toBe(
    'Torque over time, cylinder 1, OK. Pull 1, tightening, OK: peak 27.10 N·m after 1.12 s, first release 26.69 N·m.',
  );
});

test('the pulls of a cylinder stand in one plot in their order, and go on in another where they are too many', () => {
  const { model } = modelOf({ runDowns: { 2: 1, 3: 24 } });
  const shown = model.plots.map(({ cylinder, pulls }) => [cylinder, pulls.map(({ pull }) => pull)]);
  const from = (first: number, last: number) => Array.from({ length: last - first + 1 }, (_, i) => first + i);
  expect(shown.slice(0, 4)).toEqual([
    [1, [1]],
    [2, [2, 3]],
    [3, from(4, 23)],
    [3, from(24, 28)],
  ]);
});

test('a report of nothing is refused', () => {
  const { input } = madeJob();
  expect(() => reportModel({ ...input, entries: [] })).toThrow(RangeError);
});
