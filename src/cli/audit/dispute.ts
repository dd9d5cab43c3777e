import { z } from 'zod';
import type { JobOfVehicle } from '../../audit/dispute.ts';
import { impactsOf } from '../../audit/impact-state.ts';
import type { JobAnswer } from '../../audit/questions.ts';
import type { StationEntry } from '../../evidence/log.ts';
import { toHex } from '../../evidence/platform/bytes.ts';
import { withoutTexts } from '../../evidence/sharing.ts';
import { foldAll } from '../../job/fold.ts';
import { normalVin } from '../../job/vin.ts';
import { PACKAGE_FILES } from '../../package/format.ts';
import { bearingOn } from '../../package/station-entries.ts';
import { isWithheld } from '../../personal.ts';
import { ProblemError } from '../../problem.ts';
import type { ProblemCode } from '../../problem-code.ts';
import { disputePaper } from '../../report/dispute.ts';
import { DISPUTE_PAPER } from '../../report/held/package-papers.ts';
import { writePaper } from '../../report/paper-pdf.ts';
import { plural, w } from '../../words/catalogue.ts';
import type { Asked } from '../declare/filters.ts';
import { askedFor } from '../evidence/package.ts';
import { madeLines } from '../evidence/package-text.ts';
import { keptFrom, writePackage } from '../evidence/write-package.ts';
import { programVersion } from '../help/version.ts';
import { type AudienceOptions, audienceOf } from '../station/audience.ts';
import { readerOf } from '../station/paper-reader.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { type StationFolder, stateOf } from '../station/station.ts';
import { EXIT, type ExitCode, safeLine } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { answersForPrograms, filterOf } from './ask.ts';
import { recordsOf } from './records.ts';

interface DisputeOptions
  extends Scope,
    AudienceOptions,
    Pick<Asked, 'vin' | 'plate' | 'fleet' | 'from' | 'to'> {
  readonly claim: string;
  readonly out: string;
  readonly kept?: string;
  /** Commander's reading of `--no-papers`. */
  readonly papers?: boolean;
}

/** The file on one claim about one vehicle: a package of its jobs, with a paper that says what was known when. */
export function dispute(options: DisputeOptions): Promise<ExitCode> {
  return withStationFolder(options, async (stationFolder) => {
    const audience = await audienceOf(options);
    const claim = claimOf(options.claim);
    const jobs = await jobsOfVehicle(stationFolder, options);
    const since = await keptFrom(stationFolder, options.kept);
    if (since === 'diverged') return EXIT.failed;
    const { name } = stateOf(stationFolder);
    const entries = stationFolder.log.stationEntries();
    const jobsOpened = [...jobs].sort(byOpening).map(({ stream }) => jobOf(stationFolder, stream));
    const bearing = bearingOn(
      entries,
      jobsOpened.map(({ state }) => state),
    );
    const given = ofTheseAlone(bearing, new Set(jobs.map(({ job }) => job)));
    const made = await writePackage(stationFolder, options.out, {
      purpose: 'dispute',
      claim,
      asked: askedFor(options),
      jobs,
      since,
      stationEntries: given,
      without: new Set(),
      papers: options.papers !== false,
      audience,
      // From what the package holds and nothing else, so that whoever has it can hold the paper against it.
      extra: async ({ log, at }) => {
        const paper = () =>
          disputePaper({
            claim,
            jobs: jobsOpened,
            station: { name, entries: given, impacts: impactsOf(given) },
            log: { size: log.size, root: toHex(log.root) },
            program: `plugmark ${programVersion()}`,
            madeAt: at,
          });
        return [[DISPUTE_PAPER, await writePaper(paper, { reader: await readerOf(audience) })]];
      },
    });
    const lines = [
      ...madeLines(options.out, made),
      ...ofOthers(bearing, new Set(jobs.map(({ job }) => job))),
      ...mayBeToo(stationFolder, jobs),
    ];
    print(lines);
    return EXIT.done;
  });
}

/** By opening: a job that was declared void or resumed is last in the list of jobs, but was not opened last. */
const byOpening = (a: JobAnswer, b: JobAnswer) =>
  a.openedAt < b.openedAt ? -1 : a.openedAt > b.openedAt ? 1 : 0;

