import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { parseCapture } from '../../../drivers/replay/capture.ts';
import { busiest } from '../../../sim/serve/captured.ts';
import { good } from '../../drivers/bench.ts';
import { Line, NO_LINE } from '../../drivers/serial/lines.ts';
import { typed } from '../answers.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'record-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

it.skipIf(NO_LINE !== null)('what comes at a serial port is recorded byte by byte', async () => {
  const line = new Line();
  await line.plug();
  const sending = setInterval(() => line.say('T+025.34Nm\r\n'), 50);
  const recorded = await typed(
    ['devices', 'record', line.port, '--baud', '9600', '--seconds', '1', '--out', 'x.capture.jsonl'],
    { cwd: folder },
  );
  clearInterval(sending);
  await line.end();
  expect(recorded.code, recorded.stderr).toBe(0);
  const capture = good(parseCapture(readFileSync(join(folder, 'x.capture.jsonl'), 'utf8'), 'x'));
  expect(busiest(capture)).toBeNull();
  const text = Buffer.concat(capture.packets.map(({ hex }) => Buffer.from(hex, 'hex'))).toString();
  expect(text).toContain('T+025.34Nm\r\n');
});

it('a recording of a device that is not there leaves no file in the way', async () => {
  const failed = await typed(['devices', 'record', join(folder, 'none'), '--out', 'x.capture.jsonl'], {
    cwd: folder,
  });
  expect(failed.stderr).toMatch(/there is no serial port/);
  expect(existsSync(join(folder, 'x.capture.jsonl'))).toBe(false);
});
