import { describe, expect, it } from 'vitest';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { openJob } from '../../src/job/open.ts';
import { replay } from '../../src/job/replay.ts';
import { shopWithTwo, TWO_WRENCHES, type TwoWrenches } from './two-wrenches.ts';
import { exampleOrder, GAUGE, OPENING, workshop } from './workshop.ts';

const order = exampleOrder(4);
const [FIRST, SECOND, GAUGE_ONE] = TWO_WRENCHES;

const ofType = (shop: TwoWrenches, type: string) => shop.events.filter((event) => event.type === type);

describe('a job with two wrenches', () => {
  it('opens with the window of each, by its own uncertainty', () => {
    const opened = openJob(order, TWO_WRENCHES, OPENING);
    if (!opened.ok) throw new Error(opened.error.message);
    const { torqueWindow, furtherWindows } = opened.value[0];
    const [further] = furtherWindows ?? [];
    expect(further).toMatchObject({ tool: 'wrench-2', firstWindow: null });
    expect(further?.window.lowerLimit).toBe(torqueWindow.lowerLimit);
    expect(further?.window.acceptLower).toBeGreaterThan(torqueWindow.acceptLower);
  });

  it('sees by the readings which one is in use, says so once, and judges each pull by its own wrench', () => {
    const shop = shopWithTwo();
    for (const mm of [0.74, 0.75, 0.76, 0.75]) shop.gap(mm);
    shop.pull(27);
    shop.rest();
    shop.second(27.2);
    shop.second(27.4);
    expect(ofType(shop, 'tool-in-use')).toEqual([{ type: 'tool-in-use', tool: 'wrench-2' }]);
    const state = shop.bench.state();
    expect(state.inUse).toEqual({ torque: 'wrench-2', length: 'gauge' });
    const pulls = state.cylinders.flatMap((c) => c.pulls);
    expect(pulls.map(({ pull }) => pull.tool)).toEqual(['wrench', 'wrench-2', 'wrench-2']);
    const [one, two] = pulls.map(({ judgement }) => judgement?.expandedUncertainty ?? 0);
    expect(two).toBeGreaterThan(1.5 * (one ?? 0));
    expect(state.torqueWindow).toEqual(state.windows['wrench-2']?.window);
  });

  it('is judged again to the same', () => {
    const shop = shopWithTwo();
    for (const mm of [0.74, 0.75, 0.76, 0.75]) shop.gap(mm);
    shop.second(27);
    shop.pull(27.3);
    shop.rest();
    shop.second(27.2);
    shop.give({ kind: 'flush' });
    const again = replay(shop.events);
    expect(again.ok ? again.value.state().inUse.torque : again.error).toBe('wrench-2');
  });

  it('does without a wrench that is not fit, and with none is not opened', () => {
    const poor: Instrument = { ...SECOND, permissibleDeviation: { kind: 'relative', percent: 20 } };
    const without = openJob(order, [FIRST, poor, GAUGE_ONE], OPENING);
    expect(without.ok && without.value[0].instruments.map(({ id }) => id)).toEqual(['wrench', 'gauge']);
    expect(without.ok && 'furtherWindows' in without.value[0]).toBe(false);
    const first = openJob(order, [poor, FIRST, GAUGE_ONE], OPENING);
    expect(first.ok && first.value[0].instruments.map(({ id }) => id)).toEqual(['wrench', 'gauge']);
    const none = openJob(order, [poor, GAUGE_ONE], OPENING);
    expect(none.ok ? null : none.error.code).toBe('window-not-decidable');
  });
});

describe('two technicians on one engine', () => {
  it('are told apart by the tool in hand', () => {
    const toolsOf = [{ tool: 'wrench-2', technician: 'B. Second' }];
    const opened = openJob(order, TWO_WRENCHES, { ...OPENING, toolsOf });
    expect(opened.ok && opened.value[0].toolsOf).toEqual(toolsOf);
  });

  it('are told apart again when each goes on with a tool of his own', () => {
    const owners = [
      { tool: 'wrench-2', technician: 'B. Second' },
      { tool: 'gauge', technician: order.technician },
    ];
    const shop = shopWithTwo({ toolsOf: owners });
    shop.gap(0.75);
    shop.second(27);
    shop.gap(0.75);
    shop.second(27.2);
    const { cylinders } = shop.bench.state();
    expect(cylinders.flatMap(({ gaps }) => gaps.map((one) => one.technician))).toEqual([
      order.technician,
      order.technician,
    ]);
    expect(cylinders.flatMap(({ pulls }) => pulls.map((one) => one.technician))).toEqual([
      'B. Second',
      'B. Second',
    ]);
    expect(ofType(shop, 'tool-in-use').map((event) => 'tool' in event && event.tool)).toEqual([
      'wrench-2',
      'gauge',
      'wrench-2',
    ]);
    shop.give({ kind: 'flush' });
    expect(replay(shop.events).ok).toBe(true);
  });

  it('are told apart where the first tool of all is not that of the technician of the order', () => {
    const shop = shopWithTwo({ toolsOf: [{ tool: 'gauge', technician: 'C. Third' }] });
    shop.gap(0.75);
    expect(shop.bench.state().cylinders[0]?.gaps[0]?.technician).toBe('C. Third');
  });

  it('of whom one works on with the tool of the other are told apart by a key', () => {
    const shop = shopWithTwo({ toolsOf: [{ tool: 'gauge', technician: order.technician }] });
    shop.gap(0.75);
    shop.give({ kind: 'command', command: { do: 'at-work', person: 'B. Second' } });
    shop.gap(0.75);
    expect(shop.bench.state().cylinders[1]?.gaps[0]?.technician).toBe('B. Second');
  });

  it('are told apart by a key, and whoever answers for the job stays the same', () => {
    const shop = shopWithTwo();
    shop.gap(0.75);
    expect(shop.give({ kind: 'command', command: { do: 'at-work', person: 'B. Second' } }).ok).toBe(true);
    shop.gap(0.75);
    const { cylinders, technician } = shop.bench.state();
    expect(technician).toBe('B. Second');
    expect(cylinders.flatMap(({ gaps }) => gaps.map((one) => one.technician))).toEqual([
      order.technician,
      'B. Second',
    ]);
    expect(replay(shop.events).ok).toBe(true);
    expect(shop.give({ kind: 'command', command: { do: 'at-work', person: 'B. Second' } }).ok).toBe(false);
  });
});

describe('a gauge beside another', () => {
  it('is in use once it measures', () => {
    const other: Instrument = { ...GAUGE_ONE, id: 'gauge-2' };
    const shop = workshop(order, undefined, [FIRST, GAUGE_ONE, other]);
    shop.give({
      kind: 'link',
      tool: 'gauge-2',
      driver: 'test',
      source: 'linked',
      link: { state: 'linked', description: GAUGE },
    });
    const reading = { kind: 'value', n: 1, atUs: 9_000_000, counts: 7500 } as const;
    shop.give({ kind: 'reading', tool: 'gauge-2', reading });
    expect(shop.events.slice(-3).map(({ type }) => type)).toEqual([
      'readings',
      'tool-in-use',
      'gap-measured',
    ]);
    expect(shop.bench.state().inUse.length).toBe('gauge-2');
  });
});
