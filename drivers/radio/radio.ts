import type { Observable } from 'rxjs';
import type { Problem } from '../../src/problem.ts';
import type { LinkEnd } from '../../src/reading.ts';
import type { Result } from '../../src/result.ts';

// The port through which drivers reach Bluetooth LE, in the role of the central. Nothing outside this folder knows
// which library stands behind it. UUIDs are short, lower case, without dashes: `185a`.

/** One advertisement of a device. */
export interface Sighting {
  /** Where the platform hides addresses, its own name for the device, 32 hexadecimal digits. */
  readonly address: string;
  /** Whether the device keeps its address; undefined where the platform does not tell. */
  readonly lasting?: boolean;
  /** As sent: clean it before it is shown. */
  readonly name?: string;
  /** dBm; undefined where the adapter does not measure it. */
  readonly rssi?: number;
  readonly services: readonly string[];
  /** Assigned Numbers 2.6; undefined where it was not sent or the platform does not tell. */
  readonly appearance?: number;
}

/** A characteristic found on one link; worthless on any other link. */
export interface RemoteCharacteristic {
  readonly service: string;
  readonly uuid: string;
  readonly properties: readonly string[];
}

/** A connection to one device. Every step ends by itself: with its result, at its time-out, or when the link goes down. */
export interface Link {
  readonly address: string;
  /** True once the adapter has said so. The tool at the other end is not proven by it. */
  readonly encrypted: () => boolean;
  /** Whether a key of this device is kept from an earlier link; it encrypts this one as soon as the device asks for it. */
  readonly bonded: boolean;
  /** Keeps the key that the device has given out on this link, if it did, for the next one. */
  keepBond(): Result<void, Problem>;
  /** Resolves with the reason once the link is gone; never rejects. */
  readonly down: Promise<LinkEnd>;
  /** All characteristics of those of the services that the device has; of all its services when none is named. */
  discover(services: readonly string[]): Promise<Result<readonly RemoteCharacteristic[], Problem>>;
  descriptors(of: RemoteCharacteristic): Promise<Result<readonly string[], Problem>>;
  /** Empty when the device refuses the read. */
  read(of: RemoteCharacteristic): Promise<Result<Uint8Array, Problem>>;
  /** Empty when the device refuses the read. */
  readDescriptor(of: RemoteCharacteristic, descriptor: string): Promise<Result<Uint8Array, Problem>>;
  write(to: RemoteCharacteristic, bytes: Uint8Array): Promise<Result<void, Problem>>;
  /** Calls `listener` in the turn in which a packet comes in, perhaps before the promise resolves. */
  subscribe(to: RemoteCharacteristic, listener: (bytes: Uint8Array) => void): Promise<Result<void, Problem>>;
  /** Resolves when the link is down; harmless when it is already. */
  close(): Promise<void>;
}

/** One adapter, shared by all tools of the station. */
export interface Radio {
  /** There is no adapter: the devices that it shows are simulated. */
  readonly simulated: boolean;
  /**
   * Hot; replays the latest. When the adapter goes off, is unplugged or stops answering, every link goes down, and it is
   * opened anew until it is back.
   */
  readonly powered$: Observable<boolean>;
  /**
   * Cold; scans while subscribed, pauses while a connection is being made or the adapter is off. Never errors. Devices
   * that advertise the service; all devices when it is left out. The device with this address is never forgotten,
   * however many others are on the air.
   */
  scan(service?: string, address?: string): Observable<Sighting>;
  /**
   * Connects to a device that a scan has shown; one attempt at a time, the others wait their turn.
   * `signal` gives the attempt up early; a link that has come up is not touched by it.
   */
  connect(address: string, timeoutMs: number, signal: AbortSignal): Promise<Result<Link, Problem>>;
  /** Ends all links and scans and gives the adapter back; harmless when called twice. */
  close(): Promise<void>;
}
