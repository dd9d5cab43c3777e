import { stat } from 'node:fs/promises';
import { COMPLETENESS } from '../../evidence/completeness.ts';
import { TECHNICIAN_WORDS } from '../../evidence/signers.ts';
import { EXIT_CODES, type VerificationReport, verifyRecord } from '../../evidence/verify.ts';
import { readBytes } from '../../files/input.ts';
import { ProblemError } from '../../problem.ts';
import { printJson } from '../answers/answer.ts';
import { verifiedRecord } from '../answers/verify.ts';
import { type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { MAX_RECORD_BYTES } from '../verify-limit.ts';
import { isPackage, readersTrust } from './readers-trust.ts';
import { trustedTime } from './time-stamp.ts';
import { verifyFolder } from './verify-folder.ts';
import { verifyPackage } from './verify-package.ts';

export interface VerifyOptions {
  readonly trust?: string;
  readonly json?: true;
  readonly time?: string;
  readonly ca?: string;
  readonly kept?: string;
}

const HEADLINE: Readonly<Record<VerificationReport['verdict'], string>> = {
  authentic: 'AUTHENTIC and complete, signed by a trusted station.',
  incomplete: 'AUTHENTIC, signed by a trusted station, but NOT COMPLETE: not all of the job is proven.',
  rejected: 'NOT authentic. Do not rely on it.',
  unreadable: 'This file is not a job record.',
  untrusted: 'As it was sealed, but the station that signed is NOT trusted.',
  'other-rules': 'AUTHENTIC, but judged by rules that this version does not know: NOT judged again.',
};
const MARK = { passed: '[ok]  ', failed: '[FAIL]', 'not-applicable': '[-]   ' } as const;

/** Checks a record file, an audit package, or all records in a folder, and says in plain words what was checked. */
export async function verify(path: string, options: VerifyOptions): Promise<ExitCode> {
  if (await isPackage(path)) {
    if (options.time !== undefined) throw new ProblemError(timeOfPackage(path));
    return verifyPackage(path, options);
  }
  if (options.kept !== undefined) throw new ProblemError(indexMissing(path));
  const { list: trust, fault } = await readersTrust(options.trust, path);
  if (fault !== null) process.stderr.write(`${safeLine(fault)}\n`);
  if (await isFolder(path)) return verifyFolder(path, { ...options, trust });
  const bytes = await readBytes(path, 'record', MAX_RECORD_BYTES);
  const time = await trustedTime(bytes, options);
  const readAt = new Date().toISOString();
  const report = verifyRecord(bytes, trust, time, readAt);
  if (options.json === true) printJson(verifiedRecord(path, report));
  else print(reportLines(path, report));
  return EXIT_CODES[report.verdict];
}

/** The findings as lines for people. */
export function reportLines(file: string, report: VerificationReport): string[] {
  const { record, checks, verdict } = report;
  return [
    `${safeLine(file)}: ${HEADLINE[verdict]}${alsoIncomplete(report)}`,
    ...(record === null
      ? []
      : [
          `  job ${safeLine(record.job)}, station ${safeLine(record.station)}, ${record.entries.length} entries; ${TECHNICIAN_WORDS[record.technicianSignature]}`,
        ]),
    ...checks.map(({ name, outcome, detail }) => `  ${MARK[outcome]} ${name.padEnd(13)} ${safeLine(detail)}`),
  ];
}

/** A verdict that weighs more does not hide that the job is not complete. */
function alsoIncomplete({ verdict, checks }: VerificationReport): string {
  const incomplete = checks.some(({ name, outcome }) => name === COMPLETENESS && outcome === 'failed');
  return incomplete && (verdict === 'untrusted' || verdict === 'other-rules')
    ? ' It is NOT COMPLETE either.'
    : '';
}

async function isFolder(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    // Reading it says in words what is wrong.
    return false;
  }
}

function timeOfPackage(path: string) {
  return {
    code: 'time-of-package',
    where: path,
    message: 'a time stamp belongs to one record, and this is a package',
    next: 'Name the record in it, or leave --time out.',
  };
}

function indexMissing(path: string) {
  return {
    code: 'package-index-missing',
    where: path,
    message:
      'the index of the package is missing, so nothing can be held against the checkpoint that you kept',
    next: 'Check the path, or ask for the package again. Records that are no package are checked without --kept.',
  };
}
