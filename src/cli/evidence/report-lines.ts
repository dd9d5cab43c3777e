/** What a verification found, as lines for people. */
import type { Check } from '../../evidence/check.ts';
import { COMPLETENESS } from '../../evidence/completeness.ts';
import type { Withheld } from '../../evidence/sharing.ts';
import { TECHNICIAN_WORDS } from '../../evidence/signers.ts';
import type { VerificationReport } from '../../evidence/verify.ts';
import { ALSO_INCOMPLETE, CHECK_MARK, doubtsIn, VERIFICATION } from '../../report/verification.ts';
import { notProvenByRecord } from '../../report/words/index.ts';
import { safeLine } from '../terminal/exit.ts';

export function reportLines(file: string, report: VerificationReport): readonly string[] {
  const { record, checks, verdict, withheld } = report;
  return [
    `${safeLine(file)}: ${VERIFICATION[verdict].ofRecord}${alsoIncomplete(report)}${safeLine(doubtsIn(checks))}`,
    ...(record === null
      ? []
      : [
          `  job ${safeLine(record.job)}, station ${safeLine(record.station)}, ${record.entries.length} entries; ${TECHNICIAN_WORDS[record.technicianSignature]}`,
        ]),
    ...checkLines(checks),
    ...withheldLines(withheld),
    ...notProvenLines(notProvenByRecord(report)),
  ];
}

/** Under every verdict that somebody may rely on. */
export const notProvenLines = (texts: readonly string[]): readonly string[] =>
  texts.length === 0 ? [] : ['  NOT proven by this:', ...texts.map((text) => `    ${safeLine(text)}`)];

/** What did not come with it; no verdict rests on that. */
export const withheldLines = (withheld: readonly Withheld[]): readonly string[] =>
  withheld.length === 0
    ? []
    : [
        `  Withheld: ${withheld.map(({ kind, count }) => `${kind} (${count})`).join(', ')}. What is signed holds digests of these texts; no check needs them.`,
      ];

export const checkLines = (checks: readonly Check[]): readonly string[] =>
  checks.map(
    ({ name, outcome, detail }) => `  ${CHECK_MARK[outcome]} ${name.padEnd(13)} ${safeLine(detail)}`,
  );

function alsoIncomplete({ verdict, checks }: VerificationReport): string {
  const incomplete = checks.some(({ name, outcome }) => name === COMPLETENESS && outcome === 'failed');
  return incomplete && (verdict === 'untrusted' || verdict === 'other-rules') ? ` ${ALSO_INCOMPLETE}` : '';
}
