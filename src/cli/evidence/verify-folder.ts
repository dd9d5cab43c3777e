import { readdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { TrustList } from '../../evidence/trust.ts';
import { EXIT_CODES, type Verdict } from '../../evidence/verify.ts';
import { onAllCores } from '../../files/threads.ts';
import { type Finding, findingOf, findingsSchema, simulatedText } from '../../package/finding.ts';
import { ProblemError } from '../../problem.ts';
import { printJson } from '../answers/answer.ts';
import { verifiedFolder } from '../answers/verify.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { progress } from '../terminal/progress.ts';
import { print } from '../terminal/wrapped.ts';

const SUFFIX = '.record.json';

/**
 * Checks every record in a folder and below it, on all cores; one line for each that is not authentic, a bar on the way,
 * and the counts. The exit code is the gravest of any file.
 */
export async function verifyFolder(
  folder: string,
  options: { readonly trust: TrustList; readonly json?: true },
): Promise<ExitCode> {
  // With its types, so that nobody is led round by links to folders.
  const found = await readdir(folder, { recursive: true, withFileTypes: true });
  const files = found
    .filter((entry) => !entry.isDirectory() && entry.name.endsWith(SUFFIX))
    .map(({ parentPath, name }) => join(parentPath, name))
    .sort();
  if (files.length === 0) throw new ProblemError(noRecords(folder));
  const findings: Finding[] = [];
  const bar = progress('records', files.length);
  await spread(files, options.trust, (some) => {
    findings.push(...some);
    bar.at(findings.length);
  });
  bar.end();
  findings.sort((a, b) => (a.file < b.file ? -1 : 1));
  if (options.json === true) printJson(verifiedFolder(folder, findings));
  else print(linesOf(findings));
  return gravest(findings);
}

function linesOf(findings: readonly Finding[]): readonly string[] {
  const bad = findings.filter(({ verdict }) => verdict !== 'authentic');
  const count = (wanted: Verdict) => findings.filter(({ verdict }) => verdict === wanted).length;
  const lines = bad.map(
    ({ file, verdict, fault }) =>
      `${WORD[verdict].toUpperCase()} ${safeLine(file)}: ${safeLine(fault ?? '')}`,
  );
  const counts = GRAVITY.toReversed()
    .filter((verdict) => verdict === 'authentic' || count(verdict) > 0)
    .map((verdict) => `${count(verdict)} ${WORD[verdict]}`);
  const simulated = simulatedText(findings);
  const total = `${findings.length} records: ${counts.join(', ')}`;
  return [...lines, total, ...(simulated === '' ? [] : [simulated])];
}

const WORD: Readonly<Record<Verdict, string>> = {
  authentic: 'authentic',
  incomplete: 'authentic but not complete',
  rejected: 'not authentic',
  unreadable: 'unreadable',
  untrusted: 'untrusted',
  'other-rules': 'not judged again',
};

const GRAVITY: readonly Verdict[] = [
  'rejected',
  'unreadable',
  'untrusted',
  'other-rules',
  'incomplete',
  'authentic',
];

/** Of many records it is asked whether they are what was sealed; that some jobs were not finished is no fault of theirs. */
function gravest(findings: readonly Finding[]): ExitCode {
  const worst = GRAVITY.find((verdict) => findings.some((one) => one.verdict === verdict));
  if (worst === undefined) return EXIT.failed;
  return worst === 'incomplete' ? EXIT.done : EXIT_CODES[worst];
}

/** So few are checked sooner than a thread has started. */
const FEW = 8;

/** Checks the files on all cores. */
export async function spread(
  files: readonly string[],
  trust: TrustList,
  take: (findings: readonly Finding[]) => void,
): Promise<void> {
  if (files.length <= FEW) return take(files.map((file) => findingOf(file, trust)));
  await onAllCores({ ...THREAD, workerData: { trust } }, files, (answer) =>
    take(findingsSchema.parse(answer)),
  );
}

const THREAD = {
  built: new URL('../../package/verify-worker.js', import.meta.url),
  source: new URL('../../package/verify-worker.ts', import.meta.url),
  batch: 16,
};

function noRecords(folder: string) {
  return {
    code: 'no-records',
    where: folder,
    message: `no file in this folder ends in ${SUFFIX}`,
    next: 'Name a folder that holds records.',
  };
}
