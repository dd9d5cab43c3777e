import type { Instrument } from '../instrument/instrument.ts';
import { type DecisionRule, largestExpandedBy, windowBy } from '../metrology/decision.ts';
import type { Window } from '../metrology/judgement.ts';
import type { Problem } from '../problem.ts';
import { gapText, torqueText } from '../quantity/shown.ts';
import type { ToolId } from '../reading.ts';
import { w } from '../words/catalogue.ts';
import { type Circumstances, circumstancesOf, measured, readingFor } from './measurement.ts';
import type { JobState } from './state.ts';

interface Limits {
  readonly lower: number;
  readonly upper: number;
}

/** The window that an instrument can prove within limits at the plug, U at each limit being that of a reading there. */
export function windowFor(
  instrument: Instrument,
  { lower, upper }: Limits,
  circumstances: Circumstances,
  rule: DecisionRule,
): Window {
  const spreadAt = (value: number) => {
    const reading = readingFor(instrument, value, circumstances);
    return measured(instrument, reading, circumstances, null).budget;
  };
  const unit = instrument.quantity === 'torque' ? 'N.m' : 'mm';
  return windowBy(rule, { unit, lowerLimit: lower, upperLimit: upper, spreadAt });
}

/** Said before the job starts: this instrument cannot decide this window, and what would. */
export function undecidable(window: Window, where: string, rule: DecisionRule): Problem | null {
  if (window.decidable) return null;
  const text = window.unit === 'N.m' ? torqueText : gapText;
  const [lower, upper] = [text(window.lowerLimit), text(window.upperLimit)];
  return {
    code: 'window-not-decidable',
    where,
    message: w`this tool cannot prove any reading between ${lower} and ${upper}: its uncertainty (U = ${text(window.expandedAtUpper)}) leaves no room in the window`,
    next: w`Use an instrument with an expanded uncertainty below ${text(largestExpandedBy(rule, window))}.`,
  };
}

/**
 * The limits of a window as a wrench reads them, the one in use unless named: through the adapter, and with its error where
 * the shop corrects.
 */
export function asWrenchReads(
  state: Pick<JobState, 'instruments' | 'order'> & {
    readonly basis: Pick<JobState['basis'], 'on'>;
    readonly inUse?: JobState['inUse'];
  },
  window: Window,
  tool: ToolId | null = state.inUse?.torque ?? null,
): { readonly lowerNm: number; readonly upperNm: number } {
  const wrenches = state.instruments.filter(({ quantity }) => quantity === 'torque');
  const wrench = wrenches.find(({ id }) => id === tool) ?? wrenches[0];
  if (wrench === undefined) return { lowerNm: window.lowerLimit, upperNm: window.upperLimit };
  const circumstances = circumstancesOf(state.basis.on, state.order);
  return {
    lowerNm: readingFor(wrench, window.lowerLimit, circumstances),
    upperNm: readingFor(wrench, window.upperLimit, circumstances),
  };
}
