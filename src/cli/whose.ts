import { readStationFile } from './station-file.ts';

/** Which station a command is about: by its station file, or by the folder of its data. */
export interface Whose {
  readonly station: string;
  readonly data?: string;
}

export async function folderOf({ station, data }: Whose): Promise<string> {
  return data ?? (await readStationFile(station)).folder;
}
