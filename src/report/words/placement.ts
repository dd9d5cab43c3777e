/** What a pull was taken for, and why: the sentence of each reason, with the figures that it rests on. */
import type { TorqueAttempt } from '../../job/state.ts';
import { torqueText } from '../../quantity/shown.ts';
import type { PullKind } from '../../sequence/kind.ts';
import type { PlacementReason } from '../../sequence/reason.ts';
import { fixed, phrases, w } from '../../words/catalogue.ts';
import { degrees } from './turn.ts';

type Placed = Pick<TorqueAttempt, 'pull' | 'evidence' | 'otherPull' | 'leftOut'>;

export const KIND_WORDS: Readonly<Record<PullKind, string>> = phrases({
  tightening: 'tightening',
  continuation: 'continued',
  'run-down': 'run-down',
  rehit: 're-hit',
  check: 'check pull',
  loosening: 'loosening',
  handling: 'handling',
  unsure: 'unsure',
});

export const PLACEMENT_WORDS: { readonly [R in PlacementReason]: (placed: Placed) => string } = {
  'too-little-torque': () => w`too little torque to turn a plug`,
  knock: () => w`it rose and fell like a knock`,
  'none-due': () => w`no cylinder is due`,
  'trial-click': ({ pull }) => trialText(pull),
  'plug-turned': (placed) => w`${rose(placed)}: the plug turned`,
  'first-plug': () => w`the first plug of this engine`,
  'went-on-from-stroke': () => w`it went on from the stroke before`,
  'went-on-after-short': (placed) => w`${rose(placed)}: it went on after stopping short`,
  'ended-low': () => w`it ended low`,
  'next-plug-ended-low': () => w`a plug turned from loose and ended low: the next one`,
  'ended-without-click': () => w`it ended without a click`,
  'low-during-question': () => w`a low stroke while a question was open`,
  'stopped-short': () => w`nothing followed: it stopped short`,
  'same-plug-again': (placed) => w`${rose(placed)}: the same plug once more`,
  'tight-plug-again': (placed) => w`${rose(placed)}: a plug already tight was tried again`,
  'at-once-again': () => w`sooner than anybody gets to another plug`,
  'all-done': () => w`every cylinder is done`,
  'did-not-turn': (placed) => w`${compared(placed)}: the plug did not turn`,
  'tight-or-turning': (placed) => w`${compared(placed)}: a tight plug or one that still turned`,
  'trial-or-first-plug': () => w`the trial click, or the first plug`,
  'last-tight-or-turning': (placed) =>
    w`${compared(placed)}: the last plug turning, or a tight one again because one was left out`,
  'turned-too-soon': (placed) => w`${rose(placed)}: a plug turned, too soon after the last`,
  'stroke-before-in-doubt': (placed) => w`${rose(placed)}, and the stroke before need not have turned it`,
  'below-held': () => w`it ended below what this plug had held`,
  'slow-to-held': ({ evidence }) =>
    w`it took ${Math.round(evidence?.heldRiseMs ?? 0)} ms to what this plug had held`,
  'maybe-tight': () => w`it may have been a plug that was tight already`,
  'turned-from-loose': () => w`it turned from loose, which a plug that had held as much does not`,
  'last-stroke-elsewhere': () => w`the stroke before was on the next plug`,
  'did-not-turn-on': () => w`the plug did not turn on`,
  'knock-or-short': () => w`a knock, or a stroke that stopped short`,
  'no-click-and-nothing-followed': () => w`it reached the window without a click, and nothing followed`,
  'went-on-from-question': (placed) => w`${rose(placed)}: it went on from the pull in question`,
  'during-question': () => w`it came while a question was open`,
  'turned-though-all-done': (placed) => w`${rose(placed)}: a plug turned, though every cylinder is done`,
  'turned-again-later': ({ otherPull = 0 }) =>
    w`if the plug turned in pull ${otherPull}, this one was on another`,
  'check-above-window': () => w`a check pull went above the window`,
  'end-missing': () => w`its end is missing`,
  'end-of-scale': ({ pull }) => w`the readings stood at ${torqueText(pull.highestNm)}, the end of the scale`,
  'by-plan': ({ pull }) =>
    w`${torqueText(pull.peakNm)}, the highest torque; this tool sends nothing else of a pull`,
  'after-jump': ({ pull }) =>
    w`${torqueText(pull.peakNm)}, the first pull since the cylinder that is due changed`,
  'two-tools-at-once': () => w`two tools felt torque at the same time`,
  'to-be-backed-out': () => w`this plug was to be backed out`,
  'none-tight-yet': () => w`no plug was tight yet`,
  'loosened-after-proof': () => w`a plug was loosened after it had been proven`,
  'loosened-at-once': () => w`it was loosened at once after it was tightened`,
  answered: () => w`answered by the technician`,
  given: () => w`given to this cylinder by the technician`,
  'with-other-pull': ({ otherPull = 0 }) => w`with pull ${otherPull}`,
  'other-pull-went-on': ({ otherPull = 0 }) => w`pull ${otherPull} went on from it`,
  'cylinder-left-out': ({ leftOut = 0 }) => w`the plug of cylinder ${leftOut} was left out`,
};

export const placementText = (placed: Placed & Pick<TorqueAttempt, 'because'>): string =>
  PLACEMENT_WORDS[placed.because](placed);

/** How far it turned where that was measured, else how fast it rose; and how long after the pull before. */
function rose({ pull, evidence }: Placed): string {
  const turnDeg = evidence?.plugDeg;
  const seen =
    turnDeg === undefined ? w`rose in ${Math.round(pull.riseMs)} ms` : w`turn measured, ${degrees(turnDeg)}`;
  const pauseMs = evidence?.sinceLastMs ?? null;
  return pauseMs === null ? seen : w`${seen}, ${fixed(pauseMs / 1000, 1)} s after the last`;
}

/** The same, with what the plugs that turned in this job took, and whether it rose in a straight line. */
function compared(placed: Placed): string {
  const { uneven, usualRiseMs, plugDeg } = placed.evidence ?? {};
  const seen = rose(placed);
  if (plugDeg !== undefined) return seen;
  const straight = uneven !== undefined && uneven < STRAIGHT ? w`${seen} in a straight line` : seen;
  return usualRiseMs === undefined ? straight : w`${straight}, usual ${Math.round(usualRiseMs)} ms`;
}

/** Less uneven than this looks straight to the eye. */
const STRAIGHT = 0.1;

/** What a trial click showed, and what follows from it. */
function trialText({
  release,
  releaseNm,
  dropShare,
  slightFall,
  peakNm,
  longestGapUs,
}: TorqueAttempt['pull']): string {
  const percent = (share: number) => `${fixed(100 * share, 0)} %`;
  const beyond = (clickNm: number) =>
    w`the pull went ${percent(Math.max(0, peakNm / clickNm - 1))} beyond it`;
  if (release === 'seen' && releaseNm !== null)
    return w`trial click: the torque fell by ${percent(dropShare ?? 0)}, ${beyond(releaseNm)}`;
  if (slightFall !== undefined)
    return w`trial click: weak, the torque fell by ${percent(slightFall.dropShare)} only, ${beyond(slightFall.torqueNm)}; falls like it count as clicks in this job`;
  return release === 'not-visible'
    ? w`trial click: readings come ${Math.round(longestGapUs / 1000)} ms apart, too far to show a click`
    : w`trial click: no fall was seen; after each pull you are asked whether it clicked`;
}
