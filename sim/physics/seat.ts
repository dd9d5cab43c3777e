import type { Plug } from '../../src/plug/specification.ts';
import type { Random } from '../random.ts';

/** Turn from seat contact to the reference torque of a joint whose gasket is crushed or that has none. */
const USED_GASKET_DEG = 30; // maker's guidance, 1/12 turn
const CONICAL_DEG = 22.5; // maker's guidance, 1/16 turn
/** Metal on metal: nothing gives but the thread. Assumption. */
const NO_GASKET_DEG = 8;
const HARD_SPREAD_SHARE = 0.05; // assumption

/** New gasket: 1/2 to 2/3 turn (180 to 240°) for M12 to M18, 1/2 turn for M10; M8 taken as M10 (assumption). */
const CRUSH_DEG: Readonly<Record<Plug['thread'], number>> = {
  M8x1: 180,
  M10x1: 180,
  'M12x1.25': 210,
  'M14x1.25': 210,
  'M18x1.5': 210,
};
const CRUSH_SIGMA_DEG = 8; // assumption; with the friction's spread it fills the guidance's range

/** Shares of the reference force in a new gasket's crush: first yield, plateau, hardening. Assumptions as to shape. */
const YIELD = 0.16;
const YIELD_WITHIN = 0.05;
const PLATEAU = 0.1;
const HARDENING = 1 - YIELD - PLATEAU;
/** Straight part of the elastic law; the rest is quadratic. Assumption: surfaces bed in. */
const STRAIGHT = 0.6;

/** `missing` and `doubled` are what goes wrong in the shop. */
export type GasketState = 'new' | 'used' | 'missing' | 'doubled';

/**
 * Clamp force against the plug's turn. A new gasket is crushed along a soft curve and remembers how far; off that curve
 * it is as stiff as a used one. So the same gasket, loosened and tightened again, takes a twelfth of a turn.
 */
export class Seat {
  readonly #referenceN: number;
  readonly #crushDeg: number | null;
  readonly #elasticDeg: number;
  #deepestDeg = 0;
  /** Where the seat is first touched; moves on as the gasket is crushed. */
  contactDeg = 0;

  constructor(
    plug: Pick<Plug, 'thread' | 'seat'> & { readonly gasket: GasketState },
    referenceN: number,
    random: Random,
  ) {
    this.#referenceN = referenceN;
    const gasketed = plug.gasket === 'missing' ? NO_GASKET_DEG : USED_GASKET_DEG;
    const elastic = plug.seat === 'conical' ? CONICAL_DEG : gasketed;
    this.#elasticDeg = random.within(elastic, HARD_SPREAD_SHARE * elastic, 2);
    const crush = random.within(CRUSH_DEG[plug.thread], CRUSH_SIGMA_DEG, 2.2);
    const gaskets = { new: 1, doubled: 2, used: 0, missing: 0 }[plug.gasket];
    this.#crushDeg = plug.seat === 'gasket' && gaskets > 0 ? gaskets * crush : null;
  }

  forceN(angleDeg: number): number {
    if (this.#crushDeg !== null && angleDeg >= this.#deepestDeg)
      return this.#crushForceN(angleDeg, this.#crushDeg);
    const x = (angleDeg - this.contactDeg) / this.#elasticDeg;
    return x <= 0 ? 0 : this.#referenceN * (STRAIGHT * x + (1 - STRAIGHT) * x * x);
  }

  slopeNPerDeg(angleDeg: number): number {
    if (this.#crushDeg !== null && angleDeg >= this.#deepestDeg) {
      const x = angleDeg / this.#crushDeg;
      const early = (YIELD * (1 + YIELD_WITHIN) * YIELD_WITHIN) / (x + YIELD_WITHIN) ** 2;
      return (this.#referenceN * (early + PLATEAU + 6 * HARDENING * x * x * x * x * x)) / this.#crushDeg;
    }
    const x = (angleDeg - this.contactDeg) / this.#elasticDeg;
    return x <= 0 ? 0 : (this.#referenceN * (STRAIGHT + 2 * (1 - STRAIGHT) * x)) / this.#elasticDeg;
  }

  /** Tells the seat that the plug came to this angle, so that a gasket remembers its crush. */
  pressedTo(angleDeg: number): void {
    if (this.#crushDeg === null || angleDeg <= this.#deepestDeg) return;
    this.#deepestDeg = angleDeg;
    const share = this.#crushForceN(angleDeg, this.#crushDeg) / this.#referenceN;
    const bend = 1 - STRAIGHT;
    const x = (Math.sqrt(STRAIGHT * STRAIGHT + 4 * bend * share) - STRAIGHT) / (2 * bend);
    this.contactDeg = angleDeg - x * this.#elasticDeg;
  }

  #crushForceN(angleDeg: number, crushDeg: number): number {
    const x = angleDeg / crushDeg;
    if (x <= 0) return 0;
    const cube = x * x * x;
    const early = (YIELD * (1 + YIELD_WITHIN) * x) / (x + YIELD_WITHIN);
    return this.#referenceN * (early + PLATEAU * x + HARDENING * cube * cube);
  }
}
