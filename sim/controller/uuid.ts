/** UUIDs as attributes carry them: little-endian, 2 octets where the Bluetooth Base UUID allows it, else 16. */

/** A 16-bit number (`0x185a`), or text with 4 or 32 hexadecimal digits, with or without dashes. */
export type Uuid = number | string;

/** 00000000-0000-1000-8000-00805F9B34FB without its 32 variable bits, as on air (Core, Vol 3 Part B 2.5.1). */
const BASE_ON_AIR = Buffer.from('fb349b5f8000008000100000', 'hex');

/** @throws RangeError for what is neither 16 nor 128 bits. */
export function uuidBytes(uuid: Uuid): Buffer {
  const hex = typeof uuid === 'number' ? uuid.toString(16).padStart(4, '0') : uuid.replaceAll('-', '');
  if (!/^([0-9a-f]{4}|[0-9a-f]{32})$/i.test(hex))
    throw new RangeError(`not a 16-bit or 128-bit UUID: ${uuid}`);
  return shortUuid(Buffer.from(hex, 'hex').reverse());
}

/** The shortest form of a UUID as received, so that both forms of one UUID are equal. */
export function shortUuid(onAir: Buffer): Buffer {
  const based =
    onAir.length === 16 && onAir.subarray(0, 12).equals(BASE_ON_AIR) && onAir.readUInt16LE(14) === 0;
  return based ? Buffer.from(onAir.subarray(12, 14)) : onAir;
}

/** A map key that is equal for equal UUIDs. */
export const uuidKey = (uuid: Uuid): string => uuidBytes(uuid).toString('hex');
