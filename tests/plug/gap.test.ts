import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Adjusting,
  adjustingOf,
  type GapSoFar,
  gapLimitsOf,
  gapStep,
  wireInterval,
  wiresOf,
} from '../../src/plug/gap.ts';
import type { Plug, Specification } from '../../src/plug/specification.ts';

const plug: Plug = { part: 'X', thread: 'M14x1.25', seat: 'gasket' };
const spec = (
  gapRules: Specification['gapRules'] = {},
  gap: string | undefined = '0.7-0.8 mm',
): Specification => ({
  torque: '25-30 N·m',
  ...(gap === undefined ? {} : { gap }),
  gapRules,
  threads: 'dry',
  source: { kind: 'plug-box', title: 'box' },
});

describe('the limits of a gap', () => {
  it('are those of the source, and of a used plug go up to the service limit', () => {
    const rules = spec({ serviceLimit: '1.2 mm' });
    expect(gapLimitsOf(rules, plug)).toEqual({ ok: true, value: { lowerMm: 0.7, upperMm: 0.8 } });
    expect(gapLimitsOf(rules, { ...plug, condition: 'used' })).toEqual({
      ok: true,
      value: { lowerMm: 0.7, upperMm: 1.2 },
    });
    expect(gapLimitsOf(spec(), { ...plug, condition: 'used' })).toMatchObject({ value: { upperMm: 0.8 } });
  });

  it('may be missing only where the gap is not measured', () => {
    const without = (check: 'gauge' | 'wire' | 'visual-only' | 'not-permitted'): Specification => {
      const { gap: _gap, ...rest } = spec({ check });
      return rest;
    };
    for (const check of ['visual-only', 'not-permitted'] as const)
      expect(gapLimitsOf(without(check), plug)).toEqual({ ok: true, value: null });
    for (const check of ['gauge', 'wire'] as const)
      expect(gapLimitsOf(without(check), plug)).toMatchObject({
        ok: false,
        error: { code: 'gap-missing', where: 'specification.gap' },
      });
  });

  it.each<[string, Specification, string]>([
    ['a gap in N·m', spec({}, '0.7-0.8 N·m'), 'specification.gap'],
    ['a service limit in N·m', spec({ serviceLimit: '1.2 N·m' }), 'specification.gapRules.serviceLimit'],
    [
      'a service limit below the gap',
      spec({ serviceLimit: '0.75 mm' }),
      'specification.gapRules.serviceLimit',
    ],
  ])('are refused for %s, with the field', (_what, wrong, field) => {
    expect(gapLimitsOf(wrong, plug)).toMatchObject({
      ok: false,
      error: { where: expect.stringContaining(field) },
    });
  });
});

describe('adjusting', () => {
  const allowed = (rules: Specification['gapRules'], of: Partial<Plug> = {}) => {
    const out = adjustingOf(spec(rules), { ...plug, ...of });
    return out.ok ? out.value.barred === null : null;
  };

  it('is for nickel tips and one ground electrode, unless the specification says otherwise', () => {
    expect(allowed({})).toBe(true);
    expect(allowed({}, { tip: 'iridium' })).toBe(false);
    expect(allowed({}, { tip: 'platinum' })).toBe(false);
    expect(allowed({}, { groundElectrodes: 3 })).toBe(false);
    expect(allowed({ adjustable: 'yes' }, { tip: 'iridium' })).toBe(true);
    expect(allowed({ adjustable: 'no' })).toBe(false);
  });

  it('may be for new plugs only', () => {
    expect(allowed({ adjustable: 'new-only' })).toBe(true);
    expect(allowed({ adjustable: 'new-only' }, { condition: 'used' })).toBe(false);
  });
});

describe('what readings of one plug ask for', () => {
  const nickel: Adjusting = { barred: null, bendMostMm: 0.2 };
  const precious: Adjusting = { ...nickel, barred: 'tip-not-adjustable' };
  const following = (readings: readonly number[], adjusting = nickel) => {
    const rules = { adjusting, noticeableMm: 0.015, middleMm: 0.75 };
    let soFar: GapSoFar = { last: null, step: null };
    for (const valueMm of readings) {
      const last = { valueMm, proven: valueMm >= 0.71 && valueMm <= 0.79 };
      soFar = { last, step: gapStep(soFar, last, rules) };
    }
    return soFar.step;
  };
  const step = (readings: readonly number[], adjusting = nickel) =>
    following(readings, adjusting)?.do ?? null;

  it.each<[string, readonly number[], Adjusting, string | null]>([
    ['nothing measured', [], nickel, null],
    ['right at once', [0.75], nickel, 'fit'],
    ['a little wide', [0.85], nickel, 'regap'],
    ['bent and right', [0.85, 0.76], nickel, 'fit'],
    ['measured twice, the same within the gauge', [0.8, 0.79], precious, 'replace'],
    ['measured twice, right both times', [0.75, 0.76], precious, 'fit'],
    ['too wide to be bent back', [0.99], nickel, 'replace'],
    ['bent there and back beyond the limit', [0.9, 0.7, 0.78], nickel, 'replace'],
    ['a precious tip out of range', [0.85], precious, 'replace'],
    ['a precious tip that somebody bent right', [0.76, 0.72], precious, 'replace'],
  ])('%s', (_what, readings, adjusting, wanted) => {
    expect(step(readings, adjusting)).toBe(wanted);
  });

  it('add up what was bent, and leave out what the gauge alone may have changed', () => {
    expect(following([0.8, 0.81, 0.8, 0.76, 0.75])).toEqual({ do: 'fit', bentMm: expect.closeTo(0.04) });
    expect(following([0.75])).toEqual({ do: 'fit', bentMm: 0 });
  });

  it('never takes back that a plug is to be replaced', () => {
    const gap = fc.double({ min: 0.4, max: 1.3, noNaN: true });
    fc.assert(
      fc.property(
        fc.array(gap, { minLength: 1, maxLength: 6 }),
        fc.array(gap, { maxLength: 4 }),
        (before, after) => {
          if (step(before) === 'replace') expect(step([...before, ...after])).toBe('replace');
        },
      ),
    );
  });
});

describe('go/no-go wires', () => {
  const wires = { go: '0.72 mm', noGo: '0.78 mm', within: '0.003 mm' };

  it('tell an interval', () => {
    const read = wiresOf(spec({ check: 'wire', wires }));
    if (!read.ok) throw new Error(read.error.message);
    expect(read.value).toEqual({ goMm: 0.72, noGoMm: 0.78, withinMm: 0.003 });
    expect(wireInterval('fits', read.value)).toEqual({ lower: 0.72, upper: 0.78 });
    expect(wireInterval('tight', read.value)).toEqual({ lower: null, upper: 0.72 });
    expect(wireInterval('wide', read.value)).toEqual({ lower: 0.78, upper: null });
  });

  it.each<[string, Specification['gapRules'], string]>([
    ['none are named', { check: 'wire' }, 'wires-missing'],
    ['they are the wrong way round', { wires: { ...wires, go: '0.8 mm' } }, 'range-reversed'],
    ['one is in N·m', { wires: { ...wires, go: '0.72 N·m' } }, 'unit-of-another-quantity'],
  ])('are refused when %s', (_what, rules, code) => {
    expect(wiresOf(spec(rules))).toMatchObject({ ok: false, error: { code } });
  });
});
