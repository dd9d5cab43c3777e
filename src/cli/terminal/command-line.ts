import { basename, relative } from 'node:path';
import { printable } from '../../ui/printable.ts';

/**
 * A command that can be typed as it stands, in the way in which the program itself was started. From its sources it runs on a
 * Node of its own, and that of the shell may be too old.
 */
export function commandLine(...words: readonly string[]): string {
  const [, script = 'plugmark'] = process.argv;
  const program = basename(script) === 'bin.js' ? [near(process.execPath), near(script)] : ['plugmark'];
  return [...program, ...words].map(quoted).join(' ');
}

const near = (path: string): string => {
  const from = relative(process.cwd(), path);
  return from.length < path.length ? from : path;
};

/** As a POSIX shell takes it. */
export const quoted = (word: string): string => {
  const safe = printable(word, MOST);
  return /^[\w@%+=:,./-]+$/.test(safe) ? safe : `'${safe.replaceAll("'", "'\\''")}'`;
};

/** No path is longer on the systems that we run on. */
const MOST = 4096;
