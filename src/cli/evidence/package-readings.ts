/** Whether the files for people in a package say what its records say, with the folder and the pen of this program. */

import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Check } from '../../evidence/check.ts';
import { openRecord } from '../../evidence/record.ts';
import type { PackageLog } from '../../package/checks.ts';
import type { PackageIndex } from '../../package/format.ts';
import { PAPER_MAKERS } from '../../report/held/paper-makers.ts';
import { heldReadings } from '../../report/held/readings.ts';
import { writePaper } from '../../report/paper-pdf.ts';
import { programVersion } from '../help/version.ts';
import { readerOf } from '../station/paper-reader.ts';
import { progress } from '../terminal/progress.ts';
import { holdPackagePapers } from './package-papers.ts';
import { emptyPage } from './page.ts';

/** To be asked once every file and every record was found to be as it was signed. */
export function checkReadings(folder: string, index: PackageIndex, log: PackageLog): Promise<Check> {
  const program = `plugmark ${programVersion()}`;
  return heldReadings(index, log, {
    program,
    read: (path) => readFile(join(folder, path)),
    record: async (path) => {
      const opened = openRecord(await readFile(join(folder, path)));
      return opened.ok ? opened.value.record : null;
    },
    pen: {
      papers: PAPER_MAKERS,
      holdPapers: async (papers) => {
        const bar = progress('papers', papers.length);
        const held = await holdPackagePapers(folder, papers, (done) => bar.at(done));
        bar.end();
        return held;
      },
      draw: async (make, audience) =>
        writePaper(make, { drawnBy: program, reader: await readerOf(audience) }),
    },
    page: emptyPage,
  });
}
