/** From a file to its verdict with one drop. */
import { fileURLToPath } from 'node:url';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnPdf } from '../../../src/cli/bench/papers.ts';
import { openRecord } from '../../../src/evidence/record.ts';
import { SI } from '../../../src/quantity/shown.ts';
import { browsersHere, type Opened, opened, PAGE, saidOf, started, textsOf } from './browsers.ts';
import { drop, dropFolder } from './drop.ts';
import { complete, folderOfTests, golden, packageFiles, packageFolder, trustedKeys } from './given.ts';
import { zipOf } from './zip-of.ts';

const { written } = folderOfTests();

describe.each(browsersHere)('in %s', (name) => {
  let browser: Browser;
  let tab: Opened;
  beforeAll(async () => {
    browser = await started(name);
    tab = await opened(browser);
  });
  afterAll(() => browser.close());

  it('a PDF, by somebody who has nothing but that and a browser', async () => {
    const bytes = golden('complete.record.json');
    const record = openRecord(bytes);
    if (!record.ok) throw new Error(record.error.problem.message);
    const pdf = await drawnPdf(bytes, record.value.record, { language: 'en', units: SI }, 'own');
    await drop(name, tab.page, written('complete.pdf', pdf));
    expect(await textsOf(tab.page, '#verdict')).toEqual(['Not trusted']);
    expect((await textsOf(tab.page, '.banner .file'))[0]).toBe('complete.pdf');
  });

  it('a record and the trust list of its shop at once', async () => {
    await drop(name, tab.page, fileURLToPath(complete), fileURLToPath(trustedKeys));
    expect(await textsOf(tab.page, '#verdict')).toEqual(['Authentic']);
  });

  it('a package as one file', async () => {
    await drop(name, tab.page, written('package.zip', zipOf(packageFiles())));
    expect(await textsOf(tab.page, '#verdict')).toEqual(['Authentic and whole']);
  });

  it('a package as a folder', async () => {
    await dropFolder(name, tab.page, fileURLToPath(packageFolder));
    expect(await textsOf(tab.page, '#verdict')).toEqual(['Authentic and whole']);
    expect((await textsOf(tab.page, '.banner .file'))[0]).toBe('package');
  });

  it('what is no such file is refused in words', async () => {
    await drop(name, tab.page, written('picture.png', Buffer.from('\x89PNG', 'latin1')));
    expect((await saidOf(tab.page)).refusals.join()).toMatch(/no record, PDF, package/);
  });

  it('the browser never opens the file itself, and no mark of the drag stays', async () => {
    expect(tab.page.url()).toBe(PAGE.href);
    expect(await textsOf(tab.page, 'body.dragged')).toEqual([]);
    expect(tab.asked()).toEqual([]);
    expect(tab.complaints).toEqual([]);
  });
});
