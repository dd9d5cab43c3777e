/**
 * What a typed figure can be. Outside what is usual, a named person must have looked at it (`checkedBy`); what cannot be is
 * refused, whoever answers for it. No figure of a specification or a plug passes unlooked at.
 */
import type { Problem } from '../problem.ts';
import { order } from '../quantity/compare.ts';
import { rounded } from '../quantity/rounded.ts';
import { briefFigure, roughTorque, shownUnit } from '../quantity/shown.ts';
import { w } from '../words/catalogue.ts';
import { HEAD_WORDS, SEAT_WORDS } from './fit-words.ts';
import { plugJoint, stressAreaMm2, threadDiameterMm, torqueParts } from './friction.ts';
import type { GapLimits, Wires } from './gap.ts';
import { tableView } from './plausibility.ts';
import type { Fit, Plug, Specification } from './specification.ts';
import type { TorqueLimits, Turn } from './tightening.ts';

type Range = readonly [from: number, to: number];

interface Bound {
  readonly usual: Range;
  readonly possible: Range;
  /** What is usual, and by whom, for the person who reads the question; goes on behind a colon. */
  readonly says: () => string;
}

/** A figure of the order and what it is held against. */
interface Figure {
  readonly where: string;
  readonly printed: string;
  readonly values: readonly number[];
  readonly bound: Bound;
}

/** The figures of a specification as they were read. */
export interface ReadFigures {
  /** Null where the order names an angle in its place. */
  readonly torque: TorqueLimits | null;
  readonly first: TorqueLimits | null;
  readonly advised: Turn | null;
  readonly turn: Turn | null;
  readonly gap: GapLimits | null;
  readonly wires: Wires | null;
  readonly bendMostMm: number;
}

/** The refusal of the first figure that cannot be, or that is unusual and that nobody looked at; null where all may stand. */
export function outOfBounds(
  specification: Specification,
  plug: Plug,
  fit: Fit,
  read: ReadFigures,
): Problem | null {
  const figures = figuresOf(specification, plug, fit, read);
  const impossible = figures.find(({ values, bound }) => beyond(values, bound.possible));
  if (impossible !== undefined)
    return {
      code: 'figure-impossible',
      where: impossible.where,
      message: w`${impossible.printed} cannot be for ${fit.thread}: ${impossible.bound.says()}`,
      next: w`Check figure and unit against the source.`,
    };
  if (specification.checkedBy !== undefined) return null;
  const unusual = figures.find(({ values, bound }) => beyond(values, bound.usual));
  if (unusual === undefined) return null;
  return {
    code: 'figure-implausible',
    where: unusual.where,
    message: w`${unusual.printed} on ${fit.thread} is not usual: ${unusual.bound.says()}`,
    next: w`Check figure and unit. If the source gives it, name who checked it in specification.checkedBy.`,
  };
}

const beyond = (values: readonly number[], [from, to]: Range): boolean =>
  values.some((value) => order(value, from) < 0 || order(value, to) > 0);

function figuresOf(
  { torque, tightenFirst, angle, turn, gap, gapRules, reduction, singleFigure }: Specification,
  { hexMm, reachMm }: Plug,
  fit: Fit,
  read: ReadFigures,
): readonly Figure[] {
  const figure = (where: string, printed: string | undefined, values: readonly number[], bound: Bound) =>
    printed === undefined ? [] : [{ where, printed, values, bound }];
  const mm = (value: number | undefined) => (value === undefined ? undefined : `${value} mm`);
  const torqueBound = torqueBoundOf(fit);
  const rules = 'specification.gapRules';
  return [
    ...(read.torque === null
      ? figure('specification.torque', torque, limitsOf(read.turn), TURN)
      : figure('specification.torque', torque, [read.torque.lowerNm, read.torque.upperNm], torqueBound)),
    ...(read.first === null
      ? []
      : figure('specification.tightenFirst', tightenFirst, [read.first.upperNm], {
          ...torqueBound,
          usual: [0, torqueBound.usual[1]],
          possible: [0, torqueBound.possible[1]],
        })),
    ...(read.advised === null
      ? []
      : figure('specification.angle', angle, [read.advised.lowerDeg, read.advised.upperDeg], TURN)),
    ...(read.turn === null ? [] : figure('specification.turn', turn, limitsOf(read.turn), TURN)),
    ...(read.gap === null ? [] : figure('specification.gap', gap, [read.gap.lowerMm, read.gap.upperMm], GAP)),
    ...figure(`${rules}.bendMost`, gapRules?.bendMost, [read.bendMostMm], BEND),
    ...(read.wires === null
      ? []
      : [
          ...figure(`${rules}.wires.go`, gapRules?.wires?.go, [read.wires.goMm], GAP),
          ...figure(`${rules}.wires.noGo`, gapRules?.wires?.noGo, [read.wires.noGoMm], GAP),
          ...figure(`${rules}.wires.within`, gapRules?.wires?.within, [read.wires.withinMm], WIRE_WITHIN),
        ]),
    ...(reduction === undefined
      ? []
      : figure('specification.reduction.percent', `${reduction.percent} %`, [reduction.percent], REDUCTION)),
    ...(singleFigure === undefined
      ? []
      : figure(
          'specification.singleFigure.percent',
          `${singleFigure.percent} %`,
          [singleFigure.percent],
          SINGLE,
        )),
    ...(hexMm === undefined ? [] : figure('plug.hexMm', mm(hexMm), [hexMm], hexBound(fit))),
    ...(reachMm === undefined ? [] : figure('plug.reachMm', mm(reachMm), [reachMm], REACH)),
  ];
}

