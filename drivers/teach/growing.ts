import { w } from '../../src/words/catalogue.ts';
import type { Observed, Sent, Stated } from './observed.ts';
import { type Lesson, type Taught, teach } from './teach.ts';

/** Enough for every device that can be described; what is not found by then is not found by more. */
export const MOST_FIGURES = 8;
const FEWEST_FIGURES = 4;

/** What is known after one more figure: a profile, that none can be, or what is to be done next. */
export type Progress =
  | Extract<Taught, { readonly outcome: 'taught' | 'refused' }>
  | { readonly outcome: 'more'; readonly fits: readonly string[] | null; readonly ask: string };

/** A lesson at the bench, figure after figure. The last one is kept back each time, and proves what the others gave. */
export class GrowingLesson {
  readonly #about: Pick<Lesson, 'title' | 'link'> & Pick<Observed, 'quantity' | 'unit' | 'step'>;
  #rest: Sent = [];
  readonly #stated: Stated[] = [];

  constructor(about: Pick<Lesson, 'title' | 'link'> & Pick<Observed, 'quantity' | 'unit' | 'step'>) {
    this.#about = about;
  }

  get figures(): number {
    return this.#stated.length;
  }

  /** What it sent while nobody touched it. */
  rested(sent: Sent): void {
    this.#rest = sent;
  }

  /** What to do for the first figure. */
  get first(): string {
    return this.#about.quantity === 'torque'
      ? w`Pull once to a small torque and let go.`
      : w`Measure a small gap and hold it.`;
  }

  took(stated: Stated): Progress {
    this.#stated.push(stated);
    const { length } = this.#stated;
    if (length < 3) return { outcome: 'more', fits: null, ask: this.#usual(length) };
    // With three figures nothing can be kept back yet; what they leave open tells what to pull next.
    const found = this.#found(Math.min(length, Math.max(3, length - 1)));
    if (length < FEWEST_FIGURES) {
      const fits =
        found.outcome === 'taught' ? [found.summary] : found.outcome === 'ambiguous' ? found.fits : null;
      const ask = found.outcome === 'ambiguous' ? found.ask : this.#usual(length);
      return { outcome: 'more', fits, ask };
    }
    if (found.outcome !== 'ambiguous') return found;
    return length < MOST_FIGURES
      ? { outcome: 'more', fits: found.fits, ask: found.ask }
      : {
          outcome: 'refused',
          why: w`${MOST_FIGURES} figures did not tell these apart: ${found.fits.join('; ')}.`,
        };
  }

  /** The last figure was mistyped, or the pull was none. */
  takeBack(): string {
    this.#stated.pop();
    return this.#stated.length === 0 ? this.first : this.#usual(this.#stated.length);
  }

  #found(made: number): Taught {
    const { title, link, ...display } = this.#about;
    const proof = this.#stated.at(-1);
    if (proof === undefined) throw new Error('nothing to prove it with');
    const observed = { ...display, rest: this.#rest, stated: this.#stated.slice(0, made) };
    return teach({ title, link, observed, proof });
  }

  #usual(length: number): string {
    const { quantity } = this.#about;
    if (quantity === 'length')
      return length === 1 ? w`Measure a large gap and hold it.` : w`Measure another gap and hold it.`;
    if (length === 1) return w`Pull once against the tightening direction; give that figure with a minus.`;
    return length === 2
      ? w`Pull once to a large torque.`
      : w`Pull once more, to any other torque: it proves the profile.`;
  }
}
