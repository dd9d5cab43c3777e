/** The screen of `show`. Import it as `shell.tsx` says. */
import { NEVER, startWith } from 'rxjs';
import type { TerminalLook } from '../../ui/canvas.tsx';
import { isQuit } from '../../ui/key-press.ts';
import { Lines } from '../../ui/row.tsx';
import { runShell } from '../../ui/shell.tsx';
import { firstPlace, moved, type Shown, showFrame } from './show-frame.ts';

/** Shows the record until somebody leaves. */
export function runShowScreen(run: TerminalLook & Shown): Promise<void> {
  let place = firstPlace(run.model);
  return runShell<Shown>({
    ...run,
    view$: NEVER.pipe(startWith(run)),
    onPress(press) {
      if (isQuit(press) || press.key === 'escape') return 'leaves';
      place = moved(run.model, place, press);
      return 'redraw';
    },
    draw: (shown, size) => (
      <Lines lines={showFrame(shown, place, size)} columns={size.columns} color={run.color} />
    ),
    chime: () => null,
    farewell: () => [],
    onQuit: () => undefined,
  });
}
