import { execFile } from 'node:child_process';
import { ProblemError } from '../../problem.ts';

/** How a run of openssl ended. */
export interface Ran {
  readonly ok: boolean;
  readonly out: string;
}

/** Runs openssl without a shell; a machine without it is a problem, everything else is for the caller to judge. */
export function openssl(...args: readonly string[]): Promise<Ran> {
  return new Promise((resolve, reject) => {
    execFile('openssl', [...args], { timeout: 20_000, maxBuffer: 1 << 20 }, (error, stdout, stderr) => {
      if (error !== null && error.code === 'ENOENT')
        reject(
          new ProblemError({
            code: 'no-openssl',
            message: 'trusted time needs the program openssl, and it is not on this machine',
            next: 'Install it, or verify without the time stamp.',
          }),
        );
      else resolve({ ok: error === null, out: `${stdout}\n${stderr}` });
    });
  });
}
