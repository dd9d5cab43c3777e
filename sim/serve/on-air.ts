import type { BluetoothProfile } from '../../drivers/profile/schema.ts';
import type { Controller } from '../controller/index.ts';
import { dashed, type Presented, peripheralOf } from '../devices/device.ts';
import type { Port } from './player.ts';

/** Bytes of a notification with the smallest MTU that a device may have. */
const MOST_BYTES = 20;
/** The supervision timeout of a link that nobody ended. */
const OUT_OF_REACH = 0x08;

/** A Bluetooth tool of a scenario: what it sends goes out as notifications, or lies there to be read. */
export function onAir(controller: Controller, profile: BluetoothProfile, presented: Presented): Port {
  const { link, frames } = profile;
  let hear: (bytes: Uint8Array) => void = () => {};
  let value: Uint8Array = Buffer.alloc(0);
  const request = link.by.how === 'ask' ? link.by.request : null;
  const peripheral = controller.addPeripheral(
    peripheralOf(
      profile,
      presented,
      (characteristic, hex) => {
        if (characteristic === request?.characteristic) hear(Buffer.from(hex, 'hex'));
      },
      () => {
        hear(Buffer.alloc(0));
        return value;
      },
    ),
  );
  const characteristic = dashed(link.characteristic);
  return {
    send(bytes) {
      value = bytes;
      if (link.by.how === 'poll') return;
      // Packets that are frames go out whole; a stream in pieces, as real ones do.
      const most = frames.by === 'packet' ? bytes.length : MOST_BYTES;
      for (let at = 0; at < bytes.length; at += most)
        peripheral.notify(characteristic, bytes.subarray(at, at + most));
    },
    heard(listener) {
      hear = listener;
    },
    unplug() {
      peripheral.stopAdvertising();
      peripheral.dropLink(OUT_OF_REACH);
      return Promise.resolve();
    },
    plug() {
      peripheral.startAdvertising();
      return Promise.resolve();
    },
  };
}
