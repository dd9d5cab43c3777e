import type { Window } from '../metrology/judgement.ts';
import { countingPulls } from './started.ts';
import { type CylinderState, isOver, type JobState } from './state.ts';
import { type Stage, stageAfter } from './tightening-stage.ts';

/** The stage at which the next pull on a cylinder finds its plug. */
export function stageOf({ basis, cylinders }: JobState, cylinder: number | null): Stage {
  if (basis.firstTorqueWindow === null) return 'final';
  const c = cylinders.find((one) => one.cylinder === cylinder);
  return c === undefined ? 'first' : stageThrough(c);
}

const stageThrough = (c: CylinderState): Stage => countingPulls(c).reduce<Stage>(stageAfter, 'first');

/** The cylinder whose plug has to be loosened before its last step; null for none. */
export function toBeLoosened(state: JobState): number | null {
  if (state.basis.firstTorqueWindow === null) return null;
  return state.cylinders.find((c) => !isOver(c.torque) && stageThrough(c) === 'loosen')?.cylinder ?? null;
}

/** The window of the next pull on a cylinder. */
export function torqueWindowOf(state: JobState, cylinder: number | null): Window {
  return windowAt(state, stageOf(state, cylinder));
}

/** The window that pull number `pull` of a cylinder was meant for. */
export function torqueWindowBefore(state: JobState, c: CylinderState, pull: number): Window {
  const { firstTorqueWindow } = state.basis;
  const before = c.pulls.filter((attempt) => attempt.pull.pull < pull);
  return windowAt(state, firstTorqueWindow === null ? 'final' : stageThrough({ ...c, pulls: before }));
}

function windowAt({ basis, torqueWindow }: JobState, stage: Stage): Window {
  return stage === 'final' ? torqueWindow : (basis.firstTorqueWindow ?? torqueWindow);
}
