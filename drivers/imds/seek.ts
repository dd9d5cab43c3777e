import { Subscription } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';
import type { After } from '../after.ts';
import { radioProblem } from '../radio/problems.ts';
import type { Radio } from '../radio/radio.ts';
import { ambiguous, type Candidate, candidateOf, type Match, maybe } from './match.ts';
import { SERVICE } from './numbers.ts';

export interface Seek {
  readonly radio: Radio;
  readonly match: Match;
  /** Addresses that turned out to be other devices. */
  readonly others: ReadonlySet<string>;
  /** How long a second device that fits as well may take to show up. */
  readonly settleMs: number;
  readonly after: After;
  readonly signal: AbortSignal;
}

/**
 * Scans until a device fits, without limit of time. With neither address nor serial number to tell devices apart,
 * a second one that fits is a problem, never a choice. `undefined` when given up by the signal.
 */
export function seek(order: Seek): Promise<Result<Candidate, Problem> | undefined> {
  const { match, signal } = order;
  const unique = match.address !== undefined || match.serial !== undefined;
  return new Promise((resolve) => {
    const found = new Map<string, Candidate>();
    const work = new Subscription();
    const finish = (outcome: Result<Candidate, Problem> | undefined) => {
      work.unsubscribe();
      resolve(outcome);
    };
    const settle = (first: Candidate) => {
      finish(found.size === 1 ? ok(first) : err(ambiguous(match, [...found.values()])));
    };
    const giveUp = () => finish(undefined);
    signal.addEventListener('abort', giveUp);
    work.add(() => signal.removeEventListener('abort', giveUp));
    if (signal.aborted) return giveUp();
    work.add(
      order.radio.scan(SERVICE.industrialMeasurement).subscribe({
        next: (sighting) => {
          const candidate = candidateOf(sighting);
          if (order.others.has(candidate.address) || !maybe(match, candidate)) return;
          found.set(candidate.address, candidate);
          if (unique) finish(ok(candidate));
          else if (found.size === 1) work.add(order.after(order.settleMs * 1_000, () => settle(candidate)));
        },
        complete: () => finish(err(radioProblem('radio-closed'))),
      }),
    );
  });
}
