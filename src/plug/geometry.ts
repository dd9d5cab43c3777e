import { z } from 'zod';
import type { Problem } from '../problem.ts';
import { w } from '../words/catalogue.ts';

/** A crowfoot or extension on the drive of a torque wrench. Lengths in one unit, whichever; valid for a pull square to the handle. */
export interface Crowfoot {
  /** From the centre of the drive to the centre of the hand. */
  readonly arm: number;
  /** From the centre of the drive to the centre of the fastener. */
  readonly offset: number;
  /** 0 when the crowfoot lengthens the wrench, 90 square to it, 180 folded back. */
  readonly angleDeg: number;
}

const millimetres = z.number().positive().max(2000);

/** The adapter of a job. `within`: how far each measure may be off; a straight extension needs no entry at all. */
export const adapterSchema = z
  .strictObject({
    armMm: millimetres.describe('From the centre of the drive to the centre of the hand.'),
    offsetMm: millimetres.describe('From the centre of the drive to the centre of the plug.'),
    angleDeg: z
      .number()
      .min(0)
      .max(180)
      .describe('0 in line with the wrench, 90 square to it, 180 folded back.'),
    within: z
      .strictObject({
        armMm: millimetres.describe('Of the arm.'),
        offsetMm: millimetres.describe('Of the offset.'),
        angleDeg: z.number().positive().max(45).describe('Of the angle.'),
      })
      .describe('How far each of the three may be off.'),
  })
  .refine(({ armMm, offsetMm, angleDeg }) => armMm + offsetMm * Math.cos((angleDeg * Math.PI) / 180) > 0, {
    path: ['offsetMm'],
    error: () => w`expected an adapter that leaves a lever between hand and plug`,
  });
export type Adapter = z.infer<typeof adapterSchema>;

/** Beyond this bend a universal joint passes torque too unevenly. Common practice, no source; at 15° it is 3.5 %. */
const MOST_BENT_DEG = 15;

/** What lets the wrench stand at an angle to the plug, and so passes on another torque than it is given. */
export const flexJointSchema = z.strictObject({
  kind: z
    .enum(['universal-joint', 'wobble-extension'])
    .describe('A universal joint, or an extension with a rounded drive.'),
  bentDeg: z.number().min(0).max(60).describe('How far it is bent at most, in degrees.'),
  stated: z
    .strictObject({
      percent: z.number().positive().max(50).describe('In per cent of the torque at the plug.'),
      basis: z.string().min(1).max(160).describe('Who measured that, and how.'),
    })
    .exactOptional()
    .describe('How far the torque may be off by it. Without this only a universal joint up to 15° is taken.'),
});
export type FlexJoint = z.infer<typeof flexJointSchema>;

/** Why nothing can be proven through it; null where its share of the uncertainty is known. */
export function flexJointRefused({ kind, bentDeg, stated }: FlexJoint): Problem | null {
  if (stated !== undefined) return null;
  const next = w`Use a straight extension, or state how far the torque may be off by it, and who measured that.`;
  if (kind === 'wobble-extension')
    return {
      code: 'flex-joint-refused',
      where: 'flexJoint.stated',
      message: w`nobody can compute what torque a wobble extension passes on when it is bent`,
      next,
    };
  if (bentDeg <= MOST_BENT_DEG) return null;
  return {
    code: 'flex-joint-refused',
    where: 'flexJoint.bentDeg',
    message: w`a universal joint bent by ${bentDeg}° passes torque on too unevenly; ${MOST_BENT_DEG}° is the most`,
    next,
  };
}

/** What the wrench must show for the fastener to get `target`: T·L/(L + E·cos θ). */
export function settingFor(target: number, crowfoot: Crowfoot): number {
  return target / leverage(crowfoot);
}

/** What the fastener gets when the wrench shows `setting`: S·(L + E·cos θ)/L. */
export function actualAt(setting: number, crowfoot: Crowfoot): number {
  return setting * leverage(crowfoot);
}

/** The lengths of an adapter; none means the plug straight under the drive. */
export function crowfootOf(adapter: Adapter | undefined): Crowfoot {
  return adapter === undefined
    ? { arm: 1, offset: 0, angleDeg: 0 }
    : { arm: adapter.armMm, offset: adapter.offsetMm, angleDeg: adapter.angleDeg };
}

/** Torque on the fastener for each torque on the drive. Lengths that make no lever throw RangeError. */
export function leverage({ arm, offset, angleDeg }: Crowfoot): number {
  const effective = arm + offset * Math.cos((angleDeg * Math.PI) / 180);
  if (!(arm > 0 && offset >= 0 && effective > 0))
    throw new RangeError(`arm ${arm}, offset ${offset} and angle ${angleDeg}° make no lever`);
  return effective / arm;
}
