import type { Chime } from './chime.ts';
import { type StudyView, takenOf } from './study-view.ts';

/** One stroke for a reading that was taken; three where the tool changes hands, is lost, something was not taken or is asked about. */
export function studyChime(before: StudyView, after: StudyView): Chime | null {
  if (after.notice !== null && after.notice !== before.notice) return 'look';
  if (after.asked !== null && after.asked !== before.asked) return 'look';
  if (after.tool.link === 'lost' && before.tool.link === 'linked') return 'look';
  if (takenOf(after) <= takenOf(before)) return null;
  return after.handOver ? 'look' : 'good';
}
