import {
  distinct,
  expand,
  filter,
  map,
  merge,
  Observable,
  of,
  ReplaySubject,
  Subject,
  take,
  takeUntil,
  tap,
} from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import type { Quantity, Reading, ToolDescription, ToolId } from '../../src/reading.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { type After, realAfter } from '../after.ts';
import { type Backoff, backoffMs } from '../backoff.ts';
import type { Clock, LinkState, Timing, Tool } from '../driver.ts';
import type { Link, Radio, Sighting } from '../radio/radio.ts';
import { type Adopted, impostor, nameOf, sameAddress } from './adopted.ts';
import { ReadingCounter } from './counter.ts';
import type { Language } from './language.ts';
import { openSession, type Session } from './session.ts';
import { silence } from './silence.ts';
import { attempt, later } from './step.ts';

// A torque wrench or gap gauge on Bluetooth LE, whatever it speaks (language.ts). Here is the life of its link.

interface Timings extends Backoff {
  /** Short: the tool has just been heard, and the others cannot be called meanwhile. */
  readonly connectMs: number;
  readonly discoverMs: number;
  /** A link on which nothing comes for so long is asked whether anybody is there. */
  readonly quietMs: number;
}

/** With these a tool that wakes is subscribed within 3 s, whatever was waited for when it woke (tests/bench/radio). */
const TIMINGS: Timings = {
  firstMs: 250,
  mostMs: 2_000,
  connectMs: 3_000,
  discoverMs: 10_000,
  quietMs: 3_000,
};

export interface BluetoothOptions {
  readonly id: ToolId;
  readonly language: Language;
  readonly adopted: Adopted;
  /** Shared by all tools of the station; not closed with the tool. */
  readonly radio: Radio;
  readonly clock: Clock;
  readonly timings?: Partial<Timings>;
  /** Left out: real time. */
  readonly after?: After;
  /** Draws from [0, 1), for the jitter of the waits. */
  readonly random?: () => number;
}

export function bluetoothTool(options: BluetoothOptions): Tool {
  return new BluetoothTool(options);
}

/** What the states hand on: attempts that failed since the last subscription, and whether there ever was one. */
interface Past {
  readonly failures: number;
  readonly linked: boolean;
}

/**
 * The states of a link; each leads to the next by itself, and nothing about the link is kept outside of them.
 *
 *     asleep ─▶ seen ─▶ connecting ─▶ discovering ─▶ subscribed ─▶ lost ─▶ asleep …
 *                            └──────────────┴───────────────────────▲
 *     discovering ─▶ refused, where the first link shows that it is not the tool that was adopted
 */
type Phase =
  | { readonly at: 'asleep'; readonly past: Past }
  | { readonly at: 'seen' | 'connecting'; readonly past: Past; readonly name: string }
  | { readonly at: 'discovering'; readonly past: Past; readonly name: string; readonly link: Link }
  | { readonly at: 'subscribed'; readonly session: Session }
  | { readonly at: 'lost'; readonly past: Past; readonly reason: string }
  | { readonly at: 'refused'; readonly problem: Problem };

const failedOnce = (past: Past): Past => ({ ...past, failures: past.failures + 1 });

/** One refusal may rest on a spoilt answer, or on one that somebody slipped in. */
const REFUSALS = 3;

/** Refusals that are told of; somebody who changes addresses must not fill the record. */
const MOST_TOLD = 8;

class BluetoothTool implements Tool {
  readonly id: ToolId;
  readonly driver: string;
  readonly quantity: Quantity;
  readonly timing: Timing = { stamps: 'arrival' };
  readonly #options: BluetoothOptions;
  readonly #timings: Timings;
  readonly #after: After;
  readonly #link = new ReplaySubject<LinkState>(1);
  readonly #readings = new Subject<Reading>();
  readonly #refused = new Subject<Problem>();
  readonly #sighted = new Subject<Sighting>();
  readonly #counter = new ReadingCounter();
  readonly #closing = new Subject<void>();
  readonly #connected: Promise<Result<ToolDescription, Problem>>;
  #settle: (outcome: Result<ToolDescription, Problem>) => void = () => {};
  #fail: (bug: unknown) => void = () => {};
  #life: Promise<void> | undefined;
  /** What steps that were given up still put away. */
  #clearing: Promise<unknown> = Promise.resolve();