const limitsOf = (turn: Turn | null): readonly number[] =>
  turn === null ? [] : [turn.lowerDeg, turn.upperDeg];

/**
 * Torques that a plug of this thread and seat may come to that is turned by an angle: from where a thread that gives way
 * would show, up to what is usual.
 */
export function torqueByAngle(fit: Fit): TorqueLimits {
  const { possible, usual } = torqueBoundOf(fit);
  return { lowerNm: rounded(possible[0], 1), upperNm: rounded(usual[1], 1) };
}

/** A figure beyond the tables by this share is looked at twice; beyond the larger one it is a slip of the pen. Our own choice. */
const UNUSUAL = 1.25;
const IMPOSSIBLE = 2;
/** Lower yield point of property class 4.6 in MPa (ISO 898-1:2013, table 3): the mildest steel that a shell is made of. */
const YIELD_MPA = 240;
/** Friction of dry threads in the middle of what handbooks give. */
const DRY_FRICTION = 0.15;
/** Of the torque at which the thread yields, where no table has a figure. Published tables lie at 0.2 to 0.7 of it. */
const UNTABLED: Bound['usual'] = [0.15, 0.7];

/**
 * The torque in N·m at which a solid thread of mild steel begins to yield: F = R_eL·A_s (ISO 898-1), T by Motosh's
 * decomposition. A shell is hollow and yields sooner, so no plug takes as much.
 */
export function ceilingNm(thread: Fit['thread']): number {
  const clampKn = (YIELD_MPA * stressAreaMm2(thread)) / 1000;
  return clampKn * torqueParts(plugJoint(thread), DRY_FRICTION, DRY_FRICTION).total;
}

function torqueBoundOf(fit: Fit): Bound {
  const ceiling = ceilingNm(fit.thread);
  const table = tableView(fit);
  const yields = () => w`a solid thread of mild steel yields at ${roughTorque(ceiling)} ${shownUnit('N.m')}`;
  if (table === null)
    return {
      usual: [UNTABLED[0] * ceiling, UNTABLED[1] * ceiling],
      possible: [(UNTABLED[0] * ceiling) / IMPOSSIBLE, ceiling],
      says: () => w`no general table has a figure for this thread and seat, and ${yields()}`,
    };
  const { lowestNm, highestNm } = table;
  return {
    usual: [lowestNm / UNUSUAL, Math.min(ceiling, highestNm * UNUSUAL)],
    possible: [lowestNm / IMPOSSIBLE, Math.min(ceiling, highestNm * IMPOSSIBLE)],
    says: () =>
      w`general tables say ${roughTorque(lowestNm)} to ${roughTorque(highestNm)} ${shownUnit('N.m')} (${SEAT_WORDS[fit.seat]}, ${HEAD_WORDS[fit.head]}), and ${yields()}`,
  };
}

/** In degrees. Common practice, no source. */
export const TURN_POSSIBLE: Range = [1, 720];

/** Common practice, no source, for all that follows; the usual reaches, gaps and turns are those that plug makers list. */
const TURN: Bound = {
  usual: [10, 360],
  possible: TURN_POSSIBLE,
  says: () => w`plug makers advise 1/16 of a turn on a conical seat and up to 2/3 on a new gasket`,
};
const GAP: Bound = {
  usual: [0.35, 1.7],
  possible: [0.15, 3],
  says: () => w`gaps of spark plugs lie between 0.4 and 1.6 mm (0.016 and 0.063 in)`,
};
const BEND: Bound = {
  usual: [0.02, 0.5],
  possible: [0.005, 1],
  says: () =>
    w`plug makers let a ground electrode be bent by about ${briefFigure(0.2, 'mm')} ${shownUnit('mm')} in all`,
};
const WIRE_WITHIN: Bound = {
  usual: [0.0005, 0.02],
  possible: [0.0001, 0.1],
  says: () => w`wires are made to a few thousandths of a millimetre`,
};
const REDUCTION: Bound = {
  usual: [5, 40],
  possible: [1, 50],
  says: () => w`shops reduce by 10 to 40 % for lubricated threads`,
};
const SINGLE: Bound = {
  usual: [3, 15],
  possible: [1, 25],
  says: () => w`where makers print a tolerance on the torque of a plug it is 5 to 15 %`,
};
const REACH: Bound = {
  usual: [8, 32],
  possible: [5, 45],
  says: () => w`threads of spark plugs are 9 to 29 mm long`,
};

/** From a hexagon that just clears the thread to the widest that is made for it. */
function hexBound({ thread }: Fit): Bound {
  const diameterMm = threadDiameterMm(thread);
  return {
    usual: [diameterMm + 2, 1.8 * diameterMm],
    possible: [diameterMm, 2.5 * diameterMm],
    says: () =>
      w`the hexagon of a plug with this thread is between ${diameterMm + 2} and ${rounded(1.8 * diameterMm, 1)} mm wide`,
  };
}
