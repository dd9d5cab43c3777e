/** The one cylinder that does not look like the rest: it tells more than any shade of colour. */
import type { JobState, OldPlug } from '../../job/state.ts';
import { shownUnit } from '../../quantity/shown.ts';
import { CONDITIONS, DAMAGE } from '../../report/words/condition.ts';
import { called } from '../../sequence/plan.ts';
import { w } from '../../words/catalogue.ts';
import { capital, roughGap } from '../words.ts';

/** Fewer plugs have no usual look. */
const LEAST = 3;
/** Wear differs by less between the cylinders of one engine. Assumption. */
const GAP_APART_MM = 0.15;

type Read = NonNullable<OldPlug['read']>;

const look = ({ condition, damage }: Read): string =>
  [CONDITIONS[condition].word, ...damage.map((one) => DAMAGE[one].words)].join(', ');

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? 0) + upper) / 2;
}

/** A sentence about the plug that is unlike the others; null where none or more than one is. */
export function outlier(job: JobState): string | null {
  return outlierByLook(job) ?? outlierByGap(job);
}

const name = (job: JobState, cylinder: number): string => capital(called(job.order.engine, cylinder));

function outlierByLook(job: JobState): string | null {
  const seen = job.cylinders.flatMap(({ cylinder }) => {
    const read = job.oldPlugs[cylinder]?.read ?? null;
    return read === null ? [] : [{ cylinder, look: look(read) }];
  });
  const looks = new Set(seen.map((one) => one.look));
  if (seen.length < LEAST || looks.size !== 2) return null;
  const alone = seen.filter((one) => seen.filter((other) => other.look === one.look).length === 1);
  const [one] = alone;
  const other = seen.find((plug) => plug !== one);
  if (one === undefined || other === undefined || alone.length > 1) return null;
  return w`${name(job, one.cylinder)} differs from the others: ${one.look}. The others: ${other.look}.`;
}

function outlierByGap(job: JobState): string | null {
  const gaps = job.cylinders.flatMap(({ cylinder }) => {
    const gapMm = job.oldPlugs[cylinder]?.gap?.gapMm ?? null;
    return gapMm === null ? [] : [{ cylinder, gapMm }];
  });
  if (gaps.length < LEAST) return null;
  const usual = median(gaps.map(({ gapMm }) => gapMm));
  const alone = gaps.filter(({ gapMm }) => Math.abs(gapMm - usual) > GAP_APART_MM);
  const [one] = alone;
  if (one === undefined || alone.length > 1) return null;
  const unit = shownUnit('mm');
  return w`${name(job, one.cylinder)} differs from the others: gap ${roughGap(one.gapMm)} ${unit}. The others: about ${roughGap(usual)} ${unit}.`;
}
