/** Whether the wall clock can be trusted to date records: year, synchronisation, and steps while it is watched. */

import { execFile } from 'node:child_process';
import { setTimeout as pause } from 'node:timers/promises';
import { fixed, w } from '../../../words/catalogue.ts';
import { bad, type Finding, good, warning } from './finding.ts';

/** No record was made before this program was written; a clock without a battery starts decades earlier. */
const FIRST_YEAR = 2026;
const LAST_YEAR = 2099;
const SAMPLE_MS = 400;
/** A synchronised clock is slewed by at most 0.5 ms in a second; the rest is for a busy machine. Our own choice. */
const STEP_MS = 20;

export interface ClockFacts {
  readonly now: Date;
  /** How far the wall clock moved against the monotonic one, and in how long. */
  readonly driftMs: number;
  readonly sampleMs: number;
  /** Null where the system cannot be asked. */
  readonly synchronised: boolean | null;
  /** The newest entry of the log. */
  readonly lastEntry: string | null;
}

export function clockFindings({
  now,
  driftMs,
  sampleMs,
  synchronised,
  lastEntry,
}: ClockFacts): readonly Finding[] {
  const set = w`Set the clock and keep it set: timedatectl set-ntp true`;
  const year = now.getUTCFullYear();
  const text = `${now.toISOString().slice(0, 19)}Z`;
  if (year < FIRST_YEAR || year > LAST_YEAR) return [bad(w`clock`, w`${text} is not a plausible date`, set)];
  if (lastEntry !== null && lastEntry > now.toISOString())
    return [bad(w`clock`, w`${text} is before the newest entry of the log, ${lastEntry}`, set)];
  const drift = w`${fixed(driftMs, 1)} ms against the monotonic clock in ${Math.round(sampleMs)} ms`;
  const steady =
    Math.abs(driftMs) < STEP_MS
      ? good(w`clock`, w`${text}; moved ${drift}`)
      : warning(
          w`clock`,
          w`${text}; stepped by ${drift}`,
          w`Find out what sets the clock. Records contain both clocks.`,
        );
  if (synchronised === null) return [steady];
  const kept = synchronised
    ? good(w`clock sync`, w`synchronised by the network`)
    : warning(w`clock sync`, w`not synchronised`, set);
  return [steady, kept];
}

export async function clockFacts(lastEntry: string | null): Promise<ClockFacts> {
  const [wall, mono] = [Date.now(), performance.now()];
  const synchronised = await askTimedatectl();
  await pause(SAMPLE_MS);
  const sampleMs = performance.now() - mono;
  return { now: new Date(), driftMs: Date.now() - wall - sampleMs, sampleMs, synchronised, lastEntry };
}

function askTimedatectl(): Promise<boolean | null> {
  return new Promise((resolve) => {
    const args = ['show', '--property=NTPSynchronized', '--value'];
    execFile('timedatectl', args, { timeout: 3000 }, (error, stdout) => {
      const answer = stdout.trim();
      resolve(error === null && (answer === 'yes' || answer === 'no') ? answer === 'yes' : null);
    });
  });
}
