import type { LogEntry } from '../evidence/log.ts';
import { earlyStepsOf } from '../job/early.ts';
import type { GapAttempt, JobState, TorqueAttempt } from '../job/state.ts';
import { turnOf } from '../job/turn.ts';
import { snugOf } from '../pull/snug.ts';
import type { FigureSource } from '../reading.ts';
import { clean } from './clean.ts';
import { VERDICT_WORD, type Verdict, verdictOf } from './verdict.ts';
import { ANGLE_FAULT_WORDS, earlyText, KIND_WORDS, placementText, turnVerdictText } from './words/index.ts';

/** One measurement on one cylinder, as figures; the attempts count from 1 on each cylinder and quantity. */
export interface AttemptRow {
  readonly quantity: 'gap' | 'torque';
  /** Null for a pull that belongs to no cylinder. */
  readonly cylinder: number | null;
  /** Null where nothing was measured. */
  readonly attempt: number | null;
  readonly pull: number | null;
  readonly kind: string;
  /** Gap in mm, peak torque in N·m. */
  readonly value: number | null;
  readonly expandedUncertainty: number | null;
  readonly releaseNm: number | null;
  /** Peak less first release: what came after the click. */
  readonly followThroughNm: number | null;
  readonly riseMs: number | null;
  /** Null where the tool sends no angle, or none that says anything. */
  readonly turn: TurnFigures | null;
  /** Why it was not measured although the tool sends an angle, and the verdict where the order asks for a turn. */
  readonly turnNote: string;
  readonly conformanceProbability: number | null;
  readonly grade: string;
  readonly verdict: Verdict;
  readonly verdictWord: string;
  readonly tool: string;
  /** Who was at work; empty where nothing was measured. */
  readonly technician: string;
  /** Null where nothing was measured. */
  readonly source: FigureSource | null;
  readonly answer: string;
  readonly because: string;
  readonly cut: string;
  /** What it came before, though that comes first; empty for nothing. */
  readonly outOfOrder: string;
  /** ISO time of the entry of the pull or of the gap, and who is in the entry that gave it its place. */
  readonly at: string;
  readonly by: string;
}

/** The turn of the plug in a pull, in degrees. */
export interface TurnFigures {
  readonly turnedDeg: number;
  readonly expandedUncertainty: number;
  readonly runDownDeg: number;
  readonly beyondDeg: number;
  readonly windUpDeg: number | null;
}

const NOTHING = {
  attempt: null,
  pull: null,
  kind: '',
  value: null,
  expandedUncertainty: null,
  releaseNm: null,
  followThroughNm: null,
  riseMs: null,
  turn: null,
  turnNote: '',
  conformanceProbability: null,
  grade: '',
  tool: '',
  technician: '',
  source: null,
  answer: '',
  because: '',
  cut: '',
  outOfOrder: '',
  at: '',
  by: '',
} as const;

/** The attempts on one cylinder, gaps first; with cylinder null, the pulls that belong to none. */
export function attemptRows(
  state: JobState,
  cylinder: number | null,
  gaps: readonly GapAttempt[],
  pulls: readonly TorqueAttempt[],
  entries: readonly LogEntry[],
): AttemptRow[] {
  return [
    ...gaps.map((gap, index) => gapRow(cylinder, gap, index + 1, entries)),
    ...pulls.map((pull, index) => pullRow(state, cylinder, pull, index + 1, entries)),
  ];
}

/** A row for each quantity of a cylinder that nobody measured, so that a gap in the work is a line and not an absence. */
export function unmeasuredRows(row: {
  readonly cylinder: number;
  readonly verdict: Verdict;
  readonly gaps: readonly AttemptRow[];
  readonly pulls: readonly AttemptRow[];
}): AttemptRow[] {
  const missing: AttemptRow['quantity'][] = [];
  if (row.gaps.length === 0) missing.push('gap');
  if (row.pulls.length === 0) missing.push('torque');
  return missing.map((quantity) => {
    const verdict = quantity === 'torque' && row.verdict === 'by-angle' ? 'by-angle' : 'not-done';
    return { ...NOTHING, quantity, cylinder: row.cylinder, verdict, verdictWord: VERDICT_WORD[verdict] };
  });
}

function gapRow(
  cylinder: number | null,
  gap: GapAttempt,
  attempt: number,
  entries: readonly LogEntry[],
): AttemptRow {
  const verdict = gap.takenBack === true ? 'not-judged' : verdictOf(gap.judgement);
  const entry = entries.findLast(
    ({ event }) =>
      event.type === 'gap-measured' &&
      event.tool === gap.tool &&
      event.reading === gap.reading &&
      event.cylinder === cylinder,
  );
  return {
    ...NOTHING,
    quantity: 'gap',
    cylinder,
    attempt,
    value: gap.judgement.value,
    expandedUncertainty: gap.judgement.expandedUncertainty,
    conformanceProbability: gap.judgement.conformanceProbability,
    grade: gap.judgement.grade,
    verdict,
    verdictWord: gap.takenBack === true ? 'TAKEN BACK' : VERDICT_WORD[verdict],
    tool: clean(gap.tool),
    technician: clean(gap.technician),
    source: gap.source,
    at: entry?.at ?? '',
    by: clean(entry?.by ?? ''),
  };
}

function turnFigures({ pull }: TorqueAttempt, state: JobState): TurnFigures | null {
  const plug = pull.turn?.plug;
  const measured = turnOf(state, [pull]);
  if (plug === undefined || measured === null) return null;
  const { turnedDeg, windUpDeg } = plug;
  return { turnedDeg, windUpDeg, ...snugOf(plug), expandedUncertainty: measured.budget.expanded };
}

function turnNote({ pull, turn }: TorqueAttempt): string {
  const fault = pull.angleFault === undefined ? null : ANGLE_FAULT_WORDS[pull.angleFault];
  return [turnVerdictText(turn), fault].filter((text) => text !== null).join('; ');
}

function pullRow(
  state: JobState,
  cylinder: number | null,
  taken: TorqueAttempt,
  attempt: number,
  entries: readonly LogEntry[],
): AttemptRow {
  const { pull, judgement } = taken;
  const verdict = verdictOf(judgement);
  const pulled = entries.find(({ event }) => event.type === 'pull-detected' && event.pull === pull.pull);
  const entry = entries.findLast(({ event }) => event.type === 'pull-placed' && event.pull === pull.pull);
  return {
    quantity: 'torque',
    cylinder,
    attempt,
    pull: pull.pull,
    kind: KIND_WORDS[taken.kind],
    // What the plug saw; the same as the wrench read, unless an adapter or a correction lies between.
    value: judgement?.value ?? pull.peakNm,
    expandedUncertainty: judgement?.expandedUncertainty ?? null,
    releaseNm: pull.releaseNm,
    followThroughNm: pull.releaseNm === null ? null : pull.peakNm - pull.releaseNm,
    // One figure a pull has no rise.
    riseMs: pull.stream === 'maxima' ? null : pull.riseMs,
    turn: turnFigures(taken, state),
    turnNote: turnNote(taken),
    conformanceProbability: judgement?.conformanceProbability ?? null,
    grade: judgement?.grade ?? '',
    verdict,
    verdictWord: VERDICT_WORD[verdict],
    tool: clean(pull.tool),
    technician: clean(taken.technician),
    source: pull.source,
    answer: taken.answer ?? '',
    because: clean(placementText(taken)),
    cut: pull.cut ?? '',
    outOfOrder: earlyStepsOf(state, taken).map(earlyText).join('; '),
    at: pulled?.at ?? '',
    by: clean(entry?.by ?? ''),
  };
}
