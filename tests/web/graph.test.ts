/** What verifies runs where there is nothing of Node, and says the same there. */
import { readdirSync, readFileSync } from 'node:fs';
import vm from 'node:vm';
import { expect, it } from 'vitest';
import { z } from 'zod';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { orThrow } from '../../src/result.ts';
// @ts-expect-error: a script of the build
import { bundled } from '../../src/web/bundle.mjs';
import { expectedSchema } from '../golden/artefacts.ts';

const textSchema = z.string();
const script = textSchema.parse(await bundled('tests/web/graph-entry.ts'));
/** What a browser gives to every script, and no more. */
const web = { TextEncoder, TextDecoder, atob, btoa, crypto, DOMException, URL, structuredClone };
const context = vm.createContext({ ...web });
vm.runInContext(script, context);
const verifiedInBrowser = z
  .function({ input: [z.instanceof(Uint8Array), z.instanceof(Uint8Array)], output: z.promise(z.string()) })
  .parse(Reflect.get(context, 'verified'));

const READ_AT = '2026-06-01T00:00:00.000Z';

const GOLDEN = new URL('../golden/', import.meta.url);
const editions = readdirSync(GOLDEN).filter((name) => name.startsWith('edition-'));

it.each(editions)('every golden record of %s, with the same report', async (edition) => {
  const folder = new URL(`${edition}/`, GOLDEN);
  const read = (name: string) => Uint8Array.from(readFileSync(new URL(name, folder)));
  const cases = z
    .array(expectedSchema)
    .parse(JSON.parse(readFileSync(new URL('expected.json', folder), 'utf8')));
  const records = cases.filter(({ path }) => path.endsWith('.record.json'));
  expect(records.length).toBeGreaterThan(10);
  for (const { path, options } of records) {
    const [bytes, trust] = [read(path), read(options.trust)];
    const { record: _, ...report } = verifyRecord(
      bytes,
      orThrow(parseTrustList(trust, options.trust)),
      null,
      READ_AT,
    );
    expect(JSON.parse(await verifiedInBrowser(bytes, trust)), path).toEqual(
      JSON.parse(JSON.stringify(report)),
    );
  }
});
