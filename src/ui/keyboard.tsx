import { type Key, useInput, useStdin } from 'ink';
import type { KeyPress } from './key-press.ts';

const NAMES = [
  ['leftArrow', 'left'],
  ['rightArrow', 'right'],
  ['upArrow', 'up'],
  ['downArrow', 'down'],
  ['home', 'home'],
  ['end', 'end'],
] as const satisfies readonly (readonly [keyof Key, string])[];

/** Characters by which terminals send keys that print nothing. Most send 7F for the key that takes back. */
const CONTROL: Readonly<Record<string, string>> = {
  '\r': 'enter',
  '\n': 'enter',
  '\t': 'tab',
  '\b': 'backspace',
  '\u007f': 'backspace',
};

/** Key presses as {@link KeyPress}, one at a time; presses that came in one piece are taken apart, none is lost. */
export function Keyboard({ onPress }: { onPress: (press: KeyPress) => void }) {
  const { isRawModeSupported } = useStdin();
  useInput(
    (input, key) => {
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
