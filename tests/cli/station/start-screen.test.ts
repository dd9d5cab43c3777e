import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openInLog, openStation } from '../../../src/cli/station/station.ts';
import { writerOf } from '../../../src/job/command-event.ts';
import { exampleOrder, workshop } from '../../job/workshop.ts';
import { inTerminal, whyNoTmux } from '../bench/tmux.ts';
import { exampleJson, folder } from '../program.ts';

/** A station whose tools are typed, with a job that was left open. */
async function stationWithJob(): Promise<string> {
  const dir = folder();
  const { tools, ...station } = exampleJson('station.json');
  const typed = tools.map((tool: { quantity: string; driver: object }) => ({
    ...tool,
    driver: { use: 'typed', unit: tool.quantity === 'length' ? 'mm' : 'N·m' },
  }));
  writeFileSync(join(dir, 'station.json'), JSON.stringify({ ...station, tools: typed, data: 'data' }));
  const instruments = tools.map(({ driver: _, ...tool }: { driver: object }) => tool);
  const shop = workshop({ ...exampleOrder(4), job: 'J-7' }, undefined, instruments);
  shop.gap(0.75);
  shop.give({ kind: 'flush' });
  const stamp = () => ({ at: '2026-05-04T09:30:00.000Z', monoUs: 1 });
  const opened = await openStation('Example bay', join(dir, 'data'), stamp);
  const [opening, ...rest] = shop.events.map((event) => ({ by: writerOf(event), event }));
  if (opening === undefined) throw new Error('no events');
  await openInLog(opened, [opening], stamp());
  opened.log.append('job:J-7', rest, stamp());
  opened.log.close();
  return dir;
}

describe.skipIf(whyNoTmux !== null)('the program without a command, on a terminal', () => {
  it.each([
    [80, 24],
    [120, 40],
    [60, 20],
  ])('of %i by %i offers by number what is likely, and does what is chosen', async (columns, rows) => {
    const bench = inTerminal([], { columns, rows, cwd: await stationWithJob() });
    const offer = await bench.shows('q to leave');
    expect(offer).toMatch(
      /1 {2}Go on with job J-7[\s\S]*2 {2}New job[\s\S]*3 {2}Look[\s\S]*4 {2}Check the station/,
    );
    // No word is broken where the window ends, and nothing is scrolled away.
    expect(offer.split('\n')[0]).toBe('Station Example bay');
    bench.type('7');
    bench.press('Enter');
    await bench.shows('expected a number from 1 to 4, Enter, or q');
    bench.press('Enter');
    await bench.shows('Cylinder 1 gap OK');
    bench.press('q');
    const left = await bench.shows('Go on with:');
    // A command is one line, to be copied whole, wherever the window breaks it.
    expect(left.replaceAll('\n', '')).toContain('job --resume J-7');
  });

  it('leaves with q and nothing is done', async () => {
    const bench = inTerminal([], { cwd: await stationWithJob() });
    await bench.shows('q to leave');
    bench.type('q');
    bench.press('Enter');
    expect(await bench.shows('leave: q')).not.toContain('Go on with:');
  });

  it('begins a new job, and lists the records', async () => {
    const dir = await stationWithJob();
    const fresh = inTerminal([], { cwd: dir });
    await fresh.shows('q to leave');
    fresh.type('2');
    fresh.press('Enter');
    await fresh.shows(/Job number \[/);
    const records = inTerminal([], { cwd: dir });
    await records.shows('q to leave');
    records.type('3');
    records.press('Enter');
    await records.shows(/J-7 +open/);
  });
});
