import { finalize, type Observable } from 'rxjs';
import type { Command } from '../../job/command.ts';
import type { JobState } from '../../job/state.ts';
import type { Step } from '../../pipeline/run-job.ts';
import { type Chime, chimeFor } from '../../ui/chime.ts';
import { forecastLine } from '../../ui/forecast-words.ts';
import { type InputState, newInputState, pressed } from '../../ui/input-state.ts';
import { askingLines, keysOfLine } from '../../ui/line-keys.ts';
import { lineFor } from '../../ui/lines.ts';
import { printable } from '../../ui/printable.ts';
import { summaryLines } from '../../ui/summary.ts';
import { impossibleTorque, type TypedUnits } from '../../ui/typed-figure.ts';
import { w } from '../../words/catalogue.ts';
import { problemText } from '../terminal/exit.ts';
import { hearLines } from '../terminal/lines.ts';
import { print as printWrapped } from '../terminal/wrapped.ts';
import { timeOfDay, timeWithOffset, utcOffset } from './shop-time.ts';

/** A job in plain lines: what it runs on, and where what is said to it goes. */
export interface InLines {
  readonly step$: Observable<Step>;
  readonly look: () => { readonly job: JobState; readonly pulling: boolean };
  readonly command: (command: Command) => void;
  readonly typedUnits: TypedUnits;
  /** A line that is no key. */
  readonly typed: (line: string) => void;
  readonly leave: () => void;
  readonly onStep: (step: Step) => void;
  readonly ascii: boolean;
  /** The shop's own sound. */
  readonly onChime?: (chime: Chime) => void;
}

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
const print = (line: string) => process.stdout.write(`${line}\n`);

/** A line an event, a question when one is asked; answers are lines too (src/ui/line-keys.ts). Ends with the summary. */
export function inLines(run: InLines): Promise<void> {
  const { ascii, look } = run;
  const clean = (text: string) => printable(text, 300, ascii);
  const pullTimes = new Map<number, string>();
  let input: InputState = newInputState({ pullTimes, typedUnits: run.typedUnits });
  let asked = '';
  let waits = false;
  const ask = () => {
    const lines = askingLines(look().job, input, ascii);
    const text = lines.join('\n');
    if (text !== asked) for (const line of lines) print(line);
    asked = text;
  };
  const typed = (line: string) => {
    const refused = impossibleTorque(line, look().job, run.typedUnits);
    if (refused === null) run.typed(line);
    else print(printable(refused, 300, ascii));
  };
  const hear = (line: string) => {
    const keys = keysOfLine(line, input);
    if (keys === null) return typed(line);
    for (const key of keys) {
      const { job, pulling } = look();
      const after = pressed(input, key, job, pulling);
      input = after.input;
      if (!after.taken) typed(line);
      if (after.out === 'quit') run.leave();
      else if (after.out !== null && 'do' in after.out) run.command(after.out);
      else if (after.out !== null) run.typed(after.out.typed);
    }
    ask();
  };
  let printed = '';
  const sayForecast = ({ forecast }: Step) => {
    const line = forecast === null ? '' : printable(forecastLine(forecast), 300, ascii);
    if (line !== '' && line !== printed) print(line);
    if (line !== '') printed = line;
  };
  const stopHearing = hearLines(process.stdin, {
    line: hear,
    tooLong: () => print(clean(w`a line was too long, and is not taken`)),
  });
  for (const signal of SIGNALS) process.on(signal, run.leave);
  return new Promise<void>((resolve, reject) => {
    run.step$
      .pipe(
        finalize(() => {
          stopHearing();
          // Closed in the middle of a line it goes on waiting for the next one, and the program with it.
          process.stdin.destroy();
          for (const signal of SIGNALS) process.off(signal, run.leave);
        }),
      )
      .subscribe({
        next: (step) => {
          for (const { entry, before, after } of step.happened) {
            if (entry.event.type === 'pull-detected')
              pullTimes.set(entry.event.pull, timeWithOffset(entry.at));
            const chime = before === null ? null : chimeFor(before, after);
            if (chime !== null) run.onChime?.(chime);
            const line = lineFor(entry.event, before, after, timeOfDay(entry.at), ascii);
            if (line !== null) print(line);
            if (entry.event.type === 'session-started')
              print(clean(w`times of this station, UTC${utcOffset(entry.at)}`));
          }
          sayForecast(step);
          if (step.waits !== waits)
            print(
              clean(
                step.waits
                  ? w`waiting for the log: another program is using it; readings are kept meanwhile`
                  : w`the log is free again`,
              ),
            );
          waits = step.waits;
          if (step.refused !== null) print(problemText(step.refused).trimEnd());
          if (step.happened.length > 0) ask();
          run.onStep(step);
        },
        error: reject,
        complete: () => {
          printWrapped(summaryLines(look().job, ascii));
          resolve();
        },
      });
  });
}
