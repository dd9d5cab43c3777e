/** What a process can do, for people: one group in full, many groups in a table, and the paper with its charts. */

import type { ProcessRow } from '../audit/attempt.ts';
import { type ProcessGroup, type ProcessSeries, type Series, valuesOf } from '../audit/capability.ts';
import { EVALUATION_WORD } from '../metrology/verdict.ts';
import type { Problem } from '../problem.ts';
import { ok, type Result } from '../result.ts';
import type { Capability, Coarse, Estimate } from '../statistics/capability.ts';
import { type IndividualsChart, individualsChart, individualsLimits } from '../statistics/individuals.ts';
import type { Proportion } from '../statistics/proportion.ts';
import type { Stability } from '../statistics/run-rules.ts';
import { type Caption, individualsDrawing, rangesDrawing } from './charts/control.ts';
import { controlPicture } from './charts/control-pdf.ts';
import { clean } from './clean.ts';
import { figure, percent, UNIT_TEXT, type Unit } from './figures.ts';
import type { Paper } from './paper.ts';

export const unitOf = ({ quantity }: Pick<ProcessGroup, 'quantity'>): Unit =>
  quantity === 'torque' ? 'N.m' : 'mm';

export const isComputed = (capability: Capability | Problem): capability is Capability => 'cpk' in capability;

/** `invented V8, type A, 25.00 to 30.00 N·m`, with whom or what it was told apart by; SIMULATED where it was. */
export function groupName(group: ProcessGroup): string {
  const unit = unitOf(group);
  const engine = clean(group.engine ?? `specification ${group.specificationKey}`);
  const limits = `${figure(group.lowerLimit, unit)} to ${figure(group.upperLimit, unit)} ${UNIT_TEXT[unit]}`;
  const member = group.member === '' ? [] : [clean(group.member)];
  return [engine, limits, ...member, ...(group.simulated ? ['SIMULATED'] : [])].join(', ');
}

/** What its charts are called; they say too where steps are too wide for them to show a process. */
export function chartTitle(group: ProcessGroup): string {
  const { capability } = group.process;
  const coarse = isComputed(capability) ? capability.coarse : null;
  return coarse === null ? groupName(group) : `${groupName(group)}, COARSE STEPS`;
}

export const GROUP_HEAD = [
  'specification',
  'engine',
  'limits',
  'of',
  'n',
  'mean',
  's',
  'Cp',
  'Cpk',
  'Cpk 95 %',
  `${EVALUATION_WORD.NotOK} first`,
  'at worst',
  'no value',
  'stands',
  'not proven',
  'Ppk',
] as const;

/** One group as a row of a table: the process from its first attempts, then the product from the last ones. */
export function groupRow(group: ProcessGroup): readonly string[] {
  const unit = unitOf(group);
  const { process, product } = group;
  const known = isComputed(process.capability) ? process.capability : null;
  const stands = isComputed(product.capability) ? product.capability : null;
  return [
    group.specificationKey,
    clean(group.engine ?? '-'),
    `${figure(group.lowerLimit, unit)} to ${figure(group.upperLimit, unit)} ${UNIT_TEXT[unit]}`,
    `${group.member === '' ? 'all' : clean(group.member)}${group.simulated ? ', SIMULATED' : ''}`,
    String(process.n),
    orDash(process.mean, (value) => figure(value, unit)),
    orDash(process.standardDeviation, (value) => figure(value, unit)),
    known?.cp == null ? '-' : known.cp.value.toFixed(2),
    known === null ? '-' : `${known.cpk.value.toFixed(2)}${coarseMark(known)}`,
    known === null ? '-' : interval(known.cpk),
    orDash(group.notOkFirst.share, percentOf),
    orDash(group.notOkAtWorst.share, percentOf),
    String(leftOutCount(group)),
    String(product.n),
    orDash(group.notProven.share, percentOf),
    stands === null ? '-' : `${stands.ppk.value.toFixed(2)}${coarseMark(stands)}`,
  ];
}

const coarseMark = ({ coarse }: Capability) => (coarse === null ? '' : ' coarse');

