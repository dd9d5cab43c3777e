/** Answers of verification: of a record, of a folder of records, of a package. */
import { z } from 'zod';
import { withheldSchema } from '../../evidence/sharing.ts';
import type { VerificationReport } from '../../evidence/verify.ts';
import type { Finding } from '../../package/finding.ts';
import type { PackageJob } from '../../package/format.ts';
import { answer, decision, time } from './answer.ts';

/** Personal texts that did not come with it, by kind. */
const withheld = z.array(withheldSchema);
const verdict = z.enum(['authentic', 'incomplete', 'rejected', 'unreadable', 'untrusted', 'other-rules']);
const check = z.strictObject({
  name: z.string(),
  outcome: z.enum(['passed', 'failed', 'not-applicable']),
  detail: z.string(),
});

export const verifyAnswer = z.discriminatedUnion('of', [
  answer('verify', {
    of: z.literal('record'),
    file: z.string(),
    verdict,
    job: z.string().nullable(),
    station: z.string().nullable(),
    simulated: z.boolean().nullable(),
    checks: z.array(check),
    withheld,
    signatures: z.array(
      z.strictObject({
        signer: z.strictObject({ kid: z.string(), role: z.string(), signedAt: time }).nullable(),
        fault: z.string().nullable(),
      }),
    ),
  }),
  answer('verify', {
    of: z.literal('folder'),
    folder: z.string(),
    records: z.array(
      z.strictObject({
        file: z.string(),
        verdict,
        job: z.string().nullable(),
        simulated: z.boolean().nullable(),
        /** Names of the checks that failed. */
        failed: z.array(z.string()),
        fault: z.string().nullable(),
        withheld,
      }),
    ),
  }),
  answer('verify', {
    of: z.literal('package'),
    folder: z.string(),
    verdict,
    checks: z.array(check),
    withheld,
    /** Jobs that a later impact assessment put in question. */
    questioned: z.array(
      z.strictObject({
        job: z.string(),
        impacts: z.array(
          z.strictObject({
            impact: z.string(),
            worst: z.enum(['doubtful', 'out']),
            decision: decision.nullable(),
          }),
        ),
      }),
    ),
    /** What a package cannot prove, each a sentence. */
    notProven: z.array(z.string()),
  }),
]);
type VerifyAnswer = z.infer<typeof verifyAnswer>;

export const verifiedRecord = (
  file: string,
  { verdict: found, record, checks, signatures, withheld: missing }: VerificationReport,
): VerifyAnswer => ({
  form: 'plugmark/verify/1',
  of: 'record',
  file,
  verdict: found,
  job: record?.job ?? null,
  station: record?.station ?? null,
  simulated: record?.summary.simulated ?? null,
  checks: [...checks],
  withheld: [...missing],
  signatures: [...signatures],
});

export const verifiedFolder = (folder: string, findings: readonly Finding[]): VerifyAnswer => ({
  form: 'plugmark/verify/1',
  of: 'folder',
  folder,
  records: findings.map(({ file, verdict: found, stated, failed, fault, withheld: missing }) => ({
    file,
    verdict: found,
    job: stated?.job ?? null,
    simulated: stated?.simulated ?? null,
    failed,
    fault,
    withheld: missing,
  })),
});

interface PackageSaid {
  readonly folder: string;
  readonly verdict: VerificationReport['verdict'];
  readonly checks: VerificationReport['checks'];
  readonly withheld: VerificationReport['withheld'];
  readonly questioned: readonly PackageJob[];
  readonly notProven: readonly string[];
}

export const verifiedPackage = ({
  checks,
  withheld: missing,
  questioned,
  notProven,
  ...said
}: PackageSaid): VerifyAnswer => ({
  form: 'plugmark/verify/1',
  of: 'package',
  ...said,
  checks: [...checks],
  withheld: [...missing],
  questioned: questioned.map(({ job, impacts }) => ({
    job,
    impacts: impacts.map(({ assessment, sort, decided }) => ({
      impact: assessment,
      worst: sort,
      decision: decided,
    })),
  })),
  notProven: [...notProven],
});
