/** What came out for each of many records, wherever it is verified: here, or by helpers on other cores. */

import type { LaterLog } from '../../evidence/later-log.ts';
import { agreed } from '../../evidence/platform/signature.browser.ts';
import { type Policy, parsePolicy } from '../../evidence/policy.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import type { TrustList } from '../../evidence/trust.ts';
import { type Finding, findingOf, unreadable } from '../../package/finding.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { beside } from './beside.ts';
import type { Given } from './given.ts';

/** What the reader brings, as it can be handed from worker to worker. */
export interface ByReader {
  readonly trust: TrustList;
  /** The file: the policy itself has functions in it. */
  readonly policy: Uint8Array | null;
  readonly readAt: string;
}

export interface RecordToVerify {
  readonly file: string;
  readonly bytes: Uint8Array;
  /** The proof that a later log contains it, and the note of witnesses, as they came beside it. */
  readonly later: LaterLog | null;
  readonly note: LaterLog | null;
}

export type Verifier = (record: RecordToVerify) => Promise<Finding>;

export function verifierFor({ trust, policy: file, readAt }: ByReader): Verifier {
  const policy: Policy | null = file === null ? null : orThrow(parsePolicy(file, 'policy'));
  return ({ file: name, bytes, later, note }) =>
    agreed(() => findingOf(name, bytes, trust, readAt, later, policy && { policy, note }));
}

/** Where a proof or a note that belongs to a record may lie. */
export interface Surroundings {
  readonly files: readonly Given[];
  readonly loose: readonly Given[];
}

/** Verifies these records, in any order, and gives what came out as it comes. */
export type VerifyAll = (
  records: readonly Given[],
  around: Surroundings,
  by: ByReader,
  take: (finding: Finding) => void,
) => Promise<void>;

export const verifyHere: VerifyAll = async (records, around, by, take) => {
  const verify = verifierFor(by);
  for (const file of records) take(await findingAt(file, around, by, verify));
};

/** One that cannot be read is a finding as well. */
export async function findingAt(
  file: Given,
  around: Surroundings,
  { policy }: ByReader,
  verify: Verifier,
): Promise<Finding> {
  const { path } = file;
  try {
    const bytes = await file.read(MAX_RECORD_BYTES);
    const later = await beside(path, '.proof', around);
    const note = policy === null ? null : await beside(path, '.witnessed', around);
    return await verify({ file: path, bytes, later, note });
  } catch (fault) {
    if (fault instanceof ProblemError) return unreadable(path, () => fault.problem.message);
    throw fault;
  }
}
