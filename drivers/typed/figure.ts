import type { Problem } from '../../src/problem.ts';
import { millimetres } from '../../src/quantity/length.ts';
import { parseLength, parseTorque } from '../../src/quantity/range.ts';
import { newtonMetres } from '../../src/quantity/torque.ts';
import type { Quantity } from '../../src/reading.ts';
import { ok, type Result } from '../../src/result.ts';

export type TypedUnit = 'mm' | 'in' | 'N·m' | 'lbf·ft';

/** Steps that take the figures of every gauge without loss: 0.1 µm, and 10^-4 N·m. */
export const TYPED_EXPONENT: Readonly<Record<Quantity, number>> = { torque: -4, length: -7 };

/** Nothing that a gauge types is longer. */
const MOST_CHARACTERS = 40;

const BARE = /^[+]?\d*[.,]?\d+$/u;

/** A typed line in counts of {@link TYPED_EXPONENT}; a figure without a unit is one of `unit`. */
export function parseTyped(line: string, quantity: Quantity, unit: TypedUnit): Result<number, Problem> {
  const text = line.trim().slice(0, MOST_CHARACTERS);
  const full = BARE.test(text) ? `${text.replace(/^\+/, '').replace(/^[.,]/, '0.')} ${unit}` : text;
  if (quantity === 'torque') {
    const figure = parseTorque(full);
    return figure.ok ? ok(counts(newtonMetres(figure.value.figure, figure.value.unit), 4)) : figure;
  }
  const figure = parseLength(full);
  return figure.ok ? ok(counts(millimetres(figure.value.figure, figure.value.unit), 4)) : figure;
}

/** Lengths are in mm here, so that both quantities count in 10^-4 of what was parsed. */
const counts = (value: number, decimals: number) => Math.round(value * 10 ** decimals);
