import { figure, UNIT_TEXT } from '../figures.ts';
import { type ControlDrawing, type ControlRow, controlInWords } from './control.ts';
import { type Scale, scaleAround, share, ticks } from './scale.ts';
import { atLeast, dot, type Frame, path, picture, type SvgSize, signalMark, text } from './svg.ts';

const MARGIN = { left: 62, top: 46, right: 112, bottom: 40 } as const;

/** A control chart as a picture: readings in order to the right, values upwards, limits dashed and named. */
export function controlSvg(drawing: ControlDrawing, asked: SvgSize): string {
  const size = atLeast(asked);
  const { title, unit, rows, centre, centreName } = drawing;
  const frame: Frame = {
    left: MARGIN.left,
    top: MARGIN.top,
    right: size.width - MARGIN.right,
    bottom: size.height - MARGIN.bottom,
  };
  const scale = scaleAround(
    rows.map(({ value }) => value),
    [...rows.flatMap(({ lower, upper }) => [lower, upper]), centre],
  );
  const x = (index: number) =>
    frame.left + ((frame.right - frame.left) * (index + 0.5)) / Math.max(1, rows.length);
  const y = (value: number) => frame.bottom - (frame.bottom - frame.top) * share(value, scale);
  const line = (value: (row: ControlRow) => number) => steps(rows.map(value).map(y), frame);
  const last = rows.at(-1);
  const named = (name: string, value: number) =>
    text(frame.right + 6, y(value) + 4, `${name} ${figure(value, unit)} ${UNIT_TEXT[unit]}`);
  return picture(size, { title, words: controlInWords(drawing) }, [
    text(frame.left, 18, title),
    ...axes(drawing, frame, scale, y),
    path(steps([y(centre)], frame), '8 3 2 3'),
    named(centreName, centre),
    ...(last === undefined
      ? []
      : [
          path(
            line(({ upper }) => upper),
            '6 4',
          ),
          path(
            line(({ lower }) => lower),
            '6 4',
          ),
          named('upper', last.upper),
          named('lower', last.lower),
        ]),
    path(
      rows.map(({ value }, index) => [x(index), y(value)] as const),
      '',
      0.8,
    ),
    ...rows.map((row, index) => mark(row, x(index), y(row.value))),
  ]);
}

function mark({ label, side, reasons }: ControlRow, x: number, y: number): string {
  return side === null ? dot(x, y) : signalMark(x, y, side, `${label}: ${side}, ${reasons.join(', ')}`);
}

/** A line that holds each height for the width of its reading: limits belong to a reading, not to what lies between. */
function steps(heights: readonly number[], { left, right }: Frame): readonly (readonly [number, number])[] {
  const width = (right - left) / Math.max(1, heights.length);
  return heights.flatMap((height, index) => [
    [left + index * width, height] as const,
    [left + (index + 1) * width, height] as const,
  ]);
}

function axes(
  { unit, mark: name, rows }: ControlDrawing,
  frame: Frame,
  scale: Scale,
  y: (value: number) => number,
): readonly string[] {
  const [first, last] = [rows[0]?.label ?? '', rows.at(-1)?.label ?? ''];
  return [
    path([
      [frame.left, frame.top],
      [frame.left, frame.bottom],
      [frame.right, frame.bottom],
    ]),
    ...ticks(scale, 5).map((value) => text(frame.left - 6, y(value) + 4, figure(value, unit), 'end')),
    text(6, frame.top - 4, `${name}, ${UNIT_TEXT[unit]}`),
    text(frame.left, frame.bottom + 16, first),
    text(frame.right, frame.bottom + 16, last, 'end'),
    text((frame.left + frame.right) / 2, frame.bottom + 30, `${name}s in order, ${rows.length}`, 'middle'),
  ];
}
