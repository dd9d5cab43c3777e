import { isUtf8 } from 'node:buffer';
import { readFile } from 'node:fs/promises';
import type { Problem } from '../../src/problem.ts';
import type { Quantity, ToolId } from '../../src/reading.ts';
import { err, ok, type Result } from '../../src/result.ts';
import { readProfile } from '../profile/file.ts';
import { CAPTURE_FORM, parseCapture, recordingOf } from './capture.ts';
import { parseRecording, type Recording } from './recording.ts';

/** What a capture has to be told, and a recording tells by itself. */
interface Meaning {
  readonly tool: ToolId;
  readonly quantity: Quantity;
  /** Path of the profile. */
  readonly profile?: string;
}

/** Reads and checks a whole recording, or a capture as a recording; the problem names file and line. */
export async function readRecording(file: string, meaning: Meaning): Promise<Result<Recording, Problem>> {
  let text: string;
  try {
    const bytes = await readFile(file);
    if (!isUtf8(bytes)) return err(unreadable(file, 'it is not UTF-8 text'));
    text = bytes.toString('utf8');
  } catch (error) {
    return err(unreadable(file, error instanceof Error ? error.message : String(error)));
  }
  if (!text.startsWith(`{"form":"${CAPTURE_FORM}"`)) return parseRecording(text, file);
  const capture = parseCapture(text, file);
  if (!capture.ok) return capture;
  const { tool, quantity, profile } = meaning;
  if (profile === undefined) return ok(recordingOf(capture.value, { tool, quantity }));
  const read = await readProfile(profile);
  return read.ok ? ok(recordingOf(capture.value, { tool, quantity, profile: read.value })) : read;
}

function unreadable(file: string, reason: string): Problem {
  return {
    code: 'file-unreadable',
    where: file,
    message: `the recording cannot be read: ${reason}`,
    next: 'Name a recording that this user may read.',
  };
}
