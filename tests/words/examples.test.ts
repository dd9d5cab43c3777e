/** What a refusal gives as an example is read as it stands, in every language. */
import { describe, expect, it } from 'vitest';
import { typedEngine } from '../../src/job/engine-layout.ts';
import { seatTurn } from '../../src/plug/seat-turn.ts';
import type { Plug } from '../../src/plug/specification.ts';
import { ANGLE, LENGTH, TORQUE } from '../../src/quantity/kind.ts';
import { parseAngleRange, parseLengthRange, parseTorqueRange } from '../../src/quantity/range.ts';
import { inLanguage, LANGUAGES } from '../../src/words/catalogue.ts';
import { dictionary } from '../../src/words/dictionaries.ts';

const KINDS = [
  [TORQUE, parseTorqueRange],
  [LENGTH, parseLengthRange],
  [ANGLE, parseAngleRange],
] as const;
const PLUGS: readonly Pick<Plug, 'thread' | 'seat' | 'gasket'>[] = [
  { thread: 'M14x1.25', seat: 'conical' },
  { thread: 'M14x1.25', seat: 'gasket', gasket: 'used' },
  { thread: 'M14x1.25', seat: 'gasket' },
  { thread: 'M10x1', seat: 'gasket' },
];

describe.each(LANGUAGES)('in %s', (language) => {
  const spoken = async <T>(make: () => T): Promise<T> => inLanguage(await dictionary(language), make);

  it.each(KINDS)('a range of a $measured', async ({ words }, parse) => {
    const example = await spoken(() => words.example);
    const examples = example.split(/ (?:or|oder|ou|o) /);
    expect(examples).toHaveLength(2);
    expect(examples.filter((text) => !parse(text).ok)).toEqual([]);
  });

  it('an engine', async () => {
    const refused = await spoken(() => typedEngine('?'));
    const examples = refused.ok
      ? []
      : [...refused.error.matchAll(/"([^"]+)"/g)].map(([, text]) => text ?? '');
    expect(examples).toHaveLength(4);
    expect(examples.filter((text) => !typedEngine(text).ok)).toEqual([]);
  });

  it('the usual turn of a seat', async () => {
    const turns = await spoken(() => PLUGS.map((plug) => seatTurn({ part: 'X', ...plug }).turn));
    expect(new Set(turns).size).toBe(PLUGS.length);
    expect(turns.filter((text) => !parseAngleRange(text).ok)).toEqual([]);
  });
});
