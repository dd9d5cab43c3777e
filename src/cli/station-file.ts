import { dirname, resolve } from 'node:path';
import { z } from 'zod';
import { driverConfigSchema } from '../../drivers/config.ts';
import { type Instrument, instrumentSchema } from '../instrument/instrument.ts';
import { type Decision, decisionSchema, USUAL_DECISION } from '../job/basis.ts';
import { readCertificate } from './certificate.ts';
import { readJson } from './input.ts';
import { usualFolder } from './station.ts';

/** The station file: what the station is called, where its log lives, which tools it has. Documented in the README. */
export const stationFileSchema = z
  .strictObject({
    form: z.literal('plugmark/station/1'),
    station: z.string().min(1).max(80),
    /** The folder of log, keys and papers, seen from the station file; below the XDG data directory unless named. */
    data: z.string().min(1).max(400).exactOptional(),
    /** How the shop decides; a guard band of 1·U unless it says otherwise. */
    decision: decisionSchema.exactOptional(),
    tools: z
      .array(
        instrumentSchema
          .omit({ certificate: true })
          // A file: a digital calibration certificate, or the JSON form.
          .extend({ driver: driverConfigSchema, certificate: z.string().min(1).max(400).exactOptional() }),
      )
      .min(1)
      .max(16),
  })
  .superRefine(({ tools }, ctx) => {
    tools.forEach(({ id }, i) => {
      if (tools.findIndex((other) => other.id === id) < i)
        ctx.addIssue({
          code: 'custom',
          path: ['tools', i, 'id'],
          message: `"${id}" stands twice; expected each once`,
        });
    });
    for (const quantity of ['torque', 'length'] as const)
      if (tools.filter((tool) => tool.quantity === quantity).length > 1)
        ctx.addIssue({ code: 'custom', path: ['tools'], message: `expected one tool for ${quantity}` });
  });
export type StationFile = z.infer<typeof stationFileSchema>;

export interface LoadedStation extends StationFile {
  /** Absolute. */
  readonly folder: string;
  /** Paths in the file are seen from here. */
  readonly base: string;
  readonly decision: Decision;
  /** The tools with their certificates read. */
  readonly instruments: readonly Instrument[];
}

export async function readStationFile(file: string): Promise<LoadedStation> {
  const station = await readJson(file, stationFileSchema, 'station file', 'the example in the README');
  const base = dirname(resolve(file));
  const instruments: Instrument[] = [];
  for (const { driver: _driver, certificate, ...tool } of station.tools)
    instruments.push(
      certificate === undefined
        ? tool
        : { ...tool, certificate: await readCertificate(resolve(base, certificate)) },
    );
  const decision = station.decision ?? USUAL_DECISION;
  return {
    ...station,
    base,
    folder: resolve(base, station.data ?? usualFolder(station.station)),
    decision,
    instruments,
  };
}
