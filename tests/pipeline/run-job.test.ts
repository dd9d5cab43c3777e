import { firstValueFrom, Subject, toArray } from 'rxjs';
import { TestScheduler } from 'rxjs/testing';
import { describe, expect, it } from 'vitest';
import type { Draft, LogEntry, StationLog } from '../../src/evidence/log.ts';
import { createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import { fold } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { type RunJob, runJob, type Step } from '../../src/pipeline/run-job.ts';
import { ProblemError } from '../../src/problem.ts';
import type { LinkState, Reading } from '../../src/reading.ts';
import { orThrow } from '../../src/result.ts';
import { jobEntry } from '../evidence/entries.ts';
import { exampleOrder, INSTRUMENTS, OPENING, WRENCH } from '../job/workshop.ts';
import { drawn, turningPull } from '../pull/shapes.ts';

/** A log in memory that remembers in which order things were written; `fail` makes the disk full. */
function memoryLog() {
  const entries: LogEntry[] = [];
  const disk = { full: false, held: false };
  const log: StationLog = {
    append: (stream, drafts: readonly Draft[], stamp) => {
      if (disk.full) throw new Error('disk full');
      if (disk.held) throw new ProblemError({ code: 'log-busy', message: 'held', next: 'Wait.' });
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
    runJob(run).step$.subscribe(({ happened }) => {
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
    runJob(run).step$.subscribe({ next: (step) => steps.push(step), error: (e) => (error = e) });
    wrench.link$.next({ state: 'linked', description: WRENCH });
    disk.full = true;
    pull();
    expect(error).toEqual(new Error('disk full'));
    expect(steps.some(({ state }) => state.lastVerdict !== null)).toBe(false);
  });

  it('says who did what: the technician answers, the station measures', () => {
    const { run, entries, commands$ } = station();
    runJob(run).step$.subscribe();
    commands$.next({ do: 'choose-cylinder', quantity: 'torque', cylinder: 3 });
    expect(entries.map(({ by, event }) => [event.type, by])).toEqual([
      ['session-started', 'station'],
      ['cylinder-chosen', 'technician'],
    ]);
  });

  it('passes on why a command was refused and changes nothing', async () => {
    const { run, entries, commands$, stop$ } = station();
    const steps = firstValueFrom(runJob(run).step$.pipe(toArray()));
    commands$.next({ do: 'choose-cylinder', quantity: 'torque', cylinder: 9 });
    stop$.next();
    expect((await steps).map(({ refused }) => refused?.code ?? null)).toEqual([null, 'command-refused']);
    expect(entries).toHaveLength(1);
  });

  it('completes when the job is closed', () => {
    const { run, commands$ } = station();
    let complete = false;
    runJob(run).step$.subscribe({ complete: () => (complete = true) });
    commands$.next({ do: 'close' });
    expect(complete).toBe(true);
  });

  it('writes what waits in memory after ten seconds without readings, and when it ends', () => {
    const { run, entries, wrench } = station();
    const written = () => entries.filter(({ event }) => event.type === 'readings').length;
    new TestScheduler(() => {}).run(({ cold, expectObservable }) => {
      const feed$ = cold('a 12500ms b', { a: 1, b: 2 });
      const counts: number[] = [];
      const job = runJob(run);
      const subscription = job.step$.subscribe();
      feed$.subscribe((n) => {
        if (n === 1) {
          wrench.link$.next({ state: 'linked', description: WRENCH });
          wrench.readings$.next({ kind: 'value', n: 1, atUs: 1000, counts: 0 });
          counts.push(written());
        } else {
          counts.push(written());
          wrench.readings$.next({ kind: 'value', n: 2, atUs: 12_500_000, counts: 0 });
          subscription.unsubscribe();
          job.finish();
          counts.push(written());
          expect(counts).toEqual([0, 1, 2]);
        }
      });
      expectObservable(feed$).toBe('a 12500ms b', { a: 1, b: 2 });
    });
  });

  it('waits where another program holds the log, shows nothing new meanwhile, and loses no reading', () => {
    const { run, disk, entries, wrench, pull, commands$ } = station();
    new TestScheduler(() => {}).run(({ cold, flush }) => {
      const steps: Step[] = [];
      let ended = false;
      const job = runJob(run);
      const subscription = job.step$.subscribe({
        next: (step) => steps.push(step),
        error: () => (ended = true),
      });
      cold('a 4900ms b 300ms c', { a: 'held', b: 'asked', c: 'free' }).subscribe((moment) => {
        if (moment === 'held') {
          wrench.link$.next({ state: 'linked', description: WRENCH });
          disk.held = true;
          pull();
          expect(steps.at(-1)).toMatchObject({ waits: true, happened: [] });
          expect(entries.map(({ event }) => event.type)).toEqual(['session-started', 'tool-linked']);
          expect(job.state().lastVerdict).toBeNull();
        } else if (moment === 'asked') {
          commands$.next({ do: 'choose-cylinder', quantity: 'torque', cylinder: 3 });
          expect(steps.at(-1)).toMatchObject({ waits: true, refused: { code: 'log-busy' } });
          disk.held = false;
        } else {
          expect(ended).toBe(false);
          expect(steps.at(-1)).toMatchObject({ waits: false });
          expect(job.state().lastVerdict).not.toBeNull();
          expect(entries.some(({ event }) => event.type === 'cylinder-chosen')).toBe(false);
          subscription.unsubscribe();
        }
      });
      flush();
    });
    const undisturbed = station();
    runJob(undisturbed.run).step$.subscribe();
    undisturbed.wrench.link$.next({ state: 'linked', description: WRENCH });
    undisturbed.pull();
    expect(entries.map(({ event }) => event)).toEqual(undisturbed.entries.map(({ event }) => event));
  });

  it('is left while another program holds the log: says that not all is on disk, or writes it', () => {
    const { run, disk, wrench, pull, entries } = station();
    const job = runJob(run);
    const subscription = job.step$.subscribe();
    wrench.link$.next({ state: 'linked', description: WRENCH });
    disk.held = true;
    pull();
    subscription.unsubscribe();
    expect(() => job.finish()).toThrow(
      expect.objectContaining({ problem: expect.objectContaining({ code: 'log-busy' }) }),
    );
    disk.held = false;
    job.finish();
    expect(entries.map(({ event }) => event.type)).toContain('pull-placed');
  });
});
