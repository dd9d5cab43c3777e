/**
 * How far the zero may be off, where a shock moved it just before the pull or in it, and rest was too short to learn the new
 * one: by where the torque stands behind the pull; where that was not seen, by where it stood before. (A standard for
 * calibration calls the first the residual of the zero.) What noise explains, or a hand that rests, is left alone.
 */
export function zeroDoubtNm(seen: {
  /** Where the torque stood before and behind the pull, beyond the zero; null where that was not seen. */
  readonly beforeNm: number | null;
  readonly afterNm: number | null;
  readonly withinNm: number;
}): number {
  const offNm = Math.abs(seen.afterNm ?? seen.beforeNm ?? 0);
  return offNm > seen.withinNm ? offNm : 0;
}
