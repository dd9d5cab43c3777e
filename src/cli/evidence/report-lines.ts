/** What a verification found, as lines for people. */
import { type Check, checkName } from '../../evidence/check.ts';
import type { Withheld } from '../../evidence/sharing.ts';
import { TECHNICIAN_WORDS } from '../../evidence/signers.ts';
import type { VerificationReport } from '../../evidence/verify.ts';
import { CHECK_MARK, headlineOf, worthText } from '../../report/verification.ts';
import { checkText, notProvenByRecord, withheldText } from '../../report/words/index.ts';
import { type Sentence, w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';
import { warn } from '../terminal/wrapped.ts';

/** The whole report, as whoever was given the record should read it; `unnamed` says whose the trust list is. */
export const reportLines = (
  file: string,
  report: VerificationReport,
  unnamed: Sentence | null = null,
): readonly string[] => [
  ...verdictLines(file, report, unnamed),
  ...notProvenLines(notProvenByRecord(report)),
];

/** For whoever sealed the record just now: the result of the job is on the screen above, and must stay there. */
export function sealedLines(file: string, report: VerificationReport): readonly string[] {
  const others = report.checks.filter(({ outcome }) => outcome !== 'passed');
  const passed = report.checks.length - others.length;
  return [
    ...headLines(file, report),
    `  ${CHECK_MARK.passed} ${w`${passed} checks passed; "plugmark verify" shows them, and what nobody should take for proven`}`,
    ...checkLines(others),
  ];
}

/** Verdict and checks alone. */
export const verdictLines = (
  file: string,
  report: VerificationReport,
  unnamed: Sentence | null = null,
): readonly string[] => [
  ...headLines(file, report),
  ...unnamedLines(unnamed),
  ...checkLines(report.checks),
  ...withheldLines(report.withheld),
];

function headLines(file: string, report: VerificationReport): readonly string[] {
  const { record } = report;
  const figures = worthText(report);
  return [
    `${safeLine(file)}: ${safeLine(headlineOf(report))}`,
    ...(record === null
      ? []
      : [
          `  ${w`job ${safeLine(record.job)}, station ${safeLine(record.station)}, ${record.entries.length} entries; ${TECHNICIAN_WORDS[record.technicianSignature]}`}`,
        ]),
    ...(figures === '' ? [] : [`  ${safeLine(figures)}`]),
  ];
}

/** Beside every verdict that rests on a trust list that nobody named. */
export const unnamedLines = (unnamed: Sentence | null): readonly string[] =>
  unnamed === null ? [] : [`  ${unnamed()}`];

/** The same for whoever reads JSON: beside it, and not in it. */
export function warnUnnamed(unnamed: Sentence | null): void {
  if (unnamed !== null) warn([unnamed()]);
}

/** Under every verdict that somebody may rely on. */
export const notProvenLines = (texts: readonly string[]): readonly string[] =>
  texts.length === 0 ? [] : [`  ${w`NOT proven by this:`}`, ...texts.map((text) => `    ${safeLine(text)}`)];

/** What did not come with it; no verdict rests on that. */
export const withheldLines = (withheld: readonly Withheld[]): readonly string[] =>
  withheld.length === 0 ? [] : [`  ${withheldText(withheld)}`];

export function checkLines(checks: readonly Check[]): readonly string[] {
  const names = checks.map(({ name }) => checkName(name));
  const width = Math.max(NAME_COLUMNS, ...names.map((name) => name.length + 1));
  return checks.map(
    (check, i) =>
      `  ${CHECK_MARK[check.outcome]} ${(names[i] ?? '').padEnd(width)} ${safeLine(checkText(check))}`,
  );
}

/** As many as the English names need. */
const NAME_COLUMNS = 13;
