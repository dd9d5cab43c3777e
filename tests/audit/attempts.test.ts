import { describe, expect, it } from 'vitest';
import type { Attempt } from '../../src/audit/attempt.ts';
import { jobHistory } from '../../src/audit/attempt-walk.ts';
import type { Command } from '../../src/job/command.ts';
import type { JobEvent } from '../../src/job/event.ts';
import { jobEntry } from '../evidence/entries.ts';
import { exampleOrder, workshop } from '../job/workshop.ts';

const DAY_MS = Date.parse('2026-05-04T09:30:00.000Z');

/** The history of events, one entry a second. */
function historyOf(events: readonly JobEvent[]) {
  const entries = events.map((event, i) =>
    jobEntry(event, { seq: i + 1, at: new Date(DAY_MS + 1000 * i).toISOString(), by: 'technician' }, 'J-1'),
  );
  const found = jobHistory(entries);
  if (found === null) throw new Error('no job');
  return found;
}

const brief = ({ quantity, cylinder, number, kind, first, last, censored }: Attempt) =>
  [
    `${quantity === 'torque' ? 'pull' : 'gap'} ${number} on ${cylinder}: ${kind}`,
    ...(first ? ['first'] : []),
    ...(last ? ['last'] : []),
    ...(censored === null ? [] : [censored]),
  ].join(', ');
const told = (events: readonly JobEvent[]) => historyOf(events).attempts.map(brief);

function shop() {
  const one = workshop();
  return { ...one, tell: (command: Command) => one.give({ kind: 'command', command }) };
}

