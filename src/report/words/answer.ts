/** What was answered to a question about a pull. */
import type { Answer } from '../../job/event.ts';
import { phrases } from '../../words/catalogue.ts';

export const ANSWER_GIVEN: Readonly<Record<Answer, string>> = phrases({
  fresh: 'the tightening of this cylinder',
  rehit: 'a second pull on a plug already tight (re-hit)',
  handling: 'no plug was turned',
  unfinished: 'a stroke that was not finished',
  refit: 'plug backed out, thread inspected, to be fitted again',
  replace: 'plug backed out, thread inspected, to be fitted again with a new plug',
});
