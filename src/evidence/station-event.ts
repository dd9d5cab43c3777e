import { z } from 'zod';
import { certificateSchema } from '../instrument/certificate.ts';
import { instrumentSchema } from '../instrument/instrument.ts';
import { personal, personalKindSchema } from '../personal.ts';
import { specificationSchema } from '../plug/specification.ts';
import { figureSourceSchema } from '../reading.ts';
import { gaugeStudyEvents } from './gauge-study-event.ts';
import { publicJwkSchema } from './jwk.ts';
import { hashSchema } from './merkle.ts';

/** Of the shop, as the station file gives it. */
export const domainSchema = z
  .string()
  .max(100)
  .regex(/^[a-z0-9](?:[a-z0-9.-]*[a-z0-9])?$/, 'expected a domain in small letters, like shop.example');

const name = z.string().min(1).max(80);
const person = personal('person', name.describe('Name of the person.'));
const words = personal('note', z.string().min(1).max(200).describe('Why, in words of the person.'));
const assessment = z
  .string()
  .regex(/^IA-[1-9]\d{0,5}$/, 'expected the number of an impact assessment, like IA-1')
  .describe('Number of the impact assessment.');
const count = z.int().nonnegative();

/** What becomes of a vehicle whose proof is in doubt: to come back, its owner told, left as it is, or done again. */
export const impactDecisionSchema = z.enum(['recall', 'inform', 'accept', 'redone']);
export type ImpactDecision = z.infer<typeof impactDecisionSchema>;

/** One job that an impact assessment touches: what its proofs come to with the errors that were found. */
export const impactItemSchema = z.strictObject({
  job: z.string().min(1).max(40).describe('The job.'),
  on: z.iso.date().describe('The day of the job.'),
  vin: personal('vin', z.string().max(17))
    .nullable()
    .describe('VIN of the vehicle; null where none was given.'),
  plate: personal('plate', z.string().max(20)).nullable().describe('Its plate.'),
  fleet: personal('fleet', z.string().max(40)).nullable().describe('Its fleet number.'),
  sort: z
    .enum(['doubtful', 'out'])
    .describe('The worst of its attempts: too near a limit to tell, or beyond it.'),
  attempts: z
    .array(
      z.strictObject({
        cylinder: z.int().min(1).describe('The cylinder.'),
        quantity: z.enum(['torque', 'length']).describe('Torque or gap.'),
        number: z.int().min(1).describe('Number of the pull, or of the reading.'),
        source: figureSourceSchema.describe('Where its figure came from.'),
        sort: z.enum(['doubtful', 'out']).describe('Too near a limit to tell, or beyond it.'),
        was: z.number().nullable().describe('As judged then, in N·m or mm; null where it had no value.'),
        value: z.number().describe('With the found error taken off.'),
        expanded: z.number().positive().describe('U of that value.'),
        lowerLimit: z.number().describe('Lower limit of the specification.'),
        upperLimit: z.number().describe('Upper limit of the specification.'),
        covered: z.boolean().describe('Whether it lies within the points that the laboratory looked at.'),
      }),
    )
    .min(1)
    .max(200)
    .describe('The attempts that its cylinders rested on and that do not hold any more.'),
});
export type ImpactItem = z.infer<typeof impactItemSchema>;

/** Why a key is no longer to be believed. Only a compromised one could have signed under an earlier date. */
export const revocationReasonSchema = z.enum(['retired', 'lost', 'compromised']);

