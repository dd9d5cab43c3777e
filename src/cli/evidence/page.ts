/** The page that verifies: by itself for a package, or with a record inside for sending. */

import { readFile, stat } from 'node:fs/promises';
import { toBase64 } from '../../evidence/platform/bytes.ts';
import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { readBytes } from '../../files/input.ts';
import { writeNew } from '../../files/output.ts';
import { isSoundReport } from '../../package/finding.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { now } from '../station/clock.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';

/** The build makes it; a program that runs from its sources takes it from there as well. */
const BUILT = [
  new URL('../../web/verify.html', import.meta.url),
  new URL('../../../dist/src/web/verify.html', import.meta.url),
];

/** The page without a record. */
export async function emptyPage(): Promise<string> {
  for (const file of BUILT) {
    const isThere = await stat(file).catch(() => null);
    if (isThere !== null) return readFile(file, 'utf8');
  }
  throw new Error('the page was not built: npm run build');
}

const PLACE = '<template id="given"></template>';

/** The same page with a record inside, which it shows as soon as it is opened. */
export function pageWith(page: string, name: string, record: Uint8Array): string {
  const parts = page.split(PLACE);
  if (parts.length !== 2) throw new Error('the page has no place for a record');
  // The job's number is letters, digits and a few signs: nothing in it ends an attribute.
  return parts.join(`<template id="given" data-name="${name}">${toBase64(record)}</template>`);
}

/** Writes the page with a record inside. A record that is not as its station sealed it is not sent. */
export async function page(file: string, { out }: { readonly out: string }): Promise<ExitCode> {
  const bytes = await readBytes(file, w`record`, MAX_RECORD_BYTES);
  const opened = openRecord(bytes);
  if (!opened.ok) throw new ProblemError({ ...opened.error.problem, where: file });
  if (!isSoundReport(verifyRecord(bytes, { keys: [] }, null, now()))) {
    print([
      w`${safeLine(file)}: no page: the record is not as its station sealed it. See "plugmark verify".`,
    ]);
    return EXIT.failed;
  }
  const { job } = opened.value.record;
  writeNew(out, Buffer.from(pageWith(await emptyPage(), `${job}.record.json`, bytes)));
  print([
    w`${safeLine(out)}: job ${safeLine(job)} with the page that verifies it. It opens in any browser, without a network.`,
    w`  All that the record says goes with it: "plugmark share" makes one that says less.`,
    w`  Whoever opens it needs your trusted-keys.json, and has to get it from you by another way than this file.`,
  ]);
  return EXIT.done;
}
