/** Where a cylinder's torque stands, worked out from its pulls: the last thing that happened to its plug decides. */
import { describe, expect, it } from 'vitest';
import type { Answer } from '../../src/job/event.ts';
import { comesOut, countingPulls, startedBy, strokesOnPlug } from '../../src/job/started.ts';
import type { CylinderState, JobState, TorqueAttempt } from '../../src/job/state.ts';
import { stageAfter } from '../../src/job/tightening-stage.ts';
import { stillFitted, torqueStep } from '../../src/job/torque-step.ts';
import { twoSteps, typedJob } from './typed-job.ts';

/** What each pull was: its kind and what it came to, or what was answered about it. */
type Was = readonly [kind: TorqueAttempt['kind'], result?: 'OK' | 'NotOK' | null, answer?: Answer | null];

const job = typedJob().state();
const [aCylinder] = job.cylinders;
const someJudgement = (result: 'OK' | 'NotOK', side: 'inside' | 'low' | 'high') => ({ result, side });

/** Cylinder 1 with these pulls, numbered from 1. */
function cylinder(pulls: readonly Was[], change: Partial<CylinderState> = {}): CylinderState {
  if (aCylinder === undefined) throw new Error('no cylinder');
  const attempts = pulls.map(([kind, result = null, answer = null], i) => ({
    pull: { pull: i + 1, peakNm: 27 },
    kind,
    judgement: result === null ? null : someJudgement(result, result === 'OK' ? 'inside' : 'low'),
    answer,
  }));
  return { ...aCylinder, ...change, pulls: attempts as unknown as readonly TorqueAttempt[] };
}

const stands = (
  pulls: readonly Was[],
  change: Partial<CylinderState> = {},
  state: Partial<Pick<JobState, 'questions' | 'basis'>> = {},
) => torqueStep(cylinder(pulls, change), { questions: [], basis: job.basis, ...state });

const OK: Was = ['tightening', 'OK'];
const LOW: Was = ['tightening', 'NotOK'];

describe('a plain tightening', () => {
  it.each<[string, readonly Was[], string]>([
    ['nothing was pulled', [], 'todo'],
    ['one that was OK', [OK], 'done'],
    ['one that went on from a stroke and was OK', [['run-down'], ['continuation', 'OK']], 'done'],
    ['one that was not', [LOW], 'again'],
    ['not OK, then OK', [LOW, OK], 'done'],
    ['OK, then not', [OK, LOW], 'again'],
    ['a stroke on the way', [['run-down']], 'todo'],
    ['something in a hand', [['handling']], 'todo'],
    [
      'a re-hit and a check behind an OK leave it, whatever they read',
      [OK, ['rehit', 'NotOK'], ['check', 'NotOK']],
      'done',
    ],
    ['a re-hit proves nothing by itself', [LOW, ['rehit', 'OK']], 'again'],
    ['nor does a check', [['check', 'OK']], 'todo'],
    ['a loosening behind an OK', [OK, ['loosening']], 'again'],
    ['OK again behind a loosening', [OK, ['loosening'], OK], 'done'],
    ['to be fitted again', [['tightening', 'OK', 'refit']], 'again'],
    ['to be replaced', [['tightening', 'OK', 'replace']], 'again'],
    ['not finished', [['tightening', 'OK', 'unfinished']], 'again'],
    ['said to be fresh', [['tightening', 'OK', 'fresh']], 'done'],
    ['one of which nobody knows what it was', [['unsure']], 'todo'],
  ])('%s', (_what, pulls, step) => {
    expect(stands(pulls)).toBe(step);
  });

  it('waits where a question is open about this cylinder, and about no other', () => {
    const about = (number: number) => ({
      questions: [{ pull: 1, cylinder: number, kind: 'unsure', answers: [] }] as JobState['questions'],
    });
    expect(stands([OK], {}, about(1))).toBe('ask');
    expect(stands([OK], {}, about(2))).toBe('done');
  });

  it('counts what came behind the pull after which it was started again', () => {
    expect(stands([OK, OK], { restartedAfter: 2 })).toBe('again');
    expect(stands([OK, OK], { restartedAfter: 1 })).toBe('done');
    expect(stands([], { restartedAfter: 0 })).toBe('again');
  });

  it('that came before a binding step proves nothing', () => {
    const { orderOfWork } = job.basis;
    const bound = { basis: { ...job.basis, orderOfWork: { ...orderOfWork, fitting: 'binding' } as never } };
    const c = cylinder([OK]);
    const early = { ...c, pulls: c.pulls.map((one) => ({ ...one, early: ['fitting' as const] })) };
    expect(torqueStep(early, { questions: [], ...bound })).toBe('again');
    expect(torqueStep(c, { questions: [], ...bound })).toBe('done');
    expect(torqueStep(early, { questions: [], basis: job.basis })).toBe('done');
  });
});

