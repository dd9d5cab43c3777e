import type { Problem } from '../problem.ts';
import { phrases } from '../words/catalogue.ts';

/** What the codes of the file system mean to whoever named the place. */
const MEANINGS: Readonly<Record<string, readonly string[]>> = phrases({
  EACCES: ['no permission for this place', 'Check the rights on it, or name another place.'],
  EPERM: ['no permission for this place', 'Check the rights on it, or name another place.'],
  EROFS: ['nothing can be written here: the file system is read-only', 'Name another place.'],
  ENOSPC: ['the disk is full', 'Make room on it, or name a place on another one.'],
  EDQUOT: ['the disk is full: no more may be kept on it', 'Make room on it, or name a place on another one.'],
  EIO: ['the disk did not do what was asked of it', 'Check the disk, or name a place on another one.'],
  EISDIR: ['this is a folder, and a file was expected', 'Name a file.'],
  ENOTDIR: ['a part of this path is a file, and a folder was expected', 'Check the path.'],
  ENOENT: ['there is no such file or folder', 'Check the path.'],
  EEXIST: ['something lies here already', 'Name another place.'],
  ENOTEMPTY: ['something lies here already', 'Name another place.'],
  ENAMETOOLONG: ['the name is too long for this file system', 'Name it shorter.'],
  ELOOP: ['links lead from here in a circle', 'Check the path.'],
  EMFILE: [
    'the program may not open as many files as it needs',
    'Allow it at least 256: ulimit -n 256, or LimitNOFILE= of the service that starts it.',
  ],
  ENFILE: ['this computer has no more files to open', 'Close other programs, then try again.'],
});

/**
 * What the file system refused as a {@link Problem}: at `where`, or at the path that the error names. Null for every other
 * error, also for one of a program that could not be started.
 */
export function fileProblem(cause: unknown, where?: string): Problem | null {
  if (!(cause instanceof Error) || !('code' in cause) || !('syscall' in cause)) return null;
  const meaning = MEANINGS[String(cause.code)];
  const path = where ?? ('path' in cause && typeof cause.path === 'string' ? cause.path : '');
  const isFile = path !== '' || cause.syscall === 'write' || cause.syscall === 'fsync';
  if (meaning === undefined || !isFile || String(cause.syscall).startsWith('spawn')) return null;
  const [message = '', next = ''] = meaning;
  return { code: 'file-system', ...(path !== '' && { where: path }), message, next };
}
