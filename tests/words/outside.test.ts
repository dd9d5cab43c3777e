/** In the rooms whose sentences people read at the bench and on paper, each is said by the catalogue, or stands here with its reason. */
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { outsideOf } from './outside.ts';

const SRC = new URL('../../src/', import.meta.url).pathname;
const ROOMS = ['report/words', 'job', 'sequence', 'plug', 'metrology', 'instrument', 'pull', 'quantity'];

const OFFICE = 'a file that the office writes; its commands are English';
const MANUAL = 'the manual describes it';
const CODE = 'code, path or pattern';
const TITLE = 'title of a publication';

/** Files that hold texts of another kind. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'report/words/not-proven.ts': 'name of a check',
  'job/coaching.ts': CODE,
  'job/event-fields.ts': 'the form of what a tool sent',
  'job/event-of-tools.ts': 'the form of what a tool sent',
  'job/engine-layout.ts': 'the description of an engine, which a job signs',
  'job/order-of-work.ts': MANUAL,
  'plug/gap.ts': MANUAL,
  'plug/general-table.ts': TITLE,
  'plug/seat-turn.ts': TITLE,
  'pull/coaching.ts': CODE,
  'pull/columns.ts': OFFICE,
  'pull/trace.ts': OFFICE,
  'quantity/spelling.ts': CODE,
};

const files = ROOMS.flatMap((room) =>
  readdirSync(`${SRC}${room}`, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${room}/${name}`),
);
const outsideIn = (file: string) =>
  outsideOf(ts.createSourceFile(file, readFileSync(`${SRC}${file}`, 'utf8'), ts.ScriptTarget.Latest, true));

it('no sentence of these rooms is left out', () => {
  const left = files.filter((file) => !Object.hasOwn(ELSEWHERE, file)).map((file) => [file, outsideIn(file)]);
  expect(left.filter(([, texts]) => texts?.length !== 0)).toEqual([]);
});

it('no file is excused in vain', () => {
  expect(Object.keys(ELSEWHERE).filter((file) => outsideIn(file).length === 0)).toEqual([]);
});

describe('what is left out of a source', () => {
  const left = (text: string) =>
    outsideOf(ts.createSourceFile('x.ts', text.replaceAll('@', '$'), ts.ScriptTarget.Latest, true));

  it('is a text of two words, also in a call, a table, and beside a figure', () => {
    expect(
      left("f('the gap'); g('code'); h({ x: ['a'] }); `gap @{w`the gap @{x ? 'is old' : 'y'}`}`;"),
    ).toEqual(['the gap', 'gap 0', 'is old']);
  });

  it('is nothing that is tagged, told as a phrase, described or thrown', () => {
    expect(left("w`the gap`; phrases({ a: 'the gap' }); z.string().describe('the gap');")).toEqual([]);
    expect(left("throw new Error('the gap'); type T = 'the gap'; import 'the gap';")).toEqual([]);
  });
});
