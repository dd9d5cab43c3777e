/** HCI packets with their H4 type octet (Core, Vol 4 Part A 2 and Part E 5.4): numbers, and reading what a host sends. */

export const H4 = { command: 0x01, acl: 0x02, event: 0x04 } as const;

const opcode = (group: number, command: number) => (group << 10) | command;

export const OPCODE = {
  disconnect: opcode(0x01, 0x0006),
  setEventMask: opcode(0x03, 0x0001),
  reset: opcode(0x03, 0x0003),
  readLeHostSupport: opcode(0x03, 0x006c),
  writeLeHostSupport: opcode(0x03, 0x006d),
  readLocalVersion: opcode(0x04, 0x0001),
  readBufferSize: opcode(0x04, 0x0005),
  readAddress: opcode(0x04, 0x0009),
  readRssi: opcode(0x05, 0x0005),
  leSetEventMask: opcode(0x08, 0x0001),
  leReadBufferSize: opcode(0x08, 0x0002),
  leReadLocalFeatures: opcode(0x08, 0x0003),
  leSetRandomAddress: opcode(0x08, 0x0005),
  leSetScanParameters: opcode(0x08, 0x000b),
  leSetScanEnable: opcode(0x08, 0x000c),
  leCreateConnection: opcode(0x08, 0x000d),
  leCancelConnection: opcode(0x08, 0x000e),
  leUpdateConnection: opcode(0x08, 0x0013),
  leReadRemoteFeatures: opcode(0x08, 0x0016),
  leStartEncryption: opcode(0x08, 0x0019),
} as const;

/** Core, Vol 1 Part F. */
export const STATUS = {
  success: 0x00,
  unknownCommand: 0x01,
  unknownConnection: 0x02,
  keyMissing: 0x06,
  supervisionTimeout: 0x08,
  connectionExists: 0x0b,
  commandDisallowed: 0x0c,
  unsupportedParameter: 0x11,
  invalidParameters: 0x12,
  remoteUserTerminated: 0x13,
  localHostTerminated: 0x16,
  unsupportedRemoteFeature: 0x1a,
} as const;

export interface CommandPacket {
  readonly kind: 'command';
  readonly opcode: number;
  readonly parameters: Buffer;
}

export interface AclPacket {
  readonly kind: 'acl';
  readonly handle: number;
  /** Whether an L2CAP frame starts here. */
  readonly first: boolean;
  readonly data: Buffer;
}

/** @throws RangeError for what no host may send: a real transport would lose step with its host here. */
export function parseHostPacket(packet: Buffer): CommandPacket | AclPacket {
  const type = packet[0];
  if (type === H4.command && packet.length >= 4 && packet.length === 4 + packet.readUInt8(3)) {
    return { kind: 'command', opcode: packet.readUInt16LE(1), parameters: packet.subarray(4) };
  }
  if (type === H4.acl && packet.length >= 5 && packet.length === 5 + packet.readUInt16LE(3)) {
    const flags = packet.readUInt16LE(1);
    return {
      kind: 'acl',
      handle: flags & 0x0fff,
      first: (flags & 0x3000) !== 0x1000,
      data: packet.subarray(5),
    };
  }
  throw new RangeError(`not an HCI packet of a host: ${packet.toString('hex')}`);
}

/** The six octets of `aa:bb:cc:dd:ee:ff` as HCI carries them, last part first. */
export function addressBytes(address: string): Buffer {
  if (!/^([0-9a-f]{2}:){5}[0-9a-f]{2}$/i.test(address))
    throw new RangeError(`not a device address: ${address}`);
  return Buffer.from(address.replaceAll(':', ''), 'hex').reverse();
}

/** @see addressBytes */
export function addressText(bytes: Uint8Array): string {
  return [...bytes]
    .reverse()
    .map((octet) => octet.toString(16).padStart(2, '0'))
    .join(':');
}
