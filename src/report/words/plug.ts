/** Why a plug goes to the scrap, and what two wires in its gap showed. */
import type { ScrapReason } from '../../job/event.ts';
import type { WireOutcome } from '../../plug/gap.ts';
import type { SeatTurn } from '../../plug/seat-turn.ts';
import { phrases, w } from '../../words/catalogue.ts';

export const SCRAP_WORDS: Readonly<Record<ScrapReason, string>> = phrases({
  dropped: 'it was dropped',
  'broken-tip': 'its tip is broken',
  'cracked-insulator': 'its insulator is cracked',
  gap: 'its gap cannot be set within the rules',
});

/** For what seat a turn is advised. */
export const SEAT_TURN_WORDS: Readonly<Record<SeatTurn['seat'], string>> = phrases({
  'new-gasket': 'Usual for a new gasket',
  'used-gasket': 'Usual for a used gasket',
  conical: 'Usual for a conical seat',
});

/** What may go into a gap, and what may not. */
export const roundWireText = (): string =>
  w`No ramp or coin gauge: it levers on the tip and breaks a fine one.`;

export const WIRE_WORDS: Readonly<Record<WireOutcome, string>> = phrases({
  fits: 'the thin wire passes, the thick one does not',
  tight: 'the thin wire does not pass',
  wide: 'the thick wire passes',
});
