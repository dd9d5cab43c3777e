import type { Fit } from './specification.ts';

/** A screwed joint: pitch, radius at the pitch diameter, and mean radius of the bearing ring, in mm. */
export interface Joint {
  readonly pitchMm: number;
  readonly threadRadiusMm: number;
  readonly bearingRadiusMm: number;
}

/** Where the torque goes, in N·m for each kN of clamp force. */
export interface TorqueParts {
  readonly pitch: number;
  readonly thread: number;
  readonly bearing: number;
  readonly total: number;
}

const COS_HALF_FLANK = Math.cos(Math.PI / 6);

/** Motosh's decomposition T = F·(P/2π + µt·rt/cos 30° + µn·rn); VDI 2230 writes the same with 0.16 and 0.58. */
export function torqueParts(joint: Joint, threadFriction: number, bearingFriction: number): TorqueParts {
  const pitch = joint.pitchMm / (2 * Math.PI);
  const thread = (threadFriction * joint.threadRadiusMm) / COS_HALF_FLANK;
  const bearing = bearingFriction * joint.bearingRadiusMm;
  return { pitch, thread, bearing, total: pitch + thread + bearing };
}

const THREADS: Readonly<Record<Fit['thread'], readonly [diameterMm: number, pitchMm: number]>> = {
  M8x1: [8, 1],
  M10x1: [10, 1],
  'M12x1.25': [12, 1.25],
  'M14x1.25': [14, 1.25],
  'M18x1.5': [18, 1.5],
};
/** Mean radius of the seat ring over thread diameter: 14.5 to 20.5 mm on M14, the same shape on the others. Assumption. */
const SEAT_SHARE = 8.75 / 14;

export const threadDiameterMm = (thread: Fit['thread']): number => THREADS[thread][0];

/** Nominal stress area of the thread, taken as solid: π/4·(d - 0.9382·P)² (ISO 898-1:2013, 9.1.6.1). */
export function stressAreaMm2(thread: Fit['thread']): number {
  const [diameterMm, pitchMm] = THREADS[thread];
  return (Math.PI / 4) * (diameterMm - 0.9382 * pitchMm) ** 2;
}

/** The joint that a plug makes with its head; the pitch diameter is that of ISO 724. */
export function plugJoint(thread: Fit['thread']): Joint {
  const [diameterMm, pitchMm] = THREADS[thread];
  return {
    pitchMm,
    threadRadiusMm: (diameterMm - 0.649519 * pitchMm) / 2,
    bearingRadiusMm: SEAT_SHARE * diameterMm,
  };
}

/** Torque for the same clamp force after friction went from `dry` to `lubricated`, as a share of the torque before. */
export function lubricatedShare(thread: Fit['thread'], dry: number, lubricated: number): number {
  const joint = plugJoint(thread);
  return torqueParts(joint, lubricated, lubricated).total / torqueParts(joint, dry, dry).total;
}
