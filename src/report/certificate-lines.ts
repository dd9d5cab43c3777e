/** The line through a tool's certificates, for people: what each said, where the line leads, and what that rests on. */

import type { CalibrationRole } from '../audit/calibrations.ts';
import { type CertificateLines, firstBeyond, type NominalLine } from '../audit/certificate-line.ts';
import { fixed, phrases, plural, w } from '../words/catalogue.ts';
import { clean } from './clean.ts';
import { figure, UNIT_TEXT, type Unit } from './figures.ts';
import type { Part } from './paper.ts';

export const ROLE_WORD: Readonly<Record<CalibrationRole, string>> = phrases({
  first: 'first',
  'as-found': 'as found',
  'as-left': 'as left',
  'not-adjusted': 'not adjusted',
  'not-stated': 'not stated',
});

export interface DriftContext {
  readonly unit: Unit;
  /** ISO day of the next calibration; null where nobody knows. */
  readonly due: string | null;
  /** The reading that the tool is used at; null where nobody knows. */
  readonly usedAt: number | null;
}

/** Both tables and the sentences that draw the conclusion. */
export function certificateParts(lines: CertificateLines, context: DriftContext): readonly Part[] {
  const { unit, usedAt } = context;
  const { inUse, to } = lines;
  const name = UNIT_TEXT[unit];
  const near =
    usedAt === null ? '' : w`, the point nearest to the ${figure(usedAt, unit)} ${name} of its use`;
  return [
    {
      kind: 'table',
      title: w`Certificates`,
      note: w`${inUse.periods.flat().length} certificates at ${figure(inUse.nominal, unit)} ${name}${near}. All figures in ${name}, U at 95 %.`,
      columns: [
        { title: w`Day`, share: 1.2, heads: true },
        { title: w`Certificate`, share: 1.8 },
        { title: w`State`, share: 1.4 },
        { title: w`Error`, share: 1, align: 'right' },
        { title: w`U`, share: 1, align: 'right' },
        { title: w`Of permitted`, share: 1.2, align: 'right' },
      ],
      rows: checkRows(inUse, unit),
    },
    {
      kind: 'table',
      title: w`Drift, point by point`,
      note: w`The arrow marks the point of its use.`,
      columns: [
        { title: '', share: 0.3 },
        { title: w`At`, share: 0.9, align: 'right', heads: true },
        { title: w`A year`, share: 1.6, align: 'right' },
        { title: w`On ${to}`, share: 1.4, align: 'right' },
        { title: w`95 %`, share: 1.8, align: 'right' },
        { title: w`Permitted`, share: 1.1, align: 'right' },
        { title: w`Beyond it from`, share: 1.5 },
      ],
      rows: lineRows(lines, unit),
    },
    { kind: 'text', title: w`What the certificates say`, paragraphs: lineWords(lines, context) },
  ];
}

/** The certificates at one point, the oldest first. */
const checkRows = ({ periods, permissible }: NominalLine, unit: Unit) =>
  periods
    .flat()
    .map(({ certificate, role, error, expanded }) =>
      [
        certificate.date,
        clean(certificate.number),
        ROLE_WORD[role],
        signed(error, unit),
        figure(expanded, unit),
        `${Math.round((100 * Math.abs(error)) / permissible)} %`,
      ].map((text) => ({ text })),
    );

const lineRows = ({ lines, inUse }: CertificateLines, unit: Unit) =>
  lines.map((line) => {
    const { nominal, perYear, perYearExpanded, atEnd, permissible, outsideOn, finding } = line;
    return [
      line === inUse ? '>' : '',
      figure(nominal, unit),
      `${signed(perYear, unit)} ± ${figure(perYearExpanded, unit)}`,
      signed(atEnd.value, unit),
      w`${signed(atEnd.from, unit)} to ${signed(atEnd.to, unit)}`,
      `± ${figure(permissible, unit)}`,
      outsideOn === null ? '-' : `${finding === 'warning' ? '!' : '?'} ${outsideOn}`,
    ].map((text) => ({ text }));
  });