/** A group in full, line by line. */
export function groupLines(group: ProcessGroup): readonly string[] {
  const { notOkFirst, notOkAtWorst, notDecidableFirst, leftOut } = group;
  const reasons = (['cut', 'saturated', 'undecided', 'bounded'] as const)
    .filter((reason) => leftOut[reason] > 0)
    .map((reason) => `${leftOut[reason]} ${LEFT_OUT_WORD[reason]}`);
  const share = (what: string, found: Proportion) =>
    found.share === null ? [] : [`${what} at the first attempt: ${shareText(found)}.`];
  const unknown = notOkAtWorst.n - notOkFirst.n;
  return [
    groupName(group),
    ...seriesLines('Process, first attempts on their plugs', group.process, unitOf(group)),
    ...share(EVALUATION_WORD.NotOK, notOkFirst),
    ...(unknown === 0
      ? []
      : [
          `  Without a verdict: ${unknown}; were all of them ${EVALUATION_WORD.NotOK}: ${shareText(notOkAtWorst)}.`,
        ]),
    ...share(EVALUATION_WORD.NotDecidable, notDecidableFirst),
    ...(reasons.length === 0
      ? []
      : [`First attempts without a value, in no mean and no index: ${reasons.join(', ')}.`]),
    ...seriesLines('Product, attempts that plugs stand with', group.product, unitOf(group)),
    ...(group.notProven.share === null
      ? []
      : [`  Plugs that nothing OK stands for when their job was closed: ${shareText(group.notProven)}.`]),
  ];
}

/** `4 of 40, 10 % (4.0 % to 23.1 %)`. */
export function shareText({ count, n, share, from, to }: Proportion): string {
  return share === null
    ? `0 of ${n}`
    : `${count} of ${n}, ${percentOf(share)} (${percentOf(from)} to ${percentOf(to)})`;
}

const LEFT_OUT_WORD = {
  cut: 'cut off',
  saturated: 'at the end of the scale',
  undecided: 'not said',
  bounded: 'between wires',
} as const;

function seriesLines(title: string, series: Series | ProcessSeries, unit: Unit): readonly string[] {
  const { n, mean, standardDeviation, capability } = series;
  const moments =
    mean === null
      ? 'none'
      : `n ${n}, mean ${figure(mean, unit)} ${UNIT_TEXT[unit]}${standardDeviation === null ? '' : `, s ${figure(standardDeviation, unit)} ${UNIT_TEXT[unit]}`}`;
  if (!isComputed(capability)) return [`${title}: ${moments}.`, `  No indices: ${capability.message}.`];
  const { cp, cpk, pp, ppk, expectedPercent, outside, fewerThanUsual, coarse, sigmaWithin } = capability;
  const pair = (name: string, one: Estimate | null) =>
    one === null ? '' : `${name} ${one.value.toFixed(2)} (${interval(one)})`;
  return [
    `${title}: ${moments}.`,
    `  ${[pair('Cp', cp), pair('Cpk', cpk), pair('Pp', pp), pair('Ppk', ppk)].filter((one) => one !== '').join(', ')}; 95 % intervals.`,
    `  Cp and Cpk by the moving ranges (sigma ${figure(sigmaWithin, unit)} ${UNIT_TEXT[unit]}), Pp and Ppk by s.`,
    ...('stability' in series && series.stability !== null ? [`  ${stabilityText(series.stability)}`] : []),
    `  Outside the limits: seen ${shareText(outside)}; expected, were it normal, ${expectedPercent.total.toFixed(3)} %.${fewerThanUsual ? ' Fewer than the 100 that are usual for such a statement.' : ''}`,
    ...(coarse === null ? [] : [`  ${coarseText(coarse, unit)}`]),
  ];
}

const stabilityText = ({ signals, readings, byChance, unstable }: Stability) =>
  `${unstable ? 'NOT STABLE' : 'Stable'}: ${signals} of ${readings} complete a rule of the control chart, about ${byChance.toFixed(1)} would by chance.`;

/** That an instrument should tell at least five values within the spread is common practice. */
const coarseText = ({ values, step }: Coarse, unit: Unit) =>
  `COARSE STEPS: ${values} different values, ${figure(step, unit)} ${UNIT_TEXT[unit]} apart. The resolution of the instrument is too coarse against the spread of the process: s is that of rounding, and the indices may be far too good.`;

