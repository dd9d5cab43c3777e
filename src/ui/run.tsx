/** The live screen of a job: views in, commands out. Import it as `shell.tsx` says. */
import { asyncScheduler, type Observable } from 'rxjs';
import type { Command } from '../job/command.ts';
import type { TerminalLook } from './canvas.tsx';
import { chimeFor } from './chime.ts';
import { type InputState, inView, newInputState, type Pressed, pasted, pressed } from './input-state.ts';
import { isQuit, type KeyPress } from './key-press.ts';
import { Screen } from './screen.tsx';
import { runShell, type Seen, type Shell } from './shell.tsx';
import { summaryLines } from './summary.ts';
import type { TypedUnits } from './typed-figure.ts';
import type { BenchView } from './view.ts';

export interface ScreenRun
  extends TerminalLook,
    Pick<Shell<BenchView>, 'onQuit' | 'events' | 'stop' | 'onChime'> {
  readonly view$: Observable<BenchView>;
  readonly onCommand: (command: Command) => void;
  /** A figure from a gauge that types; only where `types`. */
  readonly onTyped: (line: string) => void;
  /** A tool of this station types its figures. */
  readonly types: boolean;
  readonly typedUnits?: TypedUnits;
  /** No bell. */
  readonly quiet: boolean;
}

const NOTHING: Pick<Pressed, 'out'> = { out: null };

/** Keys count for the newest state; a command only for the question and the phase that the person could see. */
function take(
  press: KeyPress,
  { newest, painted }: Seen<BenchView>,
  input: InputState,
): Pick<Pressed, 'out'> | Pressed {
  if (newest === null) return isQuit(press) ? { out: 'quit' } : NOTHING;
  const after = pressed({ ...input, pullTimes: newest.pullTimes }, press, newest.job, newest.live.pulling);
  const acts = after.out !== null && after.out !== 'quit' && 'do' in after.out;
  if (acts && (painted === null || inView(painted.job) !== inView(newest.job))) return NOTHING;
  return after;
}

/** Shows a job until its views end or somebody leaves; then leaves the summary on the normal screen. */
export function runScreen(run: ScreenRun): Promise<void> {
  const { ascii, color } = run;
  let input = newInputState(run);
  const shown = { what: '', sinceMs: 0 };
  return runShell<BenchView>({
    ...run,
    onPress(press, seen) {
      const after = take({ ...press, shownMs: asyncScheduler.now() - shown.sinceMs }, seen, input);
      if ('input' in after) input = after.input;
      const { out } = after;
      if (out === 'quit') return 'leaves';
      if (out === null) return 'redraw';
      if ('do' in out) run.onCommand(out);
      else run.onTyped(out.typed);
      return 'sent';
    },
    ...(run.types && { onFigure: run.onTyped }),
    onPaste(text, { newest }) {
      if (newest !== null) input = pasted(input, text, newest.job).input;
    },
    draw: (view, size) => {
      const what = inView(view.job);
      if (what !== shown.what) Object.assign(shown, { what, sinceMs: asyncScheduler.now() });
      return (
        <Screen
          view={view}
          input={{ ...input, pullTimes: view.pullTimes }}
          size={size}
          ascii={ascii}
          color={color}
        />
      );
    },
    chime: (before, after) => (input.quiet ? null : chimeFor(before.job, after.job)),
    farewell: ({ job }) => summaryLines(job, ascii),
  });
}
