import { readFileSync, writeFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { showImpact } from '../../../src/cli/audit/impact-decisions.ts';
import { certificate, workIn, wrenchWith } from '../../audit/shop.ts';
import { problemOf } from '../answers.ts';
import { found, impactStation } from './impact-station.ts';

const at = impactStation();
const { assess, eventsIn, decide } = at;

describe('the time that an impact assessment goes over', () => {
  it('takes in what was measured under the old certificate after the finding, and says up to when', async () => {
    const { text } = await assess(found({ date: '2026-02-20' }));
    expect(text).toContain('8 attempts from 2026-01-12 to 2026-03-11');
  });

  describe('with certificates of one number', () => {
    const wrench = wrenchWith(certificate('CAL-1', '2026-09-01'));
    beforeEach(() =>
      workIn(at.data, [{ job: 'J-4', on: '2026-10-10', peaks: [29.2], wrench, closed: false }]),
    );

    it('leaves out what was measured under the newer one, and nothing of the older one', async () => {
      const { text } = await assess(found());
      expect(text).toContain('8 attempts from 2026-01-12 to 2026-09-01');
      expect(text).toMatch(/^ *J-1 /m);
      expect(text).not.toMatch(/^ *J-4 /m);
    });

    it('counts from the one that is named by number and day', async () => {
      const later = found({ date: '2026-11-01' });
      const since = 'CAL-1 of 2026-01-12';
      expect((await problemOf(() => assess(later, { since: 'CAL-1' }))).next).toContain(`--since "${since}"`);
      expect((await assess(later, { since })).text).toContain('13 attempts from 2026-01-12 to 2026-11-01');
      const numbered = await assess(found({ number: 'CAL-1', date: '2026-11-01' }), { since });
      expect(numbered.text).not.toContain('have one number');
    });
  });

  it('looks at what was measured on the day of a check, under the certificate from before, from either side', async () => {
    await workIn(at.data, [{ job: 'J-4', on: '2026-09-01', peaks: [29.2], closed: false }]);
    expect((await assess(found())).text).toMatch(/^ *J-4 /m);
    const { text } = await assess(found({ number: 'AF-2', date: '2026-11-01' }), { since: 'CAL-2' });
    expect(text).toMatch(/^ *J-4 /m);
    expect(text).toContain(
      'IA-1 (not closed) judged 2026-01-12 to 2026-09-01 as well. Jobs in both: 1; decide about them in each.',
    );
  });

  it('may be made again on the same file where there is more to look at, or another check to count from', async () => {
    const file = found({ date: '2026-11-01' });
    await assess(file);
    expect((await problemOf(() => assess(file))).code).toBe('impact-exists');
    const further = await assess(file, { since: 'CAL-1' });
    // From the other check on, without what the first one holds.
    expect(further.text).toMatch(
      /Impact assessment, IA-2[\s\S]* 8 attempts from 2026-01-12 to 2026-11-01[\s\S]* 8 attempts, 8 proofs\./,
    );
    expect(further.text).not.toMatch(/^ *J-3 /m);
    const wrench = wrenchWith(certificate('CAL-2', '2026-09-01'));
    await workIn(at.data, [{ job: 'J-4', on: '2026-11-10', peaks: [29.2], wrench, closed: false }]);
    expect((await assess(file)).text).toMatch(/Impact assessment, IA-3[\s\S]* 1 attempt, 1 proof\./);
  });

  it('leaves the adjusted tool alone where one certificate holds both what was found and what was left', async () => {
    const { text } = await assess(found({ number: 'CAL-2' }));
    expect(text).toContain('since CAL-1 of 2026-01-12');
    expect(text).not.toMatch(/^ *J-3/m);
    expect(text).not.toContain('have one number');
  });

  it('warns where such a certificate was given two days, so that the adjusted tool is looked at', async () => {
    const { text } = await assess(found({ number: 'CAL-2', date: '2026-09-03' }));
    expect(text).toMatch(/^ *J-3/m);
    expect(text).toContain('date the finding 2026-09-01 too, and assess again');
  });
});

it('takes what was found in lbf·ft for what it is in N·m', async () => {
  const file = found();
  writeFileSync(file, readFileSync(file, 'utf8').replace('"N.m"', '"lbf.ft"'));
  // 20 lbf·ft and 1.1 lbf·ft, by NIST SP 811 (2008), appendix B.8: 1.355818 N·m each.
  expect((await assess(file)).text).toMatch(/^ *27\.12 +0\.00 +0\.20 +-1\.49/m);
});

describe('an impact assessment that cannot be made', () => {
  const refused = async (asFound: string, given = {}) => {
    const before = (await eventsIn()).events.length;
    const problem = await problemOf(() => assess(asFound, given));
    expect((await eventsIn()).events).toHaveLength(before);
    return problem;
  };

  it.each([
    ['for another serial number', () => found({ serial: 'EXAMPLE-W-2' }), 'certificate-other-serial'],
    ['from the future', () => found({ date: '2199-01-01' }), 'certificate-in-future'],
    ['from before the first use', () => found({ date: '2025-01-01' }), 'as-found-too-early'],
    ['in another unit', () => found({ unit: 'mm' }), 'certificate-unit'],
  ])('says so of what was found %s, and writes nothing', async (_, file, code) => {
    expect((await refused(file())).code).toBe(code);
  });

  it('says so where the time holds no attempt with this tool', async () => {
    const wrench = wrenchWith(certificate('CAL-3', '2026-10-01'));
    await workIn(at.data, [{ job: 'J-4', on: '2026-10-10', peaks: [], wrench, closed: false }]);
    const { code, message, next } = await refused(found({ date: '2026-11-01' }));
    expect(code).toBe('impact-no-data');
    expect(message).toContain('2026-10-01');
    expect(next).toContain('Nothing was written');
  });

  it('says so where certificates overlap, and goes on with the one that is named', async () => {
    const wrench = wrenchWith(certificate('CAL-2B', '2026-09-01'));
    await workIn(at.data, [{ job: 'J-4', on: '2026-10-10', peaks: [27], wrench, closed: false }]);
    const file = found({ date: '2026-11-01' });
    expect((await refused(file)).code).toBe('certificates-overlap');
    expect((await refused(file, { since: 'CAL-9' })).code).toBe('certificate-unknown');
    expect((await assess(file, { since: 'CAL-2' })).text).toContain('2026-09-01 to 2026-11-01');
  });

  it('says so where the same file was looked back on before', async () => {
    const file = found();
    await assess(file);
    expect(await refused(file)).toMatchObject({ code: 'impact-exists', where: 'IA-1' });
  });

  it.each([
    ['an impact assessment that is not there', () => showImpact('IA-7', at.scope()), 'impact-unknown'],
    ['a job that it does not touch', () => decide(['J-2'], 'recall'), 'item-unknown'],
    ['a decision that is none', () => decide(['J-1'], 'forget'), 'option-not-valid'],
    ['a sort that is none', () => decide([], 'recall', { undecided: 'some' }), 'option-not-valid'],
    ['nobody who decides', () => decide(['J-1'], 'recall', { by: ' ' }), 'option-not-valid'],
  ])('refuses %s', async (_, work, code) => {
    await assess(found());
    expect((await problemOf(work)).code).toBe(code);
  });
});
