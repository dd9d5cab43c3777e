/** Draws a view as the terminal would get it, and measures it with Ink's own ruler instead of ours. */
import { Box, renderToString, Text } from 'ink';
import { frameLines } from '../../src/ui/frame.ts';
import { type InputState, newInputState } from '../../src/ui/input-state.ts';
import { Screen } from '../../src/ui/screen.tsx';
import type { BenchView } from '../../src/ui/view.ts';

export interface Drawing {
  readonly columns?: number;
  readonly rows?: number;
  readonly ascii?: boolean;
  readonly color?: boolean;
  readonly input?: InputState;
  readonly help?: boolean;
}

const deskOf = ({ input = newInputState(), help }: Drawing): InputState => ({
  ...input,
  help: help ?? input.help,
});

/** The frame with its escape sequences. */
export function drawn(view: BenchView, drawing: Drawing = {}): string {
  const { columns = 80, rows = 24, ascii, color } = drawing;
  return renderToString(
    <Screen
      view={view}
      size={{ columns, rows }}
      ascii={ascii === true}
      color={color === true}
      input={deskOf(drawing)}
    />,
    { columns },
  );
}

export const bare = (text: string): string => text.replace(/\u001b\[[\d;]*m/g, '');

/** The lines of the frame as text, before Ink draws them; much faster, so for the many cases. */
export function linesOf(view: BenchView, drawing: Drawing = {}): string[] {
  const { columns = 80, rows = 24, ascii } = drawing;
  const frame = frameLines({ view, size: { columns, rows }, ascii: ascii === true, input: deskOf(drawing) });
  return frame.map((line) => line.map(({ text }) => text).join(''));
}

/** Columns that Ink gives to each text: the width of a frame that it draws round it. Nothing may stand beside the text: some letters join what follows. */
export function inkColumns(texts: readonly string[]): number[] {
  const frames = renderToString(
    <Box flexDirection="column" alignItems="flex-start">
      {texts.map((text, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: drawn once
        <Box key={at} borderStyle="classic" flexShrink={0} height={3}>
          <Text wrap="truncate">{text}</Text>
        </Box>
      ))}
    </Box>,
    { columns: 240 },
  );
  return frames
    .split('\n')
    .filter((_, line) => line % 3 === 0)
    .map((edge) => edge.length - 2);
}
