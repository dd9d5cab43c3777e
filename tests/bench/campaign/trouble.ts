/** What a stream can suffer besides noise and losses: zeros that move, scales that end, tools that send maxima only. */
import type { Random } from '../../../sim/random.ts';
import type { DetectorSettings } from '../../../src/pull/settings.ts';
import type { Case } from './case.ts';
import type { Send } from './work.ts';

const TROUBLES = [
  'the zero drifts',
  'the zero jumps, and is set',
  'the scale ends, as told',
  'the scale ends, untold',
  'maxima, cleared at rest',
  'maxima, kept to the next',
] as const;
export type Trouble = (typeof TROUBLES)[number];

/** One engine in eight has one of them. */
const SHARE = 1 / 8;

export function drawTrouble(random: Random): Trouble | null {
  if (!random.chance(SHARE)) return null;
  return TROUBLES[Math.floor(random.uniform(0, TROUBLES.length))] ?? null;
}

export interface Troubled {
  /** What the tool tells of itself. */
  readonly settings: Partial<DetectorSettings>;
  /** The highest torque that it can read; null: none is reached. */
  readonly endNm: number | null;
  readonly send: Send;
}

/** Drift to and fro by up to so much of the capacity, in this time. Assumption: a wrench that warms in the hand. */
const DRIFT_SHARE = 0.01;
const DRIFT_PERIOD_US = 120_000_000;
/** A knock moves the zero by so much of the capacity; some seconds later somebody sets it. Assumptions. */
const JUMP_SHARE = { from: 0.005, to: 0.04 };
const QUIET_US = 300_000;
const JUMP_EVERY_US = { from: 6_000_000, to: 20_000_000 };
/** A work cycle is over when the torque was below this share of the capacity for so long. Assumptions. */
const CYCLE_FROM_SHARE = 0.05;
const CYCLE_OVER_US = 150_000;

export function troubled(trouble: Trouble, { bench }: Case, random: Random): Troubled {
  const capacityNm = bench.wrench?.capacityNm ?? 60;
  const settingNm = bench.wrench?.settingNm ?? bench.plug.lowerNm;
  switch (trouble) {
    case 'the zero drifts':
      return { settings: {}, endNm: null, send: drifting(random.uniform(0.2, 1) * DRIFT_SHARE * capacityNm) };
    case 'the zero jumps, and is set':
      return { settings: {}, endNm: null, send: jumping(capacityNm, random) };
    case 'the scale ends, as told':
    case 'the scale ends, untold': {
      const endNm = Math.round(100 * random.uniform(0.8, 1.04) * settingNm) / 100;
      const range = trouble === 'the scale ends, as told' ? { lowerNm: -endNm, upperNm: endNm } : null;
      return { settings: { range }, endNm, send: (_, nm) => Math.max(-endNm, Math.min(endNm, nm)) };
    }
    case 'maxima, cleared at rest':
    case 'maxima, kept to the next': {
      const everyUs = random.uniform(50_000, 120_000);
      const kept = trouble === 'maxima, kept to the next';
      return { settings: { stream: 'maxima' }, endNm: null, send: maxima(capacityNm, everyUs, kept) };
    }
  }
}

function drifting(byNm: number): Send {
  return (atUs, nm) => {
    const turn = (atUs % DRIFT_PERIOD_US) / DRIFT_PERIOD_US;
    return inSteps(nm + byNm * (4 * Math.abs(turn - 0.5) - 1));
  };
}

function jumping(capacityNm: number, random: Random): Send {
  let zeroNm = 0;
  let nextUs = random.uniform(JUMP_EVERY_US.from, JUMP_EVERY_US.to);
  let quietSinceUs = 0;
  return (atUs, nm) => {
    if (Math.abs(nm) > CYCLE_FROM_SHARE * capacityNm) quietSinceUs = atUs;
    if (atUs >= nextUs && atUs - quietSinceUs > QUIET_US) {
      const byNm = random.uniform(JUMP_SHARE.from, JUMP_SHARE.to) * capacityNm;
      zeroNm = zeroNm === 0 ? (random.chance(0.5) ? byNm : -byNm) : 0;
      nextUs = atUs + random.uniform(JUMP_EVERY_US.from, JUMP_EVERY_US.to);
    }
    return inSteps(nm + zeroNm);
  };
}

function maxima(capacityNm: number, everyUs: number, kept: boolean): Send {
  const fromNm = CYCLE_FROM_SHARE * capacityNm;
  let highestNm = 0;
  let lowSinceUs: number | null = null;
  let over = false;
  let dueUs = 0;
  return (atUs, nm) => {
    lowSinceUs = Math.abs(nm) >= fromNm ? null : (lowSinceUs ?? atUs);
    if (lowSinceUs !== null && atUs - lowSinceUs >= CYCLE_OVER_US) over = true;
    if (over && (!kept || lowSinceUs === null)) highestNm = 0;
    if (lowSinceUs === null) over = false;
    if (!over && Math.abs(nm) > Math.abs(highestNm)) highestNm = nm;
    if (atUs < dueUs) return null;
    dueUs = atUs + everyUs;
    return highestNm;
  };
}

const inSteps = (nm: number): number => Math.round(100 * nm) / 100;
