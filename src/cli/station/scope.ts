import type { ExitCode } from '../terminal/exit.ts';
import { openStationFolder, type StationFolder } from './station.ts';
import { readStationFile } from './station-file.ts';

/** Which station a command is about: by its station file, or by the folder of its data. */
export interface Scope {
  readonly station: string;
  readonly data?: string;
}

export async function folderOf({ station, data }: Scope): Promise<string> {
  return data ?? (await readStationFile(station)).folder;
}

/** Opens the station's log for one command, and closes it behind it. */
export async function withStationFolder(
  options: Scope,
  work: (stationFolder: StationFolder) => ExitCode | Promise<ExitCode>,
): Promise<ExitCode> {
  const stationFolder = await openStationFolder(await folderOf(options));
  try {
    return await work(stationFolder);
  } finally {
    stationFolder.log.close();
  }
}
