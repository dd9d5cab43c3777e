/** A key means one thing on all screens, and one that no screen shows does nothing. */
import { describe, expect, it } from 'vitest';
import type { JobState } from '../../src/job/state.ts';
import { newInputState, pressed } from '../../src/ui/input-state.ts';
import { KEY } from '../../src/ui/key-table.ts';
import { helpKeys } from './help-keys.ts';
import { ROUTINE_JOBS, VIEWS } from './views.ts';

const JOBS: Readonly<Record<string, JobState>> = {
  ...Object.fromEntries(Object.entries(VIEWS).map(([name, { job }]) => [name, job])),
  ...ROUTINE_JOBS,
};
const PRINTED = [...'abcdefghijklmnopqrstuvwxyz0123456789.,-+/* '];

describe('the keys', () => {
  it('each have one meaning', () => {
    expect(new Set(Object.values(KEY)).size).toBe(Object.values(KEY).length);
  });

  it.each(Object.keys(JOBS))('that do something on the screen %s are shown in its help', (name) => {
    const job = JOBS[name] ?? expect.fail('no job');
    const shown = helpKeys(job);
    const taken = PRINTED.filter((key) => pressed(newInputState(), { key, shownMs: 5000 }, job, false).taken);
    const hidden = taken.filter((key) => !shown.has(key));
    expect(hidden).toEqual([]);
  });

  it.each(Object.keys(JOBS))('in the help of the screen %s are those of the table', (name) => {
    const table = new Set<string>(Object.values(KEY));
    const strange = [...helpKeys(JOBS[name] ?? expect.fail('no job'))].filter(
      (key) => !table.has(key) && !/^[1-9]$/.test(key),
    );
    expect(strange).toEqual([]);
  });
});
