import { filter, interval, map, merge, type Observable, type SchedulerLike, scan } from 'rxjs';

const LOOK_MS = 500;
/** After so long without a reading a pull whose torque is down is over; after the longer one nobody goes on from a stroke. */
const QUIET_MS: readonly number[] = [1000, 2500];

/** How long a tool has sent nothing, once for each of the times at which that means something; at most half a second late. */
export function quiet(readings$: Observable<unknown>, scheduler?: SchedulerLike): Observable<number> {
  // Looks since the last reading: the first may come right behind it.
  return merge(readings$.pipe(map(() => true)), interval(LOOK_MS, scheduler).pipe(map(() => false))).pipe(
    scan((looks, isReading) => (isReading ? 0 : looks + 1), Number.POSITIVE_INFINITY),
    map((looks) => (looks - 1) * LOOK_MS),
    filter((ms) => QUIET_MS.includes(ms)),
  );
}
