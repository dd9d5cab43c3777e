/** ISO days as numbers that a line can be drawn over, and back. */
const DAY_MS = 86_400_000;

export const dayNumber = (day: string): number => Date.parse(`${day}T00:00:00Z`) / DAY_MS;

/** The day, or the next one where the number lies between two. */
export const isoDay = (number: number): string =>
  new Date(Math.ceil(number) * DAY_MS).toISOString().slice(0, 10);