describe('one that somebody left as it is', () => {
  const accepted = { kind: 'accepted', pull: 1, by: 'A. Foreman', reason: 'sound' } as const;
  const angled = { kind: 'by-angle', turn: '1/2 turn', why: 'no room' } as const;

  it('is settled while that very plug is still in', () => {
    expect(stands([LOW], { settlement: accepted })).toBe('settled');
    expect(stands([LOW, ['rehit']], { settlement: accepted })).toBe('settled');
    expect(stands([LOW, ['loosening']], { settlement: accepted })).toBe('again');
    expect(stands([['tightening', 'NotOK', 'refit']], { settlement: accepted })).toBe('again');
    expect(stands([LOW], { settlement: { ...accepted, pull: 2 } })).toBe('again');
  });

  it('by an angle is settled, and done once a torque proves it', () => {
    expect(stands([], { settlement: angled })).toBe('settled');
    expect(stands([OK], { settlement: angled })).toBe('done');
  });
});

describe('two steps', () => {
  const two = { basis: typedJob(twoSteps()).state().basis };

  it.each<[string, readonly Was[], string]>([
    ['the first alone', [OK], 'again'],
    ['the first twice without loosening', [OK, OK], 'again'],
    ['first, loosened', [OK, ['loosening']], 'again'],
    ['first, loosened, last', [OK, ['loosening'], OK], 'done'],
    ['first, loosened, last not OK', [OK, ['loosening'], LOW], 'again'],
    ['loosened before the first was OK: that loosens nothing', [LOW, ['loosening'], OK], 'again'],
    ['loosened early, then all of it', [['loosening'], OK, ['loosening'], OK], 'done'],
    [
      'fitted again behind the first: from the beginning',
      [['tightening', 'OK', 'refit'], ['loosening'], OK],
      'again',
    ],
    [
      'the last by going on from a stroke',
      [['continuation', 'OK'], ['loosening'], ['continuation', 'OK']],
      'done',
    ],
  ])('%s', (_what, pulls, step) => {
    expect(stands(pulls, {}, two)).toBe(step);
  });

  it.each<[from: 'first' | 'loosen' | 'final', was: Was, to: string]>([
    ['first', OK, 'loosen'],
    ['first', LOW, 'first'],
    ['first', ['loosening'], 'first'],
    ['first', ['rehit', 'OK'], 'first'],
    ['first', ['continuation', 'OK'], 'loosen'],
    ['loosen', OK, 'loosen'],
    ['loosen', ['loosening'], 'final'],
    ['final', ['loosening'], 'final'],
    ['final', OK, 'final'],
    ['final', ['tightening', 'OK', 'refit'], 'first'],
    ['final', ['tightening', 'OK', 'replace'], 'first'],
    ['loosen', ['tightening', 'OK', 'fresh'], 'loosen'],
  ])('from %s, %o comes to %s', (from, was, to) => {
    const [attempt] = cylinder([was]).pulls;
    expect(attempt && stageAfter(from, attempt)).toBe(to);
  });
});

describe('the plug that is in a cylinder now', () => {
  const numbers = (pulls: readonly TorqueAttempt[]) => pulls.map(({ pull }) => pull.pull);

  it('has had the pulls behind the one that took it out, or made it come out', () => {
    const out: readonly Was[] = [
      ['loosening'],
      ['tightening', null, 'refit'],
      ['tightening', null, 'replace'],
    ];
    for (const was of out) {
      const c = cylinder([OK, was, ['run-down'], OK]);
      expect(numbers(strokesOnPlug(c))).toEqual([3, 4]);
      expect([1, 2, 3, 4].map((pull) => stillFitted(c, pull))).toEqual([false, false, true, true]);
    }
    for (const answer of ['fresh', 'rehit', 'unfinished', 'handling'] as const)
      expect(comesOut({ kind: 'unsure', answer })).toBe(false);
  });

  it('was started again: only what came behind that counts', () => {
    const c = cylinder([OK, OK, OK], { restartedAfter: 2 });
    expect(numbers(countingPulls(c))).toEqual([3]);
    expect([2, 3, 4].map((pull) => stillFitted(c, pull))).toEqual([false, true, false]);
  });

  it('is on its way by strokes and by what stayed low, until one pull brings it home', () => {
    expect(numbers(startedBy(cylinder([['run-down'], LOW])))).toEqual([1, 2]);
    expect(numbers(startedBy(cylinder([['run-down'], OK])))).toEqual([]);
    expect(numbers(startedBy(cylinder([LOW, ['rehit', 'OK'], ['check', 'OK']])))).toEqual([1]);
    expect(numbers(startedBy(cylinder([OK, ['loosening'], LOW])))).toEqual([3]);
    expect(numbers(startedBy(cylinder([['unsure']])))).toEqual([]);
  });
});

describe('the last plug that was brought to the window', () => {
  it('is that of the latest pull of a tightening that reached it', () => {
    const it = typedJob();
    expect(it.state().lastTight).toBeNull();
    it.pull(3, 24.9);
    expect(it.state().lastTight).toBeNull();
    it.pull(3, 25);
    it.pull(2, 27);
    expect(it.state().lastTight).toBe(2);
    it.pull(1, 32);
    expect(it.state().lastTight).toBe(1);
    it.pull(3, 27, 'check');
    expect(it.state().lastTight).toBe(3);
    it.pull(2, 27, 'rehit');
    expect(it.state().lastTight).toBe(2);
    it.pull(4, 27, 'run-down');
    it.pull(4, 27, 'unsure', { ask: 'which' });
    it.pull(null, 40, 'handling');
    expect(it.state().lastTight).toBe(2);
  });
});
