/** A torque window in plain lines: where it comes from, what it leaves, what one reading is worth, and the whole budget. */

import type { WindowView } from '../job/window-view.ts';
import type { Budget } from '../metrology/budget.ts';
import { type DecisionRule, largestExpandedBy } from '../metrology/decision.ts';
import type { Window } from '../metrology/judgement.ts';
import { specificRisk } from '../metrology/risk.ts';
import type { Distribution } from '../metrology/term.ts';
import { TABLE_THREADS } from '../plug/fit-words.ts';
import type { TableView } from '../plug/plausibility.ts';
import { shownValue } from '../quantity/shown.ts';
import { amountSourceWords, CAUSE_WORDS, instrumentRefusalText, noteLines } from '../report/words/index.ts';
import { fixed, phrases, w } from '../words/catalogue.ts';
import { forecastText } from './forecast-words.ts';
import type { Glyphs } from './glyphs.ts';
import { behindLabel, columnsOf, fill, printable } from './printable.ts';
import { figure, rangeFigures, unitWord, verdictSpoken, windowFigures } from './words.ts';

const LABEL = 16;
const LONGEST = 200;

const fact = (label: string, text: string, ascii: boolean) =>
  `  ${behindLabel(label, LABEL, printable(text, LONGEST, ascii))}`;

/** The lines in front of the plot. */
export function windowLines(view: WindowView, glyphs: Glyphs): string[] {
  const { window, wrenchReads, measured, judgement, edgeRisk, notes } = view;
  const unit = unitWord(window.unit, glyphs);
  const of = (value: number) => figure(value, window.unit);
  const { word } = verdictSpoken(judgement.result, glyphs);
  const { standard, degreesOfFreedom } = measured.budget;
  const { low, high } = specificRisk(measured.value, standard, window, degreesOfFreedom);
  const lines = [
    w`Torque window`,
    ...view.facts.map(([label, text]) => fact(label, text, glyphs.ascii)),
    fact(w`limits`, w`${windowFigures(window)} ${unit} at the plug`, glyphs.ascii),
    fact(w`rule`, ruleText(view.decision.rule), glyphs.ascii),
    fact(w`guard band`, guardText(window, unit), glyphs.ascii),
    ...(edgeRisk === null
      ? []
      : [
          fact(
            w`false OK`,
            w`of readings on the very edge, ${percent(edgeRisk.lower)} at the lower, ${percent(edgeRisk.upper)} at the upper limit`,
            glyphs.ascii,
          ),
        ]),
    ...(window.decidable
      ? [
          fact(
            w`accepted`,
            w`${rangeFigures(window.acceptLower, window.acceptUpper, window.unit)} ${unit} at the plug`,
            glyphs.ascii,
          ),
          fact(
            w`wrench reads`,
            w`${rangeFigures(wrenchReads.from, wrenchReads.to, window.unit)} ${unit} when accepted`,
            glyphs.ascii,
          ),
        ]
      : []),
    fact(w`decidable`, decidableText(view, unit), glyphs.ascii),
    ...(view.forecast === null ? [] : [fact(w`at this rate`, forecastText(view.forecast), glyphs.ascii)]),
    ...view.refusals.map((refusal) => fact(w`REFUSED`, instrumentRefusalText(refusal), glyphs.ascii)),
    '',
    w`Reading of ${of(wrenchReads.at)} ${unit}`,
    fact(
      w`the plug saw`,
      `${of(measured.value)} ${unit}, U = ${of(judgement.expandedUncertainty)} ${unit}`,
      glyphs.ascii,
    ),
    fact(w`verdict`, `${word}${view.decision.grades ? ` (${judgement.grade})` : ''}`, glyphs.ascii),
    fact(
      w`probability`,
      w`${percent(judgement.conformanceProbability)} within the limits, ${percent(low)} below, ${percent(high)} above`,
      glyphs.ascii,
    ),
    ...riskLines(view, unit, glyphs.ascii),
    '',
    w`Budget at ${of(wrenchReads.at)} ${unit}`,
    ...budgetLines(measured.budget, glyphs.ascii),
    ...tableLines(view.table, glyphs.ascii),
  ];
  return notes.length === 0
    ? lines
    : [
        ...lines,
        '',
        w`Notes`,
        ...noteLines(view.order, notes).map((note) => `  ${printable(note, LONGEST, glyphs.ascii)}`),
      ];
}

/** One decimal more than a reading. */
const fine = (value: number, { unit }: Window): string => fixed(shownValue(value, unit), 3);

/** Never a certainty: what rounds to it is told as less or more. */
function percent(share: number): string {
  if (share > 0 && share < 0.00005) return `<${fixed(0.01, 2)} %`;
  if (share < 1 && share > 0.99995) return `>${fixed(99.99, 2)} %`;
  return `${fixed(100 * share, 2)} %`;
}

