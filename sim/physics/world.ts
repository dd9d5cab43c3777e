import type { Random } from '../random.ts';

/** Grid of the integration; small against the 2 ms in which a latch lets go, and the same at every sample interval. */
export const STEP_US = 500;

/** Something that moves in steps of the grid. */
export interface Motion {
  readonly torqueNm: number;
  /** How far the body of the wrench has been turned, back and forth. */
  readonly turnedDeg: number;
  step(ms: number): boolean;
}

/** What an action is made of: time in which nothing happens, a motion that the wrench feels or not, a pressed button. */
export type Phase =
  | {
      readonly kind: 'idle';
      readonly us: number;
      /** How far the wrench is turned meanwhile: a ratchet is swung back, and the plug stays. */
      readonly turnDeg?: number;
    }
  | {
      readonly kind: 'motion';
      readonly motion: Motion /** Sign of the torque in the wrench; 0: not in the wrench. */;
      readonly sign: 1 | 0 | -1;
    }
  | { readonly kind: 'gap'; readonly counts: number };

/** A reading on its way out. The world reuses one object: copy what is to be kept. */
export interface Emission {
  kind: 'torque' | 'gap';
  atUs: number;
  counts: number;
  /** How far the body of the wrench was turned since the beginning, in truth. */
  angleDeg: number;
  /** What its gyroscope says of that, in counts of 0.1°. */
  angleCounts: number;
}

/** Time, and what the wrench and the gauge send as it goes by. Knows nothing of plugs. */
export class World {
  readonly #sample: (trueNm: number) => number;
  readonly #sampleAngle: (trueDeg: number, atUs: number) => number;
  readonly #intervalUs: number;
  readonly #jitterUs: number;
  readonly #random: Random;
  readonly #emission: Emission = { kind: 'torque', atUs: 0, counts: 0, angleDeg: 0, angleCounts: 0 };
  #program: Iterator<Phase> | null = null;
  #motion: Extract<Phase, { kind: 'motion' }> | null = null;
  #nowUs = 0;
  #stepStartUs = 0;
  #stepStartNm = 0;
  #nowNm = 0;
  #stepStartDeg = 0;
  #nowDeg = 0;
  #motionFromDeg = 0;
  #tick = 0;
  #sampleAtUs = 0;

  constructor(spec: {
    readonly sample: (trueNm: number) => number;
    readonly sampleAngle: (trueDeg: number, atUs: number) => number;
    readonly intervalUs: number;
    readonly jitterUs: number;
    readonly random: Random;
  }) {
    this.#sample = spec.sample;
    this.#sampleAngle = spec.sampleAngle;
    this.#intervalUs = spec.intervalUs;
    this.#jitterUs = spec.jitterUs;
    this.#random = spec.random;
    this.#nextSample();
  }

  get nowUs(): number {
    return this.#nowUs;
  }

  begin(program: Iterator<Phase>): void {
    if (this.#program !== null) throw new Error('the action before is not finished');
    this.#program = program;
  }

  /** The next reading of the action under way, or null when the action is over. */
  next(): Emission | null {
    for (;;) {
      if (this.#sampleAtUs <= this.#nowUs) return this.#emitTorque();
      const phase = this.#advance();
      if (phase === 'over') return null;
      if (phase !== 'moved') return phase;
    }
  }

  #advance(): 'moved' | 'over' | Emission {
    if (this.#motion !== null) {
      const { motion, sign } = this.#motion;
      if (!motion.step(STEP_US / 1000)) this.#motion = null;
      const nowDeg = this.#motionFromDeg + sign * motion.turnedDeg;
      this.#move(STEP_US, sign === 0 ? 0 : sign * motion.torqueNm, nowDeg);
      return 'moved';
    }
    const phase = this.#program?.next();
    if (phase === undefined || phase.done === true) {
      this.#program = null;
      return 'over';
    }
    if (phase.value.kind === 'gap') return this.#emit('gap', this.#nowUs, phase.value.counts);
    if (phase.value.kind === 'motion') {
      this.#motion = phase.value;
      this.#motionFromDeg = this.#nowDeg;
    } else {
      const { us, turnDeg = 0 } = phase.value;
      this.#move(Math.ceil(us / STEP_US) * STEP_US, 0, this.#nowDeg + turnDeg);
    }
    return 'moved';
  }

  #move(us: number, nm: number, deg: number): void {
    this.#stepStartUs = this.#nowUs;
    this.#stepStartNm = this.#nowNm;
    this.#nowUs += us;
    this.#nowNm = nm;
    this.#stepStartDeg = this.#nowDeg;
    this.#nowDeg = deg;
  }

  #emitTorque(): Emission {
    const atUs = this.#sampleAtUs;
    const share = (atUs - this.#stepStartUs) / Math.max(1, this.#nowUs - this.#stepStartUs);
    const trueNm = this.#stepStartNm + (this.#nowNm - this.#stepStartNm) * share;
    this.#emission.angleDeg = this.#stepStartDeg + (this.#nowDeg - this.#stepStartDeg) * share;
    this.#emission.angleCounts = this.#sampleAngle(this.#emission.angleDeg, atUs);
    this.#nextSample();
    return this.#emit('torque', atUs, this.#sample(trueNm));
  }

  #nextSample(): void {
    const reach = 0.4 * this.#intervalUs;
    const jitter = Math.max(-reach, Math.min(reach, this.#random.normal(0, this.#jitterUs)));
    this.#tick++;
    this.#sampleAtUs = Math.round(this.#tick * this.#intervalUs + jitter);
  }

  #emit(kind: Emission['kind'], atUs: number, counts: number): Emission {
    this.#emission.kind = kind;
    this.#emission.atUs = atUs;
    this.#emission.counts = counts;
    return this.#emission;
  }
}
