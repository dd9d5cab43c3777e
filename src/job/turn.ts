/** How far a plug was turned from contact, all strokes together, and what that is worth against the limits of an order. */
import { type Budget, budgetOf } from '../metrology/budget.ts';
import { windowBy } from '../metrology/decision.ts';
import type { Judgement } from '../metrology/judgement.ts';
import { turnTerms } from '../metrology/turn-terms.ts';
import { judge } from '../metrology/window.ts';
import type { PlugTurn, Pull } from '../pull/pull.ts';
import { plugTurnOf, turnedBelow } from '../sequence/measured-turn.ts';
import { roundedJudgement } from './judging.ts';
import { startedBy } from './started.ts';
import type { JobState } from './state.ts';

/** A turn and its budget, in degrees. */
export interface MeasuredTurn {
  readonly turnedDeg: number;
  readonly budget: Budget;
}

/**
 * The turn that a cylinder's plug has had with this pull since it was fitted; null where the angle of any of its strokes
 * says nothing.
 */
export function turnWith(state: JobState, cylinder: number, pull: Pull): MeasuredTurn | null {
  const c = state.cylinders.find((one) => one.cylinder === cylinder);
  const before = c === undefined ? [] : startedBy(c).map((attempt) => attempt.pull);
  return turnOf(state, [...before.filter((one) => one.pull < pull.pull), pull]);
}

/** The same of strokes on one plug, in their order. */
export function turnOf(state: JobState, strokes: readonly Pull[]): MeasuredTurn | null {
  const turns = strokes.map(plugTurnOf);
  const plugs = turns.filter((plug) => plug !== null);
  const [first] = strokes;
  const [contact] = plugs;
  if (first === undefined || contact === undefined || plugs.length < turns.length) return null;
  const turnedDeg = sum(plugs.map((plug) => plug.turnedDeg));
  const description = state.tools[first.tool]?.description;
  const terms = turnTerms({
    turnedDeg,
    standardDeg: Math.hypot(...plugs.map(({ standardDeg }) => standardDeg)),
    toolDeg: description?.angle?.uncertaintyDeg ?? null,
    contactDeg: afterContact(contact, first),
    windUpDeg: Math.max(0, ...plugs.map(({ windUpDeg }) => windUpDeg ?? 0)),
  });
  return { turnedDeg, budget: budgetOf(terms) };
}

/** The verdict on the turn; null where it was not measured. Undefined where the order asks for none. */
export function judgedTurn(state: JobState, cylinder: number, pull: Pull): Judgement | null | undefined {
  const { turn, decision } = state.basis;
  if (turn === undefined) return undefined;
  const measured = turnWith(state, cylinder, pull);
  if (measured === null) return null;
  const { turnedDeg, budget } = measured;
  const limits = { unit: 'deg', lowerLimit: turn.lowerDeg, upperLimit: turn.upperDeg } as const;
  const window = windowBy(decision.rule, { ...limits, spreadAt: () => budget });
  return roundedJudgement(judge(turnedDeg, budget, window));
}

/** The verdict on a pull where torque and turn must both be met: no better than either, and low before it is high. */
export function withTurn(torque: Judgement, turn: Judgement | null): Judgement {
  if (turn === null) return torque.result === 'OK' ? { ...torque, result: 'NotDecidable' } : torque;
  const result = WORSE.find((one) => torque.result === one || turn.result === one) ?? torque.result;
  const side = torque.side === 'high' || turn.side === 'inside' ? torque.side : turn.side;
  return { ...torque, result, side: torque.side === 'low' && turn.side === 'high' ? 'high' : side };
}

const WORSE = ['NotOK', 'NotDecidable', 'OK'] as const;

/** How far it was turned while the torque doubled behind the point from which the turn is counted. */
const afterContact = (plug: PlugTurn, { releaseNm, peakNm }: Pull): number =>
  turnedBelow(plug, Math.abs(releaseNm ?? peakNm), 2 * plug.fromNm) ?? 0;

const sum = (list: readonly number[]): number => list.reduce((total, x) => total + x, 0);
