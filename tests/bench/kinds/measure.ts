import { Random } from '../../../sim/random.ts';
import { PEOPLE, type PersonName } from '../../../sim/technician/people.ts';
import { pullKindSchema } from '../../../src/sequence/kind.ts';
import type { Measurement } from '../measurement.ts';
import { type JobSpec, workJob } from './jobs.ts';
import { JOINTS, OTHER_JOINTS } from './joints.ts';
import { type Score, score } from './score.ts';

const ALL_JOINTS = { ...JOINTS, ...OTHER_JOINTS };
const RATES_HZ = [100, 200, 500];
const NOISE_SHARE_TO = 0.003;
const KINDS = pullKindSchema.options;

/** The job of that number: person and joint go round in turn, all else is drawn. */
export function jobOf(
  number: number,
  seeds: string,
): JobSpec & { readonly person: string; readonly joint: string } {
  const people = Object.keys(PEOPLE).filter((name): name is PersonName => name in PEOPLE);
  const joints = Object.entries(ALL_JOINTS);
  const seed = `${seeds} ${number}`;
  const random = new Random(seed).fork('job');
  const person = people[number % people.length] ?? 'careful';
  const [joint, plug] = joints[Math.floor(number / people.length) % joints.length] ?? [
    '',
    JOINTS['M14 conical'],
  ];
  return {
    seed,
    person,
    joint,
    plug,
    habits: PEOPLE[person],
    cylinders: random.chance(0.5) ? 4 : 8,
    rateHz: RATES_HZ[Math.floor(random.uniform(0, RATES_HZ.length))] ?? 100,
    noiseShare: random.uniform(0.0002, NOISE_SHARE_TO),
  };
}

class Tally {
  readonly table = new Map<string, number>();
  readonly asks = new Map<string, number>();
  readonly cases: string[] = [];
  pulls = 0;
  right = 0;
  silent = 0;
  wrongCylinder = 0;
  wrongOk = 0;
  wrongOkAsked = 0;
  looseDone = 0;
  leftOpenWrongOk = 0;
  jobs = 0;
  finished = 0;

  add({ pulls, asked, wrongOk, wrongOkAsked, looseDone }: Score, finished: boolean, name: string): void {
    this.jobs += 1;
    this.finished += finished ? 1 : 0;
    if (finished) {
      this.wrongOk += wrongOk.length;
      this.wrongOkAsked += wrongOkAsked.length;
      this.looseDone += looseDone.length;
    } else this.leftOpenWrongOk += wrongOk.length + wrongOkAsked.length;
    for (const ask of asked) this.asks.set(ask, (this.asks.get(ask) ?? 0) + 1);
    for (const { truly, trulyAlso, taken, onCylinder, given, pull } of pulls) {
      this.pulls += 1;
      const key = `${truly} ${taken}`;
      const isRight = taken === truly || taken === trulyAlso;
      this.table.set(
        isRight ? `${truly} ${truly}` : key,
        (this.table.get(isRight ? `${truly} ${truly}` : key) ?? 0) + 1,
      );
      if (taken === 'unsure') continue;
      this.silent += 1;
      this.right += isRight ? 1 : 0;
      const misplaced = given !== null && given !== onCylinder;
      this.wrongCylinder += misplaced ? 1 : 0;
      if (!isRight && this.cases.length < 400)
        this.cases.push(`${name} pull ${pull.pull}: ${truly} taken for ${taken}`);
    }
    for (const pull of [...wrongOk, ...wrongOkAsked]) this.cases.push(`${name} pull ${pull.pull}: WRONG OK`);
    for (const cylinder of looseDone) this.cases.push(`${name} cylinder ${cylinder}: LOOSE`);
    if (!finished) this.cases.push(`${name}: not finished`);
  }

  lines(): string[] {
    const share = (n: number, of: number) => `${n} of ${of} (${((100 * n) / Math.max(1, of)).toFixed(3)} %)`;
    const asked = [...this.asks.values()].reduce((a, b) => a + b, 0);
    const rows = KINDS.filter((kind) => kind !== 'unsure').map(
      (truly) =>
        truly.padEnd(13) +
        KINDS.map((taken) => String(this.table.get(`${truly} ${taken}`) ?? 0).padStart(13)).join(''),
    );
    return [
      `${this.jobs} jobs, ${this.finished} finished; ${this.pulls} pulls`,
      '',
      'rows: what it was; columns: what it was taken for before anybody was asked (unsure: asked)',
      ' '.repeat(13) + KINDS.map((kind) => kind.padStart(13)).join(''),
      ...rows,
      '',
      `kind right where nobody was asked  ${share(this.right, this.silent)}`,
      `on another cylinder before asking  ${share(this.wrongCylinder, this.silent)}`,
      'at the end of finished jobs:',
      `  wrong cylinder OK, never asked    ${this.wrongOk}`,
      `  wrong cylinder OK, after asking   ${this.wrongOkAsked}`,
      `  called done with a plug not tight ${this.looseDone}`,
      `in jobs that were left open, wrong cylinder OK so far  ${this.leftOpenWrongOk}`,
      `questions per 100 pulls            ${((100 * asked) / Math.max(1, this.pulls)).toFixed(2)}`,
      ...[...this.asks].sort((a, b) => b[1] - a[1]).map(([ask, n]) => `  ${ask.padEnd(16)}${n}`),
    ];
  }
}

/** Whole jobs at the real bench: kinds, cylinders, questions. */
export const kinds: Measurement = {
  name: 'kinds',
  what: 'whole simulated jobs: kinds of pulls, cylinders, wrong OKs, questions (pulls=20000 seeds=try from=0 show=0)',
  run: ({ number, text, progress }) => {
    const pulls = number('pulls', 20_000);
    const show = number('show', 0);
    const seeds = text('seeds', 'try');
    const tally = new Tally();
    for (let n = number('from', 0); tally.pulls < pulls; n++) {
      const spec = jobOf(n, seeds);
      const job = workJob(spec);
      tally.add(score(job), job.leaving.finished, `${n} ${spec.person}, ${spec.joint}, ${spec.rateHz} Hz`);
      progress(tally.pulls / pulls, `${tally.pulls} pulls`);
    }
    return [...tally.lines(), ...tally.cases.slice(0, show)];
  },
};
