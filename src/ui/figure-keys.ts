/**
 * A gauge that types like a keyboard, on the live screen. No guess by speed: where such a gauge is on the station, a
 * digit always begins a figure and never is a key, and all up to Enter belongs to it. So a figure cannot confirm a list,
 * and a key cannot change a figure.
 */
import { type KeyPress, printed } from './key-press.ts';

const BEGINS = /^[\d.,+]$/;
const DIGITS = /^[\d.,+\- ]*/;
/** What stands between the two parts of a unit, or in front of it. */
const JOINS = /[\s.·⋅•*×-]/gu;
const LENGTHS = ['mm', 'in', '"'];
const TORQUES = [
  'nm',
  'lbfft',
  'lbft',
  'ftlbf',
  'ftlb',
  'lbfin',
  'lbin',
  'inlbf',
  'inlb',
  'kgfm',
  'kgfcm',
  'kgm',
  'kgcm',
];

/** Digits, and behind them as much of a unit as was typed so far: a letter that begins no unit here is a key. */
function goesOn(text: string, typesTorque: boolean): boolean {
  const unit = text.replace(DIGITS, '').replace(JOINS, '').toLowerCase();
  return [...LENGTHS, ...(typesTorque ? TORQUES : [])].some((one) => one.startsWith(unit));
}

const MOST = 20;

export interface FigurePressed {
  /** The figure so far; empty when it is over. */
  readonly figure: string;
  /** The whole line, once Enter came. */
  readonly typed: string | null;
}

/** The figure after one more key; null for a key that no figure has: a figure under way is then dropped. */
export function figurePressed(figure: string, press: KeyPress, typesTorque = false): FigurePressed | null {
  const character = printed(press);
  if (figure === '')
    return character !== null && BEGINS.test(character) ? { figure: character, typed: null } : null;
  if (press.key === 'enter') return { figure: '', typed: figure };
  if (press.key === 'backspace') return { figure: figure.slice(0, -1), typed: null };
  if (character === null || figure.length >= MOST || !goesOn(figure + character, typesTorque)) return null;
  return { figure: figure + character, typed: null };
}

const WITH_DECIMALS = /^[+-]?\d*[.,]\d+ ?(mm|in|"|n[.·⋅•*× ]?m)?$/iu;

/** A figure that came while a line was open: no reason, name or lot looks like it. */
export const isFigure = (text: string): boolean => WITH_DECIMALS.test(text.trim());
