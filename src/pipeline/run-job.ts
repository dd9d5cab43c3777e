import {
  EMPTY,
  filter,
  interval,
  map,
  merge,
  mergeMap,
  type Observable,
  of,
  Subject,
  switchMap,
  takeUntil,
  takeWhile,
  timer,
} from 'rxjs';
import type { Draft, LogEntry, Stamp, StationLog } from '../evidence/log.ts';
import type { Bench, BenchInput } from '../job/bench.ts';
import type { Command } from '../job/command.ts';
import { writerOf } from '../job/command-event.ts';
import { fold } from '../job/fold.ts';
import type { JobState } from '../job/state.ts';
import { type Problem, ProblemError } from '../problem.ts';
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
  /** The log is held by another program; what came since is not in `state`. */
  readonly waits: boolean;
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

/** A job at work. */
export interface Running {
  /** Subscribe once; completes when the job is closed or `stop$` fires. Errors of the log end the stream. */
  readonly step$: Observable<Step>;
  /** As it was last shown: what waits for the log is not in it. */
  readonly state: () => JobState;
  /** Writes what still waits in memory; for the moment before the program ends. */
  readonly finish: () => void;
}

/**
 * Joins tools and people to a bench and the log: each input becomes events, the events are on disk, then the step goes on.
 * While another program keeps the log from being written, the step waits and is tried again; readings queue up behind it,
 * and commands are refused, because nobody has seen yet what they would answer.
 */
export function runJob(run: RunJob): Running {
  const writer = createWriter(run);
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
    writer.again$.pipe(
      switchMap(() => timer(RETRY_MS)),
      map((): BenchInput | null => null),
    ),
  ).pipe(takeUntil(run.stop$));
  const step$ = inputs$.pipe(
    filter(() => writer.state().closed === null),
    mergeMap((input) => writer.take(input)),
    takeWhile(({ state }) => state.closed === null, true),
  );
  return { step$, state: writer.state, finish: writer.finish };
}

const BEAT_MS = 200;

/** What the bench waits to hear: that a tool sent nothing more. A recording has another clock, in which nobody hears it. */
function silenceOf({ bench, stamp, tools }: RunJob): BenchInput | null {
  const waits = bench.waitsFor();
  if (waits === null || stamp().monoUs < waits.untilUs) return null;
  if (tools.some(({ id, source }) => id === waits.tool && source === 'replayed')) return null;
  return { kind: 'silence', tool: waits.tool, atUs: waits.untilUs };
}

/** Often enough that nobody waits for it, seldom enough that the radio is heard in between. */
const RETRY_MS = 100;

/** What an input led to, on its way into the log. */
interface Unwritten {
  readonly drafts: readonly Draft[];
  readonly stamp: Stamp;
  readonly before: JobState;
  readonly refused: Problem | null;
}

function createWriter({ bench, log, stream, stamp }: RunJob) {
  const again$ = new Subject<void>();
  const queue: { readonly input: BenchInput; readonly stamp: Stamp }[] = [];
  let unwritten: Unwritten | null = null;
  let shown = bench.state();

  const accept = (input: BenchInput, at: Stamp): Unwritten => {
    const before = bench.state();
    const out = bench.accept(input);
    const drafts = (out.ok ? out.value : []).map((event) => ({ by: writerOf(event), event }));
    return { drafts, stamp: at, before, refused: out.ok ? null : out.error };
  };
  const written = ({ drafts, stamp: at, before, refused }: Unwritten): Step => {
    let entries: readonly LogEntry[] = [];
    try {
      if (drafts.length > 0) entries = log.append(stream, drafts, at);
    } catch (cause) {
      // They are written, and saved with the rest of the log.
      if (codeOf(cause) === 'log-moved') unwritten = null;
      throw cause;
    }
    unwritten = null;
    let state = before;
    const happened = entries.map((entry) => {
      const after = fold(state, entry.event);
      const one = { entry, before: state, after };
      state = after;
      return one;
    });
    shown = bench.state();
    return { happened, state: shown, live: bench.live(), forecast: bench.forecast(), refused, waits: false };
  };
  const still = (refused: Problem | null): Step => ({
    happened: [],
    state: shown,
    live: null,
    forecast: null,
    refused,
    waits: true,
  });
  /** Writes what waits, then what came meanwhile, as far as the log takes it. */
  const writtenUp = (): readonly Step[] => {
    const steps: Step[] = [];
    try {
      if (unwritten !== null) steps.push(written(unwritten));
      for (let next = queue.shift(); next !== undefined && shown.closed === null; next = queue.shift()) {
        unwritten = accept(next.input, next.stamp);
        steps.push(written(unwritten));
      }
    } catch (cause) {
      if (codeOf(cause) !== 'log-busy') throw cause;
      again$.next();
      steps.push(still(null));
    }
    return steps;
  };
  return {
    again$,
    state: () => shown,
    /** Null: time to try again. */
    take(input: BenchInput | null): readonly Step[] {
      if (unwritten !== null && input?.kind === 'command') return [still(LOG_HELD)];
      if (input !== null) queue.push({ input, stamp: stamp() });
      return input !== null && unwritten !== null ? [] : writtenUp();
    },
    finish(): void {
      queue.push({ input: { kind: 'flush' }, stamp: stamp() });
      writtenUp();
      if (unwritten !== null) throw new ProblemError(NOT_WRITTEN);
    },
  };
}

const codeOf = (cause: unknown) => (cause instanceof ProblemError ? cause.problem.code : null);

const LOG_HELD: Problem = {
  code: 'log-busy',
  message: 'not taken: another program is using the log',
  next: 'Nothing is lost. Try again in a moment.',
};

const NOT_WRITTEN: Problem = {
  code: 'log-busy',
  message: 'another program kept the log to the end: what came while it was waited for is not on disk',
  next: 'Close the other program. Go on with the job: it asks about a pull that broke off.',
};
