import { describe, expect, it } from 'vitest';
import type { JobEvent } from '../../src/job/event.ts';
import { foldAll } from '../../src/job/fold.ts';
import { replay } from '../../src/job/replay.ts';
import { OPEN_EDITION } from '../../src/job/rules.ts';
import { decodeSamples, encodeSamples } from '../../src/pull/trace.ts';
import { orThrow } from '../../src/result.ts';
import { handsOn, workshop } from './workshop.ts';

/** A job with everything in it: a stop short, a second click, an overpull backed out, a lost link, questions. */
function eventfulJob() {
  const shop = workshop();
  for (const mm of [0.74, 0.9, 0.76, 0.75, 0.75]) shop.gap(mm);
  shop.stopShort(19);
  shop.again(27);
  shop.again(27.3);
  shop.pull(32);
  shop.answer('refit');
  shop.loosen(18);
  shop.pull(27);
  shop.halfPull(26);
  shop.give({
    kind: 'link',
    tool: 'wrench',
    driver: 'test',
    source: 'linked',
    link: { state: 'lost', reason: 'tool-switching-off' },
  });
  shop.join();
  shop.answer('replace');
  shop.gap(0.75);
  shop.pull(27);
  shop.doubtful(27, 0.35);
  shop.answer('fresh');
  shop.give({ kind: 'command', command: { do: 'close' } });
  return shop;
}

describe('judging a job again from its events', () => {
  it('gives the same pulls, placements and verdicts, and the same state', () => {
    const shop = eventfulJob();
    expect(shop.events.at(-1)).toEqual({ type: 'job-closed', complete: true, open: [] });
    const again = replay(shop.events);
    expect(again.ok).toBe(true);
    if (again.ok) expect(again.value.state()).toEqual(shop.bench.state());
    expect(foldAll(shop.events)).toEqual(shop.bench.state());
  });

  it('does not mind in how many pieces the samples were written', () => {
    const pieces = eventfulJob().events.flatMap((event) => {
      if (event.type !== 'readings' || event.count === 1) return [event];
      const { atUs, counts } = orThrow(decodeSamples(event));
      const at = Math.ceil(event.count / 3);
      const part = (from: number, to: number): JobEvent => {
        const coded = encodeSamples({ atUs: atUs.slice(from, to), counts: counts.slice(from, to) });
        return { ...event, first: event.first + from, ...coded };
      };
      return [part(0, at), part(at, event.count)];
    });
    expect(replay(pieces).ok).toBe(true);
  });

  it('finds nothing twice where it goes on: what was written is not written again', () => {
    const shop = eventfulJob();
    const again = replay(shop.events);
    if (!again.ok) throw new Error(again.error.message);
    expect(again.value.accept({ kind: 'flush' })).toEqual({ ok: true, value: [] });
  });

  it.each<[string, (events: JobEvent[]) => JobEvent[]]>([
    [
      'a verdict was made better',
      (events) =>
        events.map((event) =>
          event.type === 'pull-placed' && event.judgement?.result === 'NotOK'
            ? { ...event, judgement: { ...event.judgement, result: 'OK' } }
            : event,
        ),
    ],
    [
      'a peak was made smaller',
      (events) =>
        events.map((event) =>
          event.type === 'pull-detected' ? { ...event, peakNm: event.peakNm - 0.01 } : event,
        ),
    ],
    [
      'a pull was left out',
      (events) => events.filter((event) => event.type !== 'pull-detected' || event.pull !== 4),
    ],
    [
      'a pull was given to another cylinder',
      (events) =>
        events.map((event) =>
          event.type === 'pull-placed' && event.cylinder === 2 ? { ...event, cylinder: 3 } : event,
        ),
    ],
    [
      'samples were left out',
      (events) =>
        events.filter(
          (_, i) =>
            i !==
            events.findIndex(
              (event) => event.type === 'readings' && event.tool === 'wrench' && event.first > 50,
            ),
        ),
    ],
    [
      'a job was called complete that is not',
      (events) =>
        events.flatMap((event) => (event.type === 'gap-measured' && event.cylinder === 4 ? [] : [event])),
    ],
  ])('notices that %s', (_what, forge) => {
    const out = replay(forge(eventfulJob().events));
    expect(out.ok).toBe(false);
    if (!out.ok)
      expect(out.error).toMatchObject({
        code: 'judged-otherwise',
        where: expect.stringMatching(/^event \d+$/),
      });
  });

  it('refuses to judge by rules it does not have', () => {
    const [opened, ...rest] = eventfulJob().events;
    if (opened?.type !== 'job-opened') throw new Error('not opened');
    expect(replay([{ ...opened, rules: `plugmark/rules/${OPEN_EDITION + 1}` }, ...rest])).toMatchObject({
      ok: false,
      error: { code: 'rules-differ' },
    });
  });
});

describe('going on after a stop', () => {
  it('brings the bench back with the pull that was under way, and asks about it', () => {
    const shop = workshop();
    shop.pull(27);
    shop.halfPull(26);
    shop.give({ kind: 'flush' });
    const back = replay(shop.events);
    if (!back.ok) throw new Error(back.error.message);
    const events = [...shop.events];
    const hands = handsOn(back.value, events);
    hands.give({ kind: 'session', program: 'plugmark test', platform: 'test' });
    expect(back.value.state().session).toBe(2);
    expect(hands.cylinder(1).torque).toBe('done');
    expect(hands.cylinder(2)).toMatchObject({
      torque: 'ask',
      pulls: [{ kind: 'unsure', pull: { cut: 'stopped' } }],
    });
    hands.join();
    hands.answer('refit');
    hands.loosen(12);
    hands.pull(27);
    expect(hands.cylinder(2).torque).toBe('done');
    expect(replay(events).ok).toBe(true);
  });
});
