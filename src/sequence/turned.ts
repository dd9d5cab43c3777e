/**
 * Did the plug turn under this pull, or stand still? From the torque alone, by the odds between two explanations.
 *
 * Stood: wrench, extension and plug are one spring. Torque is its stiffness times the way of the hand, so a steady hand
 * draws a straight line at any speed, up to the click or to where the plug creeps near its old torque. Nothing says how
 * fast: at 5 degrees a second with a soft extension it takes as long as a fresh tightening. Pulled quickly it keeps the
 * ramp of the hand, and is quicker than this hand's turning pulls, because the plug does not give as well.
 *
 * Turned: the joint gives behind the spring, and hardens as it closes. A gasket that is crushed spends most of the
 * time low; a used gasket or a cone is only a little softer at the bottom than at the top. How much, and how long it takes,
 * depends on joint, extension and hand, so it is learnt from the plugs that this hand has turned in this job.
 *
 * So two things speak: the shape, as paces of four equal fifths of the torque from 10 to 90 %, each against their mean
 * (a straight line has four equal ones, whatever the speed); and the time from 20 to 80 % against the earlier ones.
 * Where neither tells, nobody can without an angle: a soft extension on a hard seat hides the joint behind the spring,
 * and a hand that slows down by itself in the way the joint hardens hides it wholly. Then a person is asked.
 *
 * All spreads are assumptions, held against simulated hands and against the independent generator; no published figures.
 */
import type { DetectedPull } from '../pull/pull.ts';

/** What is compared of a rise: the logarithms of its time and of its paces. */
export interface RiseShape {
  /** ln of the milliseconds from 20 to 80 % of the first top. */
  readonly time: number;
  /** ln of the times of 10-30, 30-50, 50-70 and 70-90 %, against their mean. */
  readonly paces: readonly number[];
  /** What noise and sampling leave open about a pace, as a standard deviation. */
  readonly blur: number;
}

/** What was known when the pull came. */
export interface Before {
  /** Plugs of this job that turned under one pull of the same tool. */
  readonly earlier: readonly RiseShape[];
  /** The due plug was backed out in this job: its gasket is no longer what the earlier ones were. */
  readonly refitted: boolean;
  /** It is the only one left. */
  readonly lastOpen: boolean;
}

const LEAST_MS = 0.5;
/** Fifths between which a pace is taken, by tenths. */
const FIFTHS = [
  [1, 3],
  [3, 5],
  [5, 7],
  [7, 9],
] as const;
/** A pace is off by so many readings' noise and steps. */
const NOISES = 0.9;
const STEPS = 0.3;

export function riseShape({ rise, peakNm, releaseNm, noiseNm, intervalUs }: DetectedPull): RiseShape {
  const at = (tenth: number) => rise.reachedMs[tenth - 1] ?? 0;
  const logs = FIFTHS.map(([from, to]) => Math.log(Math.max(LEAST_MS, at(to) - at(from))));
  const mean = logs.reduce((sum, x) => sum + x, 0) / logs.length;
  const fifthNm = 0.2 * Math.max(1e-3, Math.abs(releaseNm ?? peakNm));
  const fifthMs = Math.max(LEAST_MS, (at(9) - at(1)) / 4);
  return {
    time: Math.log(Math.max(LEAST_MS, at(8) - at(2))),
    paces: logs.map((x) => x - mean),
    blur: Math.hypot((NOISES * noiseNm) / fifthNm, (STEPS * intervalUs) / 1000 / fifthMs),
  };
}

/** A hand on a spring: shortest and longest time from 20 to 80 %, between which nothing is likelier. */
const SPRING_MS = [20, 12_000] as const;
const LN_SPRING = Math.log(SPRING_MS[1] / SPRING_MS[0]);
/** A steady hand, and any other, by how the paces of a spring differ from the straight line and from the hand's own ramp. */
const STEADY = 0.03;
const ANY_HAND = 0.09;
/** As long as this hand is not known. */
const ANY_HAND_AT_ALL = 0.15;
/**
 * How many of those who pull a tight plug do it steadily, at any speed. In between most only try it, as a check; one who
 * left a plug out believes that he tightens the last.
 */
const STEADILY = 0.15;
const STEADILY_LAST = 0.5;
/** And he may jerk or hesitate, in a shape that is like nothing else. */
const JERKILY = 0.03;
const JERKY = 0.35;
/** As much of a shape as a hand can make without a joint that gives. */
const RAMP_AT_MOST = 0.2;
/**
 * A muscle is the slower the more it pulls, so that the paces of a spring fall towards the top. No joint does that: it gives
 * at the bottom and hardens. How much, as ln from the first fifth to the last, and how near such a hand keeps to it.
 */
