/** The packets that the controller sends to its host (Core, Vol 4 Part E 7.7 and 5.4.2), one function each. */
import { u16 } from './att-pdu.ts';
import { addressBytes, H4 } from './hci-packets.ts';

const EVENT = {
  disconnectionComplete: 0x05,
  encryptionChange: 0x08,
  commandComplete: 0x0e,
  commandStatus: 0x0f,
  numberOfCompletedPackets: 0x13,
  leMeta: 0x3e,
} as const;

const META = {
  connectionComplete: 0x01,
  advertisingReport: 0x02,
  connectionUpdateComplete: 0x03,
  readRemoteFeaturesComplete: 0x04,
} as const;

/** How many commands the host may send before the next answer. */
const COMMAND_CREDITS = 1;

/** Scan responses come as reports of their own; legacy advertising here is always connectable. */
export const REPORT = { connectable: 0x00, scanResponse: 0x04 } as const;

const event = (code: number, ...parts: readonly Uint8Array[]) => {
  const parameters = Buffer.concat(parts);
  return Buffer.concat([Buffer.from([H4.event, code, parameters.length]), parameters]);
};

const addressTypeOctet = (type: 'public' | 'random') => (type === 'random' ? 0x01 : 0x00);

export const commandComplete = (opcode: number, returned: Uint8Array): Buffer =>
  event(EVENT.commandComplete, Buffer.from([COMMAND_CREDITS]), u16(opcode), returned);

export const commandStatus = (opcode: number, status: number): Buffer =>
  event(EVENT.commandStatus, Buffer.from([status, COMMAND_CREDITS]), u16(opcode));

export const disconnectionComplete = (handle: number, reason: number): Buffer =>
  event(EVENT.disconnectionComplete, Buffer.from([0]), u16(handle), Buffer.from([reason]));

export const encryptionChange = (status: number, handle: number): Buffer =>
  event(EVENT.encryptionChange, Buffer.from([status]), u16(handle), Buffer.from([status === 0 ? 1 : 0]));

export const completedPackets = (handle: number, count: number): Buffer =>
  event(EVENT.numberOfCompletedPackets, Buffer.from([1]), u16(handle), u16(count));

export interface LinkTiming {
  /** In units of 1.25 ms. */
  readonly interval: number;
  readonly latency: number;
  /** In units of 10 ms. */
  readonly timeout: number;
}

interface Peer {
  readonly address: string;
  readonly addressType: 'public' | 'random';
}

const timing = ({ interval, latency, timeout }: LinkTiming) =>
  Buffer.concat([u16(interval), u16(latency), u16(timeout)]);

export function connectionComplete(handle: number, peer: Peer, chosen: LinkTiming): Buffer {
  const start = Buffer.from([META.connectionComplete, 0]);
  const roleAndType = Buffer.from([0, addressTypeOctet(peer.addressType)]);
  const clockAccuracy = Buffer.from([0]);
  return event(
    EVENT.leMeta,
    start,
    u16(handle),
    roleAndType,
    addressBytes(peer.address),
    timing(chosen),
    clockAccuracy,
  );
}

/** All fields after the status are there and mean nothing. */
export const connectionFailed = (status: number): Buffer =>
  event(EVENT.leMeta, Buffer.from([META.connectionComplete, status]), Buffer.alloc(17));

export const connectionUpdateComplete = (handle: number, chosen: LinkTiming): Buffer =>
  event(EVENT.leMeta, Buffer.from([META.connectionUpdateComplete, 0]), u16(handle), timing(chosen));

export const remoteFeaturesComplete = (handle: number, features: Uint8Array): Buffer =>
  event(EVENT.leMeta, Buffer.from([META.readRemoteFeaturesComplete, 0]), u16(handle), features);

export function advertisingReport(type: number, peer: Peer, payload: Uint8Array, rssi: number): Buffer {
  const start = Buffer.from([META.advertisingReport, 1, type, addressTypeOctet(peer.addressType)]);
  const length = Buffer.from([payload.length]);
  return event(EVENT.leMeta, start, addressBytes(peer.address), length, payload, Buffer.from([rssi & 0xff]));
}

/** ACL data to the host: the boundary flag of a first piece is 2 in this direction. */
export const aclData = (handle: number, first: boolean, data: Uint8Array): Buffer =>
  Buffer.concat([Buffer.from([H4.acl]), u16(handle | ((first ? 2 : 1) << 12)), u16(data.length), data]);
