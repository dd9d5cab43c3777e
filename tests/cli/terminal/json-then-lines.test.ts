import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { jsonThenLines } from '../../../src/cli/terminal/json-then-lines.ts';
import { hearLines } from '../../../src/cli/terminal/lines.ts';

/** What is taken for the value, and the lines that are left, however the input is cut. */
async function read(text: string, step: number): Promise<readonly [string, readonly string[]]> {
  const input = new PassThrough();
  const value = jsonThenLines(input);
  for (let i = 0; i < text.length; i += step) input.write(text.slice(i, i + step));
  input.end();
  const first = Buffer.from(await value).toString('utf8');
  const lines: string[] = [];
  if (!input.readableEnded)
    await new Promise<void>((end) =>
      hearLines(input, { line: (line) => lines.push(line), tooLong: () => {}, end }),
    );
  return [first, lines];
}

describe('a value of JSON in front of lines', () => {
  it.each([1, 2, 7, 1000])(
    'ends on the line on which it is whole (cut every %i characters)',
    async (step) => {
      expect(await read('{"a":1}\n0.75 mm\n\ns\n', step)).toEqual(['{"a":1}', ['0.75 mm', '', 's']]);
      expect(await read('{\n  "a": {\n    "b": 1\n  }\n}\ns\n', step)).toEqual([
        '{\n  "a": {\n    "b": 1\n  }\n}',
        ['s'],
      ]);
    },
  );

  it('is all there is where no line ends it', async () => {
    expect(await read('{"a":1}', 3)).toEqual(['{"a":1}', []]);
    expect(await read('{"a":\n', 3)).toEqual(['{"a":\n', []]);
  });

  it('is refused above 1 MB', async () => {
    const input = new PassThrough();
    const value = jsonThenLines(input);
    input.write('x'.repeat(1.1e6));
    await expect(value).rejects.toMatchObject({ problem: { code: 'file-too-large' } });
  });
});
