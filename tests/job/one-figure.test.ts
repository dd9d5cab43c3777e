import { describe, expect, it } from 'vitest';
import { createBench } from '../../src/job/bench.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { openJob } from '../../src/job/open.ts';
import { replay } from '../../src/job/replay.ts';
import { questionText } from '../../src/report/words/index.ts';
import { orThrow } from '../../src/result.ts';
import { answerKeys } from '../../src/ui/words.ts';
import { exampleOrder, INSTRUMENTS, OPENING, WRENCH } from './workshop.ts';

/** A bench with a wrench that sends one figure a pull; `figure` sends one, and then nothing for so long. */
function bay() {
  const events: JobEvent[] = [...orThrow(openJob(exampleOrder(4), INSTRUMENTS, OPENING))];
  const bench = createBench(orThrowNull(foldAll(events)));
  let n = 0;
  let nowUs = 0;
  const give = (input: Parameters<typeof bench.accept>[0]) => events.push(...orThrow(bench.accept(input)));
  give({ kind: 'session', program: 'plugmark test', platform: 'test' });
  give({
    kind: 'link',
    tool: 'wrench',
    driver: 'test',
    source: 'linked',
    link: { state: 'linked', description: { ...WRENCH, samplingFunction: 'maximum' } },
  });
  return {
    bench,
    events,
    figure(nm: number, thenMs = 4000) {
      n += 1;
      nowUs += 10_000;
      give({
        kind: 'reading',
        tool: 'wrench',
        reading: { kind: 'value', n, atUs: nowUs, counts: Math.round(100 * nm) },
      });
      nowUs += 1000 * thenMs;
      for (let waits = bench.waitsFor(); waits !== null && waits.untilUs <= nowUs; waits = bench.waitsFor())
        give({ kind: 'silence', tool: waits.tool, atUs: waits.untilUs });
    },
    answer(answer: 'fresh' | 'rehit' | 'handling') {
      const pull = bench.state().questions[0]?.pull ?? 0;
      give({ kind: 'command', command: { do: 'answer', pull, answer } });
    },
    asked: () => bench.state().questions.map(({ cylinder }) => cylinder),
    torque: () => bench.state().cylinders.map(({ torque }) => torque),
  };
}

function orThrowNull<T>(value: T | null): T {
  if (value === null) throw new Error('nothing was opened');
  return value;
}

describe('a wrench that sends one figure a pull', () => {
  it('asks at once, though nothing more comes, whether it was the cylinder that is due', () => {
    const { bench, figure } = bay();
    figure(27);
    const [question] = bench.state().questions;
    if (question === undefined) throw new Error('nothing is asked');
    expect(questionText(bench.state(), question)).toBe(
      'Was that cylinder 1? (27.00 N·m, the highest torque; this tool sends nothing else of a pull.)',
    );
    expect(answerKeys(question)).toMatch(/^\[y\] yes, this cylinder {3}\[r\] re-hit/);
  });

  it('proves a cylinder by its figure and that key, and calls nothing proven before', () => {
    const { figure, answer, torque } = bay();
    figure(27);
    expect(torque()).toEqual(['ask', 'todo', 'todo', 'todo']);
    answer('fresh');
    expect(torque()).toEqual(['done', 'todo', 'todo', 'todo']);
  });

  it('takes pulls before the keys, one plug after the other', () => {
    const { figure, answer, asked, torque } = bay();
    for (const nm of [27, 27.2, 26.9, 27.1]) figure(nm);
    expect(asked()).toEqual([1, 2, 3, 4]);
    for (let i = 0; i < 4; i++) answer('fresh');
    expect(torque()).toEqual(['done', 'done', 'done', 'done']);
  });

  it('moves those behind up when one of them was on no plug of its own', () => {
    const { figure, answer, asked } = bay();
    for (const nm of [27, 27.2, 26.9]) figure(nm);
    answer('fresh');
    answer('rehit');
    expect(asked()).toEqual([2]);
  });

  it('asks about a low figure once nothing has followed it', () => {
    const { figure, asked } = bay();
    figure(16);
    expect(asked()).toEqual([]);
    figure(27);
    expect(asked()).toEqual([1]);
    const alone = bay();
    alone.figure(16, 8000);
    expect(alone.asked()).toEqual([1]);
    alone.answer('fresh');
    expect(alone.torque()[0]).toBe('again');
  });

  it('makes a record that replay agrees with', () => {
    const { bench, events, figure, answer } = bay();
    figure(27);
    answer('fresh');
    figure(16, 8000);
    const again = replay(events);
    expect(again.ok && again.value.state()).toEqual(bench.state());
  });
});
