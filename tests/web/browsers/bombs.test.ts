/** Files that unpack to more than anybody has room for: refused in words, and the tab takes the next file. */
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { deflateRawSync, deflateSync } from 'node:zlib';
import type { Browser } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { OF_PACKAGE } from '../../../src/report/verification.ts';
import { browsersHere, give, type Opened, opened, saidOf, started, textsOf } from './browsers.ts';
import { complete, folderOfTests, packageFiles, trustedKeys } from './given.ts';
import { zipOf } from './zip-of.ts';

const { folder, written } = folderOfTests();
const MEGABYTE = 1 << 20;

/** A PDF with one packed attachment of so many spaces. */
function pdfWith(bytes: number): Buffer {
  const packed = deflateSync(Buffer.alloc(bytes, ' '));
  const head = `%PDF-1.7\n1 0 obj\n<< /Type /EmbeddedFile /Filter /FlateDecode /Length ${packed.length} >>\nstream\n`;
  return Buffer.concat([Buffer.from(head), packed, Buffer.from('\nendstream\nendobj\n%%EOF\n')]);
}

describe.each(browsersHere)('in %s', (name) => {
  let browser: Browser;
  let tab: Opened;
  beforeAll(async () => {
    browser = await started(name);
    tab = await opened(browser);
    await give(tab.page, 'trust-file', trustedKeys);
  });
  afterAll(() => browser.close());

  afterEach(async () => {
    await give(tab.page, 'files', complete);
    expect((await saidOf(tab.page)).refusals).toEqual([]);
    expect(await textsOf(tab.page, '#verdict')).toEqual(['Authentic']);
  });

  it('an index that unpacks to 300 MB', async () => {
    const files = [{ name: 'index.json', content: Buffer.alloc(300 * MEGABYTE, ' ') }];
    const zip = zipOf(files);
    expect(zip.length).toBeLessThan(MEGABYTE);
    await give(tab.page, 'files', written('index.zip', zip));
    expect((await saidOf(tab.page)).refusals.join()).toMatch(/300 MB, and no such file has more than 256 MB/);
  });

  it('a record among others that unpacks to 64 MB', async () => {
    const record = packageFiles().find(({ name: path }) => String(path).endsWith('.record.json'));
    if (record === undefined) throw new Error('no record');
    await give(
      tab.page,
      'files',
      written(
        'records.zip',
        zipOf([
          { name: 'records/a.record.json', content: Buffer.alloc(64 * MEGABYTE, ' ') },
          { name: 'records/b.record.json', content: record.content },
        ]),
      ),
    );
    expect(await textsOf(tab.page, 'tbody tr td:nth-child(2)')).toEqual(['unreadable', 'authentic']);
    expect((await textsOf(tab.page, 'tbody tr td:nth-child(3)'))[0]).toMatch(/64 MB, and no such file/);
  });

  it('an archive in an archive: what is inside is not unpacked', async () => {
    const inner = zipOf([{ name: 'index.json', content: Buffer.alloc(100 * MEGABYTE) }]);
    await give(tab.page, 'files', written('nested.zip', zipOf([{ name: 'inner.zip', content: inner }])));
    expect((await saidOf(tab.page)).refusals.join()).toMatch(/no file in this folder ends in .record.json/);
  });

  it('a package with a file of 200 MB beside it', async () => {
    const more = { name: 'a-package/film.mp4', content: Buffer.alloc(200 * MEGABYTE), stored: true } as const;
    await give(tab.page, 'files', written('large.zip', zipOf([...packageFiles(), more])));
    expect((await saidOf(tab.page)).sentence).toContain(OF_PACKAGE.rejected);
    expect((await saidOf(tab.page)).checks.join()).toMatch(/film\.mp4/);
    rmSync(join(folder, 'large.zip'));
  });

  it('an attachment of a PDF that unpacks to 200 MB', async () => {
    await give(tab.page, 'files', written('bomb.pdf', pdfWith(200 * MEGABYTE)));
    expect((await saidOf(tab.page)).refusals.join()).toMatch(/no such file has more than 32 MB/);
  });

  it('an entry that is packed so that it says one size and has another', async () => {
    const content = deflateRawSync(Buffer.alloc(200 * MEGABYTE));
    const entry = { name: 'index.json', content: Buffer.alloc(200 * MEGABYTE), bytes: content.length };
    await give(tab.page, 'files', written('false.zip', zipOf([entry])));
    expect((await saidOf(tab.page)).refusals.join()).toMatch(/has not the size that it says/);
  });

  it('nobody was asked for anything', () => {
    expect(tab.asked()).toEqual([]);
  });
});
