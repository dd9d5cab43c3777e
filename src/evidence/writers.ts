/** Who made each entry of a job, by name. */
import type { LogEntry } from './log.ts';

/** The entries with the technician's name where the log says that it was the technician of that time. */
export function byName(entries: readonly LogEntry[]): readonly LogEntry[] {
  let technician = '';
  let tools: ReadonlyMap<string, string> = new Map();
  return entries.map((entry) => {
    const { event } = entry;
    if (event.type === 'job-opened') {
      technician = event.order.technician;
      tools = new Map((event.toolsOf ?? []).map((one) => [one.tool, one.technician]));
    }
    const named = entry.by === 'technician' ? { ...entry, by: technician } : entry;
    if (event.type === 'job-handed-over') technician = event.to;
    if (event.type === 'technician-at-work') technician = event.person;
    if (event.type === 'tool-in-use') technician = tools.get(event.tool) ?? technician;
    return named;
  });
}
