/** What really happened, known to the simulation alone; the product never sees it. */
export interface TruePull {
  /** Null when no plug was turned: the wrench was only handled. */
  readonly cylinder: number | null;
  /**
   * By plug and wrench, not by intent. `tightening`: the first stroke since the plug was turned in by hand; `rehit`: one
   * after the click that turned it no further; `continuation`: every other later stroke.
   */
  readonly kind: 'tightening' | 'continuation' | 'rehit' | 'loosening' | 'handling';
  readonly startUs: number;
  readonly endUs: number;
  /** The torque of largest magnitude at the plug; negative when loosening. */
  readonly peakNm: number;
  readonly peakUs: number;
  /** The torque at which the head of the wrench let go; null when it did not. */
  readonly releaseNm: number | null;
  readonly releaseUs: number | null;
  readonly rotationDeg: number;
  /** Clamp force left in the joint, in newtons. */
  readonly clampN: number;
  /** False when the torque did not pass through the electronic wrench, such as with a plain ratchet. */
  readonly measured: boolean;
}

export interface TrueGap {
  readonly cylinder: number;
  readonly atUs: number;
  readonly trueMm: number;
}

/** Everything in the order in which it happened. */
export interface Truth {
  readonly pulls: readonly TruePull[];
  readonly gaps: readonly TrueGap[];
}

/** A plug that turned by less than this in a stroke was tight already. */
export const TURNED_DEG = 3;
