/** The page in real browsers: the same verdict in the same words as the command, and nothing asked of anybody. */
import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { drawnPdf } from '../../../src/cli/bench/papers.ts';
import { pageWith } from '../../../src/cli/evidence/page.ts';
import { openRecord } from '../../../src/evidence/record.ts';
import { parseTrustList } from '../../../src/evidence/trust.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { SI } from '../../../src/quantity/shown.ts';
import { clean } from '../../../src/report/clean.ts';
import { VERIFICATION } from '../../../src/report/verification.ts';
import { notProvenByRecord } from '../../../src/report/words/index.ts';
import { orThrow } from '../../../src/result.ts';
import { station, trusting } from '../../evidence/sample-job.ts';
import { expectedSchema } from '../../golden/artefacts.ts';
import { hostileRecords } from '../../independent/hostile/records.ts';
import {
  answered,
  browsersHere,
  give,
  type Opened,
  opened,
  PAGE,
  saidOf,
  started,
  textsOf,
} from './browsers.ts';
import {
  complete,
  EDITION_1,
  folderOfTests,
  GOLDEN,
  golden,
  saidByCommand,
  trustedKeys,
  trustOfGolden,
} from './given.ts';

const editions = readdirSync(GOLDEN).filter((name) => name.startsWith('edition-'));
const { folder, written } = folderOfTests();

/** Neither browser may be missing where every test has to run. */
it.runIf(process.env['ALL_TESTS'] === '1')('is tried in Chromium and in Firefox', () => {
  expect(
    browsersHere.filter((name) =>
      existsSync(name === 'chrome' ? '/usr/bin/chromium' : '/usr/bin/firefox-esr'),
    ),
  ).toHaveLength(2);
});

