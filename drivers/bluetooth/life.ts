import { expand, filter, map, merge, Observable, of, Subject, take, tap } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import type { DeviceRefusal, LinkEnd, LinkState, Reading } from '../../src/reading.ts';
import type { After } from '../after.ts';
import { type Backoff, backoffMs } from '../backoff.ts';
import type { Clock } from '../driver.ts';
import type { Link, Radio, Sighting } from '../radio/radio.ts';
import { type Adopted, nameOf, sameAddress } from './adopted.ts';
import { ReadingCounter } from './counter.ts';
import type { Language } from './language.ts';
import { openSession, type Session } from './session.ts';
import { silence } from './silence.ts';
import { attempt, later } from './step.ts';

// The life of a tool's link: a chain of states, of which each leads to the next by itself.

export interface Timings extends Backoff {
  /** Short: the tool has just been heard, and the others cannot be called meanwhile. */
  readonly connectMs: number;
  readonly discoverMs: number;
  /** A link on which nothing comes for so long is asked whether anybody is there. */
  readonly quietMs: number;
}

/** With these a tool that wakes is subscribed within 3 s, whatever was waited for when it woke (tests/bench/radio). */
export const TIMINGS: Timings = {
  firstMs: 250,
  mostMs: 2_000,
  connectMs: 3_000,
  discoverMs: 10_000,
  quietMs: 3_000,
};

export interface LifeOrder {
  readonly language: Language;
  readonly adopted: Adopted;
  readonly radio: Radio;
  readonly clock: Clock;
  readonly timings: Timings;
  readonly after: After;
  /** Draws from [0, 1), for the jitter of the waits. */
  readonly random: () => number;
  /** Every device that advertises what the tool speaks. */
  readonly onSighting: (sighting: Sighting) => void;
  readonly onRefused: (refusal: DeviceRefusal) => void;
  readonly onReading: (reading: Reading) => void;
}

/** What the states hand on: attempts that failed since the last subscription, and whether there ever was one. */
interface Past {
  readonly failures: number;
  readonly linked: boolean;
}

/**
 * The states of a link; nothing about the link is kept outside of them.
 *
 *     asleep ─▶ seen ─▶ connecting ─▶ discovering ─▶ subscribed ─▶ lost ─▶ asleep …
 *                            └──────────────┴─▶ not joined ─▶ asleep …
 *     discovering ─▶ refused, where the first link shows that it is not the tool that was adopted
 */
export type Phase =
  | { readonly at: 'asleep'; readonly past: Past }
  | { readonly at: 'seen' | 'connecting'; readonly past: Past; readonly name: string }
  | { readonly at: 'discovering'; readonly past: Past; readonly name: string; readonly link: Link }
  | { readonly at: 'subscribed'; readonly session: Session }
  | { readonly at: 'lost'; readonly past: Past; readonly end: LinkEnd }
  | { readonly at: 'not-joined'; readonly past: Past; readonly problem: Problem }
  | { readonly at: 'refused'; readonly problem: Problem };

const failedOnce = (past: Past): Past => ({ ...past, failures: past.failures + 1 });

/** One refusal may rest on a spoilt answer, or on one that somebody slipped in. */
const REFUSALS = 3;

/** One life, to be lived once: subscribed to once, and over when it is unsubscribed from. */
export class LinkLife {
  readonly #order: LifeOrder;
  readonly #counter = new ReadingCounter();
  /** What steps that were given up still put away. */
  #clearing: Promise<unknown> = Promise.resolve();

  constructor(order: LifeOrder) {
    this.#order = order;
  }

