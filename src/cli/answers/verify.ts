/** Answers of verification: of a record, of a folder of records, of a package. */

import { z } from 'zod';
import type { Check } from '../../evidence/check.ts';
import { withheldSchema } from '../../evidence/sharing.ts';
import type { VerificationReport } from '../../evidence/verify.ts';
import { openItemSchema } from '../../job/open-item.ts';
import type { Finding, Unproven } from '../../package/finding.ts';
import type { PackageJob } from '../../package/format.ts';
import type { TwoHistories } from '../../package/histories.ts';
import type { HeldPaper } from '../../report/held/paper.ts';
import { notProvenByRecord } from '../../report/words/index.ts';
import { answer, count, decision, figures, outOfOrder, sources, time } from './answer.ts';

const verdict = z
  .enum([
    'authentic',
    'unproven',
    'incomplete',
    'rejected',
    'unreadable',
    'newer',
    'untrusted',
    'other-rules',
  ])
  .describe(
    'Every check passed; authentic and complete, but figures were simulated or replayed, so that nothing is proven; authentic, but not all of the job is done; not authentic; no record; made by a newer version of the program, so that nothing was checked; as it was sealed, but the signer is not trusted; or authentic, but judged by rules that this version does not know.',
  );
const withheld = z.array(withheldSchema).describe('Personal texts that did not come with it, by kind.');
const worth = {
  sources: sources
    .nullable()
    .describe('Where its figures came from, as the record states it; null where it cannot be read.'),
  figures: figures
    .nullable()
    .describe('How many cylinders are done on figures of each source; null where it cannot be read.'),
  outOfOrder: outOfOrder
    .nullable()
    .describe('What came before its turn, as the record states it; null where it cannot be read.'),
};
const check = z.strictObject({
  name: z.string().describe('Name of the check.'),
  outcome: z
    .enum(['passed', 'doubtful', 'failed', 'not-applicable'])
    .describe(
      'How it came out. `doubtful`: no fault that can be proven, and to be known before anything else.',
    ),
  detail: z.string().describe('What was seen, in words.'),
  open: z.array(openItemSchema).exactOptional().describe('What is open in the job, where that is the fault.'),
});

