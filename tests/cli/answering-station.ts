import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import { openStationFolder } from '../../src/cli/station/station.ts';
import { certificate, workIn } from '../audit/shop.ts';
import { finishedStudy } from '../audit/study-entries.ts';
import { typed } from './answers.ts';
import { example, exampleJson } from './program.ts';

/** A station with jobs, an impact assessment, a gauge study, a specification, a kept certificate and a package. */
export async function answeringStation(): Promise<string> {
  const station = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  const vehicle = { vin: 'ZZ9EXAMP1PM000104', plate: 'EXAMPLE 4', fleet: 'BUS-12' };
  await workIn(join(station, 'data'), [
    { job: 'J-1', on: '2026-02-03', peaks: [27, 27, 27, 29.2], vehicle },
    { job: 'J-2', on: '2026-03-11', peaks: [27, 27, 27, 27], vehicle },
    { job: 'J-3', on: '2026-06-01', peaks: [27], vehicle, closed: false },
  ]);
  const { tools, ...file } = exampleJson('station.json');
  writeFileSync(
    join(station, 'station.json'),
    JSON.stringify({
      ...file,
      data: 'data',
      retention: { years: 7 },
      tools: tools.map(({ certificate: _certificate, ...tool }: { certificate?: string }) => tool),
    }),
  );
  cpSync(example('profile-wrench.json'), join(station, 'profile.json'));
  cpSync(example('order-4.json'), join(station, 'order.json'));
  writeFileSync(join(station, 'pull.csv'), trace());
  const found = { form: 'plugmark/certificate/1', ...certificate('AF-1', '2026-09-01', { error: -1.1 }) };
  writeFileSync(join(station, 'found.json'), JSON.stringify(found));
  const older = { form: 'plugmark/certificate/1', ...certificate('CAL-0', '2025-01-10', { error: 0.1 }) };
  writeFileSync(join(station, 'older.json'), JSON.stringify(older));
  const { log } = await openStationFolder(join(station, 'data'));
  log.appendStation([{ by: 'station', event: finishedStudy(READINGS) }], {
    at: '2026-07-01T08:00:00.000Z',
    monoUs: 0,
  });
  log.close();
  for (const args of [
    ['witness', 'init', '--name', 'witness.example/one'],
    ['impact', 'wrench', '--as-found', 'found.json', '--by', 'Quality One'],
    ['specifications', 'add', '--order', 'order.json', '--name', 'Example four'],
    ['certificates', 'keep', 'older.json'],
    ['jobs', 'papers', 'J-1', '--out', 'records'],
    ['package', '--out', 'audit'],
  ]) {
    const ended = await typed(args, { cwd: station });
    expect(ended.code, `${args.join(' ')}\n${ended.stderr}`).toBeLessThan(2);
  }
  // Nobody answers there.
  const keys = readFileSync(join(station, 'plugmark-witness', 'verifier-keys.txt'), 'utf8')
    .trim()
    .split('\n');
  const own = JSON.parse(readFileSync(join(station, 'station.json'), 'utf8'));
  const witnesses = [{ url: 'http://127.0.0.1:9', keys }];
  writeFileSync(join(station, 'witnessed.json'), JSON.stringify({ ...own, witnesses }));
  return station;
}

/** By appraiser, part and trial, in mm. */
const READINGS = [
  [
    [0.7, 0.702],
    [0.75, 0.751],
    [0.8, 0.803],
  ],
  [
    [0.701, 0.703],
    [0.752, 0.753],
    [0.802, 0.804],
  ],
];

/** A pull up to 27 N·m with its click. */
function trace(): string {
  const torqueAt = (i: number) => (i < 100 ? 0 : i < 200 ? (27 * (i - 100)) / 100 : i < 210 ? 18 : 0);
  const rows = Array.from({ length: 400 }, (_, i) => `${(i / 100).toFixed(2)},${torqueAt(i).toFixed(2)}`);
  return `time_s,torque_Nm\n${rows.join('\n')}\n`;
}

/** What is typed behind the command; several where it answers in several ways. */
export const TYPED: Readonly<Record<string, readonly (readonly string[])[]>> = {
  ask: [[], ['--attempts']],
  backup: [['copy.db']],
  'devices-scan': [['--seconds', '0']],
  drift: [['EXAMPLE-W-1']],
  'driver-check': [['profile.json', '--bytes', 'a501000000640064ff9c8000']],
  'gauge-study-show': [['GS-1']],
  'impact-show': [['IA-1']],
  'log-witness': [['--station', 'witnessed.json']],
  'jobs-show': [['J-1'], ['J-3']],
  pulls: [['pull.csv']],
  recover: [['--out', 'saved.db']],
  'specifications-show': [['Example four']],
  verify: [['records/J-1.record.json'], ['records'], ['audit', '--trust', 'data/trusted-keys.json']],
  window: [['25-30 N·m', '--permissible', '2', '--spread', '0.5']],
};
