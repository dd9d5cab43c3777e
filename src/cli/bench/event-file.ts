import { closeSync, constants, createWriteStream, fstatSync, openSync } from 'node:fs';
import { Socket } from 'node:net';
import type { Writable } from 'node:stream';
import { fileProblem } from '../../files/file-problem.ts';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { problemText } from '../terminal/exit.ts';
import { jsonLine } from '../terminal/json-text.ts';

/** Where lines go that somebody may read, or may not: whoever writes them never waits. */
export interface EventFile {
  /** `line` is one value of JSON. */
  readonly write: (line: object) => void;
  /** Gives a reader a moment to take what is left. */
  readonly close: () => Promise<void>;
}

/** What may wait for a slow reader, in characters. */
const MOST_WAITING = 16 << 20;
const LAST_MOMENT_MS = 2000;

/** Something that takes text without making anybody wait. */
export interface Outlet {
  /** Calls `done` once the text is on its way. */
  readonly write: (text: string, done?: () => void) => void;
  /** How many characters wait in memory. */
  readonly waiting: () => number;
  readonly end: () => void;
  readonly onError: (hear: (error: Error) => void) => void;
}

/** A file, to whose end the lines go; a named pipe that somebody reads; or `-`, the standard output. */
export const openEventFile = (path: string): EventFile =>
  eventFile(path === '-' ? standardOutput() : outletOf(opened(path)));

export function eventFile(outlet: Outlet, mostWaiting = MOST_WAITING): EventFile {
  let missed = 0;
  let broken = false;
  outlet.onError((error) => {
    if (!broken) process.stderr.write(problemText(noLonger(error)));
    broken = true;
  });
  const put = (line: object, done?: () => void) => outlet.write(jsonLine(line), done);
  const makeGood = () => {
    if (missed > 0) put({ kind: 'missed', lines: missed });
    missed = 0;
  };
  return {
    write(line) {
      if (broken) return;
      if (outlet.waiting() > mostWaiting) {
        missed++;
        return;
      }
      makeGood();
      put(line);
    },
    close: () =>
      new Promise((resolve) => {
        if (broken) return resolve();
        makeGood();
        const over = setTimeout(() => {
          // A write that nobody takes would keep the program from ending.
          setTimeout(() => process.exit(), 1000).unref();
          resolve();
        }, LAST_MOMENT_MS);
        outlet.write('', () => {
          clearTimeout(over);
          outlet.end();
          resolve();
        });
      }),
  };
}

/** A job goes on without its followers. */
const noLonger = (error: Error) => ({
  code: 'file-system' as const,
  where: '--events',
  message: w`no more events are written: ${fileProblem(error, 'events')?.message ?? error.message}`,
  next: w`The job goes on. The log contains all of them.`,
});

/**
 * The standard output for the lines alone: what is meant for people goes to the other output from here on. A pipe takes what it
 * can and the rest waits in memory.
 */
function standardOutput(): Outlet {
  const { stdout, stderr } = process;
  const write = stdout.write.bind(stdout);
  stdout.write = stderr.write.bind(stderr);
  return {
    write: (text, done) => void write(text, done),
    waiting: () => stdout.writableLength,
    end: () => {},
    // A reader that goes away ends the run (closed-pipe.ts).
    onError: () => {},
  };
}

const outletOf = (stream: Writable): Outlet => ({
  write: (text, done) => void stream.write(text, done),
  waiting: () => stream.writableLength,
  end: () => void stream.end(),
  onError: (hear) => void stream.on('error', hear),
});

function opened(path: string): Writable {
  const { O_WRONLY, O_APPEND, O_CREAT, O_NONBLOCK = 0 } = constants;
  try {
    // Without the last one a named pipe that nobody reads would be waited for.
    const file = openSync(path, O_WRONLY | O_APPEND | O_CREAT | O_NONBLOCK, 0o600);
    const kind = fstatSync(file);
    if (kind.isFIFO()) return new Socket({ fd: file, readable: false, writable: true });
    if (kind.isFile()) return createWriteStream(path, { fd: file });
    closeSync(file);
  } catch (cause) {
    const nobody = cause instanceof Error && 'code' in cause && cause.code === 'ENXIO';
    if (!nobody) throw cause;
    throw new ProblemError({
      code: 'file-unreadable',
      where: path,
      message: w`nobody reads this pipe`,
      next: w`Start its reader first.`,
    });
  }
  throw new ProblemError({
    code: 'file-not-written',
    where: path,
    message: w`this is no file and no pipe`,
    next: w`Name a file, a named pipe, or - for the standard output.`,
  });
}
