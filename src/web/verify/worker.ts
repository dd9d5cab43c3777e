/** Reads and verifies what was given, away from the page: a file that takes too long can be given up, and the tab stays alive. */
import './no-eval.ts';
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import { agreed, NoSecondOpinion } from '../../evidence/platform/signature.browser.ts';
import { type Policy, parsePolicy } from '../../evidence/policy.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import { areCertificates } from '../../evidence/time-token.ts';
import { parseTrustList, type TrustedTime, type TrustList } from '../../evidence/trust.ts';
import { trustedTimeIn } from '../../evidence/trusted-time.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { clean } from '../../report/clean.ts';
import { orThrow } from '../../result.ts';
import { ENGLISH, phrases, sentence, speak, w } from '../../words/catalogue.ts';
import { dictionaryIn, type PackedWords } from '../../words/packed.ts';
import { beside } from './beside.ts';
import { type Given, givenFile, Refused, refused } from './given.ts';
import { help } from './helper.ts';
import { helpersStarted, verifyOnAllCores } from './helpers.ts';
import { type Draw, packageShown, type Reading, recordsShown } from './many.ts';
import type { Ask, Asked, Told } from './messages.ts';
import { MAX_PDF_BYTES, recordInPdf } from './pdf.ts';
import { insidePdf, recordShown } from './record.ts';
import type { HeldFiles, NamedFile, RecordShown, Refusal, Shown, TrustShown } from './shown.ts';
import { sorted, subjectOf } from './sorted.ts';
import { filesInZip } from './zip.ts';

const MAX_SMALL_BYTES = 4 << 20;
const tell = (told: Told) => postMessage(told);

addEventListener('message', ({ data }: MessageEvent<Asked>) => {
  if (data.kind === 'files') void answer(data);
  else if (data.kind === 'language') readBy(data.words);
  else if (data.kind === 'help') help(data.port);
  else helpersStarted(data.ports);
});

/** What was found last, to be said again in another language; null while something is being read. */
let found: Found | null = null;

interface Found {
  readonly held: HeldFiles;
  readonly trust: Draw<TrustShown> | null;
  readonly shown: Draw<Shown> | null;
  readonly faults: readonly unknown[];
}

function readBy(words: PackedWords | null): void {
  speak(words === null ? ENGLISH : dictionaryIn(words));
  if (found !== null) tell(answerOf(found, true));
}

function answerOf({ held, trust, shown, faults }: Found, isAgain: boolean): Told {
  const refusals = faults.map(refusalOf);
  const own = ownLines(held);
  try {
    return {
      kind: 'answer',
      isAgain,
      held,
      trust: trust?.() ?? null,
      own,
      shown: shown?.() ?? null,
      refusals,
    };
  } catch (fault) {
    const more = [...refusals, refusalOf(fault)];
    return { kind: 'answer', isAgain, held, trust: null, own, shown: null, refusals: more };
  }
}

async function answer(ask: Ask): Promise<void> {
  found = null;
  const faults: unknown[] = [];
  let { held } = ask;
  const tried = async <T>(work: () => Promise<T>): Promise<T | null> => {
    try {
      return await work();
    } catch (fault) {
      faults.push(fault);
      return null;
    }
  };
  held = (await tried(() => sorted(ask.given, held))) ?? held;
  const trust = held.trust === null ? null : await tried(() => trustIn(held.trust));
  if (trust === null) held = { ...held, trust: null };
  const kept = held.kept === null ? null : await tried(() => keptIn(held.kept));
  if (kept === null) held = { ...held, kept: null };
  const policyFile = held.policy === null ? null : await tried(() => policyIn(held.policy));
  const policy = policyFile?.policy ?? null;
  if (policy === null) held = { ...held, policy: null };
  const namesLogs = (policy?.logs.length ?? 0) > 0;
  const reading: Reading = {
    trust: trust?.list ?? { keys: [] },
    trustFault: trust === null && !namesLogs ? NOBODY_TRUSTED : null,
    policy,
    policyFile: policyFile?.bytes ?? null,
    loose: held.later.map(({ path, file }) => givenFile(path, file)),
    kept,
    readAt: ask.readAt,
    verifyAll: verifyOnAllCores,
    progress,
  };
  const shown = await tried(() => shownOf(ask, held, reading, tried));
  found = { held, trust: trust?.shown ?? null, shown, faults };
  tell(answerOf(found, false));
}

const ownLines = ({ kept, policy, time, authorities }: HeldFiles): readonly string[] =>
  (
    [
      [w`The checkpoint that you kept`, kept],
      [w`Your policy of logs and witnesses`, policy],
      [w`The time stamp`, time],
      [w`The certificates of authorities that you believe`, authorities],
    ] as const
  ).flatMap(([what, file]) => (file === null ? [] : [`${what}: ${clean(file.path)}`]));

const NOBODY_TRUSTED = sentence`You have given no trust list, so that nobody is trusted.`;

const COUNTED: Readonly<Record<string, string>> = phrases({ records: 'records', files: 'files' });

function progress(what: string, total: number) {
  let last = 0;
  return {
    at(done: number) {
      // The page draws no more than a hundred steps.
      if (done < total && done - last < total / 100) return;
      last = done;
      tell({ kind: 'progress', what: COUNTED[what] ?? what, done, total });
    },
    end: () => undefined,
  };
}

