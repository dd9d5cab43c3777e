import { expect, it } from 'vitest';
import { VERDICTS } from '../../src/evidence/verdict.ts';
import { OF_PACKAGE, VERIFICATION } from '../../src/report/verification.ts';

it.each([
  ['authentic', 0, 0],
  ['incomplete', 1, 0],
  ['unproven', 1, 0],
  ['rejected', 1, 1],
  ['unreadable', 2, 2],
  ['untrusted', 3, 3],
  ['newer', 4, 4],
  ['other-rules', 4, 4],
] as const)('%s: exit code %i of one record, %i of many', (verdict, exit, exitOfMany) => {
  expect(VERIFICATION[verdict]).toMatchObject({ exit, exitOfMany });
});

it('what is as a trusted station sealed it begins with that word, and nothing else does', () => {
  const good = VERDICTS.filter((verdict) => VERIFICATION[verdict].ofRecord.startsWith('Authentic'));
  expect(good).toEqual(['other-rules', 'incomplete', 'unproven', 'authentic']);
  expect(Object.entries(OF_PACKAGE).filter(([, words]) => words.startsWith('Authentic'))).toHaveLength(2);
});

it('no two verdicts read alike in a list', () => {
  expect(new Set(VERDICTS.map((verdict) => VERIFICATION[verdict].word)).size).toBe(VERDICTS.length);
});
