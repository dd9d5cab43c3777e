import type { JobState } from '../../src/job/state.ts';

/** What a person sees of the job: a job's state will do, but no more of it is read. */
export type Screen = Pick<
  JobState,
  'cylinders' | 'plugs' | 'gapTarget' | 'torqueTarget' | 'lastVerdict' | 'questions' | 'pullCount' | 'closed'
>;

/** How many gap readings the screen has taken so far. */
export function gapCount(screen: Screen): number {
  return screen.cylinders.reduce((sum, { gaps }) => sum + gaps.length, 0);
}
