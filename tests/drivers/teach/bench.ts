import type { Profile } from '../../../drivers/profile/schema.ts';
import type { Lesson } from '../../../drivers/teach/teach.ts';
import { Sender } from '../../../sim/devices/device.ts';
import { Random } from '../../../sim/random.ts';

/** A person at the bench with a device: at rest, and pulls whose peaks the display shows. */

/** Samples of a pull: up in a curve, held for a moment, down. */
function pull(peakNm: number, random: Random): number[] {
  const rise = Array.from({ length: 40 }, (_, i) => peakNm * Math.sin((i / 40) * (Math.PI / 2)) ** 1.5);
  const held = Array.from({ length: 5 }, () => peakNm);
  return [...rise, ...held, ...rise.toReversed()].map((nm) =>
    nm === peakNm ? nm : nm + 0.01 * Math.sign(peakNm) * -Math.abs(random.normal(0, 1)),
  );
}

const shown = (nm: number) => Number(nm.toFixed(2));

export function lessonOn(
  profile: Profile,
  peaksNm: readonly number[],
  proofNm: number,
  change: (packet: Buffer) => Buffer = (packet) => packet,
): Lesson {
  const random = new Random(profile.title);
  const sender = new Sender(profile);
  const samples = profile.layout.fields.find((field) => field.is === 'samples');
  const n = samples?.is === 'samples' ? (samples.count === 'rest' ? 3 : samples.count) : 1;
  let turned = 0;
  const sent = (nm: readonly number[]) => {
    const packets: Buffer[] = [];
    for (let i = 0; i + n <= nm.length; i += n) {
      turned += 0.7;
      packets.push(...sender.packets(nm.slice(i, i + n).map((si) => ({ si, angleDeg: turned }))));
    }
    return packets.map(change);
  };
  const rest = sent(Array.from({ length: 40 }, () => 0.01 * Math.round(random.normal(0, 1))));
  const stated = peaksNm.map((peak) => ({ figure: shown(peak), sent: sent(pull(peak, random)) }));
  return {
    title: `Taught: ${profile.title}`,
    link: {
      kind: 'bluetooth-le',
      advertised: '185a',
      service: '185a',
      characteristic: '2c0b',
      by: { how: 'notify' },
    },
    observed: { quantity: 'torque', unit: 'N·m', step: '0.01', rest, stated },
    proof: { figure: shown(proofNm), sent: sent(pull(proofNm, random)) },
  };
}
