/**
 * A gauge that types like a keyboard, on the live screen. No guess by speed: where such a gauge is on the station, a
 * digit always begins a figure and never is a key, and all up to Enter belongs to it. So a figure cannot confirm a list,
 * and a key cannot change a figure.
 */
import { type KeyPress, printed } from './key-press.ts';

const BEGINS = /^[\d.,+]$/;
/** Signs, digits and the letters of mm and in. */
const GOES_ON = /^[\d.,+\- min"]$/i;
const MOST = 20;

export interface FigurePressed {
  /** The figure so far; empty when it is over. */
  readonly figure: string;
  /** The whole line, once Enter came. */
  readonly typed: string | null;
}

/** The figure after one more key; null for a key that no figure has: a figure under way is then dropped. */
export function figurePressed(figure: string, press: KeyPress): FigurePressed | null {
  const character = printed(press);
  if (figure === '')
    return character !== null && BEGINS.test(character) ? { figure: character, typed: null } : null;
  if (press.key === 'enter') return { figure: '', typed: figure };
  if (press.key === 'backspace') return { figure: figure.slice(0, -1), typed: null };
  if (character === null || !GOES_ON.test(character) || figure.length >= MOST) return null;
  return { figure: figure + character, typed: null };
}

const WITH_DECIMALS = /^[+-]?\d*[.,]\d+ ?(mm|in|")?$/i;

/** A figure that came while a line was open: no reason, name or lot looks like it. */
export const isFigure = (text: string): boolean => WITH_DECIMALS.test(text.trim());