export interface ProcessCharts {
  readonly individuals: IndividualsChart;
  readonly caption: Caption;
  /** How to read the names of the readings. */
  readonly labels: string;
}

/** Individuals and moving ranges of a group's first attempts: limits from all of them, drawn for the last `most`. */
export function processCharts(group: ProcessGroup, most: number): Result<ProcessCharts> {
  const { rows } = group.process;
  const limits = individualsLimits(valuesOf(rows));
  if (!limits.ok) return limits;
  const shown = rows.slice(-most);
  const chart = individualsChart(valuesOf(shown), limits.value);
  if (!chart.ok) return chart;
  const caption: Caption = {
    title: chartTitle(group),
    unit: unitOf(group),
    labels: shown.map(labelOf),
  };
  const first = shown[0];
  const labels =
    first === undefined
      ? ''
      : `Each reading is named by its day and cylinder: ${labelOf(first)} is of cylinder ${first.cylinder} on ${first.day}.`;
  return ok({ individuals: chart.value, caption, labels });
}

const labelOf = ({ day, cylinder }: Pick<ProcessRow, 'day' | 'cylinder'>) => `${day.slice(2)}/${cylinder}`;

/** The headline: an index only where there is one, of a process that stays what it is, in steps that can show it. */
function statusOf(group: ProcessGroup): Paper['status'] {
  const { capability, n, stability } = group.process;
  if (!isComputed(capability)) return { word: 'TOO FEW TO SAY', text: `${n} first attempts with a value.` };
  const { coarse, cpk } = capability;
  if (coarse !== null) return { word: 'STEPS TOO COARSE TO SAY', text: coarseText(coarse, unitOf(group)) };
  const index = `95 % interval ${interval(cpk)}, from ${n} first attempts`;
  if (stability?.unstable === true)
    return {
      word: 'NOT STABLE',
      text: `${stability.signals} signals where ${stability.byChance.toFixed(1)} would come by chance: no index says what this process will do. Cpk ${cpk.value.toFixed(2)}, ${index}.`,
    };
  return {
    word: `Cpk ${cpk.value.toFixed(2)}`,
    text: `${index}. It holds for a stable process whose readings are near normal.`,
  };
}

/** The paper of one group with its charts. `madeAt` is an ISO time. */
export function processPaper(
  group: ProcessGroup,
  charts: Result<ProcessCharts>,
  {
    station,
    program,
    madeAt,
  }: { readonly station: string; readonly program: string; readonly madeAt: string },
): Paper {
  return {
    title: 'What the process can do',
    subtitle: groupName(group),
    status: statusOf(group),
    simulated: group.simulated,
    facts: [
      { label: 'Station', value: station },
      { label: 'Specification', value: group.specificationKey },
      { label: 'First day', value: group.process.rows[0]?.day ?? '-' },
      { label: 'Last day', value: group.process.rows.at(-1)?.day ?? '-' },
    ],
    parts: [
      { kind: 'text', title: 'Figures', paragraphs: groupLines(group).slice(1) },
      ...(charts.ok
        ? [
            controlPicture(individualsDrawing(charts.value.individuals, charts.value.caption)),
            controlPicture(rangesDrawing(charts.value.individuals, charts.value.caption)),
            { kind: 'text', title: 'Names of the readings', paragraphs: [charts.value.labels] } as const,
          ]
        : [{ kind: 'text', title: 'Charts', paragraphs: [`No chart: ${charts.error.message}.`] } as const]),
    ],
    footer: `Capability of ${group.specificationKey}, ${station}`,
    program,
    madeAt,
  };
}

const leftOutCount = ({ leftOut }: ProcessGroup) =>
  leftOut.cut + leftOut.saturated + leftOut.undecided + leftOut.bounded;
const interval = ({ from, to }: Estimate) => `${from.toFixed(2)} to ${to.toFixed(2)}`;
/** A share of what was counted: unlike a probability it may well be none or all. */
const percentOf = (share: number) => (share === 0 || share === 1 ? `${100 * share} %` : percent(share));
const orDash = (value: number | null, text: (value: number) => string) =>
  value === null ? '-' : text(value);
