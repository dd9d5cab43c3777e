import type { CertificateLines, ErrorAt, NominalLine } from '../../audit/certificate-line.ts';
import { dayNumber } from '../../audit/days.ts';
import { COVERAGE } from '../../metrology/coverage.ts';
import { predict } from '../../statistics/drift.ts';
import { w } from '../../words/catalogue.ts';
import { ROLE_WORD } from '../certificate-lines.ts';
import { clean } from '../clean.ts';
import { figure, UNIT_TEXT, type Unit } from '../figures.ts';
import { axes, below, type Chart, frameIn, heightIn } from './chart.ts';
import type { Box, Pen, Point } from './pen.ts';
import { scaleAround } from './scale.ts';

/** Pieces that a bent edge is drawn of. */
const PIECES = 40;

/** The certificates of a tool at the point where it is used. */
export function certificatesChart(
  found: CertificateLines,
  { title, unit }: { readonly title: string; readonly unit: Unit },
): Chart {
  return {
    title: w`Certificates at ${figure(found.inUse.nominal, unit)} ${UNIT_TEXT[unit]}: ${clean(title)}`,
    words: inWords(found.inUse, found.to, unit),
    draw: (pen, box) => drawCertificates(found, unit, pen, box),
    text: null,
  };
}

/**
 * Errors with their U over the days, the line of each period, and after the newest certificate the edges of the interval.
 * Circles are certificates, squares what a laboratory found before it adjusted.
 */
function drawCertificates({ inUse, from, to }: CertificateLines, unit: Unit, pen: Pen, box: Box): void {
  const frame = frameIn(box, pen);
  const { left, right } = frame;
  const { periods, drift, permissible } = inUse;
  const points = periods.flat();
  const start = points[0]?.certificate.date ?? from;
  const [first, last] = [dayNumber(start), dayNumber(to)];
  const ahead = Array.from({ length: PIECES + 1 }, (_, i) => {
    const day = dayNumber(from) + ((last - dayNumber(from)) * i) / PIECES;
    return { day, ...predict(drift, day, COVERAGE) };
  });
  const scale = scaleAround(
    [
      ...points.flatMap(({ error, expanded }) => [error - expanded, error + expanded]),
      ...ahead.flatMap((one) => [one.from, one.to]),
    ],
    [-permissible, permissible],
  );
  const x = (day: number) => left + ((right - left) * (day - first)) / (last - first);
  const y = heightIn(frame, scale);
  axes(pen, frame, { scale, name: w`error, ${UNIT_TEXT[unit]}`, figure: (value) => figure(value, unit) });
  for (const value of [permissible, -permissible]) {
    pen.line(
      [
        [left, y(value)],
        [right, y(value)],
      ],
      'dashed',
    );
    pen.text(right + pen.letter / 2, y(value), w`permitted ${figure(value, unit)} ${UNIT_TEXT[unit]}`);
  }
  for (const edge of ['from', 'to'] as const)
    pen.line(
      ahead.map((one): Point => [x(one.day), y(one[edge])]),
      'dotted',
    );
  for (const [i, period] of periods.entries()) {
    const { atDays, deviation } = drift.levels[i] ?? { atDays: first, deviation: 0 };
    const days = period.map(({ certificate: { date } }) => dayNumber(date));
    const ends = [Math.min(...days), i === periods.length - 1 ? last : Math.max(...days)];
    pen.line(ends.map((day): Point => [x(day), y(deviation + drift.perDay * (day - atDays))]));
  }
  for (const point of points) mark(point, pen, x, y);
  below(pen, frame, {
    first: start,
    last: to,
    legend: w`circle: certificate with U; square: as found; dotted: 95 % interval of the next one`,
  });
}

function mark(
  { certificate, role, error, expanded }: ErrorAt,
  pen: Pen,
  x: (day: number) => number,
  y: (value: number) => number,
): void {
  const [at, height] = [x(dayNumber(certificate.date)), y(error)];
  pen.line([
    [at, y(error - expanded)],
    [at, y(error + expanded)],
  ]);
  const half = 0.27 * pen.letter;
  if (role === 'as-found')
    pen.bar({ x: at - half, y: height - half, width: 2 * half, height: 2 * half }, true);
  else pen.dot(at, height);
}

function inWords({ periods, atEnd, permissible, outsideOn }: NominalLine, to: string, unit: Unit): string {
  const each = periods
    .flat()
    .map(
      ({ certificate, role, error, expanded }) =>
        `${certificate.date} ${clean(certificate.number)} (${ROLE_WORD[role]}) ${figure(error, unit)}, U ${figure(expanded, unit)}`,
    );
  const end =
    outsideOn === null ? w`The interval stays within it` : w`The interval leaves it from ${outsideOn} on`;
  return w`${each.join('; ')} ${UNIT_TEXT[unit]}. On ${to} the line is at ${figure(atEnd.value, unit)}, 95 % interval ${figure(atEnd.from, unit)} to ${figure(atEnd.to, unit)}; permitted: ± ${figure(permissible, unit)}. ${end}.`;
}
