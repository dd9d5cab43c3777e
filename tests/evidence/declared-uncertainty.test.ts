/** A tool may declare over the air that it is less certain than the station lists it: the record stays honest, and as hard to forge. */
import { describe, expect, it } from 'vitest';
import type { JobEvent } from '../../src/job/event.ts';
import { GAUGE, type handsOn, WRENCH } from '../job/workshop.ts';
import { judged, recordOf } from './forge.ts';
import { INSTRUMENTS, logOf, seal, stationEvents, worked } from './sample-job.ts';

const LISTED_PERCENT = 2;
const DECLARED_PERCENT = 4;

function join({ give }: ReturnType<typeof handsOn>): void {
  const wrench = { ...WRENCH, uncertainty: { kind: 'relative', percent: DECLARED_PERCENT } } as const;
  for (const [tool, description] of [
    ['wrench', wrench],
    ['gauge', GAUGE],
  ] as const)
    give({ kind: 'link', tool, driver: 'test', source: 'linked', link: { state: 'linked', description } });
}

const events = worked('WO-1', join);
const percentsOf = (list: readonly JobEvent[]) =>
  list.flatMap((event) =>
    event.type === 'uncertainty-declared' && event.permissibleDeviation.kind === 'relative'
      ? [event.permissibleDeviation.percent]
      : [],
  );

describe('a record of a wrench that declares a larger uncertainty than the station lists', () => {
  const file = seal(logOf(events));

  it('is authentic and complete; the budgets are those of the larger one', () => {
    expect(percentsOf(events)).toEqual([DECLARED_PERCENT]);
    expect(judged(file)).toEqual({ verdict: 'authentic', failed: [], why: '' });
    const usual = recordOf(seal(logOf(worked('WO-1'))));
    const expanded = ({ budgets }: typeof usual) => budgets.find(({ tool }) => tool === 'wrench')?.expanded;
    const ratio = (expanded(recordOf(file)) ?? 0) / (expanded(usual) ?? 1);
    expect(ratio).toBeGreaterThan(1.8);
    expect(ratio).toBeLessThanOrEqual(DECLARED_PERCENT / LISTED_PERCENT);
  });

  const listing = (percent: number) => (event: JobEvent) =>
    event.type === 'job-opened'
      ? {
          ...event,
          instruments: event.instruments.map((one) =>
            one.id === 'wrench'
              ? { ...one, permissibleDeviation: { kind: 'relative' as const, percent } }
              : one,
          ),
        }
      : event;
  const declaring = (percent: number) => (event: JobEvent) =>
    event.type === 'uncertainty-declared'
      ? { ...event, permissibleDeviation: { kind: 'relative' as const, percent } }
      : event;

  it.each<[string, readonly JobEvent[], string, string]>([
    [
      'the declaration left out, so that narrow guard bands seem to hold',
      events.filter(({ type }) => type !== 'uncertainty-declared'),
      'judged again',
      'uncertainty-declared',
    ],
    [
      'a smaller uncertainty put in its place',
      events.map(declaring(LISTED_PERCENT)),
      'judged again',
      'uncertainty-declared is not what the readings give',
    ],
    [
      'what the wrench said of itself made smaller',
      events.map((event) =>
        event.type === 'tool-linked' && event.tool === 'wrench'
          ? {
              ...event,
              description: { ...event.description, uncertainty: { kind: 'relative' as const, percent: 1 } },
            }
          : event,
      ),
      'judged again',
      'uncertainty-declared',
    ],
    [
      'a better wrench at the opening, which the declaration covers up in the end',
      events.map(listing(0.5)),
      'contents',
      'wrench is not as the station',
    ],
    [
      'the wrench listed at the opening as it only declared itself later',
      events.map(listing(DECLARED_PERCENT)),
      'contents',
      'wrench is not as the station',
    ],
  ])('forged: %s', (_what, forged, check, why) => {
    const verdict = judged(seal(logOf(forged)));
    expect(verdict.verdict).toBe('rejected');
    expect(verdict.failed).toContain(check);
    expect(verdict.why).toContain(why);
  });

  it('forged: the declared uncertainty written into the station’s log as if it had been listed', () => {
    const listed = stationEvents.map((event) =>
      event.type === 'instrument-recorded' && event.instrument.id === 'wrench'
        ? {
            ...event,
            instrument: {
              ...event.instrument,
              permissibleDeviation: { kind: 'relative' as const, percent: DECLARED_PERCENT },
            },
          }
        : event,
    );
    expect(INSTRUMENTS[0]?.permissibleDeviation).toEqual({ kind: 'relative', percent: LISTED_PERCENT });
    const verdict = judged(seal(logOf(events, 'job:WO-1', listed)));
    expect(verdict).toMatchObject({ verdict: 'rejected', failed: ['contents'] });
  });
});
