import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Arrival } from '../../../drivers/bluetooth/counter.ts';
import { scalingOf } from '../../../drivers/profile/figure.ts';
import type { Profile } from '../../../drivers/profile/schema.ts';
import { FrameStream } from '../../../drivers/profile/stream.ts';
import { CATALOGUE } from '../../../sim/devices/catalogue.ts';
import { Sender } from '../../../sim/devices/device.ts';
import { scaled } from '../../../src/reading.ts';

/** The device with torque and angle, whose angle starts again at a full turn. */
function wrapping(): Profile {
  const profile = CATALOGUE['torque and angle'];
  const layout = JSON.stringify(profile.layout).replace('"is":"angle"', '"is":"angle","wraps":true');
  return { ...profile, layout: JSON.parse(layout) };
}

/** What the station makes of these true angles, from the first one on, in degrees. */
function turned(anglesDeg: readonly number[]): readonly number[] {
  const profile = wrapping();
  const sender = new Sender(profile);
  const arrivals: Arrival[] = [];
  const stream = new FrameStream(profile, (arrival) => arrivals.push(arrival), {
    source: 'x',
    kind: 'value',
    openedUs: 0,
  });
  for (const [i, angleDeg] of anglesDeg.entries())
    for (const packet of sender.packets([{ si: 10, angleDeg }])) stream.take(packet, (i + 1) * 20_000);
  const { exponent } = scalingOf(profile.layout, 'angle') ?? { exponent: 0 };
  const read = arrivals.flatMap((one) =>
    one.kind === 'value' && one.angleCounts !== undefined ? [scaled(one.angleCounts, exponent)] : [],
  );
  return read.map((angle) => angle - (read[0] ?? 0));
}

describe('an angle that starts again at a full turn', () => {
  it('is counted on, both ways', () => {
    expect(turned([350, 355, 362, 371, 358])).toEqual([0, 5, 12, 21, 8]);
    expect(turned([5, -10, -150, -310])).toEqual([0, -15, -155, -315]);
  });

  it('gives every turn that was made in steps below half a turn', () => {
    const steps = fc.array(fc.integer({ min: -179, max: 179 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 359 }), steps, (first, by) => {
        const angles = [first];
        for (const step of by) angles.push((angles.at(-1) ?? 0) + step);
        const read = turned(angles);
        expect(read).toHaveLength(angles.length);
        for (const [i, angle] of angles.entries()) expect(read[i]).toBeCloseTo(angle - first, 6);
      }),
      { numRuns: 100 },
    );
  });
});
