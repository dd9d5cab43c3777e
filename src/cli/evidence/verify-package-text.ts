import { PACKAGE_FILES } from '../../package/format.ts';
import type { PackageReport } from '../../package/verify.ts';
import {
  leftOutText,
  notProven,
  packageText,
  questionHeadline,
  questionLines,
} from '../../report/package-words.ts';
import { doubtsIn, OF_PACKAGE } from '../../report/verification.ts';
import { unprovenText } from '../../report/words/index.ts';
import { type Sentence, w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { someOf } from './package-text.ts';
import { checkLines, notProvenLines, unnamedLines, withheldLines } from './report-lines.ts';

/** The findings as an auditor reads them: the verdict, what was checked, what is in question, what is not proven. */
export function packageLines(
  folder: string,
  report: PackageReport,
  unnamed: Sentence | null,
): readonly string[] {
  const { index, verdict, checks } = report;
  const questions = someOf(
    questionLines(report).map((line) => `    ${safeLine(line)}`),
    'jobs.csv',
  );
  const unproven = verdict === 'rejected' ? '' : unprovenText(report.unproven);
  const headline = questions.length === 0 || verdict === 'rejected' ? '' : ` ${questionHeadline(report)}`;
  const left = index.leftOut.map((one) => `  ${safeLine(leftOutText(one))}`);
  return [
    `${safeLine(folder)}: ${OF_PACKAGE[verdict]}${headline}${safeLine(doubtsIn(checks))}${unproven === '' ? '' : ` ${unproven}`}`,
    `  ${safeLine(packageText(index))}`,
    ...unnamedLines(unnamed),
    ...checkLines(checks),
    ...withheldLines(report.withheld),
    ...(questions.length === 0 ? [] : [`  ${w`PUT IN QUESTION by what was learned later:`}`, ...questions]),
    ...someOf(left, PACKAGE_FILES.index),
    ...(verdict === 'rejected' ? [] : notProvenLines(notProven(report))),
    ...(verdict === 'untrusted'
      ? [
          `  ${w`Compare the key above with the one that the station gave you by another way. If it is the same, copy ${PACKAGE_FILES.trust} out of the package and name the copy with --trust.`}`,
        ]
      : []),
  ];
}