const TIRES = [0.3, 0.6, 0.9, 1.2] as const;
const TIRING = 0.07;
const TIRES_EVENLY = [-0.5, -1 / 6, 1 / 6, 0.5] as const;
/** By how much a hand may tire of which nothing is known, and how many do. */
const MAY_TIRE = [
  { by: 0, share: 0.6 },
  { by: 0.3, share: 0.2 },
  { by: 0.6, share: 0.2 },
] as const;
/** How many of those who pull a tight plug do it so, at any speed. */
const TIRINGLY = 0.1;
/** On a spring alone such a hand is quicker by this, as ln; a soft limit. */
const QUICKER = 0.4;
const QUICKER_SOFT = 0.1;
/** The spread of this hand's turning pulls: what is assumed, and how many pulls that weighs. */
const TIME_SPREAD = 0.28;
const PACE_SPREAD = 0.08;
const TIME_WEIGHS = 6;
const PACE_WEIGHS = 3;
/** A plug that turns, before this hand is known: the time from 20 to 80 %, and outside of it the ln that falls off a unit of ln. */
const TURNS_MS = [140, 5_000] as const;
const FALLS_OFF = 8;
/** Paces of plugs that turn, with their spreads: a hard seat, and gaskets from a soft wrench to a first stroke on a stiff one. */
const KNOWN_SHAPES = [
  { paces: [0.16, 0, -0.1, -0.06], spread: 0.09 },
  { paces: [0.6, 0.05, -0.25, -0.4], spread: 0.2 },
  { paces: [1.3, 0, -0.65, -0.65], spread: 0.2 },
  { paces: [2.6, 0, -1.3, -1.3], spread: 0.5 },
  { paces: [4.5, 0, -2.2, -2.3], spread: 1 },
] as const;
/** Share of plugs fitted once more that turn as others do, and not as the earlier ones of the job did. */
const OTHERWISE = 0.5;

/** ln of the odds that the plug turned, by the pull alone: what is likely beforehand comes on top. */
export function turnedLogOdds(shape: RiseShape, { earlier, refitted, lastOpen }: Before): number {
  const steadily = lastOpen || earlier.length === 0 ? STEADILY_LAST : STEADILY;
  const stood = sumOfLogs([
    Math.log(steadily) + straight(shape),
    Math.log(TIRINGLY) + tiring(shape),
    Math.log(JERKILY) + jerky(shape),
    Math.log(1 - steadily - TIRINGLY - JERKILY) + quicker(shape, earlier),
  ]);
  if (earlier.length === 0) return asKnown(shape) - stood;
  const alike = likeEarlier(shape, earlier);
  if (!refitted) return alike - stood;
  return sumOfLogs([Math.log(1 - OTHERWISE) + alike, Math.log(OTHERWISE) + asKnown(shape)]) - stood;
}

/** How far the paces lie from those of a straight line; 0 for a spring under a steady hand. */
export const unevenness = ({ paces }: RiseShape): number => Math.sqrt(squares(paces));

/** The time from 20 to 80 % that is usual among them. */
export const usualRiseMs = (earlier: readonly RiseShape[]): number =>
  Math.exp(mean(earlier.map(({ time }) => time)));

/** Stood, under a steady hand: at any speed. */
const straight = ({ paces, blur }: RiseShape): number =>
  -Math.log(LN_SPRING) + logShape(paces, Math.hypot(STEADY, blur));

/** Stood, under a hand that tires on its way up: at any speed. */
const tiring = ({ paces, blur }: RiseShape): number =>
  -Math.log(LN_SPRING) -
  Math.log(TIRES.length) +
  sumOfLogs(TIRES.map((by) => logShape(minus(paces, TIRES_EVENLY, by), Math.hypot(TIRING, blur))));

/** Stood, under a hand that jerks: at any speed. */
const jerky = ({ paces, blur }: RiseShape): number =>
  -Math.log(LN_SPRING) + logShape(paces, Math.hypot(JERKY, blur));