function jobOf({ log }: StationFolder, stream: string): JobOfVehicle {
  const entries = log.entries(stream);
  const state = foldAll(entries.map(({ event }) => event));
  if (state === null) throw new Error(`${stream} holds no job`);
  return { state, entries };
}

/** The jobs of one vehicle, the latest first. */
async function jobsOfVehicle(
  stationFolder: StationFolder,
  options: DisputeOptions,
): Promise<readonly JobAnswer[]> {
  const { vin, plate, fleet } = options;
  if (vin === undefined && plate === undefined && fleet === undefined)
    throw problem('vehicle-missing', w`no vehicle is named`, w`Name it with --vin, --plate or --fleet.`);
  const jobs = await answersForPrograms(recordsOf(stationFolder.log), filterOf(options));
  if (jobs.length === 0)
    throw problem(
      'vehicle-unknown',
      w`this station has no job on this vehicle in that time`,
      w`Look with "plugmark ask"; an older job may have only its plate.`,
    );
  const vins = new Set(
    jobs.flatMap((job) => (job.vin === null || isWithheld(job.vin) ? [] : [normalVin(job.vin)])),
  );
  if (vins.size > 1)
    throw problem(
      'vehicle-not-one',
      w`these jobs are of ${vins.size} vehicles: ${[...vins].join(', ')}`,
      w`Name the one of the claim with --vin.`,
    );
  return jobs;
}

/**
 * An entry of the log proves something only as a whole, and an impact assessment names all jobs that it touches: what it
 * says of the vehicles of others, and why something was decided about them, is withheld.
 */
const ofTheseAlone = (entries: readonly StationEntry[], jobs: ReadonlySet<string>): readonly StationEntry[] =>
  withoutTexts(entries, ({ event }, { place }) => {
    const [, list, item] = place;
    if (event.type === 'item-decided') return list === 'because' && !jobs.has(event.job);
    if (event.type !== 'assessment-made' || list !== 'items' || typeof item !== 'number') return false;
    return !jobs.has(event.items[item]?.job ?? '');
  });

/** Of how many other vehicles it tells. */
function ofOthers(entries: readonly StationEntry[], jobs: ReadonlySet<string>): readonly string[] {
  const others = impactsOf(entries).flatMap(({ assessment, items }) => {
    const count = items.filter(({ job }) => !jobs.has(job)).length;
    return count === 0
      ? []
      : [w`${assessment} names ${plural(count, { one: '# job', other: '# jobs' })} on other vehicles`];
  });
  if (others.length === 0) return [];
  return [
    w`  In ${PACKAGE_FILES.station} ${others.join(', ')}: of these only the figures are in it; what names the vehicles is withheld.`,
  ];
}

/** Jobs with the same plate or fleet number and without a VIN: only a person can say whether it is the same vehicle. */
function mayBeToo(stationFolder: StationFolder, jobs: readonly JobAnswer[]): readonly string[] {
  const known = new Set(jobs.map(({ stream }) => stream));
  const numbers = [...new Set(jobs.flatMap(({ plate }) => (plate === null ? [] : [plate])))].map((plate) => ({
    plate,
  }));
  const fleets = [...new Set(jobs.flatMap(({ fleet }) => (fleet === null ? [] : [fleet])))].map((fleet) => ({
    fleet,
  }));
  const others = [...numbers, ...fleets]
    .flatMap((filter) => stationFolder.log.history.jobsOf(filter))
    .filter(({ stream, vin }) => vin === null && !known.has(stream));
  const names = [...new Set(others.map(({ job }) => job))];
  if (names.length === 0) return [];
  return [
    w`  Left out: ${safeLine(names.join(', '))}, without a VIN but with the same plate or fleet number. Name --plate or --fleet to include them.`,
  ];
}

function claimOf(text: string): string {
  const claim = z.string().min(1).max(80).safeParse(text.trim());
  if (claim.success) return claim.data;
  throw problem(
    'option-not-valid',
    w`a claim has a number or a name of 1 to 80 characters`,
    w`Give it with --claim.`,
  );
}

const problem = (code: ProblemCode, message: string, next: string) =>
  new ProblemError({ code, message, next });
