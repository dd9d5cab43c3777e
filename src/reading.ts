/** A tool's name in the station configuration, for example `wrench`. */
export type ToolId = string;

/** What a tool measures. */
export type Quantity = 'torque' | 'length';

/**
 * One thing a driver saw. Figures are integers in the tool's own step: `counts · 10^exponent` N·m or m, the exponent
 * being declared once in the tool's description, so that a record never depends on how a float is printed.
 *
 * `n` is the driver's own counter from 1, rising by one a reading; `atUs` the arrival on the station's monotonic
 * clock in whole microseconds. Neither comes from the air: the open measurement service sends no time and no number.
 */
export type Reading =
  | { readonly kind: 'value'; readonly n: number; readonly atUs: number; readonly counts: number }
  | { readonly kind: 'not-known'; readonly n: number; readonly atUs: number }
  | {
      readonly kind: 'raw';
      readonly n: number;
      readonly atUs: number;
      readonly source: string;
      readonly hex: string;
    }
  | {
      readonly kind: 'missed';
      readonly n: number;
      readonly atUs: number;
      readonly fromUs: number;
      readonly reason: string;
    };

/** What the value of a reading is a value of (the sampling function that the device declares). */
export type SamplingFunction =
  | 'unspecified'
  | 'instantaneous'
  | 'mean'
  | 'rms'
  | 'maximum'
  | 'minimum'
  | 'moving-average';

/** The accuracy that a device publishes of itself; absent when it says nothing. */
export type DeclaredUncertainty =
  | { readonly kind: 'relative'; readonly percent: number }
  | { readonly kind: 'absolute'; readonly counts: number };

/** How the reading got here, and whether the other end could have been somebody else. */
export interface LinkDescription {
  readonly kind: 'bluetooth-le' | 'direct' | 'file' | 'keyboard';
  readonly address?: string;
  readonly authenticated: boolean;
}

/** All that a driver could learn about a tool when it joined. */
export interface ToolDescription {
  readonly quantity: Quantity;
  readonly unit: 'N.m' | 'm';
  readonly exponent: number;
  readonly maker?: string;
  readonly model?: string;
  readonly serial?: string;
  readonly firmware?: string;
  readonly batteryPercent?: number;
  readonly samplingFunction: SamplingFunction;
  readonly updateIntervalMs?: number;
  readonly resolutionCounts?: number;
  readonly uncertainty?: DeclaredUncertainty;
  readonly validRange?: { readonly lowerCounts: number; readonly upperCounts: number };
  readonly link: LinkDescription;
}

/** Where a tool's link stands. `lost` is not final: the driver goes back to `seeking` by itself until closed. */
export type LinkState =
  | { readonly state: 'seeking' }
  | { readonly state: 'joining'; readonly name: string }
  | { readonly state: 'linked'; readonly description: ToolDescription }
  | { readonly state: 'lost'; readonly reason: string }
  | { readonly state: 'closed' };

/** The correctly rounded double of `counts · 10^exponent`. */
export function scaled(counts: number, exponent: number): number {
  return exponent < 0 ? counts / 10 ** -exponent : counts * 10 ** exponent;
}
