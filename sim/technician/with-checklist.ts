import type { Command } from '../../src/job/command.ts';
import { phaseOf } from '../../src/job/phase.ts';
import { DONE, itemsOf, type ListPhase } from '../../src/job/routine.ts';
import type { JobState } from '../../src/job/state.ts';
import type { Action } from '../physics/action.ts';
import type { Random } from '../random.ts';
import type { Screen } from './screen.ts';
import type { Leaving } from './technician.ts';

/** How long somebody looks at a step before he says that it is done. */
const READS_MS = [900, 2200] as const;
const LOT = 'LOT-0001';

/**
 * The technician, and what he says of the work around the torque whenever the screen asks for it: all of it is done, the
 * old plugs look as they should but for a worn one, and the new ones are those of the order.
 */
export function* withChecklist(
  technician: Generator<Action, Leaving, Screen>,
  random: Random,
): Generator<Action, Leaving, JobState> {
  let screen = yield { do: 'wait', ms: 500 };
  for (;;) {
    const command = screen.questions.length > 0 ? null : checklistAnswer(screen, random);
    if (command !== null) {
      yield { do: 'wait', ms: random.uniform(...READS_MS) };
      screen = yield { do: 'press', command };
      continue;
    }
    const step = technician.next(screen);
    if (step.done === true) return step.value;
    screen = yield step.value;
  }
}

function checklistAnswer(screen: JobState, random: Random): Command | null {
  const phase = phaseOf(screen);
  switch (phase) {
    case 'windows':
      return { do: 'confirm-windows' };
    case 'before-removal':
    case 'fitting':
    case 'afterwards':
      return attested(screen, phase);
    case 'trial':
      return { do: 'skip-trial' };
    case 'old-plugs': {
      const condition = random.chance(0.2) ? 'worn' : 'normal';
      const cylinders = screen.oldPlugTarget === null ? [] : [screen.oldPlugTarget];
      return { do: 'read-old-plugs', cylinders, condition, damage: [], thread: 'sound' };
    }
    case 'new-plugs': {
      const cylinders = screen.cylinders.map(({ cylinder }) => cylinder);
      return { do: 'check-new-plugs', cylinders, part: screen.order.plug.part, lot: LOT, differs: [] };
    }
    default:
      return null;
  }
}

function attested({ routine }: JobState, phase: ListPhase): Command | null {
  if (routine === null) return null;
  const items = itemsOf(routine, phase);
  return {
    do: 'attest',
    phase,
    steps: items.map(({ id, choices }) => ({ item: id, as: choices?.[0]?.id ?? DONE })),
  };
}
