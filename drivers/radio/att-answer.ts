/**
 * Whether a PDU of the attribute protocol may go on to noble, which takes any odd opcode for the answer to whatever it has asked
 * and believes the lengths in it: a list whose entries are said to have length 0 is read for ever, until the memory is full.
 *
 * `uncalled-for`: it answers nothing that was asked. `malformed`: it answers in a form that the specification does not know.
 * Bluetooth Core 5.4, Vol 3 Part F, 3.4: an answer has the opcode of its request plus one, or is an Error Response that names it.
 */
export type AttAnswer = 'goes-on' | 'uncalled-for' | 'malformed';

const ERROR = 0x01;
const MTU = 0x03;
const INFORMATION = 0x05;
const BY_TYPE = 0x09;
const BY_GROUP = 0x11;
const SENT_UNASKED: readonly number[] = [0x1b, 0x1d];
/** 3.2.8: what every device has to take. */
const LEAST_MTU = 23;

/** `asked`: the request that waits for its answer. */
export function attAnswer(pdu: Buffer, asked: Buffer | undefined): AttAnswer {
  const opcode = pdu[0];
  if (opcode === undefined) return 'uncalled-for';
  if (opcode % 2 === 0 || SENT_UNASKED.includes(opcode)) return 'goes-on';
  const request = asked?.[0];
  if (asked === undefined || request === undefined) return 'uncalled-for';
  if ((opcode === ERROR ? pdu[1] : opcode - 1) !== request) return 'uncalled-for';
  return isWellFormed(opcode, pdu, asked) ? 'goes-on' : 'malformed';
}

function isWellFormed(opcode: number, pdu: Buffer, asked: Buffer): boolean {
  if (opcode === ERROR) return pdu.length === 5;
  if (opcode === MTU) return pdu.length === 3 && pdu.readUInt16LE(1) >= LEAST_MTU;
  if (opcode !== INFORMATION && opcode !== BY_TYPE && opcode !== BY_GROUP) return true;
  const length = entryLength(opcode, pdu[1] ?? 0);
  const list = pdu.length - 2;
  if (length === undefined || list < length || list % length !== 0) return false;
  // Each further request begins behind the last entry: one that lies before the request would be asked for again, for ever.
  const from = asked.readUInt16LE(1);
  for (let at = 2; at < pdu.length; at += length) if (pdu.readUInt16LE(at) < from) return false;
  return true;
}

/** The length of an entry that the second byte of a list stands for, where there is one (3.4.3.2, 3.4.4.2, 3.4.4.10). */
function entryLength(opcode: number, given: number): number | undefined {
  if (opcode === INFORMATION) return { 1: 4, 2: 18 }[given];
  // A handle, and a value of at least one byte; for services a handle, the last handle, and a UUID of either length.
  return (opcode === BY_TYPE ? given > 2 : given === 6 || given === 20) ? given : undefined;
}
