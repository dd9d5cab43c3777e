import type { RecentSamples } from './recent.ts';
import { type Arrivals, HOLE_STEPS } from './sample-clock.ts';
import type { Samples } from './samples.ts';

/** So much in front of a top and behind it is laid on one even clock with it. */
export const TOP_REACH_US = 400_000;
const BEHIND_US = 150_000;
/** Lateness is compared over so many packets on each side. */
const PACKETS = 8;
/** Samples that come within this share of a step of each other came in one packet. */
const SAME_PACKET = 0.25;
/** Readings are missing where the arrivals stay late by this share of a packet, and by more than their jitter. */
const MISSING_SHARE = 0.6;
const JITTERS = 3;
/** Where steps are off by less than this share, a missing sample is plain to see. */
const CLEAR_JITTER = 0.2;
const FEW_STEPS = 8;
/** What is left over after that, in packets, would be no steady clock: then the stamps are better. */
const STEADY = 3;

/** The end of a packet: the sample in it that waited least, and by how much it is late for an even clock. */
interface PacketEnd {
  readonly i: number;
  readonly lateUs: number;
}

/**
 * The samples about number `at` with the times at which they were taken: a tool measures evenly, whatever the link makes of
 * it. A sample comes when it was taken or later; delays pass, a gap where readings are missing stays. So the least lateness
 * before and behind each packet tells where how many are missing.
 */
export function evened(recent: RecentSamples, at: number, arrivals: Arrivals): Samples {
  const { packetUs, even } = arrivals;
  if (even || arrivals.intervalUs <= 0) return recent;
  let first = at;
  while (recent.has(first - 1) && recent.timeUs(at) - recent.timeUs(first - 1) <= TOP_REACH_US) first--;
  let end = at + 1;
  while (recent.has(end) && recent.timeUs(end) - recent.timeUs(at) <= BEHIND_US) end++;
  const intervalUs = arrivals.bunched
    ? arrivals.intervalUs
    : stepHere(recent, first, end, arrivals.intervalUs);
  const ends = packetEnds(recent, first, end, { ...arrivals, intervalUs });
  const missing = missingBefore(ends, packetUs);
  const gone = new Float64Array(end - first);
  let sumUs = 0;
  let k = 0;
  let leastUs = Number.POSITIVE_INFINITY;
  let mostUs = Number.NEGATIVE_INFINITY;
  for (let i = first; i < end; i++) {
    const packet = ends[k];
    if (packet === undefined) break;
    if (i === (ends[k - 1]?.i ?? first - 1) + 1) sumUs += missing[k] ?? 0;
    gone[i - first] = sumUs;
    if (i < packet.i) continue;
    leastUs = Math.min(leastUs, packet.lateUs - sumUs);
    mostUs = Math.max(mostUs, packet.lateUs - sumUs);
    k++;
  }
  if (mostUs - leastUs > STEADY * Math.max(packetUs, intervalUs)) return recent;
  const onClock = (i: number) => recent.tick(i) * intervalUs + (gone[i - first] ?? 0);
  const offsetUs = recent.timeUs(at) - onClock(at);
  return {
    has: (i) => i >= first && i < end,
    timeUs: (i) => offsetUs + onClock(i),
    nm: (i) => recent.nm(i),
  };
}

/** The step of samples that come one by one, without those that are missing; the usual one where jitter hides which they are. */
function stepHere(recent: RecentSamples, first: number, end: number, usualUs: number): number {
  const steps = new Float64Array(end - first - 1);
  for (let i = first + 1; i < end; i++)
    steps[i - first - 1] =
      (recent.stampUs(i) - recent.stampUs(i - 1)) / (recent.tick(i) - recent.tick(i - 1));
  const middleUs = medianOf(steps);
  const offUs = medianOf(steps.map((stepUs) => Math.abs(stepUs - middleUs)));
  if (steps.length < FEW_STEPS || offUs > CLEAR_JITTER * middleUs) return usualUs;
  const whole = steps.filter((stepUs) => stepUs < HOLE_STEPS * middleUs);
  return whole.reduce((sum, stepUs) => sum + stepUs, 0) / Math.max(1, whole.length);
}

function packetEnds(
  recent: RecentSamples,
  first: number,
  end: number,
  { intervalUs, packetUs }: Arrivals,
): PacketEnd[] {
  const ends: PacketEnd[] = [];
  let from = first;
  for (let i = first; i < end; i++) {
    const last = i + 1 === end;
    if (!last && recent.stampUs(i + 1) - recent.stampUs(i) <= SAME_PACKET * intervalUs) continue;
    // The newest packet is still coming in, and the last one here may be cut.
    const dueUs = last ? Math.max(0, packetUs - (i + 1 - from) * intervalUs) : 0;
    ends.push({ i, lateUs: recent.stampUs(i) - recent.tick(i) * intervalUs - dueUs });
    from = i + 1;
  }
  return ends;
}

/** How much time is missing in front of each packet. */
function missingBefore(ends: readonly PacketEnd[], packetUs: number): number[] {
  const least = (from: number, to: number) => {
    let lateUs = Number.POSITIVE_INFINITY;
    for (let k = Math.max(0, from); k < Math.min(ends.length, to); k++)
      lateUs = Math.min(lateUs, ends[k]?.lateUs ?? lateUs);
    return lateUs;
  };
  const jitterUs = medianOf(
    Float64Array.from(
      ends,
      ({ lateUs }, k) => lateUs - Math.max(least(k - PACKETS, k + 1), least(k, k + PACKETS)),
    ),
  );
  return ends.map(({ lateUs }, k) => {
    if (k === 0) return 0;
    const shiftUs = least(k, k + PACKETS) - least(k - PACKETS, k);
    const seen = Math.min(PACKETS, k, ends.length - k);
    const leastUs = MISSING_SHARE * packetUs + (JITTERS * jitterUs) / seen;
    const hereUs = lateUs - (ends[k - 1]?.lateUs ?? lateUs);
    return shiftUs > leastUs && hereUs > MISSING_SHARE * packetUs ? shiftUs : 0;
  });
}

function medianOf(values: Float64Array): number {
  return values.toSorted()[values.length >> 1] ?? 0;
}
