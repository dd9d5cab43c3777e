/** Each line of defence by itself: what a record lacks is said whichever of the others would have seen it too. */
import { describe, expect, it } from 'vitest';
import { contentsAndCompleteness } from '../../src/evidence/completeness.ts';
import { stationOf } from '../../src/evidence/station.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { judgeAgain, outcomeOf } from '../../src/rules/judge.ts';
import type { Lack, Outcome } from '../../src/rules/judged.ts';
import { recordOf } from './forge.ts';
import { logOf, opening, seal, wholeJob } from './sample-job.ts';

const events = wholeJob();
const record = recordOf(seal(logOf(events)));
const NO_STATION = () => 'no station';
const station = stationOf(record.background) ?? NO_STATION;
const sound = outcomeOf(events);

/** The record as an edition would judge it that finds this. */
const judgedAs = (change: Partial<Outcome>) =>
  contentsAndCompleteness(record, station, { judgeAgain, outcomeOf: () => ({ ...sound, ...change }) });
const unclosed: Outcome['summary'] = { ...sound.summary, closed: null };
const item = { kind: 'torque', cylinder: 2 } as unknown as Extract<Lack, { code: 'open' }>['items'][number];

describe('a whole job', () => {
  it('lacks nothing, and is worked out from its events', () => {
    expect(sound.lacks).toEqual([]);
    const { contents, completeness, proof } = judgedAs({});
    expect([contents.outcome, completeness.outcome]).toEqual(['passed', 'passed']);
    expect(completeness.detail).toBe('Gap and torque are OK on all 2 cylinders; the job is closed.');
    expect(proof).toEqual({
      sources: sound.summary.sources,
      figures: sound.summary.figures,
      attestedBy: sound.attestedBy,
      byAngle: false,
    });
  });
});

describe('what a job lacks', () => {
  it.each<[Lack, RegExp]>([
    [{ code: 'unproven', cylinder: 2 }, /Cylinder 2 counts as done, but no OK figure stands for it\./],
    [{ code: 'open', items: [item] }, /Not all of the job is done\./],
    [{ code: 'not-closed' }, /The job was not closed\./],
    [{ code: 'closed-incomplete', items: [item] }, /The job was closed incomplete\./],
    [{ code: 'voided' }, /The job was declared VOID/],
  ])('%o is said, and the job is not complete', (lack, words) => {
    const { completeness } = judgedAs({ lacks: [lack] });
    expect(completeness.outcome).toBe('failed');
    expect(completeness.detail).toMatch(words);
    expect(completeness.open).toEqual('items' in lack ? lack.items : undefined);
  });

  it('speaks against the entries themselves where they say that it was complete', () => {
    const { contents } = judgedAs({ lacks: [{ code: 'unproven', cylinder: 2 }] });
    expect(contents.outcome).toBe('failed');
    expect(contents.detail).toMatch(/^The job was closed as complete\. Cylinder 2 counts as done/);
    expect(judgedAs({ lacks: [{ code: 'voided' }] }).contents.outcome).toBe('passed');
  });

  it('is the gravest first', () => {
    const { completeness } = judgedAs({ lacks: [{ code: 'voided' }, { code: 'not-closed' }] });
    expect(completeness.detail).toMatch(/VOID/);
  });
});

describe('what a record says of its job', () => {
  it('is not what the entries say: the summary, or the budgets', () => {
    expect(judgedAs({ summary: unclosed }).contents.detail).toBe('The summary is not what the entries say.');
    expect(judgedAs({ budgets: sound.budgets.slice(1) }).contents.detail).toBe(
      'The uncertainty budgets are not what the instruments give.',
    );
  });

  it.each<[string, readonly JobEvent[], RegExp]>([
    ['a second opening', [...events, opening()], /not opened exactly once/],
    ['no opening', events.slice(1), /not opened exactly once/],
    ['the opening of another job', [opening('WO-2'), ...events.slice(1)], /not those of job WO-1/],
  ])('is nothing with %s', (_what, told, words) => {
    const first = record.entries[0] ?? expect.fail('no entries');
    const entries = told.map((event) => ({ ...first, event }));
    const edition = { judgeAgain, outcomeOf };
    const { contents, completeness, proof } = contentsAndCompleteness(
      { ...record, entries },
      station,
      edition,
    );
    expect([contents.outcome, completeness.outcome, proof]).toEqual(['failed', 'not-applicable', null]);
    expect(contents.detail).toMatch(words);
  });

  it('is left open by rules that only a newer program knows, and nothing by rules that nobody had', () => {
    const newer = contentsAndCompleteness(record, station, 'newer');
    expect([newer.contents.outcome, newer.completeness.outcome, newer.proof]).toEqual([
      'passed',
      'not-applicable',
      null,
    ]);
    const unknown = contentsAndCompleteness(record, station, 'unknown');
    expect([unknown.contents.outcome, unknown.completeness.outcome]).toEqual(['failed', 'not-applicable']);
    expect(contentsAndCompleteness(record, NO_STATION, { judgeAgain, outcomeOf }).contents).toMatchObject({
      outcome: 'failed',
      detail: 'no station',
    });
  });
});

describe('a cylinder that counts as done', () => {
  it('without a gap that was measured as OK is unproven, though nothing is open', () => {
    const [opened] = events;
    if (opened === undefined) throw new Error('no events');
    const looked = events.flatMap((event): JobEvent[] =>
      event.type === 'gap-measured'
        ? [{ type: 'gap-inspected', cylinder: event.cylinder, sound: true }]
        : [event],
    );
    expect(outcomeOf(looked).lacks.map(({ code }) => code)).toEqual(['unproven']);
  });
});
