/** One engine, one wrench, one person whose hand stays the same; what the drive of the wrench feels, and what truly happened. */
import type { Random } from '../../../sim/random.ts';
import type { Tape, Truth } from '../independent/lines.ts';
import { Plug, type Seat, Spring } from './plug.ts';

const STEP_S = 0.001;
const LATE_US = 4000;
const TIMEOUT_S = 25;
const WINDOW_NM = { 'new gasket': [25, 30], 'used gasket': [25, 30], cone: [15, 20] } as const;
/** N·m a degree, wrench and extension together. */
export const SPRINGS = { short: [2.5, 7], extension: [1.2, 2.5], soft: [0.45, 1.2] } as const;

/** How one pull is made: by this person's hand within so many seconds, or at a pace without any hand in it. */
export interface Way {
  readonly seconds?: readonly [number, number];
  readonly degPerS?: number;
  /** Only to this share of the setting. */
  readonly share?: number;
  readonly was?: string;
}

export class Bay {
  readonly random: Random;
  readonly lowerNm: number;
  readonly upperNm: number;
  readonly #plugs: readonly Plug[];
  readonly #spring: Spring;
  readonly #settingNm: number;
  readonly #clicks: boolean;
  readonly #dropShare: number;
  readonly #hand: Readonly<{ tiresNm: number; tires: number; sways: number; swaysS: number; upS: number }>;
  readonly #nm: number[] = [];
  readonly #truth: Truth[] = [];
  readonly #commands: { readonly atUs: number; readonly cylinder: number }[] = [];

