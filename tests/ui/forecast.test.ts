import { describe, expect, it } from 'vitest';
import type { Forecast } from '../../src/job/forecast.ts';
import { USUAL_ROUTINE } from '../../src/job/routine.ts';
import { forecastLine, forecastWarning } from '../../src/ui/forecast-words.ts';
import { frameLines } from '../../src/ui/frame.ts';
import { newInputState } from '../../src/ui/input-state.ts';
import { jobWith, viewOf } from './fixtures.ts';

const SLOW: Forecast = {
  ...{ tool: 'wrench', kind: 'readings', perSecond: 10, noiseNm: 0.06, lostShare: 0 },
  ...{ lowerNm: 25, upperNm: 30, ok: 0, lacks: { kind: 'rate', perSecond: 30 } },
};
const CANNOT = 'At 10 readings a second this wrench cannot prove 25.00 to 30.00 N·m.';

const drawn = (job: ReturnType<typeof jobWith>, forecast: Forecast | null): string =>
  frameLines({
    view: viewOf(job, {}, { forecast }),
    size: { columns: 100, rows: 34 },
    ascii: false,
    input: newInputState(),
  })
    .map((line) => line.map(({ text }) => text).join(''))
    .join('\n');

describe('what the wrench cannot prove, on the screen', () => {
  it('is shown at the bench before the first pull', () => {
    expect(drawn(jobWith(0), SLOW)).toContain(CANNOT);
    expect(drawn(jobWith(0), null)).not.toContain('readings a second');
  });

  it('is shown while the steps before it are said, when there is time to fetch another wrench', () => {
    expect(drawn(jobWith(0, { routine: USUAL_ROUTINE }), SLOW)).toContain(CANNOT);
  });

  it('is not said of a wrench that proves the window', () => {
    expect(drawn(jobWith(0), { ...SLOW, perSecond: 100, ok: 20, lacks: null })).not.toContain(
      'readings a second',
    );
  });
});

describe('what is said of a wrench', () => {
  it.each<[Partial<Forecast & { kind: 'readings' }>, string]>([
    [
      { lacks: { kind: 'loss' }, lostShare: 0.12, ok: 3 },
      '12 % of its readings are lost: this wrench cannot',
    ],
    [{ lacks: { kind: 'noise' }, noiseNm: 1.5 }, 'Its readings waver by 1.50 N·m: this wrench cannot'],
    [{ lacks: { kind: 'nothing' } }, 'As it reads now this wrench cannot prove'],
    [{ ok: 15 }, 'At 10 readings a second this wrench leaves 5 of 20 calm pulls'],
  ])('%j: %s', (change, text) => {
    expect(forecastWarning({ ...SLOW, ...change } as Forecast)).toContain(text);
  });

  it('of one that sends one figure a pull is that each needs a key', () => {
    expect(forecastLine({ tool: 'wrench', kind: 'one-figure' })).toBe(
      'wrench: This wrench sends one figure a pull. After each pull confirm the cylinder with a key.',
    );
  });
});
