/**
 * A plug in its seat at the end of a torsion spring, with dry friction that sticks and slips: a third physics, beside sim/ and
 * tests/bench/independent. Clamping force comes from the seat as it is crushed, torque from the force by one nut factor.
 *
 * It differs on purpose: gaskets harden as a foam that runs out of room, hard seats have a toe and then a straight
 * line, driven slowly a plug moves in jumps that overshoot, and the drives of the tools bed in before they are stiff.
 * Degrees, N·m, seconds. Every constant is an assumption of a size that workshops see.
 */
import type { Random } from '../../../sim/random.ts';

export const SEATS = ['new gasket', 'used gasket', 'cone'] as const;
export type Seat = (typeof SEATS)[number];

/** How much torque a crushed seat asks for, 1 at its reach. */
type Hardening = (share: number) => number;

export class Plug {
  readonly #random: Random;
  readonly #nominalNm: number;
  /** Static friction over kinetic, and how far a jump runs below the kinetic one, as a share of that. */
  readonly #sticks: number;
  readonly #overshoots: number;
  /** Driven faster than this it slides without jumps. */
  readonly #slidesDegPerS: number;
  /** What the clamping force loses by bedding in, within half a minute. */
  readonly #settles: number;
  #dragNm = 0;
  #seat: Seat;
  #reachDeg = 0;
  #hardens: Hardening = (share) => share;
  #deg = 0;
  #stillSinceS = Number.NEGATIVE_INFINITY;
  #slides = false;
  #heldNm = 0;

  constructor(random: Random, seat: Seat, nominalNm: number) {
    this.#random = random;
    this.#seat = seat;
    this.#nominalNm = nominalNm;
    this.#sticks = random.uniform(0.01, 0.2);
    this.#overshoots = random.uniform(0, 0.6);
    this.#slidesDegPerS = random.uniform(3, 25);
    this.#settles = random.uniform(0, 0.08);
    this.takeOut();
  }

  get deg(): number {
    return this.#deg;
  }

  /** Taken out and screwed in again by hand; a gasket that was crushed stays crushed. */
  takeOut(): void {
    const random = this.#random;
    if (this.#seat === 'new gasket' && this.#heldNm > 0.4 * this.#nominalNm) this.#seat = 'used gasket';
    this.#heldNm = 0;
    this.#dragNm = random.uniform(0.1, 0.8);
    if (this.#seat === 'new gasket') {
      this.#reachDeg = random.uniform(150, 270);
      this.#hardens = foam(random.uniform(0.03, 0.15), random.uniform(1.08, 1.5), random.uniform(0.8, 2));
    } else {
      this.#reachDeg = this.#seat === 'cone' ? random.uniform(11, 30) : random.uniform(20, 55);
      this.#hardens = toe(random.uniform(0.08, 0.6));
    }
    this.tightenUnseen(random.uniform(0.03, 0.12) * this.#nominalNm);
  }

  /** By somebody else, with another tool. */
  tightenUnseen(nm: number): void {
    let [low, high] = [0, 2 * this.#reachDeg];
    for (let i = 0; i < 40; i++) {
      const middle = (low + high) / 2;
      if (this.#kineticNm(middle) < nm) low = middle;
      else high = middle;
    }
    this.#deg = low;
    this.#slides = false;
    this.#stillSinceS = Number.NEGATIVE_INFINITY;
  }

  /** How far the wrench has to come round, without the winding up of the tools. */
  leftDeg(toNm: number): number {
    let deg = this.#deg;
    while (this.#kineticNm(deg) < toNm && deg < 2 * this.#reachDeg) deg += 0.25;
    return deg - this.#deg;
  }

  /** The torque at the drive when it stands at `driveDeg`; the plug turns as far as friction makes it. */
  follow(driveDeg: number, spring: Spring, degPerS: number, atS: number): number {
    let nm = spring.nm(driveDeg - this.#deg);
    if (!this.#slides && nm <= this.#staticNm(atS)) return nm;
    const rests = this.#slides ? 1 : 1 - this.#overshoots * this.#sticks;
    if (nm > this.#kineticNm(this.#deg) * rests) {
      let step = (driveDeg - this.#deg) / 2;
      for (let i = 0; i < 24; i++, step /= 2)
        if (spring.nm(driveDeg - this.#deg - step) > this.#kineticNm(this.#deg + step) * rests)
          this.#deg += step;
      nm = spring.nm(driveDeg - this.#deg);
      this.#slides = degPerS > this.#slidesDegPerS;
      this.#stillSinceS = atS;
    } else this.#slides = false;
    this.#heldNm = Math.max(this.#heldNm, nm);
    return nm;
  }

  #kineticNm(deg: number): number {
    return deg <= 0
      ? this.#dragNm
      : this.#dragNm + (this.#nominalNm - this.#dragNm) * this.#hardens(deg / this.#reachDeg);
  }

  #staticNm(atS: number): number {
    const restedS = atS - this.#stillSinceS;
    const stuck = 1 + this.#sticks * (1 - Math.exp(-restedS / 0.1));
    return this.#kineticNm(this.#deg) * stuck * (1 - this.#settles * (1 - Math.exp(-restedS / 15)));
  }
}

/** A ring that gives way at a plateau, then runs out of room: x over what is left of it. */
function foam(plateau: number, room: number, power: number): Hardening {
  const raw = (x: number) => (x >= room ? 1e3 : (x / (room - x)) ** power);
  return (x) => plateau * (1 - Math.exp(-x / 0.05)) + (1 - plateau) * (raw(x) / raw(1));
}

/** A hard seat: rough faces come together, then a straight line. */
function toe(soft: number): Hardening {
  const raw = (x: number) => Math.hypot(x, soft) - soft;
  return (x) => raw(x) / raw(1);
}

/** Wrench, extension and socket: a straight line behind drives that bed in under the first torque. */
export class Spring {
  readonly #nmPerDeg: number;
  readonly #bedsDeg: number;
  readonly #bedsNm: number;

  constructor(nmPerDeg: number, bedsDeg: number, bedsNm: number) {
    this.#nmPerDeg = nmPerDeg;
    this.#bedsDeg = bedsDeg;
    this.#bedsNm = bedsNm;
  }

  woundDeg(nm: number): number {
    return nm / this.#nmPerDeg + this.#bedsDeg * (1 - Math.exp(-nm / this.#bedsNm));
  }

  /** Newton on the winding, which is smooth and bends one way. */
  nm(deg: number): number {
    if (deg <= 0) return 0;
    let nm = 0;
    for (let i = 0; i < 30; i++) {
      const off = deg - this.woundDeg(nm);
      if (Math.abs(off) < 1e-6) break;
      nm += off / (1 / this.#nmPerDeg + (this.#bedsDeg / this.#bedsNm) * Math.exp(-nm / this.#bedsNm));
    }
    return nm;
  }
}
