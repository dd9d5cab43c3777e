/** The view of a torque window before any pull: where it comes from, what it leaves, what one reading is worth. */
import { misdescribed } from '../instrument/fitness.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { type Refusal, unfit } from '../instrument/unfit.ts';
import { type EdgeRisk, falseAcceptanceOnEdge } from '../metrology/edge-risk.ts';
import type { Judgement, Window } from '../metrology/judgement.ts';
import { normalDensity } from '../metrology/normal.ts';
import { type GlobalRisk, globalRisk, guardBandFor } from '../metrology/risk.ts';
import { judge } from '../metrology/window.ts';
import { HEAD_WORDS, SEAT_WORDS, THREADS_WORDS } from '../plug/fit-words.ts';
import { plugJoint } from '../plug/friction.ts';
import type { Adapter, FlexJoint } from '../plug/geometry.ts';
import type { Note } from '../plug/note.ts';
import { type TableView, tableView } from '../plug/plausibility.ts';
import { SOURCE_WORDS } from '../plug/precedence.ts';
import type { Plug } from '../plug/specification.ts';
import { type Turn, tighteningOf } from '../plug/tightening.ts';
import { detectorSettings } from '../pull/settings.ts';
import { formatAngle } from '../quantity/angle.ts';
import { briefFigure, shownFigure, shownUnit, shownUnits } from '../quantity/shown.ts';
import { err, ok, type Result } from '../result.ts';
import { fixed, phrases, w } from '../words/catalogue.ts';
import type { Decision } from './basis.ts';
import { type Forecast, forecast } from './forecast.ts';
import { type Circumstances, circumstancesOf, type Measured, measured, readingFor } from './measurement.ts';
import { specifiedBy } from './open.ts';
import type { WorkOrder } from './order.ts';
import { asWrenchReads, windowFor } from './windows.ts';

/** Everything to show about a window, with every figure computed. */
export interface WindowView {
  /** Label and text, as order and station gave them. */
  readonly facts: readonly (readonly [string, string])[];
  readonly window: Window;
  readonly decision: Decision;
  /** What the wrench reads at the ends of the acceptance zone, and the reading that is judged. */
  readonly wrenchReads: { readonly from: number; readonly to: number; readonly at: number };
  readonly measured: Measured;
  readonly judgement: Judgement;
  /** The share of false OKs among readings right on the edge of the acceptance zone; null where there is none. */
  readonly edgeRisk: EdgeRisk | null;
  readonly refusals: readonly Refusal[];
  /** What the wrench can prove at the rate that was named; null where none was. */
  readonly forecast: Forecast | null;
  readonly table: TableView | null;
  readonly order: WorkOrder;
  readonly notes: readonly Note[];
  readonly risk: {
    readonly spreadNm: number;
    /** With the window's own rule. */
    readonly atRule: GlobalRisk;
    /** In N·m, for few false OKs; null where none is enough. */
    readonly guardBand: number | null;
  } | null;
}

/** What a window follows from. */
export interface WindowOf {
  readonly order: WorkOrder;
  readonly wrench: Instrument;
  readonly decision: Decision;
  readonly on: string;
}

/**
 * A window and everything to show about it, by the functions that open a job and judge its readings. Without a reading it
 * takes the middle of the window; `spreadNm` is the spread of all pulls of a shop; `perSecond` how often the wrench reads. Problems: those of the order and the
 * wrench.
 */
export function viewOfWindow(
  { order, wrench, decision, on }: WindowOf,
  {
    readingNm,
    spreadNm,
    perSecond,
  }: { readonly readingNm?: number; readonly spreadNm?: number; readonly perSecond?: number } = {},
): Result<WindowView> {
  const specified = specifiedBy(order, on);
  if (!specified.ok) return specified;
  const { limits, notes } = specified.value;
  const wrong = misdescribed(wrench, on);
  if (wrong !== null) return err(wrong);
  const circumstances = circumstancesOf(on, order);
  const window = windowFor(
    wrench,
    { lower: limits.lowerNm, upper: limits.upperNm },
    circumstances,
    decision.rule,
  );
  const reads = (nm: number) => readingFor(wrench, nm, circumstances);
  const at = readingNm ?? reads((window.acceptLower + window.acceptUpper) / 2);
  const seen = measured(wrench, at, circumstances, null);
  const fit = { thread: order.plug.thread, seat: order.plug.seat, head: order.engine.headMaterial };
  return ok({
    facts: factsOf(order, wrench),
    window,
    decision,
    wrenchReads: { from: reads(window.acceptLower), to: reads(window.acceptUpper), at },
    measured: seen,
    judgement: judge(seen.value, seen.budget, window),
    edgeRisk: window.decidable ? edgeRiskOf(window, wrench, circumstances) : null,
    refusals: unfit(wrench, { on, from: reads(limits.lowerNm), to: reads(limits.upperNm) }),
    forecast: perSecond === undefined ? null : forecastAt(perSecond, { order, wrench, decision, on }, window),
    table: tableView(fit),
    order,
    notes,
    risk: spreadNm === undefined ? null : riskOf(window, seen.budget.standard, spreadNm),
  });
}

