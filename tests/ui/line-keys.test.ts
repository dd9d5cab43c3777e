import { describe, expect, it } from 'vitest';
import type { JobState } from '../../src/job/state.ts';
import { type InputState, newInputState, type Out, pressed } from '../../src/ui/input-state.ts';
import { askingLines, keysOfLine } from '../../src/ui/line-keys.ts';
import { jobWith } from './fixtures.ts';
import { ROUTINE_JOBS, VIEWS } from './views.ts';

function say(job: JobState, lines: readonly string[]): { input: InputState; outs: Out[]; figures: string[] } {
  let input = newInputState();
  const outs: Out[] = [];
  const figures: string[] = [];
  for (const line of lines) {
    const keys = keysOfLine(line, input);
    if (keys === null) figures.push(line);
    for (const key of keys ?? []) {
      const after = pressed(input, key, job, false);
      input = after.input;
      if (after.out !== null) outs.push(after.out);
    }
  }
  return { input, outs, figures };
}

const asking = VIEWS['notOk']?.job ?? expect.fail('no view');

describe('a job in plain lines', () => {
  it('takes an empty line for Enter, a character or a name for its key, all else for a figure', () => {
    expect(say(ROUTINE_JOBS.windows, ['']).outs).toEqual([{ do: 'confirm-windows' }]);
    expect(say(ROUTINE_JOBS.afterwards, ['2', 'space', 'right', 'down', '3', '']).outs).toHaveLength(1);
    expect(say(jobWith(2), ['0.75', 'right', '0.030 in'])).toMatchObject({
      figures: ['0.75', '0.030 in'],
      outs: [{ do: 'choose-cylinder', quantity: 'torque', cylinder: 7 }],
    });
  });

  it('takes a whole line for the text that is asked for, in place of what it proposed', () => {
    expect(say(asking, ['k', 'Jürgen quit q', '3', 'looked at']).outs).toEqual([
      { do: 'accept', pull: 5, by: 'Jürgen quit q', reason: 'looked at' },
    ]);
    expect(say(asking, ['c', 'esc']).input.form).toBeNull();
  });

  it('says what a panel or a form asks, with all that can be answered', () => {
    const list = askingLines(ROUTINE_JOBS.afterwards, newInputState(), false).join('\n');
    expect(list).toContain('Compound in the boots');
    expect(list).toContain('[3] scrapped');
    const form = askingLines(asking, say(asking, ['c']).input, true);
    expect(form[0]).toBe('What did not go as planned?');
    expect(form.join('\n')).toMatch(/\[5\] hand the job over/);
    expect(form.join('')).toMatch(/^[\x20-\x7e]*$/);
  });

  it('is silent where the bench itself is at work', () => {
    expect(askingLines(jobWith(2), newInputState(), false)).toEqual([]);
    expect(askingLines(asking, newInputState(), false)).toEqual([]);
  });
});
