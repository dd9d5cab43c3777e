import { misdescribed } from '../instrument/fitness.ts';
import type { Instrument } from '../instrument/instrument.ts';
import { problemOf, unfit } from '../instrument/unfit.ts';
import { windowBy } from '../metrology/decision.ts';
import { spreadWithin } from '../metrology/interval.ts';
import type { Window } from '../metrology/judgement.ts';
import { outOfBounds, torqueByAngle } from '../plug/bounds.ts';
import { type GapPolicy, gapCheckOf, gapLimitsOf, gapPolicyOf, wiresOf } from '../plug/gap.ts';
import { flexJointRefused } from '../plug/geometry.ts';
import type { Note } from '../plug/note.ts';
import { partsProblem } from '../plug/parts.ts';
import { notesOn } from '../plug/plausibility.ts';
import { outranked } from '../plug/precedence.ts';
import type { Fit } from '../plug/specification.ts';
import { type Tightening, type TorqueLimits, tighteningOf } from '../plug/tightening.ts';
import type { Problem } from '../problem.ts';
import { briefFigure, shownFigure, shownUnit } from '../quantity/shown.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import type { Basis, Decision } from './basis.ts';
import type { JobEventOf } from './event.ts';
import { circumstancesOf, readingFor } from './measurement.ts';
import type { WorkOrder } from './order.ts';
import { orderOfWork } from './order-of-work.ts';
import type { Routine } from './routine.ts';
import { RULES } from './rules.ts';
import type { Shop } from './shop.ts';
import { vinFault } from './vin.ts';
import { undecidable, windowFor } from './windows.ts';

/** A supervisor answers for an instrument that would be refused. */
export interface Override {
  readonly tool: string;
  readonly by: string;
  readonly reason: string;
}

/** What a job is opened with, beside its order and its instruments. */
export interface Opening {
  /** ISO date of the job. */
  readonly on: string;
  readonly decision: Decision;
  readonly overrides: readonly Override[];
  /** The steps around the torque that the shop wants said; none where it is missing. */
  readonly routine?: Routine;
  /** For the papers alone. */
  readonly shop?: Shop;
  readonly utcOffsetMin?: number;
  /** Whose tools they are. */
  readonly toolsOf?: NonNullable<JobEventOf<'job-opened'>['toolsOf']>;
}

/** Why a job cannot be opened. */
export interface NotOpened extends Problem {
  /** The tool that is refused and that a supervisor may answer for. */
  readonly answerableFor?: string;
}

/** The first events of a job: its opening, then what a supervisor answered for. */
export type Opened = readonly [JobEventOf<'job-opened'>, ...JobEventOf<'instrument-overridden'>[]];

/**
 * The opening of a job: order and instruments as they are today, with the windows that every reading will be held
 * against. Fails where a figure of the order cannot be read or believed, where an instrument is missing, misdescribed or
 * unfit and nobody answers for it, or too uncertain to prove anything in this window. Problems name the field.
 */
export function openJob(
  order: WorkOrder,
  instruments: readonly Instrument[],
  opening: Opening,
): Result<Opened, NotOpened> {
  const specified = specifiedBy(order, opening.on);
  if (!specified.ok) return specified;
  const { limits, first, turn, notes, gap: policy } = specified.value;
  const torque = torqueSide(order, instruments, opening, limits, first);
  if (!torque.ok) return torque;
  const gap = gapSide(order, instruments, opening);
  if (!gap.ok) return gap;
  const { on, decision, routine, shop, utcOffsetMin } = opening;
  const unused = new Set([...torque.value.unused, ...gap.value.unused]);
  const used = instruments.filter(({ id }) => !unused.has(id));
  const further = [...torque.value.further, ...gap.value.further];
  const toolsOf = (opening.toolsOf ?? []).filter(({ tool }) => used.some(({ id }) => id === tool));
  return ok([
    {
      type: 'job-opened',
      order,
      instruments: used,
      torqueWindow: torque.value.window,
      gapWindow: gap.value.window,
      ...(further.length === 0 ? {} : { furtherWindows: further }),
      ...(toolsOf.length === 0 ? {} : { toolsOf }),
      basis: {
        on,
        decision,
        firstTorqueWindow: torque.value.first,
        ...(turn === null ? {} : { turn }),
        gap: policy,
        orderOfWork: orderOfWork(routine),
        notes: [...notes],
      },
      rules: RULES,
      ...(routine === undefined ? {} : { routine }),
      ...(shop === undefined ? {} : { shop }),
      ...(utcOffsetMin === undefined ? {} : { utcOffsetMin }),
    },
    ...torque.value.overridden,
    ...gap.value.overridden,
  ]);
}

