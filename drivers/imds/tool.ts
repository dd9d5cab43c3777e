import { type Observable, ReplaySubject, Subject } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import type { Quantity, Reading, ToolDescription, ToolId } from '../../src/reading.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { type After, realAfter } from '../after.ts';
import type { Clock, LinkState, Timing, Tool } from '../driver.ts';
import type { Radio } from '../radio/radio.ts';
import { type Backoff, backoffMs } from './backoff.ts';
import { ReadingCounter } from './counter.ts';
import { join, type Session } from './join.ts';
import type { Candidate, Match } from './match.ts';
import { FORMATS } from './numbers.ts';
import { seek } from './seek.ts';

// One torque wrench or gap gauge that speaks the Bluetooth SIG's Industrial Measurement Device Service (0x185A).
// The codecs beside this file know the bytes, seek.ts and join.ts the two halves of getting a link; here is its life.

interface ImdsTimings extends Backoff {
  readonly settleMs: number;
  readonly connectTimeoutMs: number;
}

const TIMINGS: ImdsTimings = { firstMs: 500, mostMs: 10_000, settleMs: 2_000, connectTimeoutMs: 10_000 };

export interface ImdsOptions {
  readonly id: ToolId;
  readonly quantity: Quantity;
  /** Shared by all tools of the station; not closed with the tool. */
  readonly radio: Radio;
  readonly clock: Clock;
  readonly match: Match;
  readonly timings?: Partial<ImdsTimings>;
  /** Left out: real time. */
  readonly after?: After;
  /** Draws from [0, 1), for the jitter of the waits. */
  readonly random?: () => number;
}

export function imdsTool(options: ImdsOptions): Tool {
  return new ImdsTool(options);
}

/**
 * Where the life of a link stands; every phase leads to the next by itself.
 *
 *     seek ─▶ join ─▶ serve ─▶ wait ─▶ seek …      any ─▶ end, when closed
 *               └───────────────▲                  seek, join ─▶ end, when refused before the first link
 */
type Phase =
  | { readonly at: 'seek' }
  | { readonly at: 'join'; readonly candidate: Candidate }
  | { readonly at: 'serve'; readonly session: Session }
  | { readonly at: 'wait'; readonly reason: string }
  /** The problem is the outcome of `connect` where no link was ever made. */
  | { readonly at: 'end'; readonly problem: Problem };

class ImdsTool implements Tool {
  readonly id: ToolId;
  readonly driver = 'imds';
  readonly quantity: Quantity;
  readonly timing: Timing = { stamps: 'arrival' };
  readonly #options: ImdsOptions;
  readonly #timings: ImdsTimings;
  readonly #after: After;
  readonly #link = new ReplaySubject<LinkState>(1);
  readonly #readings = new Subject<Reading>();
  readonly #counter = new ReadingCounter();
  readonly #closing = new AbortController();
  /** Devices that were joined by their service and turned out to have another serial number. */
  readonly #others = new Set<string>();
  #match: Match;
  #failures = 0;
  #first: ToolDescription | undefined;
  #connected: Promise<Result<ToolDescription, Problem>> | undefined;
  #settle: (outcome: Result<ToolDescription, Problem>) => void = () => {};
  #life: Promise<void> = Promise.resolve();

  constructor(options: ImdsOptions) {
    this.id = options.id;
    this.quantity = options.quantity;
    this.#options = options;
    this.#match = options.match;
    this.#timings = { ...TIMINGS, ...options.timings };
    this.#after = options.after ?? realAfter;
  }

  get link$(): Observable<LinkState> {
    return this.#link.asObservable();
  }

  get readings$(): Observable<Reading> {
    return this.#readings.asObservable();
  }

