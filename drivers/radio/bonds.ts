import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { writeWholeFile } from '../../src/files/whole-file.ts';
import { type Problem, ProblemError, problemFromZod } from '../../src/problem.ts';
import { err, ok, type Result } from '../../src/result.ts';

// A bond is the key that a tool gave out when it paired, so that later links are encrypted without pairing again.

const hex = (octets: number) => z.string().regex(new RegExp(`^[0-9a-f]{${2 * octets}}$`));

/** As a device hands it out (Core, Vol 3 Part H 3.6.2 and 3.6.3), octets in the order of the air. */
export const bondSchema = z
  .strictObject({
    key: hex(16).describe('The long-term key.'),
    diversifier: hex(2).describe('Which key it is.'),
    random: hex(8).describe('A number that goes with it.'),
  })
  .readonly();
export type Bond = z.infer<typeof bondSchema>;

/** The bonds of a station, by the devices' addresses. */
export interface Bonds {
  get(address: string): Bond | undefined;
  keep(address: string, bond: Bond): Result<void, Problem>;
}

export const bondsFileSchema = z.strictObject({
  form: z.literal('plugmark/bonds/1'),
  bonds: z.record(z.string().max(64), bondSchema).describe('By the address of the device.'),
});

/** Bonds in a file that only its owner can read; there is none before the first bond. Throws a {@link ProblemError}. */
export function bondsIn(path: string): Bonds {
  const bonds = new Map(Object.entries(read(path)));
  return {
    get: (address) => bonds.get(address),
    keep: (address, bond) => {
      const all = { ...Object.fromEntries(bonds), [address]: bond };
      const text = JSON.stringify({ form: 'plugmark/bonds/1', bonds: all }, null, 2);
      try {
        // A crash in between must not leave half a file, because the tools would not pair again.
        writeWholeFile(path, `${text}\n`, { mode: 0o600 });
      } catch (error) {
        return err(notWritten(path, error));
      }
      bonds.set(address, bond);
      return ok(undefined);
    },
  };
}

function read(path: string): Readonly<Record<string, Bond>> {
  let value: unknown;
  try {
    value = JSON.parse(readFileSync(path, 'utf8'));
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENOENT') return {};
    throw new ProblemError({
      code: 'file-unreadable',
      where: path,
      message: `the keys of paired tools cannot be read: ${reason(error)}`,
      next: REPAIR,
    });
  }
  const parsed = bondsFileSchema.safeParse(value);
  if (!parsed.success) throw new ProblemError(problemFromZod(parsed.error, path, 'input-not-valid', REPAIR));
  return parsed.data.bonds;
}

const REPAIR = 'Correct the file. Or delete it, delete the pairings at the tools, and pair again.';

const reason = (error: unknown) => (error instanceof Error ? error.message : String(error));

function notWritten(path: string, error: unknown): Problem {
  return {
    code: 'file-not-written',
    where: path,
    message: `the pairing key of the tool cannot be saved: ${reason(error)}`,
    next: 'Check the rights on the folder of the station file.',
  };
}
