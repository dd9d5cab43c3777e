/** Lines that somebody, or a gauge, typed: each names its quantity, by its unit or by what the screen asks for. */
import type { JobState } from '../../job/state.ts';
import type { Quantity } from '../../reading.ts';
import { nextTask } from '../../ui/next-step.ts';

const OF_TORQUE = /n\s*[.·⋅*]?\s*m\b|lb|kgf|kg/i;
const OF_LENGTH = /mm\b|µm|in\b|["″]/i;

/** The quantity of a typed line, for a station where more than one tool types. */
export function quantityOfLine(line: string, job: JobState): Quantity {
  if (OF_TORQUE.test(line)) return 'torque';
  if (OF_LENGTH.test(line)) return 'length';
  const { kind } = nextTask(job);
  return kind === 'pull' || kind === 'answer' ? 'torque' : 'length';
}
