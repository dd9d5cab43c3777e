/** A package in the page: as one file, as a folder, and archives that are made to mislead. */
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OF_PACKAGE } from '../../../src/report/verification.ts';
import {
  answered,
  answersOf,
  browsersHere,
  give,
  type Opened,
  opened,
  saidOf,
  started,
  textsOf,
} from './browsers.ts';
import { complete, EDITION_1, folderOfTests, packageFiles, packageFolder, trustedKeys } from './given.ts';
import { type InZip, zipOf } from './zip-of.ts';

const { written } = folderOfTests();

describe.each(browsersHere)('in %s', (name) => {
  let browser: Browser;
  let tab: Opened;
  beforeAll(async () => {
    browser = await started(name);
    tab = await opened(browser);
    await give(tab.page, 'trust-file', trustedKeys);
  });
  afterAll(() => browser.close());

  it('verifies a package as one file, with the verdict of the command, and each of its records', async () => {
    await give(tab.page, 'files', written('package.zip', zipOf(packageFiles())));
    expect((await saidOf(tab.page)).sentence).toContain(OF_PACKAGE.authentic);
    const records = packageFiles().filter(({ name: path }) => String(path).endsWith('.record.json'));
    expect(await textsOf(tab.page, 'tbody tr')).toHaveLength(records.length);
    await give(tab.page, 'trust-file', new URL('kept.checkpoint', EDITION_1));
    expect((await saidOf(tab.page)).checks.find((check) => check.includes(' since: '))).toMatch(/^passed/);
    await give(tab.page, 'trust-file', new URL('other-log.checkpoint', EDITION_1));
    expect((await saidOf(tab.page)).sentence).toContain(OF_PACKAGE.rejected);
    const answers = await answersOf(tab.page);
    await tab.page.click('tbody tr button');
    await answered(tab.page, answers + 1);
    expect((await textsOf(tab.page, '#result h2'))[0]).toMatch(/^Authentic/);
  });

  it.skipIf(name === 'firefox')('verifies a package as a folder', async () => {
    await give(tab.page, 'folder', packageFolder);
    expect((await textsOf(tab.page, '.banner .file'))[0]).toBe('package');
  });

  describe('refuses in words, and goes on, where an archive', () => {
    const files = packageFiles();
    const [first] = files;
    const content = first?.content ?? new Uint8Array();
    const broken: readonly (readonly [string, readonly InZip[], RegExp])[] = [
      ['leads out of its folder', [...files, { name: '../index.json', content }], /leads out of the folder/],
      ['has a path from the root', [...files, { name: '/etc/x', content }], /leads out of the folder/],
      [
        'has a name with another separator',
        [...files, { name: 'a\\..\\x', content }],
        /leads out of the folder/,
      ],
      ['has a name twice', [...files, { ...first, name: first?.name ?? '', content }], /have the same name/],
      [
        'has names that differ in capitals',
        [...files, { name: 'a-package/INDEX.json', content }],
        /have the same name/,
      ],
      [
        'has a link',
        [...files, { name: 'a-package/link', content: Buffer.from('/etc/passwd'), mode: 0o120777 }],
        /is a link/,
      ],
      ['is under a password', [...files, { name: 'a-package/x', content, flags: 0x801 }], /under a password/],
      [
        'has entries in one another',
        [...files, { name: 'a-package/x', content, sharesPlace: true }],
        /lie in one another/,
      ],
      [
        'has another name where the file lies',
        [{ name: 'index.json', local: 'other.json', content }],
        /another name/,
      ],
      ['has a file with two names', [{ name: 'index.json', second: 'other.json', content }], /another name/],
      [
        'says in two places that it is packed in two ways',
        [{ name: 'index.json', localMethod: 0, content }],
        /packed in another way/,
      ],
      [
        'says that a file is smaller than it is',
        [{ name: 'index.json', content: Buffer.alloc(9_000_000), bytes: 9 }],
        /has not the size/,
      ],
      [
        'says that it is larger than any package',
        Array.from({ length: 9 }, (_, i) => ({ name: `a/${i}`, content, bytes: 200 << 20 })),
        /more than any package/,
      ],
    ];
    it.each(broken)('%s', async (_what, entries, why) => {
      await give(tab.page, 'files', written('broken.zip', zipOf(entries)));
      expect((await saidOf(tab.page)).refusals.join()).toMatch(why);
      await give(tab.page, 'files', complete);
      expect((await saidOf(tab.page)).refusals).toEqual([]);
    });

    it('is cut off', async () => {
      await give(tab.page, 'files', written('cut.zip', zipOf(files).subarray(0, 4000)));
      expect((await saidOf(tab.page)).refusals.join()).toMatch(/no table of contents/);
    });
  });

  it('nobody was asked for anything, and nothing complained of', () => {
    expect(tab.asked()).toEqual([]);
    expect(tab.complaints).toEqual([]);
  });
});
