/**
 * What the impact assessments on one finding hold together. An assessment does not see what was entered after it. A tool that
 * was used on needs another one, which takes up only what none before it holds.
 */
import type { AttemptRow } from './attempt.ts';
import type { ImpactAssessment } from './impact-state.ts';

type Entered = Pick<AttemptRow, 'day' | 'seq'>;

/** Impact assessments on the same file of what was found, the oldest first. */
export const onFinding = (
  impacts: readonly ImpactAssessment[],
  digest: string,
): readonly ImpactAssessment[] => impacts.filter(({ assessed }) => assessed.digest === digest);

/** Whether one of them judged an attempt, as the log holds it now. */
export const isHeld = (onOne: readonly ImpactAssessment[], { day, seq }: Entered): boolean =>
  onOne.some((one) => one.assessed.from <= day && seq < one.seq);

/** All attempts of the jobs that none of them holds whole: a job is judged as a whole. */
export function notHeld<Row extends AttemptRow>(
  rows: readonly Row[],
  onOne: readonly ImpactAssessment[],
): readonly Row[] {
  const streams = new Set(rows.filter((row) => !isHeld(onOne, row)).map(({ stream }) => stream));
  return rows.filter(({ stream }) => streams.has(stream));
}

/** A finding, and the jobs since its newest impact assessment that none on it holds. Void jobs are left out. */
export interface Since {
  readonly newest: ImpactAssessment;
  readonly jobs: readonly string[];
}

/** Each finding once, with the newest impact assessment on it and the first day that any of them covers. */
export function findings(impacts: readonly ImpactAssessment[]): readonly {
  readonly newest: ImpactAssessment;
  readonly from: string;
  readonly onOne: readonly ImpactAssessment[];
}[] {
  return [...new Set(impacts.map(({ assessed }) => assessed.digest))].flatMap((digest) => {
    const onOne = onFinding(impacts, digest);
    const newest = onOne.at(-1);
    const [from] = onOne.map(({ assessed }) => assessed.from).sort();
    return newest === undefined || from === undefined ? [] : [{ newest, from, onOne }];
  });
}
