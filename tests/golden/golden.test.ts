import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { OPEN_EDITION } from '../../src/job/rules.ts';
import { writeArtefacts } from './artefacts.ts';
import { DIST, expectedIn, SUMS, sealedEditions, sumsOf, verdictsOf } from './verdicts.ts';

const today = mkdtempSync(join(tmpdir(), 'plugmark-golden-'));
beforeAll(() => writeArtefacts(today));
afterAll(() => rmSync(today, { recursive: true }));

it('there are artefacts of every closed edition of the rules', () => {
  expect(sealedEditions().length).toBeGreaterThanOrEqual(OPEN_EDITION - 1);
});

it('no byte of them was changed since they were sealed, no file added or taken away', () => {
  expect(`${sealedEditions().flatMap(sumsOf).join('\n')}\n`).toBe(readFileSync(SUMS, 'utf8'));
});

it.each(sealedEditions())('every artefact gets the verdict that it had when it was sealed: %s', (edition) => {
  const expected = expectedIn(edition);
  expect(expected.length).toBeGreaterThan(0);
  expect(verdictsOf(DIST, edition, expected)).toEqual(expected);
});

it('what would be sealed today gets its verdict too', () => {
  expect(verdictsOf(DIST, today, expectedIn(today))).toEqual(expectedIn(today));
});
