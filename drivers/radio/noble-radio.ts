import { BehaviorSubject, type Observable } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { type After, within } from '../after.ts';
import { type Backoff, backoffMs } from '../backoff.ts';
import { NobleLink } from './link.ts';
import type { NoblePeripheral } from './noble.ts';
import { radioProblem } from './problems.ts';
import type { Link, Radio, Sighting } from './radio.ts';
import { Scanner } from './scanner.ts';
import type { TamedNoble } from './tame.ts';

/** How long the adapter may take to give up a connection attempt. */
const CANCEL_TIMEOUT_MS = 2_000;

/** How long an adapter that is gone is left alone before it is tried again. */
const REVIVE: Backoff = { firstMs: 500, mostMs: 5_000 };

/**
 * {@link Radio} over one noble after another: an adapter that goes off, is unplugged or stops answering leaves its
 * noble with links and attempts that nobody will ever speak of again, so that noble is given up with all of them and a
 * fresh one is started until one is on.
 */
export class NobleRadio implements Radio {
  readonly simulated: boolean;
  readonly #start: () => Promise<Result<TamedNoble, Problem>>;
  readonly #after: After;
  readonly #scanner: Scanner;
  readonly #power = new BehaviorSubject(false);
  readonly #links = new Set<NobleLink>();
  #tamed: TamedNoble | undefined;
  /** noble has one place for a pending connection, and the second one waits there for ever. */
  #turn: Promise<unknown> = Promise.resolve();
  #reviving: Promise<void> = Promise.resolve();
  #closing: Promise<void> | undefined;
  /** Set while an attempt waits. */
  #giveUp: (() => void) | undefined;
  #endWait: (() => void) | undefined;
  readonly #abandon = () => this.#giveUp?.();

  constructor(
    first: TamedNoble,
    start: () => Promise<Result<TamedNoble, Problem>>,
    { after, simulated }: { readonly after: After; readonly simulated: boolean },
  ) {
    this.simulated = simulated;
    this.#start = start;
    this.#after = after;
    this.#scanner = new Scanner(after);
    this.#attach(first);
  }

  get powered$(): Observable<boolean> {
    return this.#power.asObservable();
  }

  scan(service?: string, address?: string): Observable<Sighting> {
    return this.#scanner.scan(service, address);
  }

