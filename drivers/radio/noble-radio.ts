import { BehaviorSubject, type Observable } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { within } from '../after.ts';
import { NobleLink } from './link.ts';
import type { NoblePeripheral } from './noble.ts';
import { radioProblem } from './problems.ts';
import type { Link, Radio, Sighting } from './radio.ts';
import { Scanner } from './scanner.ts';
import type { TamedNoble } from './tame.ts';

/** How long the adapter may take to give up a connection attempt. */
const CANCEL_TIMEOUT_MS = 2_000;

const HELD = 'link-held';

/** {@link Radio} over a noble that is powered on. */
export class NobleRadio implements Radio {
  readonly #tamed: TamedNoble;
  readonly #scanner: Scanner;
  readonly #power = new BehaviorSubject(true);
  readonly #links = new Set<NobleLink>();
  /** noble has one place for a pending connection, and the second one waits there for ever. */
  #turn: Promise<unknown> = Promise.resolve();
  #closing: Promise<void> | undefined;
  /** Set while an attempt waits. */
  #giveUp: (() => void) | undefined;
  readonly #abandon = () => this.#giveUp?.();

  constructor(tamed: TamedNoble) {
    this.#tamed = tamed;
    this.#scanner = new Scanner(tamed.noble, tamed.after);
    tamed.noble.on('stateChange', (state: string) => this.#onState(state));
  }

  get powered$(): Observable<boolean> {
    return this.#power.asObservable();
  }

  scan(service: string): Observable<Sighting> {
    return this.#scanner.scan(service);
  }

  async connect(address: string, timeoutMs: number, signal: AbortSignal): Promise<Result<Link, Problem>> {
    const queued = () => {
      const attempt = this.#turn.then(() => this.#connect(address, timeoutMs, signal));
      this.#turn = attempt;
      return attempt;
    };
    await this.#released(address, timeoutMs, signal);
    const outcome = await queued();
    if (outcome.ok || outcome.error.code !== HELD) return outcome;
    // Taken by another tool while this one waited for its turn.
    await this.#released(address, timeoutMs, signal);
    return queued();
  }

  close(): Promise<void> {
    this.#closing ??= this.#close();
    return this.#closing;
  }

  async #close(): Promise<void> {
    this.#scanner.close();
    this.#abandon();
    await this.#turn;
    await Promise.all([...this.#links].map((link) => link.close()));
    this.#power.complete();
    this.#tamed.release();
  }

  #onState(state: string): void {
    const powered = state === 'poweredOn';
    if (powered === this.#power.value) return;
    if (powered) {
      this.#scanner.resume('off');
    } else {
      // noble goes on believing in every link and in the pending connection, though nothing will answer.
      this.#scanner.pause('off');
      for (const link of this.#links) link.declareDown();
      this.#tamed.declareUnconnected();
    }
    this.#power.next(powered);
  }

  /** Another tool may hold the device only to ask it for its serial number. */
  async #released(address: string, timeoutMs: number, signal: AbortSignal): Promise<void> {
    const held = this.#held(address);
    if (held === undefined || signal.aborted) return;
    await new Promise<void>((resolve) => {
      const done = () => {
        cancel();
        signal.removeEventListener('abort', done);
        resolve();
      };
      const cancel = this.#tamed.after(timeoutMs * 1_000, done);
      signal.addEventListener('abort', done);
      void held.down.then(done);
    });
  }

  #held(address: string): NobleLink | undefined {
    return [...this.#links].find((link) => link.address === address);
  }

  async #connect(address: string, timeoutMs: number, signal: AbortSignal): Promise<Result<Link, Problem>> {
    if (this.#closing !== undefined) return err(radioProblem('radio-closed'));
    if (signal.aborted) return err(connectFailed(address, 'it was given up'));
    if (!this.#power.value) return err(radioProblem('radio-off'));
    const peripheral = this.#scanner.seen(address);
    if (peripheral === undefined) return err(connectFailed(address, 'it has not been seen'));
    if (this.#held(address) !== undefined) {
      return err({ ...connectFailed(address, 'another tool of this station holds it'), code: HELD });
    }
    this.#scanner.pause('connecting');
    signal.addEventListener('abort', this.#abandon);
    try {
      // A link that came up after it had been given up is nobody's, and noble makes no second one beside it.
      if (peripheral.state === 'connected') await this.#adopt(peripheral, address).close();
      return await this.#attempt(peripheral, address, timeoutMs);
    } finally {
      signal.removeEventListener('abort', this.#abandon);
      this.#scanner.resume('connecting');
    }
  }

  async #attempt(
    peripheral: NoblePeripheral,
    address: string,
    timeoutMs: number,
  ): Promise<Result<Link, Problem>> {
    const connected = new Promise<Result<NobleLink, Problem>>((resolve) => {
      peripheral.once('connect', (error?: unknown) => {
        // In the turn of the event, because the link may go down in the next.
        if (error === undefined || error === null) resolve(ok(this.#adopt(peripheral, address)));
        else resolve(err(connectFailed(address, error instanceof Error ? error.message : String(error))));
      });
    });
    const abandoned = new Promise<undefined>((resolve) => {
      this.#giveUp = () => resolve(undefined);
    });
    peripheral.connect();
    const outcome = await within(this.#tamed.after, Promise.race([connected, abandoned]), timeoutMs);
    if (outcome?.value !== undefined) return outcome.value;
    await this.#cancel(peripheral, connected);
    return err(
      connectFailed(
        address,
        outcome === undefined ? `no answer within ${timeoutMs / 1000} s` : 'it was given up',
      ),
    );
  }

  /** The link may come up although it was cancelled; then it is ended, so that the device can be found again. */
  async #cancel(peripheral: NoblePeripheral, connected: Promise<Result<NobleLink, Problem>>): Promise<void> {
    this.#tamed.noble.cancelConnect(peripheral.id);
    const late = await within(this.#tamed.after, connected, CANCEL_TIMEOUT_MS);
    if (late === undefined) this.#tamed.declareUnconnected();
    else if (late.value.ok) await late.value.value.close();
  }

  #adopt(peripheral: NoblePeripheral, address: string): NobleLink {
    const link = new NobleLink(this.#tamed, peripheral, address);
    this.#links.add(link);
    void link.down.then(() => this.#links.delete(link));
    return link;
  }
}

function connectFailed(address: string, reason: string): Problem {
  return {
    code: 'link-not-made',
    where: address,
    message: `No connection to ${address}: ${reason}.`,
    next: 'Switch the tool on, bring it closer and see that no phone or other program is connected to it.',
  };
}
