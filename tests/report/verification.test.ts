import { expect, it } from 'vitest';
import { verdictLines } from '../../src/cli/evidence/report-lines.ts';
import { VERDICTS } from '../../src/evidence/verdict.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import { headlineOf, OF_PACKAGE, VERIFICATION } from '../../src/report/verification.ts';
import { logOf, seal, station, trusting, wholeJob } from '../evidence/sample-job.ts';

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

it('says that figures are proven only where somebody may rely on the record', () => {
  const file = seal(logOf(wholeJob()));
  const shown = (bytes: Uint8Array, trust = trusting(station)) =>
    verdictLines('x.record.json', verifyRecord(bytes, trust)).join('\n');
  expect(shown(file)).toContain('proven by a linked wrench');
  const changed = Buffer.from(String(file).replace('"signature":"', '"signature":"A'));
  expect(shown(changed)).toContain('NOT authentic');
  expect(shown(changed)).not.toContain('proven by');
});

it('a job that was declared void is called VOID in the first line, and none of its figures proven', () => {
  const voided = { type: 'job-voided', by: 'Owner One', reason: 'wrong vehicle' } as const;
  const file = seal(logOf([...wholeJob(), voided]));
  const trusted = verifyRecord(file, trusting(station));
  expect(trusted.verdict).toBe('incomplete');
  expect(headlineOf(trusted)).toMatch(/^Authentic, but VOID: .* proves nothing/);
  expect(headlineOf(verifyRecord(file, { keys: [] }))).toContain('The job was declared VOID');
  expect(verdictLines('x.record.json', trusted).join('\n')).not.toContain('proven by');
});
