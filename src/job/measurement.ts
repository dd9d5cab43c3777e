/** What one reading is worth: the value at the plug, and the budget of its uncertainty. */
import type { Instrument } from '../instrument/instrument.ts';
import { instrumentTerms } from '../instrument/uncertainty.ts';
import { type Budget, budgetOf } from '../metrology/budget.ts';
import type { Term } from '../metrology/term.ts';
import { adapterTerms, bendTerm, statedJointTerm } from '../metrology/terms.ts';
import {
  type Adapter,
  actualAt,
  crowfootOf,
  type FlexJoint,
  leverage,
  settingFor,
} from '../plug/geometry.ts';

/** What every reading of a job has in common. */
export interface Circumstances {
  /** ISO date of the job. */
  readonly on: string;
  readonly adapter: Adapter | undefined;
  readonly flexJoint?: FlexJoint | undefined;
}

/** Those of a job on a day: what its order puts between wrench and plug. */
export const circumstancesOf = (
  on: string,
  between: { readonly adapter?: Adapter | null; readonly flexJoint?: FlexJoint },
): Circumstances => ({ on, adapter: between.adapter ?? undefined, flexJoint: between.flexJoint });

export interface Measured {
  /** Torque on the plug in N·m, or gap in mm. */
  readonly value: number;
  /** Its rows in the unit of the value. */
  readonly budget: Budget;
}

/**
 * A reading of an instrument, in its own unit, turned into what the plug saw: corrected where the shop corrects, through
 * the adapter where there is one. `peakStandard` is what a pull says of its own peak, null for anything else.
 */
export function measured(
  instrument: Instrument,
  reading: number,
  { on, adapter, flexJoint }: Circumstances,
  peakStandard: number | null,
): Measured {
  const { correction, terms } = instrumentTerms(instrument, reading, on, peakStandard);
  const corrected = reading - correction;
  if (instrument.quantity === 'length') return { value: corrected, budget: budgetOf(terms) };
  const foot = crowfootOf(adapter);
  const gain = leverage(foot);
  const seen = terms.map((term): Term => ({ ...term, sensitivity: term.sensitivity * gain }));
  const geometry = adapter === undefined ? [] : adapterTerms(adapter, adapter.within, corrected);
  const value = actualAt(corrected, foot);
  const joint = flexJoint === undefined ? [] : [flexJointTerm(flexJoint, value)];
  return { value, budget: budgetOf([...seen, ...geometry, ...joint]) };
}

const flexJointTerm = ({ bentDeg, stated }: FlexJoint, valueNm: number): Term =>
  stated === undefined ? bendTerm(bentDeg, valueNm) : statedJointTerm(stated, valueNm);

/** Certificates are nearly straight, so each round of this takes the error of the one before down to a share of itself. */
const ROUNDS = 12;

/** What the instrument must read for the plug to see `value`: the other direction of {@link measured}. */
export function readingFor(instrument: Instrument, value: number, { on, adapter }: Circumstances): number {
  const setting = instrument.quantity === 'torque' ? settingFor(value, crowfootOf(adapter)) : value;
  let reading = setting;
  for (let round = 0; round < ROUNDS; round += 1) {
    const next = setting + instrumentTerms(instrument, reading, on, null).correction;
    if (next === reading) break;
    reading = next;
  }
  return reading;
}
