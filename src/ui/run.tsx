/**
 * The live screen from beginning to end: views in, commands out, the terminal given back however it ends.
 * Import it dynamically and with NODE_ENV=production set before, because React's development build keeps every frame.
 */
import { type Observable, Subscription, tap } from 'rxjs';
import type { Command } from '../job/command.ts';
import { type Canvas, openCanvas, type TerminalLook } from './canvas.tsx';
import { commandFor, isQuit, type KeyPress } from './keys.ts';
import { paced } from './pace.ts';
import { summaryLines } from './summary.ts';
import { type ProcessEvents, takeTerminal } from './terminal.ts';
import type { BenchView } from './view.ts';

export interface ScreenRun extends TerminalLook {
  readonly view$: Observable<BenchView>;
  readonly onCommand: (command: Command) => void;
  /** Called once when a person or a signal wants to leave; the normal screen is back by then. */
  readonly onQuit: () => void;
  /** Where exit and signals are heard of; `process` unless a test says otherwise. */
  readonly events?: ProcessEvents;
}

/** What came, what the person has before their eyes, and whether the help is open. */
interface Seen {
  newest: BenchView | null;
  painted: BenchView | null;
  help: boolean;
}

/** Keys count for the newest state; an answer only for the question that the person could read. */
function commandNow(press: KeyPress, { newest, painted }: Seen): Command | 'quit' | 'help' | null {
  if (newest === null) return isQuit(press) ? 'quit' : null;
  const command = commandFor(press, newest.job, newest.live.pulling);
  const answers = command !== null && typeof command === 'object' && command.do === 'answer';
  return answers && painted?.job.questions[0]?.pull !== command.pull ? null : command;
}

function openScreen(run: ScreenRun, ended: (error?: unknown) => void): void {
  const seen: Seen = { newest: null, painted: null, help: false };
  const views = new Subscription();
  let canvas: Canvas | null = null;
  let over = false;

  const paint = () => {
    seen.painted = seen.newest;
    if (seen.newest !== null) canvas?.paint(seen.newest, seen.help);
  };
  const showHelp = (help: boolean) => {
    if (help === seen.help) return;
    seen.help = help;
    paint();
  };
  const end = (error?: unknown) => {
    if (over) return;
    over = true;
    giveBack();
    if (seen.newest !== null) run.stdout.write(`${summaryLines(seen.newest.job, run.ascii).join('\n')}\n`);
    ended(error);
  };
  const quit = () => {
    end();
    run.onQuit();
  };
  const press = (key: KeyPress) => {
    const command = over ? null : commandNow(key, seen);
    if (command === 'quit') quit();
    else if (command === 'help') showHelp(!seen.help);
    else if (command !== null) {
      showHelp(false);
      run.onCommand(command);
    }
  };

  const giveBack = takeTerminal({
    stdout: run.stdout,
    stopDrawing() {
      views.unsubscribe();
      canvas?.close();
    },
    onSignal: quit,
    events: run.events ?? process,
  });
  try {
    canvas = openCanvas(run, press, end);
  } catch (error) {
    end(error);
    return;
  }
  const kept = run.view$.pipe(tap((view) => Object.assign(seen, { newest: view })));
  views.add(paced(kept).subscribe({ next: paint, error: end, complete: () => end() }));
}

/**
 * Shows `view$` until it completes, a person leaves, or a signal comes; then leaves the summary on the normal screen.
 * Rejects with the error of `view$` or of the drawing, the terminal given back first.
 */
export const runScreen = (run: ScreenRun): Promise<void> =>
  new Promise((resolve, reject) => {
    openScreen(run, (error) => (error === undefined ? resolve() : reject(error)));
  });
