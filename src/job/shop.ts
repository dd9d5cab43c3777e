import { z } from 'zod';

/** No more base64 than this is one logo: 48 kB of PNG. */
const MAX_LOGO = 65_536;

/** The shop as its papers name it. Nothing is judged by it. */
export const shopSchema = z.strictObject({
  name: z.string().min(1).max(80).describe('Name of the shop, as on its invoices.'),
  address: z
    .array(z.string().min(1).max(80))
    .min(1)
    .max(4)
    .exactOptional()
    .describe('Its address, line by line; telephone too, if it is to be on paper.'),
  page: z
    .url({ protocol: /^https$/ })
    .max(200)
    .exactOptional()
    .describe('Its page for customers, `https://...`.'),
  logo: z
    .base64()
    .min(1)
    .max(MAX_LOGO)
    .exactOptional()
    .describe('Its logo: a PNG of 8 bits RGB without anything else in it, base64.'),
});
export type Shop = z.infer<typeof shopSchema>;

/** Minutes that the wall clock of the shop is ahead of UTC. */
export const utcOffsetSchema = z.int().min(-840).max(840);
