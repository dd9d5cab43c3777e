/** The sample job worked with the steps around the torque, one plug left over the window and one fitted by angle. */
import { USUAL_DECISION } from '../../src/job/basis.ts';
import { createBench } from '../../src/job/bench.ts';
import type { Command } from '../../src/job/command.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { itemsOf, type ListPhase, USUAL_ROUTINE } from '../../src/job/routine.ts';
import { handsOn } from '../job/workshop.ts';
import { AT, INSTRUMENTS, opening } from './sample-job.ts';

const attest = (phase: ListPhase): Command => ({
  do: 'attest',
  phase,
  steps: itemsOf(USUAL_ROUTINE, phase).map(({ id, choices }) =>
    id === 'blown-clean'
      ? { item: id, as: 'not-done', why: 'no air on the road' }
      : { item: id, as: choices?.[0]?.id ?? 'done' },
  ),
});

/** Cylinder 1 is pulled to 34 N·m and accepted by name; cylinder 2 is fitted by angle. */
export function aroundJob(order: WorkOrder = opening().order): JobEvent[] {
  const opened = openJob(order, INSTRUMENTS, {
    on: AT.slice(0, 10),
    decision: USUAL_DECISION,
    overrides: [],
    routine: USUAL_ROUTINE,
  });
  if (!opened.ok) throw new Error(opened.error.message);
  const events: JobEvent[] = [...opened.value];
  const bench = createBench(fold(null, opened.value[0]));
  const hands = handsOn(bench, events);
  const say = (command: Command) => {
    const out = hands.give({ kind: 'command', command });
    if (!out.ok) throw new Error(out.error.message);
  };
  hands.give({ kind: 'session', program: 'plugmark 0.1.0', platform: 'test' });
  hands.join();
  say({ do: 'confirm-windows' });
  say(attest('before-removal'));
  hands.rest();
  hands.loosen(19);
  hands.gap(1.12);
  say({ do: 'read-old-plugs', cylinders: [1], condition: 'worn', damage: ['flashover'], thread: 'sound' });
  say({ do: 'read-old-plugs', cylinders: [2], condition: 'normal', damage: [], thread: 'sound' });
  say({ do: 'check-new-plugs', cylinders: [1, 2], part: order.plug.part, lot: 'LOT <7>', differs: [] });
  hands.gap(0.75);
  hands.gap(0.74);
  say(attest('fitting'));
  hands.pull(34);
  say({ do: 'accept', pull: 2, by: 'Foreman One', reason: 'threads sound, customer told' });
  say({ do: 'fit-by-angle', cylinder: 2, turn: '1/2 turn', why: 'no wrench reaches it' });
  say(attest('afterwards'));
  say({ do: 'close' });
  return events;
}
