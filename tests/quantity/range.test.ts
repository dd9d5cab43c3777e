import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../src/quantity/length.ts';
import {
  parseAngleRange,
  parseLength,
  parseLengthRange,
  parseTorque,
  parseTorqueRange,
} from '../../src/quantity/range.ts';
import type { TorqueUnit } from '../../src/quantity/torque.ts';

type Row<U> = readonly [text: string, unit: U, lower: number, upper: number, nominal?: number];

const FT_LB = '[ft_i].[lbf_av]';
const IN_LB = '[in_i].[lbf_av]';

describe('a torque range is read as people write it', () => {
  const rows: Row<TorqueUnit>[] = [
    ['18 Nm ±10 %', 'N.m', 16.2, 19.8, 18],
    ['25-30 N·m', 'N.m', 25, 30],
    ['25 to 30 Nm', 'N.m', 25, 30],
    ['25 N·m ±10 %', 'N.m', 22.5, 27.5, 25],
    ['25 ±10% Nm', 'N.m', 22.5, 27.5, 25],
    ['25 ± 2 Nm', 'N.m', 23, 27, 25],
    ['25±2Nm', 'N.m', 23, 27, 25],
    ['25 +/- 2 Nm', 'N.m', 23, 27, 25],
    ['25 +- 2 Nm', 'N.m', 23, 27, 25],
    ['25 Nm ± 2 Nm', 'N.m', 23, 27, 25],
    ['25 Nm +2/-1', 'N.m', 24, 27, 25],
    ['25 Nm -1/+2', 'N.m', 24, 27, 25],
    ['25 Nm +10%/-5%', 'N.m', 23.75, 27.5, 25],
    ['25 N·m – 30 N·m', 'N.m', 25, 30],
    ['25 N·m − 30 N·m', 'N.m', 25, 30],
    ['10...12 N.m', 'N.m', 10, 12],
    ['10…12 N∙m', 'N.m', 10, 12],
    ['10~12 N⋅m', 'N.m', 10, 12],
    ['7,5 – 10,5 N m', 'N.m', 7.5, 10.5],
    ['25‑30\u202FN\u00A0m', 'N.m', 25, 30],
    ['25-30 newton metres', 'N.m', 25, 30],
    ['  25-30 NM.  ', 'N.m', 25, 30],
    ['15–22 lbf·ft', FT_LB, 15, 22],
    ['15-22 ft-lb', FT_LB, 15, 22],
    ['15-22 ft. lbs.', FT_LB, 15, 22],
    ['15-22 lb.-ft.', FT_LB, 15, 22],
    ['15-22 foot-pounds', FT_LB, 15, 22],
    ['13 ft-lb ±10 %', FT_LB, 11.7, 14.3, 13],
    ['15-22 [ft_i].[lbf_av]', FT_LB, 15, 22],
    ['106-133 in-lb', IN_LB, 106, 133],
    ['106-133 lbf in', IN_LB, 106, 133],
    ['106-133 inch pounds', IN_LB, 106, 133],
    ['2.5-3.0 kgf·m', 'kgf.m', 2.5, 3],
    ['2.5-3.0 kg-m', 'kgf.m', 2.5, 3],
    ['2.5-3.0 m·kgf', 'kgf.m', 2.5, 3],
    ['2,5-3,0 mkp', 'kgf.m', 2.5, 3],
    ['180-220 kgf·cm', 'kgf.cm', 180, 220],
  ];
  for (const [text, unit, lower, upper, nominal] of rows)
    it(text, () => {
      const expected = {
        printed: text.trim(),
        unit,
        lower,
        upper,
        ...(nominal === undefined ? {} : { nominal }),
      };
      expect(parseTorqueRange(text)).toEqual({ ok: true, value: expected });
    });
});