  constructor(
    random: Random,
    {
      seat,
      spring,
      cylinders,
      clicks,
      jerky = false,
    }: Readonly<{
      seat: Seat;
      spring: keyof typeof SPRINGS;
      cylinders: number;
      clicks: boolean;
      jerky?: boolean;
    }>,
  ) {
    this.random = random;
    [this.lowerNm, this.upperNm] = WINDOW_NM[seat];
    const middleNm = (this.lowerNm + this.upperNm) / 2;
    this.#plugs = Array.from(
      { length: cylinders },
      (_, i) => new Plug(random.fork(`plug ${i}`), seat, middleNm),
    );
    this.#spring = new Spring(
      random.uniform(...SPRINGS[spring]),
      random.uniform(0, 0.8),
      random.uniform(0.8, 3),
    );
    this.#settingNm = middleNm * random.within(1, 0.012, 2);
    this.#clicks = clicks;
    this.#dropShare = random.uniform(0.12, 0.4);
    this.#hand = {
      tiresNm: this.#settingNm * random.uniform(1.4, 4),
      tires: random.uniform(0, 2.5),
      sways: jerky ? random.uniform(0.35, 0.6) : random.uniform(0.03, 0.1),
      swaysS: jerky ? random.uniform(0.04, 0.12) : random.uniform(0.1, 0.4),
      upS: jerky ? 0.06 : random.uniform(0.1, 0.4),
    };
    this.rest(random.uniform(2, 4));
  }

  rest(seconds: number): void {
    for (let left = Math.round(seconds / STEP_S); left > 0; left--) this.#nm.push(0);
  }

  go(seconds: readonly [number, number] = [3.5, 8]): void {
    this.rest(this.random.uniform(...seconds));
  }

  plug(number: number): Plug {
    const plug = this.#plugs[number - 1];
    if (plug === undefined) throw new Error(`no plug ${number}`);
    return plug;
  }

  pull(number: number, { seconds = [0.8, 2], degPerS, share, was = 'fresh' }: Way = {}): void {
    const { random } = this;
    const plug = this.plug(number);
    const tripNm = this.#settingNm * random.within(1, 0.005, 2);
    const clicked = this.#clicks && share === undefined;
    const goalNm = share === undefined ? tripNm : share * this.#settingNm;
    const first = this.#nm.length;
    const fromDeg = plug.deg;
    const wayDeg = plug.leftDeg(goalNm) + this.#spring.woundDeg(goalNm);
    const pace = degPerS ?? Math.min(160, wayDeg / random.uniform(...seconds));
    const { tiresNm, tires, sways, swaysS, upS } = this.#hand;
    const fades = Math.exp(-STEP_S / swaysS);
    let [driveDeg, nm, sway] = [fromDeg, 0, random.normal(0, sways)];
    for (let t = 0; nm < goalNm && t < TIMEOUT_S; t += STEP_S) {
      sway = fades * sway + Math.sqrt(1 - fades * fades) * random.normal(0, sways);
      const load = Math.min(0.9, nm / tiresNm);
      const hand = Math.min(1, t / upS) * Math.exp(sway) * ((1 - load) / (1 + tires * load));
      const speed = pace * (degPerS === undefined ? hand : Math.min(1, t / 0.02));
      driveDeg += speed * STEP_S;
      nm = plug.follow(driveDeg, this.#spring, speed, this.#nm.length * STEP_S);
      this.#nm.push(nm);
    }
    const top = this.#nm.length;
    this.#letGo(nm, clicked);
    this.#truth.push({
      plug: number,
      was,
      fromUs: us(first),
      toUs: us(this.#nm.length),
      peakNm: this.#nm.slice(first).reduce((a, b) => Math.max(a, b), 0),
      peakUs: us(top),
      turnedDeg: plug.deg - fromDeg,
      clickNm: clicked ? tripNm : null,
      ended: clicked ? 'click' : 'goal',
    });
  }

  /** The click gives way and is caught, or the hand stops; then it lets off. */
  #letGo(nm: number, clicked: boolean): void {
    const { random } = this;
    const fallS = random.uniform(0.004, 0.015);
    const caught = clicked ? 1 - this.#dropShare * random.uniform(0.4, 1) : 1;
    const holdsS = random.uniform(0.05, 0.4);
    const offS = random.uniform(0.03, 0.1);
    if (clicked)
      for (let t = 0; t < 3 * fallS; t += STEP_S)
        this.#nm.push(nm * (1 - this.#dropShare * (1 - Math.exp(-t / fallS))));
    const fromNm = this.#nm.at(-1) ?? nm;
    const toNm = clicked ? caught * nm : nm;
    for (let t = 0; t < holdsS; t += STEP_S)
      this.#nm.push(fromNm + (toNm - fromNm) * (1 - Math.exp(-t / 0.05)));
    const heldNm = this.#nm.at(-1) ?? nm;
    for (let t = 0; t < 5 * offS; t += STEP_S) this.#nm.push(heldNm * Math.exp(-((t / offS) ** 2)));
  }

  /** Backed out with something else, which a person says; screwed in again by hand. */
  backOut(number: number): void {
    this.#commands.push({ atUs: us(this.#nm.length), cylinder: number });
    this.plug(number).takeOut();
  }

  tape(key: Tape['job']['key'], seat: Seat): Tape {
    this.rest(4);
    const { random } = this;
    const perS = [100, 200, 500][Math.floor(random.uniform(0, 3))] ?? 100;
    const noiseNm = 60 * ([0.0005, 0.001, 0.003][Math.floor(random.uniform(0, 3))] ?? 0.001);
    const zeroNm = random.uniform(-0.3, 0.3);
    const parts: Tape['parts'][number][] = [];
    let [t, c]: [number[], number[]] = [[], []];
    const commands = [...this.#commands];
    for (let step = random.uniform(0, 1000 / perS); step < this.#nm.length - 1; step += 1000 / perS) {
      const atUs = Math.round(step * 1000) + LATE_US;
      const command = commands[0];
      if (command !== undefined && command.atUs <= atUs) {
        parts.push({ t, c }, { command: { do: 'start-again', cylinder: command.cylinder } });
        [t, c] = [[], []];
        commands.shift();
      }
      const i = Math.floor(step);
      const nm = (this.#nm[i] ?? 0) + (step - i) * ((this.#nm[i + 1] ?? 0) - (this.#nm[i] ?? 0));
      t.push(atUs);
      c.push(Math.round(100 * (nm + zeroNm + random.normal(0, noiseNm))));
    }
    parts.push({ t, c });
    const { lowerNm, upperNm } = this;
    const cylinders = this.#plugs.length;
    return {
      job: {
        cell: 'stick-slip',
        key,
        seat,
        lowerNm,
        upperNm,
        cylinders,
        clicks: this.#clicks,
        stepCounts: 1,
      },
      truth: this.#truth,
      parts,
    };
  }
}

const us = (steps: number): number => Math.round(steps * STEP_S * 1e6);
