import { asyncScheduler, type Observable, type SchedulerLike, throttleTime } from 'rxjs';

/** Twelve frames a second: the eye follows, and the terminal is not asked to draw every sample. */
export const FRAME_MS = 84;

/** The first view at once, then the newest at most every {@link FRAME_MS}; the last one is never left out. */
export const paced = <T>(view$: Observable<T>, scheduler: SchedulerLike = asyncScheduler): Observable<T> =>
  view$.pipe(throttleTime(FRAME_MS, scheduler, { leading: true, trailing: true }));
