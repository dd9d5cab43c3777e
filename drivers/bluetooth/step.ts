import { Observable } from 'rxjs';
import type { After } from '../after.ts';

/** Emits once, `ms` from now; cancels its timer when it is given up. */
export function later(after: After, ms: number): Observable<void> {
  return new Observable((subscriber) =>
    after(ms * 1_000, () => {
      subscriber.next();
      subscriber.complete();
    }),
  );
}

/** Runs a step anew for each subscriber and emits its outcome; `signal` says that it is given up, or over. */
export function attempt<T>(run: (signal: AbortSignal) => Promise<T>): Observable<T> {
  return new Observable((subscriber) => {
    const over = new AbortController();
    run(over.signal).then(
      (outcome) => {
        subscriber.next(outcome);
        subscriber.complete();
      },
      (bug: unknown) => subscriber.error(bug),
    );
    return () => over.abort();
  });
}
