import { expect, test } from 'vitest';
import { confirmValue, shortTermKey } from '../../sim/controller/pairing.ts';

const octets = (hex: string) => Buffer.from(hex, 'hex').reverse();

/** Sample data of the Bluetooth Core Specification, Vol 3 Part H 2.2.3; from memory of it, to be checked on paper. */
test('c1 as published', () => {
  const confirm = confirmValue(
    octets('00000000000000000000000000000000'),
    octets('5783D52156AD6F0E6388274EC6702EE0'),
    octets('07071000000101'),
    octets('05000800000302'),
    {
      central: { address: octets('A1A2A3A4A5A6'), type: 'random' },
      peripheral: { address: octets('B1B2B3B4B5B6'), type: 'public' },
    },
  );
  expect(confirm).toEqual(octets('1e1e3fef878988ead2a74dc5bef13b86'));
});

/** The same, 2.2.4. */
test('s1 as published', () => {
  const key = shortTermKey(
    octets('00000000000000000000000000000000'),
    octets('000F0E0D0C0B0A091122334455667788'),
    octets('010203040506070899AABBCCDDEEFF00'),
  );
  expect(key).toEqual(octets('9a1fe1f0e8b0f49b5b4216ae796da062'));
});
