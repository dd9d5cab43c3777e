import { z } from 'zod';
import { samplingFunctionSchema } from '../../src/reading.ts';
import { hexSchema, uuidSchema } from '../profile/link-schema.ts';

/**
 * What a driver in a package of its own gives: what its tool is like, how it is reached, and a function that turns bytes into
 * readings. It opens no link, has no clock and numbers nothing: the station does. "plugmark manual drivers" is about it.
 */

const count = z.int();

/** What a session makes of bytes. `value` null: the tool sent a reading without a value. `raw`: bytes that are no reading. */
const madeSchema = z.union([
  z.strictObject({ value: count.nullable(), angle: count.exactOptional() }),
  z.strictObject({ raw: z.instanceof(Uint8Array) }),
]);
export type Made = z.infer<typeof madeSchema>;
/** More than any piece of a link holds. */
export const madeListSchema = z.array(madeSchema).max(1_000);

const place = {
  service: uuidSchema.describe('Its service.'),
  characteristic: uuidSchema.describe('Its characteristic.'),
};
const linkSchema = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('bluetooth-le'),
    advertised: uuidSchema.describe('The service by which the device is found.'),
    ...place,
    start: z
      .array(z.strictObject({ ...place, hex: hexSchema }))
      .max(8)
      .default([]),
  }),
  z.strictObject({
    kind: z.literal('serial'),
    baud: z.int().min(110).max(4_000_000),
    dataBits: z.literal([7, 8]).default(8),
    parity: z.enum(['none', 'even', 'odd']).default('none'),
    stopBits: z.literal([1, 2]).default(1),
    start: z
      .array(z.strictObject({ hex: hexSchema }))
      .max(8)
      .default([]),
  }),
]);
export type PackageLink = z.infer<typeof linkSchema>;

/** Frames that the tool sends, with what its display shows for each: in N·m or mm, null for no value. */
const exampleSchema = z.strictObject({ hex: hexSchema, shows: z.array(z.number().nullable()).min(1) });

export interface Session {
  /** Bytes as they came; on Bluetooth one notification. */
  take(bytes: Uint8Array): unknown;
}

const isFunction = (value: unknown): value is () => unknown => typeof value === 'function';

export const driverSchema = z.strictObject({
  contract: z.literal('plugmark/driver/1'),
  title: z.string().min(1).max(80),
  quantity: z.enum(['torque', 'length']),
  /** A figure is value · 10^exponent N·m or m. */
  exponent: z.int().min(-12).max(3),
  resolution: count.min(0),
  samplingFunction: samplingFunctionSchema,
  updateIntervalMs: z.number().min(0).exactOptional(),
  angle: z.strictObject({ exponent: z.int().min(-6).max(2), resolution: count.min(0) }).exactOptional(),
  link: linkSchema,
  /** The tool has no way to say that it has no value. */
  alwaysHasValue: z.literal(true).exactOptional(),
  examples: z.array(exampleSchema).min(3).max(100),
  /** A new one for each link: nothing of the last link may get into the next. */
  session: z.custom<() => unknown>(isFunction, 'expected a function'),
});
export type PackageDriver = z.infer<typeof driverSchema>;

/** What can be tested: a package, or a profile that is tested as if it were one. */
export type Testable = Pick<
  PackageDriver,
  'quantity' | 'exponent' | 'examples' | 'session' | 'alwaysHasValue'
> & {
  readonly streams: boolean;
};

export const isSession = (value: unknown): value is Session =>
  typeof value === 'object' && value !== null && 'take' in value && typeof value.take === 'function';
