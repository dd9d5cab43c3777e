import { describe, expect, it } from 'vitest';
import { type Certificates, certificatesOf, periodsOf } from '../../src/audit/calibrations.ts';
import type { StationEvent } from '../../src/evidence/station-event.ts';
import { stationEntry } from '../evidence/entries.ts';
import { certificate, wrenchWith } from './shop.ts';

const entry = (event: StationEvent, i: number) =>
  stationEntry(event, { seq: i + 1, at: '2026-01-12T09:30:00.000Z' });
const recorded = (checked: ReturnType<typeof certificate>): StationEvent => ({
  type: 'instrument-recorded',
  instrument: { ...wrenchWith(checked), serial: checked.serial },
});
const found = (asFound: ReturnType<typeof certificate>): StationEvent => ({
  type: 'as-found-recorded',
  tool: 'wrench',
  asFound,
  digest: 'a'.repeat(64),
});
const told = (given: Partial<Certificates>) =>
  periodsOf({ issued: [], asFound: [], ...given }).map((period) =>
    period.map((check) => `${check.certificate.number} ${check.role}`),
  );

const CAL1 = certificate('CAL-1', '2024-01-12');
const CAL2 = certificate('CAL-2', '2025-01-12', { error: 0.3 });
const CAL3 = certificate('CAL-3', '2026-01-12', { error: 0.05 });
const FOUND = certificate('CAL-3', '2026-01-12', { error: 0.6 });

describe('the certificates of a tool', () => {
  it('are those of its serial number, from jobs and impact assessments, and a corrected one takes the place of the wrong one', () => {
    const wrong = certificate('CAL-1', '2024-01-12', { error: 9 });
    const other = certificate('CAL-9', '2024-01-12', { serial: 'EXAMPLE-W-9' });
    const entries = [recorded(wrong), recorded(other), recorded(CAL1), found(FOUND)].map(entry);
    expect(certificatesOf(entries, 'EXAMPLE-W-1', [CAL2, other])).toEqual({
      issued: [CAL1, CAL2],
      asFound: [FOUND],
    });
  });
});

describe('the periods between adjustments', () => {
  it('are told apart by day, number and laboratory, because some laboratories give every one the same number', () => {
    const [here, there] = [
      { ...certificate('1', '2025-01-12'), laboratory: 'Laboratory A' },
      { ...certificate('1', '2025-01-12', { error: 0.7 }), laboratory: 'Laboratory B' },
    ];
    const { issued } = certificatesOf(
      [here, there].map((one, i) => entry(recorded(one), i)),
      here.serial,
      [],
    );
    expect(issued).toEqual([here, there]);
  });

  it('end with what was found, and begin with what the tool left with', () => {
    expect(told({ issued: [CAL3, CAL1, CAL2], asFound: [FOUND] })).toEqual([
      ['CAL-1 first', 'CAL-2 not-stated', 'CAL-3 as-found'],
      ['CAL-3 as-left'],
    ]);
  });

  it('go on where it was found and left with the same figures', () => {
    const same = { ...CAL2, number: 'CAL-2, as found' };
    expect(told({ issued: [CAL1, CAL2, CAL3], asFound: [same] })).toEqual([
      ['CAL-1 first', 'CAL-2 not-adjusted', 'CAL-3 not-stated'],
    ]);
  });

  it('go on over a check that no certificate followed', () => {
    expect(told({ issued: [CAL1], asFound: [CAL2, FOUND] })).toEqual([
      ['CAL-1 first', 'CAL-2 as-found', 'CAL-3 as-found'],
    ]);
  });

  it('may begin with what was found, and are none without a certificate', () => {
    expect(told({ issued: [CAL3], asFound: [FOUND] })).toEqual([['CAL-3 as-found'], ['CAL-3 as-left']]);
    expect(told({})).toEqual([]);
  });
});