  constructor(options: BluetoothOptions) {
    const { id, language } = options;
    this.id = id;
    this.driver = language.driver;
    this.quantity = language.quantity;
    this.#options = options;
    this.#timings = { ...TIMINGS, ...options.timings };
    this.#after = options.after ?? realAfter;
    this.#connected = new Promise((resolve, reject) => {
      this.#settle = resolve;
      this.#fail = reject;
    });
  }

  get link$(): Observable<LinkState> {
    return this.#link.asObservable();
  }

  get readings$(): Observable<Reading> {
    return this.#readings.asObservable();
  }

  get refusals$(): Observable<Problem> {
    const impostors$ = this.#sighted.pipe(
      map((sighting) => impostor(this.#options.adopted, sighting)),
      filter((problem) => problem !== undefined),
    );
    return merge(impostors$, this.#refused).pipe(
      distinct(({ message }) => message),
      take(MOST_TOLD),
    );
  }

  connect(): Promise<Result<ToolDescription, Problem>> {
    this.#life ??= this.#live();
    return this.#connected;
  }

  async close(): Promise<void> {
    this.#closing.next();
    this.#closing.complete();
    await this.#life;
    await this.#end();
  }

  #live(): Promise<void> {
    return new Promise((resolve) => {
      of<Phase>({ at: 'asleep', past: { failures: 0, linked: false } })
        .pipe(
          expand((phase) => this.#next(phase).pipe(take(1))),
          takeUntil(this.#closing),
        )
        .subscribe({
          next: (phase) => this.#tell(phase),
          error: (bug: unknown) => {
            this.#fail(bug);
            this.#link.error(bug);
            this.#readings.error(bug);
            resolve();
          },
          complete: () => {
            this.#settle(err(CLOSED)); // nothing where it was settled before
            void this.#end().then(resolve);
          },
        });
    });
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
        return later(this.#after, this.#waitMs(phase.past)).pipe(
          map((): Phase => ({ at: 'asleep', past: phase.past })),
        );
      case 'refused':
        return of();
    }
  }

  #asleep(past: Past): Observable<Phase> {
    const { radio, adopted, language } = this.#options;
    return radio.scan(language.advertised, adopted.address).pipe(
      tap((sighting) => this.#sighted.next(sighting)),
      filter(({ address }) => sameAddress(address, adopted.address)),
      map((sighting): Phase => ({ at: 'seen', past, name: nameOf(sighting) })),
    );
  }

  #connecting(past: Past, name: string): Observable<Phase> {
    const { radio, adopted } = this.#options;
    return attempt(async (signal): Promise<Phase> => {
      const made = radio.connect(adopted.address, this.#timings.connectMs, signal);
      this.#clear(made.then((link) => (signal.aborted && link.ok ? link.value.close() : undefined)));
      const link = await made;
      return link.ok
        ? { at: 'discovering', past, name, link: link.value }
        : { at: 'lost', past: failedOnce(past), reason: link.error.message };
    });
  }

  #discovering(past: Past, link: Link): Observable<Phase> {
    const { language, adopted, clock } = this.#options;
    return attempt(async (signal): Promise<Phase> => {
      const leave = () => this.#clear(link.close());
      signal.addEventListener('abort', leave);
      const timeoutMs = this.#timings.discoverMs;
      const outcome = await openSession({ link, language, adopted, clock, after: this.#after, timeoutMs });
      signal.removeEventListener('abort', leave);
      if (outcome.kind === 'session') return { at: 'subscribed', session: outcome.session };
      await link.close();
      const { problem } = outcome;
      if (outcome.kind === 'refused') this.#refused.next(problem);
      // A tool that has worked before is not given up: whoever brings the right one back goes on with the job.
      const final = outcome.kind === 'refused' && !past.linked && past.failures + 1 >= REFUSALS;
      if (final) return { at: 'refused', problem };
      return { at: 'lost', past: failedOnce(past), reason: problem.message };
    });
  }

  #subscribed({ link, probe, listen }: Session): Observable<Phase> {
    const ended$ = attempt(() => link.down);
    const silent$ = silence({
      after: this.#after,
      heard$: this.#readings,
      quietMs: this.#timings.quietMs,
      ask: () => link.read(probe),
    });
    return new Observable<Phase>((subscriber) => {
      const watch = merge(ended$, silent$).subscribe((reason) => {
        this.#counter.lost(this.#options.clock.nowUs(), reason);
        subscriber.next({ at: 'lost', past: { failures: 0, linked: true }, reason });
      });
      listen((arrival) => {
        for (const reading of this.#counter.take(arrival)) this.#readings.next(reading);
      });
      return () => {
        watch.unsubscribe();
        this.#clear(link.close());
      };
    });
  }

  #waitMs({ failures }: Past): number {
    return failures === 0 ? 0 : backoffMs(this.#timings, failures, this.#options.random ?? Math.random);
  }

  #clear(work: Promise<unknown>): void {
    this.#clearing = Promise.all([this.#clearing, work]);
  }

  #tell(phase: Phase): void {
    this.#link.next(shown(phase));
    if (phase.at === 'subscribed') this.#settle(ok(phase.session.description));
    if (phase.at === 'refused') this.#settle(err(phase.problem));
  }

  async #end(): Promise<void> {
    await this.#clearing;
    this.#link.next({ state: 'closed' });
    this.#link.complete();
    this.#readings.complete();
    this.#refused.complete();
    this.#sighted.complete();
  }
}

/** The state as the station is told of it. */
function shown(phase: Phase): LinkState {
  switch (phase.at) {
    case 'asleep':
      return { state: 'asleep' };
    case 'subscribed':
      return { state: 'linked', description: phase.session.description };
    case 'lost':
      return { state: 'lost', reason: phase.reason };
    case 'refused':
      return { state: 'lost', reason: phase.problem.message };
    default:
      return { state: phase.at, name: phase.name };
  }
}

const CLOSED: Problem = {
  code: 'tool-closed',
  message: 'The tool was closed before a link to it was made.',
  next: 'Start again and wait until the tool is linked.',
};
