import {
  exhaustMap,
  filter,
  map,
  type Observable,
  pairwise,
  repeat,
  scan,
  startWith,
  withLatestFrom,
} from 'rxjs';
import type { LinkEnd } from '../../src/reading.ts';
import type { Result } from '../../src/result.ts';
import { type After, within } from '../after.ts';
import { attempt, later } from './step.ts';

export interface Silence {
  readonly after: After;
  readonly heard$: Observable<unknown>;
  readonly quietMs: number;
  /** Asks the tool something that it has to answer, if only by a refusal. */
  readonly ask: () => Promise<Result<unknown>>;
}

const ANSWER_MS = 2_000;

/**
 * Watches a link: where nothing was heard for a while the tool is asked whether it is there. Emits the reason when it
 * does not answer, because an adapter that missed the end of a link, or hangs, will never tell.
 */
export function silence({ after, heard$, quietMs, ask }: Silence): Observable<LinkEnd> {
  const count$ = heard$.pipe(
    scan((count) => count + 1, 0),
    startWith(0),
  );
  return later(after, quietMs).pipe(
    repeat(),
    withLatestFrom(count$, (_, count) => count),
    startWith(-1),
    pairwise(),
    filter(([before, now]) => before === now),
    exhaustMap(() => attempt(() => within(after, ask(), ANSWER_MS))),
    filter((answer) => answer === undefined || !answer.value.ok),
    map((): LinkEnd => ({ reason: 'no-answer' })),
  );
}
