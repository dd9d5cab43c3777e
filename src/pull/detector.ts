import type { FoundPull } from './pull.ts';

/** Thresholds of pull detection; torque in N·m, times in microseconds. */
export interface DetectorSettings {
  /** A pull begins above this and belongs to the job only if it got there. */
  readonly startNm: number;
  /** It ends once the torque has stayed below this for `restUs`: lower than `startNm`, so that noise cannot split it. */
  readonly endNm: number;
  readonly restUs: number;
  /** A fall by this share of a local maximum, followed by a rise of the same size, is the click. */
  readonly dipShare: number;
  /** Without a new rise, only a fall by this share within `snapWithinUs` is one: no hand lets go that fast. */
  readonly snapShare: number;
  readonly snapWithinUs: number;
  /** Samples further apart than this cannot show what happened between them. */
  readonly holeUs: number;
}

/** Settings for a window whose lower limit is `lowerNm`. Shares are common practice and tried on simulated pulls; no source. */
export function detectorSettings(lowerNm: number): DetectorSettings {
  return {
    startNm: 0.08 * lowerNm,
    endNm: 0.04 * lowerNm,
    restUs: 120_000,
    dipShare: 0.04,
    snapShare: 0.12,
    snapWithinUs: 60_000,
    holeUs: 400_000,
  };
}

/** A local maximum that may be the click. */
interface Crest {
  nm: number;
  atUs: number;
}

interface OpenPull {
  sign: 1 | -1;
  zeroNm: number;
  startUs: number;
  samples: number;
  peak: Crest;
  /** Highest since the last confirmed fall; becomes a release once the fall behind it is steep or a rise follows. */
  crest: Crest;
  trough: number;
  falling: boolean;
  releases: Crest[];
  /** Record highs, thinned: enough to read the rise from, bounded by capacity over step. */
  climb: Crest[];
  lowSinceUs: number | null;
}

export interface PullDetector {
  /** Takes the next sample (`nm` as the wrench reads it) and returns a pull that it completes. */
  push(atUs: number, nm: number): FoundPull | null;
  /** Ends a pull under way, because no more samples come; null when none was. */
  cut(reason: 'link-lost' | 'stopped'): FoundPull | null;
  /** Torque now with the zero taken off, and the peak of the pull under way. */
  live(): { readonly nowNm: number; readonly pulling: boolean; readonly peakNm: number };
}

const ZERO_BLOCK_US = 250_000;
const CLICK_NOT_BELOW = 0.7;
const CLIMB_STEPS_PER_START = 8;

/**
 * Finds pulls in a stream of torque samples, one sample at a time, with hysteresis against noise. State lives in the
 * detector only, so the same samples always give the same pulls, whichever way they were cut into batches.
 */
export function createPullDetector(settings: DetectorSettings): PullDetector {
  const zero = createZero();
  let lastUs: number | null = null;
  let nowNm = 0;
  let open: OpenPull | null = null;

  const finish = (pull: OpenPull, endUs: number, reason: FoundPull['cut']): FoundPull => {
    open = null;
    const release = pull.releases.find((crest) => crest.nm >= CLICK_NOT_BELOW * pull.peak.nm) ?? null;
    return {
      startUs: pull.startUs,
      endUs,
      peakNm: pull.sign * pull.peak.nm,
      peakUs: pull.peak.atUs,
      releaseNm: release === null ? null : pull.sign * release.nm,
      releaseUs: release === null ? null : release.atUs,
      riseMs: riseMs(pull),
      zeroNm: pull.zeroNm,
      samples: pull.samples,
      cut: reason,
    };
  };

  return {
    push(atUs, nm) {
      let found: FoundPull | null = null;
      if (open !== null && lastUs !== null && atUs - lastUs > settings.holeUs)
        found = finish(open, lastUs, 'link-lost');
      nowNm = nm - zero.nm();
      if (open === null) {
        if (Math.abs(nowNm) >= settings.startNm) {
          open = begin(atUs, nowNm, zero.nm());
          zero.unrest();
        } else if (Math.abs(nowNm) < settings.startNm / 4) zero.rest(atUs, nm);
        else zero.unrest();
      } else {
        const rising = open.sign * nowNm;
        follow(open, atUs, rising, settings);
        const endUs = rested(open, atUs, rising, settings);
        if (endUs !== null) found = finish(open, endUs, null);
      }
      lastUs = atUs;
      return found;
    },
    cut(reason) {
      return open === null || lastUs === null ? null : finish(open, lastUs, reason);
    },
    live: () => ({ nowNm, pulling: open !== null, peakNm: open === null ? 0 : open.sign * open.peak.nm }),
  };
}

