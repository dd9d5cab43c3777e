import { describe, expect, it } from 'vitest';
import { foldAll } from '../../src/job/fold.ts';
import { type Forecast, forecast } from '../../src/job/forecast.ts';
import type { Reads } from '../../src/job/model-pull.ts';
import { openJob } from '../../src/job/open.ts';
import type { JobState } from '../../src/job/state.ts';
import { detectorSettings } from '../../src/pull/settings.ts';
import { orThrow } from '../../src/result.ts';
import { forecastLine, forecastWarning } from '../../src/ui/forecast-words.ts';
import { exampleOrder, INSTRUMENTS, OPENING, workshop } from './workshop.ts';

const GOOD: Reads = { intervalUs: 10_000, perPacket: 1, noiseNm: 0.03, stepNm: 0.01, lostShare: 0 };

/** A job at a window; a wrench that clicks. */
function job(torque = '25-30 N·m'): JobState {
  const order = exampleOrder(4);
  const state = foldAll(
    orThrow(
      openJob(
        { ...order, specification: { ...order.specification, torque } },
        INSTRUMENTS.map((one) => (one.quantity === 'torque' ? { ...one, type: 'setting' as const } : one)),
        OPENING,
      ),
    ),
  );
  if (state === null) throw new Error('the job did not open');
  return state;
}

const said = (reads: Partial<Reads>): Forecast =>
  forecast(job(), 'wrench', detectorSettings(25, { stepNm: 0.01 }), { ...GOOD, ...reads });

describe('what is said of a wrench before the first pull', () => {
  it('is nothing of one that proves the window', () => {
    expect(forecastWarning(said({}))).toBeNull();
    expect(forecastLine(said({}))).toBe(
      'wrench: 100 readings a second, noise 0.03 N·m. It can prove 25.00 to 30.00 N·m.',
    );
  });

  it('names the rate that it would take', () => {
    expect(forecastWarning(said({ intervalUs: 100_000 }))).toBe(
      'At 10 readings a second this wrench cannot prove 25.00 to 30.00 N·m. It would take 30.',
    );
  });

  it('says when it is only a part of the pulls that stays open', () => {
    expect(forecastWarning(said({ intervalUs: 40_000 }))).toMatch(
      /^At 25 readings a second this wrench leaves \d+ of 20 calm pulls to 25.00 to 30.00 N·m undecided. It would take 30.$/,
    );
  });

  it('tells noise from rate', () => {
    expect(said({ noiseNm: 2.5 })).toMatchObject({ lacks: { kind: 'noise' } });
  });

  it('sends for a nearer place where readings are lost', () => {
    expect(said({ lostShare: 0.1, perPacket: 10 })).toMatchObject({ lacks: { kind: 'loss' } });
  });
});

describe('a bench that has seen the wrench rest', () => {
  it('knows it after some seconds, and says no more about it once a plug was pulled', () => {
    const { bench, rest, pull } = workshop();
    expect(bench.forecast()).toBeNull();
    rest(6000);
    expect(bench.forecast()).toMatchObject({ kind: 'readings', perSecond: 100, lacks: null });
    pull(27);
    expect(bench.forecast()).toBeNull();
  });

  it('does not mark the log', () => {
    const { bench, events, rest } = workshop();
    rest(6000);
    const before = events.length;
    bench.forecast();
    expect(events.length).toBe(before);
  });
});
