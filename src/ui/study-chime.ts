import type { Chime } from './chime.ts';
import { type StudyView, takenOf } from './study-view.ts';

/** One stroke for a reading that was taken; two where the tool changes hands, is lost, something was not taken or is asked about. */
export function studyChime(before: StudyView, after: StudyView): Chime | null {
  if (after.notice !== null && after.notice !== before.notice) return 'question';
  if (after.asked !== null && after.asked !== before.asked) return 'question';
  if (after.tool.link === 'lost' && before.tool.link === 'linked') return 'question';
  if (takenOf(after) <= takenOf(before)) return null;
  return after.handOver ? 'question' : 'ok';
}
