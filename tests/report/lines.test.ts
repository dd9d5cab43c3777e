import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wrapped } from '../../src/report/lines.ts';

/** A font in which every character is one wide. */
const width = (text: string) => text.length;

test('breaks at spaces and after hyphens in words, and keeps the space for who reads the lines aloud', () => {
  expect(wrapped('the peak is judged', 8, 9, width).lines).toEqual(['the peak ', 'is ', 'judged']);
  expect(wrapped('follow-through', 8, 9, width).lines).toEqual(['follow-', 'through']);
  expect(wrapped('25-30 N·m', 6, 9, width).lines).toEqual(['25-30 ', 'N·m']);
});

test('a word wider than a line is cut, and what is too long ends in an ellipsis', () => {
  expect(wrapped('MMMMMMMMM', 4, 9, width).lines).toEqual(['MMMM', 'MMMM', 'M']);
  expect(wrapped('MMMMMMMMM', 4, 2, width)).toEqual({ lines: ['MMMM', 'MMM…'], clipped: true });
});

test('no line is too wide, no more lines than allowed, and nothing is lost unless it says so', () => {
  const spaced = fc
    .array(fc.string({ minLength: 1, maxLength: 12 }))
    .map((words) => words.join(' ').replace(/\s+/g, ' ').trim());
  fc.assert(
    fc.property(
      spaced,
      fc.integer({ min: 2, max: 30 }),
      fc.integer({ min: 1, max: 5 }),
      (text, room, most) => {
        const { lines, clipped } = wrapped(text, room, most, width);
        expect(lines.length).toBeLessThanOrEqual(most);
        for (const line of lines) expect(line.trimEnd().length).toBeLessThanOrEqual(room);
        if (!clipped) expect(lines.join('')).toBe(text);
        else expect(lines.at(-1)).toMatch(/…$/);
      },
    ),
  );
});
