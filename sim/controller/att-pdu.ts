/** The Attribute Protocol's opcodes and error codes (Core, Vol 3 Part F 3.4), as far as a small server needs them. */

export const ATT = {
  errorResponse: 0x01,
  exchangeMtuRequest: 0x02,
  findInformationRequest: 0x04,
  findByTypeValueRequest: 0x06,
  readByTypeRequest: 0x08,
  readRequest: 0x0a,
  readBlobRequest: 0x0c,
  readByGroupTypeRequest: 0x10,
  writeRequest: 0x12,
  handleValueNotification: 0x1b,
  handleValueIndication: 0x1d,
  handleValueConfirmation: 0x1e,
  writeCommand: 0x52,
} as const;

export const ATT_ERROR = {
  invalidHandle: 0x01,
  readNotPermitted: 0x02,
  writeNotPermitted: 0x03,
  invalidPdu: 0x04,
  insufficientAuthentication: 0x05,
  requestNotSupported: 0x06,
  invalidOffset: 0x07,
  insufficientAuthorization: 0x08,
  attributeNotFound: 0x0a,
  invalidAttributeValueLength: 0x0d,
  insufficientEncryption: 0x0f,
  unsupportedGroupType: 0x10,
  valueNotAllowed: 0x13,
} as const;

export type AttErrorCode = (typeof ATT_ERROR)[keyof typeof ATT_ERROR];

/** The ATT_MTU of LE before an exchange, and the least that may be agreed. */
export const DEFAULT_MTU = 23;

/** The longest value an attribute may have (Core, Vol 3 Part F 3.2.9). */
export const MAX_VALUE_LENGTH = 512;

export function attError(requestOpcode: number, handle: number, code: AttErrorCode): Buffer {
  return Buffer.from([ATT.errorResponse, requestOpcode, handle & 0xff, handle >> 8, code]);
}

export function u16(value: number): Buffer {
  const bytes = Buffer.alloc(2);
  bytes.writeUInt16LE(value);
  return bytes;
}
