import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { type Checked, conformance } from '../../../drivers/package/conformance.ts';
import type { Testable } from '../../../drivers/package/contract.ts';
import { loadDriver, loadFolder } from '../../../drivers/package/load.ts';
import { PACKAGE_NAME } from '../../../drivers/package/name.ts';
import { readProfile } from '../../../drivers/profile/file.ts';
import { testableOf } from '../../../sim/devices/examples.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';

interface Tested {
  readonly title: string;
  readonly driver: Testable;
}

/** Runs the conformance suite against a driver by its name or folder, or against a profile. */
export async function test(named: string): Promise<ExitCode> {
  const { title, driver } = await tested(named);
  const checks = conformance(driver);
  print([title, ...checks.flatMap(linesOf), verdictOf(checks)]);
  return checks.some(isFailed) ? EXIT.failed : EXIT.done;
}

async function tested(named: string): Promise<Tested> {
  const isFolder = statSync(named, { throwIfNoEntry: false })?.isDirectory() === true;
  if (isFolder || PACKAGE_NAME.test(named)) {
    const { driver, purl } = isFolder
      ? await loadFolder(resolve(named))
      : await loadDriver(named, process.cwd());
    return {
      title: `${safeLine(driver.title)}: ${safeLine(purl)}`,
      driver: { ...driver, streams: driver.link.kind === 'serial' },
    };
  }
  const profile = orThrow(await readProfile(named));
  return { title: safeLine(profile.title), driver: testableOf(profile) };
}

const isFailed = ({ fault, isWarning }: Checked) => fault !== null && !isWarning;

const linesOf = ({ check, fault, isWarning }: Checked): readonly string[] =>
  fault === null
    ? [`[ok]   ${check}`]
    : [`${isWarning ? '[!]   ' : '[FAIL]'} ${check}`, `       ${safeLine(fault)}`];

function verdictOf(checks: readonly Checked[]): string {
  const failed = checks.filter(isFailed).length;
  return failed === 0
    ? w`Passed. It withstands bad bytes; whether its figures are right, only the display of the tool shows.`
    : w`Not passed: ${failed} of ${checks.length} checks failed.`;
}
