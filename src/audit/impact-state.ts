/** The impact assessments in the log of a station: what was found, what was decided for each job, what is still open. */
import type { StationEntry } from '../evidence/log.ts';
import type { ImpactDecision, ImpactItem, StationEvent } from '../evidence/station-event.ts';
import type { Certificate } from '../instrument/certificate.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';

export interface Decided {
  readonly decision: ImpactDecision;
  /** The later job that did it again; null for any other decision. */
  readonly redoneIn: string | null;
  readonly because: string;
  readonly by: string;
  readonly at: string;
}

export interface ItemState extends ImpactItem {
  /** All decisions; the last one counts. */
  readonly decided: readonly Decided[];
  /** Not decided, or recalled and not redone yet. */
  readonly open: boolean;
}

export interface ImpactAssessment {
  readonly assessment: string;
  readonly assessed: Extract<StationEvent, { type: 'assessment-made' }>;
  /** Its entry in the log. It does not see what was entered after it. */
  readonly seq: number;
  readonly at: string;
  readonly by: string;
  /** What the laboratory found; null only in a log that lost it. */
  readonly asFound: Certificate | null;
  /** The last good check; null where the log holds none from before. */
  readonly lastGood: Certificate | null;
  readonly items: readonly ItemState[];
  /** `because` is null where every proof holds, so that nothing was left to decide. */
  readonly closed: { readonly at: string; readonly by: string; readonly because: string | null } | null;
}

/** All impact assessments, the oldest first. */
export function impactsOf(entries: readonly StationEntry[]): readonly ImpactAssessment[] {
  const asFoundBy = new Map<string, Certificate>();
  const checks = new Map<string, Certificate>();
  const all = new Map<string, ImpactAssessment>();
  for (const { event, at, by, seq } of entries) {
    if (event.type === 'instrument-recorded' && event.instrument.certificate !== undefined) {
      const { certificate } = event.instrument;
      checks.set(checkKey(certificate), certificate);
    }
    if (event.type === 'as-found-recorded') asFoundBy.set(event.digest, event.asFound);
    if (event.type === 'assessment-made')
      all.set(event.assessment, {
        assessment: event.assessment,
        assessed: event,
        seq,
        at,
        by,
        asFound: asFoundBy.get(event.digest) ?? null,
        lastGood:
          (event.lastGood && checks.get(checkKey({ ...event.lastGood, serial: event.serial }))) ?? null,
        items: event.items.map((item) => ({ ...item, decided: [], open: true })),
        closed: null,
      });
    if (event.type === 'item-decided') {
      const { assessment, job, decision, because, redoneIn = null } = event;
      const one = all.get(assessment);
      if (one === undefined) continue;
      const decided = (item: ItemState): ItemState =>
        item.job === job
          ? {
              ...item,
              decided: [...item.decided, { decision, redoneIn, because, by, at }],
              open: decision === 'recall',
            }
          : item;
      all.set(assessment, { ...one, items: one.items.map(decided) });
    }
    if (event.type === 'assessment-closed') {
      const one = all.get(event.assessment);
      if (one !== undefined)
        all.set(event.assessment, { ...one, closed: { at, by, because: event.because ?? null } });
    }
  }
  return [...all.values()];
}

const checkKey = ({ number, date, serial }: Pick<Certificate, 'number' | 'date' | 'serial'>) =>
  `${date} ${serial} ${number}`;

/** The number of the next impact assessment. */
export const nextAssessment = (all: readonly ImpactAssessment[]) => `IA-${all.length + 1}`;

/** What is decided about a job. */
export interface Decision {
  readonly job: string;
  readonly decision: ImpactDecision;
  /** The later job that did it again, for `redone`. */
  readonly redoneIn: string | null;
}

/**
 * What decisions about jobs put into the log. Another impact assessment on the same finding may hold a job as well, because the
 * job went on in between; the decision counts there too. Problems: `impact-closed`, `item-unknown`.
 */
export function decide(
  { assessment, items, closed, assessed }: ImpactAssessment,
  decisions: readonly Decision[],
  because: string,
  all: readonly ImpactAssessment[],
): Result<readonly StationEvent[]> {
  if (closed !== null)
    return err({
      code: 'impact-closed',
      where: assessment,
      message: w`this impact assessment was closed by ${closed.by} on ${closed.at.slice(0, 10)}`,
      next: w`The decisions stand. Assess again if something new was found.`,
    });
  const unknown = decisions.find(({ job }) => !items.some((item) => item.job === job));
  if (unknown !== undefined)
    return err({
      code: 'item-unknown',
      where: assessment,
      message: w`job ${unknown.job} is not among the jobs that this impact assessment touches`,
      next: w`List them with "plugmark impact show ${assessment}".`,
    });
  return ok(
    decisions.flatMap(({ job, decision, redoneIn }) =>
      all
        .filter((one) => one.assessed.digest === assessed.digest && one.closed === null)
        .filter((one) => one.items.some((item) => item.job === job))
        .map((one): StationEvent => {
          const decided = {
            type: 'item-decided',
            assessment: one.assessment,
            job,
            decision,
            because,
          } as const;
          return redoneIn === null ? decided : { ...decided, redoneIn };
        }),
    ),
  );
}

/** Closes an impact assessment. Problems: `impact-closed`; `impact-open`, which names what is still open. */
export function close(
  { assessment, items, closed }: ImpactAssessment,
  because: string,
): Result<StationEvent> {
  if (closed !== null)
    return err({
      code: 'impact-closed',
      where: assessment,
      message: w`this impact assessment was closed by ${closed.by} on ${closed.at.slice(0, 10)}`,
      next: w`There is nothing more to do.`,
    });
  const open = items.filter((item) => item.open);
  const [first] = open;
  if (first === undefined) return ok({ type: 'assessment-closed', assessment, because });
  const recalled = open.filter(({ decided }) => decided.length > 0).length;
  const example = first.decided.length > 0 ? 'redone' : 'inform';
  return err({
    code: 'impact-open',
    where: assessment,
    message: w`${open.length} of ${items.length} jobs are still open: ${open.length - recalled} not decided, ${recalled} recalled and not redone`,
    next: w`Decide about each, for example: plugmark impact decide ${assessment} ${first.job} --as ${example} --because "..." --by NAME`,
  });
}
