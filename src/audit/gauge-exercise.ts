/**
 * A gauge study as an exercise: who measures which part next, until every appraiser has measured every part as often. Parts
 * come in another order each time, so that nobody reads his own figure again from memory.
 */

import { z } from 'zod';
import { isWithheld } from '../personal.ts';
import { type Problem, problemFromZod } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import type { GaugeStudy } from '../statistics/gauge-study.ts';
import { w } from '../words/catalogue.ts';

const label = z.string().trim().min(1, 'expected a name').max(40, 'expected at most 40 characters');
/** Two whose names are withheld are two. */
const eachOnce = (list: readonly string[]) => {
  const named = list.filter((name) => !isWithheld(name));
  return new Set(named).size === named.length;
};

/** What a study is made of. The bounds are those of what people can do in one sitting. */
const exercisePlanSchema = z.strictObject({
  appraisers: z
    .array(label)
    .min(2, 'expected at least two appraisers')
    .max(10, 'expected at most ten appraisers')
    .refine(eachOnce, 'expected each appraiser once'),
  parts: z
    .array(label)
    .min(2, 'expected at least two parts')
    .max(30, 'expected at most 30 parts')
    .refine(eachOnce, 'expected each part once'),
  trials: z.int().min(2, 'expected at least two trials').max(10, 'expected at most ten trials'),
});
export type ExercisePlan = z.infer<typeof exercisePlanSchema>;

/** One reading that is due, and how far the exercise is. */
export interface Due {
  readonly appraiser: string;
  readonly part: string;
  readonly trial: number;
  /** Counted from 1. */
  readonly step: number;
  readonly steps: number;
}

/** Place of appraiser and part in the plan, from 0; the trial counts from 1. */
export interface Cell {
  readonly appraiser: number;
  readonly part: number;
  readonly trial: number;
}

export interface Exercise {
  readonly plan: ExercisePlan;
  /** In the order in which they are due. */
  readonly order: readonly Cell[];
  readonly readings: readonly number[];
}

/** A plan as somebody gave it. Problem `gauge-study-plan` names the field. */
export function planFrom(value: unknown): Result<ExercisePlan> {
  const parsed = exercisePlanSchema.safeParse(value);
  return parsed.success
    ? ok(parsed.data)
    : err(
        problemFromZod(
          parsed.error,
          'gauge study',
          'gauge-study-plan',
          'Ten parts, three appraisers and three trials are usual.',
        ),
      );
}

/** `shuffled` gives the numbers from 0 up to `n` in an order of its own, another with each call. */
export function newExercise(plan: ExercisePlan, shuffled: (n: number) => readonly number[]): Exercise {
  const order = [];
  for (let trial = 1; trial <= plan.trials; trial++)
    for (let appraiser = 0; appraiser < plan.appraisers.length; appraiser++)
      for (const part of shuffled(plan.parts.length)) order.push({ appraiser, part, trial });
  return { plan, order, readings: [] };
}

/** The parts of each turn, one appraiser in one trial, in the order that was drawn: what {@link drawnExercise} takes. */
export function turnsOf({ plan, order }: Exercise): readonly (readonly number[])[] {
  const n = plan.parts.length;
  return Array.from({ length: order.length / n }, (_, turn) =>
    order.slice(turn * n, (turn + 1) * n).map(({ part }) => part),
  );
}

/** The exercise whose order was drawn before. Problem `gauge-study-order` where a turn does not name each part once. */
export function drawnExercise(plan: ExercisePlan, turns: readonly (readonly number[])[]): Result<Exercise> {
  const every = plan.parts.map((_, part) => part).join();
  const bad = turns.findIndex((turn) => turn.toSorted((a, b) => a - b).join() !== every);
  if (bad >= 0 || turns.length !== plan.trials * plan.appraisers.length)
    return err({
      code: 'gauge-study-order',
      where: 'gauge study',
      message:
        bad >= 0 ? w`turn ${bad + 1} does not name each part once` : w`there are turns too many or too few`,
      next: w`Begin the study anew: this order was not drawn for its plan.`,
    });
  const rest = [...turns];
  return ok(newExercise(plan, () => rest.shift() ?? []));
}

/** What is to be measured next; null once all is. */
export function due({ plan, order, readings }: Exercise): Due | null {
  const next = order[readings.length];
  if (next === undefined) return null;
  return {
    appraiser: plan.appraisers[next.appraiser] ?? '',
    part: plan.parts[next.part] ?? '',
    trial: next.trial,
    step: readings.length + 1,
    steps: order.length,
  };
}

/** Which cell was measured last, and what came of it; null before the first. */
export function lastMeasured({ order, readings }: Exercise): { cell: Cell; reading: number } | null {
  const [cell, reading] = [order[readings.length - 1], readings.at(-1)];
  return cell === undefined || reading === undefined ? null : { cell, reading };
}

/** How many trials of each cell are measured, by appraiser and part. */
export function measuredTrials({ plan, order, readings }: Exercise): readonly (readonly number[])[] {
  const counts = plan.appraisers.map(() => plan.parts.map(() => 0));
  for (const { appraiser, part } of order.slice(0, readings.length)) {
    const row = counts[appraiser];
    if (row !== undefined) row[part] = (row[part] ?? 0) + 1;
  }
  return counts;
}

/** The exercise with one reading more; one that comes when all is measured changes nothing. */
export function measured(exercise: Exercise, reading: number): Exercise {
  if (due(exercise) === null) return exercise;
  return { ...exercise, readings: [...exercise.readings, reading] };
}

/** The exercise without its last reading, which is then due again. */
export function takenBack(exercise: Exercise): Exercise {
  return { ...exercise, readings: exercise.readings.slice(0, -1) };
}

/** The study that a whole exercise makes. Problem `gauge-study-open` while readings are missing. */
export function studyOf(exercise: Exercise): Result<GaugeStudy> {
  const open = due(exercise);
  if (open !== null) return err(notWhole(open));
  const { plan, order, readings } = exercise;
  const { appraisers, parts } = plan;
  const table = appraisers.map(() => parts.map((): number[] => []));
  for (const [i, { appraiser, part }] of order.entries()) {
    const reading = readings[i];
    if (reading !== undefined) table[appraiser]?.[part]?.push(reading);
  }
  return ok({ appraisers, parts, readings: table });
}

const notWhole = ({ step, steps }: Due): Problem => ({
  code: 'gauge-study-open',
  where: 'gauge study',
  message: w`${steps - step + 1} of ${steps} readings are missing`,
  next: w`Measure them all: a study with holes says nothing about who differs from whom.`,
});
