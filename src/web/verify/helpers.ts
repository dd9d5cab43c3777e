/** Many records verified on several cores: each is read here, and given to a helper, which is a worker of this program as well. */

import type { LaterLog } from '../../evidence/later-log.ts';
import { NoSecondOpinion } from '../../evidence/platform/signature.browser.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import type { TrustList } from '../../evidence/trust.ts';
import { type Finding, unreadable } from '../../package/finding.ts';
import { ProblemError } from '../../problem.ts';
import { beside } from './beside.ts';
import type { Given } from './given.ts';
import { type FromHelper, readerOf, verified } from './helper.ts';
import type { Told } from './shown.ts';

/** So few are verified sooner than a helper has started. */
const FEW = 12;
/** Each holds the whole program. */
const MOST_HELPERS = 4;

/** What the reader brings. */
export interface ByReader {
  readonly trust: TrustList;
  /** The file. */
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

export type ToHelper =
  | (ByReader & { readonly kind: 'reader' })
  | (RecordToVerify & { readonly kind: 'record' })
  | { readonly kind: 'end' };

type Verifier = (record: RecordToVerify) => Promise<Finding>;

/** Verifies these records, in any order, and gives what came out as it comes. One that cannot be read is a finding as well. */
export async function verifyAll(
  records: readonly Given[],
  given: { readonly files: readonly Given[]; readonly loose: readonly Given[] },
  by: ByReader,
  take: (finding: Finding) => void,
): Promise<void> {
  const helpers = await startedHelpers(records.length, by);
  const inTurn = records.values();
  const work = async (verify: Verifier) => {
    for (const file of inTurn) take(await findingAt(file, given, by.policy !== null, verify));
  };
  try {
    // While a helper verifies one record, the next one is read for it.
    await Promise.all(
      helpers.length === 0
        ? [work(verifierHere(by))]
        : helpers.flatMap((helper) => {
            const verify = verifierOf(helper);
            return [work(verify), work(verify)];
          }),
    );
  } finally {
    for (const helper of helpers) post(helper, { kind: 'end' });
  }
}

async function findingAt(
  file: Given,
  given: { readonly files: readonly Given[]; readonly loose: readonly Given[] },
  byPolicy: boolean,
  verify: Verifier,
): Promise<Finding> {
  const { path } = file;
  try {
    const bytes = await file.read(MAX_RECORD_BYTES);
    const later = await beside(path, '.proof', given);
    const note = byPolicy ? await beside(path, '.witnessed', given) : null;
    return await verify({ file: path, bytes, later, note });
  } catch (fault) {
    if (fault instanceof ProblemError) return unreadable(path, fault.message);
    throw fault;
  }
}

function verifierHere(by: ByReader): Verifier {
  const reader = readerOf(by);
  return (record) => verified(record, reader);
}

/** None for few. */
async function startedHelpers(records: number, by: ByReader): Promise<readonly MessagePort[]> {
  if (records <= FEW) return [];
  const count = Math.min(navigator.hardwareConcurrency, MOST_HELPERS, Math.ceil(records / FEW));
  const ports = await new Promise<readonly MessagePort[]>((resolve) => {
    started = resolve;
    tell({ kind: 'helpers-wanted', count });
  });
  for (const port of ports) post(port, { kind: 'reader', ...by });
  return ports;
}

let started: (ports: readonly MessagePort[]) => void = () => undefined;

/** The page has started them: a worker of a page that is a file on a disk may start none. */
export const helpersStarted = (ports: readonly MessagePort[]) => started(ports);

const tell = (told: Told) => postMessage(told);
const post = (helper: MessagePort, asked: ToHelper) => helper.postMessage(asked);

interface Waiting {
  readonly resolve: (finding: Finding) => void;
  readonly reject: (fault: Error) => void;
}

/** A helper answers in the order in which it was asked. */
function verifierOf(helper: MessagePort): Verifier {
  const waiting: Waiting[] = [];
  helper.addEventListener('message', ({ data }: MessageEvent<FromHelper>) => {
    const one = waiting.shift();
    if (data.kind === 'finding') one?.resolve(data.finding);
    else one?.reject(data.isOfBrowser ? new NoSecondOpinion(data.message) : new Error(data.message));
  });
  helper.start();
  return (record) =>
    new Promise((resolve, reject) => {
      waiting.push({ resolve, reject });
      post(helper, { kind: 'record', ...record });
    });
}
