import { type Observable, ReplaySubject, Subject, type Subscription } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import type { Quantity, Reading, ToolDescription, ToolId } from '../../src/reading.ts';
import { ok, type Result } from '../../src/result.ts';
import { ReadingCounter } from '../bluetooth/counter.ts';
import type { Clock, LinkState, Timing, Tool } from '../driver.ts';
import { parseTyped, TYPED_EXPONENT, type TypedUnit } from './figure.ts';

// A gauge that types its figure and a line end as a keyboard does, or somebody who reads a gauge and types.

export interface TypedOptions {
  readonly id: ToolId;
  readonly quantity: Quantity;
  readonly unit: TypedUnit;
  readonly clock: Clock;
  readonly lines$: Observable<string>;
}

export function typedTool(options: TypedOptions): Tool {
  return new TypedTool(options);
}

class TypedTool implements Tool {
  readonly id: ToolId;
  readonly driver = 'typed';
  readonly quantity: Quantity;
  readonly source = 'typed';
  readonly timing: Timing = { stamps: 'none' };
  readonly #options: TypedOptions;
  readonly #link = new ReplaySubject<LinkState>(1);
  readonly #readings = new Subject<Reading>();
  readonly #counter = new ReadingCounter();
  #lines: Subscription | undefined;

  constructor(options: TypedOptions) {
    this.id = options.id;
    this.quantity = options.quantity;
    this.#options = options;
  }

  get link$(): Observable<LinkState> {
    return this.#link.asObservable();
  }

  get readings$(): Observable<Reading> {
    return this.#readings.asObservable();
  }

  /** Never fails: whether anybody types, nobody knows. */
  connect(): Promise<Result<ToolDescription, Problem>> {
    const { quantity } = this;
    const description: ToolDescription = {
      quantity,
      unit: quantity === 'torque' ? 'N.m' : 'm',
      exponent: TYPED_EXPONENT[quantity],
      samplingFunction: 'unspecified',
      link: { kind: 'keyboard', authenticated: false },
    };
    if (this.#lines === undefined) {
      this.#link.next({ state: 'linked', description });
      this.#lines = this.#options.lines$.subscribe((line) => this.#take(line));
    }
    return Promise.resolve(ok(description));
  }

  close(): Promise<void> {
    this.#lines?.unsubscribe();
    this.#link.next({ state: 'closed' });
    this.#link.complete();
    this.#readings.complete();
    return Promise.resolve();
  }

  #take(line: string): void {
    const { quantity, unit, clock } = this.#options;
    const atUs = clock.nowUs();
    const parsed = parseTyped(line, quantity, unit);
    const readings = this.#counter.take(
      parsed.ok
        ? { kind: 'value', atUs, counts: parsed.value }
        : {
            kind: 'raw',
            atUs,
            source: 'typed',
            hex: Buffer.from(line.slice(0, 100), 'utf8').toString('hex'),
          },
    );
    for (const reading of readings) this.#readings.next(reading);
  }
}
