/** Files that are dropped on the page with the mouse. */
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { Page } from 'puppeteer-core';
import { answered, answersOf, type BrowserName } from './browsers.ts';

/**
 * In Chromium, files of the disk, dragged in from outside as the window system hands them over. Firefox lets nobody do that from
 * outside: there the page gets the events of a drop, with files that it may read.
 */
export async function drop(name: BrowserName, page: Page, ...paths: readonly string[]): Promise<void> {
  const answers = await answersOf(page);
  await (name === 'chrome' ? fromOutside(page, paths) : asEvents(page, paths));
  await answered(page, answers + 1);
}

async function fromOutside(page: Page, files: readonly string[]): Promise<void> {
  const devtools = await page.createCDPSession();
  const data = { items: [], files: [...files], dragOperationsMask: 1 };
  for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
    await devtools.send('Input.dispatchDragEvent', { type, x: 200, y: 200, data });
  await devtools.detach();
}

async function asEvents(page: Page, paths: readonly string[]): Promise<void> {
  const files = paths.map((path) => [basename(path), readFileSync(path).toString('base64')]);
  await page.evaluate(`{
    const dataTransfer = new DataTransfer();
    for (const [name, base64] of ${JSON.stringify(files)}) {
      const bytes = Uint8Array.from(atob(base64), (one) => one.charCodeAt(0));
      dataTransfer.items.add(new File([bytes], name));
    }
    for (const type of ['dragenter', 'dragover', 'drop'])
      document.body.dispatchEvent(new DragEvent(type, { dataTransfer, bubbles: true, cancelable: true }));
  }`);
}
