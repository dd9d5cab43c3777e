/**
 * The gauge studies in the log of a station: the plan, the order drawn, the readings that count, the end. An entry that does
 * not fit the ones before it changes nothing.
 */
import type { StationEntry } from '../evidence/log.ts';
import type { StationEvent } from '../evidence/station-event.ts';
import type { Problem } from '../problem.ts';
import type { FigureSource } from '../reading.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import {
  drawnExercise,
  type Exercise,
  type ExercisePlan,
  measured,
  planFrom,
  studyOf,
  takenBack,
} from './gauge-exercise.ts';

type StudyEvent = Extract<StationEvent, { readonly study: string }>;
type EventOf<T extends StudyEvent['type']> = Extract<StudyEvent, { readonly type: T }>;
export type StudyStarted = EventOf<'gauge-study-started'>;
export type StudyFinished = EventOf<'gauge-study-finished'>;

/** A study reading by reading. */
export interface StudyTaking {
  readonly started: StudyStarted;
  readonly exercise: Exercise;
  /** Where each reading that counts came from. */
  readonly sources: readonly FigureSource[];
  /** How many readings were taken back. */
  readonly takenBack: number;
}

export type StudyEnd =
  | { readonly kind: 'finished'; readonly at: string; readonly finished: StudyFinished }
  | { readonly kind: 'dropped'; readonly at: string; readonly because: string };

export interface LoggedStudy {
  readonly study: string;
  readonly tool: string;
  readonly serial: string | null;
  readonly plan: ExercisePlan;
  /** Null where the log holds only the finished study. */
  readonly taking: StudyTaking | null;
  /** Null while it is open. */
  readonly end: StudyEnd | null;
}

/** All gauge studies, in the order in which they were started. */
export function gaugeStudiesOf(entries: readonly StationEntry[]): readonly LoggedStudy[] {
  const all = new Map<string, LoggedStudy>();
  for (const { event, at } of entries) {
    if (!('study' in event)) continue;
    const after = next(all.get(event.study) ?? null, event, at);
    if (after !== null) all.set(event.study, after);
  }
  return [...all.values()];
}

function next(before: LoggedStudy | null, event: StudyEvent, at: string): LoggedStudy | null {
  if (before !== null && before.end !== null) return before;
  switch (event.type) {
    case 'gauge-study-started':
      return before ?? opened(event);
    case 'gauge-study-finished':
      return { ...(before ?? wholeOnly(event)), end: { kind: 'finished', at, finished: event } };
    case 'gauge-study-dropped':
      return before && { ...before, end: { kind: 'dropped', at, because: event.because } };
    case 'gauge-study-read':
    case 'gauge-study-taken-back':
      return before && { ...before, taking: before.taking && taken(before.taking, event) };
  }
}

/** Null where the order was not drawn for the plan. */
function opened(started: StudyStarted): LoggedStudy | null {
  const { study, tool, serial, appraisers, parts, trials, order } = started;
  const plan = planFrom({ appraisers, parts, trials });
  const exercise = plan.ok ? drawnExercise(plan.value, order) : plan;
  if (!exercise.ok) return null;
  const taking = { started, exercise: exercise.value, sources: [], takenBack: 0 };
  return { study, tool, serial, plan: exercise.value.plan, taking, end: null };
}

function wholeOnly({ study, tool, serial, appraisers, parts, readings }: StudyFinished): LoggedStudy {
  const plan = { appraisers, parts, trials: readings[0]?.[0]?.length ?? 0 };
  return { study, tool, serial, plan, taking: null, end: null };
}

function taken(
  before: StudyTaking,
  event: EventOf<'gauge-study-read'> | EventOf<'gauge-study-taken-back'>,
): StudyTaking {
  const { exercise, sources } = before;
  const { readings, order } = exercise;
  if (event.type === 'gauge-study-taken-back') {
    if (event.turn !== readings.length) return before;
    return {
      ...before,
      exercise: takenBack(exercise),
      sources: sources.slice(0, -1),
      takenBack: before.takenBack + 1,
    };
  }
  if (event.turn !== readings.length + 1 || event.turn > order.length) return before;
  return { ...before, exercise: measured(exercise, event.value), sources: [...sources, event.source] };
}

/** The number of the next study: one more than any that the log names. */
export function nextStudy(entries: readonly StationEntry[]): string {
  const numbers = entries.map(({ event }) => ('study' in event ? Number(event.study.slice(3)) : 0));
  return `GS-${numbers.reduce((most, one) => Math.max(most, one), 0) + 1}`;
}

/** A study that is open. Problems: `study-unknown`, `study-finished`, `study-dropped`. */
export function openStudyOf(entries: readonly StationEntry[], study: string): Result<StudyTaking> {
  const logged = gaugeStudiesOf(entries).find((one) => one.study === study);
  if (logged?.end?.kind === 'finished') return err(alreadyFinished(study));
  if (logged?.end?.kind === 'dropped') return err(dropped(study, logged.end.because));
  return logged?.taking ? ok(logged.taking) : err(unknownStudy(study));
}

/** Whether a finished study holds the readings that were taken for it. Of one that the log holds only as a whole nobody can tell. */
export function isAsTaken({ taking, end }: LoggedStudy): boolean {
  if (taking === null || end?.kind !== 'finished') return true;
  const whole = studyOf(taking.exercise);
  return whole.ok && JSON.stringify(whole.value.readings) === JSON.stringify(end.finished.readings);
}

export const unknownStudy = (study: string): Problem => ({
  code: 'study-unknown',
  where: study,
  message: w`this station has no gauge study of this number`,
  next: w`See "plugmark gauge-study list".`,
});

const alreadyFinished = (study: string): Problem => ({
  code: 'study-finished',
  where: study,
  message: w`this study is finished and recorded`,
  next: w`See "plugmark gauge-study show ${study}".`,
});

const dropped = (study: string, because: string): Problem => ({
  code: 'study-dropped',
  where: study,
  message: w`this study was given up: ${because}`,
  next: w`Start a new one. The readings of this one stay in the log.`,
});
