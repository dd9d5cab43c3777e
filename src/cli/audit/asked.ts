/** Where a question goes: to the log of this station, or to an archive of many. */
import type { Records, StationOfRecords } from '../../audit/records.ts';
import type { StationEntry } from '../../evidence/log.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { archiveAt } from '../archive/archive-link.ts';
import { askedRecords } from '../archive/asked-records.ts';
import { type Scope, withStationFolder } from '../station/scope.ts';
import { type StationFolder, stateOf } from '../station/station.ts';
import { readStationFile } from '../station/station-file.ts';
import { type ExitCode, safeLine } from '../terminal/exit.ts';
import { askSecret, SECRETS } from '../terminal/secret.ts';
import { recordsOf } from './records.ts';

export interface AskedScope extends Scope {
  /** Address of the archive that is asked. */
  readonly archive?: string;
}

export interface Asking {
  readonly records: Records;
  /** Whose records they are: the name of the station, or of the archive. */
  readonly name: () => string;
  /** Null where an archive is asked. */
  readonly stationFolder: StationFolder | null;
}

/** Problems beside those of the station: `archive-not-reached`, `archive-refused`, `option-not-valid`. */
export async function withRecords(
  options: AskedScope,
  work: (asking: Asking) => ExitCode | Promise<ExitCode>,
): Promise<ExitCode> {
  const { archive: url } = options;
  if (url === undefined)
    return withStationFolder(options, (stationFolder) =>
      work({
        records: recordsOf(stationFolder.log),
        name: () => stateOf(stationFolder).name,
        stationFolder,
      }),
    );
  const name = await archiveAt(url);
  const token = (await askSecret('reader', w`Token of a reader of ${safeLine(name)}: `))?.trim() ?? '';
  if (!/^[\w-]{1,200}$/.test(token))
    throw new ProblemError({
      code: 'archive-refused',
      where: url,
      message: w`an archive answers only whoever has the token of a reader`,
      next: w`Ask whoever runs it for one (plugmark archive reader), and give it in ${SECRETS.reader}.`,
    });
  const code = await work({ records: askedRecords(url, token), name: () => name, stationFolder: null });
  // Beside the answer, so that a file or a table has rows alone.
  process.stderr.write(
    `${safeLine(w`This is the word of the archive ${name}, and no proof. What a station has not shipped yet is not in it.`)}\n`,
  );
  return code;
}

/** The instruments of the station file, which is newer than what jobs recorded, where it is at hand. */
export const listedInstruments = async ({
  station,
  data,
  archive,
}: AskedScope): Promise<readonly Instrument[]> =>
  data === undefined && archive === undefined ? (await readStationFile(station)).instruments : [];

/** Of several stations in the order of time, so that what was recorded last counts. */
export const entriesOfAll = (stations: readonly StationOfRecords[]): readonly StationEntry[] =>
  stations.length === 1
    ? (stations[0]?.entries ?? [])
    : stations.flatMap(({ entries }) => entries).sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
