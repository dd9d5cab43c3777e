import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { studyFrame } from '../../src/ui/study-frame.ts';
import { newStudyInputState, type StudyInputState } from '../../src/ui/study-input-state.ts';
import type { StudyView } from '../../src/ui/study-view.ts';
import { inkColumns } from './drawn.tsx';
import { RESULT, STUDIES, studyOf } from './study-views.ts';

const SIZES = [
  { columns: 60, rows: 20 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
  { columns: 200, rows: 60 },
] as const;

interface Drawing {
  readonly columns?: number;
  readonly rows?: number;
  readonly ascii?: boolean;
  readonly input?: Partial<StudyInputState>;
}

function linesOf(view: StudyView, { columns = 80, rows = 24, ascii = false, input }: Drawing = {}): string[] {
  const frame = studyFrame({
    view,
    size: { columns, rows },
    ascii,
    input: { ...newStudyInputState(false), ...input },
  });
  return frame.map((line) => line.map(({ text }) => text).join(''));
}
const study = (name: string): StudyView => STUDIES[name] ?? expect.fail(`no study ${name}`);
const flat = (view: StudyView, drawing: Drawing = {}) =>
  linesOf(view, drawing).join(' ').replace(/\s+/g, ' ');

const WORDS: Readonly<Record<string, readonly (string | RegExp)[]>> = {
  first: ['Switch on the gauge', 'gauge · seeking', '0 taken, 90 left', 'trial 1 of 3'],
  going: [
    'Ann: measure part 5 and press the send key',
    '✓ taken 0.752 mm Ann, part 4',
    '4 taken, 86 left',
    '4 readings on disk',
    '[u] take back',
    'battery low 15 %',
  ],
  typing: ['measure part 5, type the figure, Enter'],
  lost: ['The gauge is lost', '✗ lost (it stopped answering)', 'Nothing that was taken is lost'],
  back: ['! taken back Ann, part 4'],
  handOver: ['Now Ben: measure part 1', '✓ taken Ann, part 10'],
  notice: ['! That came too soon', 'not taken', 'Ann: measure part 5'],
  asked: [
    '! 99.000 mm, far from what is believed (0.200 to 3.000), does not count yet.',
    'Measure part 5 once more; Enter takes it as it is.',
    '[Enter] take it [u] set aside',
    '4 readings on disk',
  ],
  askedPull: ['! 250.00 N·m, far from', 'Pull part 5 once more'],
  paused: ['Paused: nothing is taken. e goes on.', '[e] go on'],
  pulling: ['torque now in N·m', 'Torque 12.3 N·m'],
  pulled: ['Ann: pull part 5 once; its peak is taken', '25.63 N·m', 'Torque 0.0 N·m'],
  whole: ['All 90 readings are taken. Enter records', '[Enter] record', '90 taken, 0 left'],
  result: [
    'GS-1 is recorded',
    'in mm',
    'repeatability (EV)',
    '32.1 %',
    '! WEAK',
    '✗ NOT FIT',
    'at most 10 %',
  ],
};

describe.each(Object.keys(STUDIES))('the screen of a study, %s', (name) => {
  it.each(SIZES)('fits $columns by $rows, in Unicode and in ASCII, and says what it must', (size) => {
    for (const drawing of [size, { ...size, ascii: true }, { ...size, input: { help: true } }]) {
      const lines = linesOf(study(name), drawing);
      expect(lines).toHaveLength(size.rows - 1);
      for (const line of lines) expect(line.length).toBeLessThanOrEqual(size.columns);
    }
    expect(linesOf(study(name), { ...size, ascii: true }).join('')).toMatch(/^[\x20-\x7e]*$/);
    for (const word of WORDS[name] ?? expect.fail('no words'))
      expect(flat(study(name), size)).toMatch(
        word instanceof RegExp ? word : new RegExp(word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')),
      );
  });
});

/** The large letters: rows of nothing but full blocks and spaces. */
const large = (lines: readonly string[]) => lines.filter((line) => /^[ █]*█[ █]*$/.test(line));

describe('what is to be read from two metres away', () => {
  it.each(SIZES)('is who measures which part in which trial, at $columns by $rows', (size) => {
    const lines = linesOf(study('going'), size);
    expect(large(lines).length).toBeGreaterThanOrEqual(5);
    const at = lines.findIndex((line) => /Ann +part 5 +trial 1 of 3/.test(line));
    expect(lines[at + 1]).toMatch(/█/);
  });

  it('differs for every appraiser, part and trial', () => {
    const drawn = (taken: number) => large(linesOf(studyOf({ taken }))).join('\n');
    const all = Array.from({ length: 90 }, (_, taken) => drawn(taken));
    expect(new Set(all).size).toBe(90);
  });

  it('calls people by their first name where it tells them apart, else by the whole or by initials', () => {
    const who = (appraisers: string[], columns: number) =>
      large(linesOf(studyOf({ appraisers, taken: 0 }), { columns, rows: 24 })).join('\n');
    expect(who(['Zoë Example', 'Ben'], 80)).toBe(who(['Zoe', 'Ben'], 80));
    expect(who(['Jo Abe', 'Jo Ode'], 120)).not.toBe(who(['Jo Ode', 'Jo Abe'], 120));
    expect(who(['Maximilian Example', 'Maximilian Other'], 60)).toBe(who(['ME', 'MO'], 60));
  });

  it('is said in words for whom there are no letters, the part and the trial large all the same', () => {
    const lines = linesOf(studyOf({ appraisers: ['Владимир', 'Ben'], taken: 0 }));
    expect(lines.join('\n')).toMatch(/^ {2}Владимир$/m);
    expect(large(lines).length).toBeGreaterThanOrEqual(5);
  });

  it('is the torque during a pull, a pause, what is asked about, and the end', () => {
    for (const name of ['pulling', 'paused', 'asked', 'whole'])
      expect(large(linesOf(study(name))).join('\n'), name).not.toBe(
        large(linesOf(study('going'))).join('\n'),
      );
  });
});

describe('the grid', () => {
  it('tells done, open and due by sign, at any size', () => {
    const row = linesOf(study('going')).find((line) => line.startsWith(' ►Ann'));
    expect(row?.trim()).toMatch(/^►Ann +✓·· ✓·· ✓·· ✓·· ►·· ··· ··· ··· ··· ···$/);
    const tiny = linesOf(
      studyOf({ parts: Array.from({ length: 30 }, (_, i) => String(i + 1)), trials: 10, taken: 92 }),
      { columns: 60, rows: 20 },
    );
    expect(tiny.find((line) => line.startsWith(' ►Ann'))?.trim()).toMatch(/^►Ann +22►1{27}$/);
  });

  it('shows nothing of any reading but the one that may be seen', () => {
    const figures = (view: StudyView) =>
      linesOf(view)
        .join('\n')
        .match(/\d+\.\d{2,}/g) ?? [];
    expect(figures(study('going'))).toEqual(['0.752']);
    for (const name of ['handOver', 'back', 'first', 'typing', 'lost'])
      expect(figures({ ...study(name), last: study('handOver').last }), name).toEqual([]);
  });

  it('keeps whoever is at it in sight, however many they are', () => {
    const appraisers = Array.from({ length: 10 }, (_, i) => `Person ${'ABCDEFGHIJ'[i]}`);
    for (let turn = 0; turn < 10; turn++) {
      const lines = linesOf(studyOf({ appraisers, taken: 10 * turn }), { columns: 60, rows: 20 });
      expect(lines.join('\n')).toContain(`►${appraisers[turn]}`);
    }
  });
});

describe('the result', () => {
  it('shows the graver verdict large where there is room', () => {
    const lines = linesOf(study('result'), { columns: 120, rows: 40 });
    expect(large(lines).length).toBeGreaterThanOrEqual(5);
  });

  it('can be scrolled to its end in the smallest window', () => {
    const notes = Array.from({ length: 20 }, (_, i) => `note ${i} of many`);
    const view = { ...study('result'), result: { ...RESULT, notes } };
    const small = { columns: 60, rows: 20 };
    expect(flat(view, small)).not.toContain('note 19');
    expect(flat(view, { ...small, input: { from: 99 } })).toContain('note 19');
  });

  it('says why where a method cannot say anything', () => {
    const [first] = RESULT.methods;
    const why = { title: 'average, range', values: null, why: 'no factors for 30 parts' };
    const view = {
      ...study('result'),
      result: { ...RESULT, methods: first === undefined ? [] : [why, first] },
    };
    expect(flat(view)).toContain('average, range: no factors for 30 parts');
  });
});

describe('hostile names', () => {
  it('never leave their place', () => {
    const name = fc.string({ unit: 'binary', minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(
        fc.uniqueArray(name, { minLength: 3, maxLength: 4 }),
        ([a = '', b = '', c = '', d = '']) => {
          const view = studyOf({ appraisers: [a, b], parts: [c, d], taken: 0 });
          const lines = linesOf(
            { ...view, station: a, last: { done: 'taken', appraiser: 1, part: 1, value: 0.7 } },
            {
              columns: 60,
              rows: 20,
            },
          );
          expect(lines).toHaveLength(19);
          expect(lines.join('')).not.toMatch(/[\p{Cc}\u200e\u200f\u202a-\u202e\u2066-\u2069]/u);
          for (const columns of inkColumns(lines)) expect(columns).toBeLessThanOrEqual(60);
        },
      ),
      { numRuns: 30 },
    );
  });
});
