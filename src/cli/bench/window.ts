import { misdescribed, unfit } from '../../instrument/fitness.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import type { Decision } from '../../job/basis.ts';
import { measured, readingFor } from '../../job/measurement.ts';
import { specifiedBy } from '../../job/open.ts';
import type { WorkOrder } from '../../job/order.ts';
import { windowFor } from '../../job/windows.ts';
import type { Window } from '../../metrology/judgement.ts';
import { normalDensity } from '../../metrology/normal.ts';
import { globalRisk, guardBandFor } from '../../metrology/risk.ts';
import { judge } from '../../metrology/window.ts';
import { plugJoint } from '../../plug/friction.ts';
import { tableView } from '../../plug/plausibility.ts';
import { SOURCE_WORDS } from '../../plug/precedence.ts';
import { tighteningOf } from '../../plug/tightening.ts';
import { ProblemError } from '../../problem.ts';
import { formatAngle } from '../../quantity/angle.ts';
import { parseTorque } from '../../quantity/range.ts';
import { newtonMetres } from '../../quantity/torque.ts';
import { orThrow } from '../../result.ts';
import { glyphsFor } from '../../ui/glyphs.ts';
import { type WindowView, windowLines } from '../../ui/window-lines.ts';
import { windowPlot } from '../../ui/window-plot.ts';
import { printJson } from '../answers/answer.ts';
import { windowAnswered } from '../answers/window.ts';
import { EXIT, type ExitCode } from '../terminal/exit.ts';
import { speaksUtf8 } from './run.ts';
import { dayOf, orderFrom, type WindowOptions, wrenchFrom } from './window-input.ts';

const WIDEST_PLOT = 100;

/** Prints the torque window of an order or of a typed specification, with guard band, budget and, on a terminal, a plot. */
export async function printWindow(typed: string | undefined, options: WindowOptions): Promise<ExitCode> {
  const view = await windowView(typed, options, dayOf(options));
  const { stdout } = process;
  const columns = stdout.isTTY ? Math.min(WIDEST_PLOT, stdout.columns) : null;
  if (options.json === true) printJson(windowAnswered(view));
  else stdout.write(`${windowText(view, columns, !speaksUtf8()).join('\n')}\n`);
  return view.window.decidable && view.refusals.length === 0 ? EXIT.done : EXIT.failed;
}

/** All lines; without columns there is no plot. */
export function windowText(view: WindowView, columns: number | null, ascii: boolean): string[] {
  const glyphs = glyphsFor(ascii);
  const lines = windowLines(view, glyphs);
  if (columns === null) return lines;
  const { value, budget } = view.measured;
  return [
    ...lines,
    '',
    ...windowPlot(view.window, { value, standard: budget.standard }, columns - 1, glyphs),
  ];
}

/** The window that was asked for, on the day that was named. */
export async function windowView(
  typed: string | undefined,
  options: WindowOptions,
  on: string,
): Promise<WindowView> {
  const order = await orderFrom(typed, options);
  const { wrench, decision } = await wrenchFrom(options);
  const { reading, spread } = options;
  return viewOfWindow({ order, wrench, decision, on }, reading, spread);
}

/** What a window follows from. */
export interface WindowOf {
  readonly order: WorkOrder;
  readonly wrench: Instrument;
  readonly decision: Decision;
  readonly on: string;
}

/**
 * The window and all that is said of it, by the same functions that open a job and judge its readings. Looks at the
 * middle of the window where no reading is typed; `spread` is that of all pulls of a shop, in N·m.
 */
