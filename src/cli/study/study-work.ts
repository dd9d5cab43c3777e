import type { Readable } from 'node:stream';
import { map, Subject } from 'rxjs';
import type { Clock } from '../../../drivers/driver.ts';
import { openTools, type TypedLine } from '../../../drivers/index.ts';
import { parseTyped, TYPED_EXPONENT } from '../../../drivers/typed/figure.ts';
import { believableOf } from '../../audit/gauge-doubt.ts';
import { type Exercise, studyOf } from '../../audit/gauge-exercise.ts';
import type { StudyFinished, StudyStarted } from '../../audit/gauge-log.ts';
import { sittingWith } from '../../audit/gauge-sitting.ts';
import type { Stamp } from '../../evidence/log.ts';
import { createStudyRun, type StudyRun } from '../../pipeline/run-study.ts';
import { studyInputs } from '../../pipeline/study-inputs.ts';
import { ProblemError } from '../../problem.ts';
import { type Quantity, scaled } from '../../reading.ts';
import { ok, orThrow, type Result } from '../../result.ts';
import { wantsColor } from '../bench/run.ts';
import type { LoadedStation } from '../station/station-file.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { studyInLines } from './study-lines.ts';
import type { StudyWriter } from './study-log.ts';
import { type StudyAbout, studyViewOf } from './study-view.ts';

/** A study to work on, and how it is shown. */
export interface StudyWork {
  readonly file: LoadedStation;
  readonly started: StudyStarted;
  readonly exercise: Exercise;
  readonly written: StudyWriter;
  readonly plain: boolean;
  readonly quiet: boolean;
  readonly stamp: () => Stamp;
  readonly clock: Clock;
  /** What people type, where it is shown in plain lines; destroyed at the end. */
  readonly input: Readable;
}

/**
 * Works on a study with its tool until it is recorded or somebody leaves, on the screen or in plain lines. A tool that cannot
 * be connected ends it with its problem.
 */
export async function workThrough(work: StudyWork): Promise<void> {
  const { file, started, written } = work;
  const { study, tool, measures } = started;
  const entry = file.tools.find(({ id }) => id === tool);
  const instrument = file.instruments.find(({ id }) => id === tool);
  if (entry === undefined || instrument === undefined) throw new Error('a study of a tool that is not there');
  const typed$ = new Subject<TypedLine>();
  const types = entry.driver.use === 'typed';
  const run = createStudyRun({
    sitting: sittingWith(work.exercise, believableOf(measures), tool),
    keep: written.keep,
    record({ exercise }) {
      const finished = finishedOf(started, exercise);
      written.record(finished);
      return finished;
    },
    typed(line) {
      if (!types) return parsed(line, measures.quantity);
      typed$.next({ line, quantity: null });
      return null;
    },
  });
  const on = work.stamp().at.slice(0, 10);
  const show = await shownBy(work, { study, station: file.station, instrument, types, on });
  const { tools, close } = await openTools([entry], { base: file.base, clock: work.clock, typed$ });
  try {
    // Connected before the first question, so that no answer is missed; the run keeps its newest state.
    for (const one of tools) {
      // A rise far below that torque is no pull.
      studyInputs(one, measures.quantity === 'torque' ? measures.aboutNm : 1).subscribe(run.hear);
      void one.connect().then((joined) => joined.ok || run.fail(new ProblemError(joined.error)));
    }
    await show(run);
  } finally {
    await close();
  }
}

async function shownBy(work: StudyWork, about: StudyAbout): Promise<(run: StudyRun) => Promise<void>> {
  if (work.plain)
    return (run) => studyInLines(run, work.input, (line) => void process.stdout.write(`${line}\n`));
  const { runStudyScreen } = await import('../../ui/study-screen.tsx');
  return (run) =>
    runStudyScreen({
      view$: run.state$.pipe(map((state) => studyViewOf(state, about))),
      onCommand: run.command,
      onQuit: run.leave,
      quiet: work.quiet,
      stdout: process.stdout,
      stdin: process.stdin,
      color: wantsColor(),
      ascii: !speaksUtf8(),
    });
}

/** A figure that somebody read off the tool and typed, in N·m or mm. */
function parsed(line: string, quantity: Quantity): Result<number> {
  const counts = parseTyped(line, quantity, quantity === 'torque' ? 'N·m' : 'mm');
  const mm = quantity === 'length' ? 3 : 0;
  return counts.ok ? ok(scaled(counts.value, TYPED_EXPONENT[quantity] + mm)) : counts;
}

function finishedOf({ study, tool, serial, measures }: StudyStarted, whole: Exercise): StudyFinished {
  const { appraisers, parts, readings } = orThrow(studyOf(whole));
  return {
    type: 'gauge-study-finished',
    study,
    tool,
    serial,
    unit: measures.unit,
    appraisers: [...appraisers],
    parts: [...parts],
    readings: readings.map((row) => row.map((cell) => [...cell])),
  };
}
