import type { Problem } from '../problem.ts';
import { phrases, w } from '../words/catalogue.ts';
import { type Moments, mean } from './moments.ts';

/** What there are too few of, or what does not differ. */
const NAMES = phrases({ readings: 'readings', calibrations: 'calibrations' });
type Of = keyof typeof NAMES;

/** Problem `not-a-number`, at the first reading that is none. */
export function readingsProblem(readings: readonly number[], name: Of): Problem | null {
  const at = readings.findIndex((reading) => !Number.isFinite(reading));
  if (at < 0) return null;
  return {
    code: 'not-a-number',
    where: `${name}[${at}]`,
    message: w`${NAMES[name]} holds a value that is no finite number`,
    next: w`Leave the reading out and say so, or correct it where it was recorded.`,
  };
}

/** Problem `not-a-number`, when finite readings that differ have moments that a double does not hold. */
export function sumsProblem(moments: Moments, name: Of): Problem | null {
  const { squares } = moments;
  const holds = Number.isFinite(mean(moments)) && Number.isFinite(squares) && squares > 0;
  return holds ? null : notHeld(name);
}

/** Problem `not-a-number`, of finite readings from which nothing finite follows. */
export const notHeld = (name: Of): Problem => ({
  code: 'not-a-number',
  where: name,
  message: w`${NAMES[name]} are so large or so small that no mean and no spread can be computed from them`,
  next: w`Leave out what no instrument can have shown, and say so.`,
});

/** Problem `too-few`, when there are fewer than `least`. */
export function numberProblem(n: number, least: number, name: Of): Problem | null {
  if (n >= least) return null;
  return {
    code: 'too-few',
    where: name,
    message: w`${n} ${NAMES[name]} are too few; at least ${least} are needed`,
    next: w`Collect more before computing this, or widen the period.`,
  };
}

/** Problem `no-spread`, when all readings are equal. */
export function spreadProblem(readings: readonly number[], name: Of): Problem | null {
  if (readings.some((reading) => reading !== readings[0])) return null;
  return {
    code: 'no-spread',
    where: name,
    message: w`all ${NAMES[name]} are equal, so they show no spread to compute with`,
    next: w`Look whether the instrument shows enough digits, or whether one value was recorded many times.`,
  };
}
