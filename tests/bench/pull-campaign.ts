import type { TruePull } from '../../sim/physics/truth.ts';
import { Random } from '../../sim/random.ts';
import { createPullDetector } from '../../src/pull/detector.ts';
import { detectorSettings } from '../../src/pull/settings.ts';
import { type Case, drawCase, type Stream } from './campaign/case.ts';
import { type Matching, match } from './campaign/match.ts';
import { mean, Tallies, type Tally, within95 } from './campaign/tally.ts';
import { drawTrouble, troubled } from './campaign/trouble.ts';
import { worked } from './campaign/work.ts';
import type { Measurement } from './measurement.ts';

/** Below this share of the lower limit nothing was tightened: such a pull may be found or not. */
const DUE_SHARE = 0.2;
const JUDGED_SHARE = 0.6;
interface Grid {
  readonly rates: readonly number[];
  readonly noises: readonly number[];
}
const FULL_GRID: Grid = {
  rates: [20, 50, 100, 200, 500, 1000, 2000],
  noises: [0.0005, 0.001, 0.002, 0.003, 0.006, 0.01],
};
const GOAL_GRID: Grid = { rates: [100, 200, 500, 1000, 2000], noises: [0.0005, 0.001, 0.002, 0.003] };
const LOSSES = [0, 0.01, 0.05];
/** A connection interval of Bluetooth LE as phones and computers choose it. */
const BUNCH_US = 45_000;

/** Pull detection against the simulator's ground truth, over technicians, joints, rates, noise, losses and jitter. */
export const pullCampaign: Measurement = {
  name: 'pulls',
  what: 'pull detection against the simulated truth: pulls=100000 minutes=15 seed=report goal=0 (1: only 100 Hz and better, noise to 0.3 %)',
  run: ({ number, text, progress }) => {
    const wanted = number('pulls', 100_000);
    const until = Date.now() + number('minutes', 15) * 60_000;
    const seed = text('seed', 'report');
    const grid = number('goal', 0) === 1 ? GOAL_GRID : FULL_GRID;
    const tallies = new Tallies();
    const random = new Random(`campaign ${seed}`);
    let pulls = 0;
    let engines = 0;
    for (; pulls < wanted && Date.now() < until; engines++) {
      const one = drawCase(`${seed} ${engines}`, drawStream(engines, random, grid), random);
      const matching = engine(one, tallies);
      pulls += matching.due;
      progress(pulls / wanted, `${pulls} pulls on ${engines + 1} engines`);
    }
    return [
      `${pulls} pulls on ${engines} engines, seed ${seed}`,
      '',
      ...table(tallies.rows),
      '',
      ...scaleTable(tallies.rows),
    ];
  },
};

/** One engine, with what its stream may suffer; counted into its rows. */
function engine(one: Case, tallies: Tallies): Matching {
  const random = new Random(one.seed).fork('trouble');
  const trouble = drawTrouble(random);
  const { settings, endNm, send } =
    trouble === null ? { settings: {}, endNm: null, send: undefined } : troubled(trouble, one, random);
  const { atUs, nm, pulls: truth, gain } = worked(one, send);
  const { lowerNm } = one.bench.plug;
  const detector = createPullDetector(detectorSettings(lowerNm, { stepNm: 0.01, ...settings }));
  const found = detector.pushBatch(atUs, nm, 0, atUs.length);
  const last = detector.cut('stopped');
  const matching = match(last === null ? found : [...found, last], truth, (DUE_SHARE * lowerNm) / gain);
  const judged = { ...matching, ...onlyJudged(matching, (JUDGED_SHARE * lowerNm) / gain) };
  if (trouble !== null) {
    const name = `trouble: ${trouble}`;
    const capacityNm = one.bench.wrench?.capacityNm ?? 0;
    const { matched } = endNm === null ? judged : below(judged, endNm, gain);
    tallies.add([name], { ...matching, matched }, gain);
    if (endNm !== null) tallies.row(name).addScale(judged, gain, endNm, one.noiseShare * capacityNm);
    return matching;
  }
  tallies.add(rowsOf(one), matching, gain);
  tallies.add(judgedRowsOf(one), judged, gain);
  return matching;
}

/** Peaks that the tool cannot read have no error to speak of; they are found or not. */
function below(matching: Matching, endNm: number, gain: number): Matching {
  const matched = matching.matched.filter(({ truth }) => Math.abs(truth.peakNm) * gain < endNm);
  return { ...matching, matched };
}

