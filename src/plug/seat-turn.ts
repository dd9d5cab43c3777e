/**
 * The turn from finger-tight that plug makers advise in general, by seat: for a plug that no torque wrench reaches and of
 * whose turn the order says nothing. Less accurate than a torque, and no proof of one. Makers differ; the box goes first.
 */

import { phrases } from '../words/catalogue.ts';
import type { Plug } from './specification.ts';

export interface SeatTurn {
  readonly turn: string;
  /** Of which seat. */
  readonly seat: 'new-gasket' | 'used-gasket' | 'conical';
  readonly cited: string;
}

const CATALOGUE = 'NGK, European catalogue 2025';
const UK = 'NGK, fitting advice, British edition';

const TURNS = phrases({
  conical: '1/16 turn',
  used: '1/12 turn',
  small: '1/2 turn',
  new: '1/2-2/3 turn',
});

export function seatTurn({ seat, gasket, thread, condition }: Plug): SeatTurn {
  if (seat === 'conical') return { turn: TURNS.conical, seat: 'conical', cited: CATALOGUE };
  const used = gasket === 'used' || (gasket === undefined && condition === 'used');
  if (used) return { turn: TURNS.used, seat: 'used-gasket', cited: UK };
  const small = thread === 'M8x1' || thread === 'M10x1';
  return { turn: small ? TURNS.small : TURNS.new, seat: 'new-gasket', cited: CATALOGUE };
}
