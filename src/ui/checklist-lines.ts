/** The plain lines of what is said around the torque: lists, plugs, and what was left unproven by name. */
import { isByAngle } from '../job/click.ts';
import type { JobEvent, JobEventOf } from '../job/event.ts';
import { DONE, itemsOf, NOT_DONE } from '../job/routine.ts';
import { attemptOf } from '../job/situation.ts';
import type { JobState } from '../job/state.ts';
import { CONDITIONS, DAMAGE } from '../report/words/condition.ts';
import { choiceText, featuresText, itemText } from '../report/words/index.ts';
import { outlier } from './panels/outlier.ts';
import { figure, fixed } from './words.ts';

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
  `cylinder${numbers.length === 1 ? '' : 's'} ${numbers.join(', ')}`;

function attested({ phase, steps, together }: JobEventOf<'steps-attested'>, { routine }: JobState): string[] {
  const items = routine === null ? [] : itemsOf(routine, phase);
  const words = steps.map(({ item, as, why }) => {
    const of = items.find(({ id }) => id === item);
    const text = of === undefined ? item : itemText(of);
    if (as === NOT_DONE) return `NOT done: ${text} (${why ?? ''})`;
    return as === DONE ? text : `${text}: ${choiceText(of, as)}`;
  });
  return [together === true ? 'confirmed, all at once' : 'confirmed', ...words];
}

function oldPlugs(event: JobEventOf<'old-plugs-read'>, after: JobState): string[] {
  const { condition, damage, thread, note } = event;
  const outlierText = outlier(after);
  return [
    cylinders(event.cylinders),
    'old plug',
    CONDITIONS[condition].word,
    ...damage.map((one) => DAMAGE[one].words),
    ...(thread === 'sound' ? [] : [`thread ${thread}`]),
    ...(note === undefined ? [] : [note]),
    ...(outlierText === null ? [] : [outlierText]),
  ];
}

/** The pieces of the line of such an event. */
export function checklistLine(event: ChecklistEvent, after: JobState): readonly string[] {
  switch (event.type) {
    case 'trial-click-skipped':
      return ['trial click passed over'];
    case 'windows-confirmed':
      return ['windows confirmed'];
    case 'steps-attested':
      return attested(event, after);
    case 'old-plugs-read':
      return oldPlugs(event, after);
    case 'old-gap-measured':
      return [`cylinder ${event.cylinder}`, `old plug, gap ${fixed(event.gapMm, 3)} mm`];
    case 'removal-felt': {
      const felt = attemptOf(after, event.pull);
      const nm = felt === undefined ? '' : `, ${figure(Math.abs(felt.pull.peakNm), 'N.m')} N·m`;
      return [`cylinder ${event.cylinder}`, `old plug loosened by pull ${event.pull}${nm}`];
    }
    case 'new-plugs-checked': {
      const { part, lot, differs } = event;
      const agrees = differs.length === 0 ? 'agrees with the order' : `DIFFERS in ${featuresText(differs)}`;
      return [cylinders(event.cylinders), `new plug ${part}`, lot === null ? 'no lot' : `lot ${lot}`, agrees];
    }
    case 'fitted-by-angle':
      return [
        `cylinder ${event.cylinder}`,
        `fitted by angle, ${event.turn}: not proven${isByAngle(after.basis) ? '' : ' by torque'}`,
        event.why,
      ];
    case 'pull-accepted':
      return [
        `cylinder ${event.cylinder}`,
        `pull ${event.pull} stays over the window, answered for by ${event.by}: ${event.reason}`,
      ];
  }
}
