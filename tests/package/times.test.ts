import { expect, it } from 'vitest';
import { checkTimes } from '../../src/package/checks.ts';

const at = (day: number) => new Date(Date.UTC(2026, 2, day)).toISOString();
const job = (number: string, from: readonly [number, number], to: readonly [number, number]) => ({
  job: number,
  first: { seq: from[0], at: at(from[1]) },
  last: { seq: to[0], at: at(to[1]) },
});
const station = [{ seq: 1, at: at(1) }];

it('jobs that stand in the log in the order of their dates are in order, also where one lay open meanwhile', () => {
  const jobs = [job('A', [2, 2], [90, 20]), job('B', [10, 3], [20, 3]), job('C', [30, 5], [40, 5])];
  expect(checkTimes(jobs, station)).toMatchObject({ outcome: 'passed' });
});

it('a job with another date than its own stands out among its neighbours, which do not', () => {
  const jobs = [
    job('A', [2, 24], [5, 24]),
    job('C', [6, 25], [9, 25]),
    job('B', [10, 4], [20, 4]),
    job('D', [30, 26], [40, 26]),
  ];
  const { outcome, detail } = checkTimes(jobs, station);
  expect(outcome).toBe('doubtful');
  expect(detail).toContain('job B: it is dated 21 days before what stands in front of it in the log');
  expect(detail).toMatch(/^TIMES IN DOUBT/);
  expect(detail).not.toMatch(/job [ACD]/);
});

it('a job dated weeks later than all that stands behind it is the one that is named', () => {
  const jobs = [job('A', [2, 2], [9, 2]), job('B', [10, 28], [20, 28]), job('C', [30, 3], [40, 4])];
  const { detail } = checkTimes(jobs, station);
  expect(detail).toBe('TIMES IN DOUBT: job B: it is dated 25 days after what stands behind it in the log.');
});
