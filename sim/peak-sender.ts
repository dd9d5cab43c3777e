import type { Emission } from './physics/world.ts';

/** A pull has begun beyond this, and is over once the torque has stayed below half of it for so long. */
const BEGINS_COUNTS = 200;
const ENDS_US = 150_000;

/**
 * The electronics of a wrench that sends one figure a pull, the highest torque, once the torque is gone. Other readings
 * pass as they are.
 */
export function peakSender(): (emission: Readonly<Emission>) => Readonly<Emission> | null {
  let peak = 0;
  let lowSinceUs: number | null = null;
  return (emission) => {
    const { kind, atUs, counts } = emission;
    if (kind === 'gap') return emission;
    if (Math.abs(counts) > Math.max(BEGINS_COUNTS, Math.abs(peak))) peak = counts;
    if (2 * Math.abs(counts) > BEGINS_COUNTS) lowSinceUs = null;
    else lowSinceUs ??= atUs;
    if (peak === 0 || lowSinceUs === null || atUs - lowSinceUs < ENDS_US) return null;
    const sent = { ...emission, counts: peak };
    peak = 0;
    return sent;
  };
}
