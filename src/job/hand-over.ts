import type { JobEvent } from './event.ts';

/** Who answers for a job: the last one it was handed over to, else whom its order names; null for what is no job. */
export function technicianOf(events: readonly JobEvent[]): string | null {
  const last = events.findLast((event) => event.type === 'job-handed-over');
  if (last !== undefined) return last.to;
  const [opening] = events;
  return opening?.type === 'job-opened' ? opening.order.technician : null;
}
