/** The page in real browsers: the same verdict in the same words as the command, and nothing asked of anybody. */

import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { drawnPdf } from '../../src/cli/bench/papers.ts';
import { pageWith } from '../../src/cli/evidence/page.ts';
import type { ByPolicy } from '../../src/evidence/by-policy.ts';
import { parsePolicy } from '../../src/evidence/policy.ts';
import { openRecord } from '../../src/evidence/record.ts';
import { timeQuery } from '../../src/evidence/time-token.ts';
import { parseTrustList, type TrustedTime, type TrustList } from '../../src/evidence/trust.ts';
import { trustedTimeIn } from '../../src/evidence/trusted-time.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { SI } from '../../src/quantity/shown.ts';
import { clean } from '../../src/report/clean.ts';
import { headlineOf, OF_PACKAGE, VERIFICATION } from '../../src/report/verification.ts';
import { checkText, notProvenByRecord } from '../../src/report/words/index.ts';
import { orThrow } from '../../src/result.ts';
import { authorities, hasOpenssl } from '../evidence/authority.ts';
import { station, trusting } from '../evidence/sample-job.ts';
import { expectedSchema } from '../golden/artefacts.ts';
import { hostileRecords } from '../independent/hostile/records.ts';
import { witnessKeys } from '../serve/witness-keys.ts';
import {
  answered,
  answersOf,
  browsersHere,
  give,
  type Opened,
  opened,
  PAGE,
  saidOf,
  started,
  textsOf,
} from './browsers.ts';
import { type InZip, zipOf } from './zip-of.ts';

const GOLDEN = new URL('../golden/', import.meta.url);
const editions = readdirSync(GOLDEN).filter((name) => name.startsWith('edition-'));
const EDITION_1 = new URL('edition-1/', GOLDEN);
const golden = (name: string) => Uint8Array.from(readFileSync(new URL(name, EDITION_1)));
const folder = mkdtempSync(join(tmpdir(), 'plugmark-page-'));
afterAll(() => rmSync(folder, { recursive: true }));

function written(name: string, content: Uint8Array | string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

/** As the command says it. */
function saidByCommand(
  bytes: Uint8Array,
  trust: TrustList,
  { time = null, byPolicy = null }: { time?: TrustedTime | null; byPolicy?: ByPolicy | null } = {},
) {
  const report = verifyRecord(bytes, trust, time, new Date().toISOString(), null, byPolicy);
  return {
    sentence: clean(headlineOf(report)),
    checks: report.checks.map((check) => `${check.outcome} ${check.name}: ${clean(checkText(check))}`),
    refusals: [],
  };
}

const POLICY = `witness w ${witnessKeys('witness.example/1', '11')[0]?.vkey}\nquorum w\n`;

const trustedKeys = new URL('trusted-keys.json', EDITION_1);
const complete = new URL('complete.record.json', EDITION_1);
const packageFolder = new URL('package/', EDITION_1);
const packageFiles = (): readonly InZip[] =>
  readdirSync(packageFolder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => ({
      name: `a-package/${path.slice(fileURLToPath(packageFolder).length)}`,
      content: readFileSync(path),
    }));

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
    const report = verifyRecord(
      golden('simulated.record.json'),
      orThrow(parseTrustList(golden('trusted-keys.json'), 't')),
    );
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
      const expected = saidByCommand(record, orThrow(parseTrustList(golden('trusted-keys.json'), 't')));
      const { sentence, checks } = await saidOf(tab.page);
      const notCompared = 'The pages of this PDF were NOT compared with the record inside.';
      expect(sentence, file).toBe(`${expected.sentence} ${notCompared}`);
      const [paper, ...others] = checks;
      expect(paper, file).toMatch(/^doubtful paper: .*NOT compared/);
      expect(others, file).toEqual(expected.checks);
    }
  });

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

  it.runIf(hasOpenssl)('holds a time stamp, by the certificates that the reader gives', async () => {
    const record = golden('complete.record.json');
    const here = authorities(folder);
    here.makeRoot('one');
    here.certify('one', 'one', { serial: '7' });
    const query = await timeQuery(record, Uint8Array.of(0x41, 2, 3, 4, 5, 6, 7, 8));
    const token = here.stamped(query, 'one');
    const stamp = written('complete.tsr', token);
    const { page, complaints } = await opened(browser);
    await give(page, 'files', complete, trustedKeys, stamp);
    expect((await saidOf(page)).refusals.join()).toMatch(/nothing says which authority to believe/);
    const pem = join(folder, 'one-ca.pem');
    await give(page, 'trust-file', pem);
    const trust = orThrow(parseTrustList(golden('trusted-keys.json'), 't'));
    const time = await trustedTimeIn(token, readFileSync(pem, 'latin1'), record);
    expect(time.before).not.toBeNull();
    expect(await saidOf(page)).toEqual(saidByCommand(record, trust, { time }));
    await give(page, 'files', new URL('two-plugs.record.json', EDITION_1), stamp);
    expect((await saidOf(page)).checks.join()).toMatch(/it does not belong to this record/);
    await give(page, 'files', complete);
    expect(await saidOf(page)).toEqual(saidByCommand(record, trust));
    expect(complaints).toEqual([]);
    await page.close();
  });

  it('asks for the witnesses of the policy that the reader gives, of a record and of a package', async () => {
    const record = golden('complete.record.json');
    const trust = orThrow(parseTrustList(golden('trusted-keys.json'), 't'));
    const policy = orThrow(parsePolicy(Buffer.from(POLICY), 'p'));
    const { page } = await opened(browser);
    await give(page, 'files', complete, trustedKeys, written('a.policy', POLICY));
    const expected = saidByCommand(record, trust, { byPolicy: { policy, note: null } });
    expect(expected.checks.join()).toContain('failed witnesses: ');
    expect(await saidOf(page)).toEqual(expected);
    await give(page, 'files', written('package.zip', zipOf(packageFiles())));
    const { sentence, checks } = await saidOf(page);
    expect(sentence).toContain(OF_PACKAGE.untrusted);
    expect(checks.find((one) => one.includes(' witnesses: '))).toMatch(/^failed/);
    await give(page, 'trust-file', written('broken.policy', 'quorum nobody\n'));
    expect((await saidOf(page)).refusals.join()).toMatch(/broken.policy: line 1/);
    await page.close();
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
    const own = [PAGE.href, 'blob:', 'data:'];
    expect(tab.requests.filter((url) => !own.some((start) => url.startsWith(start)))).toEqual([]);
    expect(tab.complaints).toEqual([]);
  });
});

function orThrowOpened(bytes: Uint8Array) {
  const found = openRecord(bytes);
  if (!found.ok) throw new Error(found.error.problem.message);
  return found.value.record;
}

describe('the file of the page', () => {
  const page = readFileSync(PAGE, 'utf8');

  it('is below 450 kB', () => {
    expect(page.length).toBeLessThan(450_000);
  });

  it('lets run only the script and the style that are in it, by their digests', () => {
    const policy = /content="(default-src[^"]*)"/.exec(page)?.[1] ?? '';
    for (const [directive, tag] of [
      ['script-src', 'script'],
      ['style-src', 'style'],
    ] as const) {
      const inside = new RegExp(`<${tag}>([\\s\\S]*?)</${tag}>`).exec(page)?.[1] ?? '';
      const digest = createHash('sha256').update(inside).digest('base64');
      expect(policy.split('; ')).toContain(`${directive} 'sha256-${digest}'`);
    }
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(page.match(/<script/g)).toHaveLength(1);
    expect(page).not.toMatch(/\s(src|href|style|on\w+)=/);
  });
});
