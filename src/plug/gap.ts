/** The gap of a plug: its limits, how it may be found and changed, and what a reading asks for next. */
import { z } from 'zod';
import { order as compare, limitsMm } from '../quantity/compare.ts';
import { millimetres } from '../quantity/length.ts';
import { parseLength, parseLengthRange } from '../quantity/range.ts';
import { rounded } from '../quantity/rounded.ts';
import { briefFigure, shownUnit } from '../quantity/shown.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
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
      message: w`the specification has no gap`,
      next: w`Give the gap as printed, for example 0.7-0.8 mm, or set gapRules.check so that it is not measured.`,
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
      message: w`the service limit of ${briefFigure(service.value, 'mm')} ${shownUnit('mm')} lies below the gap of a new plug`,
      next: w`Give the widest gap at which a used plug may go on.`,
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
      message: w`the gap is checked by wire, but no wires are given`,
      next: w`Give the wires, for example {"go": "0.72 mm", "noGo": "0.78 mm", "within": "0.003 mm"}.`,
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
    message: w`the go wire is not thinner than the no-go wire`,
    next: w`Give the thinner wire as go.`,
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

/** Why the gap of a plug may not be set by bending. */
const NOT_ADJUSTABLE = [
  'not-adjustable',
  'used-not-adjustable',
  'tip-not-adjustable',
  'several-electrodes-not-adjustable',
] as const;

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
  const { barred, bendMostMm } = adjusting.value;
  return ok({ check: gapCheckOf(specification), adjustable: barred === null, bendMostMm });
}

export interface Adjusting {
  /** Null where it may be set. */
  readonly barred: (typeof NOT_ADJUSTABLE)[number] | null;
  readonly bendMostMm: number;
}

/** Whether the gap of this plug may be set by bending, and how far. Problems: those of the parser. */
export function adjustingOf({ gapRules }: Specification, plug: Plug): Result<Adjusting> {
  const most = lengthIn(gapRules?.bendMost, 'bendMost');
  if (!most.ok) return most;
  return ok({ barred: barredBy(gapRules?.adjustable, plug), bendMostMm: most.value ?? BEND_MOST_MM });
}

function barredBy(rule: 'yes' | 'new-only' | 'no' | undefined, plug: Plug): Adjusting['barred'] {
  if (rule === 'no') return 'not-adjustable';
  if (rule === 'new-only' && plug.condition === 'used') return 'used-not-adjustable';
  if (rule !== undefined) return null;
  if (plug.tip !== undefined && plug.tip !== 'nickel') return 'tip-not-adjustable';
  return (plug.groundElectrodes ?? 1) > 1 ? 'several-electrodes-not-adjustable' : null;
}

const mm = (what: string) => z.number().nonnegative().exactOptional().describe(what);

/** Why a plug is to be replaced. What is printed for each is in report/words/gap-step.ts. */
export const replacementSchema = z.strictObject({
  because: z.enum([...NOT_ADJUSTABLE, 'bent-too-far', 'needs-too-much', 'not-sound']).describe('Why.'),
  bentMm: mm('How far its electrode was bent in all, in mm; absent where it was not.'),
  neededMm: mm('How far it would have to be bent in all, in mm; only with `needs-too-much`.'),
  limitMm: mm('How far it may be bent, in mm; only where that decides.'),
});
export type Replacement = Readonly<z.infer<typeof replacementSchema>>;

/** One reading of the gap of a plug, and whether it proved the gap. */
export interface GapInspected {
  readonly valueMm: number;
  readonly proven: boolean;
}

/**
 * What a plug's readings ask for. A plug that is to be replaced stays so, whatever a later reading says. `bentMm`: how far
 * its electrode was bent in all, as its readings show; absent where nothing was measured. `bendMm`: how far it is to be bent.
 */
export type GapStep =
  | { readonly do: 'fit'; readonly bentMm?: number }
  | { readonly do: 'regap'; readonly bentMm: number; readonly bendMm: number }
  | ({ readonly do: 'replace' } & Replacement);

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
  const { barred, bendMostMm } = rules.adjusting;
  const bent = bentMm > 0 ? { bentMm: tenth(bentMm) } : {};
  const limitMm = tenth(bendMostMm);
  if (bentMm > 0 && barred !== null) return { do: 'replace', because: barred, ...bent };
  if (compare(bentMm, bendMostMm) > 0) return { do: 'replace', because: 'bent-too-far', ...bent, limitMm };
  if (reading.proven) return { do: 'fit', bentMm };
  if (barred !== null) return { do: 'replace', because: barred };
  const bendMm = Math.abs(rules.middleMm - reading.valueMm);
  const neededMm = tenth(bentMm + bendMm);
  if (compare(bentMm + bendMm, bendMostMm) > 0)
    return { do: 'replace', because: 'needs-too-much', ...bent, neededMm, limitMm };
  return { do: 'regap', bentMm, bendMm };
}

/** To a tenth of a micrometre: what is signed must not end in the noise of a sum. */
const tenth = (lengthMm: number): number => rounded(lengthMm, 4);

function lengthIn(text: string | undefined, field: string): Result<number | null> {
  if (text === undefined) return ok(null);
  const length = parseLength(text);
  if (!length.ok) return err(inField(length.error, `specification.gapRules.${field}`));
  return ok(millimetres(length.value.figure, length.value.unit));
}
