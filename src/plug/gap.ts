/** The gap of a plug: its limits, how it may be found and changed, and what a reading asks for next. */
import { z } from 'zod';
import { order as compare, limitsMm } from '../quantity/compare.ts';
import { millimetres } from '../quantity/length.ts';
import { parseLength, parseLengthRange } from '../quantity/range.ts';
import { err, ok, type Result } from '../result.ts';
import { gapCheckSchema, type Plug, type Specification } from './specification.ts';
import { inField } from './tightening.ts';

export type GapCheck = z.infer<typeof gapCheckSchema>;

/** In mm. A used plug may go on up to the service limit. */
export interface GapLimits {
  readonly lowerMm: number;
  readonly upperMm: number;
}

/** How the gap is found; a gauge unless the specification says otherwise. */
export const gapCheckOf = ({ gapRules }: Specification): GapCheck => gapRules?.check ?? 'gauge';

/**
 * The limits of the gap in mm; null where the specification gives none and the gap is not measured. Problems: those of the
 * parser with their field, `gap-missing`, `service-limit-below-range`.
 */
export function gapLimitsOf(specification: Specification, plug: Plug): Result<GapLimits | null> {
  const { gap, gapRules } = specification;
  if (gap === undefined) {
    const check = gapCheckOf(specification);
    if (check === 'visual-only' || check === 'not-permitted') return ok(null);
    return err({
      code: 'gap-missing',
      where: 'specification.gap',
      message: 'the specification has no gap',
      next: 'Give the gap as printed, for example 0.7-0.8 mm, or set gapRules.check so that it is not measured.',
    });
  }
  const range = parseLengthRange(gap);
  if (!range.ok) return err(inField(range.error, 'specification.gap'));
  const limits = limitsMm(range.value);
  const service = lengthIn(gapRules?.serviceLimit, 'serviceLimit');
  if (!service.ok) return service;
  if (service.value !== null && compare(service.value, limits.upperMm) < 0)
    return err({
      code: 'service-limit-below-range',
      where: 'specification.gapRules.serviceLimit',
      message: `the service limit of ${service.value} mm lies below the gap of a new plug`,
      next: 'Give the widest gap at which a used plug may go on.',
    });
  return ok(
    plug.condition === 'used' && service.value !== null ? { ...limits, upperMm: service.value } : limits,
  );
}

/** Two wires in mm: one that must pass and one that must not, each known within `withinMm`. */
export interface Wires {
  readonly goMm: number;
  readonly noGoMm: number;
  readonly withinMm: number;
}

/** The wires of a go/no-go check. Problems: `wires-missing`, `range-reversed`, those of the parser. */
export function wiresOf({ gapRules }: Specification): Result<Wires> {
  const wires = gapRules?.wires;
  const where = 'specification.gapRules.wires';
  if (wires === undefined)
    return err({
      code: 'wires-missing',
      where,
      message: 'the gap is checked by wire, but no wires are given',
      next: 'Give the wires, for example {"go": "0.72 mm", "noGo": "0.78 mm", "within": "0.003 mm"}.',
    });
  const go = lengthIn(wires.go, 'wires.go');
  if (!go.ok) return go;
  const noGo = lengthIn(wires.noGo, 'wires.noGo');
  if (!noGo.ok) return noGo;
  const within = lengthIn(wires.within, 'wires.within');
  if (!within.ok) return within;
  const [goMm, noGoMm, withinMm] = [go.value ?? 0, noGo.value ?? 0, within.value ?? 0];
  if (goMm < noGoMm) return ok({ goMm, noGoMm, withinMm });
  return err({
    code: 'range-reversed',
    where,
    message: 'the go wire is not thinner than the no-go wire',
    next: 'Give the thinner wire as go.',
  });
}

/** What a pair of wires told: `fits` go passes and no-go does not; `tight` go does not pass; `wide` no-go passes too. */
export type WireOutcome = 'fits' | 'tight' | 'wide';

/** The gap as an interval in mm; null at an end that the wires leave open. */
export function wireInterval(
  outcome: WireOutcome,
  { goMm, noGoMm }: Wires,
): { readonly lower: number | null; readonly upper: number | null } {
  switch (outcome) {
    case 'fits':
      return { lower: goMm, upper: noGoMm };
    case 'tight':
      return { lower: null, upper: goMm };
    case 'wide':
      return { lower: noGoMm, upper: null };
  }
}

/** How far an electrode may be bent in all where the specification is silent: 0.2 mm, as plug makers advise. */
const BEND_MOST_MM = 0.2;

