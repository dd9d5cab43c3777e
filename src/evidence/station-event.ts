import { z } from 'zod';
import { instrumentSchema } from '../instrument/instrument.ts';
import { specificationSchema } from '../plug/specification.ts';
import { publicJwkSchema } from './jwk.ts';

const name = z.string().min(1).max(80);
const words = z.string().min(1).max(200);

/** Why a key is no longer to be believed. Only a compromised one could have signed under an earlier date. */
export const revocationReasonSchema = z.enum(['retired', 'lost', 'compromised']);

/** Everything that happens to a station apart from its jobs. Its state is the fold of these. */
export const stationEventSchema = z.discriminatedUnion('type', [
  z.strictObject({ type: z.literal('station-set-up'), station: name, key: publicJwkSchema }),
  z.strictObject({ type: z.literal('station-renamed'), station: name }),
  /** A new key of the station, and the statement by which the old one names it (`succession.ts`). */
  z.strictObject({ type: z.literal('key-rotated'), key: publicJwkSchema, statement: z.string().max(2000) }),
  /** A new key that the old one could not name any more, because it was lost or is not to be believed. */
  z.strictObject({ type: z.literal('key-replaced'), key: publicJwkSchema, because: words }),
  /** A key of the station or of a technician; signatures from `from` on are not to be believed. */
  z.strictObject({
    type: z.literal('key-revoked'),
    kid: z.string().min(1).max(60),
    from: z.iso.datetime({ precision: 3 }),
    reason: revocationReasonSchema,
    because: words,
  }),
  /** A person who works here; `key` null for one who has none. */
  z.strictObject({ type: z.literal('person-recorded'), person: name, key: publicJwkSchema.nullable() }),
  /** Whether technicians sign records with keys of their own, as the shop decided. */
  z.strictObject({ type: z.literal('technicians-decided'), technicians: z.enum(['sign', 'do-not-sign']) }),
  /** An instrument with its calibration, when first used and whenever anything about it changed. */
  z.strictObject({ type: z.literal('instrument-recorded'), instrument: instrumentSchema }),
  z.strictObject({ type: z.literal('specification-recorded'), specification: specificationSchema }),
]);
export type StationEvent = z.infer<typeof stationEventSchema>;
