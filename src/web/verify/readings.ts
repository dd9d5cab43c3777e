/** The files for people in a package against its records, as far as that goes without drawing. */
import { type Check, doubtful } from '../../evidence/check.ts';
import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import type { PackageLog } from '../../package/checks.ts';
import type { PackageIndex } from '../../package/format.ts';
import { MAX_BYTES } from '../../package/read.ts';
import { heldReadings } from '../../report/held/readings.ts';
import { joined, sentence } from '../../words/catalogue.ts';
import { folderOf } from './folder.ts';
import type { Given } from './given.ts';
import { PROGRAM } from './version.ts';

/** In front of what is compared: a forged page of a paper is not seen here. */
export const PAPERS_NOT_COMPARED = sentence`Its papers were NOT compared with the records, and could show anything.`;

export async function checkReadings(
  files: readonly Given[],
  index: PackageIndex,
  log: PackageLog,
): Promise<Check> {
  const folder = folderOf(files);
  const check = await heldReadings(index, log, {
    program: PROGRAM,
    read: (path) => folder.read(path, MAX_BYTES),
    record: async (path) => {
      const opened = openRecord(await folder.read(path, MAX_RECORD_BYTES));
      return opened.ok ? opened.value.record : null;
    },
    pen: null,
    page: null,
  });
  const hasPapers = index.files.some(({ path }) => path.endsWith('.pdf'));
  return check.outcome === 'passed' && hasPapers
    ? doubtful(check.name, joined([PAPERS_NOT_COMPARED, () => check.detail]))
    : check;
}
