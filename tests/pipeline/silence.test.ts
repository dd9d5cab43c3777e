import { Subject } from 'rxjs';
import { describe, expect, it } from 'vitest';
import type { Draft, LogEntry, StationLog } from '../../src/evidence/log.ts';
import { createBench } from '../../src/job/bench.ts';
import { fold } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { runJob } from '../../src/pipeline/run-job.ts';
import type { FigureSource, LinkState, Reading } from '../../src/reading.ts';
import { orThrow } from '../../src/result.ts';
import { jobEntry } from '../evidence/entries.ts';
import { exampleOrder, INSTRUMENTS, OPENING, WRENCH } from '../job/workshop.ts';

/** A run with a wrench that has just sent one figure; `passes`: the clock comes to that. */
function withOneFigure(source: FigureSource) {
  const entries: LogEntry[] = [];
  const log: StationLog = {
    append: (stream, drafts: readonly Draft[], stamp) => {
      const job = stream.replace('job:', '');
      const added = drafts.map(({ by, event }, i) =>
        jobEntry(event, { seq: entries.length + i + 1, ...stamp, by }, job),
      );
      entries.push(...added);
      return added;
    },
    entries: () => entries,
    streams: () => [],
    close: () => {},
  };
  const wrench = { link$: new Subject<LinkState>(), readings$: new Subject<Reading>() };
  const beat$ = new Subject<void>();
  const [opened] = orThrow(openJob(exampleOrder(4), INSTRUMENTS, OPENING));
  const bench = createBench(fold(null, opened));
  let monoUs = 0;
  runJob({
    ...{ bench, log, stream: 'job:test', program: 'test', platform: 'test', beat$ },
    tools: [{ id: 'wrench', driver: 'test', source, ...wrench }],
    commands$: new Subject(),
    stop$: new Subject(),
    stamp: () => ({ at: '2026-01-01T00:00:00.000Z', monoUs }),
  }).step$.subscribe();
  const kind = source === 'replayed' ? 'file' : 'bluetooth-le';
  const link = { kind, authenticated: false } as const;
  wrench.link$.next({ state: 'linked', description: { ...WRENCH, samplingFunction: 'maximum', link } });
  wrench.readings$.next({ kind: 'value', n: 1, atUs: 0, counts: 2700 });
  return {
    written: () => entries.map(({ event }) => event.type),
    passes: (us: number) => {
      monoUs = us;
      beat$.next();
    },
  };
}

describe('a tool that sends one figure a pull, and then nothing', () => {
  it('has its pull placed as soon as it has been silent for long enough, and the log says why', () => {
    const { written, passes } = withOneFigure('linked');
    passes(500_000);
    expect(written()).not.toContain('pull-detected');
    passes(600_000);
    expect(written().slice(-4)).toEqual(['readings', 'tool-silent', 'pull-detected', 'pull-placed']);
  });

  it('is not silent by the clock of the station where a recording is played', () => {
    const { written, passes } = withOneFigure('replayed');
    passes(600_000);
    expect(written()).not.toContain('tool-silent');
  });
});