/** What fails is refused in words, and the rest goes on. */
type Tried = <T>(work: () => Promise<T>) => Promise<T | null>;

async function shownOf(
  { one }: Ask,
  held: HeldFiles,
  reading: Reading,
  tried: Tried,
): Promise<Draw<Shown> | null> {
  const subject = await subjectOf(held, filesInZip);
  if (subject === null) return null;
  const files = subject.as === 'record' ? [] : subject.files;
  const chosen = one === null ? undefined : files.find(({ path }) => path === one);
  const single = subject.as === 'record' ? subject : chosen && { file: chosen, inPdf: false };
  if (single !== undefined) {
    const bytes = await recordBytes(single);
    const time = await tried(() => timeOf(bytes, held));
    const shown = await oneRecord({ path: single.file.path, bytes, time, files }, reading);
    return single.inPdf ? () => insidePdf(shown()) : shown;
  }
  if (subject.as === 'record') return null;
  if (held.time !== null) await tried(() => Promise.reject(timeOfMany(subject.name ?? '')));
  if (subject.as === 'package') return packageShown(subject.name, subject.files, reading);
  const records = await recordsShown(subject.name, subject.files, reading);
  if (records === null)
    throw refused(
      'no-records',
      subject.name ?? '',
      () => w`no file in this folder ends in .record.json`,
      () => w`Choose a folder that holds records, or a package.`,
    );
  return records;
}

const recordBytes = async ({ file, inPdf }: { readonly file: Given; readonly inPdf: boolean }) =>
  inPdf ? recordInPdf(file.path, await file.read(MAX_PDF_BYTES)) : file.read(MAX_RECORD_BYTES);

async function oneRecord(
  {
    path,
    bytes,
    time,
    files,
  }: {
    readonly path: string;
    readonly bytes: Uint8Array;
    readonly time: TrustedTime | null;
    readonly files: readonly Given[];
  },
  { trust, policy, loose, readAt }: Reading,
): Promise<Draw<RecordShown>> {
  const given = { files, loose };
  const later = await beside(path, '.proof', given);
  const byPolicy = policy && { policy, note: await beside(path, '.witnessed', given) };
  const report = await agreed(() => verifyRecord(bytes, trust, time, readAt, later, byPolicy));
  return () => recordShown(path, bytes, report);
}

/** Null where no time stamp was given. Problem: `time-ca`. */
async function timeOf(record: Uint8Array, { time, authorities }: HeldFiles): Promise<TrustedTime | null> {
  if (time === null) return null;
  const next = () => w`Add the certificates of the authority as PEM.`;
  if (authorities === null)
    throw refused('time-ca', time.path, () => w`nothing says which authority to believe`, next);
  const pem = new TextDecoder('latin1').decode(await small(authorities));
  if (!areCertificates(pem))
    throw refused('time-ca', authorities.path, () => w`there is no certificate here`, next);
  return trustedTimeIn(await small(time), pem, record);
}

const timeOfMany = (name: string) =>
  refused(
    'time-of-package',
    name,
    () => w`a time stamp belongs to one record, and these are many`,
    () => w`Open the record in it. The time stamp is left out here.`,
  );

const small = ({ path, file }: NamedFile) => givenFile(path, file).read(MAX_SMALL_BYTES);

async function trustIn(
  named: NamedFile | null,
): Promise<{ list: TrustList; shown: Draw<TrustShown> } | null> {
  if (named === null) return null;
  const list = orThrow(parseTrustList(await small(named), named.path));
  return { list, shown: () => ({ file: clean(named.path), keys: list.keys.map(keyShown) }) };
}

const keyShown = ({ kid, name, role, revoked }: TrustList['keys'][number]) => ({
  name: clean(name ?? w`no name`),
  kid,
  note: [role === undefined ? '' : ROLES[role], revoked === undefined ? '' : w`revoked from ${revoked.from}`]
    .filter((text) => text !== '')
    .join(', '),
});

const ROLES = phrases({ station: 'station', technician: 'technician', countersigner: 'countersigner' });

async function policyIn(named: NamedFile | null): Promise<{ bytes: Uint8Array; policy: Policy } | null> {
  if (named === null) return null;
  const bytes = await small(named);
  return { bytes, policy: orThrow(parsePolicy(bytes, named.path)) };
}

const keptIn = async (named: NamedFile | null) =>
  named === null ? null : orThrow(readCheckpoint(await small(named), named.path));

function refusalOf(fault: unknown): Refusal {
  const problem = problemOf(fault);
  return { where: clean(problem.where ?? ''), what: clean(problem.message), next: clean(problem.next) };
}

function problemOf(fault: unknown): Problem {
  if (fault instanceof Refused) return fault.again();
  if (fault instanceof ProblemError) return fault.problem;
  if (fault instanceof NoSecondOpinion)
    return {
      code: 'browser-too-old',
      message: w`this browser cannot check the signatures (Ed25519), so nothing is said about the file`,
      next: w`Open the page in a newer browser.`,
    };
  return {
    code: 'bug',
    message: w`a fault in the page itself: ${fault instanceof Error ? fault.message : String(fault)}`,
    next: w`Check the file with "plugmark verify", and report the fault.`,
  };
}