/** Everything that happens to a station apart from its jobs. Its state is the fold of these. */
export const stationEventSchema = z.discriminatedUnion('type', [
  z
    .strictObject({
      type: z.literal('station-set-up'),
      station: name.describe('Name of the station.'),
      key: publicJwkSchema.describe('Its key.'),
      domain: domainSchema
        .exactOptional()
        .describe("The shop's own domain: the origin of the log is DOMAIN/log/THUMBPRINT then."),
    })
    .describe('The station was set up, with its first key.'),
  z
    .strictObject({ type: z.literal('station-renamed'), station: name.describe('Its new name.') })
    .describe('The station was given another name.'),
  z
    .strictObject({
      type: z.literal('key-rotated'),
      key: publicJwkSchema.describe('The new key.'),
      statement: z
        .string()
        .max(2000)
        .describe("The old key's statement (compact JWS) that names the new one."),
    })
    .describe('The station has a new key, named by the old one.'),
  z
    .strictObject({
      type: z.literal('key-replaced'),
      key: publicJwkSchema.describe('The new key.'),
      because: words.exactOptional(),
    })
    .describe('The station has a new key that the old one could not name.'),
  z
    .strictObject({
      type: z.literal('key-revoked'),
      kid: z.string().min(1).max(60).describe('Thumbprint of the key.'),
      from: z.iso.datetime({ precision: 3 }).describe('From when on.'),
      reason: revocationReasonSchema.describe(
        'Only a `compromised` key could have signed under an earlier date.',
      ),
      because: words,
    })
    .describe('A key is not to be believed from a day on.'),
  z
    .strictObject({
      type: z.literal('person-recorded'),
      person,
      key: publicJwkSchema.nullable().describe("The person's key; null for somebody who has none."),
    })
    .describe('A person works here.'),
  z
    .strictObject({
      type: z.literal('technicians-decided'),
      technicians: z.enum(['sign', 'do-not-sign']).describe('Whether they do.'),
    })
    .describe('The shop decided whether technicians sign.'),
  z
    .strictObject({
      type: z.literal('instrument-recorded'),
      instrument: instrumentSchema.describe('The instrument.'),
    })
    .describe('An instrument with its calibration, when first used and whenever anything about it changed.'),
  z
    .strictObject({
      type: z.literal('specification-recorded'),
      specification: specificationSchema.describe('The specification.'),
    })
    .describe('A specification that jobs work to.'),
  z
    .strictObject({
      type: z.literal('as-found-recorded'),
      tool: z.string().min(1).max(32).describe('The tool, by its id.'),
      asFound: certificateSchema.describe('The finding, in the form of a certificate.'),
      digest: z
        .string()
        .regex(/^[0-9a-f]{64}$/)
        .describe('SHA-256 of its file.'),
    })
    .describe('What a laboratory found before it touched an instrument.'),
  z
    .strictObject({
      type: z.literal('assessment-made'),
      assessment,
      tool: z.string().min(1).max(32).describe('The tool, by its id.'),
      serial: z.string().min(1).max(160).describe('Its serial number.'),
      asFound: z.string().min(1).max(160).describe('Number of the as-found certificate.'),
      digest: z
        .string()
        .regex(/^[0-9a-f]{64}$/)
        .describe('SHA-256 of its file.'),
      lastGood: z
        .strictObject({
          number: z.string().min(1).max(160).describe('Number of its certificate.'),
          date: z.iso.date().describe('Its day.'),
        })
        .nullable()
        .describe('The last good check; null where the log holds none.'),
      foundOn: z.iso.date().describe('The day of the finding.'),
      from: z.iso.date().describe('The first day that was looked at.'),
      to: z.iso.date().describe('The last day that was looked at.'),
      sources: z
        .array(figureSourceSchema)
        .describe('Where the figures that were judged again came from, each source once.'),
      attempts: count.describe('How many attempts were judged again.'),
      stillIn: count.describe('How many of those that jobs rest on still hold.'),
      doubtful: count.describe('How many are too near a limit to tell.'),
      out: count.describe('How many are beyond a limit.'),
      items: z.array(impactItemSchema).max(20_000).describe('The jobs that it touches.'),
    })
    .describe('An impact assessment: everything since the last good check, judged again.'),
  z
    .strictObject({
      type: z.literal('item-decided'),
      assessment,
      job: z.string().min(1).max(40).describe('The job.'),
      decision: impactDecisionSchema.describe('Called back, its owner told, left as it is, or done again.'),
      redoneIn: z
        .string()
        .min(1)
        .max(40)
        .exactOptional()
        .describe('The later job on the same vehicle that did it again.'),
      because: words,
    })
    .describe('What becomes of a job that it touches.'),
  z
    .strictObject({ type: z.literal('assessment-closed'), assessment, because: words.exactOptional() })
    .describe('An impact assessment was closed; without words where every proof holds with what was found.'),
  z
    .strictObject({
      type: z.literal('certificate-kept'),
      certificate: z.string().min(1).max(160).describe('Number of the certificate.'),
      serial: z.string().min(1).max(160).describe('Serial number of the instrument.'),
      digest: z
        .string()
        .regex(/^[0-9a-f]{64}$/)
        .describe('SHA-256 of the file.'),
      bytes: count.describe('Its size.'),
    })
    .describe('The file of a certificate is kept under its SHA-256.'),
  z
    .strictObject({
      type: z.literal('texts-forgotten'),
      texts: z
        .array(
          z.strictObject({
            entry: z.int().min(1).describe('Number of the entry in the log.'),
            text: z
              .int()
              .min(0)
              .max(65_535)
              .describe('Which of its personal texts, from 0, in the order of its canonical JSON.'),
            kind: personalKindSchema.describe('What it was about.'),
          }),
        )
        .min(1)
        .max(200_000)
        .describe('Where they were.'),
      because: words.exactOptional(),
    })
    .describe(
      'Personal texts were deleted. What was signed of their entries stays, and every proof with it.',
    ),
  z
    .strictObject({
      type: z.literal('entries-lost'),
      checkpoints: z
        .array(
          z.strictObject({
            size: z.int().min(1).describe('How many entries it stands for.'),
            root: hashSchema.describe('The root over them, base64.'),
          }),
        )
        .min(1)
        .max(10_000)
        .describe('The checkpoints that the log does not go on from.'),
      because: words,
    })
    .describe('Entries that a checkpoint was signed over are gone, and the log goes on without them.'),
  ...gaugeStudyEvents,
]);
export type StationEvent = z.infer<typeof stationEventSchema>;
