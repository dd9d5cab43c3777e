import { describe, expect, test } from 'vitest';
import { parseProfile, readProfile } from '../../../drivers/profile/file.ts';
import { rawProfile } from './example.ts';
import { NM } from './reading.ts';

describe('a profile that cannot hold is refused, with the place', () => {
  const refused = (change: Record<string, unknown>) => {
    const parsed = parseProfile(JSON.stringify({ ...rawProfile(), ...change }), 'p.json');
    return parsed.ok ? undefined : parsed.error;
  };
  const value = { ...NM, type: 'sint16' };
  const inBig = (...fields: readonly Record<string, unknown>[]) => ({
    layout: { of: 'bytes', byteOrder: 'big', fields },
  });
  const text = (...fields: readonly Record<string, unknown>[]) => ({ layout: { of: 'text', fields } });
  const flag = (bit: number) => ({ is: 'flag', bit, means: 'valid' });
  const number = { is: 'value', resolution: '0.1', unit: 'N·m' };

  test.each<[string, Record<string, unknown>, string, RegExp]>([
    ['the first form', { form: 'plugmark/profile/1' }, 'p.json: form', /profile\/2/],
    ['a field that does not exist', inBig({ ...value, sclae: '1' }), 'p.json: layout.fields[0]', /sclae/],
    [
      'a scale that is a number',
      inBig({ ...value, scale: 0.02 }),
      'p.json: layout.fields[0].scale',
      /string/,
    ],
    [
      'a scale of nothing',
      inBig({ ...value, scale: '0.00' }),
      'p.json: layout.fields[0].scale',
      /other than 0/,
    ],
    [
      'no scale',
      inBig({ is: 'value', type: 'sint16', unit: 'N·m' }),
      'p.json: layout.fields[0].scale',
      /value of 1/,
    ],
    ['no unit', inBig({ is: 'value', type: 'sint16', scale: '1' }), 'p.json: layout.fields[0].unit', /unit/],
    [
      'a unit of another quantity',
      inBig({ ...value, unit: 'mm' }),
      'p.json: layout.fields[0].unit',
      /no unit of torque/,
    ],
    [
      'a unit both given and told',
      inBig(value, { is: 'unit', type: 'uint8', codes: [{ code: 0, unit: 'N·m' }] }),
      'p.json: layout.fields[0].unit',
      /told by the frame/,
    ],
    [
      'a UUID that is none',
      {
        link: {
          kind: 'bluetooth-le',
          advertised: '185',
          service: '185a',
          characteristic: '2c0b',
          by: { how: 'notify' },
        },
      },
      'p.json: link.advertised',
      /UUID/,
    ],
    ['no value', inBig({ is: 'unused', bytes: 1 }), 'p.json: layout.fields', /one field "value"/],
    ['two values', inBig(value, value), 'p.json: layout.fields', /found 2/],
    [
      'two counters',
      inBig(
        value,
        { is: 'counter', type: 'uint8', counts: 'frames' },
        { is: 'counter', type: 'uint8', counts: 'frames' },
      ),
      'p.json: layout.fields[2]',
      /already/,
    ],
    [
      'a counter in the samples',
      inBig({
        is: 'samples',
        count: 2,
        fields: [
          value,
          { is: 'bits', type: 'uint8', parts: [{ is: 'counter', bit: 0, bits: 8, counts: 'frames' }] },
        ],
      }),
      'p.json: layout.fields[0].fields[1].parts[0]',
      /outside of the samples/,
    ],
    [
      'a bit that is not there',
      inBig(value, { is: 'bits', type: 'uint8', parts: [flag(8)] }),
      'p.json: layout.fields[1].parts[0]',
      /a uint8 has no bit 8/,
    ],
    [
      'a bit that is there twice',
      inBig(value, { is: 'bits', type: 'uint8', parts: [flag(3), flag(3)] }),
      'p.json: layout.fields[1].parts[1]',
      /twice/,
    ],
    [
      'a floating point number without a step',
      inBig({ ...value, type: 'float32' }),
      'p.json: layout.fields[0].resolution',
      /smallest step/,
    ],
    [
      'a step finer than the numbers',
      inBig({ ...value, resolution: '0.001' }),
      'p.json: layout.fields[0].resolution',
      /can tell/,
    ],
    [
      'a step that nobody can record',
      { quantity: 'length', ...inBig({ ...value, scale: '0.000000001', unit: 'µm' }) },
      'p.json: layout.fields[0].scale',
      /too fine/,
    ],
    [
      'a frame longer than any',
      inBig(value, { is: 'unused', bytes: 511 }),
      'p.json: layout.fields',
      /513 bytes/,
    ],
    ['a length of text', { frames: { by: 'length' }, ...text(number) }, 'p.json: frames.by', /no length/],
    [
      'a length of nothing',
      {
        frames: { by: 'length' },
        ...inBig({ is: 'samples', count: 'rest', fields: [value] }, { is: 'fixed', hex: '0d' }),
      },
      'p.json: layout.fields[0]',
      /"size"/,
    ],
    [
      'a length that a lost byte would shift',
      { frames: { by: 'length' }, ...inBig(value) },
      'p.json: frames.quietMs',
      /lost byte/,
    ],
    [
      'packets of a serial port',
      { link: { kind: 'serial', baud: 9600, by: { how: 'sent' } } },
      'p.json: frames.by',
      /no packets/,
    ],
    [
      'a figure that has no end',
      text(number, { is: 'counter', digits: 2, counts: 'frames' }),
      'p.json: layout.fields[1]',
      /ends/,
    ],
    [
      'a text that begins with a digit behind a figure',
      text(number, { is: 'text', text: '0x' }),
      'p.json: layout.fields[1]',
      /ends/,
    ],
    [
      'text that says nothing and has no end',
      text({ is: 'unused' }, number),
      'p.json: layout.fields[0]',
      /either/,
    ],
    [
      'an angle of a gauge',
      { quantity: 'length', ...inBig({ ...value, unit: 'mm' }, { is: 'angle', type: 'uint16', scale: '1' }) },
      'p.json: layout.fields[1]',
      /torque tool/,
    ],
    [
      'a checksum of nothing',
      inBig({ is: 'checksum', kind: 'xor-8' }, value),
      'p.json: layout.fields[0].from',
      /nothing/,
    ],
  ])('%s', (_name, change, where, message) => {
    expect(refused(change)).toMatchObject({
      code: 'input-not-valid',
      where: expect.stringContaining(where),
      message: expect.stringMatching(message),
    });
  });

  test('what is no JSON names the file', () => {
    expect(parseProfile('{', 'p.json')).toMatchObject({
      error: { code: 'file-unreadable', where: 'p.json' },
    });
  });
});

test('a file without an end is no profile', async () => {
  expect(await readProfile('/dev/zero')).toMatchObject({ ok: false, error: { code: 'file-unreadable' } });
});
