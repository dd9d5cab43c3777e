import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, beforeEach } from 'vitest';
import { impact } from '../../../src/cli/audit/impact.ts';
import { closeImpact, decideImpact } from '../../../src/cli/audit/impact-decisions.ts';
import { openStationFolder } from '../../../src/cli/station/station.ts';
import type { Certificate } from '../../../src/instrument/certificate.ts';
import { certificate, type ShopJob, workIn, wrenchWith } from '../../audit/shop.ts';
import { said } from '../answers.ts';
import { folder } from '../program.ts';

export const VAN = { vin: 'ZZ9EXAMP1PM000104', plate: 'EXAMPLE 4', fleet: 'BUS-12' };
const JOBS: readonly ShopJob[] = [
  { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 29.2], vehicle: VAN },
  { job: 'J-2', on: '2026-03-11', peaks: [27, 27, 27, 27], vehicle: { plate: '=1+1' } },
  // Under the certificate of the calibration at which the errors were found: nothing of it is in question.
  {
    job: 'J-3',
    on: '2026-09-04',
    peaks: [29.2, 27, 27, 27],
    vehicle: { plate: 'EXAMPLE 3' },
    wrench: wrenchWith(certificate('CAL-2', '2026-09-01')),
  },
];

/** A file of what was found: reading 1.1 N·m too little throughout, unless told. */
export function found(given: Partial<Certificate> = {}, error = -1.1): string {
  const file = join(folder(), 'found.json');
  const asFound = { ...certificate('AF-1', '2026-09-01', { error }), ...given };
  writeFileSync(file, JSON.stringify({ form: 'plugmark/certificate/1', ...asFound }));
  return file;
}

/** A station whose wrench is out of tolerance, made once for a file of tests; each test has a copy of its own. */
export function impactStation() {
  let model = '';
  beforeAll(async () => {
    model = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
    await workIn(model, JOBS);
    return () => rmSync(model, { recursive: true, force: true });
  });
  const station = {
    data: '',
    scope: () => ({ station: 'none.json', data: station.data }),
    assess: (asFound: string, given = {}) => {
      const options = { ...station.scope(), asFound, by: 'Quality One', out: join(station.data, 'out') };
      return said(() => impact('wrench', { ...options, ...given }));
    },
    decide: (jobs: readonly string[], as: string, given = {}) => {
      const options = { ...station.scope(), as, because: 'plug too tight', by: 'Foreman One' };
      return said(() => decideImpact('IA-1', jobs, { ...options, ...given }));
    },
    close: () =>
      said(() => closeImpact('IA-1', { ...station.scope(), because: 'all seen to', by: 'Quality One' })),
    eventsIn: async () => {
      const { log } = await openStationFolder(station.data);
      const events = log.stationEntries().map(({ event, by }) => ({ ...event, by }));
      const jobs = log.streams().flatMap((stream) => log.entries(stream));
      const fault = log.check();
      log.close();
      return { events, jobs, fault };
    },
  };
  beforeEach(() => {
    station.data = join(folder(), 'data');
    cpSync(model, station.data, { recursive: true });
  });
  return station;
}
