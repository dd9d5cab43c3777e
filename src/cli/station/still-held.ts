/** Files of a station that still hold a text which is to be forgotten, as far as can be told from them. */
import { createReadStream } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import { join, relative, resolve } from 'node:path';
import { standsAnywhere, standsIn, type Wanted } from '../../audit/forgetting.ts';
import { logPath } from './station-log.ts';

export interface Looked {
  readonly wanted: Wanted;
  /** The numbers of the jobs that it is in. */
  readonly jobs: ReadonlySet<string>;
  /** The numbers of all other jobs. */
  readonly otherJobs: ReadonlySet<string>;
}

/** A folder with all in it, and files beside it; their names seen from the folder. */
export async function filesHolding(
  folder: string,
  beside: readonly string[],
  looked: Looked,
): Promise<readonly string[]> {
  const own = new Set(['', '-wal', '-shm'].map((end) => resolve(`${logPath(folder)}${end}`)));
  const paths = [...(await filesIn(folder)), ...(await Promise.all(beside.map(filesIn))).flat()];
  const once = new Set(paths.map((path) => resolve(path)).filter((path) => !own.has(path)));
  const holding = new Set<string>();
  for (const path of once) if (await holds(path, looked)) holding.add(path);
  // A paper tells what the record or the table of the same job tells, which lies beside it.
  for (const path of once)
    if (['.record.json', '.csv'].some((end) => holding.has(path.replace(PAPER, end)))) holding.add(path);
  return [...holding].map((path) => relative(folder, path)).sort();
}

async function filesIn(path: string): Promise<readonly string[]> {
  const about = await stat(path).catch(() => null);
  if (about?.isFile() === true) return [path];
  if (about?.isDirectory() !== true) return [];
  const entries = await readdir(path, { recursive: true, withFileTypes: true });
  return entries.flatMap((one) => (one.isFile() ? [join(one.parentPath, one.name)] : []));
}

const PAPER = /\.pdf$/;
const CHUNK = 1 << 20;
/** Longer than any disclosure. */
const OVERLAP = 8192;
/** `["` and the beginning of a salt in base64url, as every disclosure begins. */
const DISCLOSURE = /Wy[IJ][\w-]{30,}/g;
const DATABASE = 'SQLite format 3';

/** A paper cannot be looked into: it holds it where it is of one of these jobs, or of nobody knows which. */
async function holds(path: string, { wanted, jobs, otherJobs }: Looked): Promise<boolean> {
  const paper = /([^/\\]+)\.pdf$/.exec(path)?.[1];
  if (paper !== undefined) return jobs.has(paper) || !otherJobs.has(paper);
  if (path.endsWith('.pem')) return false;
  const isWord = standsIn(wanted);
  let is: (text: string) => boolean = path.endsWith('-wal') ? standsAnywhere(wanted) : isWord;
  let before = '';
  try {
    for await (const chunk of createReadStream(path, { highWaterMark: CHUNK })) {
      const text = before + String(chunk);
      if (before === '' && text.startsWith(DATABASE)) is = standsAnywhere(wanted);
      if (is(text) || disclosed(text).some(isWord)) return true;
      before = text.slice(-OVERLAP);
    }
    return false;
  } catch {
    // What cannot be read may hold it.
    return true;
  }
}

/** The texts of disclosures that stand in a file, whole ones only. */
const disclosed = (text: string): readonly string[] =>
  [...text.matchAll(DISCLOSURE)].map(([one]) => Buffer.from(one, 'base64url').toString('utf8'));
