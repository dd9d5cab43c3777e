/** Pulls that nobody made: what a tool would send of a calm hand, for what can be said before the first real one. */
import { normalQuantile } from '../metrology/normal.ts';

/** How a tool reads. */
export interface Reads {
  readonly intervalUs: number;
  readonly perPacket: number;
  readonly noiseNm: number;
  readonly stepNm: number;
  readonly lostShare: number;
}

/**
 * A plug that hardens under a calm hand: the last fifth of the torque begins at this share of the time and takes so long. Of
 * calm pulls of the independent generator one in twenty is quicker there. The head drops by a fifth. Assumptions.
 */
const LINEAR = 0.25;
const LAST_FIFTH_FROM = 0.88;
const LAST_FIFTH_S = 0.15;
const RISE_S = LAST_FIFTH_S / (1 - LAST_FIFTH_FROM);
const DROP = 0.2;
const DROPS_S = 0.025;
const FOLLOWS_S = 0.1;
const LETS_GO_S = 0.2;
/** Enough rest in front to know zero, noise and rate of any tool. */
const RESTS_S = 2;
const RESTS_BEHIND_S = 0.8;

/** The torque of it, `seconds` after it began. */
function torqueAt(seconds: number, peakNm: number, clicks: boolean): number {
  const x = seconds / RISE_S;
  if (x <= 0) return 0;
  if (x <= 1) return peakNm * (LINEAR * x + (1 - LINEAR) * x * x);
  let t = seconds - RISE_S;
  const lowNm = clicks ? peakNm * (1 - DROP) : peakNm;
  if (clicks && t < DROPS_S) return peakNm + (lowNm - peakNm) * (t / DROPS_S);
  t -= clicks ? DROPS_S : 0;
  if (t < FOLLOWS_S) return lowNm;
  t -= FOLLOWS_S;
  return t < LETS_GO_S ? lowNm * (1 - t / LETS_GO_S) : 0;
}

/** The fractional parts of squares times an irrational number: they fill 0 to 1 evenly, and follow each other as chance would. */
const spread = (n: number, by: number): number => (n * n * by) % 1;
const BY_NOISE = 0.618_033_988_75;
const BY_LOSS = 0.754_877_666_25;
/** A draw of noise, used again and again. */
const DRAWN = Array.from({ length: 997 }, (_, n) => normalQuantile(Math.max(1e-4, spread(n + 1, BY_NOISE))));

export interface Sent {
  readonly atUs: Float64Array;
  readonly nm: Float64Array;
}

/** What the tool sends of one; `part` of a step of its readings decides how they lie to the peak. The same again each time. */
export function modelPull(reads: Reads, peakNm: number, clicks: boolean, part: number): Sent {
  const { intervalUs, perPacket, noiseNm, stepNm, lostShare } = reads;
  const ends = 1e6 * (RESTS_S + RISE_S + DROPS_S + FOLLOWS_S + LETS_GO_S + RESTS_BEHIND_S);
  const atUs: number[] = [];
  const nm: number[] = [];
  const seed = Math.round(1e4 * part);
  for (let n = 0, packet = 0; ; n += perPacket, packet++) {
    const sentUs = Math.round((n + perPacket - 1 + part) * intervalUs);
    if (sentUs > ends) break;
    const lost = sentUs > 1e6 * RESTS_S && spread(seed + packet, BY_LOSS) < lostShare;
    for (let i = 0; i < perPacket && !lost; i++) {
      const takenS = ((n + i + part) * intervalUs) / 1e6 - RESTS_S;
      const off = DRAWN[(seed + n + i) % DRAWN.length] ?? 0;
      const torqueNm = torqueAt(takenS, peakNm, clicks) + noiseNm * off;
      atUs.push(sentUs);
      nm.push(stepNm > 0 ? stepNm * Math.round(torqueNm / stepNm) : torqueNm);
    }
  }
  return { atUs: Float64Array.from(atUs), nm: Float64Array.from(nm) };
}
