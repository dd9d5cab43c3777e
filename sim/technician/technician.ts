import type { Command } from '../../src/job/command.ts';
import type { Answer } from '../../src/job/event.ts';
import type { Question } from '../../src/job/state.ts';
import type { Action } from '../physics/action.ts';
import type { Random } from '../random.ts';
import { trueAnswer } from './answer.ts';
import { drawManner, drawStyle, type Habits, type Manner } from './habits.ts';
import { Memory } from './memory.ts';
import { gapCount, type Screen } from './screen.ts';

export interface TechnicianSpec {
  readonly habits: Habits;
  /** The order in which he goes round. */
  readonly order: readonly number[];
  readonly gapLowerMm: number;
  readonly gapUpperMm: number;
  /** From here on an overtightened plug is not fitted again but replaced. */
  readonly hurtFromNm: number;
}

/** How he left the bench. */
export interface Leaving {
  readonly finished: boolean;
  readonly why: string;
}

const NOTICED_WITHIN_MS = 10_000;
const MOST_VISITS = 6;
const ABOUT_THE_PLUG: ReadonlySet<Question['kind']> = new Set(['already-tight', 'other-plug', 'loose']);

type Work<T> = Generator<Action, T, Screen>;

/**
 * A person at the bench: each action that comes out of the generator is to be carried out, and the screen as it is then
 * goes back in. He does what the screen asks, with his habits, and answers truthfully.
 */
export function* technician(spec: TechnicianSpec, random: Random): Work<Leaving> {
  return yield* new Technician(spec, random).work();
}

class Technician {
  readonly #spec: TechnicianSpec;
  readonly #random: Random;
  readonly #memory = new Memory();
  #skipped: number | null;
  /** Set once he has passed over a cylinder: from then on he is one ahead of the screen. */
  #ahead = false;

  constructor(spec: TechnicianSpec, random: Random) {
    this.#spec = spec;
    this.#random = random;
    const skips = random.chance(spec.habits.skips) && spec.order.length > 1;
    this.#skipped = skips ? (spec.order[Math.floor(random.uniform(0, spec.order.length - 1))] ?? null) : null;
  }

  *work(): Work<Leaving> {
    let screen = yield wait(this.#random.uniform(800, 2000));
    for (;;) {
      if (screen.closed !== null) return { finished: screen.closed.complete, why: 'the job is closed' };
      const question = screen.questions[0];
      let next: Screen | Leaving;
      if (question !== undefined) next = yield* this.#answer(question, screen);
      else if (screen.gapTarget !== null) next = yield* this.#gap(screen.gapTarget, screen);
      else if (screen.torqueTarget !== null) next = yield* this.#torque(screen.torqueTarget, screen);
      else {
        yield { do: 'press', command: { do: 'close' } };
        return { finished: true, why: 'all is done' };
      }
      if ('why' in next) return next;
      screen = next;
    }
  }

  *#gap(cylinder: number, before: Screen): Work<Screen | Leaving> {
    const visit = this.#memory.visit('gap', cylinder);
    if (visit > 2 * MOST_VISITS)
      return { finished: false, why: `the gap of cylinder ${cylinder} cannot be proven` };
    const last = before.lastVerdict;
    if (visit > 1 && last !== null && last.quantity === 'length' && last.cylinder === cylinder) {
      if (before.plugs[cylinder]?.step?.do === 'replace' || visit === MOST_VISITS)
        return yield* this.#scrap(cylinder);
      const byMm = (this.#spec.gapLowerMm + this.#spec.gapUpperMm) / 2 - last.judgement.value;
      yield { do: 'bend-electrode', cylinder, byMm };
    }
    let screen = yield { do: 'measure-gap', cylinder };
    for (
      let waitedMs = 0;
      gapCount(screen) === gapCount(before) && waitedMs < NOTICED_WITHIN_MS;
      waitedMs += 500
    )
      screen = yield wait(500);
    return screen;
  }

  /** Throws the plug away, says so, and takes another out of the box. */
  *#scrap(cylinder: number): Work<Screen> {
    yield { do: 'replace', cylinder };
    return yield { do: 'press', command: { do: 'scrap-plug', cylinder, reason: 'gap' } };
  }