describe('a gap is read as people write it', () => {
  const rows: Row<LengthUnit>[] = [
    ['0.7-0.8 mm', 'mm', 0.7, 0.8],
    ['0,7-0,8 mm', 'mm', 0.7, 0.8],
    ['0,700–0,800 mm', 'mm', 0.7, 0.8],
    ['1.000-1.100 mm', 'mm', 1, 1.1],
    ['1.0 +0/-0.1 mm', 'mm', 0.9, 1, 1],
    ['1.0 +0/−0,1 mm', 'mm', 0.9, 1, 1],
    ['1.1 mm +0, -0.1', 'mm', 1, 1.1, 1.1],
    ['1.0 -0.1/+0 mm', 'mm', 0.9, 1, 1],
    ['1.0 mm ± 0.1', 'mm', 0.9, 1.1, 1],
    ['0.8 mm ±0.05 mm', 'mm', 0.75, 0.85, 0.8],
    ['0.028-0.031 in', '[in_i]', 0.028, 0.031],
    ['.028-.031"', '[in_i]', 0.028, 0.031],
    ['0.028"–0.031"', '[in_i]', 0.028, 0.031],
    ['0.028 in to 0.031 in', '[in_i]', 0.028, 0.031],
    ['0.039 – 0.043 inches', '[in_i]', 0.039, 0.043],
    ['28-31 thou', '[mil_i]', 28, 31],
    ['30 mil ± 2 mil', '[mil_i]', 28, 32, 30],
  ];
  for (const [text, unit, lower, upper, nominal] of rows)
    it(text, () => {
      const expected = { printed: text, unit, lower, upper, ...(nominal === undefined ? {} : { nominal }) };
      expect(parseLengthRange(text)).toEqual({ ok: true, value: expected });
    });
});

describe('an angle is read from a box, where one figure is enough', () => {
  it.each<readonly [string, string, number, number]>([
    ['1/2 turn', 'circ', 0.5, 0.5],
    ['1/2-2/3 turn', 'circ', 0.5, 2 / 3],
    ['1/2 to 2/3 of a turn', 'circ', 0.5, 2 / 3],
    ['½–⅔ turn', 'circ', 0.5, 2 / 3],
    ['1 1/2 turns', 'circ', 1.5, 1.5],
    ['1½ turns', 'circ', 1.5, 1.5],
    ['1/16 turn', 'circ', 0.0625, 0.0625],
    ['90°', 'deg', 90, 90],
    ['22.5 deg', 'deg', 22.5, 22.5],
    ['180-240°', 'deg', 180, 240],
    ['90 ± 10 degrees', 'deg', 80, 100],
  ])('%s', (text, unit, lower, upper) => {
    expect(parseAngleRange(text)).toMatchObject({ ok: true, value: { unit, lower, upper } });
  });
});

