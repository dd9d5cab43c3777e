/**
 * What a plug came to sit on, told from how far the tool was turned. Guidance from first contact to torque: a new gasket
 * 180 to 240°, by some 90 to 270°; a used one 30°, by some up to 90°; a conical seat 22.5°, by some up to 45°. What is measured starts
 * at 10 % of the torque and has the wind-up of wrench and extension in it, 5 to 10°.
 */
import { z } from 'zod';
import type { Turn } from './pull.ts';

/**
 * `hardly`: tight already, or metal on metal where a gasket is missing. `hard`: a used gasket or a conical seat. `soft`: a
 * new gasket. `doubled`: more than one gasket gives. `binding`: far and evenly, as a thread that binds.
 */
export const seatingSchema = z.enum(['hardly', 'hard', 'soft', 'doubled', 'binding']);
export type Seating = z.infer<typeof seatingSchema>;

/** Simulated: up to 18° without a gasket and 15° on a tight plug, from 25° on a conical seat. */
export const HARDLY_DEG = 20;
/** Simulated: up to 38°, from 102° in a crossed thread, from 164° on a new gasket. Guidance for used gaskets ends at 90. */
export const HARD_DEG = 80;
/** Simulated: up to 223° on one gasket, from 375° on two. Guidance ends at 270. */
export const SOFT_DEG = 300;
/** A gasket takes most of its turn below half the torque, a thread that binds takes it evenly. Simulated: 0.22 and 0.55. */
const EVEN_SHARE = 0.4;

export function seatingOf(turn: Turn): Seating {
  const deg = turn.from10PercentDeg;
  if (deg < HARDLY_DEG) return 'hardly';
  if (deg < HARD_DEG) return 'hard';
  if (turn.from50PercentDeg > EVEN_SHARE * deg) return 'binding';
  return deg > SOFT_DEG ? 'doubled' : 'soft';
}
