import { z } from 'zod';

/** How a tool of the station file is joined: one form a driver, told apart by `use`. */
export const driverConfigSchema = z.discriminatedUnion('use', [
  /** Found by its serial number, else by what stands here. */
  z.strictObject({
    use: z.literal('imds'),
    address: z
      .string()
      .regex(/^[0-9a-fA-F]{2}(:[0-9a-fA-F]{2}){5}$/, 'expected an address such as c2:00:00:00:00:01')
      .exactOptional(),
    name: z.string().min(1).max(248).exactOptional(),
  }),
  z.strictObject({
    use: z.literal('replay'),
    file: z.string().min(1).max(400),
    /** 1 is as recorded. */
    speed: z.number().positive().max(10_000).default(1),
  }),
]);
export type DriverConfig = z.infer<typeof driverConfigSchema>;
