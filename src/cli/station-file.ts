import { dirname, resolve } from 'node:path';
import { z } from 'zod';
import { driverConfigSchema } from '../../drivers/config.ts';
import { instrumentSchema } from '../instrument/instrument.ts';
import { readJson } from './input.ts';

/** The station file: what the station is called, where its log lives, which tools it has. Documented in the README. */
export const stationFileSchema = z
  .strictObject({
    form: z.literal('plugmark/station/1'),
    station: z.string().min(1).max(80),
    /** The folder of log, key and papers, seen from the station file. */
    data: z.string().min(1).max(400),
    tools: z
      .array(instrumentSchema.extend({ driver: driverConfigSchema }))
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
}

export async function readStationFile(file: string): Promise<LoadedStation> {
  const station = await readJson(file, stationFileSchema, 'station file', 'the example in the README');
  const base = dirname(resolve(file));
  return { ...station, base, folder: resolve(base, station.data) };
}
