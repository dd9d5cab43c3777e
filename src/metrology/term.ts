import { z } from 'zod';

/**
 * How the possible values of an input are spread (GUM, JCGM 100:2008, clause 4.3). `normal` divides an expanded
 * uncertainty by its `k`; `standard` is a standard deviation as it stands, for example that of a mean of readings.
 */
export type Distribution =
  | { readonly kind: 'normal'; readonly k: number }
  | { readonly kind: 'rectangular' | 'triangular' | 'arcsine' | 'standard' };

/** An input of a measurement: how far it may be off, and how much the result moves with it. */
export interface Input {
  readonly type: 'A' | 'B';
  /** Half-width, expanded uncertainty or standard deviation, as the distribution says. */
  readonly amount: number;
  readonly distribution: Distribution;
  /** ∂result/∂input. */
  readonly sensitivity: number;
  /** Infinity where the amount is taken as exactly known. */
  readonly degreesOfFreedom: number;
  /** Of an error that is known and not taken off: reading less truth, before sensitivity. Its size is the amount. */
  readonly shift?: number;
}

/** What makes a reading of a wrench or a gauge uncertain. */
export const causeSchema = z.enum([
  'calibration',
  'calibration-extrapolated',
  'uncorrected-error',
  'drift',
  'permissible-deviation',
  'class-laboratory',
  'resolution',
  'repeatability',
  'peak',
  'adapter-arm',
  'adapter-offset',
  'adapter-angle',
  'flex-joint',
  'temperature',
  'drive',
  'hand-position',
  'joint',
  'other',
  'turn-reading',
  'turn-tool',
  'contact',
  'wind-up',
]);
export type Cause = z.infer<typeof causeSchema>;

const stated = z.string().min(1).max(160).describe('Where it comes from, as it is stated there.');

/** Where the amount of a line comes from. */
export const amountSourceSchema = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('certificate'),
      number: z.string().describe('Its number.'),
      laboratory: z.string().describe('Who issued it.'),
    })
    .describe('A calibration certificate.'),
  z.strictObject({ kind: z.literal('station-file'), basis: stated }).describe('The station file.'),
  z
    .strictObject({
      kind: z.literal('own-readings'),
      count: z.int().min(2).describe('How many readings.'),
      basis: stated,
    })
    .describe('Readings made in the shop.'),
  z.strictObject({ kind: z.literal('device') }).describe('The device, which publishes it of itself.'),
  z.strictObject({ kind: z.literal('step') }).describe('The step of the readings.'),
  z.strictObject({ kind: z.literal('samples') }).describe('The samples and the zero of the pull itself.'),
  z
    .strictObject({ kind: z.literal('adapter') })
    .describe('The lengths and the angle of the adapter, measured.'),
  z
    .strictObject({ kind: z.literal('usual-share') })
    .describe('A quarter of the limit, as usual where nothing is stated.'),
  z.strictObject({ kind: z.literal('bend') }).describe('The bend of the universal joint, by its geometry.'),
  z.strictObject({ kind: z.literal('work-order'), basis: stated }).describe('The work order.'),
  z.strictObject({ kind: z.literal('assumption') }).describe('An assumption of the rules; nobody states it.'),
]);
export type AmountSource = z.infer<typeof amountSourceSchema>;

/** One line of an uncertainty budget. */
export interface Term extends Input {
  readonly cause: Cause;
  readonly source: AmountSource;
}

/** Standard uncertainty of an input: GUM 4.3.3 (normal), 4.3.7 (a/√3), 4.3.9 (a/√6); arcsine a/√2. */
export function standardUncertainty(amount: number, distribution: Distribution): number {
  switch (distribution.kind) {
    case 'normal':
      return amount / distribution.k;
    case 'rectangular':
      return amount / Math.sqrt(3);
    case 'triangular':
      return amount / Math.sqrt(6);
    case 'arcsine':
      return amount / Math.SQRT2;
    case 'standard':
      return amount;
  }
}
