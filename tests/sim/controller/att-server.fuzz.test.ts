import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ATT, ATT_ERROR } from '../../../sim/controller/att-pdu.ts';
import { attServer } from '../../../sim/controller/att-server.ts';
import { gattTable } from '../../../sim/controller/gatt-table.ts';
import { TORQUE, wrench } from './wrench.ts';

const table = gattTable(wrench());
const codes: ReadonlySet<number> = new Set(Object.values(ATT_ERROR));
const MTU = 185;

const handle = fc.oneof(fc.integer({ min: 0, max: 21 }), fc.constant(0xffff), fc.nat(0xffff));
const u16 = (value: number) => [value & 0xff, value >> 8];
const opcode = fc.constantFrom(...Object.values(ATT));

/** Half of it nonsense, half of it close to what a client sends, as pure noise never passes the length checks. */
const pdu = fc.oneof(
  fc.uint8Array({ maxLength: 40 }).map((bytes) => Buffer.from(bytes)),
  fc
    .tuple(opcode, handle, handle, fc.constantFrom(0x2800, 0x2801, 0x2803, 0x2902, TORQUE, 0x2a28))
    .map(([code, start, end, type]) => Buffer.from([code, ...u16(start), ...u16(end), ...u16(type)])),
  fc
    .tuple(opcode, handle, fc.uint8Array({ maxLength: 6 }))
    .map(([code, at, rest]) => Buffer.from([code, ...u16(at), ...rest])),
);

function expectValidAnswer(request: Buffer, answer: Buffer | undefined): void {
  if (answer === undefined) {
    const known = request.length > 0 && request.readUInt8(0) % 2 === 0 && (request.readUInt8(0) & 0x40) === 0;
    expect(known && request.readUInt8(0) !== ATT.handleValueConfirmation).toBe(false);
    return;
  }
  expect(answer.length).toBeLessThanOrEqual(MTU);
  if (answer.readUInt8(0) !== ATT.errorResponse) {
    expect(answer.readUInt8(0)).toBe(request.readUInt8(0) + 1);
    return;
  }
  expect(answer).toHaveLength(5);
  expect(answer.readUInt8(1)).toBe(request.readUInt8(0));
  expect(codes.has(answer.readUInt8(4))).toBe(true);
}

describe('any PDU to the ATT server', () => {
  it('gets a response to its opcode, an error that exists, or silence if it asked nothing', () => {
    fc.assert(
      fc.property(fc.array(pdu, { minLength: 1, maxLength: 20 }), (requests) => {
        const server = attServer(table, MTU);
        for (const request of requests) expectValidAnswer(request, server.receive(request));
      }),
      { numRuns: 1_000 },
    );
  });

  it('never makes a notification longer than the link takes', () => {
    fc.assert(
      fc.property(fc.nat(0xffff), fc.uint8Array({ maxLength: 600 }), (clientMtu, bytes) => {
        const server = attServer(table, MTU);
        server.receive(Buffer.from([0x02, ...u16(clientMtu)]));
        server.receive(Buffer.from([0x12, 0x0a, 0, 1, 0]));
        const agreed = Math.max(23, Math.min(clientMtu, MTU));
        const sent = server.notification(TORQUE, bytes);
        expect(sent?.subarray(3)).toEqual(Buffer.from(bytes.subarray(0, agreed - 3)));
      }),
    );
  });

  it('brings any value back whole, part by part', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 512 }), fc.integer({ min: 23, max: 517 }), (value, mtu) => {
        const characteristics = [{ uuid: TORQUE, properties: ['read'] as const, value }];
        const server = attServer(gattTable(wrench({ services: [{ uuid: 0x185a, characteristics }] })), mtu);
        server.receive(Buffer.from([0x02, ...u16(517)]));
        let whole = Buffer.alloc(0);
        let part: Buffer;
        do {
          part = server.receive(Buffer.from([0x0c, 9, 0, ...u16(whole.length)])) ?? Buffer.alloc(0);
          expect(part[0]).toBe(0x0d);
          whole = Buffer.concat([whole, part.subarray(1)]);
        } while (part.length === mtu);
        expect(whole).toEqual(Buffer.from(value));
      }),
    );
  });
});
