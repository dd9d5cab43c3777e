import type { EventEmitter } from 'node:events';

// The parts of noble that this folder uses, in our own words: its shipped types leave out all that has to be mended,
// and the package is optional, so that nothing may import it before it is wanted.

export interface NoblePeripheral extends EventEmitter {
  readonly id: string;
  /** Empty on platforms that hide it. */
  readonly address: string;
  readonly addressType?: string;
  readonly rssi: number;
  readonly state: string;
  readonly advertisement: { readonly localName?: string; readonly serviceUuids?: readonly string[] };
  connect(): void;
  discoverServicesAsync(uuids: readonly string[]): Promise<readonly NobleService[]>;
}

interface NobleService {
  readonly uuid: string;
  discoverCharacteristicsAsync(uuids: readonly string[]): Promise<readonly NobleCharacteristic[]>;
}

export interface NobleCharacteristic extends EventEmitter {
  readonly uuid: string;
  readonly properties: readonly string[];
  discoverDescriptorsAsync(): Promise<readonly NobleDescriptor[]>;
  readAsync(): Promise<Uint8Array>;
  writeAsync(bytes: Buffer, withoutResponse: boolean): Promise<void>;
  subscribeAsync(): Promise<void>;
}

export interface NobleDescriptor {
  readonly uuid: string;
  readValueAsync(): Promise<Uint8Array>;
}

/** What speaks over one link; it encrypts when the device refuses a request without. */
export interface NobleAclStream extends EventEmitter {
  readonly _smp: EventEmitter & { _preq?: Buffer; write(command: Buffer): void };
  encrypt(): void;
  push(channel: number | null, data: Buffer | null): void;
  pushEncrypt(on: number): void;
}

/** The HCI layer; only there when noble speaks to a controller itself (Linux, or a simulated controller). */
export interface NobleHci extends EventEmitter {
  readonly _socket: EventEmitter & { stop(): void; isDevUp(): boolean };
  readonly _userChannel?: unknown;
  /** Frames under assembly by connection handle. */
  readonly _handleBuffers: Record<number, { readonly length: number; readonly data: Buffer } | undefined>;
  pollIsDevUp(): void;
  onSocketData(packet: Buffer): void;
  onSocketError(error: Error): void;
  writeAclDataPkt(handle: number, cid: number, data: Buffer): Promise<void>;
  flushAcl(): Promise<void>;
  readLeBufferSize(): void;
  startLeEncryption(handle: number, random: Buffer, diversifier: Buffer, key: Buffer): void;
  disconnect(handle: number): void;
  reset(): void;
}

export interface NobleBindings extends EventEmitter {
  readonly _hci?: NobleHci;
  /** Both ways: peripheral id to connection handle and back. */
  readonly _handles?: Readonly<Record<string, unknown>>;
  readonly _aclStreams?: Readonly<Record<number, NobleAclStream | undefined>>;
  /** What asks over one link, by connection handle. */
  readonly _gatts?: Readonly<
    Record<string, { readonly _currentCommand: { readonly buffer: Buffer } | null } | undefined>
  >;
  /** What it keeps of every device ever heard, by address and by peripheral id. */
  readonly _gap?: { readonly _discoveries: Record<string, unknown> };
  readonly _addresses?: Record<string, unknown>;
  readonly _addresseTypes?: Record<string, unknown>;
  readonly _connectable?: Record<string, unknown>;
  readonly scannable?: Record<string, unknown>;
  _state: string | null;
  init(): void;
  onStateChange(state: string): void;
  onDisconnComplete?(handle: number, reason: number): void;
  onAclDataPkt?(handle: number, channel: number, data: Buffer): void;
}

export interface Noble extends EventEmitter {
  initialized: boolean;
  readonly _state: string;
  readonly _bindings: NobleBindings;
  /** By peripheral id, for ever. */
  readonly _peripherals: Record<string, NoblePeripheral | undefined>;
  readonly _services: Record<string, unknown>;
  readonly _characteristics: Record<string, unknown>;
  readonly _descriptors: Record<string, unknown>;
  startScanning(services: readonly string[], allowDuplicates: boolean): void;
  stopScanning(): void;
  cancelConnect(peripheralId: string): void;
  disconnect(peripheralId: string): void;
}

const METHODS = ['on', 'startScanning', 'stopScanning', 'cancelConnect', 'disconnect'] as const;

/** Guards against another version of the library under the same name. */
export function isNoble(value: unknown): value is Noble {
  if (typeof value !== 'object' || value === null) return false;
  const has = (name: string) => name in value && typeof Reflect.get(value, name) === 'function';
  return METHODS.every(has) && '_bindings' in value && typeof value._bindings === 'object';
}
