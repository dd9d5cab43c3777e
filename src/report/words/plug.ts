/** Why a plug goes to the scrap, and what two wires in its gap showed. */
import type { ScrapReason } from '../../job/event.ts';
import type { WireOutcome } from '../../plug/gap.ts';

export const SCRAP_WORDS: Readonly<Record<ScrapReason, string>> = {
  dropped: 'it was dropped',
  'broken-tip': 'its tip is broken',
  'cracked-insulator': 'its insulator is cracked',
  gap: 'its gap cannot be set within the rules',
};

export const WIRE_WORDS: Readonly<Record<WireOutcome, string>> = {
  fits: 'the thin wire passes, the thick one does not',
  tight: 'the thin wire does not pass',
  wide: 'the thick wire passes',
};
