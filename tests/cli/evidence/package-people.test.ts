/** What a package holds for people, what it says of its jobs that was learned later, and the file of a claim. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { dispute } from '../../../src/cli/audit/dispute.ts';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { verify } from '../../../src/cli/evidence/verify.ts';
import { papersAgain, voidJob } from '../../../src/cli/station/jobs.ts';
import { checkpoint } from '../../../src/cli/station/log.ts';
import { workIn } from '../../audit/shop.ts';
import { hasPoppler, poppler } from '../../report/poppler.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation, CAR, VAN } from '../audit/audit-station.ts';

const station = auditStation();

describe('what a package says for people', () => {
  let out = '';
  let kept = '';
  beforeEach(async () => {
    out = join(station.data, 'audit');
    kept = join(station.data, 'kept.checkpoint');
    await said(() => checkpoint({ ...station.scope(), out: kept }));
    await workIn(station.data, [{ job: 'J-5', on: '2026-06-02', peaks: [27, 27, 27, 27], vehicle: CAR }]);
  });
  const make = (given: Partial<Parameters<typeof makePackage>[0]> = {}, since: string | null = kept) =>
    said(() => makePackage({ ...station.scope(), out, ...(since !== null && { kept: since }), ...given }));
  const trust = () => join(station.data, 'trusted-keys.json');
  const verified = (given = {}) => said(() => verify(out, { trust: trust(), kept, ...given }));

  it('holds the paper of each job as it was given away, and says which in the index', async () => {
    await said(() => papersAgain('J-1', station.scope()));
    await make();
    const given = readFileSync(join(station.data, 'J-1.pdf'));
    expect(readFileSync(join(out, 'papers', 'J-1.pdf')).equals(given)).toBe(true);
    const { jobs, files } = JSON.parse(readFileSync(join(out, 'index.json'), 'utf8'));
    expect(jobs[0]).toEqual({
      job: 'J-1',
      record: 'records/J-1.record.json',
      paper: 'papers/J-1.pdf',
      impacts: [],
    });
    const listed = files.find(({ path }: { path: string }) => path === 'papers/J-1.pdf');
    expect(listed.sha256).toBe(createHash('sha256').update(given).digest('hex'));
  });

  it('goes without papers where they are not wanted', async () => {
    const { text: made } = await make({ papers: false });
    expect(made).toContain('4 records, no papers');
    expect(readdirSync(out)).not.toContain('papers');
    expect((await verified()).value).toBe(0);
  });

  it('says at once which jobs a later impact assessment put in question, and holds its papers', async () => {
    await station.impact();
    const { text: made } = await make();
    expect(made).toContain('1 job in it put in question by a later impact assessment');
    expect(readdirSync(join(out, 'impacts'))).toEqual(['IA-1.pdf', 'IA-1.vehicles.csv']);
    expect(readFileSync(join(out, 'READ-ME.txt'), 'utf8')).toMatch(/^impacts\/ /m);
    expect(readFileSync(join(out, 'jobs.csv'), 'utf8')).toContain(
      'impact assessment IA-1 on wrench (EXAMPLE-W-1): OUT, not decided',
    );
    const { value, text } = await verified();
    expect(value).toBe(0);
    expect(text).toContain('Made by a station that you trust. 1 of 4 jobs PUT IN QUESTION later.');
    expect(text).toContain(
      'job J-1 of 2026-02-03: OUT at cylinder 4 by impact assessment IA-1 on wrench (EXAMPLE-W-1), out of tolerance 2026-09-01; NOT DECIDED',
    );
    const { questioned } = JSON.parse((await verified({ json: true })).text);
    expect(questioned).toMatchObject([
      { job: 'J-1', impacts: [{ impact: 'IA-1', worst: 'out', decision: null }] },
    ]);
  });

  it('says what it does not prove', async () => {
    await make({}, null);
    const { text } = await said(() => verify(out, { trust: trust() }));
    expect(text).toContain('NOT proven by this:');
    expect(text).toContain('that no job was left out when it was chosen');
    expect(text).toContain('that no impact assessment came behind the station');
    expect(text).toContain('that nothing was rewritten before it was made');
    expect(text).not.toContain('what papers say that somebody has from elsewhere');
  });
});

describe('the file of a claim', () => {
  let out = '';
  beforeEach(() => {
    out = join(station.data, 'claim');
  });
  const make = (given: Partial<Parameters<typeof dispute>[0]>) =>
    said(() => dispute({ ...station.scope(), claim: 'W-17', out, ...given }));

  it('holds the jobs of the vehicle and a paper, and verifies as a whole', async () => {
    await station.impact();
    const { value, text } = await make({ vin: VAN.vin });
    expect(value).toBe(0);
    expect(text).toContain('2 records');
    expect(text).toContain('Left out: J-4');
    expect(readdirSync(out)).toContain('dispute.pdf');
    expect(readdirSync(join(out, 'papers'))).toEqual(['J-1.pdf', 'J-3.pdf']);
    const trust = join(station.data, 'trusted-keys.json');
    const { value: verdict, text: checks } = await said(() => verify(out, { trust }));
    expect(verdict).toBe(0);
    expect(checks).toContain('Dispute, claim W-17');
    expect(checks).toContain('1 of 2 jobs PUT IN QUESTION later');
    expect(checks).toContain("the station's own entries here are a choice");
    writeFileSync(join(out, 'dispute.pdf'), 'another');
    expect((await said(() => verify(out, { trust }))).text).toContain('dispute.pdf was changed');
  });

  it('tells of what was used on the vehicle, and of nothing else', async () => {
    await station.impact();
    const { text } = await make({ vin: CAR.vin });
    expect(text).toContain('IA-1 names 1 job on other vehicles');
    const { entries } = JSON.parse(readFileSync(join(out, 'station-entries.json'), 'utf8'));
    const types = new Set(entries.map(({ event }: { event: { type: string } }) => event.type));
    expect(types).toEqual(
      new Set([
        'station-set-up',
        'instrument-recorded',
        'specification-recorded',
        'as-found-recorded',
        'assessment-made',
      ]),
    );
    expect(readdirSync(out)).not.toContain('impacts');
  });

  it.runIf(hasPoppler)('tells the jobs in the order in which they were opened', async () => {
    await workIn(station.data, [{ job: 'J-7', on: '2026-07-02', peaks: [27, 27, 27, 27], vehicle: VAN }]);
    await said(() => voidJob('J-1', { ...station.scope(), by: 'Foreman One', because: 'wrong vehicle' }));
    await make({ vin: VAN.vin });
    const text = poppler('pdftotext', readFileSync(join(out, 'dispute.pdf')), ['-layout', '{pdf}', '-']);
    expect(text).toMatch(/Jobs +J-1, J-3, J-7/);
    // Under J-1 and under J-3 what came next; all of them stand in the list in front.
    expect(text.match(/Job J-\d was opened on the same vehicle/g)).toEqual([
      'Job J-3 was opened on the same vehicle',
      'Job J-7 was opened on the same vehicle',
    ]);
    expect(text).toMatch(/The jobs on this vehicle.*J-1 .*J-3 .*J-7 /s);
  });

  it.each([
    ['no vehicle', {}, 'vehicle-missing'],
    ['a vehicle that was never here', { vin: 'ZZ9EXAMP0PM000199' }, 'vehicle-unknown'],
    ['no claim', { vin: VAN.vin, claim: '  ' }, 'option-not-valid'],
  ])('refuses %s', async (_, given, code) => {
    expect((await problemOf(() => make(given))).code).toBe(code);
  });

  it('refuses a number that two vehicles had, and names their VINs', async () => {
    await workIn(station.data, [
      { job: 'J-6', on: '2026-07-01', peaks: [27], vehicle: { ...CAR, fleet: 'BUS-12' } },
    ]);
    const { code, message } = await problemOf(() => make({ fleet: 'BUS-12' }));
    expect(code).toBe('vehicle-not-one');
    expect(message).toContain(CAR.vin);
  });
});
