import { describe, expect, it } from 'vitest';
import { called, misnumbered, type Numbering } from '../../src/sequence/plan.ts';

const V8: Numbering = {
  banks: [
    [1, 3, 5, 7],
    [2, 4, 6, 8],
  ],
  serviceOrder: [1, 3, 5, 7, 2, 4, 6, 8],
};
const TWIN: Numbering = {
  banks: [
    [1, 2],
    [3, 4],
  ],
  serviceOrder: [1, 3, 2, 4],
  plugs: [
    { cylinder: 1, plugs: [1, 3] },
    { cylinder: 2, plugs: [2, 4] },
  ],
};

describe('the numbering of an engine', () => {
  it.each<[string, Numbering, string | null]>([
    ['a V8', V8, null],
    ['a V8 with its firing order', { ...V8, firingOrder: [1, 8, 4, 3, 6, 5, 7, 2] }, null],
    ['two plugs a cylinder', { ...TWIN, firingOrder: [1, 2] }, null],
    ['a number twice', { ...V8, banks: [[1, 1]] }, 'banks'],
    ['a service order that leaves one out', { ...V8, serviceOrder: [1, 2, 3] }, 'serviceOrder'],
    ['a firing order that leaves one out', { ...V8, firingOrder: [1, 8, 4, 3, 6, 5, 7] }, 'firingOrder'],
    ['a firing order that starts elsewhere', { ...V8, firingOrder: [8, 1, 4, 3, 6, 5, 7, 2] }, 'firingOrder'],
    ['a firing order of plugs', { ...TWIN, firingOrder: [1, 2, 3, 4] }, 'firingOrder'],
    ['a plug at no cylinder', { ...TWIN, plugs: [{ cylinder: 1, plugs: [1, 3] }] }, 'plugs'],
    [
      'a plug at two cylinders',
      { ...TWIN, plugs: [...(TWIN.plugs ?? []), { cylinder: 3, plugs: [4] }] },
      'plugs',
    ],
    [
      'a cylinder twice',
      { ...TWIN, plugs: [1, 2].map((n) => ({ cylinder: 1, plugs: n === 1 ? [1, 3] : [2, 4] })) },
      'plugs',
    ],
  ])('%s', (_what, engine, field) => {
    expect(misnumbered(engine)?.field ?? null).toBe(field);
  });

  it('calls a plug by its cylinder, and by its number where a cylinder has two', () => {
    expect(called(V8, 5)).toBe('cylinder 5');
    expect(called(TWIN, 4)).toBe('cylinder 2, plug 2 (no. 4)');
  });
});