/** The figures of an order, checked against sources and tables; `on` is the day of the job. */
export function specifiedBy(
  order: WorkOrder,
  on: string,
): Result<{
  readonly limits: TorqueLimits;
  readonly first: TorqueLimits | null;
  readonly turn: NonNullable<Basis['turn']> | null;
  readonly notes: readonly Note[];
  readonly gap: GapPolicy;
}> {
  const { specification, plug, engine, vehicle } = order;
  const vin = vehicle.vin === undefined ? null : vinFault(vehicle.vin);
  if (vin?.illegal === true) return err(vin.problem);
  const future = notYet(specification, on);
  if (future !== null) return err(future);
  const flexible = order.flexJoint === undefined ? null : flexJointRefused(order.flexJoint);
  if (flexible !== null) return err(flexible);
  const better = outranked(specification);
  if (better !== null) return err(better);
  const mixed = partsProblem(plug, engine.serviceOrder);
  if (mixed !== null) return err(mixed);
  const tightening = tighteningOf(specification);
  if (!tightening.ok) return tightening;
  const fit: Fit = { thread: plug.thread, seat: plug.seat, head: engine.headMaterial };
  const { torque, first, advised, turn } = figuresOf(tightening.value);
  const limits = torque ?? torqueByAngle(fit);
  const policy = gapPolicyOf(specification, plug);
  if (!policy.ok) return policy;
  const gap = specification.gap === undefined ? ok(null) : gapLimitsOf(specification, plug);
  if (!gap.ok) return gap;
  const wires = gapCheckOf(specification) === 'wire' ? wiresOf(specification) : ok(null);
  if (!wires.ok) return wires;
  const { bendMostMm } = policy.value;
  const read = { torque, first, advised, turn, gap: gap.value, wires: wires.value, bendMostMm };
  const wrong = outOfBounds(specification, plug, fit, read);
  if (wrong !== null) return err(wrong);
  const notes = notesOn(specification, tightening.value, plug, fit);
  const judged = turn === null || torque !== null ? turn : { ...turn, alone: true as const };
  return ok({ limits, first, turn: judged, notes, gap: policy.value });
}

/** `torque` is null where the order names an angle in its place. */
const figuresOf = (tightening: Tightening) =>
  tightening.kind === 'torque'
    ? { ...tightening, torque: tightening.limits }
    : { torque: null, first: null, advised: null, turn: tightening.turn };

function notYet({ source, also = [] }: WorkOrder['specification'], on: string): Problem | null {
  const dates = [source, ...also.map((other) => other.source)].map(({ date }) => date);
  const at = dates.findIndex((date) => date !== undefined && date > on);
  if (at < 0) return null;
  return {
    code: 'source-in-future',
    where: at === 0 ? 'specification.source.date' : `specification.also[${at - 1}].source.date`,
    message: w`the source is dated ${dates[at] ?? ''}, after the day of the job, ${on}`,
    next: w`Check the date of the source and the clock of this computer.`,
  };
}

interface Side<W> {
  readonly window: W;
  /** Of the tools behind the first. */
  readonly further: NonNullable<JobEventOf<'job-opened'>['furtherWindows']>;
  /** Tools that are not fit for this job and that nobody answers for: another one takes their place. */
  readonly unused: readonly string[];
  readonly overridden: readonly JobEventOf<'instrument-overridden'>[];
}

type ToolSide = Pick<Side<Window>, 'window' | 'overridden'> & { readonly first: Window | null };

/** All tools of a quantity; the problem of the first where none of them is fit. */
function sideOf(
  tools: readonly Instrument[],
  of: (tool: Instrument) => Result<ToolSide, NotOpened>,
): Result<Side<Window> & { readonly first: Window | null }, NotOpened> | null {
  const sides = tools.map((tool) => ({ tool: tool.id, side: of(tool) }));
  const fit = sides.flatMap(({ tool, side }) => (side.ok ? [{ tool, ...side.value }] : []));
  const [one, ...others] = fit;
  if (one === undefined) {
    const refused = sides[0]?.side;
    return refused === undefined || refused.ok ? null : refused;
  }
  return ok({
    window: one.window,
    first: one.first,
    further: others.map(({ tool, window, first }) => ({ tool, window, firstWindow: first })),
    unused: sides.flatMap(({ tool, side }) => (side.ok ? [] : [tool])),
    overridden: fit.flatMap(({ overridden }) => overridden),
  });
}

function torqueSide(
  order: WorkOrder,
  instruments: readonly Instrument[],
  opening: Opening,
  limits: TorqueLimits,
  first: TorqueLimits | null,
): Result<Side<Window> & { readonly first: Window | null }, NotOpened> {
  const wrenches = instruments.filter(({ quantity }) => quantity === 'torque');
  const side = sideOf(wrenches, (wrench) => wrenchSide(wrench, order, opening, limits, first));
  return side ?? err(missing('torque'));
}

