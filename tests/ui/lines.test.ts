import { describe, expect, it } from 'vitest';
import type { JobEvent } from '../../src/job/event.ts';
import { lineFor } from '../../src/ui/lines.ts';
import { summaryLines } from '../../src/ui/summary.ts';
import {
  attemptOf,
  cylinderIn,
  GAP_WINDOW,
  jobWith,
  judged,
  linked,
  pullOf,
  questionOn,
  TORQUE_WINDOW,
  withCylinder,
} from './fixtures.ts';
import { VIEWS } from './views.ts';

const job = jobWith(2);
const line = (event: JobEvent, after = job, before = job) => lineFor(event, before, after, '09:41:07');
const torque = judged('OK', 'inside', 27.41, 'N.m');

const placed = (more: Partial<Extract<JobEvent, { type: 'pull-placed' }>> = {}): JobEvent => ({
  type: 'pull-placed',
  pull: 3,
  cylinder: 3,
  kind: 'tightening',
  because: 'first-plug',
  judgement: torque,
  ...more,
});

describe('one line an event', () => {
  it('gives a verdict with its figure, window and uncertainty', () => {
    expect(line(placed())).toBe(
      '09:41:07  cylinder 3  torque  OK  27.41 N·m (window 25.00 to 30.00, U 0.64)',
    );
    const judgement = judged('NotDecidable', 'low', 0.705, 'mm');
    expect(
      line({
        type: 'gap-measured',
        tool: 'gauge',
        reading: 9,
        atUs: 0,
        source: 'linked',
        cylinder: 4,
        judgement,
      }),
    ).toBe('09:41:07  cylinder 4  gap  UNDECIDED  0.705 mm (window 0.700 to 0.800, U 0.012)');
  });

  it('says in ASCII what a plain terminal can print', () => {
    expect(lineFor(placed(), job, job, '09:41:07', true)).toContain('27.41 N.m');
  });

  it('says why a pull was not judged, and what is asked', () => {
    const after = {
      ...withCylinder(job, {
        ...cylinderIn(5, 'done', 'ask'),
        pulls: [attemptOf(30, null, { pull: pullOf(30, 26.1), because: 'during-question' })],
      }),
      questions: [questionOn(5, 'unsure', ['fresh', 'rehit'], 30)],
    };
    expect(
      line(
        placed({ pull: 30, cylinder: 5, kind: 'unsure', because: 'during-question', judgement: null }),
        after,
      ),
    ).toBe(
      '09:41:07  cylinder 5  torque  not judged  26.10 N·m  unsure: it came while a question was open  ask  What was this pull? (it came while a question was open.)  ' +
        '[f] it was the tightening [r] re-hit',
    );
    const again = withCylinder(job, {
      ...cylinderIn(5, 'done', 'done'),
      pulls: [attemptOf(30, null, { pull: pullOf(30, 26.1), because: 'ended-low' })],
    });
    const rehit = placed({
      pull: 30,
      cylinder: 5,
      kind: 'rehit',
      because: 'same-plug-again',
      judgement: null,
    });
    expect(line(rehit, again)).toContain('not judged  26.10 N·m  re-hit: ');
    const stray = {
      ...job,
      strays: [attemptOf(30, null, { pull: pullOf(30, -18), because: 'none-tight-yet' })],
    };
    expect(
      line(
        placed({ pull: 30, cylinder: null, kind: 'loosening', because: 'none-tight-yet', judgement: null }),
        stray,
      ),
    ).toBe('09:41:07  no cylinder  torque  not judged  -18.00 N·m  loosening: no plug was tight yet');
  });

  it('is silent about samples and about a pull whose placing follows', () => {
    const readings = {
      type: 'readings',
      tool: 'wrench',
      first: 1,
      count: 2,
      startUs: 0,
      times: '',
      counts: '',
    } as const;
    expect(line(readings)).toBeNull();
    expect(line({ type: 'pull-detected', ...pullOf(3, 27.41) })).toBeNull();
  });

  const { order, instruments } = job;
  const description = linked('wrench').description ?? expect.fail('a linked tool has a description');
  const others: readonly [JobEvent, string][] = [
    [
      {
        type: 'job-opened',
        order,
        instruments: [...instruments],
        torqueWindow: TORQUE_WINDOW,
        gapWindow: GAP_WINDOW,
        basis: job.basis,
        rules: 'r',
      },
      'job J-1042 opened  Example estate, V8  EX 123  A. Example  torque 25.00 to 30.00 N·m  gap 0.700 to 0.800 mm',
    ],
    [
      { type: 'session-started', session: 2, program: 'plugmark 0.1.0', platform: 'linux' },
      'session 2 started  plugmark 0.1.0  linux',
    ],
    [
      { type: 'tool-linked', tool: 'wrench', driver: 'sim', source: 'simulated', description },
      'wrench  linked  SIMULATED  Example Tools  battery 81 %',
    ],
    [
      { type: 'tool-lost', tool: 'wrench', reason: 'out-of-reach' },
      'wrench  lost  out of reach or switched off',
    ],
    [
      { type: 'readings-missed', tool: 'wrench', fromUs: 1_000_000, toUs: 1_520_000, reason: 'too-many' },
      'wrench  readings missed for 0.52 s  more than the station could take',
    ],
    [{ type: 'value-not-known', tool: 'wrench', reading: 7, atUs: 0 }, 'wrench  reading 7 has no value'],
    [
      { type: 'raw-value', tool: 'wrench', atUs: 0, source: '2c0b', hex: '00ff' },
      'wrench  kept raw, not understood  2c0b  00ff',
    ],
    [{ type: 'cylinder-chosen', quantity: 'length', cylinder: 4 }, 'cylinder 4  chosen for the next gap'],
    [
      { type: 'question-answered', pull: 3, answer: 'refit' },
      'pull 3  answered  plug backed out, to be fitted again',
    ],
    [{ type: 'job-closed', complete: true, open: [] }, 'job closed  complete'],
    [
      { type: 'job-closed', complete: false, open: [{ kind: 'no-torque', cylinder: 4 }] },
      'job closed  not complete  cylinder 4: no torque yet',
    ],
  ];
  it.each(others)('%#: says what happened', (event, text) => {
    expect(line(event)).toBe(`09:41:07  ${text}`);
  });

  it('names the cylinder of an answered question from the state before', () => {
    const before = { ...job, questions: [questionOn(5, 'unsure', ['rehit'], 3)] };
    expect(line({ type: 'question-answered', pull: 3, answer: 'rehit' }, job, before)).toContain(
      'cylinder 5  pull 3',
    );
  });

  it('lets no control character through', () => {
    const text = line({
      type: 'device-refused',
      tool: 'wrench',
      address: 'c0:00:00:00:00:09',
      serial: 'W\u001b[2J\n09:41:08  cylinder 3  torque  OK',
      reason: 'other-serial',
    });
    expect(text).toContain('has serial number W[2J 09:41:08 cylinder 3 torque OK, which');
  });
});

