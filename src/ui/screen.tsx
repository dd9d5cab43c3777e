import { type FrameWanted, frameLines } from './frame.ts';
import { Lines } from './row.tsx';

export interface ScreenProps extends FrameWanted {
  readonly color: boolean;
}

/** The live screen, drawn from the view alone; keys are heard elsewhere. */
export function Screen({ color, ...frame }: ScreenProps) {
  return <Lines lines={frameLines(frame)} columns={frame.size.columns} color={color} />;
}
