/** The record for people as lines of text: all that its pages say, in their order. */

import { columnsOf, printable } from '../ui/printable.ts';
import { w } from '../words/catalogue.ts';
import { fingerprintLines } from './back.ts';
import { pullChart } from './charts/pull-chart.ts';
import { attestedTexts, oldAndNewPlugs } from './checklist-drawing.ts';
import { inWords } from './engine-picture.ts';
import type { Fact } from './fact.ts';
import { wrapped as broken } from './lines.ts';
import type { ReportModel } from './model.ts';
import type { Terminal } from './paper-text.ts';
import type { CylinderPlot, PullPlot } from './plots.ts';
import {
  exceptions,
  instruments,
  inventedSentence,
  measurements,
  type TablePart,
  turns,
  windowFacts,
} from './proof-parts.ts';
import { textTable } from './text-table.ts';
import { wrapped } from './text-wrap.ts';
import { VERDICT_WORD } from './verdict.ts';
import { MARK_SENTENCE } from './words/index.ts';

const LONGEST = 2000;
const LABEL = 24;
const CHART = { widest: 120, usual: 80 } as const;

export function jobLines(model: ReportModel, terminal: Terminal): readonly string[] {
  const { columns } = terminal;
  const { customer } = model;
  const say = (text: string) => wrapped(printable(text, LONGEST), columns);
  const titled = (title: string, lines: readonly string[]) => ['', ...say(title), ...lines];
  const indented = (text: string) =>
    broken(printable(text, LONGEST), columns - 2, Number.POSITIVE_INFINITY, columnsOf).lines.map(
      (line) => `  ${line.trimEnd()}`,
    );
  const facts = (all: readonly Fact[]) =>
    all.flatMap(({ label, value }) =>
      wrapped(`  ${label.padEnd(LABEL)}${printable(value, LONGEST)}`, columns),
    );
  const part = ({ title, columns: heads, rows, note }: TablePart) =>
    titled(title, [
      ...(rows.length === 0
        ? indented(w`None.`)
        : textTable(
            heads.map((column) => column.title),
            rows.map((row) => row.map(({ text }) => text)),
            columns - 2,
          ).map((line) => `  ${line}`)),
      ...(note === '' ? [] : indented(note)),
    ]);
  const maybe = (one: TablePart) => (one.rows.length === 0 ? [] : part(one));
  const sentences = (title: string, all: readonly string[]) =>
    all.length === 0 ? [] : titled(title, all.flatMap(indented));
  return [
    ...say(w`${model.status.word}: job ${model.job}. ${model.status.text}`),
    ...warningTexts(model).flatMap(say),
    ...titled(
      customer.shop.name,
      [...customer.shop.address, customer.shop.page].filter(Boolean).flatMap(indented),
    ),
    ...titled(w`For the customer`, facts(customer.facts)),
    ...part(newPlugs(model)),
    ...maybe(oldPlugs(model)),
    ...titled(w`Next change of the plugs`, indented(customer.nextChange)),
    ...titled(w`The job`, facts(model.jobFacts)),
    ...titled(w`Specification`, facts([...model.specificationFacts, ...windowFacts(model)])),
    ...titled(w`Engine and verdict for each cylinder`, indented(inWords(model.banks, model.positions))),
    ...part(measurements(model)),
    ...maybe(turns(model)),
    ...maybe(oldAndNewPlugs(model.around)),
    ...sentences(w`Attested steps`, attestedTexts(model.around)),
    ...exceptions(model).flatMap(part),
    ...part(instruments(model)),
    ...titled(w`Torque over time, every pull given to a cylinder`, traces(model, terminal)),
    ...sentences(w`Cautions`, model.cautions),
    ...sentences(w`What this document proves, and what it does not`, model.proves),
    ...titled(
      w`Fingerprint`,
      fingerprintLines(model, 'text').flatMap(({ words }) => indented(words)),
    ),
  ];
}

/** What a reader must not overlook. */
export function warningTexts(model: ReportModel): readonly string[] {
  return [
    ...model.marks.map((mark) => MARK_SENTENCE[mark]),
    model.outOfOrder,
    model.proof,
    model.inventedSpecification ? inventedSentence() : '',
  ].filter((text) => text !== '');
}

const newPlugs = ({ customer, positions }: ReportModel): TablePart => ({
  title: w`Each new plug`,
  columns: [positions.column, w`Verdict`, w`Gap`, w`Torque`].map((title) => ({ title, share: 1 })),
  rows: customer.plugs.map(({ position, verdict, gap, torque }) =>
    [position, VERDICT_WORD[verdict], gap, torque].map((text) => ({ text })),
  ),
  note: '',
});

const oldPlugs = ({ customer }: ReportModel): TablePart => ({
  title: w`What the old plugs showed`,
  columns: [w`Old plugs of`, w`How they looked`, w`What we recommend`].map((title) => ({ title, share: 1 })),
  rows: customer.oldPlugs.map(({ position, looks, advice }) =>
    [position, looks, advice || w`nothing`].map((text) => ({ text })),
  ),
  note: w`The look of a plug is a hint and no diagnosis.`,
});

function traces(model: ReportModel, terminal: Terminal): readonly string[] {
  if (model.plots.length === 0) return [`  ${w`No pull was given to a cylinder.`}`];
  return model.plots.flatMap((plot) =>
    plot.pulls.flatMap((pull) => ['', ...traceLines(model, plot, pull, terminal)]),
  );
}

/** A pull as a curve with its limits, what it came to above it. */
export function traceLines(
  model: ReportModel,
  plot: CylinderPlot,
  pull: PullPlot,
  { columns, ascii }: Terminal,
): readonly string[] {
  const width = (Number.isFinite(columns) ? Math.min(columns, CHART.widest) : CHART.usual) - 2;
  const chart = chartOf(model, plot, pull);
  return [
    ...wrapped(
      `  ${model.positions.title(plot.cylinder)}. ${printable(pull.words, LONGEST, ascii)}`,
      columns,
    ),
    ...(pull.trace === null
      ? [`  ${w`The record holds no samples of it.`}`]
      : (chart.text?.({ width, ascii }) ?? [])
    ).map((line) => `  ${line}`),
  ];
}

/** The chart of a pull, held against the window that it was meant for. */
export function chartOf(model: ReportModel, plot: CylinderPlot, pull: PullPlot) {
  const row = model.cylinders.flatMap(({ pulls }) => pulls).find((one) => one.pull === pull.pull);
  return pullChart({
    plot: pull,
    scale: plot.scale,
    window: row?.window ?? model.torqueWindow.figures,
    title: w`Job ${model.job}, ${model.positions.title(plot.cylinder)}, pull ${pull.pull}: ${VERDICT_WORD[pull.verdict]}`,
    words: pull.words,
  });
}
