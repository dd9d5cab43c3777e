import { z } from 'zod';
import { certificateSchema } from '../instrument/certificate.ts';
import { instrumentSchema } from '../instrument/instrument.ts';
import { personal } from '../personal.ts';
import { specificationSchema } from '../plug/specification.ts';
import { gaugeStudyEvents } from './gauge-study-event.ts';
import { publicJwkSchema } from './jwk.ts';

const name = z.string().min(1).max(80);
const person = personal('person', name);
const words = personal('note', z.string().min(1).max(200));
const assessment = z
  .string()
  .regex(/^IA-[1-9]\d{0,5}$/, 'expected the number of an impact assessment, like IA-1');
const count = z.int().nonnegative();

/** What becomes of a vehicle whose proof is in doubt: to come back, its owner told, left as it is, or done again. */
export const impactDecisionSchema = z.enum(['recall', 'inform', 'accept', 'redone']);
export type ImpactDecision = z.infer<typeof impactDecisionSchema>;

/** One job that an impact assessment touches: what its proofs come to with the errors that were found. */
export const impactItemSchema = z.strictObject({
  job: z.string().min(1).max(40),
  /** The day of the job. */
  on: z.iso.date(),
  vin: personal('vin', z.string().max(17)).nullable(),
  plate: personal('plate', z.string().max(20)).nullable(),
  fleet: personal('fleet', z.string().max(40)).nullable(),
  sort: z.enum(['doubtful', 'out']),
  /** The attempts that its cylinders rested on and that do not hold any more. */
  attempts: z
    .array(
      z.strictObject({
        cylinder: z.int().min(1),
        quantity: z.enum(['torque', 'length']),
        /** Number of the pull, or of the reading. */
        number: z.int().min(1),
        sort: z.enum(['doubtful', 'out']),
        /** In N·m or mm: as judged then, and with the found error taken off; U at 95 %. */
        was: z.number().nullable(),
        value: z.number(),
        expanded: z.number().positive(),
        lowerLimit: z.number(),
        upperLimit: z.number(),
        /** Within the points that the laboratory looked at. */
        covered: z.boolean(),
      }),
    )
    .min(1)
    .max(200),
});
export type ImpactItem = z.infer<typeof impactItemSchema>;

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
  z.strictObject({ type: z.literal('person-recorded'), person, key: publicJwkSchema.nullable() }),
  /** Whether technicians sign records with keys of their own, as the shop decided. */
  z.strictObject({ type: z.literal('technicians-decided'), technicians: z.enum(['sign', 'do-not-sign']) }),
  /** An instrument with its calibration, when first used and whenever anything about it changed. */
  z.strictObject({ type: z.literal('instrument-recorded'), instrument: instrumentSchema }),
  z.strictObject({ type: z.literal('specification-recorded'), specification: specificationSchema }),
  /** What a laboratory found before it touched an instrument; `digest` is the SHA-256 of its file. */
  z.strictObject({
    type: z.literal('as-found-recorded'),
    tool: z.string().min(1).max(32),
    asFound: certificateSchema,
    digest: z.string().regex(/^[0-9a-f]{64}$/),
  }),
  /** Everything since the last good check judged again; what was judged then stays as it is. */
  z.strictObject({
    type: z.literal('assessment-made'),
    assessment,
    tool: z.string().min(1).max(32),
    serial: z.string().min(1).max(160),
    /** Number of the as-found certificate, and the SHA-256 of its file. */
    asFound: z.string().min(1).max(160),
    digest: z.string().regex(/^[0-9a-f]{64}$/),
    /** Null where the log holds no good check before it. */
    lastGood: z.strictObject({ number: z.string().min(1).max(160), date: z.iso.date() }).nullable(),
    foundOn: z.iso.date(),
    /** The days that were looked at, both among them. */
    from: z.iso.date(),
    to: z.iso.date(),
    /** Some of the jobs were done with simulated tools. */
    simulated: z.boolean(),
    attempts: count,
    /** Of what the jobs rest on. */
    stillIn: count,
    doubtful: count,
    out: count,
    items: z.array(impactItemSchema).max(20_000),
  }),
  z.strictObject({
    type: z.literal('item-decided'),
    assessment,
    job: z.string().min(1).max(40),
    decision: impactDecisionSchema,
    /** The later job on the same vehicle that did it again. */
    redoneIn: z.string().min(1).max(40).exactOptional(),
    because: words,
  }),
  z.strictObject({ type: z.literal('assessment-closed'), assessment, because: words }),
  /** The file of a calibration certificate, kept in the station's folder under its SHA-256. */
  z.strictObject({
    type: z.literal('certificate-kept'),
    certificate: z.string().min(1).max(160),
    serial: z.string().min(1).max(160),
    digest: z.string().regex(/^[0-9a-f]{64}$/),
    bytes: count,
  }),
  ...gaugeStudyEvents,
]);
export type StationEvent = z.infer<typeof stationEventSchema>;
