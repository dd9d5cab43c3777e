/** The profiles that a station file names for its tools: without one, a job ends before its first pull. */
import { resolve } from 'node:path';
import { bluetoothProfile, readProfile, serialProfile } from '../../../../drivers/profile/file.ts';
import { w } from '../../../words/catalogue.ts';
import type { LoadedStation } from '../station-file.ts';
import { type Finding, fromProblem } from './finding.ts';

export async function profileFindings({
  tools,
  base,
}: Pick<LoadedStation, 'tools' | 'base'>): Promise<readonly Finding[]> {
  const findings = await Promise.all(
    tools.map(async ({ id, driver }): Promise<Finding | null> => {
      if (driver.use !== 'profile' && driver.use !== 'serial') return null;
      const file = resolve(base, driver.profile);
      const read = await readProfile(file);
      if (!read.ok) return fromProblem(w`tool ${id}`, read.error);
      const fits =
        driver.use === 'serial' ? serialProfile(read.value, file) : bluetoothProfile(read.value, file);
      return fits.ok ? null : fromProblem(w`tool ${id}`, fits.error);
    }),
  );
  return findings.filter((finding) => finding !== null);
}
