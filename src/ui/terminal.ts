/** Takes the terminal over and gives it back on every way out: return, exit, signal, uncaught exception. */

const ENTER = '\u001b[?1049h\u001b[2J\u001b[H';
const LEAVE = '\u001b[?25h\u001b[?1049l';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
/** The monitor runs before the exception is printed, so that the message lands on the normal screen. */
const ENDINGS = ['exit', 'uncaughtExceptionMonitor'] as const;

/** What this needs of `process`; a test hands in an EventEmitter. */
export interface ProcessEvents {
  on(event: string, listener: () => void): unknown;
  off(event: string, listener: () => void): unknown;
}

export interface Hold {
  readonly stdout: { write(text: string): unknown };
  /** Stops all drawing; called once, right before the normal screen comes back. */
  readonly stopDrawing: () => void;
  /** A signal came and the terminal is given back; must bring the program to its end. */
  readonly onSignal: () => void;
  readonly events: ProcessEvents;
}

/** Switches to the alternate screen. The function returned gives the terminal back; it may be called again. */
export function takeTerminal({ stdout, stopDrawing, onSignal, events }: Hold): () => void {
  let taken = true;
  const giveBack = (): void => {
    if (!taken) return;
    taken = false;
    for (const ending of ENDINGS) events.off(ending, giveBack);
    // Not at once: Ink's own signal listener kills the process when it finds itself the last one.
    setImmediate(() => {
      for (const signal of SIGNALS) events.off(signal, signalled);
    });
    try {
      stopDrawing();
    } finally {
      stdout.write(LEAVE);
    }
  };
  const signalled = (): void => {
    if (!taken) return;
    giveBack();
    onSignal();
  };
  stdout.write(ENTER);
  for (const ending of ENDINGS) events.on(ending, giveBack);
  for (const signal of SIGNALS) events.on(signal, signalled);
  return giveBack;
}
