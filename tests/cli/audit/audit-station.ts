import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, beforeEach } from 'vitest';
import { impact } from '../../../src/cli/audit/impact.ts';
import { certificate, type ShopJob, workIn } from '../../audit/shop.ts';
import { said } from '../answers.ts';
import { folder } from '../program.ts';

export const VAN = { vin: 'ZZ9EXAMP1PM000104', plate: 'EXAMPLE 4', fleet: 'BUS-12' };
export const CAR = { vin: 'ZZ9EXAMP9PM000108', plate: 'EXAMPLE 8' };
const JOBS: readonly ShopJob[] = [
  { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 29.2], vehicle: VAN },
  { job: 'J-2', on: '2026-03-11', peaks: [27, 27, 27, 27], vehicle: CAR, technician: 'Technician Two' },
  // One cylinder too low, and the last never done.
  { job: 'J-3', on: '2026-05-20', peaks: [27, 27, 24], vehicle: VAN, behind: (shop) => shop.rest() },
  { job: 'J-4', on: '2026-06-01', peaks: [27], vehicle: { fleet: 'BUS-12' }, closed: false },
];

/** Of a station in this folder, which has no file. */
export const scopeOf = (data: string) => ({ station: 'none.json', data });

/** Its wrench was found to read 1.1 N·m too little. */
export function impactOn(data: string) {
  const file = join(data, 'found.json');
  const asFound = certificate('AF-1', '2026-09-01', { error: -1.1 });
  writeFileSync(file, JSON.stringify({ form: 'plugmark/certificate/1', ...asFound }));
  return said(() => impact('wrench', { ...scopeOf(data), asFound: file, by: 'Quality One' }));
}

/** A station with these four jobs, and what `prepare` does on it, made once; each test has a copy of its own. */
export function auditStation(prepare: (data: string) => Promise<unknown> = () => Promise.resolve()) {
  let model = '';
  beforeAll(async () => {
    model = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
    await workIn(model, JOBS);
    await prepare(model);
    return () => rmSync(model, { recursive: true, force: true });
  });
  const station = {
    data: '',
    scope: () => scopeOf(station.data),
    impact: () => impactOn(station.data),
  };
  beforeEach(() => {
    station.data = join(folder(), 'data');
    cpSync(model, station.data, { recursive: true });
  });
  return station;
}
