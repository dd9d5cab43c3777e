/** One of several workers that verify the records of a package or folder: takes a record, gives what came out. */
import { NoSecondOpinion } from '../../evidence/platform/signature.browser.ts';
import type { Finding } from '../../package/finding.ts';
import { type ByReader, type RecordToVerify, type Verifier, verifierFor } from './findings.ts';

export type ToHelper =
  | (ByReader & { readonly kind: 'reader' })
  | (RecordToVerify & { readonly kind: 'record' })
  | { readonly kind: 'end' };

/** A fault is one of the program or of the browser, never of the record. */
export type FromHelper =
  | { readonly kind: 'finding'; readonly finding: Finding }
  | { readonly kind: 'fault'; readonly isOfBrowser: boolean; readonly message: string };

/** Answers through this port, in the order in which it is asked, until it is told to end. */
export function help(port: MessagePort): void {
  let verify: Verifier | null = null;
  let before: Promise<unknown> = Promise.resolve();
  const answer = (from: FromHelper) => port.postMessage(from);
  const take = async (asked: ToHelper) => {
    try {
      if (asked.kind === 'end') close();
      else if (asked.kind === 'reader') verify = verifierFor(asked);
      else if (verify !== null) answer({ kind: 'finding', finding: await verify(asked) });
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
