import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { showCapability } from '../../../src/cli/audit/capability.ts';
import { groupFolders } from '../../../src/cli/audit/capability-files.ts';
import { showDelivered } from '../../../src/cli/audit/delivered.ts';
import { main } from '../../../src/cli/main.ts';
import { EXIT } from '../../../src/cli/terminal/exit.ts';
import { problemOf, said } from '../answers.ts';
import { auditStation } from './audit-station.ts';

const station = auditStation();
const shown = (given: Partial<Parameters<typeof showCapability>[0]>) =>
  said(() => showCapability({ ...station.scope(), per: 'specification', last: 40, ...given }));

describe('what is written of several groups', () => {
  it('is one set for each, in a folder named after it', async () => {
    const out = join(station.data, 'process');
    const { value, text } = await shown({ per: 'technician', out });
    expect(value).toBe(EXIT.done);
    const [one = '', two = '', ...more] = readdirSync(out).sort();
    expect([one, two, more]).toEqual([
      expect.stringMatching(/^[0-9a-f]{16}-technician-one$/),
      expect.stringMatching(/^[0-9a-f]{16}-technician-two$/),
      [],
    ]);
    for (const name of [one, two]) {
      expect(readdirSync(join(out, name))).toContain('capability.pdf');
      expect(text).toContain(`Written into ${join(out, name)}: capability.pdf, `);
    }
  });

  it('leaves a single group without a folder of its own', async () => {
    const out = join(station.data, 'process');
    await shown({ out });
    expect(readdirSync(out)).toContain('capability.pdf');
  });

  it('has names that no other group has and that lead nowhere else', () => {
    const of = (member: string, mark: 'simulated' | null = null) => ({
      specificationKey: 'd6e8',
      member,
      mark,
    });
    expect(
      groupFolders([
        of('../../Ö/x'),
        of('o x'),
        of('O X', 'simulated'),
        of(''),
        of('漢'),
        of('y'.repeat(200)),
      ]),
    ).toEqual(['d6e8-o-x', 'd6e8-o-x-2', 'd6e8-o-x-simulated', 'd6e8', 'd6e8-2', `d6e8-${'y'.repeat(75)}`]);
  });
});

describe('a question to which nothing applies', () => {
  it('has an answer, and no fault', async () => {
    expect(await shown({ technician: 'Nobody' })).toEqual({
      value: EXIT.done,
      text: 'No attempt matches.\n',
    });
    const delivered = await said(() => showDelivered({ ...station.scope(), lot: 'L-9' }));
    expect(delivered).toEqual({ value: EXIT.done, text: 'No gap of a new plug matches.\n' });
  });

  it('has nothing to write, and makes no folder', async () => {
    const out = join(station.data, 'process');
    expect(await problemOf(() => shown({ technician: 'Nobody', out }))).toMatchObject({ where: '--out' });
    expect(existsSync(out)).toBe(false);
  });

  it('says which specifications there are where the key is of none', async () => {
    const problem = await problemOf(() => shown({ specification: 'zz' }));
    expect(problem).toMatchObject({ code: 'specification-unknown', where: '--specification' });
    expect(problem.next).toMatch(/^There are: [0-9a-f]{16}/);
    const [key = ''] = /[0-9a-f]{16}/.exec(problem.next) ?? [];
    expect((await shown({ specification: key.slice(0, 4).toUpperCase() })).text).toContain(
      'Process: first attempts',
    );
    expect((await shown({ specification: key, lot: 'L-9' })).text).toBe('No attempt matches.\n');
  });
});

it('charts say how their readings are named, and show one at least', async () => {
  expect((await shown({})).text).toContain(
    'A reading is named by its day and cylinder: 26-02-03/1 is cylinder 1 on 2026-02-03.',
  );
  const errors = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  try {
    for (const command of [['capability'], ['drift', 'wrench']])
      expect(await main(['node', 'plugmark', ...command, '--data', station.data, '--last', '0'])).toBe(
        EXIT.badInput,
      );
    expect(errors.mock.calls.join('')).toContain('expected 1 or more');
  } finally {
    errors.mockRestore();
  }
});
