/** What each role may ask an archive for. Written out, so that a change of the table is a change of this. */
import { describe, expect, it } from 'vitest';
import { type Asked, type Asker, mayAsk, type Role } from '../../src/archive/roles.ts';

const ALL: readonly Asked[] = ['records', 'bodies', 'live', 'package', 'assessments', 'holds', 'reads'];
const ASKERS: Readonly<Record<Role, Asker>> = {
  station: { tenant: 'north', role: 'station', who: 'Bay 1', shops: ['bay-1'] },
  foreman: { tenant: 'north', role: 'foreman', who: 'F. Oreman', shops: ['bay-1', 'bay-2'] },
  auditor: { tenant: 'north', role: 'auditor', who: 'A. Uditor' },
  adjuster: { tenant: 'north', role: 'adjuster', who: 'A. Djuster', share: 'share-1' },
  operator: { tenant: 'north', role: 'operator', who: 'O. Perator' },
};
const allowed = (role: Role, of: { tenant: string; log: string | null; share?: string }) =>
  ALL.filter((asked) => mayAsk(ASKERS[role], { asked, ...of }));

describe('in its own tenant', () => {
  const ALL: readonly Asked[] = ['records', 'live', 'package', 'assessments', 'holds', 'reads'];
  const BODIES: readonly Asked[] = ['records', 'bodies', 'holds', 'reads'];
  it.each<[Role, readonly Asked[], readonly Asked[], readonly Asked[]]>([
    ['station', ['records', 'bodies', 'package'], [], []],
    ['foreman', ['records', 'live', 'package', 'assessments'], [], []],
    ['auditor', ALL, ALL, ALL],
    ['adjuster', [], [], []],
    ['operator', BODIES, BODIES, BODIES],
  ])('%s: of its log, of a log of another shop, of all', (role, ofOwn, ofOther, ofAll) => {
    expect(allowed(role, { tenant: 'north', log: 'bay-1' })).toEqual(ofOwn);
    expect(allowed(role, { tenant: 'north', log: 'bay-9' })).toEqual(ofOther);
    expect(allowed(role, { tenant: 'north', log: null })).toEqual(ofAll);
  });

  it('a station sees no other bay of its shop, and a foreman each of them', () => {
    expect(allowed('station', { tenant: 'north', log: 'bay-2' })).toEqual([]);
    expect(allowed('foreman', { tenant: 'north', log: 'bay-2' })).toContain('records');
  });

  it('an adjuster sees the one package that was shared, and no other', () => {
    expect(allowed('adjuster', { tenant: 'north', log: 'bay-1', share: 'share-1' })).toEqual(['package']);
    expect(allowed('adjuster', { tenant: 'north', log: 'bay-1', share: 'share-2' })).toEqual([]);
    const without: Asker = { tenant: 'north', role: 'adjuster', who: 'nobody' };
    expect(mayAsk(without, { asked: 'package', tenant: 'north', log: 'bay-1' })).toBe(false);
  });

  it('a foreman without shops sees nothing', () => {
    const without: Asker = { tenant: 'north', role: 'foreman', who: 'F. Oreman' };
    for (const log of ['bay-1', null])
      expect(ALL.filter((asked) => mayAsk(without, { asked, tenant: 'north', log }))).toEqual([]);
  });
});

it('nobody sees anything of another tenant, whatever its logs and shares are called', () => {
  for (const role of ['station', 'foreman', 'auditor', 'adjuster', 'operator'] as const)
    for (const log of ['bay-1', null])
      expect(allowed(role, { tenant: 'south', log, share: 'share-1' })).toEqual([]);
});
