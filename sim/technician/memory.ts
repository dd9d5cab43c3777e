import type { Answer } from '../../src/job/event.ts';

/** What a person did between two looks at the screen: the pulls that the program numbered in between. */
export interface Deed {
  readonly cylinder: number | null;
  readonly firstPull: number;
  readonly lastPull: number;
  /** What the pulls were, the last of them apart: a second click comes after the tightening. */
  readonly was: Answer;
  readonly lastWas: Answer;
}

/** What a person remembers of the job. */
export class Memory {
  readonly #deeds: Deed[] = [];
  readonly #fitted = new Set<number>();
  readonly #clicked = new Set<number>();
  readonly #stoppedShort = new Set<number>();
  readonly #visits = new Map<string, number>();

  isFitted(cylinder: number): boolean {
    return this.#fitted.has(cylinder);
  }

  /** Pulled to the click since it was last fitted. */
  hasClicked(cylinder: number): boolean {
    return this.#clicked.has(cylinder);
  }

  /** Plugs that he pulled to the click since they were last fitted. */
  get tight(): readonly number[] {
    return [...this.#clicked];
  }

  hasStoppedShort(cylinder: number): boolean {
    return this.#stoppedShort.has(cylinder);
  }

  fitted(cylinder: number): void {
    this.#fitted.add(cylinder);
  }

  takenOut(cylinder: number): void {
    this.#fitted.delete(cylinder);
    this.#clicked.delete(cylinder);
    this.#stoppedShort.delete(cylinder);
  }

  pulled(cylinder: number, toTheClick: boolean): void {
    (toTheClick ? this.#clicked : this.#stoppedShort).add(cylinder);
  }

  /** Counts the times he came to this cylinder with the same thing in hand, and says which this is. */
  visit(what: 'gap' | 'torque' | 'again', cylinder: number): number {
    const key = `${what} ${cylinder}`;
    const visits = (this.#visits.get(key) ?? 0) + 1;
    this.#visits.set(key, visits);
    return visits;
  }

  did(deed: Deed): void {
    this.#deeds.push(deed);
  }

  deedOf(pull: number): Deed | undefined {
    return this.#deeds.find(({ firstPull, lastPull }) => firstPull <= pull && pull <= lastPull);
  }
}
