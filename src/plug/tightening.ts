import type { Problem } from '../problem.ts';
import { limitsDeg, limitsNm } from '../quantity/compare.ts';
import { type PrintedRange, parseAngleRange, parseTorque, parseTorqueRange } from '../quantity/range.ts';
import type { TorqueUnit } from '../quantity/torque.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { THREADS_WORDS } from './fit-words.ts';
import type { SingleFigure, Specification } from './specification.ts';

export interface TorqueLimits {
  readonly lowerNm: number;
  readonly upperNm: number;
}
export interface Turn {
  readonly lowerDeg: number;
  readonly upperDeg: number;
}

/** What a specification asks of the wrench: a torque (after a first one, in two-step tightening), or only an angle. */
export type Tightening =
  | {
      readonly kind: 'torque';
      /** As printed, less the shop's reduction where one is stated. */
      readonly limits: TorqueLimits;
      readonly first: TorqueLimits | null;
      readonly advised: Turn | null;
      /** What must be met beside the torque. */
      readonly turn: Turn | null;
    }
  /** One figure without a tolerance has equal limits, and nothing can prove it. */
  | { readonly kind: 'angle'; readonly turn: Turn };

/** `problem` with the field of the order in front of its place. */
export function inField(problem: Problem, field: string): Problem {
  return { ...problem, where: problem.where === undefined ? field : `${field}, ${problem.where}` };
}

/**
 * The figures of a specification in N·m and degrees. Limits come from the one unit as printed, so no rounded second unit
 * ever decides. Problems: those of the parser, and `reduced-twice` where the figure assumes lubricated threads already.
 */
export function tighteningOf(specification: Specification): Result<Tightening> {
  const { torque, tightenFirst, angle, reduction, threads, singleFigure } = specification;
  const turn = parseAngleRange(torque);
  if (turn.ok) {
    const beside = besideAngle(specification);
    return beside === null ? ok({ kind: 'angle', turn: limitsDeg(turn.value) }) : err(beside);
  }
  if (reduction !== undefined && threads !== 'dry')
    return err({
      code: 'reduced-twice',
      where: 'specification.reduction',
      message: w`the figure is already for ${THREADS_WORDS[threads]}; a reduction for ${THREADS_WORDS[reduction.lubricant]} would count twice`,
      next: w`Remove the reduction, or give the figure for dry threads.`,
    });
  const share = 1 - (reduction?.percent ?? 0) / 100;
  const limits = torqueLimits(torque, 'specification.torque', share, singleFigure);
  if (!limits.ok) return limits;
  const first =
    tightenFirst === undefined
      ? ok(null)
      : torqueLimits(tightenFirst, 'specification.tightenFirst', share, singleFigure);
  if (!first.ok) return first;
  const advised = angleLimits(angle, 'specification.angle');
  if (!advised.ok) return advised;
  const judged = angleLimits(specification.turn, 'specification.turn');
  if (!judged.ok) return judged;
  if (judged.value !== null && judged.value.lowerDeg >= judged.value.upperDeg)
    return err({
      code: 'no-tolerance',
      where: 'specification.turn',
      message: w`a turn without a tolerance cannot be judged`,
      next: w`Give two limits, such as 180-240°.`,
    });
  return ok({
    kind: 'torque',
    limits: limits.value,
    first: first.value,
    advised: advised.value,
    turn: judged.value,
  });
}

/** What makes no sense where the order names an angle in place of a torque. */
function besideAngle({ tightenFirst, turn, angle, reduction }: Specification): Problem | null {
  const given = Object.entries({ tightenFirst, turn, angle, reduction });
  const field = given.find(([, value]) => value !== undefined)?.[0];
  if (field === undefined) return null;
  return {
    code: 'angle-without-torque',
    where: `specification.${field}`,
    message: w`the order names an angle in place of a torque, and this belongs to a torque`,
    next: w`Remove it, or give the torque of the source in specification.torque.`,
  };
}

function angleLimits(text: string | undefined, field: string): Result<Turn | null> {
  if (text === undefined) return ok(null);
  const range = parseAngleRange(text);
  return range.ok ? ok(limitsDeg(range.value)) : err(inField(range.error, field));
}

/** A torque that the source prints without a tolerance. */
/** The shop's own tolerance in percent, where a figure that was printed alone has its limits from it; else null. */
export function shopPercent({ torque, tightenFirst = '', singleFigure }: Specification): number | null {
  return singleFigure !== undefined && [tightenFirst, torque].some(isSingleFigure)
    ? singleFigure.percent
    : null;
}

export const isSingleFigure = (text: string): boolean => !parseTorqueRange(text).ok && parseTorque(text).ok;

/** A single figure with the shop's own tolerance. */
function byRule(text: string, { percent }: SingleFigure): Result<PrintedRange<TorqueUnit>> {
  const single = parseTorque(text);
  if (!single.ok) return single;
  const { printed, unit, figure } = single.value;
  return ok({ printed, unit, lower: figure * (1 - percent / 100), upper: figure * (1 + percent / 100) });
}

function torqueLimits(
  text: string,
  field: string,
  share: number,
  rule: SingleFigure | undefined,
): Result<TorqueLimits> {
  const single = isSingleFigure(text);
  const range = single && rule !== undefined ? byRule(text, rule) : parseTorqueRange(text);
  if (!range.ok) {
    const { error } = range;
    return err(
      inField(
        single
          ? { ...error, next: w`${error.next} Or give the shop's own rule for single figures: singleFigure.` }
          : error,
        field,
      ),
    );
  }
  const { lowerNm, upperNm } = limitsNm(range.value);
  return ok({ lowerNm: lowerNm * share, upperNm: upperNm * share });
}
