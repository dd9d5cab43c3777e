/** Samples of a wrench that sends its angle, on a plug that turns as the torque rises and does not turn back. */
import { type Corner, drawn } from './shapes.ts';

export interface TurnedSample {
  readonly atUs: number;
  readonly nm: number;
  readonly deg: number;
}

export interface Winding {
  /** Wrench, extension and joint as one spring. */
  readonly nmPerDeg: number;
  /** How far the plug has turned when the torque first came to `nm`; a tight one does not. */
  readonly plugDeg: (nm: number) => number;
}

/** The angle of the handle is that of the plug and the wind-up. */
export function turned(corners: readonly Corner[], { nmPerDeg, plugDeg }: Winding): TurnedSample[] {
  let mostNm = 0;
  return drawn(corners).map(({ atUs, nm }) => {
    mostNm = Math.max(mostNm, nm);
    return { atUs, nm, deg: plugDeg(mostNm) + nm / nmPerDeg };
  });
}

/** A gasket that collapses at a low torque and then hardens, through `deg` at 27 N·m. */
export const gasket = (deg: number) => (nm: number) => deg * (nm / 27) ** 0.4;
export const stands = () => 0;
