import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { deviceAt } from '../../../drivers/serial/device.ts';
import { described } from '../../../drivers/serial/language.ts';
import { openSerial } from '../../../drivers/serial/open.ts';
import type { OpenPort } from '../../../drivers/serial/port.ts';
import { serialTool } from '../../../drivers/serial/tool.ts';
import { virtualScheduler } from '../../../sim/scheduler.ts';
import type { LinkEnd, LinkState } from '../../../src/reading.ts';
import { ok } from '../../../src/result.ts';
import { textProfile } from '../profile/example.ts';

// A serial port is what it is, and not what its name says.

const folder = mkdtempSync(join(tmpdir(), 'serial-device-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A device node of these numbers, on a system that has one USB gauge as 188:0. */
function look(major: number, minor: number, isCharacterDevice = true) {
  const rdev = (major << 8) | (minor & 0xff) | ((minor & 0xfff00) << 12);
  return { look: () => Promise.resolve({ rdev, isCharacterDevice: () => isCharacterDevice }), sys: folder };
}
const usb = join(folder, 'devices', 'usb1', '1-4');
mkdirSync(join(usb, '1-4:1.0', 'ttyUSB0'), { recursive: true });
for (const [name, text] of [
  ['idVendor', '0403'],
  ['idProduct', '6001'],
  ['serial', 'INVENTED1'],
] as const)
  writeFileSync(join(usb, name), `${text}\n`);
mkdirSync(join(folder, 'dev', 'char', '188:0'), { recursive: true });
symlinkSync(join(usb, '1-4:1.0', 'ttyUSB0'), join(folder, 'dev', 'char', '188:0', 'device'));

describe('what is behind the name of a port', () => {
  test('a USB gauge is known by its numbers', async () => {
    expect(await deviceAt('/dev/ttyUSB0', 'linux', look(188, 0))).toEqual({
      kind: 'port',
      identity: '0403:6001:INVENTED1',
    });
  });

  test('a port of the board has no such numbers', async () => {
    expect(await deviceAt('/dev/ttyS0', 'linux', look(4, 64))).toEqual({ kind: 'port' });
  });

  test.each([
    [136, 5],
    [143, 255],
    [3, 1],
  ])('a node with the numbers %i:%i is a pseudo-terminal, whatever its name', async (major, minor) => {
    expect(await deviceAt('/dev/ttyUSB0', 'linux', look(major, minor))).toEqual({ kind: 'pseudo-terminal' });
  });

  test('a plain file, a folder and a pipe are none', async () => {
    expect(await deviceAt('/dev/ttyUSB0', 'linux', look(188, 0, false))).toEqual({ kind: 'none' });
    const file = join(folder, 'ttyUSB0');
    writeFileSync(file, '');
    const opened = await openSerial(file, { baud: 9600, dataBits: 8, parity: 'none', stopBits: 1 });
    expect(opened).toMatchObject({ ok: false, error: { code: 'port-failed', where: file } });
    expect(opened.ok ? '' : opened.error.message).toMatch(/no serial port/);
  });
});

test('another device in the place of the first one is not the tool; the first one is, once it is back', async () => {
  const scheduler = virtualScheduler();
  const links: LinkState[] = [];
  let plugged = 'first';
  let pull = () => {};
  const open = () => {
    let end: (end: LinkEnd) => void = () => {};
    const down = new Promise<LinkEnd>((resolve) => {
      end = resolve;
    });
    pull = () => end({ reason: 'port-gone' });
    const port: OpenPort = {
      simulated: plugged === 'pseudo-terminal',
      ...(plugged !== 'pseudo-terminal' && { identity: plugged }),
      down,
      listen: () => {},
      write: () => Promise.resolve(ok(undefined)),
      close: () => {
        end({ reason: 'ended-by-station' });
        return Promise.resolve();
      },
    };
    return Promise.resolve(ok(port));
  };
  const tool = serialTool({
    id: 'gauge',
    language: described(textProfile()),
    port: '/dev/ttyUSB0',
    clock: scheduler,
    after: (us, run) => scheduler.after(us, run),
    open,
    random: () => 0,
  });
  tool.link$.subscribe((link) => links.push(link));
  await tool.connect();
  for (const other of ['second', 'pseudo-terminal']) {
    plugged = other;
    pull();
    await scheduler.runFor(1_000_000);
    expect(links.at(-1)).toMatchObject({
      state: 'not-joined',
      problem: { code: 'port-other-device', where: '/dev/ttyUSB0' },
    });
    expect(tool.source).toBe('linked');
    plugged = 'first';
    await scheduler.runFor(5_000_000);
    expect(links.at(-1)).toMatchObject({ state: 'linked' });
  }
  const closing = tool.close();
  await scheduler.runFor(1_000_000);
  await closing;
});
