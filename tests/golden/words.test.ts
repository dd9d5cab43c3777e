import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeArtefacts } from './artefacts.ts';
import { otherWords, withOtherWords } from './other-words.ts';
import { DIST, expectedIn, sealedEditions, verdictsOf } from './verdicts.ts';

describe('the program with every sentence replaced by another', () => {
  const folder = mkdtempSync(join(DIST, '..', 'node_modules', '.plugmark-words-'));
  const today = mkdtempSync(join(tmpdir(), 'plugmark-golden-'));
  afterAll(() => {
    for (const made of [folder, today]) rmSync(made, { recursive: true, force: true });
  });
  const other = join(folder, 'dist');
  let replaced = 0;
  beforeAll(async () => {
    replaced = withOtherWords(DIST, other);
    // The program asks it for its version.
    cpSync(join(DIST, '..', 'package.json'), join(folder, 'package.json'));
    await writeArtefacts(today);
  });

  it('holds thousands of them', () => {
    expect(replaced).toBeGreaterThan(2000);
  });

  it.each([...sealedEditions(), today])('gives every artefact the verdict that it had: %s', (edition) => {
    const expected = expectedIn(edition).map(withoutNames);
    expect(verdictsOf(other, edition, expectedIn(edition)).map(withoutNames)).toEqual(expected);
  });
});

/** A name of a check may be of two words. */
function withoutNames<T extends { readonly checks?: Readonly<Record<string, string>> }>({
  checks = {},
  ...rest
}: T) {
  return { ...rest, outcomes: Object.values(checks) };
}

it('what is replaced is sentences: no name, no code, no pattern, no import', () => {
  const module = (one: string, three: string, four: string) =>
    `import x from 'a b';\nconst s = [${one}, 'code', /a b/, String.raw\`a b\`, \`\${x} ${three} \${x}\`, \`${four}\`, w\`\${x} ${three} \${x}\`, w\`${four}\`];`;
  const { code, count } = otherWords(module('"one two"', 'of three', 'four\\` five'));
  expect(count).toBe(5);
  expect(code).toBe(module('"eno owt"', 'fo eerht', 'ruof\\` evif'));
});
