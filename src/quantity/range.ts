/**
 * Reads the ranges and figures that publishers print (`25-30 N·m`, `18 Nm ±10 %`, `1.0 +0/-0.1 mm`) and keeps them in
 * the unit as printed. What cannot be read in exactly one way is refused with the place and the reason.
 */
import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import type { AngleUnit } from './angle.ts';
import { ANGLE, type Kind, LENGTH, TORQUE } from './kind.ts';
import type { LengthUnit } from './length.ts';
import { notUnderstood, type Printed, read } from './read.ts';
import { type FigureToken, problemAt } from './scan.ts';
import type { TorqueUnit } from './torque.ts';

/** A range in the unit as printed; `nominal` where the source names one figure and a tolerance. */
export interface PrintedRange<U> {
  readonly printed: string;
  readonly unit: U;
  readonly lower: number;
  readonly upper: number;
  readonly nominal?: number;
}

/** One figure in the unit as printed. */
export interface PrintedFigure<U> {
  readonly printed: string;
  readonly unit: U;
  readonly figure: number;
}

/** A torque range with both limits. Problems: see {@link parseRange}. */
export const parseTorqueRange = (text: string): Result<PrintedRange<TorqueUnit>> => parseRange(text, TORQUE);

/** A range of lengths with both limits. Problems: see {@link parseRange}. */
export const parseLengthRange = (text: string): Result<PrintedRange<LengthUnit>> => parseRange(text, LENGTH);

/** An angle as advised on a box: a range, or one figure (`1/2 turn`), whose limits then coincide. */
export const parseAngleRange = (text: string): Result<PrintedRange<AngleUnit>> => parseRange(text, ANGLE);

/** One torque, for example `25 N·m`. */
export const parseTorque = (text: string): Result<PrintedFigure<TorqueUnit>> => parseFigure(text, TORQUE);

/** One length, for example `0.75 mm`. */
export const parseLength = (text: string): Result<PrintedFigure<LengthUnit>> => parseFigure(text, LENGTH);

/**
 * Problems: `not-understood`, `unit-missing`, `unit-mixed`, `unit-of-another-quantity`, `unit-not-known`,
 * `figure-ambiguous`, `figure-absurd`, `not-positive`, `range-reversed`, `no-tolerance`.
 */
function parseRange<U extends string>(given: string, kind: Kind<U>): Result<PrintedRange<U>> {
  const printed = read(given.trim(), kind);
  if (!printed.ok) return printed;
  const { text, shape, unit, figures } = printed.value;
  const [first, second, third] = figures;
  if (first === undefined) return err(notUnderstood(text, 0, kind));
  if (second === undefined && !kind.bareFigure)
    return err(
      problemAt(
        text,
        first.at,
        'no-tolerance',
        w`"${first.text}" is a single figure; a reading is compared with a range`,
        w`Add the tolerance that the source allows, for example ${kind.words.example}.`,
      ),
    );
  const limits =
    second === undefined
      ? ok({ lower: first.value, upper: first.value })
      : limitsOf(printed.value, first, second, third);
  if (!limits.ok) return limits;
  const { lower, upper } = limits.value;
  const problem = implausible(text, kind, unit, [
    [first, lower],
    [second ?? first, upper],
  ]);
  if (problem !== null) return err(problem);
  const nominal = shape === 'pair' ? {} : { nominal: first.value };
  return ok({ printed: text, unit, lower, upper, ...nominal });
}

/** Problems: those of {@link parseRange} save the ones about ranges. */
function parseFigure<U extends string>(given: string, kind: Kind<U>): Result<PrintedFigure<U>> {
  const printed = read(given.trim(), kind);
  if (!printed.ok) return printed;
  const { text, unit, figures } = printed.value;
  const [first, second] = figures;
  if (first === undefined) return err(notUnderstood(text, 0, kind));
  if (second !== undefined)
    return err(
      problemAt(
        text,
        second.at,
        'not-understood',
        w`expected one figure, not a range`,
        w`Give one figure in ${kind.words.units}.`,
      ),
    );
  const problem = implausible(text, kind, unit, [[first, first.value]]);
  if (problem !== null) return err(problem);
  return ok({ printed: text, unit, figure: first.value });
}

function limitsOf<U>(
  { text, shape, percents }: Printed<U>,
  first: FigureToken,
  second: FigureToken,
  third: FigureToken | undefined,
): Result<{ lower: number; upper: number }> {
  const nominal = first.value;
  const last = third ?? second;
  if (percents !== 0 && percents !== (third === undefined ? 1 : 2))
    return err(
      problemAt(
        text,
        second.at,
        'unit-mixed',
        w`one deviation is in % and the other is not`,
        w`Give both in % or both in the unit.`,
      ),
    );
  const amount = (figure: FigureToken): number =>
    percents === 0 ? figure.value : (nominal * figure.value) / 100;
  const [minus, plus] = shape === 'minusPlus' ? [second, last] : [last, second];
  const lower = shape === 'pair' ? nominal : clean(nominal - amount(minus));
  const upper = shape === 'pair' ? second.value : clean(nominal + amount(plus));
  if (lower < upper) return ok({ lower, upper });
  return err(
    lower > upper
      ? problemAt(
          text,
          second.at,
          'range-reversed',
          w`the range runs from ${lower} down to ${upper}`,
          w`Give the lower figure first.`,
        )
      : problemAt(
          text,
          second.at,
          'no-tolerance',
          w`both limits are ${lower}; no reading can be proven`,
          w`Give the tolerance that the source allows.`,
        ),
  );
}

/** Takes off the noise of binary arithmetic; twelve figures are more than any source prints. */
const clean = (figure: number): number => Number(figure.toPrecision(12));

function implausible<U extends string>(
  text: string,
  kind: Kind<U>,
  unit: U,
  figures: readonly (readonly [FigureToken, number])[],
): Problem | null {
  for (const [token, figure] of figures) {
    if (!(figure > 0))
      return problemAt(
        text,
        token.at,
        'not-positive',
        w`${Number.isNaN(figure) ? `"${token.text}"` : figure} is not above zero`,
        w`Expected figures above zero, for example ${kind.words.example}.`,
      );
    if (!(kind.toSi(figure, unit) <= kind.largest))
      return problemAt(
        text,
        token.at,
        'figure-absurd',
        w`"${token.text}" is far too large for a spark plug`,
        w`Check the figure and its unit against the source.`,
      );
  }
  return null;
}
