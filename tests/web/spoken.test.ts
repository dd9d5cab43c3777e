/** Every word of the page goes through the catalogue: drawn in a language that marks them, nothing is left but names and figures. */
import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { z } from 'zod';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { clean } from '../../src/report/clean.ts';
import { orThrow } from '../../src/result.ts';
import { verifyHere } from '../../src/web/verify/findings.ts';
import { type Given, givenFile } from '../../src/web/verify/given.ts';
import { type Draw, packageShown, type Reading, recordsShown } from '../../src/web/verify/many.ts';
import { insidePdf, recordShown } from '../../src/web/verify/record.ts';
import type { Shown } from '../../src/web/verify/shown.ts';
import { inLanguage } from '../../src/words/catalogue.ts';
import { PSEUDO, unspoken } from '../words/pseudo.ts';

/** As much of a document as the views need: what they put into it, in order. */
class Element {
  readonly parts: (Element | string)[] = [];
  setAttribute(name: string, value: string): void {
    if (name === 'aria-label' || name === 'data-head') this.parts.push(value);
  }
  append(...parts: (Element | string)[]): void {
    this.parts.push(...parts);
  }
  addEventListener(): void {}
  get textContent(): string {
    return this.parts.map((part) => (typeof part === 'string' ? part : part.textContent)).join('\n');
  }
}

const elementSchema = z.instanceof(Element);
const hadDocument = Reflect.get(globalThis, 'document') as unknown;
beforeAll(() => {
  const make = () => new Element();
  Reflect.set(globalThis, 'document', { createElement: make, createElementNS: make });
});
afterAll(() => Reflect.set(globalThis, 'document', hadDocument));

const GOLDEN = new URL('../golden/edition-1/', import.meta.url);
const read = (name: string) => Uint8Array.from(readFileSync(new URL(name, GOLDEN)));
const trust = orThrow(parseTrustList(read('trusted-keys.json'), 'trust'));
const READ_AT = '2026-06-01T00:00:00.000Z';
const READING: Reading = {
  trust,
  policy: null,
  policyFile: null,
  loose: [],
  trustFault: null,
  kept: null,
  readAt: READ_AT,
  verifyAll: verifyHere,
  progress: () => ({ at: () => undefined, end: () => undefined }),
};
const filesIn = (folder: URL): readonly Given[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map(({ parentPath, name }) => `${parentPath}/${name}`.replaceAll('//', '/'))
    .map((path) => givenFile(path.slice(folder.pathname.length), new Blob([readFileSync(path)])));

/** The view's words, what checks found among them, less names and figures. */
function left(draw: Draw<Shown>, names: readonly string[]): readonly string[] {
  return inLanguage(PSEUDO, () => {
    const nodes = viewOf(draw()).filter((node) => node !== null);
    const text = nodes.map((node) => node.textContent).join('\n');
    const texts = names.map(clean);
    return unspoken(text, [...texts.filter(isLong), ...FACTS, ...texts.filter((one) => !isLong(one))]);
  });
}

// The views are typed by what only browsers have.
const SOURCES = new URL('../../src/web/verify/', import.meta.url).pathname;
const nodesSchema = z.array(z.union([elementSchema, z.null()]));
const viewSchema = z.function({ input: [z.unknown(), z.unknown()], output: nodesSchema });
const { recordView } = z.object({ recordView: viewSchema }).parse(await import(`${SOURCES}record-view.ts`));
const { packageView, recordsView } = z
  .object({ packageView: viewSchema, recordsView: viewSchema })
  .parse(await import(`${SOURCES}many-view.ts`));

function viewOf(shown: Shown) {
  const view = { record: recordView, package: packageView, records: recordsView }[shown.kind];
  return view(shown, () => undefined);
}

/** Units, identifiers, names of files and logs, and of tools; who entered what the station itself noted. */
const FACTS: readonly (string | RegExp)[] = [
  /\b(UTC|VIN|SHA-256|FILE|N·m|mm|km|vin)\b/,
  /(?<=\n)station(?=\n)/,
  // As the source prints them.
  /0\.7-0\.8|0\.7[28]|0\.003|M14x1\.25/,
  /\S+\.(record\.json|pdf|json)(\.\w+)?/,
  /\S+\/log\S*/,
  /(log|auditor)\.checkpoint/,
  'jobs.csv',
  'pull-detected',
  /[0-9a-f]{16,64}/,
  /\d{4}-\d\d-\d\dT[\d:.]+Z/,
  /(?<![\w-])[\w-]{43}(?![\w-])/,
  /\bs(?=⟦)/,
];

/** What people and devices wrote into a record: every text in it that is no code of the program. */
function namesIn(value: unknown, member = ''): readonly string[] {
  if (typeof value === 'string') return isName(value, member) ? [value] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => namesIn(one, Array.isArray(value) ? member : key));
}

const longestFirst = (texts: readonly string[]) => [...texts].sort((a, b) => b.length - a.length);

const isName = (text: string, member: string) =>
  !/^[a-z-]*$/.test(text) || ['id', 'tool', 'driver'].includes(member);
/** A sentence, not a part of one. */
const isLong = (text: string) => text.length > 12;

function verified(bytes: Uint8Array) {
  const report = verifyRecord(bytes, trust, null, READ_AT);
  const job = report.record === null ? [] : [report.record.job];
  const trusted = trust.keys.flatMap(({ name }) => name ?? []);
  return {
    report,
    names: longestFirst([...namesIn(report.record), ...job, ...trusted]),
  };
}

const records = readdirSync(GOLDEN).filter((name) => name.endsWith('.record.json'));

it.each(records)('%s', (name) => {
  const bytes = read(name);
  const { report, names } = verified(bytes);
  expect(left(() => recordShown('FILE', bytes, report), names)).toEqual([]);
  expect(left(() => insidePdf(recordShown('FILE', bytes, report)), names)).toEqual([]);
});

it('many records, and a package', async () => {
  const all = records.map((name) => verified(read(name)));
  const names = longestFirst(all.flatMap((one) => one.names));
  const some = await recordsShown(null, filesIn(GOLDEN), READING);
  if (some === null) throw new Error('no records');
  expect(left(some, names)).toEqual([]);
  const whole = await packageShown('FILE', filesIn(new URL('package/', GOLDEN)), READING);
  expect(left(whole, names)).toEqual([]);
});
