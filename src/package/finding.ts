import { readFileSync, statSync } from 'node:fs';
import { z } from 'zod';
import { COMPLETENESS } from '../evidence/completeness.ts';
import { JUDGED_AGAIN } from '../evidence/judged-again.ts';
import { MAX_RECORD_BYTES } from '../evidence/record.ts';
import type { TrustList } from '../evidence/trust.ts';
import { VERDICTS } from '../evidence/verdict.ts';
import { type VerificationReport, verifyRecord } from '../evidence/verify.ts';

const findingSchema = z.strictObject({
  file: z.string(),
  verdict: z.enum(VERDICTS),
  /** The first check that failed, or why it was not judged again, in words. */
  fault: z.string().nullable(),
  /** Names of all checks that failed. */
  failed: z.array(z.string()),
  /** What the record says of itself; null where it cannot be read. */
  says: z.strictObject({ job: z.string(), checkpoint: z.string(), simulated: z.boolean() }).nullable(),
});
/** What came out for one file. */
export type Finding = z.infer<typeof findingSchema>;
export const findingsSchema = z.array(findingSchema);

/** Checks one record file; one that cannot be read is a finding as well. */
export function findingOf(file: string, trust: TrustList): Finding {
  try {
    const found = statSync(file);
    // A pipe or a device has no end.
    if (!found.isFile()) return unreadable(file, 'no plain file');
    if (found.size > MAX_RECORD_BYTES) return unreadable(file, 'larger than any record');
    const report = verifyRecord(readFileSync(file), trust, null, new Date().toISOString());
    const fault =
      report.checks.find(({ outcome }) => outcome === 'failed') ??
      report.checks.find(({ name }) => report.verdict === 'other-rules' && name === JUDGED_AGAIN);
    const { record } = report;
    return {
      file,
      verdict: report.verdict,
      fault: fault === undefined ? null : `${fault.name}: ${fault.detail}`,
      failed: failedIn(report),
      says: record && {
        job: record.job,
        checkpoint: record.log.checkpoint,
        simulated: record.summary.simulated,
      },
    };
  } catch (cause) {
    return unreadable(file, cause instanceof Error ? cause.message : 'cannot be read');
  }
}

const failedIn = ({ checks }: VerificationReport) =>
  checks.filter(({ outcome }) => outcome === 'failed').map(({ name }) => name);

/** That a job was not finished, or that its reader does not know the signer, is no fault of a record: it is what it says. */
const isNoFault = (name: string) => name === COMPLETENESS || name === 'signer';

/** Whether the record is what the station sealed. */
export const isSound = ({ verdict, failed }: Pick<Finding, 'verdict' | 'failed'>): boolean =>
  verdict !== 'unreadable' && failed.every(isNoFault);

/** The same of a report. */
export const isSoundReport = (report: VerificationReport): boolean =>
  isSound({ verdict: report.verdict, failed: failedIn(report) });

/** Empty where all of it was real. */
export function simulatedText(findings: readonly Finding[]): string {
  const count = findings.filter(({ says }) => says?.simulated === true).length;
  return count === 0
    ? ''
    : `SIMULATED: ${count} of ${findings.length} jobs; of these nothing is proven about any engine.`;
}

const unreadable = (file: string, fault: string): Finding => ({
  file,
  verdict: 'unreadable',
  fault,
  failed: [],
  says: null,
});
