import type { Pull } from '../pull/pull.ts';
import { asProven, type Placement } from '../sequence/place.ts';
import type { JobEvent, JobEventOf } from './event.ts';
import { judgedReading } from './judging.ts';
import { grip } from './situation.ts';
import { stageOf, torqueWindowOf } from './stage.ts';
import type { JobState } from './state.ts';
import { judgedTurn, withTurn } from './turn.ts';

/** Where events are made one after the other, each folded into the state before the next. */
export interface BenchContext {
  readonly state: () => JobState;
  readonly emit: (event: JobEvent) => void;
}

/** A pull is given its place, and judged where there is anything to judge. */
export function placed({ state, emit }: BenchContext, pull: Pull, wanted: Placement): void {
  const placement = asProven(pull, wanted);
  emit({ type: 'pull-placed', pull: pull.pull, ...judgedPull(state(), pull, placement), ...placement });
}

/** A person said where a pull was: the strokes before it and the re-hits behind it, all at one grip, go with it. */
export function placedByHand(context: BenchContext, pull: Pull, placement: Placement): void {
  const others = grip(context.state(), pull.pull).filter((other) => other.pull.pull !== pull.pull);
  placed(context, pull, placement);
  const { cylinder } = placement;
  for (const { pull: other, kind } of others)
    placed(context, other, { cylinder, kind, because: 'with-other-pull', otherPull: pull.pull });
}

type Verdicts = Pick<JobEventOf<'pull-placed'>, 'judgement' | 'turn'>;

function judgedPull(state: JobState, pull: Pull, { kind, cylinder }: Placement): Verdicts {
  if (kind === 'run-down' || kind === 'loosening' || kind === 'handling' || kind === 'unsure')
    return { judgement: null };
  const judgement = judgedReading(
    state,
    pull.tool,
    pull.peakNm,
    torqueWindowOf(state, cylinder),
    pull.peakStandardNm,
  );
  if (kind === 'rehit' || kind === 'check')
    return { judgement: judgement.side === 'high' ? judgement : null };
  if (cylinder === null || stageOf(state, cylinder) !== 'final') return { judgement };
  const turn = judgedTurn(state, cylinder, pull);
  return turn === undefined ? { judgement } : { judgement: withTurn(judgement, turn), turn };
}
