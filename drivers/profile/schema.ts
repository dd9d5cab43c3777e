import { z } from 'zod';
import { samplingFunctionSchema } from '../../src/reading.ts';
import { faultsOf } from './faults.ts';
import { framesSchema, layoutSchema } from './layout-schema.ts';
import { type BluetoothLink, linkSchema, type SerialLink } from './link-schema.ts';
import { PROFILE_UNITS } from './unit.ts';

/*
 * A device described without code, form `plugmark/profile/2`; "plugmark manual profiles". How the stream of bytes is cut
 * into frames is one thing, what a frame is made of another. What a profile does not describe is never guessed: such bytes
 * are kept as they came.
 */

export const profileSchema = z
  .strictObject({
    form: z.literal('plugmark/profile/2'),
    title: z.string().min(1).max(120).describe('A name for the device.'),
    taught: z
      .strictObject({
        unit: z.enum(PROFILE_UNITS).describe('Unit of the figures.'),
        step: z.string().max(20).describe('The smallest step of the display.'),
        figures: z.array(z.number()).min(3).max(100).describe('What the display showed, in `unit`.'),
        proof: z.number().describe('The figure that was kept back, and that the profile then read.'),
        frames: z.int().min(1).describe('How many frames it explains, each byte of them.'),
      })
      .exactOptional()
      .describe(
        'What it was found from, where no document publishes the layout. A job stops using such a profile once the device sends three frames that it does not describe.',
      ),
    source: z.string().min(1).max(400).describe('The document that publishes the layout.'),
    quantity: z.enum(['torque', 'length']).describe('What it measures.'),
    link: linkSchema.describe('How it is reached.'),
    frames: framesSchema.describe('How what it sends is cut into frames.'),
    layout: layoutSchema.describe('What a frame is made of.'),
    samplingFunction: samplingFunctionSchema.describe('What a value is a value of.'),
    updateIntervalMs: z
      .number()
      .positive()
      .max(60_000)
      .exactOptional()
      .describe('How often the device measures.'),
    bandwidthHz: z
      .number()
      .positive()
      .max(100_000)
      .exactOptional()
      .describe('Where the low-pass filter of the device has fallen by 3 dB, if it smooths its readings.'),
  })
  .superRefine((profile, ctx) => {
    for (const { path, message } of faultsOf(profile))
      ctx.addIssue({ code: 'custom', path: [...path], message });
  });
export type Profile = z.infer<typeof profileSchema>;
export type BluetoothProfile = Profile & { readonly link: BluetoothLink };
export type SerialProfile = Profile & { readonly link: SerialLink };

export const isBluetooth = (profile: Profile): profile is BluetoothProfile =>
  profile.link.kind === 'bluetooth-le';
export const isSerial = (profile: Profile): profile is SerialProfile => profile.link.kind === 'serial';
