/** The plain lines of what is said around the torque: lists, plugs, and what was left unproven by name. */
import { isByAngle } from '../job/click.ts';
import type { JobEvent, JobEventOf } from '../job/event.ts';
import { DONE, itemsOf, NOT_DONE } from '../job/routine.ts';
import { attemptOf } from '../job/situation.ts';
import type { JobState } from '../job/state.ts';
import { gapText, torqueText } from '../quantity/shown.ts';
import { CONDITIONS, DAMAGE } from '../report/words/condition.ts';
import { choiceText, featuresText, itemText, reasonWords } from '../report/words/index.ts';
import { w } from '../words/catalogue.ts';
import { outlier } from './panels/outlier.ts';
import { threadWords } from './words.ts';

type ChecklistEvent = JobEventOf<
  | 'windows-confirmed'
  | 'trial-click-skipped'
  | 'steps-attested'
  | 'old-plugs-read'
  | 'old-gap-measured'
  | 'removal-felt'
  | 'new-plugs-checked'
  | 'fitted-by-angle'
  | 'pull-accepted'
> &
  JobEvent;

const cylinders = (numbers: readonly number[]): string =>
  numbers.length === 1 ? w`cylinder ${numbers.join(', ')}` : w`cylinders ${numbers.join(', ')}`;

function attested({ phase, steps, together }: JobEventOf<'steps-attested'>, { routine }: JobState): string[] {
  const items = routine === null ? [] : itemsOf(routine, phase);
  const words = steps.map(({ item, as, why }) => {
    const of = items.find(({ id }) => id === item);
    const text = of === undefined ? item : itemText(of);
    if (as === NOT_DONE) return w`NOT done: ${text} (${why ?? ''})`;
    return as === DONE ? text : w`${text}: ${choiceText(of, as)}`;
  });
  return [together === true ? w`confirmed, all at once` : w`confirmed`, ...words];
}

function oldPlugs(event: JobEventOf<'old-plugs-read'>, after: JobState): string[] {
  const { condition, damage, thread, note } = event;
  const outlierText = outlier(after);
  return [
    cylinders(event.cylinders),
    w`old plug`,
    CONDITIONS[condition].word,
    ...damage.map((one) => DAMAGE[one].words),
    ...(thread === 'sound' ? [] : [threadWords(thread)]),
    ...(note === undefined ? [] : [note]),
    ...(outlierText === null ? [] : [outlierText]),
  ];
}

/** The pieces of the line of such an event. */
export function checklistLine(event: ChecklistEvent, after: JobState): readonly string[] {
  switch (event.type) {
    case 'trial-click-skipped':
      return [w`trial click passed over`];
    case 'windows-confirmed':
      return [w`windows confirmed`];
    case 'steps-attested':
      return attested(event, after);
    case 'old-plugs-read':
      return oldPlugs(event, after);
    case 'old-gap-measured':
      return [w`cylinder ${event.cylinder}`, w`old plug, gap ${gapText(event.gapMm)}`];
    case 'removal-felt': {
      const felt = attemptOf(after, event.pull);
      const loosened = w`old plug loosened by pull ${event.pull}`;
      return [
        w`cylinder ${event.cylinder}`,
        felt === undefined ? loosened : `${loosened}, ${torqueText(Math.abs(felt.pull.peakNm))}`,
      ];
    }
    case 'new-plugs-checked': {
      const { part, lot, differs } = event;
      const agrees = differs.length === 0 ? w`agrees with the order` : w`DIFFERS in ${featuresText(differs)}`;
      return [
        cylinders(event.cylinders),
        w`new plug ${part}`,
        lot === null ? w`no lot` : w`lot ${lot}`,
        agrees,
      ];
    }
    case 'fitted-by-angle':
      return [
        w`cylinder ${event.cylinder}`,
        isByAngle(after.basis)
          ? w`fitted by angle, ${event.turn}: not proven`
          : w`fitted by angle, ${event.turn}: not proven by torque`,
        reasonWords(event.why),
      ];
    case 'pull-accepted':
      return [
        w`cylinder ${event.cylinder}`,
        w`pull ${event.pull} stays over the window, answered for by ${event.by}: ${reasonWords(event.reason)}`,
      ];
  }
}
