/** What each event does to a job, one thing at a time, from events that are written out. */
import { describe, expect, it } from 'vitest';
import { stageOf, toBeLoosened, torqueWindowBefore, torqueWindowOf } from '../../src/job/stage.ts';
import type { TorqueAttempt } from '../../src/job/state.ts';
import { type Stage, stageAfter } from '../../src/job/tightening-stage.ts';
import { windowFor } from '../../src/job/windows.ts';
import { twoSteps, typedJob } from './typed-job.ts';
import { INSTRUMENTS, OPENING } from './workshop.ts';

const over = 32;

describe('two questions at once', () => {
  it('are answered one by one: the other stays open, and its cylinder waits', () => {
    const job = typedJob();
    const first = job.pull(1, over);
    const second = job.pull(2, over);
    expect(job.state().questions.map(({ pull }) => pull)).toEqual([first, second]);
    job.give({ type: 'pull-accepted', pull: first, cylinder: 1, by: 'A. Foreman', reason: 'sound' });
    expect(job.state().questions.map(({ pull }) => pull)).toEqual([second]);
    expect([job.cylinder(1)?.torque, job.cylinder(2)?.torque]).toEqual(['settled', 'ask']);
  });

  it('on one plug go with it when it comes out; one about another plug stays', () => {
    const job = typedJob();
    const first = job.pull(1, over);
    const again = job.pull(1, over);
    const other = job.pull(2, over);
    job.give({ type: 'question-answered', pull: first, answer: 'refit' });
    expect(job.state().questions.map(({ pull }) => pull)).toEqual([other]);
    expect(job.cylinder(1)?.pulls.map(({ pull, answer }) => [pull.pull, answer])).toEqual([
      [first, 'refit'],
      [again, 'refit'],
    ]);
    expect(job.cylinder(2)?.pulls[0]?.answer).toBeNull();
    expect(job.state().refitting).toBe(1);
  });

  it('one that is no answer about the plug leaves the other open', () => {
    const job = typedJob();
    const first = job.pull(1, 27, 'unsure', { ask: 'which' });
    const again = job.pull(1, 27, 'unsure', { ask: 'which' });
    job.give({ type: 'question-answered', pull: first, answer: 'rehit' });
    expect(job.state().questions.map(({ pull }) => pull)).toEqual([again]);
    expect(job.state().refitting).toBeNull();
  });
});

describe('a torque that somebody answered for', () => {
  const byAngle = { type: 'fitted-by-angle', cylinder: 1, turn: '1/2 turn', why: 'no room' } as const;

  it('is settled, and the next cylinder is due', () => {
    const job = typedJob();
    expect(job.state().torqueTarget).toBe(1);
    job.give(byAngle);
    expect(job.cylinder(1)?.torque).toBe('settled');
    expect(job.state().torqueTarget).not.toBe(1);
  });

  it.each(['refit', 'replace'] as const)('counts no more when its plug comes out by "%s"', (answer) => {
    const job = typedJob();
    job.give(byAngle);
    const pull = job.pull(1, over);
    job.give({ type: 'question-answered', pull, answer });
    expect(job.cylinder(1)?.settlement).toBeUndefined();
    expect(job.cylinder(1)?.torque).toBe('again');
  });

  it('still counts when a question about it is answered with its plug left in', () => {
    const job = typedJob();
    job.give(byAngle);
    const pull = job.pull(1, 27, 'unsure', { ask: 'which' });
    job.give({ type: 'question-answered', pull, answer: 'handling' });
    expect(job.cylinder(1)).toMatchObject({ torque: 'settled', settlement: { kind: 'by-angle' } });
  });

  it('for a pull over the window holds until that plug is loosened', () => {
    const job = typedJob();
    const pull = job.pull(1, over);
    job.give({ type: 'pull-accepted', pull, cylinder: 1, by: 'A. Foreman', reason: 'sound' });
    job.pull(1, 27, 'check');
    expect(job.cylinder(1)?.torque).toBe('settled');
    job.pull(1, -20, 'loosening');
    expect(job.cylinder(1)?.torque).toBe('again');
  });

  it('ends the backing out of that cylinder, and of no other', () => {
    for (const [refitting, left] of [
      [1, null],
      [2, 2],
    ] as const) {
      const job = typedJob();
      job.give({ type: 'cylinder-restarted', cylinder: refitting, newPlug: false, why: 'dropped' }, byAngle);
      expect(job.state().refitting).toBe(left);
    }
  });
});

