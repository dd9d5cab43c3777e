import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notesOn, tableView } from '../../src/plug/plausibility.ts';
import { outranked } from '../../src/plug/precedence.ts';
import type { Fit, Plug, Source, Specification } from '../../src/plug/specification.ts';
import { type Tightening, tighteningOf } from '../../src/plug/tightening.ts';
import { compareTorque } from '../../src/quantity/compare.ts';
import { parseTorqueRange } from '../../src/quantity/range.ts';

const source = (kind: Source['kind']): Source => ({ kind, title: 'sheet' });
const spec = (change: Partial<Specification> = {}): Specification => ({
  torque: '25-30 N·m',
  gap: '0.7-0.8 mm',
  threads: 'dry',
  source: source('engine-maker'),
  ...change,
});
const plug: Plug = { part: 'X', thread: 'M14x1.25', seat: 'gasket' };
const fit: Fit = { thread: 'M14x1.25', seat: 'gasket', head: 'aluminium' };

function torque(specification: Specification): Extract<Tightening, { kind: 'torque' }> {
  const out = tighteningOf(specification);
  if (!out.ok) throw new Error(out.error.message);
  if (out.value.kind !== 'torque') throw new Error('an angle');
  return out.value;
}
const limits = (specification: Specification) => torque(specification).limits;

describe('a specification', () => {
  it('is a range, or one figure with a tolerance', () => {
    expect(limits(spec())).toEqual({ lowerNm: 25, upperNm: 30 });
    expect(limits(spec({ torque: '25 Nm ±10 %' }))).toEqual({ lowerNm: 22.5, upperNm: 27.5 });
  });

  it('has its limits from the unit as printed, so that a rounded second unit never decides', () => {
    const { upperNm } = limits(spec({ torque: '18-22 lbf·ft' }));
    const printed = parseTorqueRange('18-22 lbf·ft');
    expect(printed.ok && compareTorque(upperNm, printed.value)).toBe('inside');
    expect(printed.ok && compareTorque(29.8, printed.value)).toBe('inside');
    expect(upperNm).toBeGreaterThan(29.8);
  });

  it('may be an angle, in degrees', () => {
    expect(tighteningOf(spec({ torque: '1/2-2/3 turn' }))).toEqual({
      ok: true,
      value: { kind: 'angle', turn: { lowerDeg: 180, upperDeg: 240 } },
    });
    expect(torque(spec({ angle: '90°' })).advised).toEqual({ lowerDeg: 90, upperDeg: 90 });
  });

  it('may be two steps', () => {
    expect(torque(spec({ torque: '15-20 N·m', tightenFirst: '25-30 N·m' }))).toMatchObject({
      first: { lowerNm: 25, upperNm: 30 },
      limits: { lowerNm: 15, upperNm: 20 },
    });
  });

  it.each<[string, Partial<Specification>, string]>([
    ['a torque in mm', { torque: '25-30 mm' }, 'specification.torque'],
    ['a reversed first step', { tightenFirst: '30-25 N·m' }, 'specification.tightenFirst'],
    ['an angle in N·m', { angle: '25 N·m' }, 'specification.angle'],
  ])('with %s is refused with the field', (_what, change, field) => {
    expect(tighteningOf(spec(change))).toMatchObject({
      ok: false,
      error: { where: expect.stringContaining(field) },
    });
  });
});

const codesOn = (specification: Specification, on: Fit = fit) =>
  notesOn(specification, torque(specification), plug, on).map(({ code }) => code);

