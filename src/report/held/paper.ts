/**
 * A paper held against the one that its record gives: the same version of the program gives every byte again. Of a paper by
 * another version the words and figures are compared, and what is drawn is not.
 */

import { type Check, doubtful, failed, passed } from '../../evidence/check.ts';
import { andMore } from '../../evidence/wordings.ts';
import { SI } from '../../quantity/shown.ts';
import { type Sentence, sentence } from '../../words/catalogue.ts';
import type { FontSources } from '../fonts/fonts.ts';
import { LACKING, WITH_MACHINE_FONTS } from '../fonts/lacking.ts';
import type { Audience } from '../reader.ts';
import { type PaperFile, readPaper } from './pdf-file.ts';

const NAME = 'paper';

/** `other-version`: its words and figures were compared, and nothing else of it. */
export interface HeldPaper {
  readonly outcome: 'same' | 'other-version' | 'differs';
  /** In the language in which it is read. */
  readonly detail: string;
}

const held = (outcome: HeldPaper['outcome'], detail: Sentence): HeldPaper => ({
  outcome,
  get detail() {
    return detail();
  },
});

const SAME = held('same', sentence`The pages are what the record gives, byte for byte.`);

/**
 * `draw` gives what this program draws from the record that belongs to the paper, in the language and the units that it names. Where its own fonts lack a letter, a paper is
 * drawn with those of its station's machine, which this one need not have.
 */
export async function heldPaper(
  given: Uint8Array,
  draw: (fonts: FontSources, audience: Audience) => Promise<Uint8Array>,
): Promise<HeldPaper> {
  const its = readPaper(given);
  const audience = its?.audience ?? { language: 'en', units: SI };
  const own = await draw('own', audience);
  if (isSame(given, own)) return SAME;
  const ours = ownPaper(own);
  const mayNeedOthers =
    ours
      .pages()
      ?.flat()
      .some((text) => text.includes(LACKING)) === true;
  if (!mayNeedOthers || its?.drawnBy !== ours.drawnBy + WITH_MACHINE_FONTS)
    return heldReading(its, ours, false);
  const withOthers = await draw('machine', audience);
  return isSame(given, withOthers) ? SAME : heldReading(its, ownPaper(withOthers), true);
}

function ownPaper(bytes: Uint8Array): PaperFile {
  const paper = readPaper(bytes);
  if (paper === null) throw new Error('this program does not read its own papers');
  return paper;
}

function heldReading(its: PaperFile | null, ours: PaperFile, otherFonts: boolean): HeldPaper {
  const pages = its?.pages() ?? null;
  if (its === null || pages === null)
    return differs(
      sentence`The file is not as plugmark writes papers: another program wrote it or wrote it again, and could show anything.`,
    );
  const byAnother = otherFonts || its.drawnBy.replace(WITH_MACHINE_FONTS, '') !== ours.drawnBy;
  const own = ours.pages() ?? [];
  const isNumber = pageNumberIn(own);
  const words = (all: readonly (readonly string[])[]) => all.flat().filter((text) => !isNumber.test(text));
  return byAnother ? heldTexts(words(pages), words(own), its) : heldTexts(pages.flat(), own.flat(), null);
}

const differs = (detail: Sentence): HeldPaper => held('differs', detail);

function heldTexts(its: readonly string[], ours: readonly string[], by: PaperFile | null): HeldPaper {
  const at = its.findIndex((text, i) => text !== ours[i]);
  const isAlike = at < 0 && its.length === ours.length;
  if (by === null)
    return isAlike
      ? differs(sentence`Its words are those of the record, and something else of the file was changed.`)
      : differs(
          sentence`It says "${short(its[at])}" where the record gives "${short(ours[at < 0 ? its.length : at])}".`,
        );
  const drawn = by.drawnBy === '' ? sentence`another program drew it` : sentence`${by.drawnBy} drew it`;
  if (isAlike)
    return held(
      'other-version',
      sentence`${drawn}: every word and figure is what the record gives; lines and shades were NOT compared.`,
    );
  const [strange, ...more] = figuresOnlyIn(its, ours);
  if (strange !== undefined)
    return differs(
      sentence`${drawn}, and it has figures that the record does not give: ${andMore(() => `"${short(strange)}"`, more.length)}.`,
    );
  return held(
    'other-version',
    sentence`${drawn}: it has other words, and every figure and verdict on it is one that the record gives; which of them is in which place, and what is drawn, was NOT compared.`,
  );
}

/** Figures, and words in capitals, which verdicts are. */
const FIGURE = /[\p{L}\p{N}.:/-]*\p{N}[\p{L}\p{N}]*|\b\p{Lu}{2,}\b/gu;

/** `Page 2 of 3` in the language of a paper: the first page has the pattern. */
function pageNumberIn(pages: readonly (readonly string[])[]): RegExp {
  const first = new RegExp(`^(\\p{L}+) 1 (\\p{L}+) ${pages.length}$`, 'u');
  const [, page, of] = pages[0]?.map((text) => first.exec(text)).find((found) => found !== null) ?? [];
  return page === undefined ? /^$/ : new RegExp(`^${page} \\d+ ${of} \\d+$`, 'u');
}

/** What only the first have. */
export function figuresOnlyIn(its: readonly string[], ours: readonly string[]): readonly string[] {
  const figures = (texts: readonly string[]) => new Set(texts.flatMap((text) => text.match(FIGURE) ?? []));
  const known = figures(ours);
  return [...figures(its)].filter((figure) => !known.has(figure));
}

const SHORT = 60;
const short = (text = '') => (text.length <= SHORT ? text : `${text.slice(0, SHORT)}…`);

function isSame(some: Uint8Array, others: Uint8Array): boolean {
  return some.length === others.length && some.every((byte, i) => byte === others[i]);
}

/** What a reader of the paper should know of it before anything else. */
export function paperCheck(paper: HeldPaper): Check {
  const detail = () => paper.detail;
  if (paper.outcome === 'same') return passed(NAME, detail);
  return paper.outcome === 'differs' ? failed(NAME, detail) : doubtful(NAME, detail);
}
