import { heldBy } from './early.ts';
import { comesOut, countingPulls } from './started.ts';
import type { CylinderState, JobState, StepState, TorqueAttempt } from './state.ts';
import { type Stage, stageAfter } from './tightening-stage.ts';
import { asWrenchReads } from './windows.ts';

/** Where a cylinder's torque stands: worked out from its pulls in their order, so that a pull given elsewhere leaves no trace. */
export function torqueStep(
  c: CylinderState,
  { questions, basis }: Pick<JobState, 'questions' | 'basis'>,
): StepState {
  if (questions.some(({ cylinder }) => cylinder === c.cylinder)) return 'ask';
  let step: StepState = c.restartedAfter === undefined ? 'todo' : 'again';
  let stage: Stage = basis.firstTorqueWindow === null ? 'final' : 'first';
  for (const attempt of countingPulls(c)) {
    step = stepAfter(attempt, step);
    if (step === 'done' && heldBy({ basis }, attempt).length > 0) step = 'again';
    // Of two steps the first proves nothing yet.
    if (step === 'done' && stage !== 'final') step = 'again';
    if (basis.firstTorqueWindow !== null) stage = stageAfter(stage, attempt);
  }
  const { settlement } = c;
  if (settlement === undefined) return step;
  if (settlement.kind === 'accepted') return stillFitted(c, settlement.pull) ? 'settled' : step;
  return step === 'done' ? 'done' : 'settled';
}

/** The plug that this pull was on has been there ever since, and was not loosened. */
export function stillFitted(c: CylinderState, pull: number): boolean {
  const since = countingPulls(c).filter((attempt) => attempt.pull.pull >= pull);
  return since[0]?.pull.pull === pull && !since.some(comesOut);
}

/** What a pull does to the cylinder that it was given to. Only an OK tightening ever makes it `done`. */
function stepAfter(attempt: TorqueAttempt, was: StepState): StepState {
  const { kind, judgement, answer } = attempt;
  if (comesOut(attempt) || answer === 'unfinished') return 'again';
  if (judgement === null || kind === 'rehit' || kind === 'check') return was;
  return judgement.result === 'OK' ? 'done' : 'again';
}

/** The cylinder of the last pull that reached the window or went beyond it. */
export function lastTight(state: JobState): number | null {
  const { lowerNm } = asWrenchReads(state, state.torqueWindow);
  let last: { readonly cylinder: number; readonly pull: number } | null = null;
  for (const { cylinder, pulls } of state.cylinders)
    for (const { pull, kind } of pulls)
      if (TIGHT.has(kind) && pull.peakNm >= lowerNm && pull.pull > (last?.pull ?? 0))
        last = { cylinder, pull: pull.pull };
  return last?.cylinder ?? null;
}

const TIGHT: ReadonlySet<TorqueAttempt['kind']> = new Set(['tightening', 'continuation', 'rehit', 'check']);
