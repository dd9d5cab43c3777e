/** What the gap of a plug asks for next. */
import type { GapStep, Replacement } from '../../plug/gap.ts';

export const REPLACEMENT_WORDS: {
  readonly [R in Replacement['because']]: (replacement: Replacement) => string;
} = {
  'not-adjustable': (of) => barred(of, 'the specification does not allow adjusting'),
  'used-not-adjustable': (of) => barred(of, 'the specification does not allow adjusting a used plug'),
  'tip-not-adjustable': (of) =>
    barred(of, 'only nickel tips are adjusted unless the specification allows it'),
  'several-electrodes-not-adjustable': (of) =>
    barred(of, 'several ground electrodes are not adjusted unless the specification allows it'),
  'bent-too-far': ({ bentMm, limitMm }) =>
    `the electrode was bent by ${mm(bentMm)} in all; the limit is ${mm(limitMm)}`,
  'needs-too-much': ({ neededMm, limitMm }) =>
    `it needs a bend of ${mm(neededMm)}; the limit is ${mm(limitMm)}`,
  'not-sound': () => 'it does not look sound',
};

const mm = (lengthMm = 0): string => `${lengthMm.toFixed(2)} mm`;

const barred = ({ bentMm }: Replacement, why: string): string =>
  bentMm === undefined ? why : `it was bent, but ${why}`;

export const replacementText = (replacement: Replacement): string =>
  REPLACEMENT_WORDS[replacement.because](replacement);

/** Null where the plug can be fitted. */
export function gapStepText(step: GapStep): string | null {
  switch (step.do) {
    case 'fit':
      return null;
    case 'regap':
      return `bend the ground electrode at its base by ${mm(step.bendMm)} and measure again`;
    case 'replace':
      return replacementText(step);
  }
}
