/** The paper on what one process can do: figures, histogram and control charts. */

import type { ProcessRow } from '../audit/attempt.ts';
import { type ProcessGroup, valuesOf } from '../audit/capability.ts';
import { ok, type Result } from '../result.ts';
import { individualsChart, individualsLimits } from '../statistics/individuals.ts';
import { fixed, w } from '../words/catalogue.ts';
import type { Chart } from './charts/chart.ts';
import { individualsDrawing, rangesDrawing } from './charts/control.ts';
import { controlChart } from './charts/control-chart.ts';
import { histogramChart } from './charts/histogram-chart.ts';
import type { Paper } from './paper.ts';
import { chartTitle, coarseText, groupName, groupTexts, interval, isComputed, unitOf } from './process.ts';

export interface ProcessCharts {
  readonly histogram: Chart;
  /** A problem where there are too few readings. */
  readonly control: Result<ControlCharts>;
}

interface ControlCharts {
  readonly individuals: Chart;
  readonly ranges: Chart;
  /** How to read the names of the readings. */
  readonly names: string;
}

/** The charts of a group's first attempts. Control limits come from all of them; the last `most` are drawn. */
export function processCharts(group: ProcessGroup, most: number): ProcessCharts {
  const { process, lowerLimit, upperLimit } = group;
  const caption = { title: chartTitle(group), unit: unitOf(group) };
  const limits = { lower: lowerLimit, upper: upperLimit };
  return {
    histogram: histogramChart(valuesOf(process.rows), limits, caption),
    control: controlCharts(group, most),
  };
}

function controlCharts(group: ProcessGroup, most: number): Result<ControlCharts> {
  const { rows } = group.process;
  const limits = individualsLimits(valuesOf(rows));
  if (!limits.ok) return limits;
  const shown = rows.slice(-most);
  const chart = individualsChart(valuesOf(shown), limits.value);
  if (!chart.ok) return chart;
  const caption = { title: chartTitle(group), unit: unitOf(group), labels: shown.map(labelOf) };
  const [first] = shown;
  const names =
    first === undefined
      ? ''
      : w`A reading is named by its day and cylinder: ${labelOf(first)} is cylinder ${first.cylinder} on ${first.day}.`;
  return ok({
    individuals: controlChart(individualsDrawing(chart.value, caption)),
    ranges: controlChart(rangesDrawing(chart.value, caption)),
    names,
  });
}

const labelOf = ({ day, cylinder }: Pick<ProcessRow, 'day' | 'cylinder'>) => `${day.slice(2)}/${cylinder}`;

/** The headline is an index only where there is one, of a stable process, in steps fine enough to show it. */
function statusOf(group: ProcessGroup): Paper['status'] {
  const { capability, n, stability } = group.process;
  if (!isComputed(capability)) return { word: w`TOO FEW TO SAY`, text: w`${n} first attempts with a value.` };
  const { coarse, cpk, normality } = capability;
  if (coarse !== null) return { word: w`STEPS TOO COARSE TO SAY`, text: coarseText(coarse, unitOf(group)) };
  const index = w`95 % interval ${interval(cpk)}, from ${n} first attempts`;
  if (stability?.unstable === true)
    return {
      word: w`NOT STABLE`,
      text: w`${stability.signals} signals, where chance would give ${fixed(stability.byChance, 1)}: no index can say what this process will do. Cpk ${fixed(cpk.value, 2)}, ${index}.`,
    };
  if (normality.excluded)
    return {
      word: w`NOT NORMAL`,
      text: w`The readings do not lie in one normal distribution: no index can say what share of them is outside. Cpk ${fixed(cpk.value, 2)}, ${index}.`,
    };
  return {
    word: `Cpk ${fixed(cpk.value, 2)}`,
    text: w`${index}. It holds for a stable process with nearly normal readings.`,
  };
}

export function processPaper(
  group: ProcessGroup,
  { histogram, control }: ProcessCharts,
  { station, ...imprint }: { readonly station: string; readonly program: string; readonly madeAt: string },
): Paper {
  return {
    title: w`Process capability`,
    subtitle: groupName(group),
    status: statusOf(group),
    marks: group.mark === null ? [] : [group.mark],
    facts: [
      { label: w`Station`, value: station },
      { label: w`Specification`, value: group.specificationKey },
      { label: w`First day`, value: group.process.rows[0]?.day ?? '-' },
      { label: w`Last day`, value: group.process.rows.at(-1)?.day ?? '-' },
    ],
    parts: [
      ...groupTexts(group).map((text) => ({ kind: 'text', ...text }) as const),
      { kind: 'chart', chart: histogram },
      ...(control.ok
        ? [
            { kind: 'chart', chart: control.value.individuals } as const,
            { kind: 'chart', chart: control.value.ranges } as const,
            { kind: 'text', title: w`Names of the readings`, paragraphs: [control.value.names] } as const,
          ]
        : [
            {
              kind: 'text',
              title: w`Control charts`,
              paragraphs: [w`None: ${control.error.message}.`],
            } as const,
          ]),
    ],
    footer: w`Capability of ${group.specificationKey}, ${station}`,
    ...imprint,
  };
}
