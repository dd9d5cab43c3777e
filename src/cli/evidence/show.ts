/** A record to look at: its pages as text, its pulls as curves, with keys on a terminal. */

import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { readBytes } from '../../files/input.ts';
import { writeNew } from '../../files/output.ts';
import { ProblemError } from '../../problem.ts';
import { jobLines } from '../../report/job-text.ts';
import { modelOf } from '../../report/of-record.ts';
import { VERIFICATION } from '../../report/verification.ts';
import { w } from '../../words/catalogue.ts';
import { hasScreen } from '../bench/run.ts';
import { now } from '../station/clock.ts';
import { type ExitCode, safeLine } from '../terminal/exit.ts';
import { speaksUtf8 } from '../terminal/letters.ts';
import { screenColumns, warn } from '../terminal/wrapped.ts';
import { laterLogBeside } from './later-log-file.ts';
import { pullSvg } from './pull-svg.ts';
import { readersTrust } from './readers-trust.ts';
import { verdictLines } from './report-lines.ts';

interface ShowOptions {
  readonly trust?: string;
  readonly plain?: true;
  readonly svg?: string;
  readonly pull?: number;
}

/** Shows what a record contains, its verification first. Exit codes as of its verification. */
export async function show(file: string, { trust, plain, svg, pull }: ShowOptions): Promise<ExitCode> {
  const bytes = await readBytes(file, w`record`, MAX_RECORD_BYTES);
  const opened = openRecord(bytes);
  if (!opened.ok) throw new ProblemError({ ...opened.error.problem, where: file });
  const { list, fault, unnamed } = await readersTrust(trust, file);
  if (fault !== null) warn([safeLine(fault())]);
  const report = verifyRecord(bytes, list, null, now(), laterLogBeside(file));
  const verdict = verdictLines(file, report, unnamed);
  const { exit } = VERIFICATION[report.verdict];
  const model = modelOf(bytes, opened.value.record);
  const ascii = !speaksUtf8();
  if (svg !== undefined) {
    writeNew(svg, Buffer.from(pullSvg(model, pull)));
    process.stdout.write(`${[...verdict, `  picture       ${safeLine(svg)}`].join('\n')}\n`);
    return exit;
  }
  if (plain !== true && hasScreen() && model.plots.length > 0) {
    const { runShowScreen } = await import('./show-screen.tsx');
    await runShowScreen({
      model,
      verdict: verdict[0] ?? '',
      stdout: process.stdout,
      stdin: process.stdin,
      color: !process.env['NO_COLOR'],
      ascii,
    });
    process.stdout.write(`${verdict.join('\n')}\n`);
    return exit;
  }
  const lines = jobLines(model, { columns: screenColumns(), ascii });
  process.stdout.write(`${[...verdict, '', ...lines].join('\n')}\n`);
  return exit;
}
