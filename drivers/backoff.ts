export interface Backoff {
  readonly firstMs: number;
  readonly mostMs: number;
}

/**
 * Milliseconds to wait after the `failures`-th failure in a row (from 1): doubled each time up to `mostMs`, less up
 * to a half by chance, so that two tools that were lost together do not get in each other's way again and again.
 * `random` draws from [0, 1).
 */
export function backoffMs(backoff: Backoff, failures: number, random: () => number): number {
  const full = Math.min(backoff.mostMs, backoff.firstMs * 2 ** Math.min(failures - 1, 30));
  return full * (1 - random() / 2);
}
