/** The line through a tool's certificates, for people: what each said, what the line comes to, and what that rests on. */

import type { Told } from '../audit/calibrations.ts';
import {
  type CertificateLines,
  type ErrorAt,
  firstBeyond,
  type NominalLine,
} from '../audit/certificate-line.ts';
import { clean } from './clean.ts';
import { figure, UNIT_TEXT, type Unit } from './figures.ts';

export const ROLE_WORD: Readonly<Record<Told, string>> = {
  first: 'first',
  'as-found': 'as found',
  'as-left': 'as left',
  'not-adjusted': 'not adjusted',
  'not-stated': 'not told',
};

export const CHECK_HEAD = ['day', 'certificate', 'it stands', 'error', 'U', 'of permitted'] as const;

/** The certificates of one nominal as rows of a table, the oldest first. */
export function checkRows({ periods, permissible }: NominalLine, unit: Unit): readonly (readonly string[])[] {
  return periods
    .flat()
    .map(({ certificate, told, error, expanded }) => [
      certificate.date,
      clean(certificate.number),
      ROLE_WORD[told],
      signed(error, unit),
      figure(expanded, unit),
      `${Math.round((100 * Math.abs(error)) / permissible)} %`,
    ]);
}

export const lineHead = ({ to }: CertificateLines): readonly string[] => [
  '',
  'at',
  'a year',
  `on ${to}`,
  '95 %',
  'permitted',
  'beyond it from',
];

/** The lines of all nominals as rows of a table; the one in use has an arrow. */
export function lineRows({ lines, inUse }: CertificateLines, unit: Unit): readonly (readonly string[])[] {
  return lines.map((line) => {
    const { nominal, perYear, perYearExpanded, atEnd, permissible, outsideOn, finding } = line;
    return [
      line === inUse ? '>' : '',
      figure(nominal, unit),
      `${signed(perYear, unit)} ± ${figure(perYearExpanded, unit)}`,
      signed(atEnd.value, unit),
      `${signed(atEnd.from, unit)} to ${signed(atEnd.to, unit)}`,
      `± ${figure(permissible, unit)}`,
      outsideOn === null ? '-' : `${finding === 'warning' ? '!' : '?'} ${outsideOn}`,
    ];
  });
}

/** What the line at the nominal in use says, and what all that rests on, a sentence or two each. */
export function lineWords(
  found: CertificateLines,
  { unit, due }: { readonly unit: Unit; readonly due: string | null },
): readonly string[] {
  const { inUse } = found;
  const name = UNIT_TEXT[unit];
  const { nominal, perYear, perYearExpanded } = inUse;
  const amount = `${signed(perYear, unit)} ± ${figure(perYearExpanded, unit)} ${name} a year`;
  const drifts = Math.abs(perYear) > perYearExpanded;
  const first = firstBeyond(found);
  return [
    drifts
      ? `Drift at ${figure(nominal, unit)} ${name}: ${amount}.`
      : `No drift beyond what the uncertainties explain at ${figure(nominal, unit)} ${name}: ${amount}.`,
    first === null
      ? `What the next calibration would find stays within what is permitted until ${until(found, due)}.`
      : beyondWords(first, unit, until(found, due)),
    ...fitWords(inUse),
    ...toldWords(found),
  ];
}

function beyondWords(
  { nominal, permissible, outsideOn, lineOutsideOn, finding }: NominalLine,
  unit: Unit,
  end: string,
): string {
  const permitted = `the ± ${figure(permissible, unit)} ${UNIT_TEXT[unit]} permitted at ${figure(nominal, unit)} ${UNIT_TEXT[unit]}`;
  if (finding === 'undecided')
    return `UNDECIDED: from ${outsideOn} on nothing shows that the next calibration will find it within ${permitted}. There no drift is seen, but too little is known to rule one out; calibrated sooner than ${end}, or with a smaller uncertainty, more would be.`;
  const line =
    lineOutsideOn === null
      ? 'the line itself stays within, only its interval reaches out'
      : `the line itself on ${lineOutsideOn}`;
  return `WARNING: from ${outsideOn} on the next calibration may find it beyond ${permitted} (${line}). Have it calibrated sooner than ${end}.`;
}

function until({ from, to }: CertificateLines, due: string | null): string {
  if (due === to) return `${to}, when it is due`;
  const year = `${to}, a year behind its newest certificate`;
  return due === null ? `${year}; no due day is known` : `${year}; it was due on ${due}, not after ${from}`;
}

function fitWords({ drift, periods }: NominalLine): readonly string[] {
  const { fit, chiSquare, spare, n } = drift;
  const test = `chi-square ${chiSquare.toFixed(1)}, ${spare} degree${spare === 1 ? '' : 's'} of freedom`;
  const adjusted =
    periods.length > 1
      ? [
          `It was adjusted ${periods.length - 1 === 1 ? 'once' : `${periods.length - 1} times`}: the line begins anew there, and its slope is taken for the same on both sides.`,
        ]
      : [];
  const rests = {
    untried: `With ${n} certificates none is left over to try the line on: the interval rests on their uncertainties alone, and on a steady drift.`,
    fits: `They lie on the line as well as their uncertainties allow (${test}); the interval rests on these.`,
    'does-not-fit': `They do NOT lie on a line as well as their uncertainties allow (${test}): something moved it that is no steady drift, or nobody told of an adjustment. The interval rests on their scatter, and is wide.`,
  }[fit];
  return [rests, ...adjusted];
}

function toldWords({ inUse }: CertificateLines): readonly string[] {
  const all: readonly ErrorAt[] = inUse.periods.flat();
  const silent = all.filter(({ told }) => told === 'not-stated').length;
  if (silent === 0) return [];
  return [
    `"${ROLE_WORD['not-stated']}": of ${silent} of these nobody recorded what was found before it. The line takes the tool for not adjusted then; if it was, the line hides what it had drifted. "plugmark impact" records what was found.`,
  ];
}

function signed(value: number, unit: Unit): string {
  const text = figure(value, unit);
  return Number(text) > 0 ? `+${text}` : text;
}
