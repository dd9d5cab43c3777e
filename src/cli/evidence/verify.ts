import { stat } from 'node:fs/promises';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import { verifyRecord } from '../../evidence/verify.ts';
import { readBytes } from '../../files/input.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { isPdf } from '../../report/held/pdf-file.ts';
import { VERIFICATION } from '../../report/verification.ts';
import { w } from '../../words/catalogue.ts';
import { printJson } from '../answers/answer.ts';
import { verifiedRecord } from '../answers/verify.ts';
import { now } from '../station/clock.ts';
import { type ExitCode, safeLine } from '../terminal/exit.ts';
import { print, warn } from '../terminal/wrapped.ts';
import { laterLogBeside } from './later-log-file.ts';
import { isPackage } from './package-folder.ts';
import { byPolicyBeside, readersPolicy } from './readers-policy.ts';
import { readersTrust } from './readers-trust.ts';
import { reportLines, warnUnnamed } from './report-lines.ts';
import { trustedTime } from './time-stamp.ts';
import { verifyFolder } from './verify-folder.ts';
import { verifyPackageFolder } from './verify-package.ts';
import { MAX_PAPER_BYTES, verifyPaper } from './verify-paper.ts';

export interface VerifyOptions {
  readonly trust?: string;
  readonly policy?: string;
  readonly json?: true;
  readonly time?: string;
  readonly ca?: string;
  readonly kept?: string;
}

/** Checks a record file, an audit package, or all records in a folder, and says in plain words what was checked. */
export async function verify(path: string, options: VerifyOptions): Promise<ExitCode> {
  const policy = await readersPolicy(options.policy, path);
  if (await isPackage(path)) {
    if (options.time !== undefined) throw new ProblemError(timeOfPackage(path));
    return verifyPackageFolder(path, { ...options, policy: policy?.policy ?? null });
  }
  if (options.kept !== undefined) throw new ProblemError(indexMissing(path));
  const { list: trust, fault, unnamed } = await readersTrust(options.trust, path);
  // A policy that names logs says whom the reader trusts.
  const namesLogs = (policy?.policy.logs.length ?? 0) > 0;
  if (fault !== null && !namesLogs) warn([safeLine(fault())]);
  if (options.json === true) warnUnnamed(unnamed);
  if (await isFolder(path)) return verifyFolder(path, { ...options, trust, unnamed, policy });
  const most = /\.pdf$/i.test(path) ? MAX_PAPER_BYTES : MAX_RECORD_BYTES;
  const bytes = await readBytes(path, w`record`, most);
  if (isPdf(bytes)) return verifyPaper(path, bytes, { ...options, trust, unnamed, policy });
  const time = await trustedTime(bytes, options);
  const report = verifyRecord(
    bytes,
    trust,
    time,
    now(),
    laterLogBeside(path),
    byPolicyBeside(policy?.policy ?? null, path),
  );
  if (options.json === true) printJson(verifiedRecord(path, report));
  else print(reportLines(path, report, unnamed));
  return VERIFICATION[report.verdict].exit;
}

async function isFolder(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    // Reading it says in words what is wrong.
    return false;
  }
}

function timeOfPackage(path: string): Problem {
  return {
    code: 'time-of-package',
    where: path,
    message: w`a time stamp belongs to one record, and this is a package`,
    next: w`Name the record in it, or leave --time out.`,
  };
}

function indexMissing(path: string): Problem {
  return {
    code: 'package-index-missing',
    where: path,
    message: w`the index of the package is missing, so nothing can be held against the checkpoint that you kept`,
    next: w`Check the path, or ask for the package again. Records that are no package are checked without --kept.`,
  };
}
