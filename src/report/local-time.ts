/** Times as the shop's clock showed them, with how far it was ahead of UTC. */
import { utc } from './figures.ts';

const MINUTE_MS = 60_000;

/** `2025-11-25 10:40 (UTC+01:00)`; in UTC where the record does not say how the clock was set. */
export function localTime(at: string, offsetMin: number | null): string {
  if (offsetMin === null || at === '') return utc(at);
  const there = new Date(Date.parse(at) + offsetMin * MINUTE_MS).toISOString();
  return `${there.slice(0, 10)} ${there.slice(11, 16)} (${offsetText(offsetMin)})`;
}

function offsetText(offsetMin: number): string {
  const two = (n: number) => String(n).padStart(2, '0');
  const size = Math.abs(offsetMin);
  return `UTC${offsetMin < 0 ? '-' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
