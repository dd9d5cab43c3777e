/** A torque that somebody left unproven: the record is complete, says so, and cannot be made to say otherwise. */
import { describe, expect, it } from 'vitest';
import { verifyRecord } from '../../src/evidence/verify.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { aroundJob } from './around-job.ts';
import { judged, recordOf } from './forge.ts';
import { logOf, opening, seal, station, technician, trusting } from './sample-job.ts';

const events = aroundJob();

const completenessOf = (list: readonly JobEvent[]) => {
  const report = verifyRecord(seal(logOf(list)), trusting(station, technician));
  return report.checks.find(({ name }) => name === 'completeness')?.detail ?? '';
};

describe('a job with one plug accepted over the window and one fitted by angle', () => {
  it('is authentic and complete', () => {
    expect(judged(seal(logOf(events)))).toMatchObject({ verdict: 'authentic', failed: [] });
  });

  it('never says that these are proven', () => {
    expect(completenessOf(events)).toBe(
      'Gap and torque are OK on 0 of 2 cylinders; NOT proven by torque: cylinder 1 accepted by Foreman One (threads sound, customer told); cylinder 2 fitted by angle. The job is closed.',
    );
    const { cylinders } = recordOf(seal(logOf(events))).summary;
    expect(cylinders).toMatchObject([
      {
        torque: { state: 'settled', judgement: { result: 'NotOK', side: 'high' } },
        settlement: { kind: 'accepted', pull: 2 },
      },
      { torque: { state: 'settled', judgement: null }, settlement: { kind: 'by-angle', turn: '1/2 turn' } },
    ]);
  });

  it.each([
    ['the acceptance left out', 'pull-accepted', 'incomplete'],
    ['the angle left out', 'fitted-by-angle', 'incomplete'],
    ['a list left out', 'steps-attested', 'incomplete'],
    ['the old plugs left out', 'old-plugs-read', 'incomplete'],
  ])('with %s does not verify', (_what, type) => {
    const { failed } = judged(seal(logOf(events.filter((event) => event.type !== type))));
    expect(failed).toContain('completeness');
  });

  it('with a removal torque that the readings do not give is judged otherwise', () => {
    const forged = events.map((event) => (event.type === 'removal-felt' ? { ...event, cylinder: 2 } : event));
    expect(judged(seal(logOf(forged))).failed).toContain('judged again');
  });
});

it('a job whose gap is not to be measured says that none was', () => {
  const { order } = opening();
  const { gap: _gap, ...specification } = order.specification;
  const rules = { ...specification, gapRules: { check: 'not-permitted' as const } };
  expect(completenessOf(aroundJob({ ...order, specification: rules }))).toMatch(
    'Torque is OK (no gap was measured) on 0 of 2 cylinders',
  );
});