describe('a plug that is started again', () => {
  it('is due at once, whatever it had proven, and only what comes behind counts', () => {
    const job = typedJob();
    for (const cylinder of [1, 2, 3]) job.pull(cylinder, 27);
    expect(job.cylinder(1)?.torque).toBe('done');
    job.give({ type: 'cylinder-restarted', cylinder: 1, newPlug: false, why: 'dirt on the seat' });
    expect(job.cylinder(1)).toMatchObject({ torque: 'again', restartedAfter: 3 });
    expect(job.state()).toMatchObject({ refitting: 1, torqueTarget: 1, lastTight: 3 });
    expect(job.cylinder(2)?.torque).toBe('done');
    job.pull(1, 27);
    expect(job.cylinder(1)?.torque).toBe('done');
    expect(job.state().refitting).toBeNull();
  });

  it('keeps its gap, unless another plug takes its place', () => {
    for (const newPlug of [false, true]) {
      const job = typedJob();
      job.give({ type: 'gap-measured', ...gap(job, 0.75) });
      expect(job.cylinder(1)?.gap).toBe('done');
      job.give({ type: 'cylinder-restarted', cylinder: 1, newPlug, why: 'dirt on the seat' });
      expect(job.cylinder(1)?.gap === 'done').toBe(!newPlug);
    }
  });
});

/** A reading of the gauge for cylinder 1, well inside. */
function gap({ state }: ReturnType<typeof typedJob>, reading: number) {
  const window = state().gapWindow ?? expect.fail('no gap');
  const judgement = {
    result: 'OK',
    side: 'inside',
    grade: 'pass',
    value: reading,
    expandedUncertainty: window.expandedAtUpper,
    conformanceProbability: 0.999,
  } as const;
  return { cylinder: 1, reading, tool: 'gauge', source: 'linked', atUs: 1_000_000, judgement } as const;
}

describe('what a tool declares of itself', () => {
  const deviation = { kind: 'relative', percent: 3 } as const;
  const [wrench] = INSTRUMENTS;
  if (wrench === undefined) throw new Error('no wrench');
  const windowOf = (lower: number, upper: number) =>
    windowFor(
      { ...wrench, permissibleDeviation: deviation },
      { lower, upper },
      { on: OPENING.on, adapter: undefined },
      OPENING.decision.rule,
    );

  it('changes that tool and its window, and what was confirmed is to be confirmed again', () => {
    const job = typedJob();
    job.give({ type: 'windows-confirmed' });
    const before = job.state();
    const window = windowOf(25, 30);
    job.give({
      type: 'uncertainty-declared',
      tool: 'wrench',
      permissibleDeviation: deviation,
      window,
      firstWindow: null,
    });
    const { instruments, windowsConfirmed, torqueWindow, gapWindow, basis } = job.state();
    expect(instruments).toEqual([
      { ...wrench, permissibleDeviation: deviation, promiseOfDevice: true },
      before.instruments[1],
    ]);
    expect(windowsConfirmed).toBe(false);
    expect(torqueWindow).toEqual(window);
    expect(gapWindow).toEqual(before.gapWindow);
    expect(basis).toEqual(before.basis);
  });

  it('of a gauge changes the gap alone', () => {
    const job = typedJob();
    const before = job.state();
    const window = before.gapWindow ?? expect.fail('no gap');
    const narrower = { ...window, acceptLower: window.acceptLower + 0.001 };
    job.give({
      type: 'uncertainty-declared',
      tool: 'gauge',
      permissibleDeviation: { kind: 'absolute', amount: 0.011 },
      window: narrower,
      firstWindow: null,
    });
    expect(job.state().gapWindow).toEqual(narrower);
    expect(job.state().torqueWindow).toEqual(before.torqueWindow);
  });

  it('changes the window of the first of two steps as well', () => {
    const job = typedJob(twoSteps());
    const [window, firstWindow] = [windowOf(18, 22), windowOf(25, 30)];
    job.give({
      type: 'uncertainty-declared',
      tool: 'wrench',
      permissibleDeviation: deviation,
      window,
      firstWindow,
    });
    expect(job.state().torqueWindow).toEqual(window);
    expect(job.state().basis.firstTorqueWindow).toEqual(firstWindow);
  });
});

