import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { readBytes } from '../../files/input.ts';
import { outputFolder } from '../../files/output.ts';
import { isSoundReport } from '../../package/finding.ts';
import { ProblemError } from '../../problem.ts';
import { VERIFICATION } from '../../report/verification.ts';
import { w } from '../../words/catalogue.ts';
import { laterLogBeside } from '../evidence/later-log-file.ts';
import { isPackage } from '../evidence/package-folder.ts';
import { readersTrust } from '../evidence/readers-trust.ts';
import { verdictLines } from '../evidence/report-lines.ts';
import { type AudienceOptions, audienceOf } from '../station/audience.ts';
import { now } from '../station/clock.ts';
import { csvStyle } from '../terminal/csv-locale.ts';
import { type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { writeDrawn } from './papers.ts';

interface PaperOptions extends AudienceOptions {
  readonly trust?: string;
  readonly out: string;
  readonly csvLocale?: string;
}

/**
 * Makes the papers of a record anew, from the record alone, for whoever holds it. A record that is not as its station
 * sealed it has none. Exit codes as of its verification.
 */
export async function paper(
  file: string,
  { trust, out, csvLocale, ...reader }: PaperOptions,
): Promise<ExitCode> {
  const style = csvStyle(csvLocale);
  const bytes = await readBytes(file, w`record`, MAX_RECORD_BYTES);
  const { list, fault, unnamed } = await readersTrust(trust, file);
  if (fault !== null) process.stderr.write(`${safeLine(fault())}\n`);
  const report = verifyRecord(bytes, list, null, now(), laterLogBeside(file));
  const opened = openRecord(bytes);
  const lines = verdictLines(file, report, unnamed);
  if (!opened.ok || !isSoundReport(report)) {
    print([...lines, w`  no papers: the record is not as its station sealed it`]);
    return VERIFICATION[report.verdict].exit;
  }
  await refusePackage(out);
  outputFolder(out);
  const { pdf, csv } = await writeDrawn(out, bytes, opened.value.record, {
    audience: await audienceOf(reader),
    style,
  });
  print([...lines, w`  papers        ${safeLine(pdf)}, ${safeLine(csv)}`]);
  return VERIFICATION[report.verdict].exit;
}

async function refusePackage(folder: string): Promise<void> {
  for (const one of [folder, `${folder}/..`])
    if (await isPackage(one))
      throw new ProblemError({
        code: 'folder-in-package',
        where: folder,
        message: w`this folder is a package, and whatever is added to it shows as a fault`,
        next: w`Name another folder with --out.`,
      });
}
