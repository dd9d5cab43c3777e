import { join } from 'node:path';
import type { Policy } from '../../evidence/policy.ts';
import { type PackageReport, verifyPackage } from '../../package/verify.ts';
import { notProven } from '../../report/package-words.ts';
import { VERIFICATION } from '../../report/verification.ts';
import { printJson } from '../answers/answer.ts';
import { verifiedPackage } from '../answers/verify.ts';
import { now } from '../station/clock.ts';
import { keptCheckpoint } from '../station/log-check.ts';
import type { ExitCode } from '../terminal/exit.ts';
import { progress } from '../terminal/progress.ts';
import { print } from '../terminal/wrapped.ts';
import { folderToRead, pathIn } from './package-folder.ts';
import { checkReadings } from './package-readings.ts';
import { type ReadersTrust, readersTrust } from './readers-trust.ts';
import { warnUnnamed } from './report-lines.ts';
import { verifyFiles } from './verify-files.ts';
import { packageLines } from './verify-package-text.ts';

interface PackageOptions {
  readonly trust?: string;
  readonly kept?: string;
  readonly policy: Policy | null;
  readonly json?: true;
}

/** Verifies the package in a folder, its records on all cores. */
export async function verifyPackageFolder(folder: string, options: PackageOptions): Promise<ExitCode> {
  const trust = await readersTrust(options.trust, folder);
  const report = await reportOn(folder, options, trust);
  const { verdict, checks, index, withheld, unproven } = report;
  const questioned = index.jobs.filter(({ impacts }) => impacts.length > 0);
  if (options.json === true) {
    warnUnnamed(trust.unnamed);
    printJson(
      verifiedPackage({
        folder,
        verdict,
        checks,
        withheld,
        unproven,
        questioned,
        notProven: notProven(report),
      }),
    );
  } else print(packageLines(folder, report, trust.unnamed));
  return VERIFICATION[verdict].exitOfMany;
}

async function reportOn(
  folder: string,
  options: PackageOptions,
  { list: trust, fault: trustFault }: ReadersTrust,
): Promise<PackageReport> {
  const kept = options.kept === undefined ? null : await keptCheckpoint(options.kept);
  return verifyPackage(folderToRead(folder), {
    trust,
    policy: options.policy,
    trustFault: (options.policy?.logs.length ?? 0) > 0 ? null : trustFault,
    kept,
    progress,
    checkReadings: (index, log) => checkReadings(folder, index, log),
    readAt: now(),
    verifyRecords: (paths, take) =>
      verifyFiles(
        paths.map((path) => join(folder, path)),
        { trust, policy: null },
        (some) => take(some.map((finding) => ({ ...finding, file: pathIn(folder, finding.file) }))),
      ),
  });
}
