import { describe, expect, it } from 'vitest';
import type { JobState, OldPlug } from '../../src/job/state.ts';
import { conditionSchema, damageSchema } from '../../src/plug/condition.ts';
import type { Advice } from '../../src/pull/coaching.ts';
import { CONDITIONS, DAMAGE, stainText } from '../../src/report/words/condition.ts';
import { adviceText } from '../../src/ui/advice-words.ts';
import { outlier } from '../../src/ui/panels/outlier.ts';
import { linesOf } from './drawn.tsx';
import { jobWith, viewOf } from './fixtures.ts';
import { ROUTINE_JOBS } from './views.ts';

const plug = (read: Partial<NonNullable<OldPlug['read']>>, gapMm: number | null = null): OldPlug => ({
  read: { condition: 'normal', damage: [], thread: 'sound', ...read },
  gap: gapMm === null ? null : { gapMm, source: 'linked' },
  removal: null,
});

const withPlugs = (plugs: readonly OldPlug[]): JobState =>
  jobWith(0, { oldPlugs: Object.fromEntries(plugs.map((one, i) => [[1, 3, 5, 7][i], one])) });

describe('the cylinder that is unlike the others', () => {
  it('is named when one looks different and the rest alike', () => {
    expect(outlier(withPlugs([plug({}), plug({ condition: 'oily' }), plug({})]))).toBe(
      'Cylinder 3 differs from the others: wet with oil. The others: normal.',
    );
    const worn = { condition: 'worn' } as const;
    expect(outlier(withPlugs([plug(worn), plug(worn), plug({}), plug(worn)]))).toContain('Cylinder 5');
    expect(outlier(withPlugs([plug({}), plug({}), plug({ damage: ['loose-centre'] })]))).toContain(
      'centre electrode',
    );
  });

  it('is none where all are alike, where two differ, or where too few were seen', () => {
    expect(outlier(withPlugs([plug({}), plug({}), plug({})]))).toBeNull();
    expect(
      outlier(withPlugs([plug({}), plug({ condition: 'ash' }), plug({ condition: 'worn' }), plug({})])),
    ).toBeNull();
    const oily = { condition: 'oily' } as const;
    expect(outlier(withPlugs([plug({}), plug(oily), plug(oily), plug({})]))).toBeNull();
    expect(outlier(withPlugs([plug({}), plug(oily)]))).toBeNull();
  });

  it('is found by its gap too', () => {
    const gaps = [0.9, 0.92, 1.3, 0.91].map((gapMm) => plug({}, gapMm));
    expect(outlier(withPlugs(gaps))).toBe(
      'Cylinder 5 differs from the others: gap 1.30 mm. The others: about 0.92 mm.',
    );
    expect(outlier(withPlugs([0.9, 0.95, 1.0].map((gapMm) => plug({}, gapMm))))).toBeNull();
  });
});

describe('the panel of the old plugs', () => {
  it('says of every condition how it looks and where it comes from', () => {
    for (const condition of conditionSchema.options) {
      const { looks, causes } = CONDITIONS[condition];
      expect(looks.length, condition).toBeGreaterThan(10);
      expect(causes.length, condition).toBeGreaterThan(10);
    }
    const words = damageSchema.options.map((damage) => DAMAGE[damage].words);
    expect(new Set(words).size).toBe(damageSchema.options.length);
  });

  it('says that a stain above the shell is normal, until there is something to point out', () => {
    const plain = linesOf(viewOf({ ...ROUTINE_JOBS.oldPlugs, oldPlugs: {}, oldPlugTarget: 1 })).join('\n');
    expect(plain).toContain(stainText());
    const odd = linesOf(viewOf(ROUTINE_JOBS.oldPlugs)).join('\n');
    expect(odd).not.toContain(stainText());
    expect(odd).toContain('Cylinder 5 differs from the others');
  });
});

describe('advice on a pull', () => {
  const KINDS: readonly Advice['kind'][] = [
    'too-fast-ms',
    'follow-through-percent',
    'fell-back-percent',
    'early-torque',
    'early-torque-deg',
    'turned-too-little-deg',
    'turned-too-far-deg',
    'zero-not-settled-nm',
    'end-of-scale-nm',
    'click-not-visible-ms',
  ];

  it.each(KINDS)('%s is one calm sentence that fits a line', (kind) => {
    const text = adviceText({ kind, figure: 123.4, limit: 100 });
    expect(text).toMatch(/^[A-Z].*[.?]$/);
    expect(text.length).toBeLessThanOrEqual(78);
    expect(text).not.toMatch(/!|OK/);
  });
});
