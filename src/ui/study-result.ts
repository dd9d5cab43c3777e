/** What a study came to: both methods side by side, each with the verdict that is usual in the trade. */

import { w } from '../words/catalogue.ts';
import { folded } from './folded.ts';
import type { Glyphs } from './glyphs.ts';
import { largeLetters } from './letters.ts';
import type { Line, Span } from './line.ts';
import { fill, printable } from './printable.ts';
import type { StudyMethod, StudyResult } from './study-view.ts';
import { type Spoken, type Tone, unitWord } from './words.ts';

type Grade = NonNullable<StudyMethod['values']>['grade'];

/** Common practice (AIAG, "Measurement Systems Analysis"). */
const bounds = (): string =>
  w`GRR at most 10 %: good; above 30 %: not fit; between, or with fewer than 5 categories: weak.`;
const NAME = 22;

function spoken(grade: Grade, glyphs: Glyphs): Spoken & { readonly tone: Tone } {
  switch (grade) {
    case 'good':
      return { symbol: glyphs.done, word: w`GOOD`, tone: 'good' };
    case 'weak':
      return { symbol: glyphs.again, word: w`WEAK`, tone: 'attention' };
    case 'not-fit':
      return { symbol: glyphs.bad, word: w`NOT FIT`, tone: 'bad' };
  }
}

const WORST: readonly Grade[] = ['not-fit', 'weak', 'good'];

/** The graver of the two: who has to decide should see it first. */
function gravest({ methods }: StudyResult): Grade | null {
  const grades = methods.flatMap(({ values }) => (values === null ? [] : [values.grade]));
  return WORST.find((grade) => grades.includes(grade)) ?? null;
}

function table({ methods, unit }: StudyResult, columns: number, glyphs: Glyphs): Line[] {
  const computed = methods.flatMap(({ title, values }) =>
    values === null ? [] : [{ title, found: values }],
  );
  const width = Math.min(24, Math.floor((columns - NAME - 1) / Math.max(1, computed.length)));
  const line = (name: string, cells: readonly Span[], bold = false): Line => [
    { text: ` ${fill(name, NAME, '')}`, bold },
    ...cells.map(({ text, ...how }) => ({ ...how, text: fill(text, width, glyphs.cutMark) })),
  ];
  const names = computed[0]?.found.variations.map(({ name }) => name) ?? [];
  return [
    line(
      w`in ${unitWord(unit, glyphs)}`,
      computed.map(({ title }) => ({ text: title, dim: true })),
    ),
    ...names.map((name, i) =>
      line(
        name,
        computed.map(({ found: values }) => {
          const { sigma, percent } = values.variations[i] ?? { sigma: '', percent: '' };
          return { text: `${sigma.padStart(9)} ${percent.padStart(7)}` };
        }),
      ),
    ),
    line(
      w`categories (ndc)`,
      computed.map(({ found: values }) => ({ text: values.categories.padStart(9) })),
    ),
    line(
      w`verdict`,
      computed.map(({ found: values }) => {
        const { symbol, word, tone } = spoken(values.grade, glyphs);
        return { text: ` ${symbol} ${word}`, tone, bold: true };
      }),
      true,
    ),
  ];
}

/** The verdict large, as far as there is room, then the table and the notes from line `from` on. */
export function resultLines(
  result: StudyResult,
  { columns, rows }: { readonly columns: number; readonly rows: number },
  from: number,
  glyphs: Glyphs,
): readonly Line[] {
  const fold = (text: string): Line[] =>
    folded(printable(text, 800, glyphs.ascii), columns - 2, 6, glyphs.cutMark).map((part) => [
      { text: ` ${part}` },
    ]);
  const body: Line[] = [
    ...table(result, columns, glyphs),
    ...fold(bounds()),
    ...result.methods.flatMap(({ title, values, why }) => (values === null ? fold(`${title}: ${why}`) : [])),
    ...result.notes.flatMap(fold),
  ];
  const grade = gravest(result);
  const large = grade === null ? null : spoken(grade, glyphs);
  const room = Math.min(10, rows - body.length - 1);
  const drawn = large === null ? null : largeLetters(large.word, columns - 4, room, glyphs);
  const head: Line[] =
    large === null || drawn === null
      ? []
      : [...drawn.map((text) => [{ text: `  ${text}`, tone: large.tone, bold: true }]), []];
  const most = Math.max(0, head.length + body.length - rows);
  return [...head, ...body].slice(Math.min(from, most)).slice(0, rows);
}
