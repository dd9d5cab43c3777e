import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it, vi } from 'vitest';
import { job } from '../../../src/cli/bench/job.ts';
import { exampleOrder } from '../../job/workshop.ts';
import { problemOf, said } from '../answers.ts';
import { exampleJson, folder } from '../program.ts';

// Nobody works on a job here: it is opened, and left.
vi.mock('../../../src/cli/bench/run.ts', async (original) => ({
  ...(await original<typeof import('../../../src/cli/bench/run.ts')>()),
  runWork: () => Promise.resolve('left-open'),
}));

/** Station files over one folder of data, each with a wrench of its own. */
function shop() {
  const at = folder();
  const write = (name: string, value: unknown) => {
    writeFileSync(join(at, name), JSON.stringify(value));
    return join(at, name);
  };
  return {
    stationWith: (id: string, serial: string) => {
      const { tools, ...station } = exampleJson('station.json');
      const [wrench, gauge] = tools;
      const typed = (unit: string) => ({ driver: { use: 'typed', unit } });
      return write(`${serial}.json`, {
        ...station,
        data: 'data',
        tools: [
          { ...wrench, id, serial, ...typed('N·m') },
          { ...gauge, ...typed('mm') },
        ],
      });
    },
    order: (number: string) => write(`${number}.json`, { ...exampleOrder(4), job: number }),
  };
}

it('a shop with several wrenches has a station file for each, and each takes up its own jobs alone', async () => {
  const { stationWith, order } = shop();
  const [small, large] = [stationWith('wrench', 'EXAMPLE-W-1'), stationWith('wrench', 'EXAMPLE-W-2')];
  const other = stationWith('small-wrench', 'EXAMPLE-W-3');
  await said(() => job({ station: small, order: order('S-1'), plain: true }));
  await said(() => job({ station: large, order: order('L-1'), plain: true }));
  const resumed = (station: string, number: string) =>
    said(() => job({ station, resume: number, plain: true }));
  expect((await resumed(small, 'S-1')).value).toBe(5);
  expect((await resumed(large, 'L-1')).value).toBe(5);
  for (const [station, number] of [
    [small, 'L-1'],
    [large, 'S-1'],
    [other, 'S-1'],
  ] as const)
    expect(await problemOf(() => resumed(station, number))).toMatchObject({
      code: 'other-tools',
      where: `job ${number}`,
    });
});
