import { afterEach, describe, expect, it } from 'vitest';
import { timeOfDay, timeWithOffset } from '../../../src/cli/bench/shop-time.ts';

describe('the time of day in the shop', () => {
  const zone = process.env['TZ'];
  afterEach(() => {
    if (zone === undefined) delete process.env['TZ'];
    else process.env['TZ'] = zone;
  });

  it.each([
    ['UTC', '12:03:12 +00:00'],
    ['Europe/Berlin', '14:03:12 +02:00'],
    ['America/New_York', '08:03:12 -04:00'],
    ['Asia/Kolkata', '17:33:12 +05:30'],
  ])('%s', (name, text) => {
    process.env['TZ'] = name;
    expect(timeWithOffset('2026-07-02T12:03:12.000Z')).toBe(text);
    expect(text.startsWith(timeOfDay('2026-07-02T12:03:12.000Z'))).toBe(true);
  });
});
