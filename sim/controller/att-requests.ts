/**
 * The answers of an ATT server to the requests that read (Core, Vol 3 Part F 3.4.2 to 3.4.4): pure functions from
 * a table, the state of one link and a request to a response or an error response.
 */
import { ATT, ATT_ERROR, type AttErrorCode, attError, MAX_VALUE_LENGTH, u16 } from './att-pdu.ts';
import type { CharacteristicDefinition } from './definition.ts';
import { type Attribute, type GattTable, PRIMARY_SERVICE, SECONDARY_SERVICE } from './gatt-table.ts';
import { shortUuid } from './uuid.ts';

/** What one link has agreed with the server; forgotten with the link, as nothing here is bonded. */
export interface AttState {
  mtu: number;
  /** Set once the link is encrypted. */
  encrypted: boolean;
  /** Client Characteristic Configurations by handle; 0 where absent. */
  readonly configurations: Map<number, number>;
}

export type Responder = (table: GattTable, state: AttState, request: Buffer) => Buffer;

const SECURITY_ERRORS = {
  authentication: ATT_ERROR.insufficientAuthentication,
  authorization: ATT_ERROR.insufficientAuthorization,
  encryption: ATT_ERROR.insufficientEncryption,
} as const;

export function securityError(
  { requires }: CharacteristicDefinition,
  { encrypted }: AttState,
): AttErrorCode | undefined {
  if (requires === undefined || (requires === 'encryption' && encrypted)) return undefined;
  return SECURITY_ERRORS[requires];
}

/** The attribute's whole value, or why it may not be read. */
function readable(attribute: Attribute, state: AttState): Buffer | AttErrorCode {
  const { content } = attribute;
  if (content.kind === 'fixed') return content.value;
  if (content.kind === 'configuration') return u16(state.configurations.get(attribute.handle) ?? 0);
  const { characteristic } = content;
  if (!characteristic.properties.includes('read')) return ATT_ERROR.readNotPermitted;
  return (
    securityError(characteristic, state) ??
    Buffer.from(characteristic.read?.() ?? characteristic.value ?? []).subarray(0, MAX_VALUE_LENGTH)
  );
}

interface Range {
  readonly start: number;
  readonly inRange: readonly Attribute[];
}

/** The handle range that four requests share in octets 1 to 4, or the error for a bad one. */
function rangeOf(table: GattTable, request: Buffer): Range | Buffer {
  const start = request.readUInt16LE(1);
  const end = request.readUInt16LE(3);
  if (start === 0 || start > end) return attError(request.readUInt8(0), start, ATT_ERROR.invalidHandle);
  return { start, inRange: table.attributes.slice(start - 1, end) };
}

/** Only the type asked for; both forms of a UUID are the same type. */
const ofType = (attributes: readonly Attribute[], type: Buffer) => {
  const short = shortUuid(type);
  return attributes.filter((attribute) => attribute.type.equals(short));
};

/**
 * The longest run of entries that share the first one's length and fit: what all list responses have in common.
 * `entry` gives undefined where the list must stop.
 */
function takeEqual(
  attributes: readonly Attribute[],
  room: number,
  entry: (attribute: Attribute) => Buffer | undefined,
): Buffer[] {
  const taken: Buffer[] = [];
  for (const attribute of attributes) {
    const bytes =
      taken.length > 0 && (taken.length + 1) * (taken[0]?.length ?? 0) > room ? undefined : entry(attribute);
    if (bytes === undefined || (taken[0] !== undefined && bytes.length !== taken[0].length)) break;
    taken.push(bytes);
  }
  return taken;
}

const listResponse = (opcode: number, format: number, entries: readonly Buffer[]) =>
  Buffer.concat([Buffer.from([opcode, format]), ...entries]);

