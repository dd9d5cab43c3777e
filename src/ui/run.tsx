/**
 * The live screen from beginning to end: views in, commands out, the terminal given back however it ends.
 * Import it dynamically and with NODE_ENV=production set before, because React's development build keeps every frame.
 */
import { type Observable, Subscription, tap, timer } from 'rxjs';
import type { Command } from '../job/command.ts';
import { type Canvas, openCanvas, type TerminalLook } from './canvas.tsx';
import { chimeFor, strokesOf } from './chime.ts';
import { type Desk, inView, newDesk, type Pressed, pressed } from './desk.ts';
import { isQuit, type KeyPress } from './key-press.ts';
import { paced } from './pace.ts';
import { summaryLines } from './summary.ts';
import { type ProcessEvents, takeTerminal } from './terminal.ts';
import type { BenchView } from './view.ts';

export interface ScreenRun extends TerminalLook {
  readonly view$: Observable<BenchView>;
  readonly onCommand: (command: Command) => void;
  /** A figure from a gauge that types; only where `types`. */
  readonly onTyped: (line: string) => void;
  /** A tool of this station types its figures. */
  readonly types: boolean;
  /** No bell. */
  readonly quiet: boolean;
  /** Called once when a person or a signal wants to leave; the normal screen is back by then. */
  readonly onQuit: () => void;
  /** Where exit and signals are heard of; `process` unless a test says otherwise. */
  readonly events?: ProcessEvents;
}

const BELL = '\u0007';

/** What came, what the person has before their eyes, and what they have marked or typed. */
interface Seen {
  newest: BenchView | null;
  painted: BenchView | null;
  desk: Desk;
}

const NOTHING: Pick<Pressed, 'out'> = { out: null };

/** Keys count for the newest state; a command only for the question and the phase that the person could see. */
function take(press: KeyPress, seen: Seen): Pick<Pressed, 'out'> {
  const { newest, painted, desk } = seen;
  if (newest === null) return isQuit(press) ? { out: 'quit' } : NOTHING;
  const after = pressed(desk, press, newest.job, newest.live.pulling);
  const acts = after.out !== null && after.out !== 'quit' && 'do' in after.out;
  if (acts && (painted === null || inView(painted.job) !== inView(newest.job))) return NOTHING;
  seen.desk = after.desk;
  return after;
}

function openScreen(run: ScreenRun, ended: (error?: unknown) => void): void {
  const seen: Seen = { newest: null, painted: null, desk: newDesk(run) };
  const views = new Subscription();
  let canvas: Canvas | null = null;
  let over = false;

  const paint = () => {
    seen.painted = seen.newest;
    if (seen.newest !== null) canvas?.paint(seen.newest, seen.desk);
  };
  /** With what was typed, and nothing newer: a key must not bring before the eyes what the next key would then answer. */
  const repaint = () => {
    if (seen.painted !== null) canvas?.paint(seen.painted, seen.desk);
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
    if (over) return;
    const { out } = take(key, seen);
    if (out === 'quit') quit();
    else if (out === null) repaint();
    else if ('do' in out) run.onCommand(out);
    else run.onTyped(out.typed);
  };
  const ring = ({ job }: BenchView) => {
    const before = seen.newest?.job;
    const chime = before === undefined || seen.desk.quiet ? null : chimeFor(before, job);
    if (chime === null) return;
    for (const ms of strokesOf(chime)) views.add(timer(ms).subscribe(() => run.stdout.write(BELL)));
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
  const kept = run.view$.pipe(
    tap((view) => {
      ring(view);
      seen.newest = view;
    }),
  );
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
