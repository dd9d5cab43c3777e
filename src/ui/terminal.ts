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

/** Long enough for the signal to stop the program before it goes on drawing. */
const STOPS_MS = 50;

/**
 * Gives the terminal to the shell as Ctrl-Z does anywhere, and takes it again when the shell brings the program back. Where no
 * shell is there to bring it back the system drops the signal, and the screen returns at once.
 */
export async function suspended(stdout: Hold['stdout'], stop: () => void): Promise<void> {
  stdout.write(LEAVE);
  stop();
  await new Promise((resolve) => setTimeout(resolve, STOPS_MS));
  stdout.write(ENTER);
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
