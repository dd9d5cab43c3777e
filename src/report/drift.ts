/** The paper on whether a tool has drifted: its pulls since its calibration, then its certificates. */

import type { WrenchDrift } from '../audit/drift.ts';
import type { DriftFinding } from '../audit/drift-finding.ts';
import { marksOf } from '../job/proof.ts';
import type { Problem } from '../problem.ts';
import { certificateParts } from './certificate-lines.ts';
import { certificatesChart } from './charts/certificates-chart.ts';
import type { Chart } from './charts/chart.ts';
import { ewmaDrawing } from './charts/control.ts';
import { controlChart } from './charts/control-chart.ts';
import { clean } from './clean.ts';
import type { Unit } from './figures.ts';
import type { Paper, Part } from './paper.ts';

const DAYS_IN_YEAR = 365.25;

const STATUS = {
  WARNING: 'Look at this tool before its calibration is due.',
  UNDECIDED: 'The certificates show no drift, and cannot rule one out.',
} as const;

/** The charts by themselves; null where there is too little for one. */
export function driftCharts(
  { pulls, certificates, name, instrument }: DriftFinding,
  last: number,
): { readonly pulls: Chart | null; readonly certificates: Chart | null } {
  const about = { title: name, unit: unitOf(instrument) };
  return {
    pulls: pulls.ok ? pullChart(pulls.value, name, last) : null,
    certificates: certificates.ok ? certificatesChart(certificates.value, about) : null,
  };
}

/** `last` days of use are drawn; `lost` are numbers of kept certificates whose files are missing or changed. */
export function driftPaper(
  finding: DriftFinding,
  {
    last,
    lost,
    ...imprint
  }: {
    readonly last: number;
    readonly lost: readonly string[];
    readonly program: string;
    readonly madeAt: string;
  },
): Paper {
  const { name, instrument, rows, pulls, certificates, verdict, due, usedAt } = finding;
  const charts = driftCharts(finding, last);
  return {
    title: 'Drift',
    subtitle: name,
    status:
      verdict === null
        ? {
            word: 'NO DRIFT SEEN',
            text: `By its ${pulls.ok ? (certificates.ok ? 'pulls and its certificates' : 'pulls alone') : 'certificates alone'}.`,
          }
        : { word: verdict, text: STATUS[verdict] },
    marks: marksOf(rows.map(({ source }) => source)),
    facts: [
      { label: 'Tool', value: clean(instrument.id) },
      { label: 'Certificate', value: clean(instrument.certificate?.number ?? 'none') },
      { label: 'Due', value: due ?? 'not known' },
    ],
    parts: [
      {
        kind: 'text',
        title: 'Pulls',
        paragraphs: pulls.ok ? pullWords(pulls.value, due) : [nothingFrom(pulls.error)],
      },
      ...chartPart(charts.pulls),
      ...(certificates.ok
        ? certificateParts(certificates.value, { unit: unitOf(instrument), due, usedAt })
        : [
            {
              kind: 'text',
              title: 'Certificates',
              paragraphs: [nothingFrom(certificates.error)],
            } as const,
          ]),
      ...chartPart(charts.certificates),
      ...lostPart(lost),
    ],
    footer: `Drift of ${clean(name)}`,
    ...imprint,
  };
}

const chartPart = (chart: Chart | null): readonly Part[] =>
  chart === null ? [] : [{ kind: 'chart', chart }];

const lostPart = (lost: readonly string[]): readonly Part[] =>
  lost.length === 0
    ? []
    : [
        {
          kind: 'text',
          title: 'Left out',
          paragraphs: [
            `The kept files of ${lost.join(', ')} are missing or changed. See "plugmark certificates check".`,
          ],
        },
      ];

function pullWords(wrench: WrenchDrift, due: string | null): readonly string[] {
  const { days, drift, isTrend, permissiblePercent, errorPercent, shiftedSince, outsideOn, warn } = wrench;
  const perYear = DAYS_IN_YEAR * drift.perDay;
  const slope = `${signed(perYear)} % a year (standard uncertainty ${(DAYS_IN_YEAR * drift.perDayUncertainty).toFixed(2)})`;
  const permitted = `the ${permissiblePercent.toFixed(1)} % permitted`;
  return [
    `${days.reduce((sum, { pulls }) => sum + pulls, 0)} first pulls on ${days.length} days of use since ${days[0]?.day ?? '-'}.`,
    isTrend ? `Trend: ${slope}.` : `No trend beyond chance: ${slope}.`,
    shiftedSince === null
      ? 'The weighted mean is within its limits.'
      : `WARNING: the weighted mean has been beyond its limits since ${shiftedSince}.`,
    outsideOn === null
      ? `The pulls do not show that it leaves ${permitted} before it is due. Its certificate started it at ${signed(errorPercent)} %.`
      : `WARNING: if this goes on, it leaves ${permitted} on ${outsideOn}${due === null ? '' : `, before it is due on ${due}`}. Its certificate started it at ${signed(errorPercent)} %.`,
    ...(warn
      ? [
          'The wrench may have moved, or the way of working. Check it against another wrench, or have it calibrated.',
        ]
      : []),
  ];
}

function pullChart({ chart, days }: WrenchDrift, name: string, last: number): Chart {
  return controlChart(
    ewmaDrawing(
      { ...chart, points: chart.points.slice(-last) },
      {
        title: `${name}, first pulls of a day against the middle of their limits`,
        unit: '%',
        labels: days.slice(-last).map(({ day }) => day),
      },
    ),
  );
}

const unitOf = ({ quantity }: DriftFinding['instrument']): Unit => (quantity === 'torque' ? 'N.m' : 'mm');
const signed = (value: number) => `${value > 0 ? '+' : ''}${value.toFixed(2)}`;
const nothingFrom = ({ message, next }: Problem) => `Nothing to say: ${message}. ${next}`;
