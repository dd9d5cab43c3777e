/** Capability, drift, calendar, certificates, backup and recovery, run as a user runs them. */
import { generateKeyPairSync } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Sqlite from 'better-sqlite3';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { openStationLog } from '../../../db/log.ts';
import { main } from '../../../src/cli/main.ts';
import { originOf, signCheckpoint } from '../../../src/evidence/checkpoint.ts';
import { publicJwk, thumbprint } from '../../../src/evidence/jwk.ts';
import { generate } from '../../bench/history/generate.ts';

let folder: string;
let original: string;
let said: string;
const at = (...names: string[]) => join(folder, ...names);

async function run(...args: string[]): Promise<number> {
  said = '';
  return await main(['node', 'plugmark', ...args]);
}
const onStation = (...args: string[]) => run(...args, '--data', folder);

function listen(): void {
  for (const stream of [process.stdout, process.stderr])
    vi.spyOn(stream, 'write').mockImplementation((chunk) => {
      said += String(chunk);
      return true;
    });
}

beforeAll(async () => {
  original = mkdtempSync(join(tmpdir(), 'desk-'));
  await generate(join(original, 'station.db'), 40, () => {});
  const log = await openStationLog(join(original, 'station.db'));
  log.history.bringUpToDate();
  log.close();
});
afterAll(() => rmSync(original, { recursive: true }));
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'desk-'));
  cpSync(original, folder, { recursive: true });
  listen();
});
afterEach(() => {
  vi.restoreAllMocks();
  rmSync(folder, { recursive: true });
});

