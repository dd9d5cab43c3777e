import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { nobleIsInstalled, nobleNote } from './real-noble.ts';

const program = fileURLToPath(new URL('./fixture/close-and-exit.ts', import.meta.url));

describe.skipIf(!nobleIsInstalled)(`a program with noble over a virtual controller${nobleNote}`, () => {
  it('works in real time, and exits by itself once both are closed', async () => {
    const { stdout, stderr } = await promisify(execFile)(process.execPath, ['--import', 'tsx', program], {
      timeout: 10_000,
    });
    expect(stderr).toBe('');
    expect(stdout).toBe('50 notifications\n');
  });
});
