import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { flattened, helpTail, treeOf } from '../../../src/cli/help/command-tree.ts';
import { OUTPUTS } from '../../../src/cli/help/outputs.ts';
import { schemaOf } from '../../../src/cli/help/schema.ts';
import { buildProgram, main } from '../../../src/cli/main.ts';
import { openStationFolder } from '../../../src/cli/station/station.ts';
import { certificate, workIn } from '../../audit/shop.ts';
import { finishedStudy } from '../../audit/study-entries.ts';
import { said, typed } from '../answers.ts';
import { example, exampleJson } from '../program.ts';

const nodes = flattened(treeOf(buildProgram(() => () => Promise.resolve())));
const answering = nodes.filter(({ options }) => options.some(({ long }) => long === '--json'));
const nameOf = ({ path }: { readonly path: readonly string[] }) => path.join('-');

/** A station with jobs, an impact assessment, a gauge study, a specification, a kept certificate and a package. */
let station = '';
beforeAll(async () => {
  station = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
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
  return () => rmSync(station, { recursive: true, force: true });
}, 120_000);

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
const TYPED: Readonly<Record<string, readonly (readonly string[])[]>> = {
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

const calls = answering.flatMap((node) =>
  (TYPED[nameOf(node)] ?? [[]]).map((args) => [[...node.path, ...args].join(' '), node, args] as const),
);

describe('answers as JSON', () => {
  it('each has a form, and each form a command', () => {
    expect(answering.map(nameOf).sort()).toEqual(Object.keys(OUTPUTS).sort());
  });

  it.each(Object.keys(OUTPUTS))('the form of %s can be printed as a JSON Schema', async (name) => {
    const { value, text } = await said(() => main(['node', 'plugmark', 'schema', name]));
    expect(value).toBe(0);
    expect(JSON.parse(text)).toMatchObject({ title: `plugmark ${name}` });
  });

  it.each(calls)('%s answers in its form and says nothing else', async (_line, node, args) => {
    const ended = await typed([...node.path, ...args, '--json'], { cwd: station });
    const name = nameOf(node);
    if (name === 'devices-scan' && ended.code === 2) {
      // A machine without Bluetooth: the problem goes to the error output, and nothing to the answer.
      expect(ended.stdout).toBe('');
      return expect(ended.stderr.trim().split('\n')).toHaveLength(2);
    }
    expect(ended.stdout, ended.stderr).not.toBe('');
    const value: unknown = JSON.parse(ended.stdout);
    const schema = Object.entries(OUTPUTS).find(([one]) => one === name)?.[1];
    expect(schema?.safeParse(value).error?.issues ?? []).toEqual([]);
    expect(value).toMatchObject({ form: `plugmark/${name}/1` });
    expect(helpTail(node), 'the exit code is in the help').toMatch(new RegExp(`^  ${ended.code} `, 'm'));
  });

  it('a problem leaves the answer empty', async () => {
    const ended = await typed(['jobs', 'show', 'J-404', '--json'], { cwd: station });
    expect(ended).toMatchObject({ code: 2, stdout: '' });
    expect(ended.stderr).toContain('J-404');
  });

  it('figures are those of the record, in the unit that is named', async () => {
    const shown = await typed(['jobs', 'show', 'J-1', '--json'], { cwd: station });
    const { cylinders } = JSON.parse(shown.stdout);
    expect(cylinders).toHaveLength(4);
    expect(cylinders[3].torque).toMatchObject({ step: 'done', pulls: 1, last: { result: 'OK' } });
    const asked = await typed(['ask', '--attempts', '--json'], { cwd: station });
    const pull = JSON.parse(asked.stdout).attempts.find(
      (one: { job: string; cylinder: number; unit: string }) =>
        one.job === 'J-1' && one.cylinder === cylinders[3].cylinder && one.unit === 'N.m',
    );
    expect(pull.value).toBe(cylinders[3].torque.peakNm);
    expect(pull.value).toBeGreaterThan(29);
  });

  it('a schema refuses what is not the answer', () => {
    expect(
      OUTPUTS['jobs-list'].safeParse({ form: 'plugmark/jobs-list/1', jobs: [{ job: 'J-1' }] }).success,
    ).toBe(false);
    expect(JSON.stringify(schemaOf('calendar'))).toContain('"additionalProperties":false');
  });

  it('what a command writes is written with --json as well', () => {
    for (const file of ['copy.db', 'saved.db']) expect(existsSync(join(station, file)), file).toBe(true);
  });
});
