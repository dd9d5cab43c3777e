import { impactsOf } from '../../audit/impact-state.ts';
import type { SignedCheckpoint } from '../../evidence/checkpoint.ts';
import { PACKAGE_FILES } from '../../package/format.ts';
import { type Written, writePackage } from '../../package/write.ts';
import { ProblemError } from '../../problem.ts';
import { impactPaper } from '../../report/impact.ts';
import { vehiclesCsv } from '../../report/impact-csv.ts';
import { writePaper } from '../../report/paper.ts';
import { type Asked, answersTo, filterOf } from '../audit/ask.ts';
import { programVersion } from '../help/version.ts';
import { findings, keptCheckpoint, words } from '../station/log.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import type { StationFolder } from '../station/station.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { madeLines } from './package-text.ts';

interface PackageOptions extends Scope, Asked {
  readonly out: string;
  readonly kept?: string;
  readonly exceptions?: true;
  /** Commander's reading of `--no-papers`. */
  readonly papers?: boolean;
}

/** Makes an audit package of the jobs to which the question applies. */
export function makePackage(options: PackageOptions): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const since = await keptFrom(stationFolder, options.kept);
    if (since === 'diverged') return EXIT.failed;
    const jobs = answersTo(stationFolder, filterOf(options)).filter(
      ({ exceptions }) => options.exceptions !== true || exceptions.length > 0,
    );
    if (jobs.length === 0)
      throw new ProblemError({
        code: 'no-jobs',
        where: 'package',
        message: 'no job matches what was asked for',
        next: 'Look with "plugmark ask".',
      });
    const asked = { ...askedFor(options), ...(options.exceptions === true && { exceptions: 'only' }) };
    const numbers = new Set(jobs.filter(({ state }) => state !== 'open').map(({ job }) => job));
    const made = await writePackage(stationFolder, options.out, {
      purpose: 'Audit',
      asked,
      jobs,
      since,
      told: stationFolder.log.stationEntries(),
      papers: options.papers !== false,
      extra: (log) => impactFiles(stationFolder, numbers, log),
    });
    print(madeLines(options.out, made));
    return EXIT.done;
  });
}

/** The checkpoint that somebody kept; says so where the log does not begin with it, for then nothing more can be proven. */
export async function keptFrom(
  stationFolder: StationFolder,
  file: string | undefined,
): Promise<SignedCheckpoint | null | 'diverged'> {
  if (file === undefined) return null;
  const kept = await keptCheckpoint(file);
  const [finding] = findings(stationFolder, [kept]);
  if (finding === undefined || finding.kind === 'extends') return kept;
  print([words(finding), 'No package was made.']);
  return 'diverged';
}

/** What was asked for, as the index says it. */
export function askedFor({
  vin,
  plate,
  fleet,
  part,
  lot,
  technician,
  tool,
  from,
  to,
}: Asked): Record<string, string> {
  const all = { vin, plate, fleet, part, lot, technician, tool, from, to };
  const named = Object.entries(all).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value.slice(0, 200)] as const],
  );
  return Object.fromEntries(named);
}

/** The papers of impact assessments that touch these jobs, as "plugmark impact show --out" writes them. */
async function impactFiles(
  { log }: StationFolder,
  jobs: ReadonlySet<string>,
  { size, root }: SignedCheckpoint,
): Promise<readonly Written[]> {
  const files: Written[] = [];
  for (const one of impactsOf(log.stationEntries())) {
    if (!one.items.some(({ job }) => jobs.has(job))) continue;
    const stem = `${PACKAGE_FILES.impacts}/${one.assessment}`;
    const context = { log: { size, root: root.toString('hex') }, program: `plugmark ${programVersion()}` };
    files.push([`${stem}.pdf`, await writePaper(impactPaper(one, context))]);
    files.push([`${stem}.vehicles.csv`, Buffer.from(vehiclesCsv(one))]);
  }
  return files;
}
