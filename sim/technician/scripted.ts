import type { Action } from '../physics/action.ts';
import type { Random } from '../random.ts';
import { drawStyle, type Manner } from './habits.ts';
import type { Leaving } from './technician.ts';

const MANNERS: readonly Manner[] = ['careful', 'hurried', 'short', 'lean'];
/** How long the hands rest before they look for the next word. */
const RESTS_MS = 40;

/** The hands did not understand a line. */
export class NotUnderstood extends Error {
  readonly line: string;

  constructor(line: string) {
    super(`the hands do not understand "${line}"`);
    this.line = line;
  }
}

/**
 * What a line tells the simulated hands to do, null for an empty one: `measure 1`, `bend 1 0.05` (mm), `fit 1`,
 * `pull 1 careful` (or hurried, short, lean), `loosen 1 ratchet` (or wrench), `replace 1`, `knock 5` (N·m), `wait 500` (ms).
 * A line that is none of these, or of a cylinder that the engine does not have, is {@link NotUnderstood}.
 */
export function handAction(line: string, random: Random, cylinders: readonly number[]): Action | null {
  const [verb = '', first = '', second = ''] = line.trim().split(/\s+/);
  if (verb === '') return null;
  const number = Number(first);
  const cylinder = number;
  if (first === '' || !Number.isFinite(number)) throw new NotUnderstood(line);
  if (verb !== 'knock' && verb !== 'wait' && !cylinders.includes(cylinder)) throw new NotUnderstood(line);
  switch (verb) {
    case 'measure':
      return { do: 'measure-gap', cylinder };
    case 'bend':
      if (second === '' || !Number.isFinite(Number(second))) throw new NotUnderstood(line);
      return { do: 'bend-electrode', cylinder, byMm: Number(second) };
    case 'fit':
      return { do: 'fit', cylinder };
    case 'pull': {
      const manner = MANNERS.find((one) => one === (second === '' ? 'careful' : second));
      if (manner === undefined) throw new NotUnderstood(line);
      return { do: 'pull', cylinder, style: drawStyle(manner, random) };
    }
    case 'loosen':
      return { do: 'loosen', cylinder, with: second === 'wrench' ? 'wrench' : 'ratchet' };
    case 'replace':
      return { do: 'replace', cylinder };
    case 'knock':
      return { do: 'knock', peakNm: number };
    case 'wait':
      return { do: 'wait', ms: number };
    default:
      throw new NotUnderstood(line);
  }
}

/** Hands that have no head: they do one told thing after the other, and the person at the keys answers the screen. */
export function* scripted(
  next: () => string | null,
  random: Random,
  cylinders: readonly number[],
): Generator<Action, Leaving, unknown> {
  for (;;) {
    const line = next();
    yield (line === null ? null : handAction(line, random, cylinders)) ?? { do: 'wait', ms: RESTS_MS };
  }
}
