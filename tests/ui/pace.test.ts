import { TestScheduler } from 'rxjs/testing';
import { describe, expect, it } from 'vitest';
import { FRAME_MS, paced } from '../../src/ui/pace.ts';

const virtual = (run: (helpers: Parameters<Parameters<TestScheduler['run']>[0]>[0]) => void) =>
  new TestScheduler((actual, expected) => expect(actual).toEqual(expected)).run(run);

describe('the pace of frames', () => {
  it('shows the first view at once and the newest after that', () => {
    virtual(({ cold, expectObservable }) => {
      const rest = FRAME_MS - 1;
      expectObservable(paced(cold('abc'))).toBe(`a ${rest}ms c`);
    });
  });

  it('draws at most 15 and at least 10 frames a second of 50 views a second', () => {
    virtual(({ cold, expectObservable, flush }) => {
      const frames: number[] = [];
      const views = cold(`${'a 19ms '.repeat(200)}|`);
      paced(views).subscribe({ next: () => frames.push(1) });
      expectObservable(views);
      flush();
      expect(frames.length).toBeLessThanOrEqual(4 * 15);
      expect(frames.length).toBeGreaterThanOrEqual(4 * 10);
    });
  });

  it('never leaves out the last view, not even at the end', () => {
    virtual(({ cold, expectObservable }) => {
      expectObservable(paced(cold('ab|'))).toBe(`a ${FRAME_MS - 1}ms (b|)`);
    });
  });
});
