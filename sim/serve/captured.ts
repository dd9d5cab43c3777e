import type { Capture } from '../../drivers/replay/capture.ts';
import type { Property } from '../controller/definition.ts';
import type { Controller, PeripheralDefinition } from '../controller/index.ts';
import type { Scheduler } from '../scheduler.ts';

// A capture played back as the device that sent it: the same bytes, as far apart as they came.

/** Come by themselves with every device. */
const OWN_SERVICES: ReadonlySet<string> = new Set(['1800', '1801']);
const SERIAL_NUMBER = '2a25';
const DEVICE_INFORMATION = '180a';

/** Nobody waits longer, and a timer takes no more. */
const LONGEST_US = 86_400e6;

const PROPERTIES: readonly Property[] = ['read', 'writeWithoutResponse', 'write', 'notify', 'indicate'];

/** The service and the characteristic that sent most; null of a capture from a serial port, or of an empty one. */
export function busiest({ packets }: Capture) {
  const counts = new Map<string, number>();
  for (const { service, characteristic } of packets)
    if (service !== undefined && characteristic !== undefined)
      counts.set(`${service} ${characteristic}`, (counts.get(`${service} ${characteristic}`) ?? 0) + 1);
  const [most] = [...counts].toSorted(([, a], [, b]) => b - a);
  const [service, characteristic] = most?.[0].split(' ') ?? [];
  return service === undefined || characteristic === undefined ? null : { service, characteristic };
}

/** That of the device; where the platform had a name of its own for it instead, one made of that. */
export function addressOf({ header: { address } }: Capture): string {
  if (/^[0-9a-f]{2}(:[0-9a-f]{2}){5}$/i.test(address)) return address.toLowerCase();
  const digits = address.toLowerCase().replace(/[^0-9a-f]/g, '');
  return ['c0', ...(digits.slice(-10).padStart(10, '0').match(/../g) ?? [])].join(':');
}

/** A characteristic that sent packets, and that the capture does not list as one that sends; undefined where there is none. */
export const unlisted = ({ header, packets }: Capture): string | undefined =>
  packets
    .flatMap(({ characteristic }) => characteristic ?? [])
    .find(
      (uuid) =>
        !header.characteristics.some(
          (one) =>
            one.uuid === uuid &&
            !OWN_SERVICES.has(one.service) &&
            one.properties.some((property) => property === 'notify' || property === 'indicate'),
        ),
    );

export interface Presented {
  /** A capture does not hold what was read. */
  readonly serial: string;
  /** The service that it advertises. */
  readonly advertised: string;
}

/** The device of a capture on a virtual controller. It plays from the beginning whenever somebody subscribes on a new link. */
export function capturedOnAir(
  controller: Controller,
  capture: Capture,
  presented: Presented,
  scheduler: Scheduler,
  say: (what: 'plays' | 'over' | 'broken-off') => void,
): { readonly close: () => void } {
  const peripheral = controller.addPeripheral(definitionOf(capture, presented));
  const sending = new Set(capture.packets.map(({ characteristic }) => characteristic));
  let stop = () => {};
  let isPlaying = false;
  const ended = (what: 'over' | 'broken-off') => {
    isPlaying = false;
    say(what);
  };
  peripheral.onSubscribe((uuid) => {
    if (isPlaying || !sending.has(`${uuid}`)) return;
    isPlaying = true;
    say('plays');
    stop = playPackets(capture, scheduler, {
      send: ({ characteristic, bytes }) => {
        if (characteristic !== undefined) peripheral.notify(characteristic, bytes);
      },
      over: () => ended('over'),
    });
  });
  peripheral.onUnsubscribe(() => {
    if (!isPlaying) return;
    stop();
    ended('broken-off');
  });
  return { close: () => stop() };
}

function definitionOf(capture: Capture, { serial, advertised }: Presented): PeripheralDefinition {
  const { header } = capture;
  const own = header.characteristics.filter(({ service }) => !OWN_SERVICES.has(service));
  const characteristics = own.some(({ uuid }) => uuid === SERIAL_NUMBER)
    ? own
    : [...own, { service: DEVICE_INFORMATION, uuid: SERIAL_NUMBER, properties: ['read'] }];
  return {
    address: addressOf(capture),
    addressType: 'random',
    name: header.name ?? 'Captured device',
    appearance: 0,
    advertisedServices: [advertised],
    advertisingIntervalMs: 100,
    rssi: -60,
    mtu: 247,
    services: [...new Set(characteristics.map(({ service }) => service))].map((service) => ({
      uuid: service,
      characteristics: characteristics
        .filter((one) => one.service === service)
        .map(({ uuid, properties }) => ({
          uuid,
          properties: PROPERTIES.filter((property) => properties.includes(property)),
          ...(uuid === SERIAL_NUMBER && { value: Buffer.from(serial) }),
        })),
    })),
  };
}

export interface Playing {
  readonly send: (packet: { readonly characteristic: string | undefined; readonly bytes: Buffer }) => void;
  readonly over: () => void;
}

/** Sends the packets as far apart as they were captured; the returned function ends that. */
export function playPackets({ packets }: Capture, scheduler: Scheduler, { send, over }: Playing): () => void {
  const startUs = scheduler.nowUs() - (packets[0]?.atUs ?? 0);
  let cancel = () => {};
  const next = (i: number) => {
    const packet = packets[i];
    if (packet === undefined) return over();
    const inUs = Math.min(LONGEST_US, Math.max(0, startUs + packet.atUs - scheduler.nowUs()));
    cancel = scheduler.after(inUs, () => {
      send({ characteristic: packet.characteristic, bytes: Buffer.from(packet.hex, 'hex') });
      next(i + 1);
    });
  };
  next(0);
  return () => cancel();
}
