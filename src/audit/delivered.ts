import { type Mark, markOf, marksOf } from '../job/proof.ts';
import { ok, type Result } from '../result.ts';
import { type DeliveredGap, type DeliveredLot, deliveredByLot } from '../statistics/delivered.ts';
import type { AttemptRow } from './attempt.ts';

/** New plugs of one pair of limits, by part and lot. */
export interface DeliveredUnder {
  readonly lowerLimit: number;
  readonly upperLimit: number;
  readonly lots: readonly DeliveredLot[];
}

export interface Delivered {
  readonly under: readonly DeliveredUnder[];
  /** Marks of the gaps that are shown, where none of them is real. */
  readonly marks: readonly Mark[];
  /** Simulated and replayed gaps that were left out, because there are real ones. */
  readonly markedLeftOut: number;
}

/**
 * The gaps of plugs as they came out of the box: the first reading of each plug, of jobs that fitted new ones (`isNew`
 * tells by their setup), held against the limits of the specification. Wires give a verdict and no figure. Void jobs are
 * left out, simulated and replayed ones wherever there are others.
 */
export function deliveredGaps(
  rows: readonly AttemptRow[],
  isNew: (setupKey: string) => boolean,
  confidence = 0.95,
): Result<Delivered> {
  const all = rows.filter(
    (row) => row.quantity === 'length' && row.first && !row.voided && isNew(row.setupKey),
  );
  const real = all.filter((row) => markOf(row.source) === null);
  const shown = real.length === 0 ? all : real;
  const byLimits = new Map<string, AttemptRow[]>();
  for (const row of shown) {
    const key = `${row.lowerLimit}/${row.upperLimit}`;
    const there = byLimits.get(key);
    if (there === undefined) byLimits.set(key, [row]);
    else there.push(row);
  }
  const under: DeliveredUnder[] = [];
  for (const group of byLimits.values()) {
    const [first] = group;
    if (first === undefined) continue;
    const { lowerLimit, upperLimit } = first;
    const lots = deliveredByLot(group.flatMap(gapOf), { lower: lowerLimit, upper: upperLimit }, confidence);
    if (!lots.ok) return lots;
    under.push({ lowerLimit, upperLimit, lots: lots.value });
  }
  const marks = marksOf(shown.map(({ source }) => source));
  return ok({ under, marks, markedLeftOut: all.length - shown.length });
}

/** Null for a reading that was not judged. */
function gapOf({ part, lot, censored, result, side, valueSi }: AttemptRow): readonly DeliveredGap[] {
  if (censored === null) return valueSi === null ? [] : [{ part, lot, gapMm: valueSi }];
  if (censored !== 'bounded' || result === null) return [];
  if (result === 'NotOK') return [{ part, lot, wires: side === 'low' ? 'below' : 'above' }];
  return [{ part, lot, wires: result === 'OK' ? 'within' : 'unknown' }];
}
