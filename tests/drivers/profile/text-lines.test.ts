import { describe, expect, test } from 'vitest';
import { valueScaling } from '../../../drivers/profile/decoder.ts';
import { scaled } from '../../../src/reading.ts';
import { good } from '../bench.ts';
import { inText } from './example.ts';
import { readText } from './reading.ts';

describe('a line of text is read as it is described', () => {
  const unit = {
    is: 'unit',
    texts: [
      { text: 'N', unit: 'cN·m' },
      { text: 'Nm', unit: 'N·m' },
      { text: 'lbft', unit: 'lbf·ft' },
    ],
  };
  const layout = inText([
    { is: 'text', text: 'T' },
    { is: 'value', resolution: '0.01', noValue: ['OL'] },
    { is: 'blanks' },
    unit,
  ]);

  test.each<[string, number | null, string]>([
    ['T+025.34Nm', 25.34, 'N·m'],
    ['T-025.34Nm', -25.34, 'N·m'],
    ['T  25.34  Nm', 25.34, 'N·m'],
    ['T+ 25.34Nm', 25.34, 'N·m'],
    ['T-0.00Nm', 0, 'N·m'],
    ['T025.34lbft', 34.356_427, 'lbf·ft'],
    ['TOLNm', null, 'N·m'],
  ])('%s', (text, nm, told) => {
    const frame = good(readText(layout, text));
    const { exponent } = valueScaling(layout);
    const [counts] = frame.counts;
    expect(frame.unit).toBe(told);
    if (nm === null) expect(counts).toBeNull();
    else expect(Math.abs(scaled(counts ?? Number.NaN, exponent) - nm)).toBeLessThan(0.000_02);
  });

  test.each([
    'T+025.3Nm',
    'T+025.345Nm',
    'T+02534Nm',
    'T+02.5.34Nm',
    'T+-25.34Nm',
    'T+Nm',
    'T25.34',
    'T25.34kg',
    'T25.34Nm ',
    'x25.34Nm',
    '',
    'T1234567890123456.00Nm',
    'T25,34Nm',
    'T25.34Nm\0',
  ])('%j is no reading', (text) => {
    expect(readText(layout, text)).toMatchObject({ ok: false, error: { code: 'profile-frame' } });
  });

  test('status, counter, angle, a decimal comma, what says nothing, and a checksum in hexadecimal', () => {
    const full = inText([
      { is: 'text', text: '$' },
      {
        is: 'status',
        texts: [
          { text: 'ST', means: 'valid' },
          { text: 'US', means: 'no-value', label: 'moving' },
        ],
      },
      { is: 'text', text: ';' },
      { is: 'counter', digits: 3, counts: 'frames' },
      { is: 'text', text: ';' },
      { is: 'unused', until: ';' },
      { is: 'text', text: ';' },
      { is: 'value', resolution: '0.1', unit: 'N·m', decimalMark: ',' },
      { is: 'text', text: ';' },
      { is: 'angle', resolution: '1' },
      { is: 'text', text: '*' },
      { is: 'checksum', kind: 'xor-8', from: 1 },
    ]);
    const line = (status: string) => {
      const text = `$${status};042;id 7 .*;-25,3;180*`;
      const sum = [...text.slice(1)].reduce((x, c) => x ^ c.charCodeAt(0), 0);
      return `${text}${sum.toString(16).padStart(2, '0')}`;
    };
    expect(readText(full, line('ST'))).toMatchObject({
      value: { counts: [-253], angleCounts: [180], counter: 42 },
    });
    expect(readText(full, line('US'))).toMatchObject({ value: { counts: [null], noValue: 'moving' } });
    expect(readText(full, line('ST').replace('180', '181'))).toMatchObject({ ok: false });
    expect(readText(full, line('XX'))).toMatchObject({ ok: false });
  });

  test('no text costs more than its length: what is tried is never tried again', () => {
    const hostile = inText([
      { is: 'unused', until: 'ab' },
      { is: 'text', text: 'ab' },
      { is: 'blanks' },
      { is: 'value', resolution: '1', unit: 'N·m' },
      { is: 'blanks' },
      { is: 'text', text: 'end' },
    ]);
    expect(readText(hostile, `${'a'.repeat(300)}${' '.repeat(150)}1`)).toMatchObject({ ok: false });
    expect(readText(hostile, `${'a'.repeat(300)}b${' '.repeat(150)}1end`)).toMatchObject({
      value: { counts: [1] },
    });
  });
});
