import { existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { openStationLog } from '../../../db/log.ts';
import { example, exampleJson, folder, start } from '../program.ts';

it('a job whose log is deleted says no more OK, ends loudly, and leaves all readings where they can be found', async () => {
  const dir = folder();
  const file = exampleJson('station.json');
  const tools = file.tools.map((tool: { id: string }) => ({
    ...tool,
    driver: { use: 'typed', unit: tool.id === 'gauge' ? 'mm' : 'N·m' },
  }));
  const station = join(dir, 'station.json');
  writeFileSync(station, JSON.stringify({ ...file, routine: 'none', tools, data: 'data' }));
  const job = start(['job', '--order', example('order-4.json'), '--station', station, '--plain']);
  await job.says('gauge  linked');
  job.type('0.75 mm');
  await job.says('cylinder 1  gap  OK');
  rmSync(join(dir, 'data'), { recursive: true });
  job.type('0.76 mm');
  const { code, stdout, stderr } = await job.ended;
  expect(stdout.match(/gap {2}OK/g)).toHaveLength(1);
  expect(stdout).not.toContain('readings are kept');
  expect(code).toBe(2);
  const saved = join(dir, 'station.saved.db');
  expect(stderr).toContain('deleted, moved or replaced');
  expect(stderr).toContain(saved);
  expect(existsSync(join(dir, 'data'))).toBe(false);
  expect(readdirSync(dir).sort()).toEqual(['station.json', 'station.saved.db']);
  const log = await openStationLog(saved);
  try {
    expect(log.check()).toBeNull();
    // The second figure was measured when the log was gone: it was never shown, and is kept all the same.
    const kept = log.entries('job:EX-4001').flatMap(({ event }) => {
      if (event.type === 'gap-measured') return [`gap ${event.cylinder}`];
      return event.type === 'raw-value' ? [Buffer.from(event.hex, 'hex').toString('utf8')] : [];
    });
    expect(kept).toEqual(['gap 1', 'gap 2']);
  } finally {
    log.close();
  }
}, 30_000);
