import { lastMeasured, measuredTrials } from '../../audit/gauge-exercise.ts';
import type { StudyFinished } from '../../audit/gauge-log.ts';
import { lastSeen, type Sitting } from '../../audit/gauge-sitting.ts';
import type { Instrument } from '../../instrument/instrument.ts';
import type { StudyState } from '../../pipeline/run-study.ts';
import { figure } from '../../report/figures.ts';
import { studyGrade } from '../../report/gauge-study.ts';
import { averageRange } from '../../statistics/average-range.ts';
import type { GaugeResult } from '../../statistics/gauge-study.ts';
import { gaugeVariance } from '../../statistics/gauge-variance.ts';
import type { StudyMethod, StudyResult, StudyView } from '../../ui/study-view.ts';
import { fixed, w } from '../../words/catalogue.ts';

/** What does not change while a study is worked on. */
export interface StudyAbout {
  readonly study: string;
  readonly station: string;
  readonly instrument: Instrument;
  readonly types: boolean;
  /** The day on which it is worked on. */
  readonly on: string;
}

/** What the screen may show of a study. Of the readings only the last one: it is not due again in this turn. */
export function studyViewOf({ sitting, finished }: StudyState, about: StudyAbout): StudyView {
  const { study, station, instrument, types, on } = about;
  const { exercise, tool, live, paused, notice, asked } = sitting;
  const { plan, order, readings } = exercise;
  const next = order[readings.length] ?? null;
  const before = lastMeasured(exercise)?.cell;
  return {
    study,
    station,
    quantity: instrument.quantity,
    types,
    tool,
    calibrations: { instruments: [instrument], basis: { on } },
    appraisers: plan.appraisers,
    parts: plan.parts,
    trials: plan.trials,
    steps: order.length,
    measured: measuredTrials(exercise),
    due: next,
    last: lastOf(sitting),
    handOver: next !== null && before !== undefined && next.appraiser !== before.appraiser,
    paused,
    notice,
    asked,
    live,
    result: finished === null ? null : resultOf(finished),
  };
}

function lastOf(sitting: Sitting): StudyView['last'] {
  const { exercise, last } = sitting;
  const cell =
    last === 'back' ? exercise.order[exercise.readings.length] : (lastMeasured(exercise)?.cell ?? undefined);
  if (last === null || cell === undefined) return null;
  return { done: last, appraiser: cell.appraiser, part: cell.part, value: lastSeen(sitting) };
}

/** Both methods side by side. */
function resultOf(finished: StudyFinished): StudyResult {
  const [ranges, variance] = [averageRange(finished), gaugeVariance(finished)];
  const pooled = variance.ok && variance.value.advised === 'pooled';
  const wide = ranges.ok && ranges.value.wideCells.length > 0 ? ranges.value : null;
  const method = (title: string, found: GaugeResult | null, why: string): StudyMethod => ({
    title,
    values: found === null ? null : valuesOf(found),
    why,
  });
  return {
    unit: finished.unit,
    methods: [
      method(w`average, range`, ranges.ok ? ranges.value : null, ranges.ok ? '' : ranges.error.message),
      method(
        w`variance (ANOVA)`,
        variance.ok ? variance.value[variance.value.advised] : null,
        variance.ok ? '' : variance.error.message,
      ),
    ],
    notes: [
      ...(variance.ok
        ? [pooled ? w`ANOVA with the interaction pooled into the error.` : w`ANOVA with its interaction.`]
        : []),
      ...(wide === null
        ? []
        : [
            w`Range above ${figure(wide.rangeLimit, finished.unit)}. Measure these again: ${wide.wideCells.join('; ')}.`,
          ]),
      w`See it again: plugmark gauge-study show ${finished.study}`,
    ],
  };
}

function valuesOf(result: GaugeResult): NonNullable<StudyMethod['values']> {
  const { ev, av, interaction, grr, pv, tv, ndc } = result;
  const named = [
    [w`repeatability (EV)`, ev],
    [w`reproducibility (AV)`, av],
    [w`interaction`, interaction],
    [w`gauge as used (GRR)`, grr],
    [w`parts (PV)`, pv],
  ] as const;
  return {
    variations: [
      ...named.map(([name, variation]) => ({
        name,
        sigma: variation === null ? '-' : fixed(variation.sigma, 5),
        percent: variation === null ? '' : `${fixed(variation.percent, 1)} %`,
      })),
      { name: w`total (TV)`, sigma: fixed(tv, 5), percent: '' },
    ],
    categories: ndc === null ? '-' : String(ndc),
    grade: studyGrade(result),
  };
}
