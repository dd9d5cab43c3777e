/** Commands from which more follows than that they were given. */

import { toConfirm } from '../sequence/by-plan.ts';
import type { Placement } from '../sequence/place.ts';
import { openItems } from './closing.ts';
import type { Command } from './command.ts';
import type { Answer } from './event.ts';
import { heldGapStep } from './held-gap.ts';
import { judgedReading, judgedWires } from './judging.ts';
import { type BenchContext, placed, placedByHand } from './placing.ts';
import { attemptOf, leftOut, provenBefore, stoppedShort, turnedAfter } from './situation.ts';
import type { TorqueAttempt } from './state.ts';
import { torqueStep } from './torque-step.ts';

/**
 * Enough to ask once more, not to prove anything. By the pull alone: what is likely of the plug that was due says nothing of
 * the one that a person names.
 */
const RATHER_TURNED = 0.5;
/** Stands as the tool of a gap that was found by go/no-go wires; such a reading has a number, but no time of its own. */
const WIRES = 'wire';

/** The command, and what the rules make of it. It must not be one that would be refused. */
export function follow(context: BenchContext, command: Command): void {
  switch (command.do) {
    case 'answer':
      answer(context, command);
      break;
    case 'accept':
      accept(context, command);
      break;
    case 'give-pull':
      give(context, command);
      break;
    case 'left-out': {
      const { pull: number, cylinder, on, why } = command;
      context.emit({ type: 'cylinder-left-out', pull: number, cylinder, on, why });
      for (const { pull, ...placement } of leftOut(context.state(), command))
        placed(context, pull, placement);
      break;
    }
    case 'keep-gap':
      keepGap(context, command);
      break;
    case 'gap-wire':
      wires(context, command);
      break;
    case 'close': {
      const open = openItems(context.state());
      context.emit({ type: 'job-closed', complete: open.length === 0, open });
    }
  }
}

function wires({ state, emit }: BenchContext, { cylinder, outcome }: Command & { do: 'gap-wire' }): void {
  const judgement = judgedWires(state(), outcome);
  const tried = state().cylinders.find((c) => c.cylinder === cylinder)?.gaps.length ?? 0;
  emit({ type: 'wire-tried', cylinder, outcome });
  emit({
    type: 'gap-measured',
    tool: WIRES,
    reading: tried + 1,
    atUs: 0,
    source: 'typed',
    cylinder,
    judgement,
  });
}

function keepGap(
  { state, emit }: BenchContext,
  { cylinder, by, reason }: Command & { do: 'keep-gap' },
): void {
  const held = state().tooEarly;
  const step = heldGapStep(state());
  const { gapWindow } = state();
  if (held?.what !== 'gap' || step === null || gapWindow === null) return;
  const { tool, reading, atUs, source, gapMm } = held;
  emit({ type: 'gap-kept', cylinder, step, by, reason });
  const judgement = judgedReading(state(), tool, gapMm, gapWindow, null);
  emit({ type: 'gap-measured', tool, reading, atUs, source, cylinder, judgement });
}

function accept({ state, emit }: BenchContext, { pull, by, reason }: Command & { do: 'accept' }): void {
  const question = state().questions.find((open) => open.pull === pull);
  if (question === undefined) return;
  emit({ type: 'pull-accepted', pull, cylinder: question.cylinder, by, reason });
}

