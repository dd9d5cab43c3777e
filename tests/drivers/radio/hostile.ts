/** LE Advertising Report (Core, Vol 4 Part E 7.7.65.2) of one of many devices: type 0 connectable, 4 scan response. */
export function report(type: 0 | 4, device: number, payload: Uint8Array): Buffer {
  const address = Buffer.alloc(6);
  address.writeUInt32LE(device);
  address[5] = 0xd0;
  const head = Buffer.from([0x04, 0x3e, 12 + payload.length, 0x02, 1, type, 1]);
  return Buffer.concat([head, address, Buffer.from([payload.length]), payload, Buffer.from([0xc4])]);
}

/** ACL data to the host; the first piece of an L2CAP frame, or one that goes on. */
export function acl(handle: number, first: boolean, data: Uint8Array): Buffer {
  const flags = (first ? 0x20 : 0x10) | (handle >> 8);
  const head = Buffer.from([0x02, handle & 0xff, flags, data.length & 0xff, data.length >> 8]);
  return Buffer.concat([head, data]);
}

/** A whole ATT PDU in one frame. */
export function att(handle: number, pdu: Uint8Array): Buffer {
  const head = Buffer.from([pdu.length & 0xff, pdu.length >> 8, 0x04, 0x00]);
  return acl(handle, true, Buffer.concat([head, pdu]));
}

/** The handle in an LE Connection Complete, undefined in any other packet. */
export function connectedHandle(packet: Buffer): number | undefined {
  return packet[0] === 0x04 && packet[1] === 0x3e && packet[3] === 0x01 ? packet.readUInt16LE(5) : undefined;
}
