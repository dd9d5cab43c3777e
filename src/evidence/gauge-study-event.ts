import { z } from 'zod';
import { personal } from '../personal.ts';
import { figureSourceSchema } from '../reading.ts';

const study = z
  .string()
  .regex(/^GS-[1-9]\d{0,5}$/, 'expected the number of a gauge study, like GS-1')
  .describe('Number of the study.');
const tool = z.string().min(1).max(32).describe('The tool, by its id in the station file.');
const serial = z.string().min(1).max(60).nullable().describe('Its serial number; null where it has none.');
const appraisers = z
  .array(personal('person', z.string().min(1).max(40)))
  .min(2)
  .max(10)
  .describe('Who measures.');
const parts = z.array(z.string().min(1).max(40)).min(2).max(30).describe('What is measured.');
/** Place of a reading in the order that was drawn, from 1. */
const turn = z.int().min(1).max(3000).describe('Place of the reading in the order that was drawn, from 1.');
/** In the unit of the study. */
const value = z.number().min(-1e6).max(1e6).describe('The reading, in the unit of the study.');

/** What the readings of a study are. */
const measuresSchema = z.discriminatedUnion('quantity', [
  /** `aboutNm`: what the pulls of the wrench come to. */
  z.strictObject({
    quantity: z.literal('torque'),
    unit: z.literal('N.m'),
    aboutNm: z.number().positive().max(1e6).describe('What the pulls of the wrench come to, in N·m.'),
  }),
  z.strictObject({ quantity: z.literal('length'), unit: z.literal('mm') }),
]);
export type StudyMeasures = z.infer<typeof measuresSchema>;

/** What happens to a gauge study, from its plan to its end. When a reading was had, its entry says. */
export const gaugeStudyEvents = [
  z
    .strictObject({
      type: z.literal('gauge-study-started'),
      study,
      tool,
      serial,
      measures: measuresSchema.describe('What is measured.'),
      appraisers,
      parts,
      trials: z.int().min(2).max(10).describe('How often each measures each part.'),
      order: z
        .array(z.array(z.int().min(0).max(29)).min(2).max(30))
        .min(4)
        .max(100)
        .describe(
          'The order that was drawn: the places of the parts for the first appraiser, the next one, and so on, trial by trial.',
        ),
    })
    .describe('A study was begun.'),
  z
    .strictObject({
      type: z.literal('gauge-study-read'),
      study,
      turn,
      value,
      source: figureSourceSchema.describe('Where the reading came from.'),
    })
    .describe('A reading was taken.'),
  z
    .strictObject({ type: z.literal('gauge-study-taken-back'), study, turn })
    .describe('The last reading does not count; its part is due again.'),
  z
    .strictObject({
      type: z.literal('gauge-study-dropped'),
      study,
      because: personal('note', z.string().min(1).max(200).describe('Why.')),
    })
    .describe('The study was given up while it was open.'),
  z
    .strictObject({
      type: z.literal('gauge-study-finished'),
      study,
      tool,
      serial,
      unit: z.enum(['N.m', 'mm']).describe('Unit of the readings.'),
      appraisers,
      parts,
      readings: z
        .array(z.array(z.array(value).min(2).max(10)).min(2).max(30))
        .min(2)
        .max(10)
        .describe('By appraiser, part and trial.'),
    })
    .describe('The study is whole. Its result follows from the readings.'),
] as const;
