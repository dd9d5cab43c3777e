import { firstValueFrom, Subject, toArray } from 'rxjs';
import { TestScheduler } from 'rxjs/testing';
import { describe, expect, it } from 'vitest';
import type { Draft, LogEntry, StationLog } from '../../src/evidence/log.ts';
import { createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import { fold } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { finishRun, type RunJob, runJob, type Step } from '../../src/pipeline/run-job.ts';
import type { LinkState, Reading } from '../../src/reading.ts';
import { orThrow } from '../../src/result.ts';
import { jobEntry } from '../evidence/entries.ts';
import { exampleOrder, INSTRUMENTS, OPENING, WRENCH } from '../job/workshop.ts';
import { drawn, turningPull } from '../pull/shapes.ts';

/** A log in memory that remembers in which order things were written; `fail` makes the disk full. */
function memoryLog() {
  const entries: LogEntry[] = [];
  const disk = { full: false };
  const log: StationLog = {
    append: (stream, drafts: readonly Draft[], stamp) => {
      if (disk.full) throw new Error('disk full');
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
  return { log, entries, disk };
}

function station() {
  const memory = memoryLog();
  const wrench = { link$: new Subject<LinkState>(), readings$: new Subject<Reading>() };
  const commands$ = new Subject<Command>();
  const stop$ = new Subject<void>();
  const [opened] = orThrow(openJob(exampleOrder(4), INSTRUMENTS, OPENING));
  const run: RunJob = {
    bench: createBench(fold(null, opened)),
    log: memory.log,
    stream: 'job:test',
    program: 'test',
    platform: 'test',
    tools: [{ id: 'wrench', driver: 'test', source: 'linked', ...wrench }],
    commands$,
    stop$,
    stamp: () => ({ at: '2026-01-01T00:00:00.000Z', monoUs: 0 }),
  };
  const pull = () => {
    drawn([{ atMs: 0, nm: 0 }, ...turningPull(400, 700, 27, 22, 22)]).forEach(({ atUs, nm }, i) => {
      wrench.readings$.next({ kind: 'value', n: i + 1, atUs, counts: Math.round(nm * 100) });
    });
  };
  return { ...memory, wrench, commands$, stop$, run, pull };
}

describe('a job at work', () => {
  it('shows nothing that is not in the log yet', () => {
    const { run, entries, wrench, pull } = station();
    const seen: { shown: number; written: number }[] = [];
    runJob(run).subscribe(({ happened }) => {
      for (const { entry } of happened) seen.push({ shown: entry.seq, written: entries.length });
    });
    wrench.link$.next({ state: 'linked', description: WRENCH });
    pull();
    expect(seen.length).toBeGreaterThan(5);
    expect(seen.every(({ shown, written }) => shown <= written)).toBe(true);
    expect(entries.map(({ event }) => event.type)).toContain('pull-placed');
  });

  it('ends with an error and shows no verdict when the log cannot be written', () => {
    const { run, disk, wrench, pull } = station();
    const steps: Step[] = [];
    let error: unknown = null;
    runJob(run).subscribe({ next: (step) => steps.push(step), error: (e) => (error = e) });
    wrench.link$.next({ state: 'linked', description: WRENCH });
    disk.full = true;
    pull();
    expect(error).toEqual(new Error('disk full'));
    expect(steps.some(({ state }) => state.lastVerdict !== null)).toBe(false);
  });

  it('says who did what: the technician answers, the station measures', () => {
    const { run, entries, commands$ } = station();
    runJob(run).subscribe();
    commands$.next({ do: 'choose-cylinder', quantity: 'torque', cylinder: 3 });
    expect(entries.map(({ by, event }) => [event.type, by])).toEqual([
      ['session-started', 'station'],
      ['cylinder-chosen', 'technician'],
    ]);
  });

  it('passes on why a command was refused and changes nothing', async () => {
    const { run, entries, commands$, stop$ } = station();
    const steps = firstValueFrom(runJob(run).pipe(toArray()));
    commands$.next({ do: 'choose-cylinder', quantity: 'torque', cylinder: 9 });
    stop$.next();
    expect((await steps).map(({ refused }) => refused?.code ?? null)).toEqual([null, 'command-refused']);
    expect(entries).toHaveLength(1);
  });

  it('completes when the job is closed', () => {
    const { run, commands$ } = station();
    let complete = false;
    runJob(run).subscribe({ complete: () => (complete = true) });
    commands$.next({ do: 'close' });
    expect(complete).toBe(true);
  });

  it('writes what waits in memory after ten seconds without readings, and when it ends', () => {
    const { run, entries, wrench } = station();
    const written = () => entries.filter(({ event }) => event.type === 'readings').length;
    new TestScheduler(() => {}).run(({ cold, expectObservable }) => {
      const feed$ = cold('a 12500ms b', { a: 1, b: 2 });
      const counts: number[] = [];
      const subscription = runJob(run).subscribe();
      feed$.subscribe((n) => {
        if (n === 1) {
          wrench.link$.next({ state: 'linked', description: WRENCH });
          wrench.readings$.next({ kind: 'value', n: 1, atUs: 1000, counts: 0 });
          counts.push(written());
        } else {
          counts.push(written());
          wrench.readings$.next({ kind: 'value', n: 2, atUs: 12_500_000, counts: 0 });
          subscription.unsubscribe();
          finishRun(run);
          counts.push(written());
          expect(counts).toEqual([0, 1, 2]);
        }
      });
      expectObservable(feed$).toBe('a 12500ms b', { a: 1, b: 2 });
    });
  });
});
