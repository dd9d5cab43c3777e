import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { typed } from '../answers.ts';
import { example, exampleJson, folder, run } from '../program.ts';

/** One sentence with the place in it, a next step, and never a stack trace. */
function expectProblem({ code, stderr }: { code: number | null; stderr: string }, place: string): void {
  expect(code).toBe(2);
  expect(stderr).toContain(place);
  expect(stderr).not.toMatch(/^\s+at /m);
  expect(stderr.trim().split('\n')).toHaveLength(2);
}

const station = () => {
  const file = exampleJson('station.json');
  return {
    ...file,
    tools: file.tools.map((tool: object) => ({ ...tool, driver: { use: 'replay', file: 'none.ndjson' } })),
  };
};

describe('a command line that is not right', () => {
  it.each([
    ['an option that would steer the terminal', ['jobs', '--\u001b[31m\u0007x']],
    ['an option of several lines', ['jobs', '--x\nAuthentic.\n\u202egnp']],
    ['a command of several lines', ['\u001b]0;title\u0007\nAuthentic.']],
    ['a number that would steer the terminal', ['demo', '--seed', '\u001b[2J\n1']],
  ])('%s is told on one line, as it may be shown', async (_, argv) => {
    const { code, stderr } = await run(argv);
    expect(code).toBe(2);
    const [first = '', second = '', ...rest] = stderr.trimEnd().split('\n');
    expect(first).toMatch(/^plugmark: [^\p{Cc}\u202a-\u202e]+$/u);
    expect(second).toMatch(/^ {2}See: plugmark/);
    expect(rest).toEqual([]);
  });
});

describe('bad input', () => {
  const write = (dir: string, name: string, content: unknown) => {
    const path = join(dir, name);
    writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
    return path;
  };

  it.each<[string, (order: Record<string, unknown>) => unknown, string]>([
    ['a work order that is not JSON', () => '{"form": oops}', 'order.json: byte 9'],
    ['a work order of another form', (order) => ({ ...order, form: 'other/1' }), 'order.json: form'],
    [
      'a cylinder that is not in the banks',
      (order) => ({ ...order, engine: { ...(order['engine'] as object), serviceOrder: [1, 99] } }),
      'engine.serviceOrder',
    ],
    ['a field that nobody knows', (order) => ({ ...order, colour: 'red' }), 'order.json'],
    [
      'a torque in millimetres',
      (order) => ({ ...order, specification: { ...(order['specification'] as object), torque: '25-30 mm' } }),
      'specification.torque',
    ],
  ])('%s is refused with its place', async (_what, change, place) => {
    const dir = folder();
    const order = write(dir, 'order.json', change(exampleJson('order-4.json')));
    const config = write(dir, 'station.json', station());
    expectProblem(await typed(['job', '--order', order, '--station', config, '--plain']), place);
  });

  it.each<[string, (file: Record<string, unknown>) => unknown, string]>([
    ['a station file that is missing', () => null, 'station.json'],
    [
      'two tools of one name',
      (file) => ({ ...file, tools: [(file['tools'] as object[])[0], (file['tools'] as object[])[0]] }),
      'tools[1].id',
    ],
    [
      'a driver that does not exist',
      (file) => ({ ...file, tools: [{ ...(file['tools'] as object[])[0], driver: { use: 'magic' } }] }),
      'tools[0].driver',
    ],
    ['a recording that is missing', (file) => file, 'none.ndjson'],
  ])('%s is refused with its place', async (_what, change, place) => {
    const dir = folder();
    const content = change(station());
    const config = content === null ? join(dir, 'station.json') : write(dir, 'station.json', content);
    expectProblem(
      await typed(['job', '--order', example('order-4.json'), '--station', config, '--plain']),
      place,
    );
  });

  it('a recording with a broken line is refused with its line', async () => {
    const dir = folder();
    write(dir, 'none.ndjson', '{"form":"plugmark/readings/1"\n');
    const config = write(dir, 'station.json', station());
    expectProblem(
      await typed(['job', '--order', example('order-4.json'), '--station', config, '--plain']),
      'none.ndjson:1',
    );
  });

  it('a database that is none is refused and left as it is', async () => {
    const dir = folder();
    const config = write(dir, 'station.json', station());
    mkdirSync(join(dir, 'example-bay'));
    write(
      join(dir, 'example-bay'),
      'station.db',
      'not a database, but long enough to look at twice'.repeat(100),
    );
    expectProblem(
      await typed(['job', '--order', example('order-4.json'), '--station', config, '--plain']),
      'station.db',
    );
  });

  it('a machine without Bluetooth gets one sentence and a next step', async () => {
    const dir = folder();
    const config = write(dir, 'station.json', exampleJson('station.json'));
    const ended = await typed(['job', '--order', example('order-4.json'), '--station', config, '--plain']);
    // On a machine that has an adapter this waits for tools instead; the sentence is then checked in tests/drivers/radio.
    if (ended.code === 2) expect(ended.stderr.trim().split('\n')).toHaveLength(2);
    expect(ended.stderr).not.toMatch(/^\s+at /m);
  });

  it.each([
    [['frobnicate'], 'unknown command'],
    [['demo', '--cylinders', '5'], 'Allowed choices are 4, 8'],
    [['demo', '--technician', 'robot', '--fast'], 'robot'],
    [['job', '--station', 'nowhere.json'], 'nowhere.json'],
    [['verify'], 'missing required argument'],
  ])('%j is refused with exit code 2', async (args, text) => {
    const ended = await typed(args, { cwd: folder() });
    expect(ended.code).toBe(2);
    expect(ended.stderr).toContain(text);
    expect(ended.stderr).not.toMatch(/^\s+at /m);
  });
});
