import type { Problem } from '../../src/problem.ts';
import type { LinkEnd } from '../../src/reading.ts';
import type { Result } from '../../src/result.ts';

// The port through which the driver reaches a serial line. Only open.ts knows which library stands behind it.

export interface SerialSettings {
  readonly baud: number;
  readonly dataBits: 7 | 8;
  readonly parity: 'none' | 'even' | 'odd';
  readonly stopBits: 1 | 2;
}

export interface OpenPort {
  /** A pseudo-terminal: at the other end is a program, and no instrument. */
  readonly simulated: boolean;
  /** Which USB device it is, where it is one. */
  readonly identity?: string;
  /** Calls `listener` as bytes come in, from now on. To be called once. */
  listen(listener: (bytes: Uint8Array) => void): void;
  write(bytes: Uint8Array): Promise<Result<void, Problem>>;
  /** Resolves with the reason once the port is gone; never rejects. */
  readonly down: Promise<LinkEnd>;
  /** Harmless when the port is gone already. */
  close(): Promise<void>;
}

export type OpenSerial = (path: string, settings: SerialSettings) => Promise<Result<OpenPort, Problem>>;
