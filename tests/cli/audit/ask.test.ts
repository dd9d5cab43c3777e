import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ask } from '../../../src/cli/audit/ask.ts';
import { retention } from '../../../src/cli/audit/retention.ts';
import { kindWords, verdictWords } from '../../../src/report/verdict.ts';
import { workIn } from '../../audit/shop.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation, CAR, VAN } from './audit-station.ts';

const station = auditStation();

describe('a question to the records', () => {
  const asked = async (given: Partial<Parameters<typeof ask>[0]>) =>
    (await said(() => ask({ ...station.scope(), ...given }))).text;
  const jobsIn = (text: string) => [...text.matchAll(/^(J-\d)\s/gm)].map(([, job]) => job);

  it.each([
    ['a VIN, however it is typed', { vin: 'zz9examp1 pm000104' }, ['J-3', 'J-1']],
    ['a plate', { plate: 'example8' }, ['J-2']],
    ['a fleet number', { fleet: 'bus-12' }, ['J-4', 'J-3', 'J-1']],
    ['a part', { part: 'EXAMPLE-14G' }, ['J-4', 'J-3', 'J-2', 'J-1']],
    ['a lot of which nothing was fitted', { lot: 'L-1' }, []],
    ['a technician', { technician: 'Technician Two' }, ['J-2']],
    ['a tool by its serial number', { tool: 'EXAMPLE-W-1' }, ['J-4', 'J-3', 'J-2', 'J-1']],
    [
      'a technician and a tool, as people type them',
      { technician: 'technician-two', tool: 'example w1' },
      ['J-2'],
    ],
    ['a part, as people type it', { part: 'example14g', technician: 'TECHNICIAN TWO' }, ['J-2']],
    ['days', { from: '2026-03-01', to: '2026-05-20' }, ['J-3', 'J-2']],
    ['several things at once', { fleet: 'BUS-12', to: '2026-03-01' }, ['J-1']],
    ['what wants an explanation', { exceptions: true as const }, ['J-4', 'J-3']],
  ])('is answered by %s', async (_, given, expected) => {
    expect(jobsIn(await asked(given))).toEqual(expected);
  });

  it('says what wants an explanation, impact assessments as well', async () => {
    await station.impact();
    const text = await asked({ vin: VAN.vin, exceptions: true });
    expect(text).toMatch(
      /J-3:\n {2}closed with work open\n {2}cylinder 3, pull \d: NOT OK, too low \(24\.0\d N·m\)/,
    );
    expect(text).toContain('J-1:\n  impact assessment IA-1 on wrench (EXAMPLE-W-1): OUT, not decided');
  });

  it('gives attempts, and CSV and JSON of either', async () => {
    const all = JSON.parse(await asked({ vin: CAR.vin, attempts: true, json: true }));
    expect(all.attempts).toHaveLength(8);
    const bad = await asked({ attempts: true, exceptions: true, csv: true });
    expect(bad.trim().split('\r\n').slice(1)).toEqual([expect.stringContaining('NotOK')]);
    const [, row] = (await asked({ plate: 'EXAMPLE 8', csv: true })).trim().split('\r\n');
    expect(row).toContain('J-2,no,complete,no,2026-03-11T09:30:00.000Z');
    expect(JSON.parse(await asked({ plate: 'EXAMPLE 8', json: true }))).toMatchObject({
      jobs: [{ job: 'J-2', proofs: 8, exceptions: [] }],
    });
  });

  it.each([
    ['list.csv', [0xef, 0xbb, 0xbf]],
    ['list.xlsx', [...Buffer.from('PK')]],
    ['list.parquet', [...Buffer.from('PAR1')]],
  ])('goes into %s, of the kind that its name ends with', async (name, start) => {
    const out = join(station.data, name);
    expect(await asked({ attempts: true, out })).toMatch(/^Written: .*, \d+ rows\n$/);
    expect([...readFileSync(out).subarray(0, start.length)]).toEqual(start);
    expect(readFileSync(out).length).toBeGreaterThan(1000);
  });

  it('has the words of the job screen for people, and the names of the record for programs', async () => {
    const bad = { attempts: true as const, exceptions: true as const };
    expect(await asked(bad)).toMatch(/ NOT OK /);
    expect(await asked({})).toMatch(/J-3 +NOT COMPLETE/);
    expect(JSON.parse(await asked({ ...bad, json: true }))).toMatchObject({
      attempts: [{ result: 'NotOK' }],
    });
    const [head = '', row = ''] = (await asked({ attempts: true, csv: true })).split('\r\n');
    expect(row.split(',')[head.split(',').indexOf('Kind')]).toBe('gap');
    expect(kindWords({ kind: 'rehit' })).toBe('re-hit');
    expect(verdictWords({ result: 'NotDecidable', censored: null })).toBe('UNDECIDED');
    expect(verdictWords({ result: null, censored: 'undecided' })).toBe('not answered');
  });

  it('is no fault where nothing matches', async () => {
    const { value, text } = await said(() => ask({ ...station.scope(), lot: 'L-1' }));
    expect([value, text]).toEqual([0, 'No job matches.\n']);
  });

  it('marks jobs and attempts of which nothing is proven', async () => {
    const peaks = [27, 27, 27, 27];
    await workIn(station.data, [{ job: 'J-5', on: '2026-06-02', peaks, source: 'replayed' }]);
    expect(await asked({ from: '2026-06-02' })).toMatch(/^J-5 +complete, REPLAYED /m);
    const attempts = (await asked({ from: '2026-06-02', attempts: true })).split('\n').slice(1, 9);
    for (const line of attempts) expect(line).toContain('OK, REPLAYED');
    expect(await asked({ to: '2026-06-01' })).not.toContain('REPLAYED');
  });

  it('gives JSON that moves no cursor and turns no line', async () => {
    const plate = 'A\u009b2J\u202eB';
    await workIn(station.data, [{ job: 'J-5', on: '2026-06-02', peaks: [27], vehicle: { plate } }]);
    const text = await asked({ json: true });
    expect(text).not.toMatch(/[\u0080-\u009f\u202e]/);
    expect(text).toContain('A\\u009b2J\\u202eB');
    expect(JSON.parse(text).jobs[0].plate).toBe(plate);
  });

  it.each([
    ['a day that is none', { from: '3 March' }],
    ['days in the wrong order', { from: '2026-03-02', to: '2026-03-01' }],
    ['two forms at once', { csv: true as const, json: true as const }],
    ['two places at once', { csv: true as const, out: 'list.csv' }],
    ['a file of no kind', { out: 'list.txt' }],
  ])('refuses %s', async (_, given) => {
    expect((await problemOf(() => asked(given))).code).toBe('option-not-valid');
  });
});

describe('the retention report', () => {
  it('counts by year what must be kept, what is held and what need not be kept', async () => {
    await station.impact();
    const { text } = await said(() => retention({ ...station.scope(), years: 100, json: true }));
    const { jobs } = JSON.parse(text);
    expect(jobs).toMatchObject([
      { job: 'J-4', until: '2126-06-01', standing: 'must' },
      { job: 'J-3' },
      { job: 'J-2' },
      { job: 'J-1', because: 'impact assessment IA-1 is not closed' },
    ]);
    expect((await said(() => retention({ ...station.scope(), years: 7 }))).text).toMatch(
      /^2026 +4 +4 +0 +0$/m,
    );
  });

  it('says so where nobody named a time, and names no law of its own', async () => {
    const { code, next } = await problemOf(() => retention(station.scope()));
    expect(code).toBe('retention-unknown');
    expect(next).toContain('law and contracts');
    expect((await problemOf(() => retention({ ...station.scope(), years: 0 }))).code).toBe(
      'retention-unknown',
    );
  });
});
