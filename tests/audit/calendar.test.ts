import { describe, expect, it } from 'vitest';
import { type CalendarSettings, calendar } from '../../src/audit/calendar.ts';
import { icalendar } from '../../src/audit/calendar-ics.ts';
import type { Certificate } from '../../src/instrument/certificate.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { certificate, wrenchWith } from './shop.ts';

const settings: CalendarSettings = { today: '2026-05-04', soonDays: 30, staircase: null };
const wrench = (given: Partial<Instrument> = {}): Instrument => ({
  ...wrenchWith(certificate('CAL-1', '2026-01-04')),
  ...given,
});
const used = (instrument: Instrument, cycles = 0, asFound: Certificate | null = null) => ({
  instrument,
  cycles,
  lastUsed: null,
  firstUsed: null,
  asFound,
});
const [one] = calendar([used(wrench({ interval: { months: 12 } }), 10)], settings);

describe('the calibration calendar', () => {
  it('counts months from the certificate, and takes the earlier of interval and stated day', () => {
    expect(one).toMatchObject({ due: '2027-01-04', dueByCycles: null, state: 'in-date', cycles: 10 });
    const stated = wrench({
      interval: { months: 12 },
      certificate: { ...certificate('CAL-1', '2026-01-04'), due: '2026-05-20' },
    });
    expect(calendar([used(stated)], settings)[0]).toMatchObject({ due: '2026-05-20', state: 'soon' });
    const passed = { ...settings, today: '2026-05-20' };
    expect(calendar([used(stated)], passed)[0]).toMatchObject({ state: 'due' });
  });

  it('foresees by the use so far when the cycles run out', () => {
    // 120 days since the calibration, 5 a day: 400 more last 80 days.
    const line = calendar([used(wrench({ interval: { months: 12, cycles: 1000 } }), 600)], settings)[0];
    expect(line).toMatchObject({
      cycles: 600,
      cycleLimit: 1000,
      dueByCycles: '2026-07-23',
      due: '2026-07-23',
    });
    const out = calendar([used(wrench({ interval: { months: 12, cycles: 1000 } }), 1000)], settings)[0];
    expect(out).toMatchObject({ due: '2026-05-04', state: 'due' });
  });

  it("believes the tool's own counter where it has counted more", () => {
    const line = calendar(
      [used(wrench({ cyclesUsed: 700, interval: { months: 12, cycles: 1000 } }), 600)],
      settings,
    )[0];
    expect(line?.cycles).toBe(700);
  });

  it('puts what is due first in front, and what has no day behind', () => {
    const lines = calendar(
      [
        used(wrenchWith(null)),
        used(wrench({ serial: 'B', interval: { months: 24 } })),
        used(wrench({ serial: 'A', interval: { months: 6 } })),
      ],
      settings,
    );
    expect(lines.map(({ serial, state }) => [serial, state])).toEqual([
      ['A', 'in-date'],
      ['B', 'in-date'],
      ['EXAMPLE-W-1', 'no-certificate'],
    ]);
  });

  it('reminds of a tool on its data sheet: by its interval from the first use, else by the usual year', () => {
    const onSheet = (given: Partial<Instrument>, firstUsed: string) =>
      calendar([{ ...used({ ...wrenchWith(null), ...given }), firstUsed }], settings)[0];
    expect(onSheet({}, '2026-01-10')).toMatchObject({
      due: '2027-01-10',
      state: 'data-sheet',
      onDataSheetSince: '2026-01-10',
      byUsualMonths: true,
    });
    expect(onSheet({ interval: { months: 6 } }, '2025-12-01')).toMatchObject({
      due: '2026-06-01',
      state: 'soon',
      byUsualMonths: false,
    });
    expect(onSheet({}, '2025-05-01')).toMatchObject({ due: '2026-05-01', state: 'due' });
    // 100 days since the first use, 4 a day: 40 more last 10 days.
    expect(
      calendar(
        [
          {
            ...used({ ...wrenchWith(null), interval: { months: 12, cycles: 440 } }, 400),
            firstUsed: '2026-01-24',
          },
        ],
        settings,
      )[0],
    ).toMatchObject({ dueByCycles: '2026-05-14', due: '2026-05-14' });
  });

  it('takes the usual year where a certificate names no day, and says so', () => {
    expect(calendar([used(wrench())], settings)[0]).toMatchObject({
      due: '2027-01-04',
      state: 'in-date',
      byUsualMonths: true,
    });
  });

  it('lengthens or shortens the interval by what was found, where that is asked for', () => {
    const found = (error: number) =>
      calendar(
        [
          used(
            wrench({
              permissibleDeviation: { kind: 'absolute', amount: 1 },
              certificate: { ...certificate('CAL-1', '2026-01-04', { error }), due: '2026-07-03' },
            }),
          ),
        ],
        { ...settings, staircase: { shortestDays: 30, longestDays: 365 } },
      )[0]?.next;
    expect(found(0.1)).toMatchObject({ days: 225, step: 'longer' });
    expect(found(0.9)).toMatchObject({ days: 180, step: 'kept' });
    expect(found(1.2)).toMatchObject({ days: 90, step: 'shorter' });
  });
});

