import type { LogEntry } from '../evidence/log.ts';
import { earlyStepsOf } from '../job/early.ts';
import { torqueWindowBefore } from '../job/stage.ts';
import type { GapAttempt, JobState, TorqueAttempt } from '../job/state.ts';
import { strokeTurn } from '../job/turn.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import { wiresOf } from '../plug/gap.ts';
import { crowfootOf, leverage } from '../plug/geometry.ts';
import { snugOf } from '../pull/snug.ts';
import type { FigureSource } from '../reading.ts';
import { w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { figure } from './figures.ts';
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
  /** As printed, without the unit: of a gap by wires the two wires, since nobody measured a figure. */
  readonly valueText: string;
  /** What the wrench itself showed, where an adapter lies between it and the plug; else null. */
  readonly wrenchNm: number | null;
  /** What it was judged against; null where nothing was measured. */
  readonly window: Window | null;
  readonly expandedUncertainty: number | null;
  readonly releaseNm: number | null;
  /** Peak less first release: what came after the click. */
  readonly followThroughNm: number | null;
  readonly riseMs: number | null;
  /** Null where the tool sends no angle, or none that says anything. */
  readonly turn: TurnFigures | null;
  /** From contact, all strokes on the plug together, as it was judged. */
  readonly judgedTurn: Judgement | null;
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

/** All attempts on one cylinder, and what it came to. */
export interface CylinderRow {
  readonly cylinder: number;
  readonly verdict: Verdict;
  readonly gaps: readonly AttemptRow[];
  readonly pulls: readonly AttemptRow[];
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
  valueText: '–',
  wrenchNm: null,
  window: null,
  expandedUncertainty: null,
  releaseNm: null,
  followThroughNm: null,
  riseMs: null,
  turn: null,
  judgedTurn: null,
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
    ...gaps.map((gap, index) => gapRow(state, cylinder, gap, index + 1, entries)),
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

/** The tool of a gap that two wires told. */
const WIRES = 'wire';

/** Of a gap by wires nobody knows more than between which two it lies. */
function gapText({ order }: JobState, { tool, judgement }: GapAttempt): string {
  const wires = tool === WIRES ? wiresOf(order.specification) : null;
  if (wires === null || !wires.ok) return figure(judgement.value, 'mm');
  const { goMm, noGoMm } = wires.value;
  if (judgement.side === 'inside') return w`${figure(goMm, 'mm')} to ${figure(noGoMm, 'mm')}`;
  return judgement.side === 'low' ? w`below ${figure(goMm, 'mm')}` : w`above ${figure(noGoMm, 'mm')}`;
}

function gapRow(
  state: JobState,
  cylinder: number | null,
  gap: GapAttempt,
  attempt: number,
  entries: readonly LogEntry[],
): AttemptRow {
  const isKept = gap.kept !== undefined && gap.judgement.result === 'OK';
  const verdict = gap.takenBack === true ? 'not-judged' : isKept ? 'accepted' : verdictOf(gap.judgement);
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
    value: gap.tool === WIRES ? null : gap.judgement.value,
    valueText: gapText(state, gap),
    window: state.gapWindow,
    expandedUncertainty: gap.tool === WIRES ? null : gap.judgement.expandedUncertainty,
    conformanceProbability: gap.judgement.conformanceProbability,
    grade: gap.judgement.grade,
    verdict,
    verdictWord: gap.takenBack === true ? w`TAKEN BACK` : VERDICT_WORD[verdict],
    tool: clean(gap.tool),
    technician: clean(gap.technician),
    source: gap.source,
    at: entry?.at ?? '',
    by: clean(entry?.by ?? ''),
  };
}

/** Of two steps the first has limits of its own. */
function windowOf(state: JobState, cylinder: number | null, pull: number): Window {
  const at = state.cylinders.find((one) => one.cylinder === cylinder);
  return at === undefined ? state.torqueWindow : torqueWindowBefore(state, at, pull);
}

function turnFigures({ pull }: TorqueAttempt, state: JobState): TurnFigures | null {
  const plug = pull.turn?.plug;
  const measured = strokeTurn(state, pull);
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
  const value = judgement?.value ?? pull.peakNm;
  const { order } = state;
  const window = windowOf(state, cylinder, pull.pull);
  const step = judgement !== null && window !== state.torqueWindow ? w`, first step` : '';
  const pulled = entries.find(({ event }) => event.type === 'pull-detected' && event.pull === pull.pull);
  const entry = entries.findLast(({ event }) => event.type === 'pull-placed' && event.pull === pull.pull);
  return {
    quantity: 'torque',
    cylinder,
    attempt,
    pull: pull.pull,
    kind: KIND_WORDS[taken.kind],
    // What the plug saw; the same as the wrench read, unless an adapter or a correction lies between.
    value,
    valueText: figure(value, 'N.m'),
    wrenchNm: order.adapter === undefined ? null : pull.peakNm / leverage(crowfootOf(order.adapter)),
    window,
    expandedUncertainty: judgement?.expandedUncertainty ?? null,
    releaseNm: pull.releaseNm,
    followThroughNm: pull.releaseNm === null ? null : pull.peakNm - pull.releaseNm,
    // One figure a pull has no rise.
    riseMs: pull.stream === 'maxima' ? null : pull.riseMs,
    turn: turnFigures(taken, state),
    judgedTurn: taken.turn ?? null,
    turnNote: turnNote(taken),
    conformanceProbability: judgement?.conformanceProbability ?? null,
    grade: judgement?.grade ?? '',
    verdict,
    verdictWord: `${VERDICT_WORD[verdict]}${step}`,
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