/** The conclusion at the point of use, then what it rests on. */
function lineWords(lines: CertificateLines, { unit, due }: DriftContext): readonly string[] {
  const { inUse } = lines;
  const name = UNIT_TEXT[unit];
  const { nominal, perYear, perYearExpanded } = inUse;
  const amount = w`${signed(perYear, unit)} ± ${figure(perYearExpanded, unit)} ${name} a year`;
  const drifts = Math.abs(perYear) > perYearExpanded;
  const first = firstBeyond(lines);
  return [
    drifts
      ? w`Drift at ${figure(nominal, unit)} ${name}: ${amount}.`
      : w`No drift beyond the uncertainty of the certificates at ${figure(nominal, unit)} ${name}: ${amount}.`,
    first === null
      ? w`The next calibration will find it within what is permitted until ${until(lines, due)}.`
      : beyondWords(first, unit, until(lines, due)),
    ...fitWords(inUse),
    ...silenceWords(inUse),
  ];
}

function beyondWords(
  { nominal, permissible, outsideOn, lineOutsideOn, finding }: NominalLine,
  unit: Unit,
  end: string,
): string {
  const name = UNIT_TEXT[unit];
  const permitted = w`the ± ${figure(permissible, unit)} ${name} permitted at ${figure(nominal, unit)} ${name}`;
  if (finding === 'undecided')
    return w`UNDECIDED: from ${outsideOn ?? ''} on it may lie beyond ${permitted}. The certificates show no drift, but they are too few or too uncertain to rule one out. Calibrate it before ${end}, or with a smaller uncertainty.`;
  const line =
    lineOutsideOn === null
      ? w`only the 95 % interval leaves it`
      : w`the line itself leaves it on ${lineOutsideOn}`;
  return w`WARNING: from ${outsideOn ?? ''} on it may lie beyond ${permitted}; ${line}. Calibrate it before ${end}.`;
}

function until({ from, to }: CertificateLines, due: string | null): string {
  if (due === to) return w`${to}, when it is due`;
  const year = w`${to}, a year after its newest certificate`;
  return due === null ? w`${year}; no due day is known` : w`${year}; its due day ${due} is not after ${from}`;
}

function fitWords({ drift, periods }: NominalLine): readonly string[] {
  const { fit, chiSquare, spare, n } = drift;
  const freedom = plural(spare, { one: '# degree of freedom', other: '# degrees of freedom' });
  const test = w`chi-square ${fixed(chiSquare, 1)}, ${freedom}`;
  const adjustments = periods.length - 1;
  const adjusted =
    adjustments > 0
      ? [
          plural(adjustments, {
            one: 'It was adjusted once. The line starts again there; its slope is taken to be the same before and after.',
            other:
              'It was adjusted # times. The line starts again there; its slope is taken to be the same before and after.',
          }),
        ]
      : [];
  const rests = {
    untried: w`${n} certificates are too few to test the line. The interval rests on their uncertainties, and on a steady drift.`,
    fits: w`The certificates lie on the line as well as their uncertainties allow (${test}). The interval rests on these.`,
    'does-not-fit': w`The certificates do NOT lie on a line (${test}). The tool did not drift steadily, or an adjustment was not recorded. The interval rests on their scatter, and is wide.`,
  }[fit];
  return [rests, ...adjusted];
}

function silenceWords({ periods }: NominalLine): readonly string[] {
  const silent = periods.flat().filter(({ role }) => role === 'not-stated').length;
  if (silent === 0) return [];
  return [
    w`"${ROLE_WORD['not-stated']}": before ${silent} of these certificates nobody recorded what the laboratory found. The line assumes that it did not adjust; if it did, the line hides the drift until then. "plugmark impact" records what was found.`,
  ];
}

function signed(value: number, unit: Unit): string {
  const text = figure(value, unit);
  return Number(text) > 0 ? `+${text}` : text;
}
