import type { Problem } from '../problem.ts';
import type { ProblemCode } from '../problem-code.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { type Spelling, spellingAt } from './spelling.ts';

interface Place {
  readonly at: number;
  readonly text: string;
}

/** A figure; `grouped` is its value if its decimal point were a thousands separator, where that could be meant. */
export type FigureToken = Place & {
  readonly kind: 'n';
  readonly value: number;
  readonly fraction: boolean;
  readonly grouped: number | null;
};
export type UnitToken = Place & { readonly kind: 'u'; readonly spelling: Spelling };
/** `d` dash, `t` "to", `p` plus-minus, `+` plus, `/` between two deviations, `%` percent. */
type MarkToken = Place & { readonly kind: 'd' | 't' | 'p' | '+' | '/' | '%' };
export type Token = FigureToken | UnitToken | MarkToken;

const MAX_TEXT = 200;
const MAX_DIGITS = 8;

/** Spaces of every width, but no line ends: what is printed here goes on one line of a record. */
const SPACE = /[\t\p{Zs}\u200B\u2060\uFEFF]+/uy;
const DASH = String.raw`[\-\u2010-\u2015\u2212\uFE63\uFF0D]`;
const FIGURE = /(?:\d+[\t\p{Zs}]+)?\d+\/\d+|\d*[½⅓⅔¼¾⅛⅙]|\d+(?:[.,']\d+)*|\.\d+/uy;
const MARKS: readonly (readonly [MarkToken['kind'], RegExp])[] = [
  ['p', new RegExp(String.raw`±|\+[\t\p{Zs}]*/?[\t\p{Zs}]*${DASH}`, 'uy')],
  ['t', /\.{2,3}|…|~|to(?!\p{L})/iuy],
  ['d', new RegExp(DASH, 'uy')],
  ['+', /\+/uy],
  ['/', /[/,]/uy],
  ['%', /%/uy],
];
const VULGAR: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅙': 1 / 6,
};

/** A {@link Problem} about the piece of `text` at `at`, counted from 1 as people do. */
export function problemAt(
  text: string,
  at: number,
  code: ProblemCode,
  message: string,
  next: string,
): Problem {
  return { code, message, next, where: w`character ${at + 1} of "${printable(text)}"` };
}

/** Outside text inside a message: no control or direction characters, never long. */
function printable(text: string): string {
  const clean = text.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, '?').trim();
  return clean.length > 80 ? `${clean.slice(0, 79)}…` : clean;
}

/** The text cut into figures, units and marks. Problems: unknown characters or words, figures that could mean two things. */
export function scan(text: string): Result<readonly Token[]> {
  if (text.length > MAX_TEXT)
    return err({
      code: 'not-understood',
      message: w`the text has ${text.length} characters; a range has a few`,
      next: w`Give the range alone, for example 25-30 N·m.`,
    });
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const space = matchAt(SPACE, text, at);
    if (space !== null) {
      at += space.length;
      continue;
    }
    const token = tokenAt(text, at);
    if (!token.ok) return token;
    tokens.push(token.value);
    at += token.value.text.length;
  }
  return ok(tokens);
}

function matchAt(matcher: RegExp, text: string, at: number): string | null {
  matcher.lastIndex = at;
  return matcher.exec(text)?.[0] ?? null;
}

function tokenAt(text: string, at: number): Result<Token> {
  for (const [kind, matcher] of MARKS) {
    const mark = matchAt(matcher, text, at);
    if (mark !== null) return ok({ kind, at, text: mark });
  }
  const figure = matchAt(FIGURE, text, at);
  if (figure !== null) return figureToken(text, at, figure);
  const unit = spellingAt(text, at);
  if (unit !== null)
    return ok({ kind: 'u', at, text: text.slice(at, at + unit.length), spelling: unit.spelling });
  const word = matchAt(/[\p{L}\p{N}/·⋅.°²³^_-]+/uy, text, at);
  return err(
    word === null
      ? problemAt(
          text,
          at,
          'not-understood',
          w`"${printable(text.charAt(at))}" cannot be read here`,
          w`Give one range in one unit, for example 25-30 N·m.`,
        )
      : problemAt(
          text,
          at,
          'unit-not-known',
          w`"${printable(word)}" is not a known unit or word`,
          w`Write for example N·m, lbf·ft, lbf·in, kgf·m, mm, in, mil, ° or turn.`,
        ),
  );
}

function figureToken(text: string, at: number, figure: string): Result<Token> {
  const digits = figure.replace(/\D/gu, '');
  const refuse = (code: ProblemCode, message: string, next: string) =>
    err(problemAt(text, at, code, message, next));
  if (digits.length > MAX_DIGITS)
    return refuse(
      'figure-absurd',
      w`"${figure}" has ${digits.length} digits; no publisher prints more than ${MAX_DIGITS}`,
      w`Give the figure as printed in the source.`,
    );
  if (/[/½⅓⅔¼¾⅛⅙]/u.test(figure))
    return ok({ kind: 'n', at, text: figure, value: fraction(figure), fraction: true, grouped: null });
  if (figure.includes("'") || figure.split(/[.,]/u).length > 2 || /^[1-9]\d{0,2},\d{3}$/u.test(figure))
    return refuse(
      'figure-ambiguous',
      w`"${figure}" can be read as a thousand or as a decimal`,
      w`Write thousands without a separator and decimals with a point.`,
    );
  const grouped = /^[1-9]\d{0,2}\.\d{3}$/u.test(figure) ? Number(figure.replace('.', '')) : null;
  return ok({
    kind: 'n',
    at,
    text: figure,
    value: Number(figure.replace(',', '.')),
    fraction: false,
    grouped,
  });
}

/** `1/2`, `1 1/2`, `½`, `1½`. */
function fraction(figure: string): number {
  const vulgar = VULGAR[figure.at(-1) ?? ''];
  if (vulgar !== undefined) return Number(figure.slice(0, -1)) + vulgar;
  const [lower = 1, upper = 0, whole = 0] = (figure.match(/\d+/gu) ?? []).map(Number).reverse();
  return whole + upper / lower;
}
