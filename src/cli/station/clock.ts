/** The clocks of this run of the program. A command takes the time from here, and hands it on to what is pure. */
import type { Stamp } from '../../evidence/log.ts';

const startNs = process.hrtime.bigint();

/** Monotonic, from when the program started. */
export const clock = { nowUs: (): number => Number((process.hrtime.bigint() - startNs) / 1000n) };

/** Wall clock: ISO time in UTC, milliseconds. */
export const now = (): string => new Date().toISOString();

/** The day by the wall clock (UTC), like 2026-03-02. */
export const today = (): string => now().slice(0, 10);

/** Minutes by which this machine's clock on the wall is ahead of UTC at an instant. */
export const utcOffsetMinAt = (at: string): number => 0 - new Date(at).getTimezoneOffset();

/** When an entry of the log is made. */
export const stamp = (): Stamp => ({ at: now(), monoUs: clock.nowUs() });
