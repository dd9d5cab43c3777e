import type { Problem } from '../problem.ts';
import { err, ok, type Result } from '../result.ts';
import { w } from '../words/catalogue.ts';
import { spreadProblem, sumsProblem } from './checks.ts';
import { limitsProblem } from './limits.ts';
import { momentsOf } from './moments.ts';

/** Every appraiser measures every part as often: what a gauge study is made of. One unit throughout. */
export interface GaugeStudy {
  readonly appraisers: readonly string[];
  readonly parts: readonly string[];
  /** `readings[appraiser][part]` holds the trials in order. */
  readonly readings: readonly (readonly (readonly number[])[])[];
  /** Of what the gauge is to judge, where that is known. */
  readonly limits?: StudyLimits;
}

export interface StudyLimits {
  readonly lower: number;
  readonly upper: number;
}

/** Shares of the total below this are what rounding leaves behind. */
const ROUNDING = 1e-12;

/** A variation as a standard deviation, and in per cent of the total one. Percentages do not add up; their squares do. */
export interface Variation {
  readonly sigma: number;
  readonly percent: number;
}

/** Where the variation of a study comes from, in the shorthand of the trade. */
export interface GaugeResult {
  /** Equipment: the same appraiser, the same part. */
  readonly ev: Variation;
  /** Appraiser: the averages of the appraisers. */
  readonly av: Variation;
  /** Appraisers that differ on some parts only; null where the method cannot tell or the term was pooled. */
  readonly interaction: Variation | null;
  /** The gauge as used: all of the above together. */
  readonly grr: Variation;
  /** 6 GRR in per cent of the tolerance: how much of it the gauge takes up; null where no limits were given. */
  readonly percentOfTolerance: number | null;
  readonly pv: Variation;
  readonly tv: number;
  /** Number of distinct categories, ⌊1.41 PV/GRR⌋ and at least one; null when the gauge showed no variation. */
  readonly ndc: number | null;
  /** Components whose variance came out below zero and was taken as zero: too small to be told from repeatability. */
  readonly setToZero: readonly Component[];
}

export type Component = 'av' | 'interaction' | 'pv';

/** A variance as it came out, below zero where the readings say so. */
export type Variances = {
  readonly ev: number;
  readonly av: number;
  readonly pv: number;
  /** Null where the method has none. */
  readonly interaction: number | null;
};

/** A study that was checked: sizes, and a cell that is there for every appraiser and part. */
export interface CheckedStudy extends GaugeStudy {
  readonly trials: number;
}

/** Problems: `study-size`, `missing-cell`, `unequal-trials`, `not-a-number`, naming the cell where there is one; `no-spread`, `no-limits`, `range-reversed`. */
export function checkStudy(study: GaugeStudy): Result<CheckedStudy> {
  const { appraisers, parts, readings } = study;
  const trials = readings[0]?.[0]?.length ?? 0;
  if (appraisers.length < 2 || parts.length < 2) return err(size(appraisers.length, parts.length));
  for (const [a, appraiser] of appraisers.entries())
    for (const [p, part] of parts.entries()) {
      const problem = cellProblem(`appraiser ${appraiser}, part ${part}`, readings[a]?.[p] ?? [], trials);
      if (problem !== null) return err(problem);
    }
  if (trials < 2) return err(oneTrial());
  if (readings.length > appraisers.length || readings.some((row) => row.length > parts.length))
    return err(surplus());
  const all = readings.flat(2);
  const problem =
    spreadProblem(all, w`readings`) ??
    sumsProblem(momentsOf(all), w`readings`) ??
    (study.limits === undefined ? null : limitsProblem(study.limits));
  return problem === null ? ok({ ...study, trials }) : err(problem);
}

/** Puts variances together. What came out below zero is zero, and said. */
export function gaugeResult(variances: Variances, limits: StudyLimits | undefined): GaugeResult {
  const [ev, av, pv] = [sigmaOf(variances.ev), sigmaOf(variances.av), sigmaOf(variances.pv)];
  const interaction = variances.interaction === null ? null : sigmaOf(variances.interaction);
  const grr = Math.hypot(ev, av, interaction ?? 0);
  const tv = Math.hypot(grr, pv);
  const variation = (sigma: number): Variation => ({ sigma, percent: (100 * sigma) / tv });
  return {
    ev: variation(ev),
    av: variation(av),
    interaction: interaction === null ? null : variation(interaction),
    grr: variation(grr),
    percentOfTolerance: limits === undefined ? null : (600 * grr) / (limits.upper - limits.lower),
    pv: variation(pv),
    tv,
    ndc: grr <= ROUNDING * tv ? null : Math.max(1, Math.floor((1.41 * pv) / grr)),
    setToZero: COMPONENTS.filter((component) => (variances[component] ?? 0) < 0),
  };
}

const COMPONENTS: readonly Component[] = ['av', 'interaction', 'pv'];
const sigmaOf = (variance: number) => Math.sqrt(Math.max(0, variance));

function cellProblem(cell: string, values: readonly number[], trials: number): Problem | null {
  const next = 'Measure the cell again, or leave the whole part out of the study.';
  if (values.length === 0)
    return { code: 'missing-cell', where: cell, message: w`${cell} has no reading`, next };
  const bad = values.findIndex((value) => !Number.isFinite(value));
  if (bad >= 0)
    return {
      code: 'not-a-number',
      where: cell,
      message: w`trial ${bad + 1} of ${cell} is no finite number`,
      next,
    };
  if (values.length === trials) return null;
  return {
    code: 'unequal-trials',
    where: cell,
    message: w`${cell} has ${values.length} trials, the first cell has ${trials}`,
    next,
  };
}

function size(appraisers: number, parts: number): Problem {
  return {
    code: 'study-size',
    where: 'study',
    message: w`a gauge study needs at least 2 appraisers and 2 parts; this one has ${appraisers} and ${parts}`,
    next: w`Plan 3 appraisers, 10 parts and 3 trials, as is usual.`,
  };
}

function oneTrial(): Problem {
  return {
    code: 'study-size',
    where: 'study',
    message: w`every cell has one trial only, so repeatability cannot be told from the rest`,
    next: w`Have every appraiser measure every part at least twice.`,
  };
}

function surplus(): Problem {
  return {
    code: 'study-size',
    where: 'study',
    message: w`there are readings beyond the named appraisers and parts`,
    next: w`Name every appraiser and part, or leave the readings out.`,
  };
}
