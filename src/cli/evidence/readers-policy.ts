/** The policy that a reader names: which logs, which witnesses, and how many of them. */

import type { ByPolicy } from '../../evidence/by-policy.ts';
import { type Policy, parsePolicy } from '../../evidence/policy.ts';
import { inputName, readBytes } from '../../files/input.ts';
import { ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { witnessesBeside } from './later-log-file.ts';
import { liesInPackage } from './readers-trust.ts';

/** As read, and as it can be handed to a thread. */
export interface ReadersPolicy {
  readonly policy: Policy;
  readonly bytes: Uint8Array;
}

/** Room for 600 witnesses with keys of ML-DSA-44. */
const MAX_BYTES = 1 << 20;

/** Problem: `policy-form`, also for one that came with the package that is verified: whoever packed it would say whom to trust. */
export async function readersPolicy(
  file: string | undefined,
  verified: string,
): Promise<ReadersPolicy | null> {
  if (file === undefined) return null;
  if (await liesInPackage(file, verified))
    throw new ProblemError({
      code: 'policy-form',
      where: file,
      message: w`this policy lies in a package, and nobody says in his own package whom to trust`,
      next: w`Name with --policy one of your own.`,
    });
  const bytes = await readBytes(file, w`policy`, MAX_BYTES);
  return { bytes, policy: orThrow(parsePolicy(bytes, inputName(file))) };
}

/** With the note of the witnesses that lies beside a record. */
export const byPolicyBeside = (policy: Policy | null, record: string): ByPolicy | null =>
  policy === null ? null : { policy, note: witnessesBeside(record) };
