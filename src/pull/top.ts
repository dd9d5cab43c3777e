/** A maximum of the torque as estimated from the samples about it. Times in microseconds since the start of the pull. */
export interface Top {
  readonly nm: number;
  readonly atUs: number;
  readonly standardNm: number;
}
