import { type Observable, ReplaySubject, Subject } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import type { ProblemCode } from '../../src/problem-code.ts';
import type { FigureSource, LinkEnd, Quantity, Reading, ToolDescription, ToolId } from '../../src/reading.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { type After, realAfter } from '../after.ts';
import { type Backoff, backoffMs } from '../backoff.ts';
import { type Arrival, ReadingCounter } from '../bluetooth/counter.ts';
import type { Clock, LinkState, Timing, Tool } from '../driver.ts';
import { SERIAL } from '../profile/stream.ts';
import { paused, regularly } from '../profile/timed.ts';
import type { SerialLanguage } from './language.ts';
import type { OpenPort, OpenSerial } from './port.ts';

// A tool on a serial port: RS-232, a virtual port over USB, Bluetooth SPP. The port is sought until
// it is there, and again when it has gone.

export interface SerialOptions {
  readonly id: ToolId;
  readonly language: SerialLanguage;
  /** Path or name of the port. */
  readonly port: string;
  readonly clock: Clock;
  readonly open: OpenSerial;
  /** Left out: real time. */
  readonly after?: After;
  /** Draws from [0, 1), for the jitter of the waits. */
  readonly random?: () => number;
}

export function serialTool(options: SerialOptions): Tool {
  return new SerialTool(options);
}

const AGAIN: Backoff = { firstMs: 250, mostMs: 2_000 };
/** A tool that was asked so often, and for so long at least, and said nothing is not there. */
const UNANSWERED = { times: 3, leastMs: 1_000 };
/** What no further attempt changes. */
const FINAL: ReadonlySet<ProblemCode> = new Set(['port-not-permitted', 'serial-not-installed']);

class SerialTool implements Tool {
  readonly id: ToolId;
  readonly driver: string;
  readonly quantity: Quantity;
  readonly timing: Timing = { stamps: 'arrival' };
  readonly #options: SerialOptions;
  readonly #after: After;
  readonly #link = new ReplaySubject<LinkState>(1);
  readonly #readings = new Subject<Reading>();
  readonly #counter = new ReadingCounter();
  readonly #connected: Promise<Result<ToolDescription, Problem>>;
  #settle: (outcome: Result<ToolDescription, Problem>) => void = () => {};
  #living: Promise<void> | undefined;
  #isClosing = false;
  /** Ends what is waited for. */
  #wake = () => {};
  #port: OpenPort | undefined;
  #source: FigureSource = 'linked';
  /** What was at the port first: another one in its place is another tool. */
  #identity: string | undefined;

