/** One of several workers that verify the records of a package or folder: takes a record, gives what came out. */
import { agreed, NoSecondOpinion } from '../../evidence/platform/signature.browser.ts';
import { type Policy, parsePolicy } from '../../evidence/policy.ts';
import type { TrustList } from '../../evidence/trust.ts';
import { type Finding, findingOf } from '../../package/finding.ts';
import { orThrow } from '../../result.ts';
import type { ByReader, RecordToVerify, ToHelper } from './helpers.ts';

/** What a helper answers: a fault is one of the program or of the browser, never of the record. */
export type FromHelper =
  | { readonly kind: 'finding'; readonly finding: Finding }
  | { readonly kind: 'fault'; readonly isOfBrowser: boolean; readonly message: string };

interface Reader {
  readonly trust: TrustList;
  readonly policy: Policy | null;
  readonly readAt: string;
}

/** Functions cannot be handed from worker to worker, so that each reads the policy itself. */
export const readerOf = ({ trust, policy, readAt }: ByReader): Reader => ({
  trust,
  policy: policy === null ? null : orThrow(parsePolicy(policy, 'policy')),
  readAt,
});

export const verified = (
  { file, bytes, later, note }: RecordToVerify,
  { trust, policy, readAt }: Reader,
): Promise<Finding> => agreed(() => findingOf(file, bytes, trust, readAt, later, policy && { policy, note }));

/** Answers through this port until it is told to end. */
export function help(port: MessagePort): void {
  let reader: Reader | null = null;
  let before: Promise<unknown> = Promise.resolve();
  const answer = (from: FromHelper) => port.postMessage(from);
  const take = async (asked: ToHelper) => {
    try {
      if (asked.kind === 'end') close();
      else if (asked.kind === 'reader') reader = readerOf(asked);
      else if (reader !== null) answer({ kind: 'finding', finding: await verified(asked, reader) });
    } catch (fault) {
      answer({ kind: 'fault', isOfBrowser: fault instanceof NoSecondOpinion, message: String(fault) });
    }
  };
  port.addEventListener('message', ({ data }: MessageEvent<ToHelper>) => {
    // One after the other: two records that wait for WebCrypto at once would mix up their signatures.
    before = before.then(() => take(data));
  });
  port.start();
}
