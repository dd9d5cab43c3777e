/** What came out for one record among many: little enough to be handed from thread to thread. */
import { z } from 'zod';
import { type ByPolicy, WITNESSES } from '../evidence/by-policy.ts';
import { type Check, checkName } from '../evidence/check.ts';
import { COMPLETENESS } from '../evidence/completeness.ts';
import { JUDGED_AGAIN } from '../evidence/judged-again.ts';
import type { LaterLog } from '../evidence/later-log.ts';
import type { Moment } from '../evidence/order-of-time.ts';
import { withheldSchema } from '../evidence/sharing.ts';
import type { TrustList } from '../evidence/trust.ts';
import { VERDICTS } from '../evidence/verdict.ts';
import { type VerificationReport, verifyRecord } from '../evidence/verify.ts';
import { openItemSchema } from '../job/open-item.ts';
import type { FigureSource } from '../reading.ts';
import { summarySchema } from '../rules/summary.ts';
import type { Sentence } from '../words/catalogue.ts';
import { shownBy } from './shown.ts';

const momentSchema = z.strictObject({ seq: z.int(), at: z.string() });

const findingSchema = z.strictObject({
  file: z.string(),
  verdict: z.enum(VERDICTS),
  /** The first check that failed, or why it was not judged again, in words. */
  fault: z.string().nullable(),
  /** What is open in the job, where that is the fault. */
  open: z.array(openItemSchema),
  /** Names of all checks that failed. */
  failed: z.array(z.string()),
  /** What the record states of itself; null where it cannot be read. */
  stated: z
    .strictObject({
      job: z.string(),
      /** Thumbprint of the station's key that signed it. */
      kid: z.string(),
      checkpoint: z.string(),
      /** What it shows of its log, for holding it against others. */
      shown: z.strictObject({
        places: z.instanceof(Float64Array),
        hashes: z.instanceof(Uint8Array),
        entries: z.instanceof(Uint8Array),
      }),
      sources: summarySchema.shape.sources,
      figures: summarySchema.shape.figures,
      outOfOrder: summarySchema.shape.outOfOrder,
      /** Its first and its last entry. */
      first: momentSchema,
      last: momentSchema,
    })
    .nullable(),
  /** What is in doubt though no check failed. */
  doubt: z.string().nullable(),
  /** Personal texts that did not come with it. */
  withheld: z.array(withheldSchema),
});
export type Finding = z.infer<typeof findingSchema>;
export const findingsSchema = z.array(findingSchema);

/** Verifies the bytes of one record file; `readAt` is the reader's clock (ISO). */
export function findingOf(
  file: string,
  bytes: Uint8Array,
  trust: TrustList,
  readAt: string,
  later: LaterLog | null = null,
  byPolicy: ByPolicy | null = null,
): Finding {
  const report = verifyRecord(bytes, trust, null, readAt, later, byPolicy);
  const fault =
    report.checks.find(({ outcome }) => outcome === 'failed') ??
    report.checks.find(({ name }) => isNotJudged(report) && name === JUDGED_AGAIN);
  const { record } = report;
  const doubt = report.checks.find(({ outcome }) => outcome === 'doubtful');
  return withSentences(fault, doubt, {
    file,
    verdict: report.verdict,
    open: [...(fault?.open ?? [])],
    failed: failedIn(report),
    stated: record && {
      job: record.job,
      kid: record.signers.find(({ role }) => role === 'station')?.kid ?? '',
      checkpoint: record.log.checkpoint,
      shown: shownBy(record),
      sources: record.summary.sources,
      figures: record.summary.figures,
      ...(record.summary.outOfOrder === undefined ? {} : { outOfOrder: record.summary.outOfOrder }),
      first: momentOf(record.entries[0]),
      last: momentOf(record.entries.at(-1)),
    },
    withheld: [...report.withheld],
  });
}

/** Said when they are read, and made of the checks alone: a finding does not keep the record that it is about. */
const withSentences = (
  fault: Check | undefined,
  doubt: Check | undefined,
  facts: Omit<Finding, 'fault' | 'doubt'>,
): Finding => ({
  ...facts,
  get fault() {
    return fault === undefined ? null : `${checkName(fault.name)}: ${fault.detail}`;
  },
  get doubt() {
    return doubt?.detail ?? null;
  },
});

/** Left to a newer version of the program, which knows its form or its rules. */
const isNotJudged = ({ verdict }: Pick<Finding, 'verdict'>) =>
  verdict === 'newer' || verdict === 'other-rules';

/** A file whose bytes nobody could read. */
export const unreadable = (file: string, fault: Sentence): Finding => ({
  file,
  verdict: 'unreadable',
  get fault() {
    return fault();
  },
  open: [],
  failed: [],
  doubt: null,
  stated: null,
  withheld: [],
});

const momentOf = (entry: Moment | undefined): Moment => ({ seq: entry?.seq ?? 0, at: entry?.at ?? '' });

const failedIn = ({ checks }: VerificationReport) =>
  checks.filter(({ outcome }) => outcome === 'failed').map(({ name }) => name);

/** That a job was not finished, or that its reader does not know the signer, is no fault of a record: it is what it states. */
const isNoFault = (name: string) => name === COMPLETENESS || name === 'signer' || name === WITNESSES;

/** Whether the record is what the station sealed. */
export const isSound = ({ verdict, failed }: Pick<Finding, 'verdict' | 'failed'>): boolean =>
  verdict !== 'unreadable' && verdict !== 'newer' && failed.every(isNoFault);

/** The same of a report. */
export const isSoundReport = (report: VerificationReport): boolean =>
  isSound({ verdict: report.verdict, failed: failedIn(report) });

/** How many of so many jobs rest on figures that were simulated, replayed or typed. */
export interface Unproven {
  readonly of: number;
  readonly simulated: number;
  readonly replayed: number;
  readonly typed: number;
}

export function unprovenIn(findings: readonly Finding[]): Unproven {
  const having = (source: FigureSource) =>
    findings.filter(({ stated }) => stated?.sources.includes(source) === true).length;
  return {
    of: findings.length,
    simulated: having('simulated'),
    replayed: having('replayed'),
    typed: having('typed'),
  };
}
