import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES } from '../../src/problem-code.ts';

const ROOT = join(import.meta.dirname, '../..');
const LIST = join('src', 'problem-code.ts');

/** Everything that the program runs, but the list itself. */
function programText(): string {
  return programFiles().join('\n');
}

function programFiles(): readonly string[] {
  return ['src', 'drivers', 'sim', 'db']
    .flatMap((room) =>
      readdirSync(join(ROOT, room), { recursive: true, encoding: 'utf8' }).map((name) => join(room, name)),
    )
    .filter((path) => /\.tsx?$/.test(path) && path !== LIST)
    .map((path) => readFileSync(join(ROOT, path), 'utf8'));
}

/** The texts behind `name:` that are written out where they stand, word for word. */
function literals(name: 'message' | 'next'): readonly string[] {
  const literal = new RegExp(`\\b${name}:\\s*w?(['"\`])((?:(?!\\1)[^\\n])+)\\1,?\\n`, 'g');
  return programFiles().flatMap((text) => [...text.matchAll(literal)].map(([, , words = '']) => words));
}

/** With a full stop; or with a command, which is copied from there and must not take a full stop along. */
const ENDS = /[.}]$|: (plugmark|sudo) .*$/;

describe('the codes of problems', () => {
  it('are sorted, each once, in words with hyphens', () => {
    expect(PROBLEM_CODES).toEqual([...new Set(PROBLEM_CODES)].sort());
    for (const code of PROBLEM_CODES) expect(code).toMatch(/^[a-z]+(-[a-z0-9]+)*$/);
  });

  it('are all in use', () => {
    const text = programText();
    expect(PROBLEM_CODES.filter((code) => !text.includes(`'${code}'`))).toEqual([]);
  });

  it('come with a message that can follow a location, and a next step in whole sentences', () => {
    const messages = literals('message');
    const steps = literals('next');
    expect(messages.length).toBeGreaterThan(100);
    expect(steps.length).toBeGreaterThan(100);
    expect(messages.filter((words) => words.endsWith('.') || /^(The|This|A|No) /.test(words))).toEqual([]);
    expect(steps.filter((words) => !ENDS.test(words) || /^[a-z]/.test(words))).toEqual([]);
  });
});
