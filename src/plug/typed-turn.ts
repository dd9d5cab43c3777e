/** A turn as somebody types it who turned a plug by hand: `1/2`, `0.5`, `180°`, `1/2-2/3 turn`. */
import { limitsDeg } from '../quantity/compare.ts';
import { parseAngleRange } from '../quantity/range.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { TURN_POSSIBLE } from './bounds.ts';

const BARE = /^[\d\s.,/–-]+$/u;
/** As sources print it. */
const TURN = 'turn';
/** No plug is turned by more turns than this, and none by so few degrees: a figure without a unit is plain. */
const MOST_TURNS = 2;

/** The turn with its unit; why not, where it is none, or none that a plug can be turned by. */
export function typedTurn(text: string): Result<string, string> {
  const trimmed = text.trim();
  if (trimmed === '') return err(w`For example: 1/2 turn, or 180°.`);
  for (const printed of BARE.test(trimmed) ? [`${trimmed} ${TURN}`, `${trimmed}°`] : [trimmed]) {
    const parsed = parseAngleRange(printed);
    if (!parsed.ok) continue;
    const { lowerDeg, upperDeg } = limitsDeg(parsed.value);
    if (printed !== trimmed && parsed.value.unit === 'circ' && parsed.value.upper > MOST_TURNS) continue;
    const [least, most] = TURN_POSSIBLE;
    return lowerDeg < least || upperDeg > most
      ? err(w`${printed} is not possible: a plug is turned by ${least}° to ${most}°.`)
      : ok(printed);
  }
  return err(w`"${trimmed}" is no turn. For example: 1/2 turn, or 180°.`);
}
