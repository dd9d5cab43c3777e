import { createInterface } from 'node:readline';
import { finalize, map, type Observable, Subject, share, tap } from 'rxjs';
import type { Tool } from '../../drivers/driver.ts';
import type { Stamp } from '../evidence/log.ts';
import type { Bench } from '../job/bench.ts';
import type { Command } from '../job/command.ts';
import { createLive, NO_TORQUE } from '../pipeline/live.ts';
import { finishRun, type RunJob, runJob, type Step } from '../pipeline/run-job.ts';
import { ProblemError } from '../problem.ts';
import { commandFor } from '../ui/keys.ts';
import { lineFor } from '../ui/lines.ts';
import { summaryLines } from '../ui/summary.ts';
import type { BenchView } from '../ui/view.ts';
import { problemText } from './exit.ts';
import type { Station } from './station.ts';
import { programVersion } from './version.ts';

/** A job about to be worked on, and how it is shown. */
export interface Work {
  readonly station: Station;
  readonly bench: Bench;
  readonly stream: string;
  readonly tools: readonly Tool[];
  readonly simulated: boolean;
  readonly plain: boolean;
  readonly stamp: () => Stamp;
  /** Called with every step, for a simulation that looks at the screen. */
  readonly onStep?: (step: Step) => void;
  /** Commands that do not come from the keyboard. */
  readonly command$?: Observable<Command>;
  /** Where lines go that are no commands: figures that somebody, or a gauge, typed. */
  readonly typed$?: Subject<string>;
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
  const run: RunJob = {
    bench: work.bench,
    log: work.station.log,
    stream: work.stream,
    program: `plugmark ${programVersion()}`,
    platform: `node ${process.versions.node} ${process.platform} ${process.arch}`,
    simulated: work.simulated,
    tools: work.tools,
    commands$: command$,
    stop$,
    stamp: work.stamp,
  };
  const step$ = runJob(run).pipe(share());
  const fromElsewhere = work.command$?.subscribe((command) => command$.next(command));
  const shown = work.plain ? inLines(work, step$, command$, stop$) : onScreen(work, step$, command$, stop$);
  let failed: ProblemError | null = null;
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
    finishRun(run);
    await Promise.all(work.tools.map((tool) => tool.close()));
  }
  if (failed !== null && work.bench.state().closed === null) throw failed;
  return work.bench.state().closed === null ? 'left-open' : 'closed';
}

function viewOf(work: Work, step$: Observable<Step>): Observable<BenchView> {
  const follow = createLive();
  let live = NO_TORQUE;
  let logEntries = work.station.log.size();
  return step$.pipe(
    map((step) => {
      if (step.live !== null) live = follow(work.stamp().monoUs, step.live);
      logEntries = step.happened.at(-1)?.entry.seq ?? logEntries;
      return {
        station: work.station.name,
        job: step.state,
        live,
        logEntries,
        simulated: work.simulated,
      };
    }),
  );
}

async function onScreen(
  work: Work,
  step$: Observable<Step>,
  command$: Subject<Command>,
  stop$: Subject<void>,
): Promise<void> {
  const { runScreen } = await import('../ui/run.tsx');
  await runScreen({
    view$: viewOf(work, step$.pipe(tap((step) => work.onStep?.(step)))),
    onCommand: (command) => command$.next(command),
    onQuit: () => stop$.next(),
    stdout: process.stdout,
    stdin: process.stdin,
    color: wantsColor(),
    ascii: !speaksUtf8(),
  });
}

/** A line an event; commands are lines too, each the key that the screen would take. */
function inLines(
  work: Work,
  step$: Observable<Step>,
  command$: Subject<Command>,
  stop$: Subject<void>,
): Promise<void> {
  const ascii = !speaksUtf8();
  const keyboard = createInterface({ input: process.stdin, terminal: false });
  const leave = () => stop$.next();
  keyboard.on('line', (line) => {
    const command = commandFor({ key: line.trim() }, work.bench.state(), work.bench.live()?.pulling ?? false);
    if (command === 'quit') leave();
    else if (command === null) work.typed$?.next(line);
    else if (command !== 'help') command$.next(command);
  });
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, leave);
  const print = (line: string) => process.stdout.write(`${line}\n`);
  return new Promise<void>((resolve, reject) => {
    step$
      .pipe(
        finalize(() => {
          keyboard.close();
          // Closed in the middle of a line it goes on waiting for the next one, and the program with it.
          process.stdin.destroy();
          for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.off(signal, leave);
        }),
      )
      .subscribe({
        next: (step) => {
          for (const { entry, before, after } of step.happened) {
            const line = lineFor(entry.event, before, after, timeOfDay(entry.at), ascii);
            if (line !== null) print(line);
          }
          if (step.refused !== null) print(problemText(step.refused).trimEnd());
          work.onStep?.(step);
        },
        error: reject,
        complete: () => {
          for (const line of summaryLines(work.bench.state(), ascii)) print(line);
          resolve();
        },
      });
  });
}

/** Whether there is a person in front of a terminal that can show the screen; Ink draws nothing where CI is set. */
export function hasScreen(): boolean {
  const { CI, TERM } = process.env;
  return (
    process.stdout.isTTY === true && process.stdin.isTTY === true && TERM !== 'dumb' && (CI ?? '') === ''
  );
}

const timeOfDay = (at: string) => at.slice(11, 19);

export function wantsColor(): boolean {
  const { NO_COLOR, TERM } = process.env;
  return (NO_COLOR === undefined || NO_COLOR === '') && TERM !== 'dumb';
}

export function speaksUtf8(): boolean {
  const { LC_ALL, LC_CTYPE, LANG } = process.env;
  return process.platform === 'win32' || /utf-?8/i.test(LC_ALL || LC_CTYPE || LANG || '');
}
