import type { Instrument } from '../instrument/instrument.ts';
import { type DecisionRule, windowBy } from '../metrology/decision.ts';
import { judgeInterval } from '../metrology/interval.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import { permissibleAt } from '../metrology/permissible.ts';
import { normalSpread, type Spread } from '../metrology/spread.ts';
import { judge } from '../metrology/window.ts';
import { type WireOutcome, wireInterval, wiresOf } from '../plug/gap.ts';
import { order } from '../quantity/compare.ts';
import { rounded } from '../quantity/rounded.ts';
import { scaled, type ToolDescription, type ToolId } from '../reading.ts';
import { orThrow } from '../result.ts';
import type { JobEventOf } from './event.ts';
import { type Circumstances, circumstancesOf, measured, readingFor } from './measurement.ts';
import type { JobState } from './state.ts';
import { windowFor } from './windows.ts';

/** A reading of one of the job's instruments held against a window. */
export function judgedReading(
  state: Pick<JobState, 'instruments' | 'order'> & {
    readonly basis: Pick<JobState['basis'], 'on' | 'decision'>;
  },
  tool: ToolId,
  reading: number,
  window: Window,
  peakStandard: number | null,
): Judgement {
  const { basis, order } = state;
  const circumstances = circumstancesOf(basis.on, order);
  const by = { instrument: instrumentOf(state, tool), circumstances, window, rule: basis.decision.rule };
  return judgedBy(by, reading, peakStandard);
}

/** What a reading is judged by. */
interface Basis {
  readonly instrument: Instrument;
  readonly circumstances: Circumstances;
  readonly window: Window;
  readonly rule: DecisionRule;
}

/**
 * A reading judged with the budget of that very reading: a pull whose peak is known less well than the window allows for
 * has wider guard bands at both limits, never narrower ones.
 */
export function judgedBy(
  { instrument, circumstances, window, rule }: Basis,
  reading: number,
  peakStandard: number | null,
): Judgement {
  const { value, budget } = measured(instrument, reading, circumstances, peakStandard);
  const atLimit = (limit: number) => {
    const at = readingFor(instrument, limit, circumstances);
    return measured(instrument, at, circumstances, peakStandard).budget;
  };
  return roundedJudgement(judge(value, budget, windowForReading(rule, window, budget, atLimit)));
}

/** A probability is never told as a certainty. */
const [LEAST, MOST] = [0.000001, 0.999999];

/** A judgement, decided on all digits, with those that mean something. */
export function roundedJudgement(judgement: Judgement): Judgement {
  return {
    ...judgement,
    value: rounded(judgement.value, 6),
    expandedUncertainty: Number(judgement.expandedUncertainty.toPrecision(6)),
    conformanceProbability: Math.min(MOST, Math.max(LEAST, rounded(judgement.conformanceProbability, 6))),
  };
}

/**
 * The window for one reading: what is left by each of three spreads, which are that of a reading at the limit, the same
 * with what this pull says of its own peak, and that of this reading. So OK means that the rule is kept whichever is
 * meant. The largest U alone would not do: of two spreads the one with fewer degrees of freedom may have the larger U, and
 * need the narrower guard band for a probability.
 */
function windowForReading(
  rule: DecisionRule,
  window: Window,
  own: Spread,
  atLimit: (limit: number) => Spread,
): Window {
  const { unit, lowerLimit, upperLimit } = window;
  const usual = (limit: number) =>
    normalSpread(limit === lowerLimit ? window.expandedAtLower : window.expandedAtUpper);
  const by = (spreadAt: (limit: number) => Spread) =>
    windowBy(rule, { unit, lowerLimit, upperLimit, spreadAt });
  return [by(usual), by(() => own)].reduce(narrower, by(atLimit));
}

function narrower(a: Window, b: Window): Window {
  const acceptLower = Math.max(a.acceptLower, b.acceptLower);
  const acceptUpper = Math.min(a.acceptUpper, b.acceptUpper);
  return {
    ...a,
    guardBandFactor: Math.max(a.guardBandFactor, b.guardBandFactor),
    acceptLower,
    acceptUpper,
    decidable: a.decidable && b.decidable && order(acceptLower, acceptUpper) < 0,
  };
}

/** What a pair of wires told of a gap. */
export function judgedWires({ order, gapWindow }: JobState, outcome: WireOutcome): Judgement {
  if (gapWindow === null) throw new Error('the gap of this job is not measured');
  return judgeInterval(wireInterval(outcome, orThrow(wiresOf(order.specification))), gapWindow);
}

/**
 * What follows when a device publishes an uncertainty of its own: null where there is a certificate, or where the listing
 * allows for as much. Else the wider one holds from here on, and the windows shrink.
 */
export function declared(
  state: JobState,
  tool: ToolId,
  { uncertainty, exponent, quantity }: ToolDescription,
): JobEventOf<'uncertainty-declared'> | null {
  const instrument = state.instruments.find(({ id }) => id === tool);
  const { basis, order } = state;
  const windows = state.windows[tool];
  if (instrument === undefined || windows === undefined || uncertainty === undefined) return null;
  const { window, firstWindow: first } = windows;
  const listed = instrument.permissibleDeviation;
  if (instrument.certificate !== undefined || listed === undefined) return null;
  const permissibleDeviation: typeof listed =
    uncertainty.kind === 'relative'
      ? { kind: 'relative', percent: uncertainty.percent }
      : {
          kind: 'absolute',
          amount: scaled(uncertainty.counts, quantity === 'torque' ? exponent : exponent + 3),
        };
  const at = window.upperLimit;
  if (!(permissibleAt(permissibleDeviation, at) > permissibleAt(listed, at))) return null;
  const widened: Instrument = { ...instrument, permissibleDeviation };
  const circumstances = circumstancesOf(basis.on, order);
  const again = ({ lowerLimit: lower, upperLimit: upper }: Window) =>
    windowFor(widened, { lower, upper }, circumstances, basis.decision.rule);
  return {
    type: 'uncertainty-declared',
    tool,
    permissibleDeviation,
    window: again(window),
    firstWindow: quantity === 'torque' && first !== null ? again(first) : null,
  };
}

function instrumentOf(state: Pick<JobState, 'instruments'>, tool: ToolId): Instrument {
  const instrument = state.instruments.find(({ id }) => id === tool);
  if (instrument === undefined) throw new Error(`${tool} is not an instrument of this job`);
  return instrument;
}