describe('the calendar as iCalendar (RFC 5545)', () => {
  const hostile = { ...one, tool: 'a;b,c\\d', serial: `line\nbreak ${'ü'.repeat(60)}` } as NonNullable<
    typeof one
  >;
  const text = icalendar([hostile], 'bay 1', '2026-05-04T09:30:00.123Z');
  const unfolded = text.replace(/\r\n /g, '').split('\r\n');

  it('ends each line with CR and LF, and none is longer than 75 octets or cut inside a character', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replace(/\r\n/g, '')).not.toMatch(/[\r\n]/);
    for (const line of text.split('\r\n')) {
      expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75);
      expect(line).not.toContain('\uFFFD');
    }
  });

  it('says which pulls its cycles are', () => {
    const said = unfolded.find((line) => line.startsWith('DESCRIPTION:Certificate'));
    expect(said).toContain('10 cycles since.\\nCycles: gap readings or pulls on a plug');
    expect(said).toContain('Pulls on no plug do not count');
  });

  it('escapes what has a meaning in a text', () => {
    expect(unfolded).toContain(`SUMMARY:Calibrate a\\;b\\,c\\\\d line\\nbreak ${'ü'.repeat(60)}`);
  });

  it('holds one all-day event for each tool that has a day, with an alarm', () => {
    expect(unfolded).toContain('DTSTART;VALUE=DATE:20270104');
    expect(unfolded).toContain('DTSTAMP:20260504T093000Z');
    expect(unfolded).toContain('TRIGGER:-P14D');
    expect(unfolded.filter((line) => line === 'BEGIN:VEVENT')).toHaveLength(1);
    const none = icalendar([{ ...hostile, due: null }], 'bay 1', '2026-05-04T09:30:00.123Z');
    expect(none).not.toContain('VEVENT');
  });

  it('sounds an hour after it was written where fourteen days ahead is over', () => {
    const at = '2026-05-04T09:30:00.123Z';
    for (const due of ['2026-05-04', '2026-05-18', '2026-04-01'])
      expect(icalendar([{ ...hostile, due }], 'bay 1', at)).toContain(
        'TRIGGER;VALUE=DATE-TIME:20260504T103000Z\r\n',
      );
    expect(icalendar([{ ...hostile, due: '2026-05-19' }], 'bay 1', at)).toContain('TRIGGER:-P14D\r\n');
  });

  it('puts what is overdue on today, and says since when', () => {
    const late = icalendar([{ ...hostile, due: '2026-04-01' }], 'bay 1', '2026-05-04T09:30:00.123Z');
    expect(late).toContain('DTSTART;VALUE=DATE:20260504');
    expect(late).toContain('SUMMARY:OVERDUE: calibrate');
    expect(late.replace(/\r\n /g, '')).toContain('Overdue since 2026-04-01.');
  });

  it('gives an instrument the same name with every export, and another one another', () => {
    const uid = (station: string) =>
      /UID:(.*)\r\n/.exec(icalendar([hostile], station, '2026-05-04T09:30:00.123Z'))?.[1];
    expect(uid('bay 1')).toBe(uid('bay 1'));
    expect(uid('bay 1')).not.toBe(uid('bay 2'));
  });
});
