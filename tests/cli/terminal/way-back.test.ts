import { describe, expect, it } from 'vitest';
import type { Dialogue } from '../../../src/cli/terminal/dialogue.ts';
import { askUntil } from '../../../src/cli/terminal/questions.ts';
import { withWayBack } from '../../../src/cli/terminal/way-back.ts';
import { err, ok } from '../../../src/result.ts';

/** Answers one after the other, whatever is asked; `heard` is all that was shown. */
function answeredBy(answers: readonly string[]) {
  const left = [...answers];
  const heard: string[] = [];
  const dialogue: Dialogue = {
    patient: true,
    say: (line) => void heard.push(line),
    ask: (prompt) => {
      heard.push(prompt);
      const answer = left.shift();
      return answer === undefined ? Promise.reject(new Error('no more answers')) : Promise.resolve(answer);
    },
    leave: () => {},
    close: () => {},
  };
  return { dialogue, heard };
}

const number = (dialogue: Dialogue, prompt: string) =>
  askUntil(dialogue, prompt, (text) => (/^\d+$/.test(text) ? ok(text) : err('expected a number')));

async function three(dialogue: Dialogue): Promise<string> {
  dialogue.say('begin');
  const a = await number(dialogue, 'a');
  dialogue.say(`a is ${a}`);
  const b = await number(dialogue, 'b');
  dialogue.say(`b is ${b}`);
  return `${a} ${b} ${await number(dialogue, 'c')}`;
}

describe('a dialogue', () => {
  it('goes back to the question before, and says again only what belongs to it', async () => {
    const { dialogue, heard } = answeredBy(['1', '2', '<', '5', '3']);
    expect(await withWayBack(dialogue, three)).toBe('1 5 3');
    expect(heard).toEqual(['begin', 'a', 'a is 1', 'b', 'b is 2', 'c', 'a is 1', 'b', 'b is 5', 'c']);
  });

  it('goes back to any earlier answer, and says where the first one is', async () => {
    const { dialogue, heard } = answeredBy(['1', '2', '<', '<', '<', '7', '8', '9']);
    expect(await withWayBack(dialogue, three)).toBe('7 8 9');
    expect(heard).toContain('  This is the first question.');
  });

  it('does not go back to an answer that was refused', async () => {
    const { dialogue } = answeredBy(['1', 'x', 'y', '<', '4', '2', '3']);
    expect(await withWayBack(dialogue, three)).toBe('4 2 3');
  });
});
