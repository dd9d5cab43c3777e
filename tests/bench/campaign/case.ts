import type { BenchSpec, PlugSpec } from '../../../sim/physics/bench.ts';
import type { Random } from '../../../sim/random.ts';
import { PEOPLE, type PersonName } from '../../../sim/technician/people.ts';

/** One engine of a campaign: joint, wrench, stream and technician, all drawn from a seed. */
export interface Case {
  readonly seed: string;
  readonly person: PersonName;
  readonly joint: string;
  readonly bench: BenchSpec;
  readonly rateHz: number;
  /** Standard deviation of a reading, as a share of the capacity. */
  readonly noiseShare: number;
  readonly lossShare: number;
  /** Readings arrive together at multiples of this, as a radio hands them over; 0: each at its time. */
  readonly bunchUs: number;
}

/** What the stream of a case is like. */
export interface Stream {
  readonly rateHz: number;
  readonly noiseShare: number;
  readonly lossShare: number;
  /** Standard deviation of a stamp, as a share of the step between samples. */
  readonly jitterShare: number;
  readonly bunchUs: number;
}

const CAPACITIES_NM = [25, 60, 120];
const CYLINDERS = [1, 2, 3, 4, 5, 6, 7, 8];

/** Windows of the size that is usual for the thread; invented, no maker's figures. */
const JOINTS: readonly { readonly name: string; readonly plug: PlugSpec }[] = [
  joint('M8x1', 'gasket', 'new', 8, 10),
  joint('M10x1', 'gasket', 'new', 10, 12.5),
  joint('M12x1.25', 'gasket', 'new', 15, 20),
  joint('M14x1.25', 'gasket', 'new', 25, 30),
  joint('M14x1.25', 'gasket', 'used', 25, 30),
  joint('M12x1.25', 'gasket', 'used', 15, 20),
  joint('M14x1.25', 'conical', 'new', 15, 20),
  joint('M18x1.5', 'conical', 'new', 20, 28),
  joint('M18x1.5', 'gasket', 'new', 35, 43),
];

function joint(
  thread: PlugSpec['thread'],
  seat: PlugSpec['seat'],
  gasket: PlugSpec['gasket'],
  lowerNm: number,
  upperNm: number,
) {
  const name = `${thread} ${seat === 'conical' ? 'conical' : `${gasket} gasket`}`;
  return { name, plug: { thread, seat, gasket, lowerNm, upperNm, gapLowerMm: 0.7, gapUpperMm: 0.8 } };
}

export const PERSON_NAMES = Object.keys(PEOPLE).filter((name): name is PersonName => name in PEOPLE);

/** Draws technician, joint and wrench for a stream; the same seed draws the same. */
export function drawCase(
  seed: string,
  { rateHz, noiseShare, lossShare, jitterShare, bunchUs }: Stream,
  random: Random,
): Case {
  const person = pick(PERSON_NAMES, random);
  const { name, plug } = pick(JOINTS, random);
  const settingNm = (plug.lowerNm + plug.upperNm) / 2;
  const capacityNm = CAPACITIES_NM.find((nm) => settingNm <= 0.8 * nm) ?? 120;
  const sampleIntervalUs = 1e6 / rateHz;
  const wrench = {
    settingNm,
    capacityNm,
    noiseNm: noiseShare * capacityNm,
    sampleIntervalUs,
    jitterUs: jitterShare * sampleIntervalUs,
  };
  return {
    seed,
    person,
    joint: name,
    bench: { seed, cylinders: CYLINDERS, plug, wrench },
    rateHz,
    noiseShare,
    lossShare,
    bunchUs,
  };
}

function pick<T>(list: readonly T[], random: Random): T {
  const one = list[Math.floor(random.uniform(0, list.length))];
  if (one === undefined) throw new RangeError('nothing to pick from');
  return one;
}
