import { decoderOf } from '../../drivers/profile/decoder.ts';
import { FrameStream } from '../../drivers/profile/stream.ts';
import { CATALOGUE } from '../../sim/devices/catalogue.ts';
import { Sender } from '../../sim/devices/device.ts';
import type { Measurement } from './measurement.ts';

/** How many frames a second one core decodes, device by device: the frame alone, and with framing, stamps and readings. */
export const profiles: Measurement = {
  name: 'profiles',
  what: 'frames a second of each invented device, decoded alone and as a stream: frames=200000',
  run: ({ number, progress }) => {
    const frames = number('frames', 200_000);
    const lines: string[] = [];
    const rates: number[] = [];
    for (const [i, [name, profile]] of Object.entries(CATALOGUE).entries()) {
      progress(i / 12, name);
      const sender = new Sender(profile);
      const samples = name === 'checksum behind the samples' ? 4 : 1;
      const seen = Array.from({ length: samples }, () => ({ si: 25.35, angleDeg: 90 }));
      const sent = Array.from({ length: 256 }, () => sender.frame(seen));
      const decode = decoderOf(profile.layout);
      const ends = profile.frames.by === 'delimiter' ? 2 : 0;
      const bare = sent.map((frame) => frame.subarray(0, frame.length - ends));
      let values = 0;
      const alone = rate(frames, (n) => {
        const made = decode(bare[n % 256] ?? Buffer.alloc(0));
        if (made.ok) values += made.value.counts.length;
      });
      const put = ({ kind }: { readonly kind: string }) => {
        if (kind === 'value') values += 1;
      };
      const stream = new FrameStream(profile, put, { source: 'bench', kind: 'value', openedUs: -2_000_000 });
      const whole = rate(frames, (n) => stream.take(sent[n % 256] ?? Buffer.alloc(0), n * 1_000));
      if (values !== 2 * frames * samples) throw new Error(`${name}: ${values} values`);
      rates.push(whole);
      lines.push(`${name.padEnd(30)} decoder ${shown(alone)}   stream ${shown(whole)}`);
    }
    return Promise.resolve([
      'frames a second',
      '',
      ...lines,
      '',
      `slowest stream ${shown(Math.min(...rates))}, ${(Math.min(...rates) / GOAL).toFixed(2)} times the goal of ${shown(GOAL).trim()}`,
    ]);
  },
};

/** Frames a second on one core, for the slowest kind. */
const GOAL = 200_000;

const shown = (perSecond: number) => Math.round(perSecond).toLocaleString('en').padStart(12);

/** By the time that the processor took, best of several rounds, so that other programs do not count. */
function rate(count: number, run: (n: number) => void): number {
  const rounds = 5;
  let leastUs = Number.POSITIVE_INFINITY;
  for (let round = 0; round < rounds; round++) {
    const before = process.cpuUsage();
    for (let n = 0; n < count / rounds; n++) run(round * (count / rounds) + n);
    const { user, system } = process.cpuUsage(before);
    leastUs = Math.min(leastUs, user + system);
  }
  return (count / rounds / leastUs) * 1e6;
}
