/** Jobs since an impact assessment that were measured with the tool as it was found, and that no impact assessment holds yet. */
import type { AttemptRow } from '../../audit/attempt.ts';
import { inQuestion } from '../../audit/impact.ts';
import { findings, isHeld, type Since } from '../../audit/impact-held.ts';
import type { ImpactAssessment } from '../../audit/impact-state.ts';
import type { StationFolder } from '../station/station.ts';
import { safeLine } from '../terminal/exit.ts';

/** Each finding with such jobs, by the newest impact assessment on it. */
export function jobsSince(
  { log }: Pick<StationFolder, 'log'>,
  impacts: readonly ImpactAssessment[],
): readonly Since[] {
  return findings(impacts).flatMap(({ newest, from, onOne }): Since[] => {
    const { serial, foundOn } = newest.assessed;
    const rows = log.history
      .attemptsOf({ serial, from, afterSeq: newest.seq })
      .filter((row) => !(row.voided || isHeld(onOne, row)));
    const jobs = [...new Set(inQuestion(rows, setupsOf({ log }, rows), foundOn).map(({ job }) => job))];
    return jobs.length === 0 ? [] : [{ newest, jobs }];
  });
}

/** What the jobs of these rows were opened with, by its key. */
export const setupsOf = ({ log }: Pick<StationFolder, 'log'>, rows: readonly AttemptRow[]) =>
  new Map([...new Set(rows.map(({ setupKey }) => setupKey))].map((key) => [key, log.history.setupOf(key)]));

const NAMED = 8;

/** A line a finding: how many jobs, which, and what to do. */
export const sinceLines = (since: readonly Since[]): readonly string[] =>
  since.map(({ newest: { assessment, assessed }, jobs }) => {
    const named = jobs.slice(0, NAMED).join(', ');
    const more = jobs.length > NAMED ? ` and ${jobs.length - NAMED} more` : '';
    const count = jobs.length === 1 ? '1 job' : `${jobs.length} jobs`;
    return safeLine(
      `Since ${assessment}: ${count} with ${assessed.tool} (${assessed.serial}) as it was found, in no impact assessment: ${named}${more}. Assess again with the same file: plugmark impact ${assessed.tool} --as-found FILE --by NAME`,
    );
  });
