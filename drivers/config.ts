import { z } from 'zod';
import { PACKAGE_NAME } from './package/name.ts';

/** The address of a device; 32 digits where the platform gives its own name for it instead. */
export const addressSchema = z
  .string()
  .regex(
    /^([0-9a-fA-F]{2}(:[0-9a-fA-F]{2}){5}|[0-9a-fA-F]{32})$/,
    'expected an address such as c2:00:00:00:00:01',
  );

/** What `plugmark devices adopt` writes down of a tool, beside its serial number. */
const adopted = {
  address: addressSchema
    .exactOptional()
    .describe('Its Bluetooth address, written by `plugmark devices adopt`.'),
  name: z
    .string()
    .min(1)
    .max(248)
    .exactOptional()
    .describe('Its Bluetooth name, written by `plugmark devices adopt`.'),
};
const file = z.string().min(1).max(400);

/** How a tool of the station file is joined: one form a driver, told apart by `use`. */
export const driverConfigSchema = z.discriminatedUnion('use', [
  z
    .strictObject({ use: z.literal('imds'), ...adopted })
    .describe('A Bluetooth tool with the Industrial Measurement Device Service.'),
  z
    .strictObject({
      use: z.literal('profile'),
      profile: file.describe('The file of the profile.'),
      ...adopted,
    })
    .describe('A Bluetooth tool that a profile describes.'),
  z
    .strictObject({
      use: z.literal('serial'),
      port: file.describe(
        'The port: on Linux best a name below /dev/serial/by-id, which stays the same; on Windows COM3 and the like.',
      ),
      profile: file.describe('The file of the profile.'),
    })
    .describe('A tool on a serial port, a virtual one over USB, or Bluetooth SPP, that a profile describes.'),
  z
    .strictObject({
      use: z.literal('package'),
      package: z
        .string()
        .regex(PACKAGE_NAME, 'expected a name that begins with plugmark-driver-')
        .describe('The npm package, `plugmark-driver-` and its name.'),
      port: file.exactOptional().describe('The serial port, where the driver reads one.'),
      ...adopted,
    })
    .describe('A tool that a driver in a package of its own reads.'),
  z
    .strictObject({
      use: z.literal('typed'),
      unit: z.enum(['mm', 'in', 'N·m', 'lbf·ft']).describe('Unit of figures that are typed without one.'),
    })
    .describe('A gauge that types like a keyboard, or one that somebody reads off.'),
  z
    .strictObject({
      use: z.literal('replay'),
      file: file.describe('A recording, a capture or a trace.'),
      profile: file
        .exactOptional()
        .describe('For a capture of `plugmark devices record`: the profile that says what its packets mean.'),
      speed: z.number().positive().max(10_000).default(1).describe('1 is as recorded.'),
    })
    .describe('A recording, played as if the tool were there.'),
]);
export type DriverConfig = z.infer<typeof driverConfigSchema>;
