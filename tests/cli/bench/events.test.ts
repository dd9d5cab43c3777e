import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type EventLine, eventLineSchema } from '../../../src/cli/bench/event-lines.ts';
import { example, exampleJson, folder, start } from '../program.ts';

/** A station whose figures are typed, and that wants nothing said around them. */
function typedStation(dir: string): string {
  const file = exampleJson('station.json');
  const tools = file.tools.map((tool: { readonly quantity: string }) => ({
    ...tool,
    driver: { use: 'typed', unit: tool.quantity === 'torque' ? 'N·m' : 'mm' },
  }));
  const path = join(dir, 'station.json');
  writeFileSync(path, JSON.stringify({ ...file, routine: 'none', tools }));
  return path;
}

const linesOf = (text: string): readonly EventLine[] =>
  text
    .split('\n')
    .filter(Boolean)
    .map((line) => eventLineSchema.parse(JSON.parse(line)));
const ofKind = <K extends EventLine['kind']>(lines: readonly EventLine[], kind: K) =>
  lines.filter((line): line is Extract<EventLine, { kind: K }> => line.kind === kind);

/** A job that another program starts on the standard input and follows on the standard output. */
function followed(dir: string, ...more: readonly string[]) {
  const station = typedStation(dir);
  const program = start(['job', '--station', station, '--events', '-', ...more]);
  return { program, station };
}

describe('a program that starts a job and follows it', () => {
  it('hears each entry, the results, and that the job is complete', async () => {
    const dir = folder();
    const { program } = followed(dir, '--order', '-');
    program.type(JSON.stringify(exampleJson('order-4.json')));
    await program.says('"quantity":"length"');
    for (let cylinder = 1; cylinder <= 4; cylinder++) program.type('0.75 mm');
    for (let cylinder = 1; cylinder <= 4; cylinder++) program.type('27.5 N.m');
    await program.says('"pull":4,"cylinder"');
    program.type('s');
    const { code, stdout, stderr } = await program.ended;
    const lines = linesOf(stdout);
    expect(lines[0]).toMatchObject({ kind: 'started', form: 'plugmark/events/1', resumed: false });
    const [ended] = ofKind(lines, 'ended');
    expect(lines.at(-1)).toBe(ended);
    expect({ code, outcome: ended?.outcome }).toEqual({ code: ended?.exit, outcome: 'complete' });
    expect(code).toBe(0);
    const results = ofKind(lines, 'result').map(({ result }) => result.ResultMetaData);
    expect(results.map(({ ResultId }) => ResultId)).toHaveLength(8);
    expect(results.every(({ ResultEvaluation }) => ResultEvaluation === 1)).toBe(true);
    const numbers = ofKind(lines, 'entry').map(({ seq }) => seq);
    expect(numbers).toEqual([...numbers].sort((a, b) => a - b));
    expect(stderr).toContain('cylinder 4  torque  OK');
    expect(readFileSync(ended?.record ?? '', 'utf8')).toContain('"signatures"');
  });

  it('is told apart: left open is 5, void is 6', async () => {
    const dir = folder();
    const { program, station } = followed(dir, '--order', example('order-4.json'));
    await program.says('"quantity":"length"');
    program.child.kill('SIGTERM');
    const left = await program.ended;
    expect(left.code).toBe(5);
    expect(linesOf(left.stdout).at(-1)).toMatchObject({ kind: 'ended', outcome: 'left-open', exit: 5 });
    const voided = start([
      'jobs',
      'void',
      'EX-4001',
      '--by',
      'Foreman One',
      '--because',
      'wrong',
      '--station',
      station,
    ]);
    expect((await voided.ended).code).toBe(0);
    const again = await start(['job', '--resume', 'EX-4001', '--station', station, '--plain']).ended;
    expect(again).toMatchObject({
      code: 6,
      stdout: expect.stringContaining('was declared void by Foreman One'),
    });
  });
});
