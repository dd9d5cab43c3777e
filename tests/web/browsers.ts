/** Real browsers of this machine, without a window, and the page in them. */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import puppeteer, { type Browser, type Page } from 'puppeteer-core';

export const PAGE = new URL('../../dist/src/web/verify.html', import.meta.url);

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

/** The page with everything that it complains about, and everything that it asks for. */
export async function opened(browser: Browser, url: URL = PAGE) {
  const page = await browser.newPage();
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warn'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (fault) => complaints.push(String(fault)));
  page.on('request', (request) => requests.push(request.url()));
  await page.goto(url.href);
  return { page, complaints, requests };
}

/** Gives files to one of the inputs of the page, and waits until it has answered. */
export async function given(page: Page, input: 'files' | 'trust-file', files: readonly (string | URL)[]): Promise<void> {
  const element = await page.$(`#${input}`);
  if (element === null) throw new Error(`the page has no ${input}`);
  await page.evaluate(() => document.body.removeAttribute('data-answers'));
  // `accept` is not among the types that both browsers share.
  await (element as import('puppeteer-core').ElementHandle<HTMLInputElement>).uploadFile(
    ...files.map((file) => (typeof file === 'string' ? file : fileURLToPath(file))),
  );
  await page.waitForFunction(() => document.body.hasAttribute('data-answers'), { timeout: 60_000 });
}