function wrenchSide(
  wrench: Instrument,
  order: WorkOrder,
  opening: Opening,
  limits: TorqueLimits,
  first: TorqueLimits | null,
): Result<ToolSide, NotOpened> {
  const steps = first === null ? [limits] : [limits, first];
  const fit = fitFor(wrench, order, opening, {
    lower: Math.min(...steps.map(({ lowerNm }) => lowerNm)),
    upper: Math.max(...steps.map(({ upperNm }) => upperNm)),
  });
  if (!fit.ok) return fit;
  const circumstances = circumstancesOf(opening.on, order);
  const { rule } = opening.decision;
  const [window, firstWindow] = steps.map(({ lowerNm, upperNm }) =>
    windowFor(wrench, { lower: lowerNm, upper: upperNm }, circumstances, rule),
  );
  if (window === undefined) throw new Error('a tightening without limits');
  const problem =
    undecidable(window, w`tool ${wrench.id}`, rule) ??
    (firstWindow === undefined ? null : undecidable(firstWindow, w`tool ${wrench.id}, first step`, rule));
  if (problem !== null) return err(problem);
  return ok({ window, first: firstWindow ?? null, overridden: fit.value });
}

function gapSide(
  order: WorkOrder,
  instruments: readonly Instrument[],
  opening: Opening,
): Result<Side<Window | null>, NotOpened> {
  const { specification, plug } = order;
  const limits = gapLimitsOf(specification, plug);
  if (!limits.ok) return limits;
  const check = gapCheckOf(specification);
  if (limits.value === null || check === 'visual-only' || check === 'not-permitted')
    return ok({ ...UNUSED, window: null });
  const { lowerMm: lower, upperMm: upper } = limits.value;
  const { rule } = opening.decision;
  if (check === 'wire') {
    const wires = wiresOf(specification);
    if (!wires.ok) return wires;
    const { goMm, noGoMm, withinMm } = wires.value;
    const spreadAt = () => spreadWithin(withinMm);
    const window = windowBy(rule, { unit: 'mm', lowerLimit: lower, upperLimit: upper, spreadAt });
    if (goMm >= window.acceptLower && noGoMm <= window.acceptUpper) return ok({ ...UNUSED, window });
    return err({
      code: 'window-not-decidable',
      where: 'specification.gapRules.wires',
      message: w`a plug that fits these wires lies between ${briefFigure(goMm, 'mm')} and ${briefFigure(noGoMm, 'mm')} ${shownUnit('mm')}, which is not within ${specification.gap ?? ''} less the guard band`,
      next: w`Take wires between ${shownFigure(window.acceptLower, 'mm')} and ${shownFigure(window.acceptUpper, 'mm')} ${shownUnit('mm')}.`,
    });
  }
  const gauges = instruments.filter(({ quantity }) => quantity === 'length');
  const side = sideOf(gauges, (gauge) => {
    const fit = fitFor(gauge, order, opening, { lower, upper });
    if (!fit.ok) return fit;
    const window = windowFor(gauge, { lower, upper }, circumstancesOf(opening.on, {}), rule);
    const problem = undecidable(window, w`tool ${gauge.id}`, rule);
    return problem === null ? ok({ window, first: null, overridden: fit.value }) : err(problem);
  });
  return side ?? err(missing('length'));
}

/** Of a quantity that no tool of the station measures in this job. */
const UNUSED: Omit<Side<null>, 'window'> = { further: [], unused: [], overridden: [] };

/** What a supervisor has to answer for so that the instrument may be used; a problem where none does. */
function fitFor(
  instrument: Instrument,
  order: WorkOrder,
  { on, overrides }: Opening,
  limits: { readonly lower: number; readonly upper: number },
): Result<readonly JobEventOf<'instrument-overridden'>[], NotOpened> {
  const wrong = misdescribed(instrument, on);
  if (wrong !== null) return err(wrong);
  const circumstances = circumstancesOf(on, order);
  const from = readingFor(instrument, limits.lower, circumstances);
  const to = readingFor(instrument, limits.upper, circumstances);
  const reasons = unfit(instrument, { on, from, to });
  const [refusal] = reasons;
  if (refusal === undefined) return ok([]);
  const given = overrides.find(({ tool }) => tool === instrument.id);
  if (given === undefined)
    return err({ ...inTool(problemOf(refusal), instrument), answerableFor: instrument.id });
  return ok(
    reasons.map((reason) => ({
      type: 'instrument-overridden',
      tool: instrument.id,
      refusal: reason,
      by: given.by,
      reason: given.reason,
    })),
  );
}

const inTool = (problem: Problem & { readonly where: string }, { id }: Instrument): Problem => ({
  ...problem,
  where: w`tool ${id}: ${problem.where}`,
});

function missing(quantity: Instrument['quantity']): Problem {
  return {
    code: 'instrument-missing',
    where: 'tools',
    message: quantity === 'torque' ? w`the station has no torque wrench` : w`the station has no gap gauge`,
    next: w`Add a tool with "quantity": "${quantity}" to the station file.`,
  };
}
