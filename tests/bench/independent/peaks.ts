/** Single pulls: how near the peak is to the truth, by how much it says that it may be off, and what was called OK. */
import type { Judgement } from '../../../src/metrology/judgement.ts';
import type { Tape, Truth } from './lines.ts';
import { type Played, play } from './play.ts';
import { mean, median, percent, Rows, ratio } from './rows.ts';

/** A pull that reaches this share of the lower limit is one to judge. */
const JUDGED_SHARE = 0.6;

class Peaks {
  due = 0;
  split = 0;
  clicks = 0;
  clicksSeen = 0;
  asked = 0;
  wrongOk = 0;
  wrongNot = 0;
  undecided = 0;
  needed = 0;
  lost = false;
  readonly errors: number[] = [];
  readonly scores: number[] = [];
  readonly seenScores: number[] = [];
  readonly unseenScores: number[] = [];
  readonly standards: number[] = [];
  readonly okInside: number[] = [];

  add({ tape, seen, events, state }: Played): void {
    const { torqueWindow } = state;
    this.lost ||= tape.truth.some(({ seenNm }) => seenNm !== undefined);
    this.asked += events.filter((event) => event.type === 'pull-placed' && event.kind === 'unsure').length;
    for (const truth of tape.truth.filter(({ peakNm }) => peakNm >= JUDGED_SHARE * tape.job.lowerNm)) {
      this.due += 1;
      const found = seen.filter((one) => one.truth === truth);
      this.split += Math.max(0, found.length - 1);
      const pull = found.reduce<(typeof found)[number]['pull'] | null>(
        (best, one) => (best === null || one.pull.peakNm > best.peakNm ? one.pull : best),
        null,
      );
      if (truth.clickNm !== null) this.clicks += 1;
      const judgement = pull === null ? null : judged(events, pull.pull);
      const last = truth === tape.truth.at(-1);
      if (last) this.#verdict(truth, judgement, torqueWindow);
      if (pull === null) continue;
      if (truth.clickNm !== null && pull.release === 'seen') this.clicksSeen += 1;
      if (pull.cut !== null) continue;
      const off = pull.peakNm - truth.peakNm;
      this.errors.push(off / truth.peakNm);
      this.scores.push(off / pull.peakStandardNm);
      (pull.release === 'seen' ? this.seenScores : this.unseenScores).push(off / pull.peakStandardNm);
      this.standards.push(pull.peakStandardNm / truth.peakNm);
    }
  }

  #verdict(truth: Truth, judgement: Judgement | null, window: Played['state']['torqueWindow']): void {
    const { lowerLimit, upperLimit, acceptLower, acceptUpper } = window;
    const { peakNm } = truth;
    const inside = peakNm >= lowerLimit && peakNm <= upperLimit;
    const proven = peakNm >= acceptLower && peakNm <= acceptUpper;
    const result = judgement?.result ?? 'NotDecidable';
    if (result === 'OK' && !inside) this.wrongOk += 1;
    if (result === 'NotOK' && inside) this.wrongNot += 1;
    if (proven) this.okInside.push(result === 'OK' ? 1 : 0);
    if (result === 'NotDecidable') this.undecided += 1;
    if (!decidable(truth, window)) this.needed += 1;
  }
}

/** Whether one who knows all but what was lost could say OK or NOT OK with the instrument's uncertainty. */
function decidable(
  { peakNm, seenNm = peakNm, mayBeNm = peakNm }: Truth,
  {
    lowerLimit,
    upperLimit,
    acceptLower,
    acceptUpper,
    expandedAtLower,
    expandedAtUpper,
  }: Played['state']['torqueWindow'],
): boolean {
  if (seenNm >= acceptLower && mayBeNm <= acceptUpper) return true;
  return mayBeNm < lowerLimit - expandedAtLower || seenNm > upperLimit + expandedAtUpper;
}

function judged(events: Played['events'], pull: number): Judgement | null {
  const placed = events.findLast((event) => event.type === 'pull-placed' && event.pull === pull);
  return placed?.type === 'pull-placed' ? placed.judgement : null;
}

const LEGEND =
  'strokes from 60 % of the lower limit; missed: no whole pull detected; the last stroke of each is judged, its setting drawn from 3 % below the window to 3 % above';

const within = (scores: readonly number[]): string =>
  percent(scores.filter((z) => Math.abs(z) <= 2).length, scores.length);

const COLUMNS = {
  pulls: (row: Peaks) => String(row.due),
  missed: (row: Peaks) => String(row.due - row.scores.length),
  split: (row: Peaks) => String(row.split),
  'bias %': (row: Peaks) => (100 * mean(row.errors)).toFixed(2),
  'within 2u %': (row: Peaks) => within(row.scores),
  'click seen': (row: Peaks) => within(row.seenScores),
  'not seen': (row: Peaks) => within(row.unseenScores),
  'beyond 5u': (row: Peaks) => String(row.scores.filter((z) => Math.abs(z) > 5).length),
  'median u %': (row: Peaks) => (100 * median(row.standards)).toFixed(2),
  'click seen %': (row: Peaks) => percent(row.clicksSeen, row.clicks),
  'asked/100': (row: Peaks) => percent(row.asked, row.due),
  'OK of provable %': (row: Peaks) =>
    percent(row.okInside.filter((ok) => ok === 1).length, row.okInside.length),
  'OK, truly outside': (row: Peaks) => String(row.wrongOk),
  'NOT OK, truly inside': (row: Peaks) => String(row.wrongNot),
};

/** Beside these where readings are lost. */
const LOSS_COLUMNS = {
  ...COLUMNS,
  UNDECIDED: (row: Peaks) => String(row.undecided),
  'ideal needs': (row: Peaks) => String(row.needed),
  'UNDECIDED/ideal': (row: Peaks) => ratio(row.undecided, row.needed),
};

const keyText = (key: Tape['job']['key'], names: readonly string[]): string =>
  names.map((name) => `${name} ${key[name]}`).join(', ');

/** A table by all keys of the cell; where noise is one of them, a grid of coverage and bias beside it. */
export function peaks(): { add: (tape: Tape) => void; lines: () => string[] } {
  const rows = new Rows(() => new Peaks());
  const all = new Peaks();
  const grid = new Rows(() => new Rows(() => new Peaks()));
  const rates = new Set<string>();
  let gridded = false;
  return {
    add(tape) {
      const played = play(tape);
      const { key } = tape.job;
      const names = Object.keys(key);
      const shown = names.filter((name) => name !== 'noise');
      rows.row(keyText(key, shown)).add(played);
      all.add(played);
      if (!names.includes('noise')) return;
      gridded = true;
      rates.add(String(key['rate']));
      grid
        .row(keyText(key, ['habit', 'noise']))
        .row(String(key['rate']))
        .add(played);
    },
    lines: () => [
      LEGEND,
      ...rows.with('all', all).table('', all.lost ? LOSS_COLUMNS : COLUMNS),
      ...(gridded
        ? [
            '',
            'truth within 2u in %, bias in %, number of pulls:',
            ...grid.table(
              'noise in % of 60 N·m',
              Object.fromEntries(
                [...rates].map((rate) => [
                  `${rate} Hz`,
                  (of: Rows<Peaks>) => {
                    const row = of.row(rate);
                    return `${within(row.scores)} (${(100 * mean(row.errors)).toFixed(2)}, ${row.due})`;
                  },
                ]),
              ),
            ),
          ]
        : []),
    ],
  };
}
