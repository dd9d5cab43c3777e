import { ok, type Result } from '../result.ts';
import { type DeliveredLot, deliveredByLot } from '../statistics/delivered.ts';
import type { AttemptRow } from './attempt.ts';

/** New plugs of one pair of limits, by part and lot. */
export interface DeliveredUnder {
  readonly lowerLimit: number;
  readonly upperLimit: number;
  readonly lots: readonly DeliveredLot[];
  readonly simulated: boolean;
}

/**
 * The gaps of plugs as they came out of the box: the first reading of each plug, of jobs that fitted new ones (`isNew`
 * tells by their setup), held against the limits of the specification. Wires give no figure and are left out, as are void
 * jobs.
 */
export function deliveredGaps(
  rows: readonly AttemptRow[],
  isNew: (setupKey: string) => boolean,
  confidence = 0.95,
): Result<readonly DeliveredUnder[]> {
  const byLimits = new Map<string, AttemptRow[]>();
  for (const row of rows) {
    if (row.quantity !== 'length' || !row.first || row.voided || row.censored !== null) continue;
    if (row.valueSi === null || !isNew(row.setupKey)) continue;
    const key = `${row.lowerLimit}/${row.upperLimit}`;
    const there = byLimits.get(key);
    if (there === undefined) byLimits.set(key, [row]);
    else there.push(row);
  }
  const found: DeliveredUnder[] = [];
  for (const group of byLimits.values()) {
    const [first] = group;
    if (first === undefined) continue;
    const { lowerLimit, upperLimit } = first;
    const gaps = group.flatMap(({ part, lot, valueSi }) =>
      valueSi === null ? [] : [{ part, lot, gapMm: valueSi }],
    );
    const lots = deliveredByLot(gaps, { lower: lowerLimit, upper: upperLimit }, confidence);
    if (!lots.ok) return lots;
    const simulated = group.some((row) => row.simulated);
    found.push({ lowerLimit, upperLimit, lots: lots.value, simulated });
  }
  return ok(found);
}
