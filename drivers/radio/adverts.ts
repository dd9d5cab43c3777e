import type { Noble } from './noble.ts';

/** Devices whose advertisements are remembered; the one heard longest ago goes first. */
const MOST = 1_024;

const APPEARANCE = 0x19;

/**
 * What noble throws away of advertisements, and a limit to what it keeps: it remembers every device that it ever
 * heard, and on a street, or beside somebody who advertises under a new address each time, that never ends.
 */
export class Adverts {
  readonly #noble: Noble;
  /** By address, the one heard longest ago first. */
  readonly #heard = new Map<string, number | undefined>();
  #wanted: (address: string) => boolean = () => false;

  constructor(noble: Noble) {
    this.#noble = noble;
  }

  /** Takes in one report of the adapter, before noble does. */
  note(address: string, payload: Uint8Array): void {
    const appearance = appearanceIn(payload) ?? this.#heard.get(address);
    this.#heard.delete(address);
    this.#heard.set(address, appearance);
    if (this.#heard.size > MOST) this.#forgetOldest();
  }

  appearance(address: string): number | undefined {
    return this.#heard.get(address);
  }

  /** Devices for which `wanted` is true are kept, however many others are heard. */
  protect(wanted: (address: string) => boolean): void {
    this.#wanted = wanted;
  }

  #forgetOldest(): void {
    for (const address of this.#heard.keys()) {
      const id = peripheralId(address);
      const inUse = (this.#noble._peripherals[id]?.state ?? 'disconnected') !== 'disconnected';
      if (inUse || this.#wanted(address)) continue;
      this.#heard.delete(address);
      this.#forget(address, id);
      return;
    }
  }

  #forget(address: string, id: string): void {
    const { _bindings: bindings, _peripherals, _services, _characteristics, _descriptors } = this.#noble;
    for (const kept of [_peripherals, _services, _characteristics, _descriptors]) delete kept[id];
    for (const kept of [
      bindings._addresses,
      bindings._addresseTypes,
      bindings._connectable,
      bindings.scannable,
    ]) {
      if (kept !== undefined) delete kept[id];
    }
    if (bindings._gap !== undefined) delete bindings._gap._discoveries[address];
  }
}

/** noble's name for a device. */
export function peripheralId(address: string): string {
  return address.replaceAll(':', '').toLowerCase();
}

/** The appearance among the data of an advertisement (Core Supplement, Part A 1.12), which noble does not look at. */
export function appearanceIn(payload: Uint8Array): number | undefined {
  let at = 0;
  while (at + 1 < payload.length) {
    const length = payload[at] ?? 0;
    if (length === 0 || at + 1 + length > payload.length) return undefined;
    const low = payload[at + 2];
    const high = payload[at + 3];
    if (payload[at + 1] === APPEARANCE && length === 3 && low !== undefined && high !== undefined)
      return low | (high << 8);
    at += 1 + length;
  }
  return undefined;
}
