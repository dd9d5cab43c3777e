import { describe, expect, it } from 'vitest';
import { openItems } from '../../src/job/closing.ts';
import type { Command } from '../../src/job/command.ts';
import type { WorkOrder } from '../../src/job/order.ts';
import { replay } from '../../src/job/replay.ts';
import { exampleOrder, workshop } from './workshop.ts';

const order = exampleOrder(4);
const withRules = (
  gapRules: NonNullable<WorkOrder['specification']['gapRules']>,
  plug: Partial<WorkOrder['plug']> = {},
): WorkOrder => ({
  ...order,
  plug: { ...order.plug, ...plug },
  specification: { ...order.specification, gapRules },
});

function shopWith(given: WorkOrder = order) {
  const shop = workshop(given);
  return {
    ...shop,
    tell: (command: Command) => shop.give({ kind: 'command', command }),
    step: (cylinder: number) => shop.bench.state().plugs[cylinder]?.step?.do ?? null,
    sameAgain: () => {
      const again = replay(shop.events);
      expect(again.ok && again.value.state()).toEqual(shop.bench.state());
    },
  };
}

describe('a gap that is not right', () => {
  it('is set and measured again', () => {
    const shop = shopWith();
    shop.gap(0.86);
    expect([shop.cylinder(1).gap, shop.step(1)]).toEqual(['again', 'regap']);
    shop.gap(0.75);
    expect([shop.cylinder(1).gap, shop.step(1)]).toEqual(['done', 'fit']);
    shop.sameAgain();
  });

  it('is not bent beyond the limit: another plug has to come', () => {
    const shop = shopWith();
    shop.gap(0.97);
    expect(shop.step(1)).toBe('replace');
    expect(openItems(shop.bench.state())[0]).toEqual({
      kind: 'plug-to-be-replaced',
      cylinder: 1,
      because: 'needs-too-much',
      neededMm: 0.22,
      limitMm: 0.2,
    });
    shop.gap(0.75);
    expect(shop.cylinder(1).gap).toBe('again');
    shop.tell({ do: 'scrap-plug', cylinder: 1, reason: 'gap' });
    expect(shop.step(1)).toBeNull();
    shop.gap(0.75);
    expect(shop.cylinder(1).gap).toBe('done');
    shop.sameAgain();
  });

  it('is not bent on a precious tip, and a tip that was bent all the same proves nothing', () => {
    const shop = shopWith(withRules({}, { tip: 'iridium' }));
    shop.gap(0.86);
    expect(shop.step(1)).toBe('replace');
    shop.gap(0.75);
    expect(shop.cylinder(1)).toMatchObject({ gap: 'again', gaps: [{}, { judgement: { result: 'OK' } }] });
    const allowed = shopWith(withRules({ adjustable: 'yes' }, { tip: 'iridium' }));
    allowed.gap(0.86);
    expect(allowed.step(1)).toBe('regap');
  });
});

describe('a plug that goes to the scrap', () => {
  it('leaves gap and torque of its cylinder open, and what it had proven counts no more', () => {
    const shop = shopWith();
    shop.gap(0.75);
    shop.pull(27);
    expect([shop.cylinder(1).gap, shop.cylinder(1).torque]).toEqual(['done', 'done']);
    shop.tell({ do: 'scrap-plug', cylinder: 1, reason: 'broken-tip' });
    expect([shop.cylinder(1).gap, shop.cylinder(1).torque]).toEqual(['again', 'again']);
    expect(shop.bench.state().refitting).toBe(1);
    expect(shop.events.at(-1)).toEqual({ type: 'plug-scrapped', cylinder: 1, reason: 'broken-tip' });
    shop.sameAgain();
  });

  it('that was dropped on the bench is measured anew', () => {
    const shop = shopWith();
    shop.gap(0.75);
    shop.tell({ do: 'scrap-plug', cylinder: 1, reason: 'dropped' });
    expect([shop.cylinder(1).gap, shop.cylinder(1).torque]).toEqual(['again', 'todo']);
    expect(shop.bench.state().gapTarget).toBe(1);
    shop.sameAgain();
  });

  it('is none of a cylinder that the engine does not have', () => {
    expect(shopWith().tell({ do: 'scrap-plug', cylinder: 9, reason: 'dropped' }).ok).toBe(false);
  });
});

describe('a gap that may only be looked at', () => {
  it('is done when somebody saw it, and gives no figure', () => {
    const shop = shopWith(withRules({ check: 'visual-only' }));
    shop.gap(0.75);
    expect(shop.cylinder(1)).toMatchObject({ gap: 'todo', gaps: [] });
    shop.tell({ do: 'gap-inspected', cylinder: 1, sound: true });
    expect(shop.cylinder(1)).toMatchObject({ gap: 'done', gaps: [] });
    shop.tell({ do: 'gap-inspected', cylinder: 2, sound: false });
    expect([shop.cylinder(2).gap, shop.step(2)]).toEqual(['again', 'replace']);
    shop.sameAgain();
  });

  it('is judged by eye only where the specification says so', () => {
    expect(shopWith().tell({ do: 'gap-inspected', cylinder: 1, sound: true }).ok).toBe(false);
    expect(shopWith().tell({ do: 'gap-wire', cylinder: 1, outcome: 'fits' }).ok).toBe(false);
  });
});

describe('a gap that must not be measured', () => {
  it('is never due, and a reading that comes all the same is kept and not judged', () => {
    const shop = shopWith(withRules({ check: 'not-permitted' }));
    shop.gap(0.95);
    expect(shop.bench.state().gapTarget).toBeNull();
    expect(shop.events.some(({ type }) => type === 'gap-measured')).toBe(false);
    expect(shop.events.some((event) => event.type === 'readings' && event.tool === 'gauge')).toBe(true);
    shop.sameAgain();
  });
});

describe('a gap by round wires', () => {
  const rules = { check: 'wire', wires: { go: '0.72 mm', noGo: '0.78 mm', within: '0.003 mm' } } as const;

  it('is an interval: proven when all of it lies in the window', () => {
    const shop = shopWith(withRules(rules));
    shop.tell({ do: 'gap-wire', cylinder: 1, outcome: 'fits' });
    expect(shop.cylinder(1)).toMatchObject({
      gap: 'done',
      gaps: [{ tool: 'wire', judgement: { result: 'OK', value: 0.75, conformanceProbability: 1 } }],
    });
    shop.sameAgain();
  });

  it('is not decidable when one wire passes or none, because the interval is open on that side', () => {
    const shop = shopWith(withRules(rules));
    shop.tell({ do: 'gap-wire', cylinder: 1, outcome: 'tight' });
    expect(shop.cylinder(1).gaps.at(-1)?.judgement).toMatchObject({ result: 'NotDecidable', side: 'low' });
    shop.tell({ do: 'gap-wire', cylinder: 1, outcome: 'wide' });
    expect(shop.cylinder(1).gaps.at(-1)?.judgement).toMatchObject({ result: 'NotDecidable', side: 'high' });
    expect(shop.cylinder(1).gap).toBe('again');
    shop.sameAgain();
  });
});
