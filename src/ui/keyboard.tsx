import { type Key, useInput, useStdin } from 'ink';
import type { KeyPress } from './keys.ts';

function arrow(key: Key): string | null {
  if (key.leftArrow) return 'left';
  if (key.rightArrow) return 'right';
  if (key.upArrow) return 'up';
  return key.downArrow ? 'down' : null;
}

/** Key presses as {@link KeyPress}, one at a time; presses that came in one piece are taken apart, none is lost. */
export function Keyboard({ onPress }: { onPress: (press: KeyPress) => void }) {
  const { isRawModeSupported } = useStdin();
  useInput(
    (input, key) => {
      const named = arrow(key);
      if (named !== null) onPress({ key: named });
      else if (!key.meta && !key.escape)
        for (const character of input) onPress({ key: character, ctrl: key.ctrl });
    },
    { isActive: isRawModeSupported },
  );
  return null;
}