  async connect(address: string, timeoutMs: number, signal: AbortSignal): Promise<Result<Link, Problem>> {
    const queued = () => {
      const attempt = this.#turn.then(() => this.#connect(address, timeoutMs, signal));
      this.#turn = attempt;
      return attempt;
    };
    await this.#released(address, timeoutMs, signal);
    const outcome = await queued();
    if (outcome.ok || outcome.error.code !== 'link-held') return outcome;
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
    this.#endWait?.();
    await this.#turn;
    await Promise.all([...this.#links].map((link) => link.close()));
    await this.#reviving;
    this.#power.complete();
    this.#scanner.detach();
    this.#tamed?.release();
  }

  #attach(tamed: TamedNoble): void {
    this.#tamed = tamed;
    tamed.noble.on('stateChange', (state: string) => {
      if (state !== 'poweredOn') this.#abandonNoble(tamed);
    });
    this.#scanner.attach(tamed);
    this.#power.next(true);
  }

  /** Gives up this noble with all that it believes in, and sees to the next one. */
  #abandonNoble(tamed: TamedNoble): void {
    if (this.#tamed !== tamed) return; // given up already
    this.#tamed = undefined;
    this.#scanner.detach();
    tamed.reset();
    for (const link of this.#links) link.declareDown();
    tamed.declareUnconnected();
    tamed.release();
    this.#power.next(false);
    this.#reviving = this.#revive();
  }

  async #revive(): Promise<void> {
    for (let failures = 1; this.#closing === undefined; failures++) {
      await this.#wait(backoffMs(REVIVE, failures, () => 0));
      if (this.#closing !== undefined) return;
      const started = await this.#start();
      if (started.ok) return this.#attach(started.value);
    }
  }

  #wait(ms: number): Promise<void> {
    return new Promise((resolve) => {
      const cancel = this.#after(ms * 1_000, resolve);
      this.#endWait = () => {
        cancel();
        resolve();
      };
    });
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
      const cancel = this.#after(timeoutMs * 1_000, done);
      signal.addEventListener('abort', done);
      void held.down.then(done);
    });
  }

  #held(address: string): NobleLink | undefined {
    return [...this.#links].find((link) => link.address === address);
  }

  async #connect(address: string, timeoutMs: number, signal: AbortSignal): Promise<Result<Link, Problem>> {
    const tamed = this.#tamed;
    if (this.#closing !== undefined) return err(radioProblem('radio-closed'));
    if (signal.aborted) return err(connectFailed(address, 'cancelled'));
    if (tamed === undefined) return err(radioProblem('radio-off'));
    const peripheral = this.#scanner.seen(address);
    if (peripheral === undefined) return err(connectFailed(address, 'it has not been seen'));
    if (this.#held(address) !== undefined) {
      return err({
        ...connectFailed(address, 'another tool of this station is connected to it'),
        code: 'link-held',
      });
    }
    this.#scanner.pause('connecting');
    signal.addEventListener('abort', this.#abandon);
    try {
      // A link that came up after it had been given up is nobody's, and noble makes no second one beside it.
      if (peripheral.state === 'connected') await this.#adopt(tamed, peripheral, address).close();
      return await this.#attempt(tamed, peripheral, address, timeoutMs);
    } finally {
      signal.removeEventListener('abort', this.#abandon);
      this.#scanner.resume('connecting');
    }
  }

  async #attempt(
    tamed: TamedNoble,
    peripheral: NoblePeripheral,
    address: string,
    timeoutMs: number,
  ): Promise<Result<Link, Problem>> {
    const connected = new Promise<Result<NobleLink, Problem>>((resolve) => {
      peripheral.once('connect', (error?: unknown) => {
        // In the turn of the event, because the link may go down in the next.
        if (error === undefined || error === null) resolve(ok(this.#adopt(tamed, peripheral, address)));
        else resolve(err(connectFailed(address, error instanceof Error ? error.message : String(error))));
      });
    });
    const abandoned = new Promise<undefined>((resolve) => {
      this.#giveUp = () => resolve(undefined);
    });
    peripheral.connect();
    const outcome = await within(this.#after, Promise.race([connected, abandoned]), timeoutMs);
    if (outcome?.value !== undefined) return outcome.value;
    await this.#cancel(tamed, peripheral, connected);
    return err(
      connectFailed(address, outcome === undefined ? `no answer within ${timeoutMs / 1000} s` : 'cancelled'),
    );
  }

  /** The link may come up although it was cancelled; then it is ended, so that the device can be found again. */
  async #cancel(
    tamed: TamedNoble,
    peripheral: NoblePeripheral,
    connected: Promise<Result<NobleLink, Problem>>,
  ): Promise<void> {
    tamed.noble.cancelConnect(peripheral.id);
    const late = await within(this.#after, connected, CANCEL_TIMEOUT_MS);
    if (late === undefined) this.#abandonNoble(tamed);
    else if (late.value.ok) await late.value.value.close();
  }

  #adopt(tamed: TamedNoble, peripheral: NoblePeripheral, address: string): NobleLink {
    const link = new NobleLink(tamed, peripheral, address, () => this.#abandonNoble(tamed));
    this.#links.add(link);
    void link.down.then(() => this.#links.delete(link));
    return link;
  }
}

function connectFailed(address: string, reason: string): Problem {
  return {
    code: 'link-not-made',
    where: address,
    message: `no connection to ${address}: ${reason}`,
    next: 'Switch the tool on, bring it closer and disconnect phones and other programs from it.',
  };
}
