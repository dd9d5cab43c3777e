/**
 * What the impact assessments on one finding hold between them. A impact assessment saw nothing that was entered behind it, so that a tool
 * that was used on needs another; that one takes up only what none before it holds.
 */
import type { AttemptRow } from './attempt.ts';
import type { ImpactAssessment } from './impact-state.ts';

type Entered = Pick<AttemptRow, 'day' | 'seq'>;

/** Impact assessments on the same file of what was found, the oldest first. */
export const onFinding = (
  impacts: readonly ImpactAssessment[],
  digest: string,
): readonly ImpactAssessment[] => impacts.filter(({ assessed }) => assessed.digest === digest);

/** Whether one of them looked at an attempt, as it stands in the log now. */
export const isHeld = (onOne: readonly ImpactAssessment[], { day, seq }: Entered): boolean =>
  onOne.some((one) => one.assessed.from <= day && seq < one.seq);

/** The attempts of all jobs of which something is held by none of them: a job is judged as a whole. */
export function notHeld<Row extends AttemptRow>(
  rows: readonly Row[],
  onOne: readonly ImpactAssessment[],
): readonly Row[] {
  const streams = new Set(rows.filter((row) => !isHeld(onOne, row)).map(({ stream }) => stream));
  return rows.filter(({ stream }) => streams.has(stream));
}

/** A finding with the jobs since its newest impact assessment that none on it holds; void ones prove nothing and are left out. */
export interface Since {
  readonly newest: ImpactAssessment;
  readonly jobs: readonly string[];
}

/** Each finding once, with the newest impact assessment on it, and from when on what they have seen begins. */
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
