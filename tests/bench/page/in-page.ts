/** A page of verification in Chromium, and what it costs there. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'puppeteer-core';
import { opened, started } from '../../web/browsers/browsers.ts';

/** From the drop of a file to its verdict, in milliseconds, by the clock of the page. */
export async function dropped(page: Page, input: 'files' | 'trust-file', path: string): Promise<number> {
  const element = await page.$(`input#${input}`);
  if (element === null) throw new Error(`the page has no ${input}`);
  await page.evaluate(`globalThis.took = new Promise((done) => {
    let from = 0;
    document.getElementById('${input}').addEventListener('change', () => { from = performance.now(); }, { capture: true, once: true });
    const seen = new MutationObserver(() => { seen.disconnect(); done(performance.now() - from); });
    seen.observe(document.body, { attributeFilter: ['data-answers'] });
  }); undefined`);
  await element.uploadFile(path);
  return Number(await page.evaluate('globalThis.took'));
}

export async function inPage<T>(
  trust: string,
  work: (page: Page, browser: Browser) => Promise<T>,
): Promise<T> {
  const browser = await started('chrome');
  try {
    const { page } = await opened(browser);
    await dropped(page, 'trust-file', trust);
    return await work(page, browser);
  } finally {
    await browser.close();
  }
}

/** The most memory that the process of the page ever had (MB). */
export function mostMegabytes(browser: Browser): number {
  const own = browser.process()?.pid ?? 0;
  const rows = execFileSync('ps', ['-eo', 'pid,ppid,args'], { encoding: 'utf8' }).split('\n');
  const processes = rows.map((row) => /^\s*(\d+)\s+(\d+)\s+(.*)$/.exec(row) ?? []);
  const isBelow = (pid: number): boolean =>
    pid === own ||
    processes.some(([, one, parent]) => Number(one) === pid && Number(parent) > 1 && isBelow(Number(parent)));
  const ofPages = processes.flatMap(([, pid, , args = '']) =>
    args.includes('--type=renderer') && isBelow(Number(pid)) ? [Number(pid)] : [],
  );
  const peaks = ofPages.map((pid) =>
    Number(/VmHWM:\s+(\d+) kB/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1]),
  );
  return Math.max(...peaks) / 1024;
}
