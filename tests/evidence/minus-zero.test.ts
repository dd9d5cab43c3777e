/** JSON has no minus zero, and `isDeepStrictEqual` tells the two zeros apart: an honest record must not fail over it. */
import { expect, it } from 'vitest';
import { createBench } from '../../src/job/bench.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { fold } from '../../src/job/fold.ts';
import { replay } from '../../src/job/replay.ts';
import { handsOn } from '../job/workshop.ts';
import { logOf, opening } from './sample-job.ts';

it('a reading of minus zero is the same when the log is played back as it was at the bench', () => {
  const opened = opening();
  const events: JobEvent[] = [opened];
  const bench = createBench(fold(null, opened));
  const hands = handsOn(bench, events);
  hands.give({ kind: 'session', program: 'plugmark test', platform: 'test' });
  hands.join();
  hands.gap(-0);
  const written = events.find((event) => event.type === 'gap-out-of-turn');
  expect(Object.is(written?.type === 'gap-out-of-turn' && written.gapMm, 0)).toBe(true);
  const { entries } = logOf(events);
  expect(entries.map(({ event }) => event)).toEqual(events);
  const again = replay(entries.map(({ event }) => event));
  expect(again.ok).toBe(true);
  if (again.ok) expect(again.value.state()).toEqual(bench.state());
});