function factsOf(
  { specification, plug, engine, adapter, flexJoint }: WorkOrder,
  wrench: Instrument,
): WindowView['facts'] {
  const { source, torque, threads, reduction, singleFigure } = specification;
  const tightening = tighteningOf(specification);
  const advised = tightening.ok && tightening.value.kind === 'torque' ? tightening.value.advised : null;
  const turn = advised ?? (tightening.ok ? tightening.value.turn : null);
  const facts: (readonly [string, string] | null)[] = [
    [
      w`specification`,
      w`${torque} on ${THREADS_WORDS[threads]}; ${SOURCE_WORDS[source.kind]}: ${source.title}`,
    ],
    [w`plug and head`, `${plug.thread}, ${SEAT_WORDS[plug.seat]}, ${HEAD_WORDS[engine.headMaterial]}`],
    singleFigure === undefined
      ? null
      : [
          w`shop rule`,
          w`single figure, plus/minus ${singleFigure.percent} %: the shop's own, not the maker's; set by ${singleFigure.setBy}, basis: ${singleFigure.basis}`,
        ],
    reduction === undefined
      ? null
      : [
          w`reduced`,
          w`by ${reduction.percent} % for ${THREADS_WORDS[reduction.lubricant]}, set by ${reduction.setBy}`,
        ],
    turn === null
      ? null
      : [advised === null ? w`turn` : w`advised turn`, turnWords(turn, plug, advised === null)],
    [w`wrench`, `${wrenchWords(wrench)}: ${basisOf(wrench)}`],
    [w`geometry`, adapter === undefined ? w`straight on the plug` : adapterWords(adapter)],
    flexJoint === undefined ? null : [w`joint`, flexJointWords(flexJoint)],
  ];
  return facts.filter((fact) => fact !== null);
}

function turnWords({ lowerDeg, upperDeg }: Turn, { thread }: Plug, judged: boolean): string {
  const { pitchMm } = plugJoint(thread);
  const crush = (deg: number) => {
    const mm = (deg / 360) * pitchMm;
    return shownUnits().length === 'mm' ? fixed(mm, 2) : shownFigure(mm, 'mm');
  };
  const angle = w`${formatAngle(lowerDeg)} to ${formatAngle(upperDeg)}`;
  const way = w`${crush(lowerDeg)} to ${crush(upperDeg)} ${shownUnit('mm')}`;
  return judged ? w`${angle} from contact (${way}); judged` : w`${angle} from contact (${way}); not judged`;
}

const wrenchWords = ({ id, serial }: Instrument): string =>
  serial === undefined ? id : w`${id}, serial ${serial}`;

function adapterWords({ offsetMm, angleDeg, armMm }: Adapter): string {
  const length = (mm: number) => `${briefFigure(mm, 'mm')} ${shownUnit('mm')}`;
  return w`adapter of ${length(offsetMm)} at ${formatAngle(angleDeg)} on a wrench of ${length(armMm)}`;
}

const JOINT_WORDS: Readonly<Record<FlexJoint['kind'], string>> = phrases({
  'universal-joint': 'universal joint',
  'wobble-extension': 'wobble extension',
});

/** "universal joint, bent by up to 10°" */
export function flexJointWords({ kind, bentDeg, stated }: FlexJoint): string {
  const joint = w`${JOINT_WORDS[kind]}, bent by up to ${formatAngle(bentDeg)}`;
  return stated === undefined ? joint : w`${joint}; within ${stated.percent} % by ${stated.basis}`;
}

function basisOf({ certificate, basis }: Instrument): string {
  return certificate === undefined
    ? basis
    : w`certificate ${certificate.number}, ${certificate.laboratory}, ${certificate.date}`;
}

/** Of a wrench that reads so many times a second and wavers by a step; found at the bench it may be worse. */
function forecastAt(
  perSecond: number,
  { order, wrench, decision, on }: WindowOf,
  torqueWindow: Window,
): Forecast {
  const stepNm = wrench.resolution;
  const state = {
    instruments: [wrench],
    order,
    torqueWindow,
    basis: { on, decision, firstTorqueWindow: null },
  };
  const { lowerNm } = asWrenchReads(state, torqueWindow);
  const reads = { intervalUs: 1e6 / perSecond, perPacket: 1, noiseNm: stepNm, stepNm, lostShare: 0 };
  return forecast(state, wrench.id, detectorSettings(lowerNm, { stepNm }), reads);
}

/** By the budget of a reading at each edge. */
function edgeRiskOf(window: Window, wrench: Instrument, circumstances: Circumstances): EdgeRisk {
  const at = (edge: number) => {
    const { budget } = measured(wrench, readingFor(wrench, edge, circumstances), circumstances, null);
    return falseAcceptanceOnEdge(budget.rows, {
      guardLower: window.acceptLower - window.lowerLimit,
      guardUpper: window.upperLimit - window.acceptUpper,
    });
  };
  return { lower: at(window.acceptLower).lower, upper: at(window.acceptUpper).upper };
}

/** False OKs among all pulls: the guard band that keeps them below this share is shown. */
const RISK_TARGET = 0.001;
/** Pulls further from the middle are too rare to count. */
const SPREADS = 6;

/** Risks over all pulls of a shop, with true torques spread about the middle of the window. */
function riskOf(window: Window, standard: number, spreadNm: number): NonNullable<WindowView['risk']> {
  const middle = (window.lowerLimit + window.upperLimit) / 2;
  const inspection = {
    density: (nm: number) => normalDensity((nm - middle) / spreadNm) / spreadNm,
    from: middle - SPREADS * spreadNm,
    to: middle + SPREADS * spreadNm,
    standard,
    limits: window,
    accept: { lower: window.acceptLower, upper: window.acceptUpper },
  };
  const riskAt = (guard: number) =>
    globalRisk({
      ...inspection,
      accept: { lower: window.lowerLimit + guard, upper: window.upperLimit - guard },
    }).consumer;
  return {
    spreadNm,
    atRule: globalRisk(inspection),
    guardBand: guardBandFor(riskAt, RISK_TARGET, middle - window.lowerLimit),
  };
}
