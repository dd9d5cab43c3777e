import { type Kinds, withoutKinds } from '../../evidence/sharing.ts';
import type { PackageIndex } from '../../package/format.ts';
import type { NewFile } from '../../package/make.ts';
import { ProblemError } from '../../problem.ts';
import { type ForPeople, impactFiles } from '../../report/held/package-papers.ts';
import { PAPER_MAKERS } from '../../report/held/paper-makers.ts';
import { writePaper } from '../../report/paper-pdf.ts';
import type { PaperReader } from '../../report/reader.ts';
import { w } from '../../words/catalogue.ts';
import { answersForPrograms, filterOf } from '../audit/ask.ts';
import { recordsOf } from '../audit/records.ts';
import { type Asked, askedIn } from '../declare/filters.ts';
import { programVersion } from '../help/version.ts';
import { type AudienceOptions, audienceOf } from '../station/audience.ts';
import { readerOf } from '../station/paper-reader.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { kindsIn } from './kinds.ts';
import { madeLines } from './package-text.ts';
import { keptFrom, writePackage } from './write-package.ts';

interface PackageOptions extends Scope, Asked, AudienceOptions {
  readonly out: string;
  readonly kept?: string;
  readonly exceptions?: true;
  readonly without?: string;
  /** Commander's reading of `--no-papers`. */
  readonly papers?: boolean;
}

/** Makes an audit package of the jobs to which the question applies. */
export function makePackage(options: PackageOptions): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const audience = await audienceOf(options);
    const without: Kinds = options.without === undefined ? new Set() : kindsIn(options.without);
    const since = await keptFrom(stationFolder, options.kept);
    if (since === 'diverged') return EXIT.failed;
    const jobs = (await answersForPrograms(recordsOf(stationFolder.log), filterOf(options))).filter(
      ({ exceptions }) => options.exceptions !== true || exceptions.length > 0,
    );
    if (jobs.length === 0)
      throw new ProblemError({
        code: 'nothing-matches',
        where: 'package',
        message: w`no job matches what was asked for`,
        next: w`Look with "plugmark ask".`,
      });
    const asked = { ...askedFor(options), ...(options.exceptions === true && { exceptions: 'only' }) };
    const numbers = new Set(jobs.filter(({ state }) => state !== 'open').map(({ job }) => job));
    const made = await writePackage(stationFolder, options.out, {
      purpose: 'audit',
      asked,
      jobs,
      since,
      stationEntries: stationFolder.log.stationEntries(),
      without,
      papers: options.papers !== false,
      audience,
      extra: async ({ log }) => {
        const reader = await readerOf(audience);
        const entries = withoutKinds(stationFolder.log.stationEntries(), without);
        const program = `plugmark ${programVersion()}`;
        const files = impactFiles(entries, numbers, { log, program });
        return Promise.all(files.map((file) => written(file, reader)));
      },
    });
    print(madeLines(options.out, made));
    return EXIT.done;
  });
}

const PERSONAL: ReadonlySet<string> = new Set<keyof Asked>(['vin', 'plate', 'fleet', 'technician']);

/** What was asked for, as the index says it, which is signed: of what is personal, no more than that it was asked for. */
export const askedFor = (options: Asked): PackageIndex['asked'] =>
  Object.fromEntries(
    Object.entries(askedIn(options)).map(([name, value]) => [
      name,
      PERSONAL.has(name) ? null : value.slice(0, 200),
    ]),
  );

const written = async ({ path, content }: ForPeople, reader: PaperReader): Promise<NewFile> => [
  path,
  typeof content === 'string'
    ? Buffer.from(content)
    : await writePaper(() => content(PAPER_MAKERS), { reader }),
];
