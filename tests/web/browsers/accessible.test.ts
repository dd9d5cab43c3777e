/** The page for those who do not see it, or use no mouse, or hold a phone: axe-core finds nothing, and everything can be reached. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { foundByAxe } from './axe.ts';
import { browsersHere, give, type Opened, opened, started } from './browsers.ts';

const EDITION_1 = new URL('../../golden/edition-1/', import.meta.url);
const folder = mkdtempSync(join(tmpdir(), 'plugmark-accessible-'));
afterAll(() => rmSync(folder, { recursive: true }));

describe.each(browsersHere)('in %s', (name) => {
  let browser: Browser;
  let tab: Opened;
  beforeAll(async () => {
    browser = await started(name);
    tab = await opened(browser);
  });
  afterAll(() => browser.close());

  const states: readonly (readonly [string, () => Promise<void>])[] = [
    ['before anything was given', async () => {}],
    ['a file that is refused', () => give(tab.page, 'files', bad())],
    [
      'a record of nobody who is trusted',
      () => give(tab.page, 'files', new URL('simulated.record.json', EDITION_1)),
    ],
    ['a trust list', () => give(tab.page, 'trust-file', new URL('trusted-keys.json', EDITION_1))],
    ['a record with exceptions', () => give(tab.page, 'files', new URL('exceptions.record.json', EDITION_1))],
    [
      'a record that is not authentic',
      () => give(tab.page, 'files', new URL('content-changed.record.json', EDITION_1)),
    ],
    [
      'many records',
      () =>
        give(
          tab.page,
          'files',
          new URL('void.record.json', EDITION_1),
          new URL('complete.record.json', EDITION_1),
        ),
    ],
  ];
  it.each(states)('axe-core finds nothing: %s', async (_what, make) => {
    await make();
    expect(await foundByAxe(tab.page)).toEqual([]);
  });

  it.runIf(name === 'chrome')('axe-core finds nothing in the dark', async () => {
    await tab.page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: 'dark' }]);
    for (const file of ['simulated', 'exceptions', 'content-changed', 'complete']) {
      await give(tab.page, 'files', new URL(`${file}.record.json`, EDITION_1));
      expect(await foundByAxe(tab.page), file).toEqual([]);
    }
    await tab.page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: 'light' }]);
  });

  it('the keys reach every control, and the verdict has the focus when it is there', async () => {
    await give(tab.page, 'files', new URL('complete.record.json', EDITION_1));
    expect(await tab.page.evaluate('document.activeElement.id')).toBe('verdict');
    await tab.page.evaluate('document.activeElement.blur()');
    await tab.page.reload();
    const reached: unknown[] = [];
    for (let i = 0; i < 4; i++) {
      await tab.page.keyboard.press('Tab');
      reached.push(await tab.page.evaluate('document.activeElement.id'));
    }
    expect(reached).toEqual(['language', 'files', 'folder', 'trust-file']);
  });

  it('on a phone nothing is wider than the screen', async () => {
    await tab.page.setViewport({ width: 360, height: 740 });
    for (const file of ['simulated', 'exceptions', 'two-plugs']) {
      await give(tab.page, 'files', new URL(`${file}.record.json`, EDITION_1));
      expect(await tab.page.evaluate('document.documentElement.scrollWidth'), file).toBeLessThanOrEqual(360);
    }
  });
});

function bad(): string {
  const path = join(folder, 'picture.png');
  writeFileSync(path, 'no picture');
  return path;
}

it('the page says what language it is in', () => {
  expect(readFileSync(new URL('../../../dist/src/web/verify.html', import.meta.url), 'utf8')).toContain(
    '<html lang="en">',
  );
});
