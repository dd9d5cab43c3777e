import type { Random } from '../random.ts';
import type { BenchAction } from './action.ts';
import { type BenchSpec, gaugeOf, type WrenchSpec } from './bench-spec.ts';
import { Click } from './click.ts';
import { bentGapMm } from './electrode.ts';
import { FittedPlug } from './fitted-plug.ts';
import { Gauge } from './gauge.ts';
import { Hand } from './hand.ts';
import { Pulse } from './pulse.ts';
import { Stroke } from './stroke.ts';
import type { PullStyle } from './style.ts';
import type { TrueGap, TruePull, Truth } from './truth.ts';
import { type Phase, STEP_US } from './world.ts';

/**
 * Wrench, extension and socket together as one spring, in N·m per degree and N·m of capacity: 4.5 N·m/° for 60 N·m.
 * Assumption, from a 150 mm long 3/8" steel bar (7 N·m/°) and a lever of about 12 N·m/° in series.
 */
const STIFFNESS_PER_CAPACITY = 0.075;
/** What an arm can give at the lever that belongs to the capacity: 300 N at 0.3 m for 60 N·m. Assumption. */
const STRONGEST_PER_CAPACITY = 1.5;
/** Teeth of the ratchet and play of the square. Assumption. */
const SLACK_LOWER_DEG = 2;
const SLACK_UPPER_DEG = 6;
const MOST_STROKES = 14;
const LOOSE_NM = 1;

const LOOSENING: PullStyle = {
  speedDegPerS: 80,
  easeFromShare: null,
  reactionMs: 0,
  effortAfterShare: 1,
  followThroughDeg: 0,
  stopAtShare: null,
  leanToShare: null,
  holdMs: 20,
  letOffDegPerS: 150,
  strokeDeg: 55,
};

/** Carries actions out on the plugs of one engine, as phases of time, and keeps the truth of them. */
export class Hands implements Truth {
  readonly pulls: TruePull[] = [];
  readonly gaps: TrueGap[] = [];
  readonly #spec: BenchSpec;
  readonly #wrench: WrenchSpec;
  readonly #random: Random;
  readonly #stiffness: number;
  readonly #click: Click;
  readonly #gauge: Gauge;
  readonly #plugs = new Map<number, FittedPlug>();
  #actions = 0;
  #plugsTaken = 0;

  constructor(spec: BenchSpec, wrench: WrenchSpec, random: Random) {
    this.#spec = spec;
    this.#wrench = wrench;
    this.#random = random;
    this.#stiffness = STIFFNESS_PER_CAPACITY * wrench.capacityNm;
    this.#click = new Click(wrench.settingNm, this.#stiffness, random.fork('click'));
    this.#gauge = new Gauge(gaugeOf(spec, random.fork('gauge')), random.fork('gauge-readings'));
    for (const cylinder of spec.cylinders)
      this.#takeNew(cylinder, spec.plug.crossThreaded?.includes(cylinder) === true);
  }

  *perform(action: BenchAction, nowUs: () => number): Generator<Phase> {
    const random = this.#random.fork(`action ${++this.#actions}`);
    switch (action.do) {
      case 'wait':
        return yield idle(action.ms);
      case 'measure-gap':
        return yield* this.#measure(action.cylinder, nowUs, random);
      case 'bend-electrode': {
        yield idle(random.uniform(4000, 9000));
        const plug = this.#plug(action.cylinder);
        plug.gapMm = bentGapMm(plug.gapMm, action.byMm, random);
        return;
      }
      case 'fit':
        yield idle(random.uniform(3000, 6000));
        return this.#plug(action.cylinder).fit();
      case 'pull':
        return yield* this.#pull(action.cylinder, action.style, nowUs, random);
      case 'loosen':
        return yield* this.#loosen(action.cylinder, action.with, nowUs, random);
      case 'replace':
        yield idle(random.uniform(5000, 10_000));
        return this.#takeNew(action.cylinder, false);
      case 'knock':
        return yield* this.#knock(action.peakNm, nowUs, random);
    }
  }

  *#measure(cylinder: number, nowUs: () => number, random: Random): Generator<Phase> {
    yield idle(random.uniform(1500, 3500));
    const trueMm = this.#plug(cylinder).gapMm;
    yield { kind: 'gap', counts: this.#gauge.measure(trueMm) };
    this.gaps.push({ cylinder, atUs: nowUs(), trueMm });
    yield idle(200);
  }

