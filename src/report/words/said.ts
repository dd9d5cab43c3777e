/** What was said or read by hand, as a list of what can be taken back names it. */
import type { JobState, Said } from '../../job/state.ts';
import { STEP_TO_DO } from './step.ts';

const ofCylinders = (cylinders: readonly number[]): string =>
  `cylinder${cylinders.length === 1 ? '' : 's'} ${cylinders.join(', ')}`;

function words(one: Said): string {
  switch (one.what) {
    case 'windows':
      return 'the windows were confirmed';
    case 'list':
      return STEP_TO_DO[one.phase].replace('attest', 'attested:');
    case 'old-plugs':
      return `old plug read, ${ofCylinders(one.cylinders)}`;
    case 'old-gap':
      return `gap of the old plug of cylinder ${one.cylinder}, ${one.gapMm.toFixed(3)} mm`;
    case 'new-plugs':
      return `new plug checked, ${ofCylinders(one.cylinders)}`;
    case 'gap':
      return `gap of cylinder ${one.cylinder}, ${one.gapMm.toFixed(3)} mm`;
    case 'by-angle':
      return `cylinder ${one.cylinder} fitted by angle`;
    case 'accepted':
      return `cylinder ${one.cylinder}, pull ${one.pull} left as it is`;
  }
}

/** Counted from 1, the oldest first. */
export function saidWords({ said }: Pick<JobState, 'said'>, number: number): string {
  const one = said[number - 1];
  return one === undefined ? `number ${number}` : words(one);
}