/** How the gap of a job is found and changed, what the specification leaves open filled in. */
export const gapPolicySchema = z.strictObject({
  check: gapCheckSchema.describe('How it is found.'),
  adjustable: z.boolean().describe('Whether it may be set by bending.'),
  bendMostMm: z.number().describe('How far an electrode may be bent in all.'),
});
export type GapPolicy = z.infer<typeof gapPolicySchema>;

/** Problems: those of the parser. */
export function gapPolicyOf(specification: Specification, plug: Plug): Result<GapPolicy> {
  const adjusting = adjustingOf(specification, plug);
  if (!adjusting.ok) return adjusting;
  const { allowed: adjustable, bendMostMm } = adjusting.value;
  return ok({ check: gapCheckOf(specification), adjustable, bendMostMm });
}

export interface Adjusting {
  readonly allowed: boolean;
  readonly because: string;
  readonly bendMostMm: number;
}

/** Whether the gap of this plug may be set by bending, and how far. Problems: those of the parser. */
export function adjustingOf({ gapRules }: Specification, plug: Plug): Result<Adjusting> {
  const most = lengthIn(gapRules?.bendMost, 'bendMost');
  if (!most.ok) return most;
  const bendMostMm = most.value ?? BEND_MOST_MM;
  const rule = gapRules?.adjustable;
  const outcome = (allowed: boolean, because: string) => ok({ allowed, because, bendMostMm });
  if (rule === 'no') return outcome(false, 'the specification does not allow adjusting');
  if (rule === 'new-only' && plug.condition === 'used')
    return outcome(false, 'the specification does not allow adjusting a used plug');
  if (rule !== undefined) return outcome(true, 'the specification allows adjusting');
  if (plug.tip !== undefined && plug.tip !== 'nickel')
    return outcome(false, `${plug.tip} tips are not adjusted unless the specification allows it`);
  if ((plug.groundElectrodes ?? 1) > 1)
    return outcome(false, 'several ground electrodes are not adjusted unless the specification allows it');
  return outcome(true, 'the ground electrode may be bent at its base');
}

/** One reading of the gap of a plug, and whether it proved the gap. */
export interface GapInspected {
  readonly valueMm: number;
  readonly proven: boolean;
}

/** What a plug's readings ask for. A plug that is to be replaced stays so, whatever a later reading says. */
export interface GapStep {
  readonly do: 'fit' | 'regap' | 'replace';
  readonly because: string;
  /** How far its electrode was bent in all, as its readings show; absent where nothing was measured. */
  readonly bentMm?: number;
}

/** What is known of a plug's gap before a reading; null while nobody measured it. */
export interface GapSoFar {
  readonly last: GapInspected | null;
  readonly step: GapStep | null;
}

export interface GapRules {
  readonly adjusting: Adjusting;
  /** A smaller change between two readings is the gauge's own. */
  readonly noticeableMm: number;
  /** Where a gap is bent to. */
  readonly middleMm: number;
}

/**
 * The next step for one plug after one more reading of its gap. A change between readings counts as bending only beyond
 * `noticeableMm`; it adds up, because the metal does.
 */
export function gapStep({ last, step }: GapSoFar, reading: GapInspected, rules: GapRules): GapStep {
  if (step?.do === 'replace') return step;
  const change = last === null ? 0 : Math.abs(reading.valueMm - last.valueMm);
  const bentMm = (step?.bentMm ?? 0) + (compare(change, rules.noticeableMm) > 0 ? change : 0);
  return { ...afterReading(reading, bentMm, rules), bentMm };
}

function afterReading({ valueMm, proven }: GapInspected, bentMm: number, rules: GapRules): GapStep {
  const { allowed, because, bendMostMm } = rules.adjusting;
  const most = `${bendMostMm.toFixed(2)} mm`;
  if (bentMm > 0 && !allowed) return { do: 'replace', because: `it was bent, but ${because}` };
  if (compare(bentMm, bendMostMm) > 0)
    return {
      do: 'replace',
      because: `the electrode was bent by ${bentMm.toFixed(2)} mm in all; the limit is ${most}`,
    };
  if (proven) return { do: 'fit', because: 'the gap is proven' };
  if (!allowed) return { do: 'replace', because };
  const wish = Math.abs(rules.middleMm - valueMm);
  if (compare(bentMm + wish, bendMostMm) > 0)
    return {
      do: 'replace',
      because: `it needs a bend of ${(bentMm + wish).toFixed(2)} mm; the limit is ${most}`,
    };
  return {
    do: 'regap',
    because: `bend the ground electrode at its base by ${wish.toFixed(2)} mm and measure again`,
  };
}

function lengthIn(text: string | undefined, field: string): Result<number | null> {
  if (text === undefined) return ok(null);
  const length = parseLength(text);
  if (!length.ok) return err(inField(length.error, `specification.gapRules.${field}`));
  return ok(millimetres(length.value.figure, length.value.unit));
}
