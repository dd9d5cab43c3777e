import { z } from 'zod';
import type { Problem } from './problem.ts';

/** A tool's name in the station configuration, for example `wrench`. */
export type ToolId = string;

/** What a tool measures. */
export type Quantity = 'torque' | 'length';

/** Why a link ended. What is printed for each is in report/words/link.ts. */
export const linkEndReasonSchema = z.enum([
  'out-of-reach',
  'no-answer',
  'ended-by-tool',
  'tool-switching-off',
  'ended-by-station',
  'pairing-failed',
  'pairing-missing',
  'not-established',
  'recording-ended',
  'port-gone',
  'link-ended',
]);

/** `controllerReason`: the Bluetooth controller's own, Core specification, Vol 1 Part F; absent where it gave none. */
export interface LinkEnd {
  readonly reason: z.infer<typeof linkEndReasonSchema>;
  readonly controllerReason?: number;
}

/** Why readings did not arrive: the link was gone, the tool's own counter jumped, or more came than could be kept. */
export const missReasonSchema = z.enum([...linkEndReasonSchema.options, 'counter-jumped', 'too-many']);
export type MissReason = z.infer<typeof missReasonSchema>;

/** What speaks against the profile of a tool: bytes that it does not describe, or figures that cannot be. */
export const contradictionSchema = z.enum(['bytes', 'figures']);
export type Contradiction = z.infer<typeof contradictionSchema>;

/** Why a device that looks like the tool was not taken for it. */
export const refusalReasonSchema = z.enum([
  'same-name',
  'other-serial',
  'not-encrypted',
  'not-measuring',
  'not-as-described',
  'other-format',
]);

/** `serial`: of the device, where it gave one and it is not the tool's. */
export interface DeviceRefusal {
  readonly reason: z.infer<typeof refusalReasonSchema>;
  readonly address: string;
  readonly serial?: string;
}

/**
 * Where a figure came from. `linked`: an instrument sent it over its link. `typed`: it came as typed text; a gauge that types
 * as a keyboard does cannot be told from a person who types. `replayed`: a recording was played, of whatever it was made.
 * `simulated`: there was no instrument.
 */
const FIGURE_SOURCES = ['linked', 'typed', 'replayed', 'simulated'] as const;
export const figureSourceSchema = z.enum(FIGURE_SOURCES);
export type FigureSource = z.infer<typeof figureSourceSchema>;

/** Each source once, in the order of the list above. */
export function sourcesOf(sources: Iterable<FigureSource>): FigureSource[] {
  const there = new Set(sources);
  return FIGURE_SOURCES.filter((source) => there.has(source));
}

/**
 * One thing a driver saw. Figures are integers in the tool's own step: `counts · 10^exponent` N·m or m, the exponent
 * being declared once in the tool's description, so that a record never depends on how a float is printed.
 *
 * `n` is the driver's own counter from 1, rising by one a reading; `atUs` the arrival on the station's monotonic
 * clock in whole microseconds. Neither comes from the air: the open measurement service sends no time and no number.
 *
 * `angleCounts` is what the tool says of its angle at the same instant, in the step that its description names under
 * `angle`: degrees turned in all since an arbitrary origin, growing in the tightening direction, never starting again at a
 * full turn. A tool whose description names no angle never sends one; one that does may leave it out where it has none.
 */
export type Reading =
  | {
      readonly kind: 'value';
      readonly n: number;
      readonly atUs: number;
      readonly counts: number;
      readonly angleCounts?: number;
    }
  | { readonly kind: 'not-known'; readonly n: number; readonly atUs: number }
  | {
      readonly kind: 'raw';
      readonly n: number;
      readonly atUs: number;
      readonly source: string;
      readonly hex: string;
    }
  /** Taken while the tool was out of reach, and fetched from its memory: when it was taken, nobody here saw. */
  | {
      readonly kind: 'stored';
      readonly n: number;
      readonly atUs: number;
      readonly counts: number;
      readonly angleCounts?: number;
    }
  | {
      readonly kind: 'missed';
      readonly n: number;
      readonly atUs: number;
      readonly fromUs: number;
      /** How many are missing, where the tool counts its readings; else only the length is known. */
      readonly readings?: number;
      readonly reason: MissReason;
    }
  /** What came shows that the profile is not that of this device: nothing that it makes of the bytes can be relied on. */
  | {
      readonly kind: 'contradicted';
      readonly n: number;
      readonly atUs: number;
      readonly because: Contradiction;
    };

const text = z.string().max(256);
const count = z.int();

/** What the value of a reading is a value of (the sampling function that the device declares). */
export const samplingFunctionSchema = z.enum([
  'unspecified',
  'instantaneous',
  'mean',
  'rms',
  'maximum',
  'minimum',
  'moving-average',
]);
export type SamplingFunction = z.infer<typeof samplingFunctionSchema>;

