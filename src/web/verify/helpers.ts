/** Many records on several cores: each is read here, and verified by a helper, which is a worker of this program as well. */
import { NoSecondOpinion } from '../../evidence/platform/signature.browser.ts';
import type { Finding } from '../../package/finding.ts';
import {
  type ByReader,
  findingAt,
  type Verifier,
  type VerifyAll,
  verifierFor,
  verifyHere,
} from './findings.ts';
import type { FromHelper, ToHelper } from './helper.ts';
import type { Told } from './messages.ts';

/** So few are verified sooner than a helper has started. */
const FEW = 12;
/** Each holds the whole program. */
const MOST_HELPERS = 4;

export const verifyOnAllCores: VerifyAll = async (records, around, by, take) => {
  if (records.length <= FEW) return verifyHere(records, around, by, take);
  const helpers = await startedHelpers(records.length, by);
  const inTurn = records.values();
  const here = oneAtATime(verifierFor(by));
  const work = async (verify: Verifier) => {
    for (const file of inTurn) {
      const finding = await findingAt(file, around, by, verify);
      // A sentence comes from a helper as it was said there. One that is found here can be said in another language later.
      const speaks = finding.fault !== null || finding.doubt !== null;
      take(speaks ? await findingAt(file, around, by, here) : finding);
    }
  };
  try {
    // While a helper verifies one record, the next one is read for it.
    await Promise.all(helpers.map(verifierOf).flatMap((verify) => [work(verify), work(verify)]));
  } finally {
    for (const helper of helpers) post(helper, { kind: 'end' });
  }
};

/** Two records that wait for WebCrypto at once would mix up their signatures. */
function oneAtATime(verify: Verifier): Verifier {
  let before: Promise<unknown> = Promise.resolve();
  return (record) => {
    const found = before.then(() => verify(record));
    before = found.catch(() => undefined);
    return found;
  };
}

async function startedHelpers(records: number, by: ByReader): Promise<readonly MessagePort[]> {
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
