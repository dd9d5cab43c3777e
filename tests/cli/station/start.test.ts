import { mkdirSync, realpathSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, onTestFinished } from 'vitest';
import { openInLog, openStation } from '../../../src/cli/station/station.ts';
import { noteStationUsed } from '../../../src/cli/station/station-at-hand.ts';
import { writerOf } from '../../../src/job/command-event.ts';
import { exampleOrder, workshop } from '../../job/workshop.ts';
import { typed } from '../answers.ts';
import { exampleJson, folder, run } from '../program.ts';

const stamp = () => ({ at: '2026-05-04T09:30:00.000Z', monoUs: 1 });

function stationIn(dir: string, name = 'station.json', station = 'Example bay'): string {
  const file = join(dir, name);
  writeFileSync(file, JSON.stringify({ ...exampleJson('station.json'), station, data: 'data' }));
  return file;
}

/** A station with a job that was left open. */
async function withOpenJob(dir: string, job = 'J-7'): Promise<void> {
  const shop = workshop({ ...exampleOrder(4), job });
  shop.gap(0.75);
  shop.give({ kind: 'flush' });
  const station = await openStation('Example bay', join(dir, 'data'), stamp);
  const [opening, ...rest] = shop.events.map((event) => ({ by: writerOf(event), event }));
  if (opening === undefined) throw new Error('no events');
  await openInLog(station, [opening], stamp());
  station.log.append(`job:${job}`, rest, stamp());
  station.log.close();
}

/** A home of its own for the note of the station that was used last. */
function withState(): void {
  const before = process.env['XDG_STATE_HOME'];
  process.env['XDG_STATE_HOME'] = folder();
  onTestFinished(() => {
    process.env['XDG_STATE_HOME'] = before;
  });
}

describe('the program without a command', () => {
  it('says how to begin where there is no station', async () => {
    const { code, stdout } = await typed([], { cwd: folder() });
    expect(code).toBe(0);
    for (const words of ['There is no station here yet', 'demo', 'setup', 'manual'])
      expect(stdout).toContain(words);
  });

  it('offers the open job by number, then a new one, the records and the check', async () => {
    const dir = folder();
    stationIn(dir);
    await withOpenJob(dir);
    const { code, stdout } = await typed([], { cwd: dir });
    expect(code).toBe(0);
    expect(stdout).toMatch(
      /Station Example bay\n {2}1 {2}Go on with job J-7: .*items open\n.*job --resume J-7\n {2}2 {2}New job\n.*job\n {2}3 {2}Look at the records\n.*jobs\n {2}4 {2}Check/,
    );
  });

  it('offers a new job first where none is open', async () => {
    const dir = folder();
    stationIn(dir);
    expect((await typed([], { cwd: dir })).stdout).toMatch(/ {2}1 {2}New job\n/);
  });
});

describe('a command that names no station', () => {
  it('takes the only station file of the folder, and says so', async () => {
    const dir = folder();
    stationIn(dir, 'bay-2.json');
    writeFileSync(join(dir, 'order.json'), JSON.stringify(exampleOrder(4)));
    await withOpenJob(dir);
    for (const command of ['jobs', 'keys', 'calendar']) {
      const { stdout, stderr } = await run([command], { cwd: dir });
      expect(stderr).toBe('Station file: bay-2.json\n');
      expect(stdout).not.toBe('');
    }
  });

  it('asks which of several', async () => {
    const dir = folder();
    stationIn(dir, 'bay-1.json');
    stationIn(dir, 'bay-2.json');
    const { code, stderr } = await typed(['jobs'], { cwd: dir });
    expect(code).toBe(2);
    expect(stderr).toContain('2 station files are in this folder: bay-1.json, bay-2.json');
  });

  it('takes the one that was worked with last, from any folder', async () => {
    withState();
    const dir = realpathSync(folder());
    await withOpenJob(dir);
    noteStationUsed(stationIn(dir));
    const elsewhere = join(dir, 'elsewhere');
    mkdirSync(elsewhere);
    const { stdout, stderr } = await typed(['jobs'], { cwd: elsewhere });
    expect(stderr).toBe(`Station file: ${join(dir, 'station.json')}\n`);
    expect(stdout).toContain('J-7');
  });

  it('never takes another file for one that was named', async () => {
    const dir = folder();
    stationIn(dir, 'bay-2.json');
    const { code, stderr } = await typed(['jobs', '--station', 'bay-1.json'], { cwd: dir });
    expect(code).toBe(2);
    expect(stderr).toContain('bay-1.json: there is no station file here');
  });
});
