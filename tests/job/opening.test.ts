import { describe, expect, it } from 'vitest';
import type { Certificate } from '../../src/instrument/certificate.ts';
import type { Instrument } from '../../src/instrument/instrument.ts';
import { type Opened, type Opening, openJob } from '../../src/job/open.ts';
import { type WorkOrder, workOrderSchema } from '../../src/job/order.ts';
import { normalSpread } from '../../src/metrology/spread.ts';
import { judge } from '../../src/metrology/window.ts';
import type { FlexJoint } from '../../src/plug/geometry.ts';
import { newtonMetres } from '../../src/quantity/torque.ts';
import { exampleOrder, INSTRUMENTS, OPENING, workshop } from './workshop.ts';

const order = exampleOrder(4);
const specified = (change: Partial<WorkOrder['specification']>): WorkOrder => ({
  ...order,
  specification: { ...order.specification, ...change },
});
const [WRENCH, GAUGE] = INSTRUMENTS;
if (WRENCH === undefined || GAUGE === undefined) throw new Error('two instruments');

const certificate: Certificate = {
  number: 'C-7',
  laboratory: 'Example laboratory',
  serial: 'W-1',
  date: '2026-01-15',
  due: '2026-04-30',
  unit: 'N.m',
  points: [
    { reading: 10, error: 0.05, expanded: 0.1, k: 2 },
    { reading: 60, error: 0.3, expanded: 0.4, k: 2 },
  ],
};
const certified: Instrument = { ...WRENCH, serial: 'W-1', certificate };
const withWrench = (wrench: Instrument) => [wrench, GAUGE];

function opened(given: WorkOrder, instruments: readonly Instrument[], opening: Opening = OPENING): Opened {
  const out = openJob(given, instruments, opening);
  if (!out.ok) throw new Error(`${out.error.code}: ${out.error.message}`);
  return out.value;
}
const refused = (given: WorkOrder, instruments = INSTRUMENTS, opening = OPENING) => {
  const out = openJob(given, instruments, opening);
  return out.ok ? null : out.error;
};

it('an order with an angle and no torque says what a wrench can prove', () => {
  const { torque: _torque, ...angleOnly } = { ...order.specification, angle: '1/2 turn' };
  const read = workOrderSchema.safeParse({ ...order, specification: angleOnly });
  expect(read.error?.issues[0]?.message).toContain('there is no torque');
});

describe('an opening that is refused', () => {
  it.each<[string, WorkOrder, string, string]>([
    [
      'a turn beside an angle in place of the torque',
      specified({ torque: '1/2-2/3 turn', turn: '180-240°' }),
      'angle-without-torque',
      'specification.turn',
    ],
    [
      'two different plugs of which one has no cylinder',
      {
        ...order,
        plug: {
          ...order.plug,
          alsoParts: ['B'],
          parts: [
            { part: order.plug.part, cylinders: [1, 2] },
            { part: 'B', cylinders: [3] },
          ],
        },
      },
      'plug-parts-not-one',
      'plug.parts',
    ],
    [
      'a figure that no table comes near',
      specified({ torque: '42-45 N·m' }),
      'figure-implausible',
      'specification.torque',
    ],
    [
      'a better source set aside',
      specified({
        source: { kind: 'plug-box', title: 'box' },
        also: [{ torque: '18-20 N·m', threads: 'dry', source: { kind: 'engine-maker', title: 'manual' } }],
      }),
      'source-outranked',
      'specification.also[0].source.kind',
    ],
    [
      'a reduction that counts twice',
      specified({ threads: 'oiled', reduction: { percent: 30, lubricant: 'oiled', setBy: 'A. Foreman' } }),
      'reduced-twice',
      'specification.reduction',
    ],
    [
      'a bending limit in N·m',
      specified({ gapRules: { bendMost: '1 N·m' } }),
      'unit-of-another-quantity',
      'specification.gapRules.bendMost',
    ],
    [
      'wires that prove nothing',
      specified({ gapRules: { check: 'wire', wires: { go: '0.7 mm', noGo: '0.8 mm', within: '0.003 mm' } } }),
      'window-not-decidable',
      'specification.gapRules.wires',
    ],
    [
      'a source of the future',
      specified({ source: { kind: 'engine-maker', title: 'manual', date: '2026-05-05' } }),
      'source-in-future',
      'specification.source.date',
    ],
  ])('for %s, with the field', (_what, given, code, field) => {
    expect(refused(given)).toMatchObject({ code, where: expect.stringContaining(field) });
  });

  it('says what uncertainty the window would need', () => {
    const coarse: Instrument = { ...WRENCH, permissibleDeviation: { kind: 'relative', percent: 9 } };
    expect(refused(order, withWrench(coarse))).toMatchObject({
      code: 'window-not-decidable',
      next: expect.stringContaining('below 2.50 N·m'),
    });
  });
});

