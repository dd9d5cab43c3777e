import { expect, it } from 'vitest';
import { quoted } from '../../../src/cli/terminal/command-line.ts';

it.each([
  ['station.json', 'station.json'],
  ['bay 2/station.json', "'bay 2/station.json'"],
  ["it's", "'it'\\''s'"],
  ['$(reboot)', "'$(reboot)'"],
  ['', "''"],
])('a word is one word to a shell: %s', (word, typed) => {
  expect(quoted(word)).toBe(typed);
});
