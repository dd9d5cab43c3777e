/**
 * The drivers' timer: runs `run` once, `us` microseconds from now and never within the call; the returned function
 * cancels it. A simulation in virtual time puts its own in the place of {@link realAfter}.
 */
export type After = (us: number, run: () => void) => () => void;

export const realAfter: After = (us, run) => {
  const timer = setTimeout(run, us / 1_000);
  return () => clearTimeout(timer);
};

/** The value of `promise` in a box, or `undefined` when it has not settled after `ms`; rejects when it rejects before. */
export async function within<T>(
  after: After,
  promise: Promise<T>,
  ms: number,
): Promise<{ readonly value: T } | undefined> {
  let cancel = () => {};
  const over = new Promise<undefined>((resolve) => {
    cancel = after(ms * 1_000, () => resolve(undefined));
  });
  try {
    return await Promise.race([promise.then((value) => ({ value })), over]);
  } finally {
    cancel();
  }
}