function answer(context: BenchContext, { pull: number, answer: given }: Command & { do: 'answer' }): void {
  const question = context.state().questions.find((open) => open.pull === number);
  const attempt = attemptOf(context.state(), number);
  if (question === undefined || attempt === undefined) return;
  context.emit({ type: 'question-answered', pull: number, answer: given });
  const trial = attempt.because === 'trial-or-first-plug' && given === 'handling';
  const because = trial ? 'trial-click' : 'answered';
  const { pull } = attempt;
  const { cylinder } = question;
  const placeByHand = (placement: Omit<Placement, 'because'>) =>
    placedByHand(context, pull, { ...placement, because });
  switch (given) {
    case 'fresh': {
      const short = stoppedShort(context.state(), cylinder, number);
      placeByHand({ cylinder, kind: short ? 'continuation' : 'tightening' });
      if (turnedFromLoose(attempt)) doubtEarlier(context, number, cylinder);
      break;
    }
    case 'rehit':
      placeByHand({ cylinder: context.state().lastTight ?? cylinder, kind: 'rehit' });
      break;
    case 'handling':
      placeByHand({ cylinder: null, kind: 'handling' });
      break;
    case 'unfinished':
      placeByHand({ cylinder, kind: 'run-down' });
      break;
    case 'refit':
    case 'replace':
      if (question.kind === 'loosened') placed(context, pull, { cylinder, kind: 'loosening', because });
  }
  if (question.kind === 'by-plan' && VACATES.has(given)) planAgain(context, cylinder);
}

/** Answers after which the plug that the order of work had given a pull to is still to come. */
const VACATES: ReadonlySet<Answer> = new Set<Answer>(['rehit', 'unfinished', 'handling']);

/** The pulls that are yet to be confirmed move up: the first of them to the cylinder that became free. */
function planAgain(context: BenchContext, free: number): void {
  const waiting = context.state().questions.filter(({ kind }) => kind === 'by-plan');
  let to = free;
  for (const { pull: number, cylinder } of [...waiting].sort((a, b) => a.pull - b.pull)) {
    const attempt = attemptOf(context.state(), number);
    if (attempt !== undefined) placedByHand(context, attempt.pull, toConfirm(to));
    to = cylinder;
  }
}

function give(context: BenchContext, { pull: number, cylinder, why }: Command & { do: 'give-pull' }): void {
  const attempt = attemptOf(context.state(), number);
  if (attempt === undefined) return;
  context.emit({ type: 'pull-given', pull: number, cylinder, why });
  const { pull } = attempt;
  const proven = context
    .state()
    .cylinders.some(
      (c) => c.cylinder === cylinder && torqueStep(c, { ...context.state(), questions: [] }) === 'done',
    );
  const short = stoppedShort(context.state(), cylinder, number);
  const stood = proven && !turnedFromLoose(attempt);
  const kind = pull.peakNm < 0 ? 'loosening' : stood ? 'check' : short ? 'continuation' : 'tightening';
  placedByHand(context, pull, { cylinder, kind, because: 'given' });
  if (kind !== 'tightening' || !turnedFromLoose(attempt)) return;
  doubtEarlier(context, number, cylinder);
  doubtLater(context, number, cylinder);
}

/** It turned a plug, as far as anybody can tell, and was asked about. */
const turnedFromLoose = ({ kind, ask, because, evidence }: TorqueAttempt): boolean =>
  kind === 'unsure' &&
  (ask === 'loose' ||
    because === 'turned-again-later' ||
    (evidence?.turnedByPull ?? evidence?.turned ?? 0) >= RATHER_TURNED);

/**
 * A tight plug does not turn from loose. So if one turned that was proven before and never backed out, what had proven it was
 * on another plug; it is asked about, unless a person has said where it was.
 */
function doubtEarlier(context: BenchContext, number: number, cylinder: number): void {
  doubt(context, provenBefore(context.state(), number, cylinder), number, cylinder);
}

/** Nor does it in a later pull, once this one had brought it home. */
function doubtLater(context: BenchContext, number: number, cylinder: number): void {
  const home = provenBefore(context.state(), number + 1, cylinder)?.pull.pull === number;
  if (home)
    for (const later of turnedAfter(context.state(), number, cylinder))
      doubt(context, later, number, cylinder);
}

function doubt(context: BenchContext, proof: TorqueAttempt | null, number: number, cylinder: number): void {
  if (proof === null || proof.given === true || proof.answer !== null) return;
  const { pull, evidence } = proof;
  placed(context, pull, {
    cylinder,
    kind: 'unsure',
    ask: 'which',
    because: 'turned-again-later',
    otherPull: number,
    ...(evidence === undefined ? {} : { evidence }),
  });
}
