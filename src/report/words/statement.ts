/** What was stated or read by hand, as a list of what can be taken back names it. */
import type { Statement } from '../../job/state.ts';
import { ANSWER_GIVEN } from './answer.ts';
import { SCRAP_WORDS } from './plug.ts';
import { LIST_WORDS } from './step.ts';

const ofCylinders = (cylinders: readonly number[]): string =>
  `cylinder${cylinders.length === 1 ? '' : 's'} ${cylinders.join(', ')}`;

export function statementWords(one: Statement): string {
  switch (one.what) {
    case 'windows':
      return 'the windows were confirmed';
    case 'list':
      return `${LIST_WORDS[one.phase]} was confirmed`;
    case 'old-plugs':
      return `old plug read, ${ofCylinders(one.cylinders)}`;
    case 'old-gap':
      return `gap of the old plug of cylinder ${one.cylinder}, ${one.gapMm.toFixed(3)} mm`;
    case 'new-plugs':
      return `new plug checked, ${ofCylinders(one.cylinders)}`;
    case 'gap':
      return `gap of cylinder ${one.cylinder}, ${one.gapMm.toFixed(3)} mm`;
    case 'gap-inspected':
      return `gap of cylinder ${one.cylinder} looked at: ${one.sound ? 'good' : 'not good'}`;
    case 'scrapped':
      return `plug for cylinder ${one.cylinder} discarded: ${SCRAP_WORDS[one.reason]}`;
    case 'answer':
      return `pull ${one.pull}, cylinder ${one.cylinder}, answered: ${ANSWER_GIVEN[one.answer]}`;
    case 'by-angle':
      return `cylinder ${one.cylinder} fitted by angle`;
    case 'accepted':
      return `cylinder ${one.cylinder}, pull ${one.pull} left as it is`;
  }
}
