import type { ToolId } from '../reading.ts';
import type { JobEvent } from './event.ts';

/** The numbers that drivers give to readings: within a session those of a tool rise by one, whatever became of each. */
export class ReadingNumbers {
  /** By tool, the number that is due. Where a session begins is the driver's affair. */
  readonly #due = new Map<ToolId, number>();

  /** Whether the readings in an event follow those before it. */
  follow(event: JobEvent): boolean {
    switch (event.type) {
      case 'session-started':
        this.#due.clear();
        return true;
      case 'readings':
        return this.#take(event.tool, event.first, event.count);
      case 'value-stored':
      case 'value-not-known':
        return this.#take(event.tool, event.reading, 1);
      // Numbered as well, but their number is not written.
      case 'readings-missed':
      case 'profile-contradicted':
      case 'raw-value': {
        const due = this.#due.get(event.tool);
        if (due !== undefined) this.#due.set(event.tool, due + 1);
        return true;
      }
      default:
        return true;
    }
  }

  #take(tool: ToolId, first: number, count: number): boolean {
    const due = this.#due.get(tool);
    this.#due.set(tool, first + count);
    return due === undefined || first === due;
  }
}
