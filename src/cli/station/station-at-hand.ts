/** Which station file is meant where nobody names one: the usual one here, else the only one here, else the one used last. */

import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, isAbsolute, join, resolve } from 'node:path';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';

export const USUAL_FILE = 'station.json';
/** Nobody keeps more in a folder that he works in, and no station file is larger. */
const MOST_FILES = 200;
const MOST_BYTES = 1 << 18;

/**
 * The station file to read for `named`. Only the usual name stands for another file, and a line on the error output then
 * says which. Problem `several-stations`.
 */
export function stationAtHand(named: string): string {
  if (named !== USUAL_FILE || existsSync(named)) return named;
  const other = anotherFile();
  if (other === null) return named;
  if (!announced.has(other)) process.stderr.write(w`Station file: ${safeLine(other)}\n`);
  announced.add(other);
  return other;
}

/** Said once a run. */
const announced = new Set<string>();

/** The same where nothing is to be said: null where there is none, or several. */
export function quietStationFile(named: string): string | null {
  if (named !== USUAL_FILE || existsSync(named)) return named;
  const [only, ...others] = stationFilesHere();
  return others.length > 0 ? null : (only ?? lastUsed());
}

function anotherFile(): string | null {
  const [only, ...others] = stationFilesHere();
  if (only !== undefined && others.length > 0)
    throw new ProblemError({
      code: 'several-stations',
      message: w`${others.length + 1} station files are in this folder: ${[only, ...others].join(', ')}`,
      next: w`Name one with --station FILE.`,
    });
  return only ?? lastUsed();
}

function stationFilesHere(): readonly string[] {
  const names = listed('.').filter((name) => name.endsWith('.json'));
  return names.slice(0, MOST_FILES).filter(isStationFile).sort();
}

function listed(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return []; // Nothing can be found in a folder that may not be read.
  }
}

function isStationFile(file: string): boolean {
  const value = readSmallJson(file);
  return (
    typeof value === 'object' && value !== null && 'form' in value && value.form === 'plugmark/station/1'
  );
}

/** What a file no larger than a station file holds; null where it cannot be read. */
export function readSmallJson(file: string): unknown {
  try {
    const about = statSync(file);
    if (!about.isFile() || about.size > MOST_BYTES) return null;
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}

const noteFile = (): string =>
  join(process.env['XDG_STATE_HOME'] || join(homedir(), '.local', 'state'), 'plugmark', 'last-station');

function lastUsed(): string | null {
  try {
    const file = readFileSync(noteFile(), 'utf8').trim();
    return isAbsolute(file) && existsSync(file) ? file : null;
  } catch {
    return null;
  }
}

/** Notes that this station was worked with. Where the note cannot be written, a station file is named by hand next time. */
export function noteStationUsed(file: string): void {
  try {
    const note = noteFile();
    mkdirSync(dirname(note), { recursive: true });
    writeFileSync(note, `${resolve(file)}\n`);
  } catch {
    // A home that is read-only keeps nobody from his work.
  }
}
