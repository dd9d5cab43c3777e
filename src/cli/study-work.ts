import type { Readable } from 'node:stream';
import { map, Subject } from 'rxjs';
import type { Clock } from '../../drivers/driver.ts';
import { openTools } from '../../drivers/index.ts';
import { parseTyped, TYPED_EXPONENT } from '../../drivers/typed/figure.ts';
import { type Exercise, studyOf } from '../audit/gauge-exercise.ts';
import { sittingWith } from '../audit/gauge-sitting.ts';
import type { Stamp } from '../evidence/log.ts';
import { ProblemError } from '../problem.ts';
import { type Quantity, scaled } from '../reading.ts';
import { ok, orThrow, type Result } from '../result.ts';
import { speaksUtf8, wantsColor } from './run.ts';
import { recordStation, type Station } from './station.ts';
import type { LoadedStation } from './station-file.ts';
import type { StudyHead, StudyWriter } from './study-file.ts';
import { studyInLines } from './study-lines.ts';
import { madeAlready, madeStudy } from './study-list.ts';
import { createStudyRun, type StudyEvent, type StudyRun } from './study-run.ts';
import { studyValues } from './study-values.ts';
import { type StudyAbout, studyViewOf } from './study-view.ts';

/** A study to be worked on, and how it is shown. */
export interface StudyWork {
  readonly station: Station;
  readonly file: LoadedStation;
  readonly head: StudyHead;
  readonly exercise: Exercise;
  readonly written: StudyWriter;
  readonly plain: boolean;
  readonly quiet: boolean;
  readonly stamp: () => Stamp;
  readonly clock: Clock;
  /** Lines of what is said to it, where it is shown in plain lines; destroyed at the end. */
  readonly input: Readable;
}

/**
 * Works on a study with its tool until it is recorded or somebody leaves, on the screen or in plain lines; null where it was
 * left open. A tool that cannot be joined ends it with its problem.
 */
export async function workThrough(work: StudyWork): Promise<StudyEvent | null> {
  const { file, head } = work;
  const entry = file.tools.find(({ id }) => id === head.tool);
  const instrument = file.instruments.find(({ id }) => id === head.tool);
  if (entry === undefined || instrument === undefined) throw new Error('a study of a tool that is not there');
  const typed$ = new Subject<string>();
  const types = entry.driver.use === 'typed';
  const run = createStudyRun({
    sitting: sittingWith(work.exercise, head.tool),
    keep: (kept) => work.written.keep(kept, work.stamp().at),
    record: ({ exercise }) => record(work, exercise),
    typed(line) {
      if (!types) return parsed(line, head.quantity);
      typed$.next(line);
      return null;
    },
  });
  const on = work.stamp().at.slice(0, 10);
  const show = await shownBy(work, { study: head.study, station: file.station, instrument, types, on });
  const { tools, close } = await openTools([entry], { base: file.base, clock: work.clock, typed$ });
  try {
    // Joined before the first question, so that no answer to it is missed; the run keeps its newest state.
    for (const tool of tools) {
      studyValues(tool, head.at).subscribe(run.hear);
      void tool.connect().then((joined) => joined.ok || run.fail(new ProblemError(joined.error)));
    }
    await show(run);
  } finally {
    await close();
  }
  return run.state().made;
}

async function shownBy(work: StudyWork, about: StudyAbout): Promise<(run: StudyRun) => Promise<void>> {
  if (work.plain)
    return (run) => studyInLines(run, work.input, (line) => void process.stdout.write(`${line}\n`));
  const { runStudyScreen } = await import('../ui/study-screen.tsx');
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

async function record({ station, head, stamp }: StudyWork, whole: Exercise): Promise<StudyEvent> {
  const { study, tool, serial, quantity } = head;
  // Read again: other entries of the station may have come since the study was begun, and are no reason to refuse it.
  if (madeStudy(station, study) !== undefined) throw new ProblemError(madeAlready(study));
  const { appraisers, parts, readings } = orThrow(studyOf(whole));
  const event: StudyEvent = {
    type: 'gauge-study-made',
    study,
    tool,
    serial,
    unit: quantity === 'torque' ? 'N.m' : 'mm',
    appraisers: [...appraisers],
    parts: [...parts],
    readings: readings.map((row) => row.map((cell) => [...cell])),
  };
  await recordStation(station, [event], stamp());
  return event;
}
