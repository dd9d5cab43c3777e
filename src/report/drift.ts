/** The paper on whether a tool has drifted: its pulls since its calibration, then its certificates. */

import type { WrenchDrift } from '../audit/drift.ts';
import type { DriftFinding } from '../audit/drift-finding.ts';
import { marksOf } from '../job/proof.ts';
import type { Problem } from '../problem.ts';
import { fixed, phrases, w } from '../words/catalogue.ts';
import { certificateParts } from './certificate-lines.ts';
import { certificatesChart } from './charts/certificates-chart.ts';
import type { Chart } from './charts/chart.ts';
import { ewmaDrawing } from './charts/control.ts';
import { controlChart } from './charts/control-chart.ts';
import { clean } from './clean.ts';
import type { Unit } from './figures.ts';
import type { Paper, Part } from './paper.ts';

const DAYS_IN_YEAR = 365.25;

const STATUS = phrases({
  WARNING: 'Look at this tool before its calibration is due.',
  UNDECIDED: 'The certificates show no drift, and cannot rule one out.',
});

const STATUS_WORD = phrases({ WARNING: 'WARNING', UNDECIDED: 'UNDECIDED' });

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
    title: w`Drift`,
    subtitle: name,
    status:
      verdict === null
        ? {
            word: w`NO DRIFT SEEN`,
            text: pulls.ok
              ? certificates.ok
                ? w`By its pulls and its certificates.`
                : w`By its pulls alone.`
              : w`By its certificates alone.`,
          }
        : { word: STATUS_WORD[verdict], text: STATUS[verdict] },
    marks: marksOf(rows.map(({ source }) => source)),
    facts: [
      { label: w`Tool`, value: clean(instrument.id) },
      { label: w`Certificate`, value: clean(instrument.certificate?.number ?? w`none`) },
      { label: w`Due`, value: due ?? w`not known` },
    ],
    parts: [
      {
        kind: 'text',
        title: w`Pulls`,
        paragraphs: pulls.ok ? pullWords(pulls.value, due) : [nothingFrom(pulls.error)],
      },
      ...chartPart(charts.pulls),
      ...(certificates.ok
        ? certificateParts(certificates.value, { unit: unitOf(instrument), due, usedAt })
        : [
            {
              kind: 'text',
              title: w`Certificates`,
              paragraphs: [nothingFrom(certificates.error)],
            } as const,
          ]),
      ...chartPart(charts.certificates),
      ...lostPart(lost),
    ],
    footer: w`Drift of ${clean(name)}`,
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
          title: w`Left out`,
          paragraphs: [
            w`The kept files of ${lost.join(', ')} are missing or changed. See "plugmark certificates check".`,
          ],
        },
      ];

function pullWords(wrench: WrenchDrift, due: string | null): readonly string[] {
  const { days, drift, isTrend, permissiblePercent, errorPercent, shiftedSince, outsideOn, warn } = wrench;
  const perYear = DAYS_IN_YEAR * drift.perDay;
  const slope = w`${signed(perYear)} % a year (standard uncertainty ${fixed(DAYS_IN_YEAR * drift.perDayUncertainty, 2)})`;
  const permitted = w`the ${fixed(permissiblePercent, 1)} % permitted`;
  return [
    w`${days.reduce((sum, { pulls }) => sum + pulls, 0)} first pulls on ${days.length} days of use since ${days[0]?.day ?? '-'}.`,
    isTrend ? w`Trend: ${slope}.` : w`No trend beyond chance: ${slope}.`,
    shiftedSince === null
      ? w`The weighted mean is within its limits.`
      : w`WARNING: the weighted mean has been beyond its limits since ${shiftedSince}.`,
    outsideOn === null
      ? w`The pulls do not show that it leaves ${permitted} before it is due. Its certificate started it at ${signed(errorPercent)} %.`
      : leavingText({ permitted, outsideOn, due, start: signed(errorPercent) }),
    ...(warn
      ? [
          w`The wrench may have moved, or the way of working. Check it against another wrench, or have it calibrated.`,
        ]
      : []),
  ];
}

interface Leaving {
  readonly permitted: string;
  readonly outsideOn: string;
  readonly due: string | null;
  readonly start: string;
}

const leavingText = ({ permitted, outsideOn, due, start }: Leaving): string =>
  due === null
    ? w`WARNING: if this goes on, it leaves ${permitted} on ${outsideOn}. Its certificate started it at ${start} %.`
    : w`WARNING: if this goes on, it leaves ${permitted} on ${outsideOn}, before it is due on ${due}. Its certificate started it at ${start} %.`;

function pullChart({ chart, days }: WrenchDrift, name: string, last: number): Chart {
  return controlChart(
    ewmaDrawing(
      { ...chart, points: chart.points.slice(-last) },
      {
        title: w`${name}, first pulls of a day against the middle of their limits`,
        unit: '%',
        labels: days.slice(-last).map(({ day }) => day),
      },
    ),
  );
}

const unitOf = ({ quantity }: DriftFinding['instrument']): Unit => (quantity === 'torque' ? 'N.m' : 'mm');
const signed = (value: number) => `${value > 0 ? '+' : ''}${fixed(value, 2)}`;
const nothingFrom = ({ message, next }: Problem) => w`Nothing to say: ${message}. ${next}`;
