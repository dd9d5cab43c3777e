import { isUtf8 } from 'node:buffer';
import { readFile } from 'node:fs/promises';
import type { Problem } from '../../src/problem.ts';
import { err, type Result } from '../../src/result.ts';
import { parseRecording, type Recording } from './recording.ts';

/** Reads and checks a whole recording; the problem names file and line. */
export async function readRecording(file: string): Promise<Result<Recording, Problem>> {
  try {
    const bytes = await readFile(file);
    if (!isUtf8(bytes)) return err(unreadable(file, 'it is not UTF-8 text'));
    return parseRecording(bytes.toString('utf8'), file);
  } catch (error) {
    return err(unreadable(file, error instanceof Error ? error.message : String(error)));
  }
}

function unreadable(file: string, reason: string): Problem {
  return {
    code: 'recording-unreadable',
    where: file,
    message: `The recording cannot be read: ${reason}.`,
    next: 'Name a recording that is there and that this user may read.',
  };
}
