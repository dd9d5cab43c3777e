/** How far a plug was turned from contact, all strokes together, and what that is worth against the limits of an order. */
import { type Budget, budgetOf } from '../metrology/budget.ts';
import { windowBy } from '../metrology/decision.ts';
import type { Grade, Judgement, Zoned } from '../metrology/judgement.ts';
import { turnTerms } from '../metrology/turn-terms.ts';
import { judge } from '../metrology/window.ts';
import type { PlugTurn, Pull } from '../pull/pull.ts';
import type { ToolId } from '../reading.ts';
import { plugTurnOf } from '../sequence/measured-turn.ts';
import { roundedJudgement } from './judging.ts';
import { strokesOnPlug } from './started.ts';
import type { JobState } from './state.ts';

/** A turn and its budget, in degrees. */
export interface MeasuredTurn {
  readonly turnedDeg: number;
  readonly budget: Budget;
}

/**
 * The turn that a cylinder's plug has had with this pull since it was fitted; null where the angle of any of its strokes
 * says nothing, or contact was not seen.
 */
export function turnWith(
  state: Pick<JobState, 'cylinders' | 'tools'>,
  cylinder: number,
  pull: Pull,
): MeasuredTurn | null {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  const before = c === undefined ? [] : strokesOnPlug(c).map((attempt) => attempt.pull);
  return turnOf(state, [...before.filter((one) => one.pull < pull.pull), pull]);
}

/**
 * The same of strokes on one plug, in their order. Contact lies somewhere before the first turn that was seen: half of how far
 * it may lie is added, and half is left open.
 */
function turnOf(state: Pick<JobState, 'tools'>, strokes: readonly Pull[]): MeasuredTurn | null {
  const plugs = strokes.map(plugTurnOf).filter((plug) => plug !== null);
  const [first] = strokes;
  const [contact] = plugs;
  if (first === undefined || contact === undefined || plugs.length < strokes.length) return null;
  const { contactDeg } = contact;
  return contactDeg === undefined ? null : measuredTurn(state, first.tool, plugs, contactDeg / 2);
}

/** How far a plug was turned in one stroke, wherever that began; null where the angle says nothing. */
export function strokeTurn(state: Pick<JobState, 'tools'>, pull: Pull): MeasuredTurn | null {
  const plug = plugTurnOf(pull);
  return plug === null ? null : measuredTurn(state, pull.tool, [plug], 0);
}

function measuredTurn(
  { tools }: Pick<JobState, 'tools'>,
  tool: ToolId,
  plugs: readonly PlugTurn[],
  belowDeg: number,
): MeasuredTurn {
  const turnedDeg = sum(plugs.map((plug) => plug.turnedDeg)) + belowDeg;
  const terms = turnTerms({
    turnedDeg,
    // A drift goes on in its direction from stroke to stroke.
    standardDeg: sum(plugs.map(({ standardDeg }) => standardDeg)),
    toolDeg: tools[tool]?.description?.angle?.uncertaintyDeg ?? null,
    contactDeg: belowDeg,
    windUpDeg: sum(plugs.map(({ windUpDeg, woundUpDeg }) => Math.max(0, woundUpDeg ?? windUpDeg ?? 0))),
  });
  return { turnedDeg, budget: budgetOf(terms) };
}

/**
 * How far the due plug was turned by now, strokes before and the one under way, with the wind-up of the last pull taken off;
 * null where it cannot be said. For the eye alone: what is judged is measured when the wrench was let off.
 */
export function turnSoFar(
  { cylinders, torqueTarget, lastPull }: Pick<JobState, 'cylinders' | 'torqueTarget' | 'lastPull'>,
  live: { readonly turnedDeg: number | null; readonly nowNm: number | null },
): number | null {
  const c = cylinders.find(({ cylinder }) => cylinder === torqueTarget);
  if (c === undefined || live.turnedDeg === null) return null;
  const before = strokesOnPlug(c).map(({ pull }) => plugTurnOf(pull)?.turnedDeg ?? 0);
  const plug = lastPull === null ? null : plugTurnOf(lastPull);
  const topNm = Math.abs(lastPull?.releaseNm ?? lastPull?.peakNm ?? 0);
  const degPerNm =
    plug === null || !(topNm > plug.fromNm) ? 0 : Math.max(0, plug.windUpDeg ?? 0) / (topNm - plug.fromNm);
  return sum(before) + Math.max(0, live.turnedDeg - degPerNm * Math.max(0, live.nowNm ?? 0));
}

/** The window of a turn by the budget of that very turn; null where the order names no two limits. */
export function turnWindow({ basis }: Pick<JobState, 'basis'>, budget: Budget): Zoned<'deg'> | null {
  const { turn, decision } = basis;
  if (turn === undefined || turn.lowerDeg >= turn.upperDeg) return null;
  const limits = { unit: 'deg', lowerLimit: turn.lowerDeg, upperLimit: turn.upperDeg } as const;
  return windowBy(decision.rule, { ...limits, spreadAt: () => budget });
}

/** The verdict on the turn; null where it was not measured. Undefined where the order asks for none. */
export function judgedTurn(state: JobState, cylinder: number, pull: Pull): Judgement | null | undefined {
  if (state.basis.turn === undefined) return undefined;
  const measured = turnWith(state, cylinder, pull);
  const window = measured === null ? null : turnWindow(state, measured.budget);
  if (measured === null || window === null) return null;
  return roundedJudgement(judge(measured.turnedDeg, measured.budget, window));
}

/** The verdict on a pull where torque and turn must both be met: no better than either, and low before it is high. */
export function withTurn(torque: Judgement, turn: Judgement | null): Judgement {
  if (turn === null)
    return torque.result === 'OK' ? { ...torque, result: 'NotDecidable', grade: 'conditional-pass' } : torque;
  const worse = <T>(order: readonly T[], a: T, b: T): T => order.find((one) => one === a || one === b) ?? a;
  const side = torque.side === 'high' || turn.side === 'inside' ? torque.side : turn.side;
  return {
    ...torque,
    result: worse(RESULTS, torque.result, turn.result),
    grade: worse(GRADES, torque.grade, turn.grade),
    side: torque.side === 'low' && turn.side === 'high' ? 'high' : side,
    conformanceProbability: Math.min(torque.conformanceProbability, turn.conformanceProbability),
  };
}

/** The worst first. */
const RESULTS = ['NotOK', 'NotDecidable', 'OK'] as const;
const GRADES: readonly Grade[] = ['fail', 'conditional-fail', 'conditional-pass', 'pass'];

const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0);
