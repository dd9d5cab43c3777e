import { describe, expect, it } from 'vitest';
import type { LogEntry } from '../../src/evidence/log.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { judged, recordOf, rejected, signedAnew } from './forge.ts';
import { logOf, seal, station, stationEvents, technician, wholeJob } from './sample-job.ts';

const bytes = seal(logOf(wholeJob()));
const record = recordOf(bytes);

describe('a dishonest station that signs anew what it changed', () => {
  const anew = (change: Partial<typeof record>) => signedAnew({ ...record, ...change }, station, technician);
  const { entries } = record;
  const kept = (keep: (i: number) => boolean) => entries.filter((_entry, i) => keep(i));
  const [second, third] = [entries[1], entries[2]];
  const other = recordOf(seal(logOf(wholeJob('WO-2'), 'job:WO-2')));

  it.each([
    ['an entry dropped', kept((i) => i !== 4), 'stands where'],
    ['the last entry dropped', kept((i) => i !== entries.length - 1), 'are not in the log'],
    ['the first entry dropped', kept((i) => i !== 0), 'stands where'],
    [
      'two entries exchanged',
      entries.map((e, i) => (i === 1 ? third : i === 2 ? second : e)),
      'stands where',
    ],
    ['an entry twice', entries.flatMap((e) => (e.n === 3 ? [e, e] : [e])), 'stands where'],
    [
      'an entry of another job',
      entries.map((e, i) => (i === 3 ? other.entries[3] : e)),
      'belongs to "job:WO-2"',
    ],
    [
      'an entry by somebody else',
      entries.map((e, i) => (i === 3 ? { ...e, by: 'B. Example' } : e)),
      'are not in the log',
    ],
    [
      'an entry at another time',
      entries.map((e, i) => (i === 3 ? { ...e, at: '2026-03-02T09:30:00.002Z' } : e)),
      'are not in the log',
    ],
    ['all entries at other places', entries.map((e) => ({ ...e, seq: e.seq + 1 })), 'are not in the log'],
  ])('%s: not what the log holds', (_what, list, why) => {
    const verdict = judged(anew({ entries: list as LogEntry[] }));
    expect(verdict.verdict).toBe('rejected');
    expect(verdict.failed).toContain('log');
    expect(verdict.why).toContain(why);
  });

  it.each([
    ['the entries of another job', { entries: other.entries }, ['log', 'contents']],
    ['another job’s number', { job: 'WO-9' }, ['log', 'contents']],
    ['the log part of another record', { log: other.log }, ['log']],
    [
      'a proof with a hash more',
      { log: { ...record.log, proof: [...record.log.proof, Buffer.alloc(32).toString('base64')] } },
      ['log'],
    ],
    ['a nicer summary', { summary: { ...record.summary, openQuestions: 1 } }, ['contents']],
    [
      'a smaller uncertainty in a budget',
      { budgets: record.budgets.map((one) => ({ ...one, expanded: one.expanded / 2 })) },
      ['contents'],
    ],
    ['another name of the station', { station: 'bay 9' }, ['signatures']],
    ['no word about the technician', { technicianSignature: 'no-key' }, ['signatures']],
    ['no background', { background: record.background.slice(0, 1) }, ['signatures', 'log', 'contents']],
    [
      'a background in another order',
      { background: record.background.toReversed() },
      ['signatures', 'log', 'contents'],
    ],
  ] as const)('%s: caught', (_what, change, failed) => {
    expect(judged(anew(change as Partial<typeof record>))).toMatchObject(rejected(...failed));
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
      'cylinder 1: ',
    ],
    ['opened twice', (events) => [...events.slice(0, 1), ...events], 'not opened exactly once'],
    [
      'a pull placed that was never found',
      (events) => events.filter((e) => e.type !== 'pull-detected'),
      'played back',
    ],
    [
      'an answer to no question',
      (events) => [...events, { type: 'question-answered', pull: 1, answer: 'fresh' }],
      'played back',
    ],
  ])(
    '%s: not complete, and not what the samples give, however well signed and logged',
    (_what, change, why) => {
      const log = logOf(change(wholeJob()));
      const verdict = judged(sealOrSign(log));
      expect(['rejected', 'incomplete']).toContain(verdict.verdict);
      expect(verdict.failed.some((name) => name === 'contents' || name === 'completeness')).toBe(true);
      expect(verdict.why).toContain(why);
    },
  );

  /** As the program would seal these entries, where it can. */
  function sealOrSign(log: ReturnType<typeof logOf>) {
    try {
      return seal(log);
    } catch {
      return anew({ entries: [...log.entries] });
    }
  }

  const changed = (type: JobEvent['type'], change: (event: JobEvent) => JobEvent) => (events: JobEvent[]) =>
    events.map((event) => (event.type === type ? change(event) : event));
  it.each<[string, (events: JobEvent[]) => JobEvent[]]>([
    [
      'a verdict',
      changed('pull-placed', (e) =>
        e.type === 'pull-placed' && e.judgement !== null
          ? { ...e, judgement: { ...e.judgement, value: 27.5 } }
          : e,
      ),
    ],
    ['a peak', changed('pull-detected', (e) => (e.type === 'pull-detected' ? { ...e, peakNm: 27.5 } : e))],
    ['a reason', changed('pull-placed', (e) => (e.type === 'pull-placed' ? { ...e, because: 'so' } : e))],
    [
      'the samples',
      changed('readings', (e) =>
        e.type === 'readings' && e.tool === 'gauge' ? { ...e, counts: 'oHQ=' } : e,
      ),
    ],
    [
      'a wider window',
      changed('job-opened', (e) =>
        e.type === 'job-opened' ? { ...e, torqueWindow: { ...e.torqueWindow, acceptUpper: 27 } } : e,
      ),
    ],
  ])('%s changed and the whole log written anew: judged otherwise from the samples', (_what, change) => {
    const verdict = judged(seal(logOf(change(wholeJob()))));
    expect(verdict.verdict).toBe('rejected');
    expect(verdict.failed).toContain('judged again');
    expect(verdict.failed).not.toContain('log');
  });

  it('an instrument described better for this job than in the log: caught', () => {
    const better = wholeJob().map((event) =>
      event.type === 'job-opened'
        ? { ...event, instruments: event.instruments.map((one) => ({ ...one, resolution: 0.0001 })) }
        : event,
    );
    const verdict = judged(seal(logOf(better)));
    expect(verdict.failed).toContain('contents');
    expect(verdict.why).toContain('is not as the station');
  });

  it('an instrument that the log had otherwise when the job was opened, and so only afterwards: caught', () => {
    const other = <T extends { readonly id: string }>(one: T): T => ({ ...one, serial: 'S-9' });
    const opened = entries.map((entry) =>
      entry.event.type === 'job-opened'
        ? { ...entry, event: { ...entry.event, instruments: entry.event.instruments.map(other) } }
        : entry,
    );
    const after = (entries.at(-1)?.seq ?? 0) + 1;
    const background = record.background
      .map((entry) =>
        entry.event.type === 'instrument-recorded'
          ? {
              ...entry,
              seq: entry.seq + after,
              n: entry.n + 10,
              event: { ...entry.event, instrument: other(entry.event.instrument) },
            }
          : entry,
      )
      .sort((a, b) => a.seq - b.seq);
    const verdict = judged(anew({ entries: opened, background }));
    expect(verdict.failed).toContain('contents');
    expect(verdict.why).toContain('is not as the station');
  });

  it('a technician’s signature by a key that the log does not name: caught', () => {
    const [setUp] = stationEvents;
    if (setUp === undefined) throw new Error('no set-up in the sample');
    const log = logOf(wholeJob(), 'job:WO-1', [setUp, ...stationEvents.slice(2)]);
    expect(judged(seal(log)).why).toContain('does not name');
  });
});
