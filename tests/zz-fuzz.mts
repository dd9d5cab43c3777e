import { FrameStream } from '../drivers/profile/stream.ts';
import { CATALOGUE } from '../sim/devices/catalogue.ts';
import { Sender } from '../sim/devices/device.ts';
import { Random } from '../sim/random.ts';

const minutes = Number(process.argv[2] ?? 10);
const end = Date.now() + minutes * 60_000;
let streams = 0, pieces = 0, values = 0, raw = 0, contradicted = 0, wrong = 0;
for (let seed = 1; Date.now() < end; seed++) {
  const random = new Random(seed);
  const below = (n: number) => Math.floor((random as any).uniform?.() * n || Math.random() * n);
  for (const [name, plain] of Object.entries(CATALOGUE)) {
    const isTaught = seed % 2 === 0;
    const profile = isTaught ? { ...plain, taught: { unit: 'N·m' as const, step: '0.01', figures: [1, 2, 3], proof: 4, frames: 9 } } : plain;
    let bytesIn = 0, bytesRaw = 0;
    let said = 0;
    const stream = new FrameStream(profile, (a) => {
      if (a.kind === 'value') { values++; if (!Number.isSafeInteger(a.counts)) { wrong++; console.log('counts', name, seed, a.counts); } }
      if (a.kind === 'raw') { raw++; bytesRaw += a.hex.length / 2; }
      if (a.kind === 'contradicted') { contradicted++; said++; }
    }, { source: 'fuzz', kind: 'value', openedUs: 0 });
    const sender = new Sender(profile);
    streams++;
    let atUs = 2_000_000;
    for (let i = 0; i < 80; i++) {
      let bytes: Buffer = Buffer.from(sender.frame([{ si: (below(8000) - 4000) / 100, angleDeg: i }]));
      const what = below(8);
      if (what === 0) for (let k = 0; k < 1 + below(4); k++) bytes[below(bytes.length)] = below(256);
      if (what === 1) bytes = bytes.subarray(0, below(bytes.length + 1));
      if (what === 2) bytes = Buffer.from(Array.from({ length: below(300) }, () => below(256)));
      if (what === 3) bytes = Buffer.concat([bytes, bytes.subarray(0, below(bytes.length))]);
      if (what === 4) bytes = Buffer.from(Array.from({ length: below(40) }, () => [0xa5, 0x5a, 0x02, 0x03, 0x0d, 0x0a, 0x54, 0x2b, 0x30, 0xff][below(10)]));
      bytesIn += bytes.length;
      atUs += below(3) === 0 ? below(3_000_000) : 20_000;
      const t = performance.now();
      stream.take(bytes, atUs);
      if (below(20) === 0) stream.pause();
      if (performance.now() - t > 200) console.log('slow', name, seed, performance.now() - t);
      pieces++;
    }
    stream.pause();
    if (bytesRaw > bytesIn) { wrong++; console.log('more raw than came', name, seed); }
    if (said > 1) { wrong++; console.log('contradicted twice', name, seed); }
  }
}
console.log({ minutes, streams, pieces, values, raw, contradicted, wrong });
