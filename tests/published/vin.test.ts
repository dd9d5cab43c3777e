import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkDigit, normalVin, vinFault } from '../../src/job/vin.ts';

/** Vehicle identification numbers with their check digit at position 9, and where each is printed. */
const PRINTED: readonly (readonly [vin: string, digit: string, source: string])[] = [
  ['1G4AH59H45G118341', '4', '49 CFR 565.15(c), worked sample'],
  ['1J9RP1A36A1644345', '6', 'NHTSA outline for new manufacturers, citing 565.15(c)(4) table V'],
  ['1M8GDM9AXKP042788', 'X', 'the usual worked example of remainder 10'],
  ['1FACP45EXLF192944', 'X', 'a second one of remainder 10'],
  ['WDBEA30D3HA391172', '3', 'example of the R package vindecodr'],
  ['11111111111111111', '1', 'all ones: the sum of the weights is 89, and 89 mod 11 is 1'],
];

describe('check digits of published VINs (49 CFR 565.15(c))', () => {
  it.each(PRINTED)('%s has %s (%s)', (vin, digit) => {
    expect(vin.charAt(8)).toBe(digit);
    expect(checkDigit(vin)).toBe(digit);
    expect(vinFault(vin)).toBeNull();
  });

  it.each(PRINTED)('%s is found wrong with any other character at position 9', (vin, digit) => {
    for (const other of [...'0123456789X'].filter((one) => one !== digit))
      expect(vinFault(`${vin.slice(0, 8)}${other}${vin.slice(9)}`)?.problem.code).toBe('vin-check-digit');
  });

  it('shows every single digit typed wrong, because no weight but that of the check digit shares a factor with 11', () => {
    const place = fc.integer({ min: 0, max: 16 }).filter((at) => at !== 8);
    const vin = fc.constantFrom(...PRINTED.map(([one]) => one));
    fc.assert(
      fc.property(vin, place, fc.constantFrom(...'0123456789'), (good, at, digit) => {
        fc.pre(/\d/.test(good.charAt(at)) && good.charAt(at) !== digit);
        expect(checkDigit(good.slice(0, at) + digit + good.slice(at + 1))).not.toBe(good.charAt(8));
      }),
    );
  });
});

describe('how a VIN is read', () => {
  it('takes small letters, spaces and hyphens as people type them', () => {
    expect(normalVin(' 1m8g-dm9a xkp0 42788')).toBe('1M8GDM9AXKP042788');
    expect(vinFault('1m8gdm9axkp042788')).toBeNull();
  });

  it.each([
    ['I', '1'],
    ['O', '0'],
    ['Q', '0 or 9'],
  ])('has no %s, and says that it may be %s', (letter, instead) => {
    const fault = vinFault(`1M8GDM9AXKP04278${letter}`);
    expect(fault).toMatchObject({ illegal: true, problem: { code: 'vin-character', where: 'vehicle.vin' } });
    expect(fault?.problem.message).toContain(`it may be ${instead}`);
    expect(vinFault(`WDBEA30D3HA39117${letter}`)).toMatchObject({ illegal: false });
  });

  it('a wrong check digit rules out a vehicle of North America, and is only doubtful elsewhere', () => {
    for (const first of '12345')
      expect(
        vinFault(`${first}M8GDM9A?KP042788`.replace('?', wrongFor(`${first}M8GDM9A0KP042788`))),
      ).toMatchObject({ illegal: true, problem: { code: 'vin-check-digit' } });
    expect(vinFault('WDBEA30D4HA391172')).toMatchObject({ illegal: false });
  });

  it('a number of another length is doubtful and never ruled out: old vehicles have shorter ones', () => {
    expect(vinFault('1M8GDM9AXKP04278')).toMatchObject({ illegal: false, problem: { code: 'vin-length' } });
    expect(checkDigit('1M8GDM9AXKP04278')).toBeNull();
  });

  it('finds nothing wrong with a number exactly when it can work out a digit and that digit is there', () => {
    const letters = fc.constantFrom(...'0123456789ABCDEFGHJKLMNPRSTUVWXYZ');
    const numbers = fc
      .string({ unit: letters, minLength: 17, maxLength: 17 })
      .map((vin) => vin.slice(0, 8) + checkDigit(vin) + vin.slice(9));
    fc.assert(fc.property(numbers, (vin) => vinFault(vin) === null));
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 20 }), (text) => {
        const due = checkDigit(normalVin(text));
        expect(vinFault(text) === null).toBe(due !== null && due === normalVin(text).charAt(8));
      }),
    );
  });
});

const wrongFor = (vin: string) => (checkDigit(vin) === '1' ? '2' : '1');
