import type { CertificateLines, ErrorAt, NominalLine } from '../../audit/certificate-line.ts';
import { dayNumber } from '../../audit/days.ts';
import { COVERAGE } from '../../metrology/coverage.ts';
import { predict } from '../../statistics/drift.ts';
import { ROLE_WORD } from '../certificate-lines.ts';
import { clean } from '../clean.ts';
import { figure, UNIT_TEXT, type Unit } from '../figures.ts';
import { scaleAround, share, ticks } from './scale.ts';
import { atLeast, bar, dot, type Frame, path, picture, type SvgSize, text } from './svg.ts';

const MARGIN = { left: 62, top: 46, right: 112, bottom: 40 } as const;
/** Pieces that a bent edge is drawn of. */
const PIECES = 40;

/**
 * The certificates at the nominal in use as a picture: errors with their U over the days, the line of each period, and
 * ahead of the newest certificate the edges of the interval. Circles are certificates, squares what was found before an
 * adjustment.
 */
export function certificatesSvg(
  { inUse, from, to }: CertificateLines,
  { title, unit }: { readonly title: string; readonly unit: Unit },
  asked: SvgSize,
): string {
  const size = atLeast(asked);
  const { periods, drift, permissible } = inUse;
  const frame: Frame = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: size.width - MARGIN.right,
    bottom: size.height - MARGIN.bottom,
  };
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
  const x = (day: number) => frame.left + ((frame.right - frame.left) * (day - first)) / (last - first);
  const y = (value: number) => frame.bottom - (frame.bottom - frame.top) * share(value, scale);
  const level = (value: number, name: string) => [
    path(
      [
        [frame.left, y(value)],
        [frame.right, y(value)],
      ],
      '6 4',
    ),
    text(frame.right + 6, y(value) + 4, `${name} ${figure(value, unit)} ${UNIT_TEXT[unit]}`),
  ];
  const edge = (of: (one: (typeof ahead)[number]) => number) =>
    path(
      ahead.map((one) => [x(one.day), y(of(one))] as const),
      '2 3',
    );
  const lines = periods.map((period, i) => {
    const { atDays, deviation } = drift.levels[i] ?? { atDays: first, deviation: 0 };
    const days = period.map(({ certificate: { date } }) => dayNumber(date));
    const ends = [Math.min(...days), i === periods.length - 1 ? last : Math.max(...days)];
    return path(ends.map((day) => [x(day), y(deviation + drift.perDay * (day - atDays))] as const));
  });
  const whole = `Certificates at ${figure(inUse.nominal, unit)} ${UNIT_TEXT[unit]}: ${clean(title)}`;
  return picture(size, { title: whole, words: inWords(inUse, to, unit) }, [
    text(frame.left, 18, whole),
    path([
      [frame.left, frame.top],
      [frame.left, frame.bottom],
      [frame.right, frame.bottom],
    ]),
    ...ticks(scale, 5).map((value) => text(frame.left - 6, y(value) + 4, figure(value, unit), 'end')),
    text(6, frame.top - 4, `error, ${UNIT_TEXT[unit]}`),
    ...level(permissible, 'permitted'),
    ...level(-permissible, 'permitted'),
    edge((one) => one.from),
    edge((one) => one.to),
    ...lines,
    ...points.flatMap((point) => mark(point, x, y)),
    text(frame.left, frame.bottom + 16, start),
    text(frame.right, frame.bottom + 16, to, 'end'),
    text(
      (frame.left + frame.right) / 2,
      frame.bottom + 30,
      'circles: certificates with U; squares: as found; dotted: 95 % of what is found next',
      'middle',
    ),
  ]);
}

function mark(
  { certificate, told, error, expanded }: ErrorAt,
  x: (day: number) => number,
  y: (value: number) => number,
): readonly string[] {
  const [at, height] = [x(dayNumber(certificate.date)), y(error)];
  return [
    path([
      [at, y(error - expanded)],
      [at, y(error + expanded)],
    ]),
    told === 'as-found' ? bar({ x: at - 3, y: height - 3, width: 6, height: 6 }, true) : dot(at, height),
  ];
}

function inWords({ periods, atEnd, permissible, outsideOn }: NominalLine, to: string, unit: Unit): string {
  const each = periods
    .flat()
    .map(
      ({ certificate, told, error, expanded }) =>
        `${certificate.date} ${clean(certificate.number)} (${ROLE_WORD[told]}) ${figure(error, unit)}, U ${figure(expanded, unit)}`,
    );
  return `${each.join('; ')} ${UNIT_TEXT[unit]}. On ${to} the line comes to ${figure(atEnd.value, unit)}, 95 % ${figure(atEnd.from, unit)} to ${figure(atEnd.to, unit)}; permitted are ${figure(permissible, unit)} either way. ${outsideOn === null ? 'It stays within' : `Its interval reaches beyond from ${outsideOn} on`}.`;
}
