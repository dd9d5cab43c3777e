/** What was stated or read by hand, as a list of what can be taken back names it. */
import type { Statement } from '../../job/state.ts';
import { gapText } from '../../quantity/shown.ts';
import { w } from '../../words/catalogue.ts';
import { ANSWER_GIVEN } from './answer.ts';
import { SCRAP_WORDS } from './plug.ts';
import { LIST_WORDS } from './step.ts';

export function statementWords(one: Statement): string {
  switch (one.what) {
    case 'windows':
      return w`the windows were confirmed`;
    case 'list':
      return w`${LIST_WORDS[one.phase]} was confirmed`;
    case 'old-plugs':
      return one.cylinders.length === 1
        ? w`old plug read, cylinder ${one.cylinders.join()}`
        : w`old plug read, cylinders ${one.cylinders.join(', ')}`;
    case 'old-gap':
      return w`gap of the old plug of cylinder ${one.cylinder}, ${gapText(one.gapMm)}`;
    case 'new-plugs':
      return one.cylinders.length === 1
        ? w`new plug checked, cylinder ${one.cylinders.join()}`
        : w`new plug checked, cylinders ${one.cylinders.join(', ')}`;
    case 'gap':
      return w`gap of cylinder ${one.cylinder}, ${gapText(one.gapMm)}`;
    case 'gap-inspected':
      return one.sound
        ? w`gap of cylinder ${one.cylinder} looked at: good`
        : w`gap of cylinder ${one.cylinder} looked at: not good`;
    case 'scrapped':
      return w`plug for cylinder ${one.cylinder} discarded: ${SCRAP_WORDS[one.reason]}`;
    case 'answer':
      return w`pull ${one.pull}, cylinder ${one.cylinder}, answered: ${ANSWER_GIVEN[one.answer]}`;
    case 'by-angle':
      return w`cylinder ${one.cylinder} fitted by angle`;
    case 'accepted':
      return w`cylinder ${one.cylinder}, pull ${one.pull} left as it is`;
  }
}
