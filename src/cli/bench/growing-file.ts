import { closeSync, openSync, readSync } from 'node:fs';

/**
 * Lines of a file that somebody goes on writing to, one at a time; null while there is no whole new one. Read when asked
 * for, so that nothing has to be watched or stopped.
 */
export function growingLines(path: string): {
  readonly next: () => string | null;
  readonly close: () => void;
} {
  const file = openSync(path, 'r');
  const buffer = Buffer.alloc(4096);
  let rest = '';
  return {
    next() {
      if (!rest.includes('\n')) rest += buffer.toString('utf8', 0, readSync(file, buffer));
      const end = rest.indexOf('\n');
      if (end < 0) return null;
      const line = rest.slice(0, end);
      rest = rest.slice(end + 1);
      return line;
    },
    close: () => closeSync(file),
  };
}
