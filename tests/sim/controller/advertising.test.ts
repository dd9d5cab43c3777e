import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { advertisingPayloads } from '../../../sim/controller/advertising.ts';
import { PRIVATE_SERVICE, wrench } from './wrench.ts';

const PRIVATE_ON_AIR = '401e9b6c2d0f539a6e4ba4772a1e0c5f';
const text = (value: string) => Buffer.from(value).toString('hex');

function payloads(changes: Parameters<typeof wrench>[0]) {
  const { advertising, scanResponse } = advertisingPayloads(wrench(changes));
  return [advertising.toString('hex'), scanResponse.toString('hex')];
}

describe('advertising payloads', () => {
  it('hold flags, services, appearance and name', () => {
    expect(payloads({ name: 'Wrench', advertisedServices: [0x185a, 0x180f] })).toEqual([
      `02010605035a180f180319c8140709${text('Wrench')}`,
      '',
    ]);
  });

  it('move the name to the scan response when the advertisement is full', () => {
    expect(payloads({ name: 'Wrench', advertisedServices: [0x185a, PRIVATE_SERVICE] })).toEqual([
      `02010603035a181107${PRIVATE_ON_AIR}0319c814`,
      `0709${text('Wrench')}`,
    ]);
  });

  it('shorten a name that fits nowhere, and say so', () => {
    const name = 'A wrench with a very long name indeed';
    expect(payloads({ name })[1]).toBe(`1e08${text(name.slice(0, 29))}`);
  });

  it('refuse services that fit nowhere', () => {
    const many = Array.from({ length: 3 }, (_, index) => PRIVATE_SERVICE.replace(/^5f/, `6${index}`));
    expect(() => payloads({ advertisedServices: many })).toThrow('do not fit');
  });

  it('are well formed for every name: at most 31 octets, fields that add up, whole characters', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 40 }), fc.boolean(), (name, two) => {
        const advertisedServices = two ? [0x185a, PRIVATE_SERVICE] : [0x185a];
        const { advertising, scanResponse } = advertisingPayloads(wrench({ name, advertisedServices }));
        const fields: { type: number; value: Buffer }[] = [];
        for (const payload of [advertising, scanResponse]) {
          expect(payload.length).toBeLessThanOrEqual(31);
          let at = 0;
          while (at < payload.length) {
            const length = payload.readUInt8(at);
            fields.push({
              type: payload.readUInt8(at + 1),
              value: payload.subarray(at + 2, at + 1 + length),
            });
            at += 1 + length;
          }
          expect(at).toBe(payload.length);
        }
        const shown = fields.find(({ type }) => type === 0x08 || type === 0x09);
        const whole = new TextDecoder('utf-8', { fatal: true }).decode(shown?.value);
        expect(Buffer.from(name, 'utf8').subarray(0, shown?.value.length)).toEqual(
          Buffer.from(whole, 'utf8'),
        );
        expect(shown?.type).toBe(shown?.value.length === Buffer.byteLength(name) ? 0x09 : 0x08);
      }),
    );
  });
});