export function viewOfWindow(
  { order, wrench, decision, on }: WindowOf,
  reading?: string,
  spread?: number,
): WindowView {
  const { limits, notes } = orThrow(specifiedBy(order, on));
  const wrong = misdescribed(wrench, on);
  if (wrong !== null) throw new ProblemError(wrong);
  const circumstances = { on, adapter: order.adapter };
  const found = windowFor(
    wrench,
    { lower: limits.lowerNm, upper: limits.upperNm },
    circumstances,
    decision.rule,
  );
  const reads = (nm: number) => readingFor(wrench, nm, circumstances);
  const at =
    reading === undefined ? reads((found.acceptLower + found.acceptUpper) / 2) : torqueOption(reading);
  const seen = measured(wrench, at, circumstances, null);
  const fit = { thread: order.plug.thread, seat: order.plug.seat, head: order.engine.headMaterial };
  return {
    facts: factsOf(order, wrench),
    window: found,
    decision,
    wrenchReads: { from: reads(found.acceptLower), to: reads(found.acceptUpper), at },
    measured: seen,
    judgement: judge(seen.value, seen.budget.expanded, found),
    refusals: unfit(wrench, { on, from: reads(limits.lowerNm), to: reads(limits.upperNm) }),
    table: tableView(fit),
    notes,
    risk: spread === undefined ? null : riskOf(found, seen.budget.standard, spread),
  };
}

function torqueOption(text: string): number {
  const torque = orThrow(parseTorque(text));
  return newtonMetres(torque.figure, torque.unit);
}

function factsOf(
  { specification, plug, engine, adapter }: WorkOrder,
  wrench: Instrument,
): [string, string][] {
  const { source, torque, threads, reduction } = specification;
  const tightening = tighteningOf(specification);
  const turn = tightening.ok && tightening.value.kind === 'torque' ? tightening.value.advised : null;
  const { pitchMm } = plugJoint(plug.thread);
  const crush = (deg: number) => ((deg / 360) * pitchMm).toFixed(2);
  return [
    ['specification', `${torque} on ${threads} threads; ${SOURCE_WORDS[source.kind]}: ${source.title}`],
    ['plug and head', `${plug.thread}, ${plug.seat} seat, ${engine.headMaterial} head`],
    ...(reduction === undefined
      ? []
      : [
          [
            'reduced',
            `by ${reduction.percent} % for ${reduction.lubricant} threads, set by ${reduction.setBy}`,
          ] as [string, string],
        ]),
    ...(turn === null
      ? []
      : [
          [
            'advised turn',
            `${formatAngle(turn.lowerDeg)} to ${formatAngle(turn.upperDeg)} from contact (${crush(turn.lowerDeg)} to ${crush(turn.upperDeg)} mm); not judged`,
          ] as [string, string],
        ]),
    [
      'wrench',
      `${wrench.id}${wrench.serial === undefined ? '' : `, serial ${wrench.serial}`}: ${basisOf(wrench)}`,
    ],
    [
      'geometry',
      adapter === undefined
        ? 'straight on the plug'
        : `adapter of ${adapter.offsetMm} mm at ${formatAngle(adapter.angleDeg)} on a wrench of ${adapter.armMm} mm`,
    ],
  ];
}

function basisOf({ certificate, basis }: Instrument): string {
  return certificate === undefined
    ? basis
    : `certificate ${certificate.number}, ${certificate.laboratory}, ${certificate.date}`;
}

/** False OKs that a guard band is asked to keep the share of all pulls below. */
const RISK_TARGET = 0.001;
const SPREADS = 6;

/** Risks over all pulls of a shop whose true torques lie about the middle of the window. */
function riskOf(found: Window, standard: number, spread: number): NonNullable<WindowView['risk']> {
  const middle = (found.lowerLimit + found.upperLimit) / 2;
  const inspection = {
    density: (nm: number) => normalDensity((nm - middle) / spread) / spread,
    from: middle - SPREADS * spread,
    to: middle + SPREADS * spread,
    standard,
    limits: found,
    accept: { lower: found.acceptLower, upper: found.acceptUpper },
  };
  const riskAt = (guard: number) =>
    globalRisk({
      ...inspection,
      accept: { lower: found.lowerLimit + guard, upper: found.upperLimit - guard },
    }).consumer;
  return {
    spread,
    found: globalRisk(inspection),
    guardBand: guardBandFor(riskAt, RISK_TARGET, middle - found.lowerLimit),
  };
}
