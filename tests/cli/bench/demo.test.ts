import { cpSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { type Ended, folder, run, start } from '../program.ts';

describe('the demo through the whole Bluetooth stack', () => {
  let out = '';
  let demo: Ended;
  beforeAll(async () => {
    out = mkdtempSync(join(tmpdir(), 'plugmark-demo-'));
    demo = await run(['demo', '--fast', '--seed', '7', '--out', out]);
    return () => rmSync(out, { recursive: true, force: true });
  });
  const paper = (name: string) => join(out, name);
  const record = () => paper('EX-8001-1.record.json');

  it('ends with a complete, verified record and exit code 0', () => {
    expect(demo.stderr).toBe('');
    expect(demo.code).toBe(0);
    expect(demo.stdout).toContain('COMPLETE. 8 torques SIMULATED, no proof; 8 gaps SIMULATED, no proof.');
    expect(demo.stdout).toContain('Authentic and complete, but NOT PROVEN.');
    for (const name of ['EX-8001-1.record.json', 'EX-8001-1.pdf', 'EX-8001-1.csv'])
      expect(statSync(paper(name)).size).toBeGreaterThan(1000);
  });

  it('speaks the language of its reader from the first line to the last', async () => {
    vi.stubEnv('PLUGMARK_LANGUAGE', 'es');
    const { stdout, code } = await run(['demo', '--fast', '--cylinders', '4', '--out', folder()]);
    vi.unstubAllEnvs();
    expect(code).toBe(0);
    for (const words of ['COMPLETO.', 'Auténtica y completa, pero NO DEMOSTRADA', 'SIMULADO'])
      expect(stdout).toContain(words);
    expect(stdout).not.toMatch(/\b(?:cylinder|torque|gap|confirmed|closed|Enter:? they)\b/);
  });

  it('went over the air: Bluetooth links of the driver that ships, to tools that are simulated', () => {
    expect(demo.stdout).not.toContain('without Bluetooth');
    const { payload } = JSON.parse(readFileSync(record(), 'utf8'));
    const { entries } = JSON.parse(Buffer.from(payload, 'base64url').toString('utf8'));
    const links = entries.flatMap(
      ({
        event,
      }: {
        event: { type: string; driver: string; source: string; description: { link: object } };
      }) => (event.type === 'tool-linked' ? [[event.driver, event.source, event.description.link]] : []),
    );
    expect(links).toEqual([
      [
        'imds',
        'simulated',
        expect.objectContaining({ kind: 'bluetooth-le', address: expect.stringMatching(/^c2:/) }),
      ],
      [
        'imds',
        'simulated',
        expect.objectContaining({ kind: 'bluetooth-le', address: expect.stringMatching(/^c2:/) }),
      ],
    ]);
  });

  it('says SIMULATED wherever the record is read', async () => {
    const verified = await run(['verify', record(), '--trust', paper('trusted-keys.json')]);
    for (const text of [demo.stdout, verified.stdout, readFileSync(paper('EX-8001-1.csv'), 'utf8')])
      expect(text).toContain('SIMULATED');
  });

  it('is verified by exit code: 1 trusted, but simulated, 3 not on the list, 1 changed, 2 no record', async () => {
    const dir = folder();
    const trust = paper('trusted-keys.json');
    expect((await run(['verify', record(), '--trust', trust])).code).toBe(1);
    const nobody = join(dir, 'nobody.json');
    expect((await run(['verify', record(), '--trust', nobody])).code).toBe(2);
    writeFileSync(nobody, '{"keys":[]}');
    expect((await run(['verify', record(), '--trust', nobody])).code).toBe(3);
    const changed = join(dir, 'changed.json');
    const bytes = readFileSync(record());
    const middle = Math.floor(bytes.length / 2);
    bytes.writeUInt8(bytes.readUInt8(middle) ^ 1, middle);
    writeFileSync(changed, bytes);
    expect((await run(['verify', changed, '--trust', trust])).code).toBe(1);
    const other = join(dir, 'other.json');
    writeFileSync(other, '{"hello":"world"}');
    expect((await run(['verify', other, '--trust', trust])).code).toBe(2);
    expect((await run(['verify', join(dir, 'missing.json')])).code).toBe(2);
  });

  it('runs a four-cylinder engine and leaves the log of the one before alone', async () => {
    const dir = folder();
    cpSync(out, dir, { recursive: true });
    const again = await run([
      'demo',
      '--fast',
      '--cylinders',
      '4',
      '--seed',
      '3',
      '--technician',
      'careful',
      '--out',
      dir,
    ]);
    expect(again.stderr).toBe('');
    expect(again.code).toBe(0);
    expect(again.stdout).toContain('Authentic and complete, but NOT PROVEN.');
  });

  it('notices that a cylinder was passed over, holds the pull, and gets the job right by asking', async () => {
    const args = ['demo', '--fast', '--direct', '--technician', 'skips', '--cylinders', '4', '--seed', '1'];
    const skipped = await run([...args, '--out', folder()]);
    expect(skipped.stdout).toMatch(/ask {2}STOP/);
    expect(skipped.stdout).toMatch(/was left out/);
    expect(skipped.stdout).toContain('Authentic and complete, but NOT PROVEN.');
    expect(skipped.code).toBe(0);
  });
});

it('that was left says the exact command that goes on with it, and it does', async () => {
  const out = folder();
  const left = start(['demo', '--plain', '--direct', '--speed', '10', '--seed', '3', '--out', out]);
  await left.says('gap');
  left.child.kill('SIGINT');
  const { code, stdout } = await left.ended;
  expect(code).toBe(5);
  const command = stdout.trimEnd().split('\n').at(-1)?.trim() ?? '';
  expect(command).toContain(`demo --resume --out ${out} --seed 3 --speed 10 --direct --plain`);
  const words = command.split(' ');
  const again = await run([...words.slice(words.indexOf('demo')), '--fast']);
  expect(again.stdout).toContain('COMPLETE.');
  expect(again.code).toBe(0);
  const none = await run(['demo', '--resume', '--out', out]);
  expect(none.stderr).toContain('no demo job is open here');
});

describe('a wrench that sends its angle, through the whole Bluetooth stack', () => {
  it('is linked by a profile, and each turn is measured, judged again and on the papers', async () => {
    const out = folder();
    const demo = await run([
      'demo',
      '--fast',
      '--sends-angle',
      '--cylinders',
      '4',
      '--seed',
      '7',
      '--out',
      out,
    ]);
    expect(demo.code).toBe(0);
    expect(demo.stdout).not.toContain('without Bluetooth');
    expect(demo.stdout).toContain('sends its angle');
    expect(demo.stdout).toMatch(/turned \d+°: \d+° to the snug point/);
    const { payload } = JSON.parse(readFileSync(join(out, 'EX-4001-1.record.json'), 'utf8'));
    const { entries } = JSON.parse(Buffer.from(payload, 'base64url').toString('utf8'));
    const events: readonly { type: string; driver?: string; tool?: string; angles?: string }[] = entries.map(
      ({ event }: { event: { type: string } }) => event,
    );
    expect(events.find(({ type, tool }) => type === 'tool-linked' && tool === 'wrench')?.driver).toMatch(
      /^profile\?checksum=sha256:[0-9a-f]{64}$/,
    );
    const readings = events.filter(({ type, tool }) => type === 'readings' && tool === 'wrench');
    expect(readings.length).toBeGreaterThan(10);
    expect(readings.every(({ angles }) => angles !== undefined)).toBe(true);
    const csv = readFileSync(join(out, 'EX-4001-1.csv'), 'utf8');
    expect(csv).toContain('Plug turned (deg)');
    expect(demo.stdout).toContain('Authentic and complete, but NOT PROVEN.');
  });
});
