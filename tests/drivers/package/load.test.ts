import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Arrival } from '../../../drivers/bluetooth/counter.ts';
import { openTools, type ToolEntry } from '../../../drivers/index.ts';
import { loadDriver } from '../../../drivers/package/load.ts';
import { GuardedSession } from '../../../drivers/package/session.ts';
import type { Reading } from '../../../src/reading.ts';
import { Line, NO_LINE, until } from '../serial/lines.ts';

const EXAMPLE = fileURLToPath(new URL('../../../sim/example/plugmark-driver-example', import.meta.url));
const NAME = 'plugmark-driver-example';

let base: string;
beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), 'plugmark-driver-'));
});
afterEach(() => rmSync(base, { recursive: true }));

/** Installs the example, or what is made of it, in a folder. */
function install(folder = base, change: (folder: string) => void = () => {}): string {
  const to = join(folder, 'node_modules', NAME);
  mkdirSync(to, { recursive: true });
  cpSync(EXAMPLE, to, { recursive: true });
  change(to);
  return to;
}
const manifest = (folder: string, change: Record<string, unknown>) => {
  const file = join(folder, 'package.json');
  writeFileSync(file, JSON.stringify({ ...JSON.parse(readFileSync(file, 'utf8')), ...change }));
};
const problem = (name = NAME) =>
  loadDriver(name, base).then(
    () => null,
    (error: unknown) => Object(error).problem,
  );

describe('a driver of somebody else', () => {
  it('is loaded by its name, from beside the station file or above it, and named with version and digest', async () => {
    install();
    const bay = join(base, 'bay');
    mkdirSync(bay);
    const { purl } = await loadDriver(NAME, bay);
    expect(purl).toMatch(/^pkg:npm\/plugmark-driver-example@1\.0\.0\?checksum=sha256:[0-9a-f]{64}$/);
  });

  it('has another digest once any of its files is another', async () => {
    const folder = install();
    const before = await loadDriver(NAME, base);
    writeFileSync(join(folder, 'NOTE'), 'x');
    const after = await loadDriver(NAME, base);
    expect(after.purl).not.toBe(before.purl);
  });

  it('is refused where it is not installed', async () => {
    expect(await problem()).toMatchObject({ code: 'driver-missing', where: NAME });
  });

  it.each<[string, (folder: string) => void, string]>([
    ['another name', (folder) => manifest(folder, { name: 'left-pad' }), 'plugmark-driver-'],
    ['no file', (folder) => manifest(folder, { 'plugmark-driver': undefined }), ''],
    ['a file above it', (folder) => manifest(folder, { 'plugmark-driver': '../x.js' }), ''],
    [
      'a link that leads out of it',
      (folder) => {
        writeFileSync(join(base, 'out.js'), 'export default {}');
        symlinkSync(join(base, 'out.js'), join(folder, 'in.js'));
        manifest(folder, { 'plugmark-driver': 'in.js' });
      },
      'outside of the package',
    ],
    [
      'code that does not run',
      (folder) => writeFileSync(join(folder, 'driver.js'), 'export default {'),
      'cannot be loaded',
    ],
    [
      'something else',
      (folder) => writeFileSync(join(folder, 'driver.js'), 'export default { contract: 1 }'),
      'plugmark/driver/1',
    ],
    [
      'a broken package.json',
      (folder) => writeFileSync(join(folder, 'package.json'), '{'),
      'cannot be loaded',
    ],
  ])('is refused with %s', async (_, change, said) => {
    // A module is loaded once for good: each case has a folder of its own.
    install(base, change);
    const refused = await problem();
    expect(refused).toMatchObject({ code: 'driver-form' });
    expect(refused.message).toContain(said);
  });

  it('that throws, or gives what is no reading, has its bytes kept raw, and goes on', () => {
    const arrivals: Arrival[] = [];
    let calls = 0;
    const session = new GuardedSession(
      {
        session: () => ({
          take: () => {
            calls++;
            if (calls === 1) throw new Error('no');
            return calls === 2 ? [{ value: Number.NaN }] : [{ value: 7 }];
          },
        }),
      },
      (arrival) => arrivals.push(arrival),
      'serial',
    );
    for (let i = 0; i < 3; i++) session.take(Uint8Array.from([i]), i);
    expect(arrivals).toEqual([
      { kind: 'raw', atUs: 0, source: 'serial', hex: '00' },
      { kind: 'raw', atUs: 1, source: 'serial', hex: '01' },
      { kind: 'value', atUs: 2, counts: 7 },
    ]);
  });
});

describe.skipIf(NO_LINE !== null)('on a serial line', () => {
  it('reads its tool as any other driver does', async () => {
    install();
    const line = new Line();
    await line.plug();
    const entry: ToolEntry = {
      id: 'wrench',
      quantity: 'torque',
      driver: { use: 'package', package: NAME, port: line.port },
    };
    const { tools, close } = await openTools([entry], {
      base,
      clock: { nowUs: () => Math.floor(performance.now() * 1000) },
    });
    const readings: Reading[] = [];
    tools[0]?.readings$.subscribe((reading) => readings.push(reading));
    expect(await tools[0]?.connect()).toMatchObject({
      ok: true,
      value: { quantity: 'torque', exponent: -2 },
    });
    expect(tools[0]?.driver).toMatch(/^pkg:npm\/plugmark-driver-example@/);
    const { driver } = await loadDriver(NAME, base);
    for (const { hex } of driver.examples) line.say(Buffer.from(hex, 'hex'));
    await until(() => readings.length === 4, 'four readings');
    expect(readings.map((one) => (one.kind === 'value' ? one.counts : one.kind))).toEqual([
      0,
      2534,
      -641,
      'not-known',
    ]);
    await close();
    await line.end();
  });
});
