import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const BIN = 'dist/src/cli/bin.js';

it('a reader that goes away ends a command without a word', () => {
  const ran = spawnSync('sh', ['-c', `node ${BIN} manual | head -c 10`], { encoding: 'utf8' });
  expect(ran.stdout).toHaveLength(10);
  expect(ran.stderr).toBe('');
});

it.skipIf(!existsSync('/dev/full'))(
  'an output that goes to a full disk ends a command with one sentence',
  () => {
    const ran = spawnSync('sh', ['-c', `node ${BIN} manual > /dev/full`], { encoding: 'utf8' });
    expect(ran.status).toBe(2);
    expect(ran.stderr).toMatch(/^plugmark: the output: the disk is full\n {2}.+\n$/);
  },
);

it('a job whose reader goes away is left open, with all that was read', () => {
  const folder = mkdtempSync(join(tmpdir(), 'plugmark-test-'));
  try {
    const demo = `node ${BIN} demo --fast --direct --cylinders 4 --out ${folder} 2>&1 | head -n 12`;
    expect(spawnSync('sh', ['-c', demo], { encoding: 'utf8' }).stdout).toContain('session 1 started');
    const check = execFileSync('node', [
      '-e',
      `
      const db = new (require('better-sqlite3'))(${JSON.stringify(join(folder, 'station.db'))});
      console.log(db.prepare("SELECT count(*) FROM entries e JOIN streams s ON s.id = e.stream WHERE name LIKE 'job:%'").pluck().get());`,
    ]);
    expect(Number(check.toString())).toBeGreaterThan(3);
  } finally {
    rmSync(folder, { recursive: true });
  }
});
