import { figure, UNIT_TEXT } from '../figures.ts';
import { GREY, INK, ink, type Sheet } from '../sheet.ts';
import { type ControlDrawing, type ControlRow, controlInWords } from './control.ts';
import { scaleAround, share, ticks } from './scale.ts';

const MARGIN = { left: 34, top: 6, right: 74, bottom: 22 } as const;
const SMALL = 6.5;

/** A control chart as a picture of a paper: its content in words, and how it is drawn into a box. */
export function controlPicture(drawing: ControlDrawing) {
  return {
    kind: 'picture',
    title: drawing.title,
    alt: `${drawing.title}. ${controlInWords(drawing)}`,
    height: 170,
    draw: (sheet: Sheet, box: Box) => drawControl(sheet, drawing, box),
  } as const;
}

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

function drawControl(sheet: Sheet, drawing: ControlDrawing, box: Box): void {
  const { doc } = sheet;
  const { rows, centre, unit, centreName, mark } = drawing;
  const [left, right] = [box.x + MARGIN.left, box.x + box.width - MARGIN.right];
  const [top, bottom] = [box.y + MARGIN.top, box.y + box.height - MARGIN.bottom];
  const scale = scaleAround(
    rows.map(({ value }) => value),
    [...rows.flatMap(({ lower, upper }) => [lower, upper]), centre],
  );
  const step = (right - left) / Math.max(1, rows.length);
  const x = (index: number) => left + (index + 0.5) * step;
  const y = (value: number) => bottom - (bottom - top) * share(value, scale);
  const small = { size: SMALL, lines: 1 } as const;
  const polyline = (points: readonly (readonly [number, number])[]) => {
    for (const [i, [px, py]] of points.entries()) i === 0 ? doc.moveTo(px, py) : doc.lineTo(px, py);
  };
  const limit = (of: (row: ControlRow) => number) => {
    polyline(
      rows.flatMap(
        (row, i) =>
          [
            [left + i * step, y(of(row))],
            [left + (i + 1) * step, y(of(row))],
          ] as const,
      ),
    );
    doc.lineWidth(0.6).dash(4, { space: 3 }).stroke(GREY).undash();
  };
  doc.save();
  polyline([
    [left, top],
    [left, bottom],
    [right, bottom],
  ]);
  doc.lineWidth(0.6).stroke(INK);
  limit(({ upper }) => upper);
  limit(({ lower }) => lower);
  polyline([
    [left, y(centre)],
    [right, y(centre)],
  ]);
  doc.lineWidth(0.6).dash(1, { space: 2 }).stroke(GREY).undash();
  polyline(rows.map(({ value }, i) => [x(i), y(value)] as const));
  doc.lineWidth(0.5).stroke(INK);
  for (const [i, { value, side }] of rows.entries()) {
    if (side === null) doc.circle(x(i), y(value), 1.2).fillAndStroke('#FFFFFF', INK);
    else {
      const [tip, at] = [side === 'above' ? -4 : 4, y(value)];
      doc.polygon([x(i), at + tip], [x(i) - 3, at - tip / 2], [x(i) + 3, at - tip / 2]).fill(INK);
    }
  }
  doc.restore();
  for (const value of ticks(scale, 5))
    ink(sheet, figure(value, unit), {
      ...small,
      x: box.x,
      y: y(value) - 4,
      width: MARGIN.left - 4,
      align: 'right',
    });
  const last = rows.at(-1);
  const named = (name: string, value: number) =>
    ink(sheet, `${name} ${figure(value, unit)} ${UNIT_TEXT[unit]}`, {
      ...small,
      x: right + 4,
      y: y(value) - 4,
      width: MARGIN.right - 4,
    });
  named(centreName, centre);
  if (last !== undefined) {
    named('upper', last.upper);
    named('lower', last.lower);
  }
  const below = { ...small, y: bottom + 4, width: (right - left) / 3 };
  ink(sheet, rows[0]?.label ?? '', { ...below, x: left });
  ink(sheet, `${mark}s in order, ${rows.length}`, {
    ...below,
    x: left + (right - left) / 3,
    align: 'centre',
  });
  ink(sheet, last?.label ?? '', { ...below, x: right - (right - left) / 3, align: 'right' });
}
