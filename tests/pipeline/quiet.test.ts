import { TestScheduler } from 'rxjs/testing';
import { describe, expect, it } from 'vitest';
import { quiet } from '../../src/pipeline/quiet.ts';

/** What is given for readings that come as drawn, a frame a millisecond. */
function given(readings: string, ms: number): { atMs: number; quietMs: number }[] {
  const out: { atMs: number; quietMs: number }[] = [];
  const scheduler = new TestScheduler(() => {});
  scheduler.run(({ hot }) => {
    const seen = quiet(hot(readings)).subscribe((quietMs) => out.push({ atMs: scheduler.now(), quietMs }));
    scheduler.schedule(() => seen.unsubscribe(), ms);
  });
  return out;
}

describe('the quiet behind a reading', () => {
  it('is given once it has lasted one second, and once more after two and a half, never sooner', () => {
    const out = given('700ms a', 10_000);
    expect(out.map(({ quietMs }) => quietMs)).toEqual([1000, 2500]);
    for (const { atMs, quietMs } of out) {
      expect(atMs - 700).toBeGreaterThanOrEqual(quietMs);
      expect(atMs - 700).toBeLessThanOrEqual(quietMs + 500);
    }
  });

  it('is none as long as readings come', () => {
    expect(given('a 900ms a 900ms a 900ms a', 2800)).toEqual([]);
  });

  it('is none before the first reading', () => {
    expect(given('9000ms a', 9000)).toEqual([]);
  });
});