describe('what can be read in more than one way, or in none, is refused at its place', () => {
  type Refusal = readonly [text: string, code: string, character: number, message: RegExp];
  const torque: Refusal[] = [
    ['13 ft-lb', 'no-tolerance', 1, /is a single figure/],
    ['25 Nm ±0', 'no-tolerance', 8, /both limits are 25/],
    ['25-25 Nm', 'no-tolerance', 4, /both limits are 25/],
    ['25-30', 'unit-missing', 6, /no unit/],
    ['25 ±10 %', 'unit-missing', 9, /no unit/],
    ['25 mm', 'unit-of-another-quantity', 4, /unit of length, not of torque/],
    ['25-30 J', 'unit-of-another-quantity', 7, /unit of energy, not of torque/],
    ['25-30 joules', 'unit-of-another-quantity', 7, /unit of energy, not of torque/],
    ['25-30 N/m', 'unit-of-another-quantity', 7, /unit of stiffness/],
    ['25-30 lb', 'unit-of-another-quantity', 7, /unit of force or mass/],
    ['25-30 mN·m', 'unit-not-known', 7, /mN·m/],
    ['25-30 N·mm', 'unit-not-known', 7, /N·mm/],
    ['25-30 kN·m', 'unit-not-known', 7, /kN·m/],
    ['25 Nm ± 2 lbf·ft', 'unit-mixed', 11, /second unit/],
    ['25 Nm +10 %/-2', 'unit-mixed', 8, /one deviation is in %/],
    ['30-25 Nm', 'range-reversed', 4, /from 30 down to 25/],
    ['0-10 Nm', 'not-positive', 1, /not above zero/],
    ['-5-10 Nm', 'not-positive', 1, /minus/],
    ['5 - -10 Nm', 'not-positive', 5, /minus/],
    ['25 Nm ±120 %', 'not-positive', 1, /-5 is not above zero/],
    ['1,000-1,200 Nm', 'figure-ambiguous', 1, /a thousand or as a decimal/],
    ['25 Nm ±1,250', 'figure-ambiguous', 8, /a thousand or as a decimal/],
    ['1 000-1 200 Nm', 'figure-ambiguous', 1, /groups of three/],
    ["1'000 Nm ±5 %", 'figure-ambiguous', 1, /a thousand/],
    ['1.000 lbf·in ±5 %', 'figure-ambiguous', 1, /a thousand or as a decimal/],
    ['25/30 Nm', 'figure-ambiguous', 1, /fraction or as a range/],
    ['5000-6000 Nm', 'figure-absurd', 1, /far too large/],
    ['25.000000001-30 Nm', 'figure-absurd', 1, /11 digits/],
    ['25-30 N·m (18-22 lbf·ft)', 'not-understood', 11, /"\("/],
    ['25-30-35 Nm', 'not-understood', 6, /one torque in one unit/],
    ['25 30 Nm', 'not-understood', 4, /one torque in one unit/],
    ['', 'not-understood', 1, /one torque in one unit/],
    ['Nm', 'not-understood', 1, /one torque in one unit/],
    ['hand tight', 'unit-not-known', 1, /"hand"/],
    ['25-30\nNm', 'not-understood', 6, /cannot be read here/],
  ];
  it.each(torque)('torque %s', (text, code, character, message) => {
    const result = parseTorqueRange(text);
    expect(result).toMatchObject({ ok: false, error: { code, message: expect.stringMatching(message) } });
    expect(!result.ok && result.error.where).toMatch(new RegExp(`^character ${character} of `, 'u'));
    expect(!result.ok && result.error.next).not.toBe('');
  });

  const length: Refusal[] = [
    ['0.7 mm', 'no-tolerance', 1, /is a single figure/],
    ['0.7-0.8 Nm', 'unit-of-another-quantity', 9, /unit of torque, not of length/],
    ['0.7-0.8 cm', 'unit-not-known', 9, /"cm"/],
    ['1,000-1,100 mm', 'figure-ambiguous', 1, /a thousand or as a decimal/],
    ['700-800 in', 'figure-absurd', 1, /far too large/],
    ['0.8 -0.1 mm', 'range-reversed', 6, /from 0.8 down to 0.1/],
  ];
  it.each(length)('gap %s', (text, code, character, message) => {
    const result = parseLengthRange(text);
    expect(result).toMatchObject({ ok: false, error: { code, message: expect.stringMatching(message) } });
    expect(!result.ok && result.error.where).toMatch(new RegExp(`^character ${character} of `, 'u'));
  });

  it('angles: a fraction with nothing below the line, a torque, a missing unit', () => {
    expect(parseAngleRange('1/0 turn')).toMatchObject({ ok: false, error: { code: 'figure-absurd' } });
    expect(parseAngleRange('90 N·m')).toMatchObject({
      ok: false,
      error: { code: 'unit-of-another-quantity' },
    });
    expect(parseAngleRange('1/16')).toMatchObject({ ok: false, error: { code: 'unit-missing' } });
  });
});

describe('one figure', () => {
  it('is read with its unit', () => {
    expect(parseTorque(' 25 N·m ')).toEqual({
      ok: true,
      value: { printed: '25 N·m', unit: 'N.m', figure: 25 },
    });
    expect(parseLength('0,75 mm')).toEqual({
      ok: true,
      value: { printed: '0,75 mm', unit: 'mm', figure: 0.75 },
    });
    expect(parseLength('30 mils')).toMatchObject({ ok: true, value: { unit: '[mil_i]', figure: 30 } });
  });

  it('is refused when it is a range, bare, or of another quantity', () => {
    expect(parseTorque('25-30 N·m')).toMatchObject({ ok: false, error: { code: 'not-understood' } });
    expect(parseTorque('25')).toMatchObject({ ok: false, error: { code: 'unit-missing' } });
    expect(parseLength('25 N·m')).toMatchObject({ ok: false, error: { code: 'unit-of-another-quantity' } });
    expect(parseLength('0 mm')).toMatchObject({ ok: false, error: { code: 'not-positive' } });
  });
});

