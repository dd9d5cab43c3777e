import { readFileSync, statSync } from 'node:fs';
import { type LaterLog, parseLaterLog } from '../../evidence/later-log.ts';
import { problemText, safeLine } from '../terminal/exit.ts';

/** What lies beside a record whose key has ended: the proof that the log contained it before. */
export const proofBeside = (file: string): string => `${file}.proof`;

/** What lies beside a record that witnesses cosigned: the same, with their lines in its checkpoint. */
export const witnessedBeside = (file: string): string => `${file}.witnessed`;

const MAX_BYTES = 300_000;

/** Null where there is none; one that cannot be read proves nothing, and a line on the error output says so. */
export const laterLogBeside = (file: string): LaterLog | null => readBeside(proofBeside(file));

export const witnessesBeside = (file: string): LaterLog | null => readBeside(witnessedBeside(file));

function readBeside(path: string): LaterLog | null {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found?.isFile() !== true || found.size > MAX_BYTES) return null;
  const read = parseLaterLog(readFileSync(path), safeLine(path));
  if (read.ok) return read.value;
  process.stderr.write(problemText(read.error));
  return null;
}
