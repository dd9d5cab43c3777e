import { type Key, useApp, useInput, usePaste, useStdin } from 'ink';
import type { KeyPress } from './key-press.ts';

/** A presenter or a pedal sends the keys of a page: on, and the next choice. */
const NAMES = [
  ['leftArrow', 'left'],
  ['rightArrow', 'right'],
  ['upArrow', 'up'],
  ['downArrow', 'down'],
  ['home', 'home'],
  ['end', 'end'],
  ['pageDown', 'enter'],
  ['pageUp', 'right'],
] as const satisfies readonly (readonly [keyof Key, string])[];

/** Characters by which terminals send keys that print nothing. Most send 7F for the key that takes back. */
const CONTROL: Readonly<Record<string, string>> = {
  '\r': 'enter',
  '\n': 'enter',
  '\t': 'tab',
  '\b': 'backspace',
  '\u007f': 'backspace',
};

export interface Heard {
  readonly onPress: (press: KeyPress) => void;
  /** What was pasted, whole: it is never keys. */
  readonly onPaste?: (text: string) => void;
  /** Ctrl-Z; resolves when the program is to go on. `null` where nothing can be suspended. */
  readonly onSuspend?: (() => Promise<void>) | null;
}

/** Key presses as {@link KeyPress}, one at a time; presses that came in one piece are taken apart, none is lost. */
export function Keyboard({ onPress, onPaste = () => {}, onSuspend = null }: Heard) {
  const { isRawModeSupported } = useStdin();
  const { suspendTerminal } = useApp();
  usePaste(onPaste, { isActive: isRawModeSupported });
  useInput(
    (input, key) => {
      if (key.ctrl && input === 'z') {
        if (onSuspend !== null) void suspendTerminal(onSuspend);
        return;
      }
      const named = NAMES.find(([name]) => key[name])?.[1];
      if (named !== undefined) return onPress({ key: named });
      // An escape and a letter behind it that came in one piece look like one key with a modifier.
      if (key.escape || key.meta) onPress({ key: 'escape' });
      if (key.tab) onPress({ key: 'tab' });
      if (key.backspace || key.delete) onPress({ key: 'backspace' });
      for (const character of input) {
        const control = CONTROL[character];
        onPress(control === undefined ? { key: character, ctrl: key.ctrl } : { key: control });
      }
    },
    { isActive: isRawModeSupported },
  );
  return null;
}
