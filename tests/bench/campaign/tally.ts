import type { Matching } from './match.ts';

const NEAR_SIGMA = 5;
/** Zero and step. */
const NEAR_STEPS_NM = 0.15;

/** Counts and errors of one row of the table. */
export class Tally {
  due = 0;
  missed = 0;
  invented = 0;
  split = 0;
  /** Peak found over peak true, as a share of the true one, and in units of its stated standard uncertainty. */
  readonly peakErrors: number[] = [];
  readonly scores: number[] = [];
  clicks = 0;
  clicksSeen = 0;
  clicksUnseen = 0;
  clicksNotVisible = 0;
  clicksInvented = 0;
  readonly releaseErrors: number[] = [];
  readonly releaseLateMs: number[] = [];
  /** Pulls that reached the end of the scale, those of them that were not marked so, and others that were. */
  atEnd = 0;
  atEndUnmarked = 0;
  endInvented = 0;

  add({ due, matched, missed, invented, split }: Matching, gain: number): void {
    this.due += due;
    this.missed += missed.length;
    this.invented += invented.length;
    this.split += split.length;
    for (const { truth, found } of matched) {
      const true_ = truth.peakNm * gain;
      this.peakErrors.push((found.peakNm - true_) / Math.abs(true_));
      this.scores.push((found.peakNm - true_) / found.peakStandardNm);
      this.#release(truth.releaseNm === null ? null : truth.releaseNm * gain, truth.releaseUs, found);
    }
  }

  /** `endNm`: the highest torque that the tool can read. Within its noise of that either is right. */
  addScale({ matched }: Matching, gain: number, endNm: number, noiseNm: number): void {
    for (const { truth, found } of matched) {
      const beyondNm = Math.abs(truth.peakNm) * gain - endNm;
      if (Math.abs(beyondNm) <= NEAR_SIGMA * noiseNm + NEAR_STEPS_NM) continue;
      if (beyondNm > 0) this.atEnd++;
      if (beyondNm > 0 && !found.saturated) this.atEndUnmarked++;
      if (beyondNm < 0 && found.saturated) this.endInvented++;
    }
  }

  #release(
    trueNm: number | null,
    trueUs: number | null,
    { release, releaseNm, releaseUs }: Matching['matched'][number]['found'],
  ): void {
    if (trueNm === null || trueUs === null) {
      if (release === 'seen') this.clicksInvented++;
      return;
    }
    this.clicks++;
    if (release === 'none') this.clicksUnseen++;
    if (release === 'not-visible') this.clicksNotVisible++;
    if (releaseNm === null || releaseUs === null) return;
    this.clicksSeen++;
    this.releaseErrors.push((releaseNm - trueNm) / trueNm);
    this.releaseLateMs.push((releaseUs - trueUs) / 1000);
  }
}

/** Tallies by the rows that a case belongs to; made as they are first asked for. */
export class Tallies {
  readonly rows = new Map<string, Tally>();

  add(rows: readonly string[], matching: Matching, gain: number): void {
    for (const name of rows) this.row(name).add(matching, gain);
  }

  row(name: string): Tally {
    const tally = this.rows.get(name) ?? new Tally();
    this.rows.set(name, tally);
    return tally;
  }
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
export const within95 = (values: readonly number[]): number => quantile(values.map(Math.abs), 0.95);
