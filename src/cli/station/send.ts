/** What leaves the station behind a job: the log to its archive, the newest checkpoint to its witnesses. */

import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { ProblemError } from '../../problem.ts';
import { w } from '../../words/catalogue.ts';
import { linkPath } from '../archive/archive-link.ts';
import { shipLog } from '../archive/ship.ts';
import { EXIT, type ExitCode, problemText } from '../terminal/exit.ts';
import { print } from '../terminal/wrapped.ts';
import { witnessLog } from './log-witness.ts';
import { type LoadedStation, readStationFile } from './station-file.ts';

type Named = Pick<LoadedStation, 'folder' | 'witnesses'>;
const hasArchive = ({ folder }: Named) => existsSync(linkPath(folder));
const hasWitness = ({ witnesses = [] }: Named) => witnesses.length > 0;

/** One after the other, for both keep their receipts in the same place; where one cannot be reached, the other is sent to all the same. */
export async function sendLog({ station }: { readonly station: string }): Promise<ExitCode> {
  const file = await readStationFile(station);
  if (!hasArchive(file) && !hasWitness(file)) {
    print([
      w`This station has joined no archive, and its file names no witness: there is nobody to send to.`,
    ]);
    return EXIT.done;
  }
  // What was signed when the last record was sealed needs no key.
  const shipped = hasArchive(file) ? await attempted(() => shipLog({ station, sealed: true })) : EXIT.done;
  const witnessed = hasWitness(file) ? await attempted(() => witnessLog({ station })) : EXIT.done;
  return shipped === EXIT.done ? witnessed : shipped;
}

async function attempted(send: () => Promise<ExitCode>): Promise<ExitCode> {
  try {
    return await send();
  } catch (cause) {
    if (!(cause instanceof ProblemError)) throw cause;
    process.stderr.write(problemText(cause.problem));
    return EXIT.failed;
  }
}

/** The built program; where it runs from its source, nothing is sent by itself. */
const PROGRAM = fileURLToPath(new URL('../bin.js', import.meta.url));

/** Behind a job: another process, which nobody waits for, sends what is new. It says nothing; `log send` and doctor do. */
export function sendInBackground(stationFile: string, file: Named): void {
  if (!(hasArchive(file) || hasWitness(file)) || !existsSync(PROGRAM)) return;
  const child = spawn(process.execPath, [PROGRAM, 'log', 'send', '--station', stationFile], {
    cwd: process.cwd(),
    detached: true,
    stdio: 'ignore',
  });
  // Where no process can be started, the next job sends it.
  child.on('error', () => {});
  child.unref();
}
