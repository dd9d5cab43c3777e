/**
 * A way back through a dialogue: `<` goes to the question before, as often as wanted. The questions are asked anew from the
 * beginning with the answers that were given, of which nothing is shown; so any chain of questions has a way back.
 */

import { w } from '../../words/catalogue.ts';
import type { Dialogue } from './dialogue.ts';

const BACK = '<';

/** Not an error: the way out of questions that are nested in one another. */
class GoesBack extends Error {}

/** Runs a chain of questions that depends on nothing but its answers; `run` writes nothing before its end. */
export async function withWayBack<T>(
  dialogue: Dialogue,
  run: (dialogue: Dialogue) => Promise<T>,
): Promise<T> {
  let given: readonly string[] = [];
  for (;;) {
    const passage = new Passage(dialogue, given);
    try {
      return await run(passage);
    } catch (error) {
      if (!(error instanceof GoesBack)) throw error;
      given = passage.answers.slice(0, -1);
    }
  }
}

/** One way through the questions: silent as long as answers are there, then asked of the person. */
class Passage implements Dialogue {
  readonly answers: string[] = [];
  readonly #dialogue: Dialogue;
  readonly #given: readonly string[];
  /** What was said since the last of the given answers: it belongs to the question that is asked next. */
  #unsaid: string[] = [];
  #live: boolean;

  constructor(dialogue: Dialogue, given: readonly string[]) {
    this.#dialogue = dialogue;
    this.#given = given;
    this.#live = given.length === 0;
  }

  get patient(): boolean {
    return this.#dialogue.patient;
  }

  say(line: string): void {
    if (this.#live) this.#dialogue.say(line);
    else this.#unsaid.push(line);
  }

  async ask(prompt: string): Promise<string> {
    const given = this.#live ? undefined : this.#given[this.answers.length];
    if (given !== undefined) {
      this.#unsaid = [];
      this.answers.push(given);
      return given;
    }
    this.#live = true;
    for (const line of this.#unsaid.splice(0)) this.#dialogue.say(line);
    const answer = await this.#dialogue.ask(prompt);
    if (answer !== BACK) {
      this.answers.push(answer);
      return answer;
    }
    if (this.answers.length > 0) throw new GoesBack();
    this.#dialogue.say(w`  This is the first question.`);
    return this.ask(prompt);
  }

  refused(): void {
    if (this.#live) this.answers.pop();
  }

  leave(): void {
    this.#dialogue.leave();
  }

  close(): void {
    this.#dialogue.close();
  }
}
