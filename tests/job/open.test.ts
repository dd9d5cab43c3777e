import { describe, expect, it } from 'vitest';
import { openJob } from '../../src/job/open.ts';
import { type WorkOrder, workOrderSchema } from '../../src/job/order.ts';
import { pathText } from '../../src/problem.ts';
import { exampleOrder, INSTRUMENTS, OPENING } from './workshop.ts';

const order = exampleOrder(8);
const withTorque = (torque: string): WorkOrder => ({
  ...order,
  specification: { ...order.specification, torque },
});

describe('opening a job', () => {
  it('computes windows in N·m and mm whatever unit the source prints', () => {
    const opened = openJob(withTorque('18-22 lbf·ft'), INSTRUMENTS, OPENING);
    expect(opened).toMatchObject({ ok: true });
    if (!opened.ok) return;
    expect(opened.value[0].torqueWindow.lowerLimit).toBeCloseTo(24.4047, 4);
    expect(opened.value[0].torqueWindow.upperLimit).toBeCloseTo(29.828, 4);
    expect(opened.value[0].gapWindow).toMatchObject({ lowerLimit: 0.7, upperLimit: 0.8, unit: 'mm' });
  });

  it.each([
    ['a unit of another quantity', withTorque('25-30 mm'), 'specification.torque'],
    ['a reversed range', withTorque('30-25 N·m'), 'specification.torque'],
    ['a figure without tolerance', withTorque('25 N·m'), 'specification.torque'],
    [
      'a gap in N·m',
      { ...order, specification: { ...order.specification, gap: '0.7-0.8 N·m' } },
      'specification.gap',
    ],
  ])('refuses %s and names the place', (_what, wrong, place) => {
    const opened = openJob(wrong, INSTRUMENTS, OPENING);
    expect(opened.ok).toBe(false);
    if (!opened.ok) expect(opened.error.where).toContain(place);
  });

  it('says before the job starts that an instrument cannot prove the window', () => {
    const coarse = INSTRUMENTS.map((one) =>
      one.quantity === 'torque'
        ? { ...one, permissibleDeviation: { kind: 'relative' as const, percent: 6 } }
        : one,
    );
    const opened = openJob(withTorque('20-21 N·m'), coarse, OPENING);
    expect(opened).toMatchObject({
      ok: false,
      error: { code: 'window-not-decidable', where: 'tool wrench' },
    });
  });

  it('names the tool that the station does not have', () => {
    const opened = openJob(order, INSTRUMENTS.slice(0, 1), OPENING);
    expect(opened).toMatchObject({
      ok: false,
      error: { code: 'instrument-missing', message: 'the station has no gap gauge' },
    });
  });
});

describe('a work order from a file', () => {
  const faults = (change: object): string[] => {
    const parsed = workOrderSchema.safeParse({ ...order, ...change });
    return parsed.success ? [] : parsed.error.issues.map(({ path }) => pathText(path));
  };

  it.each<[string, object, string]>([
    [
      'a cylinder twice in the banks',
      { engine: { ...order.engine, banks: [[1, 1]], serviceOrder: [1] } },
      'engine.banks',
    ],
    [
      'a cylinder left out of the service order',
      { engine: { ...order.engine, serviceOrder: [1, 2] } },
      'engine.serviceOrder',
    ],
    ['a job number that could leave its folder', { job: '../../etc/passwd' }, 'job'],
    ['an empty technician', { technician: '' }, 'technician'],
    ['a thread that no plug has', { plug: { ...order.plug, thread: 'M14' } }, 'plug.thread'],
    [
      'a date that is none',
      {
        specification: {
          ...order.specification,
          source: { ...order.specification.source, date: '2026-02-30' },
        },
      },
      'specification.source.date',
    ],
  ])('is refused for %s', (_what, change, place) => {
    expect(faults(change)).toContain(place);
  });
});