function ruleText(rule: DecisionRule): string {
  switch (rule.kind) {
    case 'simple':
      return w`simple acceptance, no guard band`;
    case 'iso-14253-1':
      return w`1.65 u inside the limits (as ISO 14253-1)`;
    case 'guard-band':
      return w`guard band of ${rule.r} U (ILAC-G8, JCGM 106)`;
    case 'probability':
      return w`probability within the limits of at least ${percent(rule.atLeast)} (JCGM 106)`;
  }
}

function guardText(window: Window, unit: string): string {
  const low = window.acceptLower - window.lowerLimit;
  const high = window.upperLimit - window.acceptUpper;
  return w`${fine(low, window)} at the lower, ${fine(high, window)} ${unit} at the upper limit (U there ${fine(window.expandedAtLower, window)} and ${fine(window.expandedAtUpper, window)} ${unit})`;
}

function decidableText({ window, decision }: WindowView, unit: string): string {
  const most = largestExpandedBy(decision.rule, window);
  const needs = Number.isFinite(most) ? w`U below ${fine(most, window)} ${unit}` : w`no more than a reading`;
  return window.decidable
    ? w`yes; this rule needs ${needs}`
    : w`NO: this wrench cannot prove this window; it would need ${needs}`;
}

function riskLines({ risk, window }: WindowView, unit: string, ascii: boolean): string[] {
  if (risk === null) return [];
  const { outOfTolerance, consumer, producer } = risk.atRule;
  const band =
    risk.guardBand === null ? w`no guard band` : w`a guard band of ${fine(risk.guardBand, window)} ${unit}`;
  return [
    fact(
      w`of all pulls`,
      w`spread ${figure(risk.spreadNm, 'N.m')} ${unit} about the middle: ${percent(outOfTolerance)} outside`,
      ascii,
    ),
    fact(
      w`risks`,
      w`${percent(consumer)} false OK (customer), ${percent(producer)} done again for nothing (shop)`,
      ascii,
    ),
    fact('', w`${band} would keep false OKs below 0.1 % of all pulls`, ascii),
  ];
}

const DISTRIBUTION: Readonly<Record<Distribution['kind'], string>> = phrases({
  normal: 'normal',
  rectangular: 'rectangular',
  triangular: 'triangular',
  arcsine: 'arcsine',
  standard: 'standard dev.',
});

/** The whole budget as a table, each term with its source. */
function budgetLines(budget: Budget, ascii: boolean): string[] {
  const head = [w`term`, w`type`, '+/-', w`distribution`, 'c', 'u', w`share`, 'nu', w`source`];
  const rows = budget.rows.map((row) => [
    CAUSE_WORDS[row.cause],
    row.type,
    significant(row.amount),
    DISTRIBUTION[row.distribution.kind],
    significant(row.sensitivity),
    significant(row.contribution),
    `${fixed(100 * row.share, 1)} %`,
    row.degreesOfFreedom === Number.POSITIVE_INFINITY ? 'inf' : String(row.degreesOfFreedom),
    amountSourceWords(row.source),
  ]);
  const all = [head, ...rows].map((cells) => cells.map((cell) => printable(cell, LONGEST, ascii)));
  const widths = head.map((_, i) => Math.max(...all.map((cells) => columnsOf(cells[i] ?? ''))));
  const table = all.map((cells) =>
    `  ${cells.map((cell, i) => fill(cell, widths[i] ?? 0, '')).join('  ')}`.trimEnd(),
  );
  const nu = Number.isFinite(budget.degreesOfFreedom) ? fixed(budget.degreesOfFreedom, 1) : 'inf';
  return [
    ...table,
    w`  combined u = ${significant(budget.standard)}, effective degrees of freedom ${nu}, k = ${fixed(budget.coverageFactor, 3)} (95 %), U = ${significant(budget.expanded)}`,
  ];
}

/** Four significant digits without an exponent. */
function significant(value: number): string {
  if (value === 0) return '0';
  const decimals = Math.max(0, 3 - Math.floor(Math.log10(Math.abs(value))));
  return fixed(value, Math.min(8, decimals));
}

function tableLines(table: TableView | null, ascii: boolean): string[] {
  if (table === null) return [];
  return [
    '',
    w`General tables (a fallback and a plausibility limit; the engine maker and the plug box go before them)`,
    ...table.rows.map(
      ({ printed, threads, cited }) =>
        `  ${printable(printed, 20, ascii).padEnd(18)}${fill(TABLE_THREADS[threads], 23, '')}${printable(cited, LONGEST, ascii)}`,
    ),
  ];
}
