/** What a pull was taken for, and why: the sentence of each reason, with the figures that it rests on. */
import type { TorqueAttempt } from '../../job/state.ts';
import type { PullKind } from '../../sequence/kind.ts';
import type { PlacementReason } from '../../sequence/reason.ts';
import { degrees } from './turn.ts';

type Placed = Pick<TorqueAttempt, 'pull' | 'evidence' | 'otherPull' | 'leftOut'>;

export const KIND_WORDS: Readonly<Record<PullKind, string>> = {
  tightening: 'tightening',
  continuation: 'continued',
  'run-down': 'run-down',
  rehit: 're-hit',
  check: 'check pull',
  loosening: 'loosening',
  handling: 'handling',
  unsure: 'unsure',
};

export const PLACEMENT_WORDS: { readonly [R in PlacementReason]: (placed: Placed) => string } = {
  'too-little-torque': () => 'too little torque to turn a plug',
  knock: () => 'it rose and fell like a knock',
  'none-due': () => 'no cylinder is due',
  'trial-click': ({ pull }) => trialText(pull),
  'plug-turned': (placed) => `${rose(placed)}: the plug turned`,
  'first-plug': () => 'the first plug of this engine',
  'went-on-from-stroke': () => 'it went on from the stroke before',
  'went-on-after-short': (placed) => `${rose(placed)}: it went on after stopping short`,
  'ended-low': () => 'it ended low',
  'next-plug-ended-low': () => 'a plug turned from loose and ended low: the next one',
  'ended-without-click': () => 'it ended without a click',
  'low-during-question': () => 'a low stroke while a question was open',
  'stopped-short': () => 'nothing followed: it stopped short',
  'same-plug-again': (placed) => `${rose(placed)}: the same plug once more`,
  'tight-plug-again': (placed) => `${rose(placed)}: a plug already tight was tried again`,
  'at-once-again': () => 'sooner than anybody gets to another plug',
  'all-done': () => 'every cylinder is done',
  'did-not-turn': (placed) => `${compared(placed)}: the plug did not turn`,
  'tight-or-turning': (placed) => `${compared(placed)}: a tight plug or one that still turned`,
  'trial-or-first-plug': () => 'the trial click, or the first plug',
  'last-tight-or-turning': (placed) =>
    `${compared(placed)}: the last plug turning, or a tight one again because one was left out`,
  'turned-too-soon': (placed) => `${rose(placed)}: a plug turned, too soon after the last`,
  'stroke-before-in-doubt': (placed) => `${rose(placed)}, and the stroke before need not have turned it`,
  'below-held': () => 'it ended below what this plug had held',
  'slow-to-held': ({ evidence }) =>
    `it took ${Math.round(evidence?.heldRiseMs ?? 0)} ms to what this plug had held`,
  'maybe-tight': () => 'it may have been a plug that was tight already',
  'turned-from-loose': () => 'it turned from loose, which a plug that had held as much does not',
  'last-stroke-elsewhere': () => 'the stroke before was on the next plug',
  'did-not-turn-on': () => 'the plug did not turn on',
  'knock-or-short': () => 'a knock, or a stroke that stopped short',
  'no-click-and-nothing-followed': () => 'it reached the window without a click, and nothing followed',
  'went-on-from-question': (placed) => `${rose(placed)}: it went on from the pull in question`,
  'during-question': () => 'it came while a question was open',
  'turned-though-all-done': (placed) => `${rose(placed)}: a plug turned, though every cylinder is done`,
  'turned-again-later': ({ otherPull }) => `if the plug turned in pull ${otherPull}, this one was on another`,
  'check-above-window': () => 'a check pull went above the window',
  'end-missing': () => 'its end is missing',
  'end-of-scale': ({ pull }) =>
    `the readings stood at ${pull.highestNm.toFixed(2)} N·m, the end of the scale`,
  'by-plan': ({ pull }) =>
    `${pull.peakNm.toFixed(2)} N·m, the highest torque; this tool sends nothing else of a pull`,
  'after-jump': ({ pull }) =>
    `${pull.peakNm.toFixed(2)} N·m, the first pull since the cylinder that is due changed`,
  'two-tools-at-once': () => 'two tools felt torque at the same time',
  'to-be-backed-out': () => 'this plug was to be backed out',
  'none-tight-yet': () => 'no plug was tight yet',
  'loosened-after-proof': () => 'a plug was loosened after it had been proven',
  'loosened-at-once': () => 'it was loosened at once after it was tightened',
  answered: () => 'answered by the technician',
  given: () => 'given to this cylinder by the technician',
  'with-other-pull': ({ otherPull }) => `with pull ${otherPull}`,
  'other-pull-went-on': ({ otherPull }) => `pull ${otherPull} went on from it`,
  'cylinder-left-out': ({ leftOut }) => `the plug of cylinder ${leftOut} was left out`,
};

export const placementText = (placed: Placed & Pick<TorqueAttempt, 'because'>): string =>
  PLACEMENT_WORDS[placed.because](placed);

/** How far it turned where that was measured, else how fast it rose; and how long after the pull before. */
function rose({ pull, evidence }: Placed): string {
  const pauseMs = evidence?.sinceLastMs ?? null;
  const since = pauseMs === null ? '' : `, ${(pauseMs / 1000).toFixed(1)} s after the last`;
  if (evidence?.plugDeg !== undefined) return `turn measured, ${degrees(evidence.plugDeg)}${since}`;
  return `rose in ${Math.round(pull.riseMs)} ms${since}`;
}

/** The same, with what the plugs that turned in this job took, and whether it rose in a straight line. */
function compared(placed: Placed): string {
  const { uneven, usualRiseMs, plugDeg } = placed.evidence ?? {};
  if (plugDeg !== undefined) return rose(placed);
  const evenly = uneven !== undefined && uneven < STRAIGHT ? ' in a straight line' : '';
  const others = usualRiseMs === undefined ? '' : `, usual ${Math.round(usualRiseMs)} ms`;
  return `${rose(placed)}${evenly}${others}`;
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
  const percent = (share: number) => `${(100 * share).toFixed(0)} %`;
  const beyond = (clickNm: number) => `the pull went ${percent(Math.max(0, peakNm / clickNm - 1))} beyond it`;
  if (release === 'seen' && releaseNm !== null)
    return `trial click: the torque fell by ${percent(dropShare ?? 0)}, ${beyond(releaseNm)}`;
  if (slightFall !== undefined)
    return `trial click: weak, the torque fell by ${percent(slightFall.dropShare)} only, ${beyond(slightFall.torqueNm)}; falls like it count as clicks in this job`;
  return release === 'not-visible'
    ? `trial click: readings come ${Math.round(longestGapUs / 1000)} ms apart, too far to show a click`
    : 'trial click: no fall was seen; after each pull you are asked whether it clicked';
}
