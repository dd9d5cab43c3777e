/**
 * The nearest number with so many decimals, never a minus zero. What is recorded is rounded to where digits still mean
 * something: the last ones of a logarithm or a root differ between machines, and another machine must find the same.
 */
export function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals)) + 0;
}
