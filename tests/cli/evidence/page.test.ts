/** The page that is sent with a record inside, and the one in a package. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, describe, expect, it } from 'vitest';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { emptyPage, page } from '../../../src/cli/evidence/page.ts';
import { papersAgain } from '../../../src/cli/station/jobs.ts';
import { readIndex } from '../../../src/package/format.ts';
import { orThrow } from '../../../src/result.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation } from '../audit/audit-station.ts';

const station = auditStation();

describe('plugmark page', () => {
  let record = '';
  const out = () => join(station.data, 'J-1.html');
  beforeEach(async () => {
    await said(() => papersAgain('J-1', { ...station.scope(), out: station.data }));
    record = join(station.data, 'J-1.record.json');
  });

  it('writes the page of the program, with every byte of the record inside', async () => {
    const { value, text } = await said(() => page(record, { out: out() }));
    expect(value).toBe(0);
    expect(text).toContain('by another way than this file');
    const [, name, content = ''] =
      /<template id="given" data-name="([^"]*)">([^<]*)<\/template>/.exec(readFileSync(out(), 'utf8')) ?? [];
    expect(name).toBe('J-1.record.json');
    expect(Buffer.from(content, 'base64').equals(readFileSync(record))).toBe(true);
    const emptied = readFileSync(out(), 'utf8').replace(` data-name="${name}">${content}`, '>');
    expect(emptied).toBe(await emptyPage());
  });

  it('overwrites no file', async () => {
    writeFileSync(out(), 'mine');
    expect(await problemOf(() => page(record, { out: out() }))).toMatchObject({ code: 'file-not-written' });
    expect(readFileSync(out(), 'utf8')).toBe('mine');
  });

  it('is not made of a record that was changed', async () => {
    const bytes = readFileSync(record);
    const at = bytes.indexOf('"signature":"') + '"signature":"'.length;
    writeFileSync(record, bytes.fill(bytes[at] === 0x41 ? 0x42 : 0x41, at, at + 1));
    const { value, text } = await said(() => page(record, { out: out() }));
    expect(value).toBe(1);
    expect(text).toContain('no page');
    expect(existsSync(out())).toBe(false);
  });
});

it('a package has the page of the program, and its index pins it', async () => {
  const folder = join(station.data, 'audit');
  await said(() => makePackage({ ...station.scope(), out: folder }));
  const bytes = readFileSync(join(folder, 'verify.html'));
  expect(bytes.toString('utf8')).toBe(await emptyPage());
  const { files } = orThrow(readIndex(readFileSync(join(folder, 'index.json'))));
  expect(files.find(({ path }) => path === 'verify.html')).toEqual({
    path: 'verify.html',
    bytes: bytes.length,
    sha256: createHash('sha256').update(bytes).digest('hex'),
  });
});
