/** Real browsers of this machine, without a window, and the page in them. */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import puppeteer, { type Browser, type ElementHandle, type Page } from 'puppeteer-core';

export const PAGE = new URL('../../../dist/src/web/verify.html', import.meta.url);

const PROGRAMS = { chrome: '/usr/bin/chromium', firefox: '/usr/bin/firefox-esr' } as const;
export type BrowserName = keyof typeof PROGRAMS;

/** Those that are here; with ALL_TESTS=1 both have to be. */
export const browsersHere: readonly BrowserName[] = (['chrome', 'firefox'] as const).filter(
  (name) => process.env['ALL_TESTS'] === '1' || existsSync(PROGRAMS[name]),
);

export const started = (name: BrowserName): Promise<Browser> =>
  puppeteer.launch({
    browser: name,
    executablePath: PROGRAMS[name],
    headless: true,
    args: name === 'chrome' ? ['--no-sandbox', '--disable-dev-shm-usage'] : [],
  });

/** The page, with everything that it complains about and everything that it asks anybody for. */
export interface Opened {
  readonly page: Page;
  readonly complaints: readonly string[];
  /** Whatever it asked for that is not in its own file. */
  readonly asked: () => readonly string[];
}

export async function opened(browser: Browser, url: URL = PAGE): Promise<Opened> {
  const page = await browser.newPage();
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warn'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (fault) => complaints.push(String(fault)));
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(url.href);
  const own = [url.href, 'blob:', 'data:'];
  const asked = () => requests.filter((one) => !own.some((start) => one.startsWith(start)));
  return { page, complaints, asked };
}

type Input = 'files' | 'folder' | 'trust-file';

/** Gives files to one of the inputs of the page, and waits until it has answered. */
export async function give(page: Page, input: Input, ...files: readonly (string | URL)[]): Promise<void> {
  const element = await page.$(`input#${input}`);
  if (element === null) throw new Error(`the page has no ${input}`);
  const answers = await answersOf(page);
  const paths = files.map((file) => (typeof file === 'string' ? file : fileURLToPath(file)));
  await (element as ElementHandle<HTMLInputElement>).uploadFile(...paths);
  await answered(page, answers + 1);
}

export const answersOf = (page: Page): Promise<number> =>
  page.evaluate("Number(document.body.dataset['answers'] ?? 0)") as Promise<number>;

export async function answered(page: Page, answers: number): Promise<void> {
  await page.waitForFunction(`Number(document.body.dataset['answers'] ?? 0) >= ${answers}`, {
    timeout: 60_000,
  });
}

/** Texts of all elements, as they are in the document. */
export const textsOf = (page: Page, selector: string): Promise<string[]> =>
  page.evaluate(
    `[...document.querySelectorAll(${JSON.stringify(selector)})].map((one) => one.textContent)`,
  ) as Promise<string[]>;

/** What the page says of a record. */
export async function saidOf(page: Page) {
  const [sentence = ''] = await textsOf(page, '.banner .sentence');
  const names = await textsOf(page, '.checks li > strong');
  const words = await textsOf(page, '.checks li > span:last-child');
  const outcomes = (await page.evaluate(
    "[...document.querySelectorAll('.checks li')].map((one) => one.className)",
  )) as string[];
  return {
    sentence,
    checks: names.map((name, i) => `${outcomes[i]} ${name}: ${words[i]}`),
    refusals: await textsOf(page, '.refusal'),
  };
}
