import type { Instrument } from '../../src/instrument/instrument.ts';
import type { JobEvent, JobEventOf } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { judgedReading } from '../../src/job/judging.ts';
import { openJob } from '../../src/job/open.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import type { Routine } from '../../src/job/routine.ts';
import { torqueWindowOf } from '../../src/job/stage.ts';
import type { JobState } from '../../src/job/state.ts';
import { pullOf } from '../sequence/pulls.ts';
import { exampleOrder, INSTRUMENTS, OPENING } from './workshop.ts';

type Kind = JobEventOf<'pull-placed'>['kind'];

/** The order for two steps: 25 to 30 N·m, loosen, then `torque`. */
export const twoSteps = (torque = '18-22 N·m'): WorkOrder => ({
  ...exampleOrder(4),
  specification: { ...exampleOrder(4).specification, tightenFirst: '25-30 N·m', torque },
});

/** A job whose events are written out one by one: every place that a pull can take, whether or not the rules would give it. */
export function typedJob(
  order: WorkOrder = exampleOrder(4),
  instruments: readonly Instrument[] = INSTRUMENTS,
  routine?: Routine,
) {
  const opening = openJob(order, instruments, { ...OPENING, ...(routine === undefined ? {} : { routine }) });
  if (!opening.ok) throw new Error(opening.error.message);
  let state: JobState = fold(null, opening.value[0]);
  let pulls = 0;
  const give = (...events: readonly JobEvent[]) => {
    for (const event of events) state = fold(state, event);
  };
  return {
    give,
    state: () => state,
    cylinder: (number: number) =>
      state.cylinders.find(({ cylinder }) => cylinder === number) ?? state.cylinders[0],
    /** A pull of `nm` that was given to a cylinder; judged where its kind is. Its number comes back. */
    pull(cylinder: number | null, nm: number, kind: Kind = 'tightening', more: object = {}): number {
      pulls += 1;
      const judged = cylinder !== null && (kind === 'tightening' || kind === 'continuation');
      const window = torqueWindowOf(state, cylinder);
      const startUs = 20_000_000 * pulls;
      give(
        {
          type: 'pull-detected',
          ...pullOf({ peakNm: nm, highestNm: nm, startUs, endUs: startUs + 1_200_000 }),
          pull: pulls,
          tool: 'wrench',
          source: 'linked',
        },
        {
          type: 'pull-placed',
          pull: pulls,
          cylinder,
          kind,
          because: 'plug-turned',
          judgement: judged ? judgedReading(state, 'wrench', nm, window, null) : null,
          ...more,
        },
      );
      return pulls;
    },
  };
}
