/** The page in the language of its reader: by the browser's preference, or chosen; the words are the dictionary's. */
import { rmSync } from 'node:fs';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { clean } from '../../../src/report/clean.ts';
import { headlineOf, VERIFICATION } from '../../../src/report/verification.ts';
import { notProvenByRecord } from '../../../src/report/words/index.ts';
import { type Dictionary, inLanguage, LANGUAGES, type Language, w } from '../../../src/words/catalogue.ts';
import { dictionary } from '../../../src/words/dictionaries.ts';
import { foundByAxe } from './axe.ts';
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
import { EDITION_1, folderOfTests, golden, packageFiles, trustedKeys, trustOfGolden } from './given.ts';
import { zipOf } from './zip-of.ts';

const { written } = folderOfTests();
const RECORD = 'simulated.record.json';
const PHONE = { width: 360, height: 740 };

async function choose({ page }: Opened, language: Language): Promise<void> {
  const answers = await answersOf(page);
  await page.select('#language', language);
  await answered(page, answers + 1);
}

/** As the command would say it, if it spoke this language. */
const saidIn = (words: Dictionary) =>
  inLanguage(words, () => {
    const report = verifyRecord(golden(RECORD), trustOfGolden());
    return {
      verdict: VERIFICATION[report.verdict].word.toLowerCase(),
      sentence: clean(headlineOf(report)),
      notProven: notProvenByRecord(report).map(clean),
      heading: w`What this does not prove`,
    };
  });

describe.each(browsersHere)('in %s', (name) => {
  let browser: Browser;
  let tab: Opened;
  beforeAll(async () => {
    browser = await started(name);
    tab = await opened(browser);
    const record = written(RECORD, golden(RECORD));
    await give(tab.page, 'files', trustedKeys, record);
    // What is shown from here on in other languages cannot have been read anew.
    rmSync(record);
  });
  afterAll(() => browser.close());

  it.each(LANGUAGES)('a record in %s, of the file that was read once', async (language) => {
    await choose(tab, language === 'en' ? 'de' : 'en');
    await choose(tab, language);
    const expected = saidIn(await dictionary(language));
    const { sentence, refusals } = await saidOf(tab.page);
    expect({ sentence, refusals }).toEqual({ sentence: expected.sentence, refusals: [] });
    expect((await textsOf(tab.page, '#verdict'))[0]?.toLowerCase()).toBe(expected.verdict);
    expect(await textsOf(tab.page, '#result h2')).toContain(expected.heading);
    const shown = await textsOf(tab.page, '#result li');
    for (const text of expected.notProven) expect(shown).toContain(text);
    expect(await tab.page.evaluate('document.documentElement.lang')).toBe(language);
    expect(await tab.page.evaluate('document.activeElement.id')).not.toBe('verdict');
  });

  it.each(LANGUAGES)('axe-core finds nothing in %s, and no width cuts anything off', async (language) => {
    await choose(tab, language === 'en' ? 'de' : 'en');
    await choose(tab, language);
    expect(await foundByAxe(tab.page)).toEqual([]);
    for (const size of [PHONE, { width: 700, height: 900 }, { width: 1024, height: 900 }]) {
      await tab.page.setViewport(size);
      const { width } = size;
      expect(await tab.page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(width);
      expect(await tab.page.evaluate(CUT_OFF), String(width)).toEqual([]);
    }
    await tab.page.setViewport({ width: 1280, height: 900 });
  });

  it('says a refusal and a package again', async () => {
    const german = await dictionary('de');
    await choose(tab, 'en');
    await give(tab.page, 'files', written('empty.pdf', '%PDF-1.7\n%%EOF\n'));
    const inEnglish = (await saidOf(tab.page)).refusals.join();
    await choose(tab, 'de');
    const again = (await saidOf(tab.page)).refusals.join();
    expect(inEnglish).toContain('no record is inside this PDF');
    expect(again).toContain(inLanguage(german, () => w`no record is inside this PDF`));
    await give(tab.page, 'files', written('package.zip', zipOf(packageFiles())));
    expect(await textsOf(tab.page, '#result h2')).toContain(inLanguage(german, () => w`Records`));
    const left = (await saidOf(tab.page)).sentence;
    await choose(tab, 'fr');
    expect(await textsOf(tab.page, '#result h2')).toContain(
      inLanguage(await dictionary('fr'), () => w`Records`),
    );
    expect((await saidOf(tab.page)).sentence).not.toBe(left);
  });

  it('takes the first language of the reader that there is', async () => {
    const other = await browser.newPage();
    await other.evaluateOnNewDocument(
      "Object.defineProperty(navigator, 'languages', { value: ['pt-BR', 'es-MX', 'de'] })",
    );
    await other.goto(tab.page.url());
    expect(await textsOf(other, 'h1')).toEqual([
      inLanguage(await dictionary('es'), () => w`Check a record of spark plug work`),
    ]);
    await give(other, 'trust-file', trustedKeys);
    await give(other, 'files', new URL('complete.record.json', EDITION_1));
    const { word } = inLanguage(await dictionary('es'), () => ({ word: VERIFICATION.authentic.word }));
    expect((await textsOf(other, '#verdict'))[0]?.toLowerCase()).toBe(word);
    await other.close();
  });

  it('has complained of nothing', () => expect(tab.complaints).toEqual([]));
});

/** Elements whose words are wider than they are, but for those that only screen readers get. */
const CUT_OFF = `[...document.querySelectorAll('body *')]
  .filter((one) => one.clientWidth > 1 && one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).overflowX !== 'visible')
  .map((one) => one.outerHTML.slice(0, 120))`;
