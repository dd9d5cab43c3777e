/** A crowfoot or extension on the drive of a torque wrench. Lengths in one unit, whichever; valid for a pull square to the handle. */
export interface Crowfoot {
  /** From the centre of the drive to the centre of the hand. */
  readonly arm: number;
  /** From the centre of the drive to the centre of the fastener. */
  readonly offset: number;
  /** 0 when the crowfoot lengthens the wrench, 90 square to it, 180 folded back. */
  readonly angleDeg: number;
}

/** What the wrench must show for the fastener to get `target`: T·L/(L + E·cos θ). */
export function settingFor(target: number, crowfoot: Crowfoot): number {
  return target / gain(crowfoot);
}

/** What the fastener gets when the wrench shows `setting`: S·(L + E·cos θ)/L. */
export function actualAt(setting: number, crowfoot: Crowfoot): number {
  return setting * gain(crowfoot);
}

/** Torque on the fastener for each torque on the drive. Lengths that make no lever throw RangeError. */
function gain({ arm, offset, angleDeg }: Crowfoot): number {
  const effective = arm + offset * Math.cos((angleDeg * Math.PI) / 180);
  if (!(arm > 0 && offset >= 0 && effective > 0))
    throw new RangeError(`arm ${arm}, offset ${offset} and angle ${angleDeg}° make no lever`);
  return effective / arm;
}