/**
 * What the wrench reads at rest: the mean of a quarter second in which it rested, taken over only when the quarter
 * after it was rest as well, so that the slow beginning of a pull never becomes part of the zero.
 */
function createZero() {
  let nm: number | null = null;
  let waiting: number | null = null;
  let block = { startUs: 0, sum: 0, count: 0 };
  const unrest = () => {
    waiting = null;
    block = { startUs: 0, sum: 0, count: 0 };
  };
  return {
    nm: () => nm ?? waiting ?? 0,
    unrest,
    rest(atUs: number, restNm: number) {
      if (block.count === 0) block.startUs = atUs;
      block.sum += restNm;
      block.count += 1;
      if (atUs - block.startUs < ZERO_BLOCK_US) return;
      nm = waiting ?? nm;
      waiting = block.sum / block.count;
      block = { startUs: 0, sum: 0, count: 0 };
    },
  };
}

function begin(atUs: number, nowNm: number, zeroNm: number): OpenPull {
  const first = { nm: Math.abs(nowNm), atUs };
  return {
    sign: nowNm < 0 ? -1 : 1,
    zeroNm,
    startUs: atUs,
    samples: 1,
    peak: { ...first },
    crest: { ...first },
    trough: first.nm,
    falling: false,
    releases: [],
    climb: [{ ...first }],
    lowSinceUs: null,
  };
}

function follow(pull: OpenPull, atUs: number, nm: number, settings: DetectorSettings): void {
  pull.samples += 1;
  if (nm > pull.peak.nm) {
    pull.peak = { nm, atUs };
    const last = pull.climb.at(-1);
    if (last === undefined || nm - last.nm >= settings.startNm / CLIMB_STEPS_PER_START)
      pull.climb.push({ nm, atUs });
  }
  followCrest(pull, atUs, nm, settings);
}

function followCrest(pull: OpenPull, atUs: number, nm: number, settings: DetectorSettings): void {
  const dip = settings.dipShare * pull.crest.nm;
  if (!pull.falling && nm >= pull.crest.nm) {
    pull.crest = { nm, atUs };
    pull.trough = nm;
    return;
  }
  pull.trough = Math.min(pull.trough, nm);
  const fallen = pull.crest.nm - pull.trough;
  const snapped =
    fallen >= settings.snapShare * pull.crest.nm && atUs - pull.crest.atUs <= settings.snapWithinUs;
  if (!pull.falling && snapped) {
    pull.releases = [
      ...pull.releases.filter((crest) => crest.nm >= CLICK_NOT_BELOW * pull.peak.nm),
      pull.crest,
    ];
    pull.falling = true;
  }
  const roseAgain = fallen >= dip && nm - pull.trough >= dip;
  if (roseAgain) {
    if (!pull.falling) pull.releases.push(pull.crest);
    pull.crest = { nm, atUs };
    pull.trough = nm;
    pull.falling = false;
  }
}

/** The time at which the torque went to rest, once it has stayed there long enough. */
function rested(pull: OpenPull, atUs: number, nm: number, settings: DetectorSettings): number | null {
  if (nm >= settings.endNm) {
    pull.lowSinceUs = null;
    return null;
  }
  pull.lowSinceUs ??= atUs;
  return atUs - pull.lowSinceUs >= settings.restUs ? pull.lowSinceUs : null;
}

function riseMs(pull: OpenPull): number {
  const reached = (share: number) =>
    pull.climb.find((point) => point.nm >= share * pull.peak.nm)?.atUs ?? pull.peak.atUs;
  return (reached(0.8) - reached(0.2)) / 1000;
}
