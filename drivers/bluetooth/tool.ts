import { distinct, filter, map, merge, type Observable, ReplaySubject, Subject, take, takeUntil } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import type {
  DeviceRefusal,
  FigureSource,
  Quantity,
  Reading,
  ToolDescription,
  ToolId,
} from '../../src/reading.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { type After, realAfter } from '../after.ts';
import type { Clock, LinkState, Timing, Tool } from '../driver.ts';
import type { Radio, Sighting } from '../radio/radio.ts';
import { type Adopted, impostor } from './adopted.ts';
import type { Language } from './language.ts';
import { LinkLife, type Phase, shown, TIMINGS, type Timings } from './life.ts';

// A torque wrench or gap gauge on Bluetooth LE, whatever it speaks (language.ts): its link's life (life.ts) as a tool.

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

/** Refusals that are told of; somebody who changes addresses must not fill the record. */
const MOST_TOLD = 8;

class BluetoothTool implements Tool {
  readonly id: ToolId;
  readonly driver: string;
  readonly quantity: Quantity;
  readonly source: FigureSource;
  readonly timing: Timing = { stamps: 'arrival' };
  readonly #adopted: Adopted;
  readonly #life: LinkLife;
  readonly #link = new ReplaySubject<LinkState>(1);
  readonly #readings = new Subject<Reading>();
  readonly #refused = new Subject<DeviceRefusal>();
  readonly #sighted = new Subject<Sighting>();
  readonly #closing = new Subject<void>();
  readonly #connected: Promise<Result<ToolDescription, Problem>>;
  #settle: (outcome: Result<ToolDescription, Problem>) => void = () => {};
  #fail: (bug: unknown) => void = () => {};
  #living: Promise<void> | undefined;

  constructor({ id, timings, after = realAfter, random = Math.random, ...rest }: BluetoothOptions) {
    this.id = id;
    this.driver = rest.language.driver;
    this.quantity = rest.language.quantity;
    this.source = rest.radio.simulated ? 'simulated' : 'linked';
    this.#adopted = rest.adopted;
    this.#life = new LinkLife({
      ...rest,
      timings: { ...TIMINGS, ...timings },
      after,
      random,
      onSighting: (sighting) => this.#sighted.next(sighting),
      onRefused: (refusal) => this.#refused.next(refusal),
      onReading: (reading) => this.#readings.next(reading),
    });
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

  get refusals$(): Observable<DeviceRefusal> {
    const impostors$ = this.#sighted.pipe(
      map((sighting) => impostor(this.#adopted, sighting)),
      filter((refusal) => refusal !== undefined),
    );
    return merge(impostors$, this.#refused).pipe(
      distinct(({ reason, address, serial }) => `${reason} ${address} ${serial ?? ''}`),
      take(MOST_TOLD),
    );
  }

  connect(): Promise<Result<ToolDescription, Problem>> {
    this.#living ??= this.#live();
    return this.#connected;
  }

  async close(): Promise<void> {
    this.#closing.next();
    this.#closing.complete();
    await this.#living;
    await this.#end();
  }

  #live(): Promise<void> {
    return new Promise((resolve) => {
      this.#life.phases$.pipe(takeUntil(this.#closing)).subscribe({
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

  #tell(phase: Phase): void {
    this.#link.next(shown(phase));
    if (phase.at === 'subscribed') this.#settle(ok(phase.session.description));
    if (phase.at === 'refused') this.#settle(err(phase.problem));
  }

  async #end(): Promise<void> {
    await this.#life.cleared();
    this.#link.next({ state: 'closed' });
    this.#link.complete();
    this.#readings.complete();
    this.#refused.complete();
    this.#sighted.complete();
  }
}

const CLOSED: Problem = {
  code: 'tool-closed',
  message: 'the tool was closed before it was linked',
  next: 'Start again and wait until the tool is linked.',
};
