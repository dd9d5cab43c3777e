import type { Window } from '../metrology/judgement.ts';
import { shownLimit } from '../quantity/shown.ts';
import { w } from '../words/catalogue.ts';
import { figure, lowerBound, UNIT_TEXT, upperBound } from './figures.ts';

/** A window in words, its figures kept beside them for CSV and plots. */
export interface WindowText {
  readonly limits: string;
  /** Says so when no reading can prove conformity. */
  readonly acceptance: string;
  readonly guard: string;
  readonly figures: Window;
}

export function windowText(window: Window): WindowText {
  const { unit } = window;
  const name = UNIT_TEXT[unit];
  return {
    limits: w`${shownLimit(window.lowerLimit, unit, 'lower')} to ${shownLimit(window.upperLimit, unit, 'upper')} ${name}`,
    acceptance: window.decidable
      ? w`${lowerBound(window.acceptLower, unit)} to ${upperBound(window.acceptUpper, unit)} ${name}`
      : w`none: the instrument is too coarse for these limits`,
    guard: `${window.guardBandFactor} · U; U (95 %) ${expandedText(window)}`,
    figures: window,
  };
}

function expandedText({ unit, expandedAtLower, expandedAtUpper }: Window): string {
  const [lower, upper] = [figure(expandedAtLower, unit), figure(expandedAtUpper, unit)];
  const name = UNIT_TEXT[unit];
  return lower === upper ? `${lower} ${name}` : w`${lower} (lower), ${upper} ${name} (upper)`;
}
