import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { addedUp } from '../../evidence/sharing.ts';
import type { TrustList } from '../../evidence/trust.ts';
import { VERDICTS, type Verdict } from '../../evidence/verdict.ts';
import { marksOf } from '../../job/proof.ts';
import { type Finding, unprovenIn } from '../../package/finding.ts';
import { historiesText, type TwoHistories, twoHistories } from '../../package/histories.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { recordsText } from '../../report/package-words.ts';
import { VERIFICATION } from '../../report/verification.ts';
import { checkText, marksText, unprovenText } from '../../report/words/index.ts';
import { type Sentence, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { verifiedFolder } from '../answers/verify.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { progress } from '../terminal/progress.ts';
import { print } from '../terminal/wrapped.ts';
import type { ReadersPolicy } from './readers-policy.ts';
import { unnamedLines, withheldLines } from './report-lines.ts';
import { verifyFiles } from './verify-files.ts';

const SUFFIX = '.record.json';

/**
 * Checks every record in a folder and below it, on all cores; one line for each that is not authentic, a bar on the way,
 * and the counts. The exit code is the gravest of any file.
 */
export async function verifyFolder(
  folder: string,
  options: {
    readonly trust: TrustList;
    readonly unnamed: Sentence | null;
    readonly policy: ReadersPolicy | null;
    readonly json?: true;
  },
): Promise<ExitCode> {
  // With its types, so that nobody is led round by links to folders.
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = found
    .filter((entry) => !entry.isDirectory() && entry.name.endsWith(SUFFIX))
    .map(({ parentPath, name }) => join(parentPath, name))
    .sort();
  if (files.length === 0) throw new ProblemError(noRecords(folder));
  const findings: Finding[] = [];
  const bar = progress('records', files.length);
  await verifyFiles(files, options, (some) => {
    findings.push(...some);
    bar.at(findings.length);
  });
  bar.end();
  findings.sort((a, b) => (a.file < b.file ? -1 : 1));
  const histories = twoHistories(findings);
  if (options.json === true) printJson(verifiedFolder(folder, findings, histories));
  else print([...linesOf(findings, histories), ...unnamedLines(options.unnamed)]);
  return histories.length > 0 ? EXIT.failed : gravest(findings);
}

function linesOf(findings: readonly Finding[], histories: readonly TwoHistories[]): readonly string[] {
  const bad = findings.filter(({ verdict }) => verdict !== 'authentic');
  const count = (wanted: Verdict) => findings.filter(({ verdict }) => verdict === wanted).length;
  const lines = bad.map(
    ({ file, verdict, fault, open, stated }) =>
      `${VERIFICATION[verdict].word.toUpperCase()} ${safeLine(file)}: ${safeLine(fault === null ? marksText(marksOf(stated?.sources ?? [])) : checkText({ detail: fault, open }))}`,
  );
  const doubts = findings.flatMap(({ file, doubt }) =>
    doubt === null ? [] : [`${safeLine(file)}: ${safeLine(doubt)}`],
  );
  const counts = VERDICTS.toReversed()
    .filter((verdict) => verdict === 'authentic' || count(verdict) > 0)
    .map((verdict) => `${count(verdict)} ${VERIFICATION[verdict].word}`);
  const unproven = unprovenText(unprovenIn(findings));
  const total = w`${recordsText(findings.length)}: ${counts.join(', ')}`;
  const withheld = withheldLines(addedUp(findings.flatMap((finding) => finding.withheld)));
  const splits = histories.map((one) => `${safeLine(historiesText(one))}.`);
  return [...lines, ...splits, ...doubts, total, ...withheld, ...(unproven === '' ? [] : [unproven])];
}

function gravest(findings: readonly Finding[]): ExitCode {
  const worst = VERDICTS.find((verdict) => findings.some((one) => one.verdict === verdict));
  return worst === undefined ? EXIT.failed : VERIFICATION[worst].exitOfMany;
}

function noRecords(folder: string): Problem {
  return {
    code: 'no-records',
    where: folder,
    message: w`no file in this folder ends in ${SUFFIX}`,
    next: w`Name a folder that holds records.`,
  };
}