  /** The states, as they are reached; completes only where the device was refused for good. */
  get phases$(): Observable<Phase> {
    return of<Phase>({ at: 'asleep', past: { failures: 0, linked: false } }).pipe(
      expand((phase) => this.#next(phase).pipe(take(1))),
    );
  }

  /** Resolves once every link that was begun has been put away. */
  async cleared(): Promise<void> {
    await this.#clearing;
  }

  /** Emits the state after this one once it is over, and gives it up when it is unsubscribed from before. */
  #next(phase: Phase): Observable<Phase> {
    switch (phase.at) {
      case 'asleep':
        return this.#asleep(phase.past);
      case 'seen':
        return of({ ...phase, at: 'connecting' });
      case 'connecting':
        return this.#connecting(phase.past, phase.name);
      case 'discovering':
        return this.#discovering(phase.past, phase.link);
      case 'subscribed':
        return this.#subscribed(phase.session);
      case 'lost':
      case 'not-joined':
        return later(this.#order.after, this.#waitMs(phase.past)).pipe(
          map((): Phase => ({ at: 'asleep', past: phase.past })),
        );
      case 'refused':
        return of();
    }
  }

  #asleep(past: Past): Observable<Phase> {
    const { radio, adopted, language, onSighting } = this.#order;
    return radio.scan(language.advertised, adopted.address).pipe(
      tap(onSighting),
      filter(({ address }) => sameAddress(address, adopted.address)),
      map((sighting): Phase => ({ at: 'seen', past, name: nameOf(sighting) })),
    );
  }

  #connecting(past: Past, name: string): Observable<Phase> {
    const { radio, adopted, timings } = this.#order;
    return attempt(async (signal): Promise<Phase> => {
      const connecting = radio.connect(adopted.address, timings.connectMs, signal);
      this.#clear(connecting.then((link) => (signal.aborted && link.ok ? link.value.close() : undefined)));
      const link = await connecting;
      return link.ok
        ? { at: 'discovering', past, name, link: link.value }
        : { at: 'not-joined', past: failedOnce(past), problem: link.error };
    });
  }

  #discovering(past: Past, link: Link): Observable<Phase> {
    const { language, adopted, clock, after, timings, onRefused } = this.#order;
    return attempt(async (signal): Promise<Phase> => {
      const leave = () => this.#clear(link.close());
      signal.addEventListener('abort', leave);
      const timeoutMs = timings.discoverMs;
      const outcome = await openSession({ link, language, adopted, clock, after, timeoutMs });
      signal.removeEventListener('abort', leave);
      if (outcome.kind === 'session') return { at: 'subscribed', session: outcome.session };
      await link.close();
      const { problem } = outcome;
      if (outcome.kind === 'refused') onRefused(outcome.refusal);
      // A tool that has worked before is not given up: whoever brings the right one back goes on with the job.
      const final = outcome.kind === 'refused' && !past.linked && past.failures + 1 >= REFUSALS;
      if (final) return { at: 'refused', problem };
      return { at: 'not-joined', past: failedOnce(past), problem };
    });
  }

  #subscribed({ link, probe, listen }: Session): Observable<Phase> {
    const { after, clock, timings, onReading } = this.#order;
    const heard = new Subject<void>();
    const ended$ = attempt(() => link.down);
    const silent$ = silence({
      after,
      heard$: heard,
      quietMs: timings.quietMs,
      ask: () => link.read(probe),
    });
    return new Observable<Phase>((subscriber) => {
      const watch = merge(ended$, silent$).subscribe((end) => {
        this.#counter.lost(clock.nowUs(), end);
        subscriber.next({ at: 'lost', past: { failures: 0, linked: true }, end });
      });
      listen((arrival) => {
        heard.next();
        for (const reading of this.#counter.take(arrival)) onReading(reading);
      });
      return () => {
        watch.unsubscribe();
        this.#clear(link.close());
      };
    });
  }

  #waitMs({ failures }: Past): number {
    return failures === 0 ? 0 : backoffMs(this.#order.timings, failures, this.#order.random);
  }

  #clear(work: Promise<unknown>): void {
    this.#clearing = Promise.all([this.#clearing, work]);
  }
}

/** The state as the station is told of it. */
export function shown(phase: Phase): LinkState {
  switch (phase.at) {
    case 'asleep':
      return { state: 'asleep' };
    case 'subscribed':
      return { state: 'linked', description: phase.session.description };
    case 'lost':
      return { state: 'lost', ...phase.end };
    case 'not-joined':
    case 'refused':
      return { state: 'not-joined', problem: phase.problem };
    default:
      return { state: phase.at, name: phase.name };
  }
}
