import type { Plug, Specification } from '../../src/plug/specification.ts';
import type { Random } from '../random.ts';

/** Torque per newton of clamp force, in metres: what the screw takes to tighten, and to loosen. */
export interface Screw {
  readonly tightenM: number;
  readonly loosenM: number;
}

interface Geometry {
  readonly diameterMm: number;
  readonly pitchMm: number;
  /** Mean radius of the gasket's ring. M14 after the worked example of the reference; the others are assumptions. */
  readonly ringMm: number;
}

const GEOMETRY: Readonly<Record<Plug['thread'], Geometry>> = {
  M8x1: { diameterMm: 8, pitchMm: 1, ringMm: 5.1 },
  M10x1: { diameterMm: 10, pitchMm: 1, ringMm: 6.2 },
  'M12x1.25': { diameterMm: 12, pitchMm: 1.25, ringMm: 7.5 },
  'M14x1.25': { diameterMm: 14, pitchMm: 1.25, ringMm: 8.75 },
  'M18x1.5': { diameterMm: 18, pitchMm: 1.5, ringMm: 10.9 },
};

/** Mean coefficient of friction. 0.10 to 0.20 spans the worked examples of Motosh; the split by state is an assumption. */
const FRICTION: Readonly<Record<Specification['threads'], number>> = {
  dry: 0.15,
  'factory-coated': 0.13,
  oiled: 0.12,
  'anti-seize': 0.1,
};

/** From joint to joint. Assumption: the ±25 to ±35 % of preload that NASA-STD-5020 names, taken as about 3 sigma. */
const FRICTION_SIGMA_SHARE = 0.1;

/** Half of the 63° included angle of a conical seat (from memory); the contact radius is an assumption. */
const CONE_HALF_ANGLE_RAD = (31.5 * Math.PI) / 180;
const CONE_CONTACT_BEYOND_THREAD_MM = 0.7;

/**
 * Motosh: T = F·(P/2π + µt·rt/cos 30° + µn·rn), the pitch term changing its sign when loosening. On a cone the seat's
 * normal force is F/sin(half angle).
 */
export function screwOf(plug: Pick<Plug, 'thread' | 'seat'>, threadMu: number, seatMu: number): Screw {
  const { diameterMm, pitchMm, ringMm } = GEOMETRY[plug.thread];
  const pitch = pitchMm / (2 * Math.PI);
  const flankRadius = (diameterMm - 0.649519 * pitchMm) / 2;
  const seat =
    plug.seat === 'gasket'
      ? ringMm
      : (diameterMm / 2 + CONE_CONTACT_BEYOND_THREAD_MM) / Math.sin(CONE_HALF_ANGLE_RAD);
  const friction = (threadMu * flankRadius) / Math.cos(Math.PI / 6) + seatMu * seat;
  return { tightenM: (pitch + friction) / 1000, loosenM: (friction - pitch) / 1000 };
}

/** The screw as the maker of the torque figure thought of it: dry, mean friction. */
export function referenceScrew(plug: Pick<Plug, 'thread' | 'seat'>): Screw {
  return screwOf(plug, FRICTION.dry, FRICTION.dry);
}

/** One screw of many: friction drawn for thread and seat. */
export function drawScrew(
  plug: Pick<Plug, 'thread' | 'seat'>,
  threads: Specification['threads'],
  random: Random,
): Screw {
  const mu = FRICTION[threads];
  const sigma = FRICTION_SIGMA_SHARE * mu;
  return screwOf(plug, random.within(mu, sigma, 3), random.within(mu, sigma, 3));
}
