import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES } from '../../src/problem-code.ts';

const ROOT = join(import.meta.dirname, '../..');
const LIST = join('src', 'problem-code.ts');

/** Everything that the program runs, but the list itself. */
function programText(): string {
  return ['src', 'drivers', 'sim', 'db']
    .flatMap((room) =>
      readdirSync(join(ROOT, room), { recursive: true, encoding: 'utf8' }).map((name) => join(room, name)),
    )
    .filter((path) => /\.tsx?$/.test(path) && path !== LIST)
    .map((path) => readFileSync(join(ROOT, path), 'utf8'))
    .join('\n');
}

describe('the codes of problems', () => {
  it('are sorted, each once, in words with hyphens', () => {
    expect(PROBLEM_CODES).toEqual([...new Set(PROBLEM_CODES)].sort());
    for (const code of PROBLEM_CODES) expect(code).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
  });

  it('are all in use', () => {
    const text = programText();
    expect(PROBLEM_CODES.filter((code) => !text.includes(`'${code}'`))).toEqual([]);
  });
});
