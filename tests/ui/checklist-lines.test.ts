import { describe, expect, it } from 'vitest';
import type { JobEvent } from '../../src/job/event.ts';
import type { JobState } from '../../src/job/state.ts';
import { lineFor } from '../../src/ui/lines.ts';
import { attemptOf, pullOf } from './fixtures.ts';
import { ROUTINE_JOBS } from './views.ts';

const job: JobState = ROUTINE_JOBS.oldPlugs;
const line = (event: JobEvent, after: JobState = job) => lineFor(event, after, after, '10:00:00');

describe('a plain line', () => {
  it('says what was attested in the words of the routine, and loudly what was not done', () => {
    const said = [
      { item: 'ignition-off', as: 'done' },
      { item: 'boots', as: 'not-done', why: 'no boots' },
    ];
    expect(line({ type: 'steps-attested', phase: 'before-removal', steps: said })).toBe(
      '10:00:00  confirmed  Ignition off, key away  NOT done: Boots or coils twisted loose by half a turn, pulled at the boot, never by the wire, and marked (no boots)',
    );
  });

  it('says how old plugs look, what is broken, and which is unlike the others', () => {
    expect(
      line({
        type: 'old-plugs-read',
        cylinders: [5],
        condition: 'overheated',
        damage: ['bent-electrode'],
        thread: 'dirty',
        note: 'see photo',
      }),
    ).toMatch(
      /cylinder 5 {2}old plug {2}overheated {2}electrode bent {2}thread dirty {2}see photo {2}Cylinder 5 differs/,
    );
  });

  it('says what the tools found on old plugs', () => {
    const found = {
      type: 'old-gap-measured',
      source: 'linked',
      tool: 'gauge',
      reading: 1,
      atUs: 0,
      cylinder: 3,
      gapMm: 0.94,
    } as const;
    expect(line(found)).toBe('10:00:00  cylinder 3  old plug, gap 0.940 mm');
    const loosened = attemptOf(4, null, { kind: 'loosening', pull: pullOf(4, -22.4) });
    expect(line({ type: 'removal-felt', cylinder: 3, pull: 4 }, { ...job, strays: [loosened] })).toContain(
      'loosened by pull 4, 22.40 N·m',
    );
  });

  it('says of new plugs part, lot and whether they agree', () => {
    const check = {
      type: 'new-plugs-checked',
      cylinders: [1, 3],
      part: 'EX-1234',
      lot: null,
      differs: [],
    } as const;
    expect(line({ ...check, cylinders: [1, 3], differs: [] })).toBe(
      '10:00:00  cylinders 1, 3  new plug EX-1234  no lot  agrees with the order',
    );
    expect(line({ ...check, cylinders: [1], lot: 'L-7', differs: ['reach'] })).toContain(
      'lot L-7  DIFFERS in reach',
    );
  });

  it('never calls proven what somebody answered for', () => {
    const angle = line({ type: 'fitted-by-angle', cylinder: 2, turn: '1/2 turn', why: 'no room' });
    expect(angle).toContain('fitted by angle, 1/2 turn: not proven by torque  no room');
    const stays = line({
      type: 'pull-accepted',
      pull: 5,
      cylinder: 2,
      by: 'Foreman\u001b[2J One',
      reason: 'looked at',
    });
    expect(stays).toContain('pull 5 stays over the window, answered for by Foreman[2J One: looked at');
  });
});
