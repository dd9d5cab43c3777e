import { map, type Observable, Subject, share, tap } from 'rxjs';
import type { Tool } from '../../../drivers/driver.ts';
import type { TypedLine } from '../../../drivers/index.ts';
import type { LogEntry, Stamp } from '../../evidence/log.ts';
import type { Bench } from '../../job/bench.ts';
import type { Command } from '../../job/command.ts';
import { createLive, NO_TORQUE } from '../../pipeline/live.ts';
import { runJob, type Step } from '../../pipeline/run-job.ts';
import { ProblemError } from '../../problem.ts';
import type { ScreenRun } from '../../ui/run.tsx';
import type { Sound } from '../../ui/sound-commands.ts';
import { quantityOfLine, type TypedUnits } from '../../ui/typed-figure.ts';
import type { BenchView } from '../../ui/view.ts';
import { programVersion } from '../help/version.ts';
import type { Station } from '../station/station.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { inLines } from './plain-run.ts';
import { timeWithOffset } from './shop-time.ts';
import { soundPlayer } from './sound.ts';

/** A job about to be worked on, and how it is shown. */
export interface Work {
  readonly station: Station;
  readonly bench: Bench;
  readonly stream: string;
  readonly tools: readonly Tool[];
  readonly plain: boolean;
  readonly stamp: () => Stamp;
  /** Called with every step, for a simulation that looks at the screen. */
  readonly onStep?: (step: Step) => void;
  /** Commands that do not come from the keyboard. */
  readonly command$?: Observable<Command>;
  /** Where lines go that are no commands: figures that somebody, or a gauge, typed. */
  readonly typed$?: Subject<TypedLine>;
  /** What is typed at this station: the unit of a figure without one. */
  readonly typedUnits?: TypedUnits;
  /** No bell. */
  readonly quiet?: boolean;
  readonly sound?: Sound;
  /** See {@link RunJob}; of a simulation, which has a clock of its own. */
  readonly beat$?: Observable<unknown>;
}

/** How a run ended: the job closed, or left open to be taken up again. */
export type Outcome = 'closed' | 'left-open';

/**
 * Runs a job until it is closed or somebody leaves, on the screen or in plain lines. Whatever way it ends, what was
 * read is on disk and the tools are released. A tool that cannot be joined ends the run with its problem.
 */
export async function runWork(work: Work): Promise<Outcome> {
  const command$ = new Subject<Command>();
  const stop$ = new Subject<void>();
  const { log } = work.station;
  const run = runJob({
    bench: work.bench,
    log,
    stream: work.stream,
    program: `plugmark ${programVersion()}`,
    platform: `node ${process.versions.node} ${process.platform} ${process.arch}`,
    tools: work.tools,
    commands$: command$,
    stop$,
    stamp: work.stamp,
    ...(work.beat$ === undefined ? {} : { beat$: work.beat$ }),
  });
  const step$ = run.step$.pipe(share());
  // Loaded before any tool is joined: nobody would hear what it sends meanwhile.
  const screen = work.plain ? null : await import('../../ui/run.tsx');
  const fromElsewhere = work.command$?.subscribe((command) => command$.next(command));
  const shown =
    screen === null
      ? inLines({
          step$,
          look: () => ({ job: run.state(), pulling: work.bench.live()?.pulling ?? false }),
          command: (command) => command$.next(command),
          typedUnits: work.typedUnits ?? {},
          typed: (line) => work.typed$?.next(typedLine(work, line)),
          leave: () => stop$.next(),
          onStep: (step) => work.onStep?.(step),
          ascii: !speaksUtf8(),
          ...heard(work),
        })
      : screen.runScreen(screenOf(work, step$, command$, stop$));
  let failed: ProblemError | null = null;
  // While the job waits for the log, its tools are to be heard.
  log.waitAtMost(LOG_TRY_MS);
  for (const tool of work.tools)
    void tool.connect().then((joined) => {
      if (joined.ok) return;
      failed ??= new ProblemError(joined.error);
      stop$.next();
    });
  try {
    await shown;
  } finally {
    fromElsewhere?.unsubscribe();
    log.waitAtMost();
    try {
      run.finish();
    } finally {
      await Promise.all(work.tools.map((tool) => tool.close()));
    }
  }
  if (failed !== null && work.bench.state().closed === null) throw failed;
  return work.bench.state().closed === null ? 'left-open' : 'closed';
}

const LOG_TRY_MS = 50;

/** With one typed tool every line is its own; with two each names its quantity. */
const typedLine = ({ bench, typedUnits = {} }: Work, line: string): TypedLine => ({
  line,
  quantity: Object.keys(typedUnits).length < 2 ? null : quantityOfLine(line, bench.state()),
});

function viewOf(work: Work, step$: Observable<Step>): Observable<BenchView> {
  const follow = createLive();
  let live = NO_TORQUE;
  let logEntries = work.station.log.size();
  const pullTimes = new Map(work.station.log.entries(work.stream).flatMap(pullTime));
  return step$.pipe(
    map((step) => {
      if (step.live !== null) live = follow(work.stamp().monoUs, step.live);
      for (const { entry } of step.happened)
        for (const [pull, at] of pullTime(entry)) pullTimes.set(pull, at);
      logEntries = step.happened.at(-1)?.entry.seq ?? logEntries;
      return {
        station: work.station.name,
        job: step.state,
        live,
        forecast: step.forecast,
        logEntries,
        pullTimes,
        waits: step.waits,
        sources: work.tools.map(({ source }) => source),
      };
    }),
  );
}

const heard = ({ sound }: Work) => (sound === undefined ? {} : { onChime: soundPlayer(sound) });

/** When a pull was written, as the clock of the shop shows it. */
const pullTime = ({ at, event }: LogEntry): (readonly [number, string])[] =>
  event.type === 'pull-detected' ? [[event.pull, timeWithOffset(at)]] : [];

function screenOf(
  work: Work,
  step$: Observable<Step>,
  command$: Subject<Command>,
  stop$: Subject<void>,
): ScreenRun {
  return {
    view$: viewOf(work, step$.pipe(tap((step) => work.onStep?.(step)))),
    onCommand: (command) => command$.next(command),
    onTyped: (line) => work.typed$?.next(typedLine(work, line)),
    types: Object.keys(work.typedUnits ?? {}).length > 0,
    typedUnits: work.typedUnits ?? {},
    quiet: work.quiet === true,
    ...heard(work),
    onQuit: () => stop$.next(),
    ...(process.platform === 'win32' ? {} : { stop: () => void process.kill(0, 'SIGTSTP') }),
    stdout: process.stdout,
    stdin: process.stdin,
    color: wantsColor(),
    ascii: !speaksUtf8(),
  };
}

/** Whether there is a person in front of a terminal that can show the screen; on a build server Ink draws nothing. */
export function hasScreen(): boolean {
  const { CI, CONTINUOUS_INTEGRATION, TERM } = process.env;
  const built = [CI, CONTINUOUS_INTEGRATION].some(
    (set) => set !== undefined && set !== '0' && set !== 'false',
  );
  return process.stdout.isTTY === true && process.stdin.isTTY === true && TERM !== 'dumb' && !built;
}

export function wantsColor(): boolean {
  const { NO_COLOR, TERM } = process.env;
  return (NO_COLOR === undefined || NO_COLOR === '') && TERM !== 'dumb';
}
