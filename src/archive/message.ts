/** What stations and archive say to each other beside checkpoints and entries. */
import { z } from 'zod';

export const enrolRequestSchema = z.strictObject({
  token: z.string().min(1).max(200).describe('The one-time token.'),
  statement: z.string().max(4000).describe("The station's statement (compact JWS)."),
});

export const enrolledSchema = z.strictObject({
  archive: z.string().min(1).max(200).describe('Name of the archive.'),
  log: z.string().describe('By what it finds the log.'),
  vkeys: z.array(z.string().max(4000)).min(1).max(8).describe('The verifier keys that it cosigns with.'),
});

export const keyRequestSchema = z.strictObject({
  statement: z.string().max(2000).describe("The old key's statement that names the new one."),
});

/** More is wanted. */
export const nextSchema = z.strictObject({
  next: z.int().nonnegative().describe('How many entries the archive has: the next one has this index.'),
});

export const aboutSchema = z.strictObject({
  archive: z.string().min(1).max(200),
  form: z.literal('plugmark/archive/1'),
});
