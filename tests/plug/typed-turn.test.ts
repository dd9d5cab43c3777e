import { describe, expect, it } from 'vitest';
import { typedTurn } from '../../src/plug/typed-turn.ts';

describe('a turn that was done by hand', () => {
  it.each([
    ['1/2 turn', '1/2 turn'],
    ['1/2', '1/2 turn'],
    ['0.5', '0.5 turn'],
    ['0,5', '0,5 turn'],
    ['1', '1 turn'],
    ['180°', '180°'],
    ['180', '180°'],
    ['1/2-2/3 turn', '1/2-2/3 turn'],
    ['1/2-2/3', '1/2-2/3 turn'],
  ])('is taken as %s and recorded with its unit', (text, printed) => {
    expect(typedTurn(text)).toEqual({ ok: true, value: printed });
  });

  it.each(['', 'half', '95 mm', '27 N·m', '0', '-1/2', '3 turn', '800', '800°', '1/0'])(
    'is refused as "%s"',
    (text) => {
      expect(typedTurn(text).ok).toBe(false);
    },
  );
});
