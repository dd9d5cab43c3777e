/** What the gap of a plug asks for next. */
import type { GapStep, Replacement } from '../../plug/gap.ts';
import { gapText, shownUnits } from '../../quantity/shown.ts';
import { fixed, w } from '../../words/catalogue.ts';

export const REPLACEMENT_WORDS: {
  readonly [R in Replacement['because']]: (replacement: Replacement) => string;
} = {
  'not-adjustable': (of) => barred(of, w`the specification does not allow adjusting`),
  'used-not-adjustable': (of) => barred(of, w`the specification does not allow adjusting a used plug`),
  'tip-not-adjustable': (of) =>
    barred(of, w`only nickel tips are adjusted unless the specification allows it`),
  'several-electrodes-not-adjustable': (of) =>
    barred(of, w`several ground electrodes are not adjusted unless the specification allows it`),
  'bent-too-far': ({ bentMm, limitMm }) =>
    w`the electrode was bent by ${mm(bentMm)} in all; the limit is ${mm(limitMm)}`,
  'needs-too-much': ({ neededMm, limitMm }) =>
    w`it needs a bend of ${mm(neededMm)}; the limit is ${mm(limitMm)}`,
  'not-sound': () => w`it does not look sound`,
};

/** A bend is told to a hundredth of a millimetre: no hand sets it finer. */
const mm = (lengthMm = 0): string =>
  shownUnits().length === 'mm' ? `${fixed(lengthMm, 2)} mm` : gapText(lengthMm);

const barred = ({ bentMm }: Replacement, why: string): string =>
  bentMm === undefined ? why : w`it was bent, but ${why}`;

export const replacementText = (replacement: Replacement): string =>
  REPLACEMENT_WORDS[replacement.because](replacement);

/** Null where the plug can be fitted. */
export function gapStepText(step: GapStep): string | null {
  switch (step.do) {
    case 'fit':
      return null;
    case 'regap':
      return w`bend the ground electrode at its base by ${mm(step.bendMm)} and measure again`;
    case 'replace':
      return replacementText(step);
  }
}