describe('a supervisor', () => {
  const override = { tool: 'wrench', by: 'A. Foreman', reason: 'no other wrench today' };

  it('is asked for where a certificate has run out', () => {
    expect(refused(order, withWrench(certified))).toMatchObject({
      code: 'calibration-expired',
      next: 'Have it calibrated.',
      answerableFor: 'wrench',
    });
    expect(refused(order, withWrench(certified), { ...OPENING, on: '2026-04-30' })).toBeNull();
  });

  it('answers with name and reason, as an event of its own', () => {
    const events = opened(order, withWrench(certified), { ...OPENING, overrides: [override] });
    expect(events.slice(1)).toEqual([
      {
        type: 'instrument-overridden',
        tool: 'wrench',
        refusal: { code: 'calibration-expired', due: '2026-04-30' },
        by: 'A. Foreman',
        reason: 'no other wrench today',
      },
    ]);
  });

  it('answers for one tool and no other, and for nothing that is a fault of the description', () => {
    const forGauge = { ...OPENING, overrides: [{ ...override, tool: 'gauge' }] };
    expect(refused(order, withWrench(certified), forGauge)).toMatchObject({ code: 'calibration-expired' });
    const wrong: Instrument = { ...certified, serial: 'W-2' };
    const forWrench = { ...OPENING, overrides: [override] };
    expect(refused(order, withWrench(wrong), forWrench)).toMatchObject({ code: 'certificate-other-serial' });
  });

  it('leaves no trace where nobody had to answer', () => {
    expect(opened(order, INSTRUMENTS, { ...OPENING, overrides: [override] })).toHaveLength(1);
  });
});