describe('the attempts of a job', () => {
  it('are its pulls and gap readings, in order, with what was read and what was judged', () => {
    const { events, gap, pull } = shop();
    gap(0.75);
    pull(27);
    const { attempts, on } = historyOf(events);
    expect(attempts.map(brief)).toEqual([
      'gap 1 on 1: gap, first, last',
      'pull 1 on 1: tightening, first, last',
    ]);
    expect(on).toBe('2026-05-04');
    expect(attempts.map(({ source }) => source)).toEqual(['linked', 'linked']);
    const [reading, one] = attempts;
    expect(reading).toMatchObject({
      valueSi: 0.75,
      readingSi: 0.75,
      result: 'OK',
      part: 'EXAMPLE-14G',
      lot: null,
    });
    const judged = events.find(({ type }) => type === 'pull-placed');
    if (judged?.type !== 'pull-placed') throw new Error('no pull was placed');
    expect(one).toMatchObject({
      seq: events.indexOf(judged) + 1,
      valueSi: judged.judgement?.value,
      expanded: judged.judgement?.expandedUncertainty,
      technician: 'Technician One',
    });
  });

  it('are the same without the samples', () => {
    const { events, gap, pull } = shop();
    gap(0.75);
    pull(27);
    const values = (some: readonly JobEvent[]) =>
      historyOf(some).attempts.map(({ seq: _seq, at: _at, ...attempt }) => attempt);
    expect(values(events.filter(({ type }) => type !== 'readings'))).toEqual(values(events));
  });

  it('tell the first try on a plug from the one that stands', () => {
    const { events, stopShort, goOn, rest } = shop();
    stopShort(16);
    rest(2600);
    goOn(16, 27);
    rest();
    expect(told(events)).toEqual(['pull 1 on 1: tightening, first', 'pull 2 on 1: continuation, last']);
  });

  it('begin anew with another plug, and not with the same one put in again', () => {
    for (const newPlug of [true, false]) {
      const { events, pull, tell } = shop();
      pull(27);
      tell({ do: 'start-again', cylinder: 1, newPlug, why: 'fell' });
      pull(26.5);
      expect(told(events)).toEqual([
        'pull 1 on 1: tightening, first',
        `pull 2 on 1: tightening${newPlug ? ', first' : ''}, last`,
      ]);
    }
  });

  it('of a plug that was scrapped do not stand for the one in its place', () => {
    const { events, gap, tell } = shop();
    gap(0.97);
    tell({ do: 'scrap-plug', cylinder: 1, reason: 'gap' });
    gap(0.74);
    expect(told(events)).toEqual(['gap 1 on 1: gap, first', 'gap 2 on 1: gap, first, last']);
  });

  it('go where a person said later that a pull was', () => {
    const { events, pull, tell } = shop();
    pull(27);
    tell({ do: 'give-pull', pull: 1, cylinder: 3, why: 'went to the wrong one' });
    const { attempts } = historyOf(events);
    expect(attempts.map(brief)).toEqual(['pull 1 on 3: tightening, first, last']);
    const last = events.findLastIndex(({ type }) => type === 'pull-placed');
    expect(attempts[0]?.seq).toBe(last + 1);
    const found = events.findIndex(({ type }) => type === 'pull-detected');
    expect(attempts[0]?.at).toBe(new Date(DAY_MS + 1000 * found).toISOString());
  });

  it('that were cut off stand for nothing, and are the first try all the same', () => {
    const { events, halfPull, give, join, answer, pull } = shop();
    halfPull(20);
    give({
      kind: 'link',
      tool: 'wrench',
      driver: 'test',
      source: 'linked',
      link: { state: 'lost', reason: 'tool-switching-off' },
    });
    join();
    answer('refit');
    pull(27);
    expect(told(events)).toEqual(['pull 1 on 1: unsure, first, cut', 'pull 2 on 1: tightening, last']);
  });

  it('that stopped short stand for nothing once the plug was turned on by an angle', () => {
    const { events, stopShort, rest, tell, pull } = shop();
    stopShort(16);
    rest(2600);
    tell({ do: 'fit-by-angle', cylinder: 1, turn: '1/2 turn', why: 'bulkhead' });
    expect(events.some(({ type }) => type === 'fitted-by-angle')).toBe(true);
    expect(told(events)).toEqual(['pull 1 on 1: tightening, first']);
    tell({ do: 'start-again', cylinder: 1, newPlug: false, why: 'a shorter socket was found' });
    pull(27);
    expect(told(events)).toEqual(['pull 1 on 1: tightening, first', 'pull 2 on 1: tightening, last']);
  });

  it('that were cut off carry what they came to at least, with its uncertainty and without a verdict', () => {
    const { events, halfPull, give } = shop();
    halfPull(20);
    give({
      kind: 'link',
      tool: 'wrench',
      driver: 'test',
      source: 'linked',
      link: { state: 'lost', reason: 'tool-switching-off' },
    });
    const [cut] = historyOf(events).attempts;
    expect(cut).toMatchObject({ censored: 'cut', result: null });
    expect(cut?.valueSi).toBeCloseTo(cut?.readingSi ?? Number.NaN, 1);
    expect(cut?.expanded).toBeGreaterThan(0);
  });

  it('name who worked then, after the job changed hands', () => {
    const { events, pull, tell } = shop();
    pull(27);
    tell({ do: 'hand-over', to: 'Technician Two' });
    pull(27);
    expect(historyOf(events).attempts.map(({ technician }) => technician)).toEqual([
      'Technician One',
      'Technician Two',
    ]);
  });

  it('carry part and lot as they were said of their plug', () => {
    const { events, gap, tell } = shop();
    const said = { part: 'EXAMPLE-14G', lot: 'L-7', differs: [] };
    const checked: JobEvent = { type: 'new-plugs-checked', cylinders: [1], ...said };
    gap(0.97);
    tell({ do: 'scrap-plug', cylinder: 1, reason: 'gap' });
    gap(0.74);
    const scrapped = events.findIndex(({ type }) => type === 'plug-scrapped');
    const both = [...events.slice(0, scrapped), checked, ...events.slice(scrapped)];
    expect(historyOf(both).attempts.map(({ lot }) => lot)).toEqual(['L-7', null]);
    expect(historyOf([...events, checked]).attempts.map(({ lot }) => lot)).toEqual([null, 'L-7']);
  });
});

it('a first step is no first try of the torque that counts', () => {
  const order = exampleOrder(4);
  const twoStep = { ...order, specification: { ...order.specification, tightenFirst: '12-16 N·m' } };
  const { events, pull, loosen, rest } = workshop(twoStep);
  pull(14);
  rest();
  loosen(10);
  pull(27);
  expect(
    historyOf(events).attempts.map(({ kind, stage, first, last }) => ({ kind, stage, first, last })),
  ).toEqual([
    { kind: 'tightening', stage: 'first', first: false, last: false },
    { kind: 'loosening', stage: 'first', first: false, last: false },
    { kind: 'tightening', stage: 'final', first: true, last: true },
  ]);
});
