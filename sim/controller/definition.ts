/** A peripheral as data: what it advertises and what its GATT server holds. */
import type { Uuid } from './uuid.ts';

export type Property = 'read' | 'writeWithoutResponse' | 'write' | 'notify' | 'indicate';

interface DescriptorDefinition {
  readonly uuid: Uuid;
  readonly value: Uint8Array;
}

export interface CharacteristicDefinition {
  readonly uuid: Uuid;
  readonly properties: readonly Property[];
  /** At most 512 octets; empty if neither this nor `read` is given. */
  readonly value?: Uint8Array;
  /** Asked at every read, and at every part of a long read, in place of `value`. */
  readonly read?: () => Uint8Array;
  readonly write?: (bytes: Buffer) => void;
  /** Refuses reads and writes with "insufficient ..."; encryption comes with `pairs`, the others never. */
  readonly requires?: 'authentication' | 'authorization' | 'encryption';
  /** A Client Characteristic Configuration comes by itself with `notify` or `indicate`. */
  readonly descriptors?: readonly DescriptorDefinition[];
}

export interface ServiceDefinition {
  readonly uuid: Uuid;
  readonly characteristics: readonly CharacteristicDefinition[];
}

/** Link timing in the units of the HCI: intervals 1.25 ms, latency in connection events, supervision timeout 10 ms. */
export interface ConnectionParameters {
  readonly minInterval: number;
  readonly maxInterval: number;
  readonly latency: number;
  readonly timeout: number;
}

export interface PeripheralDefinition {
  /** `aa:bb:cc:dd:ee:ff`, unique on its controller. */
  readonly address: string;
  readonly addressType: 'public' | 'random';
  readonly name: string;
  /** Assigned Numbers 2.6. */
  readonly appearance: number;
  readonly advertisedServices: readonly Uuid[];
  /** 20 to 10 240. */
  readonly advertisingIntervalMs: number;
  /** dBm, -127 to 20. */
  readonly rssi: number;
  /** The largest ATT_MTU that it accepts, 23 to 517. */
  readonly mtu: number;
  /**
   * Pairs by Just Works when it is asked to; without it, it cannot pair at all. `bonding`: where a bond is asked for it
   * hands out a key, keeps it, and then refuses to pair anew.
   */
  readonly pairs?: 'just-works' | 'bonding';
  /** Generic Access (name and appearance) and Generic Attribute come by themselves. */
  readonly services: readonly ServiceDefinition[];
  /** Asked of the central over L2CAP as soon as a link is up; without it, the central's choice stays. */
  readonly preferredConnection?: ConnectionParameters;
}
