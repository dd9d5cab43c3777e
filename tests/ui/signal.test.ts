import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { describe, it } from 'vitest';

const PROGRAM = fileURLToPath(new URL('signalled.ts', import.meta.url));
const LEAVE = '\u001b[?1049l';

function program(...args: string[]) {
  const child = spawn(process.execPath, ['--import', 'tsx', PROGRAM, ...args], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const said = { out: '', err: '' };
  child.stdout.on('data', (chunk) => {
    said.out += String(chunk);
  });
  child.stderr.on('data', (chunk) => {
    said.err += String(chunk);
  });
  return { child, said };
}

describe('a program with the live screen', () => {
  it.concurrent('comes to its own end after SIGTERM, the terminal given back', async ({ expect }) => {
    const { child, said } = program();
    await once(child.stdout, 'data');
    child.kill('SIGTERM');
    const [code, signal] = await once(child, 'close');
    expect({ code, signal }).toEqual({ code: 0, signal: null });
    expect(said.err).not.toContain('Error');
    const text: unknown = JSON.parse(said.out.replace('ready\n', ''));
    expect(text).toMatch(/\u001b\[\?1049h[\s\S]*\u001b\[\?1049ljob J-1042/);
  });

  it.concurrent('gives the terminal back before an uncaught error is printed, and still fails with it', async ({
    expect,
  }) => {
    const { child, said } = program('throw');
    const [code] = await once(child, 'close');
    expect(code).toBe(1);
    expect(said.err).toContain('a bug elsewhere');
    expect(JSON.parse(said.out)).toMatch(new RegExp(`${LEAVE.replace(/[[?]/g, '\\$&')}$`));
  });
});
