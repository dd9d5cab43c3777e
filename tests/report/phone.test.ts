import { describe, expect, test } from 'vitest';
import { hasPhoneNumber, withoutPhoneNumbers } from '../../src/personal.ts';

describe('a telephone number in free text', () => {
  test.each([
    '+49 171 555 0199',
    '0171-5550199',
    '(030) 555 01 99',
    'call 555-123-4567 first',
    '0171/5550199, asks for Bob',
    '+1 (555) 123-4567',
  ])('is seen: %s', (text) => {
    expect(hasPhoneNumber(text)).toBe(true);
    expect(withoutPhoneNumbers(text)).toContain('(telephone number withheld)');
    expect(withoutPhoneNumbers(text)).not.toMatch(/\d{4}/);
  });

  test.each([
    '25-30 N·m, 0.7-0.8 mm',
    '2026-03-02 10:15',
    'VIN 1M8GDM9AXKP042788',
    'part 0242236543X',
    'odometer 148210 km',
    'torque 0.000123 of 1000000',
    'certificate C-2026-0118',
    '',
  ])('is not taken from what is none: %s', (text) => {
    expect(withoutPhoneNumbers(text)).toBe(text);
  });
});
