import { existsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { z } from 'zod';
import { driverConfigSchema } from '../../../drivers/config.ts';
import { retentionSchema } from '../../audit/retention.ts';
import { domainSchema } from '../../evidence/station-event.ts';
import { readVerifierKey } from '../../evidence/verifier-key.ts';
import { inputName } from '../../files/input.ts';
import { writeWhole } from '../../files/output.ts';
import { type Instrument, instrumentSchema } from '../../instrument/instrument.ts';
import { type Decision, decisionSchema, USUAL_DECISION } from '../../job/basis.ts';
import { type Routine, routineSchema, USUAL_ROUTINE } from '../../job/routine.ts';
import { type Shop, shopSchema } from '../../job/shop.ts';
import { type SingleFigure, singleFigureSchema } from '../../plug/specification.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { soundSchema } from '../../ui/sound-commands.ts';
import { w } from '../../words/catalogue.ts';
import { readCertificate } from '../audit/certificate.ts';
import { readJson } from './json-file.ts';
import { logoOf } from './logo.ts';
import { type Reads, readsOf, readsSchema } from './reads.ts';
import { stationAtHand } from './station-at-hand.ts';
import { usualFolder } from './station-log.ts';

/** The station file: what the station is called, where its log lives, which tools it has; "plugmark manual station-file". */
export const stationFileSchema = z
  .strictObject({
    form: z.literal('plugmark/station/1'),
    station: z.string().min(1).max(80).describe('Name of the station, as records show it.'),
    data: z
      .string()
      .min(1)
      .max(400)
      .exactOptional()
      .describe(
        'The folder of log, keys and papers, seen from the station file; below the XDG data directory unless given.',
      ),
    shop: shopSchema
      .extend({
        logo: z
          .string()
          .min(1)
          .max(400)
          .exactOptional()
          .describe('The file of its logo, a PNG, seen from the station file. It is made small.'),
      })
      .exactOptional()
      .describe('The shop as its papers name it; every record of it contains this.'),
    domain: domainSchema
      .exactOptional()
      .describe(
        "The shop's own domain, like shop.example, where it has one: the log is named under it. Counts when the station is set up.",
      ),
    decision: decisionSchema
      .exactOptional()
      .describe('How the shop decides; a guard band of 1·U unless given.'),
    retention: retentionSchema.exactOptional().describe('How long the shop keeps its records.'),
    routine: z
      .string()
      .min(1)
      .max(400)
      .exactOptional()
      .describe("The file of the shop's own routine, or `none`; the usual one unless given."),
    reads: readsSchema.exactOptional(),
    sound: soundSchema.exactOptional(),
    singleFigure: singleFigureSchema.exactOptional(),
    specifications: z
      .string()
      .min(1)
      .max(400)
      .exactOptional()
      .describe(
        "The folder of the shop's specifications, where several stations share it; `specifications` in `data` unless given.",
      ),
    witnesses: z
      .array(
        z.strictObject({
          url: z
            .url({ protocol: /^https?$/ })
            .max(400)
            .describe('Where it answers: what comes before "/add-checkpoint".'),
          keys: z
            .array(
              z
                .string()
                .max(4000)
                .refine(
                  (text) => (readVerifierKey(text)?.kind ?? 'log') !== 'log',
                  'expected the verifier key of a witness, as "plugmark witness init" writes it',
                ),
            )
            .min(1)
            .max(4)
            .describe('Its verifier keys (C2SP), one for each kind of cosignature.'),
        }),
      )
      .max(16)
      .exactOptional()
      .describe('Who cosigns the log after each job, so that nobody can rewrite it unseen.'),
    tools: z
      .array(
        instrumentSchema
          .omit({ certificate: true, outOfTolerance: true })
          // A file: a digital calibration certificate, or the JSON form.
          .extend({
            technician: z
              .string()
              .min(1)
              .max(80)
              .exactOptional()
              .describe(
                'Whose tool it is: whoever has it in hand is at work. Left out of a tool that all use.',
              ),
            driver: driverConfigSchema.describe('How it is joined.'),
            certificate: z
              .string()
              .min(1)
              .max(400)
              .exactOptional()
              .describe('The file of its calibration certificate, seen from the station file.'),
          }),
      )
      .min(1)
      .max(16)
      .describe(
        'The wrenches and gauges of the station; the first of each is the one that is expected in hand.',
      ),
  })
  .superRefine(({ tools }, ctx) => {
    tools.forEach(({ id }, i) => {
      if (tools.findIndex((other) => other.id === id) < i)
        ctx.addIssue({
          code: 'custom',
          path: ['tools', i, 'id'],
          message: w`"${id}" appears twice; give each tool its own name`,
        });
    });
    for (const quantity of ['torque', 'length'] as const)
      if (tools.filter((tool) => tool.quantity === quantity && tool.driver.use === 'typed').length > 1)
        ctx.addIssue({
          code: 'custom',
          path: ['tools'],
          message: w`expected one typed tool for ${quantity}; a typed figure does not say which of two it was read off`,
        });
  });
export type StationFile = z.infer<typeof stationFileSchema>;

export interface LoadedStation extends Omit<StationFile, 'routine' | 'specifications' | 'shop' | 'reads'> {
  /** As it can be named again with --station. */
  readonly file: string;
  /** Absolute. */
  readonly folder: string;
  /** Paths in the file are seen from here. */
  readonly base: string;
  readonly decision: Decision;
  /** The tools with their certificates read. */
  readonly instruments: readonly Instrument[];
  /** Null where the file does not say. */
  readonly shop: Shop | null;
  /** Null where the shop wants nothing said around the torque. */
  readonly routine: Routine | null;
  /** Languages and units of its people. */
  readonly reads: Reads;
  /** Absolute: where the shop's own specifications are. */
  readonly library: string;
}

export async function readStationFile(named: string): Promise<LoadedStation> {
  const file = stationAtHand(named);
  if (inputName(file) === file && !existsSync(file)) throw new ProblemError(missing(file));
  const station = await readJson(file, stationFileSchema, w`station file`, '"plugmark manual station-file"');
  const base = dirname(resolve(file));
  const instruments: Instrument[] = [];
  for (const { driver: _driver, technician: _technician, certificate, ...tool } of station.tools)
    instruments.push(
      certificate === undefined
        ? tool
        : { ...tool, certificate: await readCertificate(resolve(base, certificate), serialsOf(tool)) },
    );
  const { routine, specifications, shop, reads, ...rest } = station;
  const folder = resolve(base, station.data ?? usualFolder(station.station));
  return {
    ...rest,
    file,
    base,
    folder,
    decision: station.decision ?? USUAL_DECISION,
    instruments,
    shop: shop === undefined ? null : await shopOf(shop, base),
    routine: await routineOf(routine, base),
    reads: readsOf(reads),
    library: specifications === undefined ? libraryIn(folder) : resolve(base, specifications),
  };
}

const serialsOf = ({ serial }: Pick<Instrument, 'serial'>) => (serial === undefined ? [] : [serial]);

const missing = (where: string): Problem => ({
  code: 'file-unreadable',
  where,
  message: w`there is no station file here`,
  next: w`Write one with "plugmark setup", or name yours with --station FILE.`,
});

/** Where a station keeps the shop's specifications that names no other folder. */
export const libraryIn = (folder: string): string => join(folder, 'specifications');

async function shopOf({ logo, ...shop }: NonNullable<StationFile['shop']>, base: string): Promise<Shop> {
  return logo === undefined ? shop : { ...shop, logo: await logoOf(resolve(base, logo)) };
}

async function routineOf(named: string | undefined, base: string): Promise<Routine | null> {
  if (named === undefined) return USUAL_ROUTINE;
  if (named === 'none') return null;
  return await readJson(resolve(base, named), routineSchema, w`routine`, '"plugmark manual routine"');
}

/** The shop's rule for single figures, asked once, is kept in the station file; one that stands there stays. */
export async function keepSingleFigure(file: string, rule: SingleFigure): Promise<void> {
  const station = await readJson(file, stationFileSchema, w`station file`, '"plugmark manual station-file"');
  if (station.singleFigure !== undefined || inputName(file) !== file) return;
  writeWhole(file, `${JSON.stringify({ ...station, singleFigure: rule }, null, 2)}\n`);
}
