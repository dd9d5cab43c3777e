/**
 * Legacy advertising: what a peripheral puts into its two 31-octet payloads (Core Supplement, Part A), and the loop
 * that repeats its advertising events while somebody could hear them.
 */
import { type TaskGroup, untilNext } from '../scheduler.ts';
import type { PeripheralDefinition } from './definition.ts';
import { uuidBytes } from './uuid.ts';

export interface AdvertisingPayloads {
  readonly advertising: Buffer;
  readonly scanResponse: Buffer;
}

const MAX_PAYLOAD = 31;

const AD = {
  flags: 0x01,
  completeUuids16: 0x03,
  completeUuids128: 0x07,
  shortenedName: 0x08,
  completeName: 0x09,
  appearance: 0x19,
} as const;

/** LE General Discoverable Mode, BR/EDR Not Supported. */
const FLAGS = 0x06;

const field = (type: number, value: Uint8Array) =>
  Buffer.concat([Buffer.from([value.length + 1, type]), value]);

/**
 * Flags, services, appearance and name, in this order, each in the advertisement if it fits there, else in the scan
 * response; a name too long for that is shortened.
 * @throws RangeError if the services fit nowhere.
 */
export function advertisingPayloads(definition: PeripheralDefinition): AdvertisingPayloads {
  const uuids = definition.advertisedServices.map(uuidBytes);
  const list = (length: number) => Buffer.concat(uuids.filter((uuid) => uuid.length === length));
  const appearance = Buffer.alloc(2);
  appearance.writeUInt16LE(definition.appearance);

  let advertising: Buffer = Buffer.alloc(0);
  let scanResponse: Buffer = Buffer.alloc(0);
  const place = (added: Buffer) => {
    if (advertising.length + added.length <= MAX_PAYLOAD) advertising = Buffer.concat([advertising, added]);
    else scanResponse = Buffer.concat([scanResponse, added]);
  };
  place(field(AD.flags, Buffer.from([FLAGS])));
  if (list(2).length > 0) place(field(AD.completeUuids16, list(2)));
  if (list(16).length > 0) place(field(AD.completeUuids128, list(16)));
  place(field(AD.appearance, appearance));

  const name = Buffer.from(definition.name, 'utf8');
  const room = MAX_PAYLOAD - Math.min(advertising.length, scanResponse.length) - 2;
  place(
    name.length <= room ? field(AD.completeName, name) : field(AD.shortenedName, wholeCharacters(name, room)),
  );
  if (scanResponse.length > MAX_PAYLOAD) {
    throw new RangeError(
      `${definition.address}: the advertised services do not fit into ${MAX_PAYLOAD} octets`,
    );
  }
  return { advertising, scanResponse };
}

/** The longest beginning of UTF-8 text that has at most `length` octets and no half character at its end. */
function wholeCharacters(text: Buffer, length: number): Buffer {
  let end = Math.max(0, length);
  while (end > 0 && ((text[end] ?? 0) & 0xc0) === 0x80) end -= 1;
  return text.subarray(0, end);
}

export interface Advertiser {
  /** To be called whenever the answer of `wanted` may have changed. */
  readonly update: () => void;
}

/**
 * Advertising events on a fixed grid from the first moment on, as if the device went on advertising while nobody
 * listens; tasks exist only while `wanted`. The random 0 to 10 ms that radios add to each event is left out.
 */
export function createAdvertiser(
  tasks: TaskGroup,
  intervalMs: number,
  wanted: () => boolean,
  onEvent: () => void,
): Advertiser {
  const originUs = tasks.nowUs();
  let cancel: (() => void) | undefined;

  const update = () => {
    if (!wanted()) {
      cancel?.();
      cancel = undefined;
    } else if (cancel === undefined) {
      cancel = tasks.after(untilNext(tasks.nowUs(), originUs, intervalMs * 1_000), () => {
        cancel = undefined;
        onEvent();
        update();
      });
    }
  };
  return { update };
}