describe('whatever the text', () => {
  const spelled = fc.constantFrom<readonly [string, TorqueUnit]>(
    ['N·m', 'N.m'],
    ['Nm', 'N.m'],
    ['lbf·ft', FT_LB],
    ['ft-lbs', FT_LB],
    ['lbf·in', IN_LB],
    ['kgf·m', 'kgf.m'],
    ['kgf·cm', 'kgf.cm'],
  );
  const hundredths = fc.integer({ min: 1, max: 9999 });
  const dash = fc.constantFrom('-', '–', '—', '−', ' - ', ' to ', '…', ' ~ ');
  const comma = fc.boolean();

  it('a printed pair comes back figure for figure', () => {
    fc.assert(
      fc.property(
        hundredths,
        hundredths,
        dash,
        comma,
        spelled,
        (a, b, between, withComma, [spelling, unit]) => {
          const [low, high] = [Math.min(a, b), Math.max(a, b) + 1];
          const print = (n: number) => (n / 100).toFixed(2).replace('.', withComma ? ',' : '.');
          const lower = low / 100;
          const upper = high / 100;
          const text = `${print(low)}${between}${print(high)} ${spelling}`;
          expect(parseTorqueRange(text)).toEqual({ ok: true, value: { printed: text, unit, lower, upper } });
        },
      ),
    );
  });

  it('a nominal with tolerance gives limits without binary noise', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 9999 }), fc.integer({ min: 1, max: 99 }), (n, tolerance) => {
        const result = parseLengthRange(`${n / 1000} ±0.${String(tolerance).padStart(3, '0')} mm`);
        const [lower, upper] = [(n - tolerance) / 1000, (n + tolerance) / 1000];
        expect(result).toMatchObject({ ok: true, value: { lower, upper, nominal: n / 1000 } });
      }),
    );
  });

  const likely = fc
    .array(
      fc.constantFrom(
        '25',
        '0.7',
        '1,000',
        '1/2',
        '-',
        '–',
        '±',
        '+',
        '/',
        '%',
        'N·m',
        'mm',
        'in',
        '"',
        'to',
        ' ',
        '.',
        'J',
        '(',
        '\u202E',
        '\u0000',
        'kgf',
        '·',
        'm',
      ),
      { maxLength: 12 },
    )
    .map((parts) => parts.join(''));

  const anyUnit = fc.integer({ min: 0, max: 0xffff }).map((code) => String.fromCharCode(code));

  it('parsing answers, and a range it accepts is positive and rising', () => {
    fc.assert(
      fc.property(fc.oneof(likely, fc.string({ unit: anyUnit, maxLength: 60 })), (text) => {
        for (const result of [parseTorqueRange(text), parseLengthRange(text)]) {
          if (result.ok) {
            expect(result.value.printed).toBe(text.trim());
            expect(result.value.lower).toBeGreaterThan(0);
            expect(result.value.upper).toBeGreaterThan(result.value.lower);
            expect(result.value.upper).toBeLessThan(1e6);
          } else {
            const place = Number(/^character (\d+) of /u.exec(result.error.where ?? '')?.[1]);
            expect(place).toBeGreaterThanOrEqual(1);
            expect(place).toBeLessThanOrEqual(text.trim().length + 1);
          }
        }
      }),
      { numRuns: 600 },
    );
  });

  it('no torque is ever a length, and no length a torque', () => {
    fc.assert(
      fc.property(likely, (text) => {
        expect(parseTorqueRange(text).ok && parseLengthRange(text).ok).toBe(false);
      }),
      { numRuns: 600 },
    );
  });

  it('messages carry no control or direction characters out of the text', () => {
    for (const text of ['\u001B[2J25-30 Nm', '25-30 Nm\u202E', `25-30 \u0007Nm${'x'.repeat(90)}`]) {
      const result = parseTorqueRange(text);
      expect(result.ok).toBe(false);
      expect(JSON.stringify(result)).not.toMatch(/\\u00(?:07|1b)|\u202E/iu);
    }
  });

  it('a text too long to be a range is refused unread', () => {
    expect(parseTorqueRange(`25-30 ${' '.repeat(300)}Nm`)).toMatchObject({
      ok: false,
      error: { code: 'not-understood' },
    });
  });
});
