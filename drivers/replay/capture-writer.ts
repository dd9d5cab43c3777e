import type { RemoteCharacteristic } from '../radio/radio.ts';
import { CAPTURE_FORM, type CapturedPacket } from './capture.ts';

/** The device as it was found. */
export interface Captured {
  readonly address: string;
  readonly name?: string;
  readonly characteristics: readonly RemoteCharacteristic[];
}

export interface CaptureWriter {
  /** `of` null: from a serial port. Stamps must not go back. What comes behind the end is not written: the link may send until it is down. */
  packet(of: RemoteCharacteristic | null, bytes: Uint8Array, atUs: number): void;
  /** Writes the end line and tells how many packets there were. */
  end(): number;
}

/** Writes a capture line by line; `write` gets each line with its line feed. See capture.ts for the form. */
export function captureWriter(
  { address, name, characteristics }: Captured,
  write: (line: string) => void,
): CaptureWriter {
  const put = (line: unknown) => write(`${JSON.stringify(line)}\n`);
  let packets = 0;
  let isOver = false;
  put({ form: CAPTURE_FORM, address, ...(name !== undefined && { name }), characteristics });
  return {
    packet: (of, bytes, atUs) => {
      if (isOver) return;
      packets += 1;
      const line: CapturedPacket = {
        atUs,
        ...(of !== null && { service: of.service, characteristic: of.uuid }),
        hex: Buffer.from(bytes).toString('hex'),
      };
      put(line);
    },
    end: () => {
      isOver = true;
      put({ packets });
      return packets;
    },
  };
}
