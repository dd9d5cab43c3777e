/** What a tool shows while nobody pulls: how often it sends, in packets of how many, and how it wavers. */
export interface AtRest {
  readonly intervalUs: number;
  readonly perPacket: number;
  /** Standard deviation of a reading. */
  readonly noiseNm: number;
}
