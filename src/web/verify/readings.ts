/** The files for people in a package against its records, as far as that goes without drawing. */
import type { Check } from '../../evidence/check.ts';
import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import type { PackageLog } from '../../package/checks.ts';
import type { PackageIndex } from '../../package/format.ts';
import { MAX_BYTES } from '../../package/read.ts';
import { heldReadings } from '../../report/held/readings.ts';
import { folderOf } from './folder.ts';
import type { Given } from './given.ts';
import { PROGRAM } from './version.ts';

export function checkReadings(files: readonly Given[], index: PackageIndex, log: PackageLog): Promise<Check> {
  const folder = folderOf(files);
  return heldReadings(index, log, {
    program: PROGRAM,
    read: (path) => folder.read(path, MAX_BYTES),
    record: async (path) => {
      const opened = openRecord(await folder.read(path, MAX_RECORD_BYTES));
      return opened.ok ? opened.value.record : null;
    },
    pen: null,
    page: null,
  });
}
