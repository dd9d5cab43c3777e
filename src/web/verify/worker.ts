/** Reads and verifies what was given, away from the page: a file that takes too long can be given up, and the tab stays alive. */
import './no-eval.ts';
import { readCheckpoint } from '../../evidence/checkpoint.ts';
import { type LaterLog, parseLaterLog } from '../../evidence/later-log.ts';
import { agreed, NoSecondOpinion } from '../../evidence/platform/signature.browser.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import { parseTrustList, type TrustList } from '../../evidence/trust.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { clean } from '../../report/clean.ts';
import { orThrow } from '../../result.ts';
import { givenFile, refused } from './given.ts';
import { packageShown, type Reading, recordsShown } from './many.ts';
import { MAX_PDF_BYTES, recordInPdf } from './pdf.ts';
import { recordShown } from './record.ts';
import type { Ask, HeldFiles, NamedFile, Refusal, Shown, Told, TrustShown } from './shown.ts';
import { type Subject, sorted, subjectOf } from './sorted.ts';
import { filesInZip } from './zip.ts';

const MAX_SMALL_BYTES = 4 << 20;
const tell = (told: Told) => postMessage(told);

addEventListener('message', ({ data }: MessageEvent<Ask>) => void answer(data));
tell({ kind: 'ready' });

async function answer(ask: Ask): Promise<void> {
  const refusals: Refusal[] = [];
  let { held } = ask;
  const tried = async <T>(work: () => Promise<T>): Promise<T | null> => {
    try {
      return await work();
    } catch (fault) {
      refusals.push(refusalOf(fault));
      return null;
    }
  };
  held = (await tried(() => sorted(ask.given, held))) ?? held;
  const trust = held.trust === null ? null : await tried(() => trustIn(held.trust));
  if (trust === null) held = { ...held, trust: null };
  const kept = held.kept === null ? null : await tried(() => keptIn(held.kept));
  if (kept === null) held = { ...held, kept: null };
  const reading: Reading = {
    trust: trust?.list ?? { keys: [] },
    trustFault: trust === null ? NOBODY_TRUSTED : null,
    kept,
    readAt: ask.readAt,
    progress,
  };
  const shown = await tried(() => shownOf(ask, held, reading));
  tell({
    kind: 'answer',
    held,
    trust: trust?.shown ?? null,
    kept: held.kept?.path ?? null,
    shown,
    refusals,
  });
}

const NOBODY_TRUSTED = 'You have given no trust list, so that nobody is trusted.';

function progress(what: string, total: number) {
  let last = 0;
  return {
    at(done: number) {
      // The page draws no more than a hundred steps.
      if (done < total && done - last < total / 100) return;
      last = done;
      tell({ kind: 'progress', what, done, total });
    },
    end: () => undefined,
  };
}

async function shownOf({ one }: Ask, held: HeldFiles, reading: Reading): Promise<Shown | null> {
  const subject = await subjectOf(held, filesInZip);
  if (subject === null) return null;
  if (subject.as === 'record') return oneRecord(subject, held, reading);
  const chosen = one === null ? undefined : subject.files.find(({ path }) => path === one);
  if (chosen !== undefined) return oneRecord({ as: 'record', file: chosen, inPdf: false }, held, reading);
  if (subject.as === 'package') return packageShown(subject.name, subject.files, reading);
  const records = await recordsShown(subject.name, subject.files, reading);
  if (records === null)
    throw refused(
      'no-records',
      subject.name,
      'no file in this folder ends in .record.json',
      'Choose a folder that holds records, or a package.',
    );
  return records;
}

async function oneRecord(
  { file, inPdf }: Extract<Subject, { as: 'record' }>,
  held: HeldFiles,
  { trust, readAt }: Reading,
): Promise<Shown> {
  const bytes = inPdf
    ? await recordInPdf(file.path, await file.read(MAX_PDF_BYTES))
    : await file.read(MAX_RECORD_BYTES);
  const later = await laterFor(file.path, held);
  const report = await agreed(() => verifyRecord(bytes, trust, null, readAt, later));
  return recordShown(file.path, bytes, report);
}

/** The proof that lies beside the record by its name, or the only one that was given. */
async function laterFor(path: string, { later }: HeldFiles): Promise<LaterLog | null> {
  const own =
    later.find((one) => one.path === `${path}.proof`) ?? (later.length === 1 ? later[0] : undefined);
  if (own === undefined) return null;
  return orThrow(parseLaterLog(await small(own), own.path));
}

const small = ({ path, file }: NamedFile) => givenFile(path, file).read(MAX_SMALL_BYTES);

async function trustIn(named: NamedFile | null): Promise<{ list: TrustList; shown: TrustShown } | null> {
  if (named === null) return null;
  const list = orThrow(parseTrustList(await small(named), named.path));
  const keys = list.keys.map(({ kid, name, role, revoked }) => ({
    name: clean(name ?? 'no name'),
    kid,
    note: [role ?? '', revoked === undefined ? '' : `revoked from ${revoked.from}`]
      .filter((text) => text !== '')
      .join(', '),
  }));
  return { list, shown: { file: clean(named.path), keys } };
}

const keptIn = async (named: NamedFile | null) =>
  named === null ? null : orThrow(readCheckpoint(await small(named), named.path));

function refusalOf(fault: unknown): Refusal {
  const problem = problemOf(fault);
  return { where: clean(problem.where ?? ''), what: clean(problem.message), next: clean(problem.next) };
}

function problemOf(fault: unknown): Problem {
  if (fault instanceof ProblemError) return fault.problem;
  if (fault instanceof NoSecondOpinion)
    return {
      code: 'browser-too-old',
      message: 'this browser cannot check the signatures (Ed25519), so nothing is said about the file',
      next: 'Open the page in a newer browser.',
    };
  return {
    code: 'bug',
    message: `a fault in the page itself: ${fault instanceof Error ? fault.message : String(fault)}`,
    next: 'Check the file with "plugmark verify", and report the fault.',
  };
}
