/**
 * A live screen from beginning to end, whatever it shows: views in, keys out, the terminal given back however it ends.
 * Import it dynamically and with NODE_ENV=production set before, because React's development build keeps every frame.
 */
import type { ReactElement } from 'react';
import { asyncScheduler, type Observable, Subscription, tap, timer } from 'rxjs';
import { burstKeys } from './burst.ts';
import { type Canvas, openCanvas, type TerminalLook } from './canvas.tsx';
import { type Chime, strokesOf } from './chime.ts';
import { unbroken } from './folded.ts';
import type { KeyPress } from './key-press.ts';
import type { Size } from './layout.ts';
import { paced } from './pace.ts';
import { type ProcessEvents, suspended, takeTerminal } from './terminal.ts';

/** What came, and what the person has before their eyes. */
export interface Seen<V> {
  readonly newest: V | null;
  readonly painted: V | null;
}

export interface Shell<V> extends TerminalLook {
  readonly view$: Observable<V>;
  /** Takes a key: somebody leaves, something typed is to be seen, or what is to be seen comes with the next view. */
  readonly onPress: (press: KeyPress, seen: Seen<V>) => 'leaves' | 'redraw' | 'sent';
  /** Takes text that was pasted; absent where none is typed. */
  readonly onPaste?: (text: string, seen: Seen<V>) => void;
  /** Takes a figure that a gauge typed, faster than anybody does; absent where none types. */
  readonly onFigure?: (text: string) => void;
  readonly draw: (view: V, size: Size) => ReactElement;
  /** What the bell is to say of a view. */
  readonly chime: (before: V, after: V) => Chime | null;
  /** The shop's own sound; must return at once. */
  readonly onChime?: (chime: Chime) => void;
  /** What stays on the normal screen. */
  readonly farewell: (last: V) => readonly string[];
  /** Called once when a person or a signal wants to leave; the normal screen is back by then. */
  readonly onQuit: () => void;
  /** Stops the program as Ctrl-Z does; absent where nothing can. */
  readonly stop?: () => void;
  /** Where exit and signals are heard of; `process` unless a test says otherwise. */
  readonly events?: ProcessEvents;
}

const BELL = '\u0007';

function open<V>(shell: Shell<V>, ended: (error?: unknown) => void): void {
  let newest: V | null = null;
  let painted: V | null = null;
  const views = new Subscription();
  let canvas: Canvas | null = null;
  let over = false;

  /** With what was typed, and nothing newer: a key must not bring before the eyes what the next key would then answer. */
  const repaint = () => {
    const view = painted;
    if (view !== null) canvas?.paint((size) => shell.draw(view, size));
  };
  const paint = () => {
    painted = newest;
    repaint();
  };
  const end = (error?: unknown) => {
    if (over) return;
    over = true;
    giveBack();
    if (newest !== null)
      shell.stdout.write(
        shell
          .farewell(newest)
          .flatMap((line) => unbroken(line, shell.stdout.columns ?? Number.POSITIVE_INFINITY))
          .map((line) => `${line}\n`)
          .join(''),
      );
    ended(error);
  };
  const quit = () => {
    end();
    shell.onQuit();
  };
  const press = (key: KeyPress) => {
    if (over) return;
    const then = shell.onPress(key, { newest, painted });
    if (then === 'leaves') quit();
    else if (then === 'redraw') repaint();
  };
  const { onFigure } = shell;
  const keys =
    onFigure === undefined
      ? press
      : burstKeys({
          press,
          figure: (text) => (over ? undefined : onFigure(text)),
          nowMs: () => asyncScheduler.now(),
          after: (ms, work) => {
            const due = timer(ms).subscribe(work);
            views.add(due);
            return () => due.unsubscribe();
          },
        });
  const paste = (text: string) => {
    if (over || newest === null) return;
    shell.onPaste?.(text, { newest, painted });
    repaint();
  };
  const ring = (view: V) => {
    const chime = newest === null ? null : shell.chime(newest, view);
    if (chime === null) return;
    shell.onChime?.(chime);
    for (const ms of strokesOf(chime)) views.add(timer(ms).subscribe(() => shell.stdout.write(BELL)));
  };

  const giveBack = takeTerminal({
    stdout: shell.stdout,
    stopDrawing() {
      views.unsubscribe();
      canvas?.close();
    },
    onSignal: quit,
    events: shell.events ?? process,
  });
  try {
    const { stop } = shell;
    const onSuspend = stop === undefined ? null : () => suspended(shell.stdout, stop);
    canvas = openCanvas(shell, { onPress: keys, onPaste: paste, onSuspend }, end);
  } catch (error) {
    end(error);
    return;
  }
  const kept = shell.view$.pipe(
    tap((view) => {
      ring(view);
      newest = view;
    }),
  );
  views.add(paced(kept).subscribe({ next: paint, error: end, complete: () => end() }));
}

/**
 * Shows `view$` until it completes, a person leaves, or a signal comes; then leaves the farewell on the normal screen.
 * Rejects with the error of `view$` or of the drawing, the terminal given back first.
 */
export const runShell = <V,>(shell: Shell<V>): Promise<void> =>
  new Promise((resolve, reject) => {
    open(shell, (error) => (error === undefined ? resolve() : reject(error)));
  });
