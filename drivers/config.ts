import { z } from 'zod';

/** The address of a device; 32 digits where the platform gives its own name for it instead. */
export const addressSchema = z
  .string()
  .regex(
    /^([0-9a-fA-F]{2}(:[0-9a-fA-F]{2}){5}|[0-9a-fA-F]{32})$/,
    'expected an address such as c2:00:00:00:00:01',
  );

/** What `plugmark devices adopt` writes down of a tool, beside its serial number. */
const adopted = {
  address: addressSchema.exactOptional(),
  name: z.string().min(1).max(248).exactOptional(),
};
const file = z.string().min(1).max(400);

/** How a tool of the station file is joined: one form a driver, told apart by `use`. */
export const driverConfigSchema = z.discriminatedUnion('use', [
  z.strictObject({ use: z.literal('imds'), ...adopted }),
  z.strictObject({ use: z.literal('profile'), profile: file, ...adopted }),
  z.strictObject({
    use: z.literal('typed'),
    /** Of figures that are typed without one. */
    unit: z.enum(['mm', 'in', 'N·m']),
  }),
  z.strictObject({
    use: z.literal('replay'),
    file,
    /** For a capture of `plugmark devices record`: the profile that says what its packets mean. */
    profile: file.exactOptional(),
    /** 1 is as recorded. */
    speed: z.number().positive().max(10_000).default(1),
  }),
]);
export type DriverConfig = z.infer<typeof driverConfigSchema>;