describe('two steps', () => {
  const attempt = (kind: string, more: object = {}) =>
    ({ kind, judgement: null, answer: null, ...more }) as unknown as TorqueAttempt;
  const ok = { judgement: { result: 'OK' } };
  const notOk = { judgement: { result: 'NotOK' } };

  it.each<[Stage, string, TorqueAttempt, Stage]>([
    ['first', 'a proven tightening', attempt('tightening', ok), 'loosen'],
    ['first', 'a proven continuation', attempt('continuation', ok), 'loosen'],
    ['first', 'a tightening that is not proven', attempt('tightening', notOk), 'first'],
    ['first', 'a re-hit, whatever it reads', attempt('rehit', ok), 'first'],
    ['first', 'a stroke on the way', attempt('run-down'), 'first'],
    ['first', 'loosening, too early', attempt('loosening'), 'first'],
    ['loosen', 'loosening', attempt('loosening'), 'final'],
    ['loosen', 'another tightening', attempt('tightening', ok), 'loosen'],
    ['final', 'a proven tightening', attempt('tightening', ok), 'final'],
    ['final', 'loosening once more', attempt('loosening'), 'final'],
    ['final', 'a plug that is backed out', attempt('tightening', { ...ok, answer: 'refit' }), 'first'],
    ['loosen', 'another plug', attempt('tightening', { ...ok, answer: 'replace' }), 'first'],
    [
      'loosen',
      'an answer that leaves the plug in',
      attempt('tightening', { ...ok, answer: 'fresh' }),
      'loosen',
    ],
  ])('at "%s", %s: "%s"', (before, _what, pulled, after) => {
    expect(stageAfter(before, pulled)).toBe(after);
  });

  it('go through both windows, and only the last one proves', () => {
    const job = typedJob(twoSteps());
    const limits = () => {
      const { lowerLimit, upperLimit } = torqueWindowOf(job.state(), 1);
      return [lowerLimit, upperLimit];
    };
    expect([stageOf(job.state(), 1), ...limits(), toBeLoosened(job.state())]).toEqual([
      'first',
      25,
      30,
      null,
    ]);
    job.pull(1, 27);
    expect([stageOf(job.state(), 1), ...limits(), toBeLoosened(job.state())]).toEqual(['loosen', 25, 30, 1]);
    expect(job.cylinder(1)?.torque).toBe('again');
    job.pull(1, -20, 'loosening');
    expect([stageOf(job.state(), 1), ...limits(), toBeLoosened(job.state())]).toEqual([
      'final',
      18,
      22,
      null,
    ]);
    const last = job.pull(1, 20);
    expect(job.cylinder(1)?.torque).toBe('done');
    // The window that a pull was meant for stays the one that it had.
    const c = job.cylinder(1) ?? expect.fail('no cylinder');
    expect(torqueWindowBefore(job.state(), c, 1).lowerLimit).toBe(25);
    expect(torqueWindowBefore(job.state(), c, 2).lowerLimit).toBe(25);
    expect(torqueWindowBefore(job.state(), c, last).lowerLimit).toBe(18);
  });

  it('need not be loosened once somebody answers for the cylinder', () => {
    const job = typedJob(twoSteps());
    job.pull(1, 27);
    job.give({ type: 'fitted-by-angle', cylinder: 1, turn: '1/2 turn', why: 'no room' });
    expect(toBeLoosened(job.state())).toBeNull();
    expect(toBeLoosened(typedJob().state())).toBeNull();
  });
});

describe('the cylinder that is due', () => {
  it('is the one that a person chose while it is open, else the first open one in service order', () => {
    const job = typedJob();
    const order = job.state().order.engine.serviceOrder;
    expect(job.state().torqueTarget).toBe(order[0]);
    job.give({ type: 'cylinder-chosen', quantity: 'torque', cylinder: order[2] ?? 0 });
    expect(job.state().torqueTarget).toBe(order[2]);
    expect(job.state().gapTarget).toBe(order[0]);
    job.pull(order[2] ?? 0, 27);
    expect(job.state().torqueTarget).toBe(order[0]);
  });

  it('is none when all are done', () => {
    const job = typedJob();
    for (const cylinder of job.state().order.engine.serviceOrder) job.pull(cylinder, 27);
    expect(job.state().torqueTarget).toBeNull();
    expect(job.state().lastTight).toBe(job.state().order.engine.serviceOrder.at(-1));
  });
});

describe('a pull on a plug that is tight already', () => {
  const ok = {
    result: 'OK',
    side: 'inside',
    grade: 'pass',
    value: 27,
    expandedUncertainty: 0.6,
    conformanceProbability: 0.99,
  };
  it.each(['rehit', 'check'] as const)('a %s proves nothing, whatever it reads', (kind) => {
    const job = typedJob();
    job.pull(1, 27, kind, { judgement: ok });
    expect(job.cylinder(1)?.torque).toBe('todo');
    job.pull(1, 26, 'run-down');
    job.pull(1, 24);
    job.pull(1, 27, kind, { judgement: ok });
    expect(job.cylinder(1)?.torque).toBe('again');
  });
});

describe('the last tight plug', () => {
  it.each<[string, number, 'tightening' | 'rehit' | 'check' | 'run-down' | 'continuation', boolean]>([
    ['a tightening right at the limit', 25, 'tightening', true],
    ['one just below it', 24.999, 'tightening', false],
    ['a continuation', 27, 'continuation', true],
    ['a re-hit', 27, 'rehit', true],
    ['a check', 27, 'check', true],
    ['a stroke on the way, however high', 27, 'run-down', false],
  ])('%s', (_what, nm, kind, tight) => {
    const job = typedJob();
    job.pull(1, 27);
    job.pull(2, nm, kind);
    expect(job.state().lastTight).toBe(tight ? 2 : 1);
  });
});
