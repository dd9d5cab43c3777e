/** A gauge study in the station log: each thing that happens to it is an entry, on disk before anybody sees it. */

import type { StationLogFile } from '../../../db/log.ts';
import { openStudyOf, type StudyFinished, type StudyStarted } from '../../audit/gauge-log.ts';
import type { Kept } from '../../audit/gauge-sitting.ts';
import type { Stamp, StationEntry } from '../../evidence/log.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';
import { w } from '../../words/catalogue.ts';

/** Appends events that follow from entries read before. Where another program wrote meanwhile, `check` looks at the new entries first. */
export function appendBehindOthers(
  log: StationLogFile,
  events: readonly StationEvent[],
  stamp: Stamp,
  check: (entries: readonly StationEntry[]) => void,
): void {
  for (;;)
    try {
      log.appendStation(
        events.map((event) => ({ by: 'station', event })),
        stamp,
      );
      return;
    } catch (cause) {
      if (!(cause instanceof ProblemError) || cause.problem.code !== 'log-other-writer') throw cause;
      check(log.stationEntries());
    }
}

/** Writes a study that is being worked on. Nothing else in this program may read the station's entries meanwhile. */
export interface StudyWriter {
  /** On disk when it returns. Throws `study-other-writer` where another program works on the same study, and errors of the disk. */
  keep(kept: readonly Kept[]): void;
  record(finished: StudyFinished): void;
}

/** `readings` as the log has them; null for a new study, which gets into the log with its first reading. */
export function studyWriter(
  log: StationLogFile,
  started: StudyStarted,
  readings: readonly number[] | null,
  stamp: () => Stamp,
): StudyWriter {
  const { study } = started;
  let counting = readings && [...readings];
  const unchanged = (entries: readonly StationEntry[]) => {
    if (counting === null) {
      if (entries.some(({ event }) => 'study' in event && event.study === study))
        throw new ProblemError(takenNumber(study));
      return;
    }
    const there = orThrow(openStudyOf(entries, study)).exercise.readings;
    if (there.join() !== counting.join()) throw new ProblemError(otherWriter(study, there.length));
  };
  const append = (events: readonly StationEvent[]) => appendBehindOthers(log, events, stamp(), unchanged);
  return {
    keep(kept) {
      if (kept.length === 0) return;
      const events = kept.map((one): StationEvent => ({ ...one, study }));
      append(counting === null ? [started, ...events] : events);
      counting = [...(counting ?? [])];
      for (const one of kept)
        if (one.type === 'gauge-study-read') counting.push(one.value);
        else counting.pop();
    },
    record: (finished) => append([finished]),
  };
}

const takenNumber = (study: string): Problem => ({
  code: 'study-other-writer',
  where: study,
  message: w`another program started a study of this number meanwhile; the reading that came here was not kept`,
  next: w`Start again: the study gets the next number.`,
});

const otherWriter = (study: string, taken: number): Problem => ({
  code: 'study-other-writer',
  where: study,
  message: w`another program works on this study and has ${taken} readings; what came here was not kept`,
  next: w`Go on there. Or end that program and go on here: --resume ${study}.`,
});
