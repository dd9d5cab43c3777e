import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { flattened, helpTail, treeOf } from '../../../src/cli/help/command-tree.ts';
import { OUTPUTS } from '../../../src/cli/help/outputs.ts';
import { schemaOf } from '../../../src/cli/help/schema.ts';
import { buildProgram, main } from '../../../src/cli/main.ts';
import { answeringStation, TYPED } from '../answering-station.ts';
import { said, typed } from '../answers.ts';

const nodes = flattened(treeOf(buildProgram(() => () => Promise.resolve())));
const answering = nodes.filter(({ options }) => options.some(({ long }) => long === '--json'));
const nameOf = ({ path }: { readonly path: readonly string[] }) => path.join('-');

let station = '';
beforeAll(async () => {
  station = await answeringStation();
  return () => rmSync(station, { recursive: true, force: true });
}, 120_000);

const calls = answering.flatMap((node) =>
  (TYPED[nameOf(node)] ?? [[]]).map((args) => [[...node.path, ...args].join(' '), node, args] as const),
);

describe('answers as JSON', () => {
  it('each has a form, and each form a command', () => {
    expect(answering.map(nameOf).sort()).toEqual(Object.keys(OUTPUTS).sort());
  });

  it.each(Object.keys(OUTPUTS))('the form of %s can be printed as a JSON Schema', async (name) => {
    const { value, text } = await said(() => main(['node', 'plugmark', 'schema', name]));
    expect(value).toBe(0);
    expect(JSON.parse(text)).toMatchObject({ title: `plugmark ${name}` });
  });

  it.each(calls)('%s answers in its form and says nothing else', async (_line, node, args) => {
    const ended = await typed([...node.path, ...args, '--json'], { cwd: station });
    const name = nameOf(node);
    if (name === 'devices-scan' && ended.code === 2) {
      // A machine without Bluetooth: the problem goes to the error output, and nothing to the answer.
      expect(ended.stdout).toBe('');
      return expect(ended.stderr.trim().split('\n')).toHaveLength(2);
    }
    expect(ended.stdout, ended.stderr).not.toBe('');
    const value: unknown = JSON.parse(ended.stdout);
    const schema = Object.entries(OUTPUTS).find(([one]) => one === name)?.[1];
    expect(schema?.safeParse(value).error?.issues ?? []).toEqual([]);
    expect(value).toMatchObject({ form: `plugmark/${name}/1` });
    expect(helpTail(node), 'the exit code is in the help').toMatch(new RegExp(`^  ${ended.code} `, 'm'));
  });

  it('a problem leaves the answer empty', async () => {
    const ended = await typed(['jobs', 'show', 'J-404', '--json'], { cwd: station });
    expect(ended).toMatchObject({ code: 2, stdout: '' });
    expect(ended.stderr).toContain('J-404');
  });

  it('figures are those of the record, in the unit that is named', async () => {
    const shown = await typed(['jobs', 'show', 'J-1', '--json'], { cwd: station });
    const { cylinders } = JSON.parse(shown.stdout);
    expect(cylinders).toHaveLength(4);
    expect(cylinders[3].torque).toMatchObject({ step: 'done', pulls: 1, last: { result: 'OK' } });
    const asked = await typed(['ask', '--attempts', '--json'], { cwd: station });
    const pull = JSON.parse(asked.stdout).attempts.find(
      (one: { job: string; cylinder: number; unit: string }) =>
        one.job === 'J-1' && one.cylinder === cylinders[3].cylinder && one.unit === 'N.m',
    );
    expect(pull.value).toBe(cylinders[3].torque.peakNm);
    expect(pull.value).toBeGreaterThan(29);
  });

  it('a schema refuses what is not the answer', () => {
    expect(
      OUTPUTS['jobs-list'].safeParse({ form: 'plugmark/jobs-list/1', jobs: [{ job: 'J-1' }] }).success,
    ).toBe(false);
    expect(JSON.stringify(schemaOf('calendar'))).toContain('"additionalProperties":false');
  });

  it('what a command writes is written with --json as well', () => {
    for (const file of ['copy.db', 'saved.db']) expect(existsSync(join(station, file)), file).toBe(true);
  });
});