  *#torque(asked: number, before: Screen): Work<Screen | Leaving> {
    const cylinder = this.#whereHeGoes(asked);
    if (!this.#ahead && this.#memory.hasClicked(cylinder)) return yield* this.#takeOut(cylinder, before);
    const visit = this.#memory.visit('torque', cylinder);
    if (visit > MOST_VISITS)
      return { finished: false, why: `the torque of cylinder ${cylinder} cannot be proven` };
    if (this.#ahead && this.#memory.hasClicked(cylinder) && this.#triedInVain(cylinder) > 2)
      return { finished: false, why: 'thinks that all are done' };
    let screen = before;
    if (!this.#memory.isFitted(cylinder)) {
      screen = yield { do: 'fit', cylinder };
      this.#memory.fitted(cylinder);
    }
    screen = yield* this.#check(cylinder, screen);
    if (screen.questions.length > 0) return screen;
    screen = yield* this.#knock(screen);
    return yield* this.#pull(cylinder, screen);
  }

  /** Counts how often he pulls a plug that he had pulled to the click, because the screen still asks for one. */
  #triedInVain(cylinder: number): number {
    return this.#memory.visit('again', cylinder);
  }

  /** One who passed over a cylinder is one ahead from there on; at the end of his round there is none left but the last. */
  #whereHeGoes(asked: number): number {
    if (asked === this.#skipped) this.#ahead = true;
    if (!this.#ahead) return asked;
    const order = this.#spec.order;
    return order[Math.min(order.indexOf(asked) + 1, order.length - 1)] ?? asked;
  }

  *#pull(cylinder: number, before: Screen): Work<Screen> {
    const wasClicked = this.#memory.hasClicked(cylinder);
    const manner = this.#manner(cylinder);
    yield { do: 'pull', cylinder, style: drawStyle(manner, this.#random) };
    this.#memory.pulled(cylinder, manner !== 'short');
    const twice = manner !== 'short' && this.#random.chance(this.#spec.habits.clicksTwice);
    if (twice)
      yield { do: 'pull', cylinder, style: drawStyle(manner === 'lean' ? 'hurried' : manner, this.#random) };
    const next = manner === 'short' ? this.#overlooked(cylinder) : null;
    if (next !== null) return yield* this.#wentOnTo(next, cylinder, before);
    const screen = yield* this.#noticed(before);
    const was = wasClicked ? 'rehit' : 'fresh';
    this.#remember(cylinder, before, screen, was, twice ? 'rehit' : was);
    return screen.pullCount === before.pullCount ? yield* this.#takeOut(cylinder, screen) : screen;
  }

  /** The plug he goes to next, if he takes the one that stopped short for done. */
  #overlooked(cylinder: number): number | null {
    const order = this.#spec.order;
    const next = order[order.indexOf(cylinder) + 1];
    if (next === undefined || this.#memory.isFitted(next)) return null;
    return this.#random.chance(this.#spec.habits.overlooks) ? next : null;
  }

  /** Fits and pulls the next plug at once; looks at the screen only then. */
  *#wentOnTo(next: number, cylinder: number, before: Screen): Work<Screen> {
    const between = yield { do: 'fit', cylinder: next };
    this.#remember(cylinder, before, between, 'fresh', 'fresh');
    this.#memory.fitted(next);
    yield { do: 'pull', cylinder: next, style: drawStyle('careful', this.#random) };
    this.#memory.pulled(next, true);
    const screen = yield* this.#noticed(between);
    this.#remember(next, between, screen, 'fresh', 'fresh');
    return screen;
  }

  /** Goes back to a plug that is tight and tries it once more. */
  *#check(cylinder: number, before: Screen): Work<Screen> {
    const tight = this.#memory.tight.filter((one) => one !== cylinder);
    const one = tight[Math.floor(this.#random.uniform(0, tight.length))];
    if (one === undefined || !this.#random.chance(this.#spec.habits.checks)) return before;
    yield wait(this.#random.uniform(1000, 3000));
    yield { do: 'pull', cylinder: one, style: drawStyle('careful', this.#random) };
    const screen = yield* this.#noticed(before);
    this.#remember(one, before, screen, 'rehit', 'rehit');
    return screen;
  }

  /** Told that he stopped short, nobody stops short again. */
  #manner(cylinder: number): Manner {
    const habits = this.#spec.habits;
    return drawManner(
      this.#memory.hasStoppedShort(cylinder) ? { ...habits, stopsShort: 0 } : habits,
      this.#random,
    );
  }

  *#knock(before: Screen): Work<Screen> {
    if (!this.#random.chance(this.#spec.habits.knocks)) return before;
    const screen = yield { do: 'knock', peakNm: this.#random.uniform(2, 9) };
    const later = screen.pullCount === before.pullCount ? yield wait(900) : screen;
    this.#remember(null, before, later, 'handling', 'handling');
    return later;
  }

  #remember(cylinder: number | null, before: Screen, after: Screen, was: Answer, lastWas: Answer): void {
    const firstPull = before.pullCount + 1;
    this.#memory.did({ cylinder, firstPull, lastPull: after.pullCount, was, lastWas });
  }

  *#answer(question: Question, screen: Screen): Work<Screen | Leaving> {
    const hurt = screen.cylinders.some(({ pulls }) =>
      pulls.some(({ pull }) => pull.pull === question.pull && pull.peakNm >= this.#spec.hurtFromNm),
    );
    const corrected = this.#setRight(question);
    if (corrected !== null) {
      yield wait(this.#random.uniform(2000, 6000));
      return yield { do: 'press', command: corrected };
    }
    const answer = trueAnswer(question, this.#memory, hurt);
    if (answer === null)
      return { finished: false, why: `no true answer is offered for pull ${question.pull}` };
    yield wait(this.#random.uniform(1000, 2500));
    const shown = yield { do: 'press', command: { do: 'answer', pull: question.pull, answer } };
    if (answer !== 'refit' && answer !== 'replace') return yield wait(500);
    const cylinder = this.#memory.deedOf(question.pull)?.cylinder ?? question.cylinder;
    const after = yield* this.#takeOut(cylinder, shown);
    return answer === 'replace' ? yield { do: 'replace', cylinder } : after;
  }

  /** What he says when the screen is wrong about the plug, having looked at the plugs; null when it is right. */
  #setRight({ kind, pull, cylinder }: Question): Command | null {
    const { order } = this.#spec;
    const leftOut = this.#skipped;
    const passed = leftOut !== null && order.indexOf(cylinder) > order.indexOf(leftOut);
    const knowsItTight = kind === 'other-plug' && this.#memory.deedOf(pull)?.lastWas === 'rehit';
    const tight = kind === 'already-tight' || knowsItTight;
    if (tight && this.#ahead && passed) {
      this.#ahead = false;
      this.#skipped = null;
      const on = this.#memory.deedOf(pull)?.cylinder ?? cylinder;
      return { do: 'left-out', pull, cylinder: leftOut, on, why: 'only-finger-tight' };
    }
    const truly = this.#memory.deedOf(pull)?.cylinder ?? null;
    const wrong = truly !== null && truly !== cylinder;
    const fresh = (kind === 'unsure' || kind === 'by-plan') && this.#memory.deedOf(pull)?.lastWas === 'fresh';
    if (!wrong || (!fresh && !ABOUT_THE_PLUG.has(kind))) return null;
    // Asked by name for the one that he passed over, he knows it.
    if (kind === 'by-plan' && cylinder === this.#skipped) {
      this.#ahead = false;
      this.#skipped = null;
    }
    return { do: 'give-pull', pull, cylinder: truly, why: 'wrench-was-on-that-plug' };
  }

  /** Loosens and turns the plug out, if it is not out already. */
  *#takeOut(cylinder: number, before: Screen): Work<Screen> {
    if (!this.#memory.isFitted(cylinder)) return before;
    const tool = this.#random.chance(this.#spec.habits.loosensWithWrench) ? 'wrench' : 'ratchet';
    yield { do: 'loosen', cylinder, with: tool };
    this.#memory.takenOut(cylinder);
    const after = yield wait(900);
    this.#remember(cylinder, before, after, 'refit', 'refit');
    return after;
  }

  /** Looks at the screen until it shows the pull, but not for ever. */
  *#noticed(before: Screen): Work<Screen> {
    let screen = yield wait(this.#random.uniform(900, 1500));
    for (
      let waitedMs = 0;
      screen.pullCount === before.pullCount && waitedMs < NOTICED_WITHIN_MS;
      waitedMs += 500
    )
      screen = yield wait(500);
    return screen;
  }
}

function wait(ms: number): Action {
  return { do: 'wait', ms };
}
