import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { phrases, w } from '../words/catalogue.ts';
import type { Kind } from './kind.ts';
import { type FigureToken, problemAt, scan, type Token, type UnitToken } from './scan.ts';

/** What may be printed, over the kinds of {@link Token}: `n` figure, `u` unit, the rest as in the scanner. */
const SHAPES = {
  single: /^nu?/u,
  pair: /^nu?[dt]nu?/u,
  symmetric: /^nu?pn%?u?/u,
  plusMinus: /^nu?\+n%?u?\/?dn%?u?/u,
  minusPlus: /^nu?dn%?u?\/?\+n%?u?/u,
} as const;
type Shape = keyof typeof SHAPES;

/** What a unit measures, in words. */
const MEASURED: Readonly<Record<UnitToken['spelling']['measured'], string>> = phrases({
  torque: 'torque',
  length: 'length',
  angle: 'angle',
  energy: 'energy',
  stiffness: 'stiffness',
  'force or mass': 'force or mass',
});

/** A text of which shape, unit and figures are known, but not yet whether the figures make sense. */
export interface Printed<U> {
  readonly text: string;
  readonly shape: Shape;
  readonly unit: U;
  readonly figures: readonly FigureToken[];
  readonly percents: number;
}

/** The tokens of `text` as one shape in one unit of the wanted quantity. */
export function read<U extends string>(text: string, kind: Kind<U>): Result<Printed<U>> {
  const tokens = scan(text);
  if (!tokens.ok) return tokens;
  const shape = shapeOf(text, tokens.value, kind);
  if (!shape.ok) return shape;
  const unit = unitOf(text, tokens.value, kind);
  if (!unit.ok) return unit;
  const figures = tokens.value.filter((token) => token.kind === 'n');
  const strange = kind.fractions ? undefined : figures.find((figure) => figure.fraction);
  if (strange !== undefined)
    return err(
      problemAt(
        text,
        strange.at,
        'figure-ambiguous',
        w`"${strange.text}" can be read as a fraction or as a range`,
        w`Write a range with a dash, for example ${kind.words.example}.`,
      ),
    );
  const grouped = figures.find(
    (figure) => figure.grouped !== null && kind.toSi(figure.grouped, unit.value) <= kind.largest,
  );
  if (grouped !== undefined)
    return err(
      problemAt(
        text,
        grouped.at,
        'figure-ambiguous',
        w`"${grouped.text}" can be read as a thousand or as a decimal`,
        w`Write thousands without a separator and decimals without needless zeros.`,
      ),
    );
  return ok({
    text,
    shape: shape.value,
    unit: unit.value,
    figures,
    percents: tokens.value.filter((token) => token.kind === '%').length,
  });
}

function shapeOf<U>(text: string, tokens: readonly Token[], kind: Kind<U>): Result<Shape> {
  const kinds = tokens.map((token) => token.kind).join('');
  const negative = /^d|[dtp]d/u.exec(kinds);
  const minus = negative === null ? undefined : tokens[negative.index + negative[0].length - 1];
  if (minus !== undefined && kinds.includes('n'))
    return err(
      problemAt(
        text,
        minus.at,
        'not-positive',
        w`a figure has a minus sign`,
        w`Expected figures above zero, for example ${kind.words.example}.`,
      ),
    );
  let understood = 0;
  for (const shape of Object.keys(SHAPES) as Shape[]) {
    const length = SHAPES[shape].exec(kinds)?.[0].length ?? 0;
    if (length === kinds.length && length > 0) return ok(shape);
    understood = Math.max(understood, length);
  }
  const stray = tokens[understood];
  const before = tokens[understood - 1];
  if (stray?.kind === 'n' && before?.kind === 'n' && /^\d{3}$/u.test(stray.text))
    return err(
      problemAt(
        text,
        before.at,
        'figure-ambiguous',
        w`"${before.text} ${stray.text}" can be one figure in groups of three or two figures`,
        w`Write thousands without a separator and ranges with a dash.`,
      ),
    );
  return err(notUnderstood(text, stray?.at ?? 0, kind));
}

function unitOf<U extends string>(text: string, tokens: readonly Token[], kind: Kind<U>): Result<U> {
  const unitTokens = tokens.filter((token): token is UnitToken => token.kind === 'u');
  let unit: U | undefined;
  for (const token of unitTokens) {
    const { measured, unit: code } = token.spelling;
    const allowed = kind.units.find((candidate) => candidate === code);
    if (allowed === undefined)
      return err(
        measured === kind.measured
          ? problemAt(
              text,
              token.at,
              'unit-not-known',
              w`"${token.text}" is not a unit in which this ${MEASURED[measured]} is printed`,
              w`Expected ${kind.words.units}.`,
            )
          : problemAt(
              text,
              token.at,
              'unit-of-another-quantity',
              w`"${token.text}" is a unit of ${MEASURED[measured]}, not of ${kind.words.measured}`,
              w`Expected ${kind.words.units}.`,
            ),
      );
    if (unit !== undefined && unit !== allowed)
      return err(
        problemAt(
          text,
          token.at,
          'unit-mixed',
          w`"${token.text}" is the second unit in one range`,
          w`Give the figures in one unit, the one that the source prints first.`,
        ),
      );
    unit = allowed;
  }
  if (unit === undefined)
    return err(
      problemAt(text, text.length, 'unit-missing', w`there is no unit`, w`Expected ${kind.words.units}.`),
    );
  return ok(unit);
}

/** The refusal of last resort. */
export function notUnderstood<U>(text: string, at: number, kind: Kind<U>): Problem {
  return problemAt(
    text,
    at,
    'not-understood',
    w`expected one ${kind.words.measured} in one unit and nothing else`,
    w`Write for example ${kind.words.example}.`,
  );
}