describe('the windows of a job', () => {
  it('are wider where the certificate is better than the class', () => {
    const [byClass] = opened(
      order,
      withWrench({ ...WRENCH, permissibleDeviation: { kind: 'relative', percent: 4 } }),
    );
    const [byCertificate] = opened(order, withWrench({ ...certified, correct: true }), {
      ...OPENING,
      on: '2026-03-01',
    });
    expect(byCertificate.torqueWindow.acceptLower).toBeLessThan(byClass.torqueWindow.acceptLower);
    expect(byCertificate.torqueWindow.expandedAtLower).toBeCloseTo(0.4, 2);
  });

  it('follow the rule of the shop', () => {
    const accept = (rule: Opening['decision']['rule']) => {
      const [{ torqueWindow }] = opened(order, INSTRUMENTS, {
        ...OPENING,
        decision: { rule, grades: false },
      });
      return torqueWindow.acceptLower;
    };
    expect(accept({ kind: 'simple' })).toBe(25);
    expect(accept({ kind: 'iso-14253-1' })).toBeCloseTo(25 + 1.65 * 0.29538, 3);
    expect(accept({ kind: 'guard-band', r: 1.5 })).toBeCloseTo(25 + 1.5 * 0.59076, 3);
    expect(accept({ kind: 'probability', atLeast: 0.95 })).toBeCloseTo(25 + 1.644854 * 0.29538, 3);
  });

  it('are those at the plug; an adapter adds its own uncertainty', () => {
    const adapter = { armMm: 300, offsetMm: 40, angleDeg: 0, within: { armMm: 2, offsetMm: 1, angleDeg: 5 } };
    const [straight] = opened(order, INSTRUMENTS);
    const [{ torqueWindow }] = opened({ ...order, adapter }, INSTRUMENTS);
    expect(torqueWindow).toMatchObject({ lowerLimit: 25, upperLimit: 30 });
    expect(torqueWindow.expandedAtLower).toBeGreaterThan(straight.torqueWindow.expandedAtLower);
  });

  it.each<[string, FlexJoint, string | null]>([
    ['a universal joint bent by 15°', { kind: 'universal-joint', bentDeg: 15 }, null],
    ['one bent by more', { kind: 'universal-joint', bentDeg: 15.5 }, 'flexJoint.bentDeg'],
    ['a wobble extension', { kind: 'wobble-extension', bentDeg: 5 }, 'flexJoint.stated'],
    [
      'a wobble extension that somebody measured',
      { kind: 'wobble-extension', bentDeg: 5, stated: { percent: 3, basis: 'bench, 20 pulls' } },
      null,
    ],
    [
      'a universal joint far bent that somebody measured',
      { kind: 'universal-joint', bentDeg: 25, stated: { percent: 6, basis: 'bench, 20 pulls' } },
      null,
    ],
  ])('%s is taken only where its share is known', (_what, flexJoint, field) => {
    const problem = refused({ ...order, flexJoint }, INSTRUMENTS);
    if (field === null) expect(problem).toBeNull();
    else expect(problem).toMatchObject({ code: 'flex-joint-refused', where: field });
  });

  it('ask the wrench for the range that it reads, not that of the plug', () => {
    const adapter = { armMm: 300, offsetMm: 40, angleDeg: 0, within: { armMm: 2, offsetMm: 1, angleDeg: 5 } };
    const small: Instrument = { ...WRENCH, range: { from: 5, to: 27 } };
    expect(refused(order, withWrench(small))).toMatchObject({ code: 'out-of-range' });
    expect(refused({ ...order, adapter }, withWrench(small))).toBeNull();
  });

  it('go up to the service limit for a used plug', () => {
    const used = {
      ...specified({ gapRules: { serviceLimit: '1.2 mm' } }),
      plug: { ...order.plug, condition: 'used' as const },
    };
    expect(opened(used, INSTRUMENTS)[0].gapWindow).toMatchObject({ lowerLimit: 0.7, upperLimit: 1.2 });
  });

  it('hold a reading against the figures as printed, so that no rounded copy of them decides', () => {
    const simple: Opening = { ...OPENING, decision: { rule: { kind: 'simple' }, grades: false } };
    const inch = opened(specified({ gap: '0.039-0.043 in' }), INSTRUMENTS, simple)[0].gapWindow;
    const metric = opened(specified({ gap: '1.0-1.1 mm' }), INSTRUMENTS, simple)[0].gapWindow;
    if (inch === null || metric === null) throw new Error('no window');
    // A source that prints 0.039-0.043 in (1.0-1.1 mm) rounds by more than a gauge can see.
    expect(judge(1.1, normalSpread(0.01), inch).result).toBe('NotOK');
    expect(judge(1.1, normalSpread(0.01), metric).result).toBe('OK');
    const pounds = opened(specified({ torque: '18-22 lbf·ft' }), INSTRUMENTS, simple)[0].torqueWindow;
    for (const figure of [18, 22])
      expect(judge(newtonMetres(figure, '[ft_i].[lbf_av]'), normalSpread(0.5), pounds).result).toBe('OK');
    expect(judge(29.83, normalSpread(0.5), pounds).result).toBe('NotOK');
  });

  it('need no gauge where the gap is not measured', () => {
    for (const check of ['visual-only', 'not-permitted'] as const)
      expect(opened(specified({ gapRules: { check } }), [WRENCH])[0].gapWindow).toBeNull();
  });

  it('are frozen with the instruments, their certificates, the day, the rule and what was noted', () => {
    const [event] = opened(order, withWrench(certified), { ...OPENING, on: '2026-03-01' });
    expect(event.instruments[0]?.certificate).toEqual(certificate);
    expect(event.basis).toMatchObject({ on: '2026-03-01', decision: OPENING.decision });
    expect(event.basis.notes).toContainEqual({ code: 'threads-dry' });
  });

  it('write down what decides though neither specification nor tool states it', () => {
    const [event] = opened(order, [WRENCH, GAUGE]);
    expect(event.order.specification.gapRules).toBeUndefined();
    expect(event.basis.gap).toEqual({ check: 'gauge', adjustable: true, bendMostMm: 0.2 });
    const own = specified({ gapRules: { adjustable: 'no', bendMost: '0.1 mm' } });
    expect(opened(own, [WRENCH, GAUGE])[0].basis.gap).toMatchObject({ adjustable: false, bendMostMm: 0.1 });
    const linked = workshop().events.filter(({ type }) => type === 'tool-linked');
    expect(linked).toMatchObject([
      {
        tool: 'wrench',
        detection: {
          startNm: 0.08 * 25,
          stepNm: 0.01,
          range: null,
          stream: 'samples',
          silentMs: 2000,
        },
      },
      { tool: 'gauge' },
    ]);
    expect(linked[1]).not.toHaveProperty('detection');
  });
});
