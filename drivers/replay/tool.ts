import { type Observable, ReplaySubject, Subject } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import type { Quantity, Reading, ToolDescription, ToolId } from '../../src/reading.ts';
import { ok, type Result } from '../../src/result.ts';
import { type After, realAfter } from '../after.ts';
import type { Clock, LinkState, Timing, Tool } from '../driver.ts';
import type { Recording } from './recording.ts';

// Plays a recorded file as if its tool were there, through the same contract as the tools themselves.

/** `speed` 1 is as recorded, 10 ten times as fast; `at-once` waits for nothing but the event loop. */
export type Pace = { readonly speed: number } | 'at-once';

export interface ReplayOptions {
  readonly id: ToolId;
  readonly recording: Recording;
  readonly pace: Pace;
  /** Gives the start that the recorded stamps are shifted to; their distances stay as recorded at any speed. */
  readonly clock: Clock;
  /** Left out: real time. */
  readonly after?: After;
}

/** Readings played in one go before the event loop gets its turn. */
const IN_ONE_GO = 500;

export function replayTool(options: ReplayOptions): Tool {
  return new ReplayTool(options);
}

class ReplayTool implements Tool {
  readonly id: ToolId;
  readonly driver = 'replay';
  readonly quantity: Quantity;
  readonly source = 'replayed';
  readonly timing: Timing;
  readonly #options: ReplayOptions;
  readonly #after: After;
  readonly #link = new ReplaySubject<LinkState>(1);
  readonly #readings = new Subject<Reading>();
  #phase: 'fresh' | 'playing' | 'closed' = 'fresh';
  #cancel = () => {};
  #next = 0;
  #startUs = 0;
  #shiftUs = 0;

  constructor(options: ReplayOptions) {
    const { header } = options.recording;
    this.id = options.id;
    this.quantity = header.description.quantity;
    this.timing = header.timing;
    const { pace } = options;
    if (pace !== 'at-once' && !(pace.speed > 0))
      throw new RangeError(`a speed is above 0, not ${pace.speed}`);
    this.#options = options;
    this.#after = options.after ?? realAfter;
  }

  get link$(): Observable<LinkState> {
    return this.#link.asObservable();
  }

  get readings$(): Observable<Reading> {
    return this.#readings.asObservable();
  }

  /** Never fails: the recording has been checked. The first reading comes at the start, after this has resolved. */
  connect(): Promise<Result<ToolDescription, Problem>> {
    const { header, readings } = this.#options.recording;
    // A replay is a replay, whatever link the readings came over when they were recorded.
    const description = { ...header.description, link: { kind: 'file', authenticated: false } } as const;
    if (this.#phase === 'fresh') {
      this.#phase = 'playing';
      this.#startUs = this.#options.clock.nowUs();
      this.#shiftUs = this.#startUs - (readings[0]?.atUs ?? 0);
      this.#link.next({ state: 'linked', description });
      this.#cancel = this.#after(0, () => this.#play());
    }
    return Promise.resolve(ok(description));
  }

  close(): Promise<void> {
    this.#phase = 'closed';
    this.#cancel();
    this.#link.next({ state: 'closed' });
    this.#link.complete();
    this.#readings.complete();
    return Promise.resolve();
  }

  /** Plays what is due and sleeps until the next; measured from the start, so that late timers do not add up. */
  #play(): void {
    const { readings } = this.#options.recording;
    const nowUs = this.#options.clock.nowUs();
    for (let played = 0; played < IN_ONE_GO; played++) {
      const reading = readings[this.#next];
      if (reading === undefined) {
        void this.close();
        return;
      }
      const waitUs = this.#dueUs(reading) - nowUs;
      if (waitUs > 0) {
        this.#cancel = this.#after(waitUs, () => this.#play());
        return;
      }
      this.#next += 1;
      this.#readings.next(this.#shifted(reading));
      if (this.#phase === 'closed') return; // by a listener
    }
    this.#cancel = this.#after(0, () => this.#play());
  }

  #dueUs(reading: Reading): number {
    const { pace } = this.#options;
    const sinceStartUs = reading.atUs + this.#shiftUs - this.#startUs;
    return pace === 'at-once' ? this.#startUs : this.#startUs + sinceStartUs / pace.speed;
  }

  #shifted(reading: Reading): Reading {
    const atUs = reading.atUs + this.#shiftUs;
    return reading.kind === 'missed'
      ? { ...reading, atUs, fromUs: reading.fromUs + this.#shiftUs }
      : { ...reading, atUs };
  }
}
