/** What the browsers are given, and what the command says of it. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';
import type { ByPolicy } from '../../../src/evidence/by-policy.ts';
import { parseTrustList, type TrustedTime, type TrustList } from '../../../src/evidence/trust.ts';
import { verifyRecord } from '../../../src/evidence/verify.ts';
import { clean } from '../../../src/report/clean.ts';
import { headlineOf } from '../../../src/report/verification.ts';
import { checkText } from '../../../src/report/words/index.ts';
import { orThrow } from '../../../src/result.ts';
import type { InZip } from './zip-of.ts';

export const GOLDEN = new URL('../../golden/', import.meta.url);
export const EDITION_1 = new URL('edition-1/', GOLDEN);
export const golden = (name: string) => Uint8Array.from(readFileSync(new URL(name, EDITION_1)));
export const complete = new URL('complete.record.json', EDITION_1);
export const trustedKeys = new URL('trusted-keys.json', EDITION_1);
export const trustOfGolden = () => orThrow(parseTrustList(golden('trusted-keys.json'), 'trust'));

/** A folder that goes with the file of tests. */
export function folderOfTests() {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-page-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const written = (name: string, content: Uint8Array | string): string => {
    const path = join(folder, name);
    writeFileSync(path, content);
    return path;
  };
  return { folder, written };
}

/** As the command says it. */
export function saidByCommand(
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

export const packageFolder = new URL('package/', EDITION_1);
export const packageFiles = (): readonly InZip[] =>
  readdirSync(packageFolder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => join(parentPath, name))
    .map((path) => ({
      name: `a-package/${path.slice(fileURLToPath(packageFolder).length)}`,
      content: readFileSync(path),
    }));
