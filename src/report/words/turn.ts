/** The turn of a plug in words. */
import type { Basis } from '../../job/basis.ts';
import type { Judgement } from '../../metrology/judgement.ts';
import { EVALUATION_WORD } from '../../metrology/verdict.ts';
import type { AngleFault, DetectedPull } from '../../pull/pull.ts';
import { snugOf } from '../../pull/snug.ts';
import { formatAngle } from '../../quantity/angle.ts';
import { fixed, phrases, w } from '../../words/catalogue.ts';

/** Why the angle of a pull says nothing although the tool sends one. */
export const ANGLE_FAULT_WORDS: Readonly<Record<AngleFault, string>> = phrases({
  missing: 'the angle did not come with every reading',
  jumped: 'the angle jumped',
  stuck: 'the angle stood still',
  backwards: 'the angle ran against the pull',
  drifting: 'the angle ran by itself while the wrench was at rest',
});

/** `turned 187°: 96° to the snug point, 91° from there`; why it was not measured; null where the tool sends no angle. */
export function turnText({ turn, angleFault, peakNm }: DetectedPull): string | null {
  if (angleFault !== undefined) return w`turn not measured: ${ANGLE_FAULT_WORDS[angleFault]}`;
  const plug = turn?.plug;
  if (plug === undefined) return null;
  const { runDownDeg, beyondDeg } = snugOf(plug);
  const turned = w`turned ${degrees(plug.turnedDeg)}`;
  return peakNm < 0 || runDownDeg < LITTLE_DEG || beyondDeg < LITTLE_DEG
    ? turned
    : w`${turned}: ${degrees(runDownDeg)} to the snug point, ${degrees(beyondDeg)} from there`;
}

/** With less on either side there is no snug point to speak of. */
const LITTLE_DEG = 5;

/** `180° to 240°`, or the one figure of an order without a tolerance. */
export const turnLimitsText = ({ lowerDeg, upperDeg }: NonNullable<Basis['turn']>): string =>
  lowerDeg < upperDeg ? w`${formatAngle(lowerDeg)} to ${formatAngle(upperDeg)}` : formatAngle(lowerDeg);

/** The verdict on a turn that the order asks for; null where it asks for none. */
export function turnVerdictText(turn: Judgement | null | undefined): string | null {
  if (turn === undefined) return null;
  if (turn === null) return w`turn not proven`;
  const { value, expandedUncertainty, result } = turn;
  return w`turn ${degrees(value)} ± ${degrees(expandedUncertainty)}: ${EVALUATION_WORD[result]}`;
}

export const degrees = (deg: number): string => `${fixed(deg, Math.abs(deg) < 10 ? 1 : 0)}°`;
