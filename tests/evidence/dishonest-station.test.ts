import { describe, expect, it } from 'vitest';
import { entryHash } from '../../src/evidence/chain.ts';
import type { LogEntry } from '../../src/evidence/log.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { judged, recordOf, rejected, signedAnew } from './forge.ts';
import { logOf, seal, station, technician, wholeJob } from './sample-job.ts';

const bytes = seal(logOf(wholeJob()));
const record = recordOf(bytes);

describe('a dishonest station that signs anew what it changed', () => {
  const anew = (change: Partial<typeof record>) => signedAnew({ ...record, ...change }, station, technician);
  const { entries } = record;
  const kept = (keep: (i: number) => boolean) => entries.filter((_entry, i) => keep(i));
  const headOf = (list: readonly LogEntry[]) => {
    const last = list.at(-1);
    return last === undefined ? record.head : { seq: last.seq, hash: entryHash(last) };
  };
  const [second, third] = [entries[1], entries[2]];
  const other = recordOf(seal(logOf(wholeJob('WO-2'), 'job:WO-2')));

  it.each([
    ['an entry dropped', kept((i) => i !== 4), 'stands where'],
    ['the last entry dropped', kept((i) => i !== entries.length - 1), 'head'],
    ['the first entry dropped', kept((i) => i !== 0), 'stands where'],
    [
      'two entries exchanged',
      entries.map((e, i) => (i === 1 ? third : i === 2 ? second : e)),
      'stands where',
    ],
    ['an entry twice', entries.flatMap((e) => (e.n === 3 ? [e, e] : [e])), 'stands where'],
    ['an entry of another job', entries.map((e, i) => (i === 3 ? other.entries[3] : e)), 'another stream'],
    [
      'an entry by somebody else',
      entries.map((e, i) => (i === 3 ? { ...e, by: 'B. Example' } : e)),
      'hash of the entry before',
    ],
  ])('%s: the chain is broken', (_what, list, why) => {
    const verdict = judged(anew({ entries: list as LogEntry[] }));
    expect(verdict.verdict).toBe('rejected');
    expect(verdict.failed).toContain('chain');
    expect(verdict.failed).not.toContain('signatures');
    expect(verdict.why).toContain(why);
  });

  it.each([
    ['the entries of another job', { entries: other.entries, head: other.head }, ['chain', 'completeness']],
    ['another job’s number', { job: 'WO-9' }, ['chain', 'completeness']],
    ['another head', { head: { ...record.head, seq: 99 } }, ['chain']],
    ['a nicer summary', { summary: { ...record.summary, openQuestions: 1 } }, ['completeness']],
  ])('%s: caught', (_what, change, failed) => {
    expect(judged(anew(change))).toMatchObject(rejected(...failed));
  });

  it.each<[string, (events: JobEvent[]) => JobEvent[], string]>([
    ['not closed', (events) => events.slice(0, -1), 'The job was not closed.'],
    [
      'closed incomplete',
      (events) => [
        ...events.slice(0, -1),
        { type: 'job-closed', complete: false, open: ['cylinder 2: no pull yet'] },
      ],
      'The job was closed incomplete: cylinder 2: no pull yet.',
    ],
    [
      'one gap missing',
      (events) => events.filter((e) => e.type !== 'gap-measured' || e.cylinder !== 2),
      'cylinder 2: gap',
    ],
    [
      'one pull missing',
      (events) => events.filter((e) => !('pull' in e && e.pull === 2)),
      'cylinder 2: no torque yet',
    ],
    [
      'a pull not OK',
      (events) =>
        events.map((e) =>
          e.type === 'pull-placed' && e.pull === 2 && e.judgement !== null
            ? { ...e, judgement: { ...e.judgement, result: 'NotOK', side: 'low', grade: 'fail' } }
            : e,
        ),
      'cylinder 2: torque not proven',
    ],
    [
      'a pull taken off its cylinder again without anything in its place',
      (events) => [
        ...events,
        { type: 'pull-placed', pull: 1, cylinder: null, kind: 'handling', because: 'x', judgement: null },
      ],
      'Cylinder 1 counts as done, but no OK figure stands for it.',
    ],
    ['opened twice', (events) => [...events.slice(0, 1), ...events], 'not opened exactly once'],
    [
      'a pull placed that was never found',
      (events) => events.filter((e) => e.type !== 'pull-found'),
      'played back',
    ],
    [
      'an answer to no question',
      (events) => [...events, { type: 'question-answered', pull: 1, answer: 'fresh' }],
      'played back',
    ],
  ])('%s: not complete, however well signed and chained', (_what, change, why) => {
    const list = logOf(change(wholeJob()));
    const verdict = judged(anew({ entries: list, head: headOf(list), summary: summaryIn(list) }));
    expect(verdict).toMatchObject(rejected('completeness'));
    expect(verdict.why).toContain(why);
  });

  /** The summary that the program itself would write for these entries, where it can. */
  function summaryIn(list: readonly LogEntry[]) {
    try {
      return recordOf(seal(list)).summary;
    } catch {
      return record.summary;
    }
  }
});
