import type { Click } from './click.ts';
import type { Feel, Hand } from './hand.ts';
import type { Joint } from './joint.ts';

/**
 * One stroke of a ratchet: hand, head of the wrench, extension as a torsion spring, plug. The ratchet passes torque in
 * the one direction only, so that the way back is free.
 */
export class Stroke implements Feel {
  readonly #hand: Hand;
  readonly #click: Click | null;
  readonly #joint: Joint;
  readonly #direction: 1 | -1;
  readonly #stiffness: number;
  readonly #slackDeg: number;
  readonly #startDeg: number;
  /** Felt by the hand and passed to the plug; positive in the direction of the stroke. */
  torqueNm = 0;
  released = false;
  peakNm = 0;
  peakStep = 0;
  releaseNm: number | null = null;
  releaseStep: number | null = null;
  steps = 0;

  constructor(parts: {
    readonly hand: Hand;
    /** Null for a plain ratchet and when loosening: then nothing clicks. */
    readonly click: Click | null;
    readonly joint: Joint;
    readonly direction: 1 | -1;
    readonly stiffness: number;
    readonly slackDeg: number;
  }) {
    this.#hand = parts.hand;
    this.#click = parts.click;
    this.#joint = parts.joint;
    this.#direction = parts.direction;
    this.#stiffness = parts.stiffness;
    this.#slackDeg = parts.slackDeg;
    this.#startDeg = parts.joint.angleDeg;
  }

  get turnedDeg(): number {
    return this.#hand.travelDeg;
  }

  get rotationDeg(): number {
    return this.#joint.angleDeg - this.#startDeg;
  }

  /** Advances by `ms`; false once the hand is off. */
  step(ms: number): boolean {
    this.steps++;
    this.#hand.step(this, ms);
    if (this.#click?.step(this.torqueNm, ms) === true && !this.released) {
      this.released = true;
      this.releaseNm = this.torqueNm;
      this.releaseStep = this.steps - 1;
    }
    const wound = Math.max(0, this.#hand.travelDeg - this.#slackDeg) - (this.#click?.tipDeg ?? 0);
    const drive = this.#startDeg + this.#direction * wound;
    const ahead = this.#direction * (drive - this.#joint.angleDeg) > 0;
    this.torqueNm = ahead ? Math.abs(this.#joint.follow(drive, this.#stiffness)) : 0;
    if (this.torqueNm > this.peakNm) {
      this.peakNm = this.torqueNm;
      this.peakStep = this.steps;
    }
    if (!this.#hand.off) return true;
    this.#click?.relax();
    this.torqueNm = 0;
    return false;
  }
}
