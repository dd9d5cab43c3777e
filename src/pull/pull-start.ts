import type { Rest } from './rest.ts';
import type { Arrivals } from './sample-clock.ts';

/** Samples closer together than this are averaged into frames before a click is looked for in them. */
const FRAME_US = 4_000;

/** What is known of a pull the moment it begins. Torque counts upwards in its direction, whatever its sign. */
export interface PullStart {
  readonly startUs: number;
  readonly sign: 1 | -1;
  /** The torque from which on it counts as a pull. */
  readonly startNm: number;
  readonly zeroNm: number;
  readonly zeroSettled: boolean;
  readonly zeroStandardNm: number;
  /** Where the torque stood just before, beyond the zero; null where it did not stand. */
  readonly beforeNm: number | null;
  readonly noiseNm: number;
  readonly arrivals: Arrivals;
  readonly frameSamples: number;
  /** Standard deviation of what noise leaves of a frame. */
  readonly frameSigma: number;
  readonly sinceLastMs: number | null;
}

export function started(
  atUs: number,
  readNm: number,
  rest: Rest,
  before: { readonly endUs: number | null; readonly stoodNm: number | null },
): PullStart {
  const { zeroNm, arrivals, noiseNm } = rest;
  const { intervalUs } = arrivals;
  const sign = readNm < zeroNm ? -1 : 1;
  const stoodNm = before.stoodNm ?? rest.latelyNm;
  const frameSamples = intervalUs > 0 ? Math.max(1, Math.round(FRAME_US / intervalUs)) : 1;
  return {
    startUs: atUs,
    sign,
    startNm: rest.startNm,
    zeroNm,
    zeroSettled: rest.settled,
    zeroStandardNm: rest.zeroStandardNm,
    beforeNm: stoodNm === null ? null : sign * (stoodNm - zeroNm),
    noiseNm,
    arrivals,
    frameSamples,
    frameSigma: noiseNm / Math.sqrt(frameSamples),
    sinceLastMs: before.endUs === null ? null : (atUs - before.endUs) / 1000,
  };
}
