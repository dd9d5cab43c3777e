/** Evidence given away without some of its personal texts: the same signatures and verdicts, and what is withheld is said. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { dispute } from '../../../src/cli/audit/dispute.ts';
import { paper } from '../../../src/cli/bench/paper.ts';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { share } from '../../../src/cli/evidence/share.ts';
import { verify } from '../../../src/cli/evidence/verify.ts';
import { papersAgain } from '../../../src/cli/station/jobs.ts';
import { hasPoppler, poppler } from '../../report/poppler.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation, CAR, VAN } from '../audit/audit-station.ts';
import { folder } from '../program.ts';

const station = auditStation();
const at = (name: string) => join(station.data, name);
const trust = () => at('trusted-keys.json');
const text = (path: string) => readFileSync(path, 'utf8');
/** A file as everything that could be read out of it. */
const opened = (path: string) => {
  const raw = text(path);
  const parts = raw.match(/[A-Za-z0-9_-]{20,}/g) ?? [];
  return raw + parts.map((part) => Buffer.from(part, 'base64url').toString('utf8')).join('\n');
};

describe('a record that is shared', () => {
  const record = () => at('J-2.record.json');
  const out = () => at('out.record.json');
  const shared = (without: string) => said(() => share(record(), { without, out: out() }));
  const verified = (path: string) => said(() => verify(path, { trust: trust() }));
  const asJson = async (path: string) =>
    JSON.parse((await said(() => verify(path, { trust: trust(), json: true }))).text);
  beforeEach(async () => {
    await said(() => papersAgain('J-2', station.scope()));
  });

  it('has the same content under the same signatures, and the same verdict', async () => {
    const { text: told } = await shared('plate,vin');
    expect(told).toContain('the same record, under the same signatures');
    expect(told).toContain('Withheld: plate (1), vin (1).');
    const [before, after] = [JSON.parse(text(record())), JSON.parse(text(out()))];
    expect(after.payload).toBe(before.payload);
    expect(after.signatures.map(({ header: _, ...rest }: { header?: unknown }) => rest)).toEqual(
      before.signatures.map(({ header: _, ...rest }: { header?: unknown }) => rest),
    );
    const whole = await verified(record());
    const bare = await verified(out());
    expect(bare.value).toBe(whole.value);
    const withheld =
      '  Withheld: plate (1), vin (1). What is signed holds digests of these texts; no check needs them.\n';
    const words = bare.text.replaceAll('out.record.json', 'J-2.record.json');
    expect(words).toContain(withheld);
    expect(words.replace(withheld, '')).toBe(whole.text);
  });

  it('holds none of the texts that were withheld, and all others', async () => {
    await shared('plate,vin');
    for (const gone of [CAR.plate, CAR.vin]) {
      expect(opened(record())).toContain(gone);
      expect(opened(out())).not.toContain(gone);
    }
    expect(opened(out())).toContain('Technician Two');
    await said(() => share(record(), { without: 'all', out: at('none.record.json') }));
    for (const gone of [CAR.plate, CAR.vin, 'Technician Two'])
      expect(opened(at('none.record.json'))).not.toContain(gone);
    expect((await verified(at('none.record.json'))).value).toBe(0);
  });

  it('says in its JSON what is withheld, and nothing where nothing is', async () => {
    expect((await asJson(record())).withheld).toEqual([]);
    await shared('all');
    const { withheld, verdict } = await asJson(out());
    expect(verdict).toBe('authentic');
    expect(withheld).toEqual([
      { kind: 'plate', count: 1 },
      { kind: 'vin', count: 1 },
      { kind: 'person', count: expect.any(Number) },
    ]);
  });

  it('can be shared on with less, and is refused to be written over', async () => {
    await shared('plate');
    await said(() => share(out(), { without: 'person', out: at('less.record.json') }));
    expect((await asJson(at('less.record.json'))).withheld).toEqual([
      { kind: 'plate', count: 1 },
      { kind: 'person', count: expect.any(Number) },
    ]);
    expect((await problemOf(() => share(record(), { without: 'plate', out: out() }))).code).toBe(
      'file-not-written',
    );
  });

  it.each(['colour', 'plate,colour', '', 'Plate', 'plate;vin'])(
    'is not made without "%s"',
    async (without) => {
      const { code, next } = await problemOf(() => share(record(), { without, out: out() }));
      expect(code).toBe('option-not-valid');
      expect(next).toBe(
        'Choose from: plate, vin, vehicle, fleet, customer, complaint, person, note; or all.',
      );
    },
  );

  it.runIf(hasPoppler)('makes papers and a table that say what is withheld', async () => {
    await shared('plate,vin,person');
    const papers = folder();
    await said(() => paper(out(), { out: papers, trust: trust() }));
    const csv = text(join(papers, 'J-2.csv'));
    expect(csv).toContain('withheld');
    const pdf = poppler('pdftotext', readFileSync(join(papers, 'J-2.pdf')), ['-layout', '{pdf}', '-']);
    expect(pdf).toMatch(/Plate\s+withheld/);
    expect(pdf).toMatch(/VIN\s+withheld/);
    expect(pdf).toMatch(/Technician\s+withheld/);
    for (const gone of [CAR.plate, CAR.vin, 'Technician Two', '\uE000']) {
      expect(csv).not.toContain(gone);
      expect(pdf).not.toContain(gone);
    }
  });
});