describe('capability', () => {
  it('shows a line for each specification, and where its charts are to be had', async () => {
    expect(await onStation('capability')).toBe(0);
    expect(said).toContain('Cpk');
    const key =
      /^([0-9a-f]{16}) {2}invented V8, type [A-T] {2}\d\d\.00 to \d\d\.00 N·m {2}all /m.exec(said)?.[1] ?? '';
    expect(key).not.toBe('');
    expect(await onStation('capability', '--specification', key, '--out', at('papers'))).toBe(0);
    expect(said).toContain('Process: first attempts on their plugs');
    expect(said).toContain('Product: last attempts on their plugs');
    expect(said).toContain('Histogram');
    const files = readdirSync(at('papers'));
    expect(files).toEqual(expect.arrayContaining(['capability.pdf', 'histogram.svg']));
    expect(readFileSync(at('papers', 'capability.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect(readFileSync(at('papers', 'histogram.svg'), 'utf8')).toContain('<svg');
  });

  it('tells cylinders apart, and gaps by lot', async () => {
    expect(await onStation('capability', '--per', 'cylinder', '--cylinder', '3')).toBe(0);
    expect(said).toMatch(/N·m {2}3 /);
    expect(await onStation('delivered')).toBe(0);
    expect(said).toContain('limits 0.700 to 0.800 mm');
    expect(said).toContain('L0001');
  });

  it('never mixes simulated jobs with real ones, and shows the real ones in full', async () => {
    const db = new Sqlite(at('station.db'));
    db.exec('UPDATE attempts SET source = 3 WHERE job % 3 = 0');
    const most = db
      .prepare<[], { key: string }>(
        `SELECT s.specification AS key FROM jobs j JOIN setups s ON s.id = j.setup JOIN attempts a ON a.job = j.id
         GROUP BY s.specification HAVING count(DISTINCT a.source) = 2 LIMIT 1`,
      )
      .get();
    db.close();
    expect(await onStation('capability')).toBe(0);
    expect(said).toMatch(/SIMULATED: \d+ of \d+ groups/);
    expect(said).toMatch(/ all, SIMULATED /);
    said = '';
    expect(await onStation('capability', '--specification', most?.key ?? '')).toBe(0);
    expect(said).toMatch(/Left out: 1 group \(SIMULATED\) with \d+ first attempts/);
    expect(said).toContain('Process: first attempts on their plugs');
    expect(said).not.toContain('name one group: --specification');
    expect(await onStation('delivered')).toBe(0);
    expect(said).toMatch(/Left out: \d+ gaps that were SIMULATED or REPLAYED/);
  });

  it('says what is wrong with a question', async () => {
    expect(await onStation('capability', '--per', 'colour')).toBe(2);
    expect(said).toContain('Allowed choices are specification, tool, technician, cylinder');
    expect(await onStation('capability', '--vin', 'NOBODY')).toBe(0);
    expect(said).toContain('No attempt matches.');
    expect(await onStation('capability', '--from', '2026-13-01')).toBe(2);
    expect(said).toContain('this is not a date');
    expect(await onStation('drift', 'nobody')).toBe(2);
    expect(said).toContain('neither the log nor the station file has a tool of this name');
    expect(await onStation('calendar', '--staircase', '--shortest', '400')).toBe(2);
    expect(said).toContain('leave no room');
    expect(await onStation('gauge-study', 'show', 'GS-1')).toBe(2);
    expect(said).toContain('no gauge study of this number');
  });
});

describe('the calendar and the certificates', () => {
  const certificate = (date: string) => ({
    form: 'plugmark/certificate/1',
    number: 'EXAMPLE-1',
    laboratory: 'Example Calibration Laboratory',
    serial: 'EXAMPLE-W-03',
    date,
    unit: 'N.m',
    points: [10, 60].map((reading) => ({ reading, error: 0.1, expanded: 0.2, k: 2 })),
  });
  const station = (date: string) => {
    writeFileSync(at('certificate.json'), JSON.stringify(certificate(date)));
    const wrench = {
      id: 'wrench',
      quantity: 'torque',
      serial: 'EXAMPLE-W-03',
      resolution: 0.01,
      basis: 'certificate',
      permissibleDeviation: { kind: 'relative', percent: 4 },
      certificate: 'certificate.json',
      interval: { months: 12, cycles: 5000 },
      driver: { use: 'typed', unit: 'N·m' },
    };
    const file = { form: 'plugmark/station/1', station: 'Example station', data: '.', tools: [wrench] };
    writeFileSync(at('station.json'), JSON.stringify(file));
    return ['--station', at('station.json')] as const;
  };

  it('take the station file and the cycles that the log counts, and export as iCalendar', async () => {
    const today = new Date().toISOString().slice(0, 10);
    expect(await run('calendar', '--staircase', '--ics', at('c.ics'), ...station(today))).toBe(0);
    expect(said).toContain('in date');
    expect(said).toContain('EXAMPLE-W-03');
    expect(said).toMatch(/days \((longer|unchanged|shorter)\)/);
    expect(readFileSync(at('c.ics'), 'utf8')).toContain('SUMMARY:Calibrate wrench EXAMPLE-W-03\r\n');
    expect(await run('calendar', ...station('2020-01-01'))).toBe(1);
    expect(said).toContain('! DUE');
    expect(said).toMatch(/[1-9]\d* of 5000/);
  });

  it('keep certificate files by their digest, and see when one changes or goes', async () => {
    const scope = station('2026-01-05');
    expect(await run('certificates', 'keep', ...scope)).toBe(0);
    const [kept = ''] = readdirSync(at('certificates'));
    expect(kept).toMatch(/^[0-9a-f]{64}\.json$/);
    expect(await run('certificates', 'keep', ...scope)).toBe(0);
    expect(said).toContain('was kept already');
    expect(await run('certificates', 'check', ...scope)).toBe(0);
    writeFileSync(at('certificates', kept), 'something else');
    expect(await run('certificates', 'check', ...scope)).toBe(1);
    expect(said).toContain('! CHANGED');
    expect(said).toContain(`! CHANGED: ${at('certificates', kept)}`);
    expect(said).toContain('certificates keep FILE');
    expect(await run('certificates', 'keep', ...scope)).toBe(0);
    expect(said).toContain('kept again');
    expect(await run('certificates', 'check', ...scope)).toBe(0);
    rmSync(at('certificates', kept));
    expect(await run('certificates', 'check', ...scope)).toBe(1);
    expect(said).toContain('! MISSING');
    writeFileSync(at('scan.pdf'), '%PDF-1.7 scan');
    expect(await run('certificates', 'keep', at('scan.pdf'), '--for', 'EXAMPLE-9', ...scope)).toBe(2);
    expect(said).toContain('no tool of this station has a certificate with this number');
    expect(await run('certificates', 'keep', at('scan.pdf'), ...scope)).toBe(2);
    expect(said).toContain('--for NUMBER');
    writeFileSync(at('empty.pdf'), '');
    expect(await run('certificates', 'keep', at('empty.pdf'), '--for', 'EXAMPLE-1', ...scope)).toBe(2);
    expect(said).toContain('the file is empty');
    expect(readdirSync(at('certificates'))).toEqual([]);
  });
});

describe('backup, damage and recovery', () => {
  const sizeOf = async (file: string) => {
    const log = await openStationLog(file);
    const size = log.size();
    log.close();
    return size;
  };

  it('a damaged log is told in a sentence, and restored from the backup', async () => {
    const size = await sizeOf(at('station.db'));
    expect(await onStation('backup', at('kept.db'))).toBe(0);
    expect(said).toContain(`${size} entries, 40 jobs`);
    const bytes = readFileSync(at('station.db'));
    bytes.fill(0x5a, 8192, 65_536);
    writeFileSync(at('station.db'), bytes);
    expect(await onStation('jobs')).toBe(2);
    expect(said).toBe(
      `plugmark: ${at('station.db')}: the database file is damaged\n  Keep the file as it is. Restore a backup with "plugmark restore". If you have none, save what can be read with "plugmark recover".\n`,
    );
    expect(await onStation('restore', at('kept.db'))).toBe(0);
    expect(said).toContain('The old log is kept as');
    expect(await sizeOf(at('station.db'))).toBe(size);
    expect(await onStation('log', 'check')).toBe(0);
  });

  it('without a backup, what can be read is saved, and what is lost is said', async () => {
    const bytes = readFileSync(at('station.db'));
    const page = bytes.length / 4096 - 40;
    bytes.fill(0x5a, page * 4096, (page + 1) * 4096);
    writeFileSync(at('station.db'), bytes);
    expect(await onStation('recover', '--out', at('saved.db'))).toBe(1);
    expect(said).toMatch(/LOSSES: \d+ entries are in/);
    expect(said).toMatch(/LOST: entr/);
    expect(said).toContain('readable entries after the first gap');
    const kept = Number(/LOSSES: (\d+)/.exec(said)?.[1]);
    const [, putBack = ''] = /Put it in place: plugmark (.*)/.exec(said) ?? [];
    expect(await sizeOf(at('saved.db'))).toBe(kept);
    expect(existsSync(at('saved.db.beside.jsonl'))).toBe(true);
    expect(await onStation('recover', '--out', at('saved.db'))).toBe(2);
    expect(said).toContain('nothing is overwritten');
    expect(await onStation('restore', at('saved.db'))).toBe(2);
    expect(said).toMatch(/damaged, and \d+ entries newer than the backup can still be read in it/);
    expect(putBack).toBe(`restore ${at('saved.db')} --set-aside`);
    expect(await onStation(...putBack.split(' '))).toBe(0);
    expect(await sizeOf(at('station.db'))).toBe(kept);
  });

  it.each([
    ['contradicts', 0, 'NOT AS IT WAS SIGNED', /DIVERGED between/],
    ['is short of', 5, 'LOSSES', /entries \d+ to \d+ are missing/],
  ])('a saved log that %s a checkpoint is not called whole', async (_, beyond, head, why) => {
    const key = generateKeyPairSync('ed25519').privateKey;
    const log = await openStationLog(at('short.db'));
    const setUp = { type: 'station-set-up', station: 'bay 1', key: publicJwk(key) } as const;
    log.appendStation([{ by: 'station', event: setUp }], { at: '2026-03-02T09:30:00.000Z', monoUs: 0 });
    const origin = originOf(thumbprint(setUp.key));
    const size = log.size() + beyond;
    log.keepCheckpoint(size, signCheckpoint({ origin, size, root: Buffer.alloc(32, 7) }, key));
    log.close();
    renameSync(at('short.db'), at('station.db'));
    expect(await onStation('recover', '--out', at('saved.db'))).toBe(1);
    expect(said).toContain(head);
    expect(said).toMatch(why);
    expect(said).not.toContain('Saved everything that was found');
  });

  it('says what is missing', async () => {
    rmSync(at('station.db'));
    for (const args of [
      ['backup', at('b.db')],
      ['recover', '--out', at('r.db')],
    ]) {
      expect(await onStation(...args)).toBe(2);
      expect(said).toContain('there is no station log');
    }
    expect(await onStation('restore', at('none.db'))).toBe(2);
    expect(said).toContain('there is no such file');
  });
});
