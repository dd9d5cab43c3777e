/** Jobs since an impact assessment that were measured with the tool as it was found, and that no impact assessment holds yet. */
import type { AttemptRow } from '../../audit/attempt.ts';
import { inQuestion } from '../../audit/impact.ts';
import { findings, isHeld, type Since } from '../../audit/impact-held.ts';
import type { ImpactAssessment } from '../../audit/impact-state.ts';
import type { Records } from '../../audit/records.ts';
import { plural, w } from '../../words/catalogue.ts';
import { safeLine } from '../terminal/exit.ts';

/** Each finding with such jobs, by the newest impact assessment on it; `log` is the one that they are of, where there are several. */
export async function jobsSince(
  records: Records,
  impacts: readonly ImpactAssessment[],
  log: string | null = null,
): Promise<readonly Since[]> {
  const all: Since[] = [];
  for (const { newest, from, onOne } of findings(impacts)) {
    const { serial, foundOn } = newest.assessed;
    const asked = { serial, from, afterSeq: newest.seq, ...(log !== null && { log }) };
    const rows = (await records.attemptsOf(asked)).filter((row) => !(row.voided || isHeld(onOne, row)));
    const setups = await setupsOf(records, rows);
    const jobs = [...new Set(inQuestion(rows, setups, foundOn).map(({ job }) => job))];
    if (jobs.length > 0) all.push({ newest, jobs });
  }
  return all;
}

/** What the jobs of these rows were opened with, by its key. */
export const setupsOf = (records: Records, rows: readonly AttemptRow[]) =>
  records.setupsOf(new Set(rows.map(({ setupKey }) => setupKey)));

const NAMED = 8;

/** A line a finding: how many jobs, which, and what to do. */
export const sinceLines = (since: readonly Since[]): readonly string[] =>
  since.map(({ newest: { assessment, assessed }, jobs }) => {
    const named = jobs.slice(0, NAMED).join(', ');
    const more = jobs.length > NAMED ? w` and ${jobs.length - NAMED} more` : '';
    const count = plural(jobs.length, { one: '# job', other: '# jobs' });
    return safeLine(
      w`Since ${assessment}: ${count} with ${assessed.tool} (${assessed.serial}) as it was found, in no impact assessment: ${named}${more}. Assess again with the same file: plugmark impact ${assessed.tool} --as-found FILE --by NAME`,
    );
  });
