/** Files that are dropped on the page with the mouse. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import type { Page } from 'puppeteer-core';
import { answered, answersOf, type BrowserName } from './browsers.ts';

/**
 * In Firefox a folder comes as an entry that hands out what is in it some at a time. WebDriver BiDi has no step that drags one in,
 * and a script can put none into a DataTransfer: the page gets entries of that kind, made in it.
 */
export async function dropFolder(name: BrowserName, page: Page, path: string): Promise<void> {
  if (name === 'chrome') return drop(name, page, path);
  const answers = await answersOf(page);
  await page.evaluate(`{
    const entryOf = ({ name, base64, inside }) => ({
      name,
      isFile: inside === null,
      isDirectory: inside !== null,
      file: (done) => done(new File([Uint8Array.from(atob(base64), (one) => one.charCodeAt(0))], name)),
      createReader: () => {
        const left = inside.map(entryOf);
        return { readEntries: (done) => done(left.splice(0, 2)) };
      },
    });
    const folder = entryOf(${JSON.stringify(folderOf(path))});
    const event = new DragEvent('drop', { bubbles: true, cancelable: true });
    const items = [{ kind: 'file', getAsFile: () => null, webkitGetAsEntry: () => folder }];
    Object.defineProperty(event, 'dataTransfer', { value: { items } });
    document.body.dispatchEvent(event);
  }`);
  await answered(page, answers + 1);
}

interface Below {
  readonly name: string;
  readonly base64: string;
  /** Null for a file. */
  readonly inside: readonly Below[] | null;
}

function folderOf(path: string): Below {
  const name = basename(path);
  if (!statSync(path).isDirectory())
    return { name, base64: readFileSync(path).toString('base64'), inside: null };
  return { name, base64: '', inside: readdirSync(path).map((one) => folderOf(join(path, one))) };
}

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
