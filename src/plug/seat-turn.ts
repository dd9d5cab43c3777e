/**
 * The turn from finger-tight that plug makers advise in general, by seat: for a plug that no torque wrench reaches and of
 * whose turn the order says nothing. Less accurate than a torque, and no proof of one. Makers differ; the box goes first.
 */
import type { Plug } from './specification.ts';

export interface SeatTurn {
  readonly turn: string;
  /** Of which seat. */
  readonly seat: 'new-gasket' | 'used-gasket' | 'conical';
  readonly cited: string;
}

const CATALOGUE = 'NGK, European catalogue 2025';
const UK = 'NGK, fitting advice, British edition';

export function seatTurn({ seat, gasket, thread, condition }: Plug): SeatTurn {
  if (seat === 'conical') return { turn: '1/16 turn', seat: 'conical', cited: CATALOGUE };
  const used = gasket === 'used' || (gasket === undefined && condition === 'used');
  if (used) return { turn: '1/12 turn', seat: 'used-gasket', cited: UK };
  const small = thread === 'M8x1' || thread === 'M10x1';
  return { turn: small ? '1/2 turn' : '1/2-2/3 turn', seat: 'new-gasket', cited: CATALOGUE };
}
