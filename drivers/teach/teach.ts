import { scaled } from '../../src/reading.ts';
import { ENGLISH, inLanguage, w } from '../../src/words/catalogue.ts';
import { decoderOf, valueScaling } from '../profile/decoder.ts';
import { parseProfile } from '../profile/file.ts';
import type { Profile } from '../profile/schema.ts';
import { byteLayouts } from './byte-layouts.ts';
import type { Candidate, Unexplained } from './candidate.ts';
import { type Cutting, cuttingsOf, FEWEST, type Observed, partsOf, type Stated } from './observed.ts';
import { inSi } from './scale-search.ts';
import { textLayouts } from './text-layouts.ts';

/*
 * Finds the layout of a device from what it sent at stated figures. A layout counts only if it explains every byte of
 * every frame and every figure, if no other one does so too, and if it reads a figure that it was not made from.
 */

export interface Lesson {
  readonly title: string;
  /** As in a profile. */
  readonly link: Readonly<Record<string, unknown>>;
  readonly observed: Observed;
  /** Kept back, to prove the profile with. */
  readonly proof: Stated;
}

export type Taught =
  | {
      readonly outcome: 'taught';
      readonly profile: Profile;
      readonly text: string;
      readonly summary: string;
      readonly readAs: number;
    }
  /** More than one explains all; `ask` separates them. */
  | { readonly outcome: 'ambiguous'; readonly fits: readonly string[]; readonly ask: string }
  | { readonly outcome: 'refused'; readonly why: string };

export function teach(lesson: Lesson): Taught {
  const { observed } = lesson;
  if (observed.stated.length < 3)
    return refused(
      w`Three figures at least are needed, and one to prove it with; there are ${observed.stated.length}.`,
    );
  let unexplained: Unexplained | undefined;
  for (const cutting of cuttingsOf(observed)) {
    const parts = partsOf(observed, cutting);
    if ([parts.rest, ...parts.stated.map(({ frames }) => frames)].some((frames) => frames.length < FEWEST))
      continue;
    const found = cutting.of === 'text' ? textLayouts(observed, parts) : byteLayouts(observed, parts);
    if ('why' in found) {
      unexplained ??= found;
      continue;
    }
    const fits = found.flatMap((candidate) => {
      const made = profileOf(lesson, cutting, candidate);
      return made === undefined || readsAll(made.profile, cutting, observed) === false
        ? []
        : [{ ...made, candidate }];
    });
    const [fit, ...others] = observed.quantity === 'length' ? narrowest(fits) : fits;
    if (fit === undefined) continue;
    if (others.length > 0)
      return ambiguous(
        [fit, ...others].map(({ candidate }) => candidate),
        observed,
      );
    return proven(lesson, cutting, fit);
  }
  return refused(wordsFor(unexplained));
}

const refused = (why: string): Taught => ({ outcome: 'refused', why });

interface Fit {
  readonly candidate: Candidate;
  readonly profile: Profile;
  readonly text: string;
}

/** A gap is never below 0 and never large: signed and unsigned, narrow and wide, and all kinds of one place read it alike. */
function narrowest(fits: readonly Fit[]): readonly Fit[] {
  const signed = fits.filter(({ candidate }) => candidate.isSigned);
  const least = Math.min(...signed.map(({ candidate }) => candidate.size));
  const narrow = signed.length === 0 ? fits : signed.filter(({ candidate }) => candidate.size === least);
  const places = new Map<string, Fit>();
  for (const fit of narrow) if (!places.has(fit.candidate.reads)) places.set(fit.candidate.reads, fit);
  return [...places.values()];
}

function profileOf(
  { title, link, observed, proof }: Lesson,
  { frames, cut }: Cutting,
  { layout, summary }: Candidate,
) {
  const figures = [...observed.stated.map(({ figure }) => figure), proof.figure].join(', ');
  const text = JSON.stringify(
    {
      form: 'plugmark/profile/2',
      title,
      taught: {
        unit: observed.unit,
        step: observed.step,
        figures: observed.stated.map(({ figure }) => figure),
        proof: proof.figure,
        frames: [observed.rest, ...observed.stated.map(({ sent }) => sent)].flatMap(cut).length,
      },
      source:
        `No document: found on the bench from ${figures} ${observed.unit} on the display, the last one to prove it. ${inLanguage(ENGLISH, summary)}`.slice(
          0,
          400,
        ),
      quantity: observed.quantity,
      link,
      frames: frames.by === 'length' ? { ...frames, quietMs: 500 } : frames,
      layout,
      samplingFunction: 'unspecified',
    },
    null,
    2,
  );
  const profile = parseProfile(text, title);
  return profile.ok ? { profile: profile.value, text } : undefined;
}

/** The decoder itself has the last word: no frame of the lesson may be anything else than what the layout tells. */
function readsAll({ layout }: Profile, { cut }: Cutting, { rest, stated }: Observed): boolean {
  const decode = decoderOf(layout);
  return [rest, ...stated.map(({ sent }) => sent)].every((sent) =>
    cut(sent).every((frame) => decode(frame).ok),
  );
}

function proven({ observed, proof }: Lesson, { cut }: Cutting, { profile, text, candidate }: Fit): Taught {
  const decode = decoderOf(profile.layout);
  const { exponent, resolutionCounts } = valueScaling(profile.layout);
  const one = inSi(observed.unit);
  const numbers = cut(proof.sent).map((frame) => {
    const made = decode(frame);
    return made.ok
      ? made.value.counts.map((counts) => scaled(counts ?? Number.NaN, exponent) / one)
      : [Number.NaN];
  });
  const all = numbers.flat();
  const readAs =
    observed.quantity === 'length'
      ? (all.at(-1) ?? Number.NaN)
      : all.reduce(
          (most, number) => (Math.abs(number) > Math.abs(most) || Number.isNaN(number) ? number : most),
          0,
        );
  const tolerance = 0.51 * Number(observed.step) + scaled(resolutionCounts, exponent) / one;
  if (!(Math.abs(readAs - proof.figure) <= tolerance))
    return refused(
      w`The only layout that explains the others (${candidate.summary()}) does not read the figure that was kept back: ${proof.figure} ${observed.unit}. Nothing was written.`,
    );
  return { outcome: 'taught', profile, text, summary: candidate.summary(), readAs };
}

function ambiguous(candidates: readonly Candidate[], { quantity, stated, unit }: Observed): Taught {
  const isBelow = stated.some(({ figure }) => figure < 0);
  const largest = Math.max(...stated.map(({ figure }) => Math.abs(figure)));
  const ask =
    quantity === 'torque' && !isBelow
      ? w`Pull once against the tightening direction, and give that figure with a minus.`
      : w`Give one more figure, clearly above ${largest} ${unit}.`;
  return { outcome: 'ambiguous', fits: candidates.map(({ summary }) => summary()), ask };
}

function wordsFor(unexplained: Unexplained | undefined): string {
  if (unexplained === undefined)
    return w`No way was found to cut what it sends into frames. It may send too little, or nothing regular.`;
  if (unexplained.why === 'bytes-unexplained' && unexplained.bytes.length > 0)
    return w`A number follows the figures, but bytes ${unexplained.bytes.join(', ')} of the frame change and nothing explains them. They could say that the number does not count, so no profile is written.`;
  return w`No number in its frames follows the figures. The device may encrypt what it sends, or compute it in a way that cannot be described.`;
}
