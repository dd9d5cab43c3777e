import type { Plug, Specification } from '../../src/plug/specification.ts';
import type { Random } from '../random.ts';
import { drawScrew, referenceScrew, type Screw } from './screw.ts';
import { type GasketState, Seat } from './seat.ts';

export interface JointSpec {
  readonly thread: Plug['thread'];
  readonly seat: Plug['seat'];
  readonly gasket: GasketState;
  /** The true state of the threads, whatever the specification assumes. */
  readonly threads: Specification['threads'];
  /** The torque at which a plug of this kind has turned by the guidance's angle: the middle of its window. */
  readonly referenceNm: number;
  readonly crossThreaded: boolean;
}

/** Drag of clean threads in run-down, of the fingers' order. Assumption. */
const DRAG_NM = 0.3;
const DRAG_SIGMA_NM = 0.06;
/** Static friction above kinetic, and the slip over which it is lost. Assumptions (rate-and-state friction in the small). */
const STICTION_LOWER = 0.03;
const STICTION_UPPER = 0.07;
const STICTION_LOST_WITHIN_DEG = 1.5;
/** Below this share of the limit the surfaces have come to rest and stick anew. Assumption. */
const RESTS_BELOW = 0.8;
/** A crossed thread binds turns before the seat, and reaches the reference torque within about this angle. Assumptions. */
const CROSSED_TURNS_EARLY = 2.5;
const CROSSED_BINDS_WITHIN_DEG = 110;
/** Out of the head: about a dozen turns. */
const OUT_DEG = -12 * 360;
const MOTION_TOLERANCE_NM = 1e-7;

/**
 * A plug in its head, without inertia: it stays where it is as long as the torque lies within the friction's limits,
 * and slides along them when the wrench asks for more. Angles in degrees of the plug, 0 at the first touch of a new seat,
 * tightening positive.
 */
export class Joint {
  readonly #screw: Screw;
  readonly #seat: Seat;
  readonly #dragNm: number;
  readonly #stiction: number;
  #crossed: { readonly fromDeg: number; readonly nmPerDeg: number } | null;
  #angleDeg: number;
  #slipDeg = 0;

  constructor(spec: JointSpec, random: Random) {
    this.#screw = drawScrew(spec, spec.threads, random);
    this.#seat = new Seat(spec, spec.referenceNm / referenceScrew(spec).tightenM, random);
    this.#dragNm = random.within(DRAG_NM, DRAG_SIGMA_NM, 3);
    this.#stiction = random.uniform(STICTION_LOWER, STICTION_UPPER);
    this.#crossed = spec.crossThreaded
      ? { fromDeg: -360 * CROSSED_TURNS_EARLY, nmPerDeg: spec.referenceNm / CROSSED_BINDS_WITHIN_DEG }
      : null;
    this.#angleDeg = OUT_DEG;
  }

  get angleDeg(): number {
    return this.#angleDeg;
  }

  /** Angle at which the seat is touched now; a crushed gasket has moved it. */
  get contactDeg(): number {
    return this.#seat.contactDeg;
  }

  get clampN(): number {
    return this.#seat.forceN(this.#angleDeg);
  }

  /** Turned in with the fingers until it stops: at the seat, or where a crossed thread binds. */
  fingerTight(): void {
    this.#angleDeg = this.#crossed?.fromDeg ?? this.#seat.contactDeg;
    this.#slipDeg = 0;
  }

  /** Turned out with the fingers; the next time the thread is started straight. */
  backOut(): void {
    this.#crossed = null;
    this.#angleDeg = OUT_DEG;
  }

  /** Resistance of the thread and the seat to being loosened, in N·m. */
  get holdsNm(): number {
    return this.#limitNm(this.#angleDeg, -1);
  }

  /**
   * The far end of a torsion spring (N·m per degree) stands at `driveDeg`; the plug follows as far as friction makes it.
   * Returns the torque in the spring, which is the torque at the plug.
   */
  follow(driveDeg: number, stiffness: number): number {
    const trial = stiffness * (driveDeg - this.#angleDeg);
    const direction = trial < 0 ? -1 : 1;
    const limit = this.#limitNm(this.#angleDeg, direction);
    if (Math.abs(trial) < RESTS_BELOW * limit) this.#slipDeg = 0;
    const excess = 1 + this.#stiction * Math.exp(-this.#slipDeg / STICTION_LOST_WITHIN_DEG);
    if (Math.abs(trial) <= limit * excess) return trial;
    const from = this.#angleDeg;
    this.#angleDeg = this.#slide(driveDeg, stiffness, direction, excess);
    this.#slipDeg += Math.abs(this.#angleDeg - from);
    this.#seat.pressedTo(this.#angleDeg);
    return stiffness * (driveDeg - this.#angleDeg);
  }

  /** Newton on spring torque = friction's limit; both are smooth and the spring is the stiffer, so it closes in a few steps. */
  #slide(driveDeg: number, stiffness: number, direction: 1 | -1, excess: number): number {
    const lever = direction === 1 ? this.#screw.tightenM : this.#screw.loosenM;
    const bind = this.#crossed?.nmPerDeg ?? 0;
    let angle = this.#angleDeg;
    for (let i = 0; i < 12; i++) {
      const residual = stiffness * (driveDeg - angle) - direction * excess * this.#limitNm(angle, direction);
      if (Math.abs(residual) < MOTION_TOLERANCE_NM) break;
      const slope = direction * excess * (lever * this.#seat.slopeNPerDeg(angle) + bind);
      angle += residual / (stiffness + slope);
    }
    return direction === 1 ? Math.max(angle, this.#angleDeg) : Math.min(angle, this.#angleDeg);
  }

  #limitNm(angleDeg: number, direction: 1 | -1): number {
    const lever = direction === 1 ? this.#screw.tightenM : this.#screw.loosenM;
    const bind =
      this.#crossed === null ? 0 : this.#crossed.nmPerDeg * Math.max(0, angleDeg - this.#crossed.fromDeg);
    return this.#dragNm + bind + lever * this.#seat.forceN(angleDeg);
  }
}
