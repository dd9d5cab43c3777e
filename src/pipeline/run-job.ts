import { EMPTY, filter, interval, map, merge, type Observable, of, takeUntil, takeWhile } from 'rxjs';
import type { LogEntry, Stamp, StationLog } from '../evidence/log.ts';
import type { Bench, BenchInput } from '../job/bench.ts';
import type { Command } from '../job/command.ts';
import { writerOf } from '../job/command-event.ts';
import { fold } from '../job/fold.ts';
import type { JobState } from '../job/state.ts';
import type { Problem } from '../problem.ts';
import type { DeviceRefusal, FigureSource, LinkState, Reading, ToolId } from '../reading.ts';

/** A joined tool as the pipeline sees it; every driver's tool fits. */
export interface JobTool {
  readonly id: ToolId;
  readonly driver: string;
  readonly source: FigureSource;
  readonly link$: Observable<LinkState>;
  readonly readings$: Observable<Reading>;
  readonly refusals$?: Observable<DeviceRefusal>;
}

/** One event with the states on both sides of it. */
export interface Happened {
  readonly entry: LogEntry;
  readonly before: JobState;
  readonly after: JobState;
}

/** What one input led to. All of `happened` is on disk when the step is seen. */
export interface Step {
  readonly happened: readonly Happened[];
  readonly state: JobState;
  readonly live: ReturnType<Bench['live']>;
  readonly forecast: ReturnType<Bench['forecast']>;
  readonly refused: Problem | null;
}

export interface RunJob {
  readonly bench: Bench;
  readonly log: StationLog;
  readonly stream: string;
  readonly program: string;
  readonly platform: string;
  readonly tools: readonly JobTool[];
  readonly commands$: Observable<Command>;
  /** Ends the run; what waits in memory is written first. */
  readonly stop$: Observable<unknown>;
  readonly stamp: () => Stamp;
  /** How often samples that wait while nothing comes are written. */
  readonly flushMs?: number;
  /** Beats at which it is looked whether a tool has been silent for long enough; every 200 ms unless told. */
  readonly beat$?: Observable<unknown>;
}

/**
 * Joins tools and people to a bench and the log: each input becomes events, the events are on disk, then the step goes
 * on. Subscribe once; completes when the job is closed or `stop$` fires. Errors of the log end the stream.
 */
export function runJob(run: RunJob): Observable<Step> {
  const inputs$ = merge(
    of<BenchInput>({
      kind: 'session',
      program: run.program,
      platform: run.platform,
    }),
    ...run.tools.flatMap((tool) => [
      tool.link$.pipe(
        map(
          (link): BenchInput => ({
            kind: 'link',
            tool: tool.id,
            driver: tool.driver,
            source: tool.source,
            link,
          }),
        ),
      ),
      tool.readings$.pipe(map((reading): BenchInput => ({ kind: 'reading', tool: tool.id, reading }))),
      (tool.refusals$ ?? EMPTY).pipe(
        map((refusal): BenchInput => ({ kind: 'refusal', tool: tool.id, refusal })),
      ),
    ]),
    run.commands$.pipe(map((command): BenchInput => ({ kind: 'command', command }))),
    (run.beat$ ?? interval(BEAT_MS)).pipe(
      map(() => silenceOf(run)),
      filter((input) => input !== null),
    ),
    interval(run.flushMs ?? 10_000).pipe(map((): BenchInput => ({ kind: 'flush' }))),
  ).pipe(takeUntil(run.stop$));
  return inputs$.pipe(
    filter(() => run.bench.state().closed === null),
    map((input) => step(run, input)),
    takeWhile(({ state }) => state.closed === null, true),
  );
}

const BEAT_MS = 200;

/** What the bench waits to hear: that a tool sent nothing more. A recording has another clock, in which nobody hears it. */
function silenceOf({ bench, stamp, tools }: RunJob): BenchInput | null {
  const waits = bench.waitsFor();
  if (waits === null || stamp().monoUs < waits.untilUs) return null;
  if (tools.some(({ id, source }) => id === waits.tool && source === 'replayed')) return null;
  return { kind: 'silence', tool: waits.tool, atUs: waits.untilUs };
}

/** Writes what still waits in memory; for the moment before the program ends. */
export function finishRun(run: RunJob): Step {
  return step(run, { kind: 'flush' });
}

function step(run: RunJob, input: BenchInput): Step {
  const { bench, log, stream } = run;
  let before = bench.state();
  const out = bench.accept(input);
  const events = out.ok ? out.value : [];
  const drafts = events.map((event) => ({ by: writerOf(event), event }));
  const entries = drafts.length === 0 ? [] : log.append(stream, drafts, run.stamp());
  const happened = entries.map((entry) => {
    const after = fold(before, entry.event);
    const one = { entry, before, after };
    before = after;
    return one;
  });
  const refused = out.ok ? null : out.error;
  return { happened, state: bench.state(), live: bench.live(), forecast: bench.forecast(), refused };
}