export const findInformation: Responder = (table, { mtu }, request) => {
  const range = rangeOf(table, request);
  if (Buffer.isBuffer(range)) return range;
  const entries = takeEqual(range.inRange, mtu - 2, ({ handle, type }) => Buffer.concat([u16(handle), type]));
  const first = entries[0];
  if (first === undefined) return attError(request.readUInt8(0), range.start, ATT_ERROR.attributeNotFound);
  return listResponse(ATT.findInformationRequest + 1, first.length === 4 ? 0x01 : 0x02, entries);
};

export const findByTypeValue: Responder = (table, state, request) => {
  const range = rangeOf(table, request);
  if (Buffer.isBuffer(range)) return range;
  const wanted = request.subarray(7);
  const matching = ofType(range.inRange, request.subarray(5, 7)).filter((attribute) => {
    const value = readable(attribute, state);
    return Buffer.isBuffer(value) && value.equals(wanted);
  });
  if (matching.length === 0) return attError(request.readUInt8(0), range.start, ATT_ERROR.attributeNotFound);
  const entries = takeEqual(matching, state.mtu - 1, ({ handle, groupEnd }) =>
    Buffer.concat([u16(handle), u16(groupEnd)]),
  );
  return Buffer.concat([Buffer.from([ATT.findByTypeValueRequest + 1]), ...entries]);
};

export const readByType: Responder = (table, state, request) => {
  const range = rangeOf(table, request);
  if (Buffer.isBuffer(range)) return range;
  const matches = ofType(range.inRange, request.subarray(5));
  const first = matches[0];
  if (first === undefined) return attError(request.readUInt8(0), range.start, ATT_ERROR.attributeNotFound);
  const refusal = readable(first, state);
  if (!Buffer.isBuffer(refusal)) return attError(request.readUInt8(0), first.handle, refusal);
  const longest = Math.min(state.mtu - 4, 253);
  const entries = takeEqual(matches, state.mtu - 2, (attribute) => {
    const value = attribute === first ? refusal : readable(attribute, state);
    return Buffer.isBuffer(value)
      ? Buffer.concat([u16(attribute.handle), value.subarray(0, longest)])
      : undefined;
  });
  return listResponse(ATT.readByTypeRequest + 1, entries[0]?.length ?? 0, entries);
};

export const readByGroupType: Responder = (table, state, request) => {
  const range = rangeOf(table, request);
  if (Buffer.isBuffer(range)) return range;
  const type = shortUuid(request.subarray(5));
  const grouping = type.length === 2 && [PRIMARY_SERVICE, SECONDARY_SERVICE].includes(type.readUInt16LE(0));
  if (!grouping) return attError(request.readUInt8(0), range.start, ATT_ERROR.unsupportedGroupType);
  const longest = Math.min(state.mtu - 6, 251);
  const entries = takeEqual(ofType(range.inRange, type), state.mtu - 2, (attribute) => {
    const value = readable(attribute, state);
    return Buffer.isBuffer(value)
      ? Buffer.concat([u16(attribute.handle), u16(attribute.groupEnd), value.subarray(0, longest)])
      : undefined;
  });
  const first = entries[0];
  if (first === undefined) return attError(request.readUInt8(0), range.start, ATT_ERROR.attributeNotFound);
  return listResponse(ATT.readByGroupTypeRequest + 1, first.length, entries);
};

/** Read and Read Blob: the value from an offset, as much as fits. */
function readFrom(table: GattTable, state: AttState, request: Buffer, offset: number): Buffer {
  const opcode = request.readUInt8(0);
  const handle = request.readUInt16LE(1);
  const attribute = table.attributes[handle - 1];
  if (attribute === undefined) return attError(opcode, handle, ATT_ERROR.invalidHandle);
  const value = readable(attribute, state);
  if (!Buffer.isBuffer(value)) return attError(opcode, handle, value);
  if (offset > value.length) return attError(opcode, handle, ATT_ERROR.invalidOffset);
  return Buffer.concat([Buffer.from([opcode + 1]), value.subarray(offset, offset + state.mtu - 1)]);
}

export const read: Responder = (table, state, request) => readFrom(table, state, request, 0);

export const readBlob: Responder = (table, state, request) =>
  readFrom(table, state, request, request.readUInt16LE(3));