/** Stood, under a hand that pulls as it does otherwise: with its ramp, and quicker than when the plug gives. */
function quicker({ time, paces, blur }: RiseShape, earlier: readonly RiseShape[]): number {
  if (earlier.length === 0) return -Math.log(LN_SPRING) + logShape(paces, Math.hypot(ANY_HAND_AT_ALL, blur));
  const spread = Math.hypot(ANY_HAND, blur);
  const fastest = Math.log(SPRING_MS[0]);
  const limit = Math.max(fastest + 1, mean(earlier.map((one) => one.time)) - QUICKER);
  const soft = Math.log1p(Math.exp(Math.min(50, (time - limit) / QUICKER_SOFT)));
  const usual = usualPaces(earlier);
  // What falls towards the top is the hand's alone.
  const tires = usual.reduce((sum, pace, i) => sum + pace * (TIRES_EVENLY[i] ?? 0), 0) > 0;
  const ramp = tires ? 1 : Math.min(1, RAMP_AT_MOST / Math.max(1e-9, Math.sqrt(squares(usual))));
  const own = minus(paces, usual, ramp);
  // A joint that gives at the bottom had hidden how much.
  return -Math.log(limit - fastest) - soft + logTiring(own, spread);
}

/** Turned as the earlier ones of this job did. */
function likeEarlier({ time, paces, blur }: RiseShape, earlier: readonly RiseShape[]): number {
  const n = earlier.length;
  const times = earlier.map((one) => one.time);
  const usualTime = mean(times);
  const timeSpread = Math.sqrt(
    ((TIME_WEIGHS * TIME_SPREAD ** 2 + squares(times.map((t) => t - usualTime))) / (TIME_WEIGHS + n - 1)) *
      (1 + 1 / n),
  );
  const usual = usualPaces(earlier);
  const apart = earlier.reduce((sum, one) => sum + squares(minus(one.paces, usual, 1)), 0);
  const paceSpread = Math.sqrt(
    ((PACE_WEIGHS * PACE_SPREAD ** 2 + apart) / (PACE_WEIGHS + 3 * (n - 1))) * (1 + 1 / n),
  );
  // One pull does not tell whether this hand jerks; a few do.
  const jerks = 0.5 / (0.5 + n * n);
  const off = minus(paces, usual, 1);
  return (
    logTime(time - usualTime, timeSpread) +
    sumOfLogs([
      Math.log(1 - jerks) + logShape(off, Math.hypot(paceSpread, blur)),
      Math.log(jerks) + logShape(off, Math.hypot(JERKY, blur)),
    ])
  );
}

/** Turned as plugs do, before anything is known of this job. */
function asKnown({ time, paces, blur }: RiseShape): number {
  const [from, to] = [Math.log(TURNS_MS[0]), Math.log(TURNS_MS[1])];
  const outside = Math.max(0, from - time, time - to);
  const shapes = KNOWN_SHAPES.map(
    (known) =>
      logTiring(minus(paces, known.paces, 1), Math.hypot(known.spread, blur)) - Math.log(KNOWN_SHAPES.length),
  );
  return -Math.log(to - from) - FALLS_OFF * outside + sumOfLogs(shapes);
}

/** Student's t for a time, with 10 degrees of freedom; its constant is Γ(5.5)/(Γ(5)·√(10π)). */
const T10 = 0.389108;
const logTime = (off: number, spread: number): number =>
  Math.log(T10 / spread) - 5.5 * Math.log1p((off / spread) ** 2 / 10);

/** The same for the three free paces, with 6 degrees of freedom; the constant is the same for all and left out. */
const logShape = (off: readonly number[], spread: number): number =>
  -3 * Math.log(spread) - 4.5 * Math.log1p(squares(off) / (6 * spread * spread));

/** The same under a hand that may tire. */
const logTiring = (off: readonly number[], spread: number): number =>
  sumOfLogs(
    MAY_TIRE.map(({ by, share }) => Math.log(share) + logShape(minus(off, TIRES_EVENLY, by), spread)),
  );

const usualPaces = (shapes: readonly RiseShape[]): number[] =>
  FIFTHS.map((_, i) => mean(shapes.map(({ paces }) => paces[i] ?? 0)));
const mean = (list: readonly number[]): number => list.reduce((sum, x) => sum + x, 0) / list.length;
const squares = (list: readonly number[]): number => list.reduce((sum, x) => sum + x * x, 0);
const minus = (a: readonly number[], b: readonly number[], share: number): number[] =>
  a.map((x, i) => x - share * (b[i] ?? 0));

function sumOfLogs(logs: readonly number[]): number {
  const most = Math.max(...logs);
  return most + Math.log(logs.reduce((sum, x) => sum + Math.exp(x - most), 0));
}
