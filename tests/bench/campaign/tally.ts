import type { Case } from './case.ts';
import type { Matching } from './match.ts';

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

  add(one: Case, rowsOf: (one: Case) => readonly string[], matching: Matching, gain: number): void {
    for (const name of rowsOf(one)) {
      const tally = this.rows.get(name) ?? new Tally();
      this.rows.set(name, tally);
      tally.add(matching, gain);
    }
  }
}

export function quantile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}

export const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
export const within95 = (values: readonly number[]): number => quantile(values.map(Math.abs), 0.95);