/** The accuracy that a device publishes of itself; absent when it says nothing. */
const declaredUncertaintySchema = z.discriminatedUnion('kind', [
  z
    .strictObject({
      kind: z.literal('relative'),
      percent: z.number().min(0).describe('Share of the reading, in per cent.'),
    })
    .readonly()
    .describe('A share of the reading.'),
  z
    .strictObject({
      kind: z.literal('absolute'),
      counts: count.min(0).describe('The same everywhere, in steps of the tool.'),
    })
    .readonly()
    .describe('A fixed amount.'),
]);
export type DeclaredUncertainty = z.infer<typeof declaredUncertaintySchema>;

/** How the reading got here, and whether the other end could have been somebody else. */
const linkDescriptionSchema = z
  .strictObject({
    kind: z
      .enum(['bluetooth-le', 'direct', 'file', 'keyboard', 'serial'])
      .describe('By what way the readings come.'),
    address: z.string().max(64).exactOptional().describe('Address of the device.'),
    encrypted: z
      .boolean()
      .exactOptional()
      .describe('Nobody in between could have listened. Absent where the platform does not tell.'),
    authenticated: z
      .boolean()
      .describe(
        'The other end has proven that it is the adopted tool. Encryption alone proves no such thing.',
      ),
  })
  .readonly();
export type LinkDescription = z.infer<typeof linkDescriptionSchema>;

/** How far a torque tool says that it was turned; absent where it says nothing of that. */
const angleDescriptionSchema = z
  .strictObject({
    exponent: z.int().min(-6).max(2).describe('An angle is angleCounts · 10^exponent degrees.'),
    resolutionCounts: count.min(0).exactOptional().describe('Its smallest step, in counts.'),
    driftDegPerMin: z
      .number()
      .min(0)
      .exactOptional()
      .describe('How far the angle may run by itself in a minute at most, as the tool says.'),
    uncertaintyDeg: z
      .number()
      .min(0)
      .exactOptional()
      .describe('How far a turn may be off at most without drift, as the tool says.'),
  })
  .readonly();
export type AngleDescription = z.infer<typeof angleDescriptionSchema>;

/** All that a driver could learn about a tool when it joined; a figure is `counts · 10^exponent` of the unit. */
export const toolDescriptionSchema = z
  .strictObject({
    quantity: z.enum(['torque', 'length']).describe('What it measures.'),
    unit: z.enum(['N.m', 'm']).describe('Unit of its figures.'),
    exponent: z.int().min(-12).max(3).describe('A figure is counts · 10^exponent of the unit.'),
    maker: text.exactOptional().describe('Maker, as the tool says.'),
    model: text.exactOptional().describe('Model, as the tool says.'),
    serial: text.exactOptional().describe('Serial number, as the tool says.'),
    firmware: text.exactOptional().describe('Firmware, as the tool says.'),
    batteryPercent: z.int().min(0).max(100).exactOptional().describe('Charge of its battery when it joined.'),
    samplingFunction: samplingFunctionSchema.describe('What a value is a value of.'),
    updateIntervalMs: z.number().min(0).exactOptional().describe('How often it measures, as it says.'),
    bandwidthHz: z
      .number()
      .positive()
      .exactOptional()
      .describe(
        'Where its own low-pass filter has fallen by 3 dB. Absent where it does not smooth, or does not say.',
      ),
    resolutionCounts: count.min(0).exactOptional().describe('Its smallest step, in counts.'),
    uncertainty: declaredUncertaintySchema
      .exactOptional()
      .describe('How far it may be off, as it says of itself.'),
    validRange: z
      .strictObject({
        lowerCounts: count.describe('The lower end.'),
        upperCounts: count.describe('The upper end.'),
      })
      .readonly()
      .exactOptional()
      .describe('What it measures, as it says.'),
    angle: angleDescriptionSchema
      .exactOptional()
      .describe('Of a torque tool: that its readings carry an angle too, and how it is written.'),
    link: linkDescriptionSchema.describe('How its readings get here.'),
  })
  .refine(({ quantity, angle }) => quantity === 'torque' || angle === undefined, {
    path: ['angle'],
    message: 'only a torque tool sends an angle',
  })
  .refine(({ quantity, unit }) => unit === (quantity === 'torque' ? 'N.m' : 'm'), {
    path: ['unit'],
    message: 'expected N.m for torque, m for length',
  })
  .readonly();
export type ToolDescription = z.infer<typeof toolDescriptionSchema>;

/**
 * Where a tool's link stands. `asleep`: nothing is heard of it; `seen`: it advertises; `linked`: its readings are
 * subscribed to. `lost` is not final: the driver goes back to `asleep` by itself until closed.
 */
export type LinkState =
  | { readonly state: 'asleep' }
  | { readonly state: 'seen' | 'connecting' | 'discovering'; readonly name: string }
  | { readonly state: 'linked'; readonly description: ToolDescription }
  | ({ readonly state: 'lost' } & LinkEnd)
  /** It was heard, but could not be joined; it has not been lost, because it was not there. */
  | { readonly state: 'not-joined'; readonly problem: Problem }
  | { readonly state: 'closed' };

/** The correctly rounded double of `counts · 10^exponent`. */
export function scaled(counts: number, exponent: number): number {
  return exponent < 0 ? counts / 10 ** -exponent : counts * 10 ** exponent;
}
