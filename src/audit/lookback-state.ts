/** The look-backs of a station, as its log tells them: what was found, what was decided for each job, what is still open. */
import type { StationEntry } from '../evidence/log.ts';
import type { LookBackDecision, LookBackItem, StationEvent } from '../evidence/station-event.ts';
import type { Certificate } from '../instrument/certificate.ts';
import { err, ok, type Result } from '../result.ts';

export interface Decided {
  readonly decision: LookBackDecision;
  readonly because: string;
  readonly by: string;
  readonly at: string;
}

export interface ItemState extends LookBackItem {
  /** All that was decided, the last one holds. */
  readonly decided: readonly Decided[];
  /** Not decided, or called back and not done again yet. */
  readonly open: boolean;
}

export interface LookBack {
  readonly assessment: string;
  readonly made: Extract<StationEvent, { type: 'assessment-made' }>;
  readonly at: string;
  readonly by: string;
  /** What the laboratory found; null only in a log that lost it. */
  readonly asFound: Certificate | null;
  /** The last good check; null where the log holds none from before. */
  readonly lastGood: Certificate | null;
  readonly items: readonly ItemState[];
  readonly closed: { readonly at: string; readonly by: string; readonly because: string } | null;
}

/** All look-backs, the oldest first. */
export function lookBacksOf(entries: readonly StationEntry[]): readonly LookBack[] {
  const found = new Map<string, Certificate>();
  const checks = new Map<string, Certificate>();
  const all = new Map<string, LookBack>();
  for (const { event, at, by } of entries) {
    if (event.type === 'instrument-recorded' && event.instrument.certificate !== undefined) {
      const { certificate } = event.instrument;
      checks.set(checkKey(certificate), certificate);
    }
    if (event.type === 'as-found-recorded') found.set(event.digest, event.asFound);
    if (event.type === 'assessment-made')
      all.set(event.assessment, {
        assessment: event.assessment,
        made: event,
        at,
        by,
        asFound: found.get(event.digest) ?? null,
        lastGood:
          (event.lastGood && checks.get(checkKey({ ...event.lastGood, serial: event.serial }))) ?? null,
        items: event.items.map((item) => ({ ...item, decided: [], open: true })),
        closed: null,
      });
    if (event.type === 'item-decided') {
      const { assessment, job, decision, because } = event;
      const one = all.get(assessment);
      if (one === undefined) continue;
      const decided = (item: ItemState): ItemState =>
        item.job === job
          ? {
              ...item,
              decided: [...item.decided, { decision, because, by, at }],
              open: decision === 'recall',
            }
          : item;
      all.set(assessment, { ...one, items: one.items.map(decided) });
    }
    if (event.type === 'assessment-closed') {
      const one = all.get(event.assessment);
      if (one !== undefined)
        all.set(event.assessment, { ...one, closed: { at, by, because: event.because } });
    }
  }
  return [...all.values()];
}

const checkKey = ({ number, date, serial }: Pick<Certificate, 'number' | 'date' | 'serial'>) =>
  `${date} ${serial} ${number}`;

/** The number of the next look-back. */
export const nextAssessment = (all: readonly LookBack[]) => `LB-${all.length + 1}`;

/** What a decision about some jobs puts into the log. Problems: `lookback-closed`, `item-unknown`. */
export function decide(
  { assessment, items, closed }: LookBack,
  jobs: readonly string[],
  decision: LookBackDecision,
  because: string,
): Result<readonly StationEvent[]> {
  if (closed !== null)
    return err({
      code: 'lookback-closed',
      where: assessment,
      message: `this look-back was closed by ${closed.by} on ${closed.at.slice(0, 10)}`,
      next: 'What was decided stands. Look back again if something new was found.',
    });
  const unknown = jobs.find((job) => !items.some((item) => item.job === job));
  if (unknown !== undefined)
    return err({
      code: 'item-unknown',
      where: assessment,
      message: `job ${unknown} is not among the jobs that this look-back touches`,
      next: `List them with "plugmark lookback show ${assessment}".`,
    });
  return ok(jobs.map((job) => ({ type: 'item-decided', assessment, job, decision, because })));
}

/** The closing of a look-back. Problems: `lookback-closed`, `lookback-open`, which names what is still open. */
export function close({ assessment, items, closed }: LookBack, because: string): Result<StationEvent> {
  if (closed !== null)
    return err({
      code: 'lookback-closed',
      where: assessment,
      message: `this look-back was closed by ${closed.by} on ${closed.at.slice(0, 10)}`,
      next: 'There is nothing more to do.',
    });
  const open = items.filter((item) => item.open);
  const [first] = open;
  if (first === undefined) return ok({ type: 'assessment-closed', assessment, because });
  const recalled = open.filter(({ decided }) => decided.length > 0).length;
  const example = first.decided.length > 0 ? 'redone' : 'inform';
  return err({
    code: 'lookback-open',
    where: assessment,
    message: `${open.length} of ${items.length} jobs are still open: ${open.length - recalled} not decided, ${recalled} called back and not done again`,
    next: `Decide about each, for example: plugmark lookback decide ${assessment} ${first.job} --as ${example} --because "..." --by NAME`,
  });
}
