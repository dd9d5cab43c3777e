/** A gauge study in words: average and range, and analysis of variance, side by side. */

import { type AverageRange, averageRange } from '../statistics/average-range.ts';
import type { GaugeResult, GaugeStudy } from '../statistics/gauge-study.ts';
import { type GaugeVariance, gaugeVariance } from '../statistics/gauge-variance.ts';
import { fixed, w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { UNIT_TEXT, type Unit } from './figures.ts';

export interface NamedStudy extends GaugeStudy {
  readonly study: string;
  readonly tool: string;
  readonly serial: string | null;
  readonly unit: Unit;
}

/** Both methods; where one cannot say anything, why. */
export function studyLines(named: NamedStudy): readonly string[] {
  const { study, tool, serial, unit, appraisers, parts, readings } = named;
  const trials = readings[0]?.[0]?.length ?? 0;
  const [ranges, variance] = [averageRange(named), gaugeVariance(named)];
  return [
    w`${study}: ${`${clean(tool)}${serial === null ? '' : ` (${clean(serial)})`}`}, ${appraisers.length} appraisers, ${parts.length} parts, ${trials} trials, in ${UNIT_TEXT[unit]}`,
    '',
    ...(ranges.ok ? rangeLines(ranges.value) : [w`Average and range: ${ranges.error.message}.`]),
    '',
    ...(variance.ok ? varianceLines(variance.value) : [w`Analysis of variance: ${variance.error.message}.`]),
  ];
}

function rangeLines(result: AverageRange): readonly string[] {
  const { wideCells, rangeLimit } = result;
  return [
    w`Average and range`,
    ...resultLines(result),
    ...(wideCells.length === 0
      ? []
      : [`  ${w`Range above ${sixth(rangeLimit)}. Measure these again: ${clean(wideCells.join('; '))}.`}`]),
  ];
}

function varianceLines({
  withInteraction,
  pooled,
  advised,
  interactionTest,
}: GaugeVariance): readonly string[] {
  const test =
    interactionTest === null
      ? ''
      : ` ${w`Interaction: F ${fixed(interactionTest.f, 3)}, p ${fixed(interactionTest.p, 3)}.`}`;
  const how = advised === 'pooled' ? w`interaction pooled into the error` : w`with interaction`;
  return [
    `${w`Analysis of variance, ${how}.`}${test}`,
    ...resultLines(advised === 'pooled' ? pooled : withInteraction),
  ];
}

function resultLines(result: GaugeResult): readonly string[] {
  const { ev, av, interaction, grr, pv, tv, ndc } = result;
  const line = (name: string, { sigma, percent }: GaugeResult['ev']) =>
    `  ${name.padEnd(26)} ${sixth(sigma).padStart(12)}  ${fixed(percent, 2).padStart(6)} %`;
  return [
    line(w`repeatability (EV)`, ev),
    line(w`reproducibility (AV)`, av),
    ...(interaction === null ? [] : [line(w`interaction`, interaction)]),
    line(w`gauge as used (GRR)`, grr),
    line(w`parts (PV)`, pv),
    `  ${w`total (TV)`.padEnd(26)} ${sixth(tv).padStart(12)}`,
    `  ${ndc === null ? w`The gauge showed no variation.` : w`Categories it can tell apart: ${ndc}.`} ${judged(result)}`,
  ];
}

/** The bounds of 10 and 30 per cent and of five categories are common practice (AIAG, "Measurement Systems Analysis"). */
export type StudyGrade = 'good' | 'weak' | 'not-fit';

export function studyGrade({ grr: { percent }, ndc }: GaugeResult): StudyGrade {
  if (percent > 30) return 'not-fit';
  return percent > 10 || (ndc !== null && ndc < 5) ? 'weak' : 'good';
}

/** The grade with what it rests on. */
function judged(result: GaugeResult): string {
  switch (studyGrade(result)) {
    case 'not-fit':
      return w`NOT fit to tell these parts apart: GRR is above 30 %.`;
    case 'good':
      return w`Good: GRR is at most 10 %.`;
    case 'weak':
      return result.ndc !== null && result.ndc < 5
        ? w`Weak: fewer than five categories.`
        : w`Weak: GRR is between 10 and 30 %.`;
  }
}

const sixth = (value: number) => fixed(value, 6);