describe('lubricated threads', () => {
  const reduction = { percent: 30, lubricant: 'anti-seize', setBy: 'A. Foreman' } as const;

  it('lower the figure only by a stated rule of the shop, which is named with who set it', () => {
    expect(limits(spec({ reduction }))).toEqual({ lowerNm: 17.5, upperNm: 21 });
    const notes = notesOn(spec({ reduction }), torque(spec({ reduction })), plug, fit);
    expect(JSON.stringify(notes)).not.toContain('A. Foreman');
    expect(notes).toContainEqual({ code: 'torque-reduced', percent: 30, lubricant: 'anti-seize' });
    expect(notes).toContainEqual(
      expect.objectContaining({ code: 'reduction-by-friction', frictionDry: 0.15, frictionLubricated: 0.1 }),
    );
  });

  it.each(['oiled', 'anti-seize', 'factory-coated'] as const)(
    'never lower a figure that assumes %s threads already',
    (threads) => {
      expect(tighteningOf(spec({ threads, reduction }))).toMatchObject({
        ok: false,
        error: { code: 'reduced-twice', where: 'specification.reduction' },
      });
      expect(limits(spec({ threads }))).toEqual({ lowerNm: 25, upperNm: 30 });
    },
  );

  it('are not assumed by a figure for dry ones, and the notes say so', () => {
    expect(codesOn(spec())).toContain('threads-dry');
  });
});

describe('sources', () => {
  const kinds: readonly Source['kind'][] = ['engine-maker', 'plug-box', 'general-table'];

  it('go engine maker, plug box, general table, and the better one is never set aside', () => {
    for (const [rank, kind] of kinds.entries())
      for (const [otherRank, other] of kinds.entries()) {
        const also = [{ torque: '20-25 N·m', threads: 'dry' as const, source: source(other) }];
        const problem = outranked(spec({ source: source(kind), also }));
        if (otherRank < rank)
          expect(problem).toMatchObject({
            code: 'source-outranked',
            where: 'specification.also[0].source.kind',
          });
        else expect(problem).toBeNull();
      }
  });

  it('that were set aside are shown', () => {
    const also = [{ torque: '20-25 N·m', threads: 'dry' as const, source: source('plug-box') }];
    expect(notesOn(spec({ also }), torque(spec()), plug, fit)).toContainEqual({
      code: 'source-set-aside',
      source: 'plug-box',
      title: 'sheet',
      torque: '20-25 N·m',
      threads: 'dry',
    });
  });

  it('that are a general table are labelled as one', () => {
    expect(codesOn(spec({ source: source('general-table') }))).toContain('general-table-used');
  });
});

describe('a typed figure held against general tables', () => {
  it('beyond all of them by less is noted: a better source goes before tables', () => {
    const typed = spec({ torque: '15-19 N·m' });
    expect(notesOn(typed, torque(typed), plug, fit)).toContainEqual({
      code: 'outside-general-tables',
      lowestNm: expect.closeTo(20, 1),
      highestNm: expect.closeTo(30, 1),
      seat: 'gasket',
      head: 'aluminium',
    });
    expect(codesOn(spec())).not.toContain('outside-general-tables');
  });

  it('is read in the unit of the table: 18.0 lbf·ft lies within 18.0-25.3 lbf·ft', () => {
    const cast = { ...fit, head: 'cast-iron' } as const;
    const typed = spec({ torque: '18.0-25.3 lbf·ft' });
    expect(codesOn(typed, cast)).not.toContain('outside-general-tables');
  });

  it('is inside the hull wherever it is inside a table', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Fit['thread']>('M8x1', 'M10x1', 'M12x1.25', 'M14x1.25', 'M18x1.5'),
        fc.constantFrom<Fit['seat']>('gasket', 'conical'),
        fc.constantFrom<Fit['head']>('aluminium', 'cast-iron'),
        (thread, seat, head) => {
          const table = tableView({ thread, seat, head });
          for (const row of table?.rows ?? []) {
            expect(row.lower).toBeLessThanOrEqual(row.upper);
            expect(compareTorque(table?.lowestNm ?? 0, row)).not.toBe('high');
            expect(compareTorque(table?.highestNm ?? 0, row)).not.toBe('low');
          }
        },
      ),
    );
  });
});
