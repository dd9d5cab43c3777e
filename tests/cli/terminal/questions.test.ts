import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { askText, promptFor } from '../../../src/cli/terminal/questions.ts';
import { answering } from '../answers.ts';

describe('a question with a proposed answer', () => {
  it('shows it without what would steer the terminal, and takes it as it is', async () => {
    const usual = 'Bay\u001b[2J\u009b\u202e 1';
    const { dialogue, prompts } = answering({});
    expect(await askText(dialogue, z.string(), 'Station', usual)).toBe(usual);
    expect(prompts).toEqual(['Station [Bay[2J 1]: ']);
  });

  it('says what Enter means where nothing is proposed', () => {
    expect([promptFor('Lot', undefined, true), promptFor('Lot')]).toEqual(['Lot (Enter: none): ', 'Lot: ']);
  });
});