describe('the summary', () => {
  it('has a row a cylinder and says that the job is complete', () => {
    const lines = summaryLines(jobWith(8, { closed: { complete: true, open: [] } }));
    expect(lines[0]).toBe('job J-1042  Example estate, V8  EX 123  11111111111111111  A. Example');
    expect(lines).toHaveLength(1 + 1 + 8 + 1);
    expect(lines[2]).toBe('1         OK 0.752 mm  OK 27.41 N·m  1             1');
    expect(lines.at(-1)).toBe('Complete: every gap and every torque is proven.');
  });

  it('calls no gap proven that was only looked at, or left alone', () => {
    const complete = jobWith(8, { closed: { complete: true, open: [] } });
    const { specification } = complete.order;
    const said = (check: 'visual-only' | 'not-permitted') =>
      summaryLines({
        ...complete,
        gapWindow: null,
        order: { ...complete.order, specification: { ...specification, gapRules: { check } } },
      }).at(-1);
    expect(said('visual-only')).toBe(
      'Complete: every torque is proven; the gaps were looked at, not measured.',
    );
    expect(said('not-permitted')).toBe(
      'Complete: every torque is proven; the gaps were not checked, as the specification says.',
    );
  });

  it('lists what is open in a job that was closed or left', () => {
    expect(summaryLines(VIEWS['closedOpen']?.job ?? job)).toEqual(
      expect.arrayContaining([
        'Closed, not complete. Still open:',
        '  cylinder 6: no torque yet',
        '  cylinder 8: gap not proven',
      ]),
    );
    const left = summaryLines(jobWith(7));
    expect(left.slice(-3)).toEqual([
      'The job is not closed; it can be taken up again. Still open:',
      '  cylinder 8: gap not measured',
      '  cylinder 8: no torque yet',
    ]);
    expect(summaryLines({ ...jobWith(7), rules: 'plugmark/rules/1' }).at(-3)).toContain(
      'only that one can take it up again',
    );
    expect(summaryLines(jobWith(8)).at(-1)).toContain('not closed yet');
  });

  it('says when nothing of it was real', () => {
    expect(summaryLines(jobWith(8, { sources: ['simulated'] }))[1]).toMatch(/^SIMULATED/);
    expect(summaryLines(jobWith(8)).join()).not.toContain('SIMULATED');
  });

  it('is ASCII and free of control characters when asked', () => {
    const hostile = { ...job, order: { ...job.order, technician: 'Zoë\u001b]0;x\u0007' } };
    expect(summaryLines(hostile, true).join('\n')).toMatch(/^[\x20-\x7e\n]+$/);
  });
});
