import { Subject } from 'rxjs';
import { describe, expect, test } from 'vitest';
import { parseTyped, type TypedUnit } from '../../../drivers/typed/figure.ts';
import { typedTool } from '../../../drivers/typed/tool.ts';
import type { Reading } from '../../../src/reading.ts';
import { good } from '../bench.ts';

describe('a typed figure', () => {
  test.each<[string, TypedUnit, number]>([
    ['0.75', 'mm', 7_500],
    [' 0.75 mm\r', 'mm', 7_500],
    ['.75', 'mm', 7_500],
    ['+0.75', 'mm', 7_500],
    ['0.030', 'in', 7_620],
    ['0.030 in', 'mm', 7_620],
  ])('%j with %s is %d steps of 0.1 µm', (line, unit, counts) => {
    expect(parseTyped(line, 'length', unit)).toEqual({ ok: true, value: counts });
  });

  test.each(['', 'abc', '0.7 0.8', '0.75 N·m', '-0.75', '1e3', '0.7-0.8', '\u001b[2J0.75'])(
    '%j is none',
    (line) => {
      expect(parseTyped(line, 'length', 'mm')).toMatchObject({ ok: false });
    },
  );
});

test('lines become readings with a number and a stamp; what is no figure is kept and never judged', async () => {
  const lines$ = new Subject<string>();
  let nowUs = 0;
  const clock = { nowUs: () => nowUs };
  const tool = typedTool({ id: 'gauge', quantity: 'length', unit: 'mm', clock, lines$ });
  const readings: Reading[] = [];
  tool.readings$.subscribe((reading) => readings.push(reading));
  lines$.next('0.70'); // nobody listens yet
  expect(good(await tool.connect())).toMatchObject({
    quantity: 'length',
    exponent: -7,
    link: { kind: 'keyboard', authenticated: false },
  });
  for (const line of ['0.75', 'hello', '0.76']) {
    nowUs += 1_000;
    lines$.next(line);
  }
  await tool.close();
  lines$.next('0.77');
  expect(readings).toEqual([
    { kind: 'value', n: 1, atUs: 1_000, counts: 7_500 },
    { kind: 'raw', n: 2, atUs: 2_000, source: 'typed', hex: Buffer.from('hello').toString('hex') },
    { kind: 'value', n: 3, atUs: 3_000, counts: 7_600 },
  ]);
  expect(lines$.observed).toBe(false);
});
