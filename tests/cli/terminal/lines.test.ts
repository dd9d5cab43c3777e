import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { hearLines, LONGEST_LINE } from '../../../src/cli/terminal/lines.ts';

function heard() {
  const input = new PassThrough();
  const events: string[] = [];
  const stop = hearLines(input, {
    line: (text) => events.push(`line ${text}`),
    tooLong: () => events.push('too long'),
    end: () => events.push('end'),
  });
  return { input, events, stop };
}
const settled = () => new Promise((resolve) => setTimeout(resolve, 5));

describe('lines of an input', () => {
  it('come one by one, however they are cut into pieces, and whatever ends them', async () => {
    const { input, events } = heard();
    for (const piece of ['0.7', '5\nleft\r', '\n\nla', 'st']) input.write(piece);
    input.end();
    await settled();
    expect(events).toEqual(['line 0.75', 'line left', 'line ', 'line last', 'end']);
  });

  it('of a length that nobody types are refused once, and the next line is heard', async () => {
    const { input, events } = heard();
    input.write('x'.repeat(LONGEST_LINE));
    input.write('\n');
    for (let i = 0; i < 80; i++) input.write('y'.repeat(4000));
    input.write('\n0.75\n');
    await settled();
    expect(events).toEqual([`line ${'x'.repeat(LONGEST_LINE)}`, 'too long', 'line 0.75']);
  });

  it('are not heard any more once nobody listens', async () => {
    const { input, events, stop } = heard();
    stop();
    input.write('0.75\n');
    await settled();
    expect(events).toEqual([]);
  });
});