export const verifyAnswer = z
  .discriminatedUnion('of', [
    answer('verify', {
      of: z.literal('record'),
      file: z.string().describe('File of the record.'),
      verdict,
      job: z
        .string()
        .nullable()
        .describe('Number of the job, as the record has it; null where it cannot be read.'),
      station: z
        .string()
        .nullable()
        .describe('Name of the station, as the record has it; null where it cannot be read.'),
      paper: z
        .strictObject({
          outcome: z
            .enum(['same', 'other-version', 'differs', 'not-compared'])
            .describe(
              'Byte for byte what the record gives; drawn by another version, and its words and figures are those of the record; not what the record gives; or not compared, because the record is not as it was sealed.',
            ),
          detail: z.string().describe('What was seen, in words.'),
        })
        .nullable()
        .describe('The paper (PDF) that the record was found in; null where the file is the record itself.'),
      ...worth,
      checks: z.array(check).describe('The checks, in this order.'),
      signatures: z
        .array(
          z.strictObject({
            signer: z
              .strictObject({
                kid: z.string().describe('Thumbprint of the key (RFC 7638).'),
                role: z.string().describe('In what capacity it signed.'),
                signedAt: time.describe('When, by the clock of the signer.'),
              })
              .nullable()
              .describe('Who signed; null where the header cannot be read.'),
            fault: z.string().nullable().describe('Why the signature does not hold; null where it does.'),
          }),
        )
        .describe('The signatures of the record.'),
      withheld,
      notProven: z.array(z.string()).describe('What the record cannot prove, each a sentence.'),
    }).describe('A record was verified.'),
    answer('verify', {
      of: z.literal('folder'),
      folder: z.string().describe('The folder.'),
      records: z
        .array(
          z.strictObject({
            file: z.string().describe('File of the record.'),
            verdict,
            job: z
              .string()
              .nullable()
              .describe('Number of the job, as the record has it; null where it cannot be read.'),
            ...worth,
            withheld,
            failed: z.array(z.string()).describe('Names of the checks that failed.'),
            fault: z
              .string()
              .nullable()
              .describe(
                'The first check that failed, or why it was not judged again; null where there is none.',
              ),
            open: z.array(openItemSchema).describe('What is open in the job, where that is the fault.'),
            doubt: z
              .string()
              .nullable()
              .describe('What is in doubt though no check failed; null for nothing.'),
          }),
        )
        .describe('Every record in the folder.'),
      histories: z
        .array(
          z.strictObject({
            file: z.string().describe('File of a record.'),
            other: z.string().describe('File of another one of the same log.'),
            why: z.string().describe('Where they part.'),
          }),
        )
        .describe('Records that cannot both be true: two histories of one log.'),
    }).describe('Every record in a folder was verified.'),
    answer('verify', {
      of: z.literal('package'),
      folder: z.string().describe('The folder of the package.'),
      verdict,
      checks: z.array(check).describe('The checks, in this order.'),
      withheld,
      unproven: z
        .strictObject({
          of: count.describe('How many records there are.'),
          simulated: count.describe('How many rest on simulated figures.'),
          replayed: count.describe('How many rest on replayed figures.'),
          typed: count.describe('How many rest on typed figures.'),
        })
        .describe('How many of its jobs no instrument proves.'),
      questioned: z
        .array(
          z.strictObject({
            job: z.string().describe('Number of the job.'),
            impacts: z
              .array(
                z.strictObject({
                  impact: z.string().describe('Number of the impact assessment.'),
                  worst: z
                    .enum(['doubtful', 'out'])
                    .describe('The worst of its attempts: too near a limit to tell, or beyond it.'),
                  decision: decision
                    .nullable()
                    .describe('What was decided last; null where nobody had decided.'),
                }),
              )
              .describe('Impact assessments that touch it.'),
          }),
        )
        .describe('Jobs that a later impact assessment put in question.'),
      notProven: z.array(z.string()).describe('What the package cannot prove, each a sentence.'),
    }).describe('A package was verified.'),
  ])
  .describe('What "plugmark verify --json" prints.');
type VerifyAnswer = z.infer<typeof verifyAnswer>;

const checkOf = ({ open, ...seen }: Check): z.infer<typeof check> => ({
  ...seen,
  ...(open === undefined ? {} : { open: [...open] }),
});

export const verifiedRecord = (
  file: string,
  report: VerificationReport,
  paper: { readonly outcome: HeldPaper['outcome'] | 'not-compared'; readonly detail: string } | null = null,
): VerifyAnswer => {
  const { verdict: found, record, checks, signatures, withheld: missing } = report;
  return {
    form: 'plugmark/verify/1',
    of: 'record',
    file,
    verdict: found,
    job: record?.job ?? null,
    station: record?.station ?? null,
    paper,
    sources: record?.summary.sources ?? null,
    figures: record?.summary.figures ?? null,
    outOfOrder: record === null ? null : (record.summary.outOfOrder ?? []),
    checks: checks.map(checkOf),
    signatures: signatures.map(({ signer, fault }) => ({ signer, fault: fault?.() ?? null })),
    withheld: [...missing],
    notProven: [...notProvenByRecord(report)],
  };
};

export const verifiedFolder = (
  folder: string,
  findings: readonly Finding[],
  histories: readonly TwoHistories[],
): VerifyAnswer => ({
  form: 'plugmark/verify/1',
  of: 'folder',
  folder,
  records: findings.map(
    ({ file, verdict: found, stated, failed, fault, open, doubt, withheld: missing }) => ({
      file,
      verdict: found,
      job: stated?.job ?? null,
      sources: stated?.sources ?? null,
      figures: stated?.figures ?? null,
      outOfOrder: stated === null ? null : (stated.outOfOrder ?? []),
      withheld: missing,
      failed,
      fault,
      open,
      doubt,
    }),
  ),
  histories: histories.map((one) => ({ ...one, why: one.why() })),
});

interface PackageSaid {
  readonly folder: string;
  readonly verdict: VerificationReport['verdict'];
  readonly checks: VerificationReport['checks'];
  readonly withheld: VerificationReport['withheld'];
  readonly unproven: Unproven;
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
  checks: checks.map(checkOf),
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
