/** Many records in the page: several workers at once, how far they are, and an end to all of them on demand. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  answered,
  answersOf,
  browsersHere,
  give,
  type Opened,
  opened,
  started,
  textsOf,
} from './browsers.ts';
import { folderOfTests, golden, trustedKeys } from './given.ts';

const { folder } = folderOfTests();

/** Every third one is not as it was sealed. */
function manyRecords(count: number): readonly string[] {
  const sealed = golden('complete.record.json');
  const changed = golden('content-changed.record.json');
  mkdirSync(join(folder, 'many'), { recursive: true });
  return Array.from({ length: count }, (_, i) => {
    const path = join(folder, 'many', `${String(i).padStart(3, '0')}.record.json`);
    writeFileSync(path, i % 3 === 2 ? changed : sealed);
    return path;
  });
}

/** What the page says of its work, from now on. */
const watchProgress = (page: Page) =>
  page.evaluate(`globalThis.seen = [];
    new MutationObserver(() => globalThis.seen.push(document.getElementById('status').textContent))
      .observe(document.getElementById('status'), { childList: true, subtree: true });`);

describe.each(browsersHere)('in %s', (name) => {
  let browser: Browser;
  let tab: Opened;
  beforeAll(async () => {
    browser = await started(name);
    tab = await opened(browser);
    await give(tab.page, 'trust-file', trustedKeys);
  });
  afterAll(() => browser.close());

  it('gives each its verdict, in the order of their names, and says how far it is', async () => {
    await watchProgress(tab.page);
    await give(tab.page, 'files', ...manyRecords(60));
    const words = await textsOf(tab.page, 'tbody tr td:nth-child(2)');
    expect(words).toEqual(words.map((_, i) => (i % 3 === 2 ? 'not authentic' : 'authentic')));
    expect(words).toHaveLength(60);
    const files = await textsOf(tab.page, 'tbody tr button');
    expect(files).toEqual([...files].sort());
    const seen = (await tab.page.evaluate('globalThis.seen')) as string[];
    const done = seen.flatMap((text) => /^(\d+) of 60 records/.exec(text)?.[1] ?? []).map(Number);
    expect(done).toEqual([...done].sort((a, b) => a - b));
    expect(done.at(-1)).toBe(60);
  });

  it('ends all its workers when it is stopped, and takes the next file', async () => {
    const input = await tab.page.$('input#files');
    if (input === null) throw new Error('the page has no files');
    const before = await answersOf(tab.page);
    await input.uploadFile(...manyRecords(400));
    await tab.page.waitForFunction("/^\\d+ of 400/.test(document.getElementById('status').textContent)");
    if (name === 'chrome') expect(tab.page.workers().length).toBeGreaterThan(1);
    await tab.page.click('#status button');
    expect(await textsOf(tab.page, '#status')).toEqual(['Stopped.']);
    if (name === 'chrome') await expect.poll(() => tab.page.workers().length).toBe(0);
    expect(await answersOf(tab.page)).toBe(before);
    await give(tab.page, 'files', ...manyRecords(2));
    expect(await textsOf(tab.page, 'tbody tr')).toHaveLength(2);
  });

  it('of two that were given one behind the other, the later one stands there in the end', async () => {
    const input = await tab.page.$('input#files');
    if (input === null) throw new Error('the page has no files');
    const changed = join(folder, 'changed.record.json');
    writeFileSync(changed, golden('content-changed.record.json'));
    const before = await answersOf(tab.page);
    await input.uploadFile(...manyRecords(60));
    await input.uploadFile(changed);
    await answered(tab.page, before + 2);
    expect(await textsOf(tab.page, '#verdict')).toEqual(['Not authentic']);
    expect(await tab.page.title()).toBe('not authentic: changed.record.json');
  });

  it('a verdict of before is gone when the next file is stopped', async () => {
    const input = await tab.page.$('input#files');
    if (input === null) throw new Error('the page has no files');
    expect(await textsOf(tab.page, '#verdict')).toHaveLength(1);
    await input.uploadFile(...manyRecords(400));
    await tab.page.click('#status button');
    expect(await textsOf(tab.page, '#verdict')).toEqual([]);
    expect(await tab.page.title()).toBe('Check a spark plug record');
  });

  it('nobody was asked for anything, and nothing complained of', () => {
    expect(tab.asked()).toEqual([]);
    expect(tab.complaints).toEqual([]);
  });
});
