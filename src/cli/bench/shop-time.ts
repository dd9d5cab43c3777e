/** Times of day as the clock of the shop shows them; the record keeps UTC. */
import { utcOffsetMinAt } from '../station/clock.ts';

const twoDigits = (part: number): string => String(part).padStart(2, '0');

/** `14:03:12`. */
export const timeOfDay = (at: string): string => {
  const local = new Date(at);
  return [local.getHours(), local.getMinutes(), local.getSeconds()].map(twoDigits).join(':');
};

/** `+02:00`: how far the clock of the shop is from UTC at a time. */
export function utcOffset(at: string): string {
  const minutes = utcOffsetMinAt(at);
  const ahead = Math.abs(minutes);
  return `${minutes < 0 ? '-' : '+'}${twoDigits(Math.floor(ahead / 60))}:${twoDigits(ahead % 60)}`;
}

/** `14:03:12 +02:00`. */
export const timeWithOffset = (at: string): string => `${timeOfDay(at)} ${utcOffset(at)}`;
