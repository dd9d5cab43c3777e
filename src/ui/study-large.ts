/** The part for eyes two metres away: who measures, which part, which trial; the torque while a wrench is pulled. */

import { w } from '../words/catalogue.ts';
import type { Glyphs } from './glyphs.ts';
import { canDraw, largeLetters, pixelsWide } from './letters.ts';
import type { Line } from './line.ts';
import { columnsOf, fill, printable } from './printable.ts';
import { type StudyView, unitOf } from './study-view.ts';
import { figure, roughTorque, type Tone, unitWord } from './words.ts';

interface Block {
  readonly caption: string;
  /** What may be drawn, the best first; none where there are no letters for it. */
  readonly texts: readonly string[];
}

/** Capitals without their marks, as the large letters have them. */
const plain = (text: string): string => text.normalize('NFKD').replace(/\p{M}/gu, '').toUpperCase();

/** The first word of a name, the whole of it, its initials, as far as they tell it from the others and can be drawn. */
function names(name: string, all: readonly string[]): readonly string[] {
  const ways: readonly ((text: string) => string)[] = [
    (text) => text.split(' ')[0] ?? '',
    (text) => text,
    (text) =>
      text
        .split(' ')
        .map(([letter = '']) => letter)
        .join(''),
  ];
  return ways.flatMap((way) => {
    const short = plain(way(name));
    const alone = all.filter((other) => plain(way(other)) === short).length === 1;
    return alone && short !== '' && canDraw(short) ? [short] : [];
  });
}

const GAP = ' ';
/** Lower letters are for those who stand near; another name is better then. */
const FROM_AFAR = 5;

interface Drawn {
  readonly caption: string;
  readonly text: string;
}

/** The blocks beside each other, all in one size, each under its caption; null where they do not fit into `rows`. */
function beside(blocks: readonly Drawn[], columns: number, rows: number, glyphs: Glyphs) {
  const joined = blocks.map(({ text }) => text).join(GAP);
  const letters = largeLetters(joined, columns, rows, glyphs);
  if (letters === null) return null;
  const scale = (letters[0]?.length ?? 0) / pixelsWide(joined);
  let captions = '';
  let before = '';
  for (const { caption, text } of blocks) {
    const from = before === '' ? 0 : (pixelsWide(before) + 1) * scale;
    captions =
      fill(captions, Math.min(from, columns - columnsOf(caption)) - 1, '') + (before && ' ') + caption;
    before += text + GAP;
  }
  return [captions, ...letters];
}

/** With the first name that can be read from afar; what there are no letters for stands above, in words. */
function blocksLines(
  blocks: readonly Block[],
  columns: number,
  rows: number,
  glyphs: Glyphs,
): readonly Line[] {
  const [first, ...others] = blocks.filter(({ texts }) => texts.length > 0);
  const rest = others.map(({ caption, texts }) => ({ caption, text: texts[0] ?? '' }));
  const drawn = (first?.texts ?? [])
    .map((text) => beside([{ caption: first?.caption ?? '', text }, ...rest], columns - 4, rows, glyphs))
    .filter((lines) => lines !== null);
  const lines = drawn.find((some) => some.length > FROM_AFAR) ?? drawn[0] ?? [];
  const inWords = lines.length === 0 ? blocks : blocks.filter(({ texts }) => texts.length === 0);
  return [
    ...(inWords.length === 0
      ? []
      : [[{ text: `  ${inWords.map(({ caption }) => caption).join('   ')}`, bold: true }]]),
    ...lines.map((text, row) => [{ text: `  ${text}`, bold: row > 0, dim: row === 0 }]),
  ];
}

function word(caption: string, text: string, tone?: Tone) {
  return { caption, text, tone };
}

/** One word instead of who and what. */
function wordFor(view: StudyView, glyphs: Glyphs) {
  const { paused, due, live, asked } = view;
  const unit = unitOf(view);
  if (paused) return word(w`nothing is taken`, w`PAUSE`, 'attention');
  if (asked !== null)
    return word(w`is that so, in ${unitWord(unit, glyphs)}?`, figure(asked.value, unit), 'attention');
  if (due === null) return word(w`all is measured`, w`DONE`, 'good');
  if (live?.pulling === true)
    return word(w`torque now in ${unitWord('N.m', glyphs)}`, roughTorque(live.nowNm, 1));
  return null;
}

/** A caption and large letters in `rows` lines more, as large as they fit. */
export function studyLarge(view: StudyView, columns: number, rows: number, glyphs: Glyphs): readonly Line[] {
  const one = wordFor(view, glyphs);
  if (one !== null) {
    const drawn = largeLetters(one.text, columns - 4, rows, glyphs) ?? [one.text];
    return [one.caption, ...drawn].map((text, row) => [
      { text: `  ${text}`, tone: one.tone, bold: row > 0, dim: row === 0 },
    ]);
  }
  const { due, appraisers, parts, trials } = view;
  if (due === null) return [];
  const part = parts[due.part] ?? '';
  const who = printable(appraisers[due.appraiser] ?? '', columns, glyphs.ascii);
  const what = plain(part);
  return blocksLines(
    [
      { caption: who, texts: names(appraisers[due.appraiser] ?? '', appraisers) },
      { caption: w`part ${printable(part, columns, glyphs.ascii)}`, texts: canDraw(what) ? [what] : [] },
      { caption: w`trial ${due.trial} of ${trials}`, texts: [String(due.trial)] },
    ],
    columns,
    rows,
    glyphs,
  );
}
