/** A gauge study in the station log: each thing that happens to it is an entry, on disk before anybody sees it. */
import type { StationLogFile } from '../../../db/log.ts';
import { openStudyOf, type StudyFinished, type StudyStarted } from '../../audit/gauge-log.ts';
import type { Kept } from '../../audit/gauge-sitting.ts';
import type { Stamp, StationEntry } from '../../evidence/log.ts';
import type { StationEvent } from '../../evidence/station-event.ts';
import { type Problem, ProblemError } from '../../problem.ts';
import { orThrow } from '../../result.ts';

/** Appends events that follow from what was read; where another program came between, `check` has to bear the new entries. */
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

/** Where a study that people are at goes. Nobody else of this program may read the station's entries meanwhile. */
export interface StudyWriter {
  /** On disk when it returns. Throws `study-other-writer` where another program is at the same study, and what a disk can. */
  keep(kept: readonly Kept[]): void;
  record(made: StudyFinished): void;
}

/** `readings` as the log has them; null for a study that is new, which comes into the log with its first reading. */
export function studyWriter(
  log: StationLogFile,
  started: StudyStarted,
  readings: readonly number[] | null,
  stamp: () => Stamp,
): StudyWriter {
  const { study } = started;
  let stands = readings && [...readings];
  const unchanged = (entries: readonly StationEntry[]) => {
    if (stands === null) {
      if (entries.some(({ event }) => 'study' in event && event.study === study))
        throw new ProblemError(takenNumber(study));
      return;
    }
    const there = orThrow(openStudyOf(entries, study)).exercise.readings;
    if (there.join() !== stands.join()) throw new ProblemError(otherWriter(study, there.length));
  };
  const append = (events: readonly StationEvent[]) => appendBehindOthers(log, events, stamp(), unchanged);
  return {
    keep(kept) {
      if (kept.length === 0) return;
      const events = kept.map((one): StationEvent => ({ ...one, study }));
      append(stands === null ? [started, ...events] : events);
      stands = [...(stands ?? [])];
      for (const one of kept)
        if (one.type === 'gauge-study-read') stands.push(one.value);
        else stands.pop();
    },
    record: (made) => append([made]),
  };
}

const takenNumber = (study: string): Problem => ({
  code: 'study-other-writer',
  where: study,
  message:
    'another program began a study of this number meanwhile, so the reading that came here was not kept',
  next: 'Begin again: the study gets the next number.',
});

const otherWriter = (study: string, taken: number): Problem => ({
  code: 'study-other-writer',
  where: study,
  message: `another program is at this study: ${taken} readings are taken there by now, and what came here was not kept`,
  next: `Go on there, or end it and go on here by --resume ${study}.`,
});
