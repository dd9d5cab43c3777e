/** L2CAP over ACL: frames in pieces and back (Core, Vol 3 Part A 7.2), and a peripheral's side of its fixed channels. */
import type { ConnectionParameters } from './definition.ts';

export const CID = { att: 0x0004, signalling: 0x0005, security: 0x0006 } as const;

export interface Frame {
  readonly cid: number;
  readonly payload: Buffer;
}

const HEADER_LENGTH = 4;

/** One frame as ACL data of at most `maxLength` octets each; the first piece starts with the L2CAP header. */
export function fragments({ cid, payload }: Frame, maxLength: number): Buffer[] {
  const frame = Buffer.alloc(HEADER_LENGTH + payload.length);
  frame.writeUInt16LE(payload.length, 0);
  frame.writeUInt16LE(cid, 2);
  payload.copy(frame, HEADER_LENGTH);
  const pieces: Buffer[] = [];
  for (let at = 0; at < frame.length; at += maxLength) pieces.push(frame.subarray(at, at + maxLength));
  return pieces;
}

/** Puts pieces of one link together; gives the frame with its last piece. Frames longer than announced are dropped. */
export function reassembler(): (first: boolean, piece: Buffer) => Frame | undefined {
  let gathered: Buffer | undefined;
  return (first, piece) => {
    if (!first && gathered === undefined) return undefined;
    gathered = first ? piece : Buffer.concat([gathered ?? Buffer.alloc(0), piece]);
    if (gathered.length < HEADER_LENGTH) return undefined;
    const missing = HEADER_LENGTH + gathered.readUInt16LE(0) - gathered.length;
    if (missing > 0) return undefined;
    const frame = { cid: gathered.readUInt16LE(2), payload: gathered.subarray(HEADER_LENGTH) };
    gathered = undefined;
    return missing === 0 ? frame : undefined;
  };
}

const COMMAND_REJECT = 0x01;
const PARAMETER_UPDATE_REQUEST = 0x12;
/** Signalling commands that want no answer: rejections, responses and credits. */
const UNANSWERED: ReadonlySet<number> = new Set([COMMAND_REJECT, 0x07, 0x13, 0x15, 0x16, 0x18, 0x1a]);

/** What a peripheral without any L2CAP service says to a signalling command: "command not understood". */
export function answerSignalling(command: Buffer): Buffer | undefined {
  const code = command[0];
  const identifier = command[1];
  if (code === undefined || identifier === undefined || command.length < 4 || UNANSWERED.has(code))
    return undefined;
  return Buffer.from([COMMAND_REJECT, identifier, 2, 0, 0, 0]);
}

export function parameterUpdateRequest(wanted: ConnectionParameters): Buffer {
  const request = Buffer.alloc(12);
  request.set([PARAMETER_UPDATE_REQUEST, 1, 8, 0]);
  request.writeUInt16LE(wanted.minInterval, 4);
  request.writeUInt16LE(wanted.maxInterval, 6);
  request.writeUInt16LE(wanted.latency, 8);
  request.writeUInt16LE(wanted.timeout, 10);
  return request;
}

const PAIRING_REQUEST = 0x01;
const PAIRING_FAILED = 0x05;
const PAIRING_NOT_SUPPORTED = 0x05;

/**
 * A peripheral that cannot pair (Core, Vol 3 Part H 3.5.5). noble ends its pairing on this, but leaves the request
 * that asked for it unanswered: a read of a protected value never returns.
 */
export function answerSecurity(command: Buffer): Buffer | undefined {
  return command[0] === PAIRING_REQUEST ? Buffer.from([PAIRING_FAILED, PAIRING_NOT_SUPPORTED]) : undefined;
}
