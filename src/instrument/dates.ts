/** Calendar arithmetic on ISO dates (`2026-11-25`), which compare as text. No clock: today comes in as an argument. */

const DAY_MS = 86_400_000;
const DAYS_IN_YEAR = 365.25;

/** The same day of the month `months` later, or the last one of a shorter month. */
export function monthsLater(date: string, months: number): string {
  const day = new Date(`${date}T00:00:00Z`);
  const target = new Date(Date.UTC(day.getUTCFullYear(), day.getUTCMonth() + months + 1, 0));
  target.setUTCDate(Math.min(day.getUTCDate(), target.getUTCDate()));
  return target.toISOString().slice(0, 10);
}

/** Years from one date to a later one. */
export function yearsBetween(from: string, to: string): number {
  return (Date.parse(to) - Date.parse(from)) / DAY_MS / DAYS_IN_YEAR;
}
