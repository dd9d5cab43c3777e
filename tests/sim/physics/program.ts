import type { Bench, PlugSpec } from '../../../sim/physics/bench.ts';
import type { TruePull } from '../../../sim/physics/truth.ts';
import type { Screen } from '../../../sim/technician/screen.ts';
import type { Command } from '../../../src/job/command.ts';
import type { Answer } from '../../../src/job/event.ts';
import type { CylinderState, LastVerdict, Question } from '../../../src/job/state.ts';
import type { Judgement } from '../../../src/metrology/judgement.ts';
import type { Pull } from '../../../src/pull/pull.ts';
import { A_PULL } from '../../pull/a-pull.ts';

type Writable<T> = { -readonly [K in keyof T]: T[K] };
type Cylinder = Writable<Omit<CylinderState, 'gaps' | 'pulls'>> & {
  gaps: CylinderState['gaps'][number][];
  pulls: CylinderState['pulls'][number][];
};

/**
 * A stand-in for the real program, all-knowing and simple: it reads the bench's truth, gives each thing to the cylinder
 * that it asked for, and asks when a pull is over the window, a re-hit or a knock. Only a pull that clicked is OK.
 */
export class Program {
  readonly #bench: Bench;
  readonly #plug: PlugSpec;
  readonly #cylinders: Cylinder[];
  readonly answers: { readonly pull: TruePull; readonly answer: Answer }[] = [];
  readonly numbered: TruePull[] = [];
  #questions: Question[] = [];
  #seenPulls = 0;
  #seenGaps = 0;
  #last: LastVerdict | null = null;
  #closed = false;

  constructor(bench: Bench, plug: PlugSpec, order: readonly number[]) {
    this.#bench = bench;
    this.#plug = plug;
    this.#cylinders = order.map((cylinder) => ({
      cylinder,
      gap: 'todo',
      torque: 'todo',
      gaps: [],
      pulls: [],
    }));
  }

  get screen(): Screen {
    const closed = this.#closed ? { complete: true, open: [] } : null;
    const target = (what: 'gap' | 'torque') =>
      this.#cylinders.find((c) => c[what] !== 'done')?.cylinder ?? null;
    return {
      cylinders: this.#cylinders,
      plugs: {},
      gapTarget: target('gap'),
      torqueTarget: target('torque'),
      lastVerdict: this.#last,
      questions: this.#questions,
      pullCount: this.numbered.length,
      closed,
    };
  }

  /** Takes in what happened at the bench since the last time. */
  look(): Screen {
    const { pulls, gaps } = this.#bench.truth;
    for (; this.#seenGaps < gaps.length; this.#seenGaps++) this.#gap(gaps[this.#seenGaps]?.trueMm ?? 0);
    for (; this.#seenPulls < pulls.length; this.#seenPulls++) {
      const pull = pulls[this.#seenPulls];
      if (pull?.measured === true) this.#pull(pull);
    }
    return this.screen;
  }

  press(command: Command): void {
    if (command.do === 'close') this.#closed = true;
    if (command.do !== 'answer') return;
    const question = this.#questions.find(({ pull }) => pull === command.pull);
    const pull = this.numbered[command.pull - 1];
    if (question === undefined || pull === undefined) throw new Error('answers what nobody asked');
    this.#questions = this.#questions.filter((other) => other !== question);
    this.answers.push({ pull, answer: command.answer });
    const cylinder = this.#cylinders.find((c) => c.cylinder === question.cylinder);
    if (cylinder !== undefined && command.answer === 'replace') cylinder.gap = 'todo';
    if (cylinder !== undefined && command.answer !== 'rehit' && command.answer !== 'handling')
      cylinder.torque = 'again';
  }

  #gap(trueMm: number): void {
    const cylinder = this.#cylinders.find((c) => c.gap !== 'done');
    if (cylinder === undefined) return;
    const verdict = judgement(trueMm, this.#plug.gapLowerMm + 0.01, this.#plug.gapUpperMm - 0.01);
    cylinder.gaps.push({
      reading: this.#seenGaps + 1,
      tool: 'gauge',
      source: 'simulated',
      technician: '',
      judgement: verdict,
    });
    cylinder.gap = verdict.result === 'OK' ? 'done' : 'again';
    this.#last = { quantity: 'length', cylinder: cylinder.cylinder, judgement: verdict };
  }

  #pull(pull: TruePull): void {
    this.numbered.push(pull);
    const number = this.numbered.length;
    const cylinder = this.#cylinders.find((c) => c.torque !== 'done') ?? this.#cylinders.at(-1);
    if (cylinder === undefined || pull.kind === 'loosening') return;
    const verdict = judgement(pull.peakNm, this.#plug.lowerNm, this.#plug.upperNm);
    const ask = (kind: Question['kind'], answers: readonly Answer[]) =>
      this.#questions.push({ pull: number, cylinder: cylinder.cylinder, kind, answers });
    const kind = pull.kind;
    cylinder.pulls.push({
      pull: pullOf(number, pull),
      technician: '',
      kind,
      because: 'plug-turned',
      judgement: verdict,
      answer: null,
    });
    if (kind === 'rehit' || kind === 'handling') ask('unsure', ['fresh', 'rehit', 'handling', 'refit']);
    else if (verdict.side === 'high') ask('over-window', ['refit', 'replace']);
    else cylinder.torque = verdict.result === 'OK' && pull.releaseNm !== null ? 'done' : 'again';
    this.#last = { quantity: 'torque', cylinder: cylinder.cylinder, judgement: verdict };
  }
}

function judgement(value: number, lower: number, upper: number): Judgement {
  const side = value < lower ? 'low' : value > upper ? 'high' : 'inside';
  const inside = side === 'inside';
  return {
    result: inside ? 'OK' : 'NotOK',
    side,
    grade: inside ? 'pass' : 'fail',
    value,
    expandedUncertainty: 0.01,
    conformanceProbability: inside ? 1 : 0,
  };
}

function pullOf(number: number, { startUs, endUs, peakNm, peakUs, releaseNm, releaseUs }: TruePull): Pull {
  const seen = { startUs, endUs, peakNm, peakUs, releaseNm, releaseUs };
  return { ...A_PULL, ...seen, pull: number, tool: 'wrench', source: 'simulated' };
}
