import type { DetectedPull } from './pull.ts';
import type { PullDetector } from './pull-detector.ts';
import { type DetectorSettings, endsScale } from './settings.ts';

/** A maximum that has not grown for so long is the pull's. */
const FINAL_US = 600_000;
/** A value lower than the one before begins a new work cycle, if it is lower by more than this share of the start. */
const NEW_CYCLE_SHARE = 0.1;

interface Cycle {
  startUs: number;
  peakUs: number;
  lastUs: number;
  peakNm: number;
  samples: number;
  longestGapUs: number;
  risen: { us: number; nm: number }[];
}

const MOST_RISEN = 256;

/**
 * For a tool that sends the highest torque of its work cycle and not the torque as it is (sampling function "maximum" or
 * "minimum" of the open measurement service). A pull is one maximum, taken when it has stood for 0.6 s, when the value
 * falls, or when the link ends. Some such tools send one figure a pull: that nothing comes after it is said by `silent`.
 * Such a tool shows no click and no let-off, and its zero cannot be seen.
 */
export function createMaximaDetector(settings: DetectorSettings): PullDetector {
  let cycle: Cycle | null = null;
  let lastUs = Number.NEGATIVE_INFINITY;
  let nowNm = 0;
  /** The maximum already given: the tool goes on sending it until its cycle ends. */
  let givenNm = 0;
  let lastEndUs: number | null = null;
  let sinceLastMs: number | null = null;

  const finish = (done: Cycle): DetectedPull => {
    cycle = null;
    givenNm = done.peakNm;
    lastEndUs = done.peakUs;
    const intervalUs = done.samples > 1 ? (done.lastUs - done.startUs) / (done.samples - 1) : 0;
    const reachedUs = (share: number) =>
      (done.risen.find(({ nm }) => nm >= share * Math.abs(done.peakNm))?.us ?? done.peakUs) - done.startUs;
    const reachedMs = [1, 2, 3, 4, 5, 6, 7, 8, 9].map((tenth) => reachedUs(tenth / 10) / 1000);
    return {
      startUs: done.startUs,
      endUs: done.peakUs,
      peakNm: done.peakNm,
      peakUs: done.peakUs,
      peakStandardNm: settings.stepNm / Math.sqrt(12),
      highestNm: done.peakNm,
      release: 'not-visible',
      releaseNm: null,
      releaseUs: null,
      dropShare: null,
      riseMs: (reachedMs[7] ?? 0) - (reachedMs[1] ?? 0),
      rise: { reachedMs, slopeAtTopNmPerS: 0, impulseNms: 0, setbackNm: 0 },
      turn: null,
      sinceLastMs,
      zeroNm: 0,
      zeroSettled: false,
      noiseNm: 0,
      samples: done.samples,
      intervalUs,
      longestGapUs: done.longestGapUs,
      saturated: endsScale(settings, done.peakNm),
      stream: 'maxima',
      cut: null,
    };
  };

  const begin = (atUs: number, nm: number): void => {
    sinceLastMs = lastEndUs === null ? null : (atUs - lastEndUs) / 1000;
    const risen = [{ us: atUs, nm: Math.abs(nm) }];
    cycle = { startUs: atUs, peakUs: atUs, lastUs: atUs, peakNm: nm, samples: 1, longestGapUs: 0, risen };
  };

  const goOn = (open: Cycle, atUs: number, nm: number): void => {
    open.samples++;
    open.longestGapUs = Math.max(open.longestGapUs, atUs - open.lastUs);
    open.lastUs = atUs;
    if (Math.abs(nm) <= Math.abs(open.peakNm)) return;
    open.peakNm = nm;
    open.peakUs = atUs;
    if (open.risen.length < MOST_RISEN) open.risen.push({ us: atUs, nm: Math.abs(nm) });
  };

  const push = (atUs: number, nm: number): DetectedPull | null => {
    if (!(atUs >= lastUs && Number.isFinite(atUs) && Number.isFinite(nm)))
      throw new RangeError(`torque ${nm} at ${atUs} µs, behind ${lastUs} µs`);
    const highestNm = cycle?.peakNm ?? givenNm;
    const fellNm = Math.abs(highestNm) - nm * Math.sign(highestNm);
    const startedAnew =
      fellNm > NEW_CYCLE_SHARE * settings.startNm || atUs - lastUs >= 1000 * settings.silentMs;
    lastUs = atUs;
    nowNm = nm;
    let detected: DetectedPull | null = null;
    if (cycle !== null && (startedAnew || atUs - cycle.peakUs >= FINAL_US)) detected = finish(cycle);
    if (startedAnew) givenNm = 0;
    if (cycle !== null) goOn(cycle, atUs, nm);
    else if (Math.abs(nm) >= settings.startNm && Math.abs(nm) - Math.abs(givenNm) > settings.stepNm)
      begin(atUs, nm);
    return detected;
  };

  return {
    push,
    pushBatch(atUs, nm, from, to) {
      const detected: DetectedPull[] = [];
      for (let i = from; i < to; i++) {
        const pull = push(atUs[i] ?? Number.NaN, nm[i] ?? Number.NaN);
        if (pull !== null) detected.push(pull);
      }
      return detected;
    },
    missed: () => {},
    endsUs: () => (cycle === null ? null : cycle.peakUs + FINAL_US),
    silent: (atUs) => (cycle === null || atUs - cycle.peakUs < FINAL_US ? null : finish(cycle)),
    atRest: () => null,
    cut: () => (cycle === null ? null : finish(cycle)),
    get pulling() {
      return cycle !== null;
    },
    // The maximum of the pull before is not the torque of now.
    live: () => ({
      nowNm: cycle === null ? null : nowNm,
      pulling: cycle !== null,
      peakNm: cycle?.peakNm ?? 0,
      turnedDeg: null,
    }),
  };
}
