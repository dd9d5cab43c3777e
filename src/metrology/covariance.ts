/** Standard uncertainties of several results that share inputs, and how the results then go together. */
export interface Joint {
  readonly standard: readonly number[];
  readonly correlation: readonly (readonly number[])[];
}

/**
 * The law of propagation of uncertainty for correlated inputs and several results (GUM 5.2.2 and H.2): covariance
 * J·V·Jᵀ, V_kl = u_k·u_l·r_kl. `sensitivities` holds one row a result, one column an input.
 */
export function propagate(sensitivities: readonly (readonly number[])[], inputs: Joint): Joint {
  const { standard: u, correlation: r } = inputs;
  const covariance = (a: readonly number[], b: readonly number[]): number =>
    sum(a, (ca, k) => sum(b, (cb, l) => ca * cb * at(u, k) * at(u, l) * at(r[k] ?? [], l)));
  const standard = sensitivities.map((row) => Math.sqrt(covariance(row, row)));
  const correlation = sensitivities.map((a, i) =>
    sensitivities.map((b, j) => covariance(a, b) / (at(standard, i) * at(standard, j))),
  );
  return { standard, correlation };
}

function sum(list: readonly number[], part: (value: number, index: number) => number): number {
  return list.reduce((total, value, index) => total + part(value, index), 0);
}

function at(list: readonly number[], index: number): number {
  const value = list[index];
  if (value === undefined) throw new RangeError(`entry ${index} is missing in a table of ${list.length}`);
  return value;
}
