/** A paper from whoever has it: the record inside is verified, and the pages are held against it. */
import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import type { TrustList } from '../../evidence/trust.ts';
import { type VerificationReport, verifyRecord } from '../../evidence/verify.ts';
import { isSoundReport } from '../../package/finding.ts';
import { ProblemError } from '../../problem.ts';
import { type HeldPaper, heldPaper, paperCheck } from '../../report/held/paper.ts';
import { type PaperFile, readPaper } from '../../report/held/pdf-file.ts';
import { VERIFICATION } from '../../report/verification.ts';
import { phrases, type Sentence, w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { verifiedRecord } from '../answers/verify.ts';
import { drawnPdf } from '../bench/papers.ts';
import { now } from '../station/clock.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { laterLogBeside } from './later-log-file.ts';
import { byPolicyBeside, type ReadersPolicy } from './readers-policy.ts';
import { checkLines, reportLines } from './report-lines.ts';
import { trustedTime } from './time-stamp.ts';

/** A record, and pages of a few hundred kilobytes around it. */
export const MAX_PAPER_BYTES = MAX_RECORD_BYTES * 2;

interface PaperOptions {
  readonly trust: TrustList;
  readonly unnamed: Sentence | null;
  readonly policy: ReadersPolicy | null;
  readonly json?: true;
  readonly time?: string;
  readonly ca?: string;
}

/** Problem `no-record-in-pdf`. */
export async function verifyPaper(
  path: string,
  pdf: Uint8Array,
  { trust, unnamed, policy, json, ...options }: PaperOptions,
): Promise<ExitCode> {
  const bytes = recordIn(path, readPaper(pdf));
  const time = await trustedTime(bytes, options);
  const beside = path.replace(/\.pdf$/i, '.record.json');
  const report = verifyRecord(
    bytes,
    trust,
    time,
    now(),
    laterLogBeside(beside),
    byPolicyBeside(policy?.policy ?? null, beside),
  );
  const held = await heldWith(pdf, bytes, report);
  if (json === true) printJson(verifiedRecord(path, report, held ?? NOT_COMPARED));
  else print(linesOf(path, { report, unnamed }, held));
  return exitOf(report, held);
}

/** Null where the record is not as it was sealed, and gives no paper. */
function heldWith(pdf: Uint8Array, bytes: Uint8Array, report: VerificationReport): Promise<HeldPaper | null> {
  const opened = openRecord(bytes);
  if (!opened.ok || !isSoundReport(report)) return Promise.resolve(null);
  const { record } = opened.value;
  return heldPaper(pdf, (fonts, audience) => drawnPdf(bytes, record, audience, fonts));
}

const NOT_COMPARED = {
  outcome: 'not-compared',
  get detail() {
    return w`Not compared, because the record inside is not as it was sealed.`;
  },
} as const;

function linesOf(
  path: string,
  { report, unnamed }: { readonly report: VerificationReport; readonly unnamed: Sentence | null },
  held: HeldPaper | null,
): readonly string[] {
  const file = safeLine(path);
  const inside = reportLines(w`${path}, the record inside`, report, unnamed);
  if (held === null) return [`${file}: ${w`Do not rely on this paper.`} ${NOT_COMPARED.detail}`, ...inside];
  return [`${file}: ${HEADLINE[held.outcome]}`, ...checkLines([paperCheck(held)]), ...inside];
}

const HEADLINE: Readonly<Record<HeldPaper['outcome'], string>> = phrases({
  same: 'The pages are what the record inside gives.',
  'other-version':
    'The pages were NOT compared byte for byte, because another version drew them. The record inside is what counts.',
  differs:
    'NOT the paper of the record inside. Do not rely on the pages. Make the paper anew from the record with "plugmark paper".',
});

function exitOf({ verdict }: VerificationReport, held: HeldPaper | null): ExitCode {
  const { exit } = VERIFICATION[verdict];
  if (held?.outcome === 'differs') return EXIT.failed;
  return exit === EXIT.done && held?.outcome === 'other-version' ? EXIT.otherRules : exit;
}

function recordIn(where: string, paper: PaperFile | null): Uint8Array {
  if (paper !== null && paper.attached !== null) return paper.attached;
  throw new ProblemError({
    code: 'no-record-in-pdf',
    where,
    message:
      paper === null
        ? w`this PDF is not as plugmark writes papers: another program wrote it, or wrote it again`
        : w`no record is inside this paper`,
    next: w`Ask for the record (*.record.json), or save it out of the PDF with a PDF reader (attachments), and verify that.`,
  });
}
