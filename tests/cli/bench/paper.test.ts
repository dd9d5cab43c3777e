import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { paper } from '../../../src/cli/bench/paper.ts';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { papersAgain } from '../../../src/cli/station/jobs.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation } from '../audit/audit-station.ts';
import { folder } from '../program.ts';

const station = auditStation();

describe('the papers of a record that somebody holds', () => {
  let record = '';
  let out = '';
  const trust = () => join(station.data, 'trusted-keys.json');
  beforeEach(async () => {
    await said(() => papersAgain('J-1', station.scope()));
    record = join(station.data, 'J-1.record.json');
    out = join(folder(), 'papers');
  });

  it('are those that the station made, byte for byte', async () => {
    const { value, text } = await said(() => paper(record, { trust: trust(), out }));
    expect(value).toBe(0);
    expect(text).toContain('Authentic and complete.');
    expect(readdirSync(out)).toEqual(['J-1.csv', 'J-1.pdf']);
    for (const name of readdirSync(out))
      expect(readFileSync(join(out, name)).equals(readFileSync(join(station.data, name)))).toBe(true);
  });

  it('are made of a record by a station that is not known, and the exit code says so', async () => {
    const { value, text } = await said(() => paper(record, { out }));
    expect(value).toBe(3);
    expect(text).toContain('NOT trusted');
    expect(readdirSync(out)).toHaveLength(2);
  });

  it.each([
    ['was changed', 'eyJ', 'eyK', 1],
    ['is no record', '{"payload":', '{"other":', 2],
  ])('are not made of one that %s', async (_, from, to, code) => {
    writeFileSync(record, readFileSync(record, 'utf8').replace(from, to));
    const { value, text } = await said(() => paper(record, { trust: trust(), out }));
    expect(value).toBe(code);
    expect(text).toContain('no papers');
    expect(() => readdirSync(out)).toThrow('ENOENT');
  });

  it('are not put into a package, where they would show as a fault', async () => {
    const audit = join(folder(), 'audit');
    await said(() => makePackage({ ...station.scope(), out: audit }));
    for (const inside of [audit, join(audit, 'papers'), join(audit, 'new')])
      expect((await problemOf(() => paper(record, { trust: trust(), out: inside }))).code).toBe(
        'folder-in-package',
      );
  });
});
