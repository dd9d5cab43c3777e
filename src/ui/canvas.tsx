/** Ink on a terminal: paints a frame when told, again when the window changes its size, and passes key presses on. */
import { render } from 'ink';
import type { ReactElement } from 'react';
import { type Heard, Keyboard } from './keyboard.tsx';
import type { Size } from './layout.ts';

const WIPE = '\u001b[2J\u001b[H';
/** A little above the pace of views, so that a key's effect need not wait for the next of them. */
const MOST_FRAMES_A_SECOND = 15;

/** The terminal and what it can show. */
export interface TerminalLook {
  readonly stdout: NodeJS.WriteStream;
  readonly stdin: NodeJS.ReadStream;
  readonly color: boolean;
  readonly ascii: boolean;
}

/** What is to be seen, at whatever size the window has. */
export type Frame = (size: Size) => ReactElement;

export interface Canvas {
  readonly paint: (frame: Frame) => void;
  readonly close: () => void;
}

/**
 * Ink empties the scrollback when its last frame was as tall as the terminal, which happens as soon as the window is
 * made lower. Our next frame fits again by then; so Ink is told of a terminal without a lower end.
 */
function withoutBottom(stdout: NodeJS.WriteStream): NodeJS.WriteStream {
  return new Proxy(stdout, {
    get(target, name) {
      if (name === 'rows') return Number.MAX_SAFE_INTEGER;
      const value: unknown = Reflect.get(target, name, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
}

/** Starts with an empty screen; `onError` hears of a frame that could not be drawn. */
export function openCanvas(
  { stdout, stdin }: TerminalLook,
  heard: Heard,
  onError: (error: unknown) => void,
): Canvas {
  let shown: Frame | null = null;
  const frame = () => (
    <>
      <Keyboard {...heard} />
      {shown?.({ columns: stdout.columns, rows: stdout.rows })}
    </>
  );
  const ink = render(frame(), {
    stdout: withoutBottom(stdout),
    stdin,
    exitOnCtrlC: false,
    maxFps: MOST_FRAMES_A_SECOND,
  });
  ink.waitUntilExit().catch(onError);
  const resized = () => {
    stdout.write(WIPE);
    ink.rerender(frame());
  };
  // Before Ink's own listener, which would draw the old frame at the new size.
  stdout.prependListener('resize', resized);
  return {
    paint(next) {
      shown = next;
      ink.rerender(frame());
    },
    close() {
      stdout.off('resize', resized);
      ink.unmount();
    },
  };
}
