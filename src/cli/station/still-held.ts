/** Files in a station's folder that still hold a text which is to be forgotten, as far as can be told from them. */
import { type Dirent, existsSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { join, relative } from 'node:path';
import { type Wanted, wantedTexts } from '../../audit/forgetting.ts';
import { MAX_RECORD_BYTES, openRecord } from '../../evidence/record.ts';
import { disclosedIn } from '../../evidence/sharing.ts';
import { readBytes } from '../../files/input.ts';
import { PACKAGE_FILES } from '../../package/format.ts';
import { logPath } from './station-log.ts';

/** Records that disclose it, papers of the jobs, packages, and copies of the log; seen from the folder. */
export async function filesHolding(
  folder: string,
  wanted: Wanted,
  jobs: ReadonlySet<string>,
): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const holding: string[] = [];
  for (const entry of entries.filter((one) => one.isFile())) {
    const path = join(entry.parentPath, entry.name);
    if (await mayHold(entry, path, folder, wanted, jobs)) holding.push(relative(folder, path));
  }
  return holding.sort();
}

async function mayHold(
  { name, parentPath }: Dirent,
  path: string,
  folder: string,
  wanted: Wanted,
  jobs: ReadonlySet<string>,
): Promise<boolean> {
  if (name.endsWith('.record.json')) {
    const bytes = await readBytes(path, 'record', MAX_RECORD_BYTES).catch(() => null);
    const opened = bytes === null ? null : openRecord(bytes);
    return opened?.ok === true && wantedTexts(wanted, disclosedIn(opened.value.record)).length > 0;
  }
  if (/\.(?:pdf|csv|txt)$/.test(name))
    return jobs.has(name.replace(/\.[a-z]+$/, '')) || existsSync(join(parentPath, PACKAGE_FILES.index));
  if (name === PACKAGE_FILES.station) return true;
  return path !== logPath(folder) && /\.db(?:\.before[^/]*)?$/.test(name);
}
