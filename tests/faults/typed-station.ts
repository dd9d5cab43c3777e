/** A station whose tools are typed: a whole job that a program can drive line by line. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { exampleFile } from '../../src/files/input.ts';

const exampleJson = (name: string) => JSON.parse(readFileSync(exampleFile(name), 'utf8'));

export function typedStation(
  folder: string,
  change: Readonly<Record<string, unknown>> = {},
): { readonly station: string; readonly order: string } {
  const file = exampleJson('station.json');
  const tools = file.tools.map((tool: { id: string }) => ({
    ...tool,
    driver: { use: 'typed', unit: tool.id === 'gauge' ? 'mm' : 'N·m' },
  }));
  const station = join(folder, 'station.json');
  writeFileSync(
    station,
    JSON.stringify({ ...file, station: 'Example bay', data: 'data', routine: 'none', tools }),
  );
  const order = join(folder, 'order.json');
  writeFileSync(order, JSON.stringify({ ...exampleJson('order-4.json'), ...change }));
  return { station, order };
}