  *#pull(cylinder: number, style: PullStyle, nowUs: () => number, random: Random): Generator<Phase> {
    const plug = this.#fitted(cylinder);
    yield* approach(random);
    for (let n = 0; n < MOST_STROKES; n++) {
      const hand = this.#hand(style, random.fork(`stroke ${n}`));
      const stroke = this.#stroke(plug, hand, this.#click, 1, random);
      const startUs = nowUs();
      yield { kind: 'motion', motion: stroke, sign: 1 };
      const kind = plug.pulledBy(stroke);
      this.#record({ cylinder, kind, stroke, plug, startUs, endUs: nowUs(), sign: 1, measured: true });
      if (stroke.released || !hand.ranOutOfRoom) return;
      yield idle((1000 * style.strokeDeg) / random.uniform(180, 260), -style.strokeDeg);
    }
  }

  *#loosen(
    cylinder: number,
    tool: 'wrench' | 'ratchet',
    nowUs: () => number,
    random: Random,
  ): Generator<Phase> {
    const plug = this.#fitted(cylinder);
    const measured = tool === 'wrench';
    yield idle(random.uniform(1500, 3000));
    for (let n = 0; n < MOST_STROKES && (n === 0 || plug.joint.holdsNm > LOOSE_NM); n++) {
      const stroke = this.#stroke(plug, this.#hand(LOOSENING, random.fork(`stroke ${n}`)), null, -1, random);
      const startUs = nowUs();
      yield { kind: 'motion', motion: stroke, sign: measured ? -1 : 0 };
      this.#record({
        cylinder,
        kind: 'loosening',
        stroke,
        plug,
        startUs,
        endUs: nowUs(),
        sign: -1,
        measured,
      });
      yield idle(300);
    }
    yield idle(random.uniform(2500, 4500));
    plug.takeOut();
  }

  *#knock(peakNm: number, nowUs: () => number, random: Random): Generator<Phase> {
    yield idle(random.uniform(300, 800));
    const startUs = nowUs();
    const lastsMs = random.uniform(80, 350);
    yield { kind: 'motion', motion: new Pulse(peakNm, lastsMs), sign: 1 };
    const peakUs = startUs + Math.round((500 * lastsMs) / STEP_US) * STEP_US;
    const none = { releaseNm: null, releaseUs: null, rotationDeg: 0, clampN: 0 };
    this.pulls.push({
      cylinder: null,
      kind: 'handling',
      startUs,
      endUs: nowUs(),
      peakNm,
      peakUs,
      measured: true,
      ...none,
    });
  }

  #hand(style: PullStyle, random: Random): Hand {
    return new Hand(style, this.#wrench.settingNm, STRONGEST_PER_CAPACITY * this.#wrench.capacityNm, random);
  }

  #stroke(plug: FittedPlug, hand: Hand, click: Click | null, direction: 1 | -1, random: Random): Stroke {
    const slackDeg = random.uniform(SLACK_LOWER_DEG, SLACK_UPPER_DEG);
    return new Stroke({ hand, click, joint: plug.joint, direction, stiffness: this.#stiffness, slackDeg });
  }

  #record(done: {
    readonly cylinder: number;
    readonly kind: TruePull['kind'];
    readonly stroke: Stroke;
    readonly plug: FittedPlug;
    readonly startUs: number;
    readonly endUs: number;
    readonly sign: 1 | -1;
    readonly measured: boolean;
  }): void {
    const { cylinder, kind, stroke, plug, startUs, endUs, sign, measured } = done;
    this.pulls.push({
      cylinder,
      kind,
      startUs,
      endUs,
      peakNm: sign * stroke.peakNm,
      peakUs: startUs + stroke.peakStep * STEP_US,
      releaseNm: stroke.releaseNm,
      releaseUs: stroke.releaseStep === null ? null : startUs + stroke.releaseStep * STEP_US,
      rotationDeg: stroke.rotationDeg,
      clampN: plug.joint.clampN,
      measured,
    });
  }

  #takeNew(cylinder: number, crossThreaded: boolean): void {
    const random = this.#random.fork(`plug ${++this.#plugsTaken}`);
    this.#plugs.set(cylinder, new FittedPlug(this.#spec.plug, crossThreaded, random));
  }

  #plug(cylinder: number): FittedPlug {
    const plug = this.#plugs.get(cylinder);
    if (plug === undefined) throw new Error(`no cylinder ${cylinder} on this bench`);
    return plug;
  }

  #fitted(cylinder: number): FittedPlug {
    const plug = this.#plug(cylinder);
    if (!plug.fitted) throw new Error(`the plug of cylinder ${cylinder} is not in the head`);
    return plug;
  }
}

function idle(ms: number, turnDeg = 0): Phase {
  return { kind: 'idle', us: Math.round(ms * 1000), turnDeg };
}

/** The socket finds the hexagon: the wrench feels a little of it, too little to be called a pull. */
function* approach(random: Random): Generator<Phase> {
  yield idle(random.uniform(300, 700));
  for (let n = Math.floor(random.uniform(0, 3)); n > 0; n--) {
    yield { kind: 'motion', motion: new Pulse(random.uniform(-0.3, 0.4), random.uniform(60, 200)), sign: 1 };
    yield idle(random.uniform(100, 300));
  }
  yield idle(random.uniform(200, 400));
}
