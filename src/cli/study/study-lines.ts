import type { Readable } from 'node:stream';
import { finalize } from 'rxjs';
import { due, lastMeasured } from '../../audit/gauge-exercise.ts';
import type { Asked, Sitting } from '../../audit/gauge-sitting.ts';
import type { StudyCommand, StudyRun, StudyState } from '../../pipeline/run-study.ts';
import { UNIT_TEXT } from '../../report/figures.ts';
import { linkEndText } from '../../report/words/index.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { hearLines } from '../terminal/lines.ts';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
const COMMANDS: Readonly<Record<string, StudyCommand>> = { back: 'back', pause: 'pause' };

/**
 * A study in plain lines, until it is recorded or somebody leaves; the end of the input records a whole study. No line shows
 * a figure: it would be in sight when the same part comes again, and the study would not be blind.
 */
export function studyInLines(run: StudyRun, input: Readable, say: (line: string) => void): Promise<void> {
  let shown: StudyState | null = null;
  const show = (state: StudyState) => {
    const lines = linesOf(shown?.sitting ?? null, state.sitting);
    shown = state;
    for (const line of lines) say(line);
    if (state.finished !== null) run.leave();
  };
  const whole = () => due(run.state().sitting.exercise) === null;
  const hear = (line: string) => {
    const text = line.trim();
    if (text.toLowerCase() === 'quit') return run.leave();
    if (text === '') return run.command(run.state().sitting.asked === null ? 'record' : 'take');
    run.command(COMMANDS[text.toLowerCase()] ?? { typed: text });
  };
  const stopHearing = hearLines(input, {
    line: hear,
    tooLong: () => say(w`That line is too long, and is not taken.`),
    end: () => (whole() ? run.command('record') : run.leave()),
  });
  for (const signal of SIGNALS) process.on(signal, run.leave);
  say(
    w`Type "back" to take the last reading back, "pause" to stop and go on, "quit" to leave. Readings taken are kept.`,
  );
  return new Promise<void>((resolve, reject) => {
    run.state$
      .pipe(
        finalize(() => {
          stopHearing();
          // Closed in the middle of a line it goes on waiting for the next one, and the program with it.
          input.destroy();
          for (const signal of SIGNALS) process.off(signal, run.leave);
        }),
      )
      .subscribe({ next: show, error: reject, complete: resolve });
  });
}

/** What to print between two states; null before the first. */
function linesOf(before: Sitting | null, after: Sitting): readonly string[] {
  const { exercise, tool, paused, notice, asked } = after;
  const lines: string[] = [];
  if (tool.link !== before?.tool.link && tool.link === 'linked') lines.push(w`The tool is connected.`);
  if (tool.link !== before?.tool.link && tool.link === 'lost')
    lines.push(w`The tool is lost: ${tool.end === undefined ? '' : linkEndText(tool.end)}. Waiting for it.`);
  if (notice !== null && notice !== before?.notice) lines.push(safeLine(notice.words));
  const asks = asked !== (before?.asked ?? null);
  const changed = before === null || exercise !== before.exercise;
  if (changed && before !== null) lines.push(doneLine(before, after));
  else if (asks && before?.asked) lines.push(w`  set aside`);
  if (asks && asked !== null) return [...lines, askedLine(asked)];
  if (!changed && !asks && paused === before.paused) return lines;
  return [...lines, paused ? w`Paused: no reading is taken. Type "pause" to go on.` : askLine(after)];
}

/** The figure is not shown: it may still be taken. */
const askedLine = ({ lower, upper, unit }: Asked): string =>
  w`That is outside the usual ${lower} to ${upper} ${UNIT_TEXT[unit]} and does not count yet. Measure the part again. Or press Enter to take it as it is, or type "back" to drop it.`;

function doneLine(before: Sitting, { exercise, last }: Sitting): string {
  if (last === 'taken') return w`  taken, ${exercise.order.length - exercise.readings.length} left`;
  const cell = lastMeasured(before.exercise)?.cell;
  const { appraisers, parts } = exercise.plan;
  const [who, part] = [appraisers[cell?.appraiser ?? 0] ?? '', parts[cell?.part ?? 0] ?? ''];
  return w`  taken back: ${safeLine(who)}, part ${safeLine(part)}, trial ${cell?.trial ?? 0}`;
}

function askLine({ exercise }: Sitting): string {
  const next = due(exercise);
  if (next === null)
    return w`All is measured. Press Enter to record it, or type "back" to take the last reading back.`;
  const { appraiser, part, trial, step, steps } = next;
  return w`[${step} of ${steps}] trial ${trial}: ${safeLine(appraiser)}, measure part ${safeLine(part)}`;
}
