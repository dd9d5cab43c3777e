import { describe, expect, it } from 'vitest';
import { learnedSince } from '../../src/audit/dispute.ts';
import type { ImpactAssessment } from '../../src/audit/impact-state.ts';
import { foldAll } from '../../src/job/fold.ts';
import { jobEntry } from '../evidence/entries.ts';
import { CHECKED, certificate, eventsOf, type ShopJob } from './shop.ts';

const ON = '2026-05-04';

/** A job of that day, all of it entered at 15:00. */
function jobOf(given: Partial<ShopJob> = {}) {
  const events = eventsOf({ job: 'J-1', on: ON, peaks: [27, 27, 27, 27], ...given });
  const entries = events.map((event, i) =>
    jobEntry(event, { seq: i + 1, at: `${ON}T15:00:00.000Z`, by: 'technician' }, 'J-1'),
  );
  const state = foldAll(events);
  if (state === null) throw new Error('no job');
  return { state, entries };
}

/** A impact assessment on the wrench that touched no job. */
function impactAt(at: string): ImpactAssessment {
  const asFound = certificate('AF-1', ON);
  return {
    assessment: 'IA-1',
    seq: 100,
    assessed: {
      type: 'assessment-made',
      assessment: 'IA-1',
      tool: 'wrench',
      serial: asFound.serial,
      asFound: asFound.number,
      digest: 'a'.repeat(64),
      lastGood: { number: CHECKED.number, date: CHECKED.date },
      foundOn: ON,
      from: CHECKED.date,
      to: ON,
      sources: ['linked'],
      attempts: 4,
      stillIn: 4,
      doubtful: 0,
      out: 0,
      items: [],
    },
    at,
    by: 'Quality One',
    asFound,
    lastGood: CHECKED,
    items: [],
    closed: null,
  };
}

const learned = (job: ReturnType<typeof jobOf>, at: string) =>
  learnedSince(job, [], [impactAt(at)], []).map(({ kind }) => kind);

describe('what an impact assessment says of a job that it does not touch', () => {
  it('is that every proof holds, where all of the job was measured before it', () => {
    expect(learned(jobOf(), `${ON}T15:00:00.000Z`)).toEqual(['stood']);
    expect(learned(jobOf(), '2026-10-02T10:00:00.000Z')).toEqual(['stood']);
  });

  it('counts the proofs that rest on the tool, none where it proved nothing', () => {
    const proofs = (job: ReturnType<typeof jobOf>) =>
      learnedSince(job, [], [impactAt('2026-10-02T10:00:00.000Z')], []).map(
        (one) => one.kind === 'stood' && one.proofs,
      );
    expect(proofs(jobOf())).toEqual([4]);
    expect(proofs(jobOf({ peaks: [24], behind: (shop) => shop.rest() }))).toEqual([0]);
  });

  it('is nothing where it was made earlier on the same day', () => {
    expect(learned(jobOf(), `${ON}T09:00:00.000Z`)).toEqual([]);
  });

  it('is nothing where it was made between two pulls', () => {
    const { state, entries } = jobOf();
    const last = entries.findLastIndex(({ event }) => event.type === 'pull-detected');
    const pulledOn = entries.map((entry, i) => (i < last ? { ...entry, at: `${ON}T08:00:00.000Z` } : entry));
    expect(learned({ state, entries: pulledOn }, `${ON}T09:00:00.000Z`)).toEqual([]);
  });

  it('is that every proof holds, where only the closing came later', () => {
    const { state, entries } = jobOf();
    const closedLater = entries.map((entry) =>
      entry.event.type === 'job-closed' ? entry : { ...entry, at: `${ON}T08:00:00.000Z` },
    );
    expect(entries.some(({ event }) => event.type === 'job-closed')).toBe(true);
    expect(learned({ state, entries: closedLater }, `${ON}T09:00:00.000Z`)).toEqual(['stood']);
  });

  it('is nothing where the tool was entered for the job and never used in it', () => {
    expect(learned(jobOf({ peaks: [], closed: false }), '2026-10-02T10:00:00.000Z')).toEqual([]);
  });
});
