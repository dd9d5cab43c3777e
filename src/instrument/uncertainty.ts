import { expandedFromPermissible } from '../metrology/terms.ts';
import type { Instrument } from './instrument.ts';

/** Expanded uncertainty (k = 2) of a reading of this instrument, in N·m or mm as the reading. */
export function expandedUncertainty({ permissibleDeviation, resolution }: Instrument, value: number): number {
  return expandedFromPermissible({ permissible: permissibleDeviation, resolution }, value).expanded;
}
