/** A package of a station's jobs, in a folder: what the commands `package` and `dispute` share. */

import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { JobAnswer } from '../../audit/questions.ts';
import type { SignedCheckpoint } from '../../evidence/checkpoint.ts';
import { MAX_RECORD_BYTES } from '../../evidence/record.ts';
import type { Kinds } from '../../evidence/sharing.ts';
import { parseTrustList } from '../../evidence/trust.ts';
import { readBytes } from '../../files/input.ts';
import type { PackageIndex } from '../../package/format.ts';
import { type Contents, makePackage, type NewFile } from '../../package/make.ts';
import { type PersonalKind, WITHHELD } from '../../personal.ts';
import { jobsCsv } from '../../report/ask-csv.ts';
import { READ_ME, readMe, VERIFY_PAGE } from '../../report/read-me.ts';
import { ANYBODY, type Audience, madeFor } from '../../report/reader.ts';
import { purposeText } from '../../report/words/index.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';
import { programVersion } from '../help/version.ts';
import { now } from '../station/clock.ts';
import { findings, keptCheckpoint, words } from '../station/log-check.ts';
import { cosignedBefore } from '../station/log-witness.ts';
import { newCheckpoint } from '../station/sign-log.ts';
import { type StationFolder, stateOf } from '../station/station.ts';
import { currentKey } from '../station/station-keys.ts';
import { progress } from '../terminal/progress.ts';
import { print } from '../terminal/wrapped.ts';
import { emptyFolder } from './package-folder.ts';
import { drawPackagePapers } from './package-papers.ts';
import { emptyPage } from './page.ts';

interface Wanted
  extends Pick<Contents, 'purpose' | 'claim' | 'asked' | 'since' | 'stationEntries' | 'without'> {
  readonly jobs: readonly JobAnswer[];
  /** Each record for people as well. */
  readonly papers: boolean;
  /** Whom papers are for. */
  readonly audience: Audience;
  /** Files for people beside those of every package. */
  readonly extra: (made: {
    readonly log: SignedCheckpoint;
    readonly at: string;
  }) => Promise<readonly NewFile[]>;
}

export async function writePackage(
  stationFolder: StationFolder,
  folder: string,
  { papers, audience, extra, ...wanted }: Wanted,
): Promise<PackageIndex> {
  const out = await emptyFolder(folder);
  const station = stateOf(stationFolder);
  const key = await currentKey(stationFolder.folder, station);
  const at = now();
  return makePackage(
    {
      station,
      key: key.privateKey,
      log: stationFolder.log,
      checkpoint: await newCheckpoint(stationFolder, { state: station, key }),
      cosigned: cosignedIn(stationFolder),
      trustList: await trustListWithout(stationFolder.trustFile, wanted.without),
      recordsBefore: (job) => recordsBefore(stationFolder.folder, job),
    },
    out,
    {
      ...wanted,
      drawPapers: papers ? (jobs, take) => drawPackagePapers(folder, jobs, audience, take) : null,
      extra: async (log) => [
        ['jobs.csv', Buffer.from(jobsCsv(wanted.jobs.map((job) => withheldFrom(job, wanted.without))))],
        [READ_ME, Buffer.from(madeFor(ANYBODY, () => readMe(station.name, key.kid, purposeText(wanted))))],
        [VERIFY_PAGE, Buffer.from(await emptyPage())],
        ...(await extra({ log, at })),
      ],
    },
    { at, version: programVersion(), progress },
  );
}

/** A note that does not fit the log is left at home: nothing in a package is to contradict it. */
function cosignedIn(stationFolder: StationFolder): SignedCheckpoint | null {
  const cosigned = cosignedBefore(stationFolder.folder);
  if (cosigned === null) return null;
  return findings(stationFolder, [cosigned])[0]?.kind === 'extends' ? cosigned : null;
}

/** The row of a job as it is given away. */
function withheldFrom(job: JobAnswer, without: Kinds): JobAnswer {
  const shown = (kind: PersonalKind, text: string | null) =>
    text !== null && without.has(kind) ? WITHHELD : text;
  return {
    ...job,
    vin: shown('vin', job.vin),
    plate: shown('plate', job.plate),
    fleet: shown('fleet', job.fleet),
    technicians: without.has('person') ? [WITHHELD] : job.technicians,
  };
}

/** The station's trust list; without names where people are not named, but for that of the station. */
async function trustListWithout(file: string, without: Kinds): Promise<Uint8Array> {
  const bytes = await readFile(file);
  if (!without.has('person')) return bytes;
  const { keys } = orThrow(parseTrustList(bytes, file));
  const nameless = keys.map(({ name, ...key }) =>
    name !== undefined && key.role === 'station' ? { ...key, name } : key,
  );
  return Buffer.from(`${JSON.stringify({ keys: nameless }, null, 2)}\n`);
}

/** What may be the record that was sealed at the close: the countersigned one before the one that was not. */
async function* recordsBefore(folder: string, job: string): AsyncGenerator<Uint8Array> {
  for (const end of ['countersigned.record.json', 'record.json']) {
    const bytes = await readBytes(join(folder, `${job}.${end}`), w`record`, MAX_RECORD_BYTES).catch(
      () => null,
    );
    if (bytes !== null) yield bytes;
  }
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
  print([words(finding), w`No package was made.`]);
  return 'diverged';
}
