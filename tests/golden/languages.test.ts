/** What is signed and what is judged are codes and figures: neither language nor units of a reader change a byte of them. */
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parseTrustList } from '../../src/evidence/trust.ts';
import { verifyRecord } from '../../src/evidence/verify.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { inUnits } from '../../src/quantity/shown.ts';
import { orThrow } from '../../src/result.ts';
import { judgeAgain, outcomeOf } from '../../src/rules/judge.ts';
import { inLanguage } from '../../src/words/catalogue.ts';
import { PSEUDO } from '../words/pseudo.ts';
import * as driverJobs from './driver-jobs.ts';
import * as jobs from './jobs.ts';
import { sealedEditions } from './verdicts.ts';

const elsewhere = <T>(make: () => T): T =>
  inUnits({ torque: '[ft_i].[lbf_av]', length: '[in_i]' }, () => inLanguage(PSEUDO, make));

const ON = '2026-03-02';
const WORKED = Object.entries({
  complete: jobs.complete,
  exceptions: jobs.exceptions,
  eventful: jobs.eventful,
  incomplete: jobs.incomplete,
  voided: jobs.voided,
  'two plugs': jobs.twoPlugs,
  'two-stage': jobs.twoStage,
  'by wire': jobs.byWire,
});

/** What a record states of a job, and whether judging it again agrees. */
const judged = (events: readonly JobEvent[]): string =>
  JSON.stringify([judgeAgain(events), outcomeOf(events)]);

describe('a job', () => {
  it.each(WORKED)('that is worked in another language writes the same entries: %s', (name, work) => {
    expect(JSON.stringify(elsewhere(() => work(name, ON)))).toBe(JSON.stringify(work(name, ON)));
  });

  it.each([...WORKED, ...Object.entries({ simulated: driverJobs.simulated, replayed: driverJobs.replayed })])(
    'that is judged in another language gets the same verdicts: %s',
    async (name, work) => {
      const events = await work(name, ON);
      expect(elsewhere(() => judged(events))).toBe(judged(events));
    },
  );

  it('that is judged otherwise parts at the same event', () => {
    const raised = jobs
      .complete('raised', ON)
      .map((event) => (event.type === 'pull-detected' ? { ...event, peakNm: event.peakNm + 0.5 } : event));
    const parted = { agrees: false, code: 'other-than-readings', event: 'pull-detected' };
    expect(judgeAgain(raised)).toMatchObject(parted);
    expect(elsewhere(() => judged(raised))).toBe(judged(raised));
  });
});

describe.each(sealedEditions())('the records of %s', (edition) => {
  const trust = orThrow(
    parseTrustList(readFileSync(join(edition, 'trusted-keys.json')), 'trusted-keys.json'),
  );
  const files = readdirSync(edition).filter((name) => name.endsWith('.record.json'));

  /** All of the report but its sentences. */
  const factsOf = (file: string): string => {
    const report = verifyRecord(readFileSync(join(edition, file)), trust);
    return JSON.stringify({ ...report, checks: report.checks.map(({ detail: _, ...check }) => check) });
  };

  it.each(files)(`${basename(edition)}: %s is verified with the same facts`, (file) => {
    expect(elsewhere(() => factsOf(file))).toBe(factsOf(file));
  });
});