describe('a package that is shared', () => {
  const out = () => at('audit');
  const GONE = [
    CAR.plate,
    CAR.vin,
    VAN.plate,
    VAN.vin,
    VAN.fleet,
    'Technician One',
    'Technician Two',
    'Quality One',
  ];
  const files = () =>
    readdirSync(out(), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => join(parentPath, name));

  it('holds none of the texts in any of its files, and verifies as before', async () => {
    await station.impact();
    await said(() => makePackage({ ...station.scope(), out: out(), without: 'all' }));
    expect(files().length).toBeGreaterThan(12);
    for (const file of files())
      for (const gone of GONE) {
        const all =
          file.endsWith('.pdf') && hasPoppler
            ? poppler('pdftotext', readFileSync(file), ['{pdf}', '-'])
            : opened(file);
        expect(all.includes(gone), `${gone} in ${file}`).toBe(false);
      }
    expect(text(join(out(), 'jobs.csv'))).toContain('withheld');
    expect(text(join(out(), 'impacts', 'IA-1.vehicles.csv'))).toContain('withheld');
    const whole = await said(() => verify(out(), { trust: trust() }));
    expect(whole.value).toBe(0);
    expect(whole.text).toMatch(/Withheld: plate \(\d+\), vin \(\d+\), fleet \(\d+\), person \(\d+\)/);
    const json = JSON.parse((await said(() => verify(out(), { trust: trust(), json: true }))).text);
    expect(json.withheld.map(({ kind }: { kind: string }) => kind)).toEqual([
      'plate',
      'vin',
      'fleet',
      'person',
    ]);
  });

  it('holds all but the kinds that were named', async () => {
    await said(() => makePackage({ ...station.scope(), out: out(), papers: false, without: 'plate' }));
    const all = files().map(opened).join('\n');
    expect(all).not.toContain(CAR.plate);
    for (const kept of [CAR.vin, VAN.fleet, 'Technician One']) expect(all).toContain(kept);
  });

  it('of a claim says nothing of the vehicles of others', async () => {
    await station.impact();
    const { text: told } = await said(() =>
      dispute({ ...station.scope(), claim: 'C-1', vin: CAR.vin, out: out() }),
    );
    expect(told).toContain('IA-1 names 1 job on other vehicles: of these only the figures are in it');
    const own = opened(join(out(), 'station-entries.json'));
    for (const gone of [VAN.plate, VAN.vin, VAN.fleet]) expect(own).not.toContain(gone);
    expect((await said(() => verify(out(), { trust: trust() }))).value).toBe(0);
  });

  it('is not made without a kind that there is not', async () => {
    expect(
      (await problemOf(() => makePackage({ ...station.scope(), out: out(), without: 'colour' }))).code,
    ).toBe('option-not-valid');
  });
});
