/** The figures of a process for people: one group in sentences, many groups as rows of a table. */

import type { ProcessGroup, ProcessSeries, Series } from '../audit/capability.ts';
import type { Problem } from '../problem.ts';
import { shownLimit } from '../quantity/shown.ts';
import type { Capability, Coarse, Estimate } from '../statistics/capability.ts';
import type { Proportion } from '../statistics/proportion.ts';
import type { Stability } from '../statistics/run-rules.ts';
import { fixed, phrases, plural, w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { figure, percent, UNIT_TEXT, type Unit, withUnit } from './figures.ts';
import { VERDICT_WORD } from './verdict.ts';
import { MARK_WORD } from './words/index.ts';

export const unitOf = ({ quantity }: Pick<ProcessGroup, 'quantity'>): 'N.m' | 'mm' =>
  quantity === 'torque' ? 'N.m' : 'mm';

export const isComputed = (capability: Capability | Problem): capability is Capability => 'cpk' in capability;

/** `invented V8, type A, 25.00 to 30.00 N·m`, then the wrench, technician or cylinder it is of; SIMULATED or REPLAYED where it was. */
export function groupName(group: ProcessGroup): string {
  const unit = unitOf(group);
  const engine = clean(group.engine ?? w`specification ${group.specificationKey}`);
  const limits = w`${shownLimit(group.lowerLimit, unit, 'lower')} to ${shownLimit(group.upperLimit, unit, 'upper')} ${UNIT_TEXT[unit]}`;
  const member = group.member === '' ? [] : [clean(group.member)];
  return [engine, limits, ...member, ...(group.mark === null ? [] : [MARK_WORD[group.mark]])].join(', ');
}

/** The name of its charts; it says so where the steps of the instrument are too coarse to show a process. */
export function chartTitle(group: ProcessGroup): string {
  const { capability } = group.process;
  const coarse = isComputed(capability) ? capability.coarse : null;
  return coarse === null ? groupName(group) : w`${groupName(group)}, COARSE STEPS`;
}

export const groupHead = (): readonly string[] => [
  w`specification`,
  w`engine`,
  w`limits`,
  w`of`,
  'n',
  w`mean`,
  's',
  'Cp',
  'Cpk',
  'Cpk 95 %',
  w`NOT OK first`,
  w`at worst`,
  w`no value`,
  w`stands`,
  w`not proven`,
  'Ppk',
];

/** One group as a row of a table: the process from its first attempts, then the product from the last ones. */
export function groupRow(group: ProcessGroup): readonly string[] {
  const unit = unitOf(group);
  const { process, product } = group;
  const first = isComputed(process.capability) ? process.capability : null;
  const last = isComputed(product.capability) ? product.capability : null;
  return [
    group.specificationKey,
    clean(group.engine ?? '-'),
    w`${shownLimit(group.lowerLimit, unit, 'lower')} to ${shownLimit(group.upperLimit, unit, 'upper')} ${UNIT_TEXT[unit]}`,
    `${group.member === '' ? w`all` : clean(group.member)}${group.mark === null ? '' : `, ${MARK_WORD[group.mark]}`}`,
    String(process.n),
    orDash(process.mean, (value) => figure(value, unit)),
    orDash(process.standardDeviation, (value) => figure(value, unit)),
    first?.cp == null ? '-' : fixed(first.cp.value, 2),
    first === null ? '-' : `${fixed(first.cpk.value, 2)}${doubtMark(first)}`,
    first === null ? '-' : interval(first.cpk),
    orDash(group.notOkFirst.share, percentOf),
    orDash(group.notOkAtWorst.share, percentOf),
    String(leftOutCount(group)),
    String(product.n),
    orDash(group.notProven.share, percentOf),
    last === null ? '-' : `${fixed(last.ppk.value, 2)}${doubtMark(last)}`,
  ];
}

const doubtMark = ({ coarse, normality }: Capability) =>
  coarse !== null ? w` coarse` : normality.excluded ? w` not normal` : '';

/** Under a table of groups. */
export const groupNote = (): string =>
  w`stands, not proven and Ppk are of the last attempts: what was left after doing again what was not right. NOT OK first shows the process. Indices marked coarse or not normal do not hold.`;

/** A group in full: the process by its first attempts, then the product by what plugs have at the end. */
export function groupTexts(
  group: ProcessGroup,
): readonly { readonly title: string; readonly paragraphs: readonly string[] }[] {
  const unit = unitOf(group);
  return [
    {
      title: w`Process: first attempts on their plugs`,
      paragraphs: [...seriesLines(group.process, unit), ...firstLines(group)],
    },
    {
      title: w`Product: last attempts on their plugs`,
      paragraphs: [
        ...againText(group.product),
        ...seriesLines(group.product, unit),
        ...(group.notProven.share === null
          ? []
          : [w`Plugs without an OK when their job was closed: ${shareText(group.notProven)}.`]),
      ],
    },
  ];
}

/** Good figures of the product may be those of a bad process that was done again until it was right. */
function againText({ rows }: Series): readonly string[] {
  if (rows.length === 0) return [];
  const again = rows.filter(({ first }) => !first).length;
  const what =
    again === 0
      ? w`None of them was done again.`
      : w`${again} of ${rows.length} stand on a later attempt: they were done again. This is what was left after that, and not what the process does at the first attempt.`;
  return [what];
}

function firstLines({
  notOkFirst,
  notOkAtWorst,
  notDecidableFirst,
  leftOut,
}: ProcessGroup): readonly string[] {
  const reasons = (['cut', 'saturated', 'undecided', 'bounded'] as const)
    .filter((reason) => leftOut[reason] > 0)
    .map((reason) => `${leftOut[reason]} ${LEFT_OUT_WORD[reason]}`);
  const share = (what: string, proportion: Proportion) =>
    proportion.share === null ? [] : [w`${what} at the first attempt: ${shareText(proportion)}.`];
  const unknown = notOkAtWorst.n - notOkFirst.n;
  return [
    ...share(VERDICT_WORD['not-ok'], notOkFirst),
    ...(unknown === 0
      ? []
      : [
          `${plural(unknown, { one: '# first attempt has no verdict.', other: '# first attempts have no verdict.' })} ${w`If all of them were ${VERDICT_WORD['not-ok']}: ${shareText(notOkAtWorst)}.`}`,
        ]),
    ...share(VERDICT_WORD['not-decidable'], notDecidableFirst),
    ...(reasons.length === 0
      ? []
      : [w`First attempts without a value, left out of mean and indices: ${reasons.join(', ')}.`]),
  ];
}

/** `4 of 40, 10 % (4.0 % to 23.1 %)`. */
export function shareText({ count, n, share, from, to }: Proportion): string {
  return share === null
    ? w`0 of ${n}`
    : w`${count} of ${n}, ${percentOf(share)} (${percentOf(from)} to ${percentOf(to)})`;
}

const LEFT_OUT_WORD = phrases({
  cut: 'cut off',
  saturated: 'at the end of the scale',
  undecided: 'not answered',
  bounded: 'between wires',
});

function seriesLines(series: Series | ProcessSeries, unit: Unit): readonly string[] {
  const { n, mean, standardDeviation, capability } = series;
  const moments =
    mean === null
      ? w`None`
      : `${w`n ${n}, mean ${withUnit(mean, unit)}`}${standardDeviation === null ? '' : `, s ${withUnit(standardDeviation, unit)}`}`;
  if (!isComputed(capability)) return [`${moments}.`, w`No indices: ${capability.message}.`];
  const { cp, cpk, pp, ppk, fewerThanUsual, coarse, sigmaWithin } = capability;
  const pair = (name: string, one: Estimate | null) =>
    one === null ? '' : `${name} ${fixed(one.value, 2)} (${interval(one)})`;
  return [
    `${moments}.`,
    `${[pair('Cp', cp), pair('Cpk', cpk), pair('Pp', pp), pair('Ppk', ppk)].filter((one) => one !== '').join(', ')}; ${w`95 % intervals.`}`,
    w`Cp and Cpk rest on the moving ranges (sigma ${figure(sigmaWithin, unit)} ${UNIT_TEXT[unit]}), Pp and Ppk on s.`,
    ...('stability' in series && series.stability !== null ? [stabilityText(series.stability)] : []),
    `${outsideText(capability)}${fewerThanUsual ? ` ${w`Such a statement usually needs 100 readings.`}` : ''}`,
    ...(coarse === null ? [] : [coarseText(coarse, unit)]),
  ];
}

/** What a normal distribution would have is beside what was seen only where the readings may be normal. */
function outsideText({ outside, expectedPercent, normality, coarse }: Capability): string {
  const seen = w`Outside the limits: seen ${shareText(outside)}`;
  if (!normality.excluded)
    return w`${seen}; a normal distribution would have ${fixed(expectedPercent.total, 3)} %.`;
  const why = coarse === null ? notNormal() : w`NOT NORMAL`;
  return w`${seen}. ${why} (Anderson-Darling ${fixed(normality.statistic, 1)}; normal readings exceed ${normality.limit} once in 200 times). No expected share is given, and the indices do not hold.`;
}

const notNormal = () =>
  w`NOT NORMAL: several groups or a long tail; see the histogram, and ask again by tool, technician or cylinder`;

const stabilityText = ({ signals, readings, byChance, unstable }: Stability) =>
  unstable
    ? w`NOT STABLE: ${signals} of ${readings} readings break a rule of the control chart; about ${fixed(byChance, 1)} would by chance.`
    : w`Stable: ${signals} of ${readings} readings break a rule of the control chart; about ${fixed(byChance, 1)} would by chance.`;

/** An instrument should tell at least five values apart within the spread: common practice. */
export const coarseText = ({ values, step }: Coarse, unit: Unit) =>
  w`COARSE STEPS: ${values} different values, ${figure(step, unit)} ${UNIT_TEXT[unit]} apart. The instrument reads too coarsely for the spread of this process: s shows the rounding, and the indices may be far too good.`;

const leftOutCount = ({ leftOut }: ProcessGroup) =>
  leftOut.cut + leftOut.saturated + leftOut.undecided + leftOut.bounded;
export const interval = ({ from, to }: Estimate) => w`${fixed(from, 2)} to ${fixed(to, 2)}`;
/** A share of what was counted; unlike a probability it can be none or all. */
const percentOf = (share: number) => (share === 0 || share === 1 ? `${100 * share} %` : percent(share));
const orDash = (value: number | null, text: (value: number) => string) =>
  value === null ? '-' : text(value);
