import type { Arrival } from '../../drivers/bluetooth/counter.ts';
import type { Made, Testable } from '../../drivers/package/contract.ts';
import { valueScaling } from '../../drivers/profile/decoder.ts';
import { scalingOf } from '../../drivers/profile/figure.ts';
import type { Profile } from '../../drivers/profile/schema.ts';
import { FrameStream } from '../../drivers/profile/stream.ts';
import { scaled } from '../../src/reading.ts';
import { Sender } from './device.ts';

/** Steps of the device that are tried; those that its frames cannot hold are left out. */
const TRIED = [0, 1, 100, 641, -641, 2534, 4107];

/** A profile as if it were a driver of its own, with examples made from the same description. */
export function testableOf(profile: Profile): Testable {
  const { exponent } = valueScaling(profile.layout);
  const session = () => {
    const arrivals: Arrival[] = [];
    const stream = new FrameStream(profile, (arrival) => arrivals.push(arrival), {
      source: 'test',
      kind: 'value',
      openedUs: 0,
    });
    let atUs = 1_000_000;
    return {
      take(bytes: Uint8Array): readonly Made[] {
        atUs += 1_000_000;
        // A pause lies in front of everything that comes.
        stream.pause();
        stream.take(bytes, atUs);
        return arrivals.splice(0).flatMap((arrival): readonly Made[] => {
          if (arrival.kind === 'raw') return [{ raw: Uint8Array.from(Buffer.from(arrival.hex, 'hex')) }];
          if (arrival.kind === 'not-known') return [{ value: null }];
          return 'counts' in arrival ? [{ value: arrival.counts }] : [];
        });
      },
    };
  };
  const all = SAMPLES.map((samples) =>
    [...TRIED, null].flatMap((steps) => exampleOf(profile, session, steps, samples)),
  );
  const examples = all.reduce((most, one) => (one.length > most.length ? one : most));
  const hasUnknown = examples.some(({ shows }) => shows.includes(null));
  return {
    quantity: profile.quantity,
    exponent,
    examples,
    session,
    streams: false,
    ...(!hasUnknown && { alwaysHasValue: true as const }),
  };
}

/** How many samples a frame may have. */
const SAMPLES = [1, 2, 4];

function exampleOf(
  profile: Profile,
  session: () => { take(bytes: Uint8Array): readonly Made[] },
  steps: number | null,
  samples: number,
): Testable['examples'] {
  const { exponent } = valueScaling(profile.layout);
  // In steps of the first of its units.
  const stepCounts = scalingOf(profile.layout, 'value')?.counts[0] ?? 1;
  const counts = steps === null ? null : steps * stepCounts;
  const si = counts === null ? null : scaled(counts, exponent);
  const shown = counts === null ? null : scaled(counts, exponent + (profile.quantity === 'length' ? 3 : 0));
  try {
    const bytes = new Sender(profile).frame(Array.from({ length: samples }, () => ({ si })));
    const made = session().take(bytes);
    const isHeld = made.length === samples && made.every((one) => 'value' in one && one.value === counts);
    return isHeld ? [{ hex: bytes.toString('hex'), shows: made.map(() => shown) }] : [];
  } catch {
    // The frame cannot hold it.
    return [];
  }
}
