import type { Problem } from '../../src/problem.ts';
import type { DeviceRefusal, Quantity, ToolDescription } from '../../src/reading.ts';
import type { Result } from '../../src/result.ts';
import type { After } from '../after.ts';
import type { Clock } from '../driver.ts';
import type { Link, RemoteCharacteristic } from '../radio/radio.ts';
import type { Arrival } from './counter.ts';

/** How a kind of tool is spoken to. What is the same for all of them, the life of the link, is in tool.ts. */
export interface Language {
  readonly driver: string;
  readonly quantity: Quantity;
  /** The service that a tool of this kind advertises. */
  readonly advertised: string;
  /** The services that it needs on a link, beside Device Information and Battery. */
  readonly services: readonly string[];
  /**
   * Describes the device and subscribes to its readings, which go to `put` as they come. The error is a refusal: the
   * device is not what it should be, and asking again will not change that. Throws link problems.
   */
  open(on: Opening): Promise<Result<Opened, Unfit>>;
}

/** Why a device is not what it should be. */
export interface Unfit {
  readonly reason: DeviceRefusal['reason'];
  readonly problem: Problem;
}

export interface Opening {
  readonly link: Link;
  readonly characteristics: readonly RemoteCharacteristic[];
  readonly clock: Clock;
  readonly after: After;
  readonly put: (arrival: Arrival) => void;
}

export interface Opened {
  readonly description: ToolDescription;
  /** What can wait until the readings flow: memory to be fetched, values that nobody waits for. Never rejects. */
  readonly later?: () => Promise<void>;
}
