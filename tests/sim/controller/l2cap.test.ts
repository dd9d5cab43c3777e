import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  answerSecurity,
  answerSignalling,
  fragments,
  parameterUpdateRequest,
  reassembler,
} from '../../../sim/controller/l2cap.ts';

const bytes = (hex: string) => Buffer.from(hex.replaceAll(' ', ''), 'hex');

describe('frames over ACL', () => {
  it('start with length and channel, and fill each piece', () => {
    const pieces = fragments({ cid: 4, payload: bytes('1b 0900 01020304') }, 5);
    expect(pieces.map((piece) => piece.toString('hex'))).toEqual(['070004001b', '0900010203', '04']);
  });

  it('come back whole from pieces of any size', () => {
    const payload = fc.uint8Array({ maxLength: 600 }).map((array) => Buffer.from(array));
    fc.assert(
      fc.property(payload, fc.nat(0xffff), fc.integer({ min: 1, max: 251 }), (sent, cid, size) => {
        const take = reassembler();
        const frame = { cid, payload: sent };
        const pieces = fragments(frame, size);
        const taken = pieces.map((piece, index) => take(index === 0, piece));
        expect(taken.pop()).toEqual(frame);
        expect(taken.every((early) => early === undefined)).toBe(true);
      }),
    );
  });

  it('are dropped when they begin in the middle or are longer than announced', () => {
    const take = reassembler();
    expect(take(false, bytes('0102'))).toBeUndefined();
    expect(take(true, bytes('0100 0400 0a0b'))).toBeUndefined();
    expect(take(true, bytes('0300 0400 0a'))).toBeUndefined();
    expect(take(true, bytes('0100 0400 0c'))).toEqual({ cid: 4, payload: bytes('0c') });
  });
});

describe('signalling of a peripheral', () => {
  it('does not understand requests', () => {
    expect(answerSignalling(bytes('14 05 0a00 80004000170017000a00'))).toEqual(bytes('01 05 0200 0000'));
    expect(answerSignalling(bytes('12 09 0800 0600060000006400'))).toEqual(bytes('01 09 0200 0000'));
  });

  it.each([['13 01 0200 0000'], ['01 01 0200 0000'], ['13'], ['']])('says nothing to %s', (command) => {
    expect(answerSignalling(bytes(command))).toBeUndefined();
  });

  it('asks for link timing in the units of the protocol', () => {
    const wanted = { minInterval: 12, maxInterval: 24, latency: 4, timeout: 0x190 };
    expect(parameterUpdateRequest(wanted)).toEqual(bytes('12 01 0800 0c00 1800 0400 9001'));
  });
});

describe('security of a peripheral', () => {
  it('refuses to pair and says nothing else', () => {
    expect(answerSecurity(bytes('01 03 00 01 10 00 01'))).toEqual(bytes('05 05'));
    expect(answerSecurity(bytes('03 00'))).toBeUndefined();
    expect(answerSecurity(bytes(''))).toBeUndefined();
  });
});
