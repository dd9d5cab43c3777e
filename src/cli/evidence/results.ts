import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { readBytes } from '../../files/input.ts';
import { writeInPlace } from '../../files/output.ts';
import { isSoundReport } from '../../package/finding.ts';
import { resultsOf } from '../../report/joining-results.ts';
import { VERIFICATION } from '../../report/verification.ts';
import { w } from '../../words/catalogue.ts';
import { now } from '../station/clock.ts';
import type { ExitCode } from '../terminal/exit.ts';
import { jsonText } from '../terminal/json-text.ts';
import { print } from '../terminal/wrapped.ts';
import { laterLogBeside } from './later-log-file.ts';
import { readersTrust } from './readers-trust.ts';
import { verdictLines } from './report-lines.ts';

interface ResultsOptions {
  readonly trust?: string;
  readonly out?: string;
}

/** Writes what a record holds as joining results, with the torque curves. A record that is not as it was sealed has none. */
export async function results(file: string, { trust, out = '-' }: ResultsOptions): Promise<ExitCode> {
  const bytes = await readBytes(file, w`record`, MAX_RECORD_BYTES);
  const { list, unnamed } = await readersTrust(trust, file);
  const report = verifyRecord(bytes, list, null, now(), laterLogBeside(file));
  const opened = openRecord(bytes);
  if (!opened.ok || !isSoundReport(report)) {
    process.stderr.write(`${verdictLines(file, report, unnamed).join('\n')}\n`);
    return VERIFICATION[report.verdict].exit;
  }
  const text = jsonText(resultsOf(opened.value.record.entries));
  if (out === '-') process.stdout.write(text);
  else {
    await writeInPlace(out, text);
    print(verdictLines(file, report, unnamed));
  }
  return VERIFICATION[report.verdict].exit;
}