  constructor(options: SerialOptions) {
    this.id = options.id;
    this.driver = options.language.driver;
    this.quantity = options.language.about.quantity;
    this.#options = options;
    this.#after = options.after ?? realAfter;
    this.#connected = new Promise((resolve) => {
      this.#settle = resolve;
    });
  }

  /** Known once the port is open: behind a pseudo-terminal there is no instrument. */
  get source(): FigureSource {
    return this.#source;
  }

  get link$(): Observable<LinkState> {
    return this.#link.asObservable();
  }

  get readings$(): Observable<Reading> {
    return this.#readings.asObservable();
  }

  connect(): Promise<Result<ToolDescription, Problem>> {
    this.#living ??= this.#live();
    return this.#connected;
  }

  async close(): Promise<void> {
    this.#isClosing = true;
    this.#wake();
    await this.#port?.close();
    await this.#living;
    this.#settle(err(CLOSED)); // nothing where it was settled before
    this.#link.next({ state: 'closed' });
    this.#link.complete();
    this.#readings.complete();
  }

  async #live(): Promise<void> {
    this.#link.next({ state: 'asleep' });
    let failures = 0;
    while (!this.#isClosing) {
      const { open, port: path, language, random = Math.random } = this.#options;
      const opened = await this.#own(await open(path, language.settings));
      if (opened.ok) {
        failures = 0;
        await this.#serve(opened.value);
      } else {
        failures += 1;
        if (failures === 1) this.#link.next({ state: 'not-joined', problem: opened.error });
        if (FINAL.has(opened.error.code)) {
          this.#settle(opened);
          return;
        }
      }
      await this.#wait(backoffMs(AGAIN, Math.max(1, failures), random));
    }
  }

  /** The port, unless another device than before has taken its place. */
  async #own(opened: Awaited<ReturnType<OpenSerial>>): ReturnType<OpenSerial> {
    if (!opened.ok) return opened;
    const identity = opened.value.simulated ? 'simulated' : (opened.value.identity ?? 'unknown');
    this.#identity ??= identity;
    if (identity === this.#identity) return opened;
    await opened.value.close();
    return err(another(this.#options.port, identity));
  }

  /** From the opening of the port until it is gone. */
  async #serve(port: OpenPort): Promise<void> {
    this.#port = port;
    if (this.#isClosing) return void (await port.close());
    const { language, clock } = this.#options;
    this.#source = port.simulated ? 'simulated' : 'linked';
    const description = this.#description();
    const linked = () => this.#link.next({ state: 'linked', description });
    linked();
    this.#settle(ok(description));
    const stream = language.stream((arrival) => this.#take(arrival), SERIAL, clock.nowUs());
    const take = paused(stream, clock, this.#after, port.down);
    const answers = new Answers(clock);
    port.listen((bytes) => {
      if (answers.heard()) linked();
      take(bytes);
    });
    for (const hex of language.start) await port.write(Buffer.from(hex, 'hex'));
    const [end] = await Promise.all([port.down, this.#goOn(port, answers)]);
    this.#port = undefined;
    if (!answers.isMissing) this.#counter.lost(clock.nowUs(), end);
    this.#link.next({ state: 'lost', ...end });
  }

  /** Asks and keeps alive until the port is gone. */
  async #goOn(port: OpenPort, answers: Answers): Promise<void> {
    const { ask, keepAlive } = this.#options.language;
    const { clock } = this.#options;
    await Promise.all([
      ask !== undefined &&
        regularly(ask.everyMs, this.#after, port.down, async () => {
          if (answers.missing(ask.everyMs)) {
            const end: LinkEnd = { reason: 'no-answer' };
            this.#counter.lost(clock.nowUs(), end);
            this.#link.next({ state: 'lost', ...end });
          }
          await port.write(Buffer.from(ask.hex, 'hex'));
        }),
      keepAlive !== undefined &&
        regularly(keepAlive.everyMs, this.#after, port.down, async () => {
          await port.write(Buffer.from(keepAlive.hex, 'hex'));
        }),
    ]);
  }

  #take(arrival: Arrival): void {
    for (const reading of this.#counter.take(arrival)) this.#readings.next(reading);
  }

  /** The device at the end of a line says nothing of itself. */
  #description(): ToolDescription {
    const { language, port } = this.#options;
    const link = { kind: 'serial', address: port.slice(-64), authenticated: false } as const;
    return { ...language.about, link };
  }

  #wait(ms: number): Promise<void> {
    return new Promise((resolve) => {
      const cancel = this.#after(ms * 1_000, resolve);
      this.#wake = () => {
        cancel();
        resolve();
      };
      if (this.#isClosing) this.#wake();
    });
  }
}

/** Whether a tool that is asked answers. */
class Answers {
  readonly #clock: Clock;
  #heardUs: number;
  isMissing = false;

  constructor(clock: Clock) {
    this.#clock = clock;
    this.#heardUs = clock.nowUs();
  }

  /** True where it had been missing. */
  heard(): boolean {
    const was = this.isMissing;
    this.isMissing = false;
    this.#heardUs = this.#clock.nowUs();
    return was;
  }

  /** True once, when it has become so. */
  missing(everyMs: number): boolean {
    const patienceMs = Math.max(UNANSWERED.leastMs, UNANSWERED.times * everyMs);
    if (this.isMissing || this.#clock.nowUs() - this.#heardUs < patienceMs * 1_000) return false;
    this.isMissing = true;
    return true;
  }
}

const another = (where: string, identity: string): Problem => ({
  code: 'port-other-device',
  where,
  message: `another device than before is at the serial port (${identity.slice(0, 80)})`,
  next: 'Plug in the tool that the job began with, or end the job and begin another one with this tool.',
});

const CLOSED: Problem = {
  code: 'tool-closed',
  message: 'the tool was closed before it was linked',
  next: 'Start again and wait until the tool is linked.',
};
