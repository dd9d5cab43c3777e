import { Box } from 'ink';
import { type FrameWanted, frameLines } from './frame.ts';
import { Row } from './row.tsx';

export interface ScreenProps extends FrameWanted {
  readonly color: boolean;
}

/** The live screen, drawn from the view alone; keys are heard elsewhere. */
export function Screen({ color, ...frame }: ScreenProps) {
  return (
    <Box flexDirection="column" width={frame.size.columns}>
      {frameLines(frame).map((line, row) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a line of the screen is its place
        <Row key={row} line={line} color={color} />
      ))}
    </Box>
  );
}
