/** What a log that a writer wrote into holds, against what was acknowledged to whoever watched it. */
import { createHash } from 'node:crypto';
import { existsSync, statSync } from 'node:fs';
import { openStationLog } from '../../db/log.ts';
import { ProblemError } from '../../src/problem.ts';

export const hexOf = (key: string, i: number) =>
  createHash('sha256')
    .update(`${key} ${i}`)
    .digest('hex')
    .repeat(1 + (i % 5));

/** How many values of the key the output of its writer acknowledges. */
export const acknowledgedIn = (out: string): number =>
  [...out.matchAll(/^ack (\d+)$/gm)].reduce((most, [, n]) => Math.max(most, Number(n)), 0);

/** Opens the log as a program does after the fault, reads it through, and holds it against what was acknowledged. */
export async function heldAgainst(
  path: string,
  key: string,
  acknowledged: number,
): Promise<{ readonly faults: readonly string[]; readonly held: number; readonly told: number | null }> {
  let told: number | null = null;
  try {
    const log = await openStationLog(path, { cutOff: (entries) => (told = entries) });
    try {
      const fault = log.check();
      const entries = log.entries(`job:${key}`);
      const strange = entries.findIndex(
        ({ event }, i) => event.type !== 'raw-value' || event.hex !== hexOf(key, i),
      );
      return {
        faults: [
          ...(fault === null ? [] : [`the log is damaged: ${fault.message}`]),
          ...(entries.length < acknowledged
            ? [`${acknowledged} were acknowledged, ${entries.length} are there`]
            : []),
          ...(strange < 0 ? [] : [`entry ${strange + 1} of ${key} was never written`]),
        ],
        held: entries.length,
        told,
      };
    } finally {
      log.close();
    }
  } catch (cause) {
    const why =
      cause instanceof ProblemError ? `${cause.problem.code}: ${cause.problem.message}` : String(cause);
    return { faults: [`the log cannot be opened: ${why}`], held: 0, told };
  }
}

/** No file, or one that no page was written into: the program was stopped before it had a log. */
export const isNoLog = (path: string): boolean => !existsSync(path) || statSync(path).size === 0;

/** Verdicts on gaps in all jobs of a log. */
export async function gapsIn(path: string): Promise<number> {
  const log = await openStationLog(path);
  try {
    return log
      .streams()
      .filter((stream) => stream.startsWith('job:'))
      .flatMap((stream) => log.entries(stream))
      .filter(({ event }) => event.type === 'gap-measured').length;
  } finally {
    log.close();
  }
}