function scaleTable(rows: ReadonlyMap<string, Tally>): string[] {
  const line = ([name, { atEnd, atEndUnmarked, endInvented }]: readonly [string, Tally]) =>
    `${name.padEnd(34)} ${String(atEnd).padStart(7)} pulls reached it, ${atEndUnmarked} of them not marked; ${endInvented} marked that did not`;
  return [...rows].filter(([, { atEnd }]) => atEnd > 0).map(line);
}

/** The pulls that reach far enough to be judged: those below are strokes on the way, knocks, and loosening. */
function onlyJudged({ matched, missed }: Matching, fromNm: number): Partial<Matching> {
  const reaches = ({ peakNm }: TruePull) => peakNm >= fromNm;
  const kept = matched.filter(({ truth }) => reaches(truth));
  const lost = missed.filter(reaches);
  return { due: kept.length + lost.length, matched: kept, missed: lost, invented: [], split: [] };
}

function judgedRowsOf({ rateHz, noiseShare, bunchUs }: Case): readonly string[] {
  if (bunchUs > 0 || rateHz < 100 || noiseShare > 0.003) return [];
  return [
    'JUDGED within the goal',
    `JUDGED at ${String(rateHz).padStart(4)} Hz`,
    `JUDGED, noise ${(100 * noiseShare).toFixed(2)} %`,
  ];
}

/** Every rate with every noise and every loss in turn, so that each cell gets its share. */
function drawStream(n: number, random: Random, { rates, noises }: Grid): Stream {
  const rateHz = rates[n % rates.length] ?? 100;
  const noiseShare = noises[Math.floor(n / rates.length) % noises.length] ?? 0.001;
  const lossShare = LOSSES[Math.floor(n / rates.length / noises.length) % LOSSES.length] ?? 0;
  const bunchUs = rateHz >= 100 && random.chance(0.15) ? BUNCH_US : 0;
  return { rateHz, noiseShare, lossShare, jitterShare: random.uniform(0, 0.15), bunchUs };
}

function rowsOf({ rateHz, noiseShare, lossShare, bunchUs, joint, person }: Case): readonly string[] {
  if (bunchUs > 0)
    return [`bunched at ${BUNCH_US / 1000} ms, noise ${noiseShare <= 0.003 ? '<=0.3 %' : ' >0.3 %'}`];
  const goal = rateHz >= 100 && noiseShare <= 0.003;
  return [
    'all',
    ...(goal ? ['GOAL >=100 Hz, noise <=0.3 %'] : []),
    `rate ${String(rateHz).padStart(4)} Hz, noise ${noiseShare <= 0.003 ? '<=0.3 %' : ' >0.3 %'}`,
    ...(goal ? [`goal, noise ${(100 * noiseShare).toFixed(2)} %`] : []),
    ...(goal ? [`goal, lost ${100 * lossShare} %`] : []),
    ...(goal ? [`goal, ${joint}`] : []),
    ...(goal ? [`goal, technician ${person}`] : []),
  ];
}

function table(rows: ReadonlyMap<string, Tally>): string[] {
  const head =
    `${'row'.padEnd(34)} ${'pulls'.padStart(7)} missed invent  split | peak: bias %  95 %   |z|>2 % |` +
    ' click: seen % none % n.vis % invent | 95 % err%  late ms';
  const line = ([name, t]: readonly [string, Tally]) => {
    const share = (count: number) => ((100 * count) / Math.max(1, t.clicks)).toFixed(2).padStart(6);
    const percent = (value: number) => (100 * value).toFixed(3).padStart(7);
    const beyond = t.scores.filter((z) => Math.abs(z) > 2).length / Math.max(1, t.scores.length);
    return (
      `${name.padEnd(34)} ${String(t.due).padStart(7)} ${String(t.missed).padStart(6)} ${String(t.invented).padStart(6)} ` +
      `${String(t.split).padStart(6)} |    ${percent(mean(t.peakErrors))} ${percent(within95(t.peakErrors))} ${(100 * beyond).toFixed(1).padStart(6)}   |` +
      `      ${share(t.clicksSeen)} ${share(t.clicksUnseen)} ${share(t.clicksNotVisible)} ${String(t.clicksInvented).padStart(6)} |` +
      ` ${percent(within95(t.releaseErrors))}  ${within95(t.releaseLateMs).toFixed(1).padStart(6)}`
    );
  };
  return [head, ...[...rows].sort(([a], [b]) => a.localeCompare(b)).map(line)];
}
