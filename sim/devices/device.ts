import { placedIn, scalingOf } from '../../drivers/profile/figure.ts';
import type { BluetoothProfile, Profile } from '../../drivers/profile/schema.ts';
import { counterOf } from '../../drivers/profile/stream.ts';
import { scaled } from '../../src/reading.ts';
import type { PeripheralDefinition } from '../controller/index.ts';
import { encodeFrame } from './encode.ts';

/** What the sensor of a simulated device sees; null where it has no value. */
export interface Seen {
  /** N·m or m. */
  readonly si: number | null;
  readonly angleDeg?: number;
}

/** Makes what a device with this profile sends. */
export class Sender {
  readonly #profile: Profile;
  /** Bytes that lie between packets of their own length, where frames are not packets. */
  #waiting: Buffer = Buffer.alloc(0);
  #frames = 0;
  #samples = 0;

  constructor(profile: Profile) {
    this.#profile = profile;
  }

  /** One frame with its end. `unit`: which of those that the frame can tell. */
  frame(seen: readonly Seen[], unit = 0): Buffer {
    const { layout, frames } = this.#profile;
    const content = {
      samples: seen.map(({ si, angleDeg }) => ({
        value: si === null ? null : this.#number('value', si, unit),
        angle: angleDeg === undefined ? null : this.#number('angle', this.#wrapped(angleDeg), 0),
      })),
      counter: this.#counter(),
      unit,
    };
    this.#frames += 1;
    this.#samples += seen.length;
    const bytes = encodeFrame(layout, content);
    return frames.by === 'delimiter' ? Buffer.concat([bytes, Buffer.from(frames.hex, 'hex')]) : bytes;
  }

  /** The same as packets of a link: frames that are none of their own are cut wherever it happens. */
  packets(seen: readonly Seen[], unit = 0): Buffer[] {
    const frame = this.frame(seen, unit);
    if (this.#profile.frames.by === 'packet') return [frame];
    this.#waiting = Buffer.concat([this.#waiting, frame]);
    const packets: Buffer[] = [];
    for (; this.#waiting.length >= PIECE; this.#waiting = this.#waiting.subarray(PIECE))
      packets.push(this.#waiting.subarray(0, PIECE));
    return packets;
  }

  /** What has not gone out yet. */
  rest(): Buffer {
    const rest = this.#waiting;
    this.#waiting = Buffer.alloc(0);
    return rest;
  }

  /** As a device tells it that starts again at a full turn. */
  #wrapped(angleDeg: number): number {
    const wraps = placedIn(this.#profile.layout).some(
      ({ item }) => item.is === 'angle' && item.wraps === true,
    );
    return wraps ? ((angleDeg % 360) + 360) % 360 : angleDeg;
  }

  /** Numbers of the device for a figure, in its own steps. */
  #number(of: 'value' | 'angle', figure: number, unit: number): number {
    const scaling = scalingOf(this.#profile.layout, of);
    const number = figure / scaled(scaling?.counts[unit] ?? 1, scaling?.exponent ?? 0);
    return /float/.test(JSON.stringify(this.#profile.layout)) ? number : Math.round(number);
  }

  #counter(): number {
    const field = counterOf(this.#profile.layout);
    return (field?.counts === 'samples' ? this.#samples : this.#frames) % (field?.span ?? 1);
  }
}

/** Bytes of a packet of a device that streams: more than some frames, less than others. */
const PIECE = 7;

export interface Presented {
  readonly address: string;
  readonly name: string;
  readonly serial: string;
}

/** The peripheral of a Bluetooth device with this profile. `wrote` hears what is written to it. */
export function peripheralOf(
  { link }: BluetoothProfile,
  { address, name, serial }: Presented,
  wrote: (characteristic: string, hex: string) => void = () => {},
  read: () => Uint8Array = () => Buffer.alloc(0),
): PeripheralDefinition {
  const { memory } = link;
  const written = [
    ...(link.start ?? []),
    ...(link.keepAlive === undefined ? [] : [link.keepAlive]),
    ...(link.by.how === 'ask' ? [link.by.request] : []),
    ...(memory === undefined ? [] : [memory.request]),
  ];
  const targets = [...new Set(written.map(({ characteristic }) => characteristic))];
  return {
    address,
    addressType: 'random',
    name,
    appearance: 0,
    advertisedServices: [dashed(link.advertised)],
    advertisingIntervalMs: 100,
    rssi: -60,
    mtu: 64,
    services: [
      {
        uuid: dashed(link.service),
        characteristics: [
          link.by.how === 'poll'
            ? { uuid: dashed(link.characteristic), properties: ['read'], read }
            : { uuid: dashed(link.characteristic), properties: ['notify'] },
          ...(memory === undefined
            ? []
            : [{ uuid: dashed(memory.characteristic), properties: ['notify'] as const }]),
          ...targets.map((uuid) => ({
            uuid: dashed(uuid),
            properties: ['write'] as const,
            write: (bytes: Buffer) => wrote(uuid, bytes.toString('hex')),
          })),
        ],
      },
      {
        uuid: 0x180a,
        characteristics: [{ uuid: 0x2a25, properties: ['read'], value: Buffer.from(serial) }],
      },
    ],
  };
}

/** As the simulated controller has UUIDs. */
export const dashed = (uuid: string): string =>
  uuid.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