  connect(): Promise<Result<ToolDescription, Problem>> {
    this.#connected ??= new Promise((resolve, reject) => {
      this.#settle = resolve;
      this.#life = this.#live();
      this.#life.catch((bug: unknown) => {
        reject(bug);
        this.#link.error(bug);
        this.#readings.error(bug);
      });
    });
    return this.#connected;
  }

  async close(): Promise<void> {
    this.#closing.abort();
    await this.#life;
    this.#end();
  }

  async #live(): Promise<void> {
    let phase: Phase = { at: 'seek' };
    while (phase.at !== 'end') {
      phase = this.#closing.signal.aborted ? { at: 'end', problem: CLOSED } : await this.#next(phase);
    }
    this.#settle(err(phase.problem));
    this.#end();
  }

  #next(phase: Exclude<Phase, { at: 'end' }>): Promise<Phase> {
    switch (phase.at) {
      case 'seek':
        return this.#seek();
      case 'join':
        return this.#join(phase.candidate);
      case 'serve':
        return this.#serve(phase.session);
      case 'wait':
        return this.#wait(phase.reason);
    }
  }

  async #seek(): Promise<Phase> {
    this.#link.next({ state: 'seeking' });
    const found = await seek({
      radio: this.#options.radio,
      match: this.#match,
      others: this.#others,
      settleMs: this.#timings.settleMs,
      after: this.#after,
      signal: this.#closing.signal,
    });
    if (found === undefined) return { at: 'end', problem: CLOSED };
    return found.ok ? { at: 'join', candidate: found.value } : this.#refuse(found.error);
  }

  async #join(candidate: Candidate): Promise<Phase> {
    this.#link.next({ state: 'joining', name: candidate.name });
    const joined = await join({
      radio: this.#options.radio,
      clock: this.#options.clock,
      format: FORMATS[this.quantity],
      match: this.#match,
      address: candidate.address,
      connectTimeoutMs: this.#timings.connectTimeoutMs,
      signal: this.#closing.signal,
    });
    switch (joined.kind) {
      case 'joined':
        return { at: 'serve', session: joined.session };
      case 'failed':
        return { at: 'wait', reason: joined.problem.message };
      case 'refused':
        return this.#refuse(joined.problem);
      case 'other':
        if (this.#match.address !== undefined) return this.#refuse(joined.problem);
        this.#others.add(candidate.address);
        return { at: 'seek' };
    }
  }

  async #serve(session: Session): Promise<Phase> {
    const { description } = session;
    this.#failures = 0;
    this.#first ??= description;
    this.#match = pinned(this.#match, this.#first);
    this.#link.next({ state: 'linked', description });
    this.#settle(ok(description));
    session.listen((arrival) => {
      for (const reading of this.#counter.take(arrival)) this.#readings.next(reading);
    });
    const reason = await session.down;
    this.#counter.lost(this.#options.clock.nowUs(), reason);
    return { at: 'wait', reason };
  }

  async #wait(reason: string): Promise<Phase> {
    this.#failures += 1;
    this.#link.next({ state: 'lost', reason });
    const ms = backoffMs(this.#timings, this.#failures, this.#options.random ?? Math.random);
    await new Promise<void>((resolve) => {
      const done = () => {
        cancel();
        this.#closing.signal.removeEventListener('abort', done);
        resolve();
      };
      const cancel = this.#after(ms * 1_000, done);
      this.#closing.signal.addEventListener('abort', done);
    });
    return { at: 'seek' };
  }

  /** A tool that has worked before is not given up: whoever brings the right one back goes on with the job. */
  #refuse(problem: Problem): Phase {
    if (this.#first !== undefined) return { at: 'wait', reason: problem.message };
    this.#link.next({ state: 'lost', reason: problem.message });
    return { at: 'end', problem };
  }

  #end(): void {
    this.#link.next({ state: 'closed' });
    this.#link.complete();
    this.#readings.complete();
  }
}

/**
 * From the first link on only the same device will do: another one of the same name would bring its own calibration
 * into the job. A tool named by its serial number may come back under another address, as some do by design.
 */
function pinned(match: Match, first: ToolDescription): Match {
  if (match.serial !== undefined && match.address === undefined) return match;
  return {
    ...(first.link.address !== undefined && { address: first.link.address }),
    ...(first.serial !== undefined && { serial: first.serial }),
  };
}

const CLOSED: Problem = {
  code: 'tool-closed',
  message: 'The tool was closed before a link to it was made.',
  next: 'Start again and wait until the tool is linked.',
};
