/**
 * A gauge study as an exercise: who measures which part next, until every appraiser has measured every part as often. Parts
 * come in another order each time, so that nobody reads his own figure again from memory.
 */

import { z } from 'zod';
import { type Problem, problemFromZod } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import type { GaugeStudy } from '../statistics/gauge-study.ts';

const label = z.string().trim().min(1, 'expected a name').max(40, 'expected at most 40 characters');
const eachOnce = (list: readonly string[]) => new Set(list).size === list.length;

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

export interface Exercise {
  readonly plan: ExercisePlan;
  /** Place of appraiser and part in the plan, in the order in which they are due. */
  readonly order: readonly { readonly appraiser: number; readonly part: number; readonly trial: number }[];
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
  message: `${steps - step + 1} of ${steps} readings are missing`,
  next: 'Measure them all: a study with holes says nothing about who differs from whom.',
});