describe.each(browsersHere)('in %s', (name) => {
  let browser: Browser;
  let tab: Opened;
  beforeAll(async () => {
    browser = await started(name);
    tab = await opened(browser);
  });
  afterAll(() => browser.close());

  it.each(editions)(
    'every golden record of %s gets the verdict and the words of the command',
    async (edition) => {
      const at = new URL(`${edition}/`, GOLDEN);
      const cases = z
        .array(expectedSchema)
        .parse(JSON.parse(readFileSync(new URL('expected.json', at), 'utf8')));
      const records = cases.filter(({ path }) => path.endsWith('.record.json'));
      expect(records.length).toBeGreaterThan(15);
      for (const { path, options, verdict } of records) {
        const [bytes, list] = [path, options.trust].map((file) =>
          Uint8Array.from(readFileSync(new URL(file, at))),
        );
        if (bytes === undefined || list === undefined) throw new Error(path);
        await give(tab.page, 'trust-file', new URL(options.trust, at));
        await give(tab.page, 'files', new URL(path, at));
        expect(await saidOf(tab.page), path).toEqual(
          saidByCommand(bytes, orThrow(parseTrustList(list, 'trust'))),
        );
        const [word = ''] = await textsOf(tab.page, '#verdict');
        expect(word.toLowerCase(), path).toBe(VERIFICATION[verdict].word);
      }
    },
  );

  it('says of every hostile record what the command says', async () => {
    const trust = trusting(station);
    await give(tab.page, 'trust-file', written('own-keys.json', JSON.stringify(trust)));
    const variants = hostileRecords();
    expect(variants.length).toBeGreaterThan(100);
    const files = variants.map(({ file }, i) => written(`${String(i).padStart(4, '0')}.record.json`, file));
    await give(tab.page, 'files', ...files);
    const words = await textsOf(tab.page, 'tbody tr td:nth-child(2)');
    const expected = variants.map(
      ({ file }) => VERIFICATION[verifyRecord(file, trust, null, new Date().toISOString()).verdict].word,
    );
    expect(words.length).toBe(variants.length);
    expect(
      words.flatMap((word, i) =>
        word === expected[i] ? [] : [`${variants[i]?.what}: ${word}, not ${expected[i]}`],
      ),
    ).toEqual([]);
  });

  it('shows what a reader wants to see, in that order', async () => {
    await give(tab.page, 'trust-file', trustedKeys);
    await give(tab.page, 'files', new URL('simulated.record.json', EDITION_1));
    expect((await textsOf(tab.page, '.stamp'))[0]).toContain('SIMULATED');
    expect(await textsOf(tab.page, '#result h2')).toEqual([
      'Authentic, not proven',
      expect.stringMatching(/^Job simulated: /),
      'What every plug must reach',
      'Gap and torque of each cylinder',
      'Exceptions, and what was out of order',
      ...(await textsOf(tab.page, '#result h2')).filter((head) => head.startsWith('Old plugs')),
      'Tools and their calibration',
      'What this proves',
      'Cautions',
      'What this does not prove',
      'What was checked',
      'Log and file',
    ]);
    const report = verifyRecord(golden('simulated.record.json'), trustOfGolden());
    const shown = await textsOf(tab.page, '#result li');
    for (const text of notProvenByRecord(report)) expect(shown).toContain(clean(text));
    const pictures = await textsOf(tab.page, '.plot .tick');
    expect(pictures.some((text) => text.startsWith('pull '))).toBe(true);
  });

  it('shows nothing of a record that is not authentic', async () => {
    await give(tab.page, 'files', new URL('content-changed.record.json', EDITION_1));
    expect(await textsOf(tab.page, '#result h2')).toEqual(['Not authentic', 'What was checked']);
  });

  it('finds the record in its PDF, as plugmark made it and as another program saved it again', async () => {
    const record = golden('complete.record.json');
    const pdf = written(
      'complete.pdf',
      await drawnPdf(record, orThrowOpened(record), { language: 'en', units: SI }, 'own'),
    );
    const again = join(folder, 'again.pdf');
    execFileSync('qpdf', [
      '--object-streams=generate',
      '--stream-data=compress',
      '--recompress-flate',
      pdf,
      again,
    ]);
    await give(tab.page, 'trust-file', trustedKeys);
    for (const file of [pdf, again]) {
      await give(tab.page, 'files', written('nothing.json', '{}'));
      await give(tab.page, 'files', file);
      const expected = saidByCommand(record, trustOfGolden());
      const { sentence, checks } = await saidOf(tab.page);
      const notCompared = 'The pages of this PDF were NOT compared with the record inside.';
      expect(sentence, file).toBe(`${expected.sentence} ${notCompared}`);
      const [paper, ...others] = checks;
      expect(paper, file).toMatch(/^doubtful paper: .*NOT compared/);
      expect(others, file).toEqual(expected.checks);
    }
  });

  it('refuses a file of 200 MB in words, and takes the next one', async () => {
    const large = Buffer.alloc(200 << 20, '{"payload":"AAAA');
    await give(tab.page, 'files', written('large.record.json', large));
    expect((await saidOf(tab.page)).refusals.join()).toMatch(/200 MB, and no such file has more than 32 MB/);
    rmSync(join(folder, 'large.record.json'));
    await give(tab.page, 'files', complete);
    expect((await saidOf(tab.page)).refusals).toEqual([]);
  });

  it('says what it cannot use', async () => {
    await give(tab.page, 'files', written('picture.png', Buffer.from('\x89PNG', 'latin1')));
    expect((await saidOf(tab.page)).refusals.join()).toMatch(/no record, PDF, package/);
    await give(tab.page, 'files', written('empty.pdf', '%PDF-1.7\n%%EOF\n'));
    expect((await saidOf(tab.page)).refusals.join()).toMatch(/no record is inside this PDF/);
  });

  it('a page that was made with a record inside verifies it as soon as it is opened', async () => {
    const page = pageWith(readFileSync(PAGE, 'utf8'), 'complete.record.json', golden('complete.record.json'));
    const sent = await opened(browser, new URL(`file://${written('complete.html', page)}`));
    await answered(sent.page, 1);
    expect((await textsOf(sent.page, '#verdict'))[0]).toBe('Not trusted');
    await give(sent.page, 'trust-file', trustedKeys);
    expect((await textsOf(sent.page, '#verdict'))[0]).toBe('Authentic');
    expect(sent.complaints).toEqual([]);
    await sent.page.close();
  });

  it('has asked nobody for anything, and complained of nothing', () => {
    expect(tab.asked()).toEqual([]);
    expect(tab.complaints).toEqual([]);
  });
});

function orThrowOpened(bytes: Uint8Array) {
  const found = openRecord(bytes);
  if (!found.ok) throw new Error(found.error.problem.message);
  return found.value.record;
}
