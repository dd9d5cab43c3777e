/** A package in the page: its files for people are held against its records, and what is not compared is said. */
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makePackage } from '../../../src/cli/evidence/package.ts';
import { verify } from '../../../src/cli/evidence/verify.ts';
import { OF_PACKAGE } from '../../../src/report/verification.ts';
import { said } from '../../cli/answers.ts';
import { auditStation } from '../../cli/audit/audit-station.ts';
import { signedAnew } from '../../cli/audit/signed-anew.ts';
import { browsersHere, give, opened, saidOf, started } from './browsers.ts';
import { zipOf } from './zip-of.ts';

const PAPERS_NOT_COMPARED = 'Its papers were NOT compared with the records, and could show anything.';

const station = auditStation();
const trust = () => join(station.data, 'trusted-keys.json');

async function made(change: (out: string) => void = () => undefined): Promise<string> {
  const out = join(station.data, 'audit');
  await said(() => makePackage({ ...station.scope(), out }));
  change(out);
  await signedAnew({ data: station.data, out });
  return out;
}

function zipped(out: string): string {
  const files = readdirSync(out, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => ({ name: path.slice(out.length + 1), content: readFileSync(path) }));
  const zip = `${out}.zip`;
  writeFileSync(zip, zipOf(files));
  return zip;
}

/** As the command says it, with its exit code. */
const byCommand = (out: string) => said(() => verify(out, { trust: trust() }));

/** Words and figures are those of one program: one browser is enough here. */
const [name] = browsersHere;

describe.runIf(name !== undefined || process.env['ALL_TESTS'] === '1')('a package', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await started(name ?? 'chrome');
  });
  afterAll(() => browser.close());
  const byPage = async (out: string) => {
    const { page } = await opened(browser);
    await give(page, 'files', trust(), zipped(out));
    const { sentence, checks } = await saidOf(page);
    const isCaution = (await page.$('.banner.caution')) !== null;
    return { sentence, isCaution, papers: checks.find((one) => one.includes(' papers: ')) };
  };

  it('is authentic as it was made, and the headline of the page says that it does not compare papers', async () => {
    const out = await made();
    const command = await byCommand(out);
    expect(command.value).toBe(0);
    expect(command.text.replaceAll(/\s+/g, ' ')).toContain('READ-ME.txt, jobs.csv, verify.html');
    expect(command.text).not.toContain('NOT held');
    const { sentence, papers, isCaution } = await byPage(out);
    expect(sentence).toContain(`${OF_PACKAGE.authentic} ${PAPERS_NOT_COMPARED}`);
    expect(isCaution).toBe(true);
    expect(papers).toMatch(
      /^doubtful papers: Its papers were NOT compared .* What the records give: READ-ME.txt, jobs.csv. NOT held against the records: 3 papers, verify.html. .*NOT compared/,
    );
  });

  it('with a forged page as its only fault is rejected by the command, and the page does not call its papers good', async () => {
    const out = await made((folder) => {
      const paper = join(folder, 'papers', 'J-1.pdf');
      writeFileSync(paper, readFileSync(join(folder, 'papers', 'J-2.pdf')));
    });
    expect((await byCommand(out)).value).toBe(1);
    const { sentence, isCaution } = await byPage(out);
    expect(sentence).toContain(PAPERS_NOT_COMPARED);
    expect(isCaution).toBe(true);
  });

  it('is rejected where its list says something nicer than the records', async () => {
    const out = await made((folder) => {
      const list = join(folder, 'jobs.csv');
      const text = readFileSync(list, 'utf8');
      expect(text).toContain('J-3');
      writeFileSync(list, text.replaceAll('J-3', 'J-9'));
    });
    expect((await byCommand(out)).value).toBe(1);
    const { sentence, papers } = await byPage(out);
    expect(sentence).toContain(OF_PACKAGE.rejected);
    expect(papers).toMatch(/^failed papers: jobs.csv does not say of job J-3/);
  });
});
