import { w } from '../../words/catalogue.ts';
import { figure } from '../figures.ts';
import { CENTRES, type ControlDrawing, type ControlRow, controlInWords, figureOf } from './control.ts';
import { columns, cutTo, marks, type TextSize, unitText, wrapped } from './plain.ts';
import { type Scale, scaleAround, share } from './scale.ts';

const LABEL = 10;
const VALUE = 9;

/**
 * A control chart as lines of text, one to a reading, time downwards and values to the right. A signal has its own mark
 * and stands in words in the sentence below.
 */
export function controlText(drawing: ControlDrawing, size: TextSize): readonly string[] {
  const { title, unit, rows, centre, centreName } = drawing;
  const figure = figureOf(drawing);
  const room = columns(size);
  const scale = scaleAround(
    rows.map(({ value }) => value),
    [...rows.flatMap(({ lower, upper }) => [lower, upper]), centre],
  );
  const width = room - LABEL - VALUE - 2;
  const last = rows.at(-1);
  const limits =
    last === undefined
      ? ''
      : w`limits ${figure(last.lower)} to ${figure(last.upper)}, ${CENTRES[centreName]} ${figure(centre)} ${unitText(unit, size)}`;
  const ends = [figure(scale.low), `${figure(scale.high)} ${unitText(unit, size)}`] as const;
  return [
    cutTo(title, room, size),
    ...wrapped(limits, size),
    `${' '.repeat(LABEL + 1)}${ends[0]}${ends[1].padStart(width - ends[0].length)}`,
    ...rows.map((row) => line(drawing, row, scale, width, size)),
    ...wrapped(controlInWords(drawing), size),
  ];
}

function line(drawing: ControlDrawing, row: ControlRow, scale: Scale, width: number, size: TextSize): string {
  const mark = marks(size);
  const area = Array.from({ length: width }, () => ' ');
  const put = (value: number, character: string) => {
    area[Math.round(share(value, scale) * (width - 1))] = character;
  };
  put(drawing.centre, mark.centre);
  put(row.lower, mark.limit);
  put(row.upper, mark.limit);
  put(row.value, row.side === null ? mark.value : mark[row.side]);
  const label = cutTo(row.label, LABEL, size).padStart(LABEL);
  return `${label} ${area.join('')} ${figure(row.value, drawing.unit).padStart(VALUE)}`;
}
