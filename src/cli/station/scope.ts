import type { ExitCode } from '../terminal/exit.ts';
import { type Archive, openArchive } from './station.ts';
import { readStationFile } from './station-file.ts';

/** Which station a command is about: by its station file, or by the folder of its data. */
export interface Whose {
  readonly station: string;
  readonly data?: string;
}

export async function folderOf({ station, data }: Whose): Promise<string> {
  return data ?? (await readStationFile(station)).folder;
}

/** Opens the station's log for one command, and closes it behind it. */
export async function withArchive(
  options: Whose,
  work: (archive: Archive) => ExitCode | Promise<ExitCode>,
): Promise<ExitCode> {
  const archive = await openArchive(await folderOf(options));
  try {
    return await work(archive);
  } finally {
    archive.log.close();
  }
}
