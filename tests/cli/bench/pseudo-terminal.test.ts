import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { pseudoTerminal } from '../../../src/cli/bench/pseudo-terminal.ts';
import { ProblemError } from '../../../src/problem.ts';

const folder = mkdtempSync(join(tmpdir(), 'pseudo-terminal-'));
afterAll(() => rmSync(folder, { recursive: true }));

test.each([
  ['a command of its own', (owned: string) => `!!SYSTEM:touch ${owned},pty`],
  ['an option', (owned: string) => `,link=${owned}`],
  ['a quoted part', (owned: string) => `",link=${owned}"`],
])('the name of a port in a scenario of a stranger is no %s', async (_, more) => {
  const owned = join(folder, 'owned');
  const path = `${join(folder, 'wrench')}${more(owned)}`;
  const terminal = pseudoTerminal(path);
  const fault: unknown = await terminal.plug().catch((cause: unknown) => cause);
  expect(fault).toBeInstanceOf(ProblemError);
  expect((fault as ProblemError).problem).toMatchObject({
    code: 'port-failed',
    message: 'this is no plain name for a pseudo-terminal',
  });
  terminal.close();
  expect(existsSync(owned)).toBe(false);
});
