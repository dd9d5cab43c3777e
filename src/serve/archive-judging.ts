/** Judges again what stations shipped, one job after the other, while nobody waits for it. */
import { setImmediate as pause } from 'node:timers/promises';
import type { JobJudged } from '../archive/judged.ts';
import { judgeWaiting } from '../archive/read-history.ts';
import type { ArchiveStore } from '../archive/store.ts';

export interface Judging {
  /** Its log has grown, or may have jobs that wait. */
  wake(log: string): void;
  /** How many came out how, since this program runs. */
  readonly counts: ReadonlyMap<JobJudged['as'], number>;
  /** Ends behind the job at hand. */
  end(): Promise<void>;
}

/** `heard` hears of faults, and of jobs that did not come out the same: by their log, and nothing of their contents. */
export function judging(store: ArchiveStore, heard: (line: string) => void): Judging {
  const counts = new Map<JobJudged['as'], number>();
  const waiting = new Set<string>();
  let ended = false;
  let work: Promise<void> | null = null;
  const judgeAll = async () => {
    for (const log of waiting) {
      waiting.delete(log);
      try {
        const goesOn = async () => {
          await pause();
          return !ended;
        };
        for (const { judged, opened } of await judgeWaiting(store, log, goesOn)) {
          counts.set(judged.as, (counts.get(judged.as) ?? 0) + 1);
          if (judged.as !== 'same') heard(`judged ${judged.as} ${log} entry ${opened}`);
        }
      } catch (cause) {
        heard(`500 judging ${log} ${cause instanceof Error ? cause.name : 'fault'}`);
      }
      if (ended) return;
    }
  };
  return {
    wake: (log) => {
      if (ended) return;
      waiting.add(log);
      work ??= judgeAll().finally(() => {
        work = null;
      });
    },
    counts,
    end: async () => {
      ended = true;
      await work;
    },
  };
}
