/** The live screen of a gauge study. Import it as `shell.tsx` says. */
import type { Observable } from 'rxjs';
import type { TerminalLook } from './canvas.tsx';
import { isQuit } from './key-press.ts';
import { Lines } from './row.tsx';
import { runShell, type Shell } from './shell.tsx';
import { studyChime } from './study-chime.ts';
import { type StudyFrame, studyFrame } from './study-frame.ts';
import { newStudyInputState, pressedStudy, type StudyOut } from './study-input-state.ts';
import type { StudyView } from './study-view.ts';

export interface StudyScreenRun extends TerminalLook, Pick<Shell<StudyView>, 'onQuit' | 'events'> {
  readonly view$: Observable<StudyView>;
  readonly onCommand: (command: Exclude<StudyOut, 'quit'>) => void;
  /** No bell. */
  readonly quiet: boolean;
}

export function StudyScreen({ color, ...frame }: StudyFrame & { readonly color: boolean }) {
  return <Lines lines={studyFrame(frame)} columns={frame.size.columns} color={color} />;
}

/** Shows a study until somebody leaves; then leaves the farewell on the normal screen. */
export function runStudyScreen(run: StudyScreenRun): Promise<void> {
  const { ascii, color } = run;
  let input = newStudyInputState(run.quiet);
  return runShell<StudyView>({
    ...run,
    // The command says more of it than one who leaves wants to read twice.
    farewell: () => [],
    onPress(press, { newest, painted }) {
      if (newest === null) return isQuit(press) ? 'leaves' : 'redraw';
      const after = pressedStudy(input, press, newest, painted);
      input = after.input;
      if (after.out === null) return 'redraw';
      if (after.out === 'quit') return 'leaves';
      run.onCommand(after.out);
      return 'sent';
    },
    draw: (view, size) => <StudyScreen view={view} input={input} size={size} ascii={ascii} color={color} />,
    chime: (before, after) => (input.quiet ? null : studyChime(before, after)),
  });
}
